"""The arc that a wall shows, its numbers as they are written, and its points on the board."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import atan, cos, hypot

from bowstring.drawings.svg import Point
from bowstring.drawings.turn import turn_of
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point as Place
from bowstring.report.forms.answer import Answer
from bowstring.units.sizes import FOOT, INCH
from bowstring.units.tape import Tape, make_tape

OWN = {True: (38 * FOOT, 5.25 * FOOT), False: (12.0, 1.65)}
"""A lesson's own chord and mid-ordinate, metres: for feet and for metres."""
MOST_ROUNDS = 4
"""Rounds that are drawn and told by their numbers; more of them are counted."""


@dataclass(frozen=True)
class Given:
    """A chord and its mid-ordinate in metres, with the tape that shows them.

    ``mirrored``: the curve is on the right of somebody at A who faces B, so that A stands at the right of the picture.
    """

    chord: float
    sagitta: float
    tape: Tape
    title: str = ""
    mirrored: bool = False
    levels: int = 3

    @classmethod
    def of_answer(cls, answer: Answer) -> Given:
        """Return what stands on the ground: the arc of the stakes."""
        arc = answer["staked"]
        tape = make_tape(answer["unit"], answer["mark"])
        mirrored = turn_of(answer["side"]) < 0
        return cls(arc["chord"], arc["sagitta"], tape, answer["title"], mirrored, answer["levels"])

    @classmethod
    def own(cls, unit: str = "ft-in") -> Given:
        """Return a lesson's own numbers, in a unit."""
        tape = make_tape(unit, None)
        return cls(*OWN[tape.feet], tape)

    @property
    def half(self) -> float:
        """Half the chord, metres."""
        return self.chord / 2

    @cached_property
    def arc(self) -> Arc:
        """The arc: tan(I/4) is the mid-ordinate over half the chord."""
        return arc_of(self.chord, self.sagitta)

    @cached_property
    def rounds(self) -> list[Round]:
        """The rounds of halving that are told."""
        return [Round(self.arc.part(2**number)) for number in range(min(self.levels, MOST_ROUNDS))]

    @property
    def ends(self) -> tuple[str, str]:
        """The names at the left and at the right of the picture."""
        return ("B", "A") if self.mirrored else ("A", "B")

    def bent(self, sagitta: float) -> Given:
        """Return another arc on the same string."""
        return Given(self.chord, sagitta, self.tape, self.title, self.mirrored, self.levels)

    def shape(self, least: float, most: float = 99.0) -> tuple[Given, str]:
        """Return the arc as it can be drawn, and how it was bent for that: ``flatter``, ``steeper`` or nothing."""
        bent = min(max(self.sagitta / self.half, least), most) * self.half
        if bent == self.sagitta:
            return self, ""
        return self.bent(bent), "steeper" if bent > self.sagitta else "flatter"

    # --- numbers as they are written

    def show(self, metres: float) -> str:
        """A length as the tape shows it."""
        return self.tape.show(metres)

    def small(self, metres: float) -> str:
        """A miss, finer than the tape."""
        return self.tape.show_small(metres)

    def fine(self, metres: float) -> str:
        """A miss or what it is reckoned from, in inches or millimetres however large, so that one can be taken from the
        other."""
        return f"{metres / INCH:.2f} in" if self.tape.feet else f"{metres * 1000:.1f} mm"

    @property
    def size(self) -> float:
        """What sums by hand are in: feet or metres."""
        return FOOT if self.tape.feet else 1.0

    def decimal(self, metres: float, places: int = 3) -> str:
        """A length in decimals, as somebody works with it by hand."""
        return f"{metres / self.size:.{places}f}"

    @property
    def unit_word(self) -> str:
        """The unit of sums by hand."""
        return "ft" if self.tape.feet else "m"

    @property
    def inch(self) -> float:
        """A small mistake that is seen: an inch, or 25 mm."""
        return INCH if self.tape.feet else 0.025

    @property
    def inch_shown(self) -> str:
        """That mistake as somebody says it."""
        return self.tape.show(self.inch) if self.tape.unit == "ft-in" else self.small(self.inch)


@dataclass(frozen=True)
class Round:
    """One round of halving: an arc over a string."""

    arc: Arc

    @property
    def half(self) -> float:
        """Half the string, metres."""
        return self.arc.chord / 2

    @property
    def sagitta(self) -> float:
        """What is squared off, metres."""
        return self.arc.sagitta

    @property
    def half_chord(self) -> float:
        """From an end of the string to the stake, metres: the next round's string."""
        return hypot(self.half, self.sagitta)


def arc_of(chord: float, sagitta: float) -> Arc:
    """Return the arc over a chord with a mid-ordinate, metres; raises ``ZeroDivisionError`` where there is none."""
    half = chord / 2
    whole = half * half + sagitta * sagitta
    return Arc(
        whole / (2 * sagitta),
        2 * atan(sagitta / half),
        chord * sagitta / whole,
        (half - sagitta) * (half + sagitta) / whole,
    )


def share(half_angle: float) -> float:
    """Return the next mid-ordinate as a share of this one: 1 / (4 cos²(I/8))."""
    return 1 / (4 * cos(half_angle / 4) ** 2)


class Frame:
    """Metres onto the board: one scale for both ways, fitted into a box and centered in it, low in it."""

    def __init__(self, points: list[Place], box: tuple[float, float, float, float]) -> None:
        left, top, right, bottom = box
        xs, ys = [one.x for one in points], [one.y for one in points]
        wide, high = max(xs) - min(xs), max(ys) - min(ys)
        self.scale = min((right - left) / wide, (bottom - top) / max(high, 1e-9))
        self._x = (left + right) / 2 - self.scale * (min(xs) + max(xs)) / 2
        self._y = bottom + self.scale * min(ys)

    def at(self, place: Place) -> Point:
        """Return where a place is on the board."""
        return self._x + self.scale * place.x, self._y - self.scale * place.y

    def arc(self, arc: Arc, start: float = 0.0, end: float = 1.0, steps: int = 64) -> list[Point]:
        """Return points along an arc, from one part of it to another."""
        return [self.at(arc.point_at(start + (end - start) * step / steps)) for step in range(steps + 1)]


def outline(arc: Arc) -> list[Place]:
    """Return places that reach as far as an arc and its string do."""
    return [arc.point_at(step / 32) for step in range(33)]


def plain(text: str) -> str:
    """Return a decimal without the zeros that tell nothing: ``19`` for ``19.00``."""
    return text.rstrip("0").rstrip(".") if "." in text else text
