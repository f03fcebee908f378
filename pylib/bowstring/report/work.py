"""A job being answered: what its parts are made of, each worked out when it is first needed, and once."""

from __future__ import annotations

from collections.abc import Generator
from copy import copy
from functools import cached_property
from typing import TYPE_CHECKING

from bowstring.job.form import JobForm
from bowstring.job.job import Job, read_job
from bowstring.job.kept import Kept, part_kept
from bowstring.layout.layout import Layout
from bowstring.layout.taken import Taken, take, taking
from bowstring.report.forms.steps import StepRow
from bowstring.report.waiting import Standing, Waits, waits_of

if TYPE_CHECKING:  # what no part needs that was asked for isn't imported either
    from bowstring.analysis.limits import Judged
    from bowstring.layout.comparison import Advice
    from bowstring.layout.rows import Row
    from bowstring.report.forming.plan import Plan
    from bowstring.report.forming.rows import Built
    from bowstring.report.lined.rows import Lined


class Work:
    """One job, read and laid out; ``whole`` and ``shown`` as for ``bowstring.answer``. Raises ``BadJob``.

    Attributes:
        job: the job as it was read, with the method that was taken where it names none.
        layout: the job carried through, in metres and radians.
        kept: what the crew read, kept with the job.
        stands: which steps stand, as far as the job says it.
    """

    def __init__(self, job: JobForm, *, whole: bool = True, shown: str | None = None) -> None:
        asked, kept = part_kept(job)
        self._begin(take(_read(asked, shown)), kept, whole)

    @classmethod
    def in_pieces(cls, job: JobForm, shown: str | None = None) -> Generator[Row, None, Work]:
        """Do what making one does and compare the methods, with a pause after each: gives its row."""
        from bowstring.layout.comparison import comparing

        work = cls.__new__(cls)
        asked, kept = part_kept(job)
        work._begin((yield from taking(_read(asked, shown))), kept, whole=False)
        if work.taken.rows is None:
            work.rows = yield from comparing(work.layout, work.own)
        return work

    def _begin(self, taken: Taken, kept: Kept, whole: bool) -> None:
        self.whole, self.kept, self.taken = whole, kept, taken
        self.layout: Layout = self.taken.layout
        self.job: Job = self.layout.job
        self.stands = Standing(self.job.record.done)
        self.texts: dict[float, str] = {}
        """Lengths in metres that were written already, with their texts: most are on several lines."""

    def formed(self, job: JobForm) -> Work:
        """Return this work for a job that says something else of its slab or its width, and nothing else: all that is
        laid out stays as it is. Raises ``BadJob``."""
        said = _read(part_kept(job)[0], self.job.shown.unit)
        work = copy(self)
        anew = {"width": said.width, "forming": said.forming, "readings": said.readings}
        work.job = Job(**{**vars(self.job), **anew})
        if said.width != self.job.width:
            work.layout = Layout(**{**vars(self.layout), "job": work.job})
        for part in ("plan", "lined", "built"):
            work.__dict__.pop(part, None)
        return work

    def standing(self, stands: Standing) -> Work:
        """Return this work where other steps stand."""
        work = copy(self)
        work.stands = stands
        work.__dict__.pop("waits", None)
        return work

    @cached_property
    def waits(self) -> Waits:
        """The marks at which readings wait."""
        return waits_of(self.steps, self.stands) if self.kept.read else Waits()

    @cached_property
    def rows(self) -> list[Row]:
        """Every method for this job, in the catalogue's order."""
        from bowstring.layout.comparison import compare

        if self.taken.rows is not None:
            return [self.own if self.own.stands_for(row) else row for row in self.taken.rows]
        return compare(self.layout, self.own)

    @cached_property
    def advice(self) -> Advice:
        """Which method to take."""
        from bowstring.layout.comparison import advise

        return self.taken.advice or advise(self.layout, self.rows)

    @cached_property
    def own(self) -> Row:
        """The row of the job's own method; the other methods aren't looked at for it."""
        from bowstring.layout.rows import row_of

        return self.taken.own or row_of(self.layout, self.layout.method)

    @cached_property
    def told(self) -> Row:
        """The row of the job's own method as whoever reads the job works by it: no truer than his own tape's marks."""
        from bowstring.layout.rows import read_by

        coarse = self.job.shown.coarser(self.job.tape)
        return read_by(self.layout, self.own, self.job.shown) if coarse else self.own

    @cached_property
    def judged(self) -> list[Judged]:
        """The checks with what each may be out by."""
        from bowstring.report.checks import judged_checks

        assert self.own.accuracy is not None
        return judged_checks(self.layout, self.own.accuracy.spread)

    @cached_property
    def plan(self) -> Plan:
        """The slab along the arc, as far as the job says it."""
        from bowstring.report.forming.plan import plan_of

        return plan_of(self.layout, self.job.forming)

    @cached_property
    def lined(self) -> Lined | None:
        """What is told of a line of several pieces and of the slab along it; ``None`` for an arc alone."""
        if self.job.line is None:
            return None
        from bowstring.report.lined.rows import Lined

        return Lined(self.plan, self.job.line)

    @cached_property
    def built(self) -> Built:
        """What is told of the slab along an arc alone."""
        from bowstring.report.forming.rows import Built

        return Built(self.plan)

    @cached_property
    def steps(self) -> list[StepRow]:
        """The steps as they are told."""
        from bowstring.report.steps import report_steps

        return report_steps(self.layout, self.texts)


def _read(asked: object, shown: str | None) -> Job:
    """Return a job read; where its arc is a piece of a line, all pieces are settled first: what is wrong with one of
    them is told at its own place."""
    job = read_job(asked, shown)
    if job.line is not None:
        from bowstring.job.line_settled import refuse_ends, settle_line

        refuse_ends(settle_line(job.line, job.tape.mark, job.tape.show), job.forming.slab)
    return job
