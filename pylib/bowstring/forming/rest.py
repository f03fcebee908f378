"""What a band along all forms leaves of a slab that fills its curve, and how much of the band lies behind a front."""

from __future__ import annotations

from dataclasses import dataclass
from math import acos, asin, sin, sqrt, tan

from bowstring.forming.pad import Filled, Pad
from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc


@dataclass(frozen=True)
class Rest:
    """What is left: it lies under an arc of the same center that is smaller by the band, between lines so far inside.

    Attributes:
        curve: what is left under the arc; sides: how deep a rectangle as wide lies behind that, metres, 0 where none
            does; ends: how many ends are rounded.
        foot: how far off the slab's string it begins, metres, below 0 behind it.
    """

    curve: Segment
    sides: float
    ends: int
    foot: float

    @property
    def area(self) -> float:
        """Square metres."""
        return self.ends * self.curve.area + self.sides * self.curve.arc.chord

    def beside(self, aside: float) -> float:
        """Return the area from A's side to a line that far past the slab's middle along the string, square metres."""
        curve = self.curve
        share = min(max(0.5 + aside / curve.wide, 0.0), 1.0)
        return self.ends * curve.area_to(share) + self.sides * curve.arc.chord * share

    def behind(self, off: float) -> float:
        """Return the area from its foot to a line that far off the slab's string, square metres."""
        curve, deep = self.curve, self.curve.arc.sagitta
        far = deep if self.ends > 1 else 0.0
        gone = off - self.foot
        other = curve.area - self._cap(deep - gone) if far else 0.0
        other = self._cap(gone) if far and gone < deep else other
        between = min(max(gone - far, 0.0), self.sides) * curve.arc.chord
        front = gone - far - self.sides
        return other + between + (curve.area - self._cap(deep - front) if front > 0 else 0.0)

    def _cap(self, height: float) -> float:
        """The area of the curve's top, so high, metres."""
        radius = self.curve.arc.radius
        if height <= 0:
            return 0.0
        return Segment(Arc.of_angle(radius, acos(max(-1.0, 1 - height / radius)))).area


def rest_of(filled: Filled, wide: float) -> Rest | None:
    """Return what lies farther than ``wide`` metres from all forms, ``None`` where nothing does."""
    return of_pad(filled, wide) if isinstance(filled, Pad) else _of_segment(filled, wide)


def _of_segment(filled: Segment, wide: float) -> Rest | None:
    """A segment, too, over a string so far inside."""
    radius, over = filled.arc.radius - wide, wide - filled.center
    if radius <= abs(over):  # no circle of that radius meets that string
        return None
    return Rest(Segment(Arc.of_angle(radius, acos(over / radius))), 0.0, 1, wide)


def of_pad(pad: Pad, wide: float, *, backed: bool = True) -> Rest | None:
    """Return the same of a slab with straight sides; not ``backed``: the band leaves out what closes it at the back."""
    radius, half = pad.arc.radius - wide, pad.arc.chord / 2 - wide
    if half <= 0:
        return None
    meets = sqrt((radius - half) * (radius + half)) + pad.center  # the arc the lines at the sides
    back = -pad.sides / 2 if pad.both else (wide if backed else 0.0) - pad.sides
    foot = -pad.sides - pad.center - radius if pad.both else back
    if back < meets:
        curve = Segment(Arc.of_angle(radius, asin(min(1.0, half / radius))))
        return Rest(curve, (meets - back) * pad.ends, pad.ends, foot)
    if back >= pad.center + radius:
        return None
    return Rest(Segment(Arc.of_angle(radius, acos((back - pad.center) / radius))), 0.0, pad.ends, foot)


@dataclass(frozen=True)
class CurveBand:
    """What lies within a band along the rounded ends alone of a slab with straight sides.

    It ends square to the curve at A and B, where the sides begin, and where it is wider than the sides are long, at
    what closes them.

    Attributes:
        pad: the slab; wide: how wide the band is, metres.
    """

    pad: Pad
    wide: float

    @property
    def area(self) -> float:
        """Square metres."""
        return self.pad.ends * self._over(self._floor)

    def beside(self, aside: float) -> float:
        """Return the area from A's side to a line that far past the slab's middle along the string, square metres."""
        half = self.area / 2
        gone = self.pad.ends * (self._past(abs(aside), self.pad.arc.radius) - self._past(abs(aside), self._inner))
        return half + half - gone if aside > 0 else gone

    def behind(self, off: float) -> float:
        """Return the area from its foot to a line that far off the slab's string, square metres."""
        pad, one = self.pad, self._over(self._floor)
        other = self._over(max(-pad.sides - off, self._floor)) if pad.both else 0.0
        return other + one - self._over(max(off, self._floor))

    @property
    def _inner(self) -> float:
        return max(self.pad.arc.radius - self.wide, 0.0)

    @property
    def _floor(self) -> float:
        return -self.pad.sides / (2 if self.pad.both else 1)

    def _over(self, off: float) -> float:
        """The area past a line that far off the string."""
        off -= self.pad.center
        return self._sector(off, self.pad.arc.radius) - self._sector(off, self._inner)

    def _sector(self, off: float, radius: float) -> float:
        """That of a sector of the curve's angle past a line so far off its center."""
        half = self.pad.arc.half_angle
        if off >= radius:
            return 0.0
        if off <= 0:
            return radius * radius * half
        turn = acos(off / radius)
        if turn <= half:
            return radius * radius * turn - off * sqrt((radius - off) * (radius + off))
        return radius * radius * half - off * off * tan(half)

    def _past(self, aside: float, radius: float) -> float:
        """That of a sector past a line square to the string, so far to one side of its center."""
        half = self.pad.arc.half_angle
        if aside >= radius * sin(half):
            return 0.0
        turn = asin(aside / radius)
        edge = aside * aside / tan(half) - aside * sqrt((radius - aside) * (radius + aside))
        return (radius * radius * (half - turn) + edge) / 2


def left_of(filled: Filled, wide: float, along: str) -> Rest | None:
    """Return what a band leaves that runs along all forms, or (``sides``) leaves out what closes the sides."""
    if isinstance(filled, Pad) and not filled.both and along == "sides":
        return of_pad(filled, wide, backed=False)
    return rest_of(filled, wide)


def within(filled: Filled, wide: float, along: str = "all") -> float:
    """Return the area within ``wide`` metres of a form, square metres: of the curve, and of the string or the sides and
    what closes them; ``along``: of a slab with straight sides only so far round, a word of ``terms.EDGE_ALONG``.

    >>> half_round = Segment(Arc.of_angle(10.0, 1.5707963267948966))
    >>> round(within(half_round, 1.0), 3), within(half_round, 99.0) == half_round.area
    (47.808, True)
    """
    if isinstance(filled, Pad) and along == "curve":
        return CurveBand(filled, wide).area
    rest = left_of(filled, wide, along)
    return filled.area - (rest.area if rest else 0.0)


def within_to(filled: Filled, wide: float, share: float, *, back: bool, along: str = "all") -> float:
    """Return the area up to a front that lies within ``wide`` metres of a form, square metres.

    ``share``: of the width along the string from A's side; of the depth from its foot where the front comes from the
    ``back``, which takes straight sides; ``along`` as for ``within``.
    """
    if isinstance(filled, Pad) and along == "curve":
        band = CurveBand(filled, wide)
        return band.behind(filled.foot + share * filled.deep) if back else band.beside(filled.wide * (share - 0.5))
    rest = left_of(filled, wide, along)
    if back and isinstance(filled, Pad):
        gone = filled.area_from_back(share)
        return gone - (rest.behind(filled.foot + share * filled.deep) if rest else 0.0)
    return filled.area_to(share) - (rest.beside(filled.wide * (share - 0.5)) if rest else 0.0)
