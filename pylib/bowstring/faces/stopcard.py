"""The card of an answer that is stopped: why, and the button that settles it. No number and no Done."""

from __future__ import annotations

import json
from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow, WayOutRow
from bowstring.sheet.markup import marked
from bowstring.words import say


def stop_html(answer: Answer) -> str:
    """Return the card of the first stop of an answer, with its way out at the thumb."""
    first, *others = answer["ways_out"]
    more = f'<p class="more">{escape(say("card.stops_more", count=len(others)))}</p>' if others else ""
    return (
        '<section class="card stopped"><div class="stopbox" role="alert">'
        f'<h2 id="card-head" tabindex="-1"><span class="sign stop" aria-hidden="true">!</span>{escape(say("card.stop"))}</h2>'
        f'<p>{marked(first["text"])}</p><p class="why">{marked(first["stop"])}</p>{more}</div></section>'
        f'<div class="thumb b1">{_button(answer, first)}</div>'
    )


def _button(answer: Answer, way: WayOutRow) -> str:
    """What to do: put another method into the job, or answer a question of the numbers."""
    text = escape(way["button"])
    if way["fields"]:
        return f'<button type="button" class="btn first" data-do="fill" data-fill="{escape(json.dumps(way["fields"]))}">{text}</button>'
    if way["panel"] == "got":
        number = next((card["number"] for card in answer["cards"] if _is_of(way, card)), 1)
        return f'<button type="button" class="btn first" data-do="got" data-step="{number}">{text}</button>'
    panel = escape(way["panel"] or "")
    return (
        f'<button type="button" class="btn first" data-do="face" data-face="numbers" data-open="{panel}">{text}</button>'
    )


def _is_of(way: WayOutRow, card: CardRow) -> bool:
    """Whether a card is that of the stake which a stop tells of."""
    stands = card["kind"].endswith("_got") or card["kind"].startswith("stands")
    return stands and any(f"{mark} " in way["stop"] for mark in (card["stake"], *card["sets"]) if mark)
