"""The stakes of a method as tables: one row a stake with every number that is taped or turned there."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bowstring.layout.layout import Layout
from bowstring.methods.method import DEFLECTION, HALF_CHORD, OFF_CHORD, TAPED, Column, Table
from bowstring.report.forms.steps import StepRow, StepTable
from bowstring.words import say


def report_tables(layout: Layout, steps: Sequence[StepRow]) -> list[StepTable]:
    """Return the answer's ``tables``: for each kind of table its head and its rows, as texts."""
    heads: dict[str, list[str]] = {}
    rows: dict[str, list[list[str]]] = {}
    for step in steps:
        if step["stake"] is None:
            continue
        table = layout.method.tables[step["kind"]]
        if table.kind not in rows:
            heads[table.kind], rows[table.kind] = _head(table, step["names"]), []
        rows[table.kind].append([_first(step), *(_cell(column, step) for column in table.columns)])
    return [{"kind": kind, "head": heads[kind], "rows": rows[kind]} for kind in rows]


def _first(step: StepRow) -> str:
    """The stake's own cell; one that stands already isn't set by the numbers beside it."""
    # Halving says so in its column of what is squared off.
    told = step["stands"] and step["taped"] is None
    return say("table.stands", stake=step["stake"]) if told else str(step["stake"])


def _head(table: Table, names: Mapping[str, str]) -> list[str]:
    """The heads, with the two marks that the whole table is measured from."""
    start, end = names.get("start", ""), names.get("end", "")
    marks = {"first": start, "second": end, "at": start, "back": end}
    return [say("table.stake"), *(say(f"table.{column.head}", **marks) for column in table.columns)]


def _cell(column: Column, step: StepRow) -> str:
    names = step["names"]
    shown = _shown(column.shows, step)
    return say(column.cell, shown=shown, mark=names.get("other"), **names) if column.cell else shown


def _shown(shows: int | str | None, step: StepRow) -> str:
    """What a column shows of a step, empty where it names marks alone."""
    if isinstance(shows, int):
        return step["measures"][shows]["text"]
    if shows is None:
        return ""
    texts = {TAPED: step["taped"], HALF_CHORD: step["half_chord"], DEFLECTION: step["deflection"],
             OFF_CHORD: step["off_chord"]}  # fmt: skip
    shown = texts[shows]
    assert shown is not None  # only a step that has it is in a table that shows it
    return shown
