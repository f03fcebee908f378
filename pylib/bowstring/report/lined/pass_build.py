"""The cards that build on a line of several pieces: form stakes, boards, tops, and what precedes the pour."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.sweep import Sweep
from bowstring.forming.line.tops import HANDS
from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.at_forms import edge_notes, edge_sizes
from bowstring.report.forming.edge_board import board_of, pull_notes
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.forming.ends import against, formed
from bowstring.report.forming.formboard import unknown_board
from bowstring.report.forming.heights import elevation, size_of
from bowstring.report.forming.joints import depth_of
from bowstring.report.forming.levels import reading
from bowstring.report.forming.measured import thin_told
from bowstring.report.forming.panels import isolation_shown
from bowstring.report.forming.pass_build import MOST_SPLICES, end_note, every_top, overrun_of, past_label
from bowstring.report.forming.pass_card import Value, pass_card, right_of
from bowstring.report.forming.pouring import conclusion_of
from bowstring.report.forming.quantities import form_step, inch_tape, mark_up, up_to
from bowstring.report.forming.slopes import percent
from bowstring.report.forms.cards import CardRow
from bowstring.report.lined.board_cuts import LineCut, cut
from bowstring.report.lined.board_list import LineBoards
from bowstring.report.lined.boards import made_of
from bowstring.report.lined.deepness import along_line
from bowstring.report.lined.grade_limits import judge
from bowstring.report.lined.grade_said import LineClash, LineSettled, settle
from bowstring.report.lined.grade_told import along_of, level_drops_of
from bowstring.report.lined.grades import told_of
from bowstring.report.lined.jointing import jointing_of
from bowstring.report.lined.pass_set_out import DRAWN
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.pour import course_of, pouring_along
from bowstring.report.lined.pour_reach import bulkhead_told, half_out
from bowstring.words import say
from bowstring.words.stars import unstarred


def stakes_card(plan: LinePlan) -> CardRow:
    """Return the card of the form stakes, or what has to be said before there are any."""
    made = made_of(plan)
    if made is None or made.choice.used is None:
        return _no_board("stakes", plan, made)
    name, thickness = board_of(plan.plan)
    numbers, drawn = [], []
    for kind in (Bend, Straight):  # the closest of each: no piece is staked wider than it may be
        gaps = {place: one.gap for place, one in made.staked.items() if isinstance(plan.line.pieces[place[0]], kind)}
        if gaps:
            label = say("forming.label.gap_arcs" if kind is Bend else "forming.label.gap_straights")
            numbers.append((label, plan.tape.show(min(gaps.values()))))
            side = DRAWN[HANDS[len(numbers) - 1]]
            drawn.append((side, side, len(numbers)))
    behind = say("forming.note.behind", size=plan.tape.show_whole(thickness), board=name)
    notes = [behind, say("forming.note.low"), say("forming.note.each_gap")]
    values: list[Value] = [thickness, *(one.gap for one in made.staked.values()), *_radii(made)]
    return pass_card("stakes", say("forming.stakes"), values, numbers, None, notes, drawn)


def _radii(made: LineBoards) -> Iterator[float]:
    yield from (edge.radius for edge in made.bent)


def _no_board(what: str, plan: LinePlan, made: LineBoards | None) -> CardRow:
    if made is None and unknown_board(plan.plan) is not None:
        return pass_card(what, say("forming.boards_which"), [plan.said.board.kind])
    return pass_card(what, say("forming.boards_none"), ["stop"])


def boards_card(plan: LinePlan) -> CardRow:
    """Return the card of the boards, bent along their stakes from the line's start."""
    made = made_of(plan)
    found = cut(made) if made else None
    if made is None or found is None:
        return _no_board("boards", plan, made)
    past, ends = overrun_of(plan.plan), formed(plan.plan)
    label = past_label(plan.plan, "forming.label.past_line")
    numbers = [(label, plan.tape.show_whole(past))] if past and ends else []
    drawn = [("outside", "outside", 1)] if numbers else []
    splices = [*_splices(plan, found)]
    kinks = [say("forming.note.at_kinks")] if len(found.stretches) > 1 else []
    values: list[Value] = [
        past,
        *against(plan.plan),
        *_radii(made),
        *(made.slab.left_edge.lengths),
        *(made.slab.right_edge.lengths),
    ]
    assert made.choice.used is not None
    values += [made.choice.used.board.name, *(place for _hand, places in splices for place in places)]
    values += edge_sizes(plan.plan)
    pulled = pull_notes(plan.plan, on_edge=plan.edge != CENTER and not plan.plan.layout.job.outward)
    notes = [*pulled, *(_splices_told(plan, *one) for one in splices if one[1]), *kinks]
    notes += [*edge_notes(plan.plan), say("boards.spring"), *(end_note(plan.plan, "lap") if past and not ends else [])]
    text = say("forming.boards_past_line" if past and LINE_ENDS[0] in ends else "forming.boards_line")
    return pass_card("boards", text, values, numbers, None, notes, drawn)


def _splices(plan: LinePlan, found: LineCut) -> Iterator[tuple[str, list[float]]]:
    """Where the boards of each form meet, metres along the slab's edge from the start."""
    for place, hand in enumerate(HANDS):
        yield (
            hand,
            [stretch.forms[place].on_edge(along)[1] for stretch in found.stretches for along in stretch.splices(place)],
        )


def _splices_told(plan: LinePlan, hand: str, places: list[float]) -> str:
    at = [plan.tape.show_running(place) for place in places]
    if len(at) > MOST_SPLICES:
        more = len(at) - MOST_SPLICES
        return say(f"forming.note.splices_{hand}_more", places=", ".join(at[:MOST_SPLICES]), count=more)
    return say(f"forming.note.splices_{hand}", places=", ".join(at))


def tops_card(plan: LinePlan) -> CardRow:
    """Return the card of the tops, or what has to be said before there are any."""
    settled, said = told_of(plan), settle(plan)
    if settled is None:
        stops = isinstance(said, LineSettled | LineClash)
        return pass_card(
            "tops", say("forming.tops_stop" if stops else "forming.tops_open"), ["stop" if stops else "open"]
        )
    grade, judged = settled.grade, judge(plan, settled)
    numbers, drawn, up = [], [], grade.climbed[-1]
    if up:
        numbers.append((say("forming.label.end_up" if up > 0 else "forming.label.end_down"), size_of(plan.tape, up)))
        drawn.append(("outside", "outside", 1))
    if settled.low:
        drop = size_of(plan.tape, abs(grade.cross) * grade.slab.width)
        numbers.append((say(f"forming.label.low_{settled.low}"), drop))
        at = (
            "slab" if drawn and settled.low == "left" else DRAWN[settled.low]
        )  # beside the disc that stands on the left
        drawn.append((at, at, len(numbers)))
    right = None
    if judged.across and settled.low:
        right = right_of("level_feet" if plan.tape.feet else "level_metric", level_drops_of(plan, judged)[0])
    values: list[Value] = [grade.start, grade.running, grade.cross, grade.crown, *grade.climbed]
    jointing = jointing_of(plan)
    if jointing and not jointing.stopped:
        values += [float(jointing.chosen.count), depth_of(plan.plan) or 0.0]
    return pass_card("tops", say("forming.tops_line"), values, numbers, right, [*_tops_notes(plan, settled)], drawn)


def _tops_notes(plan: LinePlan, settled: LineSettled) -> Iterator[str]:
    said, grade = plan.said.grade, settled.grade
    if along := along_of(settled):
        yield say(f"forming.note.slope_{along}", slope=percent(grade.running))
    if not grade.climbed[-1]:
        yield say("lined.end_level")
    if grade.crown:
        yield say("grades.forms_crown", height=size_of(plan.tape, grade.crown))
    elif not settled.low:
        yield say("grades.forms_level")
    if said.start is not None:
        unit = "ft" if plan.tape.feet else "m"
        yield say("forming.note.elevation_line", level=f"{elevation(plan.tape, grade.start)} {unit}")
    if said.start is not None and said.instrument is not None and grade.start <= said.instrument:
        yield say("forming.note.rod", reading=elevation(plan.tape, reading(plan.tape, said.instrument, grade.start)))
    yield from every_top(plan.plan)
    jointing = jointing_of(plan)
    if jointing and not jointing.stopped and jointing.chosen.count > 1:
        depth = depth_of(plan.plan)
        told = mark_up(inch_tape(plan.tape), depth) if depth else ""
        yield say("forming.note.joints", count=jointing.chosen.count - 1, depth=told)


def pour_card(plan: LinePlan) -> CardRow:
    """Return the card before the truck comes."""
    pouring, jointing, slab = pouring_along(plan), jointing_of(plan), plan.slab
    assert pouring is not None and slab is not None  # there are cards
    number, unit, _text = conclusion_of(pouring)
    numbers, drawn = [(unit, number)], [("slab", "slab", 1)]
    values: list[Value] = [pouring.order.ordered, pouring.depth, pouring.bags(pouring.order) if pouring.small else None]
    values += [size for read in plan.said.slab.depths for size in (read.at, read.depth)]
    thin, _limit = thin_told(plan.plan, pouring.deep, along_line(Sweep(slab)))
    notes = [unstarred(text) for text in thin]
    if jointing:
        course = course_of(plan, slab, pouring, jointing)
        half = half_out(course)
        if half:
            out, call = half
            shown = plan.tape.show_running(up_to(call, form_step(plan.tape)))
            numbers.append((say(f"forming.label.call_{course.hand}", out=out), shown))
            values.append(call)
            drawn.append((DRAWN[course.hand], DRAWN[course.hand], 2))
        notes += [unstarred(text) for text in [bulkhead_told(course, short=True)] if text]
    notes += [*end_note(plan.plan, "strip_ends", gap=isolation_shown(plan.plan)), say("forming.note.burns")]
    values += against(plan.plan)
    return pass_card("pour", say("forming.pour"), values, numbers, None, notes, drawn)
