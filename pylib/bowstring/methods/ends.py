"""Finding the ends A and B of the chord, from whatever exists on the ground, and moving them off the drawn line.

The frame is that of the staked arc's chord. When the stakes stand on the drawn line itself the drawn ends are A and B;
otherwise they are A0 and B0, and A and B are set from them, square to the straights.
"""

from __future__ import annotations

from bowstring.construction import Along, Move, Recipe, SquareOff, Take
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point
from bowstring.units.sizes import TEN_FEET

BACK = TEN_FEET
"""Metres (10 ft): how far back on a straight the mark is taken that shows its direction."""

TOO_SHORT = 1e-9
"""Metres: a leg shorter than this isn't taped."""

STARTS = ("ends", "one-end", "corner", "neither")


def find_ends(recipe: Recipe, drawn: Arc, staked: Arc, start: str) -> None:
    """Write down the steps that find A and B.

    ``start`` is one of ``STARTS``; ``corner`` needs an arc below 180 degrees. ``drawn`` and ``staked`` are concentric.
    """
    outward = staked.radius - drawn.radius
    # A radius through A, seen outward, is (-sin, cos) of half the central angle in the chord's frame.
    along, up = outward * drawn.sine, outward * drawn.cosine
    at_a, at_b = Point(along, -up), Point(staked.chord - along, -up)
    if outward:
        _drawn_ends(recipe, drawn, ("A0", at_a), ("B0", at_b), start)
        for end, drawn_end, other in (("A", "A0", "B0"), ("B", "B0", "A0")):
            _step_off(recipe, end, drawn_end, other, along, up)
    else:
        _drawn_ends(recipe, drawn, ("A", Point(0.0, 0.0)), ("B", Point(staked.chord, 0.0)), start)
    # The frame, free of the last digit's dust.
    recipe.at["A"], recipe.at["B"] = Point(0.0, 0.0), Point(staked.chord, 0.0)
    recipe.do("string", 0, measure=[("A", "B")] if outward else [], start="A", end="B")


def _drawn_ends(recipe: Recipe, drawn: Arc, first: tuple[str, Point], second: tuple[str, Point], start: str) -> None:
    """Both ends are there, or one is set from the other's straight, or both from the corner."""
    (a, at_a), (b, at_b) = first, second
    tangent_a, tangent_b = Point(drawn.cosine, drawn.sine), Point(-drawn.cosine, drawn.sine)
    back_a, back_b = at_a.plus(tangent_a, -BACK), at_b.plus(tangent_b, -BACK)
    if start == "one-end":
        onward, out = drawn.chord * drawn.cosine, drawn.chord * drawn.sine
        recipe.do("have_straight", 0, [Take(a, at_a), Take("S", back_a)], start=a)
        recipe.do(
            "from_straight" if onward >= 0 else "from_straight_back",
            0,
            [Along("F", a, "S", -onward), SquareOff(b, "F", "S", a, out, left=False)],
            [(a, "F"), ("F", b), (a, b)],
            start=a,
            end=b,
        )
    elif start == "corner":
        tangent = drawn.tangent_length
        assert tangent is not None
        straights = [Take("P", at_a.plus(tangent_a, tangent)), Take("S", back_a), Take("T", back_b)]
        recipe.do("have_corner", 0, straights)
        ends = [Along(a, "P", "S", tangent), Along(b, "P", "T", tangent)]
        recipe.do("from_corner", 0, ends, [("P", a), ("P", b), (a, b)], start=a, end=b)
    else:
        kind = "have_ends" if start == "ends" else "set_ends"
        recipe.do(kind, 0, [Take(a, at_a), Take(b, at_b)], [(a, b)], start=a, end=b)


def _step_off(recipe: Recipe, end: str, drawn_end: str, other: str, along: float, up: float) -> None:
    """Set an end of the staked arc from the drawn one: along the drawn chord, then square off it.

    ``along`` is positive away from the other end, ``up`` positive toward the arc's side.
    """
    which_way = "away" if along > 0 else "toward"
    if abs(up) <= TOO_SHORT:
        kind = f"offset_{which_way}"
        recipe.do(
            kind,
            0,
            [Along(end, drawn_end, other, -along)],
            [(drawn_end, end)],
            end=end,
            start=drawn_end,
            other=other,
        )
        return
    foot = f"foot {end}"
    # The arc's side is on the left of A0-B0 and on the right of B0-A0.
    left = (up > 0) == (end == "A")
    moves: list[Move] = [
        Along(foot, drawn_end, other, -along),
        SquareOff(end, foot, drawn_end, other, abs(up), left=left),
    ]
    recipe.do(
        f"offset_{which_way}_{'arc' if up > 0 else 'back'}",
        0,
        moves,
        [(drawn_end, foot), (foot, end), (drawn_end, end)],
        end=end,
        start=drawn_end,
        other=other,
    )
