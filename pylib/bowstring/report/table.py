"""The stakes of a method as tables: one row a stake with every number that is taped or turned there."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.layout.layout import Layout
from bowstring.report.forms.steps import StepRow, StepTable
from bowstring.words import say

COLUMNS: dict[str, tuple[str, ...]] = {
    "stake": ("string_between", "half", "square_off", "half_chord"),
    "ordinate": ("string_from", "at", "square_off"),
    "swing": ("from_centre", "from_before"),
    "cross": ("from_first", "from_second"),
    "polar": ("turn", "away"),
    "tangent_offset": ("tangent_at", "at", "square_off"),
    "produce": ("line_on", "carry_on", "swing_in"),
    "sight": ("turn", "from_before"),
}
"""What stands in a row after the stake's name, by the kind of step (the start of its name)."""


def report_tables(layout: Layout, steps: Sequence[StepRow]) -> list[StepTable]:
    """Return the answer's ``tables``: for each kind of step its head and its rows, as texts."""
    tables: dict[str, list[list[str]]] = {}
    for step in steps:
        if step["stake"] is None:
            continue
        kind = next(kind for kind in COLUMNS if step["kind"].startswith(kind))
        tables.setdefault(kind, []).append([step["stake"], *_cells(kind, step)])
    first, second = layout.setting.tapes_from
    at, back = layout.setting.control if layout.method.name == "coordinates" else ("A", "B")
    names = {"first": first, "second": second, "at": at, "back": back}
    return [
        {"kind": kind, "head": [say("table.stake"), *(say(f"table.{name}", **names) for name in COLUMNS[kind])],
         "rows": rows}
        for kind, rows in tables.items()
    ]  # fmt: skip


def _cells(kind: str, step: StepRow) -> list[str]:
    shown = [measure["text"] for measure in step["measures"]]
    names = step["names"]
    string = say("sheet.from_to", start=names.get("start", ""), end=names.get("end", ""))
    if kind == "stake":
        half_chord = step["half_chord"]
        assert half_chord is not None  # a stake over a string's middle
        return [string, shown[0], step["taped"] or shown[1], half_chord]
    if kind == "ordinate":
        return [string, *shown]
    if kind in ("polar", "sight"):
        return [shown[1], shown[0]] if kind == "polar" else [
            shown[1], say("table.from_mark", shown=shown[0], mark=names["other"])]  # fmt: skip
    if kind == "swing":
        return [shown[0], say("table.from_mark", shown=shown[1], mark=names["other"])]
    if kind == "tangent_offset":
        way = "table.past" if step["kind"].endswith("_past") else "table.toward"
        return [say(way, start=names["start"], other=names["other"]), *shown]
    if kind == "produce":
        return [say("table.line", other=names["other"], start=names["start"]), shown[0], shown[2]]
    return shown
