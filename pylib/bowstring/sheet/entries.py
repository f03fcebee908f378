"""How a job's entries were read, each under a name that somebody with the drawing knows."""

from __future__ import annotations

import re
from collections.abc import Callable

from bowstring.geometry.arc import MEASURES
from bowstring.job.arc_given import ALIASES
from bowstring.report.alone import edges_of
from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Table
from bowstring.words import is_said, say

_CORNER = re.compile(r"(?<=outline)\[.*")
_NUMBER = re.compile(r"\[([0-9]+)\]")


def entries(answer: Answer, name: Callable[[str], str] | None = None) -> Table:
    """Return the table of an answer's entries; ``name`` turns an entry's place in the job into what it's called."""
    rows: list[list[str]] = []
    before, edges = "", edges_of(answer)
    wall, lined = edges is not None and bool(edges["faces"]), answer["lined"] is not None
    for row in answer["readings"]:
        place = _CORNER.sub("", row["field"])
        if place != row["field"] and before == place:  # an outline is one row, however many corners
            rows[-1] = [rows[-1][0], f"{rows[-1][1]}; {row['typed']}", f"{rows[-1][2]}; {row['text']}"]
        else:
            called = _of_line(place, name) if lined else ""
            called = called or (_of_wall(place, name) if wall else (name or entry_name)(place))
            rows.append([called, row["typed"], row["text"]])
        before = place
    return Table([say("sheet.field"), say("sheet.typed"), say("sheet.read_as")], rows, say("sheet.readings_caption"))


def _of_line(place: str, name: Callable[[str], str] | None) -> str:
    """What an entry is called along a line of several pieces, empty where it is called the same as of one arc."""
    key = f"entry.of_line.{place}"
    told = say(key) if is_said(key) else ""
    return told[:1].upper() + told[1:] if name else told


def _of_wall(place: str, name: Callable[[str], str] | None) -> str:
    """What an entry is called where a wall is poured: a slab's width is how thick it is, its thickness how high."""
    key = f"entry.of_wall.{place.removeprefix('slab.')}"
    if place not in ("width", "slab.end_width", "slab.thickness"):
        return (name or entry_name)(place)
    told = say(key)
    return told[:1].upper() + told[1:] if name else told


def entry_name(place: str) -> str:
    """Return an entry's plain name, its place in the job where it has none.

    >>> entry_name("arc.rise"), entry_name("ground[0].at[1]"), entry_name("fair")
    ('mid-ordinate', 'obstacle 1: middle, y', 'tolerance on the fair curve')
    """
    group, _, measure = place.partition(".")
    measure = ALIASES.get(measure, measure)
    if group == "arc" and measure in MEASURES:
        return say(f"measure.{measure}")
    numbers = [int(number) for number in _NUMBER.findall(place)]
    key = f"entry.{_NUMBER.sub('', place)}"
    if not is_said(key):
        return place
    first, last = (numbers[0], numbers[-1]) if numbers else (0, 0)
    return say(key, first=first + 1, second=last + 1, axis="xy"[min(last, 1)])
