"""From the answer's frame (metres, A at the origin, x toward B, y toward the arc) to places on paper.

The string lies level and the curve rises over it; at which end A stands is ``turn.turn_of``'s to say. The paper is
turned, never the text.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.drawings.svg import Command, Point
from bowstring.drawings.turn import turn_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.stakes import StakeRow
from bowstring.units.sizes import FOOT, INCH

FLAT = 1 / 12
"""A rise under this part of the chord is drawn too large."""

_TALLEST = 0.3  # of the chord: how high a stretched rise may be drawn
_WITH_GAP = 0.5  # of the chord: rise and gap between the arcs together
_SAMPLES = 72
_BACK = 27.0  # how far a straight is drawn back from its end: the step says no more than "well back"
_CUT = 62.0  # how far a straight is drawn toward a corner that is off the drawing
LEAST_GAP = 11.0
"""Least gap between the staked and the drawn arc, drawing units: a stake and a mark stand clear of each other."""


def stretch_of(rise: float, chord: float, gap: float = 0.0) -> int:
    """Return the round factor by which a rise is drawn too large: 1 unless the arc is flat.

    ``gap``, the distance between staked and drawn arc in metres, is stretched alike and has to find room too.
    """
    if rise >= FLAT * chord:
        return 1
    room = max(1.0, min(_TALLEST * chord / rise, _WITH_GAP * chord / (rise + gap)))
    power: int = 10 ** math.floor(math.log10(room))
    return max(step * power for step in (1, 2, 5) if step * power <= room)


@dataclass(frozen=True)
class Paper:
    """A map onto paper. The string lies at y = 0, A at x = 0."""

    scale: float
    """Drawing units per metre along the string."""
    stretch: int
    """How many times too large distances across the string are drawn."""
    radius: float
    half_angle: float
    chord: float
    rise: float
    off: bool = False
    """Whether the corner of the straights is off the drawing."""
    turn: int = 1
    """Which way B lies from A: 1 to the right, -1 to the left."""

    def without_corner(self) -> Paper:
        """Return the map of the same arc whose straights' corner is off the drawing."""
        return Paper(**{**vars(self), "off": True})

    def drawn(self, scale: float, stretch: int) -> Paper:
        """Return the map of the same arc by another scale and stretch."""
        return Paper(**{**vars(self), "scale": scale, "stretch": stretch})

    def point(self, x: float, y: float) -> Point:
        """Return the place of a point of the frame (metres)."""
        return (x * self.scale * self.turn, -y * self.scale * self.stretch)

    def on_arc(self, angle: float, radius: float | None = None) -> Point:
        """Return the arc's point at an angle (radians) from its middle; another radius is concentric."""
        radius = self.radius if radius is None else radius
        # not rise - radius + radius * cos, which loses a millimetre on a radius of a thousand kilometres
        y = self.rise + (radius - self.radius) - 2 * radius * math.sin(angle / 2) ** 2
        return self.point(self.chord / 2 + radius * math.sin(angle), y)

    def outward(self, angle: float) -> Point:
        """Return the unit direction, on paper, square off the drawn curve and away from its centre."""
        x, y = math.sin(angle), -math.cos(angle) / self.stretch
        size = math.hypot(x, y)
        return (x * self.turn / size, y / size)

    def ahead(self, angle: float) -> Point:
        """Return the unit direction, on paper, of the curve at an angle, travelling from A to B."""
        x, y = math.cos(angle), math.sin(angle) * self.stretch
        size = math.hypot(x, y)
        return (x * self.turn / size, y / size)

    def curve(self, radius: float | None = None) -> list[Command]:
        """Return the arc as cubic curves of at most 30 degrees each, true to 1e-6 of the radius."""
        radius = self.radius if radius is None else radius
        count = max(1, math.ceil(2 * self.half_angle / (math.pi / 6)))
        step = 2 * self.half_angle / count
        pull = 4 / 3 * math.tan(step / 4) * radius
        commands: list[Command] = [("M", self.on_arc(-self.half_angle, radius))]
        for piece in range(count):
            start = -self.half_angle + piece * step
            (ax, ay), (bx, by) = (self._pull(angle, pull) for angle in (start, start + step))
            (x, y), (x2, y2) = self.on_arc(start, radius), self.on_arc(start + step, radius)
            commands.append(("C", (x + ax, y + ay), (x2 - bx, y2 - by), (x2, y2)))
        return commands

    def _pull(self, angle: float, pull: float) -> Point:
        return self.point(pull * math.cos(angle), -pull * math.sin(angle))

    def samples(self, radius: float | None = None) -> list[Point]:
        """Return points along the arc, close enough together to keep labels off it."""
        steps = (-1 + 2 * index / _SAMPLES for index in range(_SAMPLES + 1))
        return [self.on_arc(self.half_angle * step, radius) for step in steps]

    def beside(self, gap: float) -> list[Point]:
        """Return a line beside the arc at a gap (drawing units, positive outward)."""
        angles = [self.half_angle * (-1 + 2 * index / _SAMPLES) for index in range(_SAMPLES + 1)]
        pairs = ((self.on_arc(angle), self.outward(angle)) for angle in angles)
        return [(x + nx * gap, y + ny * gap) for (x, y), (nx, ny) in pairs]

    def angle_of(self, stake: StakeRow, length: float) -> float:
        """Return a stake's angle from the arc's middle (radians); ``length`` is the arc's, metres."""
        return self.half_angle * (2 * stake["along"] / length - 1)

    @property
    def centre(self) -> Point:
        """The arc's centre on paper."""
        return self.point(self.chord / 2, self.rise - self.radius)


def figures_of(answer: Answer) -> dict[str, float]:
    """Return the staked arc's figures (metres, degrees). Raises ``ValueError`` unless finite and positive."""
    staked = answer["staked"]
    figures = {
        "radius": staked["radius"],
        "chord": staked["chord"],
        "sagitta": staked["sagitta"],
        "arc_length": staked["arc_length"],
        "central_angle": staked["central_angle"],
    }
    if not all(math.isfinite(value) and value > 0 for value in figures.values()):
        raise ValueError(f"an arc that can't be drawn: {figures}")
    return figures


def fit(answer: Answer, width: float, height: float, reach: float = 0.0) -> Paper:
    """Return the map that puts the staked arc of an answer into ``width`` by ``height`` drawing units.

    ``reach`` is how far from the string, on the curve's side, something else has to find room (metres); a parallel
    string has its room on its own side.
    Raises ``ValueError`` when a figure is not finite or an arc has no length.
    """
    figures = figures_of(answer)
    chord, rise = figures["chord"], figures["sagitta"]
    half_angle = math.radians(figures["central_angle"]) / 2
    bulge = figures["radius"] if half_angle > math.pi / 2 else chord / 2
    gap = abs(answer["arc"]["radius"] - figures["radius"])
    off = answer["parallel"] or 0.0
    reach = max(reach, off)
    stretch = stretch_of(rise, chord, max(gap, reach - rise, -off))
    scale = min(width / (2 * bulge), height / (max(rise, reach) * stretch))
    return Paper(scale, stretch, figures["radius"], half_angle, chord, rise, turn=turn_of(answer["side"]))


def gap_between(answer: Answer, paper: Paper) -> tuple[float, bool]:
    """Return the drawn arc's distance from the staked one on paper (positive outward), and if it is true."""
    true = (answer["arc"]["radius"] - answer["staked"]["radius"]) * paper.scale * paper.stretch
    shown = math.copysign(max(abs(true), LEAST_GAP), true)
    return shown, shown == true


def drawn_line(answer: Answer, paper: Paper) -> list[Point]:
    """Return points of the drawn arc on paper, moved out where the gap would be too narrow to see."""
    gap, true = gap_between(answer, paper)
    return paper.samples(answer["arc"]["radius"]) if true else paper.beside(gap)


def drawn_ends(answer: Answer) -> dict[str, str]:
    """Return the drawn arc's ends, at the landmarks, by the staked arc's: other ones with an offset."""
    marks = _marks(answer)
    return {name: f"{name}0" if f"{name}0" in marks else name for name in ("A", "B")}


def places_of_ends(answer: Answer, paper: Paper) -> tuple[Point, Point]:
    """Return where the drawn arc's ends lie on paper: beside the string's with an offset."""
    if not answer["offset"]:
        return paper.point(0.0, 0.0), paper.point(paper.chord, 0.0)
    line = drawn_line(answer, paper)
    return line[0], line[-1]


@dataclass(frozen=True)
class Leg:
    """A straight that the ends are found from, on paper: from ``start`` on to the mark ``name``."""

    start: Point
    end: Point
    name: str
    cut: bool = False
    """Whether it ends before it comes to the mark."""

    @property
    def ahead(self) -> Point:
        """Its unit direction."""
        return _unit(self.start, self.end)


def reach_of(answer: Answer) -> float:
    """Return how far over the string the straights reach that the ends are found from (metres), 0 without."""
    marks = _marks(answer)
    return max(0.0, *(marks[name][1] for name in _tops(answer)), 0.0)


def legs_of(answer: Answer, paper: Paper) -> list[Leg]:
    """Return the straights that the ends are found from: none where both ends are on the ground.

    They start at the drawn arc's ends. Where these are moved out on paper, so are the straights.
    """
    marks, tops = _marks(answer), _tops(answer)
    if not tops:
        return []
    first, second = drawn_ends(answer).values()
    true_a, true_b = paper.point(*marks[first]), paper.point(*marks[second])
    at_a, at_b = places_of_ends(answer, paper)
    top, s = paper.point(*marks[tops[0]]), paper.point(*marks["S"])
    ahead, back = _unit(true_a, top), _unit(true_a, s)
    if "P" not in tops:
        foot = (top[0] + at_a[0] - true_a[0], top[1] + at_a[1] - true_a[1])
        behind = math.dist(at_a, foot) if ahead[0] * back[0] + ahead[1] * back[1] > 0 else 0.0
        from_a = Leg(at_a, _on(at_a, back, max(_BACK, behind + _BACK / 2)), "S")
        return [from_a, Leg(at_a, foot, "F"), Leg(foot, at_b, second)]
    behind_b = _unit(true_b, paper.point(*marks["T"]))
    stubs = [Leg(at_a, _on(at_a, back, _BACK), "S"), Leg(at_b, _on(at_b, behind_b, _BACK), "T")]
    if paper.off:
        back_b = _unit(true_b, top)
        return [*stubs, Leg(at_a, _on(at_a, ahead, _CUT), "P", True), Leg(at_b, _on(at_b, back_b, _CUT), "P", True)]
    # The straights are alike on both hands, so that they meet over the middle of their ends.
    corner = _on(at_a, ahead, ((at_a[0] + at_b[0]) / 2 - at_a[0]) / ahead[0])
    return [*stubs, Leg(at_a, corner, "P"), Leg(at_b, corner, "P")]


def _marks(answer: Answer) -> dict[str, Point]:
    return {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}


def _tops(answer: Answer) -> list[str]:
    """The mark that the straights lead to: the corner, or the foot from which B is squared off."""
    found = {"corner": "P", "one-end": "F"}.get(answer["start"])
    return [found] if found is not None else []


def _unit(start: Point, end: Point) -> Point:
    size = math.dist(start, end)
    return ((end[0] - start[0]) / size, (end[1] - start[1]) / size)


def _on(start: Point, ahead: Point, length: float) -> Point:
    return (start[0] + ahead[0] * length, start[1] + ahead[1] * length)


def round_length(target: float, unit: str) -> tuple[float, str, float]:
    """Return a round length up to ``target`` metres: its number, its unit (ft, in, m, mm) and its metres."""
    if unit in ("m", "mm"):
        per = 0.001 if unit == "mm" else 1.0
        steps: Sequence[float] = [step * 10.0**power for power in range(-5, 8) for step in (1, 2, 5)]
        number = max((step for step in steps if step * per <= target), default=steps[0])
        return number, unit, number * per
    feet = [step * 10.0**power for power in range(6) for step in (1, 2, 5)]
    found = max((step for step in feet if step * FOOT <= target), default=0.0)
    if found:
        return found, "ft", found * FOOT
    inches = max((step for step in (0.125, 0.25, 0.5, 1.0, 2.0, 3.0, 6.0) if step * INCH <= target), default=0.125)
    return inches, "in", inches * INCH
