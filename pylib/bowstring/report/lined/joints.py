"""The joints along a line, told."""

from __future__ import annotations

from math import degrees, floor

from bowstring.forming.joints import LEAST_CORNER, NARROW, NEAR_RATIO, is_past
from bowstring.forming.line.panels import Mark
from bowstring.job.forming import MOST_PANELS
from bowstring.report.forming.apron import joints_in_short, joints_told, missed
from bowstring.report.forming.end_joints import joints_told as at_ends_told
from bowstring.report.forming.joints import deep_told, depth_of, isolation_told, most_told, open_told
from bowstring.report.forming.panels import COUNT, EVERY
from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.quantities import inch_tape, mark_up, most_of, thick
from bowstring.report.forms.build_lined import LinedJoints, LinedPage, LinedTable
from bowstring.report.lined.apron_ends import ends_along
from bowstring.report.lined.held import held_page
from bowstring.report.lined.jointing import LineJointing, jointing_of
from bowstring.report.lined.line import name_of
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def short_of(plan: LinePlan) -> LinedJoints | None:
    """Return the answer's ``joints``, ``None`` where something has to be said first."""
    jointing = jointing_of(plan)
    if jointing is None or plan.asks:
        return None
    if jointing.stopped:
        count = sum(jointing.chosen.counts) if jointing.too_many else jointing.chosen.count
        return {"count": count, "left": [], "right": []}
    fronts = [mark.front for mark in jointing.chosen.marks[:-1]]
    return {
        "count": jointing.chosen.count,
        "left": [front.left for front in fronts],
        "right": [front.right for front in fronts],
    }


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the joints."""
    if held := held_page(plan, "joints"):
        return held
    jointing = jointing_of(plan)
    if jointing is None:
        return page_of("joints", "open", *open_told(plan.plan, plan.waits), "slab")
    if jointing.stopped:
        return _stopped(plan, jointing)
    tape, chosen = plan.tape, jointing.chosen
    longest, shortest = tape.show_running(chosen.longest), tape.show_running(chosen.shortest)
    key = "lined.joints_one" if chosen.count == 1 else "lined.joints_row"
    corner = _least_corner(jointing)
    near = corner < LEAST_CORNER or bool(_missed(plan)) or (not _band(plan) and is_past(chosen.ratio, NEAR_RATIO))
    made = page_of("joints", "near" if near else "usual", say(key, count=chosen.count, longest=longest))
    made["more"] = _more(plan, jointing, corner, shortest)
    key = "lined.joints_conclusion_one" if chosen.count == 1 else "lined.joints_conclusion"
    made["conclusion"] = say(key, count=chosen.count, longest=longest, shortest=shortest)
    made["tables"] = [_table(plan, jointing)]
    made["lines"] = _lines(plan, jointing, corner)
    made["cautions"] = [] if is_wall(plan.plan) else [say("joints.silica")]
    return made


def _stopped(plan: LinePlan, jointing: LineJointing) -> LinedPage:
    thickness, tape = plan.said.slab.thickness, plan.tape
    most = most_of(tape, jointing.limit)
    if jointing.too_many:
        made = page_of("joints", "stop", say("joints.too_many", most=MOST_PANELS), "", "slab")
        made["stop"] = say("joints.stop_many", most=MOST_PANELS)
        return made
    longest = tape.show_running(jointing.chosen.longest)
    key = "lined.joints_long" if thickness else "lined.joints_long_plain"
    short = say(key, most=most, thickness=thick(tape, thickness) if thickness else "")
    made = page_of("joints", "stop", short, say("lined.joints_long_more", longest=longest), "slab")
    made["stop"] = say("lined.joints_stop", longest=longest, most=most)
    return made


def _band(plan: LinePlan) -> bool:
    """Whether the slab is too narrow for its panels to be judged by their shape."""
    return (plan.width or 0.0) < NARROW * (1 - 1e-9)


def _least_corner(jointing: LineJointing) -> float:
    """The least angle between a joint and an edge, degrees: at a kink's miter."""
    joins = len(jointing.chosen.counts) - 1
    return min((degrees(jointing.chosen.corner(join)) for join in range(joins)), default=90.0)


def _more(plan: LinePlan, jointing: LineJointing, corner: float, shortest: str) -> str:
    """The row's second fact."""
    chosen, depth, off = jointing.chosen, depth_of(plan.plan), _missed(plan)
    if off:
        return off
    if corner < LEAST_CORNER:
        return say("lined.joints_corner", corner=_whole(corner))
    if not _band(plan) and is_past(chosen.ratio, NEAR_RATIO):
        number = _worst(jointing)
        key = "lined.joints_ratio_over" if is_past(chosen.ratio) else "lined.joints_ratio_near"
        return say(key, number=number, ratio=f"{chosen.ratio:.2f}")
    if chosen.count == 1:
        return say("lined.joints_no_joint")
    if depth is None:
        return say("lined.joints_shortest", shortest=shortest)
    return say("lined.joints_more", shortest=shortest, depth=mark_up(inch_tape(plan.tape), depth))


def _whole(corner: float) -> str:
    """An angle in degrees, down to a whole one."""
    return f"{floor(corner + 1e-6)}°"


def _missed(plan: LinePlan) -> str:
    """Return that an end of the apron has no joint, empty where each has one."""
    return missed(ends_along(plan))


def _worst(jointing: LineJointing) -> int:
    """The number, from 1, of the panel whose longest side is most times its shortest."""
    ratios = jointing.chosen.ratios
    return ratios.index(max(ratios)) + 1


def _table(plan: LinePlan, jointing: LineJointing) -> LinedTable:
    """Every joint's places along both forms, its station where the line has them, and the line's end."""
    rows = []
    marks, tape = jointing.chosen.marks, plan.tape
    ends = [(end.joint, say(key)) for end, key in zip(ends_along(plan), ("deep.begins", "deep.ends"), strict=False)]
    apron = {joint: text for joint, text in ends if joint}
    for number, mark in enumerate(marks, 1):
        last = number == len(marks)
        there = ""
        if last:
            there = say("lined.the_end")
        elif mark.share is None:
            there = say("lined.begins", piece=name_of(plan, mark.piece + 2))
        there = "; ".join(filter(None, [there, apron.get(number, "")]))
        places = [tape.show_running(along) for along in mark.front]
        station = [plan.along(_along(plan, mark))] if plan.stationed else []
        rows.append(["" if last else f"{number}", *station, *places, there])
    stations = [say("station.head")] if plan.stationed else []
    heads = [say("joints.joint"), *stations, say("lined.left_form"), say("lined.right_form"), say("lined.there")]
    return {"key": "joints", "title": say("joints.table"), "heads": heads, "rows": rows}


def _along(plan: LinePlan, mark: Mark) -> float:
    """How far along the drawn line a panel ends, metres."""
    first, last = plan.line.stations[mark.piece : mark.piece + 2]
    return first + (last - first) * (1.0 if mark.share is None else mark.share)


def _lines(plan: LinePlan, jointing: LineJointing, corner: float) -> list[str]:
    """How they are cut, and why so."""
    taped = say("walled.taped_line" if is_wall(plan.plan) else "lined.joints_taped")
    chosen, lines = jointing.chosen, [taped, say("lined.joints_square")]
    if told := [*joints_told(plan.plan, ends_along(plan))]:
        lines.append(" ".join(told))
    if any(not join.tangent for join in plan.line.joins):
        lines.append(say("lined.joints_miter"))
    if corner < LEAST_CORNER:
        lines.append(say("lined.joints_corner_sharp", corner=_whole(corner)))
    lines.append(deep_told(plan.plan, depth_of(plan.plan)))
    lines += [*at_ends_told(plan.plan, plan.line.length)]
    if is_wall(plan.plan):
        return lines  # how long its panels are, and what they are isolated from, the drawing says
    if not _band(plan):
        lines.append(_shape(jointing))
    if len(chosen.counts) > 1:
        lines.append(say("lined.joints_meet"))
    lines += _most(plan, jointing)
    return [*lines, isolation_told(plan.plan)]


def paper_lines(plan: LinePlan) -> list[str]:
    """Return what the form sheet says of the joints, nothing where they stop or something has to be said first."""
    jointing = jointing_of(plan)
    if jointing is None or plan.asks or jointing.stopped:
        return []
    told = []
    if any(not join.tangent for join in plan.line.joins):
        told.append(say("lined.joints_miter"))
    return [*told, _deep_in_short(plan), *joints_in_short(plan.plan, ends_along(plan))]


def _deep_in_short(plan: LinePlan) -> str:
    depth = depth_of(plan.plan)
    if depth is None:
        return deep_told(plan.plan, depth)
    return say("joints.deep_short", depth=mark_up(inch_tape(plan.tape), depth))


def _shape(jointing: LineJointing) -> str:
    chosen, number = jointing.chosen, _worst(jointing)
    ratio = f"{chosen.ratio:.2f}"
    if not is_past(chosen.ratio):
        return say("joints.shape", ratio=ratio)
    longer, width = max(chosen.sides[number - 1]), chosen.sweep.slab.width
    piece = chosen.marks[number - 1].piece
    count = 1 if chosen.stops and chosen.stops[piece] else chosen.counts[piece]
    if is_past(longer / width):
        key = "lined.shape_long"
    else:  # with one panel fewer its own grow by as much as that makes of the others
        fewer = count > 1 and longer < width and longer * count / (count - 1) <= jointing.limit
        key = "lined.shape_short" if fewer else "lined.shape_odd"
    return say(key, number=number, ratio=ratio)


def _most(plan: LinePlan, jointing: LineJointing) -> list[str]:
    """Why they are no longer, and where that isn't kept."""
    chosen, said = jointing.chosen, plan.said.joints.count
    if jointing.rule == COUNT:
        if said is not None and chosen.count != said:
            return [say("lined.count_taken", said=said, count=chosen.count)]
        return [most_told(plan.plan, "joints.most_count", jointing.most, chosen.count)]
    key = "lined.most_every" if jointing.rule == EVERY else f"joints.most_{jointing.rule}"
    told = [most_told(plan.plan, key, jointing.most, chosen.count)]
    if chosen.longest > jointing.most * (1 + 1e-6):
        told.append(say("lined.kink_longer", longest=plan.tape.show_running(chosen.longest)))
    return told
