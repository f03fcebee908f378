"""A newer version of the page: offered, never forced, whole or not at all, and the old one stays where it is used."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from bowstring.words import say
from builder import serve
from changing_site import ChangingSite
from page_acting import PATIENCE, open_desk, show_example, type_in, wait_for

LOOK_FOR_UPDATES = "document.dispatchEvent(new Event('visibilitychange'))"
CACHES = "caches.keys()"
FAILED_INSTALL = """navigator.serviceWorker.getRegistration().then((registration) => new Promise((done) => {
  registration.addEventListener("updatefound", () => {
    const { installing } = registration;
    installing.addEventListener("statechange", () => installing.state === "redundant" && done(true));
  });
  document.dispatchEvent(new Event("visibilitychange"));
}))"""


@pytest.fixture
def changing(site: Path, tmp_path: Path) -> ChangingSite:
    return ChangingSite(site, tmp_path)


def version_of(page: Page) -> str | None:
    return page.locator("html").get_attribute("data-version")


def on_the_device(page: Page) -> None:
    page.wait_for_selector("html[data-offline=ready]", timeout=PATIENCE)


def opened(context: BrowserContext, url: str) -> Page:
    page = context.new_page()
    page.goto(url)
    wait_for(page, "computed")
    on_the_device(page)
    return page


@pytest.fixture
def visit(profile: Callable[..., BrowserContext], changing: ChangingSite) -> object:
    """Serves the changing site and opens it: gives the context, its page and the address."""
    with serve.served(changing.folder) as url:
        context = profile("visitor", url)
        yield context, opened(context, url), url


def test_an_update_is_offered_and_never_taken_under_somebody_s_hands(
    visit: tuple[BrowserContext, Page, str], changing: ChangingSite
) -> None:
    context, page, _ = visit
    type_in(page, "arc-chord", "43 ft")
    changing.publish_next()
    page.evaluate(LOOK_FOR_UPDATES)
    expect(page.locator("#update")).to_be_visible(timeout=PATIENCE)
    assert version_of(page) == changing.version
    page.click("#update-later")
    expect(page.locator("#update")).to_be_hidden()
    assert page.locator("#arc-chord").input_value() == "43 ft"

    page.reload()  # the old version still, and whole
    wait_for(page, "computed")
    assert version_of(page) == changing.version
    expect(page.locator("#update")).to_be_visible(timeout=PATIENCE)
    with page.expect_navigation():
        page.click("#update-take")
    wait_for(page, "computed")
    assert version_of(page) == changing.next_version
    assert page.locator("#arc-chord").input_value() == "43 ft", "the work is kept"
    on_the_device(page)
    assert page.evaluate(CACHES) == [f"bowstring-{changing.next_version}"], "the old version is swept"

    context.set_offline(True)
    page.reload()
    wait_for(page, "computed")
    assert version_of(page) == changing.next_version


def test_a_page_of_the_old_version_keeps_its_files_until_it_is_closed(
    visit: tuple[BrowserContext, Page, str], changing: ChangingSite
) -> None:
    context, old, url = visit
    show_example(old)
    type_in(old, "arc-chord", "43 ft")
    wait_for(old, "computed")
    turning = opened(context, url)
    changing.publish_next()
    turning.evaluate(LOOK_FOR_UPDATES)
    expect(turning.locator("#update")).to_be_visible(timeout=PATIENCE)
    with turning.expect_navigation():
        turning.click("#update-take")
    wait_for(turning, "computed")
    assert version_of(turning) == changing.next_version
    kept = [f"bowstring-{version}" for version in (changing.version, changing.next_version)]
    assert sorted(old.evaluate(CACHES)) == sorted(kept)

    context.set_offline(True)  # the server has none of the old files any more, either
    assert version_of(old) == changing.version, "not loaded anew under somebody's hands"
    type_in(old, "arc-chord", "44 ft")
    wait_for(old, "computed")
    open_desk(old)
    with old.expect_download() as saved:  # needs every file of the old version
        old.click("#save-page")
    assert changing.version in Path(saved.value.path()).read_text("utf-8")


def test_a_version_that_doesn_t_arrive_whole_is_not_taken(
    visit: tuple[BrowserContext, Page, str], changing: ChangingSite, faults: list[str]
) -> None:
    """A file that is missing, then one that is another than its hash says."""
    context, page, _ = visit
    library = changing.publish_next() / "python" / "library.zip"
    content = bytearray(library.read_bytes())
    library.unlink()
    for _harm in ("missing", "changed"):
        assert page.evaluate(FAILED_INSTALL)
        expect(page.locator("#update")).to_be_hidden()
        assert page.evaluate(CACHES) == [f"bowstring-{changing.version}"], "nothing half fetched is left"
        content[len(content) // 2] ^= 1
        library.write_bytes(bytes(content))
    faults.clear()  # what was refused may be told in the console
    context.set_offline(True)
    page.reload()
    wait_for(page, "computed")
    assert version_of(page) == changing.version
    on_the_device(page)


def test_a_first_visit_that_doesn_t_arrive_whole_says_so_and_works(
    profile: Callable[..., BrowserContext], changing: ChangingSite, faults: list[str]
) -> None:
    (changing.folder / "icons" / "512.png").unlink()
    with serve.served(changing.folder) as url:
        page = profile("visitor", url).new_page()
        page.goto(url)
        wait_for(page, "computed")
        expect(page.locator("#offline")).to_have_text(say("page.offline_failed"), timeout=PATIENCE)
        assert page.locator("html").get_attribute("data-offline") is None
        assert page.evaluate(CACHES) == []
        type_in(page, "arc-chord", "43 ft")
        wait_for(page, "computed")
    faults.clear()  # the missing file


def test_a_storage_emptied_under_the_page_is_filled_again(visit: tuple[BrowserContext, Page, str]) -> None:
    context, page, _ = visit
    type_in(page, "arc-chord", "43 ft")
    page.evaluate("localStorage.clear()")
    page.evaluate("caches.keys().then((names) => Promise.all(names.map((name) => caches.delete(name))))")
    type_in(page, "arc-sagitta", "6 ft")
    wait_for(page, "computed")
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-chord").input_value() == "43 ft", "what was typed before was written again"
    on_the_device(page)
    context.set_offline(True)
    page.reload()
    wait_for(page, "computed")
    assert page.locator("#arc-sagitta").input_value() == "6 ft"
