"""On which hand of a line the slab lies: asked for who walks along it, as no line has an inside."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from accessible import hold_accessible
from bowstring import write_link
from bowstring.words import say
from lined_jobs import FIVE
from page_acting import choose, close_panel, open_panel, wait_for

OPEN = {key: value for key, value in FIVE.items() if key != "edge"}


def slab_panel(open_page: Callable[..., Page], job: dict[str, object]) -> Page:
    page: Page = open_page(360, 740, path=f"#{write_link(job)}")  # type: ignore[arg-type]
    wait_for(page, "computed")
    if page.locator("#face-numbers").is_hidden():
        page.locator("[data-tab=numbers]").click()
    open_panel(page, "slab")
    if "line" in job:
        page.wait_for_selector("html[data-lined]")
    return page


def offered(page: Page) -> list[str]:
    """What may be answered, as it stands on the screen, from the left."""
    told: list[str] = page.evaluate("""() => [...document.querySelectorAll("#edge label:not([data-value=''])")]
      .filter((one) => one.getClientRects().length)
      .sort((one, two) => one.getBoundingClientRect().left - two.getBoundingClientRect().left)
      .map((one) => [...one.querySelectorAll("span")].find((word) => word.offsetHeight).innerText)""")
    return told


@pytest.mark.parametrize(("hand", "edge"), [("left", "right"), ("right", "left")])
def test_the_side_of_a_line_is_answered_by_a_hand(open_page: Callable[..., Page], hand: str, edge: str) -> None:
    page = slab_panel(open_page, OPEN)
    assert offered(page) == [say("numbers.lies.left"), say("form.edge.centre"), say("numbers.lies.right")]
    page.locator("#edge label", has=page.get_by_text(say(f"numbers.lies_small.{hand}"), exact=True)).click()
    # Who has the slab on his left while he walks along its edge walks along the right one.
    expect(page.locator(f"#edge [value={edge}]")).to_be_checked()
    hold_accessible(page, "the side of a line")
    close_panel(page)
    expect(page.locator("#ask-slab-said")).to_contain_text(say(f"numbers.slab_lies.{edge}"))
    wait_for(page, "computed")
    page.locator("[data-tab=build]").click()
    expect(page.locator("#build-edges")).not_to_have_class("open")


def test_an_inside_said_of_an_arc_is_asked_anew_of_the_line(open_page: Callable[..., Page]) -> None:
    page = slab_panel(open_page, {**OPEN, "edge": "inside"})
    assert offered(page)[:3] == [say("numbers.lies.left"), say("form.edge.centre"), say("numbers.lies.right")]
    close_panel(page)
    expect(page.locator("#ask-slab-said")).to_contain_text(say("numbers.slab_no_side"))
    page.locator("[data-tab=build]").click()
    expect(page.locator("#face-build .ask.open")).to_contain_text(say("build.ask_edge"))


def test_of_an_arc_alone_the_pictures_ask(open_page: Callable[..., Page]) -> None:
    alone = {
        **{key: value for key, value in OPEN.items() if key not in ("line", "slab", "grade")},
        "arc": {"radius": "42 ft", "central_angle": "32"},
        "side": "left",
    }
    page = slab_panel(open_page, alone)
    assert offered(page)[:3] == [say(f"form.edge.{edge}") for edge in ("outside", "centre", "inside")]
    assert page.locator("#edge .where:visible svg").count() == 3
    choose(page, "edge", "left")  # a job that came with it shows it
    assert say("form.edge.left") in offered(page)


def test_the_question_that_is_open_is_scrolled_to(open_page: Callable[..., Page]) -> None:
    grade = {"slope": 2, "high": "A"}
    page: Page = open_page(360, 560, path=f"#{write_link({**FIVE, 'grade': grade})}")  # type: ignore[arg-type]
    wait_for(page, "computed")
    page.locator("[data-tab=build]").click()
    page.locator("#face-build .ask.open", has_text=say("build.ask_low")).click()
    expect(page.locator("#grade-low")).to_be_in_viewport(ratio=0.9)
    expect(page.locator("#grade-low legend")).to_be_in_viewport()
    seen = page.locator("#grade-slope").evaluate(
        "(one) => one.closest('.scroll').getBoundingClientRect().top > one.getBoundingClientRect().bottom"
    )
    assert seen  # the panel isn't at its top, where another question stands
    expect(page.locator("label[for=grade-slope]")).to_have_text(say("form.grade_slope.of_line"), use_inner_text=True)
    ends = [say(f"form.grade_high.{end}.of_line") for end in "AB"]
    assert page.locator("#grade-high label:not([data-value=''])").all_inner_texts() == ends


def test_what_stops_an_arc_without_its_turn_is_led_to(open_page: Callable[..., Page]) -> None:
    page: Page = open_page(360, 740, path=f"#{write_link(FIVE)}")  # type: ignore[arg-type]
    wait_for(page, "computed")
    if page.locator("#face-numbers").is_hidden():
        page.locator("[data-tab=numbers]").click()
    open_panel(page, "pieces")
    page.locator("#panel-pieces > .scroll > .pick [data-put=arc]").click()
    page.locator("[id=after-3-radius]").fill("30 ft")
    page.locator("[id=after-3-central_angle]").fill("20")
    expect(page.locator("#line-long-echo")).to_have_text(say("pieces.waits_turn", number=6))
    expect(page.locator("[id=after-3-turn-wrong]")).not_to_be_empty()
    page.wait_for_selector("html:not([data-stale])")  # what is said of it stands
    page.locator("#panel-pieces > .scroll").evaluate("(one) => { one.scrollTop = 0; }")
    expect(page.locator("[id=after-3-turn]")).not_to_be_in_viewport()
    page.locator("#status").click()
    expect(page.locator("[id=after-3-turn]")).to_be_in_viewport()
