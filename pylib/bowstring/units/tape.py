"""Lengths as a tape shows them: rounded to its finest mark, in the crew's unit, with carries right."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property, lru_cache

from bowstring.errors import BadJob, bad
from bowstring.units.echo import quoted
from bowstring.units.lengths import FOOT, INCH, UNITS, read_length
from bowstring.units.numerals import either
from bowstring.words import say

_METRE, _MILLIMETRE = Fraction(1), Fraction(1, 1000)

# A unit's marks from coarse to fine, in inches, feet, metres or millimetres, and which is the default.
_MARKS: dict[str, tuple[Fraction, ...]] = {
    "ft-in": tuple(Fraction(1, below) for below in (2, 4, 8, 16, 32)),
    "ft": (Fraction(1, 10), Fraction(1, 100)),
    "m": (Fraction(1, 100), Fraction(1, 200), Fraction(1, 1000)),
    "mm": (Fraction(10), Fraction(5), Fraction(1)),
}
_DEFAULT = {"ft-in": Fraction(1, 8), "ft": Fraction(1, 100), "m": Fraction(1, 200), "mm": Fraction(5)}
_SHOWN_IN = {"ft-in": (INCH, "in"), "ft": (FOOT, "ft"), "m": (_METRE, "m"), "mm": (_MILLIMETRE, "mm")}
_SMALL = (_MILLIMETRE, "mm", 1)
_SMALL_IN = {"ft-in": (INCH, "in", 2), "ft": (FOOT, "ft", 3), "m": _SMALL, "mm": _SMALL}

_SMALL_STEP = {unit: size / 10**places for unit, (size, _name, places) in _SMALL_IN.items()}
"""What the last digit of a small length is, metres."""

_LARGE = {"ft-in": 12 * 10**2, "m": 1000 * 10}
"""From so many of those on a length isn't small: a foot, a metre."""

_FINEST = 9
"""Decimals: what is nearer to a limit than these show is on it but for a float's dust."""

MOST_TEXTS = 4096
"""Lengths whose texts a tape keeps."""

_NUDGE = 10**9
"""One part in so many of a step: two computations of one length that differ in the last bits never show
differently at a half."""


@dataclass(frozen=True)
class Tape:
    """A tape in one unit, held to one mark of that unit's list.

    Attributes:
        unit: "ft-in", "ft", "m" or "mm".
        mark: the finest mark that is held to, metres.

    Raises ``ValueError`` when the mark isn't in the unit's list; ``make_tape`` is the door for a job's value.
    Lengths given to its methods are finite floats in metres; halves round away from zero.
    """

    unit: str
    mark: float

    def __post_init__(self) -> None:
        if _mark_of(self.unit, self.mark) is None:
            raise ValueError(f"no mark of {self.mark!r} m in {self.unit!r}")

    @cached_property
    def _mark(self) -> Fraction:
        """The mark in the unit that it is shown in, exactly."""
        mark = _mark_of(self.unit, self.mark)
        assert mark is not None  # __post_init__ holds it
        return mark

    @cached_property
    def _step(self) -> Fraction:
        """The mark in metres, exactly."""
        return self._mark * _SHOWN_IN[self.unit][0]

    @cached_property
    def _texts(self) -> dict[float, str]:
        """What was shown, by its length in metres: at the next key most of it is shown again."""
        return {}

    @property
    def feet(self) -> bool:
        """Whether the tape reads feet, in inches or in decimals."""
        return self.unit in ("ft-in", "ft")

    def round(self, metres: float) -> float:
        """Return the nearest mark, metres: the correctly rounded product of a count and the exact mark.

        >>> make_tape("m", None).round(3.1713)
        3.17
        """
        step = self._step  # whole numbers divide to the nearest float, and sooner than a Fraction does
        return _count(metres, step) * step.numerator / step.denominator

    def down(self, metres: float) -> float:
        """Return the last mark that is no farther than ``metres`` (0 or more), metres.

        >>> make_tape("m", None).down(0.0149)
        0.01
        """
        step = self._step
        count = int(Fraction(metres) / step)
        # One that is on the next mark but for the last bits of a float is that mark.
        if _count(metres, step) > count and _same(metres, (count + 1) * step):
            count += 1
        return count * step.numerator / step.denominator

    def show(self, metres: float) -> str:
        r"""Return the nearest mark as somebody calls it out, like ``10' 4-7/8"``, ``10.41 ft`` or ``3.170 m``.

        On a tape in metres millimetres under one.

        >>> make_tape("ft-in", None).show(3.17)
        '10\' 4-3/4"'
        >>> make_tape("m", None).show(0.0291)
        '30 mm'
        """
        text = self._texts.get(metres)
        if text is None:
            if len(self._texts) >= MOST_TEXTS:
                self._texts.clear()
            text = self._texts[metres] = self._shown(_count(metres, self._step))
        return text

    def _shown(self, count: int) -> str:
        if self.unit == "ft-in":
            return _feet_inches(count, self._mark.denominator)
        if self.unit == "m" and abs(count * self._mark) < 1:
            return f"{int(count * self._mark * 1000)} mm"
        return self._decimal(count)

    def show_running(self, metres: float) -> str:
        """Return ``show``, but metres throughout on a tape in metres: one of many places along a line or an axis.

        >>> make_tape("m", None).show_running(0.0291)
        '0.030 m'
        """
        return self._decimal(_count(metres, self._step)) if self.unit == "m" else self.show(metres)

    def _decimal(self, count: int) -> str:
        places = _places(self._mark)
        return f"{_tenths(int(count * self._mark * 10**places), places)} {self.unit}"

    def show_whole(self, metres: float) -> str:
        r"""Return a length without rounding: by the coarsest mark of the unit, from the tape's own on, on which it
        stands; in both systems where it stands on none.

        >>> make_tape("ft-in", "1/4 in").show_whole(0.3048 + 0.0254 * 3 / 16)
        '1\' 0-3/16"'
        """
        tape: Tape | None = self
        while tape:
            if math.isclose(tape.round(metres), metres, rel_tol=1e-12):
                return tape.show(metres)
            tape = tape.finer()
        return self.both(metres)

    def show_small(self, metres: float) -> str:
        r"""Return a miss or a cost, finer than the mark: ``0.26 in``, ``0.022 ft``, ``-6.6 mm``; as the tape shows it
        from a foot on in inches, from a metre on in metres, where nobody reads the tape so.

        >>> make_tape("ft-in", None).show_small(-0.0066)
        '-0.26 in'
        >>> make_tape("ft-in", None).show_small(1.293)
        '4\' 2-7/8"'
        """
        _size, name, places = _SMALL_IN[self.unit]
        count = _count(metres, _SMALL_STEP[self.unit])
        if self.unit in _LARGE and abs(count) >= _LARGE[self.unit]:
            return self.show(metres)
        return f"{_tenths(count, places)} {name}"

    def show_over(self, metres: float, limit: float) -> tuple[str, str]:
        """Return ``show_small`` of a size that is over a limit, and of the limit; with as many digits more as it takes
        to tell the two apart.

        >>> make_tape("ft-in", None).show_over(0.006352, 0.00635)
        ('0.2501 in', '0.2500 in')
        """
        size, name, places = _SMALL_IN[self.unit]
        shown = self.show_small(abs(metres)), self.show_small(limit)
        while shown[0] == shown[1] and places < _FINEST:
            places += 1
            over, under = (_tenths(_count(length, size / 10**places), places) for length in (abs(metres), limit))
            shown = f"{over} {name}", f"{under} {name}"
        return shown

    def show_cost(self, metres: float) -> str:
        """Return ``show_small`` of a size, but one that would show as nothing as less than the smallest that shows."""
        least = float(_SMALL_STEP[self.unit])
        if 0 < abs(metres) < least / 2:
            return say("tape.less_than", least=self.show_small(least))
        return self.show_small(abs(metres))

    def show_near(self, metres: float) -> str:
        r"""Return the size of a difference as somebody reads it off the tape: the nearest mark, ``5/16 in`` or
        ``5 mm``; less than a mark where it's nearer to none.

        >>> make_tape("ft-in", None).show_near(-0.0066), make_tape("ft-in", None).show_near(0.001)
        ('1/4 in', 'less than 1/8 in')
        """
        if metres and not self.round(metres):
            return say("tape.less_than", least=self.show_mark())
        return self._called(abs(metres))

    def show_up(self, metres: float) -> str:
        """Return the first mark that is no less than ``metres`` (0 or more), written as ``show_near`` writes it.

        >>> make_tape("ft-in", None).show_up(0.0066)
        '3/8 in'
        """
        mark = self.down(metres)
        return self._called(mark if math.isclose(mark, metres, rel_tol=1e-9) else mark + self.mark)

    def show_limit(self, metres: float) -> str:
        """Return a limit by the coarsest mark of the unit, from the tape's own on, on which it stands, written as
        ``show_near`` writes it; with ``show_small`` where it stands on none.

        >>> make_tape("ft-in", None).show_limit(0.00635), make_tape("ft-in", None).show_limit(0.006)
        ('1/4 in', '0.24 in')
        """
        tape: Tape | None = self
        while tape:
            if math.isclose(tape.round(metres), metres, rel_tol=1e-12):
                return tape._called(metres)
            tape = tape.finer()
        return self.show_small(metres)

    def show_past(self, metres: float, limit: float) -> tuple[str, str]:
        """Return a size that is over a limit, and the limit, as the tape reads both; finer where that wouldn't tell the
        two apart.

        >>> make_tape("ft-in", None).show_past(-0.0095, 0.00635), make_tape("ft-in", None).show_past(0.0066, 0.00635)
        (('3/8 in', '1/4 in'), ('0.26 in', '0.25 in'))
        """
        size, step = self.round(abs(metres)), _SMALL_STEP[self.unit]
        most = max(limit, float(_count(limit, step) * step))  # what the limit reads, where it stands on no mark
        texts = self.show_near(metres), self.show_limit(limit)
        if size > most and not math.isclose(size, most, rel_tol=1e-9) and texts[0] != texts[1]:
            return texts
        return self.show_over(metres, limit)

    def _called(self, metres: float) -> str:
        """Return ``show``, with inches under a foot in words."""
        shown = self.show(metres)
        under = self.unit == "ft-in" and "'" not in shown
        return say("tape.inches", inches=shown.removesuffix('"')) if under else shown

    def show_mark(self) -> str:
        """Return the mark itself: ``1/8 in``, ``0.01 ft`` or ``5 mm``."""
        return self.show(self.mark) if self.unit == "m" else self.listed_mark()

    def listed_mark(self) -> str:
        """Return the mark as the unit's list has it: ``1/8 in``, ``0.01 ft``, ``0.005 m`` or ``5 mm``."""
        return _mark_text(self.unit, self._mark)

    def finer(self) -> Tape | None:
        """Return the tape with the next finer mark of the unit's list, or None when there is none."""
        marks = _MARKS[self.unit]
        place = marks.index(self._mark) + 1
        return _tape(self.unit, marks[place]) if place < len(marks) else None

    def seen_in(self, unit: str | None) -> Tape:
        """Return the tape that somebody has who reads another unit: its coarsest mark that is no coarser than this
        one's, or its finest where all are. ``None`` is this tape's own unit.

        >>> make_tape("ft-in", "1/8 in").seen_in("mm").show_mark(), make_tape("mm", "1 mm").seen_in("ft").show_mark()
        ('1 mm', '0.01 ft')
        """
        if unit is None or unit == self.unit:
            return self
        marks = [_tape(unit, mark) for mark in _MARKS[unit]]
        return next((one for one in marks if not one.coarser(self)), marks[-1])

    def coarser(self, other: Tape) -> bool:
        """Tell whether this tape's mark is coarser than another's."""
        return self.mark > other.mark and not math.isclose(self.mark, other.mark, rel_tol=1e-9)

    def both(self, metres: float) -> str:
        r"""Return a length in both systems, the tape's own first, for the echo; "about" where it isn't exact.

        Feet and inches to 1/32 in; feet to 4 places; metres and millimetres to 0.1 mm, or whole millimetres. In metres
        millimetres stand first under one.

        >>> make_tape("m", None).both(3.048)
        '3.048 m = 3048 mm (10\' 0")'
        """
        ticks = _count(metres, INCH / 32)
        inches = _feet_inches(ticks, 32)
        exact = _same(metres, ticks * INCH / 32)
        if self.feet:
            feet = _decimal(_count(metres, FOOT / 10**4) * Fraction(1, 10**4), 4)
            return say("tape.both_exact" if exact else "tape.both_about", inches=inches, feet=f"{feet} ft")
        metric = self._metric(metres)
        return say("tape.with_inches" if exact else "tape.with_inches_about", metric=metric, inches=inches)

    def _metric(self, metres: float) -> str:
        """Return metres and millimetres, the one that is shown first."""
        tenths = _count(metres, _MILLIMETRE / 10)
        whole = tenths % 10 == 0
        texts = [
            f"{_decimal(Fraction(tenths, 10**4), 3 if whole else 4)} m",
            f"{_decimal(Fraction(tenths, 10), 0 if whole else 1)} mm",
        ]
        first, other = reversed(texts) if self.unit == "mm" or abs(tenths) < 10**4 else texts
        exact = _same(metres, tenths * _MILLIMETRE / 10)
        return say("tape.metric" if exact else "tape.metric_about", first=first, other=other)


def make_tape(unit: str, value: object, field: str = "mark") -> Tape:
    """Return the tape of a job: ``value`` is the mark as typed, or None for the unit's default.

    Raises:
        BadJob: when the value is no length, could be read two ways, or isn't in the unit's list of marks.
        ValueError: when ``unit`` is no unit (the caller's mistake, not the job's).

    >>> make_tape("m", "5 mm").mark
    0.005
    """
    if unit not in UNITS:
        raise ValueError(f"no such unit: {unit!r}")
    if value is None:
        return _tape(unit, _DEFAULT[unit])
    marks = either([_mark_text(unit, mark) for mark in _MARKS[unit]])
    try:
        length = read_length(value, unit, field, bare=False)
    except BadJob as why:
        if why.key in ("length.bare", "length.bare_fraction"):
            raise  # its remedy names the readings
        raise BadJob(field, why.wrong, say("tape.marks", marks=marks), why.key) from None
    mark = _mark_of(unit, length.metres)
    if mark is None:
        raise bad(field, "tape.no_mark", typed=quoted(length.typed), marks=marks)
    return _tape(unit, mark)


@lru_cache(64)  # more than there are: each keeps its mark and its step
def _tape(unit: str, mark: Fraction) -> Tape:
    return Tape(unit, float(mark * _SHOWN_IN[unit][0]))


def _mark_of(unit: str, metres: float) -> Fraction | None:
    """Return the mark of the unit's list that is ``metres`` long, but for the last bits of a float."""
    marks = _MARKS.get(unit, ())
    return next((mark for mark in marks if _same(metres, mark * _SHOWN_IN[unit][0])), None)


def _same(metres: float, exact: Fraction) -> bool:
    """Return whether a float is ``exact`` within a few of its last bits."""
    return math.isclose(metres, float(exact), rel_tol=2.0**-50, abs_tol=0.0)


def _count(metres: float, step: Fraction) -> int:
    """Return how many steps are nearest to ``metres``, halves away from zero.

    floor(m/step + 1/2 + nudge) in whole numbers: exact, and a tenth of the time of Fractions, which a sheet feels.
    """
    over, under = abs(metres).as_integer_ratio()
    over, under = over * step.denominator, under * step.numerator
    count = (2 * _NUDGE * over + (_NUDGE + 2) * under) // (2 * _NUDGE * under)
    return -count if metres < 0 else count


def _tenths(count: int, places: int) -> str:
    """Return a count of the last of so many decimals as a number; never ``-0``."""
    whole, rest = divmod(abs(count), 10**places)
    sign = "-" if count < 0 else ""
    return f"{sign}{whole}.{rest:0{places}d}" if places else f"{sign}{whole}"


def _decimal(value: Fraction, places: int) -> str:
    """Return a value that has no more than ``places`` decimals with exactly that many; never ``-0``."""
    count = int(abs(value) * 10**places)
    return _tenths(-count if value < 0 else count, places)


@lru_cache(32)  # a long layout shows thousands of lengths by one mark
def _places(mark: Fraction) -> int:
    """Return how many decimals a decimal mark has."""
    return next(places for places in range(4) if (mark * 10**places).denominator == 1)


def _feet_inches(count: int, below: int) -> str:
    """Return a count of 1/``below`` inches as ``10' 4-7/8"``, the fraction reduced, no feet under one."""
    feet, rest = divmod(abs(count), 12 * below)
    inches, over = divmod(rest, below)
    text = f"{inches}"
    if over:
        shared = math.gcd(over, below)
        part = f"{over // shared}/{below // shared}"
        text = f"{inches}-{part}" if inches or feet else part
    return ("-" if count < 0 else "") + (f"{feet}' {text}\"" if feet else f'{text}"')


def _mark_text(unit: str, mark: Fraction) -> str:
    return f"{mark if unit == 'ft-in' else _decimal(mark, _places(mark))} {_SHOWN_IN[unit][1]}"
