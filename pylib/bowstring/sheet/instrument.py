"""The stakes as a list for an instrument: a name and two coordinates a row, under a plain head, and nothing else."""

from __future__ import annotations

import csv
import io

from bowstring.drawings.coordinates import Coordinates, coordinates
from bowstring.report.forms.answer import Answer
from bowstring.report.named import named_through
from bowstring.words import say

ORDERS = ("n-e", "x-y")
"""Northing before easting, or x before y: instruments differ, so somebody says it."""

DECIMALS = 7
"""Of a foot or a metre: read back, no place is off by a millionth of a metre."""


def axes_of(places: Coordinates, order: str) -> tuple[str, str]:
    """Return what the two columns of an order are called: only the drawing has a north."""
    names = ("northing", "easting") if places.drawn else ("y", "x")
    return names if order == "n-e" else ("x", "y")


def instrument_csv(answer: Answer, order: str) -> str:
    """Return an answer's stakes as CSV in an order of ``ORDERS``, in feet or metres as the job's unit is.

    In the drawing's coordinates where it gives them; otherwise A is at 0, 0 and B along x, and nothing is called a
    northing: y is to the left of A to B.

    Raises ``ValueError`` for a job that is stopped.

    >>> from bowstring import answer
    >>> job = {"bowstring": 1, "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "levels": 1, "side": "right"}
    >>> print(instrument_csv(answer({**job, "drawn_to": "face", "method": "halving"}), "x-y").replace("\\r", ""))
    name,x m,y m
    A,0.0000000,0.0000000
    M,20.0000000,-10.0000000
    B,40.0000000,0.0000000
    <BLANKLINE>
    """
    if order not in ORDERS:
        raise ValueError(f"no such order: {order!r}")
    places = coordinates(answer)
    names = list(axes_of(places, order))
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow([say("csv.name"), *(say(f"csv.axis_{name}", unit=places.unit) for name in names)])
    for stake in answer["stakes"]:
        x, y = places.of(stake["x"], stake["y"])
        pair = (y, x) if order == "n-e" else (x, y)
        name = named_through(answer, stake["name"])
        writer.writerow([name, *(f"{round(value, DECIMALS) + 0.0:.{DECIMALS}f}" for value in pair)])
    return out.getvalue()
