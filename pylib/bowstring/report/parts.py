"""The parts of an answer, each with the function that works it out.

What a part needs is imported when it is asked for: a page or a command that shows three parts loads no more than those
three need.
"""

from __future__ import annotations

from collections.abc import Callable

from bowstring.report import plain
from bowstring.report.forms.accuracy import AccuracyPart
from bowstring.report.forms.advice import AdvicePart, MethodRow
from bowstring.report.forms.arc import (
    ArcMeasures,
    ArcTexts,
    FitPart,
    GivenRow,
    OffsetPart,
    ReadingRow,
    TieRow,
)
from bowstring.report.forms.build import BuildRow, LinePart
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_lined import (
    LinedBoards,
    LinedEdges,
    LinedGrades,
    LinedJoints,
    LinedPart,
    LinedPour,
    LinedSheet,
)
from bowstring.report.forms.build_pour import PourPart
from bowstring.report.forms.cards import CardRow, WayOutRow
from bowstring.report.forms.checks import CheckRow, MistakeRow
from bowstring.report.forms.got import GotRow
from bowstring.report.forms.halving import LevelRow
from bowstring.report.forms.in_dig import InDigPart
from bowstring.report.forms.read import FarChecks, ReadPart
from bowstring.report.forms.results import GapPart, RoundingPart, RulePart, StickPart
from bowstring.report.forms.site import SitePart
from bowstring.report.forms.stakeline import OnLinePart
from bowstring.report.forms.stakes import PlaceRow, StakeRow
from bowstring.report.forms.steps import StepTable
from bowstring.report.work import Work


def _arc(work: Work) -> ArcMeasures:
    from bowstring.report.numbers import report_measures

    return report_measures(work.layout.drawn)


def _staked(work: Work) -> ArcMeasures:
    from bowstring.report.numbers import report_measures

    return report_measures(work.layout.staked)


def _arc_shown(work: Work) -> ArcTexts:
    from bowstring.report.numbers import shown_measures

    return shown_measures(work.job.shown, work.layout.drawn)


def _staked_shown(work: Work) -> ArcTexts:
    from bowstring.report.numbers import shown_measures

    return shown_measures(work.job.shown, work.layout.staked)


def _tolerance_shown(work: Work) -> str | None:
    return None if work.job.tolerance is None else work.job.shown.show_limit(work.job.tolerance)


def _ties(work: Work) -> dict[str, list[TieRow]]:
    from bowstring.report.head import report_ties

    return report_ties(work.job)


def _readings(work: Work) -> list[ReadingRow]:
    from bowstring.report.head import report_readings

    return report_readings(work.job)


def _on_line(work: Work) -> OnLinePart:
    from bowstring.report.stakeline import report_on_line

    return report_on_line(work.layout)


def _offset(work: Work) -> OffsetPart | None:
    from bowstring.report.head import report_offset

    return report_offset(work.job)


def _given(work: Work) -> list[GivenRow]:
    from bowstring.report.givens import report_given

    return report_given(work.layout)


def _fit(work: Work) -> FitPart | None:
    from bowstring.report.results import report_fit

    return report_fit(work.layout)


def _halving(work: Work) -> list[LevelRow]:
    from bowstring.report.halving import report_levels

    return report_levels(work.layout)


def _gap(work: Work) -> GapPart:
    from bowstring.report.results import report_gap

    return report_gap(work.layout)


def _rule(work: Work) -> RulePart:
    from bowstring.report.results import report_rule

    return report_rule(work.layout)


def _rounding(work: Work) -> RoundingPart:
    from bowstring.report.results import report_rounding

    return report_rounding(work.layout)


def _stakes(work: Work) -> list[StakeRow]:
    from bowstring.report.stakes import report_stakes

    return report_stakes(work.layout, work.told)


def _marks(work: Work) -> list[PlaceRow]:
    from bowstring.report.stakes import report_marks

    return report_marks(work.layout)


def _cards(work: Work) -> list[CardRow]:
    from bowstring.report.cards import report_cards

    return report_cards(work.layout, work.steps)


def _tables(work: Work) -> list[StepTable]:
    from bowstring.report.table import report_tables

    return report_tables(work.layout, work.steps)


def _square(work: Work) -> list[str]:
    from bowstring.report.square import report_square

    return report_square(work.layout)


def _checks(work: Work) -> list[CheckRow]:
    from bowstring.report.checks import report_checks

    return report_checks(work.layout, work.judged, work.texts)


def _got(work: Work) -> list[GotRow]:
    from bowstring.report.got import report_got

    return report_got(work.layout)


def _read(work: Work) -> ReadPart:
    from bowstring.report.read import report_read

    return report_read(work.layout, work.own, work.kept, work.steps, work.waits)


def _mistakes(work: Work) -> list[MistakeRow]:
    from bowstring.analysis.limits import printed
    from bowstring.report.mistakes import report_mistakes

    return report_mistakes(work.layout, [one.check for one in printed(work.judged)])


def _stick(work: Work) -> StickPart:
    from bowstring.report.results import report_stick

    return report_stick(work.layout)


def _accuracy(work: Work) -> AccuracyPart:
    from bowstring.report.accuracy import report_accuracy

    return report_accuracy(work.layout, work.told)


def _methods(work: Work) -> list[MethodRow]:
    from bowstring.report.advice import report_methods

    return report_methods(work.layout, work.rows, work.whole)


def _advice(work: Work) -> AdvicePart:
    from bowstring.report.advice import report_advice

    return report_advice(work.layout, work.rows, work.advice)


def _warnings_top(work: Work) -> list[str]:
    from bowstring.report.notes import report_top

    return report_top()


def _stops(work: Work) -> list[str]:
    from bowstring.report.cautions import report_stops

    return report_stops(work.layout, work.own, lambda: work.advice.row)


def _ways_out(work: Work) -> list[WayOutRow]:
    from bowstring.report.ways_out import report_ways_out

    return report_ways_out(work)


def _cautions(work: Work) -> list[str]:
    from bowstring.report.cautions import report_cautions

    told = report_cautions(work.layout, work.own, lambda: work.advice.row)
    return [*told, *(work.lined.cautions if work.lined else ())]


def _site(work: Work) -> SitePart:
    from bowstring.report.site import report_site

    return report_site(work.layout)


def _notes(work: Work) -> list[str]:
    from bowstring.report.notes import report_notes

    return report_notes(work.layout, by_rounds=work.taken.by_rounds)


def _line(work: Work) -> LinePart:
    if work.lined:
        return work.lined.line
    from bowstring.report.forming.line import report_line

    return report_line(work.layout)


def _edges(work: Work) -> EdgesPart | LinedEdges | None:
    return work.lined.edges if work.lined else work.built.edges


def _boards(work: Work) -> BoardsPart | LinedBoards | None:
    return work.lined.boards if work.lined else work.built.boards


def _joints(work: Work) -> JointsPart | LinedJoints | None:
    return work.lined.joints if work.lined else work.built.joints


def _grades(work: Work) -> GradesPart | LinedGrades | None:
    return work.lined.grades if work.lined else work.built.grades


def _pour(work: Work) -> PourPart | LinedPour | None:
    return work.lined.pour if work.lined else work.built.pour


def _build(work: Work) -> list[BuildRow]:
    return work.lined.rows() if work.lined else work.built.rows()


def _lined(work: Work) -> LinedPart | None:
    return work.lined.part if work.lined else None


def _lined_sheet(work: Work) -> LinedSheet | None:
    return work.lined.sheet if work.lined else None


def _far_checks(work: Work) -> FarChecks:
    from bowstring.report.far_checks import report_far

    assert work.own.accuracy is not None
    if work.lined:
        return work.lined.far_checks(work.kept, work.own.accuracy.spread.errors, work.waits)
    return report_far(work.plan, work.kept, work.own.accuracy.spread.errors, work.waits)


def _second_pass(work: Work) -> list[str]:
    from bowstring.report.forming.passes import second_pass

    return work.lined.second_pass if work.lined else second_pass(work.plan)


def _in_dig(work: Work) -> InDigPart | None:
    from bowstring.report.forming.in_dig import report_in_dig

    return work.lined.in_dig if work.lined else report_in_dig(work.plan)


def _form_cards(work: Work) -> list[CardRow]:
    from bowstring.report.forming.passes import report_form_cards

    return work.lined.form_cards if work.lined else report_form_cards(work.built)


PARTS: dict[str, Callable[[Work], object]] = {
    "version": plain.version,
    "title": plain.title,
    "note": plain.note,
    "unit": plain.unit,
    "mark": plain.mark,
    "side": plain.side,
    "hand": plain.hand,
    "ends": plain.ends,
    "drawn_to": plain.drawn_to,
    "driven": plain.driven,
    "start": plain.start,
    "tolerance": plain.tolerance,
    "tolerance_shown": _tolerance_shown,
    "levels": plain.levels,
    "method": plain.method,
    "method_said": plain.method_said,
    "halve_first": plain.halve_first,
    "parallel": plain.parallel,
    "ties": _ties,
    "readings": _readings,
    "arc": _arc,
    "staked": _staked,
    "arc_shown": _arc_shown,
    "staked_shown": _staked_shown,
    "offset": _offset,
    "on_line": _on_line,
    "given": _given,
    "fit": _fit,
    "held": plain.held,
    "halving": _halving,
    "gap": _gap,
    "rule": _rule,
    "rounding": _rounding,
    "stakes": _stakes,
    "marks": _marks,
    "steps": plain.steps,
    "located": plain.located,
    "cards": _cards,
    "tables": _tables,
    "square": _square,
    "checks": _checks,
    "got": _got,
    "read": _read,
    "mistakes": _mistakes,
    "stick": _stick,
    "accuracy": _accuracy,
    "methods": _methods,
    "advice": _advice,
    "warnings_top": _warnings_top,
    "stops": _stops,
    "ways_out": _ways_out,
    "cautions": _cautions,
    "site": _site,
    "line": _line,
    "edges": _edges,
    "boards": _boards,
    "joints": _joints,
    "grades": _grades,
    "pour": _pour,
    "build": _build,
    "lined": _lined,
    "lined_sheet": _lined_sheet,
    "far_checks": _far_checks,
    "second_pass": _second_pass,
    "form_cards": _form_cards,
    "in_dig": _in_dig,
    "notes": _notes,
}
"""In the order in which they stand in an answer. A test holds each one's type against ``Answer``'s."""

FORMED = (
    "readings", "on_line", "line", "edges", "boards", "joints", "grades", "pour", "build", "lined", "lined_sheet",
    "far_checks", "second_pass", "form_cards", "in_dig",
)  # fmt: skip
"""The parts that hang on what a job says of its slab and its width; no other does."""
