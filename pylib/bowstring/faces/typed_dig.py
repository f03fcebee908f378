"""Whether the stakes of a slab or a wall stand in its dig, known while it is typed: before anybody drives one."""

from __future__ import annotations

from typing import TYPE_CHECKING

from bowstring.faces.one_line import metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import deep_asked, edge_in, fills, has_no_inner, is_conflict, is_wall
from bowstring.job.terms import is_lined

if TYPE_CHECKING:
    from bowstring.report.forming.in_dig import Clear


def clear_of_dig(arcs: Arcs, typed: Typed, side: str | None) -> Clear | None:
    """Return how far the dig reaches off the drawing's line, in which the stakes stand; ``None`` where they stand clear
    of it already, once one is driven, and while the slab or the wall isn't said. Along a line of several pieces it is
    told of a wall alone: off one arc a slab's stakes may be in another piece's dig."""
    if arcs.settled is None or typed.get("stood") or not (is_wall(typed) or _is_told(arcs, typed, side)):
        return None
    clear = _filled(arcs, typed) if fills(typed) else _band(arcs, typed, side)
    offset, toward = metres_of(arcs, typed, "offset") or 0.0, typed.get("toward")
    return clear if clear and clear.takes(-offset if toward == "centre" else offset) else None


def _is_told(arcs: Arcs, typed: Typed, side: str | None) -> bool:
    """Whether there is a slab: one on an arc alone that can be."""
    if is_lined(typed) or is_conflict(typed) or deep_asked(arcs, typed) or arcs.settled is None:
        return False
    if not fills(typed):
        return not has_no_inner(arcs, typed, side, arcs.settled.arc.radius)
    from bowstring.forming.pad import takes_sides

    return "slab-sides" not in typed or takes_sides(arcs.settled.arc)


def _filled(arcs: Arcs, typed: Typed) -> Clear | None:
    """The same of a slab that fills its curve: all is dug on the side of the center."""
    from bowstring.report.forming.in_dig import Clear

    if arcs.settled is None:
        return None
    past, radius = _past(arcs, typed), arcs.settled.arc.radius
    return Clear(past, radius, radius, past, beyond=False)


def _band(arcs: Arcs, typed: Typed, side: str | None) -> Clear | None:
    width, edge = metres_of(arcs, typed, "width"), edge_in(typed, side)
    if not width or edge is None or arcs.settled is None:
        return None
    from bowstring.forming.slab import OFF
    from bowstring.report.forming.in_dig import Clear
    from bowstring.report.forming.plan import LIES

    over, wall = _past(arcs, typed), is_wall(typed)
    wide = width if wall else max(width, metres_of(arcs, typed, "slab-end_width") or 0.0)
    footing = metres_of(arcs, typed, "slab-footing_width", bare=False) if wall else None
    beyond = ((footing or width) - width) / 2
    past = over + max(0.0, beyond)
    outer, inner = (part * wide for part in OFF[LIES[edge]])
    deep = _deep(arcs, typed) if wall else 0.0
    return Clear(outer + past, past - inner, arcs.settled.arc.radius, over, beyond > 0, deep, deep)


def _past(arcs: Arcs, typed: Typed) -> float:
    """Return how far past each edge it is dug, metres."""
    from bowstring.report.forming.edge_lines import OVERDIG

    said = metres_of(arcs, typed, "slab-overdig")
    return OVERDIG[arcs.tape.feet] if said is None else said


def _deep(arcs: Arcs, typed: Typed) -> float:
    """Return how deep a wall's dig is below its top, metres; 0 while its height or its footing's depth isn't typed."""
    names = ("slab-thickness", "slab-footing_depth", "slab-base")
    high, deep, base = (metres_of(arcs, typed, name, bare=name == "slab-thickness") for name in names)
    return high + deep + (base or 0.0) if high and deep else 0.0
