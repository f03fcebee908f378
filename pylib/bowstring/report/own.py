"""Which row of an answer's methods is the sheet's own, and which one is advised."""

from __future__ import annotations

from bowstring.report.forms.advice import MethodRow
from bowstring.report.forms.answer import Answer


def own_row(answer: Answer) -> MethodRow:
    """Return the row of the method that the sheet's steps are of."""
    return next(row for row in answer["methods"] if is_own(answer, row))


def is_own(answer: Answer, row: MethodRow) -> bool:
    """Whether the sheet's steps are of a row's method, from the same string."""
    return (row["method"], row["parallel"]) == (answer["method"], answer["parallel"])


def is_advised(answer: Answer, row: MethodRow) -> bool:
    """Whether a row's method is the advised one, from the same string and without halving before."""
    advice = answer["advice"]
    return (row["method"], row["parallel"], 0) == (advice["method"], advice["parallel"], advice["halve_first"])
