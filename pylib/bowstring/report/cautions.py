"""Cautions: everything about a job that somebody should know before a stake is driven."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from bowstring.geometry.arc import HALF_TURN_COSINE
from bowstring.job.landmarks import doubts_of_landmarks
from bowstring.job.line import ArcSaid, LineSaid
from bowstring.job.line_settled import questions, settle_line
from bowstring.layout.demand import LIKELY_TOLERANCE
from bowstring.layout.layout import FEW_MARKS, Layout
from bowstring.layout.rows import Row
from bowstring.report.caution import Caution, caution
from bowstring.report.givens import doubts_of_givens, sharpness
from bowstring.report.got_cautions import cautions_of_got
from bowstring.report.hands import curve_hand
from bowstring.report.method import cautions_of_method
from bowstring.report.shown_in import shown_in
from bowstring.report.ties import cautions_of_ties
from bowstring.units.angles import show_dms
from bowstring.words import say

LIKELY = {"board": (0.003, 0.1), "hub": (0.15, 30.0)}
"""Metres between which a form board's thickness and a hub line's distance lie (common practice, no source)."""


def report_cautions(layout: Layout, own: Row, advised: Callable[[], Row | None]) -> list[str]:
    """Return the cautions of a layout, gravest first; ``advised`` finds the row of the advised method."""
    return [caution.text for caution in _all(layout, own, advised)]


def report_stops(layout: Layout, own: Row, advised: Callable[[], Row | None]) -> list[str]:
    """Return those cautions for which nobody should build from the sheet before something is settled."""
    return [caution.text for caution in stopping(layout, own, advised)]


def stopping(layout: Layout, own: Row, advised: Callable[[], Row | None]) -> list[Caution]:
    """Return the cautions that stop a layout."""
    return [caution for caution in _all(layout, own, advised) if caution.stops]


def _all(layout: Layout, own: Row, advised: Callable[[], Row | None]) -> list[Caution]:
    return [
        *_hand(layout),
        *_kinks(layout),
        *_unit(layout),
        *_ground(layout),
        *doubts_of_givens(layout),
        *_line(layout),
        *cautions_of_method(layout, own, advised),
        *_ends(layout),
        *cautions_of_ties(layout),
        *_sizes(layout),
        *_got(layout),
        *sharpness(layout),
        *_marks(layout),
        *_site(layout),
    ]


def _ground(layout: Layout) -> Iterator[Caution]:
    ground, tape = layout.ground, layout.job.shown
    if ground is None:
        return
    values = {
        "found": tape.show(ground.found),
        "drawn": tape.show(layout.settled.arc.chord),
        "apart": tape.show_small(ground.apart),
        "difference": tape.show_small(ground.found - layout.settled.arc.chord),
    }
    if ground.agrees:
        yield caution("fit.agrees", **values)
    if ground.reason:
        yield caution(f"fit.{ground.reason}", **values)
    if ground.taken and not ground.taken.buildable:
        kink = say("fit.kink", degrees=f"{ground.taken.kink:+.2f}", off=tape.show_small(ground.taken.kink_in_ten))
        yield caution("fit.do_not_build", kink=kink, **values)
    elif ground.taken:
        yield caution("fit.taken", hold=say(f"fit.hold_{ground.taken.hold}"), **values)
    for slip in () if ground.taken else ground.slips:  # once it's surely the chord, it's no slip
        yield caution("fit.looks_like", slip=say(f"slip.{slip.kind}", would_be=tape.show(slip.would_be)))


def _unit(layout: Layout) -> Iterator[Caution]:
    """That the job is in another unit than the one it is shown in."""
    text = shown_in(layout.job)
    if text:
        yield Caution(text, False, "caution.shown_in")


def _hand(layout: Layout) -> Iterator[Caution]:
    if layout.hand_from_points:
        key = "caution.points_hand"
        if layout.side != layout.hand_from_points:
            key = "caution.points_other_hand"
        yield caution(key, points=say(f"hand.{layout.hand_from_points}"), side=curve_hand(layout))
    elif layout.side is None:
        yield caution("caution.turn_unsaid" if layout.job.start == "one-end" else "caution.hand_unsaid")


def _kinks(layout: Layout) -> Iterator[Caution]:
    """The kinks of a line whose hand nobody said: all that comes after one would lie elsewhere."""
    said = layout.job.line
    if said is not None and said.asks:
        settled = settle_line(said, layout.job.tape.mark)
        for text in questions(settled, layout.job.shown.show_running):
            yield Caution(text, True, "line.kink_asked")
    if said is not None:
        yield from _tangents(layout.job.start, said)


def _tangents(start: str, said: LineSaid) -> Iterator[Caution]:
    """Where a straight is taken for the staked arc's tangent: past a kink it is none, and an arc is no straight."""
    at, pieces = said.at, said.pieces
    ends = {"one-end": ("A",), "corner": ("A", "B")}.get(start, ())
    beside = {"A": (at - 1, at), "B": (at + 1, at + 1)}  # which piece stands there, and which one has the kink
    for end in ends:
        other, kinked = beside[end]
        if not 0 <= other < len(pieces):
            continue
        if pieces[kinked].kink is not None:
            yield caution("line.kink_at_end", end=end)
        elif isinstance(pieces[other], ArcSaid):
            yield caution("line.arc_at_end", end=end, piece=other + 1)


def _line(layout: Layout) -> Iterator[Caution]:
    drawn_to, board = layout.job.drawn_to, layout.job.driven == "board"
    if drawn_to == "unsure":
        yield caution("caution.line_unsure")
    elif drawn_to is None:
        yield caution("caution.line_unsaid")
    elif board and drawn_to == "back":
        yield caution("caution.board_on_back")
    elif board and drawn_to == "centre":
        # No board stands on a centre line: the offset has to hold the way to the face too, and no board is that thick.
        thick = abs(layout.job.outward) <= LIKELY["board"][1]
        shown = layout.job.shown.both(abs(layout.job.outward))
        yield caution("caution.board_on_centre" if thick else "caution.board_from_centre", shown=shown)


def _got(layout: Layout) -> Iterator[Caution]:
    for name in layout.job.got:
        yield from cautions_of_got(layout, name)


def _ends(layout: Layout) -> Iterator[Caution]:
    """What stands at the ends and could be read two ways: swapped, they put the curve on the other hand."""
    ties = {end: [tie.to for tie in both] for end, both in layout.job.ties.items()}
    for kind, end, landmark in doubts_of_landmarks(layout.job.ends, ties):
        yield caution(f"caution.landmark_{kind}", end=end, landmark=landmark)


def _sizes(layout: Layout) -> Iterator[Caution]:
    """Sizes that no board, hub or tolerance has: most likely a number in another unit than was meant."""
    job = layout.job
    low, high = LIKELY.get(job.driven, (0.0, float("inf")))
    if job.driven == "board" and job.drawn_to == "centre":
        high = float("inf")  # told with the line
    if job.outward and not low <= abs(job.outward) <= high:
        yield caution(f"caution.unlikely_{job.driven}", shown=job.shown.both(abs(job.outward)))
    if job.tolerance is not None and job.tolerance > LIKELY_TOLERANCE:
        yield caution("caution.unlikely_tolerance", shown=job.shown.both(job.tolerance))


def _marks(layout: Layout) -> Iterator[Caution]:
    own, tape, staked = layout.job.tape, layout.job.shown, layout.staked
    if staked.sagitta < own.mark:
        yield caution("caution.straight", sagitta=tape.show_small(staked.sagitta), mark=layout.job.mark_shown)
    small = next(
        (
            level
            for level in range(2, layout.levels + 1)
            if staked.part(2 ** (level - 1)).sagitta < FEW_MARKS * own.mark
        ),
        None,
    )
    if small:
        yield caution(
            "caution.small_sagitta",
            level=small,
            sagitta=tape.show_small(staked.part(2 ** (small - 1)).sagitta),
            few=FEW_MARKS,
            mark=layout.job.mark_shown,
        )
    tolerance = layout.job.tolerance
    if tolerance is not None and tolerance < own.mark:
        yield caution("caution.tolerance_under_mark", tolerance=tape.show_small(tolerance), mark=layout.job.mark_shown)
    if not layout.method.halves:
        return
    if layout.levels == 1 and "P" not in layout.marks:
        yield caution("caution.one_level")


def _site(layout: Layout) -> Iterator[Caution]:
    if layout.drawn.cosine < -HALF_TURN_COSINE:
        yield caution("caution.over_half", angle=show_dms(layout.drawn.central_angle))
