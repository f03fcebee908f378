"""The boards along a line, told."""

from __future__ import annotations

from math import ceil

from bowstring.report.forming import boards_row
from bowstring.report.forming.boards import SPARE
from bowstring.report.forming.boards_bending import name_of
from bowstring.report.forming.boards_list import choose
from bowstring.report.forming.boards_stakes import end_stakes
from bowstring.report.forming.formboard import unknown_board
from bowstring.report.forming.plan import is_designed, is_wall
from bowstring.report.forms.build_lined import LinedBoards, LinedPage
from bowstring.report.lined.board_cuts import LineCut, cut, cut_tables
from bowstring.report.lined.board_list import LineBoards, boards_on, line_alone
from bowstring.report.lined.board_told import bend_table, fails_text, lines, otherwise, stake_table
from bowstring.report.lined.board_told import paper_lines as paper_of
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def short_of(plan: LinePlan) -> LinedBoards | None:
    """Return the answer's ``boards``, ``None`` where something has to be said first."""
    made = made_of(plan)
    if made is None:
        return None
    used = made.choice.used
    return {"board": name_of(used.board) if used else None, "stakes": _stakes(made, cut(made))}


def page(plan: LinePlan) -> LinedPage:
    """Return the page of the boards."""
    made = made_of(plan)
    if made is None:
        return _waiting(plan)
    choice, found = made.choice, cut(made)
    stakes, with_spare = _stakes(made, found), _with_spare(made, found)
    state, short = boards_row.state_of(choice), boards_row.short_of(choice)
    if found is None:
        stopped = page_of("boards", state, short, fails_text(made), "slab")
        stopped["stop"] = " ".join([*boards_row.conclusion(choice), f"{fails_text(made)}."])
        stopped["lines"] = otherwise(made)
        stopped["cautions"] = [say("boards.spring")]
        return stopped
    told = page_of("boards", state, short, boards_row.more_of(choice, plan.tape, found.bent(plan.line), with_spare))
    told["conclusion"] = " ".join(boards_row.conclusion(choice))
    first, *more = cut_tables(made, found)
    told["tables"] = [first, stake_table(made), *more, bend_table(made)]
    told["lines"] = lines(made, found, (stakes, with_spare))
    told["cautions"] = [say("boards.spring")]
    return told


def made_of(plan: LinePlan) -> LineBoards | None:
    """Return the boards of a plan, ``None`` where something has to be said first, or boards on stakes don't hold it."""
    if plan.slab is None or plan.asks or unknown_board(plan.plan) is not None or is_designed(plan.plan):
        return None
    return boards_on(plan, plan.slab)


def stakes_bought(plan: LinePlan) -> int:
    """Return how many form stakes are bought, 0 where no board bends or something has to be said first."""
    made = made_of(plan)
    found = cut(made) if made else None
    return _with_spare(made, found) if made and found else 0


def paper_lines(plan: LinePlan) -> list[str]:
    """Return what the form sheet says of the boards, nothing where none bends or something has to be said first."""
    if is_wall(plan.plan) and plan.slab is not None and not plan.asks:
        return [say("walled.designed")]
    made = made_of(plan)
    found = cut(made) if made else None
    return paper_of(made, found) if made and found else []


def _with_spare(made: LineBoards, found: LineCut | None) -> int:
    return ceil(_stakes(made, found) * (SPARE + 1) / SPARE - 1e-9)


def _stakes(made: LineBoards, found: LineCut | None) -> int:
    ends = sum(one.stakes for one in end_stakes(made.plan.plan, made.choice))
    return made.stakes(sum(found.splices().values()) if found else 0) + ends


def _designed(plan: LinePlan) -> LinedPage:
    """Return the page of forms that no list has: of a wall, whose footing's boards stand in none either."""
    if not is_wall(plan.plan):
        return page_of("boards", "near", say("boards.wall"), say("boards.wall_more"))
    footing = bool(plan.said.slab.footing_width)
    more = say("walled.faces_unlisted") if footing else say("walled.by_supplier")
    made = page_of("boards", "near", say("walled.forms_designed"), more)
    made["lines"] = [*([say("walled.unlisted")] if footing else []), say("walled.designed")]
    return made


def _waiting(plan: LinePlan) -> LinedPage:
    """Return the page of boards that wait for something: before there is a slab, what bends to the line itself."""
    unknown = unknown_board(plan.plan)
    if unknown is not None:
        return page_of("boards", "open", say("boards.how_thick"), unknown, "slab")
    if plan.wrong is not None:
        return page_of("boards", "stop", say("lined.no_edge"), plan.wrong.wrong, "slab")
    if is_designed(plan.plan) and plan.slab is not None:
        return _designed(plan)
    if plan.asks:
        return page_of("boards", "open", say("lined.line_first"), plan.asks[0], "pieces")
    short = boards_row.short_of(choose(plan.plan, line_alone(plan)))
    return page_of("boards", "open", short, say("boards.line_alone"), "slab")
