"""The width stick, the diagonals that prove both edges, the form stakes, and the two passes of the work, told."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.slab import narrowed
from bowstring.report.forming.apron import dig_told, ends_of
from bowstring.report.forming.edge_board import board_of, pull_told
from bowstring.report.forming.edge_lines import footing_past, off_shown, overdig_of
from bowstring.report.forming.edge_marks import CENTER, INSIDE, OUTSIDE, STAKES, Marks
from bowstring.report.forming.edge_set import mark_name
from bowstring.report.forming.ends import past_ends
from bowstring.report.forming.in_dig import clear_of
from bowstring.report.forming.pins import held_lines
from bowstring.report.forming.plan import Plan, is_designed, is_wall
from bowstring.report.forms.build_edges import BayRow, WidthStick
from bowstring.units.sizes import INCH, TEN_FEET
from bowstring.words import say
from bowstring.words.stars import unstarred

SLIPS = {True: (3 * INCH, INCH, INCH / 2), False: (0.075, 0.025, 0.01)}
"""How far off square the tip of a stick may be held by eye, by what the tape reads: the largest that is no more than a
quarter of the stick is told (common practice, no source)."""
OF_THE_STICK = 4

LONG = {True: TEN_FEET, False: 3.0}
"""Metres: a longer stick sags and bends (common practice, no source)."""


def report_stick(plan: Plan, marks: Marks) -> WidthStick:
    """Return what is told of the stick that gauges one edge off the other, or both off a center line."""
    tape, halved = plan.tape, marks.yours == CENTER
    widths = _widths(plan, halved)
    length = max(widths)
    title = say("edges.stick_tapers") if plan.taper else say("edges.stick", length=tape.show(length))
    slip = next((one for one in SLIPS[plan.layout.job.tape.feet] if one <= min(widths) / OF_THE_STICK), None)
    narrow = None if slip is None else _narrow(marks, first_edge(plan, marks), halved, widths, slip)
    told = ""
    if slip is not None and narrow is not None:
        told = say(
            "walled.slip" if is_wall(plan) else "edges.slip", slip=tape.show_near(slip), narrow=tape.show_up(narrow)
        )
    return {
        "length": length,
        "length_shown": tape.show(length),
        "title": title,
        "marks": _marks(plan, halved, widths[0]),
        "how": list(_how(plan, marks, halved)),
        "slip": slip,
        "narrow": narrow,
        "slip_text": told,
    }


def _widths(plan: Plan, halved: bool) -> tuple[float, float]:
    """What the stick has at A and at B."""
    assert plan.width is not None
    part = 0.5 if halved else 1.0
    return part * plan.width, part * (plan.taper.last if plan.taper else plan.width)


def _narrow(marks: Marks, first: str, halved: bool, widths: tuple[float, float], slip: float) -> float:
    """Return the most by which a slip makes the slab too narrow: on a center line both of its edges, each by a stick of
    half the width, but one slip is one edge's."""
    found = []
    for share, width in zip((0.0, 1.0), widths, strict=True):
        if halved:
            base = marks.stakes.radius(share)
            found += [narrowed(base, width, slip), narrowed(base, -width, slip)]
        elif first == INSIDE:
            found.append(narrowed(marks.inner.radius(share), width, slip))
        else:
            found.append(narrowed(marks.outer.radius(share), -width, slip))
    return max(found)


def _marks(plan: Plan, halved: bool, width: float) -> list[list[str]]:
    """The stick's marks where it has the same ones all along: the first face, the other, its form stakes."""
    if plan.taper or is_designed(plan):  # no board stands along it
        return []
    name, thickness = board_of(plan)
    tape = plan.tape
    zero = say("edges.stick_line") if halved else say("edges.stick_first")
    return [
        [zero, tape.show(0)],
        [say("edges.stick_edge") if halved else say("edges.stick_other"), tape.show(width)],
        [say("edges.stick_form", board=name), tape.show(width + thickness)],
    ]


def first_edge(plan: Plan, marks: Marks) -> str:
    """Return the edge whose board is set first: that of the stakes, else the line's own, else the outer one."""
    for held in (marks.yours, marks.boarded):
        if held in (OUTSIDE, INSIDE):
            return held
    return INSIDE if plan.edge == INSIDE else OUTSIDE


def _how(plan: Plan, marks: Marks, halved: bool) -> Iterator[str]:
    if halved:
        yield say("edges.how_halved")
    else:
        held = first_edge(plan, marks)
        yield say(f"walled.first_{held}") if is_wall(plan) else say(f"edges.first_{held}")
    yield say("edges.how_square")
    if max(_widths(plan, halved)) > LONG[plan.layout.job.tape.feet]:
        yield say("edges.long_stick")
    if marks.yours != STAKES:
        yield _proof(plan, marks)
    if marks.yours == STAKES:
        offs = [off_shown(plan, marks.reach(key, 0)) for key in (OUTSIDE, INSIDE)]
        if plan.taper is None:
            key = "walled.from_stakes" if is_wall(plan) else "edges.from_stakes"
            yield say(key, outer=offs[0], inner=offs[1])


def _proof(plan: Plan, marks: Marks) -> str:
    """What tells that the stick is square: its tip is as far from the stake before its own as from the one after."""
    read = {key: {plan.tape.show(length) for length in marks.of_neighbors(key)} for key in marks.seconds}
    if any(len(texts) != 1 for texts in read.values()):
        return say("edges.proves_square_each")
    texts = {key: next(iter(texts)) for key, texts in read.items()}
    if len(texts) == 2:
        return say("edges.proves_square_both", outer=texts[OUTSIDE], inner=texts[INSIDE])
    return say("edges.proves_square", length=next(iter(texts.values())))


def report_bays(plan: Plan, marks: Marks) -> list[BayRow]:
    """Return the diagonals of each bay."""
    tape, rows = plan.tape, []
    for first, last, forth, back in marks.bays():
        names = {(key, stake): stake if key == marks.yours else mark_name(key, stake)
                 for key in (OUTSIDE, INSIDE) for stake in (first, last)}  # fmt: skip
        row: BayRow = {
            "first": first,
            "last": last,
            "ends": [
                [names[OUTSIDE, first], names[INSIDE, last]],
                [names[INSIDE, first], names[OUTSIDE, last]],
            ],
            "forth": forth,
            "back": back,
            "forth_shown": tape.show(forth),
            "back_shown": tape.show(back),
        }
        rows.append(row)
    return rows


def alike_of(bays: list[BayRow]) -> str:
    """Return what every diagonal reads, empty where they don't all read the same."""
    read = {text for bay in bays for text in (bay["forth_shown"], bay["back_shown"])}
    return read.pop() if len(read) == 1 else ""


def form_told(plan: Plan, marks: Marks) -> list[str]:
    """Return where the form stakes stand, seen from the job's own."""
    name, thickness = board_of(plan)
    size = plan.tape.show_whole(thickness)
    if is_designed(plan):
        return [say("walled.no_stakes")]
    if marks.yours not in (OUTSIDE, INSIDE):
        return [say("edges.form_behind", size=size, board=name), *held_lines(plan)]
    return [say(f"edges.form_{marks.yours}", size=size, board=name), pull_told(plan)]


def dug_out(plan: Plan, marks: Marks) -> bool:
    """Tell whether any of the job's stakes stand within the dig."""
    clear = clear_of(plan)
    return clear is not None and clear.takes(marks.stakes.first)


def passes_told(plan: Plan, marks: Marks) -> list[str]:
    """Return the two passes: stakes within the dig are set again after it from what stands outside it."""
    return passes_of(plan, dug_out(plan, marks))


def passes_of(plan: Plan, dug: bool) -> list[str]:
    """Return them by whether any of the job's stakes stand within the dig."""
    past = overdig_of(plan)
    paint = say("edges.paint", size=plan.tape.show_whole(past)) if past else say("edges.paint_at")
    if (footing_past(plan) or 0.0) > 0:
        size = plan.tape.show_whole(past)
        paint = say("edges.paint_footing", size=size) if past else say("edges.paint_footing_at")
    if is_wall(plan):
        first = "edges.hubs_first" if dug else "edges.clear_of_dig"
        again = "walled.line_again" if dug else "walled.line_again_stakes"
        keyed = [say("walled.line_first")] if plan.said.slab.footing_width else []
        return [say(first), paint, *keyed, say(again)]
    deeper = [unstarred(dig_told(plan))] if ends_of(plan) else []
    if plan.filled is None:
        deeper = [*past_ends(plan, past, "edges.paint_ends"), *deeper]
    if dug:
        return [say("edges.hubs_first"), paint, *deeper, say("edges.line_again")]
    return [say("edges.clear_of_dig"), paint, *deeper, say("edges.line_again_stakes")]
