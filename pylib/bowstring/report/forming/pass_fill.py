"""The forms' cards of a slab that fills its curve: where it is no band, with one edge bent and the others straight."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.edge import Edge
from bowstring.forming.pad import Filled, Pad
from bowstring.forming.plane import Plane
from bowstring.report.forming.at_forms import edge_notes, edge_sizes
from bowstring.report.forming.boards_list import choose, edges_of, room_past
from bowstring.report.forming.boards_stakes import straight_stakes
from bowstring.report.forming.building_strip import strip_sizes, strip_told
from bowstring.report.forming.edge_board import board_of, pull_notes, straight_board_of
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.edge_marks import OUTSIDE, SAME, STAKES, Marks, stands_behind
from bowstring.report.forming.fill_plane import SettledPlane, settle_plane
from bowstring.report.forming.fill_stand import stand_notes
from bowstring.report.forming.heights import size_of
from bowstring.report.forming.hubs import Hubs, hubs_on
from bowstring.report.forming.in_dig import whole_off
from bowstring.report.forming.off_line import curve_notes, hub_notes, stray_values
from bowstring.report.forming.pad_corner import bevel_note
from bowstring.report.forming.pass_build import no_board, overrun_of, splices_of
from bowstring.report.forming.pass_card import Value, from_to, pass_card, right_of
from bowstring.report.forming.plan import Plan, line_ends
from bowstring.report.forming.pour_reach import LAST_CALLS
from bowstring.report.forming.pouring import runs_back
from bowstring.report.forming.standing import dig_notes
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.report.forms.cards import CardRow
from bowstring.words import say
from bowstring.words.stars import unstarred


def is_dug_out(plan: Plan) -> bool:
    """Tell whether the job's stakes stand within the dig."""
    return plan.layout.job.outward <= overdig_of(plan)


def hubs_card(plan: Plan, filled: Filled) -> CardRow:
    """Return the card of the hubs; only where the stakes are dug out."""
    hubs, tape = hubs_of_fill(plan), plan.tape
    read = {tape.show(length) for length in hubs.to_neighbors}
    right = right_of("hubs", read.pop()) if len(read) == 1 and not plan.layout.job.got else None
    notes = [*hub_notes(plan, hubs), say("forming.note.farther")]
    if hubs.blocked:
        notes.append(say("forming.note.hub_on", stake=hubs.at, what=hubs.blocked))
    numbers = [(say("forming.label.hub_outside"), tape.show(hubs.off))]
    return pass_card("hubs", say("forming.hubs"), [*_line(plan, filled), hubs.off], numbers, right, notes,
                     [("stake", "hub_outside", 1)])  # fmt: skip


def dig_card(plan: Plan, filled: Filled) -> CardRow:
    """Return the card of the dig lines: the curve's from the stakes, the straight ones past their edges."""
    past, tape, pad = overdig_of(plan), plan.tape, isinstance(filled, Pad)
    off = past - plan.layout.job.outward
    numbers = [
        (say("forming.label.dig_outside_out" if off > 0 else "forming.label.dig_outside_in"), tape.show(abs(off))),
        (say("forming.label.dig_straight" if pad else "forming.label.dig_string"), tape.show(past)),
    ]
    notes = [*dig_notes(plan), say("forming.note.locates")]
    if isinstance(filled, Pad):
        ends = {} if filled.both else line_ends(plan)
        which = "forming.note.sides_both" if filled.both else "forming.note.sides"
        notes.append(say(which, sides=tape.show(filled.sides), **ends))
    text = say("forming.dig_round" if pad else "forming.dig_string")
    if _at_building(filled):
        text = say("forming.dig_against")
    drawn = [("stake", "dig_outside", 1), ("inside", "dig_inside", 2)][: 1 if _at_building(filled) else 2]
    return pass_card("dig", text, [*_line(plan, filled), past], numbers, None, notes, drawn)


def _at_building(filled: Filled | None) -> bool:
    """Whether across from the curve there is a building: what is told of straight forms is of the sides then, which the
    cut across the slab doesn't show."""
    return isinstance(filled, Pad) and filled.against


def line_card(plan: Plan, filled: Filled) -> CardRow:
    """Return the card that sets the line again, and the straight edges from it."""
    marks, tape, pad = _marks(plan), plan.tape, isinstance(filled, Pad)
    values, apart = _line(plan, filled), marks.yours == STAKES and marks.boarded is None
    if is_dug_out(plan):
        hubs = hubs_of_fill(plan)
        values.append(hubs.off)
        what = "hubs_outside" if apart else "hub_back"
        first = (say(f"forming.label.{what}"), tape.show(hubs.to_edge(OUTSIDE, 0) if apart else hubs.off))
        drawn = ("hub_outside", OUTSIDE if apart else "stake", 1)
        key = "hubs" if apart else "other"
    else:
        first = (say("forming.label.stakes_outside"), tape.show(abs(plan.layout.job.outward)))
        drawn, key = ("stake", OUTSIDE, 1), "stakes"
    if isinstance(filled, Pad) and filled.both:
        text = say(f"forming.line_{key}_both")
    else:
        text = say(f"forming.line_{key}_round" if pad else f"forming.line_{key}_string")
    notes = [say("forming.note.level")] if any(plan.layout.slope) else []
    notes += [] if is_dug_out(plan) else curve_notes(plan)
    off = bool(plan.layout.job.outward)
    if isinstance(filled, Pad):
        second = (say("forming.label.sides", **line_ends(plan)), tape.show(filled.sides))
        right = right_of("far_corners", tape.show(filled.diagonal))
    else:
        second = (say("forming.label.string_off" if off else "forming.label.string"), tape.show(filled.arc.chord))
        right = right_of("deep", tape.show(filled.deep))
    return pass_card("line", text, values, [first, second], right, notes, [drawn, ("inside", "inside", 2)])


def stakes_card(plan: Plan, part: BoardsPart | None) -> CardRow:
    """Return the card of the form stakes, or what has to be said before there are any."""
    if part is None:
        return no_board("stakes", plan, part)
    straight, bent = straight_stakes(plan, choose(plan, edges_of(plan))), part["state"] != "stop"
    gaps = [one.length / one.gaps for one in straight]
    curve = part["edges"][0]
    numbers = [(say("forming.label.gap_straight"), from_to(plan.tape, gaps[0], gaps[-1]))]
    if bent:
        numbers.insert(0, (say("forming.label.gap_curve"), curve["gap_shown"]))
    notes = [*stand_notes(plan), say("forming.note.low")]
    values: list[Value] = [
        *(board_of(plan) if bent else ("stop",)),
        *straight_board_of(plan),
        curve["radius"],
        curve["gap"],
        *gaps,
        *(one.length for one in straight),
    ]
    round_across = isinstance(plan.filled, Pad) and plan.filled.both
    drawn = [("outside", "outside", 1), ("inside", "inside", 2)]
    if _at_building(plan.filled):
        drawn = drawn[:1] if bent else []
    elif not bent:
        drawn = [] if round_across else [("inside", "inside", 1)]
    text = say("forming.stakes_round" if bent else "forming.stakes_straight")
    return pass_card("stakes", text, values, numbers, None, notes, drawn)


def boards_card(plan: Plan, part: BoardsPart | None) -> CardRow:
    """Return the card of the boards: the bent ones, then the straight forms."""
    if part is None:
        return no_board("boards", plan, part)
    if part["state"] == "stop":
        name, thickness = straight_board_of(plan)
        note = say("forming.note.straight_cut", board=name)
        return pass_card("boards", say("forming.boards_none"), ["stop", name, thickness], notes=[note])
    past = room_past(plan, overrun_of(plan))
    numbers = [(say("forming.label.past", ends=say("ends.both")), plan.tape.show_whole(past))] if past else []
    values: list[Value] = [past]
    for edge in part["edges"]:
        values += [edge["board"], edge["radius"], edge["length"], *(one["along"] for one in edge["splices"])]
    splices, then = map(splices_of, part["edges"]), bevel_note(plan) or say("forming.note.then_straight")
    below, values = edge_notes(plan), [*values, *edge_sizes(plan)]
    notes = [*pull_notes(plan, on_edge=_marks(plan).yours == OUTSIDE), *splices, then, *below, *part["cautions"]]
    text = say("forming.boards_past" if past else "forming.boards")
    return pass_card("boards", text, values, numbers, None, notes, [("outside", "outside", 1)] if past else [])


def tops_card(plan: Plan, filled: Filled, part: GradesPart | None, joints: JointsPart | None) -> CardRow:
    """Return the card of the tops, or what has to be said before there are any."""
    settled = settle_plane(plan, filled)
    if part is None or not isinstance(settled, SettledPlane) or part["stop"]:
        key = "stop" if part else "open"
        return pass_card("tops", say("forming.tops_stop" if part else "forming.tops_open"), [key])
    plane, right = settled.plane, None
    heights = list(_heights(plan, filled, plane))
    if part["drop"] and part["cross"]:
        right = right_of("level_feet" if plan.tape.feet else "level_metric", part["drop"])
    values: list[Value] = [*(row["outside"]["level"] for row in part["rows"]), plane.start, plane.along, plane.away]
    if joints:
        values += [float(joints["count"]), joints["depth"] or 0.0]
    numbers = [(label, shown) for label, shown, _edge in heights]
    drawn = [(edge, edge, disc) for disc, (_label, _shown, edge) in enumerate(heights, 1)]
    text = say("forming.tops_building" if _from_building(filled, part) else "forming.tops")
    return pass_card("tops", text, values, numbers, right, list(_tops_notes(plan, filled, part, joints)), drawn)


def _from_building(filled: Filled, part: GradesPart) -> bool:
    """Whether the tops are set from the building that the slab ends at: its level is known there, and what stands there
    stays."""
    return _at_building(filled) and bool(part["rows"][0]["outside"]["elevation"])


def _heights(plan: Plan, filled: Filled, plane: Plane) -> Iterator[tuple[str, str, str]]:
    """Yield what each height is, the height as it is shown, and the edge that is the lower one by it."""
    up, off = plane.along * filled.arc.chord, plane.away * filled.arc.sagitta
    if up:
        yield say("forming.label.B_up" if up > 0 else "forming.label.B_down"), size_of(plan.tape, up), "outside"
    if off:
        text = say("forming.label.curve_up" if off > 0 else "forming.label.curve_down")
        yield text, size_of(plan.tape, off), "inside" if off > 0 else "outside"


def _tops_notes(plan: Plan, filled: Filled, part: GradesPart, joints: JointsPart | None) -> Iterator[str]:
    first, unit = part["rows"][0]["outside"], "ft" if plan.tape.feet else "m"
    far = [row["outside"] for row in part["rows"] if row["kind"] == "back"]
    corners = [row["outside"]["shown"] for row in part["rows"] if row["kind"] == "back" and row["share"] in (0.0, 1.0)]
    if corners:
        yield say("forming.note.far_tops", first=corners[0], last=corners[-1])
    if _from_building(filled, part):
        a_2, b_2, a = (f"{one['elevation']} {unit}" for one in (far[0], far[-1], first))
        yield say("forming.note.building_tops", first=a_2, last=b_2, level=a, a=line_ends(plan)["a"])
    elif first["elevation"]:
        yield say("forming.note.elevation", level=f"{first['elevation']} {unit}")
    if first["rod"] and _from_building(filled, part):
        values = {"first": far[0]["rod"], "last": far[-1]["rod"], "reading": first["rod"]}
        yield say("forming.note.building_rods", a=line_ends(plan)["a"], **values)
    elif first["rod"]:
        yield say("forming.note.rod", reading=first["rod"])
    if part["state"] == "near":
        yield part["short"]
    if corners:  # the rest stands with them: a phone has no room for more
        return
    yield say("forming.note.every_top")
    if joints and not joints["stop"] and joints["grid"]:
        yield say("forming.note.joints", count=len(joints["grid"]), depth=joints["depth_shown"])


def pour_card(plan: Plan, filled: Filled, part: PourPart) -> CardRow:
    """Return the card before the truck comes."""
    strip = strip_told(plan)
    notes = [*([unstarred(say("forming.note.strip", **strip))] if strip else []), say("forming.note.burns")]
    numbers, drawn = [(part["unit"], part["number"])], [("slab", "slab", 1)]
    values: list[Value] = [part["order"], part["depth"], part["bag_count"] if part["by_bags"] else None]
    values += strip_sizes(plan)
    if part["reach"]:
        first = part["reach"][LAST_CALLS][0]
        back = "call_other" if isinstance(filled, Pad) and filled.both else "call_back"
        label = back if runs_back(filled) else "call_string"
        numbers.append((say(f"forming.label.{label}", out=first["out"]), first["call_shown"]))
        values.append(first["call"])
        drawn.append(("inside", "inside", 2))
    return pass_card("pour", say("forming.pour"), values, numbers, None, notes, drawn)


def _marks(plan: Plan) -> Marks:
    """The curve as both edges: no other is an arc."""
    outward, near = plan.layout.job.outward, SAME * max(1.0, plan.line.radius)
    curve = Edge(plan.line, 0.0, 0.0)
    _name, thickness = board_of(plan)
    yours = OUTSIDE if abs(outward) <= near else STAKES
    past = stands_behind(plan, outward, thickness)
    boarded = None if past is None else OUTSIDE
    return Marks(curve, curve, Edge(plan.line, outward, outward), yours, boarded, plan.shares(), past or 0.0)


def hubs_of_fill(plan: Plan) -> Hubs:
    """The hubs outside of the curve: on its other side there is the slab."""
    feet, at = plan.layout.job.tape.feet, plan.layout.job.outward
    off = whole_off(overdig_of(plan) - at, feet=feet)
    return hubs_on(plan, _marks(plan), OUTSIDE, off, Edge(plan.line, at + off, at + off))


def _line(plan: Plan, filled: Filled) -> list[Value]:
    """Where the edges and the stakes are, as numbers: what is set out from them hangs on it."""
    places = [value for name, share in plan.shares() for value in (name, share)]
    sides: list[Value] = []
    if isinstance(filled, Pad):
        sides = [filled.sides, "both" if filled.both else "one", *(["against"] if filled.against else [])]
    return [
        plan.line.radius,
        plan.line.half_angle,
        plan.layout.job.outward,
        *sides,
        *places,
        *stray_values(plan.layout),
    ]
