"""The locate ticket: the fields on its card, and what the paper has of it."""

from __future__ import annotations

from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.sheet.markup import marked
from bowstring.words import say

BOX = '<i class="tick"></i>'
TICKED = '<i class="tick in">✓</i>'
BLANK = '<span class="blank"></span>'


def ticket_fields_html(answer: Answer) -> str:
    """Return the fields of the ticket's card: its number, and when it was called."""
    located = answer["located"]
    fields = (("ticket", located["ticket"]), ("called", located["called"]))
    made = "".join(
        f'<label for="{name}">{escape(say(f"card.{name}"))}<input id="{name}" name="{name}" data-kept '
        f'value="{escape(value)}" maxlength="40" autocomplete="off" spellcheck="false"></label>'
        for name, value in fields
    )
    return f'<div class="kept">{made}</div>'


def ticket_text(answer: Answer) -> str:
    """Return what the paper has of the ticket, empty where nothing is written down."""
    located = answer["located"]
    called = say("paper.called", date=located["called"]) if located["called"] else ""
    return ", ".join(part for part in (located["ticket"], called) if part)


def ticket_html(answer: Answer, *, marks_in: bool) -> str:
    """Return the first box of the paper: ticked where the card was done, with blank lines for what isn't known yet."""
    told = ticket_text(answer)
    asked = marked(say("paper.services")) if not told else marked(say("paper.ticket", ticket=told))
    blank = "" if told else f" {BLANK}"
    marks = f'<span class="together">{TICKED if marks_in else BOX} {escape(say("paper.marks_in"))}</span>'
    return f"<li>{TICKED if told and marks_in else BOX}<span>{asked}{blank} {marks}</span></li>"
