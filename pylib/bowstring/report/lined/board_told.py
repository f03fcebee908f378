"""The boards along a line in sentences: what bends, how they are held, staked and cut, and what else would do."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.boards import LEVELS, least_edge
from bowstring.forming.line.tops import HANDS
from bowstring.report.forming import boards_bending as bending
from bowstring.report.forming.at_forms import at_forms, below_told
from bowstring.report.forming.boards_cutting import unit_of
from bowstring.report.forming.boards_how import past_told, run_on, taken
from bowstring.report.forming.boards_list import RANKS, SELECTED
from bowstring.report.forming.boards_otherwise import kerf_words, layered, plywood
from bowstring.report.forming.boards_stakes import end_stakes, reason_of, straight_told
from bowstring.report.forming.end_joints import buy_strip
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.board_cuts import LineCut, gave_way
from bowstring.report.lined.board_list import LineBoards
from bowstring.report.lined.line import name_of
from bowstring.words import say


def fails_text(made: LineBoards) -> str:
    """Return the tightest edge to which no board bends, in a few words."""
    edge = made.fails[0]
    return say("lined.fails", edge=made.name(edge), radius=made.plan.tape.show(edge.radius))


def lines(made: LineBoards, found: LineCut, counts: tuple[int, int]) -> list[str]:
    """Return how and why, the most needed first."""
    return [
        *_tightest(made),
        *_cutting(made, found),
        *_stakes(made, found, counts),
        *_ends(made),
        *(say(f"boards.{key}") for key in ("work_along", "screw_all", "kickers")),
        *bending.where_it_fails(made.choice, made.staked[made.place_of(made.tightest)].loose, made.plan.tape),
        *otherwise(made),
        *taken(made.plan.plan, made.choice, made.plan.tape, _unit(made), lined=True),
    ]


def paper_lines(made: LineBoards, found: LineCut) -> list[str]:
    """Return what the form sheet says of the boards: how they are cut, joined and held."""
    splices = [_splice(made)] if any(found.splices().values()) else []
    held = [say("lined.pulls_off"), say("boards.screw_all")]
    return [*_ordered(made, found), *splices, *held, *below_told(made.plan.plan)]


def _unit(made: LineBoards) -> str:
    return unit_of(made.plan.tape, made.choice.lengths)


def _tightest(made: LineBoards) -> Iterator[str]:
    edge, used = made.tightest, made.choice.used
    yield say("lined.tightest", edge=made.name(edge), radius=made.plan.tape.show(edge.radius))
    if used is not None:
        yield say("boards.use", board=bending.name_of(used.board))


def _cutting(made: LineBoards, found: LineCut) -> Iterator[str]:
    yield from _ordered(made, found)
    yield from gave_way(made, found, made.plan.tape)


def _ordered(made: LineBoards, found: LineCut) -> Iterator[str]:
    """Return from where the boards of the cut list are laid, and where they end."""
    tape, past = made.plan.tape, made.choice.overrun
    yield say("lined.cut_past", past=tape.show_whole(past)) if past else say("lined.cut_from_start")
    if len(found.stretches) > 1:
        yield say("lined.cut_at_kinks")
    yield from buy_strip(made.plan.plan, made.plan.line.length)


def _stakes(made: LineBoards, found: LineCut, counts: tuple[int, int]) -> Iterator[str]:
    """Return how many stakes, on which side they stand, and why so close."""
    tape, (count, with_spare) = made.plan.tape, counts
    yield say("boards.stakes", count=count, with_spare=with_spare)
    yield say("boards.side")
    yield from _reasons(made)
    if made.choice.overrun:
        yield from past_told(made.plan.plan)
    if any(found.splices().values()):
        yield say("boards.at_splices")
    bows = [staked.bow for staked in made.staked.values() if staked.bow is not None]
    if bows and made.choice.used:
        yield say("boards.between", board=bending.name_of(made.choice.used.board), bow=tape.show_up(max(bows)))
    yield from (straight_told(one, tape) for one in end_stakes(made.plan.plan, made.choice))
    yield say("boards.kicker_stakes")
    yield say("boards.tops")
    yield from at_forms(made.plan.plan)
    yield say("boards.not_layout")


def _reasons(made: LineBoards) -> Iterator[str]:
    """Return why the stakes stand so close, and where: a piece by its name where both its edges have one reason."""
    at: dict[str, list[str]] = {}
    for number in range(len(made.slab.line.pieces)):
        whys = [reason_of(made.staked[number, hand], made.choice.practice, made.plan.tape) for hand in HANDS]
        piece = name_of(made.plan, number + 1)
        if whys[0] == whys[1]:
            at.setdefault(whys[0], []).append(piece)
            continue
        for hand, why in zip(HANDS, whys, strict=True):
            at.setdefault(why, []).append(say(f"lined.edge_of_{hand}", piece=piece))
    if len(at) == 1:
        yield from at
    else:
        yield from (say("boards.reason_at", edge="; ".join(places), reason=why) for why, places in at.items())


def _ends(made: LineBoards) -> Iterator[str]:
    """Return what a loose end does at the tightest arc and the fix, what a splice needs, where the board pulls off."""
    tape, choice = made.plan.tape, made.choice
    staked = made.staked[made.place_of(made.tightest)]
    if staked.loose:
        gap, miss = tape.show(staked.gap), tape.show_up(staked.loose.miss)
        yield say("lined.runs_flat", gap=gap, miss=miss)
    yield from run_on(made.plan.plan, choice, "lined.carry_past", "lined.no_overrun")
    if choice.used is None:
        return
    board = choice.used.board
    yield _splice(made)
    if staked.loose:
        loads = staked.loose.held(board.stiffness), staked.loose.pulled(board.stiffness)
        held, pulled = (bending.pushed(tape, load) for load in loads)
        yield say("boards.end_loads", held=held, pulled=pulled)
    yield say("lined.pulls_off")


def _splice(made: LineBoards) -> str:
    """How two boards are joined."""
    assert made.choice.used is not None
    length, board = made.choice.practice.splice, made.choice.used.board
    return say("boards.splice", length=made.plan.tape.show_whole(length), board=bending.name_of(board))


def otherwise(made: LineBoards) -> list[str]:
    """Return what to do where the board of the row doesn't bend in job lumber."""
    choice, tape = made.choice, made.plan.tape
    rank = choice.told.rank
    if rank == 0:
        return []
    picked = rank == RANKS[SELECTED] and choice.level != SELECTED
    found = [say("lined.fails_also", edges="; ".join(map(made.name, made.fails[1:])))] if made.fails[1:] else []
    found += [say("lined.try_selected")] if picked else []
    found += [plywood(choice.practice, made.tightest.radius, tape), *layered(choice, made.bent, tape)]
    cuts = kerf_words(choice, made.tightest, tape)
    if cuts:
        found.append(say("lined.kerfs", edge=made.name(made.tightest), count=cuts[0], **cuts[1]))
        found += [] if made.tightest.inner else [say("boards.kerfs_cover")]
        found.append(say("boards.kerfs_how"))
    return [*found, say("boards.maker")]


def stake_table(made: LineBoards) -> LinedTable:
    """Return along each piece how many even spaces of what size the form stakes leave."""
    tape = made.plan.tape
    rows = []
    for number in range(len(made.slab.line.pieces)):
        gaps = [made.staked[number, hand] for hand in HANDS]
        cells = [say("lined.gaps", gaps=one.gaps, gap=tape.show(one.gap)) for one in gaps]
        rows.append([name_of(made.plan, number + 1), *cells])
    heads = [say("lined.head_piece"), say("lined.head_left"), say("lined.head_right")]
    return {"key": "stakes", "title": say("boards.stakes_head"), "heads": heads, "rows": rows}


def bend_table(made: LineBoards) -> LinedTable:
    """Return the list's boards: to which radius each bends, and whether it does here."""
    level, tape = made.choice.level, made.plan.tape
    rows = [
        [
            bending.name_of(looked.board),
            bending.radius_up(tape, least_edge(looked.board, LEVELS[level], inner=True)),
            bending.verdict(looked, level),
        ]
        for looked in made.choice.looked
    ]
    heads = [say("boards.board"), say("boards.bends_to"), say("boards.here")]
    return {"key": "bends", "title": say("boards.title"), "heads": heads, "rows": rows}
