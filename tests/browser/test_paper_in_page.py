"""The paper in the built page, with the styles of all faces beside its own: heads, pages, and a phone's width."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page

from bowstring import answering, write_link
from page_acting import look_at, wait_for
from paper_jobs import JOBS

SIXTEEN = {
    "bowstring": 1,
    "side": "left",
    "drawn_to": "face",
    "arc": {"chord": "36 ft", "sagitta": "4' 6\""},
    "ends": {"A": "lamp post", "B": "gate pier"},
    "method": "tapes",
    "spacing": "2.3 ft",
}
METHODS = {"halving": JOBS["halving"], "two tapes": SIXTEEN}
EDGES = """tables => tables.map(table => [...table.querySelectorAll("tr")].map(row => {
    if (row.querySelector("[colspan]")) return null;
    return [...row.children].map(cell => Math.round(cell.getBoundingClientRect().left * 4) / 4).join(" ");
}).filter(edges => edges))"""
# The selectors of other styles' rules that reach something on the paper by a class.
STRANGERS = """() => {
    const found = new Set(), own = [...document.querySelectorAll(".paper *:not(svg *)")];
    const look = rules => { for (const rule of rules) {
        if (rule.cssRules?.length) look(rule.cssRules);
        for (const one of rule.selectorText?.split(/,(?![^(]*\\))/) ?? []) {
            if (!/[.]/.test(one) || /[.]paper|[.]bd-/.test(one) || one.includes("::")) continue;
            if (own.some(element => element.matches(one))) found.add(one.trim());
        }
    } };
    for (const sheet of document.styleSheets) look(sheet.cssRules);
    return [...found].sort();
}"""
WIDER = """sides => sides.flatMap(side => [side, ...side.querySelectorAll(":not(svg *)")]
    .filter(inner => inner.scrollWidth > inner.clientWidth + 1 && getComputedStyle(inner).overflowX !== "visible"
        || inner.getBoundingClientRect().right > innerWidth + 1)
    .map(inner => `${inner.tagName} ${inner.className} ${inner.textContent.slice(0, 30)}`))"""
WORDS = """texts => texts.filter(text => text.getClientRects().length).map(
    text => parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a)"""


def paper_of(open_page: Callable[..., Page], job: dict[str, object], width: int = 1280) -> Page:
    """The page with a job's paper before it."""
    page = open_page(width, 900, "#" + write_link(job))  # type: ignore[arg-type]
    wait_for(page, "computed")
    look_at(page, "paper")
    page.wait_for_selector("#paper article.paper")
    wait_for(page, "computed")
    return page


def pages(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=paper)))


@pytest.mark.parametrize("name", METHODS)
def test_each_head_stands_over_its_column_and_all_of_it_on_two_pages(open_page: Callable[..., Page], name: str) -> None:
    page = paper_of(open_page, METHODS[name])
    for media in ("screen", "print"):
        page.emulate_media(media=media)  # type: ignore[arg-type]
        tables = page.locator(".paper table").evaluate_all(EDGES)
        assert len(tables) == 3 and all(len(rows) > 2 for rows in tables)
        assert [len(set(rows)) for rows in tables] == [1, 1, 1], (media, tables)
    assert (pages(page, "Letter"), pages(page, "A4")) == (2, 2)
    assert page.evaluate(STRANGERS) == [".n"]


def test_the_longer_of_the_two_jobs_has_sixteen_stakes() -> None:
    assert sum(step["stake"] is not None for step in answering(SIXTEEN)["steps"]) == 16  # type: ignore[arg-type]


@pytest.mark.parametrize("name", ["four rounds", "two tapes", "coordinates"])
def test_on_a_phone_nothing_scrolls_sideways_and_the_plans_words_can_be_read(
    open_page: Callable[..., Page], name: str
) -> None:
    page = paper_of(open_page, JOBS[name], 360)
    assert page.locator(".paper .side").evaluate_all(WIDER) == []
    words = page.locator(".paper .low text").evaluate_all(WORDS)
    assert len(words) > 4 and min(words) >= 9
