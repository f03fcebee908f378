"""Each card of every method, in Spanish and in British English, is whole on a phone without scrolling.

In American English the page itself is led through them; here each is laid into one page, which is much quicker.
"""

from __future__ import annotations

import pytest
from playwright.sync_api import Page

from bowstring import answering
from bowstring.faces.stakes import stakes_html
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES, TAGS
from card_jobs import EVERYDAY, job
from page_acting import look_at, wait_for
from whole_card import torn


def cards_of(language: str, method: str) -> list[str]:
    """The cards of a job by a method, as a language says them."""
    speak(language)
    try:
        told = answering(job(method))
        return [stakes_html(told, card["number"]) for card in told["cards"]]
    finally:
        speak(LANGUAGES[0])


@pytest.mark.parametrize("language", ["spanish", "british"])
def test_each_card_is_whole_without_scrolling(spanish: Page, language: str) -> None:
    look_at(spanish, "stakes")
    wait_for(spanish, "computed")
    spanish.evaluate("tag => (document.documentElement.lang = tag)", TAGS[language])
    found = {method: torn(spanish, cards_of(language, method)) for method in EVERYDAY}
    spanish.evaluate("tag => (document.documentElement.lang = tag)", TAGS["spanish"])
    assert {method: cards for method, cards in found.items() if cards} == {}
