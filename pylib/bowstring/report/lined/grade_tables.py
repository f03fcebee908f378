"""The tops along a line in tables: at its start, joins, each arc's middle and end, and at the stakes of one arc."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.tops import HANDS, LineGrade, NotOnEdge
from bowstring.report.forming.grade_base import LONGEST_ROD
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.levels import over, reading
from bowstring.report.forming.slopes import percent
from bowstring.report.forms.build_lined import LinedTable
from bowstring.report.lined.grade_said import LineSettled
from bowstring.report.lined.line import name_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

Tops = tuple[float | None, float | None]
"""Of the left and the right form at one place, metres; ``None`` where a kink leaves no form there."""
Row = tuple[str, Tops]
Named = tuple[str, str]
"""A table's key and its title."""


def tables(plan: LinePlan, settled: LineSettled) -> list[LinedTable]:
    """Return the tops along the line first, then what a level, the arc's stakes and the slopes need."""
    grade, said = settled.grade, plan.said.grade
    rows = list(_along(plan, grade))
    at = say("lined.head_at")
    found = [_heights(plan, grade, rows, ("tops", say("grades.table")), at)]
    if said.start is not None:
        found.append(_levels(plan, rows, ("elevations", say("grades.elevations", unit=_unit(plan))), at))
    if said.instrument is not None:
        reads = [(name, _reads(plan, said.instrument, tops)) for name, tops in rows]
        found.append(_levels(plan, reads, ("rods", say("grades.rods")), at))
    stakes = list(_at_stakes(plan, grade))
    number = plan.settled.said.at + 1
    of_stakes = "at_stakes", say("lined.at_stakes", piece=name_of(plan, number))
    found.append(_heights(plan, grade, stakes, of_stakes, say("grades.stake")))
    return [*found, _slopes(plan, grade)] if grade.running else found


def _reads(plan: LinePlan, instrument: float, tops: Tops) -> Tops:
    """What a rod reads on both tops; none on one that stands over the instrument."""
    left, right = (None if top is None or top > instrument else reading(plan.tape, instrument, top) for top in tops)
    return left, right


def rod_lines(plan: LinePlan, grade: LineGrade) -> Iterator[str]:
    """Return where no rod can be read, and whether one would read more than it has."""
    instrument = plan.said.grade.instrument
    if instrument is None:
        return
    rows = [(name, [top for top in tops if top is not None]) for name, tops in _along(plan, grade)]
    hidden = [name for name, tops in rows if max(tops, default=instrument) > instrument]
    if hidden:
        yield say("grades.instrument_low", stake=hidden[0])
    if instrument - grade.start > LONGEST_ROD + max(abs(top - grade.start) for _, tops in rows for top in tops):
        yield say("grades.instrument_far")


def _unit(plan: LinePlan) -> str:
    return "ft" if plan.tape.feet else "m"


def _along(plan: LinePlan, grade: LineGrade) -> Iterator[Row]:
    """The start, each arc's middle, each join and the end."""
    line = plan.line
    yield say("lined.head_start"), _pair(grade, 0, 0.0)
    for number, piece in enumerate(line.pieces):
        first, last = line.stations[number], line.stations[number + 1]
        if isinstance(piece, Bend):
            name = say("lined.at_middle", station=plan.along((first + last) / 2))
            yield name, _square(grade, number, 0.5)
        name = plan.along(last)
        yield name if number + 1 < len(line.pieces) else say("lined.at_end", station=name), _pair(grade, number, 1.0)


def _pair(grade: LineGrade, number: int, share: float) -> Tops:
    """The tops at one share of both edges of a piece: at a kink its corners."""
    left, right = (grade.top_at(number, share, hand) for hand in HANDS)
    return left, right


def _square(grade: LineGrade, number: int, part: float) -> Tops:
    """The tops square off a place of a piece."""
    tops: list[float | None] = []
    for hand in HANDS:
        try:
            tops.append(grade.top_at(number, grade.share_of(number, part, hand), hand))
        except NotOnEdge:
            tops.append(None)
    return tops[0], tops[1]


def _at_stakes(plan: LinePlan, grade: LineGrade) -> Iterator[Row]:
    """The tops square off the stakes of the arc that is staked."""
    return ((name, _square(grade, plan.settled.said.at, share)) for name, share in plan.plan.shares())


def _heights(plan: LinePlan, grade: LineGrade, rows: list[Row], named: Named, at: str) -> LinedTable:
    """Return heights above the left form's top at the start: on the tape and in hundredths, or in millimetres."""
    inches = plan.tape.unit == "ft-in"
    feet = [say("grades.feet")] if inches else []
    heads = [at, say("lined.head_left"), *feet, say("lined.head_right"), *feet]
    table: list[list[str]] = []
    for name, tops in rows:
        cells = [name]
        for top in tops:
            told = None if top is None else over(plan.tape, top, grade.start)
            cells += [told.tight if told else "-", *([told.feet if told else "-"] if inches else [])]
        table.append(cells)
    return {"key": named[0], "title": named[1], "heads": heads, "rows": table}


def _levels(plan: LinePlan, rows: list[Row], named: Named, at: str) -> LinedTable:
    """Return elevations, or what a rod reads."""
    heads = [at, say("lined.head_left"), say("lined.head_right")]

    def told(top: float | None) -> str:
        return "-" if top is None else elevation(plan.tape, top)

    made = [[name, *map(told, tops)] for name, tops in rows]
    return {"key": named[0], "title": named[1], "heads": heads, "rows": made}


def _slopes(plan: LinePlan, grade: LineGrade) -> LinedTable:
    """Return the running slope of each piece's edges."""
    heads = [say("lined.head_piece"), say("lined.head_left"), say("lined.head_right")]
    rows = [
        [name_of(plan, number + 1), *(percent(grade.slope(number, hand)) for hand in HANDS)]
        for number in range(len(grade.paces))
    ]
    return {"key": "slopes", "title": say("lined.slopes"), "heads": heads, "rows": rows}
