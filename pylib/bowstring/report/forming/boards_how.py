"""How the boards are bent, held and staked, in sentences."""

from __future__ import annotations

from bowstring.forming.boards import Board
from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.at_forms import lowest
from bowstring.report.forming.boards_bending import name_of, pushed
from bowstring.report.forming.boards_cutting import listed
from bowstring.report.forming.boards_list import Choice, FormedEdge
from bowstring.report.forming.boards_stakes import Staking, spaces_told
from bowstring.report.forming.ends import against, formed, named
from bowstring.report.forming.formboard import MOST_BANKED, depth_of, practice_of
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import fine_tape, thick
from bowstring.report.forms.build_boards import EdgeBoards
from bowstring.units.tape import Tape
from bowstring.words import say


def at_the_ends(
    choice: Choice, edges: tuple[FormedEdge, ...], staked: list[Staking], tape: Tape, carried: list[str]
) -> list[str]:
    """Return what a loose end does and the fix, what a splice needs, and where the board pulls off its stakes;
    ``carried``: how the boards run on past the ends."""
    missing = [(one.loose.miss, one.gap) for one in staked if one.loose]
    found = []
    if missing:
        miss, gap = max(missing)
        found.append(say("boards.runs_flat", gap=tape.show(gap), miss=tape.show_up(miss)))
    found += carried
    if choice.used is None:
        return found
    board, piece = choice.used.board, tape.show_whole(choice.practice.splice)
    return [
        *found,
        say("boards.splice", length=piece, board=name_of(board)),
        *_forces(board, edges, staked, tape),
        say("boards.outer_pulls"),
        *([] if choice.alone else [say("boards.inner_pulls")]),
    ]


def run_on(plan: Plan, choice: Choice, carry: str, stop: str) -> list[str]:
    """Return how the boards run on past the ends that are formed, by the message ``carry``, or ``stop`` where they
    don't, and what they do at the others. A shallow reach past a footing's ends leaves nothing to tell."""
    found, past, ends = [], choice.overrun or choice.practice.overrun, formed(plan)
    if ends and past:
        found.append(say(carry if choice.overrun else stop, past=plan.tape.show_whole(past), ends=named(plan, ends)))
    if against(plan):
        found.append(say("ends.lap" if choice.overrun else "ends.no_lap", ends=named(plan, against(plan))))
    return found


def past_told(plan: Plan, *, alone: bool = False) -> list[str]:
    """Return what the stakes past the ends are for; ``alone``: of a board that closes on straight forms."""
    if alone:
        return [say("fill.past_each")]
    found = [say("boards.past_each", ends=named(plan, formed(plan)))] if formed(plan) else []
    return [*found, *([say("ends.past_lap", ends=named(plan, against(plan)))] if against(plan) else [])]


def _forces(board: Board, edges: tuple[FormedEdge, ...], staked: list[Staking], tape: Tape) -> list[str]:
    """Return the loads on the stakes of the tighter edge's end."""
    loose = [one.loose for edge, one in zip(edges, staked, strict=True) if edge.inner and one.loose]
    if not loose:
        return []
    held, pulled = loose[0].held(board.stiffness), loose[0].pulled(board.stiffness)
    return [say("boards.end_loads", held=pushed(tape, held), pulled=pushed(tape, pulled))]


def in_order(plan: Plan, choice: Choice) -> list[str]:
    """Return the order in which a board is bent."""
    past = "fill.first_past" if choice.alone else "boards.first_past"
    if LINE_ENDS[0] in against(plan):
        past = "ends.first_lap"
    first = say(past, end=named(plan, LINE_ENDS[:1])) if choice.overrun else say("boards.first_end")
    screws = ("fill.screw_all", "fill.double") if choice.alone else ("boards.screw_all", "boards.double")
    return [first, say("boards.work_along"), *map(say, screws), say("boards.kickers")]


def stakes_how(
    plan: Plan,
    told: list[EdgeBoards],
    staked: list[Staking],
    choice: Choice,
    counts: tuple[int, int],
    straight: list[str],
    spliced: bool,
    bank: list[str],
) -> list[str]:
    """Return the count of stakes, how far apart they stand and why, and on which side; ``straight``: how they stand
    along the straight forms that close it; ``spliced``: those have splices;
    ``bank``: what is banked against low boards."""
    (count, with_spare), tape = counts, plan.tape
    found = [say("boards.stakes", count=count, with_spare=with_spare), say("boards.side")]
    found += [
        say("boards.every", edge=one["name"], gap=one["gap_shown"], spaces=spaces_told(one["gaps"])) for one in told
    ]
    reasons = [one["reason"] for one in told]
    alike = len(set(reasons)) == 1
    found += reasons[:1] if alike else [say("boards.reason_at", edge=one["name"], reason=one["reason"]) for one in told]
    found += straight
    if any(one.past for one in staked):
        found += past_told(plan, alone=choice.alone)
    if spliced or any(one["splices"] for one in told):
        found.append(say("boards.at_splices"))
    bows = [one["bow"] for one in told if one["bow"] is not None]
    if bows and choice.used:
        found.append(say("boards.between", board=name_of(choice.used.board), bow=tape.show_up(max(bows))))
    return [*found, say("boards.kicker_stakes"), say("boards.tops"), *bank, say("boards.not_layout")]


def straight_stakes_how(counts: tuple[int, int], straight: list[str], spliced: bool, bank: list[str]) -> list[str]:
    """Return the same of the straight forms alone, of a slab that fills a curve to which no board bends."""
    count, with_spare = counts
    found = [say("boards.stakes", count=count, with_spare=with_spare), say("boards.side"), *straight]
    found += [say("boards.at_splices")] if spliced else []
    return [*found, say("fill.stand_none"), say("boards.tops"), *bank, say("boards.not_layout")]


def taken(plan: Plan, choice: Choice, tape: Tape, unit: str, *, lined: bool = False) -> list[str]:
    """Return what was assumed, as long as nobody says otherwise; ``lined``: of a line of several pieces."""
    said, board = plan.said.board, choice.told.board
    found = []
    if choice.own is None or said.height is None:
        found.append(
            say("boards.taken_size", board=name_of(board), thickness=tape.show_limit(board.thickness),
                height=tape.show_limit(board.height))
        )  # fmt: skip
    if said.level is None:
        found.append(say("boards.taken_level"))
    if choice.loose:
        found.append(say("lined.loose_ends") if lined else say("boards.loose_ends"))
    if not said.lengths:
        shown = listed(tape, unit, choice.lengths)
        found.append(say("boards.taken_lengths", lengths=f"{shown} {unit}".strip()))
    if said.overrun is None and choice.overrun:
        past = tape.show_whole(choice.overrun)
        found.append(say("lined.taken_overrun", past=past) if lined else say("boards.taken_overrun", past=past))
    depth = depth_of(plan)
    if depth is None:
        found.append(say("boards.taken_depth", height=tape.show_limit(board.height)))
    elif low := too_low(plan, board, tape):
        found.append(low)
    return found


def too_low(plan: Plan, board: Board, tape: Tape) -> str:
    """Return what a board lower than the concrete means, empty of one that is high enough, or as good as that."""
    depth = depth_of(plan)
    if depth is None or depth <= board.height + practice_of(plan).lowered + 1e-9:
        return ""
    if lowest(plan, edge=False) is None:  # a thick edge is at every form
        return ""
    told = {"board": name_of(board), "height": tape.show_limit(board.height), "depth": thick(tape, depth)}
    if depth > board.height + MOST_BANKED:
        return say("boards.too_low", **told)
    return say("boards.set_off", **told, off=fine_tape(tape).show(depth - board.height))
