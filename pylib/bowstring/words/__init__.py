"""The message catalogue: every sentence that a person reads is written once, in a module of this package.

A language is a package of topic modules (``english/lengths.py``, ...), each with a dict ``MESSAGES`` from a key
to a ``str.format`` template. Keys are the topic and a name, joined by a point: ``length.empty``.
"""

from __future__ import annotations

import importlib
import pkgutil
from functools import cache

from bowstring.words.isolated import isolated

DEFAULT_LANGUAGE = "english"


@cache
def catalogue(language: str = DEFAULT_LANGUAGE) -> dict[str, str]:
    """Return every message template of a language by its key.

    Raises ``ValueError`` when two topics carry the same key: a sentence is written once.
    """
    package = importlib.import_module(f"{__name__}.{language}")
    messages: dict[str, str] = {}
    for topic in sorted(module.name for module in pkgutil.iter_modules(package.__path__)):
        found = importlib.import_module(f"{package.__name__}.{topic}").MESSAGES
        twice = messages.keys() & found.keys()
        if twice:
            raise ValueError(f"message keys written twice: {sorted(twice)}")
        messages.update(found)
    return messages


def say(key: str, **values: object) -> str:
    """Return the sentence of ``key`` with its values put in, each isolated that runs from right to left.

    Raises ``KeyError`` when the key or one of its values is missing.

    >>> say("measure.chord")
    'chord'
    """
    for name, value in values.items():
        if isinstance(value, str) and not value.isascii():
            values[name] = isolated(value)
    return catalogue()[key].format(**values)
