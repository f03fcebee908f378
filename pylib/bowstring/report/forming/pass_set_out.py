"""The cards that get the line through the dig: hubs, dig lines, the base, and the line again."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from bowstring.report.forming.apron import inner_told, stretch_told
from bowstring.report.forming.at_forms import edge_sizes, trench_notes
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, STAKES, Marks
from bowstring.report.forming.edge_stick import LONG, alike_of, dug_out, report_bays, report_stick
from bowstring.report.forming.ends import against, past_ends
from bowstring.report.forming.hubs import hubs_of
from bowstring.report.forming.off_line import edge_notes, hub_notes, stray_values
from bowstring.report.forming.pass_card import Value, from_to, pass_card, right_of
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.standing import dig_notes
from bowstring.report.forming.thick_edge import edge_note
from bowstring.report.forms.cards import CardRight, CardRow
from bowstring.words import say


def hubs_card(plan: Plan, marks: Marks) -> CardRow:
    """Return the card of the hubs; only where the stakes are dug out."""
    hubs, tape = hubs_of(plan, marks), plan.tape
    read = {tape.show(length) for length in hubs.to_neighbors}
    right = right_of("hubs", read.pop()) if len(read) == 1 and not plan.layout.job.got else None
    notes = [*hub_notes(plan, hubs), say("forming.note.farther")]
    if hubs.blocked:
        notes.append(say("forming.note.hub_on", stake=hubs.at, what=hubs.blocked))
    numbers = [(say(f"forming.label.hub_{hubs.side}"), tape.show(hubs.off))]
    values = [*_stakes(plan, marks), hubs.side, hubs.off]  # no edge: hubs stand where they stood while only that moves
    return pass_card("hubs", say("forming.hubs"), values, numbers, right, notes, [("stake", f"hub_{hubs.side}", 1)])


def dig_card(plan: Plan, marks: Marks) -> CardRow:
    """Return the card of the dig lines, each from the stakes, where they still stand."""
    past, at, numbers, values = overdig_of(plan), marks.stakes.first, [], _line(plan, marks)
    notes, drawn = [*dig_notes(plan), say("forming.note.locates")], []
    for key, away in ((OUTSIDE, 1), (INSIDE, -1)):
        edge = marks.edge(key)
        offs = [off + away * past - at for off in (edge.first, edge.last)]
        values += offs
        if plan.line.radius + at + min(offs) <= 0:
            notes.append(say("edges.dig_all"))
            continue
        side = "out" if sum(offs) > 0 else "in"
        label = say(f"forming.label.dig_{key}_{side}")
        numbers.append((label, from_to(plan.tape, abs(offs[0]), abs(offs[1]))))
        drawn.append(("stake", f"dig_{key}", len(numbers)))
    if plan.taper:
        notes.append(say("forming.note.tapers"))
    notes += past_ends(plan, past, "forming.note.dig_ends")
    return pass_card("dig", say("forming.dig"), [*values, *against(plan)], numbers, None, notes, drawn)


def base_card(plan: Plan, *, over_line: bool = False) -> CardRow:
    """Return the card of the dig's depth and the base, both from the finished top; ``over_line``: along a line of
    several pieces."""
    slab, tape = plan.said.slab, plan.tape
    deep, base = slab.thickness or 0.0, slab.base or 0.0
    numbers, drawn = [(say("forming.label.dig_depth"), thick(tape, deep + base))], [("top", "bottom", 1)]
    if base:
        drawn.append(("top", "base", 2))
        numbers.append((say("forming.label.base_depth"), thick(tape, deep)))
    notes = []
    if slab.apron is not None:
        stretch, apron = stretch_told(plan), slab.apron.thickness
        numbers[0] = (say("forming.label.dig_beside"), numbers[0][1])
        key = "forming.note.apron_line" if over_line else "forming.note.apron"
        notes.append(say(key, stretch=stretch, deep=thick(tape, apron + base)))
        if not over_line:
            notes.append(say("forming.note.apron_inner", stretch=inner_told(plan)))
        if base:
            notes.append(say("forming.note.apron_base", deep=thick(tape, apron)))
    if slab.base is None:
        notes.append(say("forming.note.no_base"))
    notes += [*edge_note(plan), *trench_notes(plan)]
    if slab.footing_width and slab.footing_depth and plan.filled is None:
        sizes = {"wide": thick(tape, slab.footing_width), "deep": thick(tape, slab.footing_depth)}
        notes.append(say("forming.note.footing", **sizes))
    values: list[Value] = [deep, slab.base, slab.edge_width, slab.edge_depth, slab.footing_width, slab.footing_depth]
    if slab.edge_along is not None:
        values.append(slab.edge_along)
    if slab.apron is not None:
        values += [slab.apron.start, slab.apron.end, slab.apron.thickness]
    values += edge_sizes(plan)  # how deep it is dug past the edge
    text = say("forming.base" if base else "forming.base_none")
    return pass_card("base", text, values, numbers, None, notes, drawn)


def line_card(plan: Plan, marks: Marks) -> CardRow:
    """Return the card that sets the line again and both edges from it."""
    right, notes, line = _diagonals(plan, marks), list(_line_notes(plan, marks)), _line(plan, marks)
    if not dug_out(plan, marks):
        reach = {key: (abs(marks.reach(key, 0)), abs(marks.reach(key, 1))) for key in (OUTSIDE, INSIDE)}
        numbers, drawn = _to_edges(plan, "stakes", reach), [("stake", OUTSIDE, 1), ("stake", INSIDE, 2)]
        return pass_card("line", say("forming.line_stakes"), line, numbers, right, notes, drawn)
    hubs = hubs_of(plan, marks)
    values, hub = [*line, hubs.side, hubs.off], f"hub_{hubs.side}"
    if marks.yours == STAKES and marks.boarded is None:
        reach = {key: (hubs.to_edge(key, 0), hubs.to_edge(key, 1)) for key in (OUTSIDE, INSIDE)}
        numbers, drawn = _to_edges(plan, "hubs", reach), [(hub, OUTSIDE, 1), (hub, INSIDE, 2)]
        return pass_card("line", say("forming.line_hubs"), values, numbers, right, notes, drawn)
    numbers = [
        (say("forming.label.hub_back"), plan.tape.show(hubs.off)),
        (say("forming.label.stick"), _stick(plan, marks)),
    ]
    text = say("forming.line_both" if marks.yours == CENTER else "forming.line_other")
    sticks = [("stake", key, 2) for key in marks.seconds]
    return pass_card("line", text, values, numbers, right, notes, [(hub, "stake", 1), *sticks])


def _to_edges(plan: Plan, start: str, reach: Mapping[str, tuple[float, float]]) -> list[tuple[str, str]]:
    """Return the number of each edge: how far it is at A and at B."""
    return [(say(f"forming.label.{start}_{key}"), from_to(plan.tape, *ends)) for key, ends in reach.items()]


def _stick(plan: Plan, marks: Marks) -> str:
    """Return what the width stick has, at A and at B where the width changes."""
    if plan.taper and plan.width is not None:
        part = 0.5 if marks.yours == CENTER else 1.0
        return from_to(plan.tape, part * plan.width, part * plan.taper.last)
    return report_stick(plan, marks)["length_shown"]


def _diagonals(plan: Plan, marks: Marks) -> CardRight:
    alike = alike_of(report_bays(plan, marks))
    return right_of("diagonals", alike) if alike else right_of("diagonals_each")


def _line_notes(plan: Plan, marks: Marks) -> Iterator[str]:
    if plan.taper:
        yield say("forming.note.tapers")
    if any(plan.layout.slope):
        yield say("forming.note.level")
    strays = [] if dug_out(plan, marks) else edge_notes(plan, marks)
    yield from strays
    if not strays and max(plan.width or 0.0, plan.taper.last if plan.taper else 0.0) > LONG[plan.layout.job.tape.feet]:
        yield say("forming.note.long_stick")


def _line(plan: Plan, marks: Marks) -> list[Value]:
    """Return where both edges and the stakes are, as numbers: what is set out from them hangs on it."""
    offs = [off for edge in (marks.outer, marks.inner) for off in (edge.first, edge.last)]
    return _stakes(plan, marks, offs)


def _stakes(plan: Plan, marks: Marks, offs: Sequence[float] = ()) -> list[Value]:
    """Return where the stakes are, with what else is told of their line."""
    line = plan.line
    places = [value for name, share in marks.shares for value in (name, share)]
    return [line.radius, line.half_angle, marks.stakes.first, *offs, *places, *stray_values(plan.layout)]
