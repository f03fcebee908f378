"""Marks at which nothing that was read counts: not set yet, or standing by old numbers."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from bowstring.construction import HELPERS
from bowstring.report.forms.steps import StepRow
from bowstring.words import say

NAMED = 3
"""Marks that are told by name."""


@dataclass(frozen=True)
class Standing:
    """What stands on the ground.

    Attributes:
        done: the numbers of the steps that stand.
        old: the marks that stand by other numbers than the job's, and so arcs of its line by what they are called.
        unset: the marks that no step sets, and that aren't set.
    """

    done: tuple[int, ...] = ()
    old: tuple[str, ...] = ()
    unset: tuple[str, ...] = ()


@dataclass(frozen=True)
class Waits:
    """The marks at which readings wait, in the order in which they are set.

    Attributes:
        unset: those whose step isn't done, or has to be done again.
        old: those that stand by other numbers than the job's, and whole arcs of its line by what they are called.
    """

    unset: tuple[str, ...] = ()
    old: tuple[str, ...] = ()

    def at(self, marks: Collection[str]) -> Waits:
        """Return those among some marks."""
        return Waits(tuple(one for one in self.unset if one in marks), tuple(one for one in self.old if one in marks))

    @property
    def told(self) -> str:
        """Why, empty where nothing waits; a mark that stands by old numbers is set, if not as it should be."""
        if self.old:
            return say("read.old", names=_names(self.old))
        return say("read.unset", names=_names(self.unset)) if self.unset else ""

    @property
    def line(self) -> str:
        """The same over the checks, and on paper."""
        return say("read.waits", told=self.told) if self.told else ""


def waits_of(steps: Sequence[StepRow], stands: Standing) -> Waits:
    """Return the marks at which readings wait.

    Where the first step isn't among them nobody walks the cards: who works by the paper says nothing of his steps.
    """
    unset: list[str] = []
    if steps and steps[0]["number"] in stands.done:
        left = [mark for row in steps if row["number"] not in stands.done for mark in row["marks"]]
        left = [mark for mark in left if mark.split()[0] not in HELPERS]
        unset = [mark for mark in (*left, *stands.unset) if mark not in stands.old]
    return Waits(tuple(unset), stands.old)


def _names(marks: Sequence[str]) -> str:
    names = ", ".join(marks[:NAMED])
    more = len(marks) - NAMED
    return say("read.waits_more", names=names, count=more) if more > 0 else names
