"""The edges of a slab with rounded ends, told: its straight sides, squared off the string, and what proves them."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees, floor

from bowstring.analysis.squaring import Triangle, kit_of, whole_triangles
from bowstring.forming.joints import ISOLATION
from bowstring.forming.pad import Filled, Pad
from bowstring.report.forming.building_strip import strip_told
from bowstring.report.forming.edge_board import straight_board_of
from bowstring.report.forming.fill_stand import stand_straight
from bowstring.report.forming.pad_corner import carried_told
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.report.forms.build_edges import EdgeLength, LineRow
from bowstring.words import say

SIDES, BACK, OTHER_CURVE = "sides", "back", "other_curve"
"""The lines that are set behind the string."""

NEXT_TO = 0.05
"""Of the diagonal: a long side so near to it is pulled on the same ground with the same slips."""


def joined_shown(pad: Pad) -> str:
    """Return the corner between the curve and a side in whole degrees."""
    return f"{floor(degrees(pad.joined) + 0.5)}°"


def length_of(plan: Plan, metres: float) -> EdgeLength:
    """Return an edge's length as the answer has it."""
    return {"length": metres, "length_shown": plan.tape.show(metres)}


def opposite(plan: Plan, filled: Filled) -> EdgeLength:
    """Return the edge across from the curve: its string, or the back, or the other end's curve."""
    both = isinstance(filled, Pad) and filled.both
    return length_of(plan, filled.arc.arc_length if both else filled.arc.chord)


def pad_rows(plan: Plan, pad: Pad) -> tuple[str, str, str]:
    """Return the first screen's two lines, and the page's first sentence."""
    shown = {"radius": plan.tape.show(pad.arc.radius), "sides": plan.tape.show(pad.sides),
             "chord": plan.tape.show(pad.arc.chord), "deep": plan.tape.show(pad.deep)}  # fmt: skip
    ends = "both" if pad.both else "one"
    return say(f"pad.row_{ends}", **shown), say("pad.row_more", **shown), say(f"pad.conclusion_{ends}", **shown)


def straight_line(plan: Plan, key: str, name: str, note: str, length: float, shown: str, *, to_set: bool) -> LineRow:
    """Return a straight line's row; ``shown``: where it runs."""
    none, text = say("edges.none"), plan.tape.show(length)
    return {
        "key": key,
        "name": name,
        "note": note,
        "yours": False,
        "set": to_set,
        "radius": None,
        "chord": length,
        "sagitta": None,
        "arc_length": length,
        "off": None,
        "radius_shown": none,
        "chord_shown": text,
        "sagitta_shown": none,
        "arc_length_shown": text,
        "off_shown": shown,
    }


def pad_lines(plan: Plan, pad: Pad, past: str) -> Iterator[LineRow]:
    """The lines behind the string; ``past``: how far past each it is dug."""
    name, thickness = straight_board_of(plan)
    note = say("pad.note_straight", board=name, size=plan.tape.show_whole(thickness), past=past)
    runs = say("pad.square_back", **line_ends(plan))
    yield straight_line(plan, SIDES, say("pad.line_sides"), note, pad.sides, runs, to_set=True)
    if pad.against:
        yield straight_line(plan, BACK, say("pad.line_against"), say("pad.note_against"), pad.arc.chord,
                            say("pad.across"), to_set=False)  # fmt: skip
        return
    if not pad.both:
        yield straight_line(plan, BACK, say("pad.line_back"), note, pad.arc.chord, say("pad.across"), to_set=True)
        return
    arc, tape = pad.arc, plan.tape
    row = straight_line(plan, OTHER_CURVE, say("pad.line_other_curve"), say("pad.note_other_curve"), arc.arc_length,
                        say("pad.off_other_curve"), to_set=True)  # fmt: skip
    row |= {
        "radius": arc.radius,
        "chord": arc.chord,
        "sagitta": arc.sagitta,
        "radius_shown": tape.show(arc.radius),
        "chord_shown": tape.show(arc.chord),
        "sagitta_shown": tape.show(arc.sagitta),
    }
    yield row


def square_of(plan: Plan, pad: Pad) -> Triangle | None:
    """Return the whole-number triangle by which a side is squared off the string; ``None`` where none has room.

    Never one whose long side is next to the diagonal: that proves the sides, and so no step may pull it. Nor one whose
    leg back ends in the building that closes the sides.
    """
    kit = kit_of(plan.layout.job.tape, plan.layout.job.site.tape_length)
    found = whole_triangles(pad.arc.chord, pad.sides, kit.unit_leg, kit.tape)
    if pad.against:
        found = [one for one in found if not is_past(pad, one)]
    apart = (one for one in found if abs(one.long_side - pad.diagonal) > NEXT_TO * pad.diagonal)
    return next(apart, None)


def is_past(pad: Pad, triangle: Triangle) -> bool:
    """Tell whether a triangle's leg back runs on past the corner that the side ends in."""
    return triangle.out > pad.sides * (1 + 1e-9)


def pad_forms(plan: Plan, pad: Pad) -> Iterator[str]:
    """How the sides, and what closes them, are set from A and B."""
    tape, ends = plan.tape, line_ends(plan)
    yield say("pad.tangent", **ends) if pad.tangent else say("pad.corner", corner=joined_shown(pad), **ends)
    triangle = square_of(plan, pad)
    if triangle is None:
        yield say("pad.square_blade", **ends)
    else:
        key = "pad.square_past" if is_past(pad, triangle) else "pad.square"
        yield say(key, shape=triangle.whole or "", along=tape.show(triangle.along),
                  out=tape.show(triangle.out), long_side=tape.show(triangle.long_side), **ends)  # fmt: skip
    yield say("pad.pull", sides=tape.show(pad.sides), **ends)
    yield from carried_told(plan)
    if pad.both:
        yield stand_straight(plan, pad)
        yield say("pad.set_other", **ends)
        if plan.layout.side is not None:  # who faces B-2 looks as at A, and it bulges the other way
            yield say("pad.other_right" if plan.layout.side == "left" else "pad.other_left")
        return
    if pad.against:
        yield stand_straight(plan, pad)
        yield from against_told(plan, pad)
        return
    yield say("pad.set_back", chord=tape.show(pad.arc.chord))
    yield stand_straight(plan, pad)


def against_told(plan: Plan, pad: Pad) -> Iterator[str]:
    """What a pad's square end against a building wants: no form and no dig there, and a strip out of its length."""
    tape, gap, strip = plan.tape, ISOLATION[plan.layout.job.tape.feet], strip_told(plan)
    yield say("pad.against")
    yield say("pad.against_strip", **strip)
    yield say("pad.against_length", gap=strip["gap"], sides=tape.show(pad.sides), left=tape.show(pad.sides - gap))


def pad_check(plan: Plan, pad: Pad) -> str:
    """What proves the sides: lengths that no step has pulled."""
    tape = plan.tape
    shown = {"chord": tape.show(pad.arc.chord), "diagonal": tape.show(pad.diagonal), "deep": tape.show(pad.deep)}
    told = say("pad.check", **shown, **line_ends(plan))
    return f"{told} {say('pad.check_deep_both' if pad.both else 'pad.check_deep', **shown)}"
