"""On the wall: keys, a presenter, touch, Back and reload; how large its words are; the slider; handouts on paper."""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import product

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from accessible import hold_accessible
from bowstring.words import say
from builder import website
from page_acting import look_at, reload, type_in, wait_for
from wall_acting import WALL, at, said, wall_of_the_example

# The smallest text that is shown on the wall, as a part of the screen's height.
SMALLEST = """() => {
  const wall = document.getElementById("wall");
  let least = 1, told = "";
  for (const text of wall.querySelectorAll("svg text, .name, .paper-of, .key, h2, .keys, .acts button, .spoken")) {
    if (getComputedStyle(text).visibility === "hidden" || !text.getClientRects().length || !text.textContent) continue;
    const svg = text.closest("svg");
    const scale = svg ? text.getScreenCTM().a : 1;
    const size = (parseFloat(getComputedStyle(text).fontSize) * scale) / innerHeight;
    if (size < least) [least, told] = [size, text.textContent];
  }
  return [least, told];
}"""
OUTSIDE = """() => [...document.querySelectorAll("#wall .picture text")]
  .filter((text) => getComputedStyle(text).visibility !== "hidden")
  .map((text) => [text.textContent, text.getBoundingClientRect()])
  .filter(([, box]) => box.left < 0 || box.right > innerWidth || box.top < 0 || box.bottom > innerHeight)
  .map(([text]) => text)"""
FRAMES = """() => new Promise((resolve) => {
  const arc = document.querySelector("#wall .bend .w-arc");
  const seen = new Set();
  const began = performance.now();
  const look = (now) => {
    seen.add(arc.getAttribute("d"));
    if (now - began < 1500) requestAnimationFrame(look);
    else resolve(seen.size / 1.5);
  };
  requestAnimationFrame(look);
})"""


@pytest.fixture
def wall(page: Page) -> Page:
    return wall_of_the_example(page)


def test_keys_and_a_presenter_turn_the_strokes(wall: Page) -> None:
    at(wall, "0-0")
    for key, place in (
        ("ArrowRight", "0-1"), ("Space", "0-2"), ("PageDown", "0-3"), ("ArrowLeft", "0-2"), ("PageUp", "0-1"),
        ("Home", "0-0"), ("4", "4-0"), ("ArrowRight", "4-1"), ("2", "2-0"), ("ArrowLeft", "1-[0-9]+"), ("Home", "1-0"),
    ):  # fmt: skip
        wall.keyboard.press(key)
        at(wall, place)
    wall.keyboard.press("End")
    whole = wall.locator("#wall .edge i").count()
    at(wall, f"1-{whole}")
    wall.keyboard.press("ArrowRight")  # past its end the next one begins
    at(wall, "2-0")
    wall.keyboard.press("ArrowDown")
    expect(wall.locator("#wall")).to_have_attribute("aria-label", re.compile("Halving"))
    at(wall, f"3-{wall.locator('#wall .edge i').count()}")


def test_a_stroke_adds_and_one_sentence_is_heard(wall: Page) -> None:
    counts, heard = [], []
    for _ in range(6):
        wall.keyboard.press("ArrowRight")
        heard.append(said(wall))
        counts.append(wall.locator("#wall .picture g:not(.off)").count())
    assert counts == sorted(counts) and len(set(heard)) == 6
    assert wall.locator("#wall [role=status]").count() == 1


def test_a_period_blanks_it_and_any_key_brings_it_back(wall: Page) -> None:
    wall.keyboard.press("ArrowRight")
    for key in (".", "b"):
        wall.keyboard.press(key)
        assert wall.locator("#wall .stage").is_hidden()
        wall.keyboard.press("PageDown")
        assert wall.locator("#wall .stage").is_visible()
        at(wall, "0-1")


def test_touch_goes_on_at_the_right_and_back_at_the_left(wall: Page) -> None:
    wall.mouse.click(900, 300)
    at(wall, "0-1")
    wall.mouse.click(500, 300)
    at(wall, "0-2")
    wall.mouse.click(100, 300)
    at(wall, "0-1")
    assert said(wall) == say("wall.ends.stake", end="A")


def test_back_and_escape_lead_to_the_job_and_reload_stays(wall: Page) -> None:
    for _ in range(3):
        wall.keyboard.press("ArrowRight")
    reload(wall)
    wall.wait_for_selector(WALL)
    at(wall, "0-3")
    wall.go_back()
    expect(wall.locator("#wall")).to_have_count(0)
    expect(wall).to_have_url(re.compile("#why$"))
    wall.go_forward()
    wall.wait_for_selector(WALL)
    at(wall, "0-3")
    wall.keyboard.press("Escape")
    expect(wall.locator("#wall")).to_have_count(0)
    assert wall.locator("#face-why").is_visible() and not wall.locator("#main").evaluate("main => main.inert")


def test_an_address_opens_a_lesson_and_escape_leaves_it(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-3-2")
    page.wait_for_selector(WALL)
    at(page, "3-2")
    page.keyboard.press("Escape")
    expect(page.locator("#wall")).to_have_count(0)
    expect(page).to_have_url(re.compile("#why$"))


@pytest.mark.parametrize(("width", "height"), [(1280, 720), (1920, 1080)])
def test_the_smallest_words_are_a_forty_fifth_of_the_height(wall: Page, width: int, height: int) -> None:
    wall.set_viewport_size({"width": width, "height": height})
    for figure in range(7):
        wall.keyboard.press(str(figure))
        at(wall, f"{figure}-0")
        count = wall.locator("#wall .edge i").count()
        for _ in range(count):
            wall.keyboard.press("ArrowRight")
            least, told = wall.evaluate(SMALLEST)
            assert least >= 1 / 45, (figure, told, least)
            assert wall.evaluate(OUTSIDE) == [], figure
        at(wall, f"{figure}-{count}")
    wall.keyboard.press("p")
    wall.keyboard.press("l")
    wall.wait_for_selector("#wall .pick:not([hidden]) .card")
    least, told = wall.evaluate(SMALLEST)
    assert least >= 1 / 45, (told, least)


def slider(page: Page) -> None:
    page.keyboard.press("4")
    at(page, "4-0")
    while said(page) != say("lesson.4.bend"):
        page.keyboard.press("ArrowRight")
    page.wait_for_selector("#wall .bend")


def test_the_slider_bends_the_arc_and_shows_the_packages_own_numbers(wall: Page) -> None:
    slider(wall)
    expect(wall.locator("#wall .bend text").nth(1)).to_have_text("0.29 in")
    for _ in range(3):
        wall.keyboard.press("]")
    expect(wall.locator("#wall .bend text").first).to_contain_text("bend 65°")
    for _ in range(12):
        wall.keyboard.press("}")
    expect(wall.locator("#wall .bend text").first).to_contain_text("bend 185°")
    assert " 0 1 1 " in (wall.locator("#wall .bend .w-arc").get_attribute("d") or "")
    box = wall.locator("#wall .bend [data-knob]").first.bounding_box()
    assert box
    wall.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    wall.mouse.down()
    wall.mouse.move(120, 640, steps=5)
    wall.mouse.up()
    expect(wall.locator("#wall .bend text").nth(1)).to_have_text("0.00 in")
    assert wall.locator("#wall .bend").count() == 1  # a drag turns no stroke


def test_the_slider_runs_by_itself_at_thirty_frames(wall: Page) -> None:
    slider(wall)
    wall.keyboard.press("s")
    assert wall.evaluate(FRAMES) >= 30


def test_with_reduced_motion_nothing_moves_by_itself(wall: Page) -> None:
    wall.emulate_media(reduced_motion="reduce")
    slider(wall)
    wall.keyboard.press("s")
    expect(wall.locator("#wall .bend text").first).to_contain_text("bend 220°")
    assert wall.evaluate("getComputedStyle(document.querySelector('#wall .picture .fresh')).animationName") == "none"


def test_the_list_opens_a_figure_by_keys(wall: Page) -> None:
    wall.keyboard.press("l")
    wall.wait_for_selector("#wall .pick:not([hidden]) .card")
    expect(wall.locator("#wall .pick .card .figure:focus")).to_have_count(1)  # the keys go where the focus is
    for key in ("ArrowRight", "ArrowDown", "Enter"):
        wall.keyboard.press(key)
    expect(wall).to_have_url(re.compile("#wall-5-0$"))


PRINTED = "window.print = () => document.documentElement.setAttribute('data-printed', '');"


def test_a_handout_prints_a_page_for_the_learner_and_one_with_answers(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-1-0", before=PRINTED)
    page.wait_for_selector(WALL)
    pages = {1: 2, 2: 2, 3: 2, 4: 2, 5: 2, 6: 2, 7: 1}
    for paper, figure in product(("Letter", "A4"), pages):
        page.keyboard.press("l")
        page.wait_for_selector(f"#wall .card [data-figure='{figure}']")
        page.locator(f"#wall .card:has([data-figure='{figure}']) button").last.click()
        page.wait_for_selector("html[data-printed]")
        assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=paper))) == pages[figure], (figure, paper)
        page.evaluate(
            "() => { dispatchEvent(new Event('afterprint')); delete document.documentElement.dataset.printed; }"
        )
        page.keyboard.press("Escape")
    assert page.locator("#handout").count() == 0


def test_a_stopped_job_shows_no_number_of_itself(page: Page) -> None:
    page.set_viewport_size({"width": 1280, "height": 720})
    type_in(page, "tape-length", "10 ft")
    look_at(page, "why")
    wait_for(page, "computed")
    page.locator("[data-do=wall]").click()
    page.wait_for_selector(WALL)
    at(page, "1-0")
    page.keyboard.press("0")
    at(page, "0-0")
    page.keyboard.press("End")
    assert "38'" not in (page.locator("#wall .picture").text_content() or "")


def test_axe_finds_nothing_wrong_on_the_wall_or_its_list(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-4-3", bypass_csp=True)
    page.wait_for_selector(WALL)
    at(page, "4-3")
    _held_with_its_list(page)


def test_axe_finds_nothing_wrong_on_the_wall_in_spanish(spanish: Page) -> None:
    spanish.evaluate("location.hash = 'wall-4-3'")
    spanish.wait_for_selector(WALL)
    at(spanish, "4-3")
    _held_with_its_list(spanish)


def _held_with_its_list(page: Page) -> None:
    for key in ("End", "l"):
        page.keyboard.press(key)
        page.evaluate("() => Promise.all(document.getAnimations().map((one) => one.finished)).then(() => {})")
        hold_accessible(page, f"the wall after {key}", ("light",))


def test_a_saved_page_has_the_wall_in_it(chromium: Browser, watched: Callable[[BrowserContext, str], None]) -> None:
    context = chromium.new_context(viewport={"width": 1280, "height": 720})
    watched(context, website.SAVED.as_uri())
    page = context.new_page()
    page.goto(f"{website.SAVED.as_uri()}#wall-2-1")
    page.wait_for_selector(WALL)
    at(page, "2-1")
    assert said(page)
    context.close()
