"""Hubs outside the dig of a line: off its start, wherever two pieces meet, its end, and each stake of the staked arc.

All stand on one hand of the line and as far off it wherever that is clear of the concrete and its dig, whichever piece
it is of: past a bend another piece may be where the hubs of this one would stand.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from bowstring.forming.line.clear import clearance
from bowstring.forming.line.pieces import OTHER, Bend, Hand, sign_of
from bowstring.forming.line.runs import Pose, Run
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.plane import Point, distance
from bowstring.report.forming.edge_lines import dug_past
from bowstring.report.forming.in_dig import CLEAR, DUST, STEP, whole_off
from bowstring.report.lined.ground import LineGround
from bowstring.report.lined.plan import LinePlan

FARTHER = 10
"""Steps farther off that are tried where a hub would stand in the way."""

SAMPLES = 16
"""Parts of an arc at whose ends the hubs of all its stakes must be clear, wherever those stand, for one distance."""

SPARED = 0.5
"""Of the room that a hub has past its own piece's dig, the part that it must have past every other's: at a kink it
comes a little nearer to the next piece, and no crew changes hands for that."""

Reach = tuple[Hand, float]
"""On which hand of the line a hub stands, and how far off its mark, metres."""


@dataclass(frozen=True)
class Mark:
    """A place on the stakes' line from which a hub is set.

    Attributes:
        begins: the number, from 1, of the piece that begins there, 0 at the line's end and at a stake within an arc.
        square: the number, from 0, of the piece to which its hub is square; stake: its name where the staked arc has
            one there, else empty.
        pose: where it is, and which way that piece goes there.
    """

    begins: int
    square: int
    stake: str
    pose: Pose
    is_end: bool = True
    """Whether a piece begins or ends there."""


@dataclass(frozen=True)
class LineHub:
    """A hub: its mark, and how far off it stands on which hand; ``None`` where there is no room for it."""

    mark: Mark
    reach: Reach | None

    @property
    def point(self) -> Point | None:
        """Where it stands."""
        return None if self.reach is None else at(self.mark.pose, self.reach)


@dataclass(frozen=True)
class Stray:
    """Hubs that don't stand where most of the line's do.

    Attributes:
        number: from 0, of the arc whose hubs these are; ``None`` where it is ``hub`` alone.
        reach: where they stand, ``None`` where each of the arc's stands otherwise.
        hub: the one of an end; of an arc the one where it begins, if that stands apart from the arc's others.
    """

    number: int | None
    reach: Reach | None
    hub: LineHub | None


def at(pose: Pose, reach: Reach) -> Point:
    """Return the place so far off a pose, square to it."""
    hand, off = reach
    return pose.aside(sign_of(hand) * off).point


def left_of(hubs: LineHubs, miss: float) -> float:
    """Return how far to the left of its place a stake of the staked arc stands, metres, that is so far off it, positive
    away from the center."""
    return -sign_of(_staked(hubs.plan).hand) * miss


class LineHubs:
    """The hubs of a plan that has a slab."""

    def __init__(self, plan: LinePlan, slab: LineSlab) -> None:
        self.plan, self.slab, self.feet = plan, slab, plan.plan.layout.job.tape.feet
        self.past = dug_past(plan.plan)
        self.staked = plan.settled.said.at
        self.aside = aside_of(plan)
        self.ground = LineGround(plan)

    @cached_property
    def reaches(self) -> tuple[Reach, Reach]:
        """The least whole distance clear of the dig on each hand, the one that is taken first before the other: the
        nearer one, else the one that is outside of most of the line's bends."""
        reach: dict[Hand, float] = {"left": self.slab.left + self.past - self.aside,
                                    "right": self.slab.right + self.past + self.aside}  # fmt: skip
        off = {hand: whole_off(far, feet=self.feet) for hand, far in reach.items()}
        outer: Hand = "right" if sum(piece.turn for piece in self.plan.line.pieces) > 0 else "left"
        first: Hand = min(OTHER, key=lambda hand: (round(off[hand] / STEP[self.feet]), hand != outer))
        return (first, off[first]), (OTHER[first], off[OTHER[first]])

    @cached_property
    def choices(self) -> list[Reach]:
        """Where a hub may stand, the best first."""
        step = STEP[self.feet]
        return [
            *self.reaches,
            *((hand, off + more * step) for more in range(1, FARTHER + 1) for hand, off in self.reaches),
        ]

    @cached_property
    def all(self) -> list[LineHub]:
        """Every hub along the line, of marks that are dug out."""
        return [self._hub(mark) for mark in self._marks() if self._is_dug(mark)]

    @cached_property
    def of_arc(self) -> list[LineHub]:
        """Those of the staked arc's stakes, its ends among them."""
        return [hub for hub in self.all if hub.mark.stake]

    @cached_property
    def ends(self) -> list[LineHub]:
        """Those of the line's start, of wherever two pieces meet, and of its end."""
        return [hub for hub in self.all if hub.mark.is_end]

    @cached_property
    def free(self) -> list[LineHub]:
        """Those of ends at which no arc begins or ends: no arc's own card sets them."""
        return [hub for hub in self.ends if self._is_straight(hub.mark.square)]

    @cached_property
    def bare(self) -> list[LineHub]:
        """The places where no arc begins or ends, of a line whose stakes stand off it and clear of every dig."""
        if self.ends or not self.aside:
            return []
        return [LineHub(mark, None) for mark in self._marks() if mark.is_end and self._is_straight(mark.square)]

    @cached_property
    def alike(self) -> Reach | None:
        """Where the hubs of all ends and all arcs stand, ``None`` where they differ or none is set: the same whichever
        arc is staked."""
        if not self.ends:
            return None
        arcs = (number for number, piece in enumerate(self.plan.line.pieces) if isinstance(piece, Bend))
        found = {hub.reach for hub in self.ends} | {self.arc_reach(number) for number in arcs}
        return found.pop() if len(found) == 1 else None

    @cached_property
    def most(self) -> Reach:
        """Where most hubs of ends stand, the same whichever arc is staked."""
        found = Counter(hub.reach for hub in self.ends if hub.reach)
        return found.most_common(1)[0][0] if found else self.reaches[0]

    @cached_property
    def strays(self) -> list[Stray]:
        """The arcs, and the ends of pieces, whose hubs don't stand where most do."""
        return [*self._stray_arcs(), *self._stray_ends()]

    def _stray_arcs(self) -> Iterator[Stray]:
        begins = {hub.mark.begins - 1: hub for hub in self.ends}
        for number, piece in enumerate(self.plan.line.pieces):
            if not isinstance(piece, Bend):
                continue
            reach, first = self.arc_reach(number), begins.get(number)
            other = first if first and first.reach not in (None, reach) else None
            if reach != self.most:
                yield Stray(number, reach, other)
            elif other:
                yield Stray(None, other.reach, other)

    def _stray_ends(self) -> Iterator[Stray]:
        """Those of the ends at which no arc begins."""
        for hub in self.ends:
            at_arc = hub.mark.begins and not self._is_straight(hub.mark.begins - 1)
            if not at_arc and hub.reach not in (None, self.most, self.own_reach(hub)):
                yield Stray(None, hub.reach, hub)

    @cached_property
    def usual(self) -> Reach:
        """Where the hubs of the staked arc stand, but for those that have no room there."""
        return self.arc_reach(self.staked) or self.choices[0]

    def arc_reach(self, number: int) -> Reach | None:
        """Return where all hubs of an arc's stakes have room, wherever its stakes stand, ``None`` where there is no
        such place; ``number``: from 0."""
        if number not in self._reaches:
            run = self.plan.line.runs[number]
            places = [self._pose(run, part / SAMPLES) for part in range(SAMPLES + 1)]
            fit = (one for one in self.choices if self._all_free(places, run.curvature, one))
            self._reaches[number] = next(fit, None)
        return self._reaches[number]

    @cached_property
    def _reaches(self) -> dict[int, Reach | None]:
        return {}

    def own_reach(self, hub: LineHub) -> Reach | None:
        """Return where all hubs of the arc stand to which a hub is square, ``None`` at a straight."""
        return None if self._is_straight(hub.mark.square) else self.arc_reach(hub.mark.square)

    def apart(self, one: LineHub, other: LineHub) -> float | None:
        """Return how far one hub is from another, metres; ``None`` where no tape measures it."""
        here, there = one.point, other.point
        if here is None or there is None or not self.ground.tapeable(here, there):
            return None
        return distance(here, there)

    def _marks(self) -> Iterator[Mark]:
        line, last = self.plan.line, len(self.plan.line.pieces) - 1
        for number in range(last + 1):
            own = number == 0 or (self._is_straight(number - 1) and not self._is_straight(number))
            square = number if own else number - 1  # an arc's radius, else square to the piece before
            pose = self._pose(line.runs[square], 0.0 if own else 1.0)
            shares = self.plan.plan.shares() if number == self.staked else ()
            before = self.plan.plan.shares()[-1][0] if number - 1 == self.staked else ""
            yield Mark(number + 1, square, shares[0][0] if shares else before, pose)
            for name, share in shares[1:-1]:
                yield Mark(0, number, name, self._pose(line.runs[number], share), is_end=False)
        end = self.plan.plan.shares()[-1][0] if last == self.staked else ""
        yield Mark(0, last, end, self._pose(line.runs[last], 1.0))

    def _pose(self, run: Run, share: float) -> Pose:
        """The place on the stakes' line at a share of a piece."""
        return run.at(share * run.length).aside(self.aside)

    def _is_straight(self, number: int) -> bool:
        return not isinstance(self.plan.line.pieces[number], Bend)

    def _is_dug(self, mark: Mark) -> bool:
        return clearance(self.slab, mark.pose.point) <= self.past + DUST

    def _hub(self, mark: Mark) -> LineHub:
        curvature = self.plan.line.runs[mark.square].curvature
        own = None if self._is_straight(mark.square) else self.arc_reach(mark.square)
        tried = [*([own] if own else []), *self.choices]
        free = (one for one in tried if self._is_free(mark.pose, curvature, one))
        return LineHub(mark, next(free, None))

    def _all_free(self, places: list[Pose], curvature: float, reach: Reach) -> bool:
        """Whether hubs have room at each of an arc's places, and what stands between two of them takes none either."""
        return self.ground.clear([at(pose, reach) for pose in places]) and all(
            self._is_free(pose, curvature, reach) for pose in places
        )

    def _is_free(self, pose: Pose, curvature: float, reach: Reach) -> bool:
        """Whether a hub has room: clear of every piece's dig, not at its arc's center or behind it, nothing there."""
        hand, off = reach
        toward, clear = curvature * sign_of(hand), CLEAR[self.feet]
        if toward > 0 and 1 / toward - sign_of(hand) * self.aside - off < self.past + clear:
            return False
        point = at(pose, reach)
        near = clearance(self.slab, point) < self.past + SPARED * clear - DUST
        return not near and self.ground.stands(point)


def aside_of(plan: LinePlan) -> float:
    """Return how far to the left of the line the stakes stand, metres."""
    return -sign_of(_staked(plan).hand) * plan.plan.layout.job.outward


def _staked(plan: LinePlan) -> Bend:
    piece = plan.line.pieces[plan.settled.said.at]
    if not isinstance(piece, Bend):
        raise ValueError("an arc is staked")
    return piece


def hubs_along(plan: LinePlan) -> LineHubs | None:
    """Return the hubs of a plan, ``None`` before there is a slab."""
    return None if plan.slab is None or plan.asks or plan.plan.slab is None else LineHubs(plan, plan.slab)
