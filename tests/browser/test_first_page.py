"""The page in a real browser: the example at once, then Python's own answer to whatever is typed."""

from __future__ import annotations

import re
from collections.abc import Callable

from playwright.sync_api import Page, expect

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.words import say
from page_acting import beside, sign, type_in, unfold, wait_for

EVIL = "<img src=x onerror=alert(1)></script>"
TEXTS = ("title", "note", "ends-A", "ends-B", "ties-A-0-to", "ties-A-1-to")


def test_a_whole_sheet_stands_there_before_python_does(open_page: Callable[..., Page]) -> None:
    page = open_page(java_script_enabled=False)
    assert sign(page) == "prebuilt"
    assert page.locator("html").get_attribute("data-version")
    sheet = page.locator("#sheet")
    expect(sheet).to_contain_text(say("page.example"))
    expect(sheet).to_contain_text(str(DEMO["title"]))
    expect(sheet.locator("svg").first).to_be_visible()
    assert page.locator("#arc-chord").input_value() == "38 ft"


def test_python_s_answer_replaces_the_example_made_at_build_time(own_page: Page) -> None:
    page = own_page
    built = page.locator("#sheet").inner_text()
    wait_for(page, "computed")
    assert page.locator("#sheet").inner_text() == built
    expect(page.locator("#status")).to_have_text(say("page.status_example"))


def test_what_is_typed_changes_the_sheet(page: Page) -> None:
    type_in(page, "arc-chord", "44' 6-1/2\"")
    assert sign(page) == "prebuilt", "a sheet of older numbers is not the answer to these"
    wait_for(page, "computed")
    shown = answer({**DEMO, "arc": {"chord": "44' 6-1/2\"", "sagitta": "5' 3\""}})["arc_shown"]
    row = page.locator("#sheet-arc tbody tr", has_text=re.compile("^radius"))
    expect(row.locator("td")).to_have_text(shown["radius"])  # type: ignore[index]
    assert beside(page, "arc-chord", "echo").endswith("44' 6-1/2\" = 44.5417 ft")
    banner = page.locator("#sheet .leftover")
    expect(banner).to_contain_text(say("form.sagitta"))


def test_typing_before_python_is_up_is_not_lost_and_the_example_is_called_out_of_date(own_page: Page) -> None:
    page = own_page
    type_in(page, "arc-chord", "50 ft")
    if sign(page) == "prebuilt":
        expect(page.locator("#stale")).to_be_visible()
    wait_for(page, "computed")
    expect(page.locator("#stale")).to_be_hidden()
    expect(page.locator("#sheet-arc tbody tr", has_text=re.compile("^chord")).locator("td")).to_have_text("50' 0\"")
    assert page.locator("#arc-chord").input_value() == "50 ft"


def test_the_newest_of_many_changes_wins_and_the_caret_stays(page: Page) -> None:
    page.locator("#arc-chord").fill("")
    page.locator("#arc-chord").press_sequentially("61.25 ft", delay=30)
    wait_for(page, "computed")
    expect(page.locator("#sheet-arc tbody tr", has_text=re.compile("^chord")).locator("td")).to_have_text("61' 3\"")
    assert page.evaluate("document.activeElement.id") == "arc-chord"
    assert page.evaluate("document.activeElement.selectionStart") == len("61.25 ft")


def test_what_cannot_be_used_is_refused_beside_its_field(page: Page) -> None:
    type_in(page, "arc-sagitta", "5 3")
    wait_for(page, "refused")
    expect(page.locator("#sheet")).to_be_hidden()
    expect(page.locator("#arc-sagitta-wrong")).to_be_visible()
    assert "5' 3\"" in beside(page, "arc-sagitta", "wrong")
    assert page.locator("#arc-sagitta").input_value() == "5 3"
    assert page.locator("#arc-sagitta").get_attribute("aria-invalid") == "true"
    page.locator("#errors a").click()
    assert page.evaluate("document.activeElement.id") == "arc-sagitta"
    type_in(page, "arc-sagitta", "5' 3\"")
    wait_for(page, "computed")
    expect(page.locator("#sheet")).to_be_visible()
    assert beside(page, "arc-sagitta", "wrong") == ""


def test_an_error_in_a_folded_part_is_seen(page: Page) -> None:
    change = "(field, text) => { field.value = text; field.dispatchEvent(new Event('input', { bubbles: true })); }"
    page.locator("#got-2-sagitta").evaluate(change, "1 ft")
    page.locator("#got-2-stake").evaluate(change, "Q9")
    wait_for(page, "refused")
    expect(page.locator("#got-2-stake-wrong")).to_contain_text("Q9")
    expect(page.locator("#got-2-stake-wrong")).to_be_visible()


def test_another_unit_is_read_and_shown(page: Page) -> None:
    page.locator("input[name=unit][value=m]").check()
    expect(page.locator("#arc-chord-beside")).to_have_text("m")
    assert page.locator("#arc-chord").get_attribute("inputmode") == "decimal"
    type_in(page, "arc-chord", "11.6")
    type_in(page, "arc-sagitta", "1,6")
    wait_for(page, "computed")
    expect(page.locator("#mark")).to_have_value("")  # the example's mark is an inch tape's: the usual one stands
    expect(page.locator("#sheet-arc tbody tr", has_text=re.compile("^chord")).locator("td")).to_have_text("11.600 m")
    assert "11.600 m" in beside(page, "arc-chord", "echo")


def test_a_mark_goes_along_with_its_unit(page: Page) -> None:
    expect(page.locator("#mark")).to_have_value("1/16 in")
    page.locator("input[name=unit][value=m]").check()
    wait_for(page, "computed")
    expect(page.locator("#mark")).to_have_value("")
    page.locator("#mark").select_option("0.001 m")
    page.locator("input[name=unit][value=mm]").check()
    expect(page.locator("#mark")).to_have_value("")
    page.locator("input[name=unit][value=m]").check()
    expect(page.locator("#mark")).to_have_value("0.001 m")
    wait_for(page, "computed")
    assert beside(page, "mark", "echo") == beside(page, "mark", "wrong") == ""


def test_the_other_hand_turns_the_words(page: Page) -> None:
    page.locator("input[name=side][value=right]").check()
    wait_for(page, "computed")
    expect(page.locator("#sheet-short")).to_contain_text(say("hand.standing", hand="right"))


def test_with_one_end_the_form_asks_which_way_it_turns(page: Page) -> None:
    expect(page.locator("#turn")).to_be_hidden()
    page.locator("input[name=start][value=one-end]").check()
    expect(page.locator("#side")).to_be_hidden()
    unfold(page)
    # The example's hedge would be in the way of what finds the other end.
    type_in(page, "ground-3-outline", "90 ft, 7 ft; 99 ft, 7 ft; 99 ft, 9 ft")
    page.locator("input[name=turn][value=left]").check()
    wait_for(page, "computed")
    expect(page.locator("#sheet-short")).to_contain_text(say("hand.walking", turn="left", hand="right"))


def test_clearing_empties_the_form_and_can_be_taken_back(page: Page) -> None:
    sheet = page.locator("#sheet").inner_text()
    page.locator("#clear").click()
    wait_for(page, "refused")
    for name in (*TEXTS, "arc-chord", "arc-sagitta", "tolerance", "levels"):
        assert page.locator(f"[id='{name}']").input_value() == ""
    obstacles = page.locator("[data-rows=ground] > *")
    expect(obstacles).to_have_count(1)
    page.locator("#restore").click()
    expect(obstacles).to_have_count(len(DEMO["ground"]) + 1)
    wait_for(page, "computed")
    assert page.locator("#sheet").inner_text() == sheet


def test_what_somebody_typed_is_shown_as_text(page: Page) -> None:
    unfold(page)
    for name in TEXTS:
        type_in(page, name, EVIL)
    type_in(page, "ends-B", f"{EVIL}B")  # two landmarks that are alike stop the sheet
    for row in range(2):
        type_in(page, f"ties-A-{row}-distance", "3 ft")
    wait_for(page, "computed")
    assert page.locator("#sheet h2").inner_text() == EVIL
    assert (page.locator("#sheet").text_content() or "").count(EVIL) >= 5  # drawn parts off the screen, too
    assert page.locator("img, #sheet script").count() == 0
    for name in ("arc-chord", "arc-central_angle", "levels", "got-0-stake"):
        before = page.locator(f"[id='{name}']").input_value()
        type_in(page, name, EVIL)
        expect(page.locator(f"[id='{name}-wrong']")).to_be_visible()
        wait_for(page, "refused")
        assert page.locator("img").count() == 0
        type_in(page, name, before)


# A part off the screen adds nothing to the page's own width: what is wider in it would be cut off.
WIDER = """() => [...document.querySelectorAll(".part")].filter((part) => part.scrollWidth > part.clientWidth)
  .map((part) => part.id)"""


def test_nothing_is_wider_than_the_window(page: Page) -> None:
    unfold(page)
    for width in (360, 820, 1280, 1920):
        page.set_viewport_size({"width": width, "height": 900})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        assert page.evaluate(WIDER) == []


def test_a_finger_hits_what_it_aims_at(phone: Page) -> None:
    unfold(phone)
    targets = "a, button, summary, label.option, input[type=text], select, textarea"
    small = phone.evaluate(
        """(targets) => [...document.querySelectorAll(targets)]
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48)
          .map((one) => one.outerHTML)""",
        targets,
    )
    assert small == []


def test_folded_levels_stay_folded_on_screen_and_stand_open_on_paper(page: Page) -> None:
    page.locator("#sheet-level-2 summary").click()
    type_in(page, "arc-chord", "39 ft")
    wait_for(page, "computed")
    assert page.locator("#sheet-level-2-fold").get_attribute("open") is None
    page.evaluate("dispatchEvent(new Event('beforeprint'))")
    page.emulate_media(media="print")
    expect(page.locator("#sheet-level-2 .inside")).to_be_visible()
    expect(page.locator("#form")).to_be_hidden()
