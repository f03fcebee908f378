"""Which stake is suspect when checks are out: the one displacement that explains what was read, or a known slip.

Every guess is one stake that stands off its place, alone (it was hit) or with all that was set from it (it was set
wrong), or one of the ends, or a slip of the crew of which it is known where every stake then stands. A guess is held
against all that was read, the checks that are in too: how likely are these readings, if that is what happened. A guess
with two free numbers has to explain more than one with none.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import hypot, log

from bowstring.analysis.accuracy import NORMAL_95
from bowstring.analysis.checks import Check
from bowstring.analysis.mistakes import reading_of
from bowstring.analysis.pulls import MOST_PLACED
from bowstring.construction import Marks, Move, Recipe, Stake, exact
from bowstring.geometry.plane import Point, unit_vector

USUAL_SLIP = 10
"""A stake that was set wrong stands off by some so many limits of a check, or by as much as one is out."""

ENDS_STAND = 8.0
"""How much better (in twice a logarithm) an end has to explain what was read than a stake: step 1 proved the ends."""

AS_LIKELY = 6.0
"""Guesses nearer than this to the best one (in twice a logarithm, some 20 times) can't be told from it."""

WITHIN, NEARLY = 1 + 1e-9, 1.55
"""A guess explains a check when what it leaves of the reading is within its limit, as of one that is in; within so many
limits, a mark past one of two or three marks, it is held against the others: a reading that is out by chance clears
nobody."""

PRESSED, HARDER = 12, 1.5
"""How often a fit that nearly explains is held closer to the readings that it leaves out, and by how much each time."""

PLAINLY = 1.25
"""A stake stands off one way alone where that explains what was read and isn't so many times as far."""

THIN = 1e-3
"""Where a stake is guessed to stand off one way alone, so much of its size may be the other way."""

ROUNDS = 4
"""Steps of the fit: a long displacement isn't quite in proportion."""

FEW_AGAIN = 12
"""Moves up to which a guess is looked for from all around: of a long chain that takes longer than anybody waits."""

STEP = 1e-5
"""Metres: how far a stake is moved to see what its checks follow."""


@dataclass(frozen=True)
class Taped:
    """A check that was read: ``reads`` metres, and the ``limit`` within which it is in; ``usual``: how far over what it
    must read it is where every stake stands just as its card says, rounded as that is; ``expected``: metres within
    which 95 of 100 readings stay of that, the limit where it isn't said."""

    check: Check
    reads: float
    limit: float
    usual: float = 0.0
    expected: float = 0.0

    @property
    def sigma(self) -> float:
        return (self.expected or self.limit) / NORMAL_95

    @property
    def out_by(self) -> float:
        """Metres over what it must read, negative under it."""
        return self.reads - self.check.distance

    @property
    def out(self) -> bool:
        return abs(self.out_by) > WITHIN * self.limit

    def left(self, at: Mapping[str, Point]) -> float:
        """Return metres left of the reading where all marks stand, but for the cards' rounding, as in ``at``."""
        return self.reads - self.usual - reading_of(self.check, at)


@dataclass(frozen=True)
class Slip:
    """A slip of the crew: its name (no stake's), where every mark then stands, and how many such there are."""

    name: str
    at: Mapping[str, Point]
    among: int = 1


@dataclass(frozen=True)
class Suspect:
    """A guess that explains what was read.

    Attributes:
        mark: the stake or the end; of a slip its name.
        slip: whether it is one.
        shift: metres, the least displacement that explains what was read: across the arc alone, or along it alone,
            where that does; nothing for a slip.
        along: the marks that were set from it and stand off with it; none where it stands off alone.
        badness: twice the negative logarithm of how likely it is, up to a constant: less is better.
        explains: every reading is within its limit of what it would be; otherwise some are only nearly so.
    """

    mark: str
    slip: bool
    shift: Point
    along: tuple[str, ...]
    badness: float
    explains: bool = True

    @property
    def far(self) -> float:
        """Metres that it stands off."""
        return hypot(self.shift.x, self.shift.y)


def suspects(
    taped: Sequence[Taped], recipe: Recipe, stakes: Sequence[Stake], marks: Mapping[str, Point], slips: Sequence[Slip],
    centre: Point,
) -> list[Suspect]:  # fmt: skip
    """Return what explains the readings, the best guess first, those alone that can't be told from it; empty where no
    check is out, or nothing by itself explains them. ``marks``: all marks, those of the checks included; ``centre``:
    that of the arc on which the stakes stand."""
    outs = [one for one in taped if one.out]
    if not outs:
        return []
    usual = USUAL_SLIP * sorted(one.limit for one in outs)[len(outs) // 2]
    size = max(usual, max(abs(one.out_by) for one in outs))
    guesses = [guess for slip in slips if (guess := _of_slip(slip, taped))]
    for moving in _movings(recipe, stakes, marks, outs):
        if not all(moving.touches(one) for one in outs if abs(one.out_by) > NEARLY * one.limit):
            continue  # an out check that doesn't hang on it clears it
        guess = _fitted(moving, taped, size, centre)
        if guess:
            guesses.append(guess)
    best: dict[str, Suspect] = {}
    for guess in sorted(guesses, key=lambda one: one.badness):
        best.setdefault(guess.mark, guess)
    found = list(best.values())
    # Step 1 proved the ends, but one may have been knocked since: what explains the readings is told, as less likely.
    return [one for one in found if one.badness - _handicap(one.mark) <= found[0].badness + AS_LIKELY]


def _handicap(mark: str) -> float:
    return ENDS_STAND if mark in ("A", "B") else 0.0


def carried(recipe: Recipe, at: Mapping[str, Point], along: Collection[str]) -> Marks:
    """Return where all marks stand once those ``along`` were set by their own numbers from where the others stand.

    Raises ``ZeroDivisionError`` where a step can't be done.
    """
    there = dict(at)
    for move in _moves(recipe):
        if move.mark in along:
            there[move.mark] = move.place(there, exact)
    return there


def leaves(taped: Sequence[Taped], at: Mapping[str, Point]) -> float:
    """Return how many limits at most are left of a reading where all marks stand ``at``."""
    return max(abs(one.left(at)) / one.limit for one in taped)


def _of_slip(slip: Slip, taped: Sequence[Taped]) -> Suspect | None:
    left = [one.left(slip.at) for one in taped]
    if not _explains(left, taped, NEARLY):
        return None
    bad = _chi(left, taped) + 2 * log(slip.among)
    return Suspect(slip.name, True, Point(0.0, 0.0), (), bad, _explains(left, taped))


def _chi(left: Sequence[float], taped: Sequence[Taped]) -> float:
    return sum((out / one.sigma) ** 2 for out, one in zip(left, taped, strict=True))


def _explains(left: Sequence[float], taped: Sequence[Taped], within: float = WITHIN) -> bool:
    return all(abs(out) <= within * one.limit for out, one in zip(left, taped, strict=True))


class _Moving:
    """One mark that stands off, and what is taken along with it: the moves that are done again."""

    def __init__(self, mark: str, marks: Mapping[str, Point], again: Sequence[int], recipe: Recipe) -> None:
        self.mark, self.marks = mark, marks
        self.moves = [_moves(recipe)[number] for number in again]
        self.moved = {mark, *(move.mark for move in self.moves)}

    def touches(self, taped: Taped) -> bool:
        """Whether a check follows what stands off."""
        return not self.moved.isdisjoint(taped.check.follows)

    def at(self, shift: Point) -> Marks:
        """Return where all marks stand.

        Raises ``ZeroDivisionError`` where a step can't be done.
        """
        at = {**self.marks, self.mark: self.marks[self.mark].plus(shift)}
        for move in self.moves:
            at[move.mark] = move.place(at, exact)
        return at


def _moves(recipe: Recipe) -> list[Move]:
    return [move for step in recipe.steps if step.level for move in step.moves]


def _movings(
    recipe: Recipe, stakes: Sequence[Stake], marks: Mapping[str, Point], outs: Sequence[Taped]
) -> Iterator[_Moving]:
    """Every mark that could be what is wrong: the stakes and the ends that an out check follows, alone; and those from
    which they were set, with all that was."""
    moves = _moves(recipe)
    sets = {move.mark: number for number, move in enumerate(moves)}
    names = {stake.name for stake in stakes}
    followed = dict.fromkeys(mark for one in outs for mark in one.check.follows if mark in marks)
    for mark in followed:
        if mark in names:
            yield _Moving(mark, marks, (), recipe)
    users, placed = _users(moves), 0
    for mark in _upstream(list(followed), moves, sets):
        if mark not in names:
            continue
        again = _hanging(mark, users, moves)
        placed += len(again)
        if again and placed <= MOST_PLACED * 4:
            yield _Moving(mark, marks, again, recipe)


def _upstream(marks: Sequence[str], moves: Sequence[Move], sets: Mapping[str, int]) -> list[str]:
    """The marks and all that they were set from, the nearest first."""
    seen = dict.fromkeys(marks)
    todo = list(seen)
    for mark in todo:
        for other in moves[sets[mark]].uses if mark in sets else ():
            if other not in seen:
                seen[other] = None
                todo.append(other)
    return todo


def hanging_on(recipe: Recipe, mark: str) -> set[str]:
    """Return a mark and all that was set from it."""
    moves = _moves(recipe)
    return {mark, *(moves[number].mark for number in _hanging(mark, _users(moves), moves))}


def _users(moves: Sequence[Move]) -> dict[str, list[int]]:
    """The numbers of the moves that start from a mark, by that mark."""
    users: dict[str, list[int]] = {}
    for number, move in enumerate(moves):
        for mark in move.uses:
            users.setdefault(mark, []).append(number)
    return users


def _hanging(mark: str, users: Mapping[str, list[int]], moves: Sequence[Move]) -> list[int]:
    """The moves that hang on a mark, in their order."""
    todo, seen = list(users.get(mark, ())), set(users.get(mark, ()))
    while todo:
        for user in users.get(moves[todo.pop()].mark, ()):
            if user not in seen:
                seen.add(user)
                todo.append(user)
    return sorted(seen)


@dataclass(frozen=True)
class _Prior:
    """How far a mark stands off before anything is read of it: deviations along a way and square to it, metres."""

    way: Point
    along: float
    off: float

    def weights(self) -> tuple[float, float, float]:
        """Return what it adds to the normal equations: to x x, to y y and to x y."""
        x, y, a, b = self.way.x, self.way.y, 1 / self.along**2, 1 / self.off**2
        return a * x * x + b * y * y, a * y * y + b * x * x, (a - b) * x * y


def _fitted(moving: _Moving, taped: Sequence[Taped], size: float, centre: Point) -> Suspect | None:
    """The least displacement that explains the readings, where one does; ``size``: its expected deviation, metres.

    Looked for from its place, and where that finds none from around it: a mid-ordinate that is short beside the
    displacement doesn't say at first to which hand the stake went.
    """
    touched, others = [one for one in taped if moving.touches(one)], [one for one in taped if not moving.touches(one)]
    rest = _chi([one.out_by - one.usual for one in others], others)
    around = () if len(moving.moves) > FEW_AGAIN else ((1, 0), (-1, 0), (0, 1), (0, -1))
    starts = [Point(x * size / 2, y * size / 2) for x, y in ((0, 0), *around)]
    out = unit_vector(centre, moving.marks[moving.mark])
    priors = (_Prior(out, size, THIN * size), _Prior(out, THIN * size, size), _Prior(out, size, size))
    tried = (
        next((one for start in starts if (one := _fitted_from(start, moving, touched, prior, rest))), None)
        for prior in priors
    )
    # One way alone is told plainly: it comes first unless both are much less.
    found = [
        (one.far * (1 if prior.off != prior.along else PLAINLY), one)
        for prior, one in zip(priors, tried, strict=True)
        if one
    ]
    if not found:
        return None
    least = min(found, key=lambda one: (not one[1].explains, one[0]))[1]
    explains = least.explains and not any(one.out for one in others)
    best = min(one.badness for _far, one in found)
    return Suspect(least.mark, least.slip, least.shift, least.along, best, explains)


def _fitted_from(shift: Point, moving: _Moving, taped: Sequence[Taped], prior: _Prior, rest: float) -> Suspect | None:
    """``rest``: the misfit of the checks that don't follow it."""
    try:
        shift, left, spread = _fit(shift, moving, taped, [1.0] * len(taped), prior)
        if not _explains(left, taped, NEARLY):
            return None
        bad = rest + _chi(left, taped) + _drawn(prior, shift) + spread + _handicap(moving.mark)
        shift, left = _pressed(shift, left, moving, taped, prior)
    except ZeroDivisionError:
        return None
    along = tuple(move.mark for move in moving.moves)
    return Suspect(moving.mark, False, shift, along, bad, _explains(left, taped))


def _pressed(
    shift: Point, left: Sequence[float], moving: _Moving, taped: Sequence[Taped], prior: _Prior
) -> tuple[Point, Sequence[float]]:
    """A fit that nearly explains, held closer to what it leaves out as long as that is out: the likeliest displacement
    may leave a reading just outside its limit where another one leaves none."""
    weights = [1.0] * len(taped)
    for _round in range(PRESSED):
        if _explains(left, taped):
            break
        weights = [
            weight * (HARDER if abs(out) > WITHIN * one.limit else 1)
            for weight, out, one in zip(weights, left, taped, strict=True)
        ]
        shift, left, _spread = _fit(shift, moving, taped, weights, prior)
    return shift, left


def _drawn(prior: _Prior, shift: Point) -> float:
    aa, bb, ab = prior.weights()
    return aa * shift.x**2 + bb * shift.y**2 + 2 * ab * shift.x * shift.y


def _fit(
    shift: Point, moving: _Moving, taped: Sequence[Taped], weights: Sequence[float], prior: _Prior
) -> tuple[Point, Sequence[float], float]:
    """The displacement that fits the readings best, looked for from ``shift``; what it leaves of each, and the
    logarithm of how much wider it spreads what it foretells. Raises ``ZeroDivisionError``."""
    spread = 0.0
    for _round in range(ROUNDS):
        at = moving.at(shift)
        left = [one.left(at) for one in taped]
        follows = [
            [(reading_of(one.check, moved) - reading_of(one.check, at)) / STEP for one in taped]
            for moved in (moving.at(shift.plus(way, STEP)) for way in (Point(1.0, 0.0), Point(0.0, 1.0)))
        ]
        before = shift
        weighed = [weight / one.sigma**2 for weight, one in zip(weights, taped, strict=True)]
        shift, spread = _solved(shift, left, follows, weighed, prior)
        if hypot(*shift.minus(before)) < STEP:
            break
    at = moving.at(shift)
    return shift, [one.left(at) for one in taped], spread


def _solved(
    shift: Point, left: Sequence[float], follows: Sequence[Sequence[float]], weights: Sequence[float], prior: _Prior
) -> tuple[Point, float]:
    """One step of least squares from ``shift``, drawn to nothing as ``prior`` says, and the logarithm of how much wider
    the guess spreads what it foretells."""
    aa, bb, ab = prior.weights()
    ga, gb = -aa * shift.x - ab * shift.y, -ab * shift.x - bb * shift.y
    for a, b, out, weight in zip(*follows, left, weights, strict=True):
        aa, bb, ab = aa + weight * a * a, bb + weight * b * b, ab + weight * a * b
        ga, gb = ga + weight * a * out, gb + weight * b * out
    det = aa * bb - ab * ab
    step = Point((bb * ga - ab * gb) / det, (aa * gb - ab * ga) / det)
    return shift.plus(step), log(det * prior.along**2 * prior.off**2)
