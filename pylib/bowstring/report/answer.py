"""The one door: a job in, an answer out, plain JSON values on both sides; whole, or part by part."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from bowstring.report.parts import PARTS
from bowstring.report.work import Work


def answer(job: dict[str, object], *, whole: bool = True) -> dict[str, object]:
    """Return the whole answer to a job: the arc, the steps, the stakes, what they cost and how to check them.

    ``job`` and the answer are of the forms that the contract in DEVELOPERS.md gives; lengths in the answer are metres,
    angles degrees, as full-precision floats beside the texts that a crew reads. The job isn't changed. Not ``whole``:
    without the one dear figure that no sheet shows, ``all_95`` of the methods that weren't asked for.

    Raises ``BadJob`` when the job can't be used, with the field, what is wrong and what would do.
    """
    return dict(Answering(job, whole=whole))


class Answering(Mapping[str, object]):
    """An answer whose parts are worked out when they are first read, each once.

    It reads as the dict that ``answer`` returns, with the same keys in the same order; a part that nobody reads costs
    nothing. The job is read and laid out at once, so that a job that can't be used is refused here.

    Raises ``BadJob`` as ``answer`` does.
    """

    def __init__(self, job: dict[str, object], *, whole: bool = False) -> None:
        self._work = Work(job, whole=whole)
        self._made: dict[str, object] = {}

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
