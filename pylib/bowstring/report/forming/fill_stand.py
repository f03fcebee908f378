"""How far off each edge the form stakes stand of a slab that fills its curve, and which board goes between: the curve's
is bent, and so thin; the straight edges' is a thick one."""

from __future__ import annotations

from bowstring.forming.pad import Filled, Pad
from bowstring.report.forming.edge_board import board_of, straight_board_of
from bowstring.report.forming.plan import Plan
from bowstring.words import say


def stand_notes(plan: Plan) -> list[str]:
    """Return what a card says of it: one note where all edges have the same board."""
    (curved, thin), (straight, thick) = board_of(plan), straight_board_of(plan)
    size = plan.tape.show_whole
    if (curved, thin) == (straight, thick):
        return [say("forming.note.behind", size=size(thin), board=curved)]
    return [
        say("forming.note.behind_curve", size=size(thin), board=curved),
        say("forming.note.behind_straight", size=size(thick), board=straight),
    ]


def stand_curve(plan: Plan) -> str:
    """Return the sentence of the curve's form stakes, where the job's own stakes aren't on its edge."""
    name, thickness = board_of(plan)
    return say("fill.stand_curve", size=plan.tape.show_whole(thickness), board=name)


def stand_straight(plan: Plan, filled: Filled) -> str:
    """Return the sentence of the straight edges' form stakes."""
    name, thickness = straight_board_of(plan)
    key = "fill.stand_string"
    if isinstance(filled, Pad):
        key = "pad.stand_straight" if filled.backed else "pad.stand_sides"
    return say(key, size=plan.tape.show_whole(thickness), board=name)
