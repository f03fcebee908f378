"""The one exception for input that can't be used."""

from __future__ import annotations

from bowstring.words import say
from bowstring.words.isolated import released


class BadJob(ValueError):
    """A job, or one value in it, that can't be used.

    Attributes:
        field: where it stands, like ``arc.sagitta`` or ``job``.
        wrong: what is wrong, one sentence.
        remedy: what would do, one sentence.
        key: the message key, for a view that translates.
        readings: what it could mean instead, each as somebody would type it; empty where that can't be told.

    >>> str(bad("levels", "job.number", low="1", high="12"))
    "levels: This isn't a plain number from 1 to 12. Give a number from 1 to 12."
    """

    def __init__(self, field: str, wrong: str, remedy: str, key: str) -> None:
        super().__init__(f"{field}: {wrong} {remedy}")
        self.field = field
        self.wrong = wrong
        self.remedy = remedy
        self.key = key
        self.readings: tuple[str, ...] = ()


def bad(field: str, key: str, **values: object) -> BadJob:
    """Return a ``BadJob`` whose two sentences stand in the catalogue as ``key.wrong`` and ``key.remedy``."""
    # A program reads them too: nothing that can't be seen stands in them. A view isolates what it shows of them.
    wrong, remedy = (released(say(f"{key}.{part}", **values)) for part in ("wrong", "remedy"))
    return BadJob(field, wrong, remedy, key)
