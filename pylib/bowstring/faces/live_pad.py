"""What lies behind the arc in the drawing over the measures: a pad's straight sides, what closes them, a building."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.drawings.building import draw_building
from bowstring.drawings.svg import Drawing, Point
from bowstring.faces.one_line import metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import fills, is_conflict
from bowstring.geometry.arc import Arc


@dataclass(frozen=True)
class Behind:
    """Straight sides behind an arc: how long they are in its radii; whether the other end is round, too; whether the
    back is against a building."""

    sides: float
    both: bool
    against: bool


def behind_of(arcs: Arcs, typed: Typed, arc: Arc | None, side: str | None) -> Behind | None:
    """Return what is typed to lie behind an arc, ``None`` where nothing does, or nobody said on which hand it is."""
    sides = metres_of(arcs, typed, "slab-sides")
    if arc is None or side is None or not sides or not fills(typed) or is_conflict(typed):
        return None
    from bowstring.forming.pad import takes_sides  # no arc without sides needs it

    if not takes_sides(arc):
        return None
    both = "slab-both_ends" in typed
    return Behind(sides / arc.radius, both, not both and typed.get("slab-back") == "against")


def draw_behind(drawing: Drawing, behind: Behind, ends: tuple[Point, Point], sides: float, curve: list[Point]) -> None:
    """Draw it on paper, ``sides`` drawing units behind both ends; ``curve``: the arc itself, from end to end."""
    (left, base), (right, _base) = ends
    back = base + sides
    drawing.lines([[(left, base), (left, back)], [(right, base), (right, back)]], "line soft")
    if behind.both:
        drawing.lines([[(x, back + base - y) for x, y in curve]], "line soft")
        return
    if behind.against:
        draw_building(drawing, (left, back), (right, back))
        return
    drawing.lines([[(left, back), (right, back)]], "line soft")
