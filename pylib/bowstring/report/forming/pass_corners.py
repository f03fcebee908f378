"""The card of a pad's far corners: squared off A and B, so that its dig lines have something to start from."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.pad import Pad
from bowstring.report.forming.pad_edges import is_past, square_of
from bowstring.report.forming.pass_card import CORNERS, Value, pass_card, right_of
from bowstring.report.forming.pass_fill import is_dug_out
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.report.forms.cards import CardRow
from bowstring.words import say

DRAWN = (("A", "A-2", 1),)
"""What each number of the card is taped between, by its disc."""


def corners_card(plan: Plan, pad: Pad) -> CardRow:
    """Return the card: the triangle that squares both sides, how far they run, and lengths that no step has pulled."""
    tape = plan.tape
    values: list[Value] = [pad.arc.chord, pad.sides, plan.layout.job.outward]
    numbers = [(say("forming.label.corners", **line_ends(plan)), tape.show(pad.sides))]
    right = right_of("far_corners", tape.show(pad.diagonal))
    return pass_card(
        CORNERS,
        say("forming.corners_against" if pad.against else "forming.corners", **line_ends(plan)),
        values,
        numbers,
        right,
        list(_notes(plan, pad)),
        DRAWN,
    )


def _notes(plan: Plan, pad: Pad) -> Iterator[str]:
    tape, triangle = plan.tape, square_of(plan, pad)
    if triangle is None:
        yield say("forming.note.corners_blade")
    else:
        key = "forming.note.corners_square_past" if is_past(pad, triangle) else "forming.note.corners_square"
        yield say(key, shape=triangle.whole or "", along=tape.show(triangle.along),
                  out=tape.show(triangle.out), across=tape.show(triangle.long_side))  # fmt: skip
    if plan.layout.job.outward:
        yield say("forming.note.corners_off")
    if any(plan.layout.slope):
        yield say("forming.note.level")
    if is_dug_out(plan) and not pad.against:  # a mark on the building stays
        yield say("forming.note.corners_again")
