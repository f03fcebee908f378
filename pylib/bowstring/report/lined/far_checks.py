"""What proves a line of several pieces as a whole: straight distances past its joins, which no step measures.

Each arc's own checks see nothing of how it was joined to the piece before it. A straight from one piece's end to
another's, past a join, reads shorter where the line turns more there and longer where it turns less.

All are taped between points of the line itself, also where the stakes stand off it: off a straight's end no step sets
one, and at a kink a piece's end has no one place off the line.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from math import hypot, sqrt

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.checks import Check
from bowstring.analysis.limits import Judged, expected_about
from bowstring.construction.scatter import Errors
from bowstring.forming.line.pieces import Bend
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.job.kept import Kept
from bowstring.layout.frame import far_back_on
from bowstring.report.checks import row_of_check
from bowstring.report.far_checks import FAR, outs_of
from bowstring.report.forms.checks import CheckRow
from bowstring.report.forms.read import FarChecks, ReadRow
from bowstring.report.lined.ground import LineGround
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.report.read import LINE_END, read_row, typed_of
from bowstring.report.waiting import Waits
from bowstring.words import say

LEAST = 1 / 20
"""Of the piece after a join: a check that sees no less than such a miss at that piece's end says too little."""


@dataclass(frozen=True)
class Past:
    """A distance past a join.

    Attributes:
        first, last: the numbers of the ends between which it is taped, 0 at the line's start; join: that of the end
            between them whose turn it sees best.
        off: how far that end is from the straight between them, metres: so much the reading changes for a radian.
        on: metres from the join to the next end.
    """

    first: int
    last: int
    join: int
    off: float
    on: float


def report_far(plan: LinePlan, kept: Kept, errors: Errors, waits: Waits) -> FarChecks:
    """Return the answer's ``far_checks`` of a line; ``errors``: of the layout's tape. Readings along it wait for an end
    of the arc that isn't set, and for whatever stands by old numbers."""
    job, typed = plan.plan.layout.job, typed_of(kept)
    found = [(past, judged_of(plan, past, errors)) for past in pasts(plan, errors)]
    waits = waits.at({"A", "B", *waits.old})
    rows = [read_row(job, one, typed[one.check.key], waits=waits.told) for _p, one in found if one.check.key in typed]
    read: list[ReadRow] = [{**row, "marks": ["A", "B"]} for row in rows]  # how the arc between them is set tells in all
    return {
        "rows": [_row(plan, past, one) for past, one in found],
        "read": read,
        "told": [],
        "off": bool(job.outward),
        "sees": [_sees(plan, past, one) for past, one in found],
        "apart": None,
        "outs": outs_of(read),
        "waits": waits.line if read else "",
    }


def ends_of(plan: LinePlan) -> list[Point]:
    """Return where the pieces begin and end on the line itself, in the line's frame."""
    runs = plan.line.runs
    return [*(run.start.point for run in runs), runs[-1].end.point]


def pasts(plan: LinePlan, errors: Errors) -> list[Past]:
    """Return the fewest distances that see every join, as far as one does: for each the one that sees it best."""
    ends = ends_of(plan)
    ground = LineGround(plan)
    pairs = [
        (first, last)
        for first, last in combinations(range(len(ends)), 2)
        if _is_unseen(plan, first, last) and ground.tapeable(ends[first], ends[last])
    ]
    found: dict[tuple[int, int], Past] = {}
    for join in range(1, len(ends) - 1):
        fit = [_past(ends, first, last, join) for first, last in pairs if first < join < last]
        sharp = [past for past in fit if miss_seen(past, judged_of(plan, past, errors)) <= LEAST * past.on]
        if sharp:
            best = min(sharp, key=lambda past: miss_seen(past, judged_of(plan, past, errors)))
            found.setdefault((best.first, best.last), best)
    return [found[pair] for pair in sorted(found)]


def _past(ends: list[Point], first: int, last: int, join: int) -> Past:
    straight = unit_vector(ends[first], ends[last])
    off = abs(straight.cross(ends[join].minus(ends[first])))
    return Past(first, last, join, off, distance(ends[join], ends[join + 1]))


def _is_unseen(plan: LinePlan, first: int, last: int) -> bool:
    """Whether a distance is no piece's own and no step's."""
    return last - first > 2 or (last - first == 2 and not _is_of_a_step(plan, first))


def _is_of_a_step(plan: LinePlan, first: int) -> bool:
    """Whether the piece after the one that begins at ``first`` is an arc that is set from there: off a straight no
    longer than a crew goes back on it."""
    before, piece = plan.line.pieces[first : first + 2]
    short = not isinstance(before, Bend) and far_back_on(before.length, plan.plan.layout.job.tape.feet)[1]
    return isinstance(piece, Bend) and short


def judged_of(plan: LinePlan, past: Past, errors: Errors) -> Judged:
    """Return a distance with its limit: what 95 of 100 readings stay within by the stakes' error model, and half a
    mark.

    Along it each piece is as much off as one pull and one stake. At each join it turns as the line before it is carried
    on: two stakes and a sight over as much of the piece before as a crew goes back, no longer than that piece.
    """
    ends, job = ends_of(plan), plan.plan.layout.job
    far, way = distance(ends[past.first], ends[past.last]), unit_vector(ends[past.first], ends[past.last])
    moved = [errors.pull]
    moved += [errors.pull, errors.stake] * (past.last - past.first)
    for join in range(past.first + 1, past.last):
        back, _short = far_back_on(distance(ends[join - 1], ends[join]), job.tape.feet)
        moved.append(_past(ends, past.first, past.last, join).off * hypot(errors.stake * sqrt(2), errors.line) / back)
    expected = NORMAL_95 * hypot(*moved)
    check = Check(FAR, f"{LINE_END}{past.first}", f"{LINE_END}{past.last}", far, 0.0, None, 0, way, {})
    return Judged(check, expected, None, False, 0.0, expected_about(0.0, expected) + job.tape.mark / 2)


def miss_seen(past: Past, one: Judged) -> float:
    """Return how far off the end of the piece after the join must be, metres, for the reading to be out."""
    return one.limit * past.on / past.off if past.off else float("inf")


def _row(plan: LinePlan, past: Past, one: Judged) -> CheckRow:
    row = row_of_check(plan.plan.layout.job, one)
    start, end = (_called(plan, number) for number in (past.first, past.last))
    return {**row, "from": start, "to": end, "text": say("check.far", start=start, end=end, shown=row["shown"])}


def _called(plan: LinePlan, number: int) -> str:
    """What an end is called: by the piece that begins there. Where the stakes stand off the line, by the point of the
    line that an arc's own steps set there, so that nobody tapes between the stakes instead."""
    if plan.plan.layout.job.outward:
        return _called_on_line(plan, number)
    if number in (0, len(plan.line.pieces)):
        return say("lined.place_start" if number == 0 else "lined.place_end")
    return say("lined.place_begins", piece=_within(plan, number + 1))


def _called_on_line(plan: LinePlan, number: int) -> str:
    """What an end is called where the stakes stand off it: A0 or B0 of an arc, else the line's own end, or that of a
    straight."""
    pieces = plan.line.pieces
    for at, point in ((number, "A0"), (number - 1, "B0")):
        if 0 <= at < len(pieces) and isinstance(pieces[at], Bend):
            return say("lined.place_of_arc", point=point, piece=_within(plan, at + 1))
    if number in (0, len(pieces)):
        return say("lined.place_own_start" if number == 0 else "lined.place_own_end")
    return say("lined.place_own_begins", piece=_within(plan, number + 1))


def _within(plan: LinePlan, number: int) -> str:
    """What a piece is called within a sentence."""
    name = name_of(plan, number)
    return name[:1].lower() + name[1:]


def _sees(plan: LinePlan, past: Past, one: Judged) -> str:
    miss = plan.tape.show_up(miss_seen(past, one))
    return say("face_checks.line_sees", piece=_within(plan, past.join + 1), miss=miss)
