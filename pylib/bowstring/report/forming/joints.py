"""The joints, told."""

from __future__ import annotations

from collections.abc import Sequence
from math import degrees, floor

from bowstring.forming.joints import DEPTH, LEAST_CORNER, NEAR_RATIO, RATIO, Panels, is_past
from bowstring.forming.partly import turned
from bowstring.job.forming import MOST_PANELS
from bowstring.report.forming.apron import ends_of, joints_told, missed
from bowstring.report.forming.end_joints import joints_told as at_ends_told
from bowstring.report.forming.formboard import form_of
from bowstring.report.forming.panels import (
    THICKNESS,
    THIN,
    Jointing,
    is_band,
    isolation_shown,
    jointing_of,
    limit_of,
    longer_panels,
)
from bowstring.report.forming.plan import EDGE, WIDTH, Plan, is_designed, is_wall, slab_of
from bowstring.report.forming.quantities import fine_tape, inch_tape, mark_up, most_of, thick
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_joints import JointRow, JointsPart, PanelsRow
from bowstring.words import say


def report_joints(plan: Plan) -> JointsPart | None:
    """Return the answer's ``joints``, ``None`` where something has to be said first."""
    jointing, slab = jointing_of(plan), slab_of(plan)
    if jointing is None or slab is None:
        return None
    tape, chosen = plan.tape, jointing.chosen
    depth = depth_of(plan)
    longer = 0.0 if is_wall(plan) else turned(slab) * form_of(plan).thickness
    state = _state(plan, jointing)
    return {
        "state": state,
        "asked": plan.said.joints.said,
        "count": chosen.count,
        "outside": chosen.outside,
        "inside": chosen.inside,
        "outside_shown": tape.show_running(chosen.outside),
        "inside_shown": tape.show_running(chosen.inside),
        "ratio": chosen.ratio,
        "most": jointing.most,
        "most_shown": most_of(tape, jointing.most),
        "why_most": _why_most(plan, jointing),
        "depth": depth,
        "depth_shown": mark_up(inch_tape(tape), depth) if depth else "",
        "longer": longer,
        "longer_shown": "" if is_wall(plan) else _longer(plan, longer),
        "corner": degrees(chosen.corner),
        "rows": [] if state == "stop" else _rows(plan, chosen),
        "grid": [],
        "offers": [_offer(plan, one, one == chosen) for one in _in_order(plan, jointing)],
        "text": _text(plan, jointing),
        "conclusion": _conclusion(plan, jointing) if state != "stop" else "",
        "stop": _stop(plan, jointing) if state == "stop" else "",
        "warned": warned(plan, jointing),
        "taped": say("walled.taped") if is_wall(plan) else say("joints.taped", longer=_longer(plan, longer)),
        "lines": _lines(plan, jointing, depth),
        "cautions": [] if is_wall(plan) else [say("joints.silica")],
    }


def row_of_joints(plan: Plan, part: JointsPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        return _open_row(plan)
    panel = "slab" if part["state"] == "stop" else ""
    return {"key": "joints", "state": part["state"], "text": part["text"], "more": _more(plan, part), "panel": panel}


def _open_row(plan: Plan) -> BuildRow:
    if plan.no_inner:
        text, more = say("joints.no_inner"), say("fill.or_fills")
    else:
        text, more = open_told(plan, plan.waits)
    state = "stop" if plan.no_inner else "open"
    assert plan.no_inner or WIDTH in plan.waits or EDGE in plan.waits
    return {"key": "joints", "state": state, "text": text, "more": more, "panel": "slab"}


def open_told(plan: Plan, waits: Sequence[str]) -> tuple[str, str]:
    """Return what has to be said before there are joints, as the two lines of a row."""
    short = say("joints.open" if WIDTH in waits else "joints.open_edge")
    if is_wall(plan):
        return short, say("walled.joints")  # its height is no slab's thickness
    most, thickness = most_of(plan.tape, limit_of(plan)), plan.said.slab.thickness
    at = thick(plan.tape, thickness) if thickness else ""
    return short, say("joints.open_more" if at else "joints.open_plain", most=most, thickness=at)


def depth_of(plan: Plan) -> float | None:
    """Return how deep a joint is cut, metres, ``None`` where no thickness is said or the drawing tells it."""
    thickness = plan.said.slab.thickness
    return thickness * DEPTH if thickness and not is_designed(plan) else None


def _longer(plan: Plan, longer: float) -> str:
    return plan.tape.show(longer) if plan.tape.round(longer) else plan.tape.show_near(longer)


def _state(plan: Plan, jointing: Jointing) -> str:
    if jointing.stopped:
        return "stop"
    if degrees(jointing.chosen.corner) < LEAST_CORNER or missed(ends_of(plan)):
        return "near"
    near = RATIO if jointing.chosen.odd else NEAR_RATIO  # beside an apron some are shorter: that is no fault by itself
    return "near" if not is_band(plan) and is_past(jointing.chosen.ratio, near) else "usual"


def _text(plan: Plan, jointing: Jointing) -> str:
    chosen, tape = jointing.chosen, plan.tape
    if chosen.count > MOST_PANELS:
        return say("joints.too_many", most=MOST_PANELS)
    if jointing.too_long:
        thickness, most = plan.said.slab.thickness, most_of(tape, jointing.limit)
        if thickness is None:
            return say("joints.too_long_plain", most=most)
        return say("joints.too_long", most=most, thickness=thick(tape, thickness))
    if chosen.count == 1:
        return say("joints.one", outside=tape.show_running(chosen.outside))
    key = "joints.panels" if chosen.alike else "joints.panels_upto"
    return say(key, count=chosen.count, outside=tape.show_running(chosen.outside))


def _conclusion(plan: Plan, jointing: Jointing) -> str:
    chosen, tape = jointing.chosen, plan.tape
    return say(
        "joints.conclusion_one"
        if chosen.count == 1
        else "joints.conclusion"
        if chosen.alike
        else "joints.conclusion_taper",
        count=chosen.count,
        outside=tape.show_running(chosen.outside),
        inside=tape.show_running(chosen.inside),
    )


def _stop(plan: Plan, jointing: Jointing) -> str:
    if not jointing.too_long:
        return say("joints.stop_many", most=MOST_PANELS)
    outside, most = plan.tape.show_running(jointing.chosen.outside), most_of(plan.tape, jointing.limit)
    return say("joints.stop_text", outside=outside, most=most)


def _more(plan: Plan, part: JointsPart) -> str:
    if part["state"] == "stop":
        return say("joints.stop_more", outside=part["outside_shown"]) if part["count"] <= MOST_PANELS else ""
    off = missed(ends_of(plan))
    if off:
        return off
    jointing = jointing_of(plan)
    if part["state"] == "near" and jointing and jointing.chosen.odd:
        return say("lined.joints_ratio_over", number=jointing.chosen.odd, ratio=f"{part['ratio']:.2f}")
    if part["state"] == "near":
        key = "joints.ratio_over" if is_past(part["ratio"]) else "joints.ratio_near"
        return say(key, inside=part["inside_shown"], ratio=f"{part['ratio']:.2f}")
    if part["count"] == 1:
        return say("joints.inside_only", inside=part["inside_shown"])
    key = "joints.inside_depth" if part["depth_shown"] else "joints.inside_plain"
    if plan.said.slab.thickness and not part["depth_shown"]:
        key = "joints.inside_wall"
    return say(key, inside=part["inside_shown"], depth=part["depth_shown"])


def _why_most(plan: Plan, jointing: Jointing) -> str:
    key, said = f"joints.most_{jointing.rule}", plan.said.joints.count
    if said is not None and said < jointing.chosen.count:
        return say("joints.count_taken", said=said, count=jointing.chosen.count)
    if jointing.rule == "width" and not jointing.chosen.even:
        key = "joints.most_width_taper"
    return most_told(plan, key, jointing.most, jointing.chosen.count)


def most_told(plan: Plan, key: str, most: float, count: int) -> str:
    """Return why panels are no longer than ``most`` metres, by the message ``key``."""
    tape, thickness = plan.tape, plan.said.slab.thickness
    shown = thick(tape, thickness) if thickness else fine_tape(tape).show(THIN if tape.feet else 0.1)
    if key == f"joints.most_{THICKNESS}" and not thickness:
        key = "joints.most_thickness_thin"
    limit = most_of(tape, limit_of(plan))
    return say(key, most=most_of(tape, most), thickness=shown, count=count, limit=limit)


def _rows(plan: Plan, chosen: Panels) -> list[JointRow]:
    places = [*zip(chosen.outer, chosen.inner, chosen.shares, strict=True)]
    apron = {end.joint: say(key) for end, key in zip(ends_of(plan), ("deep.begins", "deep.ends"), strict=False)}
    tape, close = plan.tape, plan.layout.job.tape.mark / 2
    length = plan.line.arc_length
    stakes = [(name, share) for name, share in plan.shares() if 0 < share < 1]
    rows: list[JointRow] = []
    for number, (outside, inside, at) in enumerate(places, 1):
        last = number == chosen.count
        stake = "" if last else next((name for name, share in stakes if abs(share - at) * length <= close), "")
        rows.append(
            {
                "number": 0 if last else number,
                "name": "B" if last else str(number),
                "outside": outside,
                "inside": inside,
                "outside_shown": tape.show_running(outside),
                "inside_shown": tape.show_running(inside),
                "stake": stake,
                "apron": "" if last else apron.get(number, ""),
            }
        )
    return rows


def _offer(plan: Plan, one: Panels, chosen: bool) -> PanelsRow:
    outside, inside = plan.tape.show_running(one.outside), plan.tape.show_running(one.inside)
    every = plan.said.joints.every
    return {
        "count": one.count,
        "outside": one.outside,
        "inside": one.inside,
        "outside_shown": outside,
        "inside_shown": inside,
        "ratio": one.ratio,
        "chosen": chosen,
        "text": say("joints.offer_one" if one.count == 1 else "joints.offer", count=one.count),
        "more": say("joints.offer_over", outside=outside, most=most_of(plan.tape, every))
        if every is not None and _is_over(plan, one)
        else say("joints.offer_more", outside=outside),
        "over": _is_over(plan, one),
    }


def _is_over(plan: Plan, one: Panels) -> bool:
    """Tell whether panels are longer than the job says that they may be."""
    every = plan.said.joints.every
    return every is not None and one.outside > every * (1 + 1e-9)


def _in_order(plan: Plan, jointing: Jointing) -> list[Panels]:
    """Return the panels to choose from, those that the job's own limit forbids last."""
    return sorted(jointing.offers, key=lambda one: _is_over(plan, one))


def _lines(plan: Plan, jointing: Jointing, depth: float | None) -> list[str]:
    """How they are cut, and why so."""
    chosen = jointing.chosen
    lines = [say("joints.square")] if chosen.even else [_corners(chosen)]
    lines.append(deep_told(plan, depth))
    at_ends = [*at_ends_told(plan, plan.edges[0].length)]
    if is_wall(plan):
        return [*lines, *at_ends]  # how long its panels are, and what they are isolated from, the drawing says
    if not is_band(plan):
        lines.append(_shape(plan, jointing))
    return [
        *lines,
        *joints_told(plan, ends_of(plan)),
        *at_ends,
        _why_most(plan, jointing),
        isolation_told(plan),
    ]


def deep_told(plan: Plan, depth: float | None) -> str:
    """Return how deep the joints are cut."""
    thickness = plan.said.slab.thickness
    if thickness and is_designed(plan):
        return say("joints.deep_wall")
    if depth and thickness:
        return say("joints.deep", depth=mark_up(inch_tape(plan.tape), depth), thickness=thick(plan.tape, thickness))
    return say("joints.deep_open")


def isolation_told(plan: Plan) -> str:
    """Return where a joint keeps the slab off what stands beside it."""
    return say("joints.isolation", gap=isolation_shown(plan))


def _corners(chosen: Panels) -> str:
    corner = degrees(chosen.corner)
    key = "joints.corners" if corner >= LEAST_CORNER else "joints.corners_sharp"
    return say(key, corner=f"{floor(corner)}°")


def _shape(plan: Plan, jointing: Jointing) -> str:
    chosen = jointing.chosen
    ratio = f"{chosen.ratio:.2f}"
    if not is_past(chosen.ratio):
        return say("joints.shape", ratio=ratio)
    if chosen.odd:
        return _odd_shape(plan, jointing, ratio)
    if not chosen.even:
        return say("joints.shape_taper", ratio=ratio)
    if is_past(chosen.outside / chosen.inside):
        return say("joints.shape_never", ratio=ratio)
    return say("joints.shape_wide" if max(chosen.widths) > chosen.outside else "joints.shape_long", ratio=ratio)


def _odd_shape(plan: Plan, jointing: Jointing, ratio: str) -> str:
    """What is wrong with panels beside an apron's end: one that is alone there is too short for the end's sake, several
    for their number's."""
    first, last = jointing.chosen.odd_run
    if first == last:
        return say("joints.shape_apron", number=first, ratio=ratio)
    longer = longer_panels(plan, jointing)
    if longer is None:
        return say("joints.shape_short_ask", first=first, last=last, ratio=ratio)
    values = {"outside": plan.tape.show_running(longer.outside), "then": f"{longer.ratio:.2f}"}
    return say("joints.shape_short", first=first, last=last, ratio=ratio, count=longer.count, **values)


def warned(plan: Plan, jointing: Jointing) -> str:
    """Return what paper has to say of the panels' shape, too: empty where it is right, or nothing asks for it."""
    if is_wall(plan) or is_band(plan) or jointing.stopped or not is_past(jointing.chosen.ratio):
        return ""
    return _shape(plan, jointing)
