"""Readings that wait: one of their marks isn't set yet, or stands by old numbers."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from bowstring.construction import HELPERS
from bowstring.page.beside import marks_of, read_of
from bowstring.page.done import steps_of
from bowstring.page.old_numbers import Old, called, old_numbers
from bowstring.page.pieces import staked_of_several
from bowstring.page.stood import FAR, moved_corners
from bowstring.page.ticks import ticked
from bowstring.report.answer import standing
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.cards import CardRow

Typed = Mapping[str, str]


def waiting(answered: Answer, fields: Typed, link: Callable[[], str]) -> Answer:
    """Return an answer in which what was read waits wherever it has to; ``link`` makes the job's own.

    Where nothing was read, or a layout is a stop, nothing is looked at for it.
    """
    if answered["stops"] or not read_of(fields):
        return answered
    old: Old = old_numbers(answered, fields, link)
    done = steps_of(answered, ticked(answered, fields, link))
    corners, moved = _corners(answered, fields)
    return standing(answered, done, [*called(old, staked_of_several(fields)), *moved], () if moved else corners)


def _corners(answered: Answer, fields: Typed) -> tuple[Sequence[str], Sequence[str]]:
    """The far corners of a pad as long as their card isn't done, and those of them that stand by old numbers; no card
    of the forms is made where nothing was read there."""
    read = {row["check"] for row in read_of(fields)}
    if not any(end in check for end in FAR for check in read) or CORNERS not in answered["second_pass"]:
        return (), ()
    marks = marks_of(fields)
    card = next(one for one in answered["form_cards"] if one["kind"] == f"form_{CORNERS}")
    return () if card["mark"] in marks else FAR, moved_corners([card], marks)


def read_at(answered: Answer, card: CardRow) -> tuple[str, list[str]]:
    """Return what a card sets, and the keys of the checks that were read and touch it: once it is set, they say nothing
    of it."""
    read, far = answered["read"]["rows"], answered["far_checks"]["read"]
    sets = FAR if card["kind"] == f"form_{CORNERS}" else card["sets"]
    names = [mark for mark in sets if mark.split()[0] not in HELPERS]
    return ", ".join(names), [row["check"] for row in (*read, *far) if not set(row["marks"]).isdisjoint(names)]
