"""By the keyboard alone, in the order of reading, at 400 %, without motion."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring.words import say
from page_acting import look_at, open_panel, show_example, type_in, wait_for

FACES = ("stakes", "checks", "build", "paper", "why")
MOST_KEYS = 60


def tab_to(page: Page, what: str) -> None:
    """Go on by the Tab key until a thing has the focus."""
    for _ in range(MOST_KEYS):
        page.keyboard.press("Tab")
        if page.evaluate("what => document.activeElement.matches(what)", what):
            return
    pytest.fail(f"{what} isn't reached by the Tab key")


def test_a_job_from_the_numbers_to_its_second_step(open_page: Callable[..., Page]) -> None:
    page = open_page(820, 1180)
    wait_for(page, "computed")
    tab_to(page, "#arc-chord")
    page.keyboard.type("41 ft")
    page.keyboard.press("Enter")  # the next field
    expect(page.locator("#arc-sagitta")).to_be_focused()
    page.keyboard.type("5' 3\"")
    wait_for(page, "computed")
    tab_to(page, "#ask-open")
    page.keyboard.press("Enter")
    expect(page.locator("#panel-hand-title")).to_be_focused()
    tab_to(page, "input[name=side]")
    page.keyboard.press("ArrowDown")  # from no answer to the first
    expect(page.locator("#panel-hand")).to_be_visible()  # by keys somebody may still look around
    page.keyboard.press("Escape")
    expect(page.locator("#panel-hand")).to_be_hidden()
    wait_for(page, "computed")
    expect(page.locator("input[name=side][value=left]")).to_be_checked()
    if not page.locator("#ask-open").evaluate("one => one === document.activeElement"):
        tab_to(page, "#ask-open, #ask-line")
    page.keyboard.press("Enter")
    expect(page.locator("#panel-line-title")).to_be_focused()
    tab_to(page, "input[name=drawn_to]")
    page.keyboard.press("ArrowDown")
    tab_to(page, "#panel-line .btn.first")
    page.keyboard.press("Enter")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("numbers.state_done"))
    if not page.locator("#to-step").evaluate("one => one === document.activeElement"):
        tab_to(page, "#to-step, [data-tab=stakes]")
    page.keyboard.press("Enter")
    wait_for(page, "computed")
    tab_to(page, "#stakes [data-do=done]")
    page.keyboard.press("Enter")
    expect(page.locator("#stakes .card")).to_have_attribute("data-card", "2")
    wait_for(page, "computed")
    assert page.evaluate("document.querySelector('#stakes').contains(document.activeElement)"), (
        "read on from the new card"
    )
    tab_to(page, "#stakes [data-do=done]")


def test_every_face_is_reached_and_every_fold_opened(open_page: Callable[..., Page]) -> None:
    page = open_page(820, 1180)
    wait_for(page, "computed")
    show_example(page)
    for face in FACES:
        tab_to(page, f"[data-tab={face}]")
        page.keyboard.press("Enter")
        wait_for(page, "computed")
        expect(page.locator(f"#face-{face}")).to_be_visible()
    tab_to(page, "#why summary")
    page.keyboard.press("Enter")
    expect(page.locator("#why details[open] .in")).not_to_be_empty()


# What can have the focus and stands over one that comes before it: who reads goes down the page, left to right.
DISORDER = """(place) => {
  const all = [...document.querySelectorAll(`${place} :is(a[href], button, input, select, textarea, summary)`)]
    .filter((one) => one.checkVisibility() && !one.disabled && one.getBoundingClientRect().height > 2);
  const boxes = all.map((one) => [one, one.getBoundingClientRect()]);
  return boxes.slice(1).filter(([, box], place) => box.bottom < boxes[place][1].top)
    .map(([one]) => one.outerHTML.slice(0, 90));
}"""


@pytest.mark.parametrize("face", ["numbers", *FACES])
def test_the_order_of_the_keys_is_the_order_of_reading(phone: Page, face: str) -> None:
    look_at(phone, face)
    wait_for(phone, "computed")
    assert phone.evaluate(DISORDER, f"#face-{face}") == []


@pytest.mark.parametrize("face", ["numbers", *FACES, "hand", "line", "way", "jobs"])
def test_at_400_percent_everything_is_reached(page: Page, face: str) -> None:
    """A window of 1280 x 1024 at 400 % has 320 x 256."""
    page.set_viewport_size({"width": 320, "height": 256})
    if face in ("numbers", *FACES):
        look_at(page, face)
        wait_for(page, "computed")
        place = f"#face-{face}"
    else:
        look_at(page, "numbers")
        open_panel(page, face)
        place = f"#panel-{face}"
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    things = page.locator(f"{place} :is(a[href], button, input:not([type=radio], [type=file]), summary):visible")
    assert things.count() > 0
    for number in range(things.count()):
        thing = things.nth(number)
        if thing.is_disabled():
            continue
        thing.focus()
        expect(thing).to_be_in_viewport()
        over = thing.evaluate("""(one) => {
          const box = one.getBoundingClientRect();
          const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
          const over = document.elementFromPoint(x, y);
          return !over || one.contains(over) || over.contains(one) || over.closest("label") ? "" : over.outerHTML;
        }""")
        assert not over, f"{thing.evaluate('one => one.outerHTML.slice(0, 90)')} is under {over[:90]}"


def test_who_wants_no_motion_sees_none(page: Page) -> None:
    page.emulate_media(reduced_motion="reduce")
    moving = """() => [...document.querySelectorAll("*")].filter((one) => {
      const { scrollBehavior, animationDuration, transitionDuration } = getComputedStyle(one);
      return scrollBehavior === "smooth" || (parseFloat(animationDuration) > 0 && !one.matches(".late"))
        || parseFloat(transitionDuration) > 0.01;
    }).map((one) => one.id || one.className)"""
    for face in FACES:
        look_at(page, face)
        wait_for(page, "computed")
        assert page.evaluate(moving) == []
    page.emulate_media(reduced_motion="no-preference")


def test_a_measure_says_what_it_is_to_who_cannot_see_it(page: Page) -> None:
    """Given, computed or wrong is told in words, and not by a colour or a weight alone."""
    spoken = """(id) => document.getElementById(id).getAttribute("aria-describedby").split(" ")
      .map((one) => document.getElementById(one).textContent.trim()).join(" ")"""
    assert say("numbers.how_given") in page.evaluate(spoken, "arc-chord")
    assert say("numbers.how_read") in page.evaluate(spoken, "arc-radius")
    type_in(page, "arc-radius", "36 ft")
    wait_for(page, "computed")
    assert "37' 0-1/16\"" in page.evaluate(spoken, "arc-radius")
