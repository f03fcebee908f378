"""The hubs of a line, told: what is set before the dig, where, and what proves it."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from bowstring.forming.line.pieces import Bend, sign_of
from bowstring.report.forming.off_line import off_line
from bowstring.report.forming.plan import is_wall
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.hubs import LineHub, LineHubs, Reach, Stray, left_of
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def reach_told(plan: LinePlan, reach: Reach) -> str:
    """Return how far off its mark a hub stands, and on which hand of the line."""
    hand, off = reach
    return say(f"lined.off_{hand}", size=plan.tape.show_whole(off))


def reach_size(plan: LinePlan, left: float) -> str:
    """Return a distance to the left, metres, or to the right below 0, to the nearest mark."""
    return say("lined.off_left" if left > 0 else "lined.off_right", size=plan.tape.show(abs(left)))


def strays_told(hubs: LineHubs) -> Iterator[str]:
    """Yield the hubs of stakes that were got off the staked arc: off such a stake they stand otherwise, so that they
    are on the line of the others."""
    strays = dict(off_line(hubs.plan.plan.layout))
    for hub in hubs.of_arc:
        if hub.reach is not None and hub.mark.stake in strays:
            hand, off = hub.reach
            left = sign_of(hand) * off - left_of(hubs, strays[hub.mark.stake])
            told = {"off": reach_size(hubs.plan, left), "usual": hubs.plan.tape.show_whole(off)}
            yield say("forming.note.hub_stray", stake=hub.mark.stake, **told)


def place_told(plan: LinePlan, hub: LineHub) -> str:
    """Return where a hub's mark is: what begins or ends there, of a stake within an arc its name."""
    mark = hub.mark
    if not mark.is_end:
        return mark.stake
    if not mark.begins:
        return say("lined.the_end")
    return say("lined.hub_start") if mark.begins == 1 else say("lined.begins", piece=name_of(plan, mark.begins))


def first_told(hubs: LineHubs) -> Iterator[str]:
    """Yield that hubs come before the dig, how far off most of them stand, and which don't; nothing where no mark is
    dug out. The same whichever arc is staked."""
    if not hubs.ends:
        return
    yield say("lined.hubs_first", off=reach_told(hubs.plan, hubs.most))
    if hubs.strays:
        yield say("lined.hubs_except", places="; ".join(_stray_told(hubs, stray) for stray in hubs.strays))
    for hub in hubs.ends:
        if hub.reach is None:
            yield say("lined.hubs_no_room", place=place_told(hubs.plan, hub))


def _stray_told(hubs: LineHubs, stray: Stray) -> str:
    """An arc, or an end of a piece, whose hubs stand otherwise, with how far off; of an arc that begins behind another
    one the hub at its A, too, which is square to that one."""
    plan, place = hubs.plan, stray_place(hubs, stray)
    off = _reach(plan, stray.reach)
    if stray.number is None or stray.hub is None:
        return say("lined.hub_off", place=place, off=off)
    piece = name_of(plan, stray.hub.mark.square + 1)
    return say("lined.hub_off_but", place=place, off=off, other=_reach(plan, stray.hub.reach), piece=piece)


def stray_place(hubs: LineHubs, stray: Stray) -> str:
    """Return whose hubs stand otherwise: an arc's, or those of a place."""
    if stray.number is not None:
        return name_of(hubs.plan, stray.number + 1)
    assert stray.hub is not None
    return place_told(hubs.plan, stray.hub)


def set_told(hubs: LineHubs) -> Iterator[str]:
    """Yield how the hubs are set and proved."""
    if not hubs.ends:
        yield say("edges.clear_of_dig")
        yield from straights_told(hubs)
        return
    yield say("lined.hubs_square")
    yield from strays_told(hubs)
    if any(not join.tangent for join in hubs.plan.line.joins):
        yield say("lined.hubs_kink")
    yield from arcs_told(hubs)
    yield say("lined.hubs_prove")


def arcs_told(hubs: LineHubs) -> Iterator[str]:
    """Yield that every arc is staked, and has its hubs, before the dig, where the line has several."""
    if hubs.ends and sum(isinstance(piece, Bend) for piece in hubs.plan.line.pieces) > 1:
        yield say("lined.hubs_arcs")


def straights_told(hubs: LineHubs) -> Iterator[str]:
    """Yield where stakes are missing that stand off the line, clear of the dig: at an end of a straight no arc's steps
    set one."""
    if hubs.bare:
        yield say("lined.hubs_straight", places="; ".join(place_told(hubs.plan, hub) for hub in hubs.bare))


def again_told(hubs: LineHubs) -> Iterator[str]:
    """Yield from what the line is set again once it is dug; of a wall on a footing for that and on it."""
    if is_wall(hubs.plan.plan):
        if hubs.plan.said.slab.footing_width:
            yield say("walled.line_first")
        yield say("walled.line_again" if hubs.ends else "walled.line_again_stakes")
        return
    yield say("edges.line_again" if hubs.ends else "edges.line_again_stakes")


def table_of_hubs(hubs: LineHubs) -> Iterator[LinedTable]:
    """Yield what the next hub reads from each one of a piece's end, and where it stands, unless all stand as far off;
    no table where no mark is dug out."""
    plan, tape = hubs.plan, hubs.plan.tape
    if not hubs.ends:
        return
    rows = []
    for hub, after in pairwise([*hubs.ends, None]):
        assert hub is not None
        apart = hubs.apart(hub, after) if after else None
        off = [] if hubs.alike else [_reach(plan, hub.reach)]
        rows.append([place_told(plan, hub), *off, tape.show(apart) if apart else say("lined.hub_no_tape")])
    heads = [say(f"lined.head_{what}") for what in (["where", "next"] if hubs.alike else ["where", "hub", "next"])]
    yield {"key": "hubs", "title": say("lined.hubs_table"), "heads": heads, "rows": rows}


def _reach(plan: LinePlan, reach: Reach | None) -> str:
    return say("lined.hub_none") if reach is None else reach_told(plan, reach)
