"""Directions that aren't on the ground yet: a peg on the tangent at an end, set from the chord."""

from __future__ import annotations

from bowstring.construction import Along, Move, Recipe, SquareOff
from bowstring.geometry.plane import Point
from bowstring.methods.ends import TOO_SHORT
from bowstring.methods.setting import Setting

PEGS = {"A": "TA", "B": "TB"}


def tangent_line(recipe: Recipe, setting: Setting, end: str, reach: float) -> tuple[str, float]:
    """Return a mark on the tangent at ``end`` and the sign that lengths toward it have on the curve's side.

    A straight that is on the ground gives it; otherwise a step sets a peg ``reach`` metres out, from the chord: along
    it by the cosine of half the central angle, square off it by the sine.
    """
    if end in setting.straights:
        mark, ahead = setting.straights[end]
        return mark, 1.0 if ahead else -1.0
    arc, other = setting.arc, "B" if end == "A" else "A"
    along, out = reach * arc.cosine, reach * arc.sine
    peg, foot = PEGS[end], f"foot {PEGS[end]}"
    at_a = Point(along, out)
    recipe.truth[peg] = at_a if end == "A" else Point(arc.chord - at_a.x, at_a.y)
    moves: list[Move] = []
    measures = []
    kind = "peg_square"
    if abs(along) > TOO_SHORT:
        kind = "peg" if along > 0 else "peg_back"
        moves.append(Along(foot, end, other, along))
        measures.append((end, foot))
    else:
        foot = end
    # Seen from the end toward the other one the curve's side is on the left at A and on the right at B.
    moves.append(SquareOff(peg, foot, end, other, out, left=end == "A"))
    measures.append((foot, peg))
    recipe.do(kind, 1, moves, measures, start=end, end=other, peg=peg, foot=foot)
    return peg, 1.0
