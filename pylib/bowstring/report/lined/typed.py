"""A line as it is typed, before anything is laid out: what is told and drawn of it at a keystroke."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property

from bowstring.errors import BadJob
from bowstring.forming.line.line import Line
from bowstring.forming.line.slab import LineSlab
from bowstring.job.line import read_line
from bowstring.job.line_settled import SettledLine, questions, settle_line
from bowstring.job.reader import Reader
from bowstring.report.lined.plan import edge_in, slab_of
from bowstring.units.tape import Tape


@dataclass(frozen=True)
class LineTyped:
    """A line that is typed: settled, with the slab along it where one is said that can be; ``tape``: texts are written
    by it."""

    settled: SettledLine
    slab: LineSlab | None
    tape: Tape

    @property
    def line(self) -> Line:
        """The line, in its own frame."""
        return self.settled.line

    @cached_property
    def asks(self) -> list[str]:
        """What the line leaves open, as questions."""
        return questions(self.settled, self.tape.show_running)


def line_typed(job: Mapping[str, object], tape: Tape, seen: Tape) -> LineTyped:
    """Return the line of a job of fields; ``tape``: the job's, ``seen``: the one that texts are written by.

    Raises ``BadJob`` where a piece can't be read, or is none. A slab that can't be is left out: its own line says why.
    """
    plain: Mapping[object, object] = dict(job.items())
    reader = Reader(plain, tape, None, shown=seen)
    settled = settle_line(read_line(reader), tape.mark, seen.show)
    try:
        width = reader.length("width")
        edge = edge_in(_text(job.get("edge")), _text(job.get("drawn_to")))
        slab = slab_of(settled, width, edge) if width and edge else None
    except BadJob:
        slab = None
    return LineTyped(settled, slab, seen)


def _text(value: object) -> str | None:
    return None if value is None else str(value)
