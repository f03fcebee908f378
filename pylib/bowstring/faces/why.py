"""Why: the deep parts, folded, the conclusion of each on its fold; what stands inside is made when it is opened."""

from __future__ import annotations

import re
from collections.abc import Collection
from html import escape

from bowstring.faces.conclusions import FOLDS, Told, conclusion
from bowstring.faces.fold_insides import section_of
from bowstring.report.forms.answer import Answer
from bowstring.sheet.html import Label, inside_html
from bowstring.sheet.markup import marked
from bowstring.words import say

LATER = ("accuracy", "methods", "mistakes")
"""Folds whose conclusion takes more time than a face has: the page asks for it once the face is there."""

WHEN_STOPPED = ("methods", "site", "arc", "found", "ends", "readings", "before", "notes")
"""Folds that a stopped job keeps: what explains the stop, and no number of a step."""

_BOLD = re.compile(r"\*([^*]+)\*")


def keys_of(answer: Answer) -> tuple[str, ...]:
    """Return the keys of the folds that this answer's face may have, in their order."""
    return tuple(key for key in FOLDS if not answer["stops"] or key in WHEN_STOPPED)


def why_html(answer: Answer, keys: Collection[str] | None = None) -> str:
    """Return the face with every fold shut, every text in it escaped.

    ``keys``: the folds whose conclusions are worked out now, all but ``LATER`` without it. Any other has an empty one
    and ``data-later``: ``fold_head_html`` fills it in.
    """
    stopped = bool(answer["stops"])
    now = [key for key in FOLDS if key not in LATER or stopped] if keys is None else keys
    folds = "".join(_fold(answer, key, key in now) for key in keys_of(answer))
    stops = ""
    if stopped:
        told = "".join(f"<p>{marked(text)}</p>" for text in answer["stops"])
        stops = f'<section class="stopbox" role="alert">{told}<p>{escape(say("why.stopped"))}</p></section>'
    return f'<div class="face-why">{stops}<div class="folds">{folds}</div>{_wall(stopped)}</div>'


def _wall(stopped: bool) -> str:
    """The way to the wall: to the lessons where the job itself can't be shown."""
    figure = 1 if stopped else 0
    return (
        f'<div class="to-wall"><button type="button" class="btn" data-do="wall" data-open="{figure}-0">'
        f"{escape(say('why.wall'))}</button><p>{escape(say('why.wall_note'))}</p></div>"
    )


def fold_html(answer: Answer, key: str, label: Label | None = None) -> str:
    """Return what stands inside a fold, empty where there is nothing; ``label`` is ``sheet.html.sheet_html``'s.

    Raises ``ValueError`` when a figure can't be drawn, ``KeyError`` for a fold that a stopped job doesn't have.
    """
    if key not in keys_of(answer):
        raise KeyError(key)
    section = section_of(answer, key)
    return inside_html(section, answer, label) if section else ""


def fold_head_html(answer: Answer, key: str) -> tuple[str, bool]:
    """Return what stands on a fold whose conclusion came later, and whether it warns; empty where the fold is to go."""
    told = conclusion(answer, key)
    return (_head(key, told), told.warns) if told else ("", False)


def _fold(answer: Answer, key: str, now: bool) -> str:
    told = conclusion(answer, key) if now else Told("")
    if told is None:
        return ""
    kind, later = " warn" if told.warns else "", "" if now else " data-later"
    return (
        f'<details class="fold{kind}" id="why-{key}" data-fold="{key}"{later}>'
        f'<summary>{_head(key, told)}</summary><div class="in"></div></details>'
    )


def _head(key: str, told: Told) -> str:
    """The title and the conclusion, what stands between stars bold."""
    bold = _BOLD.sub(r"<strong>\1</strong>", marked(told.text))
    return f'<span class="fold-head"><b>{escape(say(f"why.{key}"))}</b> <span class="told">{bold}</span></span>'
