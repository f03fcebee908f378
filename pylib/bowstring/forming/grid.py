"""Joints of a slab that fills its curve: straight, square to its string and along it, in panels near to square."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import acos, asin, ceil, cos, pi, radians

from bowstring.forming.joints import LEAST_CORNER, NARROW, RATIO, is_past, spread
from bowstring.forming.pad import Filled, Pad
from bowstring.forming.segment import Segment

DUST = 1e-9


@dataclass(frozen=True)
class GridJoint:
    """A straight joint.

    Attributes:
        at: along the string from where the slab begins, of one that is square to it; off the string, of one along it,
            below 0 behind it.
        arc: where it meets the curve, metres along the curve from A: one place where it comes from the string, else
            two, the nearer first; none where it runs from side to side. Behind straight sides it is the other curve.
        corner: the angle at which it meets the curve, radians, at most a right one.
    """

    at: float
    arc: tuple[float, ...]
    corner: float


@dataclass(frozen=True)
class Grid:
    """Panels in rows: ``columns`` along the string, ``rows`` away from it.

    Attributes:
        wide, deep: of a whole panel, metres; square: the joints square to the string; along: those along it.
        end: how deep, in its middle, the row of a rounded end is where it isn't as deep as the others.
        on_string: a joint lies on the string, where the curve begins; then between it and the end may be rows ``inner``
            metres deep, ``None`` where there is none.
    """

    columns: int
    rows: int
    wide: float
    deep: float
    square: tuple[GridJoint, ...]
    along: tuple[GridJoint, ...]
    end: float | None = None
    on_string: bool = False
    inner: float | None = None

    @property
    def ratio(self) -> float:
        """The longer side of a whole panel over the shorter one; of the worst one, where not all are alike."""
        return max(max(self.wide, deep) / min(self.wide, deep) for deep in self.depths)

    @property
    def longest(self) -> float:
        """The longer side, metres."""
        return max(self.wide, *self.depths)

    @property
    def depths(self) -> tuple[float, ...]:
        """How deep rows are, metres: those between first."""
        return (self.deep, *(one for one in (self.inner, self.end) if one is not None))

    @property
    def corner(self) -> float:
        """The least angle between a joint and the curve, radians: square where there is no joint."""
        return min((joint.corner for joint in (*self.square, *self.along)), default=pi / 2)


def grid(filled: Filled, columns: int, rows: int) -> Grid:
    """Return the joints of so many panels along the string, and so many off it; raises ``ValueError`` for none."""
    if columns < 1 or rows < 1:
        raise ValueError("a slab is at least one panel")
    wide, deep = filled.wide / columns, filled.deep / rows
    square = tuple(_square(filled, wide * place) for place in range(1, columns))
    if isinstance(filled, Pad):
        even = _even_grid(filled, columns, rows, square)
        offs = _on_string(filled, rows, [joint.at for joint in even.along])
        made = _string_grid(filled, columns, square, offs) if offs else even
        return even if is_past(made.ratio) and not is_past(even.ratio) else made
    along = tuple(_along(filled, deep * place) for place in range(1, rows))
    return Grid(columns, rows, wide, deep, square, along)


def _even_grid(pad: Pad, columns: int, rows: int, square: tuple[GridJoint, ...]) -> Grid:
    """The grid of a slab with straight sides in rows that are even, as far as no corner is sharp for it."""
    wide, deep, offs = pad.wide / columns, pad.deep / rows, _levels(pad, rows)
    along = tuple(_across(pad, off) for off in offs)
    end = pad.arc.sagitta - offs[-1] if offs else pad.deep
    between = (pad.deep - pad.ends * end) / max(1, rows - pad.ends)
    alike = rows == 1 or abs(end - deep) <= DUST * pad.deep
    return Grid(columns, rows, wide, deep if alike else between, square, along, None if alike else end)


def _string_grid(pad: Pad, columns: int, square: tuple[GridJoint, ...], offs: list[float]) -> Grid:
    """The grid of the same with a joint on its string: rows are even behind that, and others beyond it."""
    deep = pad.sides / (1 + sum(-pad.sides < off < 0 for off in offs))
    beyond = [off for off in offs if off > 0]
    end, inner = pad.arc.sagitta - (beyond[-1] if beyond else 0.0), beyond[0] if beyond else deep
    alike = max(abs(end - deep), abs(inner - deep)) <= DUST * pad.deep
    return Grid(
        columns=columns,
        rows=len(offs) + 1,
        wide=pad.wide / columns,
        deep=deep,
        square=square,
        along=tuple(_across(pad, off) for off in offs),
        end=None if alike else end,
        on_string=True,
        inner=inner if beyond and not alike else None,
    )


def longest_curved(filled: Filled, made: Grid) -> float:
    """Return the longest curved side of a panel, metres: of the curve between two joints, or a joint and its end.

    >>> from bowstring.geometry.arc import Arc
    >>> half_round = Segment(Arc.of_angle(1.0, pi / 2))
    >>> round(longest_curved(half_round, grid(half_round, 2, 1)) / pi, 9)
    0.5
    """
    whole, square = filled.arc.arc_length, [place for joint in made.square for place in joint.arc]
    ends = [[joint for joint in made.along if joint.at > 0]]
    if isinstance(filled, Pad) and filled.both:
        ends.append([joint for joint in made.along if joint.at < -filled.sides])
    longest = 0.0
    for along in ends:
        places = sorted([0.0, whole, *square, *(place for joint in along for place in joint.arc)])
        longest = max(longest, *(after - before for before, after in pairwise(places)))
    return longest


def squarish(filled: Filled, most: float) -> tuple[int, int]:
    """Return into how many panels along the string, and off it, the slab goes: none longer than ``most`` metres, and
    no side more than half longer than the other, where the slab isn't too shallow for that.

    Raises ``ValueError`` where ``most`` isn't above 0.

    >>> from bowstring.geometry.arc import Arc
    >>> squarish(Segment(Arc.of_angle(10.0, 1.5707963)), 3.0)
    (7, 4)
    """
    if most <= 0:
        raise ValueError("panels need a length")
    if isinstance(filled, Pad):
        return _best(filled, most, range(_count(filled.wide, most), _count(filled.wide, most) + MORE))
    columns, rows = _count(filled.wide, most), _count(filled.deep, most)
    if filled.deep >= NARROW:
        columns = max(columns, _count(filled.wide, RATIO * filled.deep / rows))
        rows = max(rows, _count(filled.deep, RATIO * filled.wide / columns))
    return columns, rows


def rows_of(filled: Filled, columns: int, most: float) -> int:
    """Return into how many rows the slab goes, where it goes into so many panels along the string."""
    if isinstance(filled, Pad):
        return _best(filled, most, range(columns, columns + 1))[1]
    return squarish(filled, min(most, RATIO * filled.wide / columns))[1]


MORE = 4
"""So many counts of panels are looked at, from the least on."""


def _best(filled: Pad, most: float, counts: range) -> tuple[int, int]:
    """The counts with no panel too long, none that is no square, no sharp corner; of these the fewest panels."""
    least = _count(filled.deep, most)
    long = max(least, _count(filled.deep, RATIO * filled.wide / counts.start))
    made = [grid(filled, columns, rows) for columns in counts for rows in range(least, long + MORE)]

    def rank(one: Grid) -> tuple[bool, bool, bool, int]:
        too_long = one.longest > most * (1 + DUST)
        return too_long, is_past(one.ratio), _is_sharp(one), one.columns * one.rows

    best = min(made, key=rank)
    return best.columns, best.rows


def _is_sharp(made: Grid) -> bool:
    return made.corner < radians(LEAST_CORNER) - DUST


NEAR_STRING = 0.25
"""Of a panel's depth: a joint nearer to where the curve begins is put there."""


def _on_string(pad: Pad, rows: int, even: list[float]) -> list[float]:
    """Where the joints lie instead with one on the string of each curve, and even rows between: none where none of the
    even ones lies beside it, where its corners would be sharp, and where there are too few rows for it."""
    counts = spread([pad.arc.sagitta] * pad.ends + [pad.sides], rows)
    beyond, behind = counts[0], rows - pad.ends * counts[0]
    near = NEAR_STRING * pad.deep / rows + DUST
    if pad.corner < radians(LEAST_CORNER) - DUST or behind < 1 or not any(abs(off) <= near for off in even):
        return []
    last = min(pad.arc.sagitta - pad.arc.sagitta / beyond, _highest(pad, radians(LEAST_CORNER)))
    curve = [last * place / (beyond - 1) for place in range(1, beyond)]
    sides = [-pad.sides * (behind - place) / behind for place in range(1, behind)]
    other = [*(-pad.sides - off for off in reversed(curve)), -pad.sides] if pad.both else []
    return [*other, *sides, 0.0, *curve]


def _levels(pad: Pad, rows: int) -> list[float]:
    """How far off the string the joints along it lie, from the back on: in even rows, but none where it would meet the
    curve at a sharp corner; the row of the end is the deeper for it."""
    if rows == 1:
        return []
    if pad.both and rows == 2:
        return [-pad.sides / 2]
    least = radians(LEAST_CORNER)
    last = min(pad.arc.sagitta - pad.deep / rows, _highest(pad, least))
    first = -pad.sides - last if pad.both else pad.foot
    count = rows - pad.ends
    inner = [first + (last - first) * place / count for place in range(0 if pad.both else 1, count)]
    return [*inner, last]


def _highest(pad: Pad, least: float) -> float:
    """The farthest off the string at which a joint along it meets the curve at no less than an angle; where it would
    meet even the string's end at less, a foot down the sides, or a quarter of them."""
    if pad.arc.half_angle >= least:
        return pad.arc.radius * (cos(least) - cos(pad.arc.half_angle))
    return -min(NARROW / 2, pad.sides / 4)


def _across(pad: Pad, off: float) -> GridJoint:
    """A joint along the string: it meets both sides square, or the curve, or the other end's curve."""
    if -pad.sides <= off <= 0:
        return GridJoint(off, (), pi / 2)
    met = _along(pad.curve, off if off > 0 else -pad.sides - off)
    return GridJoint(off, met.arc, met.corner)


def _count(length: float, most: float) -> int:
    return max(1, ceil(length / most - DUST))


def _square(filled: Filled, at: float) -> GridJoint:
    """A joint square to the string: from the string to the curve, or past the string's ends from curve to curve."""
    radius, half = filled.arc.radius, filled.arc.half_angle
    aside = at - filled.wide / 2
    turned = asin(max(-1.0, min(1.0, aside / radius)))  # from the curve's middle, below 0 toward A
    top = radius * (half + turned)
    low, _high = filled.height(at)
    if low <= 0:
        return GridJoint(at, (top,), pi / 2 - abs(turned))
    foot = radius * (half + (pi if turned > 0 else -pi) - turned)
    return GridJoint(at, (min(top, foot), max(top, foot)), pi / 2 - abs(turned))


def _along(filled: Segment, off: float) -> GridJoint:
    """A joint along the string: it meets the curve as far from A as from B."""
    radius, half = filled.arc.radius, filled.arc.half_angle
    turned = acos(max(-1.0, min(1.0, (off - filled.center) / radius)))
    return GridJoint(off, (radius * (half - turned), radius * (half + turned)), min(turned, pi - turned))
