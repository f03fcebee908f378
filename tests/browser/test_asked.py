"""Whatever the page asks its worker can fail: each question has its catch, says so, and leaves the work as it was."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import Page, expect

from bowstring import write_link
from bowstring.words import say
from builder.website import SCRIPTS
from page_acting import close_panel, look_at, open_desk, open_panel, show_example, type_in, wait_for

# A worker that can be made to fail: it answers each question with an error, as for an exception in Python.
FAILING = """
window.asked = [];
window.Worker = class extends Worker {
  postMessage(data, ...rest) {
    const fails = window.failing || data.call === window.failingCall;
    if (!fails || !data.call) return super.postMessage(data, ...rest);
    window.asked.push(data.call);
    setTimeout(() => this.dispatchEvent(new MessageEvent("message", { data: { id: data.id, error: "made to fail" } })));
  }
};
"""
SHOWN_IN_METERS = (
    "if (origin !== 'null') localStorage.setItem('bowstring.2.shown', 'm');"  # a frame of its own has none
)
FAIL = "window.failing = true"
LINK = write_link({"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}})
CALL = re.compile(r"""(?:ask|asked|giveFile|openText)\("([a-z_]+)"|\bcall: "([a-z_]+)\"""")
LATER = {"numbers_later", "face", "link", "warm", "line_at", "set_back"}


def calls_of_the_page() -> set[str]:
    """Every question that a script of the page asks by its name."""
    found = (pair for file in SCRIPTS.glob("*.js") for pair in CALL.findall(file.read_text("utf-8")))
    return {name for pair in found for name in pair if name}


def test_every_question_that_fails_is_told_and_loses_nothing(open_page: Callable[..., Page], tmp_path: Path) -> None:
    page = open_page(before=FAILING + SHOWN_IN_METERS)
    wait_for(page, "computed")
    type_in(page, "arc-chord", "43 ft")
    wait_for(page, "computed")
    open_desk(page)
    page.evaluate(FAIL)
    wrong, failed = page.locator("#open-wrong"), "made to fail"
    page.click("#file-out")
    expect(wrong).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    job = tmp_path / "job.json"
    job.write_text("{}", "utf-8")
    page.locator("#link-in").fill(LINK)
    for act in (lambda: page.click("#link-open"), lambda: page.set_input_files("#file-in", job)):
        wrong.evaluate("place => (place.textContent = '')")
        act()
        expect(wrong).to_have_text(f"{say('page.desk_open_failed')} {failed}")
    page.evaluate("link => (location.hash = link)", LINK)
    expect(wrong).to_have_text(f"{say('page.desk_open_failed')} {failed}")
    assert page.url.endswith(LINK)

    page.evaluate("window.failing = false")
    close_panel(page)
    show_example(page)
    open_desk(page)
    page.click("[data-hand=files]")
    expect(page.locator("[data-file=people]")).to_be_visible()
    page.evaluate(FAIL)
    page.click("[data-file=people]")
    expect(wrong).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    page.click("[data-hand=qr]")
    expect(page.locator("#handed")).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    page.evaluate("window.failing = false")
    look_at(page, "checks")
    wait_for(page, "computed")
    page.evaluate(FAIL)
    wrong.evaluate("place => (place.textContent = '')")
    reading = page.locator("#checks input[data-check]").first
    reading.fill("1.2")  # which is put into the job's unit first
    reading.blur()
    expect(wrong).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    page.evaluate("window.failing = false; window.failingCall = 'fold'")
    look_at(page, "why")
    wait_for(page, "computed")
    # Conclusions come one by one: one that doesn't come says so, and doesn't vanish.
    heads = page.locator("#why [data-fold] > summary", has_text=failed)
    expect(heads.first).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    page.evaluate("window.failingCall = ''")
    page.evaluate(FAIL)
    wrong.evaluate("place => (place.textContent = '')")
    page.locator("[data-do=wall]").click()
    expect(wrong).to_contain_text(failed)
    expect(page.locator("#wall .picture svg")).to_have_count(0)
    page.evaluate("window.failing = false")
    look_at(page, "why")
    wait_for(page, "computed")
    page.evaluate("document.querySelector('#why [data-fold=mistakes]').open = true")
    expect(page.locator("#why [data-mistake]").first).to_be_attached()
    for place, call in (("#why [data-mistake]", "mistake"), ("#why [data-fold=arc]", "fold")):
        fold = page.locator(place).first
        page.evaluate(FAIL)
        for _ in range(2):  # and once more when it's opened again
            fold.evaluate("fold => { fold.open = false; }")
            fold.evaluate("fold => { fold.open = true; }")
            expect(fold.locator(".wrong")).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
        page.evaluate("window.failing = false")
        fold.evaluate("fold => { fold.open = false; }")
        fold.evaluate("fold => { fold.open = true; }")
        expect(fold.locator("svg, table").first).to_be_attached()
        expect(fold.locator(".wrong")).to_have_count(0)
        assert call in page.evaluate("window.asked")

    open_panel(page, "way")
    expect(page.locator("#draw-tape")).to_be_enabled()
    page.evaluate(FAIL)
    page.click("#draw-tape")
    plan = page.locator("#site-plan svg")
    plan.scroll_into_view_if_needed()
    for x, y in ((90, 90), (120, 90), (120, 120)):
        plan.click(position={"x": x, "y": y})
    page.click("#draw-done")
    expect(page.locator("#draw-wrong")).to_have_text(failed)
    page.click("#draw-cancel")
    page.evaluate("document.getElementById('ask-example').click()")
    expect(wrong).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    close_panel(page)
    look_at(page, "paper")
    page.evaluate("document.getElementById('appendix').open = true")
    expect(page.locator("#sheet")).to_have_text(f"{say('page.desk_ask_failed')} {failed}")

    type_in(page, "arc-chord", "42 ft")
    expect(page.locator("#trouble")).to_contain_text(say("page.trouble_fault"))
    expect(page.locator("#trouble code")).to_have_text(failed)
    left = calls_of_the_page() - set(page.evaluate("window.asked"))
    assert left <= LATER, "asked only when an earlier one is answered"
    page.evaluate("window.failing = false")
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    expect(page.locator("#trouble")).to_be_hidden()


def test_what_fails_meanwhile_shuts_no_panel_that_stands_there(open_page: Callable[..., Page]) -> None:
    """On a desk the numbers are asked for beside the stakes: when they fail, nothing closes under somebody's hands."""
    page = open_page(before=FAILING)
    wait_for(page, "computed")
    show_example(page)
    trouble = page.locator("#trouble")
    for call in ("numbers_later", "face"):
        for name in ("jobs", "way"):
            page.evaluate(f"window.failingCall = '{call}'")
            open_panel(page, name)
            expect(trouble).to_contain_text("made to fail")
            expect(page.locator(f"#panel-{name}")).to_be_visible()
            page.evaluate("window.failingCall = ''")
            close_panel(page)
            wait_for(page, "computed")
            expect(trouble).to_be_hidden()
    page.locator("#stakes [data-do=done]").click()  # past the locate ticket
    page.wait_for_selector("#stakes .card[data-card='2']")
    wait_for(page, "computed")
    page.evaluate("window.failingCall = 'numbers_later'")
    page.locator("#stakes [data-do=got]").click()
    expect(trouble).to_contain_text("made to fail")
    expect(page.locator("#stakes .got")).to_be_visible()
    page.evaluate("window.failingCall = 'face'")
    page.locator("#stakes .got input").first.fill("11' 4\"")
    # What it says is of what stood there before: the panel goes, and the card can be worked.
    expect(page.locator("#stakes .got")).to_have_count(0)
