"""Whether stakes stand that nobody has checked yet, and what the checks' card says of it."""

from __future__ import annotations

from collections.abc import Collection

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.report.read import NO_VERDICT
from bowstring.words import say

POUR = "form_pour"
"""The kind of the card on which the concrete is ordered."""


def nothing_read(answer: Answer) -> bool:
    """Whether there are checks to make, and none was read."""
    return bool(answer["read"]["wanted"]) and not answer["read"]["count"]


def unread_told(answer: Answer) -> str:
    """Return that no check was read, empty where one was; where those past the stakes were, that none of the stakes."""
    if not nothing_read(answer):
        return ""
    far = any(row["verdict"] not in NO_VERDICT for row in answer["far_checks"]["read"])
    return say("paper.no_stake_check_read" if far else "paper.no_check_read")


def unread_along(answer: Answer, others: Collection[int]) -> str:
    """Return what of a line of several pieces has no check read yet, empty where each has one; ``others``: those of its
    arcs that aren't staked now, from 1."""
    part = answer["lined"]
    if part is None or len(part["pieces"]) < 2:
        return ""
    bare = {*others, *([part["at"]] if nothing_read(answer) else [])}
    names = [piece["name"] for piece in part["pieces"] if piece["number"] in bare]
    if answer["far_checks"]["rows"] and not answer["far_checks"]["read"]:
        names.append(say("face_checks.whole_line"))
    return say("face_checks.unread_along", names=", ".join(names)) if names else ""


def card_text(answer: Answer, card: CardRow) -> str:
    """Return a card's sentence; that of the checks asks for them only as long as some are unread, and that of the pour
    for no order while one is out."""
    if card["kind"] == POUR:
        outs = answer["read"]["outs"] + answer["far_checks"]["outs"]
        return say("card.pour_out_one" if outs == 1 else "card.pour_out", count=outs) if outs else card["text"]
    if card["kind"] != "checks":
        return card["text"]
    read = answer["read"]
    if not read["wanted"] or read["count"] < read["wanted"]:
        return card["text"]
    key = "face_checks.head_out" if read["outs"] else "face_checks.head_done"
    return say(key, count=read["count"], wanted=read["wanted"], outs=read["outs"])
