"""The site's plan on the page: the drawing that is drawn on, what stops the job's own method, and what is advised."""

from __future__ import annotations

from html import escape

from bowstring.faces.taking import take_html
from bowstring.report.forms.answer import Answer
from bowstring.sheet.markup import marked
from bowstring.words import say

_TOLD_BLOCKS = 3


def site_plan_html(answer: Answer, *, id: str = "site-plan-drawing") -> str:
    """Return the plan of an answer's site and, where its own method is stopped, by what; ``id`` as for ``Drawing``.

    Raises ``ValueError`` when a figure is not finite.
    """
    from bowstring.drawings.siteplan import blocks_of_plan, site_plan_svg

    texts = list(dict.fromkeys(block["text"] for block in blocks_of_plan(answer)))
    rows = "".join(f"<li>{marked(text)}</li>" for text in texts[:_TOLD_BLOCKS])
    if len(texts) > _TOLD_BLOCKS:
        rows += f"<li>{marked(say('siteplan.more', count=len(texts) - _TOLD_BLOCKS))}</li>"
    said = f'<ul class="caution">{rows}</ul>' if rows else ""
    advice = f'<p id="site-advice">{advice_html(answer)}</p>'
    return f'<div class="drawing drawing-site">{site_plan_svg(answer, id=id)}</div>{said}{advice}'


def advice_html(answer: Answer) -> str:
    """Return which way to take, and the way to the table that says why, as the inside of a paragraph."""
    link = f'<a href="#sheet-advice">{escape(say("siteplan.ways"))}</a>'
    return f"{marked(answer['advice']['text'])} {take_html(answer)}{link}"
