"""On the cards before the first stake is driven: that the dig takes the stakes, and a tap that sets them clear."""

from __future__ import annotations

import json
from collections.abc import Collection
from html import escape

from bowstring.faces.passes import running
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.report.forms.in_dig import InDigPart
from bowstring.sheet.markup import marked


def in_dig_html(answer: Answer, card: CardRow, done: Collection[int]) -> str:
    """Return it, empty once a stake stands, and on the forms' cards; ``done``: running numbers.

    Open on the first card where no card tells of hubs. The hubs of a slab have a card of their own before its dig:
    there it stands folded, on the first card alone.
    """
    part = told_of_dig(answer, card, done)
    if part is None:
        return ""
    ways = "".join(
        f'<button type="button" class="btn plain" data-do="fill" data-fill="{escape(json.dumps(way["fields"]))}">'
        f"{marked(way['text'])}</button>"
        for way in part["ways"]
    )
    buttons = f'<div class="ways">{ways}</div>' if ways else ""
    inside, text = f"{buttons}<p>{marked(part['hint'])}</p>", marked(part["text"])
    if part["designed"] and running(answer, card) == 1:
        return f'<div class="in-dig" role="note"><p><b>{text}</b></p>{inside}</div>'
    return f'<details class="in-dig"><summary>{text}</summary>{inside}</details>'


def told_of_dig(answer: Answer, card: CardRow, done: Collection[int]) -> InDigPart | None:
    """Return what a card says of the dig, ``None`` where it says nothing."""
    if card["mark"] or any(one["stake"] and one["number"] in done for one in answer["cards"]):
        return None
    part = answer["in_dig"]
    return part if part and (part["designed"] or running(answer, card) == 1) else None
