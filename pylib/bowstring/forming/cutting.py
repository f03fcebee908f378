"""In which order boards are put along the edges of a slab, so that no two meet where it shows or hurts.

A search over the splices' places, from one end to the other and of both edges at once: always that edge goes on that
is behind. Of all orders the best by this list, in which an earlier line wins over all later ones: pieces that are too
short, splices at a quarter point, splices opposite one of the other edge, splices at a stake of the layout, waste,
boards, the shortest piece the longest.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass, field
from functools import lru_cache
from heapq import heappop, heappush

SHORT, QUARTER, OPPOSITE, STAKE = "short", "quarter", "opposite", "stake"
RULES = (SHORT, QUARTER, OPPOSITE, STAKE)
"""What an order may break, the worst first: the last gives way first."""

QUARTERS = (0.0, 0.25, 0.5, 0.75, 1.0)
MOST_PLACES = 400
"""Places along an edge that are told apart: 9 in of a 300-ft edge; a foot on shorter ones."""
FINE = 0.3048
SAME = 1e-6

KEPT = (4, 3, 2, 0)
"""How many of ``RULES``, the worst first, no order may break that is looked at: most forms have one that keeps all."""

MOST_STEPS = 12_000
"""Boards tried over both edges at once; where it would be more, the second edge is laid after the first."""

Faults = tuple[int, int, int, int]
"""How many splices or pieces break each of ``RULES``."""
Score = tuple[int, int, int, int, float, int, float]
"""Faults, waste, boards, and the shortest piece, below zero: the less the better."""
Label = tuple[Score, tuple[float, ...], int, float, float, "Label | None"]
"""A way to a place: its score, the metres done of each run, and the last step: run, board, piece, the label before."""


@dataclass(frozen=True)
class Run:
    """The form of one edge.

    Attributes:
        length: metres of board; past: so much of it before the edge begins, and after it ends.
        after: after it ends, where that is another length.
        knots: metres of board and the share there, in order, where shares don't grow evenly along the board: of an edge
            along several pieces, whose other edge is longer here and shorter there.
    """

    length: float
    past: float
    after: float | None = None
    knots: tuple[tuple[float, float], ...] = ()

    def __post_init__(self) -> None:
        if min(self.past, self.beyond) < 0 or self.edge <= 0:
            raise ValueError("what runs past is a part of the form")

    def share(self, along: float) -> float:
        """Return at what share of the edge a place of the board is, 0 at A and 1 at B."""
        if len(self.knots) < 2:
            return (along - self.past) / self.edge
        row = min(max(bisect_left(self.knots, (along,)), 1), len(self.knots) - 1)
        (first, low), (last, high) = self.knots[row - 1 : row + 1]
        return low + (high - low) * (along - first) / (last - first)

    @property
    def beyond(self) -> float:
        """Metres of board after the edge ends."""
        return self.past if self.after is None else self.after

    @property
    def edge(self) -> float:
        """Metres between the edge's ends."""
        return self.length - self.past - self.beyond


@dataclass(frozen=True)
class Rules:
    """What an order has to keep, metres.

    Attributes:
        least: no piece is shorter where there are two or more; kerf: what a saw cut takes.
        clear: from a stake and a quarter point; apart: from a splice of the other edge, along the middle of both.
        stakes: of the layout, as shares from A; quarters: both ends and the quarter points, the same.
    """

    least: float
    kerf: float
    clear: float
    apart: float
    stakes: tuple[float, ...] = ()
    quarters: tuple[float, ...] = QUARTERS


@dataclass(frozen=True)
class Order:
    """The boards of each run from A to B: ``boards`` as bought, ``pieces`` as they stand in the form (the last is cut).

    ``broken``: how many splices or pieces break each of ``RULES``.
    """

    boards: tuple[tuple[float, ...], ...]
    pieces: tuple[tuple[float, ...], ...]
    broken: dict[str, int]

    @property
    def waste(self) -> float:
        """What is bought and isn't in the form, metres."""
        return sum(map(sum, self.boards)) - sum(map(sum, self.pieces))

    def splices(self, run: int) -> tuple[float, ...]:
        """Return where the boards of a run meet, metres from its beginning."""
        places, at = [], 0.0
        for piece in self.pieces[run][:-1]:
            at += piece
            places.append(at)
        return tuple(places)


@lru_cache(16)  # a page asks for the row, then for what is behind it
def best_order(runs: tuple[Run, ...], stock: tuple[float, ...], rules: Rules) -> Order | None:
    """Return the best order of boards for one edge or two; ``None`` where no board is long enough to tell places apart.

    Long edges and long lists of boards are laid one after the other, each as well as it goes.

    >>> rules = Rules(least=6.0, kerf=0.0104, clear=0.0, apart=2.0)
    >>> best_order((Run(53.3125, 2.0),), (8.0, 10.0, 12.0, 14.0, 16.0), rules).waste
    0.6875
    """
    longest = max(run.length for run in runs)
    cell = max(FINE, longest / MOST_PLACES)
    usable = tuple(sorted({board for board in stock if board >= 2 * cell}))
    if not usable:
        return None
    places = [run.length / cell for run in runs]
    if len(runs) == 1 or max(places) * 2 * usable[-1] / cell * len(usable) <= MOST_STEPS:
        return _told(_Search(runs, usable, rules, cell).best(), len(runs))
    first = _told(_Search(runs[:1], usable, rules, cell).best(), 1)
    taken = tuple(map(runs[0].share, first.splices(0)))
    second = _told(_Search(runs[1:], usable, rules, cell, taken, runs[0].edge).best(), 1)
    broken = {rule: first.broken[rule] + second.broken[rule] for rule in RULES}
    return Order(first.boards + second.boards, first.pieces + second.pieces, broken)


@dataclass
class _Search:
    """Labels spread from the beginning of the runs; of those that come to one place, ``cell`` metres wide, the best
    goes on. ``taken``: shares of splices of an edge of ``beside`` metres that is laid already.

    A label's score never falls from one board to the next. So the labels that break a rule can be left out for as long
    as some order breaks none of it: that order is the one that would be found among all of them.
    """

    runs: tuple[Run, ...]
    stock: tuple[float, ...]
    rules: Rules
    cell: float
    taken: tuple[float, ...] = ()
    beside: float = 0.0
    known: dict[tuple[int, float], Faults] = field(default_factory=dict)
    shares: dict[tuple[int, float], float] = field(default_factory=dict)
    between: float = 0.0

    def __post_init__(self) -> None:
        self.between = sum(run.edge for run in self.runs) / len(self.runs)

    def best(self) -> Label:
        """Return the best label of those that are done."""
        return next(found for kept in KEPT if (found := self._within(kept)) is not None)

    def _within(self, kept: int) -> Label | None:
        """Return the best label that is done and breaks none of the first ``kept`` rules; ``None`` where each does."""
        cell = self.cell
        start: Label = ((0, 0, 0, 0, 0.0, 0, -float("inf")), (0.0,) * len(self.runs), 0, 0.0, 0.0, None)
        best = {(0,) * len(self.runs): start}
        waiting = [(0, key) for key in best]
        while waiting:
            label = best[heappop(waiting)[1]]
            run = self._behind(label[1])
            if run is None:
                return label
            for after in self._steps(label, run, kept):
                place = tuple([round(at / cell) for at in after[1]])
                there = best.get(place)
                if there is None:
                    heappush(waiting, (sum(place), place))
                    best[place] = after
                elif after[0] < there[0]:
                    best[place] = after
        return None

    def _behind(self, at: tuple[float, ...]) -> int | None:
        """Return the run that goes on: the one that is the less far of those that aren't done."""
        behind, least = None, 0.0
        for place, (run, done) in enumerate(zip(self.runs, at, strict=True)):
            share = self._share(place, done)
            if done < run.length - SAME and (behind is None or share < least):
                behind, least = place, share
        return behind

    def _steps(self, label: Label, run: int, kept: int) -> list[Label]:
        """Return what one board more makes of a label: a whole one and a splice, or the run's last, the shortest that
        does. None of what breaks one of the first ``kept`` rules."""
        (short, quarter, opposite, stake, waste, count, shortest), at, *_ = label
        done, length, least = at[run], self.runs[run].length, self.rules.least
        left, known = length - done, self.known
        found: list[Label] = []
        for board in self.stock:
            if board < left - SAME and not (kept and board < least):
                to = done + board
                faults = known.get((run, to)) or self._faults(run, to)
                if kept and 1 in faults[:kept]:
                    continue
                against = faults[2] or self._opposite(at, run, to)
                if against and kept > 2:
                    continue
                score = (short + (board < least), quarter + faults[1], opposite + against,
                         stake + faults[3], waste, count + 1, max(shortest, -board))  # fmt: skip
                found.append((score, (*at[:run], to, *at[run + 1 :]), run, board, board, label))
                continue
            # The longest board may be longer by less than a saw cut: where no other serves, its end is trimmed off.
            trims = board == self.stock[-1] and self.stock[0] >= left - SAME
            if board >= left + self.rules.kerf or abs(board - left) < SAME or trims:
                is_short = left < least and done > 0
                if not (kept and is_short):
                    over = round(waste + max(board - left, 0.0), 6)
                    score = (short + is_short, quarter, opposite, stake, over, count + 1, max(shortest, -left))
                    end = (*at[:run], length + self.cell, *at[run + 1 :])  # a place of its own, past all others
                    found.append((score, end, run, board, left, label))
                break
        return found

    def _faults(self, run: int, place: float) -> Faults:
        """Return which rules a splice breaks by its own place alone."""
        made, rules = self.runs[run], self.rules
        share, apart = made.share(place), 2 * rules.apart / (made.edge + self.beside)
        clear = made.share(place - rules.clear), made.share(place + rules.clear)
        quarter = _any_between(*clear, rules.quarters)
        stake = int(not quarter and _any_between(*clear, rules.stakes))
        faults = self.known[run, place] = (0, quarter, _any_between(share - apart, share + apart, self.taken), stake)
        return faults

    def _share(self, run: int, place: float) -> float:
        share = self.shares.get((run, place))
        if share is None:
            share = self.shares[run, place] = self.runs[run].share(place)
        return share

    def _opposite(self, at: tuple[float, ...], run: int, place: float) -> int:
        """Return 1 where the last splice of the other run is opposite. Its earlier ones are behind this run's last."""
        for other, there in enumerate(at):
            if other != run and 0 < there < self.runs[other].length - SAME:
                off = abs(self._share(run, place) - self._share(other, there))
                return int(off * self.between < self.rules.apart - SAME)
        return 0


def _any_between(low: float, high: float, places: tuple[float, ...]) -> int:
    """Return 1 where one of the places, sorted, is between two shares."""
    first = bisect_left(places, low + SAME)
    return int(first < len(places) and places[first] < high - SAME)


def _told(label: Label, runs: int) -> Order:
    boards: list[list[float]] = [[] for _ in range(runs)]
    pieces: list[list[float]] = [[] for _ in range(runs)]
    broken = dict(zip(RULES, label[0][:4], strict=True))
    step: Label | None = label
    while step is not None and step[5] is not None:
        _score, _at, run, board, piece, step = step
        boards[run].insert(0, board)
        pieces[run].insert(0, piece)
    return Order(tuple(map(tuple, boards)), tuple(map(tuple, pieces)), broken)


def packed(pieces: list[float], stock: tuple[float, ...], kerf: float, offcuts: list[float]) -> list[float] | None:
    """Return the boards to buy for short pieces, after what ``offcuts`` give: the longest first, each where it fits,
    a saw cut between any two. ``None`` where one is longer than any board.

    >>> packed([2.0] * 6, (8.0, 10.0, 12.0, 14.0), 0.0104, [])
    [14.0]
    """
    rest = _fitted(sorted(pieces, reverse=True), sorted(offcuts), kerf)
    best: list[float] | None = None if rest else []
    for length in stock:
        left, bought = rest, []
        while left and left[0] <= length + SAME:
            after = _fitted(left, [length], kerf)
            held = left[:]
            for piece in after:
                held.remove(piece)
            need = sum(held) + kerf * (len(held) - 1)
            bought.append(min(board for board in stock if board >= need + kerf or abs(board - need) < SAME
                              or board == length))  # fmt: skip
            left = after
        if not left and (best is None or (sum(bought), len(bought)) < (sum(best), len(best))):
            best = bought
    return best


def _fitted(pieces: list[float], into: list[float], kerf: float) -> list[float]:
    """Return the pieces, the longest first, that find no room in boards of these lengths."""
    room, rest = list(into), []
    for piece in pieces:
        place = next((at for at, left in enumerate(room) if left >= piece - SAME), None)
        if place is None:
            rest.append(piece)
        else:
            room[place] -= piece + kerf
    return rest
