"""Finding the ends A and B of the chord, from whatever exists on the ground, and moving them off the drawn line.

The frame is that of the staked arc's chord. When the stakes stand on the drawn line itself the drawn ends are A and B;
otherwise they are A0 and B0, and A and B are set from them, square to the straights.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, sin
from typing import TYPE_CHECKING

from bowstring.construction import Along, Move, Recipe, SquareOff, Take
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, unit_vector
from bowstring.methods.proofs import BESIDE, Proof, Proving, prove, prove_from_corner
from bowstring.units.sizes import TEN_FEET

if TYPE_CHECKING:
    from bowstring.forming.line.pieces import Hand

BACK = TEN_FEET
"""Metres (10 ft): how far back on a straight the mark is taken that shows its direction."""

TOO_SHORT = 1e-9
"""Metres: a leg shorter than this isn't taped."""

SHOWN_BY = ("S", "T")
"""Marks that only show a straight's direction: a crew sets them back wherever that is handy."""

ARC_START = "D"
"""Where the arc before the staked one begins: it is staked already, as the staked arc's A is."""

ON_FOOT = 1e-3
"""Metres: a mark that stands nearer to A along a line is squared off at A itself."""


@dataclass(frozen=True)
class Before:
    """The piece of a line that ends at the staked arc's A, tangent to it.

    Attributes:
        back: metres behind A, on its tangent there, at which S stands.
        whole: whether that is where a straight begins, which is shorter than a crew would go back.
        arc: the piece where it is an arc, else ``None``; ``hand``: to which it turns; ``same``: the staked arc turns to
            that hand, too; ``number``: which piece of the line it is, from 1.
    """

    back: float = BACK
    whole: bool = False
    arc: Arc | None = None
    hand: Hand = "left"
    same: bool = True
    number: int = 0


OPEN_GROUND = Proving(lambda _a, _b: Proof("taped"), lambda _p, _a, _b: None, lambda _a, _b: True)
"""Nothing is in the way, and the tape is long enough."""

STARTS = ("ends", "one-end", "corner", "neither")


def find_ends(
    recipe: Recipe, drawn: Arc, staked: Arc, start: str, proving: Proving = OPEN_GROUND, before: Before | None = None
) -> None:
    """Write down the steps that find A and B.

    ``start`` is one of ``STARTS``; ``corner`` needs an arc below 180 degrees. ``drawn`` and ``staked`` are concentric.
    ``proving``: how the ground lets the ends be proved; ``before``: the piece of a line that shows the tangent at A,
    ``None`` for a straight of which nothing is known.
    """
    before = before or Before()
    outward = staked.radius - drawn.radius
    # A radius through A, seen outward, is (-sin, cos) of half the central angle in the chord's frame.
    along, up = outward * drawn.sine, outward * drawn.cosine
    at_a, at_b = Point(along, -up), Point(staked.chord - along, -up)
    if outward:
        _drawn_ends(recipe, drawn, ("A0", at_a), ("B0", at_b), start, proving, before)
        elsewhere = not proving.string(at_a, at_b) and not {"P", BESIDE}.isdisjoint(recipe.at)
        for end, drawn_end, other, x in (("A", "A0", "B0", 0.0), ("B", "B0", "A0", staked.chord)):
            if elsewhere:
                _off_another_line(recipe, end, drawn_end, other, outward, Point(x, 0.0))
            else:
                _step_off(recipe, end, drawn_end, other, along, up)
    else:
        _drawn_ends(recipe, drawn, ("A", Point(0.0, 0.0)), ("B", Point(staked.chord, 0.0)), start, proving, before)
    # The frame, free of the last digit's dust.
    recipe.at["A"], recipe.at["B"] = Point(0.0, 0.0), Point(staked.chord, 0.0)
    taped = bool(outward) and proving.ends(recipe.at["A"], recipe.at["B"]).taped
    kind = "string" if proving.string(recipe.at["A"], recipe.at["B"]) else "string_none"
    recipe.do(kind, 0, measure=[("A", "B")] if taped else [], start="A", end="B")


End = tuple[str, Point]


def _drawn_ends(
    recipe: Recipe, drawn: Arc, first: End, second: End, start: str, proving: Proving, before: Before
) -> None:
    """Both ends are there, or one is set from the other's straight, or both from the corner."""
    if start == "corner":
        _from_corner(recipe, drawn, first, second, proving)
        return
    (a, at_a), (b, at_b) = first, second
    proof = proving.ends(at_a, at_b)
    taped = proof.kind in ("taped", "none")  # what nothing proves is asked for, so that it is told what is in its way
    if start == "one-end":
        _show_tangent(recipe, drawn, first, before, proving)
        _from_straight(recipe, drawn, first, b, taped)
    else:
        kind = "have_ends" if start == "ends" else "set_ends"
        pair = [(a, b)] if taped else []
        recipe.do(kind if taped else f"{kind}_untaped", 0, [Take(a, at_a), Take(b, at_b)], pair, start=a, end=b)
    prove(recipe, proof, a, b)


def _straights(drawn: Arc, at_a: Point, at_b: Point) -> tuple[Point, Point]:
    """Where the straights' directions are shown, back from either end."""
    return at_a.plus(Point(drawn.cosine, drawn.sine), -BACK), at_b.plus(Point(-drawn.cosine, drawn.sine), -BACK)


def _show_tangent(recipe: Recipe, drawn: Arc, first: End, before: Before, proving: Proving) -> None:
    """Set S, which shows the tangent at A: on the straight before it, or off the chord of the arc before it."""
    a, at_a = first
    ahead = Point(drawn.cosine, drawn.sine)
    if before.arc is not None:
        _off_arc(recipe, (a, at_a), ahead, before.arc, before, proving)
        return
    kind, measure = ("have_straight_short", [(a, "S")]) if before.whole else ("have_straight", [])
    recipe.do(kind, 0, [Take(a, at_a), Take("S", at_a.plus(ahead, -before.back))], measure, start=a)


def _off_arc(recipe: Recipe, first: End, ahead: Point, arc: Arc, before: Before, proving: Proving) -> None:
    """Set S behind A off the chord of the arc before it, whose tangent at A is the staked arc's.

    Between a tangent and a chord is half the central angle (Euclid, Elements III.32): S, ``back`` behind A on the
    tangent, stands ``back`` cos(I/2) along the chord from A and ``back`` sin(I/2) off it, on that arc's own side; past
    A from half a turn up. From D, where that arc begins, it is sqrt(c² + back² - 2 c back cos(I/2)): no step goes by
    that.
    """
    a, at_a = first
    half, back = arc.half_angle, before.back
    # In the frame the staked arc turns right, so the chord's direction is the tangent's turned left by half the angle.
    turn = half if before.same else -half
    to_d = Point(-ahead.x * cos(turn) + ahead.y * sin(turn), -ahead.x * sin(turn) - ahead.y * cos(turn))
    at_d = at_a.plus(to_d, arc.chord)
    along, off = back * cos(half), back * sin(half)
    moves: list[Move] = [Take(a, at_a), Take(ARC_START, at_d)]
    pairs: list[tuple[str, str]] = []
    kind, foot = "have_arc_square", a
    if abs(along) > ON_FOOT:
        kind, foot = "have_arc" if along > 0 else "have_arc_past", "foot S"
        moves.append(Along(foot, a, ARC_START, along))
        pairs = [(a, foot), (foot, "S")]
    moves.append(SquareOff("S", foot, a, ARC_START, off, left=not before.same))
    pairs.append((a, "S"))
    if proving.ends(at_d, at_a.plus(ahead, -back)).kind == "taped":
        pairs.append((ARC_START, "S"))
    recipe.do(kind, 0, moves, pairs, start=a, first=a, last=ARC_START, other=ARC_START,
              piece=str(before.number), bend=before.hand)  # fmt: skip


def _from_straight(recipe: Recipe, drawn: Arc, first: End, b: str, taped: bool) -> None:
    a, _at_a = first
    onward, out = drawn.chord * drawn.cosine, drawn.chord * drawn.sine
    kind = "from_straight" if onward >= 0 else "from_straight_back"
    recipe.do(
        kind if taped else f"{kind}_untaped",
        0,
        [Along("F", a, "S", -onward), SquareOff(b, "F", "S", a, out, left=False)],
        [(a, "F"), ("F", b), *([(a, b)] if taped else [])],
        start=a,
        end=b,
    )


def _from_corner(recipe: Recipe, drawn: Arc, first: End, second: End, proving: Proving) -> None:
    """Both ends from the corner of the straights; the line across them says whether that is the drawing's."""
    (a, at_a), (b, at_b) = first, second
    tangent = drawn.tangent_length
    assert tangent is not None
    corner = at_a.plus(Point(drawn.cosine, drawn.sine), tangent)
    back_a, back_b = _straights(drawn, at_a, at_b)
    recipe.do("have_corner", 0, [Take("P", corner), Take("S", back_a), Take("T", back_b)])
    ends = [Along(a, "P", "S", tangent), Along(b, "P", "T", tangent)]
    along = None if proving.ends(at_a, at_b).taped else proving.corner(corner, at_a, at_b)
    if along is None:
        recipe.do("from_corner", 0, ends, [("P", a), ("P", b), (a, b)], start=a, end=b)
        return
    recipe.do("from_corner_untaped", 0, ends, [("P", a), ("P", b)], start=a, end=b)
    prove_from_corner(recipe, along, a, b)


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


def _off_another_line(recipe: Recipe, end: str, drawn_end: str, far: str, outward: float, true: Point) -> None:
    """Set an end of the staked arc where no line goes from one drawn end to the other: square off its straight, or off
    the line to the point beside from which the ends were proved.

    ``outward``: metres from the drawn end, positive away from the centre; ``true``: where the end belongs.
    """
    at = recipe.at
    if "P" in at:
        left = (outward > 0) == (end == "A")
        recipe.do(f"offset_square_{'out' if outward > 0 else 'in'}", 0,
                  [SquareOff(end, drawn_end, drawn_end, "P", abs(outward), left=left)], [(drawn_end, end)],
                  end=end, start=drawn_end)  # fmt: skip
        return
    u, way = unit_vector(at[drawn_end], at[BESIDE]), true.minus(at[drawn_end])
    along, out = u.dot(way), u.cross(way)
    near = (out > 0) == (u.cross(at[far].minus(at[drawn_end])) > 0)
    foot = f"foot {end}"
    moves: list[Move] = [
        Along(foot, drawn_end, BESIDE, along),
        SquareOff(end, foot, drawn_end, BESIDE, abs(out), left=out > 0),
    ]
    recipe.do(f"offset_{'toward' if along > 0 else 'away'}_{'near' if near else 'far'}", 0, moves,
              [(drawn_end, foot), (foot, end), (drawn_end, end)],
              end=end, start=drawn_end, other=BESIDE, far=far)  # fmt: skip
