"""The edges of a slab that fills its curve, told: one form along the arc, and one straight along its string."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees, floor

from bowstring.forming.joints import LEAST_CORNER
from bowstring.forming.pad import Filled, Pad
from bowstring.report.forming.building_strip import strip_signed
from bowstring.report.forming.edge_board import pull_told, straight_board_of
from bowstring.report.forming.edge_lines import FORM, OVERDIG, drawn_note, held_told, off_shown, overdig_of
from bowstring.report.forming.edge_marks import OUTSIDE, SAME, STAKES, stands_behind
from bowstring.report.forming.edge_stick import passes_of
from bowstring.report.forming.edges import more_of
from bowstring.report.forming.fill_stand import bent_of, curve_gap_of, edge_curve, stand_curve, stand_straight
from bowstring.report.forming.off_line import off_line, told_of_curve, told_of_hubs
from bowstring.report.forming.pad_edges import (
    length_of,
    opposite,
    pad_check,
    pad_forms,
    pad_lines,
    pad_rows,
    straight_line,
)
from bowstring.report.forming.panels import isolation_shown
from bowstring.report.forming.pass_fill import hubs_of_fill
from bowstring.report.forming.pins import held_lines
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.report.forming.standing import report_standing
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_edges import EdgesPart, LineRow
from bowstring.words import say

FILLS = "fills"
"""Where the line runs in such a slab: it is the curved edge of all that lies inside of it."""

STRING, STRING_FORM, STRING_DIG = "string", "string_form", "dig_string"


def report_fill_edges(plan: Plan, filled: Filled) -> EdgesPart:
    """Return the answer's ``edges``."""
    tape, side, outward, past = plan.tape, plan.layout.side, plan.layout.job.outward, overdig_of(plan)
    lines, string, arc = list(_lines(plan, filled)), opposite(plan, filled), length_of(plan, filled.arc.arc_length)
    hands = {} if side is None else {side: arc, "right" if side == "left" else "left": string}
    dug, pad, standing = outward <= past, filled if isinstance(filled, Pad) else None, report_standing(plan)
    short, more, conclusion = pad_rows(plan, pad) if pad else _rows(plan, filled)
    return {
        "state": "near" if is_sharp(filled) or standing else "usual",
        "short": short,
        "more": more,
        "conclusion": conclusion,
        "edge": FILLS,
        "yours": next(line["key"] for line in lines if line["yours"]),
        "width": filled.deep,
        "width_shown": tape.show(filled.deep),
        "far_width": None,
        "far_width_shown": "",
        "left": hands.get("left"),
        "right": hands.get("right"),
        "outside": arc,
        "inside": string,
        "area": filled.area,
        "overdig": past,
        "overdig_shown": tape.show_whole(past),
        "lines": lines,
        "seconds": [],
        "stick": None,
        "alike": False,
        "diagonal_shown": tape.show(pad.diagonal) if pad else "",
        "diagonal": pad.diagonal if pad else None,
        "sides": pad.sides if pad else None,
        "sides_shown": tape.show(pad.sides) if pad else "",
        "sides_how": list(pad_forms(plan, pad)) if pad else [],
        "both_ends": pad is not None and pad.both,
        "strip_shown": strip_signed(plan),
        "ends": {"against": [], "told": [], "dug": ""},
        "curve_gap": curve_gap_of(plan),
        "straight_gap": straight_board_of(plan)[1],
        "bays": [],
        "check": pad_check(plan, pad) if pad else _check(plan, filled),
        "form": list(_forms(plan, filled, lines)),
        "faces": [], "footing": None, "faces_sheet": [], "footing_shown": [],
        "passes": passes_of(plan, dug),
        "dug_out": dug,
        "off_line": _off_line(plan, dug),
        "taper": [],
        "standing": standing,
        "notes": list(_notes(plan, filled)),
    }  # fmt: skip


def _rows(plan: Plan, filled: Filled) -> tuple[str, str, str]:
    """The first screen's two lines, and the page's first sentence."""
    shown = {"radius": plan.tape.show(filled.arc.radius), "chord": plan.tape.show(filled.arc.chord),
             "deep": plan.tape.show(filled.deep)}  # fmt: skip
    return say("fill.row", **shown), say("fill.row_more", **shown), say("fill.conclusion", **shown)


def row_of_fill_edges(plan: Plan, part: EdgesPart | None) -> BuildRow:
    """Return the row of the first screen."""
    if part is None:
        return {"key": "edges", "state": "open", "text": say("fill.centre_row"), "more": "", "panel": "slab"}
    return {"key": "edges", "state": part["state"], "text": part["short"], "more": more_of(part), "panel": ""}


def is_sharp(filled: Filled) -> bool:
    """Tell whether the slab runs out in thin points at A and B."""
    return not isinstance(filled, Pad) and degrees(filled.corner) < LEAST_CORNER


def corner_shown(filled: Filled) -> str:
    """Return the corner at A and B in whole degrees, down."""
    return f"{floor(degrees(filled.corner) + 1e-9)}°"


def _lines(plan: Plan, filled: Filled) -> Iterator[LineRow]:
    """The lines that are set: those along the curve from the outermost on, then those along the string."""
    bent = bent_of(plan)
    outward, past = plan.layout.job.outward, overdig_of(plan)
    near = SAME * max(1.0, filled.arc.radius)
    held = stands_behind(plan, outward, bent[1]) if bent else None
    offs = {"dig_outside": past, **({FORM[OUTSIDE]: bent[1] + (held or 0.0)} if bent else {}), OUTSIDE: 0.0}
    yours = next((key for key, off in offs.items() if abs(off - outward) <= near), STAKES)
    if yours == STAKES:
        offs[STAKES] = outward
    board = say("edges.note_back", board=bent[0]) if bent else ""
    dig = say("edges.note_dig", size=plan.tape.show_whole(past))
    driven = say(f"edges.yours_{plan.layout.job.driven}")
    notes = {"dig_outside": dig, FORM[OUTSIDE]: board, OUTSIDE: say("edges.note_edge", what=drawn_note(plan))}
    for key, off in sorted(offs.items(), key=lambda one: -one[1]):
        note = driven if key == STAKES else notes[key]
        if key == yours and key != STAKES:
            what = held_told(plan, held or 0.0) if key == FORM[OUTSIDE] else driven
            note = say("edges.note_both", first=note, other=what)
        yield _along(plan, filled, key, off, note, key == yours)
    if isinstance(filled, Pad):
        yield from pad_lines(plan, filled, plan.tape.show_whole(past))
        return
    straight, thick = straight_board_of(plan)
    behind, gone = (plan.tape.show_whole(size) for size in (thick, past))
    rows = {
        STRING: (say("fill.note_string", **line_ends(plan)), say("fill.straight", **line_ends(plan))),
        STRING_FORM: (say("edges.note_back", board=straight), say("fill.behind_string", size=behind)),
        STRING_DIG: (dig, say("fill.behind_string", size=gone)),
    }
    for key, (note, runs) in rows.items():
        yield straight_line(plan, key, say(f"fill.line_{key}"), note, filled.arc.chord, runs, to_set=key == STRING)


def _off_line(plan: Plan, dug: bool) -> list[str]:
    """What is set otherwise from stakes off the arc: their hubs where the dig takes them, else the curve's edge."""
    if not off_line(plan.layout):
        return []
    return [*told_of_hubs(plan, hubs_of_fill(plan))] if dug else told_of_curve(plan)


def _along(plan: Plan, filled: Filled, key: str, off: float, note: str, yours: bool) -> LineRow:
    tape, arc, outward = plan.tape, filled.arc.concentric(off), plan.layout.job.outward
    return {
        "key": key,
        "name": say(f"edges.line_{key}"),
        "note": note,
        "yours": yours,
        "set": key == OUTSIDE and not yours,
        "radius": arc.radius,
        "chord": arc.chord,
        "sagitta": arc.sagitta,
        "arc_length": arc.arc_length,
        "off": 0.0 if yours else off - outward,
        "radius_shown": tape.show(arc.radius),
        "chord_shown": tape.show(arc.chord),
        "sagitta_shown": tape.show(arc.sagitta),
        "arc_length_shown": tape.show(arc.arc_length),
        "off_shown": off_shown(plan, 0.0 if yours else off - outward),
    }


def _forms(plan: Plan, filled: Filled, lines: list[LineRow]) -> Iterator[str]:
    """How the two forms stand."""
    edge = next(line for line in lines if line["key"] == OUTSIDE)
    if edge["yours"]:
        yield edge_curve(plan)
        yield pull_told(plan)
    else:
        yield say("fill.form_off", off=edge["off_shown"])
        yield from held_lines(plan)
        yield say("fill.corners_off")
        yield stand_curve(plan)
    if isinstance(filled, Pad):
        return  # its straight sides are told by themselves
    yield say("fill.form_string", chord=plan.tape.show(filled.arc.chord), **line_ends(plan))
    yield stand_straight(plan, filled)
    yield say("fill.form_against", gap=isolation_shown(plan))


def _check(plan: Plan, filled: Filled) -> str:
    """What proves the two forms to each other: the string, and how deep the slab is off its middle."""
    shown = {"chord": plan.tape.show(filled.arc.chord), "deep": plan.tape.show(filled.deep)}
    told = say("fill.check", **shown, **line_ends(plan))
    if not filled.bulges:
        return told
    return f"{told} {say('fill.check_wide', wide=plan.tape.show(filled.wide))}"


def _notes(plan: Plan, filled: Filled) -> Iterator[str]:
    said = plan.said
    if is_sharp(filled):
        yield say("fill.sharp", corner=corner_shown(filled))
    if plan.width is not None or said.slab.far_width is not None or said.edge not in (None, OUTSIDE):
        yield say("fill.width_unused")
    if any(plan.layout.slope):
        yield say("edges.level")
    if said.slab.overdig is None:
        yield say("edges.overdig_taken", size=plan.tape.show_whole(OVERDIG[plan.layout.job.tape.feet]))
