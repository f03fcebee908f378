"""Every handout on both papers, in each language and unit: exactly its pages, and blanks that a pencil has room in."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from bowstring.units.tape import make_tape
from bowstring.wall.handouts import CHALK, handout_html
from bowstring.wall.shape import Given
from bowstring.words import speak
from builder.house import ROOT

MILLIMETRE = 96 / 25.4
JOBS = (Given.own(), Given.own("m"), Given(288.0, 41.73, make_tape("ft-in", "1/16 in")))
NARROW = """() => [...document.querySelectorAll("#handout .asked .blank")]
  .map((one) => one.getBoundingClientRect()).map((box) => Math.min(box.width / 30, box.height / 7))"""
CUT = """() => [...document.querySelectorAll("#handout *")].filter((one) => !one.closest("svg"))
  .filter((one) => one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== "inline")
  .map((one) => one.textContent)"""


@pytest.fixture
def paper(chromium: Browser) -> Iterator[Page]:
    """A page as wide as the print on the narrower paper, with nothing on it but the handouts' look."""
    page = chromium.new_page(viewport={"width": round(182 * MILLIMETRE), "height": 1000})
    look = (ROOT / "site" / "wall.css").read_text(encoding="utf-8")
    page.set_content(f"<html data-handout><meta charset=utf-8><style>{look}</style><body><div id=handout></div>")
    yield page
    page.close()
    speak("english")


@pytest.mark.parametrize("language", ["english", "spanish"])  # the British words are hardly longer
def test_each_handout_has_its_pages_on_both_papers(paper: Page, language: str) -> None:
    speak(language)
    for given in JOBS:
        for number in range(1, CHALK + 1):
            put = "html => document.getElementById('handout').innerHTML = html"
            paper.evaluate(put, handout_html(number, given))
            for size in ("Letter", "A4"):
                pages = len(re.findall(rb"/Type\s*/Page\b", paper.pdf(format=size)))
                assert pages == (1 if number == CHALK else 2), (number, size, given)
            paper.emulate_media(media="print")
            widths = paper.evaluate(NARROW)
            assert all(part >= MILLIMETRE * 0.99 for part in widths) and bool(widths) == (number != CHALK), number
            assert paper.evaluate(CUT) == [], number
