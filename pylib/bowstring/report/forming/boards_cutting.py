"""The cut list: which boards in which order along both edges, what else is cut, and what is bought."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from bowstring.forming.boards import Board
from bowstring.forming.cutting import QUARTERS, RULES, Order, Rules, Run, best_order, packed
from bowstring.forming.pad import Pad
from bowstring.forming.stock import FOOT, Practice
from bowstring.report.forming.boards_bending import name_of
from bowstring.report.forming.boards_list import OTHER_CURVE, Choice, FormedEdge
from bowstring.report.forming.ends import against, formed, named, widths
from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build_boards import BuyRow, CutRow, SpliceRow
from bowstring.units.tape import Tape
from bowstring.words import say


@dataclass(frozen=True)
class Cut:
    """What is cut: ``order`` of the boards of the bent edges (``None``: too long to tell, or none bends), ``splices``
    and ``ends``: pieces of which boards, with what is bought for them.

    ``ends``: the form across each end, or along the string of a slab that fills its curve.
    """

    order: Order | None
    runs: tuple[Run, ...]
    splices: int
    splice_boards: list[float]
    ends: tuple[float, ...]
    end_boards: list[float]

    def buys(self, used: str, straight: str) -> list[tuple[str, float, int]]:
        """Return what is bought: board, length and count, the longest first."""
        edges = [board for run in self.order.boards for board in run] if self.order else []
        bought = Counter((used, board) for board in [*edges, *self.splice_boards])
        bought.update((straight, board) for board in self.end_boards)
        names = [*dict.fromkeys((used, straight))]
        return [(name, length, count) for (name, length), count
                in sorted(bought.items(), key=lambda one: (names.index(one[0][0]), -one[0][1]))]  # fmt: skip


def length_of(edge: FormedEdge, board: Board, overrun: float) -> float:
    """Return how long the boards of an edge are together, at mid-thickness."""
    aside = -board.thickness / 2 if edge.inner else board.thickness / 2
    return edge.length + aside * edge.angle + 2 * overrun


def cut(plan: Plan, choice: Choice, edges: tuple[FormedEdge, ...]) -> Cut | None:
    """Return what is cut of the board that bends to both edges; where none does the straight forms of a slab that fills
    its curve, ``None`` for any other."""
    if choice.used is None:
        return _straight_cut(plan, choice) if plan.filled is not None else None
    board, practice, lengths = choice.used.board, choice.practice, choice.lengths
    runs = tuple(Run(length_of(edge, board, choice.overrun), choice.overrun) for edge in edges)
    # No stake of the layout stands at a footing's form: in its dig they are gone, or they stand clear of it.
    stakes = () if plan.of_footing else tuple(sorted(share for _name, share in plan.shares()))
    rules = Rules(practice.least, practice.saw, practice.clear, practice.apart, stakes)
    order = _orders(plan, runs, lengths, rules)
    count = sum(len(pieces) - 1 for pieces in order.pieces) if order else 0
    offcuts = [
        boards[-1] - pieces[-1] - practice.saw
        for boards, pieces in zip(order.boards, order.pieces, strict=True)
        if boards[-1] > pieces[-1]
    ] if order else []  # fmt: skip
    ends = straights_of(plan, choice)
    pieces = [part for end in ends for part in parts_of(end, choice)]
    if plan.filled is not None:
        count += len(pieces) - len(ends)
    return Cut(
        order=order,
        runs=runs,
        splices=count,
        splice_boards=packed([practice.splice] * count, lengths, practice.saw, offcuts) or [],
        ends=ends,
        end_boards=packed(pieces, lengths, practice.saw, []) or [],
    )


def _straight_cut(plan: Plan, choice: Choice) -> Cut:
    """The straight forms alone: splices are of their board."""
    practice, ends = choice.practice, straights_of(plan, choice)
    pieces = [part for end in ends for part in parts_of(end, choice)]
    count = len(pieces) - len(ends)
    return Cut(
        order=None,
        runs=(),
        splices=count,
        splice_boards=packed([practice.splice] * count, choice.lengths, practice.saw, []) or [],
        ends=ends,
        end_boards=packed(pieces, choice.lengths, practice.saw, []) or [],
    )


def _orders(plan: Plan, runs: tuple[Run, ...], lengths: tuple[float, ...], rules: Rules) -> Order | None:
    """Return the order of the boards: both edges of a band stagger their splices; the curves of a slab's two ends are
    as far apart as its sides, and each is laid by itself."""
    if plan.filled is None:
        return best_order(runs, lengths, rules)
    found = [best_order((run,), lengths, rules) for run in runs]
    orders = [order for order in found if order]
    if len(orders) < len(runs):
        return None
    return Order(
        boards=tuple(board for order in orders for board in order.boards),
        pieces=tuple(piece for order in orders for piece in order.pieces),
        broken={rule: sum(order.broken[rule] for order in orders) for rule in RULES},
    )


def straights_of(plan: Plan, choice: Choice) -> tuple[float, ...]:
    """Return how long each straight form is, metres: one across each end that has one, or one along the string, or both
    sides and the back between them.

    A side's form runs on past the back's by its own thickness, and begins where the curve's board ends that runs down
    the side of a half circle; none is left where that one is as long as the side.
    """
    pad = plan.filled
    if isinstance(pad, Pad):
        past = choice.thick.board.thickness if pad.backed else 0.0
        side = pad.sides + past - (pad.ends * choice.overrun if pad.tangent else 0.0)
        sides = (side, side) if side > past + pad.sides * 1e-9 else ()
        return (*sides, pad.arc.chord) if pad.backed else sides
    if plan.filled is not None:
        return (plan.filled.arc.chord,)
    return tuple(widths(plan)[end] for end in formed(plan)) if plan.width else ()


def parts_of(length: float, choice: Choice) -> list[float]:
    """Return the even pieces of a straight form, each no longer than a board; between two of them is a splice."""
    count = max(1, ceil(length / max(choice.lengths) - 1e-9))
    return [length / count] * count


def unit_of(tape: Tape, lengths: tuple[float, ...]) -> str:
    """Return the unit in which all bought lengths are short numbers, ``ft`` or ``m``; empty where there is none."""
    size, name = (FOOT, "ft") if tape.feet else (0.1, "m")
    return name if all(abs(one / size - round(one / size)) < 1e-6 for one in lengths) else ""


def stock_shown(tape: Tape, unit: str, length: float) -> str:
    """Return a bought length as yards of lumber write it: whole feet, or metres with one decimal."""
    if not unit and tape.unit in ("m", "mm"):  # foot lumber in metres: no length of it is exact in millimetres
        return f"{length:.3f} m"
    if not unit:
        return tape.show_whole(length)
    return f"{round(length / FOOT)}" if unit == "ft" else f"{length:.1f}"


def listed(tape: Tape, unit: str, lengths: list[float] | tuple[float, ...]) -> str:
    """Return bought lengths in a row."""
    return ", ".join(stock_shown(tape, unit, one) for one in lengths)


def splice_rows(plan: Plan, edge: FormedEdge, run: Run, places: tuple[float, ...]) -> list[SpliceRow]:
    """Return where boards meet along an edge, each between two stakes of the layout."""
    tape = plan.tape
    rows: list[SpliceRow] = []
    stakes = sorted(plan.shares(), key=lambda one: one[1])
    for place in places:
        share = run.share(place)
        along = share * edge.length
        before = [name for name, at in stakes if at <= share]
        after = [name for name, at in stakes if at > share]
        text = say("boards.splice_at", first=before[-1] if before else "A", last=after[0] if after else "B")
        rows.append(
            {
                "along": along,
                "along_shown": tape.show_running(along),
                "text": text,
            }
        )
    return rows


def cut_rows(plan: Plan, choice: Choice, edges: tuple[FormedEdge, ...], made: Cut | None, unit: str) -> list[CutRow]:
    """Return the cut list's rows: of a slab that fills its curve its straight forms where no board bends, else none."""
    if made is None:
        return []
    tape, straight = plan.tape, choice.thick.board
    rows: list[CutRow] = []
    name = name_of(choice.used.board) if choice.used else straight.name
    for place, edge in enumerate(edges if choice.used else ()):
        boards = listed(tape, unit, made.order.boards[place]) if made.order else say("boards.no_order")
        rows.append(
            _row(
                say("pad.other_curve" if edge.key == OTHER_CURVE else f"boards.{edge.key}"),
                name,
                tape.show(made.runs[place].length),
                boards,
            )
        )
    if made.splices:
        needs = say("boards.so_many", count=made.splices, length=tape.show_whole(choice.practice.splice))
        boards = listed(tape, unit, made.splice_boards) or say("boards.offcuts")
        rows.append(_row(say("boards.splices"), name, needs, boards))
    title = _straight_title(plan, made) if choice.alone else end_forms_title(plan)
    if made.ends:
        rows.append(_row(title, straight.name, _needs(made, tape), listed(tape, unit, made.end_boards)))
    return rows


def end_forms_title(plan: Plan) -> str:
    """Return what the forms across the ends are called, and of one alone at which end it stands."""
    return say("ends.form", ends=named(plan, formed(plan))) if against(plan) else say("boards.end_forms")


def _straight_title(plan: Plan, made: Cut) -> str:
    """Return what the straight forms of a slab that fills its curve are."""
    if not isinstance(plan.filled, Pad):
        return say("fill.straight_form")
    if not plan.filled.backed:
        return say("pad.side_forms")
    return say("pad.straight_forms" if len(made.ends) > 1 else "pad.back_form")


def _needs(made: Cut, tape: Tape) -> str:
    """Return how long the straight forms are."""
    first, *others = map(tape.show, made.ends)
    if not others:
        return first
    if len(others) == 2:
        return say("boards.both", first=say("boards.so_many", count=2, length=first), last=others[1])
    if first == others[0]:
        return say("boards.so_many", count=2, length=first)
    return say("boards.both", first=first, last=others[0])


def cut_note(choice: Choice, tape: Tape) -> list[str]:
    """Return in which order the boards of an edge stand, and where the first begins; nothing where no board bends."""
    if choice.used is None:
        return []
    if not choice.overrun:
        return [say("boards.cut_from_a")]
    return [say("boards.cut_past_a", past=tape.show_whole(choice.overrun))]


def _row(name: str, board: str, needs: str, boards: str) -> CutRow:
    return {
        "name": name,
        "board": board,
        "needs": needs,
        "boards": boards,
    }


def buy_rows(tape: Tape, choice: Choice, made: Cut | None, unit: str) -> list[BuyRow]:
    """Return what is bought; nothing where nothing is cut."""
    if made is None:
        return []
    used = name_of(choice.used.board) if choice.used else choice.thick.board.name
    return [
        {
            "board": board,
            "length": length,
            "length_shown": f"{stock_shown(tape, unit, length)} {unit}".strip(),
            "count": count,
        }
        for board, length, count in made.buys(used, choice.thick.board.name)
    ]


def gave_way(plan: Plan, choice: Choice, edges: tuple[FormedEdge, ...], made: Cut | None) -> list[str]:
    """Return which rules no order keeps, a sentence each, and which splices stand close to a stake; empty where all are
    kept."""
    order = made.order if made else None
    if order is None or not any(order.broken.values()):
        return []
    practice, tape = choice.practice, plan.tape
    lengths = {"short": practice.least, "quarter": practice.clear, "opposite": practice.apart, "stake": practice.clear}
    told = {rule: broken_told(rule, order.broken[rule], tape.show_whole(lengths[rule])) for rule in RULES}
    near = [*_near_stakes(plan, edges, made, practice)] if made else []
    if near:
        told["stake"] = " ".join([told["stake"].removesuffix(".") + ":", "; ".join(near) + "."])
    return [say("boards.gave_way"), *(told[rule] for rule in RULES if order.broken[rule])]


def broken_told(rule: str, count: int, length: str, group: str = "boards") -> str:
    """Return how many splices or pieces break a rule, in a sentence."""
    key = f"{group}.broken_{rule}"
    return say(key, count=count, length=length) if count != 1 else say(f"{key}_one", length=length)


def _near_stakes(plan: Plan, edges: tuple[FormedEdge, ...], made: Cut, practice: Practice) -> Iterator[str]:
    """Yield where each splice is that stands too close to a stake of the layout, and not to a quarter point anyhow."""
    assert made.order is not None  # it is only asked of one
    for number, (edge, run) in enumerate(zip(edges, made.runs, strict=True)):
        for place in made.order.splices(number):
            apart = [(abs(place - run.past - share * run.edge), name) for name, share in plan.shares()]
            quarters = min(abs(place - run.past - share * run.edge) for share in QUARTERS)
            off, name = min(apart)
            if quarters < practice.clear or off >= practice.clear:
                continue
            at = plan.tape.show_running(run.share(place) * edge.length)
            yield say(f"boards.near_{edge.key}", at=at, off=plan.tape.show(off), stake=name)
