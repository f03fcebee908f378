"""Whether stakes stand that nobody has checked yet, and what the checks' card says of it."""

from __future__ import annotations

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow
from bowstring.words import say


def nothing_read(answer: Answer) -> bool:
    """Whether there are checks to make, and none was read."""
    return bool(answer["read"]["wanted"]) and not answer["read"]["count"]


def card_text(answer: Answer, card: CardRow) -> str:
    """Return a card's sentence; that of the checks asks for them only as long as some are unread."""
    if card["kind"] != "checks":
        return card["text"]
    read = answer["read"]
    if not read["wanted"] or read["count"] < read["wanted"]:
        return card["text"]
    key = "face_checks.head_out" if read["outs"] else "face_checks.head_done"
    return say(key, count=read["count"], wanted=read["wanted"], outs=read["outs"])
