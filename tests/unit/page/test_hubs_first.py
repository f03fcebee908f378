"""The card of a line's dig asks for the hubs of the other arcs until each arc's card of them is done."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.faces.passes import layout_cards
from bowstring.page.answering import LastAnswer
from bowstring.page.facing import shown_face
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.pieces import bare_arcs, staked_at
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from line_jobs import SHAPES
from lined_jobs import CREEK, FIVE, ONE_ARC


def face(fields: dict[str, str], card: int) -> dict[str, Any]:
    asked = {"fields": fields, "face": "stakes", "card": card, "panel": "", "address": "https://example.org/"}
    return dict(shown_face(asked, LastAnswer()))  # type: ignore[arg-type]


def cards(fields: dict[str, str]) -> tuple[int, int]:
    """The running numbers of the hubs' card and of the dig's."""
    first = len(layout_cards(answer_to(job_of_fields(fields))))  # type: ignore[arg-type]
    return first + 1, first + 2


def main(html: str) -> str:
    """What the filled button at the thumb does."""
    (button,) = re.findall(r'<button type="button" class="btn first" ([^>]+)>', html)
    return str(button)


def hubs_done(fields: dict[str, str]) -> dict[str, str]:
    """The fields with the hubs of the arc that is staked done, as the page keeps them."""
    hubs, _dig = cards(fields)
    mark = face(fields, hubs)["marks"][str(hubs)]
    return {**fields, "done": f"{fields.get('done', '')} {mark}".strip()}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_dig_waits_until_each_arc_has_its_hubs(language: str) -> None:
    speak(language)
    try:
        fields = hubs_done(fields_of_job({**FIVE, "at": 2}))  # type: ignore[typeddict-item]
        html = face(fields, cards(fields)[1])["html"]
        assert main(html) == 'data-do="line-at" data-at="4"' and 'data-do="done"' in html
        asked = say("forming.hubs_bare", arcs="").split(":")[0].replace("~", "")
        assert asked in re.sub(r"<[^>]+>", "", html)
        other = hubs_done(staked_at(fields, 4))
        for one in (other, staked_at(other, 2)):
            html = face(one, cards(one)[1])["html"]
            assert main(html).startswith('data-do="done"') and asked not in re.sub(r"<[^>]+>", "", html)
    finally:
        speak("english")


def test_the_staked_arc_is_asked_for_its_own_hubs_last() -> None:
    fields = fields_of_job({**FIVE, "at": 2})  # type: ignore[typeddict-item]
    words = re.sub(r"<[^>]+>", "", face(fields, cards(fields)[1])["html"])
    assert "not ticked off yet: Arc 4, Arc 2." in words
    fields = staked_at(hubs_done(fields), 4)
    html = face(fields, cards(fields)[1])["html"]
    assert "not ticked off yet: Arc 4." in re.sub(r"<[^>]+>", "", html)
    assert main(html).startswith('data-do="done"')


def test_a_dig_that_is_done_asks_no_more() -> None:
    fields = hubs_done(fields_of_job(FIVE))  # type: ignore[arg-type]
    dig = cards(fields)[1]
    fields["done"] += f" {face(fields, dig)['marks'][str(dig)]}"
    assert "line-at" not in face(fields, dig)["html"]


def test_where_no_other_arc_takes_hubs_nothing_is_asked() -> None:
    clear = {**CREEK, "offset": "5 ft", "toward": "outside"}
    for job, back in ((ONE_ARC, 0), (clear, 1)):
        fields = fields_of_job(job)  # type: ignore[arg-type]
        html = face(fields, cards(fields)[1] - back)["html"]
        assert 'data-kind="form_dig"' in html and "line-at" not in html


def test_arcs_before_and_after_the_staked_one_are_counted_along_the_line() -> None:
    fields = fields_of_job({**SHAPES["serpentine"], "at": 5})  # type: ignore[typeddict-item]
    assert bare_arcs(fields) == [1, 3, 7, 9]
    done = hubs_done(staked_at(fields, 3))
    assert bare_arcs(staked_at(done, 5)) == [1, 7, 9]
