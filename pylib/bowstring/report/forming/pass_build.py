"""The cards that build on the line: the boards on their stakes, their tops, and what is looked at before the pour."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.joints import DEPTH
from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.at_forms import edge_notes, edge_sizes
from bowstring.report.forming.edge_board import board_of, pull_notes
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE, marks_of
from bowstring.report.forming.ends import against, formed, named
from bowstring.report.forming.formboard import practice_of
from bowstring.report.forming.grade_said import Settled, settle
from bowstring.report.forming.grade_told import climbed, drops
from bowstring.report.forming.heights import size_of
from bowstring.report.forming.panels import isolation_shown
from bowstring.report.forming.pass_card import Value, pass_card, right_of
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pour_reach import LAST_CALLS
from bowstring.report.forming.pouring import pouring_of
from bowstring.report.forming.quantities import inch_tape, mark_up, ordered_number
from bowstring.report.forms.build_boards import BoardsPart, EdgeBoards
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.report.forms.cards import CardRow
from bowstring.words import say
from bowstring.words.stars import unstarred

MOST_SPLICES = 4
"""Of an edge, on a card: where the others are the boards' page says."""


def stakes_card(plan: Plan, part: BoardsPart | None) -> CardRow:
    """Return the card of the form stakes, or what has to be said before there are any."""
    if part is None or part["state"] == "stop":
        return no_board("stakes", plan, part)
    numbers = [(say(f"forming.label.gap_{edge['edge']}"), edge["gap_shown"]) for edge in part["edges"]]
    drawn = [(edge["edge"], edge["edge"], disc) for disc, edge in enumerate(part["edges"], 1)]
    if len({shown for _label, shown in numbers}) == 1:
        numbers = [(say("forming.label.gap_both"), numbers[0][1])]
        drawn = [(start, end, 1) for start, end, _disc in drawn]
    name, thickness = board_of(plan)
    notes = [say("forming.note.behind", size=plan.tape.show_whole(thickness), board=name), say("forming.note.low")]
    values: list[Value] = [thickness, *(value for edge in part["edges"] for value in (edge["radius"], edge["gap"]))]
    return pass_card("stakes", say("forming.stakes"), values, numbers, None, notes, drawn)


def boards_card(plan: Plan, part: BoardsPart | None) -> CardRow:
    """Return the card of the boards, bent along their stakes."""
    if part is None or part["state"] == "stop":
        return no_board("boards", plan, part)
    past, ends = overrun_of(plan), formed(plan)
    numbers = [(past_label(plan, "forming.label.past"), plan.tape.show_whole(past))] if past and ends else []
    values: list[Value] = [past, *against(plan)]
    for edge in part["edges"]:
        values += [edge["board"], edge["radius"], edge["length"], *(one["along"] for one in edge["splices"])]
    on_edge = marks_of(plan).yours in (OUTSIDE, INSIDE)
    values += edge_sizes(plan)
    notes = [*pull_notes(plan, on_edge=on_edge), *(splices_of(edge) for edge in part["edges"])]
    notes += [*edge_notes(plan), *part["cautions"], *(end_note(plan, "lap") if past and not ends else [])]
    drawn = [("outside", "outside", 1)] if numbers else []
    text = say("forming.boards_past" if past and LINE_ENDS[0] in ends else "forming.boards")
    return pass_card("boards", text, values, numbers, None, notes, drawn)


def past_label(plan: Plan, key: str) -> str:
    """Return what the length is that boards run on: by the message ``key`` where both ends are formed; of one that is,
    with what the boards do at the other."""
    others = against(plan)
    if not others:
        return say(key, ends=named(plan, formed(plan)))
    return say("forming.label.past_lap", ends=named(plan, formed(plan)), others=named(plan, others))


def end_note(plan: Plan, what: str, **values: str) -> list[str]:
    """Return what a card says of the ends that meet concrete which stands there, in a few words; none where both are
    formed."""
    ends = against(plan)
    return [say(f"forming.note.{what}", ends=named(plan, ends), **values)] if ends else []


def every_top(plan: Plan) -> list[str]:
    """Return what stands beside the tops that a card has room for: where the others are; at old concrete, in its
    place, that the tops meet that."""
    return end_note(plan, "meet") or [say("forming.note.every_top")]


def overrun_of(plan: Plan) -> float:
    """Return how far boards run past each end, metres: as said, or the practice's."""
    said = plan.said.board.overrun
    return practice_of(plan).overrun if said is None else said


def no_board(what: str, plan: Plan, part: BoardsPart | None) -> CardRow:
    """Return the card of what needs a board, as long as there is none that bends."""
    if part is None:
        return pass_card(what, say("forming.boards_which"), [plan.said.board.kind])
    return pass_card(what, say("forming.boards_none"), ["stop"])


def splices_of(edge: EdgeBoards) -> str:
    """Return where the boards of an edge meet, in a few words; empty where one board is enough."""
    at = [splice["along_shown"] for splice in edge["splices"]]
    if not at:
        return ""
    key = f"forming.note.splices_{edge['edge']}"
    if len(at) > MOST_SPLICES:
        return say(f"{key}_more", places=", ".join(at[:MOST_SPLICES]), count=len(at) - MOST_SPLICES)
    return say(key, places=", ".join(at))


def tops_card(plan: Plan, part: GradesPart | None, joints: JointsPart | None) -> CardRow:
    """Return the card of the tops, or what has to be said before there are any."""
    settled = settle(plan)
    if part is None or not isinstance(settled, Settled) or part["stop"]:
        return pass_card(
            "tops", say("forming.tops_stop" if part else "forming.tops_open"), ["stop" if part else "open"]
        )
    grade = settled.grade
    stakes = [row for row in part["rows"] if row["kind"] == "stake"]
    tops = [top for row in stakes for top in (row["outside"], row["inside"]) if top]
    values: list[Value] = [top["level"] for top in tops]
    values += [grade.start, grade.crown, grade.cross]
    right = None
    if part["drop"] and part["cross"]:
        right = right_of("level_feet" if plan.tape.feet else "level_metric", part["drop"])
    notes = [*_tops_notes(plan, part, settled), *_joints(plan, joints)]
    if joints:
        values += [float(joints["count"]), joints["depth"] or 0.0]
    heights = list(_heights(plan, settled))
    numbers = [(label, shown) for label, shown, _edge in heights]
    drawn = [(edge, edge, disc) for disc, (_label, _shown, edge) in enumerate(heights, 1)]
    return pass_card("tops", say("forming.tops"), values, numbers, right, notes, drawn)


def _heights(plan: Plan, settled: Settled) -> Iterator[tuple[str, str, str]]:
    """Yield what each height is, the height as it is shown, and the edge at which it is."""
    up = climbed(settled.grade)
    if up:
        yield say(f"forming.label.B_{'up' if up > 0 else 'down'}"), size_of(plan.tape, up), "outside"
    first, last = (size_of(plan.tape, drop) for drop in drops(settled.grade))
    if settled.low and first == last:
        yield say(f"forming.label.low_{settled.low}"), first, settled.low


def _tops_notes(plan: Plan, part: GradesPart, settled: Settled) -> Iterator[str]:
    up, across = part["conclusion"]
    if not climbed(settled.grade):
        yield up
    first, last = drops(settled.grade)
    if not settled.low or first != last:
        yield across
    at_a = part["rows"][0]["outside"]
    if at_a["elevation"]:
        yield say("forming.note.elevation", level=f"{at_a['elevation']} {'ft' if plan.tape.feet else 'm'}")
    if at_a["rod"]:
        yield say("forming.note.rod", reading=at_a["rod"])
    if part["state"] == "near":
        yield part["short"]
    yield from every_top(plan)


def _joints(plan: Plan, part: JointsPart | None) -> Iterator[str]:
    if part and not part["stop"] and part["count"] > 1:
        told = {"count": part["count"] - 1, "depth": part["depth_shown"]}
        isolated = sum(bool(row["apron"]) for row in part["rows"])
        if isolated and part["depth_shown"]:
            yield say("forming.note.joints_isolated", sawn=part["count"] - 1 - isolated, isolated=isolated, **told)
        else:
            yield say("forming.note.joints", **told)
    if plan.said.slab.apron is not None:
        depth = mark_up(inch_tape(plan.tape), plan.said.slab.apron.thickness * DEPTH)
        yield say("forming.note.apron_joints", depth=depth)


def pour_card(plan: Plan, part: PourPart) -> CardRow:
    """Return the card before the truck comes."""
    numbers, drawn = [(part["unit"], part["number"])], [("slab", "slab", 1)]
    values: list[Value] = [part["order"], part["depth"], part["bag_count"] if part["by_bags"] else None]
    if part["reach"]:
        first = part["reach"][LAST_CALLS][0]
        numbers.append((say("forming.label.call", out=first["out"]), first["call_shown"]))
        values.append(first["call"])
        drawn.append(("outside", "outside", 2))
    notes = [unstarred(text) for text in part["deep"]["thin"]]
    values += [size for read in plan.said.slab.depths for size in (read.at, read.depth)]
    if part["footing_order"]:
        notes.append(say("forming.note.footing_first", order=_ordered(plan, part["footing_order"])))
        values.append(part["footing_order"])
    if part["bulkhead"]:
        notes.append(say("forming.note.bulkhead", joint=part["bulkhead"]["joint"]))
    notes += [*end_note(plan, "strip_ends", gap=isolation_shown(plan)), say("forming.note.burns")]
    return pass_card("pour", say("forming.pour"), [*values, *against(plan)], numbers, None, notes, drawn)


def _ordered(plan: Plan, volume: float) -> str:
    pouring = pouring_of(plan)
    assert pouring is not None  # it has an order
    number = ordered_number(volume, pouring.step, pouring.yards)
    return say("pour.yards3" if pouring.yards else "pour.metres3", volume=number)
