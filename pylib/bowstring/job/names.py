"""Names that somebody gives to things on the site: how they look, and whether they could be taken for a mark."""

from __future__ import annotations

import re
import unicodedata

from bowstring.construction import HELPERS
from bowstring.job.reader import Reader

NAME_LIMIT = 30

_TAKEN = re.compile(rf"[^\W\d_]\d*|[PTD][AB]|({'|'.join(HELPERS)})( .*)?", re.IGNORECASE)
"""Names that marks of the construction have, or might have."""

_SCRIPTS = ("LATIN", "GREEK", "CYRILLIC")
"""Alphabets with letters that look alike; a single sign of another one can be a word."""


def name_of(reader: Reader) -> tuple[str, str]:
    """Return a name as it is written, and as it looks: without signs that can't be seen, wide letters as plain ones."""
    name = reader.text("name", NAME_LIMIT)
    seen = "".join(sign for sign in unicodedata.normalize("NFKC", name) if unicodedata.category(sign) != "Cf")
    return name, " ".join(seen.split())


def like_a_mark(seen: str) -> bool:
    """Whether somebody could take a name for a mark of the layout."""
    if not _TAKEN.fullmatch(seen):
        return False
    return len(seen.rstrip("0123456789")) > 1 or unicodedata.name(seen[0], "").startswith(_SCRIPTS)
