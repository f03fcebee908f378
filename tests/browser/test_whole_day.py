"""A whole day without a signal: one visit, the network gone, the browser restarted, a job done, printed and sent on."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

from bowstring import answer, read_link
from bowstring.page.facing import FACES
from bowstring.words import say
from builder import serve
from page_acting import PATIENCE, choose, look_at, open_desk, sheet_of, type_in, wait_for

Profile = Callable[..., BrowserContext]


def do_a_job(page: Page) -> str:
    """Type a job as somebody on a site would; return what it says on every face."""
    open_desk(page)
    page.click("#clear")
    type_in(page, "title", "Kerb at the boathouse")
    type_in(page, "arc-radius", "62' 6\"")
    type_in(page, "arc-chord", "41' 3\"")
    type_in(page, "ends-A", "bollard")
    type_in(page, "ends-B", "gully")
    type_in(page, "tolerance", "1/4 in")
    choose(page, "drawn_to", "face")
    choose(page, "side", "right")
    choose(page, "method", "halving")  # a link names its method: both sheets are to say who chose it
    look_at(page, "stakes")
    wait_for(page, "computed")
    expect(page.locator("#status")).to_have_text(say("page.state_ready"))
    assert "20' 7-1/2\"" in sheet_of(page)
    return faces_of(page)


def faces_of(page: Page) -> str:
    """What every face says, but for the address that the paper's link begins with."""
    said = []
    for face in FACES:
        look_at(page, face)
        wait_for(page, "computed")
        expect(page.locator("#why [data-later]")).to_have_count(0)  # conclusions that take longer
        said.append(page.locator(f"#{face}").inner_text())
    return "\n".join([*said, sheet_of(page)])


def link_of(page: Page) -> str:
    open_desk(page)
    page.wait_for_selector("#link-copy:enabled")
    return page.locator("#link-text").input_value()


def prints_two_pages(page: Page) -> None:
    """Whatever face is looked at, it's the paper that is printed: one sheet, front and back; more only by choice."""
    assert printed_pages(page, "Letter") > 2  # the appendix is open
    page.evaluate("document.getElementById('appendix').open = false")
    for face in ("numbers", *FACES):
        look_at(page, face)
        wait_for(page, "computed")
        page.wait_for_selector("#paper article.paper", state="attached")
        assert (printed_pages(page, "Letter"), printed_pages(page, "A4")) == (2, 2), face


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
    prints_two_pages(page)
    link = link_of(page)
    sender.close()
    assert link.startswith(url + "#")

    receiver = profile("receiver", url, offline=True)
    page = first_page(receiver)
    page.goto(link)
    wait_for(page, "computed")
    assert faces_of(page) == sheet
    shown = answer(read_link(link))["staked_shown"]
    assert shown["sagitta"] in sheet_of(page)  # type: ignore[index]


def test_the_saved_page_does_the_same_with_no_network_ever(
    profile: Profile, own_page: Page, site_url: str, tmp_path: Path
) -> None:
    saved, url = tmp_path / "from the site.html", site_url
    wait_for(own_page, "computed")
    open_desk(own_page)  # nothing is typed yet: the page is saved for jobs to come
    save_page(own_page, saved)

    sender = profile("sender", saved.as_uri(), offline=True)
    page = first_page(sender)
    page.goto(saved.as_uri())
    page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)
    wait_for(page, "computed")
    sheet = do_a_job(page)
    prints_two_pages(page)
    link = link_of(page)
    assert link.startswith(url + "#"), "a page that was saved from a site makes links to that site"
    again = tmp_path / "from the saved page.html"
    save_page(page, again)
    sender.close()

    restarted = profile("sender", saved.as_uri(), offline=True)
    page = first_page(restarted)
    page.goto(saved.as_uri())
    wait_for(page, "computed")
    assert faces_of(page) == sheet, "what was typed is kept"
    restarted.close()

    receiver = profile("receiver", tmp_path.as_uri(), offline=True)
    page = first_page(receiver)
    page.goto(f"{saved.as_uri()}#{link.partition('#')[2]}")
    wait_for(page, "computed")
    assert faces_of(page) == sheet
    type_in(page, "arc-chord", "43 ft")  # work of this device's own, kept beside
    other = receiver.new_page()
    other.goto(again.as_uri())
    wait_for(other, "computed")
    assert faces_of(other) == sheet, "the file that was saved with the job brings it along"
