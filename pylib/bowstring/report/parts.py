"""The parts of an answer, each with the function that works it out.

What a part needs is imported when it is asked for: a page or a command that shows three parts loads no more than those
three need.
"""

from __future__ import annotations

from collections.abc import Callable

from bowstring.report.work import Work
from bowstring.version import __version__


def _arc_shown(work: Work) -> object:
    from bowstring.report.numbers import shown_measures

    return shown_measures(work.job.tape, work.layout.drawn.measures())


def _staked_shown(work: Work) -> object:
    from bowstring.report.numbers import shown_measures

    return shown_measures(work.job.tape, work.layout.staked.measures())


def _tolerance_shown(work: Work) -> object:
    return None if work.job.tolerance is None else work.job.tape.show_small(work.job.tolerance)


def _ties(work: Work) -> object:
    from bowstring.report.head import report_ties

    return report_ties(work.job)


def _readings(work: Work) -> object:
    from bowstring.report.head import report_readings

    return report_readings(work.job)


def _offset(work: Work) -> object:
    from bowstring.report.head import report_offset

    return report_offset(work.job)


def _given(work: Work) -> object:
    from bowstring.report.givens import report_given

    return report_given(work.layout)


def _fit(work: Work) -> object:
    from bowstring.report.results import report_fit

    return report_fit(work.layout)


def _halving(work: Work) -> object:
    from bowstring.report.halving import report_levels

    return report_levels(work.layout)


def _gap(work: Work) -> object:
    from bowstring.report.results import report_gap

    return report_gap(work.layout)


def _rule(work: Work) -> object:
    from bowstring.report.results import report_rule

    return report_rule(work.layout)


def _rounding(work: Work) -> object:
    from bowstring.report.results import report_rounding

    return report_rounding(work.layout)


def _stakes(work: Work) -> object:
    from bowstring.report.stakes import report_stakes

    return report_stakes(work.layout, work.own)


def _marks(work: Work) -> object:
    from bowstring.report.stakes import report_marks

    return report_marks(work.layout)


def _tables(work: Work) -> object:
    from bowstring.report.table import report_tables

    return report_tables(work.layout, work.steps)


def _square(work: Work) -> object:
    from bowstring.report.square import report_square

    return report_square(work.layout)


def _checks(work: Work) -> object:
    from bowstring.report.results import report_checks

    return report_checks(work.layout, work.texts)


def _mistakes(work: Work) -> object:
    from bowstring.report.mistakes import report_mistakes

    return report_mistakes(work.layout)


def _stick(work: Work) -> object:
    from bowstring.report.results import report_stick

    return report_stick(work.layout)


def _accuracy(work: Work) -> object:
    from bowstring.report.accuracy import report_accuracy

    return report_accuracy(work.layout, work.own)


def _methods(work: Work) -> object:
    from bowstring.report.advice import report_methods

    return report_methods(work.layout, work.rows, work.whole)


def _advice(work: Work) -> object:
    from bowstring.layout.comparison import advise
    from bowstring.report.advice import report_advice

    return report_advice(work.layout, work.rows, advise(work.layout, work.rows))


def _warnings_top(work: Work) -> object:
    from bowstring.report.notes import report_top

    return report_top()


def _stops(work: Work) -> object:
    from bowstring.report.cautions import report_stops

    return report_stops(work.layout, work.own)


def _cautions(work: Work) -> object:
    from bowstring.report.cautions import report_cautions

    return report_cautions(work.layout, work.own)


def _site(work: Work) -> object:
    from bowstring.report.site import report_site

    return report_site(work.layout)


def _notes(work: Work) -> object:
    from bowstring.report.notes import report_notes

    return report_notes(work.layout)


PARTS: dict[str, Callable[[Work], object]] = {
    "version": lambda work: __version__,
    "title": lambda work: work.job.title,
    "note": lambda work: work.job.note,
    "unit": lambda work: work.job.tape.unit,
    "mark": lambda work: work.job.tape.show_mark(),
    "side": lambda work: work.layout.side,
    "ends": lambda work: dict(work.job.ends),
    "drawn_to": lambda work: work.job.drawn_to,
    "driven": lambda work: work.job.driven,
    "start": lambda work: work.job.start,
    "tolerance": lambda work: work.job.tolerance,
    "tolerance_shown": _tolerance_shown,
    "levels": lambda work: work.layout.levels,
    "method": lambda work: work.layout.method.name,
    "halve_first": lambda work: work.layout.setting.halve_first,
    "ties": _ties,
    "readings": _readings,
    "arc": lambda work: work.layout.drawn.measures(),
    "staked": lambda work: work.layout.staked.measures(),
    "arc_shown": _arc_shown,
    "staked_shown": _staked_shown,
    "offset": _offset,
    "given": _given,
    "fit": _fit,
    "held": lambda work: bool(work.layout.ground and work.layout.ground.taken),
    "halving": _halving,
    "gap": _gap,
    "rule": _rule,
    "rounding": _rounding,
    "stakes": _stakes,
    "marks": _marks,
    "steps": lambda work: work.steps,
    "tables": _tables,
    "square": _square,
    "checks": _checks,
    "mistakes": _mistakes,
    "stick": _stick,
    "accuracy": _accuracy,
    "methods": _methods,
    "advice": _advice,
    "warnings_top": _warnings_top,
    "stops": _stops,
    "cautions": _cautions,
    "site": _site,
    "notes": _notes,
}
"""In the order in which they stand in an answer."""
