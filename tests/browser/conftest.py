"""The built site, served on this machine only, in a real Chromium.

The page's policy forbids making code from text, so a test waits with ``wait_for_selector`` and never with
``wait_for_function``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Browser, Page, sync_playwright

from builder import browser, serve
from builder.house import SITE

# Python has to start in the page on a machine that runs other tests at the same time.
PATIENCE = 60_000  # milliseconds


@pytest.fixture(scope="session")
def site_url() -> Iterator[str]:
    """The address of the built site."""
    if not (SITE / "index.html").is_file():
        pytest.fail("dist/site is not there: run python3 build.py build", pytrace=False)
    with serve.served(SITE) as address:
        yield address


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    """A running Chromium: the one that BOWSTRING_BROWSER names or that is found on the machine."""
    program = browser.find()
    if program is None:
        pytest.fail(f"no browser found: set {browser.VARIABLE} or run python3 build.py test", pytrace=False)
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=program, args=browser.arguments())
        yield running
        running.close()


@pytest.fixture
def faults() -> list[str]:
    """What went wrong unseen: errors in the console, exceptions, requests to anywhere but the site.

    Must be empty when the test ends; a test that provokes a fault checks it and clears the list.
    """
    return []


@pytest.fixture
def open_page(chromium: Browser, site_url: str, faults: list[str]) -> Iterator[Callable[..., Page]]:
    """Opens the site in a fresh profile: ``open_page(width, height, path="", missing=pattern, **options)``.

    ``missing``: addresses that the network never answers.
    """
    contexts = []

    def opened(width: int = 1280, height: int = 900, path: str = "", missing: str = "", **options: object) -> Page:
        context = chromium.new_context(viewport={"width": width, "height": height}, **options)
        contexts.append(context)
        context.set_default_timeout(PATIENCE)
        page = context.new_page()
        page.on("pageerror", lambda error: faults.append(f"exception: {error}"))
        page.on("console", lambda line: line.type == "error" and faults.append(f"console: {line.text}"))

        def look(request: object) -> None:
            if not request.url.startswith((site_url, "data:", "blob:")):
                faults.append(f"request: {request.url}")

        context.on("request", look)
        if missing:
            context.route(missing, lambda route: route.abort())
        page.goto(site_url + path)
        return page

    yield opened
    for context in contexts:
        context.close()
    assert faults == []


@pytest.fixture
def page(open_page: Callable[..., Page]) -> Page:
    """The site in a desk-sized window, just opened."""
    return open_page()


@pytest.fixture
def phone(open_page: Callable[..., Page]) -> Page:
    """The site in a phone-sized window with touch, just opened."""
    return open_page(360, 740, has_touch=True, is_mobile=True, device_scale_factor=2)
