"""The concrete, told."""

from __future__ import annotations

from collections.abc import Sequence
from math import isclose

from bowstring.forming.joints import Panels
from bowstring.forming.pour import CUBIC_YARD, loads
from bowstring.report.forming.apron import apron_joint, apron_lines, ends_at, ends_of, joints_told, paper_told
from bowstring.report.forming.apron import short_told as short_of_apron
from bowstring.report.forming.at_forms import past_edge
from bowstring.report.forming.deepness import along_arc, refusal_of
from bowstring.report.forming.footing import footing_plan
from bowstring.report.forming.measured import mean_shown, measured_lines, thin_told
from bowstring.report.forming.measured import short_told as short_of_depths
from bowstring.report.forming.panels import chosen_panels
from bowstring.report.forming.plan import EDGE, THICKNESS, WIDTH, Plan, is_wall, slab_of
from bowstring.report.forming.pour_changes import report_changes
from bowstring.report.forming.pour_lines import base_told, footing_line, report_lines
from bowstring.report.forming.pour_reach import report_bulkhead, report_reach, where_read
from bowstring.report.forming.pour_wall import (
    footing_pouring,
    wall_changes,
    wall_lines,
    wall_more,
    wall_order,
    wall_panel,
    wall_why,
)
from bowstring.report.forming.pouring import BAGS, USUAL_STEP, Pouring, conclusion_of, footing_of, pouring_of
from bowstring.report.forming.quantities import area_text, fine_tape, ordered_number, percent, thick, up_to, volume_text
from bowstring.report.forming.thick_edge import along_asked, edge_dug, edge_signed
from bowstring.report.forming.wall_dig import wall_dug
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_pour import DeepPart, PourPart
from bowstring.words import say


def report_pour(plan: Plan) -> PourPart | None:
    """Return the answer's ``pour``, ``None`` where something has to be said first."""
    part, pouring = _of_slab(plan), pouring_of(plan)
    if part is None or pouring is None or not is_wall(plan):
        return part
    chosen, footing = chosen_panels(plan), footing_pouring(pouring, footing_of(plan, pouring))
    panel = wall_panel(plan, pouring, chosen.count) if chosen and chosen.even else ""
    part |= {
        "low": 0.0,
        "low_shown": "",
        "base_text": "",
        "low_text": "",
        "measure": "",
        "changes": wall_changes(plan, pouring, footing),
        "lines": wall_lines(plan, pouring, footing, panel, wall_dug(plan)),
    }
    if footing is not None:
        number, unit, text = wall_order(pouring, footing)
        tight = any(one.tight and not one.small for one in (footing, pouring))
        part |= {"state": "near" if tight else "usual"}
        part |= {"number": number, "unit": unit, "text": text, "why": wall_why(plan, pouring, footing)}
    below = footing_plan(plan)
    under = pouring_of(below) if below else None
    if below is not None and under is not None:  # flat work as any other
        part |= {
            "reach": report_reach(below, under, None),
            "reach_where": say("walled.call_small"),
            "reach_note": say("walled.reach_note"),
        }
    return part


def _of_slab(plan: Plan) -> PourPart | None:
    pouring = pouring_of(plan)
    return None if pouring is None else _told(plan, pouring, chosen_panels(plan))


def _told(plan: Plan, pouring: Pouring, chosen: Panels | None) -> PourPart:
    made, feet, fine, footing = pouring.order, plan.tape.feet, fine_tape(plan.tape), footing_of(plan, pouring)
    (count, last), (where, how) = loads(made.ordered, pouring.truck * pouring.unit), where_read(plan)
    low, (number, unit, text) = fine.down((pouring.bought - made.needed) / pouring.area), conclusion_of(pouring)
    flat = not is_wall(plan)  # a wall rises in lifts, and has its own: see report_pour
    return {
        "state": _state(plan, pouring),
        "area": pouring.area,
        "volume": made.needed,
        "with_waste": made.with_waste,
        "order": made.ordered,
        "yards": pouring.yards,
        "volume_yards": made.needed / CUBIC_YARD,
        "order_yards": made.ordered / CUBIC_YARD,
        "area_shown": area_text(pouring.area, feet),
        "volume_shown": volume_text(made.needed, feet),
        "order_shown": _ordered(pouring),
        "depth": pouring.depth,
        "depth_shown": thick(plan.tape, pouring.depth),
        "waste": pouring.waste,
        "waste_said": plan.said.slab.waste is not None,
        "step": pouring.step * pouring.unit,
        "truck": pouring.truck * pouring.unit,
        "loads": count,
        "last": last,
        "footing": None if footing is None else footing.needed,
        "footing_order": None if footing is None else footing.ordered,
        "bag_count": pouring.bags(made),
        "bag_shown": BAGS[pouring.yards][0],
        "by_bags": pouring.small,
        "low": low,
        "low_shown": fine.show(low),
        "per_panel": made.needed / chosen.count if chosen and pouring.even else None,
        "number": number,
        "unit": unit,
        "text": text,
        "why": why_of(plan, pouring),
        "deep": _deep_told(plan, pouring),
        "reach_where": where,
        "reach_note": how,
        "reach": report_reach(plan, pouring, chosen) if flat else [],
        "changes": report_changes(plan, pouring) if flat else [],
        "bulkhead": report_bulkhead(plan, pouring, chosen) if flat else None,
        "base_text": base_told(plan, pouring) if flat else "",
        "low_text": low_told(pouring, fine.show(low), low),
        "measure": measure_told(pouring),
        "footing_text": footing_line(plan, pouring) if flat else "",
        "lines": report_lines(plan, pouring, chosen) if flat else [],
        "cautions": [say("pour.burns")],
        "notes": [say("pour.mix")],
    }


def row_of_pour(plan: Plan, part: PourPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        return _open_row(plan)
    pouring = pouring_of(plan)
    assert pouring is not None
    more = more_of(plan, pouring)
    return {"key": "pour", "state": part["state"], "text": part["text"], "more": more, "panel": ""}


def more_of(plan: Plan, pouring: Pouring) -> str:
    """Return the row's second fact: what is in the forms, or what it is next to."""
    by_depths = short_of_depths(plan, pouring)
    if by_depths:
        return by_depths
    made = pouring.order
    footing = footing_pouring(pouring, footing_of(plan, pouring)) if is_wall(plan) else None
    tight = next((one for one in (footing, pouring) if one and one.tight and not one.small), None)
    if footing is not None and tight is None:
        return wall_more(pouring, footing)
    if tight is not None:
        pouring, made = tight, tight.order
        after = made.ordered + pouring.step * pouring.unit
        return say("pour.tight", waste=volume_text(made.with_waste, pouring.yards),
                   next=ordered_number(after, pouring.step, pouring.yards))  # fmt: skip
    return say("pour.more", volume=volume_text(made.needed, plan.tape.feet), waste=percent(pouring.waste))


def _open_row(plan: Plan) -> BuildRow:
    slab = slab_of(plan)
    refused = refusal_of(plan, None if slab is None else along_arc(slab)) if slab or plan.filled else None
    if refused:
        return {"key": "pour", "state": "stop", "text": refused.text, "more": refused.more, "panel": "slab"}
    if plan.no_inner:
        text, more = say("pour.no_inner"), say("fill.or_fills")
        return {"key": "pour", "state": "stop", "text": text, "more": more, "panel": "slab"}
    text, more = open_told(plan.waits, plan.said.slab.thickness)
    return {"key": "pour", "state": "open", "text": text, "more": more, "panel": "slab"}


def open_told(missing: Sequence[str], thickness: float | None) -> tuple[str, str]:
    """Return what has to be said before there is an order, as the two lines of a row."""
    waits = [*missing, *([] if thickness else [THICKNESS])]
    if WIDTH in waits:
        key = "pour.open" if THICKNESS in waits else "pour.open_width"
    elif EDGE in waits:
        key = "pour.open_edge"
    else:
        key = "pour.open_thickness"
    return say(key), say("pour.open_more") if len(waits) > 1 else ""


def _ordered(pouring: Pouring) -> str:
    return ordered_number(pouring.order.ordered, pouring.step, pouring.yards)


def why_of(plan: Plan, pouring: Pouring) -> str:
    """Return how the order came to be."""
    made, feet = pouring.order, plan.tape.feet
    key = "pour.why_step"
    if pouring.small:
        key = "pour.why_bags"
    elif pouring.step == USUAL_STEP:
        key = "pour.why_quarter" if pouring.yards else "pour.why_quarter_metre"
    return say(
        key,
        area=area_text(pouring.area, feet),
        depth=_depth(plan, pouring),
        volume=volume_text(made.needed, feet),
        waste=percent(pouring.waste),
        with_waste=volume_text(made.with_waste, feet, _places(pouring)),
        step=_step(pouring),
    )


def _places(pouring: Pouring) -> int:
    """Return how many decimals tell the volume that is rounded up: three where two of them would give another order."""
    unit = pouring.unit
    step, shown = pouring.step * unit, round(pouring.order.with_waste / unit, 2) * unit
    return 2 if isclose(up_to(shown, step), pouring.order.ordered, rel_tol=1e-9) else 3


def _depth(plan: Plan, pouring: Pouring) -> str:
    deep, tape = pouring.deep, plan.tape
    if pouring.measured:
        depth = say("deep.depth_mean", mean=mean_shown(plan, pouring), count=len(deep.reads))
    else:
        depth = thick(tape, deep.depth)
        if deep.apron:
            depth = say("deep.depth_apron", depth=depth, apron=thick(tape, deep.apron.depth))
    if deep.edges(pouring.body, 1.0):
        return say("pour.depth_edges", depth=depth, edge=thick(tape, deep.edge_depth))
    return depth


def _state(plan: Plan, pouring: Pouring) -> str:
    return "near" if _thin(plan, pouring)[0] or (pouring.tight and not pouring.small) else "usual"


def _thin(plan: Plan, pouring: Pouring) -> tuple[list[str], str]:
    """Return where it comes out thinner than it is drawn, and how much of that is allowed."""
    slab = slab_of(plan)
    return ([], "") if slab is None else thin_told(plan, pouring.deep, along_arc(slab))


def _deep_told(plan: Plan, pouring: Pouring) -> DeepPart:
    thin, limit = _thin(plan, pouring)
    return {
        "apron": apron_lines(plan, pouring),
        "joints": list(joints_told(plan, ends_of(plan))),
        "apron_shown": short_of_apron(plan),
        "apron_paper": paper_told(plan),
        "apron_depth": "" if pouring.deep.apron is None else thick(plan.tape, pouring.deep.apron.depth),
        "apron_joint": apron_joint(plan),
        "apron_ends": ends_at(plan),
        "edge_dug": edge_dug(plan),
        "edge_past": past_edge(plan),
        "edge_signed": edge_signed(plan),
        "edge_building": along_asked(plan, pouring),
        "dig_shown": _dig_shown(plan, pouring.depth),
        "dig_apron": "" if pouring.deep.apron is None else _dig_shown(plan, pouring.deep.apron.depth),
        "measured": measured_lines(plan, pouring),
        "measured_shown": short_of_depths(plan, pouring),
        "thin": thin,
        "limit": limit,
    }


def _dig_shown(plan: Plan, depth: float) -> str:
    """Return how far under the tops it is dug, the base included; empty where no base is said."""
    base = plan.said.slab.base
    return "" if base is None else thick(plan.tape, depth + base)


def measure_told(pouring: Pouring) -> str:
    """Return what is done about a base that may be low: nothing more where it was measured."""
    return "" if pouring.measured else say("pour.measure")


def _step(pouring: Pouring) -> str:
    number = ordered_number(pouring.step * pouring.unit, pouring.step, pouring.yards)
    return say("pour.yards3" if pouring.yards else "pour.metres3", volume=number)


def low_told(pouring: Pouring, shown: str, low: float) -> str:
    """Return how low a base the order fills."""
    if pouring.measured and low > 0:
        return say(
            "deep.fills", order=pouring.called(pouring.order) if pouring.small else _measured(pouring), low=shown
        )
    if low <= 0:
        return say("pour.fills_none", order=conclusion_of(pouring)[2] if pouring.small else _measured(pouring))
    if pouring.small:
        return say("pour.fills_bags", order=pouring.called(pouring.order), low=shown)
    return say("pour.fills", order=_measured(pouring), low=shown)


def _measured(pouring: Pouring) -> str:
    return say("pour.yards3" if pouring.yards else "pour.metres3", volume=_ordered(pouring))
