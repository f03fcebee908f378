"""Whatever the page asks its worker can fail: each question has its catch, says so, and leaves the work as it was."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import Page, expect

from bowstring import write_link
from bowstring.words import say
from builder.website import SCRIPTS
from page_acting import open_desk, type_in, wait_for

# A worker that can be made to fail: it answers each question with an error, as for an exception in Python.
FAILING = """
window.asked = [];
window.Worker = class extends Worker {
  postMessage(data, ...rest) {
    if (!window.failing || !data.call) return super.postMessage(data, ...rest);
    window.asked.push(data.call);
    setTimeout(() => this.dispatchEvent(new MessageEvent("message", { data: { id: data.id, error: "made to fail" } })));
  }
};
"""
FAIL = "window.failing = true"
LINK = write_link({"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}})
CALL = re.compile(r"""(?:ask|giveFile|openText)\("([a-z_]+)\"""")


def calls_of_the_page() -> set[str]:
    """Every question that a script of the page asks by its name."""
    return {name for file in SCRIPTS.glob("*.js") for name in CALL.findall(file.read_text("utf-8"))}


def test_every_question_that_fails_is_told_and_loses_nothing(open_page: Callable[..., Page], tmp_path: Path) -> None:
    page = open_page(before=FAILING)
    wait_for(page, "computed")
    type_in(page, "arc-chord", "43 ft")
    wait_for(page, "computed")
    open_desk(page)
    page.evaluate(FAIL)
    wrong, failed = page.locator("#open-wrong"), "made to fail"
    for button in ("#file-out", "#stakes-out"):
        wrong.evaluate("place => (place.textContent = '')")
        page.click(button)
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

    fold = page.locator("#sheet [data-mistake]").first
    for _ in range(2):  # and once more when it's opened again
        fold.evaluate("fold => { fold.open = false; }")
        fold.evaluate("fold => { fold.open = true; }")
        expect(fold.locator("p.wrong")).to_have_text(f"{say('page.desk_ask_failed')} {failed}")
    page.evaluate("window.failing = false")
    fold.evaluate("fold => { fold.open = false; }")
    fold.evaluate("fold => { fold.open = true; }")
    expect(fold.locator("svg").first).to_be_attached()
    expect(fold.locator("p.wrong")).to_have_count(0)

    page.evaluate(FAIL)
    page.locator("#form-ground").evaluate("fold => (fold.open = true)")
    page.click("#draw-tape")
    plan = page.locator("#site-plan svg")
    plan.scroll_into_view_if_needed()
    for x, y in ((90, 90), (120, 90), (120, 120)):
        plan.click(position={"x": x, "y": y})
    page.click("#draw-done")
    expect(page.locator("#draw-wrong")).to_have_text(failed)
    page.click("#draw-cancel")

    type_in(page, "arc-chord", "42 ft")  # the way to take first
    expect(page.locator("#trouble")).to_contain_text(say("page.trouble_fault"))
    expect(page.locator("#trouble code")).to_have_text(failed)
    assert calls_of_the_page() - set(page.evaluate("window.asked")) == {"sheet"}, "asked only when that is answered"
    page.evaluate("window.failing = false")
    type_in(page, "arc-chord", "41 ft")
    wait_for(page, "computed")
    expect(page.locator("#trouble")).to_be_hidden()
