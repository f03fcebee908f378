"""The one door: a job in, an answer out, plain JSON values on both sides; whole, or part by part."""

from __future__ import annotations

from collections.abc import Collection, Generator, Iterator, Mapping, Sequence
from typing import cast

from bowstring.job.form import JobForm
from bowstring.report.forms.answer import Answer
from bowstring.report.parts import FORMED, PARTS
from bowstring.report.waiting import Standing
from bowstring.report.work import Work

STANDING = ("read", "far_checks")
"""The parts that hang on which steps stand."""


def answer(job: JobForm, *, whole: bool = True, shown: str | None = None) -> Answer:
    """Return the whole answer to a job: the arc, the steps, the stakes, what they cost and how to check them.

    Lengths in the answer are metres, angles degrees, as full-precision floats beside the texts that a crew reads. Any
    mapping will do for a job, its values are checked one by one; it isn't changed. Not ``whole``: without the one dear
    figure that no sheet shows, ``all_95`` of the methods in their comparison. ``shown``: the unit of whoever reads it,
    where that isn't the job's: every text is in it, nothing of the job changes.

    Raises ``BadJob`` when the job can't be used, with the field, what is wrong and what would do.
    """
    return _typed(dict(Answering(job, whole=whole, shown=shown)))


def answering(job: JobForm, *, whole: bool = False, shown: str | None = None) -> Answer:
    """Return an answer whose parts are worked out when they are first read, each once: see ``Answering``.

    For whoever only reads keys. Raises ``BadJob`` as ``answer`` does.
    """
    return _typed(Answering(job, whole=whole, shown=shown))


def answering_in_pieces(job: JobForm, *, shown: str | None = None) -> Generator[object, None, Answer]:
    """Do what ``answering`` does and find the advised method, with pauses: a page that is asked something else in
    between can leave it. Raises ``BadJob`` as ``answer`` does, at any piece."""
    pieces = Work.in_pieces(job, shown)
    while True:
        try:
            row = next(pieces)
        except StopIteration as end:
            return _typed(Answering(job, work=end.value))
        if row.method.exact:
            yield row.sound  # what the advice will ask of it


def formed(answered: Answer, job: JobForm) -> Answer:
    """Return what ``answering`` gave, for a job that says something else of its slab, and nothing else: it shares the
    layout, and every part that is worked out but those of the slab. Raises ``BadJob``."""
    parts: object = answered
    if not isinstance(parts, Answering):
        raise TypeError("only an answer that is read part by part can be formed anew")
    return _typed(parts.formed(job))


def standing(answered: Answer, done: Collection[int], old: Sequence[str], unset: Sequence[str] = ()) -> Answer:
    """Return what ``answering`` gave, where other steps stand than its job says: it shares what doesn't hang on that.

    ``done``: the numbers of the steps that stand; ``old``: the marks that stand by other numbers than the job's;
    ``unset``: marks that no step sets, and that aren't set.
    """
    parts: object = answered
    if not isinstance(parts, Answering):
        raise TypeError("only an answer that is read part by part can have other steps that stand")
    return _typed(parts.standing(Standing(tuple(done), tuple(old), tuple(unset))))


def _typed(parts: Mapping[str, object]) -> Answer:
    """Return all parts of an answer as what they are together.

    No type checker sees that a key and the function which ``PARTS`` has for it belong together: a test does. What is
    read part by part is no dict, but reads as one.
    """
    return cast("Answer", parts)


class Answering(Mapping[str, object]):
    """An answer whose parts are worked out when they are first read, each once.

    It reads as the dict that ``answer`` returns, with the same keys in the same order; a part that nobody reads costs
    nothing. The job is read and laid out at once, so that a job that can't be used is refused here.

    Raises ``BadJob`` as ``answer`` does.

    >>> read = Answering({"bowstring": 1, "unit": "m", "arc": {"chord": 40, "sagitta": 10}})
    >>> read["arc_shown"]["radius"]  # no more than the arc was worked out for this
    '25.000 m'
    """

    def __init__(
        self, job: JobForm, *, whole: bool = False, shown: str | None = None, work: Work | None = None
    ) -> None:
        """``work``: the same job, begun elsewhere."""
        self._work = work or Work(job, whole=whole, shown=shown)
        self._made: dict[str, object] = {}

    def formed(self, job: JobForm) -> Answering:
        """Return the answer to a job of another slab, see the function ``formed``; raises ``BadJob``."""
        answered = Answering(job, work=self._work.formed(job))
        anew = FORMED if self._work.job.line is None else (*FORMED, "cautions")  # a slab may lie over itself
        answered._made = {part: made for part, made in self._made.items() if part not in anew}
        return answered

    def standing(self, stands: Standing) -> Answering:
        """Return the answer where other steps stand, see the function ``standing``."""
        if self._work.stands == stands:
            return self
        answered = Answering({}, work=self._work.standing(stands))
        answered._made = {part: made for part, made in self._made.items() if part not in STANDING}
        return answered

    def __getitem__(self, part: str) -> object:
        if part not in self._made:
            self._made[part] = PARTS[part](self._work)
        return self._made[part]

    def __iter__(self) -> Iterator[str]:
        return iter(PARTS)

    def __len__(self) -> int:
        return len(PARTS)

    def __contains__(self, part: object) -> bool:
        return part in PARTS  # asking whether a part is there doesn't work it out
