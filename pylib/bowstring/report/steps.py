"""Each step as a sentence with its numbers."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import degrees

from bowstring.analysis.biases import level_of
from bowstring.analysis.taped import taped_in
from bowstring.analysis.wind import STRING_PULL_SHOWN, WIND_SPEED_SHOWN, string_bow
from bowstring.construction import Measure, Step, Turned
from bowstring.geometry.plane import distance, middle
from bowstring.layout.layout import Layout
from bowstring.report.faced import hands_of
from bowstring.report.forms.steps import Deflected, Reading, StepRow, TapeMeasure, TurnedAngle
from bowstring.report.hands import away_hand, curve_hand, hand_told, turn_hand
from bowstring.report.kinked import b_from_line
from bowstring.report.numbers import off_the_arc
from bowstring.report.places import far_back
from bowstring.report.proofs import proof_values
from bowstring.units.angles import show_dms
from bowstring.units.tape import Tape
from bowstring.words import say

HAVE_ENDS = ("have_ends", "have_ends_untaped")
"""Steps that find both ends."""

LONG_STRING = 15.24
"""Metres (50 ft): a longer string is told about wind."""


def report_steps(layout: Layout, shown: dict[float, str]) -> list[StepRow]:
    """Return the answer's ``steps``. ``shown`` keeps the text of each length met, since most repeat."""
    tape = layout.job.shown

    def show(length: float) -> str:
        if length not in shown:
            shown[length] = tape.show(length)
        return shown[length]

    rows: list[StepRow] = []
    for number, step in enumerate(layout.recipe.steps, 1):
        # What stands in a column of places along a line is told in the step as it stands there.
        running = layout.method.running(step.kind)
        shows = [tape.show_running if count in running else show for count in range(len(step.measures))]
        measures = list(zip(step.measures, shows, strict=True))
        texts = {f"{one.start}>{one.end}": _held(layout, one, as_shown) for one, as_shown in measures}
        halving = step.sagitta is not None
        rows.append(
            {
                "number": number,
                "level": step.level,
                "kind": step.kind,
                "text": _sentence(layout, step, texts, _half_held(layout, step, show) if halving else ""),
                "cautions": _cautions(layout, step, number),
                "marks": list(step.sets),
                "stands": step.stands,
                "to": step.names.get("end"),
                "half_chord": _half_held(layout, step, show) if halving else None,
                "taped": _taped(layout, step, texts) if halving else None,
                **_deflected(layout, step),
                "stake": step.stake,
                "names": dict(step.names),
                "measures": [
                    *(_measure_row(layout, measure, texts, as_shown) for measure, as_shown in measures),
                    *(_angle_row(turned) for turned in step.angles),
                ],
                "readings": _readings(layout, step, show),
            }
        )
    return rows


def _cautions(layout: Layout, step: Step, number: int) -> list[str]:
    """What somebody should know at this very step."""
    tape, chord = layout.job.shown, layout.staked.chord
    if step.kind == "string" and chord > LONG_STRING and layout.string_used:
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
    """A measure's slope distance in metres, ``None`` on level ground and for a tape that is held level."""
    at = layout.marks
    if not any(layout.slope):
        return None
    return measure.length + level_of(*layout.slope, at[measure.start], at[measure.end])


def _held(layout: Layout, measure: Measure, show: Callable[[float], str]) -> str:
    """What is held on the tape: the level length, and on sloping ground the slope's beside it where it reads else."""
    slope = _sloping(layout, measure)
    return on_the_slope(show(measure.length), None if slope is None else show(slope))


def on_the_slope(level: str, slope: str | None) -> str:
    """Return a length as it is held: level, with what it reads along the slope where that is something else."""
    return level if slope in (None, level) else say("slope.both", level=level, slope=slope)


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


def _readings(layout: Layout, step: Step, show: Callable[[float], str]) -> list[Reading]:
    """What is read besides the measures: the other half of a string, the half chords of a tip that is slid."""
    at = layout.recipe.at
    measured = {(measure.start, measure.end) for measure in step.measures}
    rows: list[Reading] = []
    for start, end in taped_in(step):
        if (start, end) not in measured:
            length = distance(at[start], at[end])
            rows.append({"from": start, "to": end, "distance": length, "shown": show(length)})
    return rows


def _angle_row(turned: Turned) -> TurnedAngle:
    angle = degrees(turned.angle)
    return {"at": turned.vertex, "from": turned.start, "to": turned.end, "angle": angle,
            "shown": show_dms(angle), "text": show_dms(angle)}  # fmt: skip


def _deflected(layout: Layout, step: Step) -> Deflected:
    """A deflection as the trade turns it, off the tangent, and off the long chord."""
    if step.deflection is None:
        return {"deflection": None, "off_chord": None}
    rest = layout.staked.half_angle - step.deflection
    return {"deflection": show_dms(degrees(step.deflection)), "off_chord": show_dms(degrees(rest))}


def _onto(step: Step, lengths: Sequence[str]) -> str:
    """How a tape meets a line of sight: along it from the instrument, or from the stake before."""
    if step.deflection is None:
        return ""
    key = "step.onto_first" if step.names["other"] == step.names["start"] else "step.onto_next"
    return say(key, length=lengths[0], other=step.names["other"], start=step.names["start"])


def _half_chord(layout: Layout, step: Step) -> float:
    at = layout.recipe.at
    return distance(at[step.names["start"]], at[step.names["stake"]])


PROVED_ALONG = ("prove_two", "prove_parts")
"""Steps that prove the ends along a string between them."""


def kind_told(layout: Layout, step: Step) -> str:
    """Return the name of a step's sentence.

    An offset string was just set at both ends, so it is taped; one that the ends were proved along is up already; one
    that no step goes by isn't stretched.
    """
    if step.stands and not _told_by_halving(layout, step):
        return "stands" if step.stake else "stands_helper"
    if step.kind != "string":
        return step.kind
    if not layout.string_used:
        return "ends_taped" if step.measures else "no_string"
    if step.measures:
        return "string_taped"
    proved = any(one.kind in PROVED_ALONG and one.names["start"] == step.names["start"] for one in layout.recipe.steps)
    return "string_up" if proved else "string"


def alone(layout: Layout, step: Step) -> str:
    """Return what the name of the sentence of a stake that stands already ends in where nothing is set from it."""
    return "_alone" if step.stake and step.stands and not layout.recipe.leaning_on(step) else ""


def _told_by_halving(layout: Layout, step: Step) -> bool:
    """Whether a stake that was got is told by its string: its middle is where it should be."""
    if step.kind != "stake_got":
        return False
    at, mid = layout.recipe.at, step.sets[0]
    return distance(at[mid], middle(at[step.names["start"]], at[step.names["end"]])) <= layout.job.tape.mark / 2


def _sentence(layout: Layout, step: Step, texts: dict[str, str], half_chord: str) -> str:
    tape: Tape = layout.job.shown
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
        **hands_of(layout, step),
        **_deflected(layout, step),
        "onto": _onto(step, lengths),
        **proof_values(layout, step, lengths),
        "mark": step.sets[-1] if step.sets else "",
        "far_check": _far_check(step, lengths),
        "back": far_back(layout.marks, step.sets, tape.feet),
        "first_landmark": _landmark(layout, "A"),
        "second_landmark": _landmark(layout, "B"),
    }
    if step.stake and step.sagitta is not None:
        if step.sagitta < 0:
            values["hand"], values["other_hand"] = values["other_hand"], values["hand"]
        values["wanted"] = tape.show(abs(step.sagitta))
    if step.stake and step.stands:
        values["off"] = off_the_arc(tape, layout.misses.by_stake[step.stake])
    text = say(f"step.{kind_told(layout, step)}{alone(layout, step)}", **values)
    return f"{text} {b_from_line(layout) if step.kind in HAVE_ENDS else ''}".rstrip()


def _far_check(step: Step, lengths: Sequence[str]) -> str:
    """What proves S behind an arc, and no step went by: empty where no tape gets there."""
    last = step.measures[-1] if step.measures else None
    if last is None or (last.start, last.end) != (step.names.get("last"), "S"):
        return ""
    return say("step.far_check", last=last.start, length=lengths[-1])


def _corner_hand(layout: Layout, step: Step) -> str:
    """On which hand the corner must be, for somebody at the first end; nothing where that isn't known."""
    if layout.side is None or not {"start", "end"} <= step.names.keys():
        return ""
    return say("step.corner_hand", start=step.names["start"], end=step.names["end"], hand=curve_hand(layout))


def _landmark(layout: Layout, end: str) -> str:
    landmark = layout.job.ends[end]
    return say("landmark", landmark=landmark) if landmark else ""
