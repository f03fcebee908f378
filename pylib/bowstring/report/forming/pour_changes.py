"""What changes the order: a low base, another thickness, width or waste."""

from __future__ import annotations

from bowstring.forming.pour import Order
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.pouring import LOW, THICKER, WIDER, ArcBody, Body, Pouring
from bowstring.report.forming.quantities import fine_tape, percent, thick, volume_text
from bowstring.report.forms.build_pour import ChangeRow
from bowstring.words import say


def report_changes(plan: Plan, pouring: Pouring) -> list[ChangeRow]:
    """Return a row for each change that somebody may meet on the job."""
    slab = slab_of(plan, WIDER[pouring.yards])
    return changes_of(plan, pouring, _wider(plan, pouring, None if slab is None else ArcBody(slab)))


def changes_of(plan: Plan, pouring: Pouring, wider: list[ChangeRow]) -> list[ChangeRow]:
    """Return the same, with the rows of a wider slab made already."""
    tape, yards = plan.tape, pouring.yards
    low, thicker = LOW[yards], pouring.depth + THICKER[yards]
    if pouring.measured:
        rows = [_row(pouring, pouring.drawn(), say("deep.if_drawn", thickness=thick(tape, pouring.depth)))]
        return [*rows, *wider, *_other_waste(pouring)]
    lower = _row(pouring, pouring.again(more=pouring.low_extra),
                 say("pour.if_low", low=fine_tape(tape).show(low)), _extra(plan, pouring))  # fmt: skip
    rows = [
        lower,
        _row(pouring, pouring.again(depth=thicker),
             say("pour.if_thick", thickness=thick(tape, thicker))),
        *wider,
    ]  # fmt: skip
    return [*rows, *_other_waste(pouring)]


def _other_waste(pouring: Pouring) -> list[ChangeRow]:
    other = 0.05 if pouring.waste > 0.05 else 0.10
    return [_row(pouring, pouring.again(waste=other), say("pour.if_waste", waste=percent(other)))]


def _wider(plan: Plan, pouring: Pouring, body: Body | None) -> list[ChangeRow]:
    if body is None or plan.taper is None:
        return wider_rows(plan, pouring, body)
    more = thick(plan.tape, WIDER[pouring.yards])
    return [_row(pouring, pouring.again(body=body), say("pour.if_wider", more=more))]


def wider_rows(plan: Plan, pouring: Pouring, body: Body | None) -> list[ChangeRow]:
    """Return the row of a wider slab, none where there is no room for it: it would reach a center."""
    if plan.width is None or body is None:
        return []
    wider = plan.width + WIDER[pouring.yards]
    return [_row(pouring, pouring.again(body=body), say("pour.if_wide", width=plan.tape.show(wider)))]


def _row(pouring: Pouring, made: Order, what: str, more: str = "") -> ChangeRow:
    return {
        "what": what,
        "more": more,
        "order": made.ordered,
        "order_shown": pouring.called(made),
        "changed": pouring.called(made) != pouring.called(pouring.order),
    }


def _extra(plan: Plan, pouring: Pouring) -> str:
    extra, made = pouring.low_extra, pouring.order
    key = "pour.low_over" if extra > made.with_waste - made.needed else "pour.low_under"
    return say(key, extra=volume_text(extra, plan.tape.feet))
