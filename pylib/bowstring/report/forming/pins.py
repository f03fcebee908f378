"""Pins and stakes where a board or its stakes go: which point of a pin is on the line, and what is told of it."""

from __future__ import annotations

from math import isclose
from typing import Literal

from bowstring.report.forming.edge_board import IN_THE_WAY, board_of
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE, SAME, marks_of, stands_behind
from bowstring.report.forming.fill_stand import bent_of
from bowstring.report.forming.formboard import own_board, practice_of
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.words import say

Pins = Literal["", "back", "past", "maybe"]
"""``back``: the line is the back of a form, so that each pin's edge toward the board is on it; ``past``: their centers
are set half a pin behind that; ``maybe``: nothing is said of the concrete, and the offset is as thick as a board;
empty: the line is their centers', or no pins are driven."""


def pins_of(plan: Plan) -> Pins:
    """Return how the pins stand to the forms."""
    job = plan.layout.job
    if job.driven != "pin" or not job.outward or is_designed(plan):
        return ""
    past: float | None = None
    if plan.filled is not None:
        bent = bent_of(plan)
        past = stands_behind(plan, job.outward, bent[1]) if bent else None
    elif plan.slab is not None:
        marks = marks_of(plan)
        past = marks.past if marks.boarded else None
    else:
        own, near = own_board(plan), SAME * max(1.0, plan.line.radius)
        thick = (own.thickness,) if own else practice_of(plan).thicknesses
        return "maybe" if any(isclose(abs(job.outward), one, rel_tol=0, abs_tol=near) for one in thick) else ""
    return "" if past is None else "past" if past else "back"


def centers_told(plan: Plan) -> list[str]:
    """Return how far off the drawing's line the centers go of pins whose edges are on theirs, where their diameter is
    known."""
    job = plan.layout.job
    if job.diameter is None:
        return []
    return [say("on_line.pin_centers", size=plan.tape.show_whole(abs(job.outward) + job.diameter / 2))]


def held_lines(plan: Plan) -> list[str]:
    """Return what the pages of the forms say of pins and stakes that stand behind an edge: that they hold its board, by
    which point of theirs, or that they are in its way."""
    pins = pins_of(plan)
    if pins == "back":
        return [" ".join([say("edges.pins_back"), *centers_told(plan)])]
    if pins == "past":
        return [say("edges.pins_past")]
    return [say(f"edges.in_the_way_{plan.layout.job.driven}")] if is_in_the_way(plan) else []


def is_in_the_way(plan: Plan) -> bool:
    """Tell whether pins or stakes that hold no board stand, behind an edge, in the place of its board.

    They leave room for it from its thickness on, and half a pin more; a stake's own size isn't known.
    """
    job = plan.layout.job
    if job.driven not in IN_THE_WAY or is_designed(plan) or (plan.slab is None and plan.filled is None):
        return False
    near, half = SAME * max(1.0, plan.line.radius), (job.diameter or 0.0) / 2
    if plan.filled is not None:
        bent = bent_of(plan)
        return bent is not None and near < job.outward < bent[1] + half + near
    marks = marks_of(plan)
    room = board_of(plan)[1] + half + near
    behind = (
        [-marks.reach(OUTSIDE, share) for share in (0, 1)],
        [marks.reach(INSIDE, share) for share in (0, 1)],
    )
    return any(min(off) < room and max(off) > near for off in behind)
