"""Where the marks of an arc stand on the ground of its whole line: the pieces before it carry it along.

Fixed is where the line begins and which way it goes there. Two things are there whatever the numbers before them say:
the ends of an arc with which the line begins, and those of one that landmarks tie down at both ends.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from bowstring.forming.line.runs import Run
from bowstring.forming.line.stakes_frame import StakesFrame, off_left
from bowstring.geometry.plane import Point
from bowstring.job.form import JobForm
from bowstring.job.job import read_job
from bowstring.job.kept import part_kept
from bowstring.job.line_settled import settle_line
from bowstring.page.pieces import start_at

Place = Callable[[Point], Point]
"""From the frame of an arc's stakes to one that stays where it is."""


def grounds(then: JobForm, now: JobForm) -> tuple[Place, Place] | None:
    """Return where the places of both jobs' stakes are on one ground; ``None`` where either has no line of pieces, or
    the ends of the arc itself stay where they are.

    Raises ``BadJob`` for a job that can't be used.
    """
    if "line" not in then or "line" not in now:
        return None
    one, other = _OnLine(then), _OnLine(now)
    if one.at in one.held and other.at in other.held:
        return None
    held = max((one.held & other.held) - {one.at, other.at}, default=None)
    return one.placing(held), other.placing(held)


class _OnLine:
    """An arc that is staked, as it lies in its line."""

    def __init__(self, said: JobForm) -> None:
        job = read_job(part_kept(said)[0])
        assert job.line is not None
        self.at, self.outward = job.line.at, job.outward
        self.runs: tuple[Run, ...] = settle_line(job.line, job.tape.mark).line.runs
        self.held = {*_held(said, self.at)}

    def placing(self, held: int | None) -> Place:
        """From its stakes' frame to the line's, or to that of an arc which the ground holds."""
        own = self._frame(self.at)
        if held is None:
            return own.place
        there = self._frame(held)
        return lambda point: there.back(own.place(point))

    def _frame(self, number: int) -> StakesFrame:
        return StakesFrame.of(self.runs[number], off_left(self.outward, self.runs[self.at].curvature))


def _held(said: JobForm, at: int) -> Iterator[int]:
    """The arcs up to the staked one, by number from 0, whose ends are there whatever the line says."""
    for number, piece in enumerate(said["line"][: at + 1]):
        work: Mapping[str, object] = said if number == at else piece.get("work", {})
        ties, usual = work.get("ties"), start_at(number + 1, piece)
        tied = isinstance(ties, Mapping) and all(ties.get(end) for end in ("A", "B"))
        if "arc" in piece and work.get("start", usual) != "one-end" and (number == 0 or tied):
            yield number
