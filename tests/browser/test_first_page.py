"""The page in a real browser: an empty face at once, then Python's own answer to whatever is typed."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from bowstring import answer
from bowstring.demo import DEMO
from bowstring.faces.questions import ROWS
from bowstring.words import say
from page_acting import (
    PATIENCE,
    beside,
    choose,
    close_panel,
    look_at,
    open_panel,
    reveal,
    sheet_of,
    show_example,
    sign,
    type_in,
    wait_for,
)

EVIL = "<img src=x onerror=alert(1)></script>"
TEXTS = ("title", "note", "ends-A", "ends-B", "ties-A-0-to", "ties-A-1-to")
PANELS = ("hand", "line", "ends", "way", "fine", "method", "rest", "jobs")
FACES = ("numbers", "stakes", "checks", "build", "paper", "why")


def read_out(page: Page, name: str) -> str | None:
    """What follows for a measure that isn't given."""
    return page.locator(f"#arc-{name}").get_attribute("placeholder")


def said(page: Page) -> str:
    """Everything on the face of the numbers, what stands in its fields included."""
    fields = page.locator("#numbers-face input").evaluate_all("all => all.map((one) => [one.value, one.placeholder])")
    return f"{page.locator('#numbers-face').inner_text()} {fields}"


def test_an_empty_face_stands_there_before_python_does(open_page: Callable[..., Page]) -> None:
    page = open_page(java_script_enabled=False)
    assert sign(page) == "prebuilt"
    assert page.locator("html").get_attribute("data-version")
    expect(page.locator("noscript p")).to_have_text(say("page.no_script"))
    expect(page.locator("#live-drawing svg")).to_be_visible()
    for name in ROWS:
        expect(page.locator(f"#arc-{name}")).to_be_visible()
        assert page.locator(f"#arc-{name}").input_value() == "" and not read_out(page, name)


def test_python_s_empty_face_is_the_one_made_at_build_time(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740)
    built = said(page)
    wait_for(page, "computed")
    assert said(page) == built
    expect(page.locator("#status")).to_have_text(say("numbers.state_missing_2"))
    expect(page.locator("[data-bad], [aria-invalid=true]")).to_have_count(0)


def test_the_example_is_offered_and_not_kept_before_it_is_changed(open_page: Callable[..., Page]) -> None:
    page = open_page(360, 740)
    wait_for(page, "computed")
    page.locator("#ask-example").scroll_into_view_if_needed()
    show_example(page)
    assert page.locator("#arc-chord").input_value() == "38 ft"
    expect(page.locator("#status")).to_have_text(say("numbers.state_done"))
    expect(page.locator("#job-name")).to_contain_text(str(DEMO["title"]))
    open_panel(page, "jobs")
    expect(page.locator("#jobs-none")).to_be_visible()
    type_in(page, "arc-chord", "39 ft")
    open_panel(page, "jobs")
    expect(page.locator("#job-list li")).to_have_count(1)


def test_what_is_typed_changes_what_follows_and_each_face(page: Page) -> None:
    type_in(page, "arc-chord", "44' 6-1/2\"")
    assert sign(page) == "prebuilt", "what stands there is not the answer to these numbers"
    wait_for(page, "computed")
    told = answer({**DEMO, "arc": {"chord": "44' 6-1/2\"", "sagitta": "5' 3\""}})
    assert read_out(page, "radius") == told["arc_shown"]["radius"]  # type: ignore[index]
    assert beside(page, "arc-chord", "beside").endswith("44.542 ft")
    assert told["arc_shown"]["radius"] in sheet_of(page)  # type: ignore[index]


def test_typing_before_python_is_up_is_not_lost(own_page: Page) -> None:
    page = own_page
    type_in(page, "arc-chord", "50 ft")
    type_in(page, "arc-sagitta", "6 ft")
    wait_for(page, "computed")
    assert read_out(page, "radius") == answer({"arc": {"chord": "50 ft", "sagitta": "6 ft"}})["arc_shown"]["radius"]  # type: ignore[index]
    assert page.locator("#arc-chord").input_value() == "50 ft"


def test_the_newest_of_many_changes_wins_and_the_caret_stays(page: Page) -> None:
    page.locator("#arc-chord").fill("")
    page.locator("#arc-chord").press_sequentially("61.25 ft", delay=30)
    wait_for(page, "computed")
    expect(page.locator("#arc-chord-beside")).to_contain_text("61' 3\"")
    assert page.evaluate("document.activeElement.id") == "arc-chord"
    assert page.evaluate("document.activeElement.selectionStart") == len("61.25 ft")


def test_a_third_number_is_held_at_once_and_let_go_with_a_button(page: Page) -> None:
    """Never a silent replacement: all three stand, and the one that differs says by how much."""
    let_go = page.locator("[data-let-go]:visible")
    expect(let_go).to_have_count(0)
    type_in(page, "arc-radius", "36 ft")
    row = page.locator("[data-row=arc-radius]")
    expect(row).to_have_attribute("data-state", "differs")
    expect(page.locator("#arc-radius-wrong")).to_contain_text("37' 0-1/16\"")
    expect(page.locator("#arc-chord")).to_have_value("38 ft")
    expect(let_go).to_have_count(3)
    wait_for(page, "computed")
    expect(page.locator("#face-stakes .stopped")).to_be_visible()
    page.locator("[data-let-go=arc-radius]").click()
    expect(row).to_have_attribute("data-state", "read")
    assert read_out(page, "radius") == "37' 0-1/16\""
    wait_for(page, "computed")
    expect(page.locator("#face-stakes .stopped")).to_have_count(0)


def test_what_cannot_be_used_is_refused_beside_its_field(page: Page) -> None:
    type_in(page, "arc-sagitta", "5 3")
    wait_for(page, "refused")
    expect(page.locator("[data-row=arc-sagitta]")).to_have_attribute("data-state", "wrong")
    expect(page.locator("#tell")).to_contain_text("5' 3\"")
    assert page.locator("#arc-sagitta").input_value() == "5 3"
    assert page.locator("#arc-sagitta").get_attribute("aria-invalid") == "true"
    expect(page.locator("#face-stakes .card")).to_have_count(0)
    for face in ("checks", "paper", "why"):
        look_at(page, face)
        wait_for(page, "refused")
        expect(page.locator(f"#face-{face} .stopbox")).to_contain_text(say("page.not_yet"))
    type_in(page, "arc-sagitta", "5' 3\"")
    look_at(page, "stakes")
    wait_for(page, "computed")
    expect(page.locator("#face-stakes .card")).to_be_visible()
    assert beside(page, "arc-sagitta", "wrong") == ""
    assert page.locator("#arc-sagitta").get_attribute("aria-invalid") is None


def test_what_is_wrong_in_a_panel_is_seen_from_outside_it(page: Page) -> None:
    reveal(page, "got-2-stake") if page.locator("[id='got-2-stake']").count() else None
    type_in(page, "got-0-sagitta", "1 ft")
    type_in(page, "got-0-stake", "Q9")
    expect(page.locator("#got-0-stake-wrong")).to_contain_text("Q9")
    expect(page.locator("#got-0-stake-wrong")).to_be_visible()
    close_panel(page)
    expect(page.locator("#ask-rest")).to_have_attribute("data-state", "wrong")
    expect(page.locator("#ask-rest-said")).to_contain_text("Q9")
    wait_for(page, "refused")


def test_another_unit_is_read_and_shown(page: Page) -> None:
    choose(page, "unit", "m")
    close_panel(page)
    wait_for(page, "computed")
    expect(page.locator("#unit-button [data-unit]")).to_have_text("m")
    assert page.locator("#arc-chord").get_attribute("inputmode") == "decimal"
    type_in(page, "arc-chord", "11.6")
    type_in(page, "arc-sagitta", "1,6")
    wait_for(page, "computed")
    expect(page.locator("#mark")).to_have_value("")  # the example's mark is an inch tape's: the usual one stands
    assert "11.600 m" in sheet_of(page)
    assert beside(page, "arc-chord", "beside") == "11.6000 m"


def test_a_mark_goes_along_with_its_unit(page: Page) -> None:
    expect(page.locator("#mark")).to_have_value("1/16 in")
    choose(page, "unit", "m")
    wait_for(page, "computed")
    expect(page.locator("#mark")).to_have_value("")
    page.locator("#mark").select_option("0.001 m")
    choose(page, "unit", "mm")
    expect(page.locator("#mark")).to_have_value("")
    choose(page, "unit", "m")
    expect(page.locator("#mark")).to_have_value("0.001 m")
    wait_for(page, "computed")
    assert beside(page, "mark", "echo") == beside(page, "mark", "wrong") == ""


def test_the_other_hand_turns_the_words(page: Page) -> None:
    choose(page, "side", "right")
    wait_for(page, "computed")
    expect(page.locator("#ask-hand-said")).to_have_text(
        say("numbers.hand_standing", hand=say("numbers.hand.right"), turn=say("numbers.hand.left")),
        use_inner_text=False,
    )
    assert say("hand.standing", hand="right", turn="left") in sheet_of(page)


def test_with_one_end_the_form_asks_which_way_it_turns(page: Page) -> None:
    open_panel(page, "hand")
    expect(page.locator("#turn")).to_be_hidden()
    choose(page, "start", "one-end")
    close_panel(page)
    open_panel(page, "hand")
    expect(page.locator("#side")).to_be_hidden()
    for name in ("name", "outline"):  # the example's hedge would be in the way of what finds the other end
        type_in(page, f"ground-3-{name}", "")
    choose(page, "ground-3-stops", "")
    choose(page, "turn", "left")
    wait_for(page, "computed")
    assert say("hand.walking", turn="left", hand="right") in sheet_of(page)


def test_the_pictures_of_the_hands_answer_at_a_touch_and_lead_back(phone: Page) -> None:
    open_panel(phone, "hand")
    phone.locator("#side label.hand").nth(1).tap()
    phone.wait_for_selector("html:not([data-panel])")
    expect(phone.locator("input[name=side][value=right]")).to_be_checked()
    expect(phone.locator("#ask-hand-said")).to_contain_text(say("numbers.hand.right"))


def test_a_new_job_empties_the_form_and_can_be_undone(page: Page) -> None:
    sheet = sheet_of(page)
    open_panel(page, "jobs")
    page.locator("#clear").click()
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("numbers.state_missing_2"))
    for name in (*TEXTS, "arc-chord", "arc-sagitta", "tolerance", "levels"):
        assert page.locator(f"[id='{name}']").input_value() == ""
    obstacles = page.locator("[data-rows=ground] > *")
    expect(obstacles).to_have_count(1)
    expect(page.locator("#undo-said")).to_have_text(say("page.undo_clear"))
    page.locator("#undo-take").click()
    expect(page.locator("#undo")).to_be_hidden()
    expect(obstacles).to_have_count(len(DEMO["ground"]) + 1)  # type: ignore[arg-type]
    wait_for(page, "computed")
    assert sheet_of(page) == sheet


def test_what_somebody_typed_is_shown_as_text(page: Page) -> None:
    for name in TEXTS:
        type_in(page, name, EVIL)
    type_in(page, "ends-B", f"{EVIL}B")  # two landmarks that are alike stop the sheet
    for row in range(2):
        type_in(page, f"ties-A-{row}-distance", "3 ft")
    wait_for(page, "computed")
    expect(page.locator("#job-name")).to_have_text(EVIL)
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        assert page.locator("img, main script").count() == 0
    assert sheet_of(page).count(EVIL) >= 5
    assert page.locator("#sheet h2").inner_text() == EVIL
    assert page.locator("img, main script").count() == 0
    for name in ("arc-chord", "arc-central_angle", "levels", "got-0-stake"):
        before = page.locator(f"[id='{name}']").input_value()
        type_in(page, name, EVIL)
        wait_for(page, "refused")
        expect(page.locator(f"[id='{name}-wrong']")).not_to_be_empty()
        assert page.locator("img").count() == 0
        type_in(page, name, before)


# What is wider than the box that it stands in, of what is on screen. Wide drawings and tables scroll in themselves.
WIDER = """() => [...document.querySelectorAll(".face, .panel, .scroll, .made, .card, .asks, .part, .thumb")]
  .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
  .map((one) => `${one.id || one.className} ${one.scrollWidth} ${one.clientWidth}`)"""
SIZES = ((320, 568), (360, 740), (740, 360), (820, 1180), (1280, 720), (1920, 1080))


@pytest.mark.parametrize("face", [*FACES, *(f"panel {name}" for name in PANELS)])
def test_nothing_is_wider_than_the_window(page: Page, face: str) -> None:
    if face.startswith("panel"):
        open_panel(page, face.removeprefix("panel "))
    else:
        look_at(page, face)
        wait_for(page, "computed")
    page.evaluate("document.querySelectorAll('details').forEach((fold) => (fold.open = true))")
    if face == "paper":
        page.wait_for_selector("#sheet .part", timeout=PATIENCE)
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        assert page.evaluate("document.documentElement.scrollWidth") <= width, width
        assert page.evaluate(WIDER) == [], width


def test_the_long_sheet_is_made_when_it_is_opened_and_belongs_to_the_numbers(page: Page) -> None:
    look_at(page, "paper")
    wait_for(page, "computed")
    expect(page.locator("#sheet")).to_be_empty()
    assert "38' 0\"" in sheet_of(page)
    type_in(page, "arc-chord", "39 ft")
    expect(page.locator("#sheet")).to_be_empty()  # it was another job's
    wait_for(page, "computed")
    sheet = sheet_of(page)
    assert "39' 0\"" in sheet and "38' 0\"" not in sheet


def test_what_is_folded_on_the_page_is_folded_on_paper(page: Page) -> None:
    look_at(page, "paper")
    wait_for(page, "computed")
    page.emulate_media(media="print")
    expect(page.locator("#paper .side").first).to_be_visible()
    expect(page.locator("#sheet")).to_be_hidden()
    expect(page.locator("#form")).to_be_hidden()
    page.emulate_media(media="null")
    sheet_of(page)
    page.emulate_media(media="print")
    expect(page.locator("#sheet .part").first).to_be_visible()
    expect(page.locator("#form")).to_be_hidden()
