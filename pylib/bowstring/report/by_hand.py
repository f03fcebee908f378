"""Each level's sagitta worked by hand: lines whose printed figures give what is printed."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction
from itertools import product

from bowstring.analysis.rule import next_sagitta
from bowstring.geometry.arc import Arc
from bowstring.layout.layout import Layout
from bowstring.report.numbers import decimal, decimal_unit
from bowstring.units.lengths import unit_size
from bowstring.units.tape import Tape
from bowstring.words import say

ENOUGH = 2000
"""Units of the last digit written that a difference must have to be worked with by hand."""

GUARD = 8
"""The most digits that worked figures get beyond those of their result."""


def by_hand(layout: Layout, level: int) -> list[str]:
    """Return the worked lines of a level's sagitta: from the drawing, from the radius, or from the level before."""
    tape, staked = layout.job.shown, layout.staked
    if level > 1:
        return _next(tape, staked.part(2 ** (level - 2)))
    drawn = any(given.field == "sagitta" for given in layout.settled.pair)
    if drawn and layout.staked is layout.settled.arc:
        return [say("hand_work.first")]
    return _first(tape, staked)


def _first(tape: Tape, arc: Arc) -> list[str]:
    """The first sagitta from radius and half chord, h²/(R + root of (R² - h²)), past a half circle R + the root.

    With as few digits as give, worked with as printed, what is printed.
    """
    over = arc.cosine < 0
    with localcontext() as context:
        context.prec = 50
        metres = (arc.radius, arc.chord / 2, abs(arc.radius * arc.cosine), arc.sagitta)
        radius, half, root, sagitta = (_in_unit(tape, length) for length in metres)
        least = max(_places(decimal(tape, arc.sagitta)), 1 - sagitta.adjusted())
        for places, guard, finer in product(range(least, least + 3), range(GUARD), (0, 1)):
            r, h = (_rounded(value, places + guard + finer) for value in (radius, half))
            q = _rounded(root, places + guard)
            total = r + q
            found = total if over else _rounded(h * h / total, places)
            found = _rounded(found, places)
            worked = _rounded(max(r * r - h * h, Decimal(0)).sqrt(), places + guard)
            if worked == q and found == _rounded(sagitta, places):
                break
    return [
        say("hand_work.first_root", radius=_short(r), half=_short(h), root=f"{q:f}", unit=decimal_unit(tape)),
        say(
            "hand_work.first_over" if over else "hand_work.first_under",
            radius=_short(r),
            half=_short(h),
            root=f"{q:f}",
            total=f"{total:f}",
            first=f"{found:f}",
            unit=decimal_unit(tape),
            shown=tape.show(arc.sagitta),
        ),
    ]


def _next(tape: Tape, longer: Arc) -> list[str]:
    """The worked lines that turn the level before into this level's sagitta."""
    half, sagitta = longer.chord / 2, longer.sagitta
    new_chord, following = next_sagitta(half, sagitta)
    with localcontext() as context:
        context.prec = 50
        exact = [_in_unit(tape, metres) for metres in (half, sagitta, new_chord, following)]
        # As many decimals as a hand wants, and no fewer than two figures of the result.
        least = max(_places(decimal(tape, following)), 1 - exact[3].adjusted())
        # On a flat arc new chord less half chord is too small for the digits written: the same identity without it.
        flat = exact[2] - exact[0] < ENOUGH * Decimal(10) ** -least
        numbers = _worked(tape, exact, least, flat, tape.show(following))
    numbers |= {"unit": decimal_unit(tape), "shown": tape.show(following)}
    return [say("hand_work.chord", **numbers), say("hand_work.flat" if flat else "hand_work.sagitta", **numbers)]


def _worked(tape: Tape, exact: Sequence[Decimal], least: int, flat: bool, shown: str) -> dict[str, str]:
    """Return the worked lines' figures: with as few digits as give, worked with as printed, what is printed.

    ``exact`` are half, sagitta, new chord and next sagitta in the unit that is written. The next sagitta has ``least``
    decimals, or one or two more where its nearest mark would not be ``shown`` otherwise.
    """
    half, sagitta, chord, following = exact
    for places, guard, finer in product(range(least, least + 3), range(GUARD), (0, 1)):
        # A root rounded to as many digits as what goes into it often misses its last one: then those get one more.
        h, s = (_rounded(value, places + guard + finer) for value in (half, sagitta))
        c = _rounded(chord, places + guard)
        more, twice, both = c - h, 2 * s, 2 * (c + h)
        found = _rounded(c * s / both if flat else c * more / twice, places)
        held = tape.show(float(found) * float(unit_size(tape.unit))) == shown
        root = _rounded((h * h + s * s).sqrt(), places + guard)
        if held and root == c and found == _rounded(following, places):
            break
    names = {"half": _short(h), "sagitta": _short(s), "chord": f"{c:f}"}
    return names | {"more": f"{more:f}", "twice": _short(twice), "both": f"{both:f}", "next": f"{found:f}"}


def _in_unit(tape: Tape, metres: float) -> Decimal:
    """Return a length in the unit that is worked in, with all its digits."""
    exact = Fraction(metres) / unit_size(tape.unit)
    return Decimal(exact.numerator) / Decimal(exact.denominator)


def _rounded(value: Decimal, places: int) -> Decimal:
    return value.quantize(Decimal(10) ** -places, ROUND_HALF_UP)


def _short(value: Decimal) -> str:
    """Return a figure without the zeros that end its decimals."""
    text = f"{value:f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _places(number: str) -> int:
    return len(number.partition(".")[2])
