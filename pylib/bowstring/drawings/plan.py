"""The plan: string, sagitta, stakes and both arcs, to scale (or the rise stretched, and saying so)."""

from __future__ import annotations

import math

from bowstring.drawings.boxes import Box, text_width, wrap
from bowstring.drawings.labels import FAINT, Label
from bowstring.drawings.obstacles import draw_obstacles, name_obstacles, obstacles_near, words_of
from bowstring.drawings.offstring import draw_string, name_string, places_of_string, words_of_string
from bowstring.drawings.paper import (
    Leg,
    Paper,
    drawn_ends,
    drawn_line,
    figures_of,
    fit,
    gap_between,
    legs_of,
    places_of_ends,
    reach_of,
    round_length,
)
from bowstring.drawings.sketch import MARGIN, ROW, Sketch
from bowstring.drawings.straights import draw_straights, name_straights
from bowstring.drawings.svg import SIZES, Command, Point
from bowstring.drawings.turn import turn_of
from bowstring.methods.catalogue import BY_NAME
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.arc import OffsetPart
from bowstring.report.forms.stakes import StakeRow
from bowstring.words import say

_WIDTH, _HEIGHT = 262.0, 290.0
_NARROWEST = 180.0
WIDEST = 339.0
"""Drawing units: a plan of few stakes is no wider with its names, so that 300 pixels are room enough for its words."""
_WITH_CORNER = 246.0  # height of a plan that reaches to the corner of the straights
_LEAST_PART = 0.62  # of the arc's size: where the corner would make it smaller than this, the corner is left off
_LEAST_PER_GAP = 12.0
_PER_GAP = 16.0  # drawing units of width for each gap, so that names of many stakes find room
_TANGENT = 26.0
_FLAT = 34.0  # a sagitta drawn shorter has no room for its text beside its arrow,
_BEHIND = 25.0  # so that the measures leave it some behind the string
_CLOSE = 36.0
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
    width = _WIDTH
    while True:
        sketch = _draw(answer, id, _paper(answer, width))
        excess = sketch.edge.right - sketch.edge.left + 2 * MARGIN - WIDEST
        if excess <= 0 or not _crowd(answer) < width > _NARROWEST:
            return sketch.finish(width_mm=width_mm)
        width = max(width - excess - 1.0, _NARROWEST)


def _draw(answer: Answer, id: str, paper: Paper) -> Sketch:
    sketch = Sketch(
        id=id, title=plan_title(answer), description=plan_description(answer, paper), stopped=bool(answer["stops"])
    )
    legs, near = legs_of(answer, paper), obstacles_near(answer, paper)
    draw_obstacles(sketch, near)
    draw_arcs(sketch, answer, paper)
    middle = paper.point(paper.chord / 2, 0.0)
    tip = paper.on_arc(0.0)
    draw_stakes(sketch, answer, paper, newest=None)
    sketch.lines([[paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)]], "string")
    sketch.arrow(middle, (tip[0], tip[1] + 4.0))
    draw_string(sketch, answer, paper)
    if legs:
        draw_straights(sketch, legs)
    else:
        _tangents(sketch, paper)
    if answer["offset"]:
        for at in places_of_ends(answer, paper):
            sketch.mark(at)
    _centre(sketch, paper)
    outer = _dimensions(sketch, answer, paper, legs, [corner for one in near for corner in one.outline])
    _walker(sketch, answer, paper, outer)
    name_stakes(sketch, answer, paper)
    name_drawn_ends(sketch, answer, paper)
    name_straights(sketch, legs)
    name_string(sketch, answer, paper)
    sketch.sagitta(middle, tip, _sagitta_shown(answer))
    legend = name_obstacles(sketch, near, paper.point(0.0, 0.0)[1])
    _foot(sketch, answer, paper, [*legend, *words_of(answer, near)])
    return sketch


def _sagitta_shown(answer: Answer) -> str:
    """The first sagitta as the steps have it: where M stands, once it was got elsewhere."""
    got = next((step for step in answer["steps"] if step["kind"] == "stake_got" and step["level"] == 1), None)
    return got["measures"][1]["shown"] if got else answer["staked_shown"]["sagitta"]


def paper_of(answer: Answer, height: float = _HEIGHT, width: float = _WIDTH, reach: float = 0.0) -> Paper:
    """Return the map for a whole arc, wider where many stakes stand; ``reach`` is ``fit``'s."""
    wide = max(width, _crowd(answer))
    return fit(answer, wide, height * max(1.0, wide / _WIDTH), reach)


def _crowd(answer: Answer) -> float:
    """The width that the stakes need so that there is room for their names."""
    arc = figures_of(answer)
    across = 2 * arc["radius"] if arc["central_angle"] > 180 else arc["chord"]
    return _PER_GAP * _gaps(answer) * across / arc["arc_length"]


def _gaps(answer: Answer) -> int:
    return len(stakes_on_paper(answer)) - 1


def _paper(answer: Answer, width: float) -> Paper:
    """The map for the plan: with the straights that the ends are found from unless the arc gets too small."""
    alone, reach = paper_of(answer, width=width), reach_of(answer)
    if not reach:
        return alone
    paper = paper_of(answer, _WITH_CORNER, width, reach)
    per_gap = figures_of(answer)["arc_length"] * paper.scale / _gaps(answer)
    small = paper.scale < _LEAST_PART * alone.scale or per_gap < _LEAST_PER_GAP
    return alone.without_corner() if small and answer["start"] == "corner" else paper


def hand_words(answer: Answer) -> str:
    """Return the sentences for the hand on which the curve is, and where that puts it on paper."""
    if answer["side"] is None:
        return answer["hand"]
    return " ".join([answer["hand"], say(f"draw.at_{'left' if turn_of(answer['side']) > 0 else 'right'}")])


def plan_title(answer: Answer) -> str:
    """Return what a plan is called, for whoever can't see it."""
    title = answer["title"]
    return say("draw.plan.title.named", title=title) if title else say("draw.plan.title")


def plan_description(answer: Answer, paper: Paper) -> str:
    """Return what a plan shows, for whoever can't see it."""
    shown = answer["staked_shown"]
    names = ", ".join(stake["name"] for stake in stakes_on_paper(answer))
    text = say("draw.plan.desc", chord=shown["chord"], sagitta=shown["sagitta"], names=names, hand=hand_words(answer))
    for name, landmark in _landmarks(answer):
        text += say("draw.plan.desc.end", name=name, landmark=landmark)
    start, end = drawn_ends(answer).values()
    notes = [_scale_words(paper)]
    if legs_of(answer, paper) and answer["start"] == "corner":
        key = "draw.plan.desc.corner.off" if paper.off else "draw.plan.desc.corner"
        notes.insert(0, say(key, start=start, end=end))
    elif legs_of(answer, paper):
        notes.insert(0, say("draw.plan.desc.one_end", start=start, end=end))
    if answer["offset"]:
        notes.append(_gap_words(answer, paper, answer["offset"]))
    return " ".join([text, *notes])


def name_drawn_ends(sketch: Sketch, answer: Answer, paper: Paper, *, aside: bool = False) -> None:
    """Name the drawn arc's ends, from which the staked ones are set; ``aside``: beside them rather than under."""
    out = -1 if gap_between(answer, paper)[0] > 0 else 1
    places = places_of_ends(answer, paper)
    for (end, name), at, way in zip(drawn_ends(answer).items(), places, (-paper.turn, paper.turn), strict=True):
        if name != end:
            # past a semicircle the arc itself stands over its end
            toward = (way * 0.8, 0.6 * out) if paper.half_angle < math.pi / 2 else (way * 0.9, 0.4)
            toward = (way * 0.97, 0.25) if aside else toward
            sketch.label(Label(name, "name", [at], toward, 8.0), "", name)


def _landmarks(answer: Answer) -> list[tuple[str, str]]:
    ends = answer["ends"]
    named = drawn_ends(answer)
    return [(named[end], text) for end, text in (("A", ends["A"]), ("B", ends["B"])) if text]


def draw_arcs(sketch: Sketch, answer: Answer, paper: Paper, classes: str = "arc") -> None:
    """Draw the staked arc and, with an offset, the drawn one beside it."""
    sketch.drawing.path(paper.curve(), f"line {classes}")
    samples = paper.samples()
    sketch.ground.take_lines(samples)
    sketch.see(*samples)
    if answer["offset"] and classes == "arc":
        line = drawn_line(answer, paper)
        commands: list[Command] = [("L" if index else "M", point) for index, point in enumerate(line)]
        true = gap_between(answer, paper)[1]
        sketch.drawing.path(paper.curve(answer["arc"]["radius"]) if true else commands, "line drawn")
        sketch.ground.take_lines(line, FAINT)
        sketch.see(*line)


def stakes_on_paper(answer: Answer) -> list[StakeRow]:
    """Return the stakes that a drawing of the whole arc has room for: those of the first ``MOST_LEVELS``."""
    stakes = [stake for stake in answer["stakes"] if stake["level"] <= MOST_LEVELS]
    every = -(-(len(stakes) - 1) // (1 << MOST_LEVELS))  # of stakes that were set in one round, each so many-th
    return stakes if every <= 1 else [*stakes[:-1:every], stakes[-1]]


def draw_stakes(sketch: Sketch, answer: Answer, paper: Paper, newest: int | None) -> None:
    """Draw every stake up to a level, the newest level's bold (``None``: all alike)."""
    for stake in stakes_on_paper(answer):
        level = stake["level"]
        if newest is not None and level > newest:
            continue
        look = "end-stake" if level == 0 else "stake" if newest is None else "new" if level == newest else "older"
        sketch.stake(stake["name"], paper.point(stake["x"], stake["y"]), look)


def name_stakes(sketch: Sketch, answer: Answer, paper: Paper, newest: int | None = None) -> None:
    """Write the stakes' names outside the arc, older levels first so that they stand nearest."""
    length = float(answer["staked"]["arc_length"])
    reach = 8.0
    if answer["offset"] and newest is None:
        gap = gap_between(answer, paper)[0]
        reach += gap if 0 < gap < 16 else 0.0
    under = newest is None and _named_under(answer, paper)
    for stake in sorted(stakes_on_paper(answer), key=lambda one: int(one["level"])):
        level, name = int(stake["level"]), str(stake["name"])
        at = paper.point(float(stake["x"]), float(stake["y"]))
        if level == 0:
            sketch.label(Label(name, "end", [at], _toward_end_name(name, paper, under), 9.5), "", name)
        elif newest is None or level <= newest:
            toward = paper.outward(paper.angle_of(stake, length))
            quiet = "quiet" if newest is not None and level < newest else ""
            sketch.label(Label(name, "name", [at], toward, reach), quiet, name)


def _toward_end_name(name: str, paper: Paper, under: bool) -> Point:
    """The direction in which the name of A or B stands; ``under``: under the string."""
    way = (-1.0 if name == "A" else 1.0) * paper.turn
    if not under:
        # off the tangent: that runs under the string up to a semicircle, and the curve itself beyond
        return way * 0.92, -0.39 if paper.half_angle < math.pi / 2 else 0.39
    if paper.half_angle > 0.7 * math.pi:  # the drawn arc's end is itself under the string
        return way * -0.5, -0.85
    # beside the drawn arc's end it would be taken for that one's name
    return way * 0.3, 0.95


def _named_under(answer: Answer, paper: Paper) -> bool:
    """Whether A and B are named under the string: the drawn arc's ends stand close beside them."""
    return bool(answer["offset"]) and 0 < gap_between(answer, paper)[0] < _CLOSE


def _tangents(sketch: Sketch, paper: Paper) -> None:
    pieces = []
    for angle, way in ((-paper.half_angle, -1), (paper.half_angle, 1)):
        (x, y), (ahead_x, ahead_y) = paper.on_arc(angle), paper.ahead(angle)
        pieces.append([(x, y), (x + way * ahead_x * _TANGENT, y + way * ahead_y * _TANGENT)])
    sketch.lines(pieces, "soft")


def _centre(sketch: Sketch, paper: Paper) -> None:
    """Show the centre only where it falls inside the picture, clear of the string's middle."""
    x, y = paper.centre
    if y < -14.0:
        sketch.lines([[(x - 4, y), (x + 4, y)], [(x, y - 4), (x, y + 4)]], "soft")
        sketch.label(Label(say("draw.centre"), "word", [(x, y)], (-1.0, 0.0)), "quiet")


def _dimensions(sketch: Sketch, answer: Answer, paper: Paper, legs: list[Leg], corners: list[Point]) -> float:
    """Draw half chords and chord on the string's free side, clear of the ``corners`` of what is in the way; return how
    far down they reach."""
    start, end = sorted([paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)])
    # past a semicircle the tangents run under the string
    tangent = _TANGENT * abs(paper.ahead(paper.half_angle)[1]) if paper.half_angle > 1.5 and not legs else 0.0
    beside = [*places_of_ends(answer, paper), *places_of_string(answer, paper), *(leg.end for leg in legs), *corners]
    below = max([0.0, *(y for x, y in beside if start[0] - 12 < x < end[0] + 12)])
    names = 26.0 if _named_under(answer, paper) else 0.0
    flat = _BEHIND if abs(paper.on_arc(0.0)[1] - start[1]) < _FLAT else 0.0
    first = 14.0 + max(tangent, below, names, flat)
    second = first + ROW + 5
    half = answer["halving"][0]["half_shown"]
    chord = say("draw.chord", shown=answer["staked_shown"]["chord"])
    sketch.halves(start[0], end[0], first, half, 1)
    sketch.dimension((start[0], second), (end[0], second), chord, 1)
    outer = second + ROW
    # what is said about the curve doesn't stand among the measures of the string
    top = first - 11.0 if below > 0 or names or flat else 1.0
    sketch.ground.take_box(Box(start[0], top, end[0], outer))
    return outer


def _walker(sketch: Sketch, answer: Answer, paper: Paper, outer: float) -> None:
    """A walker on A's line, seen from above, looking along the string, and the words that give the hand."""
    words, turn = answer["hand"], paper.turn
    wide = max(paper.chord * paper.scale, 230.0)
    x = turn * min(0.0, paper.chord * paper.scale / 2 - wide / 2)
    extra = 0.625 * SIZES["word"] * (len(wrap(words, "word", wide - 20)) - 1)
    y = outer + 11.0 + extra
    if x == 0.0:
        sketch.lines([[(0.0, outer - (2 * ROW + 12)), (0.0, y - 9)]], "soft dash")
    sketch.lines([[(x, y - 7), (x, y + 7)]], "arc")
    sketch.drawing.dot((x, y), 4.2, "solid")
    tip = x + turn * 19
    sketch.lines([[(x, y), (tip, y)], [(tip - turn * 5, y - 4), (tip, y), (tip - turn * 5, y + 4)]], "")
    anchor = "start" if turn > 0 else "end"
    sketch.paragraph(words, (x + turn * 27, y - extra - 0.62 * SIZES["word"]), wide - 20, anchor=anchor)


def _scale_words(paper: Paper) -> str:
    return say("draw.scale") if paper.stretch == 1 else say("draw.stretch", factor=f"{paper.stretch:,}")


def _key(sketch: Sketch, answer: Answer, paper: Paper, left: float, top: float, width: float) -> float:
    """Say what the lines are, each beside a piece of its line; return where the next row may start."""
    staked, drawn = answer["staked_shown"]["radius"], answer["arc_shown"]["radius"]
    rows = [(say("draw.arc", radius=staked), "arc")]
    if answer["offset"]:
        rows = [(say("draw.arc.staked", radius=staked), "arc"), (say("draw.arc.drawn", radius=drawn), "drawn")]
    if answer["parallel"] is not None:
        rows.append((words_of_string(answer), "string"))
    rows.append(_straights_words(answer, paper))
    for words, line in rows:
        sketch.lines([[(left + 1, top + 8.0), (left + 34, top + 8.0)]], line)
        top = sketch.paragraph(words, (left + 42, top), width - 42)
    return top


def _straights_words(answer: Answer, paper: Paper) -> tuple[str, str]:
    """What is said of the straights in the key, and how their line is drawn."""
    if not legs_of(answer, paper):
        return say("draw.tangents"), "soft"
    if answer["start"] == "corner":
        return say("draw.straights.off" if paper.off else "draw.straights.corner"), "soft dash"
    start, end = drawn_ends(answer).values()
    return say("draw.straights.one_end", start=start, end=end), "soft dash"


def _gap_words(answer: Answer, paper: Paper, offset: OffsetPart) -> str:
    true = gap_between(answer, paper)[1]
    return say("draw.arc.gap" if true else "draw.arc.gap.forced", shown=offset["shown"])


def _foot(sketch: Sketch, answer: Answer, paper: Paper, legend: list[str]) -> None:
    """Landmarks, the obstacles' legend, scale bar and what is not to scale, under everything else."""
    edge = sketch.edge
    left, width = edge.left, edge.right - edge.left
    top = edge.bottom + 8.0
    for name, landmark in _landmarks(answer):
        top = sketch.paragraph(say("draw.end", name=name, landmark=landmark), (left, top), width)
    for row in legend:
        top = sketch.paragraph(row, (left, top), width)
    top = _key(sketch, answer, paper, left, top + 3.0, width)
    number, unit, metres = round_length(110.0 / paper.scale, answer["unit"])
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
    if answer["offset"]:
        top = sketch.paragraph(_gap_words(answer, paper, answer["offset"]), (left, top), width)
    if len(stakes_on_paper(answer)) < len(answer["stakes"]):
        if not BY_NAME[answer["method"]].halves:
            sketch.paragraph(say("draw.some_stakes"), (left, top), width)
            return
        sketch.paragraph(say("draw.some_levels", level=MOST_LEVELS), (left, top), width)
