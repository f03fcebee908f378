"""Checks: distances that no step measured, and what each can see.

A check's mark is a stake, the middle between two stakes, or a foot on the long chord; so it moves with the stakes by
known weights, and how far the distance may be out follows from how far the stakes may stand off the arc.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from bowstring.construction import Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, middle, unit_vector

Weights = Mapping[str, float]

SAME_PLACE = 1e-6
"""Metres: two marks nearer than this are one place on the ground."""


@dataclass(frozen=True)
class Check:
    """A distance to measure when the stakes stand.

    Attributes:
        kind: ``half`` (of the whole arc, where no step halves), ``alternate``, ``ordinate``, ``cross``, ``gap``,
            ``closing`` or ``external``.
        start, end: the names of its marks.
        distance: metres.
        per_tolerance: how far the distance is out, in metres, when each stake is one metre off across the arc: the
            sum of |d distance / d across| over the stakes that it touches.
        along: metres from A on the long chord to the foot of an ordinate, else ``None``.
        level: the level whose stake it looks at.
        way: the direction from its first mark to the other.
        follows: by how much it goes along that when each of these marks, stakes and others, does.
        inside: it is read off a string, and its stake stands on that side of it to which the arc doesn't bulge.
    """

    kind: str
    start: str
    end: str
    distance: float
    per_tolerance: float
    along: float | None
    level: int
    way: Point
    follows: Weights
    inside: bool = False

    @property
    def key(self) -> str:
        """What a reading of it is kept by: ``A-Q2``, ``R2-R3-M`` over a string, ``foot-R2`` off the string A to B."""
        if self.along is not None:
            return f"foot-{self.end}"
        return f"{self.start.removeprefix('mid ')}-{self.end}"


class Marked:
    """The stakes and what is marked between them, each with the weights by which it follows the stakes."""

    def __init__(self, arc: Arc, stakes: Sequence[Stake], at: Mapping[str, Point]) -> None:
        self.at = dict(at)
        self.weights: dict[str, Weights] = {stake.name: {stake.name: 1.0} for stake in stakes}
        self.on_chord: dict[str, Weights] = {}
        self.chord = arc.chord
        # Across the arc at each stake: outward along its radius.
        self.across = {stake.name: unit_vector(arc.centre, at[stake.name]) for stake in stakes}

    def between(self, first: str, second: str) -> str:
        name = f"mid {first}-{second}"
        self.at[name] = middle(self.at[first], self.at[second])
        self.weights[name] = {first: 0.5, second: 0.5}
        return name

    def foot(self, stake: str) -> str:
        """A foot on the string A to B; a step's foot of that name on another string keeps its own place."""
        name, place = f"foot {stake}", Point(self.at[stake].x, 0.0)
        if name in self.at and distance(self.at[name], place) > SAME_PLACE:
            name += " on A-B"
        self.at[name] = place
        part = self.at[stake].x / self.chord
        self.weights[name], self.on_chord[name] = {}, {"A": 1 - part, "B": part}
        return name

    def check(self, kind: str, start: str, end: str, level: int, along: float | None = None) -> Check:
        line = unit_vector(self.at[start], self.at[end])
        pulls: dict[str, float] = {}
        for mark, sign in ((start, -1.0), (end, 1.0)):
            for stake, weight in self.weights.get(mark, {}).items():
                pulls[stake] = pulls.get(stake, 0.0) + sign * weight * line.dot(self.across[stake])
        per_tolerance = sum(abs(pull) for pull in pulls.values())
        length = distance(self.at[start], self.at[end])
        off_string = kind in ("alternate", "ordinate")
        inside = off_string and line.dot(self.bulge(start, end)) < 0
        return Check(kind, start, end, length, per_tolerance, along, level, line, self._follows(start, end), inside)

    def bulge(self, start: str, end: str) -> Point:
        """The direction in which the arc bulges from the string on which a check's first mark is."""
        return Point(0.0, 1.0) if start in self.on_chord else self.across[end]

    def _follows(self, start: str, end: str) -> Weights:
        """Like the pulls, but for whole shifts, and for what the crew's string is stretched between too."""
        follows: dict[str, float] = {}
        for mark, sign in ((start, -1.0), (end, 1.0)):
            held = self.on_chord.get(mark) or self.weights.get(mark) or {mark: 1.0}
            for other, weight in held.items():
                follows[other] = follows.get(other, 0.0) + sign * weight
        return follows


def find_checks(
    arc: Arc, stakes: Sequence[Stake], at: Mapping[str, Point]
) -> tuple[tuple[Check, ...], Mapping[str, Point]]:
    """Return the checks of a halved arc and every mark, those of the checks included.

    ``stakes`` from A to B, ``at`` where all marks stand. In order: middle ordinates over alternate stakes; ordinates of
    the quarter stakes from the long chord; the two equal long crossings; the corner's external. Half chords are none:
    each step that slides its tip reads them.
    """
    marks = Marked(arc, stakes, at)
    checks = [
        *_alternates(marks, stakes),
        *_ordinates(marks, stakes, arc.chord),
        *_crossings(marks, stakes),
    ]
    if "P" in at:
        checks.append(marks.check("external", "P", "M", 1))
    return tuple(checks), marks.at


def _alternates(marks: Marked, stakes: Sequence[Stake]) -> Iterator[Check]:
    """At stakes of the older levels: at the last level's own stakes a step measured just this."""
    last = max(stake.level for stake in stakes)
    for before, here, after in zip(stakes, stakes[1:], stakes[2:], strict=False):
        if here.level < last:
            yield marks.check("alternate", marks.between(before.name, after.name), here.name, here.level)


def _ordinates(marks: Marked, stakes: Sequence[Stake], chord: float) -> Iterator[Check]:
    for stake in stakes:
        x = marks.at[stake.name].x
        if stake.level in (2, 3) and 0 < x < chord:
            yield marks.check("ordinate", marks.foot(stake.name), stake.name, stake.level, along=x)


def _crossings(marks: Marked, stakes: Sequence[Stake]) -> Iterator[Check]:
    names = {stake.name for stake in stakes}
    if {"Q1", "Q2"} <= names:
        yield marks.check("cross", "A", "Q2", 2)
        yield marks.check("cross", "Q1", "B", 2)
