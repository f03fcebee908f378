"""The face of the stakes: one card, what was got instead, and stakes that stand on other numbers."""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Mapping, Sequence
from html import escape

from bowstring.faces.passes import card_at, changed, count, first_open, marks, standing
from bowstring.faces.stakes import DIG_CARD, HUBS_CARD, Before, stakes_html, steps_list_html
from bowstring.faces.unread import POUR, card_text, unread_along
from bowstring.page.beside import done_of, marks_of
from bowstring.page.stood import moved_marks
from bowstring.page.talk import Asked
from bowstring.page.ticks import ticked
from bowstring.report.forms.answer import Answer
from bowstring.words import say

NAMED = 8
"""Marks that are told by name where they are set by old numbers."""


def staking(answered: Answer, asked: Asked, link: Callable[[], str]) -> dict[str, object]:
    """Return what the face of the stakes shows, see ``facing.shown_face``; ``link`` makes the job's own."""
    most, done_marks = count(answered), marks_of(asked["fields"])
    numbers = ticked(answered, asked["fields"], link)
    done = standing(answered, numbers, done_marks)
    opened = first_open(answered, done, building=bool(done_marks))
    card = min(int(asked.get("card") or 0) or opened, most)
    made: dict[str, object] = {"card": card, "count": most, "list": steps_list_html(answered, card, done)}
    if not answered["stops"] and (done_marks or card_at(answered, card)["mark"]):
        made["marks"] = {str(number): mark for number, mark in marks(answered).items()}
    stop = _stop(answered, asked, done_marks, link)
    if stop:
        return made | {"html": stop}
    if numbers != done_of(asked["fields"]):
        made["renumbered"] = _renumbered(asked["fields"], numbers, link)
    if asked.get("panel") == "got" and all(way["panel"] in ("got", "ends") for way in answered["ways_out"]):
        from bowstring.page.got import got_panel

        fixed = {"fixed": _fixed(answered, done, link)}
        return made | got_panel(answered, asked, card) | fixed | _suspected(answered, card)
    if asked.get("panel") == "list":
        return made | {"html": f'<div class="scroll">{made["list"]}</div>'}
    anew = _anew(answered, asked["fields"], card)
    was = _before(answered, asked, card, done_marks, link)
    bare = _bare(answered, asked["fields"], card, done)
    unread = unread_of(answered, asked["fields"]) if card_at(answered, card)["kind"] == POUR else ""
    html = stakes_html(answered, card, done, anew, done_marks, was, bare, unread)
    made |= {"html": html, "say": _spoken(answered, card)}
    made |= _suspected(answered, card)
    if not answered["stops"]:
        made["fixed"] = _kept(answered, asked["fields"], card, done, link)
    return made


def _bare(answered: Answer, fields: Mapping[str, str], card: int, done: Collection[int]) -> list[int]:
    """The arcs of a line that have no hubs yet, at the card of its dig as long as that isn't done: the one that is
    staked last, since its hubs are on the card before."""
    if card in done or card_at(answered, card)["kind"] != DIG_CARD or "hubs" not in answered["second_pass"]:
        return []
    from bowstring.page.pieces import bare_arcs

    part = answered["lined"]
    own = [part["at"]] if part and _hubs_card(answered, card) not in done else []
    return [*bare_arcs(fields), *own]


def unread_of(answered: Answer, fields: Mapping[str, str]) -> str:
    """Return what of a line of several pieces has no check read yet, empty where each has one, and for an arc alone."""
    from bowstring.page.pieces import unread_arcs

    return unread_along(answered, unread_arcs(fields)) if answered["lined"] is not None else ""


def _hubs_card(answered: Answer, dig: int) -> int:
    """The running number of the card of the hubs, which comes before that of the dig."""
    return next(number for number in range(dig - 1, 0, -1) if card_at(answered, number)["kind"] == HUBS_CARD)


def _kept(
    answered: Answer, fields: Mapping[str, str], card: int, done: Collection[int], link: Callable[[], str]
) -> dict[str, str]:
    """What is kept with a card that is done now: what its stakes stand on, and what tells later what was worked by."""
    from bowstring.page.before import built_by, edged_by

    kept = _fixed(answered, done, link) | edged_by(fields, link(), stands=_standing(answered, done))
    return kept | ({"built": built_by(fields, link())} if card_at(answered, card)["mark"] else {})


def _before(answered: Answer, asked: Asked, card: int, done_marks: Collection[str], link: Callable[[], str]) -> Before:
    """What a card says of what was: its own numbers, and on the first card of either pass the edge that the stakes
    are no more."""
    one, fields = card_at(answered, card), asked["fields"]
    if answered["stops"] or not (fields.get("built") or fields.get("edged")):
        return Before()
    from bowstring.page.before import card_before, edge_was

    old = card_before(one, fields, done_marks) if changed(one, done_marks) else None
    return Before(old, edge_was(answered, fields, link) if one["number"] == 1 else "")


def _anew(answered: Answer, fields: Mapping[str, str], card: int) -> dict[str, str]:
    """The fields that take back what somebody else got at a card, in a job that is as it came by a link."""
    if not fields.get("received") or not answered["got"] or card_at(answered, card)["mark"]:
        return {}
    from bowstring.page.got import taken_back

    return taken_back(answered, fields, card)


def _suspected(answered: Answer, card: int) -> dict[str, object]:
    """The suspect whose step a card is, and the checks that touch it: once it is set again, what was read there is old.

    A slip in every stake names none, since one card that is done again doesn't set them all."""
    steps = card_at(answered, card)["steps"]
    for one in answered["read"]["suspects"]:
        if one["mark"] and one["step"] in steps:
            from bowstring.faces.checks import hanging_cards

            return {"suspect": {"stake": one["mark"], "checks": one["checks"], "then": hanging_cards(answered, one)}}
    return {}


def _standing(answered: Answer, done: Collection[int]) -> bool:
    """Whether a stake stands: until then the chord found, or another number, changes what all of them will stand on."""
    return any(card["stake"] and card["number"] in done for card in answered["cards"])


def _spoken(answered: Answer, card: int) -> str:
    """A card as a voice reads it: its sentence, then each number behind what it is."""
    one = card_at(answered, card)
    return " ".join(
        [card_text(answered, one), *(f"{number['label']}: {number['shown']}." for number in one["numbers"])]
    )


def _fixed(answered: Answer, done: Collection[int], link: Callable[[], str]) -> dict[str, str]:
    """What is settled by a step that is done: what the stakes stand on, what was got included, and before any of them
    stands the method."""
    if _standing(answered, done):
        return {"stood": link()} if link() else {}
    fields = {"method": answered["method"], "stood": link()}
    if answered["halve_first"]:
        fields["halve_first"] = str(answered["halve_first"])
    return fields


def _stop(answered: Answer, asked: Asked, done_marks: Collection[str], link: Callable[[], str]) -> str:
    """The stop where something stands by old numbers: stakes, or else a pad's far corners alone; empty where nothing
    does."""
    moved = _moved(answered, asked, link)
    if moved:
        from bowstring.page.pieces import staked_of_several

        return _stood_html(stood_text(moved, staked_of_several(asked["fields"])))
    corners = _corners(answered, asked, done_marks, link) if done_marks else []
    if corners:
        return _stood_html(stood_text(corners), corners, _without_corners(asked["fields"]))
    return ""


def _corners(answered: Answer, asked: Asked, done_marks: Collection[str], link: Callable[[], str]) -> list[str]:
    """Return a pad's far corners where they stand by other numbers than those in the fields."""
    stood = asked["fields"].get("stood", "")
    if answered["stops"] or not stood or stood == link():
        return []
    from bowstring.page.stood import moved_corners

    return moved_corners(answered["form_cards"], done_marks)


def _without_corners(fields: Mapping[str, str]) -> str:
    """What is done without the card of the far corners: they are set again, and nothing else."""
    return " ".join(text for text in fields.get("done", "").split() if not text.startswith("form_corners-"))


def _renumbered(fields: Mapping[str, str], numbers: Collection[int], link: Callable[[], str]) -> dict[str, str]:
    """What is done by the cards' numbers of now, and the job that has those: kept with the next card that is turned."""
    texts = [*map(str, numbers), *marks_of(fields)]
    return {"of": fields["done"], "done": " ".join(texts), "stood": link()}


def _moved(answered: Answer, asked: Asked, link: Callable[[], str]) -> list[str]:
    """Return what stands, and would stand elsewhere by the numbers in the fields."""
    done = done_of(asked["fields"])
    if not done or not asked["fields"].get("stood", ""):
        return []
    return moved_marks(answered, asked["fields"], done, link())


def marks_named(moved: Sequence[str], arc: int) -> str:
    """Return the names of what is set by the old numbers, the first of them; ``arc``: which of a line's several arcs
    it is of, else 0."""
    names = ", ".join(moved[:NAMED])
    if len(moved) > NAMED:
        names = say("page.stood_more", names=names, count=len(moved) - NAMED)
    return say("stood.of_arc", number=arc, names=names) if arc else names


def stood_text(moved: Sequence[str], arc: int = 0) -> str:
    """Return the sentence that names what is set by the old numbers, see ``marks_named``."""
    return say("page.stood_one" if len(moved) == 1 and not arc else "page.stood", names=marks_named(moved, arc))


def _stood_html(told: str, these: Sequence[str] = (), left: str | None = None) -> str:
    """Return the stop: first the way by which every stake stands on the numbers that hold now; the other one takes the
    change back. ``left``: what stays done where only ``these`` are set again, ``None`` where every stake is: no change
    that moves a stake could be taken back for them."""
    does, keep = f'data-do="restart">{escape(say("page.stood_again"))}', ""
    if left is None:
        keep = f'<button type="button" class="btn plain" data-do="stood">{escape(say("page.stood_keep"))}</button>'
    else:
        fields, again = json.dumps({"done": left}), say("page.stood_again_these", names=", ".join(these))
        does = f'data-do="fill" data-fill="{escape(fields)}">{escape(again)}'
    return (
        '<div class="scroll"><section class="stopbox" role="alert"><h2 tabindex="-1"><span class="sign stop" '
        f'aria-hidden="true">!</span>{escape(say("page.stop"))}</h2><p>{escape(told)}</p></section></div>'
        f'<div class="thumb one"><button type="button" class="btn first" {does}</button>{keep}</div>'
    )
