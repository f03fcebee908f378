"""What holds a part of a line's build up: no slab can follow the line, or the line itself leaves something open."""

from __future__ import annotations

from bowstring.report.forms.build_lined import LinedPage
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def held_page(plan: LinePlan, key: str) -> LinedPage | None:
    """Return the page of a part that is held up, ``None`` where nothing does that."""
    if plan.wrong is not None:
        stopped = page_of(key, "stop", say("lined.no_edge"), "", "slab")
        stopped["stop"] = f"{plan.wrong.wrong} {plan.wrong.remedy}"
        return stopped
    if plan.asks and plan.slab is not None:
        return page_of(key, "open", say("lined.line_first"), plan.asks[0], "pieces")
    return None
