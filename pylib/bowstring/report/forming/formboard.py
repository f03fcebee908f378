"""Which board the forms are: what the job names, else the thin board of the list that holds the slab."""

from __future__ import annotations

from bowstring.forming.boards import Board
from bowstring.forming.stock import FEET, METRES, Practice, ply_radius
from bowstring.report.forming.plan import Plan

MOST_BANKED = 0.0254 * (1 + 1e-9)
"""Metres: earth is banked under a form's foot so far; past it the form is too low."""


def form_of(plan: Plan) -> Board:
    """Return the board of the forms; by the name that the job has for it, if it has one."""
    own = own_board(plan)
    if own is not None:
        return own
    thin = practice_of(plan).boards(height_of(plan))[0]
    said = plan.said.board
    return Board(said.kind or thin.name, thin.thickness, said.height or thin.height)


def straight_of(plan: Plan) -> Board:
    """Return the board of straight forms: the thick one of the list that holds the slab, whatever bends to a curve."""
    return practice_of(plan).boards(height_of(plan))[1]


def practice_of(plan: Plan) -> Practice:
    """Return the practice of the job's own tape, whatever somebody looks at it in."""
    return FEET if plan.layout.job.tape.feet else METRES


def depth_of(plan: Plan) -> float | None:
    """Return how thick the slab is, as far as that is said."""
    return plan.said.slab.thickness


def height_of(plan: Plan) -> int:
    """Return which of the practice's heights holds the slab: the lowest as long as no thickness is said."""
    depth = depth_of(plan)
    return 0 if depth is None else practice_of(plan).height_for(depth)


def own_board(plan: Plan) -> Board | None:
    """Return the board that the job names: one of a list, or by its thickness; ``None`` where it names none."""
    said, practice = plan.said.board, practice_of(plan)
    listed = _listed(said.kind)
    if listed is None and said.thickness is None:
        return None
    thickness = said.thickness or (listed.thickness if listed else practice.thicknesses[0])
    tall = said.height or (listed.height if listed else practice.heights[height_of(plan)])
    ply = ply_radius(thickness) if listed is None and _is_ply(said.kind) else None
    return Board(listed.name if listed else said.kind, thickness, tall, ply)


def unknown_board(plan: Plan) -> str | None:
    """Return the name of a board that no list has and no thickness is said of."""
    said = plan.said.board
    return said.kind if said.kind and own_board(plan) is None else None


PLYWOOD = ("ply", "triplay", "contrachap")
"""What a board's name has in it that is plywood, in the languages of the page."""


def _is_ply(name: str) -> bool:
    return any(part in name.lower() for part in PLYWOOD)


def _listed(kind: str) -> Board | None:
    name = kind.lower().replace(" ", "").replace("×", "x")
    boards = (board for practice in (FEET, METRES) for row in range(len(practice.heights))
              for board in practice.boards(row))  # fmt: skip
    return next((board for board in boards if board.name == name), None)
