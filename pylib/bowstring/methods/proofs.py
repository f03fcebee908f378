"""How two ends are proved where no single pull goes from one to the other.

In parts along the string; or from a point beside, D: whatever the triangle A D B is, the line between the places at
one part of D-A and of D-B is that part of A-B and parallel to it; or, where two straights stand, from their corner.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from bowstring.construction import Along, CrossTapes, Move, Recipe
from bowstring.geometry.plane import Point, distance

BESIDE, TOWARD_FIRST, TOWARD_SECOND = "D", "DA", "DB"
"""The point beside, and the places on its ways to both ends."""


@dataclass(frozen=True)
class Proof:
    """How the distance of two ends is proved.

    Attributes:
        kind: ``taped`` (one pull), ``parts`` (pulls of ``pull`` metres in line, and what is left), ``beside`` (from a
            point ``legs`` metres from both ends, on the curve's side when ``inside``, at the ``part`` of both legs),
            or ``none``.
    """

    kind: str
    pull: float = 0.0
    legs: tuple[float, float] = (0.0, 0.0)
    inside: bool = False
    part: float = 0.5

    @property
    def taped(self) -> bool:
        """Whether one pull joins the ends."""
        return self.kind == "taped"


Prove = Callable[[Point, Point], Proof]
"""Which proof the ground allows for the ends at two places."""

ProveCorner = Callable[[Point, Point, Point], float | None]
"""How many metres from a corner, on the straights to two ends, the line across can be taped; ``None``: nowhere."""


@dataclass(frozen=True)
class Proving:
    """What the ground allows: ``ends`` by any proof, a corner by the line across its straights, and whether a
    ``string`` can be stretched from one place to another."""

    ends: Prove
    corner: ProveCorner
    string: Callable[[Point, Point], bool]


def prove(recipe: Recipe, proof: Proof, first: str, second: str) -> None:
    """Write down the step that proves two ends that stand."""
    if proof.kind == "parts":
        _in_parts(recipe, proof.pull, first, second)
    elif proof.kind == "beside":
        _from_beside(recipe, proof, first, second)


def parts_of(whole: float, pull: float) -> int:
    """Return how many full pulls stand before the last one, which may be as long.

    >>> parts_of(168.0, 50.0), parts_of(100.0, 50.0)
    (3, 1)
    """
    count = int(whole / pull)
    return count if whole - count * pull > pull * 1e-9 else count - 1


def _in_parts(recipe: Recipe, pull: float, first: str, second: str) -> None:
    count = parts_of(distance(recipe.at[first], recipe.at[second]), pull)
    nails = [f"{BESIDE}{number}" for number in range(1, count + 1)]
    chain = [first, *nails]
    moves = [Along(nail, before, second, pull) for before, nail in zip(chain, nails, strict=False)]
    measures = [*zip(chain, nails, strict=False), (chain[-1], second)]
    recipe.do("prove_parts" if count > 1 else "prove_two", 0, moves, measures,
              start=first, end=second, nail=nails[0], last=nails[-1])  # fmt: skip


def _from_beside(recipe: Recipe, proof: Proof, first: str, second: str) -> None:
    (one, other), part = proof.legs, proof.part
    moves: list[Move] = [
        CrossTapes(BESIDE, first, one, second, other, left=proof.inside),
        Along(TOWARD_FIRST, BESIDE, first, one * part),
        Along(TOWARD_SECOND, BESIDE, second, other * part),
    ]
    pairs = [(first, BESIDE), (second, BESIDE), (BESIDE, TOWARD_FIRST), (BESIDE, TOWARD_SECOND),
             (TOWARD_FIRST, TOWARD_SECOND)]  # fmt: skip
    recipe.do("prove_beside_inside" if proof.inside else "prove_beside", 0, moves, pairs, start=first, end=second,
              beside=BESIDE, toward=TOWARD_FIRST, other=TOWARD_SECOND)  # fmt: skip


def prove_from_corner(recipe: Recipe, along: float, first: str, second: str) -> None:
    """Write down the line across two straights, ``along`` metres from their corner P on both, in place of that between
    the ends."""
    moves = [Along(TOWARD_FIRST, "P", first, along), Along(TOWARD_SECOND, "P", second, along)]
    pairs = [("P", TOWARD_FIRST), ("P", TOWARD_SECOND), (TOWARD_FIRST, TOWARD_SECOND)]
    recipe.do("prove_corner", 0, moves, pairs, start=first, end=second, toward=TOWARD_FIRST, other=TOWARD_SECOND)
