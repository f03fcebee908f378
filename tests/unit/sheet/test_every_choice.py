"""Whatever can be chosen in a job, its sheet can be made, in text and as a page."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.job.job import DRAWN_TO, DRIVEN
from bowstring.page.rows import METHOD_FIELDS
from bowstring.sheet.csv import stakes_csv
from bowstring.sheet.html import sheet_html
from bowstring.sheet.text import sheet_text
from helping import answer_to

PLAIN: dict[str, Any] = {
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""},
    "side": "left",
    "drawn_to": "face",
    "levels": 2,
}
CHOICES: dict[str, dict[str, Any]] = {
    **{f"drawn to {line}": {"drawn_to": line} for line in DRAWN_TO},
    **{f"driven {what}": {"driven": what} for what in DRIVEN},
    **{f"driven {what} off the line": {"driven": what, "offset": "2 ft", "toward": "outside"} for what in DRIVEN},
    **{f"method {name or 'unsaid'}": {"method": name, "centre": "reachable"} for name in METHOD_FIELDS[0][3] if name},
    "one end": {"start": "one-end", "turn": "right", "side": None},
    "corner": {"start": "corner"},
    "neither": {"start": "neither"},
    "a string behind": {"method": "ordinates", "parallel": "-3 ft"},
    "a string beyond": {"method": "ordinates", "parallel": "8 ft"},
    "a string through": {"method": "ordinates", "parallel": "2 ft"},
    **{f"in {unit}": {"unit": unit} for unit in ("ft", "m", "mm")},
}  # fmt: skip


@pytest.mark.parametrize("name", CHOICES)
def test_it_has_its_sheet(name: str) -> None:
    job = {key: value for key, value in {**PLAIN, **CHOICES[name]}.items() if value is not None}
    told = answer_to(job)
    # A line that isn't known is to be settled first: until then there is no layout to glance at.
    head, other = ("LAYOUT AT A GLANCE", "STOP: ")
    if CHOICES[name].get("drawn_to") == "unsure":
        head, other = other, head
    assert head in sheet_text(told) and other not in sheet_text(told)
    assert "<h" in sheet_html(told) and stakes_csv(told).count("\n") > len(told["stakes"])
