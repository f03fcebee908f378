"""How true the stakes will be, told: each stake's scatter, all at once, and the shifts that can be taken out."""

from __future__ import annotations

from math import degrees

from bowstring.analysis.accuracy import Accuracy
from bowstring.analysis.biases import Bias, biases
from bowstring.analysis.error_model import ErrorModel
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.report.forms.accuracy import AccuracyPart, BiasRow, ErrorsPart, ModelRow
from bowstring.report.numbers import percent
from bowstring.report.todo import report_todo
from bowstring.units.angles import show_dms
from bowstring.units.worst import worst_shown
from bowstring.words import say


def report_accuracy(layout: Layout, row: Row) -> AccuracyPart:
    """Return the answer's ``accuracy``: the model, the worst stake, all stakes at once, and the known shifts."""
    tape, tolerance = layout.job.shown, layout.job.tolerance
    accuracy, errors = row.accuracy, row.errors
    assert accuracy is not None and errors is not None and row.recipe is not None
    chance = None if tolerance is None else accuracy.together.chance(tolerance)
    found = biases(layout.staked, row.recipe, layout.stakes, layout.slope)
    lines = [
        *report_todo(layout, row),
        say("accuracy.worst", at=accuracy.worst.name, miss=worst_shown(tape, accuracy.miss_95, tolerance)),
    ]
    if len(layout.stakes) > 3:
        lines.append(
            say("accuracy.all", count=len(layout.stakes) - 2, miss=worst_shown(tape, accuracy.all_95, tolerance))
        )
    if chance is not None and tolerance is not None:
        key = "accuracy.chance" if chance >= EVEN else "accuracy.chance_poor"
        lines.append(say(key, tolerance=tape.show_limit(tolerance), chance=percent_of(chance)))
    if len(layout.stakes) > 2:
        lines.append(_fair(layout, accuracy))
    if not accuracy.reliable:
        lines.append(say("accuracy.unreliable"))
    return {
        "miss_95": accuracy.miss_95,
        "all_95": accuracy.all_95,
        "at": accuracy.worst.name,
        "fair_95": accuracy.fair_95,
        "fair_at": accuracy.least_fair.name,
        "chance": chance,
        "reliable": accuracy.reliable,
        "errors": _errors(errors),
        "model": _model(layout, errors),
        "lines": lines,
        # What shows as nothing needs nobody's care.
        "biases": [_bias(layout, bias) for bias in found if abs(bias.worst) >= layout.job.tape.mark / 64],
    }


def _fair(layout: Layout, accuracy: Accuracy) -> str:
    """How far off the fair curve the least fair stake may stand, and whether that is within the limit."""
    tape, limit = layout.job.shown, layout.job.fair
    key = (
        "accuracy.fair"
        if limit is None
        else "accuracy.fair_holds"
        if accuracy.fair_95 <= limit
        else "accuracy.fair_over"
    )
    return say(key, at=accuracy.least_fair.name, miss=worst_shown(tape, accuracy.fair_95, limit),
               limit="" if limit is None else tape.show_limit(limit))  # fmt: skip


EVEN = 0.5


def percent_of(chance: float) -> str:
    """Return a chance in words' numbers: whole percents, without claiming certainty."""
    if chance > 0.995:
        return say("accuracy.over", percent="99%")
    return say("accuracy.under", percent="1%") if chance < 0.005 else percent(round(chance, 2))


def _errors(errors: ErrorModel) -> ErrorsPart:
    return {
        "read": errors.read,
        "scale": errors.scale,
        "stake": errors.stake,
        "line": errors.line,
        "angle": degrees(errors.angle),
    }


def _model(layout: Layout, errors: ErrorModel) -> list[ModelRow]:
    """Return the model's rows: what it is, how large, and whether the job says so itself."""
    tape, given = layout.job.shown, layout.job.site.errors
    shown = {
        "read": tape.show_cost(errors.read),
        "scale": say("accuracy.scale_shown", part=f"{errors.scale * 1e6:.0f}", on=tape.show(100 * layout_unit(layout)),
                     size=tape.show_cost(errors.scale * 100 * layout_unit(layout))),
        "stake": tape.show_cost(errors.stake),
        "line": tape.show_cost(errors.line),
        "angle": show_dms(degrees(errors.angle)),
    }  # fmt: skip
    turns = any(step.angles for step in layout.recipe.steps)
    return [
        {"name": name, "label": say(f"accuracy.error_{name}"), "shown": text,
         "from": say("accuracy.given" if name in given else "accuracy.usual")}
        for name, text in shown.items() if turns or name != "angle"
    ]  # fmt: skip


def layout_unit(layout: Layout) -> float:
    """Return a foot or a metre, as the job's tape reads."""
    return 0.3048 if layout.job.shown.feet else 1.0


def _bias(layout: Layout, bias: Bias) -> BiasRow:
    tape = layout.job.shown
    shown = tape.show_cost(bias.worst)
    return {
        "kind": bias.kind,
        "worst_miss": bias.worst,
        "at": bias.at,
        "shown": tape.show_small(bias.worst),
        "text": say(f"bias.{bias.kind}", miss=shown, at=bias.at),
    }
