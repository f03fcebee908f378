"""What a method is given: the arc to stake, where its stakes belong, and what is on the ground already."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from math import asin, ceil, sin

from bowstring.construction import Stake
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance

MOST_STAKES = 4096
"""The most gaps between stakes: as many as twelve levels of halving make."""

FITS = 1 + 1e-12
"""A gap that equals the spacing to the last digit keeps it."""

STAKE_LETTER = "K"
"""Stakes that are counted along the arc: none of the letters of halving, no letter of a mark."""


class NoSuchStakes(ValueError):
    """The spacing asked for would take more stakes than anybody drives; ``gap`` is the least gap, metres."""

    def __init__(self, gap: float) -> None:
        super().__init__()
        self.gap = gap


@dataclass(frozen=True)
class Parallel:
    """A string parallel to the chord A-B.

    Attributes:
        distance: metres from the chord toward the curve, negative behind the chord.
        squared: both its ends are squared off the string A-B; otherwise two tapes from A and B cross there.
        proved: a tape reaches from one of its ends to the other.
        fine: metres: what is no farther from it stands on it, as far as a tape can tell.
        lost: the end, ``A`` or ``B``, whose diagonal something blocks: its corner is set last, from the other corner.
        sight: what proves that one then: the end from which it is taped to a mark on the string, and how far along
            the string from that corner the mark is, as a part of it.
    """

    distance: float
    squared: bool = False
    proved: bool = True
    fine: float = 0.0
    lost: str = ""
    sight: tuple[str, float] = ("", 0.0)


@dataclass(frozen=True)
class Rounds:
    """Round distances along a line.

    Attributes:
        gap: metres: how wide a straight gap may be.
        feet: they are round in feet and inches; otherwise in metres.
    """

    gap: float
    feet: bool


@dataclass(frozen=True)
class Setting:
    """What the recipes of the methods work from.

    Attributes:
        arc: the arc on which the stakes stand, metres and radians.
        straights: the marks on the tangents at A and at B that are there already (``S``, ``P``), ``None`` where there
            are none or where they belong to another line than the staked one. With each, whether it lies ahead of the
            end on the curve's side of it (``P``) or behind it (``S``).
        known: marks that exist, by name, in the frame of the chord.
        tangent_from: the ends from whose tangents offsets are taken: ``A``, ``B`` or ``both``.
        tapes_from: the two marks at which two tapes are held.
        halve_first: how often the arc is halved before ordinates are taken from each smaller chord.
        crossed: the stakes of halving that are set by their short chords alone.
        centre_reachable: whether a peg can stand at the arc's centre.
        control: the mark under the instrument and the one it is set on, for coordinates.
        parallel: the string that ordinates are taken from, ``None`` for the chord itself.
        rounds: at which round distances stakes along a line stand; ``None``: at equal steps.
    """

    arc: Arc
    straights: Mapping[str, tuple[str, bool]] = field(default_factory=dict)
    known: Mapping[str, Point] = field(default_factory=dict)
    tangent_from: str = "both"
    tapes_from: tuple[str, str] = ("A", "B")
    control: tuple[str, str] = ("A", "B")
    halve_first: int = 0
    centre_reachable: bool = False
    crossed: Collection[str] = ()
    parallel: Parallel | None = None
    rounds: Rounds | None = None

    def ordinates_from(self, halve_first: int, parallel: Parallel | None) -> Setting:
        """Return this setting with its ordinates taken from each smaller chord that so many rounds of halving leave, or
        else from a string parallel to the chord."""
        return self._with(halve_first=halve_first, parallel=None if halve_first else parallel)

    def in_equal_steps(self) -> Setting:
        """Return this setting with its stakes at equal steps along a line."""
        return self._with(rounds=None)

    def _with(self, **changes: object) -> Setting:
        return Setting(**{**vars(self), **changes})

    def crossing(self, stakes: Collection[str]) -> Setting:
        """Return this setting with these stakes of halving set by their short chords alone."""
        return self._with(crossed=stakes)

    def place(self, mark: str) -> Point:
        """Return where an end or a known mark is."""
        if mark == "A":
            return Point(0.0, 0.0)
        return Point(self.arc.chord, 0.0) if mark == "B" else self.known[mark]


def counted(fractions: Sequence[float]) -> tuple[Stake, ...]:
    """Return the stakes at these fractions of the arc's length, with both ends."""
    inner = (Stake(f"{STAKE_LETTER}{number}", 1, fraction) for number, fraction in enumerate(fractions, 1))
    return (Stake("A", 0, 0.0), *inner, Stake("B", 0, 1.0))


def equal_gaps(gaps: int) -> list[float]:
    """Return the fractions between the ends of so many equal parts."""
    return [number / gaps for number in range(1, gaps)]


def fewest_equal(arc: Arc, spacing: float) -> int:
    """Return the fewest equal parts of an arc whose chords are at most ``spacing`` metres, at least two: one would set
    no stake. Raises ``NoSuchStakes``.

    >>> fewest_equal(Arc.of_angle(10.0, 0.5), 2.0)  # 10 m of arc
    5
    """
    widest = spacing * FITS
    reach = min(widest / (2 * arc.radius), 1.0)
    gaps = max(ceil(arc.half_angle / asin(reach)) - 1, 2)
    while gaps <= MOST_STAKES and 2 * arc.radius * sin(arc.half_angle / gaps) > widest:
        gaps += 1
    if gaps > MOST_STAKES:
        raise NoSuchStakes(arc.part(MOST_STAKES).chord)
    return gaps


def along_chord(arc: Arc, x: float) -> float:
    """Return the part of the arc's length at which it stands over ``x`` metres of its chord; up to a half circle."""
    sine = (x - arc.chord / 2) / arc.radius
    return min(max((asin(min(max(sine, -1.0), 1.0)) / arc.half_angle + 1) / 2, 0.0), 1.0)


def along_tangent(arc: Arc, x: float) -> float:
    """Return the fraction of the arc's length at which it stands over ``x`` metres of the tangent at A."""
    return min(asin(min(x / arc.radius, 1.0)) / (2 * arc.half_angle), 1.0)


def tangent_fractions(arc: Arc, gaps: int, tangent_from: str) -> list[float]:
    """Return the fractions of stakes at equal steps along the tangents; ``both``: half of the gaps along each."""
    if tangent_from == "both":
        half = gaps // 2
        reach = arc.chord / 2
        first = [along_tangent(arc, reach * step / half) for step in range(1, half)]
        return [*first, 0.5, *(1 - part for part in reversed(first))]
    reach = 2 * arc.radius * arc.sine * arc.cosine  # R sin I
    steps = [along_tangent(arc, reach * step / gaps) for step in range(1, gaps)]
    return steps if tangent_from == "A" else [1 - part for part in reversed(steps)]


def chord_fractions(arc: Arc, gaps: int) -> list[float]:
    """Return the fractions of stakes at equal steps along the chord, alike from both ends."""
    steps = [along_chord(arc, arc.chord * step / gaps) for step in range(1, (gaps + 1) // 2)]
    middle = [0.5] if gaps % 2 == 0 else []
    return [*steps, *middle, *(1 - part for part in reversed(steps))]


def widest_gap(arc: Arc, fractions: Sequence[float]) -> float:
    """Return the longest straight way in metres between neighbours at these fractions, the ends included."""
    points = [arc.point_at(part) for part in (0.0, *fractions, 1.0)]
    return max(distance(one, other) for one, other in pairwise(points))
