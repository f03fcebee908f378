"""What the crew really got at a stake, as a job gives it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bowstring.construction import Measure
from bowstring.errors import bad
from bowstring.job.reader import Reader
from bowstring.job.terms import MOST_GOT, MOST_MEASURES
from bowstring.methods.halving import middle_name

MARK_LIMIT = 16
"""Characters of a mark's name: ``mid PA-PB``, ``ahead K1024``."""


@dataclass(frozen=True)
class Got:
    """What was really measured at a stake, or at another mark that a step sets.

    Attributes:
        measures: what was read between two marks; or, in the older form of a row,
        sagitta: its sagitta, or
        half_chords: its half chords (from A's side and from B's), metres.
        sure: it was taped twice, and stands there whatever the readings look like.
    """

    stake: str
    sagitta: float | None = None
    half_chords: tuple[float, float] | None = None
    measures: tuple[Measure, ...] = ()
    sure: bool = False

    @property
    def as_before(self) -> bool:
        """Whether the row has the older form."""
        return not self.measures

    def readings(self, names: Mapping[str, str]) -> tuple[Measure, ...]:
        """Return what was read; ``names``: the marks of its step by their part in it."""
        if self.sagitta is not None:
            return (Measure(middle_name(self.stake), self.stake, self.sagitta),)
        if self.half_chords is not None:
            first, second = self.half_chords
            return Measure(names["start"], self.stake, first), Measure(self.stake, names["end"], second)
        return self.measures


def read_got(reader: Reader) -> dict[str, Got]:
    """Return what was got at stakes, by the mark's name; raises ``BadJob``."""
    if "got" not in reader.job:
        return {}
    rows = reader.job["got"]
    if not isinstance(rows, list | tuple):
        raise bad("got", "got.not_a_list")
    if len(rows) > MOST_GOT:
        raise bad("got", "got.too_many", most=MOST_GOT, count=len(rows))
    read: dict[str, Got] = {}
    for number, row in enumerate(rows):
        got = reader.within(f"got[{number}]", row, ("stake", "sagitta", "half_chords", "measures", "sure"))
        stake = _mark_of_layout(got.text("stake", MARK_LIMIT))
        if not stake:
            raise bad(got.field("stake"), "got.no_stake")
        if stake in read:
            raise bad(got.field("stake"), "got.twice", stake=stake)
        read[stake] = _row(got, stake)
    return read


def _row(got: Reader, stake: str) -> Got:
    """What was read at one stake, in one of the three forms."""
    if not {"sagitta", "half_chords", "measures"} & got.job.keys():
        raise bad(got.field("sagitta"), "got.neither", stake=stake)
    if len({"sagitta", "half_chords", "measures"} & got.job.keys()) > 1:
        both = "measures" in got.job
        raise bad(got.field("measures" if both else "sagitta"), "got.one_form" if both else "got.one_of_two")
    sure = bool(got.flag("sure"))
    if "measures" in got.job:
        return Got(stake, measures=_measures(got, stake), sure=sure)
    if "sagitta" in got.job:
        return Got(stake, sagitta=got.length("sagitta"), sure=sure)
    pair: Sequence[object] = got.items("half_chords", 2)
    return Got(
        stake, half_chords=(got.value("half_chords[0]", pair[0]), got.value("half_chords[1]", pair[1])), sure=sure
    )  # fmt: skip


def _measures(got: Reader, stake: str) -> tuple[Measure, ...]:
    rows = got.rows("measures", MOST_MEASURES)
    if not rows:
        raise bad(got.field("measures"), "got.neither", stake=stake)
    read: dict[frozenset[str], Measure] = {}
    for number, row in enumerate(rows):
        one = got.within(f"measures[{number}]", row, ("from", "to", "distance"))
        start, end = one.text("from", MARK_LIMIT), one.text("to", MARK_LIMIT)
        if not start or not end or start == end:
            raise bad(one.field("to" if start else "from"), "got.two_marks")
        if "distance" not in one.job:
            raise bad(one.field("distance"), "got.no_distance", start=start, end=end)
        if frozenset((start, end)) in read:
            raise bad(one.field("distance"), "got.read_twice", start=start, end=end)
        length = one.length("distance")
        assert length is not None
        read[frozenset((start, end))] = Measure(start, end, length)
    return tuple(read.values())


def _mark_of_layout(text: str) -> str:
    """A mark's name as a layout has it, however its letters were typed: no two differ by the size of a letter."""
    words = text.split()
    return " ".join([*(word.lower() for word in words[:-1]), *(word.upper() for word in words[-1:])])
