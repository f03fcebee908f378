"""The words and the most rows that a job may have, where its form has to know them, too.

They stand by themselves: who draws an empty form needs no reader of jobs.
"""

from __future__ import annotations

from collections.abc import Mapping

SIDES = ("left", "right")
OTHER = {"left": "right", "right": "left"}

DEGREE_BY = ("arc", "chord")
"""Over what a degree of curve is counted: 100 ft of arc (roads) or a chord of 100 ft (railroads), US."""

TANGENT_FROM = ("A", "B", "both")

CLASSES = ("I", "II", "III")
"""Of tapes."""

ERRORS = ("read", "scale", "stake", "line", "angle")

STOPS = ("tape", "feet")
"""What an obstacle stops: one that stops a tape stops feet too."""

EDGES = ("outside", "inside", "centre", "left", "right")
"""Where the line runs in the slab: it is the edge away from the center, the one toward it, in the middle; or the edge
on a hand, for somebody who walks from A to B."""

POURED = ("slab", "wall")
"""What is poured, where a job says it; unsaid it is a slab, but for one that is over ``DEEPEST_SLAB`` thick."""

SLOPE_ALONG = ("line",)
"""Along what the slope runs; along the middle of the slab where a job doesn't say."""

GROUND_BY = ("rod",)
"""What is given of the ground: rod readings from the job's instrument; heights where a job doesn't say."""

APRON_ALONG = ("line", "outer")
"""Along what a job gives an apron: the drawing's line, or the outer form; along that, too, where it doesn't say."""

EDGE_ALONG = ("curve", "sides", "all")
"""Along what a pad's thick edge runs: its curve alone, its sides, too, or all round."""

BACKS = ("formed", "against")
"""What closes a pad behind its string, or a slab at an end of its line, where a job says it: a form of its own (unsaid
too), or what stands there."""

LINE_ENDS = ("A", "B")
"""What a job calls the start and the end of its line, as it does those of its arc."""

DEEPEST_SLAB = 0.4
"""Metres: what is deeper is likely a wall, and no board on stakes holds it (common practice, no source)."""

BOARD_LEVELS = ("job lumber", "clear", "selected")
"""How good the lumber of a form board is."""

SLAB_KEYS = ("edge", "slab", "board", "joints", "grade")
"""A job's keys of the slab, on which no stake hangs; its width is one of the line's own."""

RECORD_KEYS = ("done", "read", "by", "date", "parent", "ticket", "called")
"""Of one crew's day, not of the arc: a link leaves them out unless it's asked for the whole job."""

WORK_KEYS = (
    "ends", "start", "ties", "found", "got", "levels", "spacing", "method", "centre", "halve_first", "parallel",
    "stations", "first_gap", "tangent_from", "tapes_from", "ground", "room", "known", "fall", "control", "done", "read",
)  # fmt: skip
"""A job's keys that are of the one arc that is staked: each arc of a line has its own."""

MOST_GOT = 1000
"""Rows: nobody measures more stakes again, and the form has as many."""

MOST_MEASURES = 8
"""Readings of one row: no step has as many."""

MOST_KNOWN = 20
MOST_OBSTACLES, MOST_CORNERS = 40, 60

PIECES = ("before", "after")
"""How the ids of another piece's fields begin: those before the arc that is staked, and those after it."""


def is_lined(typed: Mapping[str, str]) -> bool:
    """Tell whether anything is typed of another piece than the arc."""
    return any(name.partition("-")[0] in PIECES and text.strip() for name, text in typed.items())
