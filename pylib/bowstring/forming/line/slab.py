"""A slab of one width along a line of straights and arcs, its ends square to the line."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from bowstring.forming.line.crossing import Overlap, overlaps
from bowstring.forming.line.edges import Edge
from bowstring.forming.line.line import Line


@dataclass(frozen=True)
class LineSlab:
    """A slab along a line.

    Attributes:
        line: the line that was set.
        left, right: metres from the line to the slab's edge on that hand; below 0 where the slab begins on the other
            hand of the line only.

    Raises ``ValueError`` for no width, and ``NoEdge`` where an edge can't follow the line.
    """

    line: Line
    left: float
    right: float

    def __post_init__(self) -> None:
        if not self.width > 0:
            raise ValueError("a slab needs a width")
        _ = self.left_edge, self.right_edge

    @property
    def width(self) -> float:
        """Metres, square to the line."""
        return self.left + self.right

    @cached_property
    def left_edge(self) -> Edge:
        """The edge on the left of somebody who walks along the line."""
        return Edge(self.line, self.left)

    @cached_property
    def right_edge(self) -> Edge:
        """The edge on the right."""
        return Edge(self.line, -self.right)

    @property
    def area(self) -> float:
        """The area, square metres, exactly: ring sectors and rectangles, and what the miters add and take.

        Where the slab lies over itself (``overlaps``), that place is counted twice.
        """
        return self.left_edge.area - self.right_edge.area

    def volume(self, thickness: float) -> float:
        """Return the concrete in cubic metres for one thickness in metres.

        Raises ``ValueError`` for a thickness that isn't above 0.
        """
        if not thickness > 0:
            raise ValueError("a slab needs a thickness")
        return self.area * thickness

    @cached_property
    def overlaps(self) -> tuple[Overlap, ...]:
        """Where the slab lies over itself; empty where it doesn't, and where it only touches."""
        return overlaps(self.line, self.left, self.right)
