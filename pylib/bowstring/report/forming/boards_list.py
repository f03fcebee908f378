"""Which boards are looked at for a job, and what each does at its edges."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import hypot

from bowstring.forming.boards import LEVELS, Board, bends
from bowstring.forming.stock import FEET, METRES, Practice
from bowstring.report.forming.plan import LIES, Plan

JOB, CLEAR, SELECTED = LEVELS
RANKS = {level: rank for rank, level in enumerate(LEVELS)}
HALVES = 64
"""Of Simpson's rule over an edge that is no arc."""


@dataclass(frozen=True)
class Edge:
    """An edge of the slab: ``key`` outside or inside; metres, ``radius`` where it is tightest."""

    key: str
    radius: float
    length: float
    angle: float

    @property
    def inner(self) -> bool:
        """Whether its board is on the side of the center, where the bend is tighter than the edge."""
        return self.key == "inside"


@dataclass(frozen=True)
class Looked:
    """A board with the first levels at which it takes each edge."""

    board: Board
    at: dict[str, str | None]

    @property
    def rank(self) -> int:
        """The worst level of both edges; one more than there are where it takes an edge at none."""
        return max(len(RANKS) if level is None else RANKS[level] for level in self.at.values())


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
    def told(self) -> Looked:
        """The board of which the row speaks."""
        return self.own or self.thin


def practice_of(plan: Plan) -> Practice:
    """Return the practice of the job's own tape, whatever somebody looks at it in."""
    return FEET if plan.layout.job.tape.feet else METRES


def depth_of(plan: Plan) -> float | None:
    """Return how thick the slab is, as far as that is said."""
    return plan.said.slab.thickness


def unknown_board(plan: Plan) -> str | None:
    """Return the name of a board that no list has and no thickness is said of."""
    said = plan.said.board
    listed = not said.kind or _listed(said.kind)
    return None if listed or said.thickness is not None else said.kind


def edges_of(plan: Plan) -> tuple[Edge, ...]:
    """Return the outer and the inner edge; none where there is no slab yet."""
    slab = plan.slab
    if slab is None or plan.edge is None:
        return ()
    far = plan.said.slab.far_width
    if far is None or plan.width is None:
        return tuple(Edge(key, radius, radius * slab.angle, slab.angle)
                     for key, radius in (("outside", slab.outer), ("inside", slab.inner)))  # fmt: skip
    share = {"inside": 0.0, "outside": 1.0, "both": 0.5}[LIES[plan.edge]]
    wider = far - plan.width
    if slab.inner + (share - 1) * wider <= 0:
        return ()
    return (
        _drawn_out("outside", slab.outer, share * wider, slab.angle),
        _drawn_out("inside", slab.inner, (share - 1) * wider, slab.angle),
    )


def _drawn_out(key: str, radius: float, more: float, angle: float) -> Edge:
    """Return an edge whose radius grows evenly with the angle by ``more``: length and tightest bend.

    The radius of curvature of r(a), with r'' = 0, is (r² + r'²)^(3/2)/(r² + 2r'²).
    """
    slope = more / angle
    radii = [radius + more * at / HALVES for at in range(HALVES + 1)]
    weights = [1, *([4, 2] * (HALVES // 2 - 1)), 4, 1]
    length = sum(weight * hypot(one, slope) for weight, one in zip(weights, radii, strict=True)) * angle / HALVES / 3
    return Edge(key, min(hypot(one, slope) ** 3 / (one**2 + 2 * slope**2) for one in radii), length, angle)


def choose(plan: Plan, edges: tuple[Edge, ...]) -> Choice:
    """Return the boards for some edges."""
    practice, said = practice_of(plan), plan.said.board
    overrun = practice.overrun if said.overrun is None else said.overrun
    level = said.level or JOB
    loose = level == SELECTED and overrun == 0
    level = CLEAR if loose else level
    depth = depth_of(plan)
    height = 0 if depth is None else practice.height_for(depth)

    def look(board: Board) -> Looked:
        return Looked(board, {edge.key: bends(edge.radius, board, edge.inner) for edge in edges})

    own = own_board(plan, practice, height, look)
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


def own_board(plan: Plan, practice: Practice, height: int, look: Callable[[Board], Looked]) -> Looked | None:
    """Return the board that the job names: one of a list, or by its thickness."""
    said = plan.said.board
    listed = _listed(said.kind)
    if listed is None and said.thickness is None:
        return None
    thickness = said.thickness or (listed.thickness if listed else practice.thicknesses[0])
    tall = said.height or (listed.height if listed else practice.heights[height])
    return look(Board(listed.name if listed else said.kind, thickness, tall))


def _listed(kind: str) -> Board | None:
    name = kind.lower().replace(" ", "").replace("×", "x")
    boards = (board for practice in (FEET, METRES) for row in range(len(practice.heights))
              for board in practice.boards(row))  # fmt: skip
    return next((board for board in boards if board.name == name), None)
