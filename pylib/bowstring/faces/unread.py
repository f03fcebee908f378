"""Whether stakes stand that nobody has checked yet, and what the checks' card says of it."""

from __future__ import annotations

from collections.abc import Collection

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.words import say


def nothing_read(answer: Answer) -> bool:
    """Whether there are checks to make, and none was read."""
    return bool(answer["read"]["wanted"]) and not answer["read"]["count"]


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
    """Return a card's sentence; that of the checks asks for them only as long as some are unread."""
    if card["kind"] != "checks":
        return card["text"]
    read = answer["read"]
    if not read["wanted"] or read["count"] < read["wanted"]:
        return card["text"]
    key = "face_checks.head_out" if read["outs"] else "face_checks.head_done"
    return say(key, count=read["count"], wanted=read["wanted"], outs=read["outs"])
