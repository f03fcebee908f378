"""Where the concrete has to be while it comes, and where a short load may end."""

from __future__ import annotations

from bowstring.forming.joints import Panels
from bowstring.forming.pad import Pad
from bowstring.forming.partly import along, share_of
from bowstring.forming.pour import loads, reached
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.pouring import LOW, Pouring, runs_back, strip_of
from bowstring.report.forming.quantities import down_to, fine_tape, form_step, up_to
from bowstring.report.forms.build_pour import BulkheadPart, ReachRow
from bowstring.words import say

PARTS = ((0.5, "half"), (0.75, "three_quarters"))
"""Of a truck: a quarter says nothing yet."""

HALF_OUT = -2
"""Of the moments: half of the last truck, then three quarters."""

LAST_CALLS = slice(-3, None)
"""Of the moments: the last full truck before the last, where there is one, then those; the first of them still leaves
time to call."""

MOST_TRUCKS = 6
"""Rows of full trucks: of more only the last ones are told."""

AT_JOINT = 0.05
"""Metres: a joint that is no farther from a place names it."""


def report_reach(plan: Plan, pouring: Pouring, chosen: Panels | None) -> list[ReachRow]:
    """Return the moments at which somebody looks, and where the concrete has to be then.

    None where it comes in bags. Every full truck but the last, then half and three quarters of the last one.
    """
    return [_moment(plan, pouring, chosen, share, text) for share, text in moments_of(pouring)]


def moments_of(pouring: Pouring) -> list[tuple[float, str]]:
    """Return the moments: which share of the order is out, and how that is said."""
    if pouring.small:
        return []
    truck = pouring.truck * pouring.unit
    ordered = pouring.order.ordered
    count, last = loads(ordered, truck)
    full = range(max(1, count - MOST_TRUCKS), count)
    moments = [(number * truck, say("pour.out_full", number=number)) for number in full]
    for part, name in PARTS:
        text = say(f"pour.out_{name}") if count == 1 else say(f"pour.out_last_{name}", number=count)
        moments.append(((count - 1) * truck + part * last, text))
    return [(volume / ordered, text) for volume, text in moments]


def _moment(plan: Plan, pouring: Pouring, chosen: Panels | None, share: float, out: str) -> ReachRow:
    made = pouring.order
    parts = reached(share, made.ordered, made.needed, 1.0)
    plan_at, call = (_place(plan, pouring, part) for part in parts)
    step = form_step(plan.tape)
    call_up = up_to(call, step)
    plan_down = max(call_up, down_to(plan_at, step))  # nothing spare: the two are one
    full = parts[0] >= 1 - 1e-9
    marks = chosen.outside_marks() if chosen else ()
    joint = next((row for row, at in enumerate(marks, 1) if abs(at - call) <= AT_JOINT), 0)
    return {
        "out": out,
        "share": share,
        "plan": plan_at,
        "call": call,
        "plan_shown": _last(plan) if full else plan.tape.show_running(plan_down),
        "call_shown": plan.tape.show_running(call_up),
        "joint": joint,
    }


def _place(plan: Plan, pouring: Pouring, part: float) -> float:
    """Return where along the outer form a part of the concrete ends, metres; of a slab that fills its curve, along its
    string, or from its back, a strip at a building there included."""
    share = share_of(part, pouring.volume_to)
    if plan.filled is not None:
        if not runs_back(plan.filled):
            return plan.filled.wide * share
        strip = strip_of(plan)
        return strip + (plan.filled.deep - strip) * share
    slab = slab_of(plan)
    assert slab is not None
    return along(slab, "outside", share)


def _last(plan: Plan) -> str:
    """Return what the concrete reaches at the end: B, but of a slab that bulges out past it."""
    filled = plan.filled
    return say("fill.all_of_it") if filled is not None and (filled.bulges or runs_back(filled)) else "B"


def where_read(plan: Plan) -> tuple[str, str]:
    """Return along what the concrete's place is read, in a few words, and how in sentences."""
    if plan.filled is None:
        return say("pour.call_small"), say("pour.reach_note")
    if runs_back(plan.filled):
        pad = plan.filled
        both, against = isinstance(pad, Pad) and pad.both, isinstance(pad, Pad) and pad.against
        call = "pad.call_other" if both else "pad.call_building" if against else "pad.call_back"
        return say(call), say("pad.reach_note_both" if both else "pad.reach_note")
    return say("fill.call_bulge" if plan.filled.bulges else "fill.call_small"), say("fill.reach_note")


def report_bulkhead(plan: Plan, pouring: Pouring, chosen: Panels | None) -> BulkheadPart | None:
    """Return the last joint that the order reaches though the whole base is a little low, ``None`` without a joint.

    In bags there is none: one more is fetched.
    """
    if chosen is None or chosen.count == 1 or pouring.small:
        return None
    made, low = pouring.order, LOW[pouring.yards]
    part = min(1.0, made.ordered / (made.needed + pouring.low_extra))
    ends = _place(plan, pouring, part)
    joint = sum(1 for at in chosen.outside_marks() if at <= ends * (1 + 1e-9))
    if joint == 0:
        return None
    tape, outside, inside = plan.tape, chosen.outer[joint - 1], chosen.inner[joint - 1]
    key = "pour.bulkhead" if part < 1 else "pour.bulkhead_last"
    text = say(
        key,
        joint=joint,
        outside=tape.show_running(outside),
        inside=tape.show_running(inside),
        low=fine_tape(tape).show(low),
        ends=tape.show_running(down_to(ends, form_step(tape))),
    )
    return {"joint": joint, "outside": outside, "inside": inside, "text": text}
