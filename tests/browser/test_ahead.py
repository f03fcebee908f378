"""The next card is made ahead while nobody waits: shown at once, and never where anything changed in between."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

from playwright.sync_api import Page, expect

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.page.fields import fields_of_job, job_of_fields
from page_acting import close_panel, look_at, show_example, type_in, wait_for

# Notes every face that Python is asked for, and marks the page once the answer has come.
NOTED = """
window.faces = [];
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (data, ...rest) {
  if (data.call === "face") {
    const one = { ...JSON.parse(data.payload), answered: false };
    window.faces.push(one);
    this.addEventListener("message", (event) => {
      if (event.data.id !== data.id) return;
      one.answered = true;
      document.documentElement.setAttribute(`data-made-${one.face}-${one.card}`, "");
    });
  }
  return post.call(this, data, ...rest);
};
"""
DONE = "#stakes [data-do=done]"


def cards_asked(page: Page) -> list[int]:
    found: list[int] = page.evaluate("window.faces.filter((one) => one.face === 'stakes').map((one) => one.card)")
    return found


def at_first_card(open_page: Callable[..., Page]) -> Page:
    page = open_page(before=NOTED)
    wait_for(page, "computed")
    show_example(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    page.wait_for_selector("html[data-made-stakes-2]")
    return page


def card(page: Page, number: int) -> None:
    page.wait_for_selector(f"html[data-sheet=computed]:not([data-stale]) #stakes .card[data-card='{number}']")


def numbers_shown(page: Page) -> str:
    return page.locator("#stakes dl.nums").inner_text()


def told(chord: str, number: int) -> list[Any]:
    fields = {**fields_of_job(DEMO), "arc-chord": chord}
    return list(answering(job_of_fields(fields))["cards"][number - 1]["numbers"])


def test_done_shows_the_card_that_was_made_ahead_and_asks_for_the_one_after_it(open_page: Callable[..., Page]) -> None:
    page = at_first_card(open_page)
    assert cards_asked(page).count(2) == 1
    page.click(DONE)
    card(page, 2)
    page.wait_for_selector("html[data-made-stakes-3]")
    assert cards_asked(page).count(2) == 1
    page.click(DONE)
    card(page, 3)
    page.click("#stakes [data-do=back]")  # what was shown there before
    card(page, 2)
    page.wait_for_selector("html:not([data-stale])")
    assert cards_asked(page).count(2) == 1
    asked = json.loads(page.evaluate("JSON.stringify(window.faces)"))
    two, three = (next(one for one in asked if one["card"] == number) for number in (2, 3))
    assert (two["fields"]["done"], three["fields"]["done"]) == ("1", "1 2")
    assert two["fields"]["method"] and two["fields"]["stood"]


def test_a_card_made_ahead_is_thrown_away_when_a_number_changes_in_between(open_page: Callable[..., Page]) -> None:
    page = at_first_card(open_page)
    type_in(page, "arc-chord", "36 ft")
    close_panel(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    for number in range(2, 6):
        page.click(DONE)
        card(page, number)
        was, now = told("38 ft", number), told("36 ft", number)
        for one in now:
            expect(page.locator("#stakes dl.nums")).to_contain_text(one["shown"])
        if was != now:
            break
    else:
        raise AssertionError("no card hangs on the chord")
