"""The drawing over the measures: the arc in its own shape as it is typed, the measure in focus strong.

Few elements, placed by rule: it is drawn anew at each keystroke. The curve is up, as on the cards of the stakes: A
stands at the left when it is on the left of somebody at A who faces B, at the right when it is on the right. While
nobody said which it is on both sides.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, hypot, pi, sin, tan

from bowstring.drawings.boxes import text_width
from bowstring.drawings.building import HATCH
from bowstring.drawings.svg import SIZES, Drawing, Point
from bowstring.drawings.turn import ends_of
from bowstring.faces.judging import shown
from bowstring.faces.live_pad import Behind, behind_of, draw_behind
from bowstring.faces.settling import Arcs, Typed
from bowstring.geometry.arc import Arc
from bowstring.units.tape import Tape
from bowstring.words import remembered, say

_WIDTH, _MIDDLE, _REACH = 360.0, 180.0, 146.0
_USUAL_HALF = 0.56
"""Half the central angle, radians, of the arc that stands there while none is given."""
_UNDER = 12.0
"""What is kept free under a string for its words where no line of words stands under the drawing."""
_STEEP = 1.45
"""Half a central angle from which on the corner of the tangents is left out, radians."""


@dataclass(frozen=True)
class _Asked:
    """All that the drawing hangs on: the arc, ``None`` while there is none, the tape that shows it, what stands at A
    and B, the hand, the measure in focus, whether it is a low one, and what lies behind the arc."""

    arc: Arc | None
    tape: Tape
    ends: tuple[str, str]
    side: str | None
    focus: str
    short: bool
    behind: Behind | None


@dataclass(frozen=True)
class _Room:
    """What a drawing may take of its height: from ``top`` down to ``bottom``, then words on the line at ``words``;
    ``sides``: straight sides behind the arc are drawn no longer, and no longer than they are."""

    height: float
    top: float
    bottom: float
    words: float
    sides: float


def _room(short: bool) -> _Room:
    return _Room(112.0, 12.0, 98.0, 0.0, 0.0) if short else _Room(184.0, 12.0, 152.0, 173.0, 44.0)


class _Figure:
    """The drawing in the making, in the arc's own frame: x from the chord's middle to the right, y toward the curve, in
    radii."""

    def __init__(self, half: float, side: str | None, room: _Room, corner: bool, behind: Behind | None) -> None:
        self.half, self.side, self.room = half, side, room
        self.reach, self.rise = sin(half), 1 - cos(half)
        self.apex = self.reach * tan(half) if half < _STEEP else 0.0
        self.drawing: Drawing
        wide = 1.0 if half > pi / 2 else self.reach
        bottom = room.bottom - (0.0 if side is None or room.words else _UNDER)
        most = room.sides if behind else 0.0
        free, below = bottom - room.top - most, self.rise if side is None or (behind and behind.both) else 0.0
        above = self.apex if corner and self.apex else self.rise
        self.scale = min(_REACH / wide, free / (above + below))
        if (self.apex + below) * self.scale <= free:
            above = max(above, self.apex)
        self.sides = min(most, behind.sides * self.scale) if behind else 0.0
        self.base = (room.top + bottom - self.sides + (above - below) * self.scale) / 2

    def at(self, x: float, y: float) -> Point:
        """Return a place on paper."""
        return _MIDDLE + x * self.scale, self.base - y * self.scale

    @property
    def ends(self) -> tuple[str, str]:
        """The end at the left and the one at the right."""
        return ends_of(self.side)

    def words(self, text: str, x: float, y: float, kind: str, classes: str = "", anchor: str = "middle") -> None:
        """Write a line of text whose middle is at the height ``y``, whole under the drawing's edge."""
        y = max(y, SIZES[kind] / 2 + 2.0)
        self.drawing.text(text, (x, y + 5.0), kind, anchor, classes)

    def curve(self, way: int = 1) -> list[Point]:
        """Return points along the arc, or along its mirror image behind the chord."""
        count = max(20, round(self.half * 36))
        turns = [self.half * (2 * step / count - 1) for step in range(count + 1)]
        return [self.at(sin(turn), way * (self.rise - 1 + cos(turn))) for turn in turns]


def live_drawing(arcs: Arcs, typed: Typed, *, side: str | None, focus: str, short: bool) -> str:
    """Return the drawing as SVG; ``focus`` is the id of the field in focus, ``short`` a lower drawing."""
    arc, ends = arcs.settled.arc if arcs.settled else None, (typed.get("ends-A", ""), typed.get("ends-B", ""))
    behind = None if short else behind_of(arcs, typed, arc, side)  # a low one has no room for more than the arc
    return _drawn(_Asked(arc, arcs.shown, ends, side, focus, short, behind))


@remembered(4)  # a key in any field but the arc's changes nothing of it
def _drawn(asked: _Asked) -> str:
    arc, short = asked.arc, asked.short
    measure = asked.focus.removeprefix("arc-") if arc else ""
    corner = measure in ("tangent_length", "external")
    half = arc.half_angle if arc else _USUAL_HALF
    figure = _Figure(half, asked.side if arc else "left", _room(short), corner or arc is None, asked.behind)
    figure.drawing = _drawing(asked)
    _straights(figure, measure, full=not short or corner)
    named = _name_of_string(asked, figure, measure)
    if asked.behind:
        a, b = (figure.at(way * figure.reach, 0.0) for way in (-1, 1))
        draw_behind(figure.drawing, asked.behind, (a, b), figure.sides, figure.curve())
    _lines(figure, measure, _extent(named))
    _ends(figure)
    if named:
        text, x, y = named
        figure.words(text, x, y, "number", "" if arc else "quiet")
    if arc is None:
        _names(figure, short)
    else:
        _values(figure, arc, asked.tape, measure)
        if not short:
            _words(figure, asked)
    return figure.drawing.finish((0.0, 0.0, _WIDTH, figure.room.height))


def _drawing(asked: _Asked) -> Drawing:
    title, described = say("numbers.drawing"), say("numbers.drawing_empty")
    if asked.arc:
        arc, side = asked.arc, asked.side
        values = {"chord": asked.tape.show(arc.chord), "sagitta": asked.tape.show(arc.sagitta)}
        hand = say(f"numbers.hand.{side}") if side else ""
        described = say("numbers.drawing_arc" if side else "numbers.drawing_both", **values, hand=hand)
        if asked.behind:
            described += " " + say("numbers.drawing_building" if asked.behind.against else "numbers.drawing_sides")
    return Drawing(id="live", title=title, description=described)


def _name_of_string(asked: _Asked, figure: _Figure, measure: str) -> tuple[str, float, float] | None:
    """Return what is written at the string, with its place: on it where that is long enough, otherwise under it."""
    if asked.arc is None:
        return say("measure.chord"), 106.0, figure.base
    if measure in ("chord", "central_angle"):
        return None
    text = say("numbers.drawn_chord", chord=asked.tape.show(asked.arc.chord))
    if 2 * figure.reach * figure.scale > 2 * text_width(text, "number") + 60.0:
        return text, figure.at(-0.5 * figure.reach, 0.0)[0], figure.base
    return text, _MIDDLE, figure.base + 20.0


def _extent(named: tuple[str, float, float] | None) -> tuple[float, float] | None:
    if named is None or named[1] == _MIDDLE:
        return None
    half = text_width(named[0], "number") / 2 + 2.0
    return named[1] - half, named[1] + half


def _straights(figure: _Figure, measure: str, full: bool) -> None:
    """Draw the tangents at the ends, as far as there is room for them, and what is measured on them."""
    if not figure.apex or not full:
        return
    part = min(1.0, (figure.base - 6.0) / (figure.apex * figure.scale))
    tip = (figure.reach * (1 - part), figure.apex * part)
    a, b = figure.at(-figure.reach, 0.0), figure.at(figure.reach, 0.0)
    figure.drawing.lines([[a, figure.at(-tip[0], tip[1])], [figure.at(*tip), b]], "line soft")
    if measure == "tangent_length":
        figure.drawing.lines([[a, figure.at(-tip[0], tip[1])]], "line arrow strong")
    if measure == "external" and part == 1.0:
        figure.drawing.lines([[figure.at(0.0, figure.rise), figure.at(0.0, figure.apex)]], "line arrow strong")


def _lines(figure: _Figure, measure: str, parted: tuple[float, float] | None) -> None:
    """Draw the string, the arc and the mid-ordinate, the one in focus strong; both arcs while the hand isn't known.

    ``parted``: from where to where on paper the string has its name on it.
    """
    drawing = figure.drawing
    if figure.side is None:
        drawing.lines([figure.curve(-1)], "line soft dash")
    a, b = figure.at(-figure.reach, 0.0), figure.at(figure.reach, 0.0)
    if measure == "central_angle":
        drawing.lines([_toward_centre(figure, -1), _toward_centre(figure, 1)], "line arrow")
    pieces = [[a, (parted[0], a[1])], [(parted[1], a[1]), b]] if parted else [[a, b]]
    drawing.lines(pieces, "line arrow strong" if measure == "chord" else "line string")
    drawing.lines([figure.curve()], "line arrow strong" if measure == "arc_length" else "line arc")
    foot, crown = figure.at(0.0, 0.0), figure.at(0.0, figure.rise)
    if measure == "radius":
        drawing.lines([[_clipped(figure, (0.0, figure.rise - 1)), crown]], "line arrow strong")
    length = hypot(foot[0] - crown[0], foot[1] - crown[1])
    head = min(13.0, 0.5 * length)
    if measure in ("radius", "arc_length") or head < 1.0:
        return
    hot, way = measure == "sagitta", 1 if crown[1] > foot[1] else -1
    neck = crown[1] - way * head
    drawing.lines([[foot, (foot[0], neck)]], "line arrow strong" if hot else "line")
    corners = ((crown[0] - head / 2, neck), (crown[0] + head / 2, neck))
    drawing.path([("M", crown), ("L", corners[0]), ("L", corners[1]), ("Z",)], "head" if hot else "solid")


def _toward_centre(figure: _Figure, way: int) -> list[Point]:
    return [figure.at(way * figure.reach, 0.0), _clipped(figure, (0.0, figure.rise - 1), (way * figure.reach, 0.0))]


def _clipped(figure: _Figure, centre: Point, start: Point = (0.0, 0.0)) -> Point:
    """Return the arc's center on paper, or where the way to it from ``start`` leaves the drawing."""
    depth, room = -centre[1] * figure.scale, figure.room.height - 14.0 - figure.base
    part = 1.0 if depth <= room else max(room, 0.0) / depth
    return figure.at(start[0] + (centre[0] - start[0]) * part, start[1] + (centre[1] - start[1]) * part)


def _ends(figure: _Figure) -> None:
    for name, way in zip(figure.ends, (-1, 1), strict=True):
        x, y = figure.at(way * figure.reach, 0.0)
        figure.drawing.square((x, y), 7.0, "stake end-stake")
        figure.drawing.text(name, (x + way * 22.0, y + 6.0), "end")


def _names(figure: _Figure, short: bool) -> None:
    """Name the measures on the arc that stands there while none is given."""
    base, apex = (figure.base - height * figure.scale for height in (0.0, figure.apex))
    figure.words(say("measure.sagitta"), 190.0, base - 10.0, "number", "quiet", "start")
    if short:
        return
    figure.drawing.lines([[figure.at(0.0, figure.rise), figure.at(0.0, figure.apex)]], "line soft")
    # Outside the straights, beside their corner: within them it would lie on one.
    beside = figure.at(figure.reach * 18.0 / (base - apex), 0.0)[0] + 4.0
    figure.words(say("measure.external"), beside, apex + 8.0, "number", "quiet", "start")
    tangent = say("measure.tangent_length")
    right = max(100.0, text_width(tangent, "number") + 6.0)
    figure.words(tangent, right, (base + apex) / 2 - 12.0, "number", "quiet", "end")
    figure.words(say("numbers.takes_shape"), _MIDDLE, figure.room.words, "number", "quiet")


def _values(figure: _Figure, arc: Arc, tape: Tape, measure: str) -> None:
    """Write the chord and the mid-ordinate, and large the measure in focus."""
    base, crown = figure.base, figure.base - figure.rise * figure.scale
    beside, hot = figure.at(0.0, 0.0)[0] + 12.0, "hot"
    if measure not in ("sagitta", "arc_length", "radius", "external"):
        low = base - crown < 22.0
        figure.words(
            tape.show(arc.sagitta), beside, crown - 12.0 if low else (base + crown) / 2 + 2.0, "number", "", "start"
        )
    value = getattr(arc, measure) if measure in arc.measures() else None
    if value is None:
        return
    text = shown(measure, value, tape)
    apex = figure.base - figure.apex * figure.scale
    places = {
        "chord": (_MIDDLE, base + 20.0, "middle"),
        "central_angle": (_MIDDLE, base + 20.0, "middle"),
        "sagitta": (beside, (base + crown) / 2 if base - crown > 34.0 else crown - 14.0, "start"),
        "arc_length": (_MIDDLE, (base + crown) / 2 if base - crown > 30.0 else crown - 16.0, "middle"),
        "radius": (beside, base + 18.0, "start"),
        "external": (beside, (crown + apex) / 2, "start"),
        "tangent_length": (figure.at(-0.5 * figure.reach, 0.0)[0] - 8.0, (base + apex) / 2 - 8.0, "end"),
    }
    x, y, anchor = places[measure]
    long = text_width(text, "big")
    x = max(x, long + 6.0) if anchor == "end" else min(x, _WIDTH - long - 6.0) if anchor == "start" else x
    figure.words(text, x, y, "big", hot, anchor)


def _words(figure: _Figure, asked: _Asked) -> None:
    """Under the drawing: what stands at the ends, and between them what is still open."""
    y = figure.room.words
    free = _WIDTH / 2 - 8.0
    if figure.side is None:
        open_side = say("numbers.other_side")
        figure.words(open_side, _MIDDLE, y, "number", "quiet")
        free -= text_width(open_side, "number") / 2 + 6.0
    elif asked.behind and asked.behind.against:
        building = say("numbers.building")
        figure.words(building, _MIDDLE, min(y, figure.base + figure.sides + HATCH + 10.0), "number", "quiet")
        free -= text_width(building, "number") / 2 + 6.0
    told = dict(zip("AB", asked.ends, strict=True))
    for end, (x, anchor) in zip(figure.ends, ((6.0, "start"), (_WIDTH - 6.0, "end")), strict=True):
        name = _cut(told[end], free)
        if name:
            figure.words(name, x, y, "number", "quiet", anchor)


def _cut(name: str, width: float) -> str:
    """Return a name, cut where it is too wide."""
    if text_width(name, "number") <= width:
        return name
    while name and text_width(f"{name}…", "number") > width:
        name = name[:-1]
    return f"{name.rstrip()}…" if name else ""
