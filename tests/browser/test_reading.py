"""The page as it is read: by a screen reader's rules, in light and dark, on a phone and on a wall."""

from __future__ import annotations

from collections.abc import Callable

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

from page_acting import choose, open_desk, wait_for

SMALL = """() => [...document.querySelectorAll(
    'button, .as-button, summary, nav a, .option, input[type=text], select'
)].filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 47.5)
  .map((one) => one.outerHTML.slice(0, 80))"""
SIZES = ((360, 740), (820, 1180), (1280, 800), (1920, 1080))


def test_axe_finds_nothing_wrong(open_page: Callable[..., Page]) -> None:
    """In the dark what can be otherwise is the colours."""
    page = open_page(360, 740, bypass_csp=True)
    wait_for(page, "computed")
    open_desk(page)
    choose(page, "drawn_to", "unsure")  # what must not be built is on screen too
    wait_for(page, "computed")
    for look in ("whole", "parts"):
        if look == "parts":
            page.click("#parts")
        for scheme, rules in (("light", {}), ("dark", {"runOnly": ["color-contrast"]})):
            page.emulate_media(color_scheme=scheme)
            found = Axe().run(page, options=rules)
            assert found.violations_count == 0, found.generate_report()


def test_nothing_is_cut_off_at_any_width(page: Page) -> None:
    open_desk(page)
    for width, height in SIZES:
        page.set_viewport_size({"width": width, "height": height})
        assert page.evaluate("document.documentElement.scrollWidth") <= width
        small = page.evaluate(SMALL)
        assert small == [], f"at {width} px a gloved finger misses these"
