"""How far the work is: the progress over a card, and the list of all its cards."""

from __future__ import annotations

from collections.abc import Collection
from html import escape

from bowstring.faces.other_arcs import other_arcs_html
from bowstring.faces.passes import layout_cards, running
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.sheet.markup import marked
from bowstring.words import say

MOST_PIPS = 16
"""Of more cards the progress is one bar."""

AROUND = 40
"""How many cards before and after the current one a long list shows."""


def progress_html(answer: Answer, card: CardRow, done: Collection[int], *, changed: bool = False) -> str:
    """Return the line over a card: which it is of its pass, what it belongs to, and how much of that pass is done.

    ``changed``: it was done by other numbers than it has now, which stands there instead of what it belongs to.
    """
    first = len(layout_cards(answer))
    count = len(answer["second_pass"]) if card["mark"] else first
    before = first if card["mark"] else 0
    done = [number - before for number in done if 0 < number - before <= count]
    where = f"<span>{marked(card['where'])}</span>"
    if changed:
        where = f'<b class="changed">{escape(say("forming.changed"))}</b>'
    head = escape(say("forming.step" if card["mark"] else "card.step", number=card["number"], count=count))
    return (
        f'<div class="steps"><p><button type="button" id="card-head" data-do="list">{head}</button>'
        f"{where}</p>{_how_far(card, count, done)}</div>"
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
    """Return the list of all cards, each with its tick, its name and its number; of many those around the current.

    The forms' cards are one row as long as neither the current one nor one that is done is of them.
    """
    cards, follow = layout_cards(answer), len(answer["second_pass"])
    card = min(max(card, 1), len(cards) + follow)
    opened = follow and (card >= len(cards) or any(number > len(cards) for number in done))
    all_cards = [*cards, *(answer["form_cards"] if opened else ())]
    first, last = max(card - AROUND, 1), min(card + AROUND, len(all_cards))
    rows = [_row(answer, one, card, done) for one in all_cards[first - 1 : last]]
    if first > 1:
        rows.insert(0, _more("card.earlier", 1, first - 1))
    if last < len(all_cards):
        rows.append(_more("card.later", last + 1, len(all_cards)))
    if follow and not opened:
        rows.append(_forms(len(cards) + 1, follow))
    label = escape(say("card.list"))
    return f'{other_arcs_html(answer)}<ol class="steplist" aria-label="{label}">{"".join(rows)}</ol>'


def _forms(number: int, count: int) -> str:
    """The forms' cards that follow, in one row, which leads to the first of them."""
    told, cards = escape(say("forming.list")), escape(say("forming.cards", count=count))
    return (
        f'<li><button type="button" data-do="go" data-step="{number}"><i aria-hidden="true">+</i>'
        f"<span>{told}</span><b>{cards}</b></button></li>"
    )


def _row(answer: Answer, card: CardRow, now: int, done: Collection[int]) -> str:
    number = running(answer, card)
    look = _look(number, now, done)
    current = ' aria-current="step"' if number == now else ""
    told = f'<span class="unseen">{escape(say("card.is_done"))}</span>' if number in done else ""
    sign = "✓" if number in done else str(card["number"])
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
