"""The lines of a handout, with the numbers that a learner fills in."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from math import degrees, hypot

from bowstring.wall.bend import miss_at
from bowstring.wall.errors import moved
from bowstring.wall.hand_sum import bow_sum, hand_sum, next_sagitta
from bowstring.wall.parabola import Gap
from bowstring.wall.shape import Given, share
from bowstring.wall.triangles import FAR, FEET, METRES, SLIP, lean
from bowstring.words import say

BLANK_START, BLANK_END = "\ue000", "\ue001"
"""Around a number that is a blank on the learner's page."""


def _blank(text: str) -> str:
    return f"{BLANK_START}{text}{BLANK_END}"


def lines_of(lesson: int, given: Given) -> list[str]:
    """Return the lines of a lesson's handout."""
    return list(_LINES[lesson](given))


def _bow(given: Given) -> Iterator[str]:
    half, out, square, rest, radius = bow_sum(given)
    yield say("handout.1.parts", arc=_blank(say("handout.1.arc")), chord=_blank(say("handout.1.chord")))
    yield say("handout.1.product", half=half, square=_blank(square))
    yield say("handout.1.rest", square=_blank(square), out=out, rest=_blank(rest))
    yield say("handout.1.radius", rest=_blank(rest), out=out, radius=_blank(radius), unit=given.unit_word)


def _square(given: Given) -> Iterator[str]:
    feet = given.tape.feet
    far, slip, size = FAR[feet], SLIP[feet], given.size
    yield say("handout.2.slip", error=given.tape.show_near(slip), far=given.tape.show(far))
    yield say("handout.2.rule", error=given.tape.show_near(slip), far=given.tape.show(far))
    for along, out, long in FEET if feet else METRES:
        sides = "-".join(f"{side:g}" for side in (along, out, long))
        off = given.tape.show_small(lean(along * size, out * size, slip) * far)
        yield say("handout.2.one", sides=sides, off=_blank(off))
    yield say("handout.2.where", at_m=_blank(say("handout.2.nothing")), end=_blank(say("handout.2.off")))


def _halving(given: Given) -> Iterator[str]:
    first, second = given.rounds[0], given.rounds[1]
    for number, one in ((1, first), (2, second)):
        numbers = [given.show(metres) for metres in (one.half, one.sagitta, one.half_chord)]
        half, out, long = numbers if number == 1 else map(_blank, numbers)
        yield say("handout.3.round", round=number, half=half, out=out, long=long)
    yield say("handout.3.half", word=_blank(say("handout.3.half_word")))
    yield say("handout.3.proof", square=_blank(say("handout.3.square")), length=_blank(say("handout.3.length")))


def _quarter(given: Given) -> Iterator[str]:
    sum_ = hand_sum(given)
    half_long = hypot(given.half, given.sagitta) / 2
    following = hypot(half_long, next_sagitta(given))
    names = {"chord": given.show(given.chord), "half": given.decimal(given.half), "unit": given.unit_word}
    yield say("handout.4.names", **names)
    yield say("handout.4.why", half=_blank("1/2"), other=_blank("1/2"), quarter=_blank("1/4"))
    values = {
        "half": _blank(given.decimal(half_long)),
        "next": _blank(sum_.next),
        "long": _blank(given.decimal(following)),
    }
    yield say("handout.4.climb", **values)
    yield say("handout.4.more", longer=_blank(say("handout.4.longer")), more=_blank(say("handout.4.more_word")))


def table_of(given: Given) -> list[list[str]]:
    """Return the head and four arcs on one string: mid-ordinate, bend, h, h - a, next, a quarter, miss."""
    small = "in" if given.tape.feet else "mm"
    names = (("out", given.unit_word), ("bend", ""), ("long", given.unit_word), ("past", given.unit_word))
    columns = (*names, ("next", small), ("quarter", small), ("miss", small))
    rows = [[", ".join(filter(None, (say(f"handout.4.{name}"), unit))) for name, unit in columns]]
    for part in (1 / 19, given.sagitta / given.half, 10 / 19, 1.0):
        one = Given(given.chord, given.half * part, given.tape)
        long = hypot(one.half, one.sagitta)
        lengths = [one.decimal(metres) for metres in (long, one.sagitta**2 / (long + one.half))]
        turned = f"{2 * degrees(one.arc.half_angle):.1f}°"
        fine = [
            one.fine(metres) for metres in (next_sagitta(one), one.sagitta / 4, next_sagitta(one) - one.sagitta / 4)
        ]
        rows.append([one.decimal(one.sagitta), turned, *lengths, *fine])
    return rows


def _errors(given: Given) -> Iterator[str]:
    off = moved(given, "M", given.inch)
    yield say("handout.5.given", wrong=given.inch_shown)
    yield say("handout.5.hint")
    for name in ("Q1", "R1", "R2"):
        yield say("handout.5.one", stake=name, off=_blank(given.small(off.off[name])))
    yield say("handout.5.count", halving=_blank(str(len(off.dragged))), ordinates=_blank("0"))


def _parabola(given: Given) -> Iterator[str]:
    gap = Gap(given)
    x = given.half / 2
    yield say("handout.6.given", chord=given.show(given.chord), out=given.show(given.sagitta))
    yield say(
        "handout.6.quarters",
        quarter=_blank(given.show(given.sagitta / 4)),
        again=_blank(given.show(given.sagitta / 16)),
    )
    yield say("handout.6.up", away=given.show(x), parabola=_blank(given.fine(gap.parabola(x))))
    yield say(
        "handout.6.circle", away=given.show(x), circle=given.fine(gap.circle(x)), gap=_blank(given.fine(gap.at(x)))
    )
    yield say("handout.6.differ", there=given.fine(miss_at(given, 2 * degrees(given.arc.half_angle))))
    yield say("handout.6.share", share=f"{share(given.arc.half_angle):.4f}")


_LINES: dict[int, Callable[[Given], Iterator[str]]] = {
    1: _bow,
    2: _square,
    3: _halving,
    4: _quarter,
    5: _errors,
    6: _parabola,
}
