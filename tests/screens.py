"""Every screen of the page, one after the other, in whatever language it speaks; and axe on each."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from page_acting import choose, close_panel, look_at, open_desk, open_panel, show_example, wait_for

FACES = ("numbers", "stakes", "checks", "paper", "why")
PANELS = ("hand", "line", "ends", "way", "fine", "method", "rest")
HANDED = ("qr", "messages", "files")
CARDS = 6
"""Cards that are looked at: the ticket, the ends, the first stakes."""
ALL = (("light", {}), ("dark", {"runOnly": ["color-contrast"]}))
"""In the dark what can be otherwise is the colors."""
WORDS = (("light", {"rules": {"color-contrast": {"enabled": False}}}),)
"""In another language it's all but the colors."""
FOUND = """async (rules) => {
  const { violations } = await axe.run(document, { resultTypes: ["violations"], ...rules });
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 120)).join(" | ")}`);
}"""


@cache
def _script() -> str:
    return Axe().axe_script


def held(page: Page, what: str, schemes: tuple[tuple[str, dict[str, object]], ...] = ALL) -> None:
    """Axe finds nothing wrong on what is on the screen; it's given to the page once, for that takes longest."""
    if page.evaluate("typeof axe") == "undefined":
        page.evaluate(_script())
    for scheme, rules in schemes:
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        assert page.evaluate(FOUND, rules) == [], f"{what}, {scheme}"


def screens(page: Page) -> Iterator[str]:
    """Bring up every panel, face and kind of card of the example in turn; yield what each is."""
    yield from _handed_over(page)
    for panel in PANELS:
        open_panel(page, panel)
        yield panel
    for face in FACES[1:]:
        look_at(page, face)
        wait_for(page, "computed")
        yield face
    yield from _cards(page)
    choose(page, "drawn_to", "unsure")  # what must not be built
    look_at(page, "stakes")
    expect(page.locator("#stakes .stopbox")).to_be_visible()
    yield "a stop"


def _handed_over(page: Page) -> Iterator[str]:
    open_desk(page)
    yield "jobs"
    close_panel(page)
    show_example(page)
    open_desk(page)
    for what in HANDED:
        page.click(f"[data-hand={what}]")
        expect(page.locator("#handed > *").first).to_be_visible()
        yield f"handed over: {what}"


def _cards(page: Page) -> Iterator[str]:
    look_at(page, "stakes")
    wait_for(page, "computed")
    card = page.locator("#stakes .card")
    for number in range(1, CARDS):
        expect(card).to_have_attribute("data-card", str(number))
        yield f"card {number}"
        page.locator("#stakes [data-do=done]").click()
    expect(card).to_have_attribute("data-card", str(CARDS))
    page.locator("#card-head").click()
    expect(page.locator("#stakes .steplist")).to_be_visible()
    yield "all steps"
    page.go_back()
    page.locator("#stakes [data-do=got]").click()
    page.wait_for_selector("#stakes .got")
    page.locator("#stakes .got input").nth(1).fill("1 ft")
    expect(page.locator("#stakes .then")).to_be_visible()
    yield "what was got"
