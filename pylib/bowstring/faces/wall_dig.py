"""Whether the stakes of a wall stand in its dig, known while it is typed: before anybody drives one."""

from __future__ import annotations

from bowstring.faces.one_line import metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import edge_in, is_wall


def clear_of_dig(arcs: Arcs, typed: Typed, side: str | None) -> tuple[float, float] | None:
    """Return how far off the drawing's line, outside and inside, stakes stay clear of a wall's dig, metres; ``None``
    where they do already, and while the wall isn't said."""
    width, edge = metres_of(arcs, typed, "width"), edge_in(typed, side)
    if not is_wall(typed) or not width or edge is None:
        return None
    from bowstring.forming.slab import OFF
    from bowstring.report.forming.edge_lines import OVERDIG
    from bowstring.report.forming.plan import LIES

    said = metres_of(arcs, typed, "slab-overdig")
    foot = metres_of(arcs, typed, "slab-footing_width", bare=False) or 0.0
    past = (OVERDIG[arcs.tape.feet] if said is None else said) + max(0.0, (foot - width) / 2)
    outer, inner = (part * width for part in OFF[LIES[edge]])
    offset, toward = metres_of(arcs, typed, "offset") or 0.0, typed.get("toward")
    at = -offset if toward == "centre" else offset
    return (outer + past, past - inner) if inner - past <= at <= outer + past else None
