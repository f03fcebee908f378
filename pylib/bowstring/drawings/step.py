"""One card drawn: zoomed to its step, what stands in outline and what is set now strong, with the discs of its numbers.

Made for a phone's width. Its top strip has the whole arc; a low screen leaves that off and keeps the rest.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from bowstring.construction import HELPERS
from bowstring.drawings.areas import cut_to, draw_area
from bowstring.drawings.boxes import Box
from bowstring.drawings.labels import LEADER, LINE, Ground, Label
from bowstring.drawings.overview import Overview, arc_points, draw_overview, overview_in
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.stepdiscs import RADIUS, draw_discs
from bowstring.drawings.svg import Point
from bowstring.drawings.zoom import Zoom, zoom_on
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardLine, CardRow
from bowstring.words import say

VIEW = Box(0.0, 0.0, 360.0, 160.0)
STRIP = Box(4.0, 2.0, 356.0, 46.0)
"""The top of the drawing: the whole arc, and whether what is below it is to scale."""

SMALL = Box(24.0, 9.0, 112.0, 38.0)
ROOM = Box(30.0, 67.0, 330.0, 125.0)
"""Where the marks of the step lie."""

PANE = Box(0.0, 48.0, 360.0, 160.0)
WHOLE = Box(46.0, 22.0, 314.0, 126.0)
_EDGE = 40.0
LEVEL = 1e-6
"""Metres: a mark nearer to the line between the ends is on it."""
_SQUARE, _SMALL_SQUARE = 9.0, 4.0
_PLAIN = {"straight": "string", "string": "string", "past": "soft dash", "sight": "soft dash", "match": "soft dash",
          "tape": "arrow"}  # fmt: skip


class StepDrawing:
    """The drawing of one card in the making."""

    def __init__(self, answer: Answer, card: CardRow, id: str) -> None:
        self.answer, self.card = answer, card
        self.at: dict[str, Point] = {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}
        labels = (f"{one['disc']}: {one['label']}, {one['shown']}." for one in card["numbers"])
        title = say("card.draw.title", number=card["number"], title=card["title"])
        self.sketch = Sketch(id=id, title=title, description=" ".join([card["text"], *labels]))
        before = [one for one in answer["cards"] if one["number"] < card["number"]]
        self.standing = {"A", "B"} if not card["lines"] else {mark for one in before for mark in one["sets"]}
        self.stakes = [one["stake"] for one in answer["cards"] if one["stake"]]
        if card["kind"] in ("checks", "board"):
            self.standing.update(self.stakes)

    def finish(self) -> str:
        """Return the drawing as SVG."""
        if self.card["lines"]:
            self._zoomed()
        else:
            self._whole()
        return self.sketch.finish(within=VIEW)

    def _frame(self, room: Box) -> None:
        """Keep every label in a room: what is around it is taken."""
        left, top, right, bottom = room.left, room.top, room.right, room.bottom
        around = (
            Box(left - _EDGE, top - _EDGE, left, bottom + _EDGE),
            Box(right, top - _EDGE, right + _EDGE, bottom + _EDGE),
            Box(left, top - _EDGE, right, top),
            Box(left, bottom, right, bottom + _EDGE),
        )
        for box in around:
            self.sketch.ground.take_box(box)

    def _whole(self) -> None:
        """The whole arc, large: before and after the steps."""
        self._frame(Box(2.0, 2.0, 358.0, 158.0))
        view = overview_in(self.answer, WHOLE)
        numbers = self.card["numbers"]
        if numbers:  # the board's, past both ends
            self._past_ends(view)
        draw_overview(self.sketch, self.answer, view, self.stakes, self.at, self.standing, (), 6.0)

    def _past_ends(self, view: Overview) -> None:
        points = [view.point(x, y) for x, y in arc_points(self.answer)]
        for end, near in ((points[0], points[1]), (points[-1], points[-2])):
            length = math.dist(end, near)
            way = ((end[0] - near[0]) / length, (end[1] - near[1]) / length)
            tip = (end[0] + way[0] * 22, end[1] + way[1] * 22)
            self.sketch.lines([[end, tip]], "arrow")
            draw_discs(self.sketch, [(1, [tip])])

    def _zoomed(self) -> None:
        sketch, lines = self.sketch, self.card["lines"]
        now = [name for name in self.card["sets"] if not name.startswith(HELPERS)]
        self._frame(Box(STRIP.left, STRIP.top, STRIP.right, PANE.top))
        view = overview_in(self.answer, SMALL)
        draw_overview(sketch, self.answer, view, self.stakes, self.at, self.standing,
                      [name for name in now if name in self.stakes], _SMALL_SQUARE)  # fmt: skip
        sketch.ground = Ground()  # the strip has its own
        marks = {name for line in lines for name in (line["from"], line["to"], line["at"]) if name}
        places = {name: self.at[name] for name in sorted(marks)}
        zoom = zoom_on(self._seen(places), _base(lines), self.answer["side"], self._onward(), ROOM, self._least())
        at = {name: zoom.point(*place) for name, place in places.items()}
        if not zoom.true:
            sketch.words(say("card.draw.not_to_scale"), (352.0, 20.0), "word", "end", "quiet")
        self._frame(Box(PANE.left, PANE.top, PANE.right, PANE.bottom))
        shown = list(self._obstacles(zoom))
        sketch.drawing.lines(list(_inside(self._arc(zoom, places))), "line soft dash")
        self._lines(at)
        self._discs(at, ticks=False)
        self._marks(at, now)
        self._discs(at, ticks=True)
        self._name_obstacles(shown)

    def _seen(self, places: Mapping[str, Point]) -> Mapping[str, Point]:
        """The marks that the drawing zooms to; where all are on the line between the ends, the arc's middle too."""
        if {"A", "B"} <= places.keys() and not any(abs(y) > LEVEL for _x, y in places.values()):
            return {**places, "": (self.answer["staked"]["chord"] / 2, self.answer["staked"]["sagitta"])}
        return places

    def _least(self) -> float:
        """Least distance of two marks along, drawing units: an angle's two sights want room for its disc."""
        return 104.0 if any(line["kind"] == "turn" for line in self.card["lines"]) else 64.0

    def _onward(self) -> bool:
        """Whether the level line is the string of a stake of halving: those all have the curve over them."""
        return any(line["kind"] == "match" for line in self.card["lines"]) and self.card["stake"] is not None

    def _arc(self, zoom: Zoom, places: Mapping[str, Point]) -> list[Point]:
        """The arc near the marks that stand on it, on paper."""
        staked = self.answer["staked"]
        half, middle = math.radians(staked["central_angle"]) / 2, staked["chord"] / 2
        down = staked["sagitta"] - staked["radius"]
        on = [math.atan2(x - middle, y - down) / half for name, (x, y) in places.items()
              if name in ("A", "B") or name in self.stakes]  # fmt: skip
        first, last = (min(on), max(on)) if len(on) > 1 else (-1.0, 1.0)
        more = 0.2 * (last - first)
        return [zoom.point(x, y) for x, y in arc_points(self.answer, max(first - more, -1.0), min(last + more, 1.0))]

    def _obstacles(self, zoom: Zoom) -> Iterator[tuple[str, list[Point]]]:
        """Draw what is in the way near this step; yield each one's name and outline."""
        pane = Box(PANE.left, PANE.top + 4, PANE.right, PANE.bottom)
        for one in self.answer["site"]["obstacles"]:
            outline = cut_to([zoom.point(x, y) for x, y in one["outline"]], pane)
            if outline:
                draw_area(self.sketch, outline, one["stops"])
                yield one["name"], outline

    def _name_obstacles(self, shown: Sequence[tuple[str, list[Point]]]) -> None:
        """Their names, where nothing of the step stands."""
        for name, outline in shown:
            xs, ys = [x for x, _y in outline], [y for _x, y in outline]
            y = (min(ys) + max(ys)) / 2
            spots = [((min(xs) * (1 - part) + max(xs) * part), y) for part in (0.5, 0.25, 0.75, 0.12, 0.88)]
            any(self.sketch.fits(Label(name, "word", [spot], (0.0, 1.0), -8.0, 110.0)) for spot in spots)

    def _lines(self, at: Mapping[str, Point]) -> None:
        sketch = self.sketch
        for line in self.card["lines"]:
            start, end = at[line["from"]], at[line["to"]]
            if line["kind"] in _PLAIN:
                sketch.lines([[start, end]], _PLAIN[line["kind"]])
            elif line["kind"] == "off":
                self._off(line, at)
        for name, (x, y) in at.items():
            half = 5.0 if name.startswith(HELPERS) else _SQUARE
            sketch.ground.take_box(Box(x - half, y - half, x + half, y + half))

    def _discs(self, at: Mapping[str, Point], *, ticks: bool) -> None:
        """The discs of the numbers, or the ticks on what must match."""
        lines = [line for line in self.card["lines"] if bool(line["disc"]) is not ticks]
        if ticks:
            lines = [line for line in lines if line["kind"] == "match" and self.card["right"]]
        draw_discs(self.sketch, [(line["disc"] or 0, list(self._spots(line, at))) for line in lines])

    def _off(self, line: CardLine, at: Mapping[str, Point]) -> None:
        """An offset: its arrow, and the sign that it is square."""
        foot, tip = at[line["from"]], at[line["to"]]
        length = math.dist(foot, tip)
        if length < 1:
            return
        out = ((tip[0] - foot[0]) / length, (tip[1] - foot[1]) / length)
        self.sketch.arrow(foot, (tip[0] - out[0] * _SQUARE, tip[1] - out[1] * _SQUARE), feathers=False)
        way = 1.0 if foot[0] < (VIEW.left + VIEW.right) / 2 else -1.0  # toward the longer part of its line
        self.sketch.corner(foot, (way * abs(out[1]), way * abs(out[0])), out, 10.0)

    def _spots(self, line: CardLine, at: Mapping[str, Point]) -> Iterator[Point]:
        """Where the disc of a line may stand, best first."""
        start, end = at[line["from"]], at[line["to"]]
        if line["kind"] == "turn" and line["at"]:
            yield from self._turn(at[line["at"]], start, end)
            return
        away: tuple[Point, ...] = ((0.0, 0.0), (23.0, 0.0), (-23.0, 0.0), (0.0, 23.0), (0.0, -23.0))
        if line["kind"] == "off":
            away = (*away[1:], (34.0, 0.0), (-34.0, 0.0))
        if line["kind"] == "match":
            away = (
                *away,
                *((x * 0.71, y * 0.71) for x in (34.0, -34.0, 46.0, -46.0) for y in (34.0, -34.0)),
                (0.0, 46.0),
            )
        for dx, dy in away:
            for part in (0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74):
                yield start[0] + (end[0] - start[0]) * part + dx, start[1] + (end[1] - start[1]) * part + dy

    def _turn(self, vertex: Point, start: Point, end: Point) -> Iterator[Point]:
        """The angle at an instrument: its sweep, and where its disc may stand on it."""
        one, other = (math.atan2(y - vertex[1], x - vertex[0]) for x, y in (start, end))
        if self.card["kind"] == "sight_back":  # the telescope was plunged
            one += math.pi
            tip = (vertex[0] + 110 * math.cos(one), vertex[1] + 110 * math.sin(one))
            self.sketch.lines([[vertex, tip]], "soft dash")
        sweep = (other - one + math.pi) % (2 * math.pi) - math.pi
        steps = [one + sweep * step / 12 for step in range(13)]
        self.sketch.lines([[(vertex[0] + 42 * math.cos(a), vertex[1] + 42 * math.sin(a)) for a in steps]], "arrow")
        between = RADIUS / max(math.sin(min(abs(sweep), math.pi) / 2), 0.08) + 3  # there it touches neither sight
        for parts in ((0.5, 0.35, 0.65), (-0.4, 1.4)):  # within the angle before beside it
            for radius in (max(between, 42.0), 70.0, 60.0, 84.0, 98.0, 50.0, 42.0):
                for part in parts:
                    angle = one + sweep * part
                    yield vertex[0] + radius * math.cos(angle), vertex[1] + radius * math.sin(angle)

    def _marks(self, at: Mapping[str, Point], now: list[str]) -> None:
        """The marks themselves, and their names: below the level line, beside what is set off it."""
        sketch = self.sketch
        low = max(y for _x, y in at.values())
        names: list[tuple[str, Point]] = []
        for name, (x, y) in at.items():
            if name.startswith(HELPERS):
                sketch.drawing.dot((x, y), 4.5, "head" if name in self.card["sets"] else "solid")
                continue
            sketch.drawing.square((x, y), _SQUARE, "stake new" if name in now else "stake", {"stake": name})
            names.append((name, (x, y)))
        for name, (x, y) in sorted(names, key=lambda one: one[0] in now):
            beside = [(1.0, -0.2), (-1.0, -0.2)] if x < 300 else [(-1.0, -0.2), (1.0, -0.2)]
            ways = [(0.0, 1.0), *beside, (0.0, -1.0)] if y > low - 12 else [*beside, (0.0, -1.0), (0.0, 1.0)]
            self._name(name, (x, y), ways, "hot" if name in now else "")

    def _name(self, name: str, at: Point, ways: Sequence[Point], classes: str) -> None:
        """A mark's name, on the first side of it that is free; over a line rather than far off."""
        near, slant = [Label(name, "end", [at], way, _SQUARE + 2.0) for way in ways], math.sqrt(0.5)
        turned = [(x * slant - y * slant, x * slant + y * slant) for x, y in ways]
        wide = [
            Label(name, "end", [at], way, reach) for reach in (_SQUARE + 4.0, 22.0, 32.0) for way in (*turned, *ways)
        ]
        for labels, least in ((near, LINE), (near, LEADER), (wide, LEADER)):
            if any(self.sketch.fits(label, least, classes, name) for label in labels):
                return
        self.sketch.label(near[0], classes, name)


def _base(lines: list[CardLine]) -> tuple[str, str]:
    """The marks between which the level line runs: a string, a sight, or from one tape's end to the other's."""
    for kind in ("string", "straight", "sight"):
        found = [line for line in lines if line["kind"] == kind]
        if len(found) > 1 and found[0]["to"] == found[1]["to"]:  # two straights that meet
            return found[0]["from"], found[1]["from"]
        if found:
            return found[0]["from"], found[0]["to"]
    first, *others = lines
    other = next((line for line in others if line["from"] != first["from"]), None)
    return (first["from"], other["from"]) if other else (first["from"], first["to"])


def _inside(points: list[Point]) -> Iterator[list[Point]]:
    """The pieces of a line that are in the pane."""
    piece: list[Point] = []
    for x, y in points:
        if PANE.left < x < PANE.right and PANE.top + 2 < y < PANE.bottom:
            piece.append((x, y))
        elif piece:
            yield piece
            piece = []
    if piece:
        yield piece


def step_svg(answer: Answer, card: CardRow, *, id: str) -> str:
    """Return the drawing of one card of an answer as SVG; ``id``: prefix of the ids inside."""
    return StepDrawing(answer, card, id).finish()
