"""Trade words in sentences: each stands between tildes, and is shown by the word that a crew uses for it."""

from __future__ import annotations

import re
from collections.abc import Mapping

_WORD = re.compile("~([^~]+)~")


def in_words(template: str, trade: Mapping[str, str]) -> str:
    """Return a template in a crew's words; one that begins with a capital keeps it.

    Raises ``KeyError`` for a word that the table lacks.

    >>> in_words("~Estaca~ y ~hilo~", {"estaca": "estaca", "hilo": "cordel"})
    'Estaca y cordel'
    """

    def shown(found: re.Match[str]) -> str:
        word = found[1]
        crews = trade[word.lower()] if word.lower() in trade else trade[word]
        if word.isupper():
            return crews.upper()
        return crews[:1].upper() + crews[1:] if word[:1].isupper() else crews

    return _WORD.sub(shown, template)
