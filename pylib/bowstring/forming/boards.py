"""Boards bent to an edge: which of them take the radius, how far they bow between stakes, how long they are cut."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations_with_replacement
from math import ceil, sqrt

POUND_FORCE = 4.4482216152605  # newtons, exactly, from the pound (0.45359237 kg) and standard gravity (9.80665 m/s²)
CUBIC_FOOT = 0.3048**3
FRESH_CONCRETE = 150 * POUND_FORCE / CUBIC_FOOT
"""Newtons a cubic metre: 150 pounds a cubic foot (US Navy training manual NAVEDTRA 14045)."""

LUMBER_MODULUS = 1.36e6 * 6894.757293168
"""Pascals: 1.36 million pounds a square inch, common job lumber (from memory: show, don't promise)."""

LEVELS = {"job lumber": 250.0, "clear": 160.0, "selected": 112.0}
"""Least radius at mid-thickness over the thickness, by how good the lumber is: practice figures that a crew may change.
112 is some 70 % of the bend at which clear Douglas-fir breaks (USDA Wood Handbook)."""

HELD_ENDS = "selected"
"""The level that only holds where the ends of a strip are held: loose, it is bent tighter at its second stake."""


@dataclass(frozen=True)
class Board:
    """A board on edge: ``thickness`` (the way it bends) and ``height``, metres."""

    name: str
    thickness: float
    height: float

    def least_radius(self, ratio: float) -> float:
        """Return the least radius at mid-thickness in metres, for a ratio of ``LEVELS``.

        The stress at the outer fiber is E t/(2R): R/t is a figure of the lumber, whatever the thickness.
        """
        return ratio * self.thickness

    @property
    def stiffness(self) -> float:
        """E I in newton square metres, bent across its thickness."""
        return LUMBER_MODULUS * self.height * self.thickness**3 / 12


def bend_radius(edge: float, board: Board, inner: bool) -> float:
    """Return the radius at mid-thickness of a board that stands at an edge of radius ``edge``, metres.

    At an inner edge it is nearer the center, which is the tighter bend.
    """
    return edge - board.thickness / 2 if inner else edge + board.thickness / 2


def bends(edge: float, board: Board, inner: bool) -> str | None:
    """Return the first level of ``LEVELS`` at which a board takes an edge; ``None`` where it takes it at none."""
    radius = bend_radius(edge, board, inner)
    return next((level for level, ratio in LEVELS.items() if radius >= board.least_radius(ratio)), None)


def bow(board: Board, depth: float, spacing: float) -> float:
    """Return how far fresh concrete of a depth bows a board between stakes, metres.

    5 q s⁴/(384 E I): a single span under the load of a triangle of pressure.
    """
    load = FRESH_CONCRETE * depth**2 / 2
    return 5 * load * spacing**4 / (384 * board.stiffness)


def flat_spacing(radius: float, miss: float) -> float:
    """Return how far apart stakes may stand for straight pieces between them to miss an arc by ``miss``, metres."""
    return sqrt(8 * radius * miss)


def spaced(length: float, most: float) -> int:
    """Return in how many equal gaps of at most ``most`` a length is staked, both metres.

    >>> spaced(15.02, 0.9144), spaced(9.0, 3.0)
    (17, 3)
    """
    return max(1, ceil(length / most - 1e-9))


def form_length(edge: float, angle: float, board: Board, inner: bool, past: float) -> float:
    """Return how long the boards of an edge are together, at mid-thickness, running ``past`` metres past each end."""
    return bend_radius(edge, board, inner) * angle + 2 * past


def kerf_turn(kerf: float, depth: float, thickness: float) -> float:
    """Return by how much a saw kerf that closes turns a board, radians: its width over the distance from the middle of
    what is left to the kerf's mouth.

    Raises ``ValueError`` where the kerf cuts the board through.
    """
    if not 0 < depth < thickness:
        raise ValueError("a kerf is shallower than the board is thick")
    return kerf / (depth + (thickness - depth) / 2)


def cut_list(length: float, stock: tuple[float, ...], least: float, kerf: float) -> tuple[float, ...]:
    """Return the boards to take for a length: the least waste, then the fewest boards, then the
    longest last piece, then the evenest; no piece under
    ``least``, a saw cut of ``kerf`` where the last is cut; all in metres. Empty where ``stock`` can't make it.

    >>> cut_list(53.3125, (8.0, 10.0, 12.0, 14.0, 16.0), 6.0, 0.0104)
    (14.0, 14.0, 14.0, 12.0)
    """
    best: tuple[float, int, float, float, tuple[float, ...]] | None = None
    most = ceil(length / max(stock)) + 1
    for count in range(1, most + 1):
        for boards in combinations_with_replacement(sorted(stock, reverse=True), count):
            waste = sum(boards) - length
            last = boards[-1] - waste  # the last is cut
            fits = waste >= kerf or waste == 0
            if fits and last >= least and (best is None or (waste, count, -last, boards[0]) < best[:4]):
                best = (waste, count, -last, boards[0], boards)
    return best[4] if best else ()
