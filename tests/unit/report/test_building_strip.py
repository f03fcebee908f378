"""The isolation strip at a building, where a thick edge runs down both sides to it: two depths, told everywhere."""

from __future__ import annotations

import re
from html import unescape
from math import asin, cos, sin, sqrt
from typing import Any

import pytest

from bowstring import answering
from bowstring.faces.paper_forms import forms_sides
from bowstring.words import speak
from helping import answer_to

PAD: dict[str, Any] = {
    "arc": {"sagitta": "3 ft", "chord": "16 ft"}, "ends": {"A": "nail 1", "B": "nail 2"}, "side": "left",
    "drawn_to": "face", "board": {"level": "clear"},
    "slab": {"fills": True, "sides": "10 ft", "back": "against", "thickness": "5 in", "base": "6 in",
             "edge_width": "12 in", "edge_depth": "12 in"},
    "grade": {"from": "100.00 ft", "slope": 0, "cross": 1.5, "low": "outside"},
}  # fmt: skip
ENDS = '5" deep, 1\' 0" deep for 1\' 0" at A-2 and at B-2'


def told(**slab: str | None) -> list[str]:
    """The strip on the page and the paper, on the card, on the buy list, and as it is signed off."""
    answer = answering({**PAD, "slab": {key: one for key, one in {**PAD["slab"], **slab}.items() if one is not None}})
    paper = unescape(re.sub("<[^>]+>", "", forms_sides(answer, ""))).replace("\xa0", " ")
    assert answer["edges"] is not None and answer["boards"] is not None
    card = next(card for card in answer["form_cards"] if card["kind"] == "form_pour")
    page = next(text for text in answer["edges"]["sides_how"] if "Isolation" in text).replace("*", "")
    assert page in paper and f"A-2 to B-2{answer['edges']['strip_shown']}" in paper
    return [page, card["notes"][0], answer["boards"]["cut_note"].replace("*", ""), answer["edges"]["strip_shown"]]


def test_the_edge_down_both_sides_makes_the_strip_deeper_for_its_width_at_each_end() -> None:
    page, card, buy, signed = told(edge_along="sides")
    assert page == f'Isolation strip along the building: 1/2" thick, 16\' 0" long, {ENDS}.'
    assert card == f'Isolation strip at the building: 1/2", {ENDS}.'
    assert f'16\' 0" of 1/2", {ENDS}.' in buy and signed == '1/2"; 5", ends 1\' 0"'


@pytest.mark.parametrize(("slab", "deep"), [
    ({"edge_along": "all"}, "1' 0\""), ({}, "1' 0\""), ({"edge_along": "curve"}, '5"'),
    ({"edge_along": "sides", "edge_width": "8 ft"}, "1' 0\""), ({"edge_width": None, "edge_depth": None}, '5"'),
])  # fmt: skip
def test_elsewhere_it_is_equally_deep(slab: dict[str, str | None], deep: str) -> None:
    """All round the edge runs along the building; 8 ft wide, from both sides, it leaves nothing of 16 ft."""
    page, card, buy, signed = told(**slab)
    assert page.endswith(f"long, {deep} deep.") and card.endswith(f'1/2", {deep} deep.')
    assert buy.endswith(f"{deep} deep.") and signed == f'1/2"; {deep}'


def test_a_band_that_the_curve_leaves_behind_short_sides_is_longer_at_each_end() -> None:
    """R 12 ft 2 in; with sides of 2 ft, less 1/2 in, and a band of 5 ft the arc of 7 ft 2 in is met 7.208 ft over its
    center, so over its top: all of it is thick. With 4 ft, of 8.167 ft, ±√(8.167² - 7.208²) are left, 3.84 ft."""
    radius = (8**2 + 3**2) / (2 * 3)
    over = radius * cos(asin(8 / radius)) - (2 - 1 / 24)
    left = sqrt((radius - 4) ** 2 - over**2)
    assert radius - 5 < over < radius - 4 and sin(asin(left / (radius - 4))) < 1
    inches = round((8 - left) * 12 * 8) / 8
    page, *_rest = told(edge_along="sides", sides="2 ft", edge_width="4 ft")
    shown = f"{int(inches // 12)}' {int(inches % 12)}"
    assert f'5" deep, 1\' 0" deep for {shown}' in page
    assert told(edge_along="sides", sides="2 ft", edge_width="5 ft")[0].endswith("1' 0\" deep.")


def test_where_nobody_says_how_thick_the_slab_is_it_is_as_deep_as_the_concrete_in_each_language() -> None:
    open_job: dict[str, Any] = {**PAD, "slab": {"fills": True, "sides": "10 ft", "back": "against"}}
    try:
        for language, word in (("spanish", "tan honda como el concreto."), ("english", "as deep as the concrete.")):
            speak(language)
            edges = answer_to(open_job)["edges"]
            assert edges is not None and any(text.endswith(word) for text in edges["sides_how"])
    finally:
        speak("english")
