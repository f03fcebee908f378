"""The slab along the line, as a job says it; no stake of the layout hangs on any of it."""

from __future__ import annotations

from dataclasses import dataclass, field

from bowstring.errors import bad
from bowstring.job.grading import NAME, GradeSaid, read_grade
from bowstring.job.reader import Reader
from bowstring.job.terms import (
    APRON_ALONG,
    BACKS,
    BOARD_LEVELS,
    DEEPEST_SLAB,
    EDGE_ALONG,
    EDGES,
    LINE_ENDS,
    POURED,
    SLAB_KEYS,
)

KEYS = SLAB_KEYS
"""The job's keys that are read here; ``width`` is one of the line's own (see ``job.Job``)."""

SAME_PLACE = 0.001
"""Metres: two depths no farther apart were measured at one place."""

THICKEST = 6.0
"""Metres: a wall higher than that isn't formed by this; a bare number of millimetres on a tape in metres is."""

MOST_LENGTHS, MOST_DEPTHS = 12, 60
MOST_PANELS, HIGHEST_WASTE = 500, 50.0


@dataclass(frozen=True)
class ApronSaid:
    """A stretch where the slab is thicker, as where a driveway crosses: from where to where along the outer form from
    A, or along a line of several pieces, and how thick; metres. ``on_line``: along the drawing's line instead, where a
    wider slab leaves it in its place on the ground. ``said``: somebody said along which, and it isn't taken."""

    start: float
    end: float
    thickness: float
    on_line: bool = False
    said: bool = False


@dataclass(frozen=True)
class DepthRead:
    """How deep the base was measured to be under a string across the forms, and where: along the outer form from A, or
    along a line of several pieces; metres."""

    at: float
    depth: float


@dataclass(frozen=True)
class SlabSaid:
    """What is said of the slab; lengths in metres, ``None`` where it isn't said.

    Attributes:
        far_width: the width at B, where it isn't that at A: it changes evenly along the line.
        thickness: of the concrete; base: of the bed under it; overdig: how far past each edge it is dug.
        waste: a share of what is in the forms; step, truck: what the plant sells, and brings, cubic yards where the
            job's tape reads feet, else cubic metres.
        edge_width, edge_depth: how wide along both forms it is thicker, and how thick it is there, from its top.
        edge_along: a word of ``terms.EDGE_ALONG``, ``None`` where it isn't said: of a slab with straight sides whether
            that runs along the curve alone, along the sides, too, or all round.
        footing_width, footing_depth: of the footing under its middle.
        fills: it has no width: it is everything between the curve and the string from A to B.
        sides: and straight sides so long, square back from A and B; both_ends: with the same curve at the other end;
            back: a word of ``terms.BACKS``, ``None`` where it isn't said: what closes them at the other end.
        at_a, at_b: the same of a slab that has a width: what closes it at its line's start and end.
        apron: where it is thicker; depths: as measured, by where they are.
        poured: a word of ``terms.POURED``, ``None`` where it isn't said. Of a wall the thickness is its height, and
            the job's width how thick it is.
    """

    far_width: float | None = None
    thickness: float | None = None
    base: float | None = None
    overdig: float | None = None
    waste: float | None = None
    step: float | None = None
    truck: float | None = None
    edge_width: float | None = None
    edge_depth: float | None = None
    edge_along: str | None = None
    footing_width: float | None = None
    footing_depth: float | None = None
    fills: bool = False
    sides: float | None = None
    both_ends: bool = False
    back: str | None = None
    at_a: str | None = None
    at_b: str | None = None
    apron: ApronSaid | None = None
    depths: tuple[DepthRead, ...] = ()
    poured: str | None = None

    @property
    def is_wall(self) -> bool:
        """Whether it is said to be a wall."""
        return self.poured == "wall"

    @property
    def is_deep(self) -> bool:
        """Whether it is so thick that no board on stakes holds it."""
        return (self.thickness or 0.0) > DEEPEST_SLAB

    @property
    def against(self) -> tuple[str, ...]:
        """The ends of its line, of ``terms.LINE_ENDS``, that meet concrete which stands there."""
        said = zip(LINE_ENDS, (self.at_a, self.at_b), strict=True)
        return tuple(end for end, what in said if what == BACKS[1])

    @property
    def asks_what(self) -> bool:
        """Whether it must be said first what it is: so thick, it may be a wall, or two numbers were swapped."""
        return self.is_deep and self.poured is None


@dataclass(frozen=True)
class BoardSaid:
    """What is said of the form boards; metres.

    Attributes:
        kind: the name of a board of the list, empty where it isn't said; thickness, height: of the crew's own board.
        level: how good the lumber is, a word of ``terms.BOARD_LEVELS``.
        lengths: in which boards come; overrun: past each end; gap: the most between form stakes.
    """

    kind: str = ""
    thickness: float | None = None
    height: float | None = None
    level: str | None = None
    lengths: tuple[float, ...] = ()
    overrun: float | None = None
    gap: float | None = None


@dataclass(frozen=True)
class JointsSaid:
    """``every``: the longest panel along the outer edge, metres; ``count``: so many panels."""

    every: float | None = None
    count: int | None = None

    @property
    def said(self) -> bool:
        """Whether a job says anything of its joints."""
        return self.every is not None or self.count is not None


@dataclass(frozen=True)
class Forming:
    """All that a job says of the slab. ``edge``: where the line runs in it, ``None`` where it isn't said."""

    edge: str | None = None
    slab: SlabSaid = field(default_factory=SlabSaid)
    board: BoardSaid = field(default_factory=BoardSaid)
    joints: JointsSaid = field(default_factory=JointsSaid)
    grade: GradeSaid = field(default_factory=GradeSaid)


def read_forming(reader: Reader) -> Forming:
    """Return what a job says of the slab; raises ``BadJob``."""
    edge, slab = reader.choice("edge", EDGES), _slab(reader)
    grade = read_grade(reader, fills=slab.fills)
    if slab.fills and grade.on_line:
        raise bad("grade.along", "job.along_fill")
    return Forming(edge, slab, _board(reader), _joints(reader), grade)


def _slab(reader: Reader) -> SlabSaid:
    keys = ("end_width", "thickness", "base", "overdig", "waste", "step", "truck", "edge_width", "edge_depth",
            "edge_along", "footing_width", "footing_depth", "fills", "sides", "both_ends", "back", "at_A", "at_B",
            "apron", "depths", "poured")  # fmt: skip
    slab = reader.inside("slab", keys)
    if slab is None:
        return SlabSaid()
    sides, both_ends = _sides(slab)
    edge_width, edge_depth = _both(slab, "edge_width", "edge_depth")
    footing_width, footing_depth = _both(slab, "footing_width", "footing_depth")
    thickness = slab.length("thickness", bare=False)
    if thickness is not None and thickness > THICKEST:
        raise bad(slab.field("thickness"), "job.thick_slab", most=slab.tape.both(THICKEST))
    poured = slab.choice("poured", POURED)
    _wall_alone(slab, poured)
    return SlabSaid(
        poured=poured,
        far_width=slab.length("end_width"),
        thickness=thickness,
        base=slab.length("base", bare=False, zero=True),
        overdig=slab.length("overdig", zero=True),
        waste=_share(slab, "waste", HIGHEST_WASTE),
        step=slab.number("step", 0.01, 20, fractions=True),
        truck=slab.number("truck", 0.1, 50, fractions=True),
        edge_width=edge_width,
        edge_depth=edge_depth,
        edge_along=_edge_along(slab, sides),
        footing_width=footing_width,
        footing_depth=footing_depth,
        fills=bool(slab.flag("fills")),
        sides=sides,
        both_ends=both_ends,
        back=_back(slab, sides, both_ends),
        at_a=_at_end(slab, "at_A"),
        at_b=_at_end(slab, "at_B"),
        apron=_apron(slab, thickness),
        depths=_depths(slab),
    )


def _apron(slab: Reader, thickness: float | None) -> ApronSaid | None:
    """Return where the slab is thicker; raises ``BadJob`` where that isn't a stretch, or it isn't thicker there."""
    apron = slab.inside("apron", ("from", "to", "thickness", "along"))
    if apron is None:
        return None
    start, end = apron.length("from", zero=True), apron.length("to", zero=True)
    deep = apron.length("thickness", bare=False)
    if start is None or end is None or deep is None:
        raise bad(apron.field("from" if start is None else "to" if end is None else "thickness"), "job.apron_half")
    if start >= end:
        raise bad(apron.field("to"), "job.apron_ends")
    if deep > THICKEST:
        raise bad(apron.field("thickness"), "job.thick_slab", most=slab.tape.both(THICKEST))
    if thickness is not None and deep <= thickness:
        raise bad(apron.field("thickness"), "job.apron_thin", thickness=slab.tape.both(thickness))
    along = apron.choice("along", APRON_ALONG)
    return ApronSaid(start, end, deep, on_line=along == APRON_ALONG[0], said=along is not None)


def _depths(slab: Reader) -> tuple[DepthRead, ...]:
    """Return the measured depths by where they are; raises ``BadJob`` for two at one place."""
    reads: list[DepthRead] = []
    for row, value in enumerate(slab.rows("depths", MOST_DEPTHS)):
        one = slab.within(f"depths[{row}]", value, ("at", "depth"))
        at, depth = one.length("at", zero=True), one.length("depth", bare=False)
        if at is None or depth is None:
            raise bad(one.field("at" if at is None else "depth"), "job.depth_half")
        if depth > THICKEST:
            raise bad(one.field("depth"), "job.depth_deep", most=slab.tape.both(THICKEST))
        if any(abs(at - other.at) < SAME_PLACE for other in reads):
            raise bad(one.field("at"), "job.depth_twice", place=slab.tape.both(at))
        reads.append(DepthRead(at, depth))
    return tuple(sorted(reads, key=lambda read: read.at))


def _sides(slab: Reader) -> tuple[float | None, bool]:
    """Return how long the straight sides are, and whether both ends are rounded; raises ``BadJob`` where the slab
    isn't one that fills its curve, and where there are two ends and nothing between."""
    sides, both = slab.length("sides"), bool(slab.flag("both_ends"))
    if (sides is not None or both) and not slab.flag("fills"):
        raise bad(slab.field("both_ends" if sides is None else "sides"), "pad.no_fill")
    if both and sides is None:
        raise bad(slab.field("sides"), "pad.no_length")
    return sides, both


def _back(slab: Reader, sides: float | None, both: bool) -> str | None:
    """Return what closes a pad behind its string; raises ``BadJob`` where it has no straight end there."""
    back = slab.choice("back", BACKS)
    if back is not None and (sides is None or both):
        raise bad(slab.field("back"), "pad.no_back")
    return back


def _at_end(slab: Reader, name: str) -> str | None:
    """Return what closes a slab at an end of its line; raises ``BadJob`` where it fills its curve: it has no ends."""
    what = slab.choice(name, BACKS)
    if what is not None and slab.flag("fills"):
        raise bad(slab.field(name), "ends.no_fill")
    return what


def _edge_along(slab: Reader, sides: float | None) -> str | None:
    """Return along what a thick edge runs; raises ``BadJob`` where there are no straight sides that it could leave."""
    along = slab.choice("edge_along", EDGE_ALONG)
    if along is not None and sides is None:
        raise bad(slab.field("edge_along"), "pad.no_along")
    return along


def _wall_alone(slab: Reader, poured: str | None) -> None:
    """Raise ``BadJob`` where a wall is said with what only a slab has."""
    alone = ("fills", "edge_width") if poured == "wall" else ()
    for name in alone:
        if slab.job.get(name):
            raise bad(slab.field(name), f"job.wall_{name}")


def _both(slab: Reader, width: str, depth: str) -> tuple[float | None, float | None]:
    """Return a width and a depth that say nothing without each other; raises ``BadJob`` where one is missing."""
    wide, deep = slab.length(width, bare=False), slab.length(depth, bare=False)
    if (wide is None) != (deep is None):
        raise bad(slab.field(depth if deep is None else width), "job.width_depth")
    return wide, deep


def _board(reader: Reader) -> BoardSaid:
    board = reader.inside("board", ("kind", "thickness", "height", "level", "lengths", "overrun", "gap"))
    if board is None:
        return BoardSaid()
    return BoardSaid(
        kind=board.text("kind", NAME),
        thickness=board.length("thickness", bare=False),
        height=board.length("height", bare=False),
        level=board.choice("level", BOARD_LEVELS),
        lengths=tuple(
            board.value(f"lengths[{row}]", one) for row, one in enumerate(board.rows("lengths", MOST_LENGTHS))
        ),
        overrun=board.length("overrun", zero=True),
        gap=board.length("gap"),
    )


def _joints(reader: Reader) -> JointsSaid:
    joints = reader.inside("joints", ("every", "panels"))
    if joints is None:
        return JointsSaid()
    count = joints.number("panels", 1, MOST_PANELS)
    if count is not None and not count.is_integer():
        raise bad(joints.field("panels"), "job.number", low="1", high=f"{MOST_PANELS}")
    return JointsSaid(joints.length("every"), None if count is None else int(count))


def _share(reader: Reader, name: str, most: float) -> float | None:
    percent = reader.number(name, 0, most)
    return None if percent is None else percent / 100
