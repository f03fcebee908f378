"""The worst miss of a stake reads alike wherever it is told, and never as less than it is."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring.demo import DEMO
from bowstring.faces.conclusions import conclusion
from bowstring.units.tape import make_tape
from bowstring.units.worst import worst_shown
from helping import answer_to

INCH = 0.0254


@pytest.mark.parametrize(("unit", "mark", "metres", "text"), [
    ("ft-in", "1/8 in", 0.30 * INCH, "3/8 in"),
    ("ft-in", "1/8 in", 0.25 * INCH, "1/4 in"),
    ("ft-in", "1/8 in", 0.2501 * INCH, "3/8 in"),
    ("ft-in", "1/16 in", 0.01 * INCH, "1/16 in"),
    ("mm", "5 mm", 0.0052, "10 mm"),
])  # fmt: skip
def test_it_is_the_first_mark_that_is_no_less(unit: str, mark: str, metres: float, text: str) -> None:
    assert worst_shown(make_tape(unit, mark), metres) == text


@pytest.mark.parametrize("hundredths", range(1, 60))
def test_it_reads_as_over_its_limit_where_it_is_and_nowhere_else(hundredths: int) -> None:
    """Read back from the text, for limits on a mark and off it."""
    tape, miss = make_tape("ft-in", "1/8 in"), hundredths / 100 * INCH
    for limit in (0.25 * INCH, 0.3 * INCH, 0.4 * INCH):
        text = worst_shown(tape, miss, limit).removesuffix(" in")
        whole, _, part = text.rpartition("-") if "/" in text else (text, "", "")
        read = float(whole or 0) + (float(part.split("/")[0]) / float(part.split("/")[1]) if part else 0.0)
        assert (read * INCH > limit + 1e-9) == (miss > limit + 1e-9), (text, limit)


@pytest.mark.parametrize("more", [{}, {"driven": "pin"}, {"mark": "1/8 in"}, {"unit": "m", "mark": "0.005 m"}])
def test_the_answer_its_advice_and_the_fold_of_why_say_one_number(more: dict[str, Any]) -> None:
    answer = answer_to({**DEMO, **more})
    own = next(row for row in answer["methods"] if row["method"] == answer["method"])
    accuracy = answer["accuracy"]
    shown = own["miss_95_shown"]
    assert any(line.startswith("The stake that") and f"within {shown} of" in line for line in accuracy["lines"])
    head = conclusion(answer, "accuracy")
    assert head is not None and f"{shown} off" in head.text
    if own["expected"] == accuracy["miss_95"] and answer["advice"]["method"] == answer["method"]:
        assert f"its worst stake is within {shown}" in answer["advice"]["text"]
    if "expect the worst" in accuracy["lines"][0]:
        assert accuracy["lines"][0].partition("about ")[2] == f"{shown} off."
