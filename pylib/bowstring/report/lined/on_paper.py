"""What the form sheet of a line tells beside its pages: the places along both forms, and the sentences of each part."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.pieces import Bend, Hand
from bowstring.forming.line.sides import Side
from bowstring.forming.line.sweep import Sweep
from bowstring.forming.line.tops import HANDS, OFF, LineGrade
from bowstring.report.forming.end_joints import strip_shown
from bowstring.report.forming.ends import against, named
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.levels import over, read_from, reading
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.thick_edge import edge_signed
from bowstring.report.forms.build_lined import LinedPlace, LinedSheet, LinedSign, LinedSpot
from bowstring.report.lined import boards, edges, grades, joints, line, line_page, pour, wall_sizes
from bowstring.report.lined.hubs import LineHubs
from bowstring.report.lined.jointing import jointing_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def sheet_of(plan: LinePlan, hubs: LineHubs | None) -> LinedSheet:
    """Return the answer's ``lined_sheet``."""
    slab, tape = plan.said.slab, plan.tape
    return {
        "width_shown": tape.show(plan.width) if plan.slab is not None and plan.width is not None else "",
        "depth_shown": thick(tape, slab.thickness) if slab.thickness is not None else "",
        "edge_signed": edge_signed(plan.plan),
        "apron_shown": thick(tape, slab.apron.thickness) if slab.apron is not None else "",
        "strip_signs": _strip(plan),
        "wall_signs": wall_sizes.signs_of(plan),
        "from_start": say("lined.from_start", first=line.first_told(plan)),
        "stakes": boards.stakes_bought(plan),
        "parts": [{"key": key, "lines": lines} for key, lines in _parts(plan, hubs)],
        "read_from": _read_from(plan),
        "places": [] if plan.slab is None or plan.asks else [*_Places(plan, Sweep(plan.slab)).all()],
    }


def _strip(plan: LinePlan) -> list[LinedSign]:
    """The isolation strip at the ends that meet concrete which stands there."""
    shown = strip_shown(plan.plan, plan.line.length)
    ends = named(plan.plan, against(plan.plan))
    return [{"what": say("ends.sign", ends=ends), "must": shown}] if shown else []


def _read_from(plan: LinePlan) -> str:
    settled = grades.told_of(plan)
    return read_from(plan.tape, plan.said.grade, "start") if settled else ""


def _parts(plan: LinePlan, hubs: LineHubs | None) -> Iterator[tuple[str, list[str]]]:
    yield "line", line_page.paper_lines(plan)
    yield "edges", edges.paper_lines(plan, hubs)
    yield "boards", boards.paper_lines(plan)
    yield "joints", joints.paper_lines(plan)
    yield "grades", grades.paper_lines(plan)
    yield "pour", pour.paper_lines(plan)


class _Places:
    """The places along both forms of a slab."""

    def __init__(self, plan: LinePlan, sweep: Sweep) -> None:
        self.plan, self.sweep = plan, sweep
        settled, jointing = grades.told_of(plan), jointing_of(plan)
        self.grade: LineGrade | None = settled.grade if settled else None
        self.marks = jointing.chosen.marks if jointing and not jointing.stopped else ()

    def all(self) -> Iterator[LinedPlace]:
        """Yield them in order: an arc's middle has a place of its own where no joint stands on it."""
        yield self._place(("start", 0, 0), 0, dict.fromkeys(HANDS, 0.0))
        joint, last = 0, len(self.plan.line.pieces) - 1
        for number, piece in enumerate(self.plan.line.pieces):
            inside = [
                (mark.share, mark.front) for mark in self.marks if mark.piece == number and mark.share is not None
            ]
            half = isinstance(piece, Bend) and all(abs(share - 0.5) > OFF for share, _front in inside)
            for share, front in inside:
                if half and share > 0.5:
                    yield self._middle(number)
                    half = False
                joint += 1
                yield self._place(("joint", joint, 0), number, {"left": front.left, "right": front.right})
            if half:
                yield self._middle(number)
            ends = {hand: self._side(number, hand).ends for hand in HANDS}
            if number == last:
                yield self._place(("end", 0, 0), number, ends)
                continue
            joint += bool(self.marks)
            yield self._place(("joint" if self.marks else "join", joint, number + 2), number, ends)

    def _side(self, number: int, hand: Hand) -> Side:
        return self.sweep.sides[hand][number]

    def _middle(self, number: int) -> LinedPlace:
        """An arc's middle: on each form square off it, where a kink leaves that."""
        found: dict[Hand, float] = {}
        for hand in HANDS:
            side = self._side(number, hand)
            low, high = side.square
            if low <= 0.5 <= high:
                found[hand] = side.at(0.5)
        return self._place(("middle", 0, 0), number, found)

    def _place(self, what: tuple[str, int, int], number: int, along: dict[Hand, float]) -> LinedPlace:
        kind, joint, begins = what
        if kind == "joint":
            label = f"{joint}"
        elif kind == "middle":
            label = say("lined.place_middle")
        else:
            label = say("lined.place_join", number=begins) if kind == "join" else say(f"lined.place_{kind}")
        left, right = (self._spot(number, hand, along[hand]) if hand in along else None for hand in HANDS)
        return {"kind": kind, "joint": joint, "begins": begins, "label": label, "left": left, "right": right}

    def _spot(self, number: int, hand: Hand, along: float) -> LinedSpot:
        tape, grade, said = self.plan.tape, self.grade, self.plan.said.grade
        spot: LinedSpot = {"along_shown": tape.show_running(along), "top_shown": "", "feet_shown": "",
                           "level_shown": "", "rod_shown": ""}  # fmt: skip
        if grade is None:
            return spot
        side = self._side(number, hand)
        share = min(max((along - side.begins) / side.length, 0.0), 1.0)
        top = grade.top_at(number, share, hand)
        told = over(tape, top, grade.start)
        spot["top_shown"], spot["feet_shown"] = told.tight, told.feet
        if said.start is not None:
            spot["level_shown"] = elevation(tape, top)
        if said.instrument is not None and top <= said.instrument:
            spot["rod_shown"] = elevation(tape, reading(tape, said.instrument, top))
        return spot
