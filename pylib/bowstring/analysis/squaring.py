"""Keeping each sagitta square to its chord, and what a small mistake in that does.

A tip that slips sideways by e along the arc stays on it to second order (e^2/2R off), so the stake itself hardly
shows it. But its two half chords then differ, and the next level's sagitta, made for equal ones, is wrong on both:
that is where the slip comes out.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot, radians, sin, tan

from bowstring.geometry.arc import Arc
from bowstring.units.sizes import FOOT, FOUR_FEET, INCH

WHOLE = ((3, 4, 5), (5, 12, 13), (8, 15, 17))
"""Right triangles of whole numbers that a crew uses (common practice, no source)."""

BY_EYE = radians(3)
"""How far off square a line set by eye may be (common practice, no source)."""

SQUARE_BLADE = 24 * INCH
"""Metres: the 24-in blade of a framing square (common practice, no source)."""

METRIC_BLADE = 0.6
"""Metres: the 600-mm blade of a metric one (common practice, no source)."""

LONGEST_LEG = 30 * FOOT
"""Metres (30 ft): a longer leg of a squaring triangle gains little and wants another tape."""

ROOM_PAST = 1.25
"""How far past the stake a leg out may reach, as a part of the sagitta."""

LEAST_ROOM = FOUR_FEET
"""Metres (4 ft): a leg out past the stake may always be this long."""


@dataclass(frozen=True)
class SideSlip:
    """What a small mistake does.

    Attributes:
        aside: metres that the tip slips along the arc.
        here: metres that this stake then stands off the arc (inside).
        next_level: metres that the next level's stakes stand off it.
    """

    aside: float
    here: float
    next_level: float


@dataclass(frozen=True)
class Triangle:
    """A right triangle with its corner at the chord's middle.

    Attributes:
        along, out, long_side: metres.
        whole: its shape in whole numbers like ``3-4-5``, or ``None``.
        rounding: metres that the tip is aside because the long side is held to a mark.
    """

    along: float
    out: float
    long_side: float
    whole: str | None
    rounding: float

    @property
    def turn(self) -> float:
        """Radians by which the leg out turns for each metre that the long side is wrong."""
        return self.long_side / (self.along * self.out)


@dataclass(frozen=True)
class Squaring:
    """The ways to keep one level's sagitta square, best first: slide the tip, a triangle, a square or the eye."""

    half: float
    sagitta: float
    half_chord: float
    slide: SideSlip
    triangle: Triangle | None
    triangle_slip: SideSlip | None
    square: SideSlip
    eye: SideSlip


def slip(arc: Arc, aside: float) -> SideSlip:
    """Return what ``aside`` metres of sideways slip at the tip of an arc's sagitta does.

    ``arc`` is the part of the arc over the chord that is being halved.
    """
    turned = aside / arc.radius
    here = aside * aside / (2 * arc.radius)
    # The longer half's own sagitta, R (1 - cos), against the one made for equal halves.
    next_level = 2 * arc.radius * sin(arc.half_angle / 2 + turned / 4) * sin(turned / 4)
    return SideSlip(aside, here, next_level)


def squaring_of(arc: Arc, mark: float, unit_leg: float, blade: float = SQUARE_BLADE) -> Squaring:
    """Return how to keep the sagitta of ``arc`` square on a tape with marks ``mark`` metres apart.

    ``unit_leg`` is the length in metres of which whole-number triangles are built (a foot, a tenth of a metre),
    ``blade`` how long the framing square's blade on the string is, metres.
    """
    half, sagitta = arc.chord / 2, arc.sagitta
    half_chord = hypot(half, sagitta)
    triangle = _whole(half, sagitta, unit_leg) or _computed(half, sagitta, mark, unit_leg)
    triangle_slip = None
    if triangle:
        # One mark wrong in the long side turns the leg out, and the tip with it.
        aside = mark * triangle.turn * sagitta + triangle.rounding
        triangle_slip = slip(arc, aside)
        if aside > sagitta * tan(BY_EYE):
            triangle = triangle_slip = None  # so flat that a mark in the long side is worse than the eye
    return Squaring(
        half,
        sagitta,
        half_chord,
        # The two readings differ by twice the slip's part along them; a mark's difference is just seen.
        slip(arc, mark / 2 * half_chord / half),
        triangle,
        triangle_slip,
        slip(arc, sagitta * mark / blade),
        slip(arc, sagitta * tan(BY_EYE)),
    )


def legs_at_hand(room: float, offset: float) -> tuple[float, float]:
    """Return the legs in metres of a squaring triangle: along a string with ``room`` from the foot, and out past
    ``offset``."""
    along = min(room, LONGEST_LEG)
    return along, min(max(offset, LEAST_ROOM), max(along, offset), LONGEST_LEG)


def triangle_at(room: float, offset: float, unit_leg: float) -> tuple[float, float, str] | None:
    """Return the legs in metres, along the string and out, of the largest whole-number triangle at hand for an offset
    on a string with ``room`` metres from the foot, and its shape; ``None`` where there is none.

    >>> triangle_at(10.0, 3.0, 1.0)
    (4.0, 3.0, '3-4-5')
    """
    found = _whole(room, min(offset, LONGEST_LEG), unit_leg)
    return (found.along, found.out, found.whole or "") if found else None


def turn_of_square(room: float, offset: float, read: float, blade: float) -> float:
    """Return the standard deviation in radians of a direction that is squared off a string.

    By a triangle with legs a, b and long side c, each taped with a reading error ``read`` at both ends: the angle turns
    by (c dc - a da - b db)/(a b), so its deviation is 2 c read/(a b), since c² = a² + b². The tape's scale cancels. The
    legs are what is at hand: along the string up to 30 ft and the ``room`` metres there, out to the stake or 4 ft (at
    most as far again as along); where the string is shorter than a framing square's ``blade`` the blade is what turns.
    """
    along, out = legs_at_hand(room, offset)
    if along < blade:
        return 2 * read / blade
    return min(2 * hypot(along, out) * read / (along * out), 2 * read / blade)


def _shapes() -> Iterator[tuple[int, int, int, str]]:
    for a, b, c in WHOLE:
        yield a, b, c, f"{a}-{b}-{c}"
        yield b, a, c, f"{a}-{b}-{c}"


def _whole(half: float, sagitta: float, unit_leg: float) -> Triangle | None:
    """The whole-number triangle that fits the half chord, reaches the stake, and turns least for a mark in its
    long side."""
    room = max(ROOM_PAST * sagitta, LEAST_ROOM)
    best: Triangle | None = None
    for a, b, c, shape in _shapes():
        times = int(min(half, LONGEST_LEG) / (a * unit_leg) + 1e-9)
        times = min(times, int(room / (b * unit_leg) + 1e-9))
        side = times * unit_leg
        if times and b * side >= sagitta * (1 - 1e-9):
            found = Triangle(a * side, b * side, c * side, shape, 0.0)
            if best is None or found.turn < best.turn * (1 - 1e-9):
                best = found
    return best


def _computed(half: float, sagitta: float, mark: float, unit_leg: float) -> Triangle | None:
    """A triangle with the sagitta itself as one leg and a round leg along the chord, its long side to the nearest
    mark."""
    times = int(min(half, LONGEST_LEG) / unit_leg + 1e-9)
    along = times * unit_leg
    if not times:
        return None
    exact = hypot(along, sagitta)
    held = round(exact / mark) * mark
    return Triangle(along, sagitta, exact, None, abs(held - exact) * exact / along)
