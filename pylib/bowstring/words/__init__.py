"""The message catalogue: every sentence that a person reads is written once a language, in a module of this package.

A language is a package of topic modules (``english/lengths.py``, ...), each with a dict ``MESSAGES`` from a key
to a ``str.format`` template. A key is a group and a name, joined by a point: ``length.empty``; ``topics.TOPICS`` says
which modules hold a group. A module is imported with the first of its sentences: the page's start waits for few.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable, Mapping
from functools import cache, lru_cache, wraps
from typing import ParamSpec, TypeVar

from bowstring.words.isolated import isolated
from bowstring.words.languages import LANGUAGES, NEXT, TRADE
from bowstring.words.topics import TOPICS

_P = ParamSpec("_P")
_R = TypeVar("_R")

_speaking = LANGUAGES[0]


def speak(language: str) -> None:
    """Say everything in a language from now on; raises ``ValueError`` for one that there isn't."""
    global _speaking
    if language not in LANGUAGES:
        raise ValueError(f"no such language: {language!r}")
    _speaking = language


def spoken() -> str:
    """Return the language in which everything is said."""
    return _speaking


def remembered(most: int) -> Callable[[Callable[_P, _R]], Callable[_P, _R]]:
    """Remember what a function that says something gave back last, of each language by itself; see ``lru_cache``."""

    def over(function: Callable[_P, _R]) -> Callable[_P, _R]:
        @lru_cache(most)
        def kept(_language: str, *given: _P.args, **named: _P.kwargs) -> _R:
            return function(*given, **named)

        @wraps(function)
        def asked(*given: _P.args, **named: _P.kwargs) -> _R:
            return kept(_speaking, *given, **named)  # type: ignore[arg-type]

        return asked

    return over


@cache
def templates(group: str, language: str) -> Mapping[str, str]:
    """Return the templates of a group by their whole keys; empty for a group that there isn't.

    Raises ``ValueError`` when two modules carry the same key: a sentence is written once.
    """
    messages: dict[str, str] = {}
    for topic in TOPICS.get(group, ()):
        own = {key: text for key, text in _module(language, topic).items() if _group(key) == group}
        twice = messages.keys() & own.keys()
        if twice:
            raise ValueError(f"message keys written twice: {sorted(twice)}")
        messages.update(own)
    return {**templates(group, NEXT[language]), **messages} if language in NEXT else messages


@cache
def _module(language: str, topic: str) -> Mapping[str, str]:
    """Return what one module says; nothing where a language that has a next one needs no other words there."""
    name = f"{__name__}.{language}.{topic}"
    try:
        messages: Mapping[str, str] = importlib.import_module(name).MESSAGES
    except ModuleNotFoundError as missing:
        if language in NEXT and missing.name == name:
            return {}
        raise
    return _in_the_crews_words(language, messages)


def _in_the_crews_words(language: str, messages: Mapping[str, str]) -> Mapping[str, str]:
    if language not in TRADE:
        return messages
    from bowstring.words.trade_words import in_words

    words = importlib.import_module(f"{__name__}.{language}.trade").TRADE
    return {key: in_words(text, words) for key, text in messages.items()}


@cache
def catalogue(language: str = LANGUAGES[0]) -> dict[str, str]:
    """Return every message template of a language by its key."""
    return {key: text for group in TOPICS for key, text in templates(group, language).items()}


def is_said(key: str) -> bool:
    """Tell whether there is a sentence of a key."""
    return key in templates(_group(key), _speaking)


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
    return _template(key, _speaking).format(**values)


@cache
def _template(key: str, language: str) -> str:
    return templates(_group(key), language)[key]
