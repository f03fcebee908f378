"""The button that takes the way out of a stop that is a method, wherever no method works as things are."""

from __future__ import annotations

import json
from html import escape

from bowstring.report.forms.answer import Answer


def take_html(answer: Answer) -> str:
    """Return the button, empty where a method works or none would."""
    way = next((way for way in answer["ways_out"] if "parallel" in way["fields"]), None)
    if way is None or answer["advice"]["method"]:
        return ""
    fields = escape(json.dumps(way["fields"]))
    return f'<button type="button" class="btn" data-do="fill" data-fill="{fields}">{escape(way["button"])}</button> '
