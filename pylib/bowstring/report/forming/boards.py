"""The boards, told."""

from __future__ import annotations

from math import ceil

from bowstring.forming.boards import Board
from bowstring.forming.pad import Pad
from bowstring.report.forming import boards_bending as bending
from bowstring.report.forming import boards_cutting as cutting
from bowstring.report.forming import boards_how as how
from bowstring.report.forming.at_forms import at_forms
from bowstring.report.forming.boards_list import OTHER_CURVE, Choice, FormedEdge, choose, edges_of, room_past
from bowstring.report.forming.boards_otherwise import otherwise, remedy, strip_rows
from bowstring.report.forming.boards_row import conclusion, more_of, short_of, state_of
from bowstring.report.forming.boards_stakes import (
    Staking,
    StraightStakes,
    reason_of,
    staked_edge,
    straight_stakes,
    straight_told,
)
from bowstring.report.forming.building_strip import strip_told
from bowstring.report.forming.end_joints import buy_strip
from bowstring.report.forming.formboard import unknown_board
from bowstring.report.forming.pad_corner import bevel_told, carried_told
from bowstring.report.forming.plan import Plan, is_designed, line_ends
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_boards import BoardsPart, EdgeBoards
from bowstring.words import say

SPARE = 10
"""One stake in so many more: stakes split."""


def report_boards(plan: Plan) -> BoardsPart | None:
    """Return the answer's ``boards``, ``None`` where something has to be said first."""
    edges = edges_of(plan)
    if not edges or unknown_board(plan) is not None or is_designed(plan):
        return None
    choice, tape = choose(plan, edges), plan.tape
    staked = [staked_edge(plan, choice, edge) for edge in edges]
    made = cutting.cut(plan, choice, edges)
    unit = cutting.unit_of(tape, choice.lengths)
    told = [_edge(plan, choice, edges, place, stakes, made, unit) for place, stakes in enumerate(staked)]
    straight = straight_stakes(plan, choice)
    stakes = sum(one["stakes"] for one in told) + sum(one.stakes for one in straight)
    with_spare = ceil(stakes * (SPARE + 1) / SPARE - 1e-9)
    sprung, tightest = bending.sprung_board(choice, edges, tape), bending.tightest_of(edges)
    bank = at_forms(plan)
    return {
        "state": state_of(choice),
        "short": short_of(choice),
        "more": more_of(choice, tape, sum(len(one["boards"]) for one in told), with_spare),
        "conclusion": [*conclusion(choice), *_straight_alone(plan, choice)],
        "tighter": tightest.key,
        "tighter_told": bending.tighter_told(choice, edges, tape),
        "level": choice.level,
        "levels": bending.level_choices(choice),
        "rows": bending.board_rows(choice, edges, tape, sprung.length),
        "strips": strip_rows(choice, edges, tape),
        "stock": sprung.length,
        "springs": sprung.shown,
        "springs_shown": sprung.bow,
        "push_head": sprung.head,
        "bow": sprung.lines,
        "fails": bending.where_it_fails(choice, staked[edges.index(tightest)].loose, tape),
        "otherwise": otherwise(choice, edges, tape),
        "ends": how.at_the_ends(choice, edges, staked if _stands(plan, choice) else [], tape, _carried(plan, choice)),
        "bending": how.in_order(plan, choice),
        "edges": told,
        "stock_shown": cutting.listed(tape, unit, sorted(choice.lengths)),
        "unit_shown": unit,
        "cut": cutting.cut_rows(plan, choice, edges, made, unit),
        "cut_note": " ".join([*cutting.cut_note(choice, tape), *_cut_beside(plan)]),
        "buy": cutting.buy_rows(tape, choice, made, unit),
        "gave_way": cutting.gave_way(plan, choice, edges, made),
        "stakes": stakes,
        "with_spare": with_spare,
        "stakes_how": _stakes_how(plan, choice, (told, staked), straight, (stakes, with_spare), bank),
        "bank": bank,
        "remedy": remedy(choice, edges, tape),
        "cautions": [say("boards.spring")],
        "notes": how.taken(plan, choice, tape, unit),
    }


def _stands(plan: Plan, choice: Choice) -> bool:
    """Tell whether the curve has stakes: not of a slab that fills it where no board bends to it."""
    return choice.used is not None or plan.filled is None


def _straight_alone(plan: Plan, choice: Choice) -> list[str]:
    """Return which board the straight forms are though none bends to the curve; nothing where one does."""
    if _stands(plan, choice):
        return []
    return [say("fill.straight_alone", board=choice.thick.board.name)]


def _carried(plan: Plan, choice: Choice) -> list[str]:
    """Return how far the boards run on past the ends; beside straight sides what those butt to, too."""
    if not isinstance(plan.filled, Pad):
        if choice.alone:
            return how.run_on(plan, choice, "fill.carry_past", "fill.no_overrun")
        return how.run_on(plan, choice, "boards.carry_past", "boards.no_overrun")
    tangent, could = plan.filled.tangent, room_past(plan, choice.practice.overrun)
    past = plan.tape.show_whole(choice.overrun or could)
    if choice.overrun:
        return carried_told(plan)
    if not could:
        return [say("pad.no_room", **line_ends(plan))]
    return [say("pad.no_overrun_tangent" if tangent else "pad.no_overrun_corner", past=past, **line_ends(plan))]


def _cut_beside(plan: Plan) -> list[str]:
    """Return how side forms are measured whose ends are beveled, and the strip that is bought with the boards."""
    strip = strip_told(plan)
    bought = [say("pad.buy_strip", **strip)] if strip else []
    bought += [] if plan.filled is not None or plan.of_footing else buy_strip(plan, plan.edges[0].length)
    return [*([say("pad.cut_long")] if bevel_told(plan) else []), *bought]


def _stakes_how(
    plan: Plan,
    choice: Choice,
    edges: tuple[list[EdgeBoards], list[Staking]],
    straight: list[StraightStakes],
    counts: tuple[int, int],
    bank: list[str],
) -> list[str]:
    told, spliced = [straight_told(one, plan.tape) for one in straight], any(one.splices for one in straight)
    if not _stands(plan, choice):
        return how.straight_stakes_how(counts, told, spliced, bank)
    return how.stakes_how(plan, *edges, choice, counts, told, spliced, bank)


def row_of_boards(plan: Plan, part: BoardsPart | None) -> BuildRow:
    """Return the row of the first screen: before there is a slab, what bends to the line itself."""
    row: BuildRow = {"key": "boards", "state": "open", "text": "", "more": "", "panel": "slab"}
    unknown = unknown_board(plan)
    if unknown is not None:
        return {**row, "text": say("boards.how_thick"), "more": unknown}
    if is_designed(plan) and edges_of(plan):
        return {**row, "state": "near", "text": say("boards.wall"), "more": say("boards.wall_more"), "panel": ""}
    if part is not None:
        state = part["state"]
        return {**row, "state": state, "text": part["short"], "more": part["more"],
                "panel": "slab" if state == "stop" else ""}  # fmt: skip
    if plan.no_inner or plan.slab is not None:  # a slab whose inner edge reaches the center
        return {**row, "state": "stop", "text": say("boards.no_inner"), "more": say("fill.or_fills")}
    line = FormedEdge(
        "inside", plan.line.radius, plan.line.arc_length, 2 * plan.line.half_angle, inner=True
    )  # the tighter of the two
    more = say("fill.line_alone" if plan.said.slab.fills else "boards.line_alone")
    return {**row, "text": short_of(choose(plan, (line,))), "more": more}


def edge_name(edge: FormedEdge) -> str:
    """Return what an edge's form is called."""
    return say("pad.other_curve" if edge.key == OTHER_CURVE else f"boards.{edge.key}")


def _edge(
    plan: Plan, choice: Choice, edges: tuple[FormedEdge, ...], place: int, staked: Staking, made: cutting.Cut | None,
    unit: str,
) -> EdgeBoards:  # fmt: skip
    tape, edge = plan.tape, edges[place]
    board: Board | None = choice.used.board if choice.used else None
    length = cutting.length_of(edge, board or choice.told.board, choice.overrun)
    order = made.order if made else None
    boards = order.boards[place] if order else ()
    pieces = order.pieces[place] if order else ()
    splices = cutting.splice_rows(plan, edge, made.runs[place], order.splices(place)) if made and order else []
    told: EdgeBoards = {
        "edge": edge.key,
        "name": edge_name(edge),
        "radius": edge.radius,
        "radius_shown": tape.show(edge.radius),
        "board": bending.name_of(board) if board else None,
        "length": length,
        "length_shown": tape.show(length),
        "boards": list(boards),
        "boards_shown": cutting.listed(tape, unit, boards),
        "pieces": list(pieces),
        "pieces_shown": ", ".join(map(tape.show, pieces)),
        "splices": splices,
        "gaps": staked.gaps,
        "gap": staked.gap,
        "gap_shown": tape.show(staked.gap),
        "stakes": staked.along + staked.past + len(splices),
        "reason": reason_of(staked, choice.practice, tape),
        "bow": staked.bow,
        "bow_shown": "" if staked.bow is None else tape.show_up(staked.bow),
        "end_miss": staked.loose.miss if staked.loose else None,
        "end_miss_shown": tape.show_up(staked.loose.miss) if staked.loose else "",
    }
    if not _stands(plan, choice):  # nothing stands there yet that stakes could be for
        told |= {"gaps": 0, "gap": 0.0, "gap_shown": "", "stakes": 0, "reason": "", "end_miss": None,
                 "end_miss_shown": ""}  # fmt: skip
    return told
