"""The form sheet of a walk with an apron: what a crew asks of it that only the pages told, each table whole."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring import answering
from bowstring.faces.paper_forms import forms_sides
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from form_jobs import CROSSED, JOBS, METRIC


def sides(job: dict[str, Any]) -> list[str]:
    return re.findall(r"<section.*?</section>", forms_sides(answering(job), "May 31"), re.DOTALL)  # type: ignore[arg-type]


def text_of(html: str) -> str:
    words = re.sub(r'<span class="n">([^<]*)</span>', r"\1", html)
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", words)).split())


def test_the_front_has_form_stakes_splices_hubs_and_dig_lines_as_the_build_has_them() -> None:
    answer = answering(CROSSED)  # type: ignore[arg-type]
    made = sides(CROSSED)
    front = text_of(made[0])
    assert len(made) == 2 and answer["boards"] and "edges" in answer["boards"]
    for edge in answer["boards"]["edges"]:  # type: ignore[typeddict-item]
        assert (
            f"every {edge['gap_shown']}; splices at {', '.join(one['along_shown'] for one in edge['splices'])}."
            in front
        )
    # by hand: 4' 6" of slab and 1-1/2" of board; the dig is 1' 0" past each edge; a hub stands on the next whole foot
    assert "form stakes 4' 7-1/2\" outside of yours" in front and 'form stakes 1-1/2" inside of yours' in front
    assert "past each edge: 5' 6\" outside and 1' 0\" inside of your stakes" in front
    assert "Hubs first: 2' 0\" stake to hub, toward the center." in front
    assert '8" under the tops, 10" in the apron, inside the forms' in front
    assert "52 form stakes, plus one a kicker" in front and "Outer form stakes" not in front


def test_the_back_says_at_each_stake_how_deep_the_base_must_be() -> None:
    """By hand: the apron runs from 12 to 24.5 ft of the outer form's 41.27; X3 stands at 5/16 of it, 12.90, X5 at 9/16,
    23.22, and R3 at 10/16, 25.80."""
    answer = answering(CROSSED)  # type: ignore[arg-type]
    back = text_of(sides(CROSSED)[1])
    rows = {row["name"]: row for row in answer["grades"]["rows"] if row["kind"] == "stake"}  # type: ignore[index,typeddict-item]
    for name, row in rows.items():
        must = '6"' if name in ("X3", "R2", "X4", "M", "X5") else '4"'
        assert row["base"] == must, name
        last = row["inside"]
        assert f"{last['shown']} {last['rod']} {must}" in back, name
    bare = {key: one for key, one in CROSSED["slab"].items() if key == "base"}
    without = answering({**CROSSED, "slab": bare})["grades"]  # type: ignore[arg-type]
    assert without and {row["base"] for row in without["rows"]} == {""}  # type: ignore[typeddict-item]


@pytest.mark.parametrize("job", [CROSSED, JOBS["fifteen stakes"], METRIC], ids=["apron", "walk", "meters"])
def test_every_table_of_the_front_stands_whole(job: dict[str, Any]) -> None:
    front = sides(job)[0]
    titles = re.findall(r"<h3>(.*?)</h3>", front)
    assert titles and len(titles) == len(set(titles))
    joints = next(
        table for title, table in re.findall(r"<h3>(.*?)</h3>(<table>.*?</table>)", front) if "Joints" in title
    )
    assert "square off" not in joints and "Turn over" in front


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_language_tells_the_same(language: str) -> None:
    speak(language)
    try:
        front = text_of(sides(CROSSED)[0])
        told = ("2' 9\"", "2' 5-3/4\"", "13' 11-3/4\"", "24' 0-3/8\"", "5' 6\"", "2' 0\"", '10"', "52 ")
        assert all(shown in front for shown in told)
    finally:
        speak("english")
