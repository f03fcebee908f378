"""How a page of a line's build begins: empty, open or stopped."""

from __future__ import annotations

from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_lined import LinedPage


def page_of(key: str, state: str, short: str, more: str = "", panel: str = "") -> LinedPage:
    """Return a page with the two lines of its row, and nothing else yet."""
    return {
        "key": key,
        "state": state,
        "short": short,
        "more": more,
        "panel": panel,
        "conclusion": "",
        "stop": "",
        "tables": [],
        "lines": [],
        "cautions": [],
    }


def row_of(page: LinedPage) -> BuildRow:
    """Return the row of a page on the first screen."""
    return {"key": page["key"], "state": page["state"], "text": page["short"], "more": page["more"],
            "panel": page["panel"]}  # fmt: skip
