"""One level of halving: its strings from stake to stake, their middles, and the sagittae that set new stakes.

Two pictures: the whole arc as it stands after this level, and one string large enough to read its numbers.
Every string of a level has the same numbers unless something else was found on the ground; then each one's
own are listed.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bowstring.views.paper import Answer
from bowstring.views.plan import draw_arcs, draw_stakes, hand_words, name_stakes, paper_of
from bowstring.views.sketch import Sketch
from bowstring.views.svg import Point
from bowstring.views.triangle import WIDTH, first_string, isosceles, room_of, row_of, strings_of, up_of
from bowstring.words import say

_HEIGHT = 200.0
Numbers = tuple[str, str, str]
"""What a string reads: chord, half, sagitta."""


def level_svg(answer: Answer, level: int, *, id: str, width_mm: float | None = None) -> str:
    """Return the drawing of one level as SVG.

    Args:
        answer: ``bowstring.answer``'s dict.
        level: from 1 to the number of halving rows.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``KeyError`` for a level that isn't there.
    """
    row = row_of(answer, level)
    numbers = numbers_of(answer, level)
    same = len(set(numbers.values())) == 1
    if same:
        chord, half, sagitta = next(iter(numbers.values()))
        row = {**row, "chord_shown": chord, "half_shown": half, "sagitta_shown": sagitta}
    sketch = Sketch(
        id=id,
        title=say("draw.level.title", level=level),
        description=_description(answer, row, numbers, same),
    )
    _whole(sketch, answer, level)
    if same:
        _detail(sketch, answer, level, row, len(numbers))
    else:
        _list(sketch, numbers)
    return sketch.finish(width_mm=width_mm)


def numbers_of(answer: Answer, level: int) -> dict[str, Numbers]:
    """Return what is read at each new stake of a level: the steps' own numbers, else the row's."""
    row = row_of(answer, level)
    read: dict[frozenset[str], str] = {}
    for step in answer.get("steps") or ():
        for measure in step["measures"]:
            if "distance" in measure:
                read[frozenset((str(measure["from"]), str(measure["to"])))] = str(measure["shown"])
    numbers = {}
    for before, new, after in strings_of(answer, level):
        start, name, end = str(before["name"]), str(new["name"]), str(after["name"])
        middle = f"mid {name}"
        numbers[name] = (
            read.get(frozenset((start, end)), str(row["chord_shown"])),
            read.get(frozenset((start, middle)))
            or read.get(frozenset((middle, end)), str(row["half_shown"])),
            read.get(frozenset((middle, name)), str(row["sagitta_shown"])),
        )
    return numbers


def _description(answer: Answer, row: Mapping[str, Any], numbers: Mapping[str, Numbers], same: bool) -> str:
    count = len(numbers)
    strings = say("draw.level.strings.one") if count == 1 else say("draw.level.strings.many", count=count)
    text = say("draw.level.desc", strings=strings, names=", ".join(numbers), **hand_words(answer))
    if same:
        text += say(
            "draw.level.desc.same",
            chord=row["chord_shown"],
            half=row["half_shown"],
            sagitta=row["sagitta_shown"],
            half_chord=row["half_chord_shown"],
        )
    else:
        text += say("draw.level.desc.each", each="; ".join(_each(numbers)))
    stretch = paper_of(answer).stretch
    return text if stretch == 1 else f"{text} {say('draw.stretch.level', factor=f'{stretch:,}')}"


def _each(numbers: Mapping[str, Numbers]) -> list[str]:
    return [
        say("draw.level.each", name=name, chord=chord, half=half, sagitta=sagitta)
        for name, (chord, half, sagitta) in numbers.items()
    ]


def _whole(sketch: Sketch, answer: Answer, level: int) -> None:
    """The whole arc: ghost of the curve, this level's strings, arrows and stakes, older stakes light."""
    paper = paper_of(answer, _HEIGHT)
    draw_arcs(sketch, answer, paper, "soft dash")
    draw_stakes(sketch, answer, paper, level)
    places = {str(mark["name"]): paper.point(float(mark["x"]), float(mark["y"])) for mark in answer["marks"]}
    strings, ticks = [], []
    arrows: list[tuple[Point, Point]] = []
    for before, new, after in strings_of(answer, level):
        start, tip, end = (paper.point(float(one["x"]), float(one["y"])) for one in (before, new, after))
        middle = places.get(f"mid {new['name']}", ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2))
        strings.append([start, end])
        ticks.append([(middle[0], middle[1] - 3), (middle[0], middle[1] + 3)])
        arrows.append((middle, tip))
    sketch.lines(strings, "string")
    sketch.lines(ticks, "")
    for middle, tip in arrows:
        sketch.arrow(middle, tip)
    name_stakes(sketch, answer, paper, level)
    if paper.stretch > 1:
        edge = sketch.edge
        words = say("draw.stretch.level", factor=f"{paper.stretch:,}")
        sketch.paragraph(words, (edge.left, edge.bottom + 3.0), edge.right - edge.left)


def _detail(sketch: Sketch, answer: Answer, level: int, row: Mapping[str, Any], count: int) -> None:
    """One string of the level, large, with its numbers."""
    names = first_string(answer, level)
    key = "draw.level.detail." + {1: "one", 2: "two"}.get(count, "many")
    edge, up = sketch.edge, up_of(answer)
    width = max(edge.right - edge.left, WIDTH + 40)
    heading = say(key, start=names[0], end=names[2], count=count)
    top = sketch.paragraph(heading, (edge.left, edge.bottom + 14.0), width)
    left = max(edge.left + 24.0, (edge.left + edge.right - WIDTH) / 2)
    over, under = room_of(row, up)
    isosceles(sketch, row, names, up, (left, top + over))
    note = say("draw.half_chords", name=names[1], shown=row["half_chord_shown"])
    sketch.paragraph(note, (edge.left, max(sketch.edge.bottom, top + over + under) + 4.0), width)


def _list(sketch: Sketch, numbers: Mapping[str, Numbers]) -> None:
    """Every string's own numbers, one under the other."""
    edge = sketch.edge
    width = max(edge.right - edge.left, 300.0)
    top = sketch.paragraph(say("draw.level.detail.differ"), (edge.left, edge.bottom + 12.0), width)
    for line in _each(numbers):
        top = sketch.paragraph(line, (edge.left, top + 4.0), width, "number")
