"""The common blunders as what-ifs: what the stakes would look like, and which of the sheet's checks would see it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import hypot

from bowstring.analysis.mistakes import Crew, Mistake, Reading, decimal_tape, read_checks
from bowstring.analysis.replay import SAME, misses
from bowstring.analysis.squaring import METRIC_BLADE, SQUARE_BLADE, squaring_of, triangle_at
from bowstring.construction import Stake
from bowstring.geometry.plane import Point, distance
from bowstring.layout.layout import Layout
from bowstring.report.advice import place_name
from bowstring.report.forms.checks import CaughtRow, MistakeRow
from bowstring.report.forms.stakes import PlaceRow
from bowstring.report.halving import UNIT_LEG
from bowstring.report.hands import hand_told
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape, make_tape
from bowstring.words import say

MOST_STAKES, MOST_CHECKS = 65, 12
"""How many stakes are listed, as evenly as can be where there are more; and how many checks, the best ones."""

MARKS_UNSEEN = 2
"""A string read within so many marks of what it must read is taken for right."""


def report_mistakes(layout: Layout) -> list[MistakeRow]:
    """Return the answer's ``mistakes``: one row for each blunder that this method, unit and job leave room for."""
    listed = _listed(layout)
    return [_row(layout, mistake, values, listed) for mistake, values in _made(layout) if mistake is not None]


def _made(layout: Layout) -> Iterator[tuple[Mistake | None, Mapping[str, str]]]:
    """Every blunder with the values of its sentence that only a layout knows."""
    job, tape = layout.job, layout.job.tape
    crew = Crew(layout.recipe, layout.stakes, layout.staked, layout.drawn, tape)
    # Exact halving from exact ends: all strings of a level are one another's images.
    alike = layout.method.levels_alike and not job.got
    burn = _burned(tape, crew.burn)
    yield crew.burned_foot(alike), burn
    yield crew.burned_foot_all(), burn
    yield crew.tenths_as_inches(), {}
    legs, first = _triangle(layout)
    if legs:
        sides = {"along": tape.show(legs[0]), "out": tape.show(legs[1]), "long_side": tape.show(hypot(*legs))}
        yield crew.wrong_leg(legs, first), sides
    if job.start in ("ends", "neither"):  # elsewhere nobody lays the chord off: both ends come from the straights
        yield crew.arc_for_chord(), {"start": "A0" if job.outward else "A"}
    yield crew.arc_for_gaps(), {}
    yield crew.diameter(), {}
    yield crew.no_offset(), {}
    yield crew.wrong_radius(), {}
    if layout.side:
        yield crew.wrong_hand(), {}


def _burned(tape: Tape, burn: float) -> dict[str, str]:
    number, unit = (f"{burn / FOOT:.0f}", "ft") if tape.feet else (f"{burn * 100:.0f}", "cm")
    return {"burn": f"{number}-{unit}", "short": f"{number} {unit}"}


def _triangle(layout: Layout) -> tuple[tuple[float, float] | None, str | None]:
    """The legs along and out of the triangle that the sheet squares by, and the stake whose sagitta alone it squares
    where all the others are slid."""
    tape, at = layout.job.tape, layout.recipe.at
    unit = UNIT_LEG[tape.unit]
    if layout.method.halves:
        blade = SQUARE_BLADE if tape.feet else METRIC_BLADE
        found = squaring_of(layout.staked, tape.mark, unit, blade).triangle
        return ((found.along, found.out), "M") if found and "M" not in layout.job.got else (None, None)
    squared = [
        (abs(one.length), max(distance(at[one.foot], at[mark]) for mark in (one.start, one.end)))
        for step in layout.recipe.steps if step.level
        for move in step.moves if (one := move.squares) and not one.slide
    ]  # fmt: skip
    if not squared:
        return None, None
    longest, room = max(squared)
    legs = triangle_at(room, longest, unit)
    return (legs[:2], None) if legs else (None, None)


def _listed(layout: Layout) -> list[Stake]:
    stakes = layout.stakes
    if len(stakes) <= MOST_STAKES:
        return list(stakes)
    step = (len(stakes) - 1) / (MOST_STAKES - 1)
    return [stakes[round(number * step)] for number in range(MOST_STAKES)]


def _row(layout: Layout, mistake: Mistake, values: Mapping[str, str], listed: list[Stake]) -> MistakeRow:
    tape = layout.job.tape
    moved = {stake.name: distance(mistake.at[stake.name], layout.recipe.at[stake.name]) for stake in layout.stakes}
    far = max(moved.values())
    moved_at = next(name for name, length in moved.items() if length >= far * (1 - SAME))
    if mistake.kind == "wrong_hand":  # the mirror image lies on a circle of its own: how far off this one says nothing
        worst, at = moved[moved_at], moved_at
    else:
        off = misses(layout.staked, layout.stakes, mistake.at)
        worst, at = off.worst, off.at
    seen = read_checks(layout.checks, mistake.at, layout.job.tolerance, tape.mark)
    return {
        "kind": mistake.kind,
        "text": _text(layout, mistake, values),
        "worst_miss": worst,
        "at": at,
        "shown": _shown(tape, worst),
        "moved": moved[moved_at],
        "moved_at": moved_at,
        "moved_shown": _shown(tape, moved[moved_at]),
        "stakes": [_place(stake.name, mistake.at[stake.name]) for stake in listed],
        "caught_by": [_caught(tape, reading) for reading in seen[:MOST_CHECKS]],
        "caught_count": len(seen),
        "caught": bool(seen),
        "told": _what_is_seen(layout, mistake, seen, (worst, at), (moved[moved_at], moved_at)),
    }


def _place(name: str, point: Point) -> PlaceRow:
    return {"name": name, "x": point.x, "y": point.y}


def _shown(tape: Tape, length: float) -> str:
    """A miss, small or large: nobody reads a hundred inches."""
    return tape.show(length) if abs(length) >= (FOOT if tape.feet else 0.1) else tape.show_small(length)


def _text(layout: Layout, mistake: Mistake, values: Mapping[str, str]) -> str:
    tape = layout.job.tape
    right, wrong = tape.show(mistake.right), tape.show(mistake.wrong)
    key = mistake.kind
    decimal = decimal_tape(tape)
    if mistake.kind == "tenths_as_inches" and decimal:
        right, wrong = decimal.show(mistake.right), make_tape("ft-in", None).show(mistake.wrong)
    elif mistake.kind == "wrong_leg" and layout.method.halves:
        key = "wrong_leg_first"
    offset = tape.show(abs(layout.job.outward))
    return say(f"mistake.{key}", mark=place_name(mistake.mark), right=right, wrong=wrong, offset=offset, **values)


def _caught(tape: Tape, reading: Reading) -> CaughtRow:
    check = reading.check
    return {
        "from": check.start,
        "to": check.end,
        "kind": check.kind,
        "reads": reading.reads,
        "reads_shown": tape.show(reading.reads),
        "should": check.distance,
        "should_shown": tape.show(check.distance),
        "out": reading.out,
        "allowed": reading.allowed,
    }


def _what_is_seen(
    layout: Layout, mistake: Mistake, seen: list[Reading], worst: tuple[float, str], moved: tuple[float, str]
) -> str:
    """The best check that sees it; otherwise, plainly, that none does, and what does."""
    tape, tolerance = layout.job.tape, layout.job.tolerance
    string = _string(layout, mistake)
    if seen:
        return " ".join([_sees(tape, seen[0]), *string])
    if mistake.kind == "wrong_hand":
        return say("mistake.wrong_hand.unseen", told=hand_told(layout))
    offset = tape.show(abs(layout.job.outward))
    instead = say(f"mistake.{mistake.kind}.instead", told=hand_told(layout), offset=offset)
    miss, at = abs(worst[0]), worst[1]
    if tolerance is not None and moved[0] <= tolerance:
        within = say("mistake.within", at=at, miss=tape.show_cost(miss), tolerance=tape.show_small(tolerance))
        return " ".join([within, *string])
    if miss < tape.mark / 2:
        unseen = say("mistake.unseen_along", at=moved[1], miss=_shown(tape, moved[0]), instead=instead)
    else:
        unseen = say("mistake.unseen", at=at, miss=_shown(tape, miss), instead=instead)
    return " ".join([unseen, *string])


def _string(layout: Layout, mistake: Mistake) -> list[str]:
    """What taping A to B says where the ends stand elsewhere: the steps ask for that, no check does."""
    tape = layout.job.tape
    reads, should = distance(mistake.at["A"], mistake.at["B"]), layout.staked.chord
    if abs(reads - should) <= MARKS_UNSEEN * tape.mark:
        return []
    return [say("mistake.string", reads=tape.show(reads), should=tape.show(should))]


def _sees(tape: Tape, reading: Reading) -> str:
    check = reading.check
    return say(
        f"mistake.seen.{check.kind}",
        start=check.start,
        end=check.end,
        pair=check.start.removeprefix("mid ").replace("-", say("check.to")),
        along=tape.show(check.along or 0.0),
        reads=tape.show(reading.reads),
        should=tape.show(check.distance),
    )
