"""The givens beside the arc: which agree, which are doubtful, and which the arc hangs on too finely."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.geometry.given import ANGLES, Given
from bowstring.geometry.givens import better_measurement, nudged
from bowstring.geometry.three import points_change, sides_change
from bowstring.layout.layout import Layout
from bowstring.report.caution import Caution, caution
from bowstring.report.forms.arc import GivenRow
from bowstring.report.numbers import percent
from bowstring.units.angles import both_angles, show_dms
from bowstring.words import say

SENSITIVE = 0.01
"""Part of the radius: a tape mark that moves it by more is told."""

LEAST = 1e-4
"""Of a radius: a change by less is told as this much."""


def report_given(layout: Layout) -> list[GivenRow]:
    """Return the answer's ``given``: every given beside what the arc has, when there were more than two."""
    givens = layout.job.givens
    if len(givens) <= 2:
        return []
    rows: list[GivenRow] = []
    for given in givens:
        computed = given.computed(layout.settled.arc)
        rows.append(
            {
                "field": given.field,
                "value": given.value,
                "computed": computed,
                "difference": None if computed is None else given.value - computed,
                "agrees": given.agrees(layout.settled.arc, layout.job.tape.mark),
                "value_shown": _show(given.field, given.value, layout),
                "computed_shown": None if computed is None else _show(given.field, computed, layout),
                "used": given in layout.settled.pair,
            }
        )
    return rows


def _show(field: str, value: float, layout: Layout) -> str:
    return both_angles(value) if field in ANGLES else layout.job.shown.both(value)


def doubts_of_givens(layout: Layout) -> Iterator[Caution]:
    """Yield what is doubtful about the givens: those that disagree or differ, a second arc, a road's angle."""
    tape, settled = layout.job.shown, layout.settled
    if len(layout.job.givens) > 2:
        for given in layout.job.givens:
            if given.over_a_mark(settled.arc, layout.job.tape.mark):
                yield _difference(given, layout)
    if settled.other:
        yield caution(
            "caution.two_arcs",
            angle=show_dms(settled.arc.central_angle),
            radius=tape.both(settled.arc.radius),
            other_angle=show_dms(settled.other.central_angle),
            other_radius=tape.both(settled.other.radius),
            sagitta=tape.show(settled.arc.sagitta),
            other_sagitta=tape.show(settled.other.sagitta),
        )
    for given in layout.job.givens:
        if given.field == "degree":
            key = "caution.degree_chord" if given.by_chord else "caution.degree"
            yield caution(key, radius=tape.both(given.settles))


def _difference(given: Given, layout: Layout) -> Caution:
    """Tell a given that the arc has otherwise, with both values; a difference within its rounding stops nothing."""
    settled = layout.settled
    computed = given.computed(settled.arc)
    if given.agrees(settled.arc, layout.job.tape.mark):
        key = "caution.differs"
    elif given == settled.odd:
        key = "caution.odd_one" if computed is not None else "caution.odd_one_none"
    else:
        key = "caution.disagrees" if computed is not None else "caution.disagrees_none"
    first, second = settled.pair
    return caution(
        key,
        field=say(f"measure.{given.field}"),
        value=_show(given.field, given.value, layout),
        computed="" if computed is None else _show(given.field, computed, layout),
        pair=say("and", first=say(f"measure.{first.field}"), second=say(f"measure.{second.field}")),
    )


def sharpness(layout: Layout) -> Iterator[Caution]:
    """Yield the givens of which one tape mark moves the radius too far, and what would be better measured."""
    tape = layout.job.shown
    for given, change in nudged(layout.settled, layout.job.tape.mark):
        if change <= SENSITIVE:
            continue
        better = better_measurement(layout.settled, given, layout.job.tape.mark)
        advice = say("caution.no_better")
        if better:
            value = layout.settled.arc.measures()[better[0]]
            assert value is not None
            advice = say(
                "caution.better",
                field=say(f"measure.{better[0]}"),
                value=tape.show(value),
                change=percent(max(better[1], LEAST)),
            )
        yield caution(
            "caution.sensitive" if change < 1 else "caution.sensitive_all",
            field=say(f"measure.{given.field}"),
            mark=layout.job.mark_shown,
            change=percent(change),
            better=advice,
        )

    for name, change in _of_the_whole(layout):
        if change > SENSITIVE:
            key = "caution.sensitive" if change < 1 else "caution.sensitive_all"
            yield caution(
                key,
                field=say(f"measure.{name}"),
                mark=layout.job.mark_shown,
                change=percent(change),
                better=say(f"caution.better_{name}"),
            )


def _of_the_whole(layout: Layout) -> Iterator[tuple[str, float]]:
    """Yield what settles an arc alone, three points or three sides, and how far a mark in it moves the radius."""
    job = layout.job
    if job.points:
        yield "points", points_change(job.points, job.tape.mark)
    if job.sides:
        yield "three_sides", sides_change(job.sides, job.tape.mark)
