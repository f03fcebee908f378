"""From what stops a job to the field that is wrong, and what a stake's row holds."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring import write_link
from bowstring.words import say
from page_acting import close_panel, look_at, reveal, type_in, wait_for

JOB = {
    "arc": {"radius": "41' 6\"", "chord": "36 ft"},
    "side": "left",
    "drawn_to": "face",
    "method": "halving",
    "levels": 2,
}
GOT = {"stake": "Q1", "measures": [{"from": "mid Q1", "to": "Q1", "distance": "1' 1\""}]}


def started(open_page: Callable[..., Page], job: dict[str, object]) -> Page:
    page: Page = open_page(360, 740, path=f"#{write_link(job)}")  # type: ignore[arg-type]
    wait_for(page, "computed")
    return page


def test_a_stop_leads_into_the_field_that_is_wrong(open_page: Callable[..., Page]) -> None:
    page = started(open_page, dict(JOB))
    type_in(page, "slab-step", "a lot")
    close_panel(page)
    expect(page.locator("#ask-open-said")).to_contain_text(say("form.slab_step"))
    page.locator("#ask-open").click()
    expect(page.locator("#slab-step")).to_be_focused()
    expect(page.locator("#slab-step")).to_be_in_viewport()
    close_panel(page)
    look_at(page, "build")
    page.locator("#build [data-do=face]").click()
    expect(page.locator("#slab-step")).to_be_focused()
    type_in(page, "slab-step", "1/4")
    expect(page.locator("#slab-step")).to_have_attribute("aria-invalid", "false")


def test_an_emptied_row_lets_go_of_what_was_read(open_page: Callable[..., Page]) -> None:
    page = started(open_page, {**JOB, "got": [GOT]})
    reveal(page, "got-0-stake")
    echo = page.locator("#got-0-stake-echo")
    expect(echo).to_contain_text("mid Q1 to Q1 1' 1\"")
    expect(echo.locator("[data-do=fill]")).to_have_text(say("page.forget", stakes="Q1"))
    page.locator("#got-0-stake").fill("")
    page.locator("#got-0-stake").blur()
    expect(echo).to_be_empty()
    page.locator("#got-0-stake").fill("Q2")  # another stake: nothing of Q1 comes back with it
    expect(page.locator("#got-0-sagitta-wrong")).to_contain_text(say("got.neither.wrong", stake="Q2"))


def test_the_side_of_an_offset_is_asked_in_one_place_that_stays(open_page: Callable[..., Page]) -> None:
    page = started(open_page, dict(JOB))
    reveal(page, "offset")
    expect(page.locator("#toward")).to_be_hidden()
    page.locator("#offset").fill("1-1/2 in")
    button = page.locator("#offset-echo [data-do=fill]").first
    expect(button).to_be_visible()
    place = button.bounding_box()
    expect(page.locator("#toward")).to_be_visible()  # it says what it waits for, under that
    assert button.bounding_box() == place
    button.click()
    expect(page.locator("#toward [value=centre]")).to_be_checked()
    expect(page.locator("#toward")).to_be_visible()
