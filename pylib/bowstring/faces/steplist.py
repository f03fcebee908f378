"""How far the work is: the progress over a card, and the list of all its cards."""

from __future__ import annotations

from collections.abc import Collection
from html import escape

from bowstring.faces.other_arcs import other_arcs_html
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.sheet.markup import marked
from bowstring.words import say

MOST_PIPS = 16
"""Of more cards the progress is one bar."""

AROUND = 40
"""How many cards before and after the current one a long list shows."""


def progress_html(card: CardRow, count: int, done: Collection[int]) -> str:
    """Return the line over a card: which it is, what it belongs to, and how much is done."""
    head = escape(say("card.step", number=card["number"], count=count))
    return (
        f'<div class="steps"><p><button type="button" id="card-head" data-do="list">{head}</button>'
        f"<span>{marked(card['where'])}</span></p>{_how_far(card, count, done)}</div>"
    )


def _how_far(card: CardRow, count: int, done: Collection[int]) -> str:
    if count > MOST_PIPS:
        told = escape(say("card.done_of", done=len(done), count=count))
        return f'<progress max="{count}" value="{len(done)}" aria-label="{told}"></progress>'
    looks = (_look(number, card["number"], done) for number in range(1, count + 1))
    pips = "".join(f'<i class="{look}"></i>' if look else "<i></i>" for look in looks)
    return f'<div class="pips" aria-hidden="true">{pips}</div>'


def _look(number: int, now: int, done: Collection[int]) -> str:
    return " ".join([*(["d"] if number in done else []), *(["n"] if number == now else [])])


def steps_list_html(answer: Answer, card: int, done: Collection[int] = ()) -> str:
    """Return the list of all cards, each with its tick, its name and its number; of many those around the current."""
    cards = answer["cards"]
    card = min(max(card, 1), len(cards))
    first, last = max(card - AROUND, 1), min(card + AROUND, len(cards))
    rows = [_row(one, card, done) for one in cards[first - 1 : last]]
    if first > 1:
        rows.insert(0, _more("card.earlier", 1, first - 1))
    if last < len(cards):
        rows.append(_more("card.later", last + 1, len(cards)))
    label = escape(say("card.list"))
    return f'{other_arcs_html(answer)}<ol class="steplist" aria-label="{label}">{"".join(rows)}</ol>'


def _row(card: CardRow, now: int, done: Collection[int]) -> str:
    number, look = card["number"], _look(card["number"], now, done)
    current = ' aria-current="step"' if number == now else ""
    told = f'<span class="unseen">{escape(say("card.is_done"))}</span>' if number in done else ""
    sign = "✓" if number in done else str(number)
    return (
        f'<li><button type="button" class="{look}" data-do="go" data-step="{number}"{current}>'
        f'<i aria-hidden="true">{sign}</i><span>{marked(card["title"])}{told}</span>'
        f"<b>{escape(card['main'])}</b></button></li>"
    )


def _more(key: str, first: int, last: int) -> str:
    """The cards that a long list leaves out, one way; a tap goes to the nearest of them."""
    to = last if key == "card.earlier" else first
    text = escape(say(key, first=first, last=last))
    return f'<li><button type="button" class="more" data-do="go" data-step="{to}"><span>{text}</span></button></li>'
