"""On which hand a mark lies of somebody who faces along a line that the step's sentence names.

In the frame y is toward the curve; a curve on the right is its mirror image.
"""

from __future__ import annotations

from bowstring.construction import Step
from bowstring.geometry.plane import Point, signed_angle
from bowstring.layout.layout import Layout
from bowstring.report.hands import turn_hand


def hands_of(layout: Layout, step: Step) -> dict[str, str]:
    """Return the hands of a step by their place in its sentence.

    ``off_hand``: of what is squared off, facing ``last`` from ``first`` where the step names them, otherwise along the
    offset's own line. ``turn_hand``: to which an instrument is turned. ``deflection_hand``: to which the curve leaves
    its tangent at A. ``cross_hand``: of a stake, a peg or a point beside, facing ``end`` from ``start``.
    ``swing_hand``: of a stake, facing ``ahead`` or the stake before (``other``) from ``start``.
    """
    at, names, row = layout.recipe.at, step.names, {}
    for move in step.moves:
        square = move.squares
        if square:
            first, last = names.get("first", square.start), names.get("last", square.end)
            row["off_hand"] = _hand(layout, at[first], at[last], at[square.foot], at[square.mark])
    for turned in step.angles:
        left = signed_angle(at[turned.vertex], at[turned.start], at[turned.end]) > 0
        row["turn_hand"] = turn_hand(layout, left)
    if step.deflection is not None:
        row["deflection_hand"] = turn_hand(
            layout, False
        )  # y is toward the curve, so along the tangent it falls away right
    start = names.get("start")
    stake = names.get("stake") or names.get("peg") or names.get("beside")
    if stake and start:
        for key, faced in (("cross_hand", names.get("end")), ("swing_hand", names.get("ahead") or names.get("other"))):
            if faced:
                row[key] = _hand(layout, at[start], at[faced], at[start], at[stake])
    return row


def _hand(layout: Layout, start: Point, end: Point, foot: Point, mark: Point) -> str:
    """The hand of a mark for somebody at ``foot`` who faces as from ``start`` to ``end``."""
    return turn_hand(layout, end.minus(start).cross(mark.minus(foot)) > 0)
