"""Keeping each sagitta square to its chord, and what a small mistake in that does.

A tip that slips sideways by e along the arc stays on it to second order (e^2/2R off), so the stake itself hardly
shows it. But its two half chords then differ, and the next level's sagitta, made for equal ones, is wrong on both:
that is where the slip comes out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from math import hypot, inf, radians, sin, tan

from bowstring.geometry.arc import Arc
from bowstring.units.sizes import FOOT, FOUR_FEET, INCH
from bowstring.units.tape import Tape

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

UNIT_LEG = {"ft-in": FOOT, "ft": FOOT, "m": 0.1, "mm": 0.1}
"""Metres: whole-number triangles are built of these."""

TALL = {"ft-in": FOOT, "ft": FOOT, "m": 0.3, "mm": 0.3}
"""Metres: an offset up to this is squared by a framing square."""

MANY = 1000
"""Times a triangle's unit that nothing on the ground reaches."""

Fits = Callable[[float, float], bool]
"""Whether a triangle with these legs, along the string and out, metres, finds room on the ground."""


@dataclass(frozen=True)
class Kit:
    """What a crew squares with, metres: the unit of which whole-number triangles are built, the framing square's
    ``blade`` on the string, the offset up to which that is ``enough``, and how long the ``tape`` is."""

    unit_leg: float = FOOT
    blade: float = SQUARE_BLADE
    enough: float = FOOT
    tape: float = inf


def kit_of(tape: Tape, length: float = inf) -> Kit:
    """Return what a crew with such a tape, ``length`` metres long, squares with."""
    return Kit(UNIT_LEG[tape.unit], SQUARE_BLADE if tape.feet else METRIC_BLADE, TALL[tape.unit], length)


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


def squaring_of(
    arc: Arc, mark: float, unit_leg: float, blade: float = SQUARE_BLADE, fits: Fits | None = None
) -> Squaring:
    """Return how to keep the sagitta of ``arc`` square on a tape with marks ``mark`` metres apart.

    ``unit_leg`` is the length in metres of which whole-number triangles are built (a foot, a tenth of a metre),
    ``blade`` how long the framing square's blade on the string is, metres; only a triangle that ``fits`` is told.
    """
    half, sagitta = arc.chord / 2, arc.sagitta
    half_chord = hypot(half, sagitta)
    whole = (one for one in whole_triangles(half, sagitta, unit_leg) if one.out >= sagitta * (1 - 1e-9))
    triangle = _first(whole, fits) or _first(_computed(half, sagitta, mark, unit_leg), fits)
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


def whole_triangles(room: float, offset: float, unit_leg: float, tape: float = inf) -> list[Triangle]:
    """Return the whole-number triangles at hand for an offset on a string with ``room`` metres from the foot, metres,
    no side of them longer than the ``tape``.

    Those that reach the stake come first, of these the one first whose leg out turns least for a mark in its long side.

    >>> best = whole_triangles(10.0, 3.0, 1.0)[0]
    >>> best.along, best.out, best.whole
    (4.0, 3.0, '3-4-5')
    """
    most = max(ROOM_PAST * offset, LEAST_ROOM)
    found = []
    for a, b, c, shape in _shapes():
        sides = ((min(room, LONGEST_LEG), a), (most, b), (tape, c))
        times = min(int(most_side / (side * unit_leg) + 1e-9) if most_side < inf else MANY for most_side, side in sides)
        for time in range(times, 0, -1):
            side = time * unit_leg
            found.append(Triangle(a * side, b * side, c * side, shape, 0.0))
    return sorted(found, key=lambda one: (one.out < offset * (1 - 1e-9), round(one.turn, 9)))


def _first(triangles: Iterable[Triangle], fits: Fits | None) -> Triangle | None:
    return next((one for one in triangles if fits is None or fits(one.along, one.out)), None)


def _shapes() -> Iterator[tuple[int, int, int, str]]:
    for a, b, c in WHOLE:
        yield a, b, c, f"{a}-{b}-{c}"
        yield b, a, c, f"{a}-{b}-{c}"


def _computed(half: float, sagitta: float, mark: float, unit_leg: float) -> Iterator[Triangle]:
    """Triangles with the sagitta itself as one leg and a round leg along the chord, their long side to the nearest
    mark; the longest first."""
    for times in range(int(min(half, LONGEST_LEG) / unit_leg + 1e-9), 0, -1):
        along = times * unit_leg
        exact = hypot(along, sagitta)
        held = round(exact / mark) * mark
        yield Triangle(along, sagitta, exact, None, abs(held - exact) * exact / along)
