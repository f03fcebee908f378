"""What the numbers face asks: the measures of the arc as rows, every other question as a line that opens a panel."""

from __future__ import annotations

ROWS = ("radius", "chord", "sagitta", "arc_length", "central_angle", "tangent_length", "external")
"""The measures of an arc in the order in which they stand on the face."""

ASKS = ("pieces", "hand", "line", "slab", "slope", "ends", "way", "fine", "method", "rest")
"""The other questions in their order. Whose drawing begins with a straight looks for it first, before any number of an
arc; the hand and the line are never assumed."""

LATE = ("slab", "slope")
"""Those that are shown once there is an arc: no stake hangs on them, and an empty face stays short."""

_HEADS = {
    "hand": ("side", "turn"),
    "line": ("drawn_to", "driven", "diameter", "offset", "toward"),
    "slab": ("width", "edge", "slab", "board", "joints"),
    "slope": ("grade",),
    "pieces": ("before", "after", "kink", "station"),
    "ends": ("ends", "start", "found"),
    "way": ("centre", "ground", "room"),
    "fine": ("unit", "mark", "tolerance", "fair", "spacing", "levels", "tape", "hands"),
    "method": (*("method", "stations", "halve_first", "tangent_from", "tapes_from", "parallel", "first_gap"),),
}
"""Each panel's fields by the first piece of their ids; every other field but the measures stands in the last one."""


def panel_of(field: str) -> str:
    """Return the panel in which a field stands, by its id; empty for a measure of the face.

    >>> panel_of("found-chord-0"), panel_of("arc-chord"), panel_of("arc-points-0-0")
    ('ends', '', 'rest')
    """
    if field.startswith("arc-") and field[len("arc-") :] in ROWS:
        return ""
    head = field.partition("-")[0]
    return next((panel for panel, heads in _HEADS.items() if head in heads), "rest")
