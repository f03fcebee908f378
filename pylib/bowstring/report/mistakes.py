"""The common blunders as what-ifs: what the stakes would look like, and which of the sheet's checks would see it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from bowstring.analysis.checks import Check
from bowstring.analysis.mistakes import Crew, Mistake, Reading, decimal_tape, read_checks
from bowstring.analysis.replay import SAME, far_off, misses
from bowstring.analysis.triangles import Square
from bowstring.construction import Stake
from bowstring.geometry.plane import Point, distance
from bowstring.layout.layout import Layout
from bowstring.layout.limits import squares_here
from bowstring.methods.proofs import TOWARD_FIRST, TOWARD_SECOND
from bowstring.report.forms.checks import CaughtRow, MistakeRow
from bowstring.report.forms.stakes import PlaceRow
from bowstring.report.halving import level_squaring
from bowstring.report.hands import hand_told
from bowstring.report.places import place_name
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape, make_tape
from bowstring.words import say

MOST_STAKES = 65
"""How many stakes are listed, as evenly as can be where there are more."""

MARKS_UNSEEN = 2
"""A string read within so many marks of what it must read is taken for right."""


def report_mistakes(layout: Layout, checks: Sequence[Check] | None = None) -> list[MistakeRow]:
    """Return the answer's ``mistakes``: one row for each blunder that this method, unit and job leave room for.

    ``checks``: those that the sheet has, all of the layout's where that isn't said.
    """
    listed, checks = _listed(layout), layout.checks if checks is None else checks
    made = _made(layout, layout.job.shown)  # whoever reads the job blunders by the tape in his own hand
    return [_row(layout, mistake, values, listed, checks) for mistake, values in made if mistake is not None]


def known_slips(layout: Layout) -> list[tuple[Mistake, str]]:
    """Return each blunder that may have been made here, with its sentence; a forgotten foot at every single pull."""
    made = [(mistake, values) for mistake, values in _made(layout, layout.job.tape) if mistake is not None]
    crew = Crew(layout.recipe, layout.stakes, layout.staked, layout.drawn, layout.job.tape)
    burn = _burned(layout.job.tape, crew.burn)
    once = [(mistake, burn) for mistake in crew.burned_feet()]
    return [
        (mistake, _text(layout, mistake, values))
        for mistake, values in [*((one, told) for one, told in made if one.kind != "burned_foot"), *once]
    ]


def _made(layout: Layout, tape: Tape) -> Iterator[tuple[Mistake | None, Mapping[str, str]]]:
    """Every blunder that such a tape leaves room for, with the values of its sentence that only a layout knows."""
    job, show = layout.job, layout.job.shown.show
    crew = Crew(layout.recipe, layout.stakes, layout.staked, layout.drawn, tape)
    # Exact halving from exact ends: all strings of a level are one another's images.
    alike = layout.method.levels_alike and not job.got
    burn = _burned(tape, crew.burn)
    yield crew.burned_foot(alike), burn
    yield crew.burned_foot_all(), burn
    yield crew.tenths_as_inches(), {}
    triangles = _triangles(layout)
    if triangles:
        told = triangles[min(triangles, key=lambda mark: (not triangles[mark].usual, -triangles[mark].long_side))]
        sides = {"along": show(told.along), "out": show(told.out), "long_side": show(told.long_side)}
        yield crew.wrong_leg(triangles), sides
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
    return {"burn": say("tape.sized", number=number, unit=unit), "short": f"{number} {unit}"}


def _triangles(layout: Layout) -> Mapping[str, Square]:
    """The triangles that the sheet squares by, by the mark of the offset: of halving that at the first sagitta alone,
    since all the others are slid."""
    if not layout.method.halves:
        squares = squares_here(layout.job, layout.setting, layout.recipe)
        return {mark: square for mark, square in squares.items() if square.shape}
    found = level_squaring(layout, 1).triangle
    if not found or "M" in layout.job.got or "M" in layout.setting.crossed:
        return {}
    return {"M": Square(found.along, found.out, found.long_side, found.whole or "", "B", True)}


def _listed(layout: Layout) -> list[Stake]:
    stakes = layout.stakes
    if len(stakes) <= MOST_STAKES:
        return list(stakes)
    step = (len(stakes) - 1) / (MOST_STAKES - 1)
    return [stakes[round(number * step)] for number in range(MOST_STAKES)]


def _row(
    layout: Layout, mistake: Mistake, values: Mapping[str, str], listed: list[Stake], checks: Sequence[Check]
) -> MistakeRow:
    tape = layout.job.shown
    moved = {stake.name: distance(mistake.at[stake.name], layout.recipe.at[stake.name]) for stake in layout.stakes}
    far = max(moved.values())
    moved_at = next(name for name, length in moved.items() if length >= far * (1 - SAME))
    # The mirror image may lie on the arc's own circle, round the other way: only the way to the arc itself tells.
    across = far_off if mistake.kind == "wrong_hand" else misses
    off = across(layout.staked, layout.stakes, mistake.at)
    worst, at = off.worst, off.at
    seen = read_checks(checks, mistake.at, layout.job.tolerance, tape.mark)
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
        "caught_by": [_caught(tape, reading) for reading in seen],
        "caught_count": len(seen),
        "caught": bool(seen),
        "told": _what_is_seen(layout, mistake, seen, (worst, at), (moved[moved_at], moved_at)),
    }


def _place(name: str, point: Point) -> PlaceRow:
    return {"name": name, "x": point.x, "y": point.y}


def _shown(tape: Tape, length: float) -> str:
    """A miss, small or large: nobody reads a hundred millimetres to a tenth."""
    return tape.show(length) if abs(length) >= (FOOT if tape.feet else 0.1) else tape.show_small(length)


def _text(layout: Layout, mistake: Mistake, values: Mapping[str, str]) -> str:
    tape = layout.job.shown
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
    tape, tolerance = layout.job.shown, layout.job.tolerance
    string = [*_string(layout, mistake), *([] if seen else _slid(layout, mistake))]
    if seen:
        return " ".join([_sees(tape, seen[0]), *string])
    # What a step reads sees it after all: then it isn't unseen, only unseen by all that comes later.
    key = "later" if string else "unseen"
    if mistake.kind == "wrong_hand":
        return say("mistake.wrong_hand.unseen", told=hand_told(layout))
    offset = tape.show(abs(layout.job.outward))
    instead = say(f"mistake.{mistake.kind}.instead", told=hand_told(layout), offset=offset)
    miss, at = abs(worst[0]), worst[1]
    if tolerance is not None and moved[0] <= tolerance:
        told = say(f"mistake.{key}_within", at=at, miss=tape.show_cost(miss), tolerance=tape.show_small(tolerance))
    elif miss < tape.mark / 2:
        told = say(f"mistake.{key}_along", at=moved[1], miss=_shown(tape, moved[0]), instead=instead)
    else:
        told = say(f"mistake.{key}", at=at, miss=_shown(tape, miss), instead=instead)
    return " ".join([*string, told])


def _string(layout: Layout, mistake: Mistake) -> list[str]:
    """What proving A and B says where the ends stand elsewhere: the steps ask for that, no check does."""
    tape = layout.job.shown
    start, end, part = _proving(layout)
    reads, should = (
        distance(mistake.at[start], mistake.at["B"]) * part,
        distance(layout.marks[start], layout.marks["B"]) * part,
    )
    if not part or abs(reads - should) <= MARKS_UNSEEN * tape.mark:
        return []
    key = "mistake.string" if end == "B" and start == "A" else "mistake.string_proof"
    return [
        say(key, reads=tape.show(reads), should=tape.show(should), start=start if part == 1 else TOWARD_FIRST, end=end)
    ]


def _proving(layout: Layout) -> tuple[str, str, float]:
    """Where the steps prove A and B: the marks of the reading that says it, and what part of the way it is; 0 for
    none."""
    for step in layout.recipe.steps:
        if step.kind.startswith("prove_beside") and step.names["end"] == "B":
            return "A", TOWARD_SECOND, step.measures[-1].length / layout.staked.chord
        if step.kind in ("prove_two", "prove_parts") and step.names["end"] == "B":
            return step.names["last"], "B", 1.0
        if any({measure.start, measure.end} == {"A", "B"} for measure in step.measures):
            return "A", "B", 1.0
    return "A", "B", 0.0


def _slid(layout: Layout, mistake: Mistake) -> list[str]:
    """What the half chords read at the one stake whose pull is wrong, while its tip is slid: a reading, no check."""
    if mistake.kind != "burned_foot":  # elsewhere the half chords are taped with the same mistake, or at every stake
        return []
    tape, true = layout.job.shown, layout.recipe.at
    for step in layout.recipe.steps:
        slid = next((move.squares for move in step.moves if move.squares and move.squares.slide), None)
        if slid and slid.mark == mistake.mark:
            reads, should = (distance(at[slid.start], at[slid.mark]) for at in (mistake.at, true))
            if abs(reads - should) > MARKS_UNSEEN * tape.mark:
                return [say("mistake.slid", start=slid.start, end=slid.mark, reads=tape.show(reads),
                            should=tape.show(should))]  # fmt: skip
    return []


def _sees(tape: Tape, reading: Reading) -> str:
    check = reading.check
    return say(
        f"mistake.seen.{check.kind}",
        start=check.start,
        end=check.end,
        pair=check.start.removeprefix("mid ").replace("-", say("check.to")),
        along=tape.show_running(check.along or 0.0),
        reads=tape.show(reading.reads),
        should=tape.show(check.distance),
    )
