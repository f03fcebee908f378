"""Why no grade may be used yet, what settles it, and what holds a limit."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.band import OUTER
from bowstring.report.forming.grade_limits import Judged
from bowstring.report.forming.grade_said import Clashing, Settled
from bowstring.report.forming.grade_told import across_limit_of, climbed, over_line, over_why
from bowstring.report.forming.heights import height, size_of, tape_of_heights
from bowstring.report.forming.plan import USUAL_CROSS, Plan
from bowstring.report.forming.slopes import RAMP, beside, down, percent, typed
from bowstring.report.forms.build_grades import GradeStop, GradeWay
from bowstring.words import say


def too_steep(plan: Plan, settled: Settled, judged: Judged) -> GradeStop | None:
    """Return the stop of a slope past its limit, where the job says that it stops."""
    if not plan.said.grade.demanded or not (judged.runs_over or judged.falls_over):
        return None
    if judged.runs_over:
        head, why = say(f"grades.steep_{judged.steepest}"), " ".join(over_why(judged))
        return {"head": head, "text": over_line(judged), "why": why}
    slope, limit = beside(judged.across, judged.across_limit), across_limit_of(judged.across_limit)
    text = say("grades.across_too_steep", slope=slope, limit=limit)
    return {"head": say("grades.steep_across"), "text": text, "why": ""}


def ways_of(plan: Plan, settled: Settled, judged: Judged) -> list[GradeWay]:
    """Return what settles slopes past their limits."""
    ways: list[GradeWay] = []
    if judged.runs_over:
        if judged.hold is not None:
            ways.append(
                _way(
                    "hold.line" if judged.on_line else "hold",
                    {"grade-slope": typed(judged.hold)},
                    slope=percent(judged.hold),
                )
            )
        if judged.ramp:
            ways.append(_way("ramp", {"grade-limit": typed(RAMP)}))
    if judged.falls_over:
        ways += _across_ways(plan, settled, judged)
    return ways


def _across_ways(plan: Plan, settled: Settled, judged: Judged) -> Iterator[GradeWay]:
    if not settled.grade.crown:
        held = min(USUAL_CROSS, down(judged.across_limit))
        yield _way("hold_across", {"grade-cross": typed(held)}, slope=percent(held))
        return
    band, marks = settled.grade.band, tape_of_heights(plan.tape)
    most = marks.down(judged.across_limit * min(band.width(0.0), band.width(1.0)) / 4)
    if most:
        yield _way("hold_crown", {"grade-crown": marks.show(most)}, height=marks.show(most))


def stop_of(plan: Plan, clash: Clashing) -> GradeStop:
    """Return the stop of two things that don't agree."""
    values = _values(plan, clash)
    text = "text.line" if clash.what == "steep" and plan.said.grade.on_line and plan.edge != "centre" else "text"
    texts = [say(f"grades.clash_{clash.what}_{part}", **values) for part in ("head", text, "why")]
    return {"head": texts[0], "text": texts[1], "why": texts[2]}


def row_of_clash(plan: Plan, clash: Clashing) -> tuple[str, str]:
    """Return both lines of the first screen's row."""
    values = _values(plan, clash)
    return say(f"grades.clash_{clash.what}_short", **values), say(f"grades.clash_{clash.what}_more", **values)


def _values(plan: Plan, clash: Clashing) -> dict[str, str]:
    """Return what the sentences of a clash are filled with."""
    said, values = plan.said.grade, dict[str, str]()
    if said.high:
        values |= {"high": said.high, "other": "A" if said.high == "B" else "B"}
    if clash.by_tops is not None:
        values["tops_slope"] = percent(clash.by_tops.running)
        values["by_tops"] = height(plan.tape, climbed(clash.by_tops)).shown
    if clash.by_tops is not None and clash.by_slope is not None:
        values["slope"] = percent(clash.by_slope.running)
        values["by_slope"] = height(plan.tape, climbed(clash.by_slope)).shown
        values["off"] = size_of(plan.tape, clash.by_slope.top(1.0, OUTER) - clash.by_tops.top(1.0, OUTER))
    return values


def ways_of_clash(plan: Plan, clash: Clashing) -> list[GradeWay]:
    """Return what settles a clash: each drops one of the two."""
    if clash.what == "top":
        values = _values(plan, clash)
        meet = _way("meet_tops", {"grade-slope": "", "grade-high": ""}, slope=values["tops_slope"])
        return [meet, _way("keep_slope", {"grade-to": ""}, slope=values["slope"])]
    if clash.what == "high":
        end = _values(plan, clash)["other"]
        return [_way("high_end", {"grade-high": end}, end=end)]
    if clash.what == "crown":
        return [
            _way("keep_crown", {"grade-cross": "", "grade-low": ""}),
            _way("keep_cross", {"grade-crown": ""}),
        ]
    return []


def _way(key: str, fields: dict[str, str], **values: str) -> GradeWay:
    return {"text": say(f"grades.way_{key}", **values), "fields": fields}
