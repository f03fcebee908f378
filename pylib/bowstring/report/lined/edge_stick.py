"""The width stick that gauges the edges off a line of several pieces, told."""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.slab import narrowed
from bowstring.report.forming.edge_board import board_of
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.forming.edge_stick import LONG, OF_THE_STICK, SLIPS
from bowstring.report.forming.plan import is_wall
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def stick_told(plan: LinePlan, slab: LineSlab, *, short: bool = False) -> Iterator[str]:
    """Yield how both edges come off the line; ``short``: what the stick's own marks say isn't said again."""
    tape, feet = plan.tape, plan.plan.layout.job.tape.feet
    reaches = [reach for reach in (slab.left, -slab.right) if reach]
    length = max(abs(reach) for reach in reaches)
    name, thickness = board_of(plan.plan)
    halved = plan.edge == CENTER
    if is_wall(plan.plan):
        yield from _wall_stick(plan, length)
        return
    marks = (
        (say("lined.stick_line") if halved else say("edges.stick_first"), tape.show(0)),
        (say("edges.stick_edge") if halved else say("edges.stick_other"), tape.show(length)),
        (say("edges.stick_form", board=name), tape.show(length + thickness)),
    )
    told = "; ".join(say("edges.stick_at", size=size, what=what) for what, size in marks)
    yield say("edges.stick_drawn", marks=told)
    key = "lined.how_halved" if halved else "lined.first_left" if plan.edge == "left" else "lined.first_right"
    if not (halved and short):
        yield say(key, width=tape.show(length))
    yield say("lined.how_square")
    if length > LONG[feet]:
        yield say("edges.long_stick")
    if plan.plan.layout.job.outward:
        yield say("lined.offset_taken")


def _wall_stick(plan: LinePlan, length: float) -> Iterator[str]:
    """Yield how both faces of a wall come off the line: its forms stand on its footing, on no boards."""
    tape, halved = plan.tape, plan.edge == CENTER
    on_line = say("lined.stick_line" if halved else "walled.stick_first")
    marks = ((on_line, tape.show(0)), (say("walled.stick_other"), tape.show(length)))
    told = "; ".join(say("edges.stick_at", size=size, what=what) for what, size in marks)
    yield say("walled.stick_two", marks=told)
    if not halved:
        yield say("walled.line_is_left" if plan.edge == "left" else "walled.line_is_right", width=tape.show(length))
    yield say("lined.how_square")
    if plan.plan.layout.job.outward:
        yield say("lined.offset_taken")


def slip_told(plan: LinePlan, slab: LineSlab) -> Iterator[str]:
    """Yield by how much a stick that is held out of square makes the slab narrow."""
    tape, feet = plan.tape, plan.plan.layout.job.tape.feet
    reaches = [reach for reach in (slab.left, -slab.right) if reach]
    length = max(abs(reach) for reach in reaches)
    slip = next((one for one in SLIPS[feet] if one <= length / OF_THE_STICK), None)
    if slip is not None:
        narrow = max(_narrow(slab, reach, slip) for reach in reaches)
        key = "walled.slip" if is_wall(plan.plan) else "edges.slip"
        yield say(key, slip=tape.show_near(slip), narrow=tape.show_up(narrow))


def _narrow(slab: LineSlab, reach: float, slip: float) -> float:
    """The most by which a slip makes the slab too narrow on a hand, metres; ``reach``: to the left of the line."""
    length = abs(reach)
    found = [length - sqrt((length - slip) * (length + slip))]
    for piece in slab.line.pieces:
        if isinstance(piece, Bend):
            found.append(narrowed(piece.radius, -reach if piece.hand == "left" else reach, slip))
    return max(found)
