"""The cards that are done, as a job has them: by the numbers of their steps."""

from __future__ import annotations

from collections.abc import Collection

from bowstring.report.forms.answer import Answer


def steps_of(answered: Answer, cards: Collection[int]) -> list[int]:
    """Return the numbers of the steps that stand with some cards, in order."""
    return sorted({step for card in answered["cards"] if card["number"] in cards for step in card["steps"]})


def cards_of(answered: Answer, steps: Collection[int]) -> list[int]:
    """Return the cards that are done when some steps stand: those of which every step does, and before them the locate
    ticket, which is no step: nobody drives a stake without it."""
    done = [card["number"] for card in answered["cards"] if card["steps"] and set(card["steps"]) <= set(steps)]
    before = [card["number"] for card in answered["cards"] if not card["steps"] and done and card["number"] < done[0]]
    return before + done
