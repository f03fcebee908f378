"""The page of a line itself: every piece, where each begins from the start, and how a straight goes on past an arc."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.pieces import Bend, Piece, Straight
from bowstring.geometry.plane import Point
from bowstring.report.forms.build_lined import LinedPage, LinedTable
from bowstring.report.lined.concrete import concrete_told
from bowstring.report.lined.line import first_told, kinks_told, name_of
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.standing import cautions_along
from bowstring.words import say


def page_of_line(plan: LinePlan) -> LinedPage:
    """Return the page of the line itself: every piece, where it ends, and each kink."""
    tape, line = plan.tape, plan.line
    kinks = [join for join in line.joins if not join.tangent]
    short = say("lined.row", length=tape.show_running(line.length), count=len(line.pieces))
    if plan.asks:
        return {**page_of("line", "open", short, plan.asks[0], "pieces")}
    more = say("lined.row_kinks", count=len(kinks)) if kinks else say("lined.row_tangent")
    page = page_of("line", "near" if kinks else "usual", short, more)
    page["conclusion"] = say("lined.conclusion", length=tape.show_running(line.length), count=len(line.pieces))
    rows = []
    for number, piece in enumerate(line.pieces, 1):
        radius = _radius_told(plan, piece)
        chord = tape.show(piece.arc.chord) if isinstance(piece, Bend) else say("lined.none")
        # Where stations say how far along a piece ends, how long it is stands beside them.
        long = [tape.show_running(piece.length)] if plan.stationed else []
        rows.append([name_of(plan, number), plan.along(line.stations[number]), radius, chord, *long])
    heads = [say("lined.head_piece"), say("lined.head_station"), say("lined.head_radius"), say("lined.head_chord")]
    heads += [say("lined.head_long")] if plan.stationed else []
    page["tables"] = [{"key": "pieces", "title": say("lined.pieces"), "heads": heads, "rows": rows}, _begins(plan)]
    lines = [concrete_told(plan), *kinks_told(plan), say("lined.order"), *_straight_on(plan), *cautions_along(plan)]
    page["lines"] = [line for line in lines if line]
    return page


def paper_lines(plan: LinePlan) -> list[str]:
    """Return what the form sheet says of the line, beside its tables."""
    return [*kinks_told(plan), *cautions_along(plan)]


def _radius_told(plan: LinePlan, piece: Piece) -> str:
    """A piece's radius and the hand that it turns to."""
    if not isinstance(piece, Bend):
        return say("lined.none")
    return say("lined.radius", radius=plan.tape.show(piece.radius), hand=say(f"hand.{piece.hand}"))


def _begins(plan: LinePlan) -> LinedTable:
    """Where each piece begins and the line ends, for who stands at its start and looks along its first tangent."""
    runs = plan.line.runs
    stations = plan.line.stations
    rows = [
        [name_of(plan, number), plan.along(stations[number - 1]), *_from_start(plan, run.start.point)]
        for number, run in enumerate(runs[1:], 2)
    ]
    rows.append([say("lined.the_end"), plan.along(stations[-1]), *_from_start(plan, plan.line.end.point)])
    heads = [
        say("lined.head_begins"),
        say("lined.begins_station" if plan.stationed else "lined.begins_at"),
        say("lined.head_ahead"),
        say("lined.head_off"),
    ]
    return {"key": "begins", "title": say("lined.begins_head", first=first_told(plan)), "heads": heads, "rows": rows}


def _from_start(plan: LinePlan, place: Point) -> tuple[str, str]:
    """How far ahead a place is, and how far to which hand."""
    tape, off = plan.tape, plan.tape.round(abs(place.y))
    ahead = tape.show(abs(place.x))
    if place.x < 0 and tape.round(-place.x):
        ahead = say("lined.behind", size=ahead)
    if not off:
        return ahead, tape.show(0.0)
    return ahead, say("lined.off_left" if place.y > 0 else "lined.off_right", size=tape.show(abs(place.y)))


def _straight_on(plan: LinePlan) -> Iterator[str]:
    """How the direction of each straight is got that runs on from an arc: from the arc's corner through its far end."""
    for number, (before, after, join) in enumerate(zip(*_pairs(plan), plan.line.joins, strict=True), 1):
        if not (isinstance(before, Bend) and isinstance(after, Straight) and join.tangent):
            continue
        tangent = before.arc.tangent_length
        names = {"arc": name_of(plan, number), "straight": name_of(plan, number + 1)}
        if tangent is not None:
            yield say("lined.straight_on", tangent=plan.tape.show(tangent), **names)


def _pairs(plan: LinePlan) -> tuple[tuple[Piece, ...], tuple[Piece, ...]]:
    pieces = plan.line.pieces
    return pieces[:-1], pieces[1:]
