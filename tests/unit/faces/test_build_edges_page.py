"""The build's page of both edges: what stands on it, in which order, in every language."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring import answering
from bowstring.drawings.widthstick import width_stick_svg
from bowstring.faces.build_edges import MOST, page_html, strong
from bowstring.sheet.build_edges import edges
from bowstring.sheet.text import sheet_text
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_reader import Read

WALK: dict[str, Any] = {
    "bowstring": 1, "arc": {"radius": "62 ft", "chord": "48 ft"}, "side": "left", "drawn_to": "face", "levels": 3,
    "method": "halving", "width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"},
}  # fmt: skip
SHED = {"name": "<shed>", "stops": "tape", "outline": [["20 ft", "-2 ft"], ["28 ft", "-2 ft"], ["28 ft", "-6 ft"]]}


def page(job: dict[str, Any]) -> str:
    return page_html(answering(job))  # type: ignore[arg-type]


def plain(html: str) -> str:
    return unescape(re.sub("<[^>]*>", "", html))


def in_order(html: str, *texts: str) -> bool:
    places = [html.find(text) for text in texts]
    return -1 not in places and places == sorted(places)


def test_the_page_begins_with_its_conclusion_then_the_lines_then_how() -> None:
    html = page(WALK)
    assert html.startswith("<h2")
    assert in_order(html, "57&#x27; 0&quot;", "Dig line, outside", "Two passes", "Width stick", "no center needed",
                    "Check: the diagonals", "off its own string", "Every line off your stakes")  # fmt: skip
    assert plain(html).count("R1 in") == 1 and "46&#x27; 3-1/2&quot;" in html


def test_what_is_dug_out_is_a_caution() -> None:
    clear = {**WALK, "offset": "4 ft", "toward": "outside", "driven": "hub"}
    assert 'class="care"' in page(WALK) and 'class="care"' not in page(clear)


def test_without_an_inner_edge_there_is_no_table() -> None:
    html = page({**WALK, "width": "62 ft"})
    assert "stopbox" in html and "<table" not in html and 'data-open="slab"' in html
    assert page({key: value for key, value in WALK.items() if key != "width"}) == ""


def test_a_string_that_cannot_be_up_has_no_numbers() -> None:
    html = page({**WALK, "ground": [SHED]})
    assert "is blocked by &lt;shed&gt;" in html and "<shed>" not in html
    assert "square off" not in html and "R1 in" not in plain(html)
    tapered = plain(page({**WALK, "ground": [SHED], "slab": {"end_width": "6 ft"}}))
    assert "R1 in" in tapered and "along, from" not in tapered


def test_the_stick_of_a_taper_is_told_by_the_slab_and_not_from_the_hubs() -> None:
    hubs = {**WALK, **CHANGES["hubs"], **CHANGES["taper"]}
    told = plain(page(hubs))
    assert "slab width" in told and "M in" in told
    rows = re.findall(r'<th scope="row">(M in|M <span class="n">.*?)</th>(.*?)</tr>', page(hubs))
    assert rows and all("6&#x27; 0&quot;" in row and "10&#x27; 0&quot;" not in row for _name, row in rows)
    halves = plain(page({**WALK, **CHANGES["taper"], "edge": "centre"}))
    assert "off its stake" in halves and "slab width" not in halves


def test_hundreds_of_marks_are_cut_and_said_to_be() -> None:
    html = page({**WALK, "levels": 8})
    assert f"The first {MOST} of 257" in html and html.count("<tr>") < 3 * MOST


def test_lengths_are_bold_and_nothing_else() -> None:
    assert strong("R1 in stands at Q1.") == "R1 in stands at Q1."
    assert strong("A in: 5' 0\" from A and 46' 3-1/2\" from B.") == "A in: *5' 0\"* from A and *46' 3-1/2\"* from B."


CHANGES: dict[str, dict[str, Any]] = {
    "walk": {},
    "center": {"edge": "centre"},
    "hubs": {"offset": "4 ft", "toward": "outside", "driven": "hub"},
    "taper": {"slab": {"end_width": "7 ft"}},
    "metric": {"unit": "m", "width": "1.5 m", "edge": "inside"},
    "steep": {"arc": {"radius": "10 ft", "central_angle": 250}},
    "tight": {"width": "60 ft"},
    "ordinates": {"method": "ordinates"},
}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("change", CHANGES)
def test_page_and_sheet_are_made_in_every_language(language: str, change: str) -> None:
    speak(language)
    answer = answering({**WALK, **CHANGES[change]})  # type: ignore[arg-type]
    part = answer["edges"]
    assert part is not None
    html, sheet = page_html(answer), sheet_text(answer)
    for shown in [line["chord_shown"] for line in part["lines"]]:
        assert shown in sheet
        assert shown.replace("'", "&#x27;").replace('"', "&quot;") in html
    assert "*" not in "".join(str(block) for block in edges(answer)) and "~" not in html


def test_a_sheet_without_an_inner_edge_says_stop() -> None:
    assert "!! No inner edge: too wide for R: 62' 0\" wide, R 62' 0\"." in sheet_text(
        answering({**WALK, "width": "62 ft"})  # type: ignore[arg-type]
    )


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("change", ["walk", "center", "metric"])
def test_the_stick_is_drawn_clear(language: str, change: str) -> None:
    speak(language)
    part = answering({**WALK, **CHANGES[change]})["edges"]  # type: ignore[arg-type]
    assert part is not None
    read = Read(width_stick_svg(part["stick"], id="stick"))
    assert_clear(read)
    assert [size for _name, size in part["stick"]["marks"]][:2] == [words.text for words in read.words()][:2]


def test_a_stick_with_a_mark_for_each_stake_is_not_drawn() -> None:
    part = answering({**WALK, **CHANGES["taper"]})["edges"]  # type: ignore[arg-type]
    assert part is not None
    with pytest.raises(ValueError, match="each stake"):
        width_stick_svg(part["stick"], id="stick")
