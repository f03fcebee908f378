"""Where the marks of both edges stand, seen from the job's own stakes: in metres, nothing said of them yet."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import isclose

from bowstring.forming.edge import Edge
from bowstring.geometry.plane import Point, distance
from bowstring.report.forming.edge_board import board_of
from bowstring.report.forming.plan import Plan

OUTSIDE, INSIDE = "outside", "inside"
CENTER = "centre"
STAKES = "stakes"
"""On which line the stakes stand; the last is a line of their own, where it is none of the others."""

SAME = 1e-9
"""A part of a radius: two lines that near are one."""


@dataclass(frozen=True)
class Marks:
    """Both edges and the line of the stakes, every place in the frame of the drawing's own line.

    Attributes:
        outer, inner: the edges; stakes: the stakes' line, an arc.
        yours: on which line the stakes stand: ``outside``, ``centre``, ``inside`` or ``stakes``.
        boarded: the edge whose board stands against the stakes, ``None`` where they stand behind none.
        shares: every stake's name with its share of the angle.
        past: how far behind the back of that board they stand, metres: half a pin where its center is on the line.
    """

    outer: Edge
    inner: Edge
    stakes: Edge
    yours: str
    boarded: str | None
    shares: tuple[tuple[str, float], ...]
    past: float = 0.0

    @property
    def seconds(self) -> tuple[str, ...]:
        """The edges that are set from the stakes: the other one, or both where the stakes stand on none and behind no
        board of one."""
        return tuple(edge for edge in (OUTSIDE, INSIDE) if edge not in (self.yours, self.boarded))

    def edge(self, key: str) -> Edge:
        """Return an edge by its name."""
        return self.outer if key == OUTSIDE else self.inner

    @cached_property
    def places(self) -> dict[str, Point]:
        """Where the stakes stand, by name."""
        return {name: self.stakes.point(share) for name, share in self.shares}

    def reach(self, key: str, share: float) -> float:
        """Return how far an edge is from the stakes' line at a share of the angle, metres, positive away from the
        center."""
        return self.edge(key).offset(share) - self.stakes.first

    def width(self, share: float) -> float:
        """Return how wide the slab is at a share of the angle, metres."""
        return self.outer.offset(share) - self.inner.offset(share)

    def across(self, key: str, share: float) -> Point:
        """Return the mark of an edge square across from a share of the angle."""
        return self.edge(key).point(share)

    def bays(self) -> Iterator[tuple[str, str, float, float]]:
        """Yield for each bay between neighboring stakes their names and its two diagonals: from the outer edge at the
        first to the inner one at the second, and the other way."""
        for (first, here), (last, there) in pairwise(self.shares):
            forth = distance(self.outer.point(here), self.inner.point(there))
            yield first, last, forth, distance(self.inner.point(here), self.outer.point(there))

    def of_neighbors(self, key: str) -> list[float]:
        """Return the distances from each mark of an edge to the stakes before and after its own."""
        found = []
        for (first, here), (last, there) in pairwise(self.shares):
            found += [distance(self.across(key, here), self.places[last])]
            found += [distance(self.across(key, there), self.places[first])]
        return found


def marks_of(plan: Plan) -> Marks:
    """Return the marks of a plan that has a slab; raises ``ValueError`` where there is none."""
    outer, inner = plan.edges
    outward = plan.layout.job.outward
    radius = plan.line.radius
    lines = {OUTSIDE: outer, INSIDE: inner}
    own = CENTER if _is_center(plan, outer, inner, outward) else STAKES
    yours = next((key for key, edge in lines.items() if edge.is_arc and _same(edge.first, outward, radius)), own)
    _board, thickness = board_of(plan)
    behind = {OUTSIDE: outward - outer.first, INSIDE: inner.first - outward}
    boarded, past = None, 0.0
    for key, off in behind.items():
        held = stands_behind(plan, off, thickness) if lines[key].is_arc else None
        if held is not None:
            boarded, past = key, held
    return Marks(outer, inner, Edge(plan.line, outward, outward), yours, boarded, plan.shares(), past)


def stands_behind(plan: Plan, off: float, thickness: float) -> float | None:
    """Return how far behind the back of an edge's board the stakes stand that hold it, metres; ``None`` where they
    hold none.

    ``off``: how far behind the edge they are set. A board's back is 0 behind itself; pins whose centers are set half a
    pin farther off hold it as well, with their edges.
    """
    job = plan.layout.job
    half = job.diameter / 2 if job.driven == "pin" and job.diameter else 0.0
    return next((past for past in (0.0, half) if _same(off, thickness + past, plan.line.radius)), None)


def _is_center(plan: Plan, outer: Edge, inner: Edge, outward: float) -> bool:
    """Tell whether the stakes stand halfway between the edges, all along."""
    middles = ((outer.first + inner.first) / 2, (outer.last + inner.last) / 2)
    return all(_same(middle, outward, plan.line.radius) for middle in middles)


def _same(one: float, other: float, radius: float) -> bool:
    return isclose(one, other, rel_tol=0, abs_tol=SAME * max(1.0, radius))
