"""Make the README's pictures anew in site/pictures, from the example and the built page.

Run with the project's own environment after ``python3 build.py test``: ``.venv/bin/python pylib/builder/pictures.py``.
"""

from __future__ import annotations

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "pylib"))

from playwright.sync_api import sync_playwright  # noqa: E402

from bowstring import answer  # noqa: E402
from bowstring.demo import DEMO  # noqa: E402
from bowstring.drawings.plan import plan_svg  # noqa: E402
from builder import browser, serve, website  # noqa: E402

PICTURES = ROOT / "site" / "pictures"


def main() -> None:
    """Write the plan as SVG and the page with a step of the example as PNG."""
    PICTURES.mkdir(exist_ok=True)
    (PICTURES / "plan.svg").write_text(plan_svg(answer(DEMO), id="plan"), "utf-8")
    with serve.served(website.build()) as address, sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=browser.find(), args=browser.arguments())
        page = running.new_page(viewport={"width": 1280, "height": 720})
        page.goto(address)
        page.wait_for_selector("html[data-sheet=computed]")
        page.click("#ask-example")
        page.wait_for_selector("#stakes .card")
        for _card in range(4):
            before = page.locator("#stakes .card").get_attribute("data-card")
            page.click("[data-do=done]")
            page.wait_for_selector(f"#stakes .card:not([data-card='{before}'])")
        page.wait_for_selector("html:not([data-stale])")
        page.locator("#undo").evaluate("bar => (bar.hidden = true)")
        page.screenshot(path=str(PICTURES / "page.png"))
        running.close()


if __name__ == "__main__":
    main()
