"""Reads a job's values out of its objects, one checked value at a time, and keeps how each was read."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.geometry.plane import Point
from bowstring.units.echo import quoted
from bowstring.units.lengths import Length, read_length
from bowstring.units.numerals import Refused, plain
from bowstring.units.slopes import is_plain, read_slope, show_slope
from bowstring.units.stationing import read_station
from bowstring.units.tape import Tape

HIDDEN = frozenset("\u00ad\u061c\u200b\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2060\u2069\ufeff")
"""Signs that turn the reading direction or can't be seen: in a landmark they could show one end as another."""

NOT_TEXT = frozenset({"Cc", "Cs", "Cn", "Co", "Zl", "Zp"})
"""Unicode categories that aren't text: controls, halves of pairs, unassigned, private, line and paragraph ends."""

SPELLED = {"center": "centre"}
"""Values that may be spelled otherwise, each with the contract's spelling."""

PLAIN_NAME = 40
"""Most characters of an unknown name that an error's field repeats."""


_FRACTION = re.compile(r"(?:([0-9]{1,6})[ -]+)?([0-9]{1,6})/([1-9][0-9]{0,5})")


def _written_out(text: str) -> str:
    """Return a number's text, a fraction as its decimals. Raises ``Refused`` for signs that no number has."""
    parts = _FRACTION.fullmatch(plain(text))
    return text.strip() if parts is None else repr(int(parts[1] or 0) + int(parts[2]) / int(parts[3]))


@dataclass(frozen=True)
class Reading:
    """How one input was read: the field, what was typed, and ``told``, what gives the value in both systems: a large
    job has hundreds, and few of them are ever shown."""

    field: str
    typed: str
    told: Callable[[], str]

    @property
    def text(self) -> str:
        return self.told()


class Reader:
    """One object of a job, its place in the job, and the tape that its lengths are read with; ``shown``: the one that
    they are told by, where that's another.

    Raises ``BadJob``, with the field's whole name, at every value that can't be used.
    """

    def __init__(
        self,
        job: Mapping[object, object],
        tape: Tape,
        keys: Sequence[str] | None,
        place: str = "",
        readings: list[Reading] | None = None,
        *,
        shown: Tape | None = None,
    ) -> None:
        self.job = job
        self.tape = tape
        self.shown = shown or tape
        self.place = place
        self.readings: list[Reading] = [] if readings is None else readings
        for key in job if keys is not None else ():
            if key not in keys:  # type: ignore[operator]
                raise bad(
                    self._field_of_unknown(key),
                    "job.unknown_key",
                    name=quoted(str(key)),
                    known=", ".join(keys or ()),
                )

    def field(self, name: str) -> str:
        """Return the whole name of a value in this object."""
        return f"{self.place}.{name}" if self.place else name

    def _field_of_unknown(self, key: object) -> str:
        """The unknown name's own place where it is short and plain, otherwise the place of the group that has it."""
        plain = isinstance(key, str) and len(key) <= PLAIN_NAME and key.isascii() and key.isidentifier()
        return self.field(str(key)) if plain else self.place or "job"

    def inside(self, name: str, keys: Sequence[str] | None) -> Reader | None:
        """Return the reader of an object within this one, or ``None`` when it isn't there."""
        return self.within(name, self.job[name], keys) if name in self.job else None

    def within(self, name: str, value: object, keys: Sequence[str] | None = None) -> Reader:
        """Return the reader of an object, or of a row when there are no keys to check."""
        field = self.field(name)
        if keys is None and isinstance(value, list | tuple):
            value = {None: value}
        if not isinstance(value, Mapping):
            raise bad(field, "job.not_a_group" if keys is not None else "job.not_a_pair")
        return Reader(value, self.tape, keys, field, self.readings, shown=self.shown)

    def items(self, name: str | None, count: int) -> Sequence[object]:
        """Return a row of ``count`` values (``name`` ``None``: this reader's own)."""
        value = self.job.get(name)
        field = self.field(name) if name is not None else self.place
        if not isinstance(value, list | tuple) or len(value) != count:
            raise bad(field, "job.row", count=count)
        return value

    def text(self, name: str, limit: int, lines: bool = False) -> str:
        """Return a free text of at most ``limit`` characters, or an empty one."""
        text = self.job.get(name, "")
        field = self.field(name)
        if not isinstance(text, str):
            raise bad(field, "job.not_text")
        if len(text) > limit:
            raise bad(field, "job.text_too_long", limit=limit, count=len(text))
        for sign in text:
            if sign in HIDDEN or (unicodedata.category(sign) in NOT_TEXT and not (lines and sign == "\n")):
                raise bad(field, "job.not_printable", code=f"U+{ord(sign):04X}")
        return text.strip()

    def choice(self, name: str, choices: Sequence[str]) -> str | None:
        """Return one of the words, or ``None`` when it isn't there."""
        if name not in self.job:
            return None
        value = self.job[name]
        if isinstance(value, str) and SPELLED.get(value) in choices:
            return SPELLED[value]
        if not isinstance(value, str) or value not in choices:
            raise bad(self.field(name), "job.choice", choices=", ".join(choices))
        return value

    def flag(self, name: str) -> bool | None:
        """Return true or false, or ``None`` when it isn't there."""
        value = self.job.get(name)
        if name in self.job and not isinstance(value, bool):
            raise bad(self.field(name), "job.not_a_flag")
        return value if isinstance(value, bool) else None

    def number(self, name: str, low: float, high: float, *, fractions: bool = False) -> float | None:
        """Return a plain number from ``low`` to ``high``, or ``None`` when it isn't there; ``fractions``: written as
        1/4 or 9-1/2, too. Of a percent they would be read two ways."""
        if name not in self.job:
            return None
        value = self.job[name]
        if isinstance(value, str):
            try:
                text = value.strip() if len(value) <= PLAIN_NAME else ""
                value = float((_written_out(text) if fractions else text).removesuffix("%"))
            except (ValueError, Refused):
                value = None
        if isinstance(value, bool) or not isinstance(value, int | float) or not low <= value <= high:
            raise bad(self.field(name), "job.number", low=f"{low:g}", high=f"{high:g}")
        return float(value)

    def slope(self, name: str, most: float) -> float | None:
        """Return a slope as rise over run, up to ``most`` percent, or ``None`` when it isn't there."""
        if name not in self.job:
            return None
        value, field = self.job[name], self.field(name)
        percent = read_slope(value, field, most)
        if isinstance(value, str) and not is_plain(value):
            self.readings.append(Reading(field, value.strip(), lambda: show_slope(percent)))
        return float(percent / 100)

    def station(self, name: str) -> float | None:
        """Return how far a station is past 0+00, metres, or ``None`` when it isn't there."""
        if name not in self.job:
            return None
        metres = read_station(self.job[name], self.field(name), feet=self.tape.feet)
        self.readings.append(Reading(self.field(name), str(self.job[name]).strip(), lambda: self.shown.both(metres)))
        return metres

    def length(self, name: str, *, bare: bool = True, zero: bool = False) -> float | None:
        """Return a length in metres, or ``None`` when it isn't there."""
        return self.measured(name, bare=bare, zero=zero).metres if name in self.job else None

    def measured(self, name: str, *, bare: bool = True, zero: bool = False) -> Length:
        """Return a length with its last place after the point."""
        return self._read(self.field(name), self.job[name], bare=bare, zero=zero)

    def read(self, field: str, value: object, typed: object) -> Length:
        """Return a length that stands in ``typed``, which is told as it was typed."""
        length = read_length(value, self.tape.unit, field)
        told = typed.strip() if isinstance(typed, str) else length.typed
        self.readings.append(Reading(field, told, lambda: self.shown.both(length.metres)))
        return length

    def value(self, name: str, value: object) -> float:
        """Return a length in metres that stands in a row."""
        return self._read(self.field(name), value).metres

    def coordinate(self, name: str, value: object) -> float:
        """Return a coordinate in metres: a length that may be 0 or negative."""
        return self._read(self.field(name), value, signed=True, zero=True).metres

    def point(self, name: str, pair: object) -> Point:
        """Return a point from its two coordinates, which stand in a row."""
        x, y = self.within(name, pair).items(None, 2)
        return Point(self.coordinate(f"{name}[0]", x), self.coordinate(f"{name}[1]", y))

    def rows(self, name: str, most: int) -> list[object]:
        """Return the rows of a list of at most ``most``, empty when it isn't there."""
        rows = self.job.get(name, [])
        if not isinstance(rows, list | tuple) or len(rows) > most:
            raise bad(self.field(name), "site.rows", most=most)
        return list(rows)

    def _read(
        self, field: str, value: object, *, bare: bool = True, zero: bool = False, signed: bool = False
    ) -> Length:
        length = read_length(value, self.tape.unit, field, bare=bare, zero=zero, signed=signed)
        self.readings.append(Reading(field, length.typed, lambda: self.shown.both(length.metres)))
        return length
