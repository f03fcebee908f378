"""What the step of a suspect reads if the stake stands where the readings put it, and the slip that puts it there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial

from bowstring.analysis.limits import expected_between
from bowstring.analysis.slips import wrong_lengths
from bowstring.analysis.spread import Spread
from bowstring.analysis.suspects import NEARLY, Suspect, Taped, carried, leaves
from bowstring.construction import HELPERS, PULL, Marks, Number, Step, exact
from bowstring.geometry.plane import Point, distance, left_of, unit_vector
from bowstring.layout.got import step_of
from bowstring.layout.layout import Layout
from bowstring.words import say

ALL_BUT = 0.05
"""What may be left of the misses, of what they are, for another side to explain them."""
SAME = 1e-9
"""Metres: two lengths are the same."""


@dataclass(frozen=True)
class Told:
    """What is told of a suspect: the side that it stands on by mistake, if it does, what to tape of it, and how far
    off the slip that is named puts it."""

    side: str = ""
    prove: str = ""
    shift: Point | None = None


@dataclass(frozen=True)
class _Wrong:
    """A length of the step as it would read: ``reads`` metres for ``asked``, and how many limits apart they are."""

    start: str
    end: str
    asked: float
    reads: float
    limits: float


def told_of(layout: Layout, one: Suspect, taped: Sequence[Taped], spread: Spread) -> Told:
    """Return what a suspect's own step says of it."""
    try:
        step = step_of(layout.recipe, one.mark)
    except StopIteration:
        return Told()  # a known point: no step sets it
    side = _wrong_side(layout, one, step, taped)
    if side:
        return Told(side=side)
    wrong = list(_wrong(layout, one, step, spread))
    if not wrong:
        return Told()
    for length in sorted(wrong, key=lambda each: -each.limits):
        for kind, slipped in wrong_lengths(length.asked, layout.job.tape):
            if _explains(layout, one, partial(_held, length.asked, slipped), step, taped):
                at = _done(layout, one, partial(_held, length.asked, slipped), step)
                shift = at[one.mark].minus(layout.marks[one.mark])
                return Told(prove=_prove(layout, length, slipped, kind), shift=shift)
    most = max(wrong, key=lambda each: each.limits)
    return Told(prove=_prove(layout, most, most.reads))


def _wrong_side(layout: Layout, one: Suspect, step: Step, taped: Sequence[Taped]) -> str:
    """That it was set to the wrong side of its line, where that explains what was read."""
    off = next((move for move in step.moves if move.mirrored() != move), None)
    if off is None:
        return ""
    mirrored = Step(step.kind, step.level, tuple(move.mirrored() for move in step.moves))
    if not _explains(layout, one, exact, mirrored, taped) and not _far_nearer(layout, one, mirrored, taped):
        return ""
    square = off.squares
    start, end = (square.start, square.end) if square else off.uses[:2]
    return say("read.wrong_side", stake=one.mark, start=start, end=end)


def _far_nearer(layout: Layout, one: Suspect, step: Step, taped: Sequence[Taped]) -> bool:
    """Whether the readings are nearly all explained by the other side: it has no size that could be chosen to fit, so
    what the other stakes' own errors leave, far over a limit where tapes cross flat, speaks for it all the same."""
    try:
        left = leaves(taped, _done(layout, one, exact, step))
    except ZeroDivisionError:
        return False
    return left <= ALL_BUT * leaves(taped, layout.marks)


def _held(asked: float, slipped: float, length: float) -> float:
    return slipped if abs(length - asked) <= SAME else length


def _explains(layout: Layout, one: Suspect, number: Number, step: Step, taped: Sequence[Taped]) -> bool:
    """Whether the step done so, and what was set from it, leaves no reading out."""
    try:
        at = _done(layout, one, number, step)
    except ZeroDivisionError:
        return False
    return leaves(taped, at) <= (1.0 if one.explains else NEARLY)


def _done(layout: Layout, one: Suspect, number: Number, step: Step) -> Marks:
    """Where all marks stand with the step done so. Raises ``ZeroDivisionError`` where it can't be done."""
    at: Marks = dict(layout.marks)
    for move in step.moves:
        at[move.mark] = move.place(at, number)
    return carried(layout.recipe, at, one.along)


def _wrong(layout: Layout, one: Suspect, step: Step, spread: Spread) -> Iterator[_Wrong]:
    """Each length of the step that reads otherwise by more than such a reading may be out."""
    tape, at = layout.job.tape, layout.marks
    there = _there(layout, one, step)
    pairs = [(each.start, each.end) for each in step.measures]
    pairs += [(start, end) for move in step.moves for kind, start, end in move.lines if kind == PULL]
    for start, end in dict.fromkeys(pairs):
        if {start, end} <= at.keys():
            asked, reads = distance(at[start], at[end]), distance(there[start], there[end])
            limit = max(tape.down(expected_between(start, end, at, spread)), tape.mark)
            if abs(reads - asked) > limit:
                yield _Wrong(start, end, asked, reads, abs(reads - asked) / limit)


def _there(layout: Layout, one: Suspect, step: Step) -> Mapping[str, Point]:
    """Where the step's marks are taped with the stake where it is suspected: its foot is square across from it."""
    at = {**layout.marks, one.mark: layout.marks[one.mark].plus(one.shift)}
    feet = {move.mark for move in step.moves if move.on_line and move.pulls}
    for square in (move.squares for move in step.moves):
        if square and square.foot in feet:
            across = left_of(unit_vector(at[square.start], at[square.end]))
            off = at[one.mark].minus(at[square.foot]).dot(across)
            at[square.foot] = at[one.mark].plus(across, -off)
    return at


def _prove(layout: Layout, length: _Wrong, reads: float, slip: str = "") -> str:
    tape = layout.job.shown
    key = "read.prove_slip" if slip else "read.prove"
    kind = say(f"read.slip.{slip}") if slip else ""
    what = _what(length.start, length.end)
    return say(key, what=what, shown=tape.show(length.asked), reads=tape.show(reads), slip=kind)


def _what(start: str, end: str) -> str:
    """What is taped, as a person says it."""
    if _helper(end) in ("foot", "tan", "par"):
        return say("read.along", stake=end.split()[1], start=_named(start))
    if _helper(end) == "mid":
        return say("read.pair", start=start, end=_named(end))
    if _helper(start) in HELPERS:
        return say("read.square_off", stake=end)
    return say("read.pair", start=start, end=end)


def _helper(mark: str) -> str:
    first, _space, rest = mark.partition(" ")
    return first if rest else ""


def _named(mark: str) -> str:
    return say("read.midpoint") if _helper(mark) == "mid" else mark
