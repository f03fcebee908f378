"""The tops of a slab that fills its curve, told: one plane, a top at each stake of the curve."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import atan2

from bowstring.forming.pad import Filled, Pad
from bowstring.forming.plane import Plane, turned_from
from bowstring.report.forming.deepness import deep_of
from bowstring.report.forming.fill_plane import ClashingPlane, SettledPlane, settle_plane
from bowstring.report.forming.grade_base import asks, base_lines
from bowstring.report.forming.grade_limits import level_length
from bowstring.report.forming.grade_row import open_row
from bowstring.report.forming.grade_rows import backs_of, base_at, digs_of, has_of, top_of
from bowstring.report.forming.grade_told import across_limit_of, from_where, limit_of
from bowstring.report.forming.grade_water import SLOWEST
from bowstring.report.forming.ground_far import far_stop
from bowstring.report.forming.heights import height, size_of, tape_of_heights
from bowstring.report.forming.plan import USUAL_CROSS, Plan, line_ends
from bowstring.report.forming.slopes import USUAL_CROSS_LIMIT, USUAL_LIMIT, beside, down, percent, typed
from bowstring.report.forming.thick_edge import edge_at
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_grades import GradesPart, GradeStop, GradeWay, TopRow
from bowstring.words import say

STRING, GREATEST = "string", "greatest"
"""The lines of which a slope is told: along the string, and the way that it falls most."""


def report_fill_grades(plan: Plan, filled: Filled, empty: GradesPart) -> GradesPart | None:
    """Return the answer's ``grades``, ``None`` where something has to be said first; ``empty``: it without a number."""
    settled = settle_plane(plan, filled)
    if isinstance(settled, str):
        return None
    if isinstance(settled, ClashingPlane):
        return _stopped(plan, filled, settled, empty)
    return _told(plan, filled, settled, empty)


def row_of_fill_grades(plan: Plan, part: GradesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        settled = settle_plane(plan, plan.filled) if plan.filled else "width"
        assert isinstance(settled, str)
        return open_row(plan, settled)
    panel = "slope" if part["state"] == "stop" else ""
    return {"key": "grades", "state": part["state"], "text": part["short"], "more": part["more"], "panel": panel}


def _told(plan: Plan, filled: Filled, settled: SettledPlane, part: GradesPart) -> GradesPart:
    plane = settled.plane
    rows = _rows(plan, filled, plane)
    far = far_stop(plan, rows, plane.start)
    stop = far[0] if far else _too_steep(settled) if plan.said.grade.demanded else None
    warned = (
        runs_to_building(filled, plane) or settled.over or settled.across_over or settled.near or settled.across_near
    )
    short, more = (far[0]["head"], far[1]) if far else _two_lines(plan, filled, settled)
    slopes = ((STRING, abs(plane.along)), (GREATEST, plane.greatest))
    part |= {
        "state": "stop" if stop else "near" if warned else "usual",
        "short": short,
        "more": more,
        "judged": list(_judged(plan, settled)),
        "running": plane.along,
        "high": None if not plane.along else "B" if plane.along > 0 else "A",
        "cross": abs(plane.away),
        "low": None if not plane.away else "inside" if plane.away > 0 else "outside",
        "slopes": [{"line": line, "slope": slope, "shown": percent(slope)} for line, slope in slopes],
        "steepest": GREATEST,
        "limit": settled.limit,
        "cross_limit": settled.across_limit,
        "hold": settled.hold,
        "ways": [] if far else list(_ways(settled)),
        "stop": stop,
        "warnings": list(_warnings(plan, settled, filled)),
        "sides": ["outside"],
    }
    if stop:
        return part
    drop, most = _drops(plan, settled)
    part |= {
        "conclusion": list(_conclusion(plan, filled, plane)),
        "drop": drop,
        "most_drop": most,
        "water": _water(plane, filled),
        "rows": rows,
        "heads": [say("grades.head_height"), *([say("grades.feet")] if "feet" in has_of(rows) else [])],
        "has": has_of(rows),
        "asks": list(asks(plan, rows, plane.start)),
        "base": list(base_lines(plan)),
        "digs": digs_of(rows),
        "notes": list(_notes(plan, settled, filled)),
    }
    return part


def _rows(plan: Plan, filled: Filled, plane: Plane) -> list[TopRow]:
    """The top of the curved form at every stake, A to B."""
    ground = {read.stake: read.level for read in plan.said.grade.ground}  # it has one edge
    deeper = edge_at(plan, back=False)
    rows: list[TopRow] = [
        {
            "kind": "stake",
            "name": name,
            "share": share,
            "outside": top_of(plan, plane.top(filled.arc.point_at(share)), plane.start, ground.get(name), deeper),
            "inside": None,
            "base": base_at(plan, deep_of(plan, None), share),
        }
        for name, share in plan.shares()
    ]
    return [*rows, *_back(plan, filled, plane, ground)] if isinstance(filled, Pad) else rows


def _back(plan: Plan, pad: Pad, plane: Plane, ground: Mapping[str, float]) -> Iterator[TopRow]:
    """The tops at the other end: at its two corners, and where that is round straight back of every stake."""
    deeper = edge_at(plan, back=True)
    for (_stake, share), name in zip(*backs_of(plan, pad), strict=True):
        top = plane.top(pad.back_of(pad.arc.point_at(share)))
        yield {
            "kind": "back",
            "name": name,
            "share": share,
            "outside": top_of(plan, top, plane.start, ground.get(name), deeper),
            "inside": None,
            "base": base_at(plan, deep_of(plan, None), share, back=True),
        }


def _deepest(filled: Filled, plane: Plane) -> float:
    """How far the curve's middle stands over the middle of the string."""
    return plane.away * filled.arc.sagitta


def _two_lines(plan: Plan, filled: Filled, settled: SettledPlane) -> tuple[str, str]:
    plane, tape = settled.plane, plan.tape
    if settled.over:
        slope = beside(plane.greatest, settled.limit)
        return say("fill.short_over", slope=slope), say("grades.more_across_over", limit=limit_of(settled.limit))
    if settled.across_over:
        text = say("grades.short_cross_over", slope=beside(abs(plane.away), settled.across_limit))
        return text, say("grades.more_across_over", limit=across_limit_of(settled.across_limit))
    up = plane.along * filled.arc.chord
    text = say(f"grades.{'level' if not up else 'up' if up > 0 else 'down'}", height=size_of(tape, up))
    if runs_to_building(filled, plane):
        return say("pad.short_building"), say("pad.more_building", slope=percent(plane.away))
    if not plane.away:
        return text, say("fill.level_off")
    low = "string" if plane.away > 0 else "curve"
    drop = size_of(tape, _deepest(filled, plane))
    return text, say(f"fill.low_{low}", drop=drop, slope=percent(plane.greatest))


def total_fall(pad: Pad, plane: Plane) -> float:
    """Return how much lower a pad's lowest place is than its highest, metres: a plane is highest at a corner, or where
    a curve runs square to its fall."""
    arc, half = pad.arc, pad.arc.half_angle
    turns = (atan2(plane.along, plane.away), atan2(-plane.along, -plane.away))
    shares = [0.0, 1.0, *((turn / half + 1) / 2 for turn in turns if abs(turn) < half)]
    if pad.both:  # the other curve is this one turned over
        over = (atan2(plane.along, -plane.away), atan2(-plane.along, plane.away))
        backs = [0.0, 1.0, *((turn / half + 1) / 2 for turn in over if abs(turn) < half)]
    else:
        backs = [0.0, 1.0]
    tops = [plane.top(arc.point_at(share)) for share in shares]
    tops += [plane.top(pad.back_of(arc.point_at(share))) for share in backs]
    return max(tops) - min(tops)


def _conclusion(plan: Plan, filled: Filled, plane: Plane) -> Iterator[str]:
    yield from _stands(plan, filled, plane)
    if isinstance(filled, Pad) and plane.greatest:
        yield say("pad.total_fall", fall=size_of(plan.tape, total_fall(filled, plane)))


def _stands(plan: Plan, filled: Filled, plane: Plane) -> Iterator[str]:
    up = plane.along * filled.arc.chord
    key = "level" if not up else "up" if up > 0 else "down"
    yield say(f"grades.B_{key}", height=size_of(plan.tape, up))
    if not plane.away:
        yield say("fill.off_level")
        return
    key = "fill.off_up" if plane.away > 0 else "fill.off_down"
    yield say(key, height=size_of(plan.tape, _deepest(filled, plane)))


def _judged(plan: Plan, settled: SettledPlane) -> Iterator[str]:
    plane = settled.plane
    if plane.greatest:
        verdict = "over" if settled.over else "near" if settled.near else "ok"
        slope = beside(plane.greatest, settled.limit)
        yield say(f"fill.greatest_{verdict}", slope=slope, limit=limit_of(settled.limit))
    if plane.away:
        drop, most = _drops(plan, settled)
        verdict = "over" if settled.across_over else "ok"
        unit = "feet" if plan.tape.feet else "metric"
        limit = across_limit_of(settled.across_limit)
        yield say(f"grades.cross_{verdict}_{unit}", drop=drop, most=most, limit=limit)


def _drops(plan: Plan, settled: SettledPlane) -> tuple[str, str]:
    """What stands under one end of a level square off the string, and the most that may."""
    marks, length = tape_of_heights(plan.tape), level_length(plan.tape)
    away, limit = abs(settled.plane.away) * length, settled.across_limit * length
    if settled.across_over:
        return marks.show_past(away, limit)
    most = marks.down(limit)
    return marks.show(min(marks.round(away), most)), marks.show(most)


def runs_to_building(filled: Filled, plane: Plane) -> bool:
    """Tell whether a pad falls toward the building that stands at its back."""
    return isinstance(filled, Pad) and filled.against and plane.away > 0


def _warnings(plan: Plan, settled: SettledPlane, filled: Filled) -> Iterator[str]:
    if runs_to_building(filled, settled.plane):
        yield say("pad.water_building")
    unit = "feet" if plan.tape.feet else "metric"
    if settled.over:
        yield _over_text(settled)
        yield say("fill.hold_or_ask", slope=percent(settled.hold)) if settled.hold is not None else say(
            "fill.change_slopes")  # fmt: skip
    elif settled.near:
        yield say(f"grades.near_why_{unit}", limit=limit_of(settled.limit))
    if settled.across_over:
        yield _across_text(settled)
    elif settled.across_near:
        yield say(f"grades.across_near_why_{unit}", limit=across_limit_of(settled.across_limit))


def _over_text(settled: SettledPlane) -> str:
    return say("fill.too_steep", slope=beside(settled.plane.greatest, settled.limit), limit=limit_of(settled.limit))


def _across_text(settled: SettledPlane) -> str:
    slope = beside(abs(settled.plane.away), settled.across_limit)
    return say("grades.across_too_steep", slope=slope, limit=across_limit_of(settled.across_limit))


def _too_steep(settled: SettledPlane) -> GradeStop | None:
    if settled.over:
        return {"head": say("fill.steep"), "text": _over_text(settled), "why": ""}
    if settled.across_over:
        return {"head": say("grades.steep_across"), "text": _across_text(settled), "why": ""}
    return None


def _ways(settled: SettledPlane) -> Iterator[GradeWay]:
    if settled.over and settled.hold is not None:
        text = say("fill.way_hold", slope=percent(settled.hold))
        yield {"text": text, "fields": {"grade-slope": typed(settled.hold)}}
    if settled.across_over:
        held = min(USUAL_CROSS, down(settled.across_limit))
        yield {"text": say("grades.way_hold_across", slope=percent(held)), "fields": {"grade-cross": typed(held)}}


def _water(plane: Plane, filled: Filled) -> str:
    """Where the water goes: the way of the greatest fall."""
    way = plane.downhill()
    if way is None:
        return say("grades.water_none")
    angle = round(turned_from(way))
    side = "curve" if way.y > 0 else "string"
    if side == "string" and isinstance(filled, Pad):
        return _water_back(plane, filled)
    if not plane.along:
        return say(f"fill.water_{side}")
    end = "B" if way.x > 0 else "A"
    if not plane.away:
        return say("fill.water_end", end=end)
    return say(f"fill.water_{side}_end", end=end, slope=percent(plane.greatest), angle=f"{angle}°")


def _water_back(plane: Plane, pad: Pad) -> str:
    """The same of a fall to the other end."""
    way, end = plane.downhill(), "other" if pad.both else "back"
    assert way is not None
    if not plane.along:
        return say(f"pad.water_{end}")
    told = {"end": "B" if way.x > 0 else "A", "slope": percent(plane.greatest), "angle": f"{round(turned_from(way))}°"}
    return say(f"pad.water_{end}_end", **told) if plane.away else say("fill.water_end", end=told["end"])


def _notes(plan: Plan, settled: SettledPlane, filled: Filled) -> Iterator[str]:
    plane = settled.plane
    if settled.cross_taken:
        yield say("fill.cross_taken", slope=percent(plane.away))
    yield from from_where(plan, plane.start)
    yield say("fill.plane", along=percent(plane.along), away=percent(plane.away), greatest=percent(plane.greatest))
    yield say("pad.string_top" if isinstance(filled, Pad) else "fill.string_top")
    if isinstance(filled, Pad):
        yield say("pad.names_both") if filled.both else say("pad.names_one", **line_ends(plan))
    if settled.by_tops:
        yield say("fill.slope_follows", slope=percent(plane.along))
    if 0 < plane.greatest < SLOWEST:
        yield say("grades.slow_feet" if plan.tape.feet else "grades.slow_metric")
    if plan.tape.unit == "ft-in":
        yield say("grades.each_rounded")
        yield say("grades.inches_govern")
    if settled.limit == USUAL_LIMIT:
        yield say("grades.source_running")
    if settled.across_limit == USUAL_CROSS_LIMIT:
        yield say("grades.source_cross")


def _stopped(plan: Plan, filled: Filled, clash: ClashingPlane, part: GradesPart) -> GradesPart:
    said, values = plan.said.grade, dict[str, str]()
    if said.high:
        values |= {"high": said.high, "other": "A" if said.high == "B" else "B"}
    chord = filled.arc.chord
    values |= {"tops_slope": percent(clash.by_tops), "by_tops": height(plan.tape, clash.by_tops * chord).shown}
    values |= {"slope": percent(clash.by_slope), "by_slope": height(plan.tape, clash.by_slope * chord).shown}
    values["off"] = size_of(plan.tape, (clash.by_slope - clash.by_tops) * chord)
    said_anew = clash.what in ("crown", "steep")
    short, more, head, text, why = (
        say(f"fill.clash_{clash.what}_{one}" if said_anew else f"grades.clash_{clash.what}_{one}", **values)
        for one in ("short", "more", "head", "text", "why")
    )
    part |= {
        "state": "stop",
        "short": short,
        "more": more,
        "stop": {"head": head, "text": text, "why": why},
        "ways": list(_clash_ways(clash, values)),
    }
    return part


def _clash_ways(clash: ClashingPlane, values: dict[str, str]) -> Iterator[GradeWay]:
    if clash.what == "top":
        yield {"text": say("grades.way_meet_tops", slope=values["tops_slope"]),
               "fields": {"grade-slope": "", "grade-high": ""}}  # fmt: skip
        yield {"text": say("grades.way_keep_slope", slope=values["slope"]), "fields": {"grade-to": ""}}
    elif clash.what == "high":
        yield {"text": say("grades.way_high_end", end=values["other"]), "fields": {"grade-high": values["other"]}}
    elif clash.what == "crown":
        yield {"text": say("grades.way_keep_cross"), "fields": {"grade-crown": ""}}
