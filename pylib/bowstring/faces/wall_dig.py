"""Whether the stakes of a wall stand in its dig, known while it is typed: before anybody drives one."""

from __future__ import annotations

from typing import TYPE_CHECKING

from bowstring.faces.one_line import metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import edge_in, is_wall

if TYPE_CHECKING:
    from bowstring.report.forming.in_dig import Clear


def clear_of_dig(arcs: Arcs, typed: Typed, side: str | None) -> Clear | None:
    """Return how far a wall's dig reaches off the drawing's line, in which its stakes stand; ``None`` where they stand
    clear of it already, and while the wall isn't said."""
    width, edge = metres_of(arcs, typed, "width"), edge_in(typed, side)
    if not is_wall(typed) or not width or edge is None or arcs.settled is None:
        return None
    from bowstring.forming.slab import OFF
    from bowstring.report.forming.edge_lines import OVERDIG
    from bowstring.report.forming.in_dig import Clear
    from bowstring.report.forming.plan import LIES

    said = metres_of(arcs, typed, "slab-overdig")
    over = OVERDIG[arcs.tape.feet] if said is None else said
    beyond = ((metres_of(arcs, typed, "slab-footing_width", bare=False) or width) - width) / 2
    past = over + max(0.0, beyond)
    outer, inner = (part * width for part in OFF[LIES[edge]])
    offset, toward = metres_of(arcs, typed, "offset") or 0.0, typed.get("toward")
    deep = _deep(arcs, typed)
    clear = Clear(outer + past, past - inner, arcs.settled.arc.radius, over, beyond > 0, deep, deep)
    return clear if clear.takes(-offset if toward == "centre" else offset) else None


def _deep(arcs: Arcs, typed: Typed) -> float:
    """Return how deep a wall's dig is below its top, metres; 0 while its height or its footing's depth isn't typed."""
    names = ("slab-thickness", "slab-footing_depth", "slab-base")
    high, deep, base = (metres_of(arcs, typed, name, bare=name == "slab-thickness") for name in names)
    return high + deep + (base or 0.0) if high and deep else 0.0
