"""The stakes with what was read at the checks: a check that is out is drawn dashed, a suspect has a ring."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from bowstring.drawings.labels import FAINT, Label
from bowstring.drawings.paper import Paper
from bowstring.drawings.plan import draw_arcs, draw_stakes, name_stakes, paper_of, stakes_on_paper
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.svg import Point
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.checks import CheckRow
from bowstring.report.forms.stakes import StakeRow
from bowstring.words import say

_WIDTH, _HEIGHT = 296.0, 84.0
"""Drawing units: with the names and the edge a phone's 360 pixels."""

RING = 12.0

_NAME_ROOM = 27.0
"""Drawing units from one stake to the next that is named: their names stand side by side at the top of the arc."""

FEW = 17
"""Stakes up to which all are named; of more the ends and the suspects alone."""


def checked_svg(
    answer: Answer, outs: Sequence[CheckRow], ins: Sequence[CheckRow], suspects: Sequence[str], told: str, *, id: str
) -> str:
    """Return the drawing of all stakes as SVG: the checks that are ``outs`` and ``ins``, and a ring about each of the
    ``suspects``. ``told``: the same in words."""
    paper = paper_of(answer, _HEIGHT, _WIDTH)
    sketch = Sketch(
        id=id,
        stopped=bool(answer["stops"]),
        title=say("face_checks.draw"),
        description=say("face_checks.draw_desc", told=told),
    )
    draw_arcs(sketch, answer, paper, "")
    marks = {mark["name"]: paper.point(mark["x"], mark["y"]) for mark in answer["marks"]}
    marks |= {stake["name"]: paper.point(stake["x"], stake["y"]) for stake in answer["stakes"]}
    for row in ins:
        _line(sketch, row, marks, "soft")
    for row in outs:
        _line(sketch, row, marks, "arrow dash")
    draw_stakes(sketch, answer, paper, None)
    by_name = {stake["name"]: stake for stake in answer["stakes"]}
    for name in suspects:
        if name in by_name:
            _ring(sketch, answer, paper, by_name[name], marks[name])
    _name(sketch, answer, paper, marks, outs, suspects)
    return sketch.finish()


def _name(
    sketch: Sketch, answer: Answer, paper: Paper, marks: dict[str, Point], outs: Sequence[CheckRow],
    suspects: Sequence[str],
) -> None:  # fmt: skip
    """Name the stakes that there is room for, and whatever room there is those of checks that are out."""
    stakes = [stake["name"] for stake in stakes_on_paper(answer)]
    every = _named_of(marks, stakes)
    if every == 1 and not suspects:
        name_stakes(sketch, answer, paper)
        return
    known = {stake["name"] for stake in answer["stakes"]}
    shown = [mark for row in outs for mark in (row["from"], row["to"]) if mark in known]
    # What is to be taped first is named before others: its sentence names it too.
    first = [mark for row in answer["checks"] if row["recommended"] for mark in _marks_of(row) if mark in known]
    some = [] if suspects or not every else [*first, *stakes[::every]]
    names = [name for name in dict.fromkeys(["A", "B", *shown]) if name not in suspects]
    for name in some:
        if all(other in "AB" or math.dist(marks[name], marks[other]) >= _NAME_ROOM for other in names if other != name):
            names.append(name)
    _names(sketch, answer, paper, marks, names, shown)


def _marks_of(row: CheckRow) -> list[str]:
    """The stakes that a check is taped between, or whose string it is."""
    return [*row["from"].removeprefix("mid ").split("-"), row["to"]]


def _ring(sketch: Sketch, answer: Answer, paper: Paper, stake: StakeRow, at: Point) -> None:
    """Draw a ring about a suspect, with its name and a question mark."""
    (x, y), name = at, stake["name"]
    sketch.drawing.dot((x, y), RING, "line arrow")
    sketch.see((x - RING, y - RING), (x + RING, y + RING))
    toward = paper.outward(paper.angle_of(stake, answer["staked"]["arc_length"])) if stake["level"] else (0.0, 1.0)
    sketch.label(Label(say("face_checks.ring", stake=name), "end", [(x, y)], toward, RING + 4.0), "", name)


def _named_of(marks: dict[str, Point], names: Sequence[str]) -> int:
    """Return how many-th stake has room for its name: each one, each second, each fourth; 0 where none has."""
    if len(names) > FEW:
        return 0
    gap = min(math.dist(marks[one], marks[other]) for one, other in pairwise(names))
    return next((every for every in (1, 2, 4) if every * gap >= _NAME_ROOM), 0)


def _line(sketch: Sketch, row: CheckRow, marks: dict[str, Point], classes: str) -> None:
    start, end = marks.get(row["from"]), marks.get(row["to"])
    if start is None or end is None:
        return
    sketch.drawing.lines([[start, end]], f"line {classes}")
    sketch.ground.take_lines([start, end], FAINT)


def _names(
    sketch: Sketch, answer: Answer, paper: Paper, marks: dict[str, Point], names: Sequence[str], strong: Sequence[str]
) -> None:
    """Name A and B, and some stakes; ``strong``: those that checks which are out end at."""
    ends = {"A": (-0.92 * paper.turn, 0.39), "B": (0.92 * paper.turn, 0.39)}
    for stake in answer["stakes"]:
        name = stake["name"]
        if name in names:
            away = ends.get(name) or paper.outward(paper.angle_of(stake, answer["staked"]["arc_length"]))
            kind = "end" if name in ends or name in strong else "name"
            sketch.label(Label(name, kind, [marks[name]], away, 9.5 if kind == "end" else 8.0), "", name)
