"""The one triangle by which each offset is squared off its string: printed, reckoned with, and held against the ground.

One triangle serves a whole recipe: the best one at hand for its longest offset. Where something is in its way at a
stake, it lies on the foot's other side, or a smaller one is taken there, or the framing square; an offset so short that
a framing square is enough has that. An offset whose three sides are all taped in its own step needs none.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import hypot

from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.squaring import Kit, Triangle, whole_triangles
from bowstring.construction import Marks, Recipe, SquareOff, Step
from bowstring.geometry.plane import Point, distance, left_of, unit_vector

TONGUE = 2 / 3
"""A framing square's tongue, as a part of its blade (16 in of 24 in: common practice, no source)."""


@dataclass(frozen=True)
class Square:
    """How one offset is squared off its string.

    Attributes:
        along, out, long_side: metres: along the string from the foot, out, and across; a framing square's own edges.
        shape: the triangle's in whole numbers, like ``3-4-5``; empty for a framing square.
        toward: the mark toward which it lies along the string.
        usual: whether the recipe's common triangle, lying where the string is longer, or a framing square for a short
            offset; any other is the stake's own.
        stopped: what leaves no room even for a framing square, empty for the room itself; ``None`` where one fits.
    """

    along: float
    out: float
    long_side: float
    shape: str
    toward: str
    usual: bool = False
    stopped: str | None = None

    def turn(self, read: float) -> float:
        """Return the standard deviation in radians of the direction squared by it.

        By a triangle with legs a, b and long side c, each taped with a reading error ``read`` at both ends: the angle
        turns by (c dc - a da - b db)/(a b), so its deviation is 2 c read/(a b), since c² = a² + b². The tape's scale
        cancels. A framing square is laid on the string with a reading at both ends of its blade.
        """
        return 2 * read * (self.long_side / (self.along * self.out) if self.shape else 1 / self.along)


def squares_of(recipe: Recipe, kit: Kit, ground: Obstructions | None = None) -> Mapping[str, Square]:
    """Return how each offset of a recipe is squared, by the mark that it sets; on open ground without ``ground``."""
    squared = list(_squared(recipe.steps))
    if not squared:
        return {}
    common = _common(recipe.at, squared, kit)
    open_ground = ground is None or not ground.any
    return {move.mark: _square(recipe.at, move, common, kit, None if open_ground else ground) for move in squared}


def common_square(recipe: Recipe, kit: Kit) -> Triangle | None:
    """Return the triangle that serves a whole recipe, ``None`` where a framing square is enough for all of it."""
    squared = list(_squared(recipe.steps))
    return _common(recipe.at, squared, kit) if squared else None


def _squared(steps: list[Step]) -> Iterator[SquareOff]:
    for step in steps:
        for move in step.moves:
            square = move.squares
            if square and not square.slide and not _closed(step, square):
                yield square


def _closed(step: Step, square: SquareOff) -> bool:
    """Whether a step that finds an end tapes the third side of its own triangle too."""
    return not step.level and sum(square.mark in (one.start, one.end) for one in step.measures) > 1


def _common(at: Marks, squared: list[SquareOff], kit: Kit) -> Triangle | None:
    longest = max(squared, key=lambda move: abs(move.length))
    offset = abs(longest.length)
    if offset <= kit.enough:
        return None
    room = max(distance(at[longest.foot], at[mark]) for mark in (longest.start, longest.end))
    found = whole_triangles(room, offset, kit.unit_leg, kit.tape)
    return found[0] if found and found[0].turn < 1 / kit.blade else None


def _square(at: Marks, move: SquareOff, common: Triangle | None, kit: Kit, ground: Obstructions | None) -> Square:
    """The first of all at hand that finds room."""
    first = None
    stopped: str | None = None
    for square in _at_hand(at, move, common, kit):
        first = first or square
        if ground is None:
            return square
        blocked = in_the_way(at, move, square, ground)
        if blocked is None:
            return square
        stopped = stopped or blocked
    assert first is not None
    return Square(first.along, first.out, first.long_side, first.shape, first.toward, first.usual, stopped or "")


def _at_hand(at: Marks, move: SquareOff, common: Triangle | None, kit: Kit) -> Iterator[Square]:
    """The common triangle on the longer side of the foot, then on the other; smaller ones; the framing square."""
    foot, offset = at[move.foot], abs(move.length)
    # Of two ways alike the one toward the string's far end is taken first.
    ways = sorted(
        ((distance(foot, at[mark]), mark) for mark in (move.end, move.start)), key=lambda way: -round(way[0], 6)
    )
    blade = Triangle(kit.blade, kit.blade * TONGUE, kit.blade, None, 0.0)
    longer = ways[0][1]
    if offset <= kit.enough or common is None:
        yield from (_lying(blade, mark, True) for room, mark in ways if room > 0)
    if common is None:
        return
    yield from (_lying(common, mark, mark == longer) for room, mark in ways if room >= common.along * (1 - 1e-9))
    own = sorted(
        ((one, mark) for room, mark in ways for one in whole_triangles(room, offset, kit.unit_leg, kit.tape)),
        key=lambda pair: round(pair[0].turn, 9),
    )
    yield from (_lying(one, mark) for one, mark in own if one.turn < 1 / kit.blade)
    yield from (_lying(blade, mark) for room, mark in ways if room > 0)


def _lying(triangle: Triangle, toward: str, usual: bool = False) -> Square:
    return Square(triangle.along, triangle.out, triangle.long_side, triangle.whole or "", toward, usual)


def corners_of(at: Marks, move: SquareOff, square: Square) -> tuple[Point, Point, Point]:
    """Return where the corners of a triangle lie: its foot, its end along the string, its end out."""
    foot, u = at[move.foot], unit_vector(at[move.start], at[move.end])
    out = left_of(u) if move.left else Point(u.y, -u.x)
    way = unit_vector(foot, at[square.toward])
    return foot, foot.plus(way, square.along), foot.plus(out, square.out if move.length >= 0 else -square.out)


def in_the_way(at: Marks, move: SquareOff, square: Square, ground: Obstructions) -> str | None:
    """Return what is in the way of a triangle's sides or stands on its corners, empty where that is the room."""
    foot, corner, tip = corners_of(at, move, square)
    for a, b in ((foot, corner), (foot, tip), (corner, tip)):
        blocked = ground.in_the_way(a, b)
        if blocked is not None:
            return blocked
    return next((name for point in (corner, tip) for name in ground.standing(point)), None)


def fits_of(at: Marks, moves: list[SquareOff], ground: Obstructions, along: float, out: float) -> bool:
    """Return whether a triangle with these legs finds room at the foot of each offset, on one side of it."""

    def lies(move: SquareOff) -> bool:
        return hypot(along, out) <= ground.limits.tape and any(
            in_the_way(at, move, Square(along, out, 0.0, "", toward), ground) is None
            for toward in (move.start, move.end)
        )

    return all(lies(move) for move in moves)
