"""A link keeps its place until its job is open; a copy that a browser saves by itself (Ctrl+S) has the job in it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from bowstring import read_link, write_link
from bowstring.words import say
from builder.website import SAVED
from page_acting import sheet_of, type_in, wait_for

JOB = {"bowstring": 1, "title": "Lodge drive", "arc": {"chord": "44 ft", "sagitta": "6 ft"}, "side": "left"}
LINK = write_link(JOB)
KEPT = """() => Object.keys(localStorage).filter((key) => key.startsWith("bowstring.2.job."))
  .map((key) => JSON.parse(localStorage.getItem(key)).fields)"""
Profile = Callable[..., BrowserContext]


def saved_by_the_browser(page: Page, file: Path) -> Path:
    """Write the page as it stands: what a browser saves of it."""
    file.write_text(page.content(), "utf-8")
    return file


def is_link(page: Page) -> bool:
    """Whether a job's link stands in the address: a face has a place of its own there."""
    return "#b" in page.url


def holds_its_job(page: Page) -> None:
    """Wait until the page has the job in it, for whoever saves it: a moment after the last change."""
    page.wait_for_selector("meta[name=bowstring-job][content^=b]", state="attached")


def shown(page: Page) -> dict[str, str]:
    return {name: page.locator(f"#{name}").input_value() for name in ("title", "arc-chord", "arc-sagitta")}


def stands_as_sent(page: Page) -> None:
    expect(page.locator("#sent-said")).to_have_text(say("page.sent"))
    expect(page.locator("html")).to_have_attribute("data-face", "stakes")


def test_a_copy_of_a_saved_page_has_the_job_that_was_open_in_it(profile: Profile, tmp_path: Path) -> None:
    sender = profile("sender", "file:", offline=True)
    page = sender.new_page()
    page.goto(f"{SAVED.as_uri()}#{LINK}")
    wait_for(page, "computed")
    assert not is_link(page)
    stands_as_sent(page)
    holds_its_job(page)
    untouched = saved_by_the_browser(page, tmp_path / "untouched.html")
    type_in(page, "arc-chord", "45 ft")
    sheet = sheet_of(page)
    holds_its_job(page)
    touched = saved_by_the_browser(page, tmp_path / "touched.html")
    sender.close()

    receiver = profile("receiver", "file:", offline=True)
    for file, chord in ((untouched, "44 ft"), (touched, "45 ft")):
        page = receiver.new_page()
        page.goto(file.as_uri())
        expect(page.locator("#title")).to_have_value("Lodge drive")
        wait_for(page, "computed")
        assert shown(page) == {"title": "Lodge drive", "arc-chord": chord, "arc-sagitta": "6 ft"}
        stands_as_sent(page)
        page.wait_for_selector("html[data-offline=ready]")
    assert sheet_of(page) == sheet
    assert page.evaluate(KEPT) == []  # nobody has chosen it yet
    type_in(page, "arc-chord", "46 ft")
    expect(page.locator("#sent-said")).to_have_text(say("page.copied"))
    copy, sent = sorted(page.evaluate(KEPT), key=lambda fields: "received" in fields)
    assert (copy["arc-chord"], sent["arc-chord"]) == ("46 ft", "45 ft")
    assert copy["parent"] == sent["received"] and copy["parent"].startswith("Lodge drive ") and "received" not in copy


def test_a_copy_of_the_site_s_page_says_that_it_is_none_that_works_and_where_its_job_is(
    open_page: Callable[..., Page], faults: list[str], site_url: str, tmp_path: Path
) -> None:
    page = open_page(path=f"#{LINK}")
    expect(page.locator("#title")).to_have_value("Lodge drive")
    wait_for(page, "computed")
    holds_its_job(page)
    file = saved_by_the_browser(page, tmp_path / "copy.html")
    page.goto(file.as_uri())
    expect(page.locator("#trouble")).to_contain_text(say("host.copy"))
    expect(page.locator("#status")).to_have_text(say("page.status_failed"))
    expect(page.locator("#job-name")).to_have_text("Lodge drive")
    assert page.locator("#offline").inner_text() == ""
    told = page.locator("#trouble code").inner_text()
    assert told.startswith(f"{site_url}#b") and read_link(told)["title"] == "Lodge drive"
    faults.clear()  # its scripts are refused, and it asked for them


def test_a_link_stays_in_the_address_until_its_job_is_open(open_page: Callable[..., Page], faults: list[str]) -> None:
    page = open_page(path=f"#{LINK}", missing="**/library.zip")
    expect(page.locator("#trouble")).to_contain_text(say("host.unreachable"))
    assert page.url.endswith(f"#{LINK}"), "Python isn't up: the link isn't lost"
    faults.clear()
    page.context.unroute_all()
    page.reload()
    expect(page.locator("#title")).to_have_value("Lodge drive")
    wait_for(page, "computed")
    assert not is_link(page)

    harmed = LINK[:-4] + LINK[-2:]
    page.evaluate("link => (location.hash = link)", harmed)
    expect(page.locator("#open-wrong")).not_to_be_empty()
    assert page.url.endswith(f"#{harmed}"), "it couldn't be opened"
    other = write_link({**JOB, "title": "Elsewhere"})
    page.evaluate("link => (location.hash = link)", other)
    expect(page.locator("#offer-title")).to_have_text("Elsewhere")
    assert page.url.endswith(f"#{other}"), "it isn't open yet"
    page.click("#offer-open")
    expect(page.locator("#title")).to_have_value("Elsewhere")
    assert not is_link(page)
    page.evaluate("link => (location.hash = link)", LINK)
    expect(page.locator("#offer")).to_be_visible()
    page.click("#offer-leave")
    assert not is_link(page) and page.locator("#title").input_value() == "Elsewhere"
