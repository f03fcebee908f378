"""A line's pieces, as a drawing names them: straights and arcs in the order in which somebody walks along them."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf
from typing import Literal

from bowstring.geometry.arc import Arc

Hand = Literal["left", "right"]
"""To which hand a piece turns, for somebody who walks along the line."""

OTHER: dict[Hand, Hand] = {"left": "right", "right": "left"}


def sign_of(hand: Hand) -> float:
    """Return 1 for the left hand and -1 for the right: angles count anticlockwise."""
    return 1.0 if hand == "left" else -1.0


def hand_of(turn: float) -> Hand:
    """Return the hand to which a turn above 0 (left) or below goes."""
    return "left" if turn >= 0 else "right"


@dataclass(frozen=True)
class Straight:
    """A straight piece.

    Attributes:
        length: metres.
        kink: by how much it turns off from the piece before it, radians, above 0 to the left; 0: it is tangent.

    Raises ``ValueError`` for a length that isn't above 0.
    """

    length: float
    kink: float = 0.0

    def __post_init__(self) -> None:
        if not 0 < self.length < inf:
            raise ValueError("a straight needs a length")

    @property
    def curvature(self) -> float:
        """None: 0."""
        return 0.0

    @property
    def turn(self) -> float:
        """By how much it turns from its start to its end: 0."""
        return 0.0

    def kinked(self, kink: float) -> Straight:
        """Return the piece with another kink before it, radians, above 0 to the left."""
        return Straight(self.length, kink)

    def mirrored(self) -> Straight:
        """Return the piece as a mirror shows it, left for right."""
        return Straight(self.length, -self.kink)


@dataclass(frozen=True)
class Bend:
    """An arc as a piece of a line.

    Attributes:
        arc: the arc, metres.
        hand: to which hand it turns.
        kink: as ``Straight`` has it.

    Raises ``ValueError`` for a radius or an angle that isn't above 0.
    """

    arc: Arc
    hand: Hand
    kink: float = 0.0

    def __post_init__(self) -> None:
        if not (0 < self.arc.radius < inf and self.arc.half_angle > 0):
            raise ValueError("an arc needs a radius and an angle")

    @classmethod
    def of(cls, radius: float, turn: float, kink: float = 0.0) -> Bend:
        """Return the arc of a radius in metres that turns by ``turn`` radians, above 0 to the left.

        Raises ``ValueError`` where there is no such arc.

        >>> Bend.of(10.0, -0.5).hand
        'right'
        """
        return cls(Arc.of_angle(radius, abs(turn) / 2), hand_of(turn), kink)

    @property
    def radius(self) -> float:
        """Metres."""
        return self.arc.radius

    @property
    def length(self) -> float:
        """Metres along the arc: R I."""
        return self.arc.arc_length

    @property
    def curvature(self) -> float:
        """Radians a metre, above 0 to the left: 1/R."""
        return sign_of(self.hand) / self.arc.radius

    @property
    def turn(self) -> float:
        """By how much it turns from its start to its end, radians, above 0 to the left."""
        return sign_of(self.hand) * 2 * self.arc.half_angle

    def kinked(self, kink: float) -> Bend:
        """Return the piece with another kink before it, radians, above 0 to the left."""
        return Bend(self.arc, self.hand, kink)

    def mirrored(self) -> Bend:
        """Return the piece as a mirror shows it, left for right."""
        return Bend(self.arc, OTHER[self.hand], -self.kink)


Piece = Straight | Bend
