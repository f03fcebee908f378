"""A layout staked out again with one blunder in it, as a crew would make it, and what each check then reads.

The blunders are those that every crew knows: the tape held at its 1-ft mark and the foot not taken off, tenths of a
foot read as inches, the arc's length laid off for the chord, the diameter pulled for the radius, the radius taken to
the wrong line (common practice, no source); with them a squaring triangle laid on the wrong leg and a curve laid on
the wrong hand.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from math import asin, copysign

from bowstring.analysis.checks import Check
from bowstring.analysis.pulls import Doing, Noticed, OnePull, holding, stake_out
from bowstring.analysis.triangles import Square
from bowstring.construction import GAP, RADIUS, Move, Recipe, SquareOff, Stake, Step, exact
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance, left_of, middle, unit_vector
from bowstring.units.sizes import FOOT, INCH
from bowstring.units.tape import Tape, make_tape

BURNED_FOOT, BURNED_METRIC = FOOT, 0.1
"""Metres: the mark at which a tape is held to spare its worn end, 1 ft or 10 cm (common practice, no source)."""

LONG_ENOUGH = 2
"""A pull is held at that mark only where it is at least so many times as long (common practice, no source)."""

SometimesHeld = Callable[[Step, Move, int, float], float | None]
"""As ``Held``; ``None`` where the right number is held."""


@dataclass(frozen=True)
class Mistake:
    """A blunder and what it does.

    Attributes:
        kind: names its sentences in the catalogue (``mistake.`` + kind).
        at: where every mark comes to stand.
        mark: the mark whose pull is wrong, or the first of them; empty where that isn't the blunder.
        right, wrong: metres that belong there, and what was really pulled.
    """

    kind: str
    at: Mapping[str, Point]
    mark: str = ""
    right: float = 0.0
    wrong: float = 0.0


@dataclass(frozen=True)
class Reading:
    """What a check reads after a blunder, in metres: ``out`` is the reading less what it must be."""

    check: Check
    reads: float
    out: float
    allowed: float


def burned(length: float, burn: float) -> float | None:
    """Return what is really pulled, metres, when the tape is held at its ``burn`` mark and that is forgotten; ``None``
    for a pull so short that nobody does."""
    return copysign(abs(length) - burn, length) if abs(length) >= LONG_ENOUGH * burn else None


def decimal_tape(tape: Tape) -> Tape | None:
    """Return the tape as whose reading decimal feet stand on paper: the job's own where it is in decimal feet, one to a
    hundredth of a foot where a calculator's feet are read on a tape of inches; ``None`` for a metric one."""
    return (tape if tape.unit == "ft" else make_tape("ft", None)) if tape.feet else None


def tenths_as_inches(length: float, decimal: Tape) -> float:
    """Return the length in metres that comes out when decimal feet, as shown, are taken for feet and inches.

    10.4 ft as 10 ft 4 in, 10.41 ft as 10 ft 4.1 in.
    """
    feet, hundredths = divmod(round(decimal.round(abs(length)) / FOOT * 100), 100)
    return copysign(feet * FOOT + hundredths / 10 * INCH, length)


def _is(what: str, move: Move, part: int) -> bool:
    """Whether a pull is a ``GAP`` or a ``RADIUS``."""
    return move.holds[part : part + 1] == (what,)


def arc_over(arc: Arc, chord: float) -> float:
    """Return the length in metres of the smaller arc over a chord of a circle: 2 R asin(c/2R)."""
    return 2 * arc.radius * asin(min(chord / (2 * arc.radius), 1.0))


def other_hand(_step: Step, move: Move, at: Mapping[str, Point]) -> Point:
    """Do a move on the wrong hand: all that goes off a line, a tape or a sight goes to its other side."""
    return move.mirrored().place(at, exact)


def lean(move: SquareOff, at: Mapping[str, Point], square: Square) -> Point:
    """Return where an offset ends that was squared by a triangle with its long side laid along the string.

    With the long side c on the string and the leg a in its place, the right angle is at the triangle's tip; at the foot
    the angle has cosine b/c and sine a/c (cosine rule). The triangle lies where the sheet has it.
    """
    foot, start, end = at[move.foot], at[move.start], at[move.end]
    along, out = unit_vector(foot, at[square.toward]), left_of(unit_vector(start, end))
    sign = copysign(1.0, move.length) * (1 if move.left else -1)
    length = abs(move.length) / square.long_side
    return foot.plus(along, length * square.out).plus(out, sign * length * square.along)


class Crew:
    """Everything that a blunder needs to know of a layout; each blunder gives what it does, or ``None`` where it can't
    happen, shows in its own step, or is less than a mark on the tape or half a mark at every stake."""

    def __init__(self, recipe: Recipe, stakes: Sequence[Stake], staked: Arc, drawn: Arc, tape: Tape) -> None:
        self.recipe, self.stakes, self.staked, self.drawn = recipe, stakes, staked, drawn
        self.mark, self.decimal = tape.mark, decimal_tape(tape)
        self.slack = 2 * tape.mark
        self.burn = BURNED_FOOT if tape.feet else BURNED_METRIC

    def burned_foot(self, alike: bool) -> Mistake | None:
        """The tape held at its 1-ft or 10-cm mark for one pull: the one that throws the stakes farthest."""
        pull = OnePull(self.recipe, lambda length: burned(length, self.burn), self.slack)
        found = pull.farthest(self.staked, self.stakes, alike)
        return self._felt(Mistake("burned_foot", found.at, found.mark, found.right, found.wrong)) if found else None

    def burned_feet(self) -> list[Mistake]:
        """The same for one pull, at every pull of a job that isn't huge: what may have happened once somewhere."""
        pulls = OnePull(self.recipe, lambda length: burned(length, self.burn), self.slack)
        return [Mistake("burned_foot", one.at, one.mark, one.right, one.wrong) for one in pulls.each()]

    def burned_foot_all(self) -> Mistake | None:
        """The same at every pull that is long enough; ``None`` where that is only one."""

        def held(_step: Step, _move: Move, _part: int, length: float) -> float | None:
            return burned(length, self.burn)

        return self._holding("burned_foot_all", held, least=2)

    def tenths_as_inches(self) -> Mistake | None:
        """Every length in decimal feet read as feet and inches; ``None`` where the tape is metric."""
        decimal = self.decimal
        if decimal is None:
            return None

        def held(_step: Step, _move: Move, _part: int, length: float) -> float | None:
            return tenths_as_inches(length, decimal)

        return self._holding("tenths_as_inches", held)

    def arc_for_gaps(self) -> Mistake | None:
        """The arc's length held for each straight gap, in the methods that step along."""

        def held(_step: Step, move: Move, part: int, length: float) -> float | None:
            return arc_over(self.staked, length) if _is(GAP, move, part) else None

        return self._holding("arc_for_gaps", held)

    def arc_for_chord(self) -> Mistake | None:
        """B set at the arc's length from A instead of the chord's; the rest by the sheet."""
        right, wrong = self.drawn.chord, self.drawn.arc_length
        moved = {"B": Point(self.recipe.at["B"].x + wrong - right, self.recipe.at["B"].y)}
        return self._from_ends("arc_for_chord", moved, "B", right, wrong)

    def diameter(self) -> Mistake | None:
        """The diameter pulled at every radius."""

        def held(_step: Step, move: Move, part: int, length: float) -> float | None:
            return 2 * length if _is(RADIUS, move, part) else None

        return self._holding("diameter", held)

    def wrong_radius(self) -> Mistake | None:
        """The drawn radius pulled from the centre where the stakes have one of their own."""

        def held(_step: Step, move: Move, part: int, _length: float) -> float | None:
            return self.drawn.radius if move.keeps and _is(RADIUS, move, part) else None

        return None if self.drawn is self.staked else self._holding("wrong_radius", held)

    def no_offset(self) -> Mistake | None:
        """The drawn line's ends taken for the stakes' own; the rest by the sheet."""
        at = self.recipe.at
        if "A0" not in at:
            return None
        return self._from_ends(
            "no_offset", {"A": at["A0"], "B": at["B0"]}, "A", abs(self.staked.radius - self.drawn.radius), 0.0
        )

    def wrong_leg(self, triangles: Mapping[str, Square]) -> Mistake | None:
        """Each squaring triangle, by the mark of its offset, laid with its long side along the string."""

        def doing(_step: Step, move: Move, at: Mapping[str, Point]) -> Point:
            square = move.squares
            if square and square.mark in triangles:
                return lean(square, at, triangles[square.mark])
            return move.place(at, exact)

        return self._done("wrong_leg", doing)

    def wrong_hand(self) -> Mistake | None:
        """The whole curve laid on the other hand."""
        return self._done("wrong_hand", other_hand)

    def _holding(self, kind: str, held: SometimesHeld, least: int = 1) -> Mistake | None:
        """A blunder at all pulls for which ``held`` gives another number; its example is the one most out."""
        changed = [
            (abs(wrong - length), move.mark, abs(length), abs(wrong))
            for step in self.recipe.steps if step.level
            for move in step.moves
            for part, length in enumerate(move.pulls)
            if (wrong := held(step, move, part, length)) is not None
        ]  # fmt: skip
        if len(changed) < least or max(changed)[0] < self.mark:
            return None  # a crew can't hold what is no mark away

        def number(step: Step, move: Move, part: int, length: float) -> float:
            other = held(step, move, part, length)
            return length if other is None else other

        most = max(changed, key=lambda one: one[0])
        return self._done(kind, holding(number, self.slack), None, *most[1:])

    def _from_ends(
        self, kind: str, moved: Mapping[str, Point], mark: str, right: float, wrong: float
    ) -> Mistake | None:
        """The sheet's own numbers from ends that stand elsewhere."""
        doing = holding(lambda _step, _move, _part, length: length, self.slack)
        return self._done(kind, doing, moved, mark, right, wrong)

    def _done(
        self, kind: str, doing: Doing, moved: Mapping[str, Point] | None = None, mark: str = "", right: float = 0.0,
        wrong: float = 0.0,
    ) -> Mistake | None:  # fmt: skip
        try:
            at = stake_out(self.recipe, doing, moved)
        except Noticed:
            return None
        return self._felt(Mistake(kind, at, mark, right, wrong))

    def _felt(self, mistake: Mistake) -> Mistake | None:
        far = max(distance(mistake.at[stake.name], self.recipe.at[stake.name]) for stake in self.stakes)
        return mistake if far > self.mark / 2 else None


def read_checks(
    checks: Sequence[Check], at: Mapping[str, Point], tolerance: float | None, mark: float
) -> list[Reading]:
    """Return the checks that see a blunder, those first that are most out for what is allowed.

    Every check is measured between the marks as they stand ``at`` now: a middle between two stakes, a foot at its
    length from A on the string to B. One sees it whose reading is out by more than the tolerance (metres) allows it to
    be, and isn't blind under one ``mark``; without a tolerance by more than two marks.
    """
    found = []
    for check in checks:
        allowed = 2 * mark if tolerance is None else tolerance * check.per_tolerance
        if allowed < mark:
            continue
        reads = reading_of(check, at)
        out = reads - check.distance
        if abs(out) > allowed:
            found.append(Reading(check, reads, out, allowed))
    # Mirror images differ in the last digits; rounded, they keep the order of the sheet.
    found.sort(key=lambda one: -round(abs(one.out) / one.allowed, 6))
    return found


def reading_of(check: Check, at: Mapping[str, Point]) -> float:
    """Return what a check reads, metres, where the marks stand ``at``."""
    start = check.start
    if check.along is not None:
        start_at = at["A"].plus(unit_vector(at["A"], at["B"]), check.along)
    elif check.kind == "alternate":
        first, second = start.removeprefix("mid ").split("-")
        start_at = middle(at[first], at[second])
    else:
        start_at = at[start]
    return distance(start_at, at[check.end])
