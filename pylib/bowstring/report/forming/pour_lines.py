"""How the concrete comes, what it fills, and what was taken where nothing is said."""

from __future__ import annotations

from itertools import pairwise
from math import isclose

from bowstring.forming.joints import Panels
from bowstring.forming.outline import dug_between
from bowstring.forming.pad import Pad
from bowstring.forming.pour import CUBIC_YARD, Order, loads
from bowstring.report.forming.at_forms import at_forms, held, lowest
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.ends import formed
from bowstring.report.forming.formboard import MOST_BANKED, form_of
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.report.forming.pouring import BAGS, Pouring, footing_of, strip_of
from bowstring.report.forming.quantities import (
    down_to,
    fine_tape,
    form_step,
    ordered_number,
    percent,
    thick,
    volume_text,
)
from bowstring.report.forming.thick_edge import along_asked, along_of, edge_where
from bowstring.words import say


def report_lines(plan: Plan, pouring: Pouring, chosen: Panels | None) -> list[str]:
    """Return the sentences, in the order in which a crew asks."""
    panel = _panel(plan, pouring, chosen) if chosen else ""
    return lines_of(plan, pouring, panel, footing_line(plan, pouring), _dug(plan))


def lines_of(plan: Plan, pouring: Pouring, panel: str, footing: str, dug: float | None) -> list[str]:
    """Return the same, with what is told of the panels and of the footing; ``dug``: the area of the dig, square metres,
    ``None`` where it is no wider than the slab, or isn't known."""
    lines = [loads_told(pouring), panel, _by_the_bag(pouring), _form(plan, pouring)]
    lines += [_edges(plan, pouring), _strip(plan, pouring), footing]
    if plan.said.slab.base:
        lines.append(_bed(plan, pouring, dug))
    lines.append(both_told(pouring))
    taken = taken_told(plan, pouring)
    return [line for line in [*lines, taken] if line]


def loads_told(pouring: Pouring) -> str:
    """Return how many trucks bring an order."""
    count, last = loads(pouring.order.ordered, pouring.truck * pouring.unit)
    truck = volume_text(pouring.truck * pouring.unit, pouring.yards, 1 if pouring.truck % 1 else 0)
    if pouring.small:
        return say("pour.small_load", order=_called(pouring, pouring.order.ordered))
    if count == 1:
        return say("pour.one_truck", truck=truck)
    return say("pour.trucks", count=count, truck=truck, last=_called(pouring, last))


def _called(pouring: Pouring, volume: float) -> str:
    number = ordered_number(volume, pouring.step, pouring.yards)
    return say("pour.yards3" if pouring.yards else "pour.metres3", volume=number)


def _panel(plan: Plan, pouring: Pouring, chosen: Panels) -> str:
    if pouring.small:
        each = pouring.order.with_waste / chosen.count / BAGS[pouring.yards][1]
        return say("pour.panel_bags", count=f"{each:.1f}") if chosen.count > 1 and pouring.even else ""
    feet, needed = plan.tape.feet, pouring.order.needed
    if not (chosen.alike and pouring.even):
        upto = [0.0, *(pouring.volume_to(share) for share in chosen.shares)]
        takes = [after - before for before, after in pairwise(upto)]
        key = "deep.panels" if chosen.even else "pour.panels_taper"
        return say(key, least=volume_text(min(takes), feet), most=volume_text(max(takes), feet))
    reach = chosen.outer[-1] / needed * (CUBIC_YARD if feet else 1.0)
    one = say("pour.one_yard" if feet else "pour.one_metre")
    return say(
        "pour.panel" if chosen.count > 1 else "pour.panel_one",
        panel=volume_text(needed / chosen.count, feet),
        one=one,
        reach=plan.tape.show_running(down_to(reach, form_step(plan.tape))),
    )


def _by_the_bag(pouring: Pouring) -> str:
    bag = BAGS[pouring.yards][0]
    made = say("pour.bag_feet" if pouring.yards else "pour.bag_litres")
    key = "pour.bag_makes" if pouring.small else "pour.bags_many"
    return say(key, count=pouring.bags(pouring.order), bag=bag, made=made)


def _form(plan: Plan, pouring: Pouring) -> str:
    """What the form's real height means for the base: a 1x4 or 2x4 is 3-1/2 in high."""
    form, fine, depth = form_of(plan), fine_tape(plan.tape), _deepest(pouring)
    if is_designed(plan):
        return say("pour.form_wall")
    if lowest(plan, edge=True):
        return " ".join(at_forms(plan))
    height, off = fine.show(form.height), fine.show(abs(depth - form.height))
    if isclose(depth, form.height, rel_tol=1e-9):
        return say("pour.form_even", height=height)
    if depth > form.height + MOST_BANKED:
        return say("pour.form_low", height=height, off=off)
    if depth < form.height:
        return say("pour.form_deep", height=height, off=off)
    return say("pour.form_measured" if depth > pouring.depth else "pour.form_short", height=height, off=off)


def _deepest(pouring: Pouring) -> float:
    """How deep the base is under the tops where the forms stand on it, metres: the most that was measured, or as drawn;
    in an apron it is cut inside the forms alone."""
    apron = pouring.deep.apron
    outside = [one for one in pouring.deep.stretches if apron is None or one.first != apron.first]
    return max((depth for one in outside for _share, depth in one.reads), default=pouring.depth)


def _edges(plan: Plan, pouring: Pouring) -> str:
    """What thick edges add, and how it was counted."""
    tape, deep = plan.tape, pouring.deep
    extra = deep.edges(pouring.body, 1.0)
    if not extra:
        return ""
    return say(
        "pour.edges",
        where=edge_where(plan),
        wide=thick(tape, deep.edge),
        depth=thick(tape, deep.edge_depth),
        extra=volume_text(extra, plan.tape.feet),
    )


def _strip(plan: Plan, pouring: Pouring) -> str:
    """That the strip at a building is no concrete, and how far round a thick edge is figured where nobody says."""
    strip = strip_of(plan)
    told = [say("pad.strip_out", gap=fine_tape(plan.tape).show(strip))] if strip else []
    return " ".join(text for text in [*told, along_asked(plan, pouring)] if text)


def footing_line(plan: Plan, pouring: Pouring) -> str:
    """Return what the footing takes, empty without one: it is poured first, and ordered by itself."""
    if plan.filled is not None and plan.said.slab.footing_width is not None:
        return say("fill.no_footing")
    return footing_told(plan, pouring, footing_of(plan, pouring))


def footing_told(plan: Plan, pouring: Pouring, made: Order | None) -> str:
    """Return the same of an order that is made already."""
    said = plan.said.slab
    if made is None or said.footing_width is None or said.footing_depth is None:
        return ""
    tape = plan.tape
    return say(
        "pour.footing",
        wide=thick(tape, said.footing_width),
        depth=thick(tape, said.footing_depth),
        volume=volume_text(made.needed, plan.tape.feet),
        order=_called(pouring, made.ordered),
        waste=percent(pouring.waste),
    )


def base_told(plan: Plan, pouring: Pouring) -> str:
    """Return the base for paper: over the whole dig where that is known, else under the slab; empty without one."""
    base, dug = plan.said.slab.base or 0.0, _dug(plan)
    if not base:
        return ""
    volume = volume_text((dug or _bedded(plan, pouring)) * base, plan.tape.feet)
    return say("pour.base_dug" if dug else "pour.base_slab", base=thick(plan.tape, base), volume=volume)


def _bedded(plan: Plan, pouring: Pouring) -> float:
    """The area of the base under the slab, square metres: a strip at a building stands on it, too."""
    return plan.filled.area if plan.filled is not None else pouring.area


def _bed(plan: Plan, pouring: Pouring, dug: float | None) -> str:
    """The base, under the slab alone and over the whole dig, of which ``dug`` is the area."""
    base, feet, area = plan.said.slab.base or 0.0, plan.tape.feet, _bedded(plan, pouring)
    told = {"base": thick(plan.tape, base), "volume": volume_text(area * base, feet)}
    return say("pour.bed", **told) if dug is None else say("pour.bed_dug", dug=volume_text(dug * base, feet), **told)


def _dug(plan: Plan) -> float | None:
    """The area of the whole dig that a base lies on, square metres; ``None`` where that is the slab's, or isn't
    known."""
    past, slab = overdig_of(plan), plan.taper or plan.slab
    if isinstance(plan.filled, Pad) and past:
        dug = plan.filled.dug(past, along_of(plan) if held(plan) else "")
        return dug if dug > plan.filled.area else None
    if held(plan):
        return None
    return dug_between(*plan.edges, past, formed(plan)) if past and slab else None


def both_told(pouring: Pouring) -> str:
    """Return the order in the other unit, too."""
    made = pouring.order.ordered
    return say("pour.both", order=_called(pouring, made), other=volume_text(made, not pouring.yards))


def taken_told(plan: Plan, pouring: Pouring) -> str:
    """Return what was taken where the job says nothing."""
    said = plan.said.slab
    taken = [
        *([] if said.waste is not None else [say("pour.taken_waste", waste=percent(pouring.waste))]),
        *(
            []
            if said.step is not None
            else [say("pour.taken_step", step=_called(pouring, pouring.step * pouring.unit))]
        ),
    ]
    return " ".join(taken)
