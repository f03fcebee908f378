"""Working with a sheet: what may not be built, a unit changed under bare numbers, one part at a time."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from bowstring.words import say
from page_acting import beside, choose, type_in, wait_for

# What comes near the screen is laid out, and may move what is there: until several frames are alike.
AT_REST = """() => new Promise((done) => {
  let last = "", alike = 0;
  const look = () => {
    const now = `${scrollY} ${document.documentElement.scrollHeight}`;
    alike = now === last ? alike + 1 : 0;
    last = now;
    if (alike < 4) requestAnimationFrame(look);
    else done();
  };
  look();
})"""


def test_a_sheet_that_nobody_may_build_is_never_called_up_to_date(page: Page) -> None:
    choose(page, "drawn_to", "unsure")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("page.status_stop"))
    first = page.locator("#sheet .part").first
    expect(first).to_contain_text(say("sheet.stops"))
    choose(page, "drawn_to", "face")
    wait_for(page, "computed")
    expect(page.locator("#sheet")).not_to_contain_text(say("sheet.stops"))


def test_a_unit_changed_under_bare_numbers_is_asked_about(page: Page) -> None:
    page.click("#clear")
    choose(page, "unit", "ft")
    type_in(page, "arc-chord", "38")
    type_in(page, "arc-sagitta", "5.25")
    choose(page, "drawn_to", "face")
    choose(page, "side", "left")
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_be_hidden()

    choose(page, "unit", "m")
    wait_for(page, "computed")
    expect(page.locator("#unit-note")).to_contain_text("Chord 38")
    expect(page.locator("#status")).to_have_text(say("page.status_stop"))
    expect(page.locator("#sheet .banner.stop")).to_contain_text("Mid-ordinate 5.25")

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
    expect(page.locator("#status")).to_have_text(say("page.status_computed"))
    assert page.locator("#arc-chord").input_value() == "38"


def test_one_part_at_a_time_by_button_and_by_key(page: Page) -> None:
    parts = page.locator("#sheet .part")
    count = parts.count()
    page.click("#parts")
    expect(page.locator("#numbers")).to_be_hidden()
    expect(page.locator("#part-number")).to_have_text(f"1 / {count}")
    for place in range(1, count):
        page.keyboard.press("ArrowRight")
        expect(parts.nth(place)).to_be_visible()
        expect(parts.nth(place - 1)).to_be_hidden()
    expect(page.locator("#part-next")).to_be_disabled()
    page.click("#part-previous")
    expect(page.locator("#part-number")).to_have_text(f"{count - 1} / {count}")
    page.reload()  # in the middle of the work: it goes on at the same part
    expect(page.locator("#part-number")).to_have_text(f"{count - 1} / {count}")
    expect(parts.nth(count - 2)).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.locator("#numbers")).to_be_visible()
    for place in range(count):
        expect(parts.nth(place)).to_be_visible()


def test_signs_of_feet_and_inches_are_at_hand_on_a_phone(phone: Page) -> None:
    chord = phone.locator("#arc-chord")
    keys = phone.locator("#keys")
    chord.fill("")
    chord.tap()
    expect(chord).to_have_attribute("inputmode", "decimal")
    for typed, key in (("41", "feet"), ("", "space"), ("6", "dash"), ("1", "slash"), ("2", "inches")):
        phone.keyboard.type(typed)
        keys.get_by_role("button", name=key, exact=True).tap()
    expect(chord).to_have_value("41' 6-1/2\"")
    expect(chord).to_be_focused()
    keys.get_by_role("button", name="abc").tap()
    phone.keyboard.type(" ")
    expect(chord).to_have_attribute("inputmode", "text")  # letters stay until somebody asks for numbers again
    keys.get_by_role("button", name="abc").tap()
    expect(chord).to_have_attribute("inputmode", "decimal")
    phone.wait_for_selector("html[data-sheet=computed]:not([data-stale])")
    assert "41' 6-1/2\"" in beside(phone, "arc-chord", "echo")
    phone.locator("#title").evaluate("field => field.closest('details').open = true")
    phone.locator("#title").tap()
    expect(keys).to_be_hidden()
    choose(phone, "unit", "m")
    phone.locator("#arc-sagitta").tap()
    expect(keys).to_be_hidden()


def test_each_way_to_a_part_ends_at_it(page: Page) -> None:
    page.set_viewport_size({"width": 360, "height": 740})
    ways = page.locator("#sheet-contents a")
    for number in range(ways.count()):
        page.locator("#sheet-contents").evaluate("fold => fold.open = true")
        ways.nth(number).click()
        page.evaluate(AT_REST)
        place = ways.nth(number).get_attribute("href")
        title = page.locator(f"{place} h3").first
        expect(title).to_be_in_viewport()
        top = title.evaluate("title => title.getBoundingClientRect().top")
        assert 48 <= top < 300 or page.evaluate("scrollY + innerHeight >= document.documentElement.scrollHeight - 2")
