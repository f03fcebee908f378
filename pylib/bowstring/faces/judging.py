"""More than two measures given: which of them agree, and by how much one differs from what the others make."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.errors import BadJob
from bowstring.faces.settling import Arcs
from bowstring.geometry.arc import Arc
from bowstring.geometry.given import ANGLES, Given
from bowstring.geometry.givens import settle
from bowstring.units.angles import show_dms
from bowstring.units.tape import Tape
from bowstring.words import say

GIVEN, HELD, DIFFERS = "given", "held", "differs"


@dataclass(frozen=True)
class Judged:
    """One given among others: whether it is one of the pair, agrees with it, or differs, and what is told of that."""

    state: str
    told: str = ""


def judged(arcs: Arcs) -> dict[str, Judged]:
    """Return what is to be said of each given, by its name."""
    settled, givens = arcs.settled, list(arcs.givens.values())
    if settled is None or len(givens) < 3 or not settled.pair:
        return {given.field: Judged(GIVEN) for given in givens}
    apart = [given for given in givens if not given.agrees(settled.arc, arcs.tape.mark)]
    if not apart:
        return {given.field: _agreeing(arcs, given) for given in givens}
    if settled.odd:
        apart = [settled.odd]
    elif len(givens) == 3:  # any two make an arc: no one of them can be named
        apart = givens
    return {given.field: _differing(arcs, given) if given in apart else Judged(GIVEN) for given in givens}


def _agreeing(arcs: Arcs, given: Given) -> Judged:
    assert arcs.settled is not None
    first, second = arcs.settled.pair
    if given in (first, second):
        return Judged(GIVEN)
    pair = say("and", first=name_of(first), second=name_of(second))
    computed = given.computed(arcs.settled.arc)
    if computed is not None and given.over_a_mark(arcs.settled.arc, arcs.tape.mark):
        return Judged(HELD, say("numbers.agrees_about", pair=pair, computed=shown(given.field, computed, arcs.shown)))
    return Judged(HELD, say("numbers.agrees", pair=pair))


def _differing(arcs: Arcs, given: Given) -> Judged:
    """Tell what the others make of a given that differs: of three the two others, otherwise the pair taken."""
    assert arcs.settled is not None
    others = [one for one in arcs.givens.values() if one is not given]
    pair = others if len(others) == 2 else list(arcs.settled.pair)
    names = say("and", first=name_of(pair[0]), second=name_of(pair[1])).capitalize()
    arc = _arc_of(arcs, pair, given)
    computed = given.computed(arc) if arc else None
    if computed is None:
        return Judged(DIFFERS, say("numbers.differs_none", others=names, measure=name_of(given)))
    key = "numbers.differs_less" if computed < given.value else "numbers.differs_more"
    size = apart_shown(given.field, abs(computed - given.value), arcs.shown)
    return Judged(DIFFERS, say(key, others=names, computed=shown(given.field, computed, arcs.shown), apart=size))


def _arc_of(arcs: Arcs, pair: list[Given], given: Given) -> Arc | None:
    """Return the arc of a pair; of two that fit the one that is nearer to ``given``."""
    try:
        settled = settle(pair, arcs.greater, arcs.tape.mark)
    except BadJob:
        return None
    both = [settled.arc, *([settled.other] if settled.other else [])]
    return min(both, key=lambda arc: given.off_by(arc, arcs.tape.mark))


def name_of(given: Given) -> str:
    """Return a given's name in words."""
    return say(f"measure.{given.field}")


def shown(field: str, value: float, tape: Tape) -> str:
    """Return a measure's value as the tape shows it, an angle in degrees, minutes and seconds."""
    return show_dms(value) if field in ANGLES else tape.show(value)


def apart_shown(field: str, value: float, tape: Tape) -> str:
    """Return how far two values of a measure are apart, however little that is."""
    if field in ANGLES:
        return show_dms(value)
    return tape.show_near(value)
