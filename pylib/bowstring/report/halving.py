"""The rows of the halving: exact beside the rule of thumb, worked by hand, and kept square."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from math import degrees

from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.squaring import (
    BY_EYE,
    METRIC_BLADE,
    SQUARE_BLADE,
    TALL,
    UNIT_LEG,
    SideSlip,
    Squaring,
    squaring_of,
)
from bowstring.analysis.triangles import fits_of
from bowstring.geometry.arc import Arc
from bowstring.layout.layout import FEW_MARKS, Layout
from bowstring.layout.limits import limits_of
from bowstring.methods.halving import quarter_sagitta
from bowstring.report.by_hand import by_hand
from bowstring.report.forms.halving import LevelRow, SquaringPart
from bowstring.report.hands import curve_hand
from bowstring.units.sizes import INCH
from bowstring.units.tape import Tape
from bowstring.words import say


def report_levels(layout: Layout) -> list[LevelRow]:
    """Return the answer's ``halving`` rows."""
    return [_row(layout, level) for level in range(1, layout.levels + 1)]


def _row(layout: Layout, level: int) -> LevelRow:
    tape, staked = layout.job.shown, layout.staked
    arc, smaller = staked.part(2 ** (level - 1)), staked.part(2**level)
    rule = quarter_sagitta(staked, level)
    return {
        "level": level,
        "chord": arc.chord,
        "sagitta": arc.sagitta,
        "rule_sagitta": rule,
        "half": arc.chord / 2,
        "half_chord": smaller.chord,
        "chord_shown": tape.show(arc.chord),
        "half_shown": tape.show(arc.chord / 2),
        "sagitta_shown": tape.show(arc.sagitta),
        "rule_shown": tape.show(rule),
        "half_chord_shown": tape.show(smaller.chord),
        "stakes": [stake.name for stake in layout.halved if stake.level == level],
        "mostly_rounding": arc.sagitta < FEW_MARKS * tape.mark,
        "how": _how(layout, level, arc, smaller),
        "by_hand": by_hand(layout, level),
        "squaring": _squaring(layout, arc, level_squaring(layout, level), level < layout.levels),
    }


def _how(layout: Layout, level: int, arc: Arc, smaller: Arc) -> str | None:
    """One sentence for all strings of a level, or ``None`` where what was got makes their numbers differ."""
    tape = layout.job.shown
    steps = [step for step in layout.recipe.steps if step.level == level]
    lengths = {tape.show(measure.length) for step in steps for measure in step.measures}
    half, sagitta = tape.show(arc.chord / 2), tape.show(arc.sagitta)
    sloping = any(layout.slope)  # then each string has slope numbers of its own
    if not layout.method.levels_alike or sloping or layout.job.got or lengths != {half, sagitta}:
        return None
    return say(
        "level.how" if len(steps) > 1 else "level.how_one",
        half=half,
        sagitta=sagitta,
        half_chord=tape.show(smaller.chord),
        # Whose side isn't known needs no place to stand: there is nothing to tell a hand by.
        hand=say("level.hand", hand=curve_hand(layout)) if layout.side else curve_hand(layout),
    )


def level_squaring(layout: Layout, level: int) -> Squaring:
    """Return how a level's sagittae are kept square, with that triangle which finds room at each of its strings."""
    tape, arc = layout.job.tape, layout.staked.part(2 ** (level - 1))
    ground = Obstructions(layout.staked, limits_of(layout.job))
    moves = [square for step in layout.recipe.steps if step.level == level
             for move in step.moves if (square := move.squares) and square.slide]  # fmt: skip
    fits = partial(fits_of, layout.recipe.at, moves, ground) if moves else None
    return squaring_of(arc, tape.mark, UNIT_LEG[tape.unit], SQUARE_BLADE if tape.feet else METRIC_BLADE, fits)


def _squaring(layout: Layout, arc: Arc, ways: Squaring, another_level: bool) -> SquaringPart:
    triangle, tape = ways.triangle, layout.job.shown
    way = "slide" if arc.sagitta >= TALL[layout.job.tape.unit] else "square"
    return {
        "way": way,
        "half": ways.half,
        "half_chord": ways.half_chord,
        "along": triangle.along if triangle else None,
        "out": triangle.out if triangle else None,
        "long_side": triangle.long_side if triangle else None,
        "along_shown": tape.show(triangle.along) if triangle else None,
        "out_shown": tape.show(triangle.out) if triangle else None,
        "long_side_shown": tape.show(triangle.long_side) if triangle else None,
        "whole": triangle.whole if triangle else None,
        "ways": [{"way": way, "text": text} for way, text in _ways(tape, ways, another_level)],
        "text": say(f"square.prefer_{way}"),
    }


def _ways(tape: Tape, ways: Squaring, another_level: bool) -> Iterator[tuple[str, str]]:
    """Yield each way to keep a sagitta square by name, in the order in which to take them, with its sentence."""
    slide = say("square.slide", half_chord=tape.show(ways.half_chord))
    yield "slide", slide + _cost(tape, ways.slide, another_level)
    if ways.triangle and ways.triangle_slip:
        kind = "whole" if ways.triangle.whole else "computed"
        text = say(
            f"square.triangle_{kind}",
            shape=ways.triangle.whole,
            along=tape.show(ways.triangle.along),
            out=tape.show(ways.triangle.out),
            long_side=tape.show(ways.triangle.long_side),
        )
        yield "triangle", text + _cost(tape, ways.triangle_slip, another_level)
    number, unit = (f"{SQUARE_BLADE / INCH:.0f}", "in") if tape.feet else (f"{METRIC_BLADE * 1000:.0f}", "mm")
    blade = say("tape.sized", number=number, unit=unit)
    yield "square", say("square.blade", blade=blade) + _cost(tape, ways.square, another_level)
    yield "eye", say("square.eye", degrees=f"{degrees(BY_EYE):.0f}") + _cost(tape, ways.eye, another_level)


def _cost(tape: Tape, slip: SideSlip, another_level: bool) -> str:
    costs = {
        "aside": tape.show_cost(slip.aside),
        "here": tape.show_cost(slip.here),
        "next": tape.show_cost(slip.next_level),
    }
    return " " + say("square.cost" if another_level else "square.cost_last", **costs)
