"""What form boards are bought as, and what crews do with them, in feet and in metres.

All of it common practice, no source, but where one is named: defaults that a job may change.
"""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.boards import Board

FOOT, INCH = 0.3048, 0.0254


@dataclass(frozen=True)
class Sheet:
    """Plywood ripped into strips, by its thickness in metres.

    Attributes:
        across: the least radius with the face grain square to the bend; such strips come off the short side of a panel.
        along: with the face grain along the bend.
        name: how it is asked for.
    """

    name: str
    thickness: float
    across: float
    along: float


@dataclass(frozen=True)
class Practice:
    """A country's boards and habits; metres.

    Attributes:
        thicknesses: of the thin and the thick boards; heights: by what they are called.
        lengths: in which boards come.
        overrun: past each end; splice: the piece on the back of two boards that meet.
        clear, apart: a splice off a stake, and off one of the other edge; least: the shortest piece.
        saw: what a cut takes; step: the finest that strips are ripped to.
        gap: the most between form stakes on a long radius, closest: the least on a short one.
        bow: what wet concrete may bow a board between stakes; face: what the form's face may be off; kerf_miss:
            between two kerfs.
        lowered: how far the ground under a form may stand below it.
    """

    thicknesses: tuple[float, float]
    heights: tuple[float, ...]
    names: tuple[tuple[str, ...], tuple[str, ...]]
    lengths: tuple[float, ...]
    overrun: float
    splice: float
    clear: float
    apart: float
    least: float
    saw: float
    step: float
    gap: float
    closest: float
    bow: float
    face: float
    kerf_miss: float
    lowered: float
    sheets: tuple[Sheet, ...]
    strip_lengths: tuple[float, float]

    def boards(self, height: int) -> tuple[Board, Board]:
        """Return the thin and the thick board of a height of the list."""
        thin, thick = (
            Board(self.names[row][height], thickness, self.heights[height])
            for row, thickness in enumerate(self.thicknesses)
        )
        return thin, thick

    def height_for(self, depth: float) -> int:
        """Return which height holds a slab: the first that leaves no more than ``lowered`` open, else the last."""
        tall = (row for row, height in enumerate(self.heights) if height + self.lowered >= depth - 1e-9)
        return next(tall, len(self.heights) - 1)


_TABLE = ((1 / 4, 2, 5), (5 / 16, 2, 6), (3 / 8, 3, 8), (1 / 2, 6, 12), (5 / 8, 8, 16), (3 / 4, 12, 20))
"""Plywood bent dry: inches, least radius in feet across and along the grain (APA, concrete-form panels)."""


def ply_radius(thickness: float) -> float | None:
    """Return the least radius across the face grain of plywood so thick, metres: that of the table's next thicker one;
    ``None`` where the table ends before it.

    >>> ply_radius(0.375 * INCH) == 3 * FOOT, ply_radius(INCH)
    (True, None)
    """
    return next((row[1] * FOOT for row in _TABLE if row[0] * INCH >= thickness - 1e-9), None)


def _sheets(names: dict[str, float], unit: float) -> tuple[Sheet, ...]:
    """Return the sheets of a trade: each has the figures of the table's next thicker one, which bends the less."""
    found = []
    for name, size in names.items():
        thick = size * unit
        row = next(row for row in _TABLE if row[0] * INCH >= thick - 1e-9)
        found.append(Sheet(name, thick, row[1] * FOOT, row[2] * FOOT))
    return tuple(found)


FEET = Practice(
    thicknesses=(0.75 * INCH, 1.5 * INCH),
    heights=tuple(size * INCH for size in (3.5, 5.5, 7.25, 9.25, 11.25)),
    names=(("1x4", "1x6", "1x8", "1x10", "1x12"), ("2x4", "2x6", "2x8", "2x10", "2x12")),
    lengths=tuple(size * FOOT for size in (8, 10, 12, 14, 16)),
    overrun=2 * FOOT,
    splice=2 * FOOT,
    clear=FOOT,
    apart=2 * FOOT,
    least=6 * FOOT,
    saw=INCH / 8,
    step=INCH / 16,
    gap=3 * FOOT,  # Beall, Masonry and Concrete (2004): 2 to 3 ft on a long radius, 12 to 24 in on a short one
    closest=FOOT,
    bow=INCH / 8,
    face=INCH / 4,  # a form's face, UFGS 02753
    kerf_miss=INCH / 16,
    lowered=INCH / 2,
    sheets=_sheets({"1/4": 1 / 4, "3/8": 3 / 8, "1/2": 1 / 2, "3/4": 3 / 4}, INCH),
    strip_lengths=(4 * FOOT, 8 * FOOT),
)

METRES = Practice(
    thicknesses=(0.025, 0.047),
    heights=(0.1, 0.15, 0.2, 0.225),
    names=(("25x100", "25x150", "25x200", "25x225"), ("47x100", "47x150", "47x200", "47x225")),
    lengths=(2.4, 3.0, 3.6, 4.2, 4.8),
    overrun=0.6,
    splice=0.6,
    clear=0.3,
    apart=0.6,
    least=2.0,
    saw=0.003,
    step=0.002,
    gap=0.9,
    closest=0.3,
    bow=0.003,
    face=0.006,
    kerf_miss=0.0015,
    lowered=0.012,
    sheets=_sheets({"6": 6, "9": 9, "12": 12, "18": 18}, 0.001),
    strip_lengths=(1.2, 2.4),
)
