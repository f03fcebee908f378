"""The build on a phone and a desk: its rows, each page, the way back, and the question where something is open."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from accessible import hold_accessible
from bowstring.words import say
from page_acting import choose, close_panel, look_at, open_panel, show_example, type_in, wait_for

PAGES = ("edges", "boards", "joints", "grades", "pour")
SIZES = ((320, 568), (360, 740), (740, 360), (820, 1180), (1280, 720), (1920, 1080))
WIDER = """() => [...document.querySelectorAll("#build, #build > *, #build .page, #build .page > *, #build table")]
  .filter((one) => one.checkVisibility() && !one.matches(".unseen") && one.scrollWidth > one.clientWidth + 1)
  .map((one) => `${one.tagName} ${one.className} ${one.textContent.slice(0, 40)}`)"""
OUTSIDE = """() => [...document.querySelectorAll("#build .page :is(td, th, p, button), #build .build-rows b")]
  .filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > innerWidth + 0.5)
  .map((one) => one.textContent.slice(0, 40))"""
TABS = """() => [...document.querySelectorAll(".tabs a")].map((tab) => {
  const range = document.createRange();
  range.selectNodeContents(tab);
  const { left, right } = tab.getBoundingClientRect();
  const words = range.getBoundingClientRect();
  return [tab.textContent, left >= 0 && right <= innerWidth, words.left >= left - 0.5 && words.right <= right + 0.5];
})"""


def say_slab(page: Page) -> None:
    """Say of the example all that its slab needs."""
    type_in(page, "width", "5 ft")
    choose(page, "edge", "outside")
    type_in(page, "slab-thickness", "4 in")
    type_in(page, "grade-slope", "2")
    choose(page, "grade-high", "B")
    choose(page, "grade-low", "inside")
    close_panel(page)


@pytest.fixture
def slab(page: Page) -> Page:
    """The build of the example with its slab."""
    say_slab(page)
    page.set_viewport_size({"width": 360, "height": 740})
    look_at(page, "build")
    wait_for(page, "computed")
    return page


def open_row(page: Page, name: str) -> None:
    page.locator(f"#build-{name}").click()
    page.wait_for_selector(f"#build > [data-card='{name}']")
    wait_for(page, "computed")


def keeps_within_every_screen(page: Page, name: str) -> None:
    """The page behind a row that is open: nothing wider than a screen or cut off, accessible, and back to its row."""
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        page.wait_for_function("() => document.getAnimations().every((one) => one.playState !== 'running')")
        assert page.evaluate(WIDER) == [], (name, width)
        assert page.evaluate(OUTSIDE) == [], (name, width)
    page.set_viewport_size({"width": 360, "height": 740})
    hold_accessible(page, name)
    page.locator("#build .back").click()
    expect(page.locator(f"#build-{name}")).to_be_focused()


def test_a_row_opens_its_page_and_back_leads_to_the_row(slab: Page) -> None:
    for name in PAGES:
        conclusion = slab.locator(f"#build-{name} b").first.inner_text()
        assert conclusion
        open_row(slab, name)
        assert slab.evaluate("location.hash") == f"#build-{name}"
        heading = slab.locator("#build .page :is(.concl, .huge)").first
        expect(heading).to_be_focused()
        expect(slab.locator("#build .draw svg")).to_be_visible()
        expect(slab.locator("#build .build-rows")).to_be_hidden()
        slab.locator("#build .back").click()
        expect(slab.locator(f"#build-{name}")).to_be_focused()
        assert slab.evaluate("location.hash") == "#build"


def test_the_phones_back_leads_to_the_row_and_then_to_the_face_before(slab: Page) -> None:
    open_row(slab, "pour")
    slab.go_back()
    expect(slab.locator("#build-pour")).to_be_focused()
    slab.go_back()
    expect(slab.locator("#face-build")).to_be_hidden()


def test_a_page_begins_at_its_top(slab: Page) -> None:
    scrolled = "document.querySelector('#build > :first-child').scrollTop"
    slab.set_viewport_size({"width": 320, "height": 568})
    slab.locator("#build-pour").scroll_into_view_if_needed()
    assert slab.evaluate(scrolled) > 0
    open_row(slab, "boards")
    assert slab.evaluate(scrolled) == 0


def test_what_is_open_is_asked_at_the_thumb(page: Page) -> None:
    look_at(page, "build")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("build.state_open", count=2))
    expect(page.locator("#build .ask.open b")).to_have_text(say("build.ask_width"))
    page.locator("#build .ask.open").click()
    expect(page.locator("#panel-slab")).to_be_visible()
    type_in(page, "width", "5 ft")
    close_panel(page)
    look_at(page, "build")
    wait_for(page, "computed")
    expect(page.locator("#build .ask.open b")).to_have_text(say("build.ask_edge"))
    page.locator("#status").click()  # the bar at the top leads there, too
    expect(page.locator("#panel-slab")).to_be_visible()
    choose(page, "edge", "outside")
    type_in(page, "slab-thickness", "4 in")
    close_panel(page)
    look_at(page, "build")
    wait_for(page, "computed")
    expect(page.locator("#build-pour")).to_contain_text("yards")
    page.locator("#build-grades").click()  # a row that is open leads to where it is answered
    expect(page.locator("#panel-slope")).to_be_visible()


def test_a_choice_on_a_page_changes_the_job(slab: Page) -> None:
    open_row(slab, "joints")
    other = slab.locator("#build .pick button[aria-pressed=false]").first
    count = re.match(r"\d+", other.inner_text())
    assert count is not None
    other.click()
    expect(slab.locator("#build .concl")).to_contain_text(f"{count[0]} ")
    expect(slab.locator("#build .pick button[aria-pressed=true]")).to_contain_text(count[0])
    expect(slab.locator("#joints-panels")).to_have_value(count[0])


def test_a_stopped_job_has_no_number_of_the_build(slab: Page) -> None:
    choose(slab, "drawn_to", "unsure")
    close_panel(slab)
    look_at(slab, "build")
    wait_for(slab, "computed")
    expect(slab.locator("#build .stopbox")).to_be_visible()
    expect(slab.locator("#build .build-rows, #build svg text")).to_have_count(0)


@pytest.mark.parametrize("name", ["", *PAGES])
def test_nothing_is_wider_than_the_window(slab: Page, name: str) -> None:
    if name:
        open_row(slab, name)
    for width, height in SIZES:
        slab.set_viewport_size({"width": width, "height": height})
        assert slab.evaluate("document.documentElement.scrollWidth") <= width, width
        assert slab.evaluate(WIDER) == [], width
        assert slab.evaluate(OUTSIDE) == [], width


def test_nothing_is_cut_off_in_spanish(open_page: Callable[..., Page]) -> None:
    """Its words are the longest, on the narrowest phone."""
    page = open_page(320, 568, locale="es-MX", has_touch=True, is_mobile=True)
    wait_for(page, "computed")
    show_example(page)
    say_slab(page)
    look_at(page, "build")
    wait_for(page, "computed")
    assert page.evaluate(OUTSIDE) == []
    for name in PAGES:
        open_row(page, name)
        assert page.evaluate(WIDER) == [], name
        assert page.evaluate(OUTSIDE) == [], name
        page.locator("#build .back").click()
        page.wait_for_selector("#build .build-rows button:visible")


def test_on_a_desk_the_rows_stand_beside_the_page(slab: Page) -> None:
    slab.set_viewport_size({"width": 1280, "height": 720})
    for name in ("grades", "joints"):
        open_row(slab, name)
        expect(slab.locator("#build .build-rows")).to_be_visible()
        expect(slab.locator(f"#build-{name}")).to_have_attribute("aria-current", "true")
        rows, page = (slab.locator(f"#build {one}").bounding_box() for one in (".build-rows", ".page"))
        assert rows and page and page["x"] >= rows["x"] + rows["width"] - 1
    slab.keyboard.press("Escape")
    expect(slab.locator("#build .page")).to_have_count(0)


def test_axe_finds_nothing_wrong(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740, bypass_csp=True)
    wait_for(page, "computed")
    show_example(page)
    look_at(page, "build")
    wait_for(page, "computed")
    hold_accessible(page, "what is open")
    say_slab(page)
    look_at(page, "build")
    wait_for(page, "computed")
    hold_accessible(page, "rows")
    for name in PAGES:
        open_row(page, name)
        hold_accessible(page, name)
        page.locator("#build .back").click()
        page.wait_for_selector("#build .build-rows button:visible")
    page.set_viewport_size({"width": 1280, "height": 720})
    open_row(page, "grades")
    hold_accessible(page, "rows beside a page")


@pytest.mark.parametrize("language", ["en-US", "es-MX"])
def test_the_six_tabs_are_whole_at_320_pixels(open_page: Callable[..., Page], language: str) -> None:
    page = open_page(320, 568, locale=language, has_touch=True, is_mobile=True)
    wait_for(page, "computed")
    tabs = page.evaluate(TABS)
    assert len(tabs) == 6
    assert all(inside and whole for _name, inside, whole in tabs), tabs
    heights = {round(page.locator(f".tabs a >> nth={number}").bounding_box()["height"]) for number in range(6)}  # type: ignore[index]
    assert len(heights) == 1


def test_the_text_of_a_page_grows_with_the_browsers_own(slab: Page) -> None:
    """400 percent: as wide as 320 pixels are then, nothing is cut off, and the page scrolls as a whole."""
    open_row(slab, "joints")
    slab.set_viewport_size({"width": 320, "height": 256})
    assert slab.evaluate("document.documentElement.scrollWidth") <= 320
    assert slab.evaluate(OUTSIDE) == []
    slab.locator("#build .pick button").last.scroll_into_view_if_needed()
    expect(slab.locator("#build .pick button").last).to_be_in_viewport()


# A key in the slab's field on a desk, where the build stands beside it: from the key to the page redrawn.
KEYS = """async () => {
  const field = document.getElementById("width"), root = document.documentElement, taken = [];
  for (let count = 0; count < 12; count += 1) {
    const before = performance.now();
    field.value = `5' ${count}"`;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    const waits = () => "stale" in root.dataset || root.dataset.sheet !== "computed";
    while (waits()) await new Promise((done) => setTimeout(done, 1));
    taken.push(performance.now() - before);
    await new Promise((done) => setTimeout(done, 300));
  }
  return taken.sort((one, other) => one - other);
}"""


def test_a_key_in_a_slabs_field_redraws_the_build_beside_it(slab: Page) -> None:
    slab.set_viewport_size({"width": 1280, "height": 720})
    open_panel(slab, "slab")
    taken = slab.evaluate(KEYS)
    print(f"a key in the slab's field: median {taken[6]:.0f} ms, longest {taken[-1]:.0f} ms")
    expect(slab.locator("#build-edges")).to_contain_text("5' 11\"")
    assert taken[-1] < 60_000
