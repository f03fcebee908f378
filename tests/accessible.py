"""What axe finds wrong on a page, in light and in dark."""

from __future__ import annotations

from axe_playwright_python.sync_playwright import Axe, AxeResults
from playwright.sync_api import Page

AXE = Axe()
# Only what is wrong is asked for: what is right is a thousand pieces, each described.
RUN = "options => axe.run(options).then(({ violations }) => ({ violations }))"
ASKED = {"resultTypes": ["violations"], "preload": False}
SCHEMES = {"light": {}, "dark": {"runOnly": ["color-contrast"]}}  # in the dark what can be otherwise is the colors


def hold_accessible(page: Page, what: str, schemes: tuple[str, ...] = tuple(SCHEMES)) -> None:
    """Assert that axe finds nothing wrong; ``what`` is looked at is told where it does."""
    if not page.evaluate("'axe' in window"):
        page.evaluate(AXE.axe_script)
    for scheme in schemes:
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        found = AxeResults(page.evaluate(RUN, {**ASKED, **SCHEMES[scheme]}))
        assert found.violations_count == 0, f"{what}, {scheme}: {found.generate_report()}"
