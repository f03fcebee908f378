"""Where B is from A, along and square to the piece of a line before the staked arc where none shows its tangent.

Past a kink the arc is set out from both its ends, and nothing else tells where the far one belongs.
"""

from __future__ import annotations

from bowstring.geometry.plane import distance
from bowstring.job.line_settled import settle_line
from bowstring.layout.frame import far_back_on
from bowstring.layout.layout import Layout
from bowstring.methods.ends import ARC_START
from bowstring.words import say


def b_from_line(layout: Layout, short: bool = False) -> str:
    """Return how B is set from A and what comes before it; empty where there is nothing before it, where the ends are
    found otherwise, and while nobody said to which hand the line kinks there; ``short``: as a card and paper have it.

    Off a straight B is told in its direction; off an arc in that of its chord, whose ends are stakes. The check goes
    from a mark behind A to B, which no step goes by: along, off and it are three sides of one triangle.
    """
    job, said = layout.job, layout.job.line
    if said is None or said.at == 0 or job.start != "ends" or job.found or said.at in said.asks:
        return ""
    tape, line = job.shown, settle_line(said, job.tape.mark, job.shown.show).line
    before, own = line.runs[said.at - 1], line.runs[said.at]
    a, b = own.start.point, own.end.point
    ends = {"start": "A0", "end": "B0"} if job.outward else {"start": "A", "end": "B"}
    if before.curvature:
        mark, behind = ARC_START, before.start.point
        where = _say("begins", short, mark=mark, piece=said.at, **ends)
    else:
        back, whole = far_back_on(before.length, job.shown.feet)
        mark, behind = "S", before.end.on(-back).point
        where = _say("whole" if whole else "back", short, mark=mark, piece=said.at, back=tape.show(back), **ends)
    way = a.minus(behind)
    far = distance(a, behind)
    along, off = (length / far for length in (way.dot(b.minus(a)), way.cross(b.minus(a))))
    values = {**ends, "mark": mark, "hand": say(f"hand.{'left' if off > 0 else 'right'}").upper(),
              "along": tape.show(abs(along)), "off": tape.show(abs(off))}  # fmt: skip
    check = distance(behind, b)
    key = ("on" if along >= 0 else "behind") if tape.round(abs(off)) else "straight"
    told = [where, _say(key, short, **values)]
    if check <= job.site.tape_length:
        told.append(_say("check", short, check=tape.show(check), **values))
    return " ".join(told)


def _say(key: str, short: bool, **values: object) -> str:
    return say(f"kinked.{'short_' if short else ''}{key}", **values)
