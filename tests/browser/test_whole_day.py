"""A whole day without a signal: one visit, the network gone, the browser restarted, a job done, printed and sent on."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from bowstring import answer, read_link
from bowstring.words import say
from builder import serve
from page_acting import PATIENCE, choose, type_in, wait_for

Profile = Callable[..., BrowserContext]


def do_a_job(page: Page) -> str:
    """Type a job as somebody on a site would; return what its sheet says."""
    page.click("#clear")
    page.locator("#form-job").evaluate("fold => fold.open = true")
    type_in(page, "title", "Kerb at the boathouse")
    type_in(page, "arc-radius", "62' 6\"")
    type_in(page, "arc-chord", "41' 3\"")
    type_in(page, "ends-A", "bollard")
    type_in(page, "ends-B", "gully")
    type_in(page, "tolerance", "1/4 in")
    choose(page, "drawn_to", "face")
    choose(page, "side", "right")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("page.status_computed"))
    assert "20' 7-1/2\"" in page.locator("#sheet-short").inner_text()
    return sheet_of(page)


def sheet_of(page: Page) -> str:
    """What the sheet says, but for the address that its link begins with."""
    return page.locator("#sheet").inner_text()


def link_of(page: Page) -> str:
    page.locator("#desk").evaluate("fold => fold.open = true")
    return page.locator("#link-text").input_value()


def printed_pages(page: Page, paper: str) -> int:
    content = page.pdf(format=paper)
    assert content.startswith(b"%PDF")
    return len(re.findall(rb"/Type\s*/Page\b(?!s)", content))


def save_page(page: Page, file: Path) -> None:
    """Have the page saved with its job, as one file."""
    with page.expect_download() as download:
        page.click("#save-page")
    download.value.save_as(file)


def first_page(context: BrowserContext) -> Page:
    return context.pages[0] if context.pages else context.new_page()


def test_one_visit_no_network_a_restart_a_job_printed_and_its_link_opened_elsewhere(
    profile: Profile, site: Path, tmp_path: Path
) -> None:
    with serve.served(site) as url:
        visit = profile("sender", url)
        page = first_page(visit)
        page.goto(url)
        wait_for(page, "computed")
        page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
        visit.close()
    shutil.copytree(tmp_path / "sender", tmp_path / "receiver", symlinks=True)  # another device after the same visit
    # The server is gone now, and each browser starts anew.
    sender = profile("sender", url, offline=True)
    page = first_page(sender)
    page.goto(url)
    page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
    expect(page.locator("#offline")).to_have_text(say("page.offline_ready"))
    wait_for(page, "computed")
    sheet = do_a_job(page)
    assert 4 <= printed_pages(page, "Letter") <= 12
    assert 4 <= printed_pages(page, "A4") <= 12
    link = link_of(page)
    sender.close()
    assert link.startswith(url + "#")

    receiver = profile("receiver", url, offline=True)
    page = first_page(receiver)
    page.goto(link)
    wait_for(page, "computed")
    assert sheet_of(page) == sheet
    shown = answer(read_link(link))["staked_shown"]
    expect(page.locator("#sheet-arc")).to_contain_text(shown["sagitta"])  # type: ignore[index]


def test_the_saved_page_does_the_same_with_no_network_ever(
    profile: Profile, own_page: Page, site_url: str, tmp_path: Path
) -> None:
    saved, url = tmp_path / "from the site.html", site_url
    wait_for(own_page, "computed")
    own_page.locator("#desk").evaluate("fold => fold.open = true")
    save_page(own_page, saved)

    sender = profile("sender", saved.as_uri(), offline=True)
    page = first_page(sender)
    page.goto(saved.as_uri())
    page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
    wait_for(page, "computed")
    sheet = do_a_job(page)
    assert 4 <= printed_pages(page, "Letter") <= 12
    link = link_of(page)
    assert link.startswith(url + "#"), "a page that was saved from a site makes links to that site"
    again = tmp_path / "from the saved page.html"
    save_page(page, again)
    sender.close()

    restarted = profile("sender", saved.as_uri(), offline=True)
    page = first_page(restarted)
    page.goto(saved.as_uri())
    wait_for(page, "computed")
    assert sheet_of(page) == sheet, "what was typed is kept"
    restarted.close()

    receiver = profile("receiver", tmp_path.as_uri(), offline=True)
    page = first_page(receiver)
    page.goto(f"{saved.as_uri()}#{link.partition('#')[2]}")
    wait_for(page, "computed")
    assert sheet_of(page) == sheet
    type_in(page, "arc-chord", "43 ft")  # work of this device's own, kept beside
    other = receiver.new_page()
    other.goto(again.as_uri())
    wait_for(other, "computed")
    assert sheet_of(other) == sheet, "the file that was saved with the job brings it along"
