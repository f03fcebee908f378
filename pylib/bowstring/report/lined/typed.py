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
from bowstring.units.stationing import show_station
from bowstring.units.tape import Tape


@dataclass(frozen=True)
class LineTyped:
    """A line that is typed: settled, with the slab along it where one is said that can be; ``tape``: texts are written
    by it; ``station``: metres, of its start, where that is typed; ``feet``: whether the job is in feet."""

    settled: SettledLine
    slab: LineSlab | None
    tape: Tape
    station: float | None = None
    feet: bool = True

    @property
    def stationed(self) -> bool:
        """Whether a starting station is typed."""
        return self.station is not None

    def along(self, metres: float) -> str:
        """Return how far along the line a place is, as a station where the starting one is typed."""
        if self.station is None:
            return self.tape.show_running(metres)
        return show_station(self.station + metres, feet=self.feet)

    @property
    def line(self) -> Line:
        """The line, in its own frame."""
        return self.settled.line

    @cached_property
    def asks(self) -> list[str]:
        """What the line leaves open, as questions."""
        return questions(self.settled, self.along)


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
    return LineTyped(settled, slab, seen, _station(reader), tape.feet)


def _station(reader: Reader) -> float | None:
    """The starting station; what is none is told by its own field."""
    try:
        return reader.station("station")
    except BadJob:
        return None


def _text(value: object) -> str | None:
    return None if value is None else str(value)
