"""The built site, served on this machine only, in a real Chromium.

The page's policy forbids making code from text, so a test waits with ``wait_for_selector`` and never with
``wait_for_function``.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import ExitStack, suppress
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Browser, BrowserContext, Error, Page, expect

from builder import browser, serve
from builder.house import SITE
from driving.drivers import playwright_here
from started_page import StartedPage

# Python has to start in the page on a machine that runs other tests at the same time.
PATIENCE = 60_000  # milliseconds
expect.set_options(timeout=PATIENCE)
ARGUMENTS = [*browser.arguments(), browser.UNOPTIMIZED]


@pytest.fixture(scope="session")
def site() -> Path:
    """The folder of the built site."""
    if not (SITE / "index.html").is_file():
        pytest.fail("dist/site is not there: run python3 build.py build", pytrace=False)
    return SITE


@pytest.fixture(scope="session")
def site_url(site: Path) -> Iterator[str]:
    """The address of the built site."""
    with serve.served(site) as address:
        yield address


@pytest.fixture(scope="session")
def program() -> str:
    """Chromium: the one that BOWSTRING_BROWSER names or that is found on the machine."""
    found = browser.find()
    if found is None:
        pytest.fail(f"no browser found: set {browser.VARIABLE} or run python3 build.py test", pytrace=False)
    return str(found)


@pytest.fixture(scope="session")
def chromium(program: str) -> Iterator[Browser]:
    """A running Chromium."""
    running = playwright_here().chromium.launch(executable_path=program, args=ARGUMENTS)
    yield running
    running.close()


@pytest.fixture
def faults() -> list[str]:
    """What went wrong unseen in a test: errors in the console, exceptions, requests to anywhere but the site.

    Must be empty when the test ends; a test that provokes a fault checks it and clears the list.
    """
    return []


@pytest.fixture
def watched(faults: list[str]) -> Iterator[Callable[[BrowserContext, str], None]]:
    """Notes the faults of a context whose pages may ask nothing but one address; at the end there must be none."""

    def watch(context: BrowserContext, allowed: str) -> None:
        def look(request: object) -> None:
            if not request.url.startswith((allowed, "data:", "blob:")):  # type: ignore[attr-defined]
                faults.append(f"request: {request.url}")  # type: ignore[attr-defined]

        def listen(page: Page) -> None:
            page.on("pageerror", lambda error: faults.append(f"exception: {error}"))
            page.on("console", lambda line: line.type == "error" and faults.append(f"console: {line.text}"))

        context.set_default_timeout(PATIENCE)
        context.on("request", look)
        context.on("page", listen)
        for page in context.pages:
            listen(page)

    yield watch
    assert faults == []


@pytest.fixture
def open_page(
    chromium: Browser, site_url: str, watched: Callable[[BrowserContext, str], None]
) -> Iterator[Callable[..., Page]]:
    """Opens the site in a fresh profile: ``open_page(width, height, path="", missing=pattern, before=script, ...)``.

    ``missing``: addresses that the network never answers; ``before``: a script that runs before the page's own;
    ``before_goto``: called with the context before the page is opened; ``wait_until``: when it counts as opened.
    """
    with ExitStack() as stack:

        def opened(
            width: int = 1280,
            height: int = 900,
            path: str = "",
            missing: str = "",
            before: str = "",
            before_goto: Callable[[BrowserContext], object] = lambda context: None,
            wait_until: Literal["commit", "load"] = "load",
            **options: object,
        ) -> Page:
            # Putting the site on the device costs more than starting it: the tests that are about that have a profile.
            settings = {"viewport": {"width": width, "height": height}, "service_workers": "block", **options}
            context = chromium.new_context(**settings)
            stack.callback(context.close)
            watched(context, site_url)
            if missing:
                context.route(missing, lambda route: route.abort())
            if before:
                context.add_init_script(before)
            before_goto(context)
            page = context.new_page()
            page.goto(site_url + path, wait_until=wait_until)
            return page

        yield opened


@pytest.fixture
def profile(
    program: str, watched: Callable[[BrowserContext, str], None], tmp_path: Path
) -> Iterator[Callable[..., BrowserContext]]:
    """Starts a browser with a profile that lasts: ``profile(name, allowed)``; again after closing it is a restart."""
    with ExitStack() as stack:

        def started(name: str, allowed: str, **options: object) -> BrowserContext:
            context = playwright_here().chromium.launch_persistent_context(
                str(tmp_path / name), executable_path=program, args=ARGUMENTS, **options
            )
            stack.callback(_closed, context)
            watched(context, allowed)
            return context

        yield started


def _closed(context: BrowserContext) -> None:
    with suppress(Error):  # a test may have killed it
        context.close()


@pytest.fixture(scope="session")
def desk_page(chromium: Browser, site_url: str) -> Iterator[StartedPage]:
    started = StartedPage(chromium, site_url, viewport={"width": 1280, "height": 900})
    yield started
    started.close()


@pytest.fixture(scope="session")
def phone_page(chromium: Browser, site_url: str) -> Iterator[StartedPage]:
    size = {"width": 360, "height": 740}
    started = StartedPage(chromium, site_url, viewport=size, has_touch=True, is_mobile=True, device_scale_factor=2)
    yield started
    started.close()


@pytest.fixture(scope="session")
def spanish_page(chromium: Browser, site_url: str) -> Iterator[StartedPage]:
    size = {"width": 360, "height": 740}
    phone = {"has_touch": True, "is_mobile": True, "device_scale_factor": 2}
    started = StartedPage(chromium, site_url, viewport=size, locale="es-MX", bypass_csp=True, **phone)
    yield started
    started.close()


@pytest.fixture
def page(desk_page: StartedPage, faults: list[str], request: pytest.FixtureRequest) -> Iterator[Page]:
    """The site in a desk-sized window, with the example's sheet by Python, used in turn."""
    yield from desk_page.in_turn(faults, request)


@pytest.fixture
def phone(phone_page: StartedPage, faults: list[str], request: pytest.FixtureRequest) -> Iterator[Page]:
    """The same in a phone-sized window with touch."""
    yield from phone_page.in_turn(faults, request)


@pytest.fixture
def spanish(spanish_page: StartedPage, faults: list[str], request: pytest.FixtureRequest) -> Iterator[Page]:
    """The same on the phone of somebody who reads Spanish first; axe may look at it."""
    yield from spanish_page.in_turn(faults, request)


@pytest.fixture
def own_page(open_page: Callable[..., Page]) -> Page:
    """The site in a desk-sized window and a profile of its own, just opened."""
    return open_page()
