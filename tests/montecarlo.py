"""A crew of many thousands: each stakes the same construction with errors of its own, nonlinearly.

Written apart from the package's propagation: no derivative, no list of sources. Each move is done in the plane with the
numbers that one crew would have read, all crews at once; a place is a complex number a crew. The model is the
contract's: every measured distance has a reading error at each of its two ends; the tape's scale is one number for a
crew's whole job; every driven mark stands off in x and in y; a mark on a string lies off it; a turned angle is wrong.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
import numpy.typing as npt

from bowstring.analysis.triangles import Square
from bowstring.construction import Along, Bisect, CrossTapes, Recipe, Sight, SquareOff, Step, Take, TurnOff

Places = npt.NDArray[np.complex128]
Numbers = npt.NDArray[np.float64]

SLIDES = 12
"""Turns of the sliding tip's iteration: each takes the error by a factor of the slip over the offset."""


@dataclass
class Model:
    """Standard deviations: metres; ``scale`` a part of one; ``angle`` radians."""

    read: float = 0.0
    scale: float = 0.0
    stake: float = 0.0
    line: float = 0.0
    angle: float = 0.0


class Crews:
    """So many crews at work on one recipe.

    ``at`` holds, by mark, where each crew has it; ``failed`` counts moves in which a crew's tapes didn't meet or its
    tip couldn't be squared (it then takes the nearest place).
    """

    def __init__(self, recipe: Recipe, model: Model, count: int, seed: int,
                 known: Mapping[str, float] | None = None,
                 squares: Mapping[str, Square] | None = None) -> None:  # fmt: skip
        """``squares``: the triangle or framing square of each offset, as the sheet prints it."""
        self.model, self.count, self.squares = model, count, squares or {}
        self.rng = np.random.default_rng(seed)
        self.scale = 1 + model.scale * self.rng.standard_normal(count)
        self.true = {name: complex(point.x, point.y) for name, point in recipe.at.items()}
        later = [step for step in recipe.steps if step.level]
        made = {mark for step in later for mark in step.sets}
        self.at: dict[str, Places] = {}
        self.failed = 0
        for name, place in self.true.items():
            if name not in made:
                self.at[name] = np.full(count, place) + self._around((known or {}).get(name, 0.0))
        for step in later:
            self._do(step)

    def _normal(self, size: float) -> Numbers:
        return size * self.rng.standard_normal(self.count) if size else np.zeros(self.count)

    def _around(self, size: float) -> Places:
        """Off in x and, by itself, in y."""
        return self._normal(size) + 1j * self._normal(size)

    def _taped(self, length: float) -> Numbers:
        """What a pull that reads ``length`` really is: a wrong scale, a reading at its start and one at its end."""
        return length * self.scale + self._normal(self.model.read) - self._normal(self.model.read)

    def _do(self, step: Step) -> None:
        for move in step.moves:
            place = self._place(move)
            if move.mark in step.driven:
                place = place + self._around(self.model.stake)
            self.at[move.mark] = place

    def _place(self, move: Any) -> Places:
        if isinstance(move, Take):
            return np.full(self.count, complex(move.point.x, move.point.y))
        if isinstance(move, Bisect):
            return self._middle(move)
        if isinstance(move, Along):
            return self._along(move)
        if isinstance(move, SquareOff):
            return self._slid(move) if move.slide else self._squared(move)
        if isinstance(move, CrossTapes):
            return self._crossed(move)
        assert isinstance(move, TurnOff | Sight)
        return self._sighted(move)

    def _middle(self, move: Bisect) -> Places:
        """Each end tapes toward the middle until both read the same: each pull ends at its own reading of one number,
        the mark goes half way between the two tips."""
        start, end = self.at[move.start], self.at[move.end]
        way = _way(start, end)
        half = abs(self.true[move.end] - self.true[move.start]) / 2
        one, other = start + way * self._taped(half), end - way * self._taped(half)
        return (one + other) / 2 + 1j * way * self._normal(self.model.line)

    def _along(self, move: Along) -> Places:
        way = _way(self.at[move.start], self.at[move.toward])
        length = self._taped(abs(move.length)) * (1 if move.length >= 0 else -1)
        return self.at[move.start] + way * length + 1j * way * self._normal(self.model.line)

    def _squared(self, move: SquareOff) -> Places:
        """Square off a string by a triangle whose three sides are taped, or by a framing square's blade."""
        foot, way = self.at[move.foot], _way(self.at[move.start], self.at[move.end])
        signed = move.length if move.left else -move.length
        turn = self._off_square(self.squares[move.mark])
        out = 1j * way * np.exp(1j * turn) * (1 if signed >= 0 else -1)
        return foot + out * self._taped(abs(signed))

    def _off_square(self, square: Square) -> Numbers:
        """How far each crew's right angle is off, radians: the corner of a triangle of three taped sides (cosine rule),
        or two readings over a framing square's blade."""
        read = self.model.read
        if not square.shape:
            return self._normal(2 * read / square.along)
        sides = square.along, square.out, float(np.hypot(square.along, square.out))
        a, b, c = (side + self._normal(read) - self._normal(read) for side in sides)
        return np.pi / 2 - np.arccos((a * a + b * b - c * c) / (2 * a * b))

    def _slid(self, move: SquareOff) -> Places:
        """A tape hooked at the middle, its tip slid until the two half chords read the same.

        In the frame of the string's true middle the tip is on the hyperbola of the half chords' difference and on the
        circle around the mark that was taken for the middle.
        """
        start, end = self.at[move.start], self.at[move.end]
        way, half = _way(start, end), np.abs(end - start) / 2
        foot = (self.at[move.foot] - (start + end) / 2) / way
        signed = move.length if move.left else -move.length
        hand = 1.0 if signed >= 0 else -1.0
        reach = self._taped(abs(signed))
        # Both half chords have the same scale, so their difference has none.
        apart = self._taped(0.0) - self._taped(0.0)
        x, y = np.zeros(self.count), hand * reach
        for _ in range(SLIDES):
            x = apart / 2 * np.sqrt(1 + y * y / (half * half - apart * apart / 4))
            left = reach * reach - (x - foot.real) ** 2
            y = foot.imag + hand * np.sqrt(np.maximum(left, 0.0))
        self.failed += int(np.count_nonzero(left < 0))
        return (start + end) / 2 + way * (x + 1j * y)

    def _crossed(self, move: CrossTapes) -> Places:
        first, second = self.at[move.first], self.at[move.second]
        return self._met(first, self._taped(move.from_first), second, self._taped(move.from_second), move.left)

    def _met(self, first: Places, one: Numbers, second: Places, other: Numbers, left: bool) -> Places:
        """The crossing of two circles, by the triangle's area (Heron); of tapes that leave a gap, half way between."""
        base = np.abs(second - first)
        area = (base + one + other) * (base + one - other) * (base - one + other) * (one + other - base)
        self.failed += int(np.count_nonzero(area < 0))
        out = np.sqrt(np.maximum(area, 0.0)) / (2 * base)
        along = (base + (one - other) * (one + other) / base) / 2
        gone = np.where(one + other < base, (one + base - other) / 2,
                        np.where(one > other, (one + base + other) / 2, (base - other - one) / 2))  # fmt: skip
        along = np.where(area < 0, gone, along)
        return first + _way(first, second) * (along + 1j * (out if left else -out))

    def _sighted(self, move: TurnOff | Sight) -> Places:
        """A direction turned off at an instrument; a length along it, or the far place where a tape meets it."""
        here = self.at[move.at]
        sight = _way(here, self.at[move.back]) * np.exp(1j * (move.angle + self._normal(self.model.angle)))
        if isinstance(move, TurnOff):
            return here + sight * self._taped(move.length)
        held = (self.at[move.chained] - here) / sight
        left = self._taped(move.length) ** 2 - held.imag**2
        self.failed += int(np.count_nonzero(left < 0))
        return here + sight * (held.real + np.sqrt(np.maximum(left, 0.0)))

    def misses(self, mark: str, centre: complex) -> tuple[Numbers, Numbers]:
        """Return how far each crew's mark is off across the arc around ``centre`` (outward) and along it (from A toward
        B), metres: the difference of two radii, and the radius times the angle."""
        true, way = self.true[mark] - centre, _unit(self.true[mark] - centre)
        off = (self.at[mark] - self.true[mark]) / way
        radius = abs(true)
        # |r + off| - r without the difference of two long lengths.
        across = (off.real * (2 * radius + off.real) + off.imag**2) / (np.abs(radius + off) + radius)
        return across, -radius * np.angle(1 + off / radius)


def _unit(way: complex) -> complex:
    return way / abs(way)


def _way(start: Places, end: Places) -> Places:
    return (end - start) / np.abs(end - start)


def chance_all_within(covariance: Numbers, misses: Sequence[float], count: int, seed: int) -> list[float]:
    """Return the part of ``count`` draws of correlated normals in which all are within each of ``misses``."""
    values, vectors = np.linalg.eigh(covariance)
    root = vectors * np.sqrt(np.maximum(values, 0.0))
    worst = np.abs(_normals(count, len(covariance), seed) @ root.T).max(axis=1)
    return [float(np.mean(worst <= miss)) for miss in misses]


@lru_cache(maxsize=4)
def _normals(count: int, size: int, seed: int) -> Numbers:
    """The same independent draws for every covariance of a size."""
    return np.random.default_rng(seed).standard_normal((count, size))
