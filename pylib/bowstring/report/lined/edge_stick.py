"""The width stick that gauges the edges off a line of several pieces, told."""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.slab import narrowed
from bowstring.report.forming.edge_board import board_of
from bowstring.report.forming.edge_lines import dug_past, footing_past
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.forming.edge_stick import LONG, OF_THE_STICK, SLIPS
from bowstring.report.forming.plan import is_wall
from bowstring.report.lined.hubs import aside_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def stick_told(plan: LinePlan, slab: LineSlab, *, short: bool = False) -> Iterator[str]:
    """Yield how both edges come off the line; ``short``: what the stick's own marks say isn't said again."""
    reaches = [reach for reach in (slab.left, -slab.right) if reach]
    length = max(abs(reach) for reach in reaches)
    halved, aside = plan.edge == CENTER, aside_of(plan)
    if aside:
        yield from _off_stakes(plan, slab, aside)
    if is_wall(plan.plan):
        yield from () if aside else _wall_stick(plan, length)
    elif not (aside and halved):  # the stick's zero is the line, where no stake stands
        yield from _slab_stick(plan, length, aside=bool(aside), short=short)


def _slab_stick(plan: LinePlan, length: float, *, aside: bool, short: bool) -> Iterator[str]:
    """Yield how a slab's stick is marked, what it gives, and how it is held."""
    tape, feet, halved = plan.tape, plan.plan.layout.job.tape.feet, plan.edge == CENTER
    name, thickness = board_of(plan.plan)
    marks = (
        (say("lined.stick_line") if halved else say("edges.stick_first"), tape.show(0)),
        (say("edges.stick_edge") if halved else say("edges.stick_other"), tape.show(length)),
        (say("edges.stick_form", board=name), tape.show(length + thickness)),
    )
    told = "; ".join(say("edges.stick_at", size=size, what=what) for what, size in marks)
    yield say("edges.stick_drawn", marks=told)
    first = "lined.first_left" if plan.edge == "left" else "lined.first_right"
    key = "lined.first_off" if aside else "lined.how_halved" if halved else first
    if not (key == "lined.how_halved" and short):
        yield say(key, width=tape.show(length))
    yield say("lined.how_square")
    if length > LONG[feet]:
        yield say("edges.long_stick")


def _off_stakes(plan: LinePlan, slab: LineSlab, aside: float) -> Iterator[str]:
    """Yield where both edges, the footing's and the dig's are off stakes that stand aside of the line, metres to its
    left."""
    left, right = slab.left - aside, -slab.right - aside
    yield say("lined.faces_off" if is_wall(plan.plan) else "lined.edges_off", at=_pair(plan, left, right))
    past = footing_past(plan.plan)
    if past is not None:
        yield say("lined.footing_off", at=_pair(plan, left + past, right - past))
    past = dug_past(plan.plan)
    yield say("lined.dig_off", at=_pair(plan, left + past, right - past))
    if is_wall(plan.plan) or plan.edge == CENTER:
        yield say("lined.tape_square")


def _pair(plan: LinePlan, left: float, right: float) -> str:
    """Return two distances off a line, both to the left, metres: the nearer one first where they are on one hand."""
    near, far = (plan.tape.show(size) for size in sorted((abs(left), abs(right))))
    if right >= 0:
        return say("lined.pair_left", near=near, far=far)
    if left <= 0:
        return say("lined.pair_right", near=near, far=far)
    return say("lined.pair_both", left=plan.tape.show(left), right=plan.tape.show(-right))


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


def slip_told(plan: LinePlan, slab: LineSlab) -> Iterator[str]:
    """Yield by how much a stick that is held out of square makes the slab narrow."""
    tape, feet = plan.tape, plan.plan.layout.job.tape.feet
    reaches = [reach for reach in (slab.left, -slab.right) if reach]
    length = max(abs(reach) for reach in reaches)
    if aside_of(plan) and (is_wall(plan.plan) or plan.edge == CENTER):
        return  # no stick gauges those
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
