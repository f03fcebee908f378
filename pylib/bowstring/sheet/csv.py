"""The stakes as comma-separated values (RFC 4180): one row a stake, for a spreadsheet or an instrument's list."""

from __future__ import annotations

import csv
import io

from bowstring.report.forms.answer import Answer
from bowstring.words import say

HAZARDS = ("=", "+", "@", "\t", "\r")
"""What a spreadsheet would take for a formula where a text begins with it."""


def stakes_csv(answer: Answer) -> str:
    """Return an answer's stakes as CSV: where each belongs in metres, how far it may be off, and what is read there.

    Figures are metres with six decimals, told in the head; readings are texts in the job's unit. The first stake's row
    of readings is empty: the ends are found, not set out.

    >>> from bowstring import answer
    >>> table = stakes_csv(answer({"bowstring": 1, "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "levels": 1}))
    >>> len(table.splitlines())  # a head and the stakes A, M, B
    4
    """
    widest = max((len(table["head"]) - 1 for table in answer["tables"]), default=0)
    axes = answer["site"]["axes"]
    drawn = [say(f"table.drawing_{place}_{axes}") for place in ("first", "second")] if axes else []
    head = [say("csv.stake"), *(say(f"csv.{name}") for name in ("along", "x", "y", "across", "along_off"))]
    head += [say("csv.metres", name=name) for name in drawn]
    head += [say("csv.reading", number=number + 1) for number in range(widest)]
    readings = {row[0]: (table["head"][1:], row[1:]) for table in answer["tables"] for row in table["rows"]}
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow(head)
    for stake in answer["stakes"]:
        names, cells = readings.get(stake["name"], ([], []))
        told = [say("csv.told", name=name, shown=cell) for name, cell in zip(names, cells, strict=True)]
        numbers = (stake["along"], stake["x"], stake["y"], stake["sigma_across"], stake["sigma_along"])
        drawing = stake["drawing"] if axes else []
        row = [stake["name"], *(f"{value:.6f}" for value in (*numbers, *drawing)), *told]
        writer.writerow([_harmless(cell) for cell in row])
    return out.getvalue()


def _harmless(cell: str) -> str:
    """Return a cell that no spreadsheet runs: a landmark's name may begin with anything."""
    return "'" + cell if cell.startswith(HAZARDS) else cell
