"""Long work with pauses: whoever can't wait takes it piece by piece, everybody else at once."""

from __future__ import annotations

from collections.abc import Generator
from typing import TypeVar

Piece = TypeVar("Piece")
Result = TypeVar("Result")


def finished(work: Generator[Piece, None, Result]) -> Result:
    """Do work to its end and return what comes of it.

    >>> def counted():
    ...     yield "one"
    ...     return 2
    >>> finished(counted())
    2
    """
    while True:
        try:
            next(work)
        except StopIteration as end:
            result: Result = end.value
            return result
