"""The cut list of a line's forms: which boards in which order, what else is cut, and what is bought."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from itertools import accumulate, chain, pairwise

from bowstring.forming.cutting import RULES, Order, Rules, best_order, packed
from bowstring.forming.line.boards import Form, forms_of, shares_of_arcs
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand
from bowstring.forming.line.tops import HANDS
from bowstring.report.forming.boards_bending import name_of as name_of_board
from bowstring.report.forming.boards_cutting import broken_told, end_forms_title, listed, stock_shown, unit_of
from bowstring.report.forming.ends import formed
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.board_list import LineBoards
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.units.tape import Tape
from bowstring.words import say

QUARTERS = 4

TOUCHES = 1e-6
"""Metres: a board that reaches no farther into an arc ends where the arc begins."""


@dataclass(frozen=True)
class Stretch:
    """The left and the right form along pieces that a board runs through, and the order of the boards, ``None`` where
    none is long enough to tell it."""

    forms: tuple[Form, Form]
    order: Order | None

    def splices(self, place: int) -> tuple[float, ...]:
        """Return where the boards of a form meet, metres of board from its beginning."""
        return self.order.splices(place) if self.order else ()

    def bent(self, line: Line, place: int) -> int:
        """Return how many boards of a form lie along an arc, if only for a part of them."""
        if self.order is None:
            return 0
        form, ends = self.forms[place], [*accumulate(self.order.pieces[place], initial=0.0)]
        places = pairwise(accumulate(form.boards, initial=form.before))
        arcs = [part for number, part in zip(form.pieces, places, strict=True) if isinstance(line.pieces[number], Bend)]
        return sum(
            any(min(last, far) - max(first, near) > TOUCHES for near, far in arcs) for first, last in pairwise(ends)
        )


@dataclass(frozen=True)
class LineCut:
    """What is cut: each stretch's boards, the pieces on the back of the splices and the end forms with what is bought
    for them; ``parts``: of how many pieces each end form is."""

    stretches: tuple[Stretch, ...]
    splice_boards: list[float]
    end_boards: list[float]

    @property
    def boards(self) -> list[float]:
        """All boards of both forms, as bought."""
        orders = (stretch.order for stretch in self.stretches if stretch.order)
        return [board for order in orders for boards in order.boards for board in boards]

    def bent(self, line: Line) -> int:
        """Return how many of the boards of both forms are bent: those that lie along an arc, if only for a part."""
        return sum(stretch.bent(line, place) for stretch in self.stretches for place in range(len(HANDS)))

    def splices(self) -> dict[Hand, int]:
        """Return how many splices each form has."""
        return {
            hand: sum(len(stretch.splices(place)) for stretch in self.stretches) for place, hand in enumerate(HANDS)
        }

    def broken(self) -> dict[str, int]:
        """Return how many splices or pieces break each of ``cutting.RULES``."""
        orders = [stretch.order for stretch in self.stretches if stretch.order]
        return {rule: sum(order.broken[rule] for order in orders) for rule in RULES}


def cut(made: LineBoards) -> LineCut | None:
    """Return what is cut of the board that bends to every edge, ``None`` where none does."""
    choice, line = made.choice, made.plan.line
    if choice.used is None:
        return None
    practice, lengths = choice.practice, choice.lengths
    stretches = []
    for forms in forms_of(made.slab, choice.used.board.thickness, choice.overrun):
        quarters = shares_of_arcs(line, forms[0], QUARTERS)
        rules = Rules(
            practice.least, practice.saw, practice.clear, practice.apart, _kept_clear(made.plan, forms[0]), quarters
        )
        stretches.append(Stretch(forms, best_order(tuple(form.run for form in forms), lengths, rules)))
    orders = [stretch.order for stretch in stretches if stretch.order]
    offcuts = [
        boards[-1] - pieces[-1] - practice.saw
        for order in orders
        for boards, pieces in zip(order.boards, order.pieces, strict=True)
        if boards[-1] > pieces[-1]
    ]
    count = sum(len(pieces) - 1 for pieces in chain.from_iterable(order.pieces for order in orders))
    width = made.slab.width
    parts = max(1, -int(-(width / max(lengths) - 1e-9) // 1))
    return LineCut(
        stretches=tuple(stretches),
        splice_boards=packed([practice.splice] * count, lengths, practice.saw, offcuts) or [],
        end_boards=packed([width / parts] * (len(formed(made.plan.plan)) * parts), lengths, practice.saw, []) or [],
    )


def _kept_clear(plan: LinePlan, form: Form) -> tuple[float, ...]:
    """Return at which shares of a stretch no splice belongs, the arcs' quarter points aside: where its pieces meet, and
    at the stakes of the line's only arc.

    Of several arcs the stakes aren't among them. Those of the staked one alone would make the order hang on which arc
    is looked at, and the boards are bought once for all. Those of all hang on each arc's own method and rounds, which
    are chosen arc by arc, some of them after the boards are cut. The first two rounds of halving are every arc's
    quarter points, and so kept clear whatever is staked.
    """
    whole, done, found, only = sum(form.middles), 0.0, set[float](), is_only_arc(plan)
    for number, middle in zip(form.pieces, form.middles, strict=True):
        found.add(done / whole)
        if only and number == plan.settled.said.at:
            found |= {(done + share * middle) / whole for _name, share in plan.plan.shares()}
        done += middle
    return tuple(sorted(found))


def is_only_arc(plan: LinePlan) -> bool:
    """Tell whether the arc that is staked is the only one of its line."""
    return sum(isinstance(piece, Bend) for piece in plan.line.pieces) == 1


def cut_tables(made: LineBoards, found: LineCut) -> list[LinedTable]:
    """Return the cut list, what is bought, and where boards meet."""
    unit = unit_of(made.plan.tape, made.choice.lengths)
    tables = [_cut_list(made, found, unit), _buy_list(made, found, unit)]
    splices = _splices(made, found)
    return [*tables, splices] if splices["rows"] else tables


def _cut_list(made: LineBoards, found: LineCut, unit: str) -> LinedTable:
    assert made.choice.used is not None
    tape, name, straight = made.plan.tape, name_of_board(made.choice.used.board), made.choice.thick.board.name
    rows = []
    for place, hand in enumerate(HANDS):
        for number, stretch in enumerate(found.stretches, 1):
            called = (
                say(f"lined.form_{hand}") if len(found.stretches) == 1 else say(f"lined.form_{hand}_run", number=number)
            )
            boards = listed(tape, unit, stretch.order.boards[place]) if stretch.order else say("boards.no_order")
            rows.append([called, name, tape.show(stretch.forms[place].run.length), boards])
    count = sum(found.splices().values())
    if count:
        needs = say("boards.so_many", count=count, length=tape.show_whole(made.choice.practice.splice))
        boards = listed(tape, unit, found.splice_boards) or say("boards.offcuts")
        rows.append([say("boards.splices"), name, needs, boards])
    needs, ends = tape.show(made.slab.width), formed(made.plan.plan)
    if len(ends) > 1:
        needs = say("boards.so_many", count=2, length=needs)
    if ends:
        rows.append([end_forms_title(made.plan.plan), straight, needs, listed(tape, unit, found.end_boards)])
    in_unit = say("boards.boards_in", unit=unit) if unit else say("boards.boards")
    heads = [say("boards.piece"), say("boards.board"), say("boards.needs"), in_unit]
    return {"key": "cut", "title": say("boards.cut_head"), "heads": heads, "rows": rows}


def _buy_list(made: LineBoards, found: LineCut, unit: str) -> LinedTable:
    assert made.choice.used is not None
    tape, used, straight = made.plan.tape, name_of_board(made.choice.used.board), made.choice.thick.board.name
    bought = Counter((used, board) for board in [*found.boards, *found.splice_boards])
    bought.update((straight, board) for board in found.end_boards)
    names = [used, straight]
    rows = [
        [name, f"{stock_shown(tape, unit, length)} {unit}".strip(), f"{count}"]
        for (name, length), count in sorted(bought.items(), key=lambda one: (names.index(one[0][0]), -one[0][1]))
    ]
    heads = [say("boards.board"), say("boards.length"), say("boards.count")]
    return {"key": "buy", "title": say("boards.buy_head"), "heads": heads, "rows": rows}


def _splices(made: LineBoards, found: LineCut) -> LinedTable:
    tape, rows = made.plan.tape, []
    for place, hand in enumerate(HANDS):
        for stretch in found.stretches:
            for along in stretch.splices(place):
                number, at = stretch.forms[place].on_edge(along)
                rows.append([say(f"lined.form_{hand}"), tape.show_running(at), name_of(made.plan, number + 1)])
    heads = [say("boards.edge"), say("boards.at"), say("boards.where")]
    return {"key": "splices", "title": say("lined.splices_head"), "heads": heads, "rows": rows}


def gave_way(made: LineBoards, found: LineCut, tape: Tape) -> list[str]:
    """Return which rules no order keeps, a sentence each; empty where all are kept."""
    broken, practice = found.broken(), made.choice.practice
    near = "stake" if is_only_arc(made.plan) else "join"
    if not any(broken.values()):
        return []
    told = {
        "short": broken_told("short", broken["short"], tape.show_whole(practice.least)),
        "quarter": broken_told("quarter", broken["quarter"], tape.show_whole(practice.clear), "lined"),
        "opposite": broken_told("opposite", broken["opposite"], tape.show_whole(practice.apart)),
        "stake": broken_told(near, broken["stake"], tape.show_whole(practice.clear), "lined"),
    }
    return [say("boards.gave_way"), *(told[rule] for rule in RULES if broken[rule])]
