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
    sign = '<span class="sign stop" aria-hidden="true">!</span>'
    return (
        '<section class="card stopped"><div class="stopbox" role="alert">'
        f'<h2 id="card-head" tabindex="-1">{sign}{escape(say("card.stop"))}</h2>'
        f'<p>{marked(first["text"])}</p><p class="why">{marked(first["reason"])}</p>{more}</div></section>'
        f'<div class="thumb b1"><button type="button" class="btn first" {_does(answer, first)}>'
        f"{escape(first['button'])}</button></div>"
    )


def _does(answer: Answer, way: WayOutRow) -> str:
    """What the button does: put another method into the job, or ask a question of the numbers again."""
    if way["fields"]:
        return f'data-do="fill" data-fill="{escape(json.dumps(way["fields"]))}"'
    if way["panel"] == "got":
        number = next((card["number"] for card in answer["cards"] if _is_of(way, card)), 1)
        return f'data-do="got" data-step="{number}"'
    return f'data-do="face" data-face="numbers" data-open="{escape(way["panel"] or "")}"'


def _is_of(way: WayOutRow, card: CardRow) -> bool:
    """Whether a card is that of the stake which a stop tells of."""
    stands = card["kind"].endswith("_got") or card["kind"].startswith("stands")
    return stands and any(f"{mark} " in way["stop"] for mark in (card["stake"], *card["sets"]) if mark)
