"""Whether the card on the screen is whole: nothing of it under the bar, the buttons or the tabs, nothing to scroll."""

from __future__ import annotations

from typing import Any

from playwright.sync_api import Page

WHOLE = """() => {
  const box = (what) => document.querySelector(what).getBoundingClientRect();
  const seen = (one) => one.checkVisibility() && !one.closest("svg, .unseen, #stakes-list");
  const inside = [...document.querySelectorAll("#stakes .card *")]
    .filter(seen)
    .map((one) => one.getBoundingClientRect());
  const page = document.documentElement;
  const scrolls = [page, ...document.querySelectorAll("#face-stakes, #face-stakes *")]
    .filter((one) => one === page || (seen(one) && getComputedStyle(one).overflowY === "auto"))
    .filter((one) => one.scrollHeight > one.clientHeight + 1);
  return {
    top: box("#stakes .card").top >= box(".bar").bottom - 1,
    low: Math.max(...inside.map((one) => one.bottom)) <= box("#stakes .thumb").top + 1,
    wide: Math.max(...inside.map((one) => one.right)) <= innerWidth,
    thumb: box("#stakes .thumb").bottom <= box(".tabs").top + 1,
    tabs: box(".tabs").bottom <= innerHeight + 1,
    still: scrolls.length === 0,
  };
}"""
# Cards that somebody else has made, put in their place one after the other: those that aren't whole, by what isn't.
EACH = f"""(cards) => {{
  const whole = {WHOLE};
  const place = document.getElementById("stakes");
  return cards.map((card) => {{
    place.innerHTML = card;
    const torn = Object.entries(whole()).filter(([, held]) => !held).map(([what]) => what);
    return torn.length ? `${{place.querySelector(".card").dataset.kind}}: ${{torn}}: ${{place.innerText}}` : "";
  }}).filter((told) => told);
}}"""


def torn(page: Page, cards: list[str]) -> Any:
    """Return what is wrong with each of some cards, as HTML, that isn't whole on a page that shows the stakes."""
    return page.evaluate(EACH, cards)
