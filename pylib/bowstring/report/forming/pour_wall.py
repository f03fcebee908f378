"""The concrete of a wall, told: its footing first, then the wall, in the order of the pour."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.pour import Order, loads, order, reached
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pour_lines import both_told, loads_told, taken_told
from bowstring.report.forming.pour_reach import HALF_OUT, moments_of
from bowstring.report.forming.pouring import BAGS, THICKER, Pouring
from bowstring.report.forming.quantities import (
    FOOT,
    down_to,
    inch_tape,
    ordered_number,
    percent,
    thick,
    up_to,
    volume_text,
)
from bowstring.report.forms.build_pour import ChangeRow
from bowstring.words import say

LIFT = {True: FOOT, False: 0.1}
"""Metres of height that a lift is figured by, where the tape reads feet and where it doesn't."""


def footing_pouring(pouring: Pouring, made: Order | None) -> Pouring | None:
    """Return a footing's order as a pour of its own, from the same plant."""
    return None if made is None else pouring.of_order(made)


def wall_order(pouring: Pouring, footing: Pouring) -> tuple[str, str, str]:
    """Return what is ordered as one conclusion, what it counts, and as a sentence: each in bags by itself."""
    first, last = (one.called(one.order) for one in (footing, pouring))
    if footing.small != pouring.small:
        first, last = (_with_unit(one) for one in (footing, pouring))
        kind = "mixed"
    else:
        kind = "bags" if pouring.small else "yards" if pouring.yards else "metres"
    bag = BAGS[pouring.yards][0]
    number = say("walled.then", first=first, last=last)
    return number, say(f"walled.unit_{kind}", bag=bag), say(f"walled.order_{kind}", first=first, last=last, bag=bag)


def _with_unit(one: Pouring) -> str:
    made = one.called(one.order)
    if one.small:
        return say("walled.so_many_bags", count=made)
    return say("walled.so_many_yards" if one.yards else "pour.metres3", volume=made)


def wall_more(pouring: Pouring, footing: Pouring) -> str:
    """Return the row's second fact: what both come to."""
    if pouring.small or footing.small:
        return say("walled.more_bags")
    both = pouring.order.ordered + footing.order.ordered
    number = ordered_number(both, pouring.step, pouring.yards)
    return say("walled.more_yards" if pouring.yards else "walled.more_metres", number=number)


def wall_why(plan: Plan, pouring: Pouring, footing: Pouring) -> str:
    """Return how both orders came to be: net, and with their waste."""
    feet = plan.tape.feet
    told = {
        name: {"net": volume_text(one.order.needed, feet), "with_waste": volume_text(one.order.with_waste, feet)}
        for name, one in (("footing", footing), ("wall", pouring))
    }
    waste = percent(pouring.waste)
    return " ".join(say(f"walled.why_{name}", waste=waste, **values) for name, values in told.items())


def wall_lines(
    plan: Plan, pouring: Pouring, footing: Pouring | None, panel: str, dug: float | None = None
) -> list[str]:
    """Return how it comes, in the order in which a crew asks; ``panel``: what a panel takes; ``dug``: the area of the
    dig, square metres, ``None`` where that isn't known."""
    return [line for line in _lines(plan, pouring, footing, panel, dug) if line]


def _lines(plan: Plan, pouring: Pouring, footing: Pouring | None, panel: str, dug: float | None) -> Iterator[str]:
    if footing is not None:
        yield say("walled.footing_first", told=loads_told(footing))
        yield say("walled.wall_then", told=loads_told(pouring))
    else:
        yield loads_told(pouring)
    lift = LIFT[plan.tape.feet]
    yield say("walled.lift", height=plan.tape.show(lift), volume=volume_text(pouring.area * lift, plan.tape.feet))
    yield _call(plan, pouring)
    yield panel
    yield _bed(plan, footing, dug)
    yield both_told(pouring) if footing is None else ""
    yield taken_told(plan, pouring)


def _call(plan: Plan, pouring: Pouring) -> str:
    """Return how high a wall's concrete stands with half of its last load out, and under what height the plant is
    called; empty where it comes in bags. A wall as high all along takes as much for each height."""
    moments = moments_of(pouring)
    if not moments:
        return ""
    share, _told = moments[HALF_OUT]
    made, tape = pouring.order, inch_tape(plan.tape)
    stands, least = reached(share, made.ordered, made.needed, pouring.depth)
    call = up_to(least, tape.mark)
    shown = {"plan": tape.show(max(call, down_to(stands, tape.mark))), "call": tape.show(call)}
    count, _last = loads(made.ordered, pouring.truck * pouring.unit)
    return say("walled.call_half", **shown) if count == 1 else say("walled.call_last", number=count, **shown)


def _bed(plan: Plan, footing: Pouring | None, dug: float | None) -> str:
    """The base under the footing alone, and over the whole dig, as of a slab."""
    said, feet = plan.said.slab, plan.tape.feet
    if not said.base or footing is None or said.footing_depth is None:
        return ""
    volume = footing.order.needed / said.footing_depth * said.base
    told = {"base": thick(plan.tape, said.base), "volume": volume_text(volume, feet)}
    over_all = volume_text((dug or 0.0) * said.base, feet)
    if dug is None or over_all == told["volume"]:
        return say("walled.bed", **told)
    return say("walled.bed_dug", dug=over_all, **told)


def wall_panel(plan: Plan, pouring: Pouring, count: int) -> str:
    """Return what each of so many equal panels takes, empty where there is but one."""
    each = volume_text(pouring.order.needed / count, plan.tape.feet)
    return say("walled.panel", volume=each) if count > 1 else ""


def wall_changes(plan: Plan, pouring: Pouring, footing: Pouring | None) -> list[ChangeRow]:
    """Return what changes the orders: the wall higher, the footing deeper, another waste."""
    more, other = THICKER[pouring.yards], 0.05 if pouring.waste > 0.05 else 0.10
    high = thick(plan.tape, pouring.depth + more)
    rows = [_row(pouring, footing, say("walled.if_high", height=high), pouring.again(depth=pouring.depth + more))]
    if footing is not None and plan.said.slab.footing_depth is not None:
        deep = plan.said.slab.footing_depth
        deeper = _scaled(footing, (deep + more) / deep, footing.waste)
        rows.append(
            _row(pouring, footing, say("walled.if_deep", depth=thick(plan.tape, deep + more)), pouring.order, deeper)
        )
    then = None if footing is None else _scaled(footing, 1.0, other)
    rows.append(_row(pouring, footing, say("pour.if_waste", waste=percent(other)), pouring.again(waste=other), then))
    return rows


def _scaled(footing: Pouring, times: float, waste: float) -> Order:
    return order(footing.order.needed * times, waste, footing.step * footing.unit)


def _row(pouring: Pouring, footing: Pouring | None, what: str, made: Order, deeper: Order | None = None) -> ChangeRow:
    wall = pouring.of_order(made)
    shown, before, ordered = wall.called(made), pouring.called(pouring.order), made.ordered
    if footing is not None:
        below = deeper or footing.order
        shown = say("walled.then", first=footing.of_order(below).called(below), last=shown)
        before = say("walled.then", first=footing.called(footing.order), last=before)
        ordered += below.ordered
    return {"what": what, "more": "", "order": ordered, "order_shown": shown, "changed": shown != before}
