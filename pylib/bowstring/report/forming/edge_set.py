"""How an edge is set from the stakes: its ends without the center, and each mark off the edge's own string, told."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.analysis.obstructions import Obstructions
from bowstring.geometry.plane import Point, distance
from bowstring.layout.limits import limits_of
from bowstring.report.forming.edge_lines import line_name, off_shown
from bowstring.report.forming.edge_marks import INSIDE, OUTSIDE, Marks
from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build_edges import EdgeEndRow, PartnerRow, SecondEdge
from bowstring.report.hands import curve_hand
from bowstring.words import say

SLANT = 0.4
"""Sine of the least angle at which two tapes may cross (some 24 degrees): under it a reading moves the mark along by
more than two and a half times as much."""


def mark_name(key: str, stake: str) -> str:
    """Return the name of an edge's mark: of stake R1 on the inner edge, ``R1 in``."""
    return say(f"edges.mark_{key}", stake=stake)


class Ground:
    """What is in the way on the site, asked in the frame of the drawing's line."""

    def __init__(self, plan: Plan, marks: Marks) -> None:
        self._here = Obstructions(plan.layout.staked, limits_of(plan.layout.job))
        self._start = marks.stakes.point(0)

    def _of(self, place: Point) -> Point:
        return place.minus(self._start)

    def in_the_way(self, a: Point, b: Point) -> str | None:
        """Return what stops a straight way, empty where that is the room or the tape; ``None`` where it is free."""
        a, b = self._of(a), self._of(b)
        return self._here.in_the_way(a, b) if self._here.reaches(a, b) else ""

    def tapeable(self, a: Point, b: Point) -> bool:
        """Whether one pull of the tape measures from one place to another."""
        return self._here.tapeable(self._of(a), self._of(b))

    def standing(self, place: Point) -> str | None:
        """Return what stands at a place."""
        return next(self._here.standing(self._of(place)), None)


def report_second(plan: Plan, marks: Marks, key: str, ground: Ground) -> SecondEdge:
    """Return what is told of an edge that is set from the stakes."""
    edge, tape = marks.edge(key), plan.tape
    ends = [row for near, at_end in (("A", 0.0), ("B", 1.0)) for row in _end(plan, marks, key, ground, near, at_end)]
    first, last = (mark_name(key, end) for end in ("A", "B"))
    what = ground.in_the_way(edge.point(0), edge.point(1))
    blocked = ""
    if what is not None:
        blocked = say("edges.string_stopped" if what else "edges.string_no_room", what=what, first=first, last=last)
    chord = tape.show(edge.chord)
    return {
        "edge": key,
        "name": line_name(plan, key),
        "tapers": not edge.is_arc,
        "chord": edge.chord,
        "chord_shown": chord,
        "ends": ends,
        "rows": [_partner(plan, marks, key, stake, share) for stake, share in marks.shares],
        "blocked": blocked,
        "text": " ".join([*_how_ends(marks, key, ends, chord), blocked]).strip(),
        "own": say("edges.own", edge=line_name(plan, key), hand=curve_hand(plan.layout)),
    }


def _end(plan: Plan, marks: Marks, key: str, ground: Ground, near: str, share: float) -> Iterator[EdgeEndRow]:
    """An end of an edge by two tapes: the width from its own end of the stakes, and from the other end of the stakes,
    or from the stake that crosses best where that one can't be reached or crosses too flat."""
    mark, tape = marks.across(key, share), plan.tape
    width = abs(marks.reach(key, share))
    far = _far_of(marks, ground, mark, near)
    if far is None:
        return
    diagonal = distance(marks.places[far], mark)
    yield {
        "name": mark_name(key, near),
        "near": near,
        "width": width,
        "width_shown": tape.show(width),
        "far": far,
        "diagonal": diagonal,
        "diagonal_shown": tape.show(diagonal),
    }


def _far_of(marks: Marks, ground: Ground, mark: Point, near: str) -> str | None:
    """Return the stake from which the second tape is held: the other end, or the one that crosses the least flat where
    that can't be taped or is nearly in line; ``None`` where none can be taped."""
    other = "B" if near == "A" else "A"

    def crossing(name: str) -> float:
        return _crossing(mark, marks.places[near], marks.places[name])

    if crossing(other) >= SLANT and ground.tapeable(marks.places[other], mark):
        return other
    free = (name for name, _share in marks.shares if name != near and ground.tapeable(marks.places[name], mark))
    return max(free, key=crossing, default=None)


def _crossing(mark: Point, one: Point, other: Point) -> float:
    """Return the sine of the angle at which two straight ways meet in a mark."""
    a, b = one.minus(mark), other.minus(mark)
    lengths = distance(one, mark) * distance(other, mark)
    return abs(a.cross(b)) / lengths if lengths else 0.0


def _how_ends(marks: Marks, key: str, ends: list[EdgeEndRow], chord: str) -> Iterator[str]:
    """The sentences for an edge's ends, the second in short where it has the first one's numbers."""
    numbers = [(end["width_shown"], end["diagonal_shown"], end["far"] in ("A", "B")) for end in ends]
    alike = len(ends) == 2 and numbers[0] == numbers[1] and numbers[0][2]
    for place, end in enumerate(ends):
        if place and alike:
            yield say("edges.end_same", mark=end["name"], near=end["near"], far=end["far"])
        else:
            outward = marks.reach(key, 0 if end["near"] == "A" else 1) > 0
            told = {"width": end["width_shown"], "diagonal": end["diagonal_shown"]}
            which = "edges.end_out" if outward else "edges.end_in"
            yield say(which, mark=end["name"], near=end["near"], far=end["far"], **told)
    first, last = (mark_name(key, end) for end in ("A", "B"))
    yield say("edges.chord_reads" if ends else "edges.ends_by_stick", first=first, last=last, chord=chord)


def _partner(plan: Plan, marks: Marks, key: str, stake: str, share: float) -> PartnerRow:
    place, reach, edge = marks.edge(key).own(share), marks.reach(key, share), marks.edge(key)
    reaches = (marks.reach(key, 0), marks.reach(key, 1))
    aside = min(reaches) < 0 < max(reaches)  # on either side of the stakes, one after the other
    along = 0.0 if share == 0 else edge.chord if share == 1 else place.x
    off = 0.0 if share in (0, 1) else place.y
    return {
        "name": mark_name(key, stake),
        "stake": stake,
        "width": reach if aside else abs(reach),
        "width_shown": off_shown(plan, reach) if aside else plan.tape.show(abs(reach)),
        "slab": marks.width(share),
        "slab_shown": plan.tape.show(marks.width(share)),
        "along": along,
        "along_shown": _along_shown(plan, key, along, edge.chord),
        "off": off,
        "off_shown": _square_shown(plan, off),
    }


def _along_shown(plan: Plan, key: str, along: float, chord: float) -> str:
    """A place along an edge's own string; past a half circle some lie before its first end or after its last."""
    tape = plan.tape
    if along < 0 and tape.round(along):
        return say("edges.before", size=tape.show_running(-along), mark=mark_name(key, "A"))
    if along > chord and tape.round(along - chord):
        return say("edges.past", size=tape.show_running(along - chord), mark=mark_name(key, "B"))
    return tape.show_running(abs(along))


def _square_shown(plan: Plan, off: float) -> str:
    """How far off its own string a mark is; an edge that tapers may cross it."""
    shown = plan.tape.show(abs(off))
    return say("edges.other_side", size=shown) if off < 0 and plan.tape.round(off) else shown


def in_the_way(plan: Plan, marks: Marks, ground: Ground) -> Iterator[str]:
    """Yield a sentence for each thing on which a mark of an edge would stand."""
    seen: set[str] = set()
    for key in (OUTSIDE, INSIDE):
        for stake, share in marks.shares:
            what = ground.standing(marks.across(key, share))
            if what and what not in seen:
                seen.add(what)
                yield say("edges.stands", what=what, mark=mark_name(key, stake) if key in marks.seconds else stake)
