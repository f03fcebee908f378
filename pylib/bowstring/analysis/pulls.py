"""A construction staked out again by a crew that works otherwise than its steps say.

Other numbers on the tape, at every pull or at one, or moves done in another way.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bowstring.analysis.replay import SAME
from bowstring.construction import Marks, Move, Recipe, Stake, Step
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance

MOST_PLACED = 600
"""Marks set again, in all, while the pull is looked for whose blunder throws the stakes farthest."""

Held = Callable[[Step, Move, int, float], float]
"""The number in metres that a crew holds at a move's pull (counted from 0) where the right one is the last argument."""

Doing = Callable[[Step, Move, Mapping[str, Point]], Point]
"""How a crew carries out one move: where its mark comes to stand."""


class Noticed(ValueError):
    """A blunder that shows in its own step: two tapes that leave a gap, two marks at one place."""


@dataclass(frozen=True)
class Farthest:
    """The wrong pull that does most: its mark, metres that belong there and that were pulled, where all marks stand."""

    mark: str
    right: float
    wrong: float
    at: Mapping[str, Point]


def holding(held: Held, slack: float) -> Doing:
    """Return the work of a crew that holds other numbers.

    Two tapes that miss each other by more than ``slack`` metres, or one that doesn't reach its line of sight by so
    much, raise ``Noticed``: nobody drives a stake there.
    """

    def place(step: Step, move: Move, at: Mapping[str, Point]) -> Point:
        numbers = [held(step, move, part, length) for part, length in enumerate(move.pulls)]
        if numbers and move.apart(at, numbers) > slack:
            raise Noticed
        asked = iter(numbers)
        return move.place(at, lambda _length: next(asked))

    return place


def stake_out(recipe: Recipe, doing: Doing, moved: Mapping[str, Point] | None = None) -> Marks:
    """Return where all marks stand when every step after the ends is done by ``doing``; ``moved``: ends that stand
    elsewhere. Raises ``Noticed``."""
    later = [step for step in recipe.steps if step.level]
    made = {mark for step in later for mark in step.sets}
    at: Marks = {name: point for name, point in recipe.at.items() if name not in made}
    at.update(moved or {})
    try:
        for step in later:
            for move in step.moves:
                at[move.mark] = doing(step, move, at)
    except ZeroDivisionError:
        raise Noticed from None
    return at


class OnePull:
    """Stakes a construction out with one pull wrong, setting only those marks anew that hang on it."""

    def __init__(self, recipe: Recipe, wrong: Callable[[float], float | None], slack: float) -> None:
        """``wrong`` turns a right length into the blundered one, or ``None`` where nobody would make that blunder."""
        self.recipe, self.wrong, self.slack = recipe, wrong, slack
        self.moves = [(step, move) for step in recipe.steps if step.level for move in step.moves]
        self.users: dict[str, list[int]] = {}
        for number, (_step, move) in enumerate(self.moves):
            for mark in move.uses:
                self.users.setdefault(mark, []).append(number)
        self.pulls = [
            (number, part, length, short)
            for number, (_step, move) in enumerate(self.moves)
            for part, length in enumerate(move.pulls)
            if (short := wrong(length)) is not None
        ]

    def _moved(self, number: int, part: int, short: float, hanging: Sequence[int]) -> Marks:
        """Where those marks stand that a wrong pull moves; raises ``Noticed``."""
        blundered = self.moves[number][1]

        def held(_step: Step, move: Move, pull: int, length: float) -> float:
            return short if move is blundered and pull == part else length

        doing, found = holding(held, self.slack), _Over(self.recipe.at)
        try:
            for place in hanging:
                step, move = self.moves[place]
                found[move.mark] = doing(step, move, found)
        except ZeroDivisionError:
            raise Noticed from None
        return found

    def _hanging_on(self, number: int) -> list[int]:
        """The moves that a move's mark enters, itself included, in their order."""
        todo, seen = [number], {number}
        while todo:
            for user in self.users.get(self.moves[todo.pop()][1].mark, ()):
                if user not in seen:
                    seen.add(user)
                    todo.append(user)
        return sorted(seen)

    def farthest(self, arc: Arc, stakes: Sequence[Stake], alike: bool) -> Farthest | None:
        """Return what the blunder does at that pull at which it throws a stake farthest off, the first of equals.

        ``alike``: all pulls of a level do the same, so one of each is looked at. Otherwise all are, and where a long
        construction hangs together they are looked at in ever closer steps until ``MOST_PLACED`` marks were set.
        """
        names = {stake.name for stake in stakes}
        order = self._first_of_levels() if alike else list(_ever_closer(len(self.pulls)))
        best, placed = None, 0
        for index in order:
            if placed >= MOST_PLACED and not alike:
                break
            number, part, _length, short = self.pulls[index]
            hanging = self._hanging_on(number)
            placed += len(hanging)  # what shows at once has cost its work too
            try:
                found = self._moved(number, part, short, hanging)
            except Noticed:
                continue
            gone = [(abs(arc.miss(point)), distance(point, self.recipe.at[name]))
                    for name, point in found.items() if name in names]  # fmt: skip
            # Where nothing goes off across the arc, the way along it decides.
            size = max((across for across, _way in gone), default=0.0) * 1e6 + max((w for _a, w in gone), default=0.0)
            if best is None or size > best[0] * (1 + SAME) or (size > best[0] * (1 - SAME) and index < best[1]):
                best = (size, index, found)
        if best is None:
            return None
        number, _part, length, short = self.pulls[best[1]]
        mark = self.moves[number][1].mark
        return Farthest(mark, abs(length), abs(short), {**self.recipe.at, **best[2]})

    def each(self) -> Iterator[Farthest]:
        """Yield the blunder at every pull where it doesn't show at once, until ``MOST_PLACED`` marks were set."""
        placed = 0
        for number, part, length, short in self.pulls:
            hanging = self._hanging_on(number)
            placed += len(hanging)
            if placed > MOST_PLACED:
                return
            try:
                found = self._moved(number, part, short, hanging)
            except Noticed:
                continue
            mark = self.moves[number][1].mark
            yield Farthest(mark, abs(length), abs(short), {**self.recipe.at, **found})

    def _first_of_levels(self) -> list[int]:
        first: dict[int, int] = {}
        for index, (number, *_rest) in enumerate(self.pulls):
            first.setdefault(self.moves[number][0].level, index)
        return list(first.values())


class _Over(dict[str, Point]):
    """Marks that were set anew, over those that stand."""

    def __init__(self, standing: Mapping[str, Point]) -> None:
        super().__init__()
        self.standing = standing

    def __missing__(self, mark: str) -> Point:
        return self.standing[mark]


def _ever_closer(count: int) -> Iterator[int]:
    """Every number below ``count`` once: the last, then all in steps that halve."""
    if not count:
        return
    yield count - 1
    step, seen = 1 << count.bit_length(), {count - 1}
    while step:
        for index in range(0, count, step):
            if index not in seen:
                seen.add(index)
                yield index
        step //= 2
