"""The cards that get a line of several pieces through the dig: hubs, dig lines, and the line again."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.pieces import OTHER, Hand, sign_of
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tops import HANDS
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, marks_of
from bowstring.report.forming.edge_stick import LONG, alike_of, report_bays
from bowstring.report.forming.ends import against, past_ends
from bowstring.report.forming.off_line import off_line, stray_values
from bowstring.report.forming.pass_card import Value, pass_card
from bowstring.report.forms.cards import CardRight, CardRow
from bowstring.report.lined.dig import inners
from bowstring.report.lined.hub_reads import reads_of
from bowstring.report.lined.hubs import LineHub, LineHubs, Reach, left_of
from bowstring.report.lined.hubs_told import arcs_told, place_told, reach_size, reach_told, stray_place, strays_told
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.standing import dig_notes
from bowstring.words import say

DRAWN: dict[Hand, str] = {"left": OUTSIDE, "right": INSIDE}
"""Which side of the cut across the slab shows which hand of the line: the left one is at the left."""

Numbers = list[tuple[str, str]]
Drawn = list[tuple[str, str, int]]


def has_hubs(hubs: LineHubs) -> bool:
    """Tell whether a card sets hubs: off the staked arc's stakes, or where no arc begins or ends."""
    return bool(hubs.of_arc or hubs.free)


def hubs_card(hubs: LineHubs) -> CardRow:
    """Return the card of the hubs of the staked arc; those at straights' free ends it names, too."""
    plan, usual = hubs.plan, hubs.usual
    hand, off = usual
    numbers = [(say(f"forming.label.hub_{hand}"), plan.tape.show_whole(off))]
    values = [*line_values(hubs), hubs.staked, *_reaches(hubs.of_arc), *_reaches(hubs.free),
              *stray_values(plan.plan.layout)]  # fmt: skip
    notes = [*strays_told(hubs), *_otherwise(hubs), *_free(hubs)]
    text = say("forming.hubs" if hubs.of_arc else "forming.hubs_ends")
    drawn = [("stake", f"hub_{DRAWN[hand]}", 1)]
    card = pass_card("hubs", text, values, numbers, reads_of(hubs), notes, drawn)
    return {**card, "where": name_of(plan, hubs.staked + 1)}


def _reaches(found: list[LineHub]) -> Iterator[Value]:
    for hub in found:
        yield from hub.reach or ("none",)


def _otherwise(hubs: LineHubs) -> Iterator[str]:
    """The stakes whose hubs don't stand as all others of the arc."""
    strays = dict(off_line(hubs.plan.plan.layout))
    for hub in hubs.of_arc:
        if hub.reach is None:
            yield say("forming.note.hub_none", stake=hub.mark.stake)
        elif hub.reach != hubs.usual and hub.mark.stake not in strays:
            yield say("forming.note.hub_else", stake=hub.mark.stake, off=reach_told(hubs.plan, hub.reach))
        if hub.mark.square != hubs.staked:
            piece = name_of(hubs.plan, hub.mark.square + 1)
            yield say("forming.note.hub_square", stake=hub.mark.stake, piece=piece)


def _free(hubs: LineHubs) -> Iterator[str]:
    if not hubs.free:
        return
    places = []
    for hub in hubs.free:
        place = place_told(hubs.plan, hub)
        other = hub.reach is not None and hub.reach != hubs.usual
        places.append(f"{place} ({reach_told(hubs.plan, hub.reach)})" if other and hub.reach else place)
    yield say("forming.note.hubs_free", places=", ".join(places))


def dig_card(hubs: LineHubs) -> CardRow:
    """Return the card of the dig lines, each from the stakes' line."""
    plan, past, numbers, values, drawn = hubs.plan, overdig_of(hubs.plan.plan), Numbers(), line_values(hubs), Drawn()
    for hand in HANDS:
        off = _off(hubs, hand) + sign_of(hand) * past
        values.append(off)
        side = "left" if off > 0 else "right"
        numbers.append((say(f"forming.label.dig_{hand}_{side}"), plan.tape.show(abs(off))))
        drawn.append(("stake", f"dig_{DRAWN[hand]}", len(numbers)))
    notes = dig_notes(plan)
    notes += [say("forming.note.dig_arcs")] if [*arcs_told(hubs)] else []
    notes += [] if plan.line.is_closed else past_ends(plan.plan, past, "forming.note.dig_ends")
    values += against(plan.plan)
    notes += [say("forming.note.dig_kink")] if any(not join.tangent for join in plan.line.joins) else []
    for inner in inners(hubs.slab):
        if inner.radius <= past:
            notes.append(say("lined.dig_all", piece=name_of(plan, inner.piece)))
    notes.append(say("forming.note.locates"))
    return pass_card("dig", say("forming.dig_line"), values, numbers, None, notes, drawn)


def _off(hubs: LineHubs, hand: Hand) -> float:
    """How far to the left of the stakes' line an edge runs, metres."""
    return (hubs.slab.left if hand == "left" else -hubs.slab.right) - hubs.aside


def line_card(hubs: LineHubs) -> CardRow:
    """Return the card that sets the line again and both edges from it: of all arcs' hubs, whichever is staked."""
    plan, there = hubs.plan, has_hubs(hubs)
    values = [*line_values(hubs), *_stand(hubs)]
    notes = [*_back_else(hubs)] if there else []
    notes += [say("forming.note.strings")] if any(piece.turn == 0 for piece in plan.line.pieces) else []
    notes += [say("forming.note.level")] if any(plan.plan.layout.slope) else []
    notes += [*_strays(hubs)]
    if hubs.aside:
        text, numbers, drawn = _from_aside(hubs)
    else:
        text = say("forming.line_both" if plan.edge == CENTER else "forming.line_other")
        numbers, drawn = _gauged(hubs)
    if not hubs.aside and max(abs(_off(hubs, hand)) for hand in HANDS) > LONG[plan.plan.layout.job.tape.feet]:
        notes.append(say("forming.note.long_stick"))
    return pass_card("line", text, values, numbers, _diagonals(plan), notes, drawn)


def _strays(hubs: LineHubs) -> Iterator[str]:
    """How far both edges are from stakes of the staked arc that were got off it, where no hubs are set from them."""
    strays = [] if hubs.of_arc else off_line(hubs.plan.plan.layout)
    if strays and not hubs.aside:
        yield say("forming.note.got")
        return
    for name, miss in strays:
        left = left_of(hubs, miss)
        edges = {hand: reach_size(hubs.plan, _off(hubs, hand) - left) for hand in HANDS}
        yield say("forming.note.off_gauge_line", stake=name, **edges)


def _stand(hubs: LineHubs) -> Iterator[Value]:
    """Where all hubs stand, as numbers."""
    if hubs.alike or not hubs.ends:
        yield from hubs.alike or ()
        return
    yield from hubs.most
    for stray in hubs.strays:
        yield from ("end" if stray.number is None else str(stray.number), *(stray.reach or ("none",)))
        yield from _reaches([stray.hub] if stray.hub else [])


def _back_else(hubs: LineHubs) -> Iterator[str]:
    """How far it is back from the hubs that don't stand where most of the line's do."""
    for stray in hubs.strays:
        place = stray_place(hubs, stray)
        if stray.reach is None:
            yield say("forming.note.back_own", place=place)
        elif stray.number is None or stray.hub is None or stray.hub.reach is None:
            yield say("forming.note.back_else", place=place, back=_back(hubs, stray.reach))
        else:
            first = _back(hubs, stray.hub.reach)
            yield say("forming.note.back_else_a", place=place, back=_back(hubs, stray.reach), first=first)
    for hub in hubs.ends:
        if hub.reach is None:
            yield say("forming.note.back_none", place=place_told(hubs.plan, hub))
    inner = [hub for hub in hubs.of_arc if not hub.mark.is_end]
    if hubs.arc_reach(hubs.staked) and any(hub.reach != hubs.usual for hub in inner):
        yield say("forming.note.hubs_listed")


def _back(hubs: LineHubs, reach: Reach) -> str:
    """How far it is from a hub back to the stakes' line, and which way; of stakes beside the slab to both edges."""
    hand, off = reach
    if not hubs.aside:
        return say(f"forming.note.back_{OTHER[hand]}", size=hubs.plan.tape.show_whole(off))
    left, right = (_to_edge(hubs, edge, reach) for edge in HANDS)
    return say("forming.note.back_edges", left=left, right=right)


def _to_edge(hubs: LineHubs, edge: Hand, reach: Reach) -> str:
    hand, off = reach
    return hubs.plan.tape.show(abs(_off(hubs, edge) - sign_of(hand) * off))


def _gauged(hubs: LineHubs) -> tuple[Numbers, Drawn]:
    """Back from the hubs to the line, and each edge that isn't the line by the stick."""
    tape, numbers, drawn = hubs.plan.tape, Numbers(), Drawn()
    if has_hubs(hubs):
        hand, off = hubs.most
        label = "hub_back" if hubs.alike else f"hub_back_{OTHER[hand]}"
        numbers.append((say(f"forming.label.{label}"), tape.show_whole(off)))
        drawn.append((f"hub_{DRAWN[hand]}", "stake", 1))
    offs = {hand: abs(_off(hubs, hand)) for hand in HANDS}
    numbers.append((say("forming.label.stick_line"), tape.show(max(offs.values()))))
    drawn += [("stake", DRAWN[hand], len(numbers)) for hand in HANDS if offs[hand]]
    return numbers, drawn


def _from_aside(hubs: LineHubs) -> tuple[str, Numbers, Drawn]:
    """To both edges, from the hubs or from stakes that stand clear of the dig."""
    there, most, numbers, drawn = has_hubs(hubs), hubs.most, Numbers(), Drawn()
    for disc, edge in enumerate(HANDS, 1):
        far = _to_edge(hubs, edge, most) if there else hubs.plan.tape.show(abs(_off(hubs, edge)))
        numbers.append((say(f"forming.label.{'hubs' if there else 'stakes'}_{edge}"), far))
        drawn.append((f"hub_{DRAWN[most[0]]}" if there else "stake", DRAWN[edge], disc))
    return say(f"forming.line_{'hubs' if there else 'stakes'}"), numbers, drawn


def _diagonals(plan: LinePlan) -> CardRight | None:
    """What both diagonals of each bay of the staked arc read, where that is one number."""
    alike = alike_of(report_bays(plan.plan, marks_of(plan.plan)))
    piece = name_of(plan, plan.settled.said.at + 1)
    return {"text": say("forming.right.bays", piece=piece), "shown": alike, "more": ""} if alike else None


def line_values(hubs: LineHubs) -> list[Value]:
    """Return where the line, its edges and the stakes' line run, as numbers: the same whichever arc is staked."""
    slab: LineSlab = hubs.slab
    pieces = [size for piece in slab.line.pieces for size in (piece.length, piece.curvature, piece.kink)]
    return [*pieces, slab.left, slab.right, hubs.aside]
