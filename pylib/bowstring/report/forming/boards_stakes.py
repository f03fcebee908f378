"""How far apart form stakes stand along an edge, why, and what the board does between them."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, inf

from bowstring.forming.boards import Board, bow, bow_spacing, flat_spacing, spaced
from bowstring.forming.loose_end import LooseEnd
from bowstring.forming.pad import Pad
from bowstring.forming.stock import Practice
from bowstring.report.forming.at_forms import against
from bowstring.report.forming.boards_cutting import parts_of, straights_of
from bowstring.report.forming.boards_list import Choice, FormedEdge
from bowstring.report.forming.ends import formed, named
from bowstring.report.forming.plan import Plan
from bowstring.units.tape import Tape
from bowstring.words import say

PRACTICE, SMOOTH, CLOSEST, BOW, SAID = "practice", "smooth", "closest", "bow", "said"


@dataclass(frozen=True)
class Staking:
    """Form stakes of an edge: ``gaps`` equal ones of ``gap`` metres along the edge.

    Attributes:
        reason: what decided; too_wide: what a gap that was said is wider than, empty where it isn't.
        past: stakes past both ends together; bow: of the board under wet concrete, ``None`` without a board.
        loose: what a loose end does, ``None`` where stakes stand farther apart than a radius.
    """

    gaps: int
    gap: float
    reason: str
    too_wide: str
    past: int
    bow: float | None
    loose: LooseEnd | None

    @property
    def along(self) -> int:
        """Stakes from A to B."""
        return self.gaps + 1


def staked_edge(plan: Plan, choice: Choice, edge: FormedEdge) -> Staking:
    """Return the stakes of an edge of a job: of concrete as deep as the board is high where no thickness is said."""
    depth = against(plan, choice.told.board)
    board = choice.used.board if choice.used else None
    return staking(edge, board, depth, choice.practice, plan.said.board.gap, choice.overrun)


def staking(
    edge: FormedEdge, board: Board | None, depth: float, practice: Practice, said: float | None, overrun: float
) -> Staking:
    """Return the stakes of an edge under concrete of a depth."""
    # As close as the face wants, but no closer than stakes go: there the board itself holds the curve.
    smooth = flat_spacing(edge.radius, practice.face)
    limits = {PRACTICE: practice.gap, SMOOTH if smooth > practice.closest else CLOSEST: max(smooth, practice.closest)}
    if board is not None:
        limits[BOW] = bow_spacing(board, depth, practice.bow)
    reason = min(limits, key=lambda one: limits[one])
    most, too_wide = limits[reason], ""
    if said is not None:
        too_wide = next((one for one in (BOW, SMOOTH) if said > limits.get(one, said) * (1 + 1e-9)), "")
        most, reason = said, SAID
    gaps = spaced(edge.length, most)
    gap = edge.length / gaps
    return Staking(
        gaps=gaps,
        gap=gap,
        reason=reason,
        too_wide=too_wide,
        past=2 * ceil(overrun / most - 1e-9),
        bow=None if board is None else bow(board, depth, gap),
        loose=LooseEnd(edge.radius, gap) if gap <= edge.radius < inf else None,
    )


STRAIGHT = {True: 4 * 0.3048, False: 1.2}
"""Metres: the most between stakes of a straight form, 3 to 4 ft (Beall, Masonry and Concrete, 2004, p. 47)."""


@dataclass(frozen=True)
class StraightStakes:
    """Stakes of straight forms that are alike: ``count`` of them, each so long, metres, with so many equal gaps.

    ``key``: the sentence of them; ``splices``: of each, with a stake more at every one; ``ends``: those that they stand
    at, of forms across a slab's ends.
    """

    key: str
    count: int
    length: float
    gaps: int
    splices: int
    ends: str = ""

    @property
    def stakes(self) -> int:
        """How many stakes they take."""
        return self.count * (self.gaps + 1 + self.splices)


def end_stakes(plan: Plan, choice: Choice) -> list[StraightStakes]:
    """Return the stakes of the forms across the ends of a slab that has a width, one at each of their own ends."""
    most, at = _most(plan, choice), dict[float, list[str]]()
    for end, length in zip(formed(plan), straights_of(plan, choice), strict=False):
        at.setdefault(length, []).append(end)

    def staked(ends: list[str], length: float) -> StraightStakes:
        key = "boards.stakes_ends" if len(ends) > 1 else "ends.stakes"
        splices = len(parts_of(length, choice)) - 1
        return StraightStakes(key, len(ends), length, spaced(length, most), splices, named(plan, ends))

    return [staked(ends, length) for length, ends in at.items() if length]


def _most(plan: Plan, choice: Choice) -> float:
    """How far apart stakes of straight forms stand at most, metres: the concrete may bow the board but so far."""
    board = choice.thick.board
    bowed = bow_spacing(board, against(plan, board, straight=True), choice.practice.bow)
    return plan.said.board.gap or min(STRAIGHT[plan.layout.job.tape.feet], bowed)


def straight_stakes(plan: Plan, choice: Choice) -> list[StraightStakes]:
    """Return the stakes of the straight forms that close a slab: those that fill its curve, or across its ends."""
    filled = plan.filled
    if filled is None:
        return end_stakes(plan, choice)
    most = _most(plan, choice)
    forms = straights_of(plan, choice)

    def staked(key: str, count: int, length: float) -> StraightStakes:
        form = forms[-1] if count == 1 else forms[0] if len(forms) > 1 else 0.0  # no side form beside a curve's board
        return StraightStakes(key, count, length, spaced(length, most), len(parts_of(form, choice)) - 1)

    if not isinstance(filled, Pad):
        return [staked("fill.stakes_string", 1, filled.arc.chord)]
    sides = staked("pad.stakes_sides", 2, filled.sides)
    return [sides, staked("pad.stakes_back", 1, filled.arc.chord)] if filled.backed else [sides]


def reason_of(staked: Staking, practice: Practice, tape: Tape) -> str:
    """Return why the stakes stand as they do, in a sentence or two."""
    if staked.reason == PRACTICE:
        return say("boards.reason_practice", most=tape.show_whole(practice.gap))
    if staked.reason == SMOOTH:
        return say("boards.reason_smooth", face=tape.show_limit(practice.face))
    if staked.reason == CLOSEST:
        return say("boards.reason_closest", most=tape.show_whole(practice.closest))
    if staked.reason == BOW:
        return say("boards.reason_bow", bow=tape.show_limit(practice.bow))
    said = say("boards.reason_said")
    if staked.too_wide == BOW:
        return f"{said} {say('boards.too_wide_bow', bow=tape.show_limit(practice.bow))}"
    if staked.too_wide == SMOOTH:
        return f"{said} {say('boards.too_wide_smooth', face=tape.show_limit(practice.face))}"
    return said


def straight_told(one: StraightStakes, tape: Tape) -> str:
    """Return how the stakes of straight forms stand."""
    return say(one.key, gap=tape.show(one.length / one.gaps), spaces=spaces_told(one.gaps), ends=one.ends)


def spaces_told(count: int) -> str:
    """Return how many spaces stakes stand apart by; one alone is even with none."""
    return say("boards.space") if count == 1 else say("boards.spaces", count=count)
