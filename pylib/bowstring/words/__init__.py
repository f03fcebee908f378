"""The message catalogue: every sentence that a person reads is written once, in a module of this package.

A language is a package of topic modules (``english/lengths.py``, ...), each with a dict ``MESSAGES`` from a key
to a ``str.format`` template. A key is a group and a name, joined by a point: ``length.empty``; ``topics.TOPICS`` says
which modules hold a group. A module is imported with the first of its sentences: the page's start waits for few.
"""

from __future__ import annotations

import importlib
from collections.abc import Mapping
from functools import cache

from bowstring.words.isolated import isolated
from bowstring.words.topics import TOPICS

DEFAULT_LANGUAGE = "english"


@cache
def templates(group: str, language: str = DEFAULT_LANGUAGE) -> Mapping[str, str]:
    """Return the templates of a group by their whole keys; empty for a group that there isn't.

    Raises ``ValueError`` when two modules carry the same key: a sentence is written once.
    """
    messages: dict[str, str] = {}
    for topic in TOPICS.get(group, ()):
        found = importlib.import_module(f"{__name__}.{language}.{topic}").MESSAGES
        own = {key: text for key, text in found.items() if _group(key) == group}
        twice = messages.keys() & own.keys()
        if twice:
            raise ValueError(f"message keys written twice: {sorted(twice)}")
        messages.update(own)
    return messages


@cache
def catalogue(language: str = DEFAULT_LANGUAGE) -> dict[str, str]:
    """Return every message template of a language by its key."""
    return {key: text for group in TOPICS for key, text in templates(group, language).items()}


def is_said(key: str) -> bool:
    """Tell whether there is a sentence of a key."""
    return key in templates(_group(key))


def _group(key: str) -> str:
    return key.partition(".")[0]


def say(key: str, **values: object) -> str:
    """Return the sentence of ``key`` with its values put in, each isolated that runs from right to left.

    Raises ``KeyError`` when the key or one of its values is missing.

    >>> say("measure.chord")
    'chord'
    """
    for name, value in values.items():
        if isinstance(value, str) and not value.isascii():
            values[name] = isolated(value)
    return templates(_group(key))[key].format(**values)
