"""The buttons that take another arc of a line to be staked."""

from __future__ import annotations

from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.sheet.of_line import other_arcs
from bowstring.words import say


def other_arcs_html(answer: Answer) -> str:
    """Return a button for each arc of the line but the one that is staked, empty where there is none."""
    buttons = "".join(
        f'<button type="button" class="btn plain tight" data-do="line-at" data-at="{piece["number"]}">'
        f"{escape(say('lined.stake_other', number=piece['number']))}</button>"
        for piece in other_arcs(answer)
    )
    label = escape(say("lined.other_arcs"))
    return f'<div class="arcs" role="group" aria-label="{label}">{buttons}</div>' if buttons else ""
