"""Which boards are looked at for a job, and what each does at its edges."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, floor, hypot, sin

from bowstring.forming.boards import LEVELS, Board, bend_radius, bends
from bowstring.forming.edge import Edge
from bowstring.forming.pad import Pad
from bowstring.forming.stock import INCH, Practice
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.ends import against
from bowstring.report.forming.formboard import form_of, height_of, own_board, practice_of
from bowstring.report.forming.plan import Plan

JOB, CLEAR, SELECTED = LEVELS
RANKS = {level: rank for rank, level in enumerate(LEVELS)}
OTHER_CURVE = "other_curve"
"""The curve of the other end of a slab with two rounded ends."""

CLOSE = 0.05
"""Of a least radius: figures of lumber hold no closer (common practice, no source)."""

PLACES = 32
"""Along an edge that is no arc, where it is asked how tight it is."""


@dataclass(frozen=True)
class FormedEdge:
    """An edge of the slab.

    Attributes:
        key: what it is told by: of an arc alone ``outside`` or ``inside``.
        radius: metres, where it is tightest; length: metres; angle: turned, radians.
        inner: its board is on the side of the center, where the bend is tighter than the edge.
    """

    key: str
    radius: float
    length: float
    angle: float
    inner: bool


@dataclass(frozen=True)
class Looked:
    """A board with the first levels at which it takes each edge; ``ratio``: of its bend's radius at the tightest of
    them to its thickness, which a level holds against its own."""

    board: Board
    at: dict[str, str | None]
    ratio: float

    @property
    def rank(self) -> int:
        """The worst level of both edges; one more than there are where it takes an edge at none."""
        return max(len(RANKS) if level is None else RANKS[level] for level in self.at.values())

    def is_close(self, level: str = JOB) -> bool:
        """Tell whether it takes the edges but just at a level, or just doesn't: lumber differs by more than that."""
        return abs(self.ratio / LEVELS[JOB if self.board.ply is not None else level] - 1) <= CLOSE


@dataclass(frozen=True)
class Choice:
    """The boards of a job.

    Attributes:
        practice: the country's; level: of the lumber, as it holds; loose: it was said better than loose ends allow.
        looked: the list, the crew's own board first; thin, thick: those of the slab's height.
        own: the board that the job names; used: what the cut list is of, ``None`` where none bends.
        lengths, overrun: as said, or the practice's.
    """

    practice: Practice
    level: str
    loose: bool
    looked: tuple[Looked, ...]
    thin: Looked
    thick: Looked
    own: Looked | None
    used: Looked | None
    lengths: tuple[float, ...]
    overrun: float

    @property
    def alone(self) -> bool:
        """Whether a slab fills what is bent to: its curve, or one at each end. A line's edges have keys of their own,
        and inner ones among them."""
        return self.thin.at.keys() <= {"outside", OTHER_CURVE}

    @property
    def told(self) -> Looked:
        """The board of which the row speaks."""
        return self.own or self.thin


def edges_of(plan: Plan) -> tuple[FormedEdge, ...]:
    """Return the outer and the inner edge, of a slab that fills its curve the outer one alone; none where there is no
    slab yet."""
    if plan.filled is not None:
        arc = plan.filled.arc
        both = isinstance(plan.filled, Pad) and plan.filled.both
        return tuple(
            FormedEdge(key, arc.radius, arc.arc_length, plan.filled.angle, inner=False)
            for key in ("outside", *([OTHER_CURVE] if both else []))
        )
    if plan.slab is None:
        return ()
    return tuple(_formed(key, edge) for key, edge in zip(("outside", "inside"), plan.edges, strict=True))


HELD = {True: 6 * INCH, False: 0.15}
"""Metres, on a tape in feet and on one in metres: a board that runs on by less has no stake past the end (common
practice, no source)."""

STEP = {True: INCH, False: 0.01}


def room_past(plan: Plan, overrun: float) -> float:
    """Return how far the curved boards can run on, metres. Those of a wall's footing stop where it is dug. Two that run
    toward each other down one side meet in its middle. One that leaves the side at a corner has to stay in the dig with
    the stake behind it, which is taken as thick as a thick board; 0 where that leaves it nothing to be held by."""
    pad = plan.filled
    if plan.of_footing:
        room = 0.0 if against(plan) else overdig_of(plan)  # nothing is dug past what stands at an end
        return min(overrun, room) if room >= HELD[plan.layout.job.tape.feet] else 0.0
    if not isinstance(pad, Pad):
        return overrun
    if pad.tangent:
        return min(overrun, pad.sides / 2) if pad.both else overrun
    feet, corner = plan.layout.job.tape.feet, pad.corner
    behind = _behind(plan, pad) + practice_of(plan).thicknesses[1]
    room = (overdig_of(plan) - behind * sin(corner)) / cos(corner)
    if pad.both:
        room = min(room, pad.sides / 2 / sin(corner))
    room = floor(room / STEP[feet] + 1e-9) * STEP[feet]
    return min(overrun, room) if room >= HELD[feet] else 0.0


def _behind(plan: Plan, pad: Pad) -> float:
    """How thick what runs on is, metres: the form's board, or as thick as a thick one where that doesn't bend, and
    nobody knows yet what does."""
    form, most = form_of(plan), RANKS[plan.said.board.level or JOB]
    level = bends(pad.arc.radius, form, inner=False)
    if level is not None and RANKS[level] <= max(most, RANKS[CLEAR]):
        return form.thickness
    return max(form.thickness, practice_of(plan).thicknesses[1])


def _formed(key: str, edge: Edge) -> FormedEdge:
    """Return an edge with its tightest radius: (r² + r'²)^(3/2)/(r² + 2r'²), where r is even in the angle."""
    angle = 2 * edge.line.half_angle
    slope = (edge.last - edge.first) / angle
    radii = [edge.radius(place / PLACES) for place in range(PLACES + 1)] if slope else [edge.radius(0)]
    tightest = min(hypot(one, slope) ** 3 / (one**2 + 2 * slope**2) for one in radii)
    return FormedEdge(key, tightest, edge.length, angle, key == "inside")


def _practice(plan: Plan) -> Practice:
    """Return the practice; of a footing what is told of boards that stop at its ends stays in its dig, too."""
    practice = practice_of(plan)
    if not plan.of_footing:
        return practice
    return Practice(**{**vars(practice), "overrun": room_past(plan, practice.overrun)})


def _ratio(board: Board, edges: tuple[FormedEdge, ...]) -> float:
    """Return what is held against a lumber level: of plywood so many times its own least radius as job lumber's."""
    if board.ply is not None:
        return LEVELS[JOB] * min(edge.radius for edge in edges) / board.ply
    return min(bend_radius(edge.radius, board, edge.inner) for edge in edges) / board.thickness


def choose(plan: Plan, edges: tuple[FormedEdge, ...]) -> Choice:
    """Return the boards for some edges."""
    practice, said = _practice(plan), plan.said.board
    overrun = room_past(plan, practice.overrun if said.overrun is None else said.overrun)
    level = said.level or JOB
    loose = level == SELECTED and overrun == 0
    level = CLEAR if loose else level
    height, named = height_of(plan), own_board(plan)

    def look(board: Board) -> Looked:
        ratio = _ratio(board, edges)
        return Looked(board, {edge.key: bends(edge.radius, board, edge.inner) for edge in edges}, ratio)

    own = look(named) if named else None
    rows = [look(board) for row in range(max(height, 1) + 1) for board in practice.boards(row)]
    thin, thick = rows[2 * height : 2 * height + 2]
    told = own or thin
    most = max(RANKS[level], RANKS[CLEAR])  # clear wood is offered, and said to be clear
    others = tuple(row for row in rows if own is None or row.board.name != own.board.name)
    return Choice(
        practice=practice,
        level=level,
        loose=loose,
        looked=((own,) if own else ()) + others,
        thin=thin,
        thick=thick,
        own=own,
        used=told if told.rank <= most else None,
        lengths=said.lengths or practice.lengths,
        overrun=overrun,
    )
