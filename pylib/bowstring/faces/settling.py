"""The fields of the arc read one by one, and the arc settled: no layout, no advice, at once."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from bowstring.errors import BadJob, bad
from bowstring.geometry.given import FIELDS, Given
from bowstring.geometry.givens import Settled, settle
from bowstring.geometry.three import through_points, through_sides
from bowstring.job.arc_given import WHOLE, ArcGiven, named_plainly, read_arc
from bowstring.job.reader import Reader
from bowstring.units.lengths import UNITS
from bowstring.units.tape import Tape, make_tape

Typed = Mapping[str, str]


@dataclass
class Arcs:
    """What stands in the fields of the arc.

    Attributes:
        tape: the tape that is chosen, or the unit's usual one; bare numbers are in its unit.
        shown: the one by which lengths are shown, the same unless the device shows another unit.
        givens: what could be read, by its name among ``geometry.given.FIELDS``.
        refusals: why a field can't be used, by its id.
        settled: the arc, or ``None`` while there is none.
        hand: the hand on which three points say that it is.
        whole: ``points`` or ``three_sides`` where those settle it.
        greater: where two arcs fit, the larger angle is taken.
    """

    tape: Tape
    shown: Tape
    givens: dict[str, Given] = field(default_factory=dict)
    refusals: dict[str, BadJob] = field(default_factory=dict)
    settled: Settled | None = None
    hand: str | None = None
    whole: str = ""
    greater: bool = False

    @property
    def measures(self) -> int:
        """How many different measures are given."""
        return len({given.measure for given in self.givens.values()})


def tape_for(typed: Typed) -> Tape:
    """Return the tape that is chosen, or the unit's usual one where its mark can't be used."""
    unit = typed.get("unit", "")
    unit = unit if unit in UNITS else UNITS[0]
    try:
        return make_tape(unit, typed.get("mark") or None)
    except BadJob:
        return make_tape(unit, None)


def givens_of_fields(typed: Typed, shown: str | None = None) -> Arcs:
    """Return the measures that stand in the fields of the arc, each read by itself and nothing settled; ``shown``: the
    unit in which lengths are shown, where that is another than the job's."""
    tape = tape_for(typed)
    arcs = Arcs(tape, tape.seen_in(shown), greater="greater" in typed)
    for name, text in _measures(typed).items():
        by = typed.get("arc-degree_by") if name == "degree" else None
        given = _read(arcs, f"arc-{name}", {name: text, **({"degree_by": by} if by else {})})
        if given:
            arcs.givens[name] = given.givens[0]
    return arcs


def arcs_of_fields(typed: Typed, shown: str | None = None) -> Arcs:
    """Return what stands in the fields of the arc, read and settled as far as it goes."""
    arcs, texts = givens_of_fields(typed, shown), _measures(typed)
    _settle_whole(arcs, typed, texts)
    if not arcs.whole and not arcs.refusals:
        _refuse_twice(arcs, texts)
    if not arcs.whole and arcs.measures > 1:
        try:
            mark, show = arcs.tape.mark, arcs.shown.show
            arcs.settled = settle(list(arcs.givens.values()), arcs.greater, mark, show)
        except BadJob as refusal:
            arcs.refusals[refusal.field.replace(".", "-")] = refusal
    return arcs


def _measures(typed: Typed) -> dict[str, str]:
    return {name: typed[f"arc-{name}"] for name in FIELDS if f"arc-{name}" in typed}


def _read(arcs: Arcs, name: str, arc: Mapping[str, object]) -> ArcGiven | None:
    """Read a part of the arc by itself; what is wrong with it is kept under the id ``name``."""
    try:
        return read_arc(Reader({"arc": arc}, arcs.tape, ("arc",)))
    except BadJob as refusal:
        arcs.refusals[name] = refusal
        return None


def _settle_whole(arcs: Arcs, typed: Typed, texts: Typed) -> None:
    """Settle the arc by three points or three sides, once all of them are typed."""
    points = [[typed.get(f"arc-points-{row}-{axis}", "") for axis in range(2)] for row in range(3)]
    sides = [typed.get(f"arc-three_sides-{row}", "") for row in range(3)]
    whole = {"points": points} if all(map(all, points)) else {"three_sides": sides} if all(sides) else {}
    for name, value in whole.items():
        arcs.whole = name
        place = "arc-points-0-0" if name == "points" else "arc-three_sides-0"
        if texts:
            beside = next(iter(texts))
            arcs.refusals[f"arc-{beside}"] = bad(f"arc.{beside}", WHOLE[name])
        given = _read(arcs, place, {name: value})
        try:
            if given and given.points:
                arc, left = through_points(*given.points)
                arcs.settled, arcs.hand = Settled(arc, None, ()), "left" if left else "right"
            elif given and given.sides:
                arcs.settled = Settled(through_sides(*given.sides), None, ())
        except BadJob as refusal:
            arcs.refusals[place] = refusal


def _refuse_twice(arcs: Arcs, texts: Typed) -> None:
    """A radius beside its diameter is one measure given twice."""
    try:
        named_plainly(texts)
    except BadJob as refusal:
        arcs.refusals[refusal.field.replace(".", "-")] = refusal
