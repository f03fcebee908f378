"""What is bold in a sentence stands between stars: a page makes it so, a sheet leaves it plain."""

from __future__ import annotations

import re

STARRED = re.compile(r"\*([^*]+)\*")


def unstarred(text: str) -> str:
    """Return a sentence without its stars.

    >>> unstarred("Cut *1 in deep*.")
    'Cut 1 in deep.'
    """
    return STARRED.sub(r"\1", text)
