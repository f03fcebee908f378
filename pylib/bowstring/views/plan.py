"""The plan: string, sagitta, stakes and both arcs, to scale (or the rise stretched, and saying so)."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from bowstring.views.boxes import Box, text_width, wrap
from bowstring.views.labels import Label
from bowstring.views.paper import Answer, Paper, figures_of, fit, gap_between, round_length
from bowstring.views.sketch import ROW, Sketch
from bowstring.views.svg import SIZES, Command, Point
from bowstring.words import say

_WIDTH, _HEIGHT = 300.0, 290.0
_PER_GAP = 16.0  # drawing units of width for each gap, so that names of many stakes find room
_TANGENT = 26.0
MOST_LEVELS = 6
"""Levels whose stakes are drawn: 63 names are as many as paper and eyes have room for."""


def plan_svg(answer: Answer, *, id: str, width_mm: float | None = None) -> str:
    """Return the plan as SVG.

    Args:
        answer: ``bowstring.answer``'s dict.
        id: prefix of the ids inside, unique on the page.
        width_mm: width on paper in millimetres, otherwise the page decides.

    Raises ``ValueError`` when a figure is not finite.
    """
    sketch = Sketch(id=id, title=_title(answer), description=_description(answer))
    paper = paper_of(answer)
    draw_arcs(sketch, answer, paper)
    middle = paper.point(paper.chord / 2, 0.0)
    tip = paper.on_arc(0.0)
    draw_stakes(sketch, answer, paper, newest=None)
    sketch.lines([[paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)]], "string")
    sketch.arrow(middle, (tip[0], tip[1] - 4.0 * paper.up))
    _tangents(sketch, paper)
    _centre(sketch, paper)
    outer = _dimensions(sketch, answer, paper)
    name_stakes(sketch, answer, paper)
    _name_drawn_ends(sketch, answer, paper)
    sketch.sagitta(middle, tip, str(answer["staked_shown"]["sagitta"]))
    _walker(sketch, answer, paper, outer)
    _foot(sketch, answer, paper)
    return sketch.finish(width_mm=width_mm)


def paper_of(answer: Answer, height: float = _HEIGHT) -> Paper:
    """Return the map for a whole arc, wider where many stakes stand."""
    arc = figures_of(answer)
    across = 2 * arc["radius"] if arc["central_angle"] > 180 else arc["chord"]
    width = max(_WIDTH, _PER_GAP * (len(stakes_on_paper(answer)) - 1) * across / arc["arc_length"])
    return fit(answer, width, height * width / _WIDTH)


def hand_words(answer: Answer) -> dict[str, str]:
    """Return the words for the hand on which the curve is, and where that puts it on paper."""
    right = answer.get("side", "left") == "right"
    return {
        "hand": say("draw.hand.right" if right else "draw.hand.left"),
        "where": say("draw.below" if right else "draw.above"),
    }


def _title(answer: Answer) -> str:
    title = str(answer.get("title") or "").strip()
    return say("draw.plan.title.named", title=title) if title else say("draw.plan.title")


def _description(answer: Answer) -> str:
    shown = answer["staked_shown"]
    names = ", ".join(str(stake["name"]) for stake in stakes_on_paper(answer))
    text = say(
        "draw.plan.desc", chord=shown["chord"], sagitta=shown["sagitta"], names=names, **hand_words(answer)
    )
    for name, landmark in _landmarks(answer):
        text += say("draw.plan.desc.end", name=name, landmark=landmark)
    notes = [_scale_words(paper_of(answer))]
    if answer.get("offset"):
        notes.append(_gap_words(answer, paper_of(answer)))
    return " ".join([text, *notes])


def _drawn_ends(answer: Answer) -> dict[str, str]:
    """The drawn arc's ends, at the landmarks, by the staked arc's: other ones with an offset."""
    marks = {str(mark["name"]) for mark in answer["marks"]}
    return {name: f"{name}0" if f"{name}0" in marks else name for name in ("A", "B")}


def _name_drawn_ends(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """Mark the drawn arc's ends, from which the staked ones are set."""
    if not answer.get("offset"):
        return
    out = paper.up if gap_between(answer, paper)[0] > 0 else -paper.up
    for (end, name), at, way in zip(
        _drawn_ends(answer).items(), _ends_beside(answer, paper), (-1.0, 1.0), strict=False
    ):
        if name != end:
            x, y = at
            sketch.lines([[(x - 4, y - 4), (x + 4, y + 4)], [(x - 4, y + 4), (x + 4, y - 4)]], "")
            sketch.label(Label(name, "name", [at], (way * 0.8, 0.6 * out), 8.0), "", name)


def _landmarks(answer: Answer) -> list[tuple[str, str]]:
    ends: Mapping[str, Any] = answer.get("ends") or {}
    named = _drawn_ends(answer)
    return [(named[name], text) for name in ("A", "B") if (text := str(ends.get(name) or "").strip())]


def beside(answer: Answer, paper: Paper) -> list[Point]:
    """Return points of the drawn arc on paper, moved out where the gap would be too narrow to see."""
    gap, true = gap_between(answer, paper)
    return paper.samples(float(answer["arc"]["radius"])) if true else paper.beside(gap)


def draw_arcs(sketch: Sketch, answer: Answer, paper: Paper, classes: str = "arc") -> None:
    """Draw the staked arc and, with an offset, the drawn one beside it."""
    sketch.drawing.path(paper.curve(), f"line {classes}")
    samples = paper.samples()
    sketch.ground.take_lines(samples)
    sketch.see(*samples)
    if answer.get("offset") and classes == "arc":
        line = beside(answer, paper)
        commands: list[Command] = [("L" if index else "M", point) for index, point in enumerate(line)]
        true = gap_between(answer, paper)[1]
        sketch.drawing.path(paper.curve(float(answer["arc"]["radius"])) if true else commands, "line drawn")
        sketch.ground.take_lines(line)
        sketch.see(*line)


def stakes_on_paper(answer: Answer) -> list[Mapping[str, Any]]:
    """Return the stakes that a drawing of the whole arc has room for: those of the first ``MOST_LEVELS``."""
    return [stake for stake in answer["stakes"] if int(stake["level"]) <= MOST_LEVELS]


def draw_stakes(sketch: Sketch, answer: Answer, paper: Paper, newest: int | None) -> None:
    """Draw every stake up to a level, the newest level's bold (``None``: all alike)."""
    for stake in stakes_on_paper(answer):
        level = int(stake["level"])
        if newest is not None and level > newest:
            continue
        look = (
            "end-stake"
            if level == 0
            else "stake"
            if newest is None
            else "new"
            if level == newest
            else "older"
        )
        sketch.stake(str(stake["name"]), paper.point(float(stake["x"]), float(stake["y"])), look)


def name_stakes(sketch: Sketch, answer: Answer, paper: Paper, newest: int | None = None) -> None:
    """Write the stakes' names outside the arc, older levels first so that they stand nearest."""
    length = float(answer["staked"]["arc_length"])
    reach = 8.0
    if answer.get("offset") and newest is None:
        gap = gap_between(answer, paper)[0]
        reach += gap if 0 < gap < 16 else 0.0
    for stake in sorted(stakes_on_paper(answer), key=lambda one: int(one["level"])):
        level, name = int(stake["level"]), str(stake["name"])
        if newest is not None and level > newest:
            continue
        at = paper.point(float(stake["x"]), float(stake["y"]))
        toward = paper.outward(paper.angle_of(stake, length))
        if level == 0:
            # off the tangent: that runs under the string up to a semicircle, and the curve itself beyond
            lift = 0.39 * paper.up * (1 if paper.half_angle < math.pi / 2 else -1)
            toward = (-0.92 if name == "A" else 0.92, lift)
        kind = "end" if level == 0 else "name"
        quiet = "quiet" if newest is not None and 0 < level < newest else ""
        sketch.label(Label(name, kind, [at], toward, 9.5 if level == 0 else reach), quiet, name)


def _tangents(sketch: Sketch, paper: Paper) -> None:
    pieces = []
    for angle, way in ((-paper.half_angle, -1), (paper.half_angle, 1)):
        (x, y), (ahead_x, ahead_y) = paper.on_arc(angle), paper.ahead(angle)
        pieces.append([(x, y), (x + way * ahead_x * _TANGENT, y + way * ahead_y * _TANGENT)])
    sketch.lines(pieces, "soft")


def _centre(sketch: Sketch, paper: Paper) -> None:
    """Show the centre only where it falls inside the picture, clear of the string's middle."""
    x, y = paper.centre
    if y * paper.up > 14.0:
        sketch.lines([[(x - 4, y), (x + 4, y)], [(x, y - 4), (x, y + 4)]], "soft")
        sketch.label(Label(say("draw.centre"), "word", [(x, y)], (-1.0, 0.0)), "quiet")


def _dimensions(sketch: Sketch, answer: Answer, paper: Paper) -> float:
    """Draw half chords and chord on the string's free side; return how far out they reach (signed y)."""
    away = -paper.up
    start, end = paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)
    middle = (start[0] + end[0]) / 2
    # past a semicircle the tangents run under the string
    tangent = _TANGENT * abs(paper.ahead(paper.half_angle)[1]) if paper.half_angle > 1.5 else 0.0
    below = max((away * y for _, y in _ends_beside(answer, paper)), default=0.0)
    first = away * (14.0 + max(tangent, below))
    second = first + away * (ROW + 5)
    half = str(answer["halving"][0]["half_shown"])
    chord = say("draw.chord", shown=answer["staked_shown"]["chord"])
    whole = text_width(half, "number") + 8 <= middle - start[0]
    if whole:
        sketch.dimension((start[0], first), (middle, first), half, away)
        sketch.dimension((middle, first), (end[0], first), half, away)
    else:
        sketch.lines([[(x, first - 4), (x, first + 4)] for x in (start[0], middle, end[0])], "soft")
        sketch.dimension((start[0], first), (end[0], first), say("draw.half.each", shown=half), away)
    sketch.dimension((start[0], second), (end[0], second), chord, away)
    outer = second + away * ROW
    # what is said about the curve doesn't stand among the measures of the string
    low, high = sorted((away * 1.0, outer))
    sketch.ground.take_box(Box(start[0], low, end[0], high))
    return outer


def _ends_beside(answer: Answer, paper: Paper) -> list[Point]:
    """The ends of the drawn arc, which may lie beyond the string."""
    if not answer.get("offset"):
        return []
    line = beside(answer, paper)
    return [line[0], line[-1]]


def _walker(sketch: Sketch, answer: Answer, paper: Paper, outer: float) -> None:
    """A walker on A's line, seen from above, looking along the string, and the words that give the hand."""
    away = -paper.up
    words = say("draw.walker", hand=hand_words(answer)["hand"])
    wide = max(paper.chord * paper.scale, 230.0)
    x = min(0.0, paper.chord * paper.scale / 2 - wide / 2)
    extra = 0.625 * SIZES["word"] * (len(wrap(words, "word", wide - 20)) - 1)
    y = outer + away * (11.0 + extra)
    if x == 0.0:
        sketch.lines([[(0.0, outer - away * (2 * ROW + 12)), (0.0, y - away * 9)]], "soft dash")
    sketch.lines([[(x, y - 7), (x, y + 7)]], "arc")
    sketch.drawing.dot((x, y), 4.2, "solid")
    sketch.lines([[(x, y), (x + 19, y)], [(x + 14, y - 4), (x + 19, y), (x + 14, y + 4)]], "")
    sketch.paragraph(words, (x + 27, y - extra - 0.62 * SIZES["word"]), wide - 20)


def _scale_words(paper: Paper) -> str:
    return say("draw.scale") if paper.stretch == 1 else say("draw.stretch", factor=f"{paper.stretch:,}")


def _arcs_key(sketch: Sketch, answer: Answer, left: float, top: float, width: float) -> float:
    """Say what the arcs are, each beside a piece of its line; return where the next row may start."""
    rows = [("draw.arc", "arc", answer["staked_shown"]["radius"])]
    if answer.get("offset"):
        rows = [
            ("draw.arc.staked", "arc", answer["staked_shown"]["radius"]),
            ("draw.arc.drawn", "drawn", answer["arc_shown"]["radius"]),
        ]
    for key, line, radius in rows:
        sketch.lines([[(left + 1, top + 8.0), (left + 34, top + 8.0)]], line)
        top = sketch.paragraph(say(key, radius=radius), (left + 42, top), width - 42)
    sketch.lines([[(left + 1, top + 8.0), (left + 34, top + 8.0)]], "soft")
    return sketch.paragraph(say("draw.tangents"), (left + 42, top), width - 42)


def _gap_words(answer: Answer, paper: Paper) -> str:
    true = gap_between(answer, paper)[1]
    return say("draw.arc.gap" if true else "draw.arc.gap.forced", shown=answer["offset"]["shown"])


def _foot(sketch: Sketch, answer: Answer, paper: Paper) -> None:
    """Landmarks, scale bar and what is not to scale, under everything else."""
    edge = sketch.edge
    left, width = edge.left, edge.right - edge.left
    top = edge.bottom + 8.0
    for name, landmark in _landmarks(answer):
        top = sketch.paragraph(say("draw.end", name=name, landmark=landmark), (left, top), width)
    top = _arcs_key(sketch, answer, left, top + 3.0, width)
    number, unit, metres = round_length(110.0 / paper.scale, str(answer.get("unit", "ft-in")))
    x, y, bar = left + 1, top + 10.0, metres * paper.scale
    sketch.lines([[(x, y), (x + bar, y)], [(x, y - 5), (x, y + 5)], [(x + bar, y - 5), (x + bar, y + 5)]], "")
    sketch.drawing.lines([[(x, y), (x + bar / 2, y)]], "line arc")
    text = say(f"draw.scale.number.{unit}", number=f"{number:g}")
    box = sketch.words(text, (x + bar + 7, y + 5), "number", "start")
    words = _scale_words(paper)
    if box.right + 10 + text_width(words, "word") <= left + width:
        sketch.words(words, (box.right + 10, y + 5), "word", "start")
        top = y + 12.0
    else:
        top = sketch.paragraph(words, (left, y + 10.0), width)
    if answer.get("offset"):
        top = sketch.paragraph(_gap_words(answer, paper), (left, top), width)
    if len(answer["halving"]) > MOST_LEVELS:
        sketch.paragraph(say("draw.some_levels", level=MOST_LEVELS), (left, top), width)
