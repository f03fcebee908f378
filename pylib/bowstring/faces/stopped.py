"""A face of a job that is stopped: what stops it, and the way to where it is settled; no number."""

from __future__ import annotations

from html import escape

from bowstring.report.forms.answer import Answer
from bowstring.sheet.markup import marked
from bowstring.words import say


def stopped_html(answer: Answer, key: str) -> str:
    """Return the box of a stop; ``key``: the sentence that this face says under it."""
    stops = "".join(f"<p>{marked(text)}</p>" for text in answer["stops"])
    words = escape(say("face_checks.settle"))
    return (
        f'<section class="stopbox" role="alert"><h2><span class="sign stop" aria-hidden="true">!</span>'
        f"{escape(say('face_checks.stop'))}</h2>{stops}<p>{escape(say(key))}</p>"
        f'<button type="button" class="btn first" data-do="face" data-face="numbers">{words}</button></section>'
    )
