"""The checks of an answer, and the common mistakes with the checks that see them. Lengths in metres."""

from typing import TypedDict, final

from bowstring.report.forms.stakes import PlaceRow

_Between = TypedDict("_Between", {"from": str, "to": str})


@final
class CheckRow(_Between):
    """A distance (metres) that must be read from one mark to another when the stakes stand.

    Attributes:
        key: what a reading of it is kept by.
        expected: metres within which 95 of 100 readings stay by the error model, the reading itself included.
        limit: metres within which a reading is in, of what is printed: as expected, with the rounding of the cards that
            set its stakes, and its own.
        allowed: metres that it is out by when every stake of it is at the edge of its tolerance, the worse way;
            ``None`` without a tolerance; blind: that is less than the tape shows. All are shown rounded down to a
            mark, at least one.
        judges: what is expected is no more than half of what must be read; recommended: one of those to make first.
        along: metres from A along the chord to where an ordinate is taken, ``None`` for other kinds.
        inside: its stake stands on the other side of the string that it is read off than stakes of the arc do.
    """

    key: str
    distance: float
    shown: str
    expected: float
    expected_shown: str
    limit: float
    limit_shown: str
    allowed: float | None
    allowed_shown: str | None
    blind: bool
    judges: bool
    recommended: bool
    kind: str
    level: int
    along: float | None
    along_shown: str | None
    inside: bool
    text: str


@final
class CaughtRow(_Between):
    """A check that sees a mistake: what it reads, should read, and how far out that is; ``allowed`` metres."""

    kind: str
    reads: float
    reads_shown: str
    should: float
    should_shown: str
    out: float
    allowed: float


@final
class MistakeRow(TypedDict):
    """A blunder and what it does, metres.

    Attributes:
        worst_miss, at: the farthest that a stake comes to stand off the arc's circle (of a wrong hand: off the arc
            itself, without a sign), and which; shown: as a text.
        moved, moved_at: the farthest that a stake comes to stand from its place, and which.
        stakes: where they would stand, of many every so many-th.
        caught_by: all checks that see it, the best ones first; caught_count: how many that are; told: what becomes of
            it, in a sentence.
    """

    kind: str
    text: str
    worst_miss: float
    at: str
    shown: str
    moved: float
    moved_at: str
    moved_shown: str
    stakes: list[PlaceRow]
    caught_by: list[CaughtRow]
    caught_count: int
    caught: bool
    told: str
