"""What an answer tells of the grades."""

from typing import TypedDict, final


@final
class TopPart(TypedDict):
    """The top of one edge's form at one place.

    Attributes:
        level: metres above A's outer top; shown: the nearest mark, told as ``high`` or ``low``; tight: the same for a
            narrow column, a plus in place of the word.
        low: whether it stands below A's outer top by a mark or more.
        feet: the same in hundredths of a foot, from the exact value by itself; empty where one text tells all.
        elevation: in the job's own levels; rod, rod_marks: what a rod on it reads, in decimals and in inches; empty
            where nothing says the level or the instrument, and where the top stands above the instrument.
        dig: how much is cut or filled under it; empty where the ground wasn't measured there. ground: of a wall's dig
            the ground's own height, as it was measured.
    """

    level: float
    shown: str
    tight: str
    low: bool
    feet: str
    elevation: str
    rod: str
    rod_marks: str
    dig: str
    ground: str


@final
class TopRow(TypedDict):
    """Both tops at one place: a ``stake`` by its name, or a ``joint`` by its number; ``share`` of the angle from A.

    ``inside`` is ``None`` of a slab that fills its curve: its other form is straight from A to B, its top too. Where
    straight sides run back from it, ``back`` is a place of the other end, straight back of the stake that names it.
    ``base``: how deep the base must be under the top there; empty where nothing says it, and of a wall.
    """

    kind: str
    name: str
    share: float
    outside: TopPart
    inside: TopPart | None
    base: str


@final
class EdgeSlope(TypedDict):
    """The running slope along one line, ``outside``, ``center`` or ``inside``, where it is steepest: rise over run as a
    size, and in percent as a text. Of a slab that fills its curve: along the ``string``, and the ``greatest``."""

    line: str
    slope: float
    shown: str


@final
class AcrossRow(TypedDict):
    """How high a crown stands at a quarter point of the width, above the edges; metres."""

    across: float
    across_shown: str
    height: float
    shown: str
    feet: str


@final
class GradeWay(TypedDict):
    """A way on: what its button says, and the fields that it fills, with what."""

    text: str
    fields: dict[str, str]


@final
class GradeStop(TypedDict):
    """Why no grade may be used yet."""

    head: str
    text: str
    why: str


@final
class LevelTable(TypedDict):
    """What lies under a wall's top, from it down, in the job's levels and as a rod reads: a table's heads, where that
    holds first, and its rows, each with its name first."""

    heads: list[str]
    rows: list[list[str]]


@final
class GradesPart(TypedDict):
    """The tops of the forms. What is bold in ``judged`` and ``base`` stands between stars (see ``words.stars``).

    Attributes:
        state: ``usual``, ``near`` or ``stop``; short, more: the row's two lines.
        conclusion: two sentences; judged: what holds and what doesn't, in a sentence or two.
        running: rise over run along the center line, positive where B is high; high: ``A``, ``B`` or ``None``.
        cross: rise over run across, as a size; low: ``inside`` or ``outside``, ``None`` where neither is lower.
            Both slopes are ``None`` where what is said of them doesn't agree.
        crown: metres, ``None`` without one; across: its heights at the quarter points.
        slopes: along the edges and the center line; steepest: the edge that is judged.
        limit, cross_limit: what is allowed, rise over run.
        hold: the most that the center line may run for both edges to keep the limit, rounded down to 0.01 %; ``None``
            where the tops at both ends decide it.
        drop, most_drop: under a 4-ft level (1.2 m) by the cross slope, and at the limit.
        lowest: names of the corners where the water goes; water: that in a sentence, empty for a wall.
        rows: stakes first, A to B, then joints; none where it stops; sides: which of a row's tops there are.
        heads: what ``shown`` is called over a column, and ``feet`` where it exists.
        read_from: the height of the instrument, and from which top all heights are told; empty without levels;
            read_short: the same in a few words, for the head of the outer form's column.
        has: which of a top's texts exist beside ``shown``: ``feet``, ``elevation``, ``rod``, ``dig``.
        ways: what settles a slope that is over a limit; stop: ``None`` where the grades may be used.
        asks: what is still missing for a part of this; warnings: what is over a limit, or near it.
        below: how far under a wall's top its footing and its dig are; levels: the same with levels and rod readings,
            ``None`` of a slab and where the job has neither; digs: the rows where the ground was measured.
        base: where the bed is, under the form; notes: what was taken, and how to read the numbers; cautions: of slopes.
    """

    state: str
    short: str
    more: str
    conclusion: list[str]
    judged: list[str]
    running: float | None
    high: str | None
    cross: float | None
    low: str | None
    crown: float | None
    across: list[AcrossRow]
    slopes: list[EdgeSlope]
    steepest: str
    limit: float
    cross_limit: float
    hold: float | None
    drop: str
    most_drop: str
    lowest: list[str]
    water: str
    rows: list[TopRow]
    sides: list[str]
    heads: list[str]
    read_from: str
    read_short: str
    has: list[str]
    ways: list[GradeWay]
    stop: GradeStop | None
    asks: list[str]
    warnings: list[str]
    base: list[str]
    below: list[str]
    levels: LevelTable | None
    digs: list[TopRow]
    notes: list[str]
    cautions: list[str]
