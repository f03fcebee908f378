"""One level of halving: its strings from stake to stake, their middles, and the sagittae that set new stakes.

Two pictures: the whole arc as it stands after this level, and one string large enough to read its numbers.
Every string of a level has the same numbers unless something else was found on the ground; then each one's
own are listed.
"""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.drawings.plan import MOST_LEVELS, draw_arcs, draw_stakes, hand_words, name_stakes, paper_of
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.strings import String, row_of, strings_of
from bowstring.drawings.svg import Point
from bowstring.drawings.triangle import WIDTH, isosceles, room_of
from bowstring.drawings.turn import turn_of
from bowstring.report.forms.answer import Answer
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
    strings = strings_of(answer, level)
    same = len({string.numbers for string in strings}) == 1
    sketch = Sketch(
        id=id,
        stopped=bool(answer["stops"]),
        title=say("draw.level.title", level=level),
        description=_description(answer, strings, same),
    )
    if level_has_room(strings) or not same:
        _whole(sketch, answer, level, strings)
    else:
        # Beyond what a drawing of the whole arc has room for one string is drawn alone.
        sketch.see((0.0, 0.0), (WIDTH, 0.0))
    if same and not strings[0].crossed:
        _detail(sketch, answer, level, strings)
    else:
        _list(sketch, strings)
    return sketch.finish(width_mm=width_mm)


def level_has_room(strings: Sequence[String]) -> bool:
    """Say whether a level's strings are few enough to be drawn and named each."""
    return len(strings) < 1 << MOST_LEVELS


def _description(answer: Answer, strings: Sequence[String], same: bool) -> str:
    count = len(strings)
    spoken = say("draw.level.strings.one") if count == 1 else say("draw.level.strings.many", count=count)
    named = strings if level_has_room(strings) else (strings[0], strings[-1])
    names = ", ".join(string.names[1] for string in named)
    parts = [say("draw.level.desc", strings=spoken, names=names, hand=hand_words(answer))]
    if same:
        parts.append(_numbers(strings[0]))
    else:
        parts.append(say("draw.level.detail.differ"))
        parts += [say("draw.level.each", name=string.names[1], numbers=_numbers(string)) for string in strings]
    stretch = paper_of(answer).stretch
    if stretch > 1:
        parts.append(say("draw.stretch.level", factor=f"{stretch:,}"))
    return " ".join(parts)


def _numbers(string: String) -> str:
    """What a string reads, as one sentence."""
    parts = [say("draw.chord", shown=string.chord)] if string.chord is not None and not string.crossed else []
    if not string.crossed:
        parts += [say("draw.half.each", shown=string.half), say("draw.sagitta.shown", shown=string.sagitta)]
    if string.half_chord is not None:
        parts.append(say("draw.half_chord.both", shown=string.half_chord))
    elif string.half_chords is not None:
        parts.append(say("draw.half_chord.two", first=string.half_chords[0], second=string.half_chords[1]))
    return ", ".join(parts) + "."


def _whole(sketch: Sketch, answer: Answer, level: int, found: Sequence[String]) -> None:
    """The whole arc: ghost of the curve, this level's strings, arrows and stakes, older stakes light."""
    paper = paper_of(answer, _HEIGHT)
    draw_arcs(sketch, answer, paper, "soft dash")
    draw_stakes(sketch, answer, paper, level)
    places = {mark["name"]: paper.point(mark["x"], mark["y"]) for mark in answer["marks"]}
    strings: list[list[Point]] = []
    ticks: list[list[Point]] = []
    tapes: list[list[Point]] = []
    arrows: list[tuple[Point, Point]] = []
    for string in found:
        stakes = (string.start, string.new, string.end)
        start, tip, end = (paper.point(one["x"], one["y"]) for one in stakes)
        if string.crossed:
            tapes.append([start, tip, end])
            continue
        middle = places.get(f"mid {string.names[1]}", ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2))
        strings.append([start, end])
        ticks.append([(middle[0], middle[1] - 3), (middle[0], middle[1] + 3)])
        arrows.append((middle, tip))
    sketch.lines(strings, "string")
    sketch.lines([*ticks, *tapes], "")
    for middle, tip in arrows:
        sketch.arrow(middle, tip)
    name_stakes(sketch, answer, paper, level)
    if paper.stretch > 1:
        edge = sketch.edge
        words = say("draw.stretch.level", factor=f"{paper.stretch:,}")
        sketch.paragraph(words, (edge.left, edge.bottom + 3.0), edge.right - edge.left)


def _detail(sketch: Sketch, answer: Answer, level: int, strings: Sequence[String]) -> None:
    """One string of the level, large, with its numbers."""
    row, string, count = row_of(answer, level), strings[0], len(strings)
    key = "draw.level.detail." + {1: "one", 2: "two"}.get(count, "many")
    edge, turn = sketch.edge, turn_of(answer["side"])
    width = max(edge.right - edge.left, WIDTH + 40)
    heading = say(key, start=string.names[0], end=string.names[2], count=count)
    top = sketch.paragraph(heading, (edge.left, edge.bottom + 14.0), width)
    left = max(edge.left + 24.0, (edge.left + edge.right - WIDTH) / 2)
    over, under = room_of(row)
    isosceles(sketch, row, string, turn, (left if turn > 0 else left + WIDTH, top + over))
    if string.half_chord is not None:
        note = say("draw.half_chords", name=string.names[1], shown=string.half_chord)
        sketch.paragraph(note, (edge.left, max(sketch.edge.bottom, top + over + under) + 4.0), width)


def _list(sketch: Sketch, strings: Sequence[String]) -> None:
    """Every string's own numbers, one under the other."""
    edge = sketch.edge
    width = max(edge.right - edge.left, 300.0)
    top = edge.bottom + 12.0
    if len(strings) > 1:
        top = sketch.paragraph(say("draw.level.detail.differ"), (edge.left, top), width)
    for string in strings:
        text = say("draw.level.each", name=string.names[1], numbers=_numbers(string))
        top = sketch.paragraph(text, (edge.left, top + 4.0), width, "number")
