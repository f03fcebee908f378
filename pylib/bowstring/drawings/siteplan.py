"""The plan of the site, true to scale: the arc and its stakes, what is in the way, and what that stops.

It is drawn on, so its frame carries what turns a point of the drawing back into the chord's frame: ``data-scale``
(drawing units per metre) and ``data-turn`` (1: B lies to the right of A, -1: to the left). A is the drawing's origin,
and the curve's side is up.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.drawings.areas import draw_area
from bowstring.drawings.boxes import Box
from bowstring.drawings.labels import Label
from bowstring.drawings.offstring import draw_string, name_string
from bowstring.drawings.paper import Paper, figures_of, round_length
from bowstring.drawings.plan import hand_words, stakes_on_paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Command, Point
from bowstring.drawings.turn import turn_of
from bowstring.methods.plain import CENTRE
from bowstring.report.alone import edges_of
from bowstring.report.forms.advice import BlockRow
from bowstring.report.forms.answer import Answer
from bowstring.report.own import own_row
from bowstring.words import say

WIDTH, HEIGHT = 300.0, 330.0
"""The most that the site may take on paper, drawing units: a phone shows its words at a size that can be read."""

_MARGIN = 0.16  # of the site's size: there is room for what stands beside
_BEHIND = 0.45  # of the arc's size: what is seen behind the chord where the centre is too far
_SEEN = 0.7  # of the arc's size: a centre farther behind isn't worth the room
_SAME_SCALE = 0.9  # of the scale: so much smaller may the rest be drawn for the centre to be seen
_ROOM = 1.0
"""Metres past the work's outer edge, some 3 ft: a tree so near stands in the way of its forms (common practice, no
source)."""
_SAMPLES = 32  # of an edge
_CROSS = 6.0
_MOST_BLOCKS = 24


@dataclass(frozen=True)
class Site:
    """The ground that is shown: its map onto paper, and its box on paper; whether the centre is in it."""

    paper: Paper
    box: Box
    centre: bool


def site_plan_svg(answer: Answer, *, id: str) -> str:
    """Return the plan of an answer's site as SVG; raises ``ValueError`` when a figure is not finite."""
    site = _site(answer)
    sketch = Sketch(
        id=id, title=say("siteplan.title"), description=_description(answer, site), stopped=bool(answer["stops"])
    )
    for obstacle in answer["site"]["obstacles"]:
        draw_area(sketch, _on_paper(site.paper, obstacle["outline"]), obstacle["stops"])
    _frame(sketch, site)
    sketch.lines([[site.paper.point(0.0, 0.0), site.paper.point(site.paper.chord, 0.0)]], "string")
    draw_string(sketch, answer, site.paper)
    for off in _offs(answer):
        if off:
            sketch.lines([_on_paper(site.paper, _edge(answer, off))], "soft")
    sketch.drawing.path(site.paper.curve(), "line arc")
    sketch.ground.take_lines(site.paper.samples())
    _stakes(sketch, answer, site)
    _stopped(sketch, answer, site)
    _names(sketch, answer, site)
    name_string(sketch, answer, site.paper)
    _foot(sketch, answer, site)
    return sketch.finish()


def _on_paper(paper: Paper, outline: Sequence[Sequence[float]]) -> list[Point]:
    return [paper.point(x, y) for x, y in outline]


def _site(answer: Answer) -> Site:
    """Choose the ground that is shown, and its scale: everything that is known of the site, and some room around."""
    figures = figures_of(answer)
    chord, rise, radius = figures["chord"], figures["sagitta"], figures["radius"]
    half = math.radians(figures["central_angle"]) / 2
    bulge = radius if half > math.pi / 2 else chord / 2
    xs, ys = [chord / 2 - bulge, chord / 2 + bulge], [0.0, rise, answer["parallel"] or 0.0]
    for x, y in _edge(answer, max(_offs(answer), default=0.0) + _ROOM):
        xs.append(x)
        ys.append(y)
    for obstacle in answer["site"]["obstacles"]:
        xs += [x for x, _ in obstacle["outline"]]
        ys += [y for _, y in obstacle["outline"]]
    for mark in answer["site"]["known"]:
        xs.append(mark["x"])
        ys.append(mark["y"])
    size = max(2 * bulge, rise)
    ys.append(-_BEHIND * size)  # zoomed to the work: its centre is seen where it lies within
    if rise - radius >= -_SEEN * size:
        ys.append(_lowest(xs, ys, rise - radius))
    centre = rise - radius >= min(ys)
    margin = _MARGIN * max(max(xs) - min(xs), max(ys) - min(ys))
    left, right, low, high = min(xs) - margin, max(xs) + margin, min(ys) - margin, max(ys) + margin
    scale = min(WIDTH / (right - left), HEIGHT / (high - low))
    paper = Paper(scale, 1, radius, half, chord, rise, turn=turn_of(answer["side"]))
    (x, low_y), (x2, high_y) = paper.point(left, low), paper.point(right, high)
    return Site(paper, Box(min(x, x2), high_y, max(x, x2), low_y), centre)


def _offs(answer: Answer) -> list[float]:
    """How far off the stakes' arc the slab's edges are, metres outward; none where there is none yet, and none of an
    edge whose width changes but at its wider end."""
    edges = edges_of(answer)
    if edges is None:
        return []
    out, inside = (
        next((row["off"] for row in edges["lines"] if row["key"] == key), None) for key in ("outside", "inside")
    )
    wide = max(edges["width"], edges["far_width"] or 0.0)
    if out is None and inside is not None:
        out = inside + wide
    return [off for off in (out, inside) if off is not None]


def _edge(answer: Answer, off: float) -> list[Point]:
    """An arc so far outward of the stakes', metres in the chord's frame, as far around as theirs."""
    figures = figures_of(answer)
    radius, half = figures["radius"], math.radians(figures["central_angle"]) / 2
    x, y, turns = figures["chord"] / 2, figures["sagitta"] - radius, range(-_SAMPLES, _SAMPLES + 1)
    around = (half * turn / _SAMPLES for turn in turns) if radius + off > 0 else ()
    return [(x + (radius + off) * math.sin(turn), y + (radius + off) * math.cos(turn)) for turn in around]


def _lowest(xs: Sequence[float], ys: Sequence[float], centre: float) -> float:
    """The centre's height, where the drawing has room left for it at the scale that the rest is drawn at."""
    wide, high, low = max(xs) - min(xs), max(ys), min(ys)
    if centre >= low:
        return low

    def scale(lowest: float) -> float:
        margin = _MARGIN * max(wide, high - lowest)
        return min(WIDTH / (wide + 2 * margin), HEIGHT / (high - lowest + 2 * margin))

    return centre if scale(centre) >= _SAME_SCALE * scale(low) else low


def _description(answer: Answer, site: Site) -> str:
    rows = answer["site"]["obstacles"]
    obstacles = "; ".join(say(f"siteplan.desc.{one['stops']}", what=one["name"]) for one in rows)
    return f"{hand_words(answer)} {obstacles}".strip()


def _frame(sketch: Sketch, site: Site) -> None:
    """Draw the edge of the ground, which carries the map back from paper."""
    box = site.box
    corners = [(box.left, box.top), (box.right, box.top), (box.right, box.bottom), (box.left, box.bottom)]
    commands: list[Command] = [("L" if number else "M", corner) for number, corner in enumerate(corners)]
    data = {"scale": repr(site.paper.scale), "turn": str(site.paper.turn)}
    sketch.drawing.path([*commands, ("Z",)], "line soft", data)
    sketch.see(*corners)


def _stakes(sketch: Sketch, answer: Answer, site: Site) -> None:
    for stake in stakes_on_paper(answer):
        name = stake["name"]
        at = site.paper.point(stake["x"], stake["y"])
        sketch.stake(name, at, "end-stake" if name in ("A", "B") else "older")
    for mark in answer["site"]["known"]:
        if mark["name"] not in ("A", "B"):
            sketch.mark(site.paper.point(mark["x"], mark["y"]))
    if site.centre:
        x, y = site.paper.centre
        sketch.lines([[(x - 5, y), (x + 5, y)], [(x, y - 5), (x, y + 5)]], "")


def blocks_of_plan(answer: Answer) -> list[BlockRow]:
    """What stops the method that the job asks for."""
    return own_row(answer)["blocks"]


def _stopped(sketch: Sketch, answer: Answer, site: Site) -> None:
    """Draw each way that is stopped, with a cross on it."""
    places = {mark["name"]: site.paper.point(mark["x"], mark["y"]) for mark in answer["marks"]}
    ways = dict.fromkeys((block["from"], block["to"]) for block in blocks_of_plan(answer))
    drawn = 0
    for start, end in ways:
        if start not in places or end not in places or drawn == _MOST_BLOCKS:
            continue
        way = clipped(places[start], places[end], site.box)
        if way is None:
            continue
        drawn += 1
        (x, y), (x2, y2) = way
        if start != end:
            sketch.lines([[(x, y), (x2, y2)]], "arrow dash")
        x, y = (x + x2) / 2, (y + y2) / 2
        pieces = [[(x - _CROSS, y + turn * _CROSS), (x + _CROSS, y - turn * _CROSS)] for turn in (1, -1)]
        sketch.lines(pieces, "arrow")


def clipped(start: Point, end: Point, box: Box) -> tuple[Point, Point] | None:
    """Return the piece of a line that is in a box, or ``None`` (Liang and Barsky's clipping)."""
    (x, y), (x2, y2) = start, end
    enter, leave = 0.0, 1.0
    for place, change, low, high in ((x, x2 - x, box.left, box.right), (y, y2 - y, box.top, box.bottom)):
        if change == 0.0:
            if not low <= place <= high:
                return None
            continue
        near, far = sorted(((low - place) / change, (high - place) / change))
        enter, leave = max(enter, near), min(leave, far)
    if enter > leave:
        return None
    first, last = ((x + (x2 - x) * part, y + (y2 - y) * part) for part in (enter, leave))
    return first, last


def _names(sketch: Sketch, answer: Answer, site: Site) -> None:
    paper = site.paper
    for name, x, way in (("A", 0.0, -paper.turn), ("B", paper.chord, paper.turn)):
        sketch.label(Label(name, "end", [paper.point(x, 0.0)], (way * 0.9, 0.4), 9.0), "", name)
    for obstacle in answer["site"]["obstacles"]:
        outline = _on_paper(paper, obstacle["outline"])
        box = Box(*(pick(point[axis] for point in outline) for pick in (min, max) for axis in (0, 1)))
        # Under it, or over it: a name in the hatching could hardly be read.
        spots = [((box.left + box.right) / 2, box.bottom), ((box.left + box.right) / 2, box.top)]
        sketch.label(Label(obstacle["name"], "name", spots, (0.0, 1.0), 4.0, 110.0))
    for mark in answer["site"]["known"]:
        if mark["name"] not in ("A", "B"):
            at = paper.point(mark["x"], mark["y"])
            sketch.label(Label(mark["name"], "name", [at], (1.0, 0.0), 7.0, 110.0))
    if site.centre:
        sketch.label(Label(say("siteplan.centre", mark=CENTRE), "word", [paper.centre], (1.0, 0.0), 8.0), "quiet")


def _foot(sketch: Sketch, answer: Answer, site: Site) -> None:
    """Under the ground: the hand, what the two looks mean, the scale, and where the centre is if it isn't shown."""
    left, width = site.box.left, max(site.box.right - site.box.left, 0.75 * WIDTH)
    top = sketch.edge.bottom + 6.0
    top = sketch.paragraph(answer["hand"], (left, top), width)
    if not site.centre:
        top = sketch.paragraph(say("siteplan.no_centre"), (left, top), width)
    for stops in ("tape", "feet"):
        if any(one["stops"] == stops for one in answer["site"]["obstacles"]):
            swatch = [(left + 1, top + 3), (left + 33, top + 3), (left + 33, top + 17), (left + 1, top + 17)]
            draw_area(sketch, swatch, stops)
            top = max(sketch.paragraph(say(f"siteplan.key.{stops}"), (left + 42, top + 2), width - 42), top + 21.0)
    number, unit, metres = round_length(110.0 / site.paper.scale, answer["unit"])
    x, y, bar = left + 1, top + 12.0, metres * site.paper.scale
    sketch.lines([[(x, y), (x + bar, y)], [(x, y - 5), (x, y + 5)], [(x + bar, y - 5), (x + bar, y + 5)]], "")
    sketch.words(say(f"draw.scale.number.{unit}", number=f"{number:g}"), (x + bar + 7, y + 5), "number", "start")
