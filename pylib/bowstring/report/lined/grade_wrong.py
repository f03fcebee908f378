"""Two things that are said of a line's tops and don't agree, told."""

from __future__ import annotations

from bowstring.forming.line.tops import HANDS
from bowstring.report.forming.heights import height, size_of
from bowstring.report.forming.slopes import percent
from bowstring.report.lined.grade_said import ENDS, LineClash
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def clash_texts(plan: LinePlan, clash: LineClash) -> tuple[str, str, str]:
    """Return both lines of the row, and what is wrong with what would settle it."""
    if clash.what == "crown":
        text = f"{say('grades.clash_crown_text')} {say('grades.clash_crown_why')}"
        return say("grades.clash_crown_short"), say("grades.clash_crown_more"), text
    if clash.what == "high":
        return _high(plan)
    assert clash.by_tops is not None
    slope = percent(clash.by_tops.running)
    by_line = ".line" if plan.said.grade.on_line and plan.edge in HANDS else ""
    if clash.what == "steep":
        text = f"{say(f'lined.clash_steep{by_line}', slope=slope)} {say('grades.clash_steep_why')}"
        return say("grades.clash_steep_short", tops_slope=slope), say("grades.clash_steep_more"), text
    assert clash.by_slope is not None
    by_slope, by_tops = (grade.climbed[-1] for grade in (clash.by_slope, clash.by_tops))
    off = size_of(plan.tape, by_slope - by_tops)
    heights = {"by_slope": height(plan.tape, by_slope).shown, "by_tops": height(plan.tape, by_tops).shown}
    text = f"{say('lined.clash_top', **heights)} {say('lined.clash_top_why', off=off)}"
    return say("lined.clash_top_short"), say("lined.clash_top_more", off=off), text


def _high(plan: LinePlan) -> tuple[str, str, str]:
    high = plan.said.grade.high or "A"
    names = {"high": say(f"lined.place_{ENDS[high]}"), "other": say(f"lined.place_{ENDS['A' if high == 'B' else 'B']}")}
    text = f"{say('lined.clash_high', **names)} {say('grades.clash_high_why')}"
    return say("grades.clash_high_short"), say("grades.clash_high_more", **names), text
