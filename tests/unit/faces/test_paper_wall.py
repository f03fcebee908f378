"""A wall's form sheet: its cut and fill, its footing's cut list, and joints only where somebody asked for them."""

from __future__ import annotations

import re
from html import unescape

import pytest

from bowstring import answering
from bowstring.drawings.slab import slab_svg
from bowstring.faces.paper_forms import forms_sides
from bowstring.report.alone import edges_of
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from form_jobs import HUBS, JOBS, SLOPING, WALK

PLAIN = {key: one for key, one in HUBS.items() if key != "joints"}
READ = [
    {"stake": "A", "edge": "outside", "level": "105 ft"},
    {"stake": "M", "edge": "inside", "level": "99.5 ft"},
    {"stake": "B", "edge": "inside", "level": "100 ft"},
]


def sides(job: dict[str, object]) -> list[str]:
    html = re.sub(r"<svg.*?</svg>", "", forms_sides(answering(job), "May 31"), flags=re.DOTALL)  # type: ignore[arg-type]
    found = re.findall(r"<section.*?</section>", html, re.DOTALL)
    return [" ".join(unescape(re.sub(r"<[^>]+>", " ", side)).split()) for side in found]


def digs(job: dict[str, object]) -> dict[str, list[str]]:
    """What is cut or filled at each stake, under the outer form and the inner one."""
    html = forms_sides(answering(job), "May 31")  # type: ignore[arg-type]
    heads = say("grades.digs"), say("walled.over_ground", form=say("forms.outer"))
    table = next(one for one in re.findall(r"<table.*?</table>", html, re.DOTALL) if any(text in one for text in heads))
    found = re.findall(r'<th scope="row">(.*?)</th>((?:<td>.*?</td>)+)', table)
    cells = {
        name: [unescape(re.sub(r"<[^>]+>", "", one)) for one in re.findall(r"<td>(.*?)</td>", made)]
        for name, made in found
    }
    width = 2 if say("forms.inner") in table else 1
    return {name: made[:width] for name, made in cells.items()}


@pytest.mark.parametrize("grade", ["level", "rises"])
def test_where_the_ground_was_measured_paper_has_the_cut_and_the_fill(grade: str) -> None:
    """By hand: the top is 104.50, the wall 3.5 ft and its footing 1 ft under it, so the dig's bottom is at 100.00: 5 ft
    under 105.00, 6 in over 99.50. A top that rises by 0.60 ft is 0.30 higher at M, and so is its dig."""
    asked = HUBS["grade"] if grade == "level" else SLOPING
    at_m, at_b = ('fill 6"', "on grade") if grade == "level" else ('fill 9-5/8"', 'fill 7-1/4"')
    assert digs({**HUBS, "grade": {**asked, "ground": READ}}) == {  # type: ignore[dict-item]
        "A": ["cut 5' 0\"; 105.00", ""], "M": ["", f"{at_m}; 99.50"], "B": ["", f"{at_b}; 100.00"],
    }  # fmt: skip
    assert "cut 5" not in sides({**HUBS, "grade": asked})[1]


def test_a_slabs_sheet_has_its_cut_and_fill_too() -> None:
    grade = {**WALK["grade"], "from": "104.50 ft", "to": "104.50 ft", "ground": READ[:1]}
    grade = {key: one for key, one in grade.items() if key not in ("slope", "high")}
    told = answering({**WALK, "grade": grade})["grades"]  # type: ignore[typeddict-item]
    assert told and "digs" in told and told["digs"]
    top = told["digs"][0]["outside"]  # type: ignore[typeddict-item]
    assert top and digs({**WALK, "grade": grade}) == {"A": [top["dig"]]}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_footings_cut_list_stands_on_the_front(language: str) -> None:
    speak(language)
    edges = edges_of(answering(PLAIN))  # type: ignore[arg-type]
    assert edges and edges["footing"] and len(edges["footing"]["cut"]) > 2
    front, _back = sides(PLAIN)
    assert say("forms.footing_cut", told="").rstrip(" .") in front
    for row in edges["footing"]["cut"]:
        assert row["name"] in front and row["boards"] in front


def test_joints_that_nobody_asked_of_a_wall_stand_nowhere_on_its_paper() -> None:
    for job in (PLAIN, {**PLAIN, "grade": SLOPING}):
        told = " ".join(sides(job))
        assert "joint" not in told.lower()
        assert "Tops at A, M, B as above" in told
    for job in (HUBS, {**HUBS, "grade": SLOPING}):
        front, back = sides(job)
        assert "Joints: each from A" in front and "Joints as drawn 3" in back and "every joint" in back


def test_the_drawing_has_no_joint_that_nobody_asked_for() -> None:
    asked, plain = (slab_svg(answering(job), id="plan") for job in (HUBS, PLAIN))  # type: ignore[arg-type]
    assert 'class="bd-line bd-cut"' in asked and 'class="bd-line bd-cut"' not in plain


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_joints_of_an_apron_are_signed_off_at_its_own_depth(language: str) -> None:
    """A quarter of the thickness: 1 in of 4, 1-1/2 in of the apron's 6 (ACI PRC-332 gives a quarter)."""
    speak(language)
    _front, back, *_more = sides(JOBS["an apron, and measured depths"])
    assert say("deep.sign_both", depth='1"', apron='1-1/2"').replace('"', "").replace(" ", "") in back.replace(
        '"', ""
    ).replace(" ", "")
    plain = sides(WALK)[1]
    assert '; 1"' in plain and say("deep.sign_both", depth="", apron="").strip(" ,") not in plain
