"""Both passes of the work as they are walked: the layout's cards, and after them the forms', under one running number.

As long as no card of the forms is looked at or done, none is made: how many there are is known without.
"""

from __future__ import annotations

from collections.abc import Collection
from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.words import say


def layout_cards(answer: Answer) -> list[CardRow]:
    """Return the cards of the layout. Where forms follow, the board is one of theirs: before the dig none is sprung."""
    cards = answer["cards"]
    if answer["second_pass"] and cards[-1]["kind"] == "board" and not cards[-1]["steps"]:
        return cards[:-1]
    return cards


def count(answer: Answer) -> int:
    """Return how many cards there are, of both passes."""
    return len(layout_cards(answer)) + len(answer["second_pass"])


def card_at(answer: Answer, number: int) -> CardRow:
    """Return the card of a running number, the nearest there is; one of the forms has its own number in its pass."""
    first = layout_cards(answer)
    number = min(max(number, 1), count(answer))
    return first[number - 1] if number <= len(first) else answer["form_cards"][number - len(first) - 1]


def running(answer: Answer, card: CardRow) -> int:
    """Return a card's running number."""
    return card["number"] + (len(layout_cards(answer)) if card["mark"] else 0)


def forms_button(answer: Answer) -> str:
    """Return the way to the first card of the forms, from where nothing else leads there; empty where there is none."""
    if not answer["second_pass"]:
        return ""
    words, step = escape(say("card.do.forms")), len(layout_cards(answer)) + 1
    button = f'<button type="button" class="btn" data-do="go" data-step="{step}">{words}</button>'
    return f'<div class="to-forms">{button}</div>'


def marks(answer: Answer) -> dict[int, str]:
    """Return the marks of the forms' cards by running number."""
    return {running(answer, card): card["mark"] for card in answer["form_cards"]}


def standing(answer: Answer, numbers: Collection[int], done_marks: Collection[str]) -> list[int]:
    """Return the running numbers of the cards that are done: those of the layout by number, the forms' by mark."""
    first = len(layout_cards(answer))
    done = [number for number in numbers if number <= first or not answer["second_pass"]]
    if done_marks and answer["second_pass"]:
        done += [number for number, mark in marks(answer).items() if mark in done_marks]
    return done


def changed(card: CardRow, done_marks: Collection[str]) -> bool:
    """Tell whether a card of the forms was done by other numbers than it has now."""
    what = card["mark"].rpartition("-")[0]
    return bool(what) and card["mark"] not in done_marks and any(one.startswith(f"{what}-") for one in done_marks)


def first_open(answer: Answer, done: Collection[int], *, building: bool = False) -> int:
    """Return the first card that isn't done, the last one where all are.

    ``building``: forms are built on the stakes already; then checks that nobody read are no more than a card to go back
    to.
    """
    first = layout_cards(answer)
    for card in first:
        if card["number"] not in done and not (building and card["kind"] == "checks"):
            return card["number"]
    last = count(answer)
    return next((number for number in range(len(first) + 1, last + 1) if number not in done), last)
