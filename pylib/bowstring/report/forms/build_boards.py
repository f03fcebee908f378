"""What an answer tells of the boards."""

from typing import TypedDict, final


@final
class BoardRow(TypedDict):
    """A board of the list, at both edges; metres, newtons.

    Attributes:
        least: the least radius of an inner edge that it takes at the level of the lumber; shown rounded up.
        outside, inside: the first level at which it takes that edge, ``None`` where it takes it at none.
        verdict: what that means, in a few words; takes: whether it takes both edges at the level of the lumber.
        push: what springs a board of ``stock`` metres to the tighter edge; ``None`` where that can't be told.
        used: whether the cut list is of this board.
    """

    name: str
    thickness: float
    height: float
    least: float
    least_shown: str
    outside: str | None
    inside: str | None
    verdict: str
    takes: bool
    push: float | None
    push_shown: str
    used: bool


@final
class StripRow(TypedDict):
    """A plywood strip: the least radius from the panel makers' table, and whether it takes both edges."""

    name: str
    radius: float
    radius_shown: str
    longest_shown: str
    takes: bool
    verdict: str


@final
class LevelChoice(TypedDict):
    """How good the lumber is: a word of the job's ``board.level``, its name, its radius over thickness."""

    key: str
    name: str
    more: str
    taken: bool


@final
class SpliceRow(TypedDict):
    """Where two boards of an edge meet: metres along the edge from A; ``text`` says between which stakes."""

    along: float
    along_shown: str
    text: str


@final
class EdgeBoards(TypedDict):
    """The form of one edge; metres.

    Attributes:
        edge: ``outside`` or ``inside``; board: in use, ``None`` where none of the list takes this edge.
        length: to cut, at mid-thickness, with what runs past each end.
        boards: bought lengths from A to B, the last one cut; pieces: what of each is in the form.
        gaps: equal gaps between form stakes, each ``gap`` along the edge; stakes: with those past the ends and
            at splices; reason: what decided the gap. All 0 or empty of a curve that is filled, where no board bends.
        bow: of the board between stakes under wet concrete; end_miss: how flat the last bay of a loose end is.
    """

    edge: str
    name: str
    radius: float
    radius_shown: str
    board: str | None
    length: float
    length_shown: str
    boards: list[float]
    boards_shown: str
    pieces: list[float]
    pieces_shown: str
    splices: list[SpliceRow]
    gaps: int
    gap: float
    gap_shown: str
    stakes: int
    reason: str
    bow: float | None
    bow_shown: str
    end_miss: float | None
    end_miss_shown: str


@final
class CutRow(TypedDict):
    """A row of the cut list: what it is, of which board, what it needs, and from which bought lengths."""

    name: str
    board: str
    needs: str
    boards: str


@final
class BuyRow(TypedDict):
    """Boards to buy of one kind and length, metres."""

    board: str
    length: float
    length_shown: str
    count: int


@final
class BoardsPart(TypedDict):
    """The form boards.

    Attributes:
        state: ``usual``, ``near`` or ``stop``; short, more: the row's two lines.
        conclusion: sentences; tighter: the edge that decides, ``outside`` or ``inside``, and the sentence.
        stock: the length of a board that is sprung, 0 where none can be told; springs: that length, springs_shown: how
            far its middle stands off straight at the tighter edge; bow: sentences of it; all empty then.
        push_head: over the column of the push.
        stock_shown: the bought lengths that were searched; unit_shown: what they are in, empty where each says it.
        fails: where a board breaks; otherwise: what to do where no board bends (strips, layers, kerfs).
        cut: where no board bends to a curve that is filled, its straight forms alone; cut_note: in which order the
            edges' boards stand, empty where none does.
        ends, bending, stakes_how: sentences; gave_way: rules of the cut list that couldn't be kept.
        bank: the sentence of earth against a board lower than the slab; remedy: what bends where no board does, in a
            line, empty where one does.
        stakes: of both edges, or of the curve and the string that a slab fills; with_spare: and a tenth more.
    """

    state: str
    short: str
    more: str
    conclusion: list[str]
    tighter: str
    tighter_told: str
    level: str
    levels: list[LevelChoice]
    rows: list[BoardRow]
    strips: list[StripRow]
    stock: float
    springs: str
    springs_shown: str
    push_head: str
    stock_shown: str
    unit_shown: str
    bow: list[str]
    fails: list[str]
    otherwise: list[str]
    ends: list[str]
    bending: list[str]
    edges: list[EdgeBoards]
    cut: list[CutRow]
    cut_note: str
    buy: list[BuyRow]
    gave_way: list[str]
    stakes: int
    with_spare: int
    stakes_how: list[str]
    bank: list[str]
    remedy: str
    cautions: list[str]
    notes: list[str]
