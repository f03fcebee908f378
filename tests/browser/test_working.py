"""Working with the faces: what may not be built, a unit changed under bare numbers, the keys at the thumb."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from bowstring.words import say
from page_acting import (
    at_card,
    beside,
    choose,
    close_panel,
    look_at,
    open_desk,
    open_panel,
    reload,
    reveal,
    sheet_of,
    type_in,
    wait_for,
)

FACES = ("stakes", "checks", "build", "paper", "why")


def test_a_job_that_nobody_may_build_is_never_called_done(page: Page) -> None:
    choose(page, "drawn_to", "unsure")
    close_panel(page)
    for face in FACES:
        look_at(page, face)
        wait_for(page, "computed")
        expect(page.locator("#status")).not_to_have_text(say("numbers.state_done"))
        expect(page.locator("#status")).not_to_have_text(say("page.state_ready"))
        expect(page.locator(f"#face-{face} .stopbox, #face-{face} .stopped").first).to_be_visible()
    expect(page.locator("[data-do=done]")).to_have_count(0)
    assert say("sheet.stops") in sheet_of(page)
    choose(page, "drawn_to", "face")
    close_panel(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("page.state_ready"))
    expect(page.locator("[data-do=done]")).to_be_visible()
    assert say("sheet.stops") not in sheet_of(page)


def test_a_unit_changed_under_bare_numbers_is_asked_about(page: Page) -> None:
    open_panel(page, "jobs")
    page.click("#clear")
    page.wait_for_selector("html:not([data-panel])")
    choose(page, "unit", "ft")
    type_in(page, "arc-chord", "38")
    type_in(page, "arc-sagitta", "5.25")
    choose(page, "drawn_to", "face")
    choose(page, "side", "left")
    close_panel(page)
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_be_hidden()
    expect(page.locator("#status")).to_have_text(say("numbers.state_done"))

    choose(page, "unit", "m")
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_contain_text("Chord 38")
    expect(page.locator("#unit-note")).to_contain_text("Mid-ordinate 5.25")
    expect(page.locator("#status")).not_to_have_text(say("numbers.state_done"))
    close_panel(page)
    for face in FACES:
        look_at(page, face)
        wait_for(page, "computed")
        expect(page.locator("#status")).not_to_have_text(say("page.state_ready"))
    expect(page.locator("#unit-note")).to_be_visible()

    page.reload()  # nobody has said which unit holds
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_contain_text("Chord 38")
    open_desk(page)
    page.click("#file-out")
    expect(page.locator("#open-wrong")).to_contain_text(say("page.unit_open.wrong"))
    expect(page.locator("#link-said")).to_have_text(say("page.unit_first"))
    close_panel(page)

    page.click("#unit-back")
    wait_for(page, "computed")
    expect(page.locator("input[name=unit][value=ft]")).to_be_checked()
    expect(page.locator("#unit-note")).to_be_hidden()

    choose(page, "unit", "m")
    wait_for(page, "computed")
    page.click("#unit-keep")
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_be_hidden()
    expect(page.locator("input[name=unit][value=m]")).to_be_checked()
    close_panel(page)
    look_at(page, "stakes")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("page.state_ready"))
    assert page.locator("#arc-chord").input_value() == "38"


def test_one_step_a_card_by_button_and_its_place_is_kept(page: Page) -> None:
    look_at(page, "stakes")
    wait_for(page, "computed")
    card = page.locator("#stakes .card")
    expect(card).to_have_attribute("data-card", "1")
    for number in range(2, 6):
        page.locator("#stakes [data-do=done]").click()
        at_card(page, number)
    page.locator("#stakes [data-do=back]").click()
    expect(card).to_have_attribute("data-card", "4")
    reload(page)  # in the middle of the work: it goes on at the same card
    wait_for(page, "computed")
    expect(card).to_have_attribute("data-card", "4")
    expect(page.locator("#face-stakes")).to_be_visible()


def press(page: Page, *keys: str) -> None:
    """Press keys at the thumb, each by what stands on it or what it's called."""
    for key in keys:
        page.locator("#keys").get_by_role("button", name=key, exact=True).tap()


def test_the_signs_of_a_tape_are_at_the_thumb_on_a_phone(phone: Page) -> None:
    chord = phone.locator("#arc-chord")
    keys = phone.locator("#keys")
    chord.fill("")
    chord.tap()
    expect(chord).to_have_attribute("inputmode", "none")  # these keys, and not the phone's own
    expect(keys).to_be_visible()
    press(phone, "4", "1", "feet", "6", "1/2")
    expect(chord).to_have_value("41' 6-1/2\"")
    expect(chord).to_be_focused()
    press(phone, "abc")
    expect(keys).to_be_hidden()
    expect(chord).to_have_attribute("inputmode", "text")  # letters stay until somebody asks for numbers again
    phone.keyboard.type(" ")
    wait_for(phone, "computed")
    assert "41.542 ft" in beside(phone, "arc-chord", "beside")
    phone.locator("#arc-sagitta").tap()
    expect(keys).to_be_visible()
    press(phone, "Done")
    expect(keys).to_be_hidden()
    reveal(phone, "title")
    phone.locator("#title").tap()
    expect(keys).to_be_hidden()
    choose(phone, "unit", "m")
    close_panel(phone)
    wait_for(phone, "computed")
    phone.locator("#arc-sagitta").tap()
    expect(keys.get_by_role("button", name="point", exact=True)).to_be_visible()
    expect(keys.get_by_role("button", name="1/2", exact=True)).to_be_hidden()


def test_the_field_that_is_typed_in_is_never_under_the_keys(phone: Page) -> None:
    for name in ("radius", "sagitta", "tangent_length", "external"):
        field = phone.locator(f"#arc-{name}")
        field.tap()
        expect(phone.locator("#keys")).to_be_visible()
        expect(field).to_be_in_viewport(ratio=1)
        low = field.bounding_box()
        keys = phone.locator("#keys").bounding_box()
        assert low and keys and low["y"] + low["height"] <= keys["y"] + 1, name
        expect(phone.locator("#tell")).to_be_in_viewport()  # the help for this field, and no other
        press(phone, "Done")


# What comes near the screen is laid out, and may move what is there: until several frames are alike.
AT_REST = """() => new Promise((done) => {
  const place = document.querySelector("#face-paper .scroll");
  let last = "", alike = 0;
  const look = () => {
    const now = `${place.scrollTop} ${place.scrollHeight}`;
    alike = now === last ? alike + 1 : 0;
    last = now;
    if (alike < 10) requestAnimationFrame(look);
    else done();
  };
  look();
})"""


def test_each_way_to_a_part_of_the_long_sheet_ends_at_it(phone: Page) -> None:
    sheet_of(phone)
    ways = phone.locator("#sheet-contents a")
    assert ways.count() > 5
    for number in range(ways.count()):
        phone.locator("#sheet-contents").evaluate("fold => fold.open = true")
        ways.nth(number).evaluate("way => way.click()")
        phone.evaluate(AT_REST)
        place = ways.nth(number).get_attribute("href")
        title = phone.locator(f"{place} h3").first
        expect(title).to_be_in_viewport()
        expect(phone.locator("#sheet")).to_be_visible()
