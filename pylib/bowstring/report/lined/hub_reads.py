"""What the hubs of a line's staked arc read to its stakes: what proves them before the dig, and the stakes after it."""

from __future__ import annotations

from itertools import pairwise

from bowstring.geometry.plane import distance
from bowstring.report.forms.cards import CardRight
from bowstring.report.lined.hubs import LineHubs
from bowstring.words import say

MOST_READ = 8
"""Readings of hubs that a card lists; of more it tells between which they lie."""


def reads_of(hubs: LineHubs) -> CardRight | None:
    """Return what each hub reads to the stakes before and after its own: one number where that is all, else bay by bay,
    of very many the least and the greatest. A hub that stands apart from the others reads its own."""
    if hubs.plan.plan.layout.job.got:
        return None
    bays, own = _readings(hubs)
    if not bays and not own:
        return None
    if len(bays) == 1:
        (shown,) = bays
        return {"text": say("forming.right.hubs"), "shown": shown, "more": "; ".join(own)}
    told = [say("forming.right.hub_bays", shown=shown, bays=", ".join(names)) for shown, names in bays.items()]
    if len(told) > MOST_READ:
        least, *_rest, most = bays
        told = [say("forming.right.hub_range", least=least, most=most)]
    return {"text": say("forming.right.hubs"), "shown": None, "more": "; ".join([*told, *own[:MOST_READ]])}


def _readings(hubs: LineHubs) -> tuple[dict[str, list[str]], list[str]]:
    """What hubs that stand alike read to the next stake, least first, each with the bays where they do; and what a hub
    reads that doesn't stand as those."""
    tape, read, own = hubs.plan.tape, dict[float, tuple[str, list[str]]](), list[str]()
    for one, other in pairwise(hubs.of_arc):
        for hub, mark in ((one, other.mark), (other, one.mark)):
            if hub.point is None or not hubs.ground.tapeable(hub.point, mark.pose.point):
                continue
            far = distance(hub.point, mark.pose.point)
            if hub.reach != hubs.usual or hub.mark.square != hubs.staked:
                own.append(say("forming.right.hub_own", stake=hub.mark.stake, to=mark.stake, shown=tape.show(far)))
                continue
            name = f"{one.mark.stake}-{other.mark.stake}"
            names = read.setdefault(tape.round(far), (tape.show(far), []))[1]
            names += [name] if name not in names else []
    return {shown: names for _far, (shown, names) in sorted(read.items())}, own
