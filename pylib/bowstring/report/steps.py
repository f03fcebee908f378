"""Each step as a sentence with its numbers."""

from __future__ import annotations

from collections.abc import Callable
from math import degrees

from bowstring.analysis.biases import level_of
from bowstring.analysis.wind import STRING_PULL_SHOWN, WIND_SPEED_SHOWN, string_bow
from bowstring.construction import Measure, Step, Turned
from bowstring.geometry.plane import distance, signed_angle
from bowstring.layout.layout import Layout
from bowstring.report.forms.steps import StepRow, TapeMeasure, TurnedAngle
from bowstring.report.hands import away_hand, curve_hand, hand_told, turn_hand
from bowstring.report.numbers import off_the_arc
from bowstring.report.proofs import proof_values
from bowstring.units.angles import show_dms
from bowstring.units.tape import Tape
from bowstring.words import say

LONG_STRING = 15.24
"""Metres (50 ft): a longer string is told about wind."""


def report_steps(layout: Layout, shown: dict[float, str]) -> list[StepRow]:
    """Return the answer's ``steps``. ``shown`` keeps the text of each length met, since most repeat."""
    tape = layout.job.tape

    def show(length: float) -> str:
        if length not in shown:
            shown[length] = tape.show(length)
        return shown[length]

    rows: list[StepRow] = []
    for number, step in enumerate(layout.recipe.steps, 1):
        texts = {f"{one.start}>{one.end}": _held(layout, one, show) for one in step.measures}
        halving = step.sagitta is not None
        rows.append(
            {
                "number": number,
                "level": step.level,
                "kind": step.kind,
                "text": _sentence(layout, step, texts, _half_held(layout, step, show) if halving else ""),
                "cautions": _cautions(layout, step, number),
                "marks": list(step.sets),
                "to": step.names.get("end"),
                "half_chord": _half_held(layout, step, show) if halving else None,
                "taped": _taped(layout, step, texts) if halving else None,
                "stake": step.stake,
                "names": dict(step.names),
                "measures": [
                    *(_measure_row(layout, measure, texts, show) for measure in step.measures),
                    *(_angle_row(turned) for turned in step.angles),
                ],
            }
        )
    return rows


def _cautions(layout: Layout, step: Step, number: int) -> list[str]:
    """What somebody should know at this very step."""
    tape, chord = layout.job.tape, layout.staked.chord
    if step.kind == "string" and chord > LONG_STRING:
        bow = tape.show_cost(string_bow(chord))
        return [say("caution.wind", chord=tape.show(chord), bow=bow, wind=WIND_SPEED_SHOWN, pull=STRING_PULL_SHOWN)]
    if number == 1:
        return [say("caution.tape_zero"), say("caution.slope")]
    if step.stake and step.stake == next(one.stake for one in layout.recipe.steps if one.stake):
        return [say("caution.services")]
    return []


def _taped(layout: Layout, step: Step, texts: dict[str, str]) -> str:
    """What is squared off a stake's string, as a table has it: with its hand where it goes the other way."""
    shown = list(texts.values())[1]
    if step.kind == "stake_got":
        return say("step.got_short", shown=shown)
    if step.sagitta is not None and step.sagitta < 0:
        return say("step.back_short", shown=shown, hand=away_hand(layout))
    return shown


def _sloping(layout: Layout, measure: Measure) -> float | None:
    """A measure's slope distance in metres, ``None`` on level ground."""
    site, at = layout.job.site, layout.marks
    if not (site.along or site.across):
        return None
    return measure.length + level_of(site.along, site.across, at[measure.start], at[measure.end])


def _held(layout: Layout, measure: Measure, show: Callable[[float], str]) -> str:
    """What is held on the tape: the level length, and on sloping ground the slope's beside it where it reads else."""
    level, slope = show(measure.length), _sloping(layout, measure)
    if slope is None or show(slope) == level:
        return level
    return say("slope.both", level=level, slope=show(slope))


def _half_held(layout: Layout, step: Step, show: Callable[[float], str]) -> str:
    """The half chords that keep a tip square, level."""
    return show(_half_chord(layout, step))


def _measure_row(layout: Layout, measure: Measure, texts: dict[str, str], show: Callable[[float], str]) -> TapeMeasure:
    """A measure as the answer has it; with its slope distance where the ground falls."""
    row: TapeMeasure = {
        "from": measure.start,
        "to": measure.end,
        "distance": measure.length,
        "shown": show(measure.length),
        "text": texts[f"{measure.start}>{measure.end}"],
    }
    slope = _sloping(layout, measure)
    if slope is not None:
        row["slope"], row["slope_shown"] = slope, show(slope)
    return row


def _angle_row(turned: Turned) -> TurnedAngle:
    angle = degrees(turned.angle)
    return {"at": turned.vertex, "from": turned.start, "to": turned.end, "angle": angle,
            "shown": show_dms(angle), "text": show_dms(angle)}  # fmt: skip


def _half_chord(layout: Layout, step: Step) -> float:
    at = layout.recipe.at
    return distance(at[step.names["start"]], at[step.names["stake"]])


def _kind(step: Step) -> str:
    """The step's sentence; an offset string was just set at both ends, so it is taped."""
    return "string_taped" if step.kind == "string" and step.measures else step.kind


def _sentence(layout: Layout, step: Step, texts: dict[str, str], half_chord: str) -> str:
    tape: Tape = layout.job.tape
    lengths = list(texts.values())
    values: dict[str, object] = {
        **step.names,
        **{f"length{i}": text for i, text in enumerate(lengths)},
        "hand": curve_hand(layout),
        "other_hand": away_hand(layout),
        "turn": turn_hand(layout, left=False),
        "told": hand_told(layout),
        "corner_hand": _corner_hand(layout, step),
        "half_chord": half_chord,
        **{f"angle{i}": show_dms(degrees(turned.angle)) for i, turned in enumerate(step.angles)},
        **_hands(layout, step),
        **proof_values(layout, step, lengths),
        "first_landmark": _landmark(layout, "A"),
        "second_landmark": _landmark(layout, "B"),
    }
    if step.stake and step.sagitta is not None:
        if step.sagitta < 0:
            values["hand"], values["other_hand"] = values["other_hand"], values["hand"]
        values["wanted"] = tape.show(abs(step.sagitta))
        values["off"] = off_the_arc(tape, layout.misses.by_stake[step.stake])
    return say(f"step.{_kind(step)}", **values).rstrip()


def _corner_hand(layout: Layout, step: Step) -> str:
    """On which hand the corner must be, for somebody at the first end; nothing where that isn't known."""
    if layout.side is None or not {"start", "end"} <= step.names.keys():
        return ""
    return say("step.corner_hand", start=step.names["start"], end=step.names["end"], hand=curve_hand(layout))


def _hands(layout: Layout, step: Step) -> dict[str, str]:
    """On which hand something lies that isn't told from the chord: a turned mark, an offset from a tangent."""
    at = layout.recipe.at
    row = {}
    for turned in step.angles:
        left = signed_angle(at[turned.vertex], at[turned.start], at[turned.end]) > 0
        row["turn_hand"] = turn_hand(layout, left)
    if {"start", "end", "stake"} <= step.names.keys():
        first, second, crossing = (at[step.names[part]] for part in ("start", "end", "stake"))
        left = second.minus(first).cross(crossing.minus(first)) > 0
        row["cross_hand"] = turn_hand(layout, left)
    if {"start", "foot", "stake"} <= step.names.keys():
        foot, stake = step.names["foot"], step.names["stake"]
        start = at[step.names["start"]]
        left = at[foot].minus(start).cross(at[stake].minus(start)) > 0
        row["off_hand"] = turn_hand(layout, left)
    return row


def _landmark(layout: Layout, end: str) -> str:
    landmark = layout.job.ends[end]
    return say("landmark", landmark=landmark) if landmark else ""
