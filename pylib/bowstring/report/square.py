"""How offsets that are squared by a triangle are kept square, told for methods that go round once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from bowstring.analysis.squaring import kit_of
from bowstring.analysis.triangles import Square, common_square
from bowstring.layout.layout import Layout
from bowstring.layout.limits import squares_here
from bowstring.report.places import place_name
from bowstring.units.tape import Tape
from bowstring.words import say


def report_square(layout: Layout) -> list[str]:
    """Return the answer's ``square``: the triangle for all offsets, those stakes that have one of their own, and what
    one mark wrong in it does at the farthest.

    Empty for methods without such offsets.
    """
    tape = layout.job.shown
    squares = squares_here(layout.job, layout.setting, layout.recipe)
    found = {
        one.mark: (abs(one.length), one.foot)
        for step in layout.recipe.steps if step.level
        for move in step.moves if (one := move.squares) and not one.slide
    }  # fmt: skip
    if not found:
        return []
    here = {mark: square for mark, square in squares.items() if mark in found}
    lines = list(_common(layout, here))
    stake = max(found, key=lambda mark: found[mark][0])
    longest = found[stake][0]
    lines.append(
        say("square.each_cost", stake=stake, offset=tape.show(longest), mark=tape.show_mark(),
            aside=tape.show_cost(here[stake].turn(tape.mark) * longest / 2))
    )  # fmt: skip
    kit = kit_of(layout.job.tape)
    lines.append(say("square.each_short", blade=blade_words(tape), enough=tape.show(kit.enough)))
    return lines


def _common(layout: Layout, squares: Mapping[str, Square]) -> Iterator[str]:
    """The triangle for all, and each mark at which it has no room."""
    tape = layout.job.shown
    common = common_square(layout.recipe, kit_of(layout.job.tape, layout.job.site.tape_length))
    if common and any(square.shape for square in squares.values()):
        yield say("square.each", along=tape.show(common.along), out=tape.show(common.out),
                  long_side=tape.show(common.long_side), shape=common.whole)  # fmt: skip
    own: dict[str, list[str]] = {}
    for mark, square in squares.items():
        if not square.usual:
            own.setdefault(square_words(tape, square), []).append(mark)
    for words, marks in own.items():
        yield say("square.own", marks=", ".join(marks), square=words)


def square_words(tape: Tape, square: Square) -> str:
    """Return how an offset is squared, in words: by a triangle with its sides, or by a framing square."""
    if not square.shape:
        return say("square.with_blade", blade=blade_words(tape))
    return say(
        "square.with_triangle", shape=square.shape, along=tape.show(square.along), out=tape.show(square.out),
        long_side=tape.show(square.long_side), toward=place_name(square.toward),
    )  # fmt: skip


def blade_words(tape: Tape) -> str:
    """Return the size of a framing square's blade as one asks for it."""
    blade = kit_of(tape).blade
    number, unit = (f"{blade / 0.0254:.0f}", "in") if tape.feet else (f"{blade * 1000:.0f}", "mm")
    return say("tape.sized", number=number, unit=unit)
