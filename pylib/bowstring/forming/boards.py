"""Boards bent to an edge: which of them take the radius, how far they bow between stakes, how long they are cut."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, cos, floor, pi, sqrt

POUND_FORCE = 4.4482216152605  # newtons, exactly, from the pound (0.45359237 kg) and standard gravity (9.80665 m/s²)
CUBIC_FOOT = 0.3048**3
FRESH_CONCRETE = 150 * POUND_FORCE / CUBIC_FOOT
"""Newtons a cubic metre: 150 pounds a cubic foot (US Navy training manual NAVEDTRA 14045)."""

LUMBER_MODULUS = 1.36e6 * 6894.757293168
"""Pascals: 1.36 million pounds a square inch, common job lumber (from memory: show, don't promise)."""

LEVELS = {"job lumber": 250.0, "clear": 160.0, "selected": 112.0}
"""Least radius at mid-thickness over the thickness, by how good the lumber is: practice figures that a crew may change.
112 is some 70 % of the bend at which clear Douglas-fir breaks (USDA Wood Handbook)."""


PLY_ACROSS = 1 / 8
"""How stiff plywood is across its face grain, as a part of lumber as thick (from memory: show, don't promise)."""


@dataclass(frozen=True)
class Board:
    """A board on edge: ``thickness`` (the way it bends) and ``height``, metres; ``ply``: of plywood the least radius of
    an edge that it takes with its face grain upright, metres, whatever the lumber's level; ``None`` of lumber."""

    name: str
    thickness: float
    height: float
    ply: float | None = None

    def least_radius(self, ratio: float) -> float:
        """Return the least radius at mid-thickness in metres, for a ratio of ``LEVELS``.

        The stress at the outer fiber is E t/(2R): R/t is a figure of the lumber, whatever the thickness.
        """
        return ratio * self.thickness

    @property
    def stiffness(self) -> float:
        """E I in newton square metres, bent across its thickness."""
        part = 1.0 if self.ply is None else PLY_ACROSS
        return part * LUMBER_MODULUS * self.height * self.thickness**3 / 12


def bend_radius(edge: float, board: Board, inner: bool) -> float:
    """Return the radius at mid-thickness of a board that stands at an edge of radius ``edge``, metres.

    At an inner edge it is nearer the center, which is the tighter bend.
    """
    return edge - board.thickness / 2 if inner else edge + board.thickness / 2


def least_edge(board: Board, ratio: float, inner: bool) -> float:
    """Return the least radius of an edge that a board takes, metres: of the edge itself, not of the board's middle."""
    if board.ply is not None:
        return board.ply
    return board.least_radius(ratio) + (board.thickness / 2 if inner else -board.thickness / 2)


def bends(edge: float, board: Board, inner: bool) -> str | None:
    """Return the first level of ``LEVELS`` at which a board takes an edge; ``None`` where it takes it at none."""
    if board.ply is not None:
        return next(iter(LEVELS)) if edge >= board.ply * (1 - 1e-9) else None
    radius = bend_radius(edge, board, inner)
    return next((level for level, ratio in LEVELS.items() if radius >= board.least_radius(ratio)), None)


def bow(board: Board, depth: float, spacing: float) -> float:
    """Return how far fresh concrete of a depth bows a board between stakes, metres.

    5 q s⁴/(384 E I): a single span under the load of a triangle of pressure.
    """
    load = FRESH_CONCRETE * depth**2 / 2
    return 5 * load * spacing**4 / (384 * board.stiffness)


def bow_spacing(board: Board, depth: float, most: float) -> float:
    """Return how far apart stakes may stand for a board to bow no more than ``most``, metres."""
    return float((most / bow(board, depth, 1.0)) ** 0.25)


def sprung(radius: float, length: float) -> float:
    """Return how far the middle of a board of a length stands off its chord, bent to a radius, metres.

    Raises ``ValueError`` for a board that is longer than a full turn.
    """
    if length > 2 * pi * radius:
        raise ValueError("a board goes round no more than once")
    return radius * (1 - cos(length / (2 * radius)))


def push(board: Board, radius: float, length: float) -> float:
    """Return what springs a board of a length to a radius, newtons, pushed at its middle between two ends that hold.

    48 E I d/L³, a small bend: raises ``ValueError`` for a board that is longer than the radius.
    """
    if length > radius:
        raise ValueError("so far bent, a board is no small bend")
    return 48 * board.stiffness * sprung(radius, length) / length**3


def flat_spacing(radius: float, miss: float) -> float:
    """Return how far apart stakes may stand for straight pieces between them to miss an arc by ``miss``, metres."""
    return sqrt(8 * radius * miss)


def spaced(length: float, most: float) -> int:
    """Return in how many equal gaps of at most ``most`` a length is staked, both metres.

    >>> spaced(15.02, 0.9144), spaced(9.0, 3.0)
    (17, 3)
    """
    return max(1, ceil(length / most - 1e-9))


def kerfs(length: float, angle: float, radius: float, thickness: float, saw: float, miss: float) -> tuple[int, float]:
    """Return how many saw kerfs let a board follow an edge, and how far apart they are, metres.

    ``length``, ``angle`` and ``radius`` of the edge; ``saw``: how wide a kerf is; ``miss``: what the straight pieces
    between kerfs may be off. The count angle x thickness/saw closes no kerf whole: the board is bent to its stakes.
    """
    most = min(flat_spacing(radius, miss), length * saw / (angle * thickness))
    count = ceil(length / most - 1e-9)
    return count, length / count


def kerfed_bends(edge: float, board: Board, depth: float, ratio: float, inner: bool) -> bool:
    """Tell whether the wood that kerfs of a depth leave takes an edge by a ratio of ``LEVELS``, all in metres.

    Kerfs are cut on the inside of the bend, so what is left is the board's outer side. It is judged as a board so thin,
    bent evenly: between kerfs the whole thickness hardly bends, so at them it bends more, and never less.

    >>> left = Board("2x6", 1.5, 5.5)
    >>> [kerfed_bends(radius, left, 1.0, 250.0, inner=False) for radius in (123.7, 123.8)]
    [False, True]
    """
    left = board.thickness - depth
    middle = edge - left / 2 if inner else edge + board.thickness - left / 2
    return middle >= ratio * left


def layers(radius: float, ratio: float, whole: float, step: float) -> tuple[int, float] | None:
    """Return how many layers of strips make up a thickness ``whole`` where one board of it is too stiff, and how thick
    each may be, in ``step``s rounded down; ``None`` where not even two steps bend."""
    thick = floor(radius / ratio / step + 1e-9) * step
    return None if thick < 2 * step else (ceil(whole / thick - 1e-9), thick)
