"""What a job without a title is called: the first numbers of its arc, as far as they are known, or a line of pieces."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.faces.judging import name_of, shown
from bowstring.faces.settling import givens_of_fields
from bowstring.job.terms import is_lined
from bowstring.page.pieces import GROUPS, rows_in
from bowstring.page.unit import is_unit_open
from bowstring.words import say

FEW = 2
"""Numbers that a name has: two make an arc."""


def called(fields: Mapping[str, str], unit: str | None = None) -> str:
    """Return the name, empty where no number of the arc can be read or nobody has said which unit they are in;
    ``unit``: the one in which lengths are shown, where that isn't the job's.

    >>> called({"arc-radius": "40 ft", "before-0-straight": "12 ft"})
    'Line of 2 pieces'
    >>> called({"arc-chord": "44 ft", "arc-sagitta": "6"}), called({"arc-radius": "abc"})
    ('Chord 44\\' 0", mid-ordinate 6\\' 0"', '')
    """
    typed = {name: text.strip() for name, text in fields.items() if text.strip()}
    if is_unit_open(typed):
        return ""
    if is_lined(typed):  # whichever of its arcs is staked
        return say("page.called_line", count=1 + sum(len(rows_in(typed, group)) for group in GROUPS))
    arcs = givens_of_fields(typed, unit)
    numbers = [f"{name_of(one)} {shown(one.field, one.value, arcs.shown)}" for one in arcs.givens.values()]
    name = ", ".join(numbers[:FEW]) or _whole(typed)
    return name[:1].upper() + name[1:]


def _whole(typed: Mapping[str, str]) -> str:
    """What three points or three sides are called, once all of them are typed."""
    points = [f"arc-points-{row}-{axis}" for row in range(3) for axis in range(2)]
    sides = [f"arc-three_sides-{row}" for row in range(3)]
    if all(name in typed for name in points):
        return say("page.called_points")
    return say("measure.three_sides") if all(name in typed for name in sides) else ""
