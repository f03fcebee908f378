"""Which numbers a lesson takes: the job's or the class's where its point can be told with them, else its own."""

from __future__ import annotations

from typing import NamedTuple

from bowstring.wall.bend import BENDS, bent
from bowstring.wall.shape import Given

_FLAT = 0.01
_MISSES = 0.1
"""Mid-ordinate over half the chord from which a miss of a quarter isn't lost in rounding."""
_MOST = 4.6
"""Nearly a whole circle: nothing more bent than this is drawn at all."""
_SUITS = {
    1: (_FLAT, _MOST),
    2: (_FLAT, _MOST),
    3: (_FLAT, _MOST),
    4: (_MISSES, bent(Given.own(), BENDS).sagitta / Given.own().half),  # as far as its slider goes
    5: (_FLAT, _MOST),
    6: (_MISSES, 1.0),  # past a half circle the circle stands beside its string, where no parabola is
}
"""For each lesson the least and the most that a mid-ordinate may be of half the chord."""


class Suited(NamedTuple):
    """What a lesson is shown on; ``why``: ``flat`` or ``bent`` where what was given is too much so, else nothing."""

    given: Given
    why: str = ""


def is_drawn(given: Given) -> bool:
    """Tell whether an arc is far enough from a whole circle to be drawn over its string."""
    return given.sagitta <= _MOST * given.half


def for_lesson(lesson: int, given: Given | None) -> Suited:
    """Return the numbers where they suit a lesson, else the lesson's own in the same unit."""
    if given is None:
        return Suited(Given.own())
    least, most = _SUITS[lesson]
    bend = given.sagitta / given.half
    if least <= bend <= most:
        return Suited(Given(given.chord, given.sagitta, given.tape))
    return Suited(Given.own(given.tape.unit), "flat" if bend < least else "bent")
