"""The checks of a layout, told: what each must read, and by how much it may be out."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.analysis.limits import Judged, judged, recommended
from bowstring.analysis.mistakes import reading_of
from bowstring.analysis.spread import Spread
from bowstring.job.job import Job
from bowstring.layout.layout import Layout
from bowstring.report.forms.checks import CheckRow
from bowstring.words import say


def judged_checks(layout: Layout, spread: Spread) -> list[Judged]:
    """Return a layout's checks with their limits; ``spread``: how its marks scatter."""
    tape, at = layout.job.tape, {**layout.marks, **layout.rounded}
    usual = [reading_of(check, at) - tape.round(check.distance) for check in layout.checks]
    return judged(layout.checks, usual, spread, layout.job.tolerance, tape.mark)


def report_checks(layout: Layout, found: Sequence[Judged], shown: dict[float, str]) -> list[CheckRow]:
    """Return the answer's ``checks``; a blind one is marked and is not for a sheet. ``found``: the layout's, judged;
    ``shown`` keeps the text of each length met."""
    best = recommended(found)
    return [_row(layout.job, one, one in best, shown) for one in found]


def row_of_check(job: Job, one: Judged) -> CheckRow:
    """Return one check by itself, told."""
    return _row(job, one, False, {})


def _row(job: Job, one: Judged, best: bool, shown: dict[float, str]) -> CheckRow:
    check, tape = one.check, job.shown
    if check.distance not in shown:
        shown[check.distance] = tape.show(check.distance)
    along = None if check.along is None else tape.show_running(check.along)
    values = {
        "start": check.start,
        "end": check.end,
        "shown": shown[check.distance],
        "along": along,
        "start_pair": check.start.removeprefix("mid ").replace("-", say("check.to")),
    }
    inside = check.inside and tape.round(check.distance) > 0  # what reads nothing is on neither side
    text = say(f"check.{check.kind}{'_inside' if inside else ''}", **values)
    return {
        "key": check.key,
        "from": check.start,
        "to": check.end,
        "distance": check.distance,
        "shown": shown[check.distance],
        "expected": one.expected,
        "expected_shown": limit_shown(job, one.expected),
        "limit": one.limit,
        "limit_shown": limit_shown(job, one.limit),
        "allowed": one.allowed,
        "allowed_shown": None if one.allowed is None else limit_shown(job, one.allowed),
        "blind": one.blind,
        "judges": one.judges,
        "recommended": best,
        "kind": check.kind,
        "level": check.level,
        "along": check.along,
        "along_shown": along,
        "inside": inside,
        "text": text if one.judges else " ".join([text, say("check.no_judge")]),
    }


def limit_shown(job: Job, limit: float) -> str:
    """Return a limit as the last mark of the tape within it, at least one: a tape shows nothing between.

    By another tape than the job's it is the last mark of that one within the job's own limit: what is in for one reader
    is in for all.
    """
    own, tape = job.tape, job.shown
    return tape.show(max(tape.down(max(own.down(limit), own.mark)), tape.mark))
