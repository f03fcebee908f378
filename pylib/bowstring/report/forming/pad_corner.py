"""The corner where the curve meets a straight side at an angle: the curve's board runs on past it, and the side's form
is beveled to that board's face."""

from __future__ import annotations

from math import degrees, radians, tan

from bowstring.forming.pad import Pad
from bowstring.report.forming.boards_list import room_past
from bowstring.report.forming.formboard import straight_of
from bowstring.report.forming.pass_build import overrun_of
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.words import say

TILT = radians(45.0)
"""So far any saw's blade tilts; many go no farther than that, some to 60 degrees (common practice, no source)."""


def bevel_of(plan: Plan) -> dict[str, str]:
    """Return the bevel of the side forms' ends in words: off square and from the board's face, and how much shorter the
    board's back is than its face. Empty where there is none: a tangent side, or a curve's board that doesn't run on.

    The face of the board that runs on makes the corner's angle with the string, and the side's form is square to that:
    it is cut off so many degrees off square, its thickness times the tangent of them from its long point. The back is
    told rounded up: a board that is a hair short there still closes at the concrete.
    """
    pad = plan.filled
    if not isinstance(pad, Pad) or pad.tangent or not room_past(plan, overrun_of(plan)):
        return {}
    shorter = straight_of(plan).thickness * tan(pad.corner)
    off = round(degrees(pad.corner))
    return {"angle": f"{off}°", "face": f"{90 - off}°", "shorter": plan.tape.show_up(shorter)}


def bevel_told(plan: Plan) -> list[str]:
    """Return how far the curve's board runs past a corner and how the side forms meet it, as sentences; none where
    those are cut square."""
    bevel = bevel_of(plan)
    if not bevel:
        return []
    past = plan.tape.show_whole(room_past(plan, overrun_of(plan)))
    ends = line_ends(plan)
    pad = plan.filled
    marked = [say("pad.bevel_marked", **bevel)] if isinstance(pad, Pad) and pad.corner > TILT else []
    return [
        say("pad.carry_corner", past=past, **ends),
        say("pad.bevel", **bevel),
        *marked,
        say("pad.long_point", **bevel, **ends),
    ]


def carried_told(plan: Plan) -> list[str]:
    """Return how the curve's board runs on past A and B, and how the side forms meet it: down tangent sides straight
    on, past a corner as it is beveled."""
    pad = plan.filled
    past = room_past(plan, overrun_of(plan))
    if isinstance(pad, Pad) and pad.tangent and past:
        return [say("pad.carry_tangent", past=plan.tape.show_whole(past), **line_ends(plan))]
    return bevel_told(plan)


def bevel_note(plan: Plan) -> str:
    """Return the same for a card, empty where they are cut square."""
    bevel = bevel_of(plan)
    return say("forming.note.bevel", **bevel) if bevel else ""
