"""Which cards are done, whatever number they have by now: a tick stays with what its step does, not with its place."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence

from bowstring.job.link import read_link
from bowstring.page.beside import done_of
from bowstring.page.stood import Lying, answer_before, got_since
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow

Key = tuple[object, ...]


def ticked(answered: Answer, fields: Mapping[str, str], link: Callable[[], str]) -> tuple[int, ...]:
    """Return the numbers of the cards of an answer that are done.

    ``done`` of the fields counts as the job did that the stakes were set by (``stood``). Where that has other cards, a
    card of now is done if one that sets the same marks in the same manner was, and if it drives a stake that stands
    there already, whatever it was set by, or where something else was got at it since. ``link`` makes the job's own.
    """
    done = done_of(fields)
    if not done or not fields.get("stood", "").strip():
        return done
    old = answer_before(fields, link())
    if old is None:
        return done
    then, now = list(_keyed(old["cards"])), list(_keyed(answered["cards"]))
    if [key for key, _card in then] == [key for key, _card in now]:
        return done
    keys = {key for key, card in then if card["number"] in done}
    driven = {card["stake"] for _key, card in then if card["stake"] and card["number"] in done}
    lying = Lying.of((old, read_link(fields["stood"])), (answered, read_link(link())))
    in_place = {name for name in driven if old["side"] == answered["side"] and not lying.moved(name)}
    there = in_place | (driven & got_since(fields["stood"], link()))
    return tuple(card["number"] for key, card in now if key in keys or card["stake"] in there)


def _keyed(cards: Sequence[CardRow]) -> Iterator[tuple[Key, CardRow]]:
    """Each card with what it does: its kind and its marks, or without any where it is done, and the how-manieth."""
    met: Counter[Key] = Counter()
    for card in cards:
        where = [] if card["sets"] else [(line["kind"], line["from"], line["to"]) for line in card["lines"]]
        key = (card["kind"], *card["sets"], *where)
        met[key] += 1
        yield (*key, met[key]), card
