"""Which point of the stake is on the line, told: by what is driven, by the drawing's line, and past the ends."""

from __future__ import annotations

from collections.abc import Sequence
from math import isclose

from bowstring.analysis.obstructions import Obstructions
from bowstring.geometry.plane import Point
from bowstring.job.job import Job
from bowstring.job.terms import LINE_ENDS
from bowstring.layout.layout import Layout
from bowstring.layout.limits import limits_of
from bowstring.report.forming.ends import ends_of_arc
from bowstring.report.forming.pins import Pins, centers_told, pins_of
from bowstring.report.forming.plan import plan_of
from bowstring.report.forms.stakeline import OnLinePart, OverrunPart
from bowstring.units.sizes import TWO_FEET
from bowstring.words import say

OVERRUN = {True: TWO_FEET, False: 0.6}
"""Metres that a board runs on straight past an end, where the tape reads feet and where it doesn't (common practice,
no source)."""

SQUARE = 1e-9
"""Metres: no way along the string at all, where the tangent is square to it."""


def report_on_line(layout: Layout) -> OnLinePart:
    """Return the answer's ``on_line``."""
    job = layout.job
    tape, half = job.shown, job.diameter / 2 if job.diameter else None
    plan = plan_of(layout, job.forming)
    pins = pins_of(plan)
    return {
        "point": say(f"on_line.{_point(job, pins)}"),
        "pins": pins,
        "card": say(f"on_line.card_{pins}") if pins in ("back", "maybe") else "",
        "lines": [*_lines(job, half, pins), *(centers_told(plan) if pins in ("back", "maybe") else [])],
        "half": half,
        "half_shown": None if half is None else tape.show_whole(half),
        "drawn_to": _drawn_to(job),
        "come_back": _come_back(job, pins),
        "overrun": None if job.driven == "hub" else overrun_part(layout, ends_of_arc(plan)),
    }


def _point(job: Job, pins: Pins) -> str:
    """The stakes behind a board stand on a line of their own, and so do pins."""
    if pins in ("back", "maybe"):
        return f"pin_{pins}"
    return "board_off" if job.driven == "board" and job.outward else job.driven


def _lines(job: Job, half: float | None, pins: Pins) -> list[str]:
    tape = job.shown
    if job.driven == "board":
        return [say(f"on_line.{_point(job, pins)}_first"), say("on_line.board_then")]
    if pins == "past":
        return [say("on_line.pin_first"), say("on_line.pin_past")]
    if job.driven != "pin":
        size = say("on_line.size_feet" if tape.feet else "on_line.size_metric")
        return [say(f"on_line.{job.driven}_{part}", size=size) for part in ("first", "then")]
    first = say("on_line.pin_back_first" if pins == "back" else "on_line.pin_first")
    if half is None or job.diameter is None:
        return [first, say("on_line.pin_feet" if tape.feet else "on_line.pin_metric")]
    held = say("on_line.pin_held", half=tape.show_whole(half), size=tape.show_whole(job.diameter))
    return [first, held]


def _drawn_to(job: Job) -> str | None:
    """What the line of the drawing means for the offset; a width says how far a face is from the centre line."""
    if job.drawn_to is None or job.drawn_to == "unsure":
        return None
    told = say(f"on_line.drawn_to_{job.drawn_to}")
    if job.drawn_to != "centre" or not job.width:
        return told
    width, half = (job.shown.show_whole(size) for size in (job.width, job.width / 2))
    return " ".join([told, say("on_line.width", width=width, half=half)])


def _come_back(job: Job, pins: Pins) -> str | None:
    if not job.outward or job.driven == "board":
        return None
    each = say("on_line.each_pin_back" if pins == "back" else f"on_line.each_{job.driven}")
    return say("on_line.come_back", offset=job.shown.show_whole(abs(job.outward)), each=each)


def _in_the_way(layout: Layout, end: Point, stake: Point) -> str | None:
    """What is in the way of the stake past an end: of the string produced, of its offset, of the board."""
    ground, foot = Obstructions(layout.staked, limits_of(layout.job)), Point(stake.x, end.y)
    lines = ((end, foot), (foot, stake), (end, stake))
    found = (name for one, other in lines for name in ground.stoppers(one, other))
    return next(found, None) or next(ground.standing(stake), None)


def overrun_part(layout: Layout, against: Sequence[str] = ()) -> OverrunPart | None:
    """Return the stake past each end: back along the tangent, which leaves the string at half the central angle;
    ``None`` where neither end has room for one. Concrete stands at the ends ``against``: none is driven there."""
    arc, tape = layout.staked, layout.job.shown
    length = OVERRUN[layout.job.tape.feet]
    along, off = length * arc.cosine, length * arc.sine
    which = "square" if isclose(along, 0, abs_tol=SQUARE) else "past" if along > 0 else "before"
    if any(step.kind == "string_none" for step in layout.recipe.steps):
        which = "straight"  # no string is up to carry on past the end
    shown = {name: tape.show(abs(size)) for name, size in (("length", length), ("along", along), ("off", off))}
    ways = {"A": (Point(0.0, 0.0), Point(-along, -off)), "B": (Point(arc.chord, 0.0), Point(arc.chord + along, -off))}
    found = {end: _in_the_way(layout, *way) for end, way in ways.items()}
    found = {end: what for end, what in found.items() if end not in against}
    free = [end for end, what in found.items() if not what]
    if not free:
        return None
    blocked = [say("on_line.overrun_blocked", what=what, end=end) for end, what in found.items() if what]
    line = say("on_line.string" if layout.string_used else "on_line.line")
    numbers = (
        say("on_line.overrun", ends=_others(against), **shown),
        say(f"on_line.overrun_{which}", line=line, **shown),
    )
    parts = (*numbers, *blocked, *_stopped(against))
    return {
        "length": length,
        "along": along,
        "off": off,
        "length_shown": shown["length"],
        "along_shown": shown["along"],
        "off_shown": shown["off"],
        "text": " ".join(parts),
        "stakes": [{"name": end, "x": stake.x, "y": stake.y} for end, (_end, stake) in ways.items() if end in free],
    }


def _others(against: Sequence[str]) -> str:
    """The ends past which boards run on, named."""
    return say("ends.both") if not against else "".join(end for end in LINE_ENDS if end not in against)


def _stopped(against: Sequence[str]) -> list[str]:
    """What the board does where it can't run on: at the ends ``against`` concrete that is said to stand there, else
    wherever any does."""
    return [say("on_line.overrun_lap", end=end) for end in against] or [say("on_line.brace")]
