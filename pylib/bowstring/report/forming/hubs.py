"""Where hubs stand outside the dig, off each stake: from them the line is set again once the stakes are dug out."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from bowstring.forming.edge import Edge
from bowstring.geometry.plane import distance
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE, Marks
from bowstring.report.forming.edge_set import Ground
from bowstring.report.forming.in_dig import CLEAR, whole_off
from bowstring.report.forming.plan import Plan


@dataclass(frozen=True)
class Hubs:
    """One hub square off each stake, all as far.

    Attributes:
        side: of the curve on which they stand, ``outside`` or ``inside``; off: from its stake, metres.
        line: on which they stand; marks: the edges and the stakes.
        blocked: what stands where the first of them that can't be driven would be, empty where all can; at: its stake.
    """

    side: str
    off: float
    line: Edge
    marks: Marks
    blocked: str
    at: str

    @cached_property
    def to_neighbors(self) -> list[float]:
        """Return the distances from each hub to the stakes before and after its own, metres."""
        found = []
        for (first, here), (last, there) in pairwise(self.marks.shares):
            found.append(distance(self.line.point(here), self.marks.places[last]))
            found.append(distance(self.line.point(there), self.marks.places[first]))
        return found

    def to_edge(self, key: str, share: float) -> float:
        """Return how far an edge is from the hub at a share of the angle, metres."""
        return abs(self.line.first - self.marks.edge(key).offset(share))


def hubs_of(plan: Plan, marks: Marks) -> Hubs:
    """Return the hubs on the nearer side of the dig, the farther one where something stands in the way of those."""
    feet, past, at = plan.layout.job.tape.feet, overdig_of(plan), marks.stakes.first
    reach = {
        OUTSIDE: max(marks.outer.first, marks.outer.last) + past - at,
        INSIDE: at - min(marks.inner.first, marks.inner.last) + past,
    }
    found = []
    for side in (OUTSIDE, INSIDE):
        off = whole_off(reach[side], feet=feet)
        line = at + off if side == OUTSIDE else at - off
        if plan.line.radius + line >= past + CLEAR[feet]:  # at the center hubs would stand on each other
            found.append(hubs_on(plan, marks, side, off, Edge(plan.line, line, line)))
    found.sort(key=lambda one: one.off)  # as far on either side: outside, where there is more room
    return next((one for one in found if not one.blocked), found[0])


def hubs_on(plan: Plan, marks: Marks, side: str, off: float, line: Edge) -> Hubs:
    """Return the hubs so far off each stake, metres, on one side of the curve, and what stands in the way of one."""
    ground = Ground(plan, marks)
    standing = ((name, ground.standing(line.point(share))) for name, share in marks.shares)
    at, what = next(((name, what) for name, what in standing if what), ("", ""))
    return Hubs(side, off, line, marks, what, at)
