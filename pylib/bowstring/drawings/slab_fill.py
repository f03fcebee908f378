"""What each page of the build shows on a slab that fills its curve: its two forms, its joints, tops, and the pour."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from bowstring.drawings.boxes import Box
from bowstring.drawings.building import HATCH, draw_building
from bowstring.drawings.labels import FAINT, LEADER, Label
from bowstring.drawings.slab_pages import foot
from bowstring.drawings.slab_sketch import LEFT, RIGHT, SlabSketch
from bowstring.drawings.stepdiscs import RADIUS, draw_discs
from bowstring.drawings.svg import Point
from bowstring.forming.pad import Filled, Pad
from bowstring.forming.segment import Segment
from bowstring.geometry.arc import Arc
from bowstring.report.alone import grades_of, joints_of, line_ends_of, pour_of
from bowstring.report.forming.pad_edges import BACK
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forming.pouring import runs_back
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import GridRow
from bowstring.words import say

PAPER = "paper"
"""The page of a pad's plan on its form sheet."""

_DISC = 22.0
"""Least distance of two discs, drawing units."""


@dataclass(frozen=True)
class _Sheet:
    """The slab on paper, by parts of its width along the string (from A's side) and of its depth off it."""

    made: SlabSketch
    there: Filled
    own: Filled

    @classmethod
    def of(cls, made: SlabSketch) -> _Sheet:
        arc, shape = made.answer["arc"], made.shape
        own = Arc.of_angle(arc["radius"], math.radians(arc["central_angle"]) / 2)
        there = Arc.of_angle(shape.line, shape.half)
        edges = made.edges
        if edges is None or edges["sides"] is None:
            return cls(made, Segment(there), Segment(own))
        both = edges["both_ends"]
        return cls(made, Pad(there, shape.sides, both), Pad(own, edges["sides"], both))

    def at(self, across: float, off: float) -> Point:
        """The place at parts of the width and the depth, drawing units off."""
        x, y = self.made.shape.string(0.0)
        return (x + self.made.shape.turn * (across - 0.5) * self.there.wide, y - off)

    def square(self, across: float) -> tuple[Point, Point]:
        """The line square to the string at a part of the width, from the foot up."""
        low, high = self.there.height(min(max(across, 0.0), 1.0) * self.there.wide)
        return self.at(across, low), self.at(across, high)

    def along(self, deep: float) -> tuple[Point, Point]:
        """The line along the string at a part of the depth off it, of the curve's or behind it of the sides' (and the
        other curve's), from A's side."""
        if isinstance(self.there, Pad) and isinstance(self.own, Pad):
            return self._across(self.there, deep)
        off = deep * self.there.deep
        up, radius = off - self.there.center, self.there.arc.radius
        half = math.sqrt(max(0.0, (radius - up) * (radius + up))) / self.there.wide
        return self.at(0.5 - half, off), self.at(0.5 + half, off)

    def off(self, off: float) -> float:
        """Drawing units off the string for metres of the slab with straight sides: its curves and its sides are each
        drawn by a scale of their own where it isn't true."""
        assert isinstance(self.there, Pad) and isinstance(self.own, Pad)
        rise, there, sides = self.own.arc.sagitta, self.there.arc.sagitta, self.own.sides
        if off >= 0:
            return off / rise * there
        behind = min(-off, sides) / sides * self.there.sides
        return -behind - max(0.0, -off - sides) / rise * there

    def from_back(self, taken: float) -> tuple[Point, Point]:
        """The line along the string so many metres from the foot."""
        assert isinstance(self.own, Pad)
        return self.along(self.own.foot + taken)

    def _across(self, pad: Pad, off: float) -> tuple[Point, Point]:
        on = self.off(off)
        past = on if on > 0 else max(0.0, -on - pad.sides)
        up, radius = past - pad.curve.center, pad.arc.radius
        half = 0.5 if not past else math.sqrt(max(0.0, (radius - up) * (radius + up))) / pad.wide
        return self.at(0.5 - half, on), self.at(0.5 + half, on)

    def joint(self, row: GridRow) -> tuple[Point, Point]:
        """A joint's line on paper."""
        if row["kind"] == "square":
            return self.square((row["at"] + self.own.before) / self.own.wide)
        return self.along(row["at"] if isinstance(self.own, Pad) else row["at"] / self.own.deep)


def _first(made: SlabSketch) -> None:
    """The first screen: the curve, its string, and how deep the slab is off that."""
    _cuts(made)
    made.stakes()
    made.ends()
    _string(made)
    _radius(made)
    foot(made, grades_of(made.answer))


def _string(made: SlabSketch) -> None:
    """How deep the slab is off the middle of its string, and how long that is."""
    edges, shape = made.edges, made.shape
    assert edges is not None
    if edges["sides"] is not None:
        _sides(made)
        return
    start, tip = shape.on("inside", 0.0), shape.on("outside", 0.0)
    made.sketch.arrow(start, tip, feathers=False)
    middle = (start[0] + 8.0, (start[1] + tip[1]) / 2 + 7.0)  # on the slab, where nothing else is written
    made.sketch.words(edges["width_shown"], middle, "big", "start", "hot")
    text = say("fill.draw_string", shown=edges["inside"]["length_shown"])
    made.sketch.words(text, (start[0], start[1] + 19.0), "number")


def draw_back(made: SlabSketch) -> None:
    """What stands there already at the back of straight sides: a building's face, and its name where no card says it
    beside the drawing and has no room for it."""
    if not _against(made):
        return
    shape = made.shape
    face = draw_building(made.sketch.drawing, *(shape.string(share, shape.sides) for share in (-1.0, 1.0)))
    made.sketch.ground.take_lines(face, LEADER)
    x, foot = shape.on("inside", 0.0)
    if made.page == CORNERS:
        return
    made.sketch.words(say("pad.draw_building"), (x, foot + HATCH + 14.0), "number", "middle", "quiet")


def _against(made: SlabSketch) -> bool:
    """Whether the back is no form of its own."""
    return made.edges is not None and any(row["key"] == BACK and not row["set"] for row in made.edges["lines"])


def _under(made: SlabSketch, line: int) -> Point:
    """Where a line of words stands under the back's middle, a building's name the first of them."""
    x, foot = made.shape.on("inside", 0.0)
    named = _against(made) and made.page != CORNERS
    return x, foot + 19.0 + 17.0 * (line + named) + (4.0 if _against(made) else 0.0)


def _sides(made: SlabSketch) -> None:
    """How long the sides and the string are."""
    edges, shape = made.edges, made.shape
    assert edges is not None
    made.sketch.lines([[shape.string(-1.0), shape.string(1.0)]], "string")
    chord = next(row["chord_shown"] for row in edges["lines"] if row["key"] == "outside")
    text = say("pad.draw_sides", sides=edges["sides_shown"], chord=chord, **line_ends_of(made.answer))
    made.sketch.words(text, _under(made, 0), "number", "middle")


def _diagonal(made: SlabSketch, line: int = 1) -> None:
    """One of the diagonals that prove straight sides, and the names of the far corners; ``line``: of words under it."""
    edges, shape = made.edges, made.shape
    assert edges is not None
    corner = [shape.string(-1.0), shape.string(1.0, shape.sides)]
    made.sketch.lines([corner], "line soft cut")
    made.sketch.ground.take_lines(corner, FAINT)
    text = say("pad.draw_diagonal", shown=edges["diagonal_shown"])
    made.sketch.words(text, _under(made, line), "number", "middle")
    for end, share in (("A", -1.0), ("B", 1.0)):
        made.near(say("pad.back_of", stake=end), shape.string(share, shape.sides), (shape.turn * share, 0.3))


def _ends(made: SlabSketch) -> None:
    """The names of the concrete's corners, where no stakes are drawn beside them: with those off the line A and B are
    the stakes."""
    if not made.answer["offset"]:
        made.ends()
        return
    called = line_ends_of(made.answer)
    for end, share in (("a", -1.0), ("b", 1.0)):
        made.name(called[end], made.shape.on("outside", share), share)


def _corners(made: SlabSketch) -> None:
    """The far corners as their card sets them: a side and what lies between them by their discs, a diagonal beside."""
    shape = made.shape
    _ends(made)
    far = [shape.string(share, shape.sides) for share in (-1.0, 1.0)]
    made.sketch.lines([[shape.string(-1.0), far[0]], [shape.string(1.0), far[1]]], "line arrow")
    _diagonal(made, 0)
    side, behind = shape.string(-1.0, shape.sides * 0.6), shape.string(0.0, shape.sides)
    draw_discs(made.sketch, [(1, [side]),
                             (2, [(behind[0], behind[1] - 15.0), behind])])  # fmt: skip


def _radius(made: SlabSketch) -> None:
    edges = made.edges
    assert edges is not None
    shown = next(row["radius_shown"] for row in edges["lines"] if row["key"] == "outside")
    made.beside("outside", say("fill.draw_curve", radius=shown), (0.0, -0.15, 0.15, -0.3))


def _edges(made: SlabSketch) -> None:
    """Both forms, and what proves them."""
    made.stakes()
    made.ends()
    _string(made)
    if made.edges is not None and made.edges["sides"] is not None:
        _diagonal(made)
    _radius(made)


def _cuts(made: SlabSketch) -> list[tuple[GridRow, tuple[Point, Point]]]:
    """The joints in dashes; return them with their lines."""
    joints, sheet = joints_of(made.answer), _Sheet.of(made)
    found = [(row, sheet.joint(row)) for row in joints["grid"]] if joints is not None else []
    lines = [list(line) for _row, line in found if math.dist(*line) >= 2.0]
    made.sketch.drawing.lines(lines, "line cut")
    for line in lines:
        made.sketch.ground.take_lines(line, FAINT)
    return found


def _joints(made: SlabSketch) -> None:
    """The joints by their numbers, those square to the string over the curve, those along it at A's side."""
    found, made_of = _cuts(made), _Sheet.of(made)
    made.corners()
    _ends(made)
    kept: list[Point] = []
    for row, (first, last) in found:
        turn = made.shape.turn
        spots = [(first[0] - turn * 15.0, first[1]), (last[0] + turn * 15.0, last[1])]
        if row["kind"] == "square":
            spots = [(last[0], last[1] - 15.0)]
        if isinstance(
            made_of.own, Pad
        ):  # its string and its corners stand in the way beside it: on the joint there's room
            spots += [_between(first, last, share) for share in (0.25, 0.75, 0.15, 0.85, 0.35, 0.65)]
        at = next((one for one in spots if _is_free(made, one, kept)), None)
        if at is not None:
            kept.append(at)
            made.sketch.see((at[0], at[1] - RADIUS))
            draw_discs(made.sketch, [(row["number"], [at])])


def _paper(made: SlabSketch) -> None:
    """A pad on its form sheet: stakes, far corners, a diagonal, the joints by their numbers, and the slope."""
    made.stakes()
    _joints(made)
    _string(made)
    _diagonal(made)
    _radius(made)
    grades = grades_of(made.answer)
    if grades is not None and not grades["stop"]:
        _fall(made, grades)


def _between(first: Point, last: Point, share: float) -> Point:
    return (first[0] + share * (last[0] - first[0]), first[1] + share * (last[1] - first[1]))


def _is_free(made: SlabSketch, at: Point, kept: list[Point]) -> bool:
    """Whether a disc has room there."""
    box = Box(at[0] - RADIUS, at[1] - RADIUS, at[0] + RADIUS, at[1] + RADIUS)
    apart = all(math.dist(at, other) >= _DISC for other in kept)
    return apart and LEFT < at[0] < RIGHT and not made.sketch.ground.taken(box, LEADER + 1)


def _grades(made: SlabSketch) -> None:
    """The tops at A, in the middle and at B, and the way that the top falls most."""
    grades = grades_of(made.answer)
    assert grades is not None
    made.corners()
    _ends(made)
    rows = {round(row["share"], 6): row for row in grades["rows"] if row["kind"] == "stake"}
    for share in (0.0, 0.5, 1.0):
        row = rows.get(share)
        if row is not None:
            on = made.shape.on("outside", 2 * share - 1)
            made.near(row["outside"]["shown"], on, made.shape.outward(2 * share - 1))
    if not grades["stop"]:
        _fall(made, grades)
    for row in grades["rows"]:
        if row["kind"] == "back" and row["share"] in (0.0, 1.0):
            share = 2 * row["share"] - 1
            at, toward = made.shape.string(share, made.shape.sides), (made.shape.turn * share, 0.3)
            made.near(f"{row['name']}: {row['outside']['shown']}", at, toward)


def _fall(made: SlabSketch, grades: GradesPart) -> None:
    """An arrow downhill, with how steep that is."""
    along, away = grades["running"] or 0.0, grades["cross"] or 0.0
    away = -away if grades["low"] == "outside" else away
    size = math.hypot(along, away)
    if not size:
        return
    sheet = _Sheet.of(made)
    long = min(sheet.there.deep, 70.0) * 0.35
    x, y = sheet.at(0.5, sheet.there.arc.sagitta / 2)
    way = (-along / size * made.shape.turn * long, away / size * long)  # paper's y runs down, the string is below
    made.flow((x - way[0], y - way[1]), (x + way[0], y + way[1]))
    steepest = next((row["shown"] for row in grades["slopes"] if row["line"] == grades["steepest"]), "")
    if isinstance(sheet.there, Pad):  # over its sides nothing else is written, and a name at A or B is in nobody's way
        made.sketch.words(steepest, sheet.at(0.5, -sheet.there.sides / 2), "number", "middle")
        return
    beside, anchor = (10.0, "start") if way[0] >= 0 else (-10.0, "end")
    made.sketch.words(steepest, (x + beside, y + 5.0 + (14.0 if way[1] < 0 else -10.0)), "number", anchor)


def _pour(made: SlabSketch) -> None:
    """How far the concrete has to be at half a truck and at three quarters, square to the string."""
    pour, sheet = pour_of(made.answer), _Sheet.of(made)
    assert pour is not None
    _cuts(made)
    _ends(made)
    back = runs_back(sheet.own)
    for row in pour["reach"]:
        foot_at, top = sheet.from_back(row["call"]) if back else sheet.square(row["call"] / sheet.own.wide)
        made.sketch.lines([[foot_at, top]], "arrow strong")
        way = (1.0, 0.0) if back else (0.0, -1.0)
        made.sketch.label(Label(row["out"], "number", [top], way, 7.0), "hot")
    if back:
        x, y = sheet.at(0.5, sheet.there.height(sheet.there.wide / 2)[0] + 6.0)
        made.flow((x, y), (x, y - 30.0))
        return
    low, high = sheet.square(0.12)
    middle = (low[1] + high[1]) / 2
    made.flow((low[0], middle), (low[0] + made.shape.turn * 30.0, middle))


FILLED: dict[str, Callable[[SlabSketch], None]] = {
    "": _first,
    "edges": _edges,
    CORNERS: _corners,
    PAPER: _paper,
    "joints": _joints,
    "grades": _grades,
    "pour": _pour,
    "boards": SlabSketch.plain,
}
