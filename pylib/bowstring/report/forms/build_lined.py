"""What an answer tells of a line of several pieces and of the slab along it."""

from typing import TypedDict, final

from bowstring.report.forms.build_edges import EdgeLength


@final
class LinedTable(TypedDict):
    """A table: which one it is, its title, what stands over each column, the names' too, and the rows, each with its
    name first."""

    key: str
    title: str
    heads: list[str]
    rows: list[list[str]]


@final
class LinedPage(TypedDict):
    """What is told of one part.

    Attributes:
        key: ``line``, ``edges``, ``boards``, ``joints``, ``grades`` or ``pour``.
        state: ``open``, ``usual``, ``near`` or ``stop``; short, more: the two lines of its row; panel: the panel of the
            numbers that answers what is open, or settles the stop.
        conclusion: its first sentence; stop: what is wrong, where nobody may build it so: then there is no table.
        tables: the first is what a crew needs now; lines: how and why; cautions: where a hand may be hurt.
    """

    key: str
    state: str
    short: str
    more: str
    panel: str
    conclusion: str
    stop: str
    tables: list[LinedTable]
    lines: list[str]
    cautions: list[str]


@final
class LinedPiece(TypedDict):
    """A piece of the line, told: its number from 1, ``straight`` or ``arc``, to which hand it turns; whether its arc is
    the one that is staked; the kink before it, degrees, and how far off it looks; texts empty where there is nothing.

    ``name``: as it is called; ``text``: its measures in a few words.
    """

    number: int
    kind: str
    turn: str
    staked: bool
    name: str
    text: str
    kink: float
    kink_shown: str
    looks_shown: str


@final
class LinedPoint(TypedDict):
    """A place in the frame of the line's start, x along the first piece, y to the left, metres."""

    x: float
    y: float


@final
class LinedRun(TypedDict):
    """A part of a line or an edge to be drawn: from and to where; ``curvature``: radians a metre, above 0 to the left,
    0 for a straight."""

    start: LinedPoint
    end: LinedPoint
    curvature: float
    length: float


@final
class LinedShape(TypedDict):
    """How the line and the slab along it lie: the line's runs, a piece each, and the runs of both edges, none where
    there is no slab yet."""

    line: list[LinedRun]
    left: list[LinedRun]
    right: list[LinedRun]


@final
class LinedStanding(TypedDict):
    """Something that stands in the concrete or in the dig, in the line's frame; ``where``: ``concrete`` or ``dig``;
    ``stops``: ``tape`` or ``feet``; text: the caution."""

    name: str
    where: str
    stops: str
    text: str
    outline: list[LinedPoint]


@final
class LinedPart(TypedDict):
    """A line of several pieces.

    Attributes:
        at: the number of the piece whose arc is staked, from 1.
        asks: what is left open about the line itself, as questions: nothing is built before they are answered.
        cautions: what is doubtful: the slab lies over itself, something stands in it; standing: that.
        ends: where it ends, for who stands at its start and looks along the first piece.
        pages: in the order of the build's rows.
        b_from_a: how B is set from A and the piece before it, past a kink; empty where the straight shows that.
        stations_shown: of the staked arc's ends, empty where the job says no starting station.
        concrete: on which hand it is for who walks from the start; concrete_at_arc: from A to B, and which edge of it
            the staked arc is; both empty while that isn't known.
        wall_shown: how thick and high a wall is, with its footing, empty of a slab.
        against: the ends, ``A`` the line's start and ``B`` its end, at which the slab meets concrete that stands there.
    """

    at: int
    length_shown: str
    ends: str
    pieces: list[LinedPiece]
    shape: LinedShape
    asks: list[str]
    cautions: list[str]
    pages: list[LinedPage]
    b_from_a: str
    stations_shown: str
    concrete: str
    concrete_at_arc: str
    standing: list[LinedStanding]
    wall_shown: str
    against: list[str]


@final
class LinedSpot(TypedDict):
    """A place on one form: how far along it from the start, and how high its top is there; texts, empty where nothing
    is told of it.

    ``feet_shown``: the same height in hundredths of a foot; ``level_shown``: as a level of the drawing; ``rod_shown``:
    what a rod reads on it.
    """

    along_shown: str
    top_shown: str
    feet_shown: str
    level_shown: str
    rod_shown: str


@final
class LinedPlace(TypedDict):
    """A place along the line where both forms are marked: its start, a joint, an arc's middle, where a piece ends.

    Attributes:
        kind: ``start``, ``joint``, ``middle``, ``join`` (where pieces meet and no joint is told) or ``end``.
        joint: the joint's number from 1, 0 for none; begins: the number of the piece that begins there, 0 for none.
        label: as it is called on paper; left, right: on that form, ``None`` where a kink leaves none.
    """

    kind: str
    joint: int
    begins: int
    label: str
    left: LinedSpot | None
    right: LinedSpot | None


@final
class LinedPaper(TypedDict):
    """What a part has a crew do at the forms: the sentences of its page that stand on the form sheet."""

    key: str
    lines: list[str]


@final
class LinedSign(TypedDict):
    """What is signed off of a wall, or at an end that meets concrete, and what it must be."""

    what: str
    must: str


@final
class LinedSheet(TypedDict):
    """What the form sheet of a line of several pieces tells beside its pages.

    Attributes:
        width_shown, depth_shown: of the slab, empty where that isn't said; edge_signed: how thick its edge is and how
            wide, apron_shown: how thick the apron is, empty without one; from_start: from where and along what the
            places are told at which pieces begin; stakes: form stakes to buy, 0 where no board bends.
        strip_signs: the isolation strip at ends against what stands there, to sign off.
        wall_signs: a wall's sizes to sign off, and how far under its top its footing and its dig are; none of a slab.
        read_from: the height of the instrument, and from which top all heights are told; empty without levels.
        parts: in the order of the build's rows; places: in order along the line, none before there is a slab.
    """

    width_shown: str
    depth_shown: str
    edge_signed: str
    apron_shown: str
    strip_signs: list[LinedSign]
    wall_signs: list[LinedSign]
    from_start: str
    stakes: int
    read_from: str
    parts: list[LinedPaper]
    places: list[LinedPlace]


@final
class LinedEdges(TypedDict):
    """Both edges for who walks along the line; square metres."""

    left: EdgeLength
    right: EdgeLength
    area: float


@final
class LinedBoards(TypedDict):
    """The board that is figured with, ``None`` where none bends, and how many form stakes."""

    board: str | None
    stakes: int


@final
class LinedJoints(TypedDict):
    """How many panels, and where the joints stand along the left and the right form, metres from its start."""

    count: int
    left: list[float]
    right: list[float]


@final
class LinedGrades(TypedDict):
    """Rise over run along the middle of the slab, above 0 where its end is higher; the steepest of either edge, as a
    size; what it may be."""

    running: float
    steepest: float
    limit: float


@final
class LinedPour(TypedDict):
    """Square and cubic metres; ``order``: with waste, rounded up to the plant's step."""

    area: float
    volume: float
    with_waste: float
    order: float
