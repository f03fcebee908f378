"""The two tables of stakes as values, read back as another program does: for people and for an instrument."""

from __future__ import annotations

import csv
import io
from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.instrument import instrument_csv
from helping import answer_to
from paper_jobs import JOBS

NEAR = 1e-6  # metres
METRES = {"ft": 0.3048, "m": 1.0}
FREE: dict[str, dict[str, Any]] = {
    name: {**JOBS[name]} for name in ("halving", "ordinates", "two tapes", "two tapes from pins", "hubs off one end")
}


def read(text: str) -> tuple[list[str], dict[str, list[float]]]:
    head, *rows = csv.reader(io.StringIO(text))
    return head, {name: [float(cell) for cell in cells] for name, *cells in rows}


@pytest.mark.parametrize("name", FREE)
@pytest.mark.parametrize("order", ["n-e", "x-y"])
def test_an_instrument_s_table_reads_back(name: str, order: str) -> None:
    answer = answer_to(FREE[name])
    head, rows = read(instrument_csv(answer, order))  # type: ignore[arg-type]
    unit = "ft" if answer["unit"] in ("ft", "ft-in") else "m"
    assert head == ["name", *(f"{axis} {unit}" for axis in (("y", "x") if order == "n-e" else ("x", "y")))]
    assert list(rows) == [stake["name"] for stake in answer["stakes"]]
    hand = {"left": 1, "right": -1}[answer["side"]]
    for stake in answer["stakes"]:
        x, y = rows[stake["name"]] if order == "x-y" else reversed(rows[stake["name"]])
        assert x * METRES[unit] == pytest.approx(stake["x"], abs=NEAR)
        assert y * METRES[unit] == pytest.approx(hand * stake["y"], abs=NEAR)


def controlled(side: str, axes: str) -> dict[str, Any]:
    far = 38.16  # feet between the two marks of the drawing
    marks = [{"mark": "A", "n": 1250300.25, "e": 880104.1}, {"mark": "B", "n": 1250300.25 + 30, "e": 880104.1 + 23.584}]
    assert pytest.approx(far, abs=0.01) == (30**2 + 23.584**2) ** 0.5
    if axes == "x-y":
        marks = [{"mark": mark["mark"], "x": mark["e"], "y": mark["n"]} for mark in marks]
    return {**JOBS["halving"], "unit": "ft", "arc": {"chord": 38.16, "sagitta": 5.25}, "mark": "0.01 ft", "ties": {},
            "side": side, "control": {"marks": marks, "axes": axes}}  # fmt: skip


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("axes", ["n-e", "x-y"])
def test_the_drawing_s_own_coordinates_are_used_in_either_order(side: str, axes: str) -> None:
    answer = answer_to(controlled(side, axes))
    assert answer["site"]["axes"] == axes
    head, northing_first = read(instrument_csv(answer, "n-e"))  # type: ignore[arg-type]
    assert head[1:] == ["northing ft", "easting ft"], "only the drawing has a north"
    _, x_first = read(instrument_csv(answer, "x-y"))  # type: ignore[arg-type]
    assert northing_first["A"] == pytest.approx([1250300.25, 880104.1], abs=NEAR)
    for stake in answer["stakes"]:
        north, east = stake["drawing"] if axes == "n-e" else reversed(stake["drawing"])
        assert [one * 0.3048 for one in northing_first[stake["name"]]] == pytest.approx([north, east], abs=NEAR)
        assert x_first[stake["name"]] == list(reversed(northing_first[stake["name"]]))
    # Seen from A toward B the middle stake is on its hand.
    (na, ea), (nb, eb), (nm, em) = (northing_first[name] for name in ("A", "B", "M"))
    left = (eb - ea) * (nm - na) - (nb - na) * (em - ea) > 0
    assert left == (side == "left")


@pytest.mark.parametrize("name", [*FREE, "the example"])
def test_the_table_for_people_reads_back(name: str) -> None:
    answer = answer_to(DEMO if name == "the example" else FREE[name])  # type: ignore[arg-type]
    head, *rows = csv.reader(io.StringIO(stakes_csv(answer)))  # type: ignore[arg-type]
    unit = "ft" if answer["unit"] in ("ft", "ft-in") else "m"
    y = f"square off it, {answer['side']} ({unit})"
    assert head[1:4] == [f"along the arc from A ({unit})", f"along the string A to B ({unit})", y]
    for stake, row in zip(answer["stakes"], rows, strict=True):
        assert row[0] == stake["name"]
        figures = [float(cell) * METRES[unit] for cell in row[1:4]]
        assert figures == pytest.approx([stake["along"], stake["x"], stake["y"]], abs=NEAR)


def test_no_instrument_gets_the_stakes_of_a_stopped_job() -> None:
    for job in (JOBS["no hand, no line, a wall"], {**DEMO, "side": None}):
        said = {key: value for key, value in job.items() if value is not None}
        with pytest.raises(ValueError, match="stopped"):
            instrument_csv(answer_to(said), "x-y")  # type: ignore[arg-type]


def test_an_order_that_nobody_offers_is_refused() -> None:
    with pytest.raises(ValueError, match="no such order"):
        instrument_csv(answer_to(FREE["halving"]), "e-n")  # type: ignore[arg-type]
