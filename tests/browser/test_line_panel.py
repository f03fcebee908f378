"""The panel of a line's pieces on a phone: short rows in the order of walking; one put in, taken out, made tangent."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Locator, Page, expect

from accessible import hold_accessible
from bowstring import write_link
from bowstring.words import say
from lined_jobs import CREEK
from page_acting import open_panel, wait_for

SCREEN = 740
MOST_HIGH = 1.5 * SCREEN
HIT = 44

# How high the whole page would be without scrolling in the panel, and what in its rows a finger could miss.
HEIGHT = """() => {
  const scroll = document.querySelector("#panel-pieces > .scroll");
  return innerHeight - scroll.clientHeight + scroll.scrollHeight;
}"""
SMALL = """(least) => [...document.querySelectorAll(
    "#panel-pieces :is(button, summary, .option, input:not([type=radio], [type=hidden]))")]
  .filter((one) => one.getClientRects().length && !one.closest(".panelhead"))
  .filter((one) => one.getBoundingClientRect().height < least || one.getBoundingClientRect().width < least)
  .map((one) => one.id || one.textContent)"""
WIDE = """() => [...document.querySelectorAll("#panel-pieces *")]
  .filter((one) => one.getClientRects().length && !one.closest("svg"))
  .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
  .map((one) => one.id || one.className)"""


@pytest.fixture
def page(open_page: Callable[..., Page]) -> Page:
    opened: Page = open_page(360, SCREEN, path=f"#{write_link(CREEK)}")  # type: ignore[arg-type]
    wait_for(opened, "computed")
    if opened.locator("#face-numbers").is_hidden():
        opened.locator("[data-tab=numbers]").click()
    open_panel(opened, "pieces")
    expect(opened.locator("#line-drawn-echo svg")).to_be_visible()
    return opened


def rows(page: Page) -> list[str]:
    """What each row in sight is, with its number."""
    told: list[str] = page.evaluate("""() => [...document.querySelectorAll("#panel-pieces .pc")]
      .filter((row) => row.offsetHeight).map((row) => `${row.querySelector(".no").textContent} ${row.dataset.kind}`)""")
    return told


def row(page: Page, name: str) -> Locator:
    return page.locator("#panel-pieces .pc", has=page.locator(f"[id='{name}']"))


def told(page: Page, name: str) -> Locator:
    return page.locator(f"[id='{name}-echo']")


def test_four_pieces_take_a_screen_and_a_half_and_every_key_can_be_hit(page: Page) -> None:
    assert rows(page) == ["1 straight", "2 arc", "3 arc", "4 straight"]
    assert page.evaluate(HEIGHT) <= MOST_HIGH
    assert page.evaluate(SMALL, HIT) == [] and page.evaluate(WIDE) == []
    expect(page.locator(".pc.own")).to_contain_text(say("pieces.staked"))
    expect(told(page, "after-0-join")).to_have_text("Tangent, no kink: the curve reverses")
    hold_accessible(page, "the pieces")


def test_a_piece_is_put_at_the_end_and_counts_once_something_stands_in_it(page: Page) -> None:
    page.locator("#panel-pieces > .scroll > .pick [data-put=arc]").click()
    assert rows(page)[4:] == ["+ arc"]
    expect(page.locator("[id=after-2-radius]")).to_be_focused()
    page.locator("[id=after-2-radius]").fill("12 ft")
    expect(told(page, "line-long")).to_have_text(say("pieces.waits_turn", number=5))
    expect(page.locator("#line-drawn-echo[data-old] svg")).to_be_visible()  # nothing moves under the fingers
    page.locator("[id=after-2-central_angle]").fill("90")
    page.locator("[id=after-2-turn] .option:has([value=left])").click()
    expect(told(page, "after-2-long")).to_have_text("18' 10-1/4\"")  # 12 ft times half of pi
    assert rows(page)[4:] == ["5 arc"]
    expect(page.locator("#line-drawn-echo:not([data-old]) svg")).to_be_visible()


def test_a_piece_is_put_between_two_and_taken_out_again(page: Page) -> None:
    before = told(page, "line-long").text_content() or ""
    row(page, "after-0-radius").locator(".jn summary").click()
    row(page, "after-0-radius").locator(".jn [data-put=straight]").click()
    assert rows(page) == ["1 straight", "2 arc", "+ straight", "3 arc", "4 straight"]
    page.locator("[id=after-0-straight]").fill("5 ft")
    expect(told(page, "line-long")).to_contain_text("88' 1-1/2\"")
    assert rows(page) == ["1 straight", "2 arc", "3 straight", "4 arc", "5 straight"]
    assert page.locator("[id=after-1-radius]").input_value() == "24 ft"
    expect(page.locator("[id=after-1-turn] [value=right]")).to_be_checked()
    row(page, "after-0-straight").locator(".more summary").click()
    row(page, "after-0-straight").locator("[data-put=out]").click()
    expect(told(page, "line-long")).to_have_text(before)
    assert rows(page) == ["1 straight", "2 arc", "3 arc", "4 straight"]


def test_a_kink_is_told_and_made_tangent(page: Page) -> None:
    tangent = row(page, "after-1-straight").locator("[data-put=tangent]")
    expect(tangent).to_be_hidden()
    row(page, "after-1-straight").locator(".jn summary").click()
    page.locator("[id=after-1-kink]").fill("2 right")
    expect(told(page, "after-1-join")).to_contain_text('Kink 2° right 4-1/4" off in 10 ft')
    row(page, "after-1-straight").locator(".jn summary").click()
    assert page.evaluate(SMALL, HIT) == [] and page.evaluate(WIDE) == []
    tangent.click()
    expect(told(page, "after-1-join")).to_have_text("Tangent, no kink")
    assert page.locator("[id=after-1-kink]").input_value() == ""


def test_another_arc_is_taken_to_be_staked_from_its_row(page: Page) -> None:
    row(page, "after-0-radius").locator("[data-do=line-at]").click()
    wait_for(page, "computed")
    expect(page.locator("#stakes")).to_contain_text(say("lined.staked", at=3, count=4, before=2))
    page.locator("[data-tab=numbers]").click()
    open_panel(page, "pieces")
    expect(page.locator(".pc.own .no")).to_have_text("3")
    assert rows(page) == ["1 straight", "2 arc", "3 arc", "4 straight"]


def test_who_starts_with_a_straight_finds_it_before_any_number(open_page: Callable[..., Page]) -> None:
    """12 ft straight, then R 40 to the left for 30 ft, then straight 20: typed in the order of the drawing."""
    page = open_page(360, SCREEN)
    page.wait_for_selector("html[data-sheet=computed]")
    entry = page.locator("#ask-pieces")
    expect(entry).to_be_in_viewport()  # on the first screen, nothing scrolled
    entry.click()
    assert rows(page) == ["1 arc"]
    page.locator("#panel-pieces [data-at=start] [data-put=straight]").click()
    expect(page.locator("[id=before-0-straight]")).to_be_focused()
    page.locator("[id=before-0-straight]").fill("12")
    assert rows(page) == ["1 straight", "2 arc"]
    expect(told(page, "own-said")).to_have_text(say("pieces.own_waits"))
    page.locator("#panel-pieces > .scroll > .pick [data-put=straight]").click()
    page.locator("[id=after-0-straight]").fill("20")
    assert rows(page) == ["1 straight", "2 arc", "3 straight"]
    assert page.evaluate(SMALL, HIT) == [] and page.evaluate(WIDE) == []
    hold_accessible(page, "the pieces, their arc not answered yet")
    page.locator(".pc.own .take").click()
    expect(page.locator("#arc-radius")).to_be_in_viewport()
    page.locator("#arc-radius").fill("40")
    page.locator("#arc-arc_length").fill("30")
    expect(page.locator("#ask-hand-said")).to_have_text(say("numbers.open"))  # a question, and no stop
    expect(page.locator("#ask-open-said")).to_have_text(say("numbers.panel_hand"))
    page.locator("#arc-arc_length").blur()
    open_panel(page, "hand")
    page.locator("#side label.hand:has([value=right])").click()  # RIGHT of A-B: it turns left
    open_panel(page, "pieces")
    expect(told(page, "line-long")).to_contain_text("62' 0\"")
    expect(page.locator("#line-drawn-echo svg")).to_be_visible()
    page.locator("#line-start > summary").click()
    page.locator("[id=station]").fill("10+00")
    page.locator("#panel-pieces .thumb button").click()
    expect(page.locator("#ask-pieces-said")).to_contain_text(say("numbers.pieces_from", station="10+00"))


def test_what_is_wrong_in_an_arcs_row_moves_no_box_and_fits_the_screen(page: Page) -> None:
    """A wrong angle slid its box under Left and Right, and said why in a column one word wide."""
    places = [f"[id=after-0-{name}]" for name in ("radius", "central_angle", "turn")]

    def lie() -> list[tuple[int, int]]:
        """Where the three boxes begin, each beside the first."""
        found = [page.locator(place).bounding_box() for place in places]
        return [(round(box["x"]), round(box["y"] - found[0]["y"])) for box in found if box and found[0]]

    before = lie()
    page.locator(places[1]).fill("12' chord")
    wrong = page.locator("[id=after-0-central_angle-wrong]")
    expect(wrong).to_have_text(say("pieces.chord_here", place=say("form.piece_chord")))
    assert lie() == before
    told_box = wrong.bounding_box()
    assert told_box and told_box["width"] > 250 and page.evaluate(WIDE) == []
    page.locator(places[1]).fill("40")
    expect(wrong).to_be_hidden()


def test_an_arc_without_a_hand_says_so_within_the_screen(page: Page) -> None:
    page.locator("#panel-pieces > .scroll > .pick [data-put=arc]").click()
    page.locator("[id=after-2-radius]").fill("12 ft")
    page.locator("[id=after-2-central_angle]").fill("90")
    page.locator("[id=after-2-central_angle]").blur()
    wrong = page.locator("[id=after-2-turn-wrong]")
    expect(wrong).to_be_visible()
    assert page.evaluate(WIDE) == []
