"""The stakes as comma-separated values (RFC 4180): one row a stake, for a spreadsheet.

What an instrument reads stands in ``sheet.instrument``: there y is to the left of A to B, here it is
on the curve's side, which the head names.
"""

from __future__ import annotations

import csv
import io

from bowstring.drawings.coordinates import unit_of
from bowstring.report.forms.answer import Answer
from bowstring.report.named import named_through
from bowstring.words import say
from bowstring.words.isolated import FSI, isolated

HAZARDS = ("=", "+", "-", "@", "\t", "\r", "\n", "\N{FULLWIDTH EQUALS SIGN}", "\N{FULLWIDTH PLUS SIGN}",
           "\N{FULLWIDTH HYPHEN-MINUS}", "\N{FULLWIDTH COMMERCIAL AT}")  # fmt: skip
"""What a spreadsheet would take for a formula where a text begins with it."""


def stakes_csv(answer: Answer) -> str:
    """Return an answer's stakes as CSV: where each belongs, how far it may be off, and what is read there.

    Figures are feet or metres, as the job's unit is, with six decimals: the head says which; readings are texts. The
    first stake's row of readings is empty: the ends are found, not set out. Each row says whether it may be built from;
    where it may not, the first line says why.

    >>> from bowstring import answer
    >>> table = stakes_csv(answer({"bowstring": 1, "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "levels": 1}))
    >>> [row.split(",")[0] for row in table.splitlines()][-4:]
    ['stake', 'A', 'M', 'B']
    """
    widest = max((len(table["head"]) - 1 for table in answer["tables"]), default=0)
    axes, (_unit, size) = answer["site"]["axes"], unit_of(answer["unit"])
    readings = {row[0]: (table["head"][1:], row[1:]) for table in answer["tables"] for row in table["rows"]}
    out = io.StringIO()
    writer = csv.writer(out)
    if answer["stops"]:
        writer.writerow([_harmless(say("csv.stopped", why=" ".join(answer["stops"])))])
    status = say("csv.status_stop" if answer["stops"] else "csv.status_ready")
    writer.writerow(_head(answer, widest))
    for stake in answer["stakes"]:
        names, cells = readings.get(stake["name"], ([], []))
        told = [say("csv.told", name=name, shown=cell) for name, cell in zip(names, cells, strict=True)]
        station = [stake["station_shown"]] if "station_shown" in stake else []
        numbers = (stake["along"], stake["x"], stake["y"], stake["sigma_across"], stake["sigma_along"])
        drawing = stake["drawing"] if axes else []
        figures = [f"{value / size:.6f}" for value in (*numbers, *drawing)]
        writer.writerow(
            [_harmless(named_through(answer, stake["name"])), *figures, *station, status, *map(_harmless, told)]
        )
    return out.getvalue()


def _head(answer: Answer, widest: int) -> list[str]:
    """What stands over the columns; ``widest``: readings that a stake has at most."""
    axes, (unit, _size) = answer["site"]["axes"], unit_of(answer["unit"])
    drawn = [say(f"table.drawing_{place}_{axes}") for place in ("first", "second")] if axes else []
    hand = say(f"hand.{answer['side']}") if answer["side"] else say("hand.curve")
    head = [say("csv.stake"), say("csv.along", unit=unit), say("csv.x", unit=unit), say("csv.y", hand=hand, unit=unit)]
    head += [say("csv.across", unit=unit), say("csv.along_off", unit=unit)]
    head += [say("csv.beside", name=name, unit=unit) for name in drawn]
    head += [say("station.head")] if any("station_shown" in stake for stake in answer["stakes"]) else []
    return [*head, say("csv.status"), *(say("csv.reading", number=number + 1) for number in range(widest))]


def _harmless(cell: str) -> str:
    """Return a cell that no spreadsheet runs: a landmark's name may begin with anything."""
    return isolated("'" + cell if cell.lstrip(f" {FSI}").startswith(HAZARDS) else cell)
