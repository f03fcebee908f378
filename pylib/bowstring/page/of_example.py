"""What still stands of the example in a job that began as it, and the button that lets it go."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from html import escape

from bowstring.demo import DEMO
from bowstring.faces.help_line import fill_button
from bowstring.faces.questions import panel_of
from bowstring.page.beside import is_beside
from bowstring.page.fields import fields_of_job
from bowstring.sheet.markup import marked
from bowstring.words import say

NAMED = ("title", "ends", "hand", "line", "tolerance")
"""What of it is told by name, before the obstacles; the rest goes with them."""

MOST_OBSTACLES = 2
"""Obstacles that are told by name."""


def of_example_html(fields: Mapping[str, str]) -> str:
    """Return the line that says what of the example still stands, with the button that lets go of it.

    Empty where nothing does, or where the example is as it was: ``fields`` are the texts typed, by field id.
    """
    if not any(fields.get(name) == text for name, text in _OWN.items()):
        return ""  # a number that is the same by chance is somebody's own
    example = _example()
    if {name: text for name, text in fields.items() if not _is_work(name)} == example:
        return ""
    left = [name for name, text in example.items() if fields.get(name) == text and panel_of(name)]
    told = say("numbers.of_example", what=say("numbers.joint").join(_names(left, fields)))
    strong, _, rest = told.partition("|")
    button = fill_button(dict.fromkeys(left, ""), say("numbers.let_them_go"))
    return f"<span><b>{escape(strong)}</b> {marked(rest)}</span> {button}"


_OWN = {"title": DEMO["title"], "ends-A": DEMO["ends"]["A"]}
"""Fields whose texts are nobody's but the example's."""


def _is_work(name: str) -> bool:
    """Whether a field is of the work on the ground, or says what an empty form says: the example may be tried."""
    return is_beside(name) or name.startswith(("got-", "found-")) or name in ("unit", "start", "method", "halve_first")


@lru_cache(1)
def _example() -> dict[str, str]:
    return {name: text for name, text in fields_of_job(DEMO).items() if text and not _is_work(name)}


def _names(left: list[str], fields: Mapping[str, str]) -> list[str]:
    heads = {_head(name) for name in left}
    names = [say(f"numbers.of_example_{head}") for head in NAMED if head in heads]
    ground = [fields[name] for name in left if name.startswith("ground-") and name.endswith("-name")]
    names += ground[:MOST_OBSTACLES]
    if len(ground) > MOST_OBSTACLES:
        names.append(say("numbers.way_more", count=len(ground) - MOST_OBSTACLES))
    return names


def _head(name: str) -> str:
    """What a field belongs to, as the line names it."""
    return "tolerance" if name in ("tolerance", "fair") else panel_of(name) if panel_of(name) in NAMED else name
