"""The parts of an answer that need no working out: what the job says, and what a layout is."""

from __future__ import annotations

from bowstring.report.forms.arc import EndsPart
from bowstring.report.forms.cards import LocatedPart
from bowstring.report.forms.steps import StepRow
from bowstring.report.hands import hand_told
from bowstring.report.work import Work
from bowstring.version import __version__


def version(work: Work) -> str:
    return __version__


def title(work: Work) -> str:
    return work.job.title


def note(work: Work) -> str:
    return work.job.note


def unit(work: Work) -> str:
    return work.job.shown.unit


def mark(work: Work) -> str:
    return work.job.shown.show_mark()


def side(work: Work) -> str | None:
    return work.layout.side


def hand(work: Work) -> str:
    return hand_told(work.layout)


def located(work: Work) -> LocatedPart:
    return {"ticket": work.job.record.ticket, "called": work.job.record.called}


def ends(work: Work) -> EndsPart:
    return {"A": work.job.ends["A"], "B": work.job.ends["B"]}


def drawn_to(work: Work) -> str | None:
    return work.job.drawn_to


def driven(work: Work) -> str:
    return work.job.driven


def start(work: Work) -> str:
    return work.job.start


def tolerance(work: Work) -> float | None:
    return work.job.tolerance


def levels(work: Work) -> int:
    return work.layout.levels


def method(work: Work) -> str:
    return work.layout.method.name


def parallel(work: Work) -> float | None:
    found = work.layout.setting.parallel
    return found.distance if found else None


def method_said(work: Work) -> bool:
    return work.taken.said


def halve_first(work: Work) -> int:
    return work.layout.setting.halve_first


def held(work: Work) -> bool:
    return bool(work.layout.ground and work.layout.ground.taken)


def steps(work: Work) -> list[StepRow]:
    return work.steps
