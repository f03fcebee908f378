"""The cards that don't stand once something else was got at one of them: it, and those whose numbers change."""

from __future__ import annotations

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow

SAME = 1e-6
"""Metres: a stake that is set by numbers this near to the old ones stands where it stood."""


def hanging(before: Answer, after: Answer, card: int) -> list[int]:
    """Return the numbers of the cards from one on that are worked otherwise in another answer, that one first.

    It's the exact numbers that are compared: where a mark moved that a stake is set from, they differ, whatever is
    shown.
    """
    old, new = before["cards"], after["cards"]
    if len(old) != len(new):
        return [one["number"] for one in old if one["number"] >= card]
    later = zip(old[card:], new[card:], strict=True)
    return [card, *(one["number"] for one, other in later if not _same(before, one, after, other))]


def _same(before: Answer, one: CardRow, after: Answer, other: CardRow) -> bool:
    """Whether both cards are worked the same."""
    if (one["kind"], one["text"], one["sets"]) != (other["kind"], other["text"], other["sets"]):
        return False
    first, second = _lengths(before, one), _lengths(after, other)
    return len(first) == len(second) and all(
        marks == others and abs(length - another) <= SAME
        for (marks, length), (others, another) in zip(first, second, strict=True)
    )


def _lengths(answer: Answer, card: CardRow) -> list[tuple[tuple[str, str], float]]:
    """What is measured, turned and read at a card: its marks, with metres or degrees."""
    rows: list[tuple[tuple[str, str], float]] = []
    for number in card["steps"]:
        step = answer["steps"][number - 1]
        for one in step["measures"]:
            rows.append(((one["from"], one["to"]), one["distance"] if "distance" in one else one["angle"]))
        rows += [((one["from"], one["to"]), one["distance"]) for one in step["readings"]]
    return rows
