"""The rule of thumb, the rounding, the gap between stakes and the story stick, told."""

from __future__ import annotations

from bowstring.analysis.replay import Misses, TooSmall, misses, replay
from bowstring.analysis.rule import SEMICIRCLE, Alternate, alternate_reading, good_up_to
from bowstring.errors import bad
from bowstring.layout.layout import Layout
from bowstring.report.forms.arc import FitOption, FitPart
from bowstring.report.forms.results import GapPart, RoundingPart, RulePart, StickMark, StickPart
from bowstring.units.angles import to_second
from bowstring.units.tape import Tape
from bowstring.words import say


def report_rule(layout: Layout) -> RulePart:
    """Return the answer's ``rule``: what the quarter rule would cost, stake by stake, and what shows it."""
    tape, tolerance, rule = layout.job.shown, layout.job.tolerance, layout.rule
    holds = None if tolerance is None else abs(rule.worst) <= tolerance
    alternate = alternate_reading(layout.staked, layout.halved, layout.rule_at)
    good = None if tolerance is None else good_up_to(layout.staked.chord, layout.levels, tolerance)
    lines = [
        *([_alternate_line(alternate, tape)] if alternate else []),
        *([_good_line(layout, good, tolerance)] if good is not None and tolerance is not None else []),
        *([say("rule.planned")] if layout.job.got else []),
    ]
    return {
        "worst_miss": rule.worst,
        "at": rule.at,
        "holds": holds,
        "shown": tape.show_small(rule.worst),
        "stakes": [
            {"name": name, "miss": miss, "shown": tape.show_small(miss)} for name, miss in rule.by_stake.items()
        ],
        "alternate": (
            {"true": alternate.true, "in_rule": alternate.in_rule, "at": alternate.at} if alternate else None
        ),
        "good_up_to": good,
        "text": _rule_text(layout, holds),
        "lines": lines,
    }


def _alternate_line(alternate: Alternate, tape: Tape) -> str:
    """The check over every other stake, and what it reads where the rule was followed."""
    return say(
        "rule.alternate",
        true=tape.show(alternate.true),
        wrong=tape.show(alternate.in_rule),
        at=alternate.at,
        apart=tape.show_small(abs(alternate.in_rule - alternate.true)),
    )


def _good_line(layout: Layout, ratio: float, tolerance: float) -> str:
    """How flat an arc on this chord has to be so that the rule is good enough."""
    tape, staked = layout.job.shown, layout.staked
    return say(
        "rule.good_always" if ratio >= SEMICIRCLE else "rule.good_up_to",
        ratio=f"{ratio:.3f}",
        rise=tape.show(ratio * staked.chord),
        chord=tape.show(staked.chord),
        here=f"{staked.sagitta / staked.chord:.3f}",
        tolerance=tape.show_small(tolerance),
    )


def _rule_text(layout: Layout, holds: bool | None) -> str:
    tape, tolerance, rule = layout.job.shown, layout.job.tolerance, layout.rule
    if layout.levels == 1 or rule.worst == 0:
        return say("rule.one_level")
    worst, allowed = tape.show_small(abs(rule.worst)), "" if tolerance is None else tape.show_small(tolerance)
    if holds is False and tolerance is not None:
        worst, allowed = tape.show_over(rule.worst, tolerance)
    return say(
        "rule.no_tolerance" if holds is None else "rule.holds" if holds else "rule.fails",
        worst=worst,
        at=rule.at,
        where=say("rule.inside" if rule.worst < 0 else "rule.outside"),
        tolerance=allowed,
    )


def report_rounding(layout: Layout) -> RoundingPart:
    """Return the answer's ``rounding``: where the stakes stand when the shown numbers are held exactly."""
    tape, tolerance, rounding = layout.job.shown, layout.job.tolerance, rounded(layout)
    finer = tape.finer()
    eats = tolerance is not None and abs(rounding.worst) > tolerance / 2
    key = "rounding.eats" if eats and finer else "rounding.eats_all" if eats else "rounding.fine"
    return {
        "worst_miss": rounding.worst,
        "at": rounding.at,
        "shown": tape.show_small(rounding.worst),
        "stakes": [{"name": name, "miss": miss} for name, miss in rounding.by_stake.items()],
        "eats_half": eats,
        "text": say(
            key,
            worst=tape.show_small(abs(rounding.worst)),
            at=rounding.at,
            mark=tape.show_mark(),
            finer=finer.show_mark() if finer else "",
            tolerance=tape.show_small(tolerance) if tolerance is not None else "",
        ),
    }


def rounded(layout: Layout) -> Misses:
    """Return how far off the stakes come to stand by the numbers that are shown to whoever reads the job.

    Raises ``BadJob`` where his tape is too coarse for it.
    """
    tape = layout.job.shown
    if tape == layout.job.tape:
        return layout.rounding
    try:
        at = replay(layout.recipe, tape.round, to_second)
    except TooSmall:  # by a tape that is so much coarser nothing can be set
        raise bad("method", "method.too_small") from None
    return misses(layout.staked, layout.recipe.to_set(layout.stakes), at)


def report_gap(layout: Layout) -> GapPart:
    """Return what is left between neighbouring stakes: the straight gap, and the arc's rise over it."""
    tape = layout.job.shown
    gap = layout.widest_gap
    equal = layout.method.halves and not layout.job.got
    rise = layout.staked.part(2**layout.levels).sagitta if equal else layout.staked.rise_over(gap)
    shown, rise_shown = tape.show(gap), tape.show_small(rise)
    alike = layout.method.stand.alike and not layout.job.got and layout.job.site.first_gap is None
    return {
        "straight": gap,
        "shown": shown,
        "rise": rise,
        "rise_shown": rise_shown,
        "text": say("gap.left" if alike else "gap.left_got", gap=shown, rise=rise_shown),
    }


def report_stick(layout: Layout) -> StickPart:
    """Return the story stick: every sagitta as a mark at its distance from one and the same end, shortest first.

    One mark a level; where what was got makes a level's sagittae differ, one for all stakes that share a reading.
    """
    marks = _halving_marks(layout) if layout.method.halves else _offset_marks(layout)
    marks.sort()
    rows: list[StickMark] = [{"label": label, "distance": length, "shown": shown} for length, label, shown in marks]
    return {"length": marks[-1][0] if marks else 0.0, "marks": rows}


def _offset_marks(layout: Layout) -> list[tuple[float, str, str]]:
    """One mark for all stakes whose offset reads alike; none for methods that set no offset."""
    alike: dict[str, tuple[float, list[str]]] = {}
    for step in layout.recipe.steps:
        if step.stake and layout.method.stick:
            length = step.measures[-1].length
            alike.setdefault(layout.job.shown.show(length), (length, []))[1].append(step.stake)
    return [(length, ", ".join(stakes), shown) for shown, (length, stakes) in alike.items()]


def _halving_marks(layout: Layout) -> list[tuple[float, str, str]]:
    tape = layout.job.shown
    marks: list[tuple[float, str, str]] = []
    for level in range(layout.levels, 0, -1):
        readings: dict[str, tuple[float, list[str]]] = {}
        for step in layout.recipe.steps:
            # A stake that is set the other way has no place on a stick that is held one way.
            if step.level == level and step.stake and step.sagitta is not None and step.sagitta >= 0:
                length = step.measures[1].length
                readings.setdefault(tape.show(length), (length, []))[1].append(step.stake)
        for shown, (length, stakes) in readings.items():
            names = _names(stakes) if len(readings) == 1 else ", ".join(stakes)
            label = say("stick.level", level=level, stakes=names)
            marks.append((length, label, shown))
    return marks


def _names(stakes: list[str]) -> str:
    return stakes[0] if len(stakes) == 1 else say("stick.to", first=stakes[0], last=stakes[-1])


def report_fit(layout: Layout) -> FitPart | None:
    """Return the answer's ``fit``: what the found chord makes of the drawn arc, for each thing that could be held."""
    ground, tape = layout.ground, layout.job.shown
    if ground is None:
        return None
    options: list[FitOption] = []
    for option in ground.options:
        arc = option.arc
        options.append(
            {
                "hold": option.hold,
                "label": say(f"fit.hold_{option.hold}"),
                "radius": arc.radius if arc else None,
                "sagitta": arc.sagitta if arc else None,
                "arc_length": arc.arc_length if arc else None,
                "radius_shown": tape.show(arc.radius) if arc else None,
                "sagitta_shown": tape.show(arc.sagitta) if arc else None,
                "arc_length_shown": tape.show(arc.arc_length) if arc else None,
                "kink": option.kink,
                "kink_shown": say("fit.kink", degrees=f"{option.kink:+.2f}", off=tape.show_small(option.kink_in_ten)),
                "buildable": option.buildable,
                "taken": ground.taken is option,
            }
        )
    return {
        "found": ground.found,
        "found_shown": tape.show(ground.found),
        "drawn_shown": tape.show(layout.settled.arc.chord),
        "difference_shown": tape.show_small(ground.found - layout.settled.arc.chord),
        "apart_shown": tape.show_small(ground.apart),
        "slips": [say(f"slip.{slip.kind}", would_be=tape.show(slip.would_be)) for slip in ground.slips],
        "options": options,
        "reason": ground.reason,
    }
