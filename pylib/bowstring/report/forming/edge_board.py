"""How thick the board is that stands between an edge and its form stakes."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.units.sizes import INCH

TAKEN = {True: ("1x4", 0.75 * INCH), False: ("25x100", 0.025)}
"""Where the tape reads feet, and where it doesn't (common practice, no source)."""


def board_of(plan: Plan) -> tuple[str, float]:
    """Return the name and thickness, metres, of the board that the job names, or of the usual one."""
    said = plan.said.board
    name, thickness = TAKEN[plan.layout.job.tape.feet]
    return said.kind or name, said.thickness or thickness
