"""How offsets that are squared by a triangle are kept square, told for methods that go round once."""

from __future__ import annotations

from math import hypot

from bowstring.analysis.squaring import METRIC_BLADE, SQUARE_BLADE, triangle_at, turn_of_square
from bowstring.geometry.plane import distance
from bowstring.layout.layout import Layout
from bowstring.report.halving import UNIT_LEG
from bowstring.words import say


def report_square(layout: Layout) -> list[str]:
    """Return the answer's ``square``: the triangle for the longest offset, and what one mark wrong in it does there.

    Empty for methods without such offsets.
    """
    tape, at = layout.job.tape, layout.recipe.at
    found = [
        (abs(one.length), max(distance(at[one.foot], at[mark]) for mark in (one.start, one.end)), one.mark)
        for step in layout.recipe.steps if step.level
        for move in step.moves if (one := move.squares) and not one.slide
    ]  # fmt: skip
    if not found:
        return []
    longest, room, stake = max(found)
    lines = []
    triangle = triangle_at(room, longest, UNIT_LEG[tape.unit])
    if triangle:
        along, out, whole = triangle
        lines.append(
            say("square.each", along=tape.show(along), out=tape.show(out), long_side=tape.show(hypot(along, out)),
                shape=whole)
        )  # fmt: skip
    blade = SQUARE_BLADE if tape.feet else METRIC_BLADE
    turn = turn_of_square(room, longest, tape.mark, blade)
    lines.append(
        say("square.each_cost", stake=stake, offset=tape.show(longest), mark=tape.show_mark(),
            aside=tape.show_cost(turn * longest / 2))
    )  # fmt: skip
    lines.append(say("square.each_short", blade=f"{blade / 0.0254:.0f}-in" if tape.feet else f"{blade * 1000:.0f}-mm"))
    return lines
