"""The stretch where a slab is thicker, told: how deep it is dug, what it takes, and whether a joint stands at its
ends."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bowstring.forming.joints import DEPTH
from bowstring.forming.partly import along
from bowstring.report.forming.deepness import along_arc, deep_of
from bowstring.report.forming.panels import NEAR_END, is_within, isolation_shown, jointing_of
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.pouring import Pouring
from bowstring.report.forming.quantities import area_text, inch_tape, mark_up, thick, volume_text
from bowstring.words import say


@dataclass(frozen=True)
class ApronEnd:
    """An end of an apron: ``where``, as it is told on both forms; ``joint``: the number of the joint that stands there,
    0 for none. ``outer``: it is the slab's own end."""

    where: str
    joint: int
    outer: bool


def end_of(plan: Plan, at: float, length: float, where: str, joints: Sequence[float]) -> ApronEnd:
    """Return an end ``at`` metres along a slab of a length, with the one of its joints that stands there."""
    near = NEAR_END[plan.layout.job.tape.feet]
    joint = next((number for number, place in enumerate(joints, 1) if abs(place - at) <= near), 0)
    return ApronEnd(where, joint, not is_within(plan, at, length))


def ends_of(plan: Plan) -> list[ApronEnd]:
    """Return the ends of the apron of a slab on one arc, with the joints near them; none where it can't be there."""
    apron, slab, tape = plan.said.slab.apron, slab_of(plan), plan.tape
    if apron is None or slab is None or deep_of(plan, along_arc(slab)) is None:
        return []
    jointing, places = jointing_of(plan), along_arc(slab)
    joints = [] if jointing is None or jointing.stopped else jointing.chosen.outside_marks()
    ends = []
    for at in (apron.start, apron.end):
        inside = tape.show_running(along(slab, "inside", places.share(at)))
        where = say("deep.end_arc", outside=tape.show_running(min(at, places.length)), inside=inside)
        ends.append(end_of(plan, at, places.length, where, joints))
    return ends


def ends_at(plan: Plan) -> list[float]:
    """Return where the apron begins and ends along the outer form of a slab on one arc, metres; empty without one."""
    apron, slab = plan.said.slab.apron, slab_of(plan)
    if apron is None or slab is None:
        return []
    length = along_arc(slab).length
    return [min(at, length) for at in (apron.start, apron.end)]


def stretch_told(plan: Plan) -> str:
    """Return from where to where the apron is."""
    apron, tape = plan.said.slab.apron, plan.tape
    assert apron is not None
    return say("deep.stretch", first=tape.show_running(apron.start), last=tape.show_running(apron.end))


def both_told(plan: Plan) -> Iterator[str]:
    """Yield where the apron is on both forms, and along what it is given; nothing of one along several pieces."""
    apron, slab, tape, ends = plan.said.slab.apron, slab_of(plan), plan.tape, _inner_ends(plan)
    if apron is None or slab is None or not ends:
        return
    outer = {"outer_first": tape.show_running(apron.start), "outer_last": tape.show_running(apron.end)}
    yield say("deep.on_both", first=ends[0], last=ends[1], **outer)
    if apron.on_line:
        shares = (along_arc(slab).share(at) for at in (apron.start, apron.end))
        first, last = (tape.show_running(share * plan.line.arc_length) for share in shares)
        yield say("deep.on_line", first=first, last=last)
    elif plan.edge != "outside" and not apron.said:
        yield say("deep.on_outer")


def paper_told(plan: Plan) -> str:
    """Return how thick the apron is and where on both forms, as short as paper has room for; empty without one."""
    apron, ends, tape = plan.said.slab.apron, _inner_ends(plan), plan.tape
    if apron is None or not ends:
        return ""
    outer = say("forming.from_to", first=tape.show_running(apron.start), last=tape.show_running(apron.end))
    inner = say("forming.from_to", first=ends[0], last=ends[1])
    return say("deep.on_paper", depth=thick(plan.tape, apron.thickness), outer=outer, inner=inner)


def inner_told(plan: Plan) -> str:
    """Return from where to where the apron is along the inner form, short; empty where there is none."""
    ends = _inner_ends(plan)
    return say("deep.stretch", first=ends[0], last=ends[1]) if ends else ""


def _inner_ends(plan: Plan) -> list[str]:
    """The apron's ends along the inner form, as they are shown; none where it can't be there."""
    apron, slab, tape = plan.said.slab.apron, slab_of(plan), plan.tape
    if apron is None or slab is None or deep_of(plan, along_arc(slab)) is None:
        return []
    places = along_arc(slab)
    return [tape.show_running(along(slab, "inside", places.share(at))) for at in (apron.start, apron.end)]


def deeper_by(plan: Plan) -> float:
    """Return how much deeper the base is under the apron, metres; 0 where there is none."""
    slab = plan.said.slab
    return slab.apron.thickness - slab.thickness if slab.apron and slab.thickness else 0.0


def short_told(plan: Plan) -> str:
    """Return how thick the apron is and where, in a few words; empty without one."""
    apron = plan.said.slab.apron
    if apron is None:
        return ""
    return say("deep.apron_short", depth=thick(plan.tape, apron.thickness), stretch=stretch_told(plan))


def dig_told(plan: Plan, over_line: bool = False) -> str:
    """Return how the dig is deeper there, empty without an apron."""
    if not deeper_by(plan):
        return ""
    key = "deep.dig_line" if over_line else "deep.dig"
    return say(key, stretch=stretch_told(plan), deeper=thick(plan.tape, deeper_by(plan)))


def apron_lines(plan: Plan, pouring: Pouring, over_line: bool = False) -> list[str]:
    """Return how the apron is dug, what it takes, and how it is formed; empty without one."""
    apron, deep, tape = plan.said.slab.apron, pouring.deep.apron, plan.tape
    if apron is None or deep is None:
        return []
    area = pouring.body.area_to(deep.last) - pouring.body.area_to(deep.first)
    extra = volume_text(area * deeper_by(plan), tape.feet)
    thickness = thick(tape, apron.thickness)
    return [
        dig_told(plan, over_line),
        *(() if over_line else both_told(plan)),
        say("deep.step"),
        say("deep.apron_takes", depth=thickness, area=area_text(area, tape.feet), extra=extra),
        say("deep.apron_forms"),
    ]


def joints_told(plan: Plan, ends: Sequence[ApronEnd]) -> Iterator[str]:
    """Yield which joints stand at the apron's ends, which end has none, and how deep those within are cut."""
    apron = plan.said.slab.apron
    if apron is None or not ends:
        return
    inner = [end for end in ends if not end.outer]
    there = [end.joint for end in inner if end.joint]
    gap = isolation_shown(plan)
    if len(there) > 1:
        yield say("deep.joints_stand", first=there[0], last=there[1], gap=gap)
    elif there:
        yield say("deep.joint_stands", joint=there[0], gap=gap)
    for end in inner:
        if not end.joint:
            yield say("deep.joint_none", where=end.where, gap=gap)
    yield say("deep.joint_depth", depth=apron_joint(plan))


def joints_in_short(plan: Plan, ends: Sequence[ApronEnd]) -> list[str]:
    """Return the same for paper, in one sentence where each end has its joint."""
    apron, inner = plan.said.slab.apron, [end for end in ends if not end.outer]
    if apron is None or not inner or any(not end.joint for end in inner):
        return [*joints_told(plan, ends)]
    gap = isolation_shown(plan)
    joints = ", ".join(str(end.joint) for end in inner)
    return [say("deep.joints_short", joints=joints, gap=gap, depth=apron_joint(plan))]


def apron_joint(plan: Plan) -> str:
    """Return how deep a joint within the apron is cut, empty without one."""
    apron = plan.said.slab.apron
    return mark_up(inch_tape(plan.tape), apron.thickness * DEPTH) if apron else ""


def missed(ends: Sequence[ApronEnd]) -> str:
    """Return that an end of the apron has no joint; empty where each has one."""
    return "" if all(end.outer or end.joint for end in ends) else say("deep.no_joint")
