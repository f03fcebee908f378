"""Where the stakes of a method stand: at halves of the arc, at equal parts of it, at equal steps along a line.

A kind of place says which stakes it makes, and which of a job's wishes mean anything for them.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import asin, ceil

from bowstring.construction import Stake
from bowstring.geometry.arc import Arc
from bowstring.methods.halving import stakes_of
from bowstring.methods.parallel import overhangs
from bowstring.methods.rounds import round_offsets, round_ordinates
from bowstring.methods.setting import (
    FITS,
    MOST_STAKES,
    STAKE_LETTER,
    NoSuchStakes,
    Setting,
    along_chord,
    chord_fractions,
    counted,
    equal_gaps,
    fewest_equal,
    tangent_fractions,
    widest_gap,
)


@dataclass(frozen=True)
class Wanted:
    """Which stakes are asked for.

    Attributes:
        levels: 2^levels gaps, where no ``spacing`` is asked for.
        spacing: metres: the fewest gaps that keep every straight gap within it.
        stations: metres along the chord from A; they stand in for both where they can be chosen.
        first_gap: metres: the first gap is that long, the others ``spacing``, and the last whatever is left.
    """

    levels: int
    spacing: float | None = None
    stations: Sequence[float] = ()
    first_gap: float | None = None


class Stand(ABC):
    """Where stakes stand.

    Attributes:
        halves: they come level by level, each in the middle of two older ones; there are always 2^levels gaps.
        alike: all straight gaps are alike.
        first_gap: the first gap can be chosen; stations: the stakes can be; halve_first: so can how often the arc is
            halved before; parallel: so can a parallel string.
    """

    halves = False
    alike = False
    first_gap = False
    stations = False
    halve_first = False
    parallel = False

    def rounds(self, setting: Setting) -> bool:
        """Whether its stakes stand at round distances in this setting, where the job asks for no others."""
        return False

    @abstractmethod
    def stakes(self, setting: Setting, wanted: Wanted) -> tuple[Stake, ...]:
        """Return the stakes from A to B, both included.

        Raises ``NoSuchStakes`` where that takes more stakes than anybody drives.
        """


class Halves(Stand):
    """At halves of the arc, of its halves, and so on."""

    halves = True
    alike = True

    def stakes(self, setting: Setting, wanted: Wanted) -> tuple[Stake, ...]:
        return stakes_of(wanted.levels)


class EqualParts(Stand):
    """At equal parts of the arc."""

    alike = True
    first_gap = True

    def stakes(self, setting: Setting, wanted: Wanted) -> tuple[Stake, ...]:
        arc, spacing = setting.arc, wanted.spacing
        if wanted.first_gap is not None and spacing is not None:
            return counted(_stepped(arc, wanted.first_gap, spacing))
        return counted(equal_gaps(2**wanted.levels if spacing is None else fewest_equal(arc, spacing)))


class AlongChord(Stand):
    """Over equal steps or round distances along the chord, or along each of the smaller chords that halving before
    leaves; past a half circle at equal parts of the arc."""

    stations = True
    halve_first = True
    parallel = True

    def rounds(self, setting: Setting) -> bool:
        return setting.rounds is not None and not setting.halve_first and not overhangs(setting)

    def stakes(self, setting: Setting, wanted: Wanted) -> tuple[Stake, ...]:
        arc = setting.arc
        if wanted.stations:
            return counted([along_chord(arc, x) for x in sorted(set(wanted.stations))])
        if setting.halve_first:
            return _halved_first(arc, setting.halve_first, wanted)
        if overhangs(setting):
            # Equal steps along the chord would leave out what stands beyond its ends.
            return EQUAL.stakes(setting, wanted)
        if setting.rounds:
            return round_ordinates(setting, setting.rounds)
        return counted(chord_fractions(arc, _fewest(arc, wanted.levels, wanted.spacing, chord_fractions)))


class AlongTangent(Stand):
    """At equal steps or round distances along the tangent at an end, or half of them along each."""

    def rounds(self, setting: Setting) -> bool:
        return setting.rounds is not None

    def stakes(self, setting: Setting, wanted: Wanted) -> tuple[Stake, ...]:
        def at(arc: Arc, gaps: int) -> list[float]:
            return tangent_fractions(arc, gaps, setting.tangent_from)

        if setting.rounds:
            return round_offsets(setting, setting.rounds)
        arc, both = setting.arc, setting.tangent_from == "both"
        return counted(at(arc, _fewest(arc, wanted.levels, wanted.spacing, at, even=both)))


HALVES, EQUAL, CHORD, TANGENT = Halves(), EqualParts(), AlongChord(), AlongTangent()


def _halved_first(arc: Arc, times: int, wanted: Wanted) -> tuple[Stake, ...]:
    """The stakes of ``times`` levels of halving, with those at equal steps along each smaller chord between them."""
    halved, pieces = stakes_of(times), 2**times
    smaller = arc.part(pieces)
    levels = max(wanted.levels - times, 0)
    steps = chord_fractions(smaller, _fewest(smaller, levels, wanted.spacing, chord_fractions, least=1))
    stakes, number = [halved[0]], 0
    for piece, last in enumerate(halved[1:]):
        for part in steps:
            number += 1
            stakes.append(Stake(f"{STAKE_LETTER}{number}", 1, (piece + part) / pieces))
        stakes.append(last)
    return tuple(stakes)


def _stepped(arc: Arc, first: float, spacing: float) -> list[float]:
    """Fractions whose straight gaps are ``first``, then ``spacing``, from A as far as they go."""
    total = 2 * arc.half_angle
    at, step = _angle_over(arc, first) / total, _angle_over(arc, spacing) / total
    count = max(ceil((1 - at) / step - 1e-9), 0)
    if count > MOST_STAKES:
        raise NoSuchStakes(arc.part(MOST_STAKES).chord)
    return [part for number in range(count) if (part := at + number * step) < 1 - 1e-9]


def _angle_over(arc: Arc, chord: float) -> float:
    return 2 * asin(min(chord / (2 * arc.radius), 1.0))


def _fewest(
    arc: Arc,
    levels: int,
    spacing: float | None,
    at: Callable[[Arc, int], list[float]],
    even: bool = False,
    least: int = 2,
) -> int:
    """Return how many steps along a line keep every straight gap within ``spacing``, or as many as ``levels`` make.

    ``least``: two where one would set no stake.
    """
    step = 2 if even else 1
    if spacing is None:
        return int(2**levels)
    low, high = least - step, least  # low: too few
    while widest_gap(arc, at(arc, high)) > spacing * FITS:
        low, high = high, high * 2
        if high > MOST_STAKES:
            raise NoSuchStakes(widest_gap(arc, at(arc, MOST_STAKES)))
    while high - low > step:
        between = (low + high) // 2 // step * step
        if between == low:
            between += step
        if widest_gap(arc, at(arc, between)) > spacing * FITS:
            low = between
        else:
            high = between
    return high
