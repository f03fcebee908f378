"""How far off each edge the form stakes stand of a slab that fills its curve, and which board goes between: the curve's
is bent, and so thin; the straight edges' is a thick one."""

from __future__ import annotations

from math import ceil

from bowstring.forming.pad import Filled, Pad
from bowstring.report.forming.boards_list import choose, edges_of
from bowstring.report.forming.edge_board import board_of, straight_board_of
from bowstring.report.forming.formboard import own_board, practice_of, unknown_board
from bowstring.report.forming.plan import Plan
from bowstring.words import say


def bent_of(plan: Plan) -> tuple[str, float] | None:
    """Return the name and thickness, metres, of the board that stands behind the curve; ``None`` where none bends to
    it, or nobody knows how thick it is: no stake is told for a board that can't stand there."""
    if unknown_board(plan) is not None or choose(plan, edges_of(plan)).used is None:
        return None
    return board_of(plan)


def stand_notes(plan: Plan) -> list[str]:
    """Return what a card says of it: one note where all edges have the same board."""
    bent, (straight, thick) = bent_of(plan), straight_board_of(plan)
    size = plan.tape.show_whole
    if bent is None:
        return [
            say("forming.note.no_curve"),
            say("forming.note.behind_straight", size=size(thick), board=straight),
        ]
    curved, thin = bent
    if (curved, thin) == (straight, thick):
        return [say("forming.note.behind", size=size(thin), board=curved)]
    past, told = beside_of(plan), say("forming.note.behind_straight", size=size(thick), board=straight)
    if past:  # beside the curve's board
        told = say(
            "forming.note.behind_straight_first",
            size=size(thick), board=straight, first=size(thin), past=size(past),
        )  # fmt: skip
    return [say("forming.note.behind_curve", size=size(thin), board=curved), told, *one_layer(plan)]


def beside_of(plan: Plan) -> float:
    """Return along how much of a tangent side, next to the curve, the curve's own board runs on, metres: its stakes
    stand as far off there as that is thick. 0 where the side's board is as thick, or none of the curve's runs on."""
    bent, pad = bent_of(plan), plan.filled
    if bent is None or not isinstance(pad, Pad) or not pad.tangent or bent[1] == straight_board_of(plan)[1]:
        return 0.0
    return choose(plan, edges_of(plan)).overrun


def curve_gap_of(plan: Plan) -> float | None:
    """Return how far off the curve its form stakes stand, metres; ``None`` where it has none."""
    bent = bent_of(plan)
    return bent[1] if bent else None


def edge_curve(plan: Plan) -> str:
    """Return the sentence of the curve's form stakes, where the job's own stakes are on its edge."""
    bent = bent_of(plan)
    if bent is None:
        return say("fill.stand_none")
    told = say("edges.form_outside", size=plan.tape.show_whole(bent[1]), board=bent[0])
    return " ".join([told, *one_layer(plan)])


def one_layer(plan: Plan) -> list[str]:
    """Return, of a board of the crew's own that is thinner than any of the list, that stakes stand off by one layer of
    it, and by how much for the layers that make up a board."""
    own, whole = own_board(plan), practice_of(plan).thicknesses[0]
    if own is None or own.thickness > whole / 2 * (1 + 1e-9):
        return []
    count, size = ceil(whole / own.thickness - 1e-9), plan.tape.show_limit
    return [say("fill.one_layer", size=size(own.thickness), count=count, built=size(count * own.thickness))]


def stand_curve(plan: Plan) -> str:
    """Return the sentence of the curve's form stakes, where the job's own stakes aren't on its edge."""
    bent = bent_of(plan)
    if bent is None:
        return say("fill.stand_none")
    name, thickness = bent
    told = say("fill.stand_curve", size=plan.tape.show_whole(thickness), board=name)
    return " ".join([told, *one_layer(plan)])


def stand_straight(plan: Plan, filled: Filled) -> str:
    """Return the sentence of the straight edges' form stakes."""
    name, thickness = straight_board_of(plan)
    key = "fill.stand_string"
    if isinstance(filled, Pad):
        key = "pad.stand_straight" if filled.backed else "pad.stand_sides"
    told, bent, past = say(key, size=plan.tape.show_whole(thickness), board=name), bent_of(plan), beside_of(plan)
    if bent is None or not past:
        return told
    size = plan.tape.show_whole
    return f"{told} {say('pad.stand_beside', past=size(past), size=size(bent[1]), board=bent[0])}"
