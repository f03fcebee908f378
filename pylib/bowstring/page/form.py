"""The form as HTML, made from the one table of fields: the face with the measures, and the panels behind it."""

from __future__ import annotations

from bowstring.faces.numbers import numbers
from bowstring.page.entries import Entries, Typed
from bowstring.page.keypad import keypad_html
from bowstring.page.measures import face_html
from bowstring.page.panels import panels_html


def form_html(typed: Typed | None = None, echoes: Typed | None = None, plan: str = "") -> str:
    """Return the form.

    Args:
        typed: what stands in the fields, by field id.
        echoes: how each was read, by field id, as HTML.
        plan: the plan of the site, as HTML.
    """
    entries = Entries(typed or {}, echoes or {})
    return "\n".join([face_html(entries, numbers(entries.typed)), panels_html(entries, plan), keypad_html()])
