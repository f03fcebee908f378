"""The steps of an answer with what is taped and turned in each, and the same as tables. Metres and degrees."""

from typing import NotRequired, TypedDict, final

_Between = TypedDict("_Between", {"from": str, "to": str})


@final
class TapeMeasure(_Between):
    """A length (metres) that is taped from one mark to another; ``text`` is what is held, with any slope's beside it.

    On sloping ground alone: ``slope``, metres along the ground.
    """

    distance: float
    shown: str
    text: str
    slope: NotRequired[float]
    slope_shown: NotRequired[str]


@final
class Reading(_Between):
    """A length (metres) that is read from one mark to another while a step is done, besides what is measured."""

    distance: float
    shown: str


@final
class TurnedAngle(_Between):
    """An angle (degrees) that is turned at the mark ``at``, from one mark to another."""

    at: str
    angle: float
    shown: str
    text: str


class Deflected(TypedDict):
    """The angles of a stake on a line of sight, from the tangent and from the long chord."""

    deflection: str | None
    off_chord: str | None


@final
class StepRow(Deflected):
    """One step as a sentence with what is taped and turned in it.

    Attributes:
        level: 0 for those that find the ends.
        marks: every mark that it sets; stake: the layout's own among them.
        stands: its marks were set already and measured: its numbers are what was got there.
        to: the far end of its string; names: the marks that its sentence tells of, by their part in it.
        readings: both halves of a string at its middle, both half chords while a tip is slid; no check asks for them.
        half_chord, taped: of a stake on a string: what both half chords and what the sagitta must read.
    """

    number: int
    level: int
    kind: str
    text: str
    cautions: list[str]
    marks: list[str]
    stands: bool
    to: str | None
    half_chord: str | None
    taped: str | None
    stake: str | None
    names: dict[str, str]
    measures: list[TapeMeasure | TurnedAngle]
    readings: list[Reading]


@final
class StepTable(TypedDict):
    """All steps of one kind as a table: a row a stake, its name first, every cell a text."""

    kind: str
    head: list[str]
    rows: list[list[str]]
