"""The line along which is built: one arc, as long as a job has no other pieces."""

from __future__ import annotations

from bowstring.job.terms import OTHER
from bowstring.layout.layout import Layout
from bowstring.report.forms.build import LinePart


def report_line(layout: Layout) -> LinePart:
    """Return the answer's ``line``."""
    arc = layout.drawn
    # Where the curve is on the left of the string from A to B, who walks along it turns right.
    turn = None if layout.side is None else OTHER[layout.side]
    piece = {"kind": "arc", "length": arc.arc_length, "radius": arc.radius, "turn": turn}
    return {"pieces": [piece], "joins": [], "length": arc.arc_length}  # type: ignore[list-item]
