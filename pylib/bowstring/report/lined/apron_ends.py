"""Where the ends of a line's apron are, with the joints that stand there."""

from __future__ import annotations

from bowstring.forming.line.sweep import Sweep
from bowstring.report.forming.apron import ApronEnd, end_of
from bowstring.report.lined.deepness import along_line, deep_along
from bowstring.report.lined.jointing import jointing_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def ends_along(plan: LinePlan) -> list[ApronEnd]:
    """Return the ends of a line's apron, with the joints at them; none where it can't be there."""
    apron, slab, tape = plan.said.slab.apron, plan.slab, plan.tape
    if apron is None or slab is None or deep_along(plan) is None:
        return []
    sweep, jointing = Sweep(slab), jointing_of(plan)
    places, joints = along_line(sweep), []
    if jointing is not None and not jointing.stopped:
        stations = slab.line.stations
        for mark in jointing.chosen.marks[:-1]:
            share = 1.0 if mark.share is None else mark.share
            joints.append(stations[mark.piece] + share * slab.line.pieces[mark.piece].length)
    ends = []
    for at in (apron.start, apron.end):
        left, right = (tape.show_running(along) for along in sweep.front(places.share(at)))
        where = say("deep.end_line", at=tape.show_running(at), left=left, right=right)
        ends.append(end_of(plan.plan, at, slab.line.length, where, joints))
    return ends
