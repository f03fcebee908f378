"""What an answer tells of the way from stakes to a pour: the line, and a row for each part, its conclusion first."""

from typing import TypedDict, final


@final
class JoinRow(TypedDict):
    """Where two pieces of the line meet: metres from its start, and the kink in degrees, 0 where they are tangent."""

    station: float
    kink: float


@final
class PieceRow(TypedDict):
    """A piece of the line: ``kind`` ``arc`` or ``straight``, its length, and an arc's radius, in metres; ``turn``:
    ``left`` or ``right`` for somebody who walks along, ``None`` for a straight, and where no hand is said."""

    kind: str
    length: float
    radius: float | None
    turn: str | None


@final
class LinePart(TypedDict):
    """The line along which is built."""

    pieces: list[PieceRow]
    joins: list[JoinRow]
    length: float


@final
class BuildRow(TypedDict):
    """One part of the build, as it stands on the first screen.

    Attributes:
        key: ``edges``, ``boards``, ``joints``, ``grades`` or ``pour``.
        state: ``open`` (something is to be said first), ``usual``, ``near`` (close to a limit) or ``stop``.
        text: its conclusion in a few words; more: the second fact, empty where there is none.
        panel: the panel of the numbers that answers what is open, or settles the stop; empty otherwise.
    """

    key: str
    state: str
    text: str
    more: str
    panel: str
