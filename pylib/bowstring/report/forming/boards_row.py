"""The boards' conclusion: in the row of the first screen, and as the page's own sentences."""

from __future__ import annotations

from bowstring.forming.boards import LEVELS, least_edge
from bowstring.report.forming.boards_bending import name_of, radius_up
from bowstring.report.forming.boards_list import CLEAR, RANKS, SELECTED, Choice, Looked
from bowstring.units.tape import Tape
from bowstring.words import say

SHORT_NAME = 6
"""Letters: a longer name of a board has no room in the row."""


def state_of(choice: Choice) -> str:
    """Return the row's state: ``near`` where job lumber doesn't do, ``stop`` where nothing that is allowed does."""
    if choice.used is None:
        return "stop"
    return "usual" if choice.told.rank == 0 else "near"


def short_of(choice: Choice) -> str:
    """Return what bends, in a few words."""
    told = choice.told
    name = _short_name(told)
    if told.rank == 0:
        if choice.own is not None or told.is_close():
            return say("boards.row_just" if told.is_close() else "boards.row_bends", board=name)
        key = "boards.row_both" if choice.thick.rank == 0 else "boards.row_first"
        return say(_close(key, choice.thick), board=name, other=choice.thick.board.name)
    if told.rank == RANKS[CLEAR]:
        return say("boards.row_clear", board=name)
    if told.rank == RANKS[SELECTED] and choice.level == SELECTED:
        return say("boards.row_selected", board=name)
    if choice.own is not None:
        other = choice.thin.rank == 0
        return say("boards.row_other" if other else "boards.row_not", board=name, other=choice.thin.board.name)
    return say("boards.row_nothing")


def more_of(choice: Choice, tape: Tape, boards: int, stakes: int) -> str:
    """Return the row's second fact."""
    state = state_of(choice)
    if state == "stop":
        return say("boards.more_stop")
    if state == "near":
        ratio = next(iter(LEVELS.values()))
        return say(
            "boards.more_near", radius=radius_up(tape, least_edge(choice.told.board, ratio, inner=not choice.alone))
        )
    if boards == 1:
        return say("boards.more_one", stakes=stakes)
    return say("boards.more_usual", boards=boards, stakes=stakes) if boards else say("boards.more_long", stakes=stakes)


def conclusion(choice: Choice) -> list[str]:
    """Return the page's first sentences."""
    told = choice.told
    name = name_of(told.board)
    if told.rank == 0:
        first = say(_bends(choice), board=name)
        if choice.own is not None:
            return [first]
        key = "boards.so_does" if choice.thick.rank == 0 else "boards.but_not"
        return [first, say(_close(key, choice.thick), other=choice.thick.board.name)]
    if choice.used is None:
        if choice.alone:
            return [say("fill.own_not" if choice.own else "fill.nothing", board=name)]
        return [say("boards.own_not" if choice.own else "boards.nothing", board=name)]
    return [say("boards.only_clear" if told.rank == RANKS[CLEAR] else "boards.only_selected", board=name)]


def _bends(choice: Choice) -> str:
    """Return the message of the told board that bends."""
    if choice.alone:
        return "fill.bends_just" if choice.told.is_close() else "fill.bends"
    return _close("boards.both_edges", choice.told)


def _close(key: str, looked: Looked) -> str:
    """Return the message of a board that does, or doesn't, but by little: the key's own where it's by more."""
    return f"{key}_just" if looked.is_close() else key


def _short_name(looked: Looked) -> str:
    name = name_of(looked.board)
    return name if len(name) <= SHORT_NAME else say("boards.yours")
