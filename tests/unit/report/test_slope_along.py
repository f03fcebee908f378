"""Along what a slope runs: a slab's middle unless a job says the drawing's line; told, and carried everywhere."""

from __future__ import annotations

from itertools import pairwise
from math import asin, cos, hypot, radians, sin
from typing import Any

import pytest

from bowstring import BadJob, answer, read_link, write_link
from bowstring.forming.line.tops import LineGrade
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.report.alone import grades_of
from bowstring.sheet.text import sheet_text
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from slab_jobs import WALK
from unit.forming.test_line_tops import creek

BANK: dict[str, Any] = {
    "bowstring": 1, "width": "6 ft", "edge": "left", "drawn_to": "face", "station": "2+40",
    "line": [{"straight": "14 ft"}, {"arc": {"radius": "30 ft", "arc_length": "22 ft"}, "turn": "right"},
             {"straight": "8 ft"}, {"arc": {"radius": "45 ft", "central_angle": "35"}, "turn": "left"},
             {"arc": {"radius": "25 ft", "chord": "12 ft"}, "turn": "right"}, {"straight": "10 ft"}],
    "slab": {"thickness": "4 in"},
    "grade": {"from": "98.20 ft", "slope": 1.2, "high": "A", "cross": 2, "low": "right"},
}  # fmt: skip
ALONG = {**BANK, "grade": {**BANK["grade"], "along": "line"}}


def page(job: dict[str, Any]) -> Any:
    return next(one for one in answer_to(job)["lined"]["pages"] if one["key"] == "grades")


def table(job: dict[str, Any], key: str) -> list[list[str]]:
    return next(one["rows"] for one in page(job)["tables"] if one["key"] == key)


def stations() -> list[float]:
    """Feet along the drawn line, each arc's middle between its ends, by an arc's own arithmetic."""
    lengths = [14.0, 22.0, 8.0, 45 * radians(35), 2 * 25 * asin(6 / 25), 10.0]
    found = [0.0]
    for length, bends in zip(lengths, (False, True, False, True, True, False), strict=True):
        last = found[-1]
        found += [last + length / 2, last + length] if bends else [last + length]
    return found


def test_along_the_line_a_stations_top_is_the_profiles() -> None:
    """The left form is the drawing's line: its top is 98.20 less 1.2 % of the station, as a profile has it."""
    rows = table(ALONG, "elevations")
    for (_at, left, right), station in zip(rows, stations(), strict=True):
        assert float(left) == pytest.approx(98.20 - 0.012 * station, abs=0.0051)
        assert float(right) == pytest.approx(98.20 - 0.012 * station - 0.12, abs=0.0051)
    slopes = {row[0]: row[1:] for row in table(ALONG, "slopes")}
    assert slopes["Arc 2"] == ["1.2%", f"{1.2 * 30 / 24:g}%"] and slopes["Arc 4"][0] == "1.2%"


def test_by_itself_it_runs_along_the_middle() -> None:
    """3 ft right of the line: R 27, 48 and 22, so that the left form on arc 2 falls 1.2 % of 27/30 of its length."""
    middle = [14.0, 22 * 27 / 30, 8.0, 48 * radians(35), 2 * 22 * asin(6 / 25), 10.0]
    rows = table(BANK, "elevations")
    assert float(rows[-1][1]) == pytest.approx(98.20 - 0.012 * sum(middle), abs=0.0051)
    assert table(BANK, "slopes")[1][1:] == [f"{1.2 * 27 / 30:.2f}%", f"{1.2 * 27 / 24:g}%"]
    assert rows != table(ALONG, "elevations")


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_sheet_and_paper_say_along_what(language: str) -> None:
    speak(language)
    try:
        said = ("medio", "borde izquierdo") if language == "spanish" else ("middle", "left edge")
        for job, one in zip((BANK, ALONG), said, strict=True):
            told = answer(job)
            paper = next(part for part in told["lined_sheet"]["parts"] if part["key"] == "grades")  # type: ignore[index]
            tops = next(card for card in told["form_cards"] if card["kind"] == "form_tops")
            for texts in (paper["lines"], tops["notes"], sheet_text(told).replace("\n", " ").split(".  ")):
                assert any(one in text and ("1.2%" in text or "1.2 %" in text) for text in texts), (job, texts)
    finally:
        speak("english")


def test_a_centerline_is_the_middle_whatever_is_said() -> None:
    """Mitered edges of equal widths are as long, on the mean, as the line between them."""
    grade = LineGrade(creek(), 0.0, 0.02, 0.0)
    assert LineGrade(creek(), 0.0, 0.02, 0.0, on_line=True).paces == pytest.approx(grade.paces)
    job = {**BANK, "edge": "centre", "drawn_to": "centre"}
    both = [page({**job, "grade": grade}) for grade in (BANK["grade"], ALONG["grade"])]
    assert both[0] == both[1]


def test_tops_at_both_ends_give_the_lines_own_slope() -> None:
    told = page({**BANK, "grade": {"from": "98.20 ft", "to": "97.08 ft", "along": "line", "cross": 2, "low": "right"}})
    slope = 100 * 1.12 / stations()[-1]
    assert any(f"{slope:.2f}".rstrip("0") in line and "left edge" in line for line in told["lines"])


@pytest.mark.parametrize(("edge", "radius"), [("outside", 62.0), ("inside", 62.0)])
def test_one_arcs_line_climbs_by_its_own_length(edge: str, radius: float) -> None:
    """Walked in a thousand chords: what the drawn line climbs over what it is long."""
    job = {**WALK, "edge": edge, "grade": {"slope": 2, "high": "B", "low": "inside", "along": "line"}}
    told = grades_of(answer_to(job))
    assert told is not None
    length, half = 0.0, asin(24 / radius)
    spots = [half * (2 * step / 1000 - 1) for step in range(1001)]
    for one, other in pairwise(spots):
        length += hypot(radius * (sin(other) - sin(one)), radius * (cos(other) - cos(one)))
    last = next(row for row in told["rows"] if row["name"] == "B")
    first = next(row for row in told["rows"] if row["name"] == "A")
    climbed = last[edge]["level"] - first[edge]["level"]  # type: ignore[literal-required]
    assert climbed == pytest.approx(0.02 * length * 0.3048, rel=1e-5)
    assert next(one["slope"] for one in told["slopes"] if one["line"] == edge) == pytest.approx(0.02)
    assert any("drawing's line" in note for note in told["notes"])


def test_it_comes_back_from_fields_and_a_link_and_no_filled_slab_takes_it() -> None:
    fields = fields_of_job(ALONG)
    assert fields["grade-along"] == "line" and job_of_fields(fields)["grade"]["along"] == "line"
    assert read_link(write_link(ALONG))["grade"]["along"] == "line"  # type: ignore[arg-type]
    alone = {name: text for name, text in fields.items() if name not in ("grade-slope", "grade-to")}
    assert "along" not in job_of_fields(alone)["grade"]  # a line that no slope runs along says nothing
    filled = {key: value for key, value in WALK.items() if key not in ("width", "edge")}
    with pytest.raises(BadJob) as refused:
        answer({**filled, "slab": {"fills": True}, "grade": {"slope": 1, "high": "A", "along": "line"}})  # type: ignore[typeddict-item]
    assert refused.value.field == "grade.along"
    with pytest.raises(BadJob):
        answer({**BANK, "grade": {**BANK["grade"], "along": "middle"}})  # type: ignore[typeddict-item]
