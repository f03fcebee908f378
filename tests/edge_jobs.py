"""A walk whose edges several tests look at, what is told of them, and where its marks are by plain trigonometry."""

from __future__ import annotations

import cmath
from math import pi
from typing import Any

from bowstring import answering
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_edges import EdgesPart, LineRow, SecondEdge
from slab_jobs import WALK as SLAB_WALK

FOOT = 0.3048
WALK: dict[str, Any] = {**SLAB_WALK, "method": "halving"}


def told(job: dict[str, Any]) -> EdgesPart:
    part = answering(job)["edges"]  # type: ignore[arg-type]
    assert part is not None
    return part


def row_of(job: dict[str, Any]) -> BuildRow:
    answer = answering(job)  # type: ignore[arg-type]
    return next(row for row in answer["build"] if row["key"] == "edges")


def line_of(part: EdgesPart, key: str) -> LineRow:
    return next(line for line in part["lines"] if line["key"] == key)


def second_of(part: EdgesPart, edge: str) -> SecondEdge:
    return next(second for second in part["seconds"] if second["edge"] == edge)


def about_center(part_angle: float, radius: float, share: float) -> complex:
    """A mark about the center, the arc's middle straight up, A at the left."""
    return radius * cmath.exp(1j * (pi / 2 + part_angle * (0.5 - share)))


LINES = {"outside": (0.0, -1.0), "inside": (1.0, 0.0), "centre": (0.5, -0.5)}


def shares(levels: int) -> list[tuple[str, float]]:
    """Names of the stakes of halving from A to B: A, M, B; then Q; then R."""
    names = {0.0: "A", 0.5: "M", 1.0: "B"}
    for level, letter in zip(range(2, levels + 1), "QR", strict=False):
        for place in range(2 ** (level - 1)):
            names[(2 * place + 1) / 2**level] = f"{letter}{place + 1}"
    return [(name, share) for share, name in sorted(names.items())]
