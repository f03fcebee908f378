"""Which boards bend to a line's tightest edge, and how its form stakes stand along each piece."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import inf

from bowstring.forming.line.boards import stretches
from bowstring.forming.line.edges import Edge
from bowstring.forming.line.pieces import Bend, Hand
from bowstring.forming.line.slab import LineSlab
from bowstring.forming.line.tops import HANDS
from bowstring.report.forming.at_forms import against
from bowstring.report.forming.boards_bending import tightest_of
from bowstring.report.forming.boards_list import CLEAR, RANKS, Choice, FormedEdge, choose
from bowstring.report.forming.boards_stakes import Staking, staking
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

Place = tuple[int, Hand]
"""A piece of the line, from 0, and which of its edges."""


@dataclass(frozen=True)
class LineBoards:
    """The boards of a slab along a line: ``edges`` of each piece, the straights' too; ``choice``: what bends to all."""

    plan: LinePlan
    slab: LineSlab
    edges: dict[Place, FormedEdge]
    choice: Choice

    @property
    def bent(self) -> tuple[FormedEdge, ...]:
        """The edges that aren't straight."""
        return tuple(edge for edge in self.edges.values() if edge.radius < inf)

    @property
    def tightest(self) -> FormedEdge:
        """The edge that decides."""
        return tightest_of(self.bent)

    def place_of(self, edge: FormedEdge) -> Place:
        """Return where an edge is."""
        return next(place for place, one in self.edges.items() if one is edge)

    @cached_property
    def staked(self) -> dict[Place, Staking]:
        """The form stakes along each edge of each piece, by its own radius."""
        choice, said = self.choice, self.plan.said.board
        depth = against(self.plan.plan, choice.told.board)
        board = choice.used.board if choice.used else None
        return {
            place: staking(edge, board, depth, choice.practice, said.gap, choice.overrun)
            for place, edge in self.edges.items()
        }

    @property
    def fails(self) -> tuple[FormedEdge, ...]:
        """The edges to which no board that may be used bends, the tightest first; none where one bends to all."""
        if self.choice.used is not None:
            return ()
        most = max(RANKS[self.choice.level], RANKS[CLEAR])
        told = self.choice.told.at
        found = [edge for edge in self.bent if RANKS.get(told[edge.key] or "", len(RANKS)) > most]
        return tuple(sorted(found, key=lambda edge: edge.radius))

    def name(self, edge: FormedEdge) -> str:
        """Return an edge by its piece and its hand."""
        number, hand = self.place_of(edge)
        return say(f"lined.edge_of_{hand}", piece=name_of(self.plan, number + 1))

    def stakes(self, splices: int) -> int:
        """Return how many form stakes there are: one more than gaps in each stretch that a board runs through, those
        past both ends of the line, and one at each splice."""
        last, count = len(self.slab.line.pieces) - 1, splices
        for hand in HANDS:
            count += sum(self.staked[number, hand].gaps for number in range(last + 1))
            count += len(stretches(self.slab.line))
            count += (self.staked[0, hand].past + self.staked[last, hand].past) // 2
        return count


def boards_on(plan: LinePlan, slab: LineSlab) -> LineBoards:
    """Return the boards along a line's slab."""
    edges: dict[Place, FormedEdge] = {}
    for hand in HANDS:
        edge = slab.left_edge if hand == "left" else slab.right_edge
        edges |= {(number, hand): formed for number, formed in enumerate(_formed(edge, hand))}
    bent = tuple(edge for edge in edges.values() if edge.radius < inf)
    return LineBoards(plan, slab, edges, choose(plan.plan, bent))


def _formed(edge: Edge, hand: Hand) -> list[FormedEdge]:
    """Return an edge along each piece of its line."""
    runs = {one.piece: one.run for one in edge.runs if not one.carried}
    found = []
    for number, (piece, length) in enumerate(zip(edge.line.pieces, edge.lengths, strict=True)):
        run = runs[number]
        radius = 1 / abs(run.curvature) if isinstance(piece, Bend) else inf
        inner = isinstance(piece, Bend) and piece.hand == hand
        found.append(FormedEdge(f"{number} {hand}", radius, length, abs(run.turn), inner))
    return found


def line_alone(plan: LinePlan) -> tuple[FormedEdge, ...]:
    """Return the line's own arcs, as if they were inner edges: what is known before there is a slab."""
    return tuple(
        FormedEdge(f"{number}", piece.radius, piece.length, abs(piece.turn), True)
        for number, piece in enumerate(plan.line.pieces)
        if isinstance(piece, Bend)
    )
