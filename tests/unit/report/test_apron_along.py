"""An apron that is given along the drawing's line, not along the outer form: where it is then, and how it is told."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring import answering
from bowstring.faces.paper_forms import forms_sides
from bowstring.page.fields import fields_of_job, job_of_fields

INNER: dict[str, Any] = {
    "bowstring": 1, "arc": {"radius": "72 ft 6 in", "chord": "44 ft 9 in"}, "side": "left", "drawn_to": "face",
    "mark": "1/16 in", "ends": {"A": "post", "B": "pier"}, "width": "5 ft", "edge": "inside",
    "slab": {"thickness": "4 in", "apron": {"from": "17 ft", "to": "31 ft", "thickness": "6 in", "along": "line"}},
}  # fmt: skip
"""A walk outside of its line, with a driveway that crosses at 17 and 31 ft of that line."""


def _marked(width: str, along: bool = True) -> list[float]:
    apron = {name: value for name, value in INNER["slab"]["apron"].items() if along or name != "along"}
    part = answering({**INNER, "width": width, "slab": {**INNER["slab"], "apron": apron}})["pour"]
    assert part is not None
    return part["deep"]["apron_ends"]


@pytest.mark.parametrize("feet", [5, 6])
def test_an_apron_along_the_line_stays_where_it_is_on_the_ground(feet: int) -> None:
    """By hand: the outer form's radius is 72.5 + w, so that 17 and 31 ft of the line are (72.5 + w) / 72.5 as long on
    it (arcs of one angle are as their radii)."""
    longer = (72.5 + feet) / 72.5
    assert [at / 0.3048 for at in _marked(f"{feet} ft")] == pytest.approx([17 * longer, 31 * longer])
    assert [at / 0.3048 for at in _marked(f"{feet} ft", along=False)] == pytest.approx([17, 31])  # jobs of before


def test_an_apron_is_told_on_both_forms_with_the_line_that_it_is_given_along() -> None:
    """17 ft of 72.5 is 18 ft 2-1/16 in of 77.5, 31 ft is 33 ft 1-21/32 in."""
    answer = answering(INNER)
    pour, cards = answer["pour"], {card["kind"]: card for card in answer["form_cards"]}
    assert pour is not None
    told = " ".join(pour["deep"]["apron"])
    assert "18' 2-1/16\" to 33' 1-5/8\" on the outer form, 17' 0\" to 31' 0\" on the inner" in told
    assert "Given along the drawing's line: 17' 0\" to 31' 0\"" in told
    assert "On the inner form: from 17' 0\" to 31' 0\"." in cards["form_base"]["notes"]
    old = {**INNER["slab"], "apron": {**INNER["slab"]["apron"]}}
    del old["apron"]["along"]
    before = answering({**INNER, "slab": old})["pour"]
    assert before is not None and "Given along the outer form" in " ".join(before["deep"]["apron"])


def test_an_apron_past_the_lines_end_is_refused() -> None:
    slab = {**INNER["slab"], "apron": {**INNER["slab"]["apron"], "to": "60 ft"}}
    row = {row["key"]: row for row in answering({**INNER, "slab": slab})["build"]}["pour"]
    assert row["text"] == "No order: the apron runs past B"


def test_the_form_keeps_which_line_and_an_older_job_stays_along_the_outer_form() -> None:
    fields = fields_of_job(INNER)
    assert fields["slab-apron-along"] == "line"
    assert job_of_fields(fields)["slab"]["apron"] == INNER["slab"]["apron"]
    del fields["slab-apron-along"]
    assert "along" not in job_of_fields(fields)["slab"]["apron"]
    assert "slab" not in job_of_fields({"arc-radius": "62 ft", "arc-chord": "48 ft", "slab-apron-along": "line"})


@pytest.mark.parametrize("width", ["5 ft", "6 ft"])
def test_panels_too_short_for_their_width_are_told_what_cures_them(width: str) -> None:
    """At 5 ft wide all is right. At 6 ft the first 17 ft of outer form are 4 panels of 4.25 ft, 4.25 * 72.5 / 78.5 =
    3.925 ft inside: 6 / 3.925 = 1.53, over the 1.5 of ACI 302.1R, as it is quoted. Three of 5.67 ft are right."""
    slab = {**INNER["slab"], "apron": {"from": "17 ft", "to": "31 ft", "thickness": "6 in"}}
    joints = answering({**INNER, "width": width, "slab": slab, "joints": {"every": "5 ft"}})["joints"]  # type: ignore[arg-type]
    assert joints is not None
    if width == "5 ft":
        assert joints["warned"] == "" and joints["ratio"] <= 1.5
        return
    assert joints["warned"].startswith("Panels 1 to 4 are 1.53 to 1, over 1.5: too short for the width.")
    assert joints["warned"] in joints["lines"] and "too near" not in " ".join(joints["lines"])
    count = int(joints["warned"].split(". ")[1].split()[0])
    cured = answering({**INNER, "width": width, "slab": slab, "joints": {"panels": count}})["joints"]  # type: ignore[arg-type]
    assert cured is not None and cured["ratio"] <= 1.5 and cured["warned"] == ""
    answer = answering({**INNER, "width": width, "slab": slab, "joints": {"every": "5 ft"}})  # type: ignore[arg-type]
    paper = " ".join(unescape(re.sub("<[^>]+>", " ", forms_sides(answer, ""))).split())
    assert joints["warned"].replace(" ", "") in paper.replace(" ", "")
