"""The slider's table: the arc on one string bent from flat to past a half circle, and what a quarter misses there.

A row a degree; the script shows the texts of the nearest row and puts only the drawing between two rows.
"""

from __future__ import annotations

from math import degrees, hypot, radians, sin, tan
from typing import TypedDict

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.wall.hand_sum import next_sagitta
from bowstring.wall.shape import Given, share
from bowstring.words import say

FIRST, BENDS = 2, 220
"""The central angles, degrees, of the first row and the last."""
TRACK = (110.0, 1170.0, 636.0)
"""The slider's track: from, to, and at which height."""
ENDS = (706.0, 1174.0, 474.0)
"""The string's ends and its height on the board."""
JOB_MARK = "shaft"
TEXTS = (
    (48.0, 190.0, 34.0, "start", ""),
    (48.0, 300.0, 84.0, "start", "w-hot"),
    (48.0, 346.0, 28.0, "start", "w-quiet"),
    (48.0, 412.0, 34.0, "start", ""),
    (48.0, 462.0, 34.0, "start", ""),
)
"""Where a row's texts stand: x, y, size, anchor, class."""


class BendRow(TypedDict):
    """One bend: what is drawn, in the board's units, and its texts as they are shown."""

    radius: list[float]
    large: int
    m: Point
    q: Point
    foot: Point
    rule: Point
    texts: list[str]


class Table(TypedDict):
    """The slider's table; ``job``: the row, with a part of the way to the next, of the job's own bend."""

    ends: tuple[float, float, float]
    track: tuple[float, float, float]
    texts: tuple[tuple[float, float, float, str, str], ...]
    rows: list[BendRow]
    job: float


def bent(given: Given, angle: float) -> Given:
    """Return the arc of a central angle (degrees) on the same string: its mid-ordinate is a tan(I/4)."""
    return Given(given.chord, given.half * tan(radians(angle) / 4), given.tape)


def miss_at(given: Given, angle: float) -> float:
    """Return by how much a quarter is too little, metres: s (1/(4 cos²(I/8)) - 1/4) = s tan²(I/8) / 4."""
    return bent(given, angle).sagitta * tan(radians(angle) / 8) ** 2 / 4


def slider(given: Given) -> Table:
    """Return the table on this string."""
    job = 2 * degrees(given.arc.half_angle)
    rows = [_row(given, angle) for angle in range(FIRST, BENDS + 1)]
    return {"ends": ENDS, "track": TRACK, "texts": TEXTS, "rows": rows, "job": min(max(job, FIRST), BENDS) - FIRST}


def _row(given: Given, angle: int) -> BendRow:
    one = bent(given, angle)
    scale = (ENDS[1] - ENDS[0]) / one.chord
    top = Place(one.half, one.sagitta)
    long, exact, rule = hypot(one.half, one.sagitta), next_sagitta(one), one.sagitta / 4
    foot = Place(top.x / 2, top.y / 2)
    out = Place(-top.y / long, top.x / long)  # square off the half chord
    places = {"m": top, "foot": foot, "q": foot.plus(out, exact), "rule": foot.plus(out, rule)}
    board = {name: (round(ENDS[0] + scale * at.x, 2), round(ENDS[2] - scale * at.y, 2)) for name, at in places.items()}
    radius = round(scale * one.chord / 2 / sin(radians(angle) / 2), 3)
    texts = [
        say("lesson.4.row_bend", angle=str(angle), share=f"{share(radians(angle) / 2):.4f}"),
        given.fine(exact - rule),
        say("lesson.4.row_miss"),
        say("lesson.4.row_exact", exact=given.fine(exact)),
        say("lesson.4.row_quarter", quarter=given.fine(rule)),
    ]
    return {
        "radius": [radius],
        "large": int(angle > 180),
        "m": board["m"],
        "q": board["q"],
        "foot": board["foot"],
        "rule": board["rule"],
        "texts": texts,
    }
