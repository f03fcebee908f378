"""A class at the wall: its own numbers, kept as a job; the list by touch; full screen; the way into round 2."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from bowstring import answer
from bowstring.words import catalogue, say
from page_acting import PATIENCE, wait_for
from wall_acting import WALL, at, said, wall_of_the_example

OWN = "#wall .own"
A = "A"
CHORD, OUT = "[name=wall-chord]", "[name=wall-out]"
SMALL = """() => [...document.querySelectorAll("#wall .own *")]
  .filter((one) => one.getClientRects().length && (one.value || one.textContent))
  .map((one) => parseFloat(getComputedStyle(one).fontSize) / innerHeight)"""


@pytest.fixture
def wall(page: Page) -> Page:
    return wall_of_the_example(page)


def typed(page: Page, chord: str, out: str) -> None:
    if page.locator(OWN).is_hidden():
        page.keyboard.press("n")
    page.locator(CHORD).fill(chord)
    page.locator(OUT).fill(out)


def test_a_class_types_its_own_numbers_and_the_lessons_follow(wall: Page) -> None:
    wall.keyboard.press("3")
    at(wall, "3-0")
    wall.keyboard.press("ArrowRight")
    wall.keyboard.press("n")
    expect(wall.locator(CHORD)).to_have_value("38' 0\"")
    typed(wall, "24", "2")
    wall.keyboard.press("Enter")
    expect(wall.locator(OWN)).to_be_hidden()
    at(wall, "3-1")  # the same stroke, of other numbers
    wall.keyboard.press("End")
    told = answer({"bowstring": 1, "arc": {"chord": "24 ft", "sagitta": "2 ft"}})
    shown = wall.locator("#wall .picture")
    wall.keyboard.press("Home")
    for _ in range(5):
        wall.keyboard.press("ArrowRight")
    expect(shown).to_contain_text(told["halving"][1]["sagitta_shown"])
    wall.keyboard.press("0")
    expect(shown).to_contain_text(say("wall.own_job"))
    expect(shown).to_contain_text("24' 0\"")
    wall.keyboard.press("n")
    wall.locator(f"{OWN} [data-act=back]").click()
    expect(shown).to_contain_text("Bandstand walk")
    expect(shown).to_contain_text("38' 0\"")


def test_a_number_in_its_frame_opens_them_and_escape_leaves_the_picture(wall: Page) -> None:
    wall.keyboard.press("ArrowRight")
    wall.locator("#wall [data-s='0'] .w-box").first.click(force=True)
    expect(wall.locator(CHORD)).to_be_focused()
    wall.keyboard.type("99 ")  # keys of the wall are the field's own here
    wall.keyboard.press("Escape")
    expect(wall.locator(OWN)).to_be_hidden()
    at(wall, "0-1")
    expect(wall.locator("#wall .picture")).to_contain_text("38' 0\"")


@pytest.mark.parametrize(
    ("chord", "out", "told"),
    [("38 x", "5", "isn't known here"), ("", "5", "string"), ("38", "", "mid-ordinate"), ("38", "0", "0"),
     ("10", "40", "nearly a whole circle")],
)  # fmt: skip
def test_numbers_that_are_none_are_told_on_the_wall(wall: Page, chord: str, out: str, told: str) -> None:
    typed(wall, chord, out)
    wall.keyboard.press("Enter")
    wrong = wall.locator(f"{OWN} [role=alert]")
    expect(wrong).to_contain_text(told)
    assert min(wall.evaluate(SMALL)) >= 1 / 45
    wall.locator(f"{OWN} [data-act=keep]").click()
    expect(wrong).to_contain_text(told)
    assert wall.locator(OWN).is_visible()
    wall.keyboard.press("Escape")
    expect(wall.locator("#wall .picture")).to_contain_text("38' 0\"")


def test_a_lesson_says_when_its_own_numbers_stand_there(wall: Page) -> None:
    typed(wall, "10", "8")
    wall.keyboard.press("Enter")
    expect(wall.locator(OWN)).to_be_hidden()
    for figure, says in (("5", False), ("6", True)):
        wall.keyboard.press(figure)
        at(wall, f"{figure}-0")
        assert (say("lesson.too_bent") in (wall.locator("#wall .picture").text_content() or "")) == says


def test_numbers_from_the_wall_become_a_job_and_the_one_before_stays(wall: Page) -> None:
    typed(wall, "24", "2")
    wall.locator(f"{OWN} [data-act=keep]").click()
    expect(wall.locator("#wall")).to_have_count(0)
    wait_for(wall, "computed")
    assert wall.locator("#face-numbers").is_visible()
    expect(wall.locator("[id='arc-chord']")).to_have_value("24")
    expect(wall.locator("[id='arc-sagitta']")).to_have_value("2")
    expect(wall.locator("#job-name")).to_contain_text(say("wall.own_job"))
    wall.evaluate("location.hash = 'numbers-jobs'")
    kept = wall.locator("#job-list")
    expect(kept).to_contain_text("Bandstand walk")
    expect(kept).to_contain_text(say("wall.own_job"))


def test_axe_finds_nothing_wrong_where_they_are_typed(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-1-1", bypass_csp=True)
    page.wait_for_selector(WALL)
    typed(page, "1", "x")
    page.keyboard.press("Enter")
    expect(page.locator(f"{OWN} [role=alert]")).not_to_be_empty()
    found = Axe().run(page)
    assert found.violations_count == 0, found.generate_report()


def test_a_presenter_does_all_of_it(wall: Page) -> None:
    """What its buttons send: Page Down, Page Up and a period."""
    seen = []
    for key in ["PageDown"] * 4 + ["PageUp"] * 2 + ["."] + ["PageDown"] * 2:
        wall.keyboard.press(key)
        seen.append(wall.evaluate("location.hash.split('-')[2]"))
    assert seen == ["1", "2", "3", "4", "3", "2", "2", "2", "3"]
    assert wall.locator("#wall .stage").is_visible()


def is_full(page: Page, wanted: bool) -> None:
    until = time.monotonic() + PATIENCE / 1000
    while page.evaluate("document.fullscreenElement !== null") != wanted:
        assert time.monotonic() < until, f"full screen isn't {wanted}"
        page.wait_for_timeout(25)


def listed(page: Page) -> None:
    page.wait_for_selector("#wall .pick:not([hidden]) .acts")


def test_full_screen_by_key_and_by_button(wall: Page) -> None:
    is_full(wall, False)
    wall.keyboard.press("f")
    is_full(wall, True)
    at(wall, "0-0")
    wall.keyboard.press("f")
    is_full(wall, False)
    wall.keyboard.press("l")
    listed(wall)
    wall.locator("#wall [data-act=full_screen]").click()
    is_full(wall, True)
    assert wall.locator("#wall .pick").is_hidden()
    at(wall, "0-0")
    wall.keyboard.press("Escape")  # leaves the wall, and the full screen with it
    is_full(wall, False)


def test_a_card_of_the_list_is_clicked(wall: Page) -> None:
    wall.keyboard.press("l")
    listed(wall)
    wall.locator("#wall .card [data-figure='5']").click()
    at(wall, "5-0")
    wall.keyboard.press("l")
    listed(wall)
    wall.locator("#wall [data-act=numbers]").click()
    expect(wall.locator(OWN)).to_be_visible()
    wall.keyboard.press("Escape")
    at(wall, "5-0")
    wall.keyboard.press("l")
    listed(wall)
    wall.locator("#wall [data-act=to_job]").click()
    expect(wall.locator("#wall")).to_have_count(0)


def test_a_finger_taps_holds_and_brushes(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-3-0", has_touch=True)
    page.wait_for_selector(WALL)
    at(page, "3-0")
    page.touchscreen.tap(900, 400)
    at(page, "3-1")
    page.touchscreen.tap(600, 400)
    at(page, "3-2")
    page.touchscreen.tap(100, 400)
    at(page, "3-1")
    hand = page.context.new_cdp_session(page)

    def finger(kind: str, *points: tuple[int, int]) -> None:
        touches = [{"x": x, "y": y} for x, y in points]
        hand.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": touches})

    finger("touchStart", (900, 300))
    for x in range(880, 300, -40):
        finger("touchMove", (x, 300))
        page.wait_for_timeout(60)  # longer in all than a finger is held for the list
    finger("touchEnd")
    page.wait_for_timeout(100)
    at(page, "3-1")
    assert page.locator("#wall .pick").is_hidden()
    finger("touchStart", (900, 300))
    listed(page)
    finger("touchEnd")
    page.locator("#wall .card [data-figure='6']").tap()
    at(page, "6-0")
    page.touchscreen.tap(900, 400)
    at(page, "6-1")


# What moves stands still at its start until it's let go: a busy machine would look when it's over.
HELD = """() => {
  const { animate } = Element.prototype;
  window.unheld = () => (Element.prototype.animate = animate);
  Element.prototype.animate = function (...words) {
    const moving = animate.apply(this, words);
    moving.pause();
    return moving;
  };
}"""
LET_GO = """() => Promise.all(document.getAnimations().map((one) => {
  one.play();
  return one.finished;
})).then(() => {})"""
MOVES = "() => document.getAnimations().filter((one) => one.effect.getComputedTiming().duration === 400).length"


@pytest.fixture
def still(wall: Page) -> Iterator[Page]:
    wall.evaluate(HELD)
    yield wall
    wall.evaluate("() => { window.unheld(); }")


def to_round_two(page: Page) -> None:
    for _ in range(20):
        page.keyboard.press("ArrowRight")
        if said(page) == say("wall.next.half", end=A):
            return
    pytest.fail("no round 2")


@pytest.mark.parametrize("motion", ["no-preference", "reduce"])
def test_round_two_grows_out_of_round_one(still: Page, motion: str) -> None:
    still.emulate_media(reduced_motion=motion)  # type: ignore[arg-type]
    to_round_two(still)
    moves = motion != "reduce"
    assert bool(still.evaluate(MOVES)) == moves
    still.evaluate(LET_GO)
    assert still.evaluate(MOVES) == 0
    still.keyboard.press("ArrowLeft")
    assert bool(still.evaluate(MOVES)) == moves
    still.evaluate(LET_GO)
    still.keyboard.press("End")
    assert still.evaluate(MOVES) == 0  # only from one stroke to the next


def test_it_starts_where_round_one_has_its_stakes(still: Page) -> None:
    """The first frame of the growing half: A and M stand where they stood a moment before."""
    stakes = """() => [...document.querySelectorAll("#wall .picture g:not(.off) rect:is(.w-stands, .w-now)")]
      .map((one) => one.getBoundingClientRect()).map((box) => [box.x + box.width / 2, box.y + box.height / 2])"""
    to_round_two(still)
    still.evaluate("document.getAnimations().forEach((one) => { one.pause(); one.currentTime = 0; })")
    small = still.evaluate(stakes)
    still.evaluate("document.getAnimations().forEach((one) => one.finish())")
    still.keyboard.press("ArrowLeft")
    still.evaluate("document.getAnimations().forEach((one) => one.finish())")
    before = still.evaluate(stakes)
    for x, y in small:
        assert any(abs(x - a) < 2 and abs(y - b) < 2 for a, b in before), (small, before)


def test_a_class_reads_it_in_spanish(open_page: Callable[..., Page]) -> None:
    page = open_page(1280, 720, path="#wall-1-1", locale="es-MX")
    page.wait_for_selector(WALL)
    page.keyboard.press("n")
    spanish = catalogue("spanish")
    expect(page.locator(f"{OWN} h2")).to_have_text(spanish["wall.own"])
    typed(page, "38", "")
    page.keyboard.press("Enter")
    expect(page.locator(f"{OWN} [role=alert]")).to_contain_text(spanish["wall.own_missing.remedy"])
