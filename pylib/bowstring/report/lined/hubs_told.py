"""The hubs of a line, told: what is set before the dig, where, and what proves it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import pairwise

from bowstring.forming.line.pieces import Bend
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.hubs import LineHub, LineHubs, Reach
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def reach_told(plan: LinePlan, reach: Reach) -> str:
    """Return how far off its mark a hub stands, and on which hand of the line."""
    hand, off = reach
    return say(f"lined.off_{hand}", size=plan.tape.show_whole(off))


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
    reaches = Counter(hub.reach for hub in hubs.ends if hub.reach)
    if not hubs.ends:
        return
    usual = reaches.most_common(1)[0][0] if reaches else hubs.reaches[0]
    yield say("lined.hubs_first", off=reach_told(hubs.plan, usual))
    others = [*_others(hubs, usual)]
    if others:
        yield say("lined.hubs_except", places="; ".join(others))
    for hub in hubs.ends:
        if hub.reach is None:
            yield say("lined.hubs_no_room", place=place_told(hubs.plan, hub))


def _others(hubs: LineHubs, usual: Reach) -> Iterator[str]:
    """The arcs, and the ends of pieces, whose hubs stand otherwise, each with how far off."""
    for number, piece in enumerate(hubs.plan.line.pieces):
        if isinstance(piece, Bend) and hubs.arc_reach(number) != usual:
            place, reach = name_of(hubs.plan, number + 1), hubs.arc_reach(number)
            off = reach_told(hubs.plan, reach) if reach else say("lined.hub_none")
            yield say("lined.hub_off", place=place, off=off)
    for hub in hubs.ends:
        if hub.reach not in (None, usual, hubs.own_reach(hub)):
            assert hub.reach is not None
            yield say("lined.hub_off", place=place_told(hubs.plan, hub), off=reach_told(hubs.plan, hub.reach))


def set_told(hubs: LineHubs) -> Iterator[str]:
    """Yield how the hubs are set and proved."""
    if not hubs.ends:
        yield say("edges.clear_of_dig")
        return
    yield say("lined.hubs_square")
    if any(not join.tangent for join in hubs.plan.line.joins):
        yield say("lined.hubs_kink")
    yield from arcs_told(hubs)
    yield say("lined.hubs_prove")


def arcs_told(hubs: LineHubs) -> Iterator[str]:
    """Yield that every arc is staked, and has its hubs, before the dig, where the line has several."""
    if hubs.ends and sum(isinstance(piece, Bend) for piece in hubs.plan.line.pieces) > 1:
        yield say("lined.hubs_arcs")


def again_told(hubs: LineHubs) -> str:
    """Return from what the line is set again once it is dug."""
    return say("edges.line_again" if hubs.ends else "edges.line_again_stakes")


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
        off = [] if hubs.alike else [_reach(plan, hub)]
        rows.append([place_told(plan, hub), *off, tape.show(apart) if apart else say("lined.hub_no_tape")])
    heads = [say(f"lined.head_{what}") for what in (["where", "next"] if hubs.alike else ["where", "hub", "next"])]
    yield {"key": "hubs", "title": say("lined.hubs_table"), "heads": heads, "rows": rows}


def _reach(plan: LinePlan, hub: LineHub) -> str:
    return say("lined.hub_none") if hub.reach is None else reach_told(plan, hub.reach)
