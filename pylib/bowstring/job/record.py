"""What a job keeps of the work itself: the steps that are done, what checks read, by whom and when, what it copies."""

from __future__ import annotations

import re
from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.job.reader import Reader

MOST_STEPS = 5000
"""More than the most rounds of halving and the ends come to."""

MOST_READ = 1000
CHECK_LIMIT, BY_LIMIT, PARENT_LIMIT, TICKET_LIMIT = 40, 40, 80, 40
"""Most characters of the texts."""

FORM_CARD = re.compile(r"form_[a-z]{2,12}-[0-9a-f]{8}")
"""A card of the forms among what is done, which is no step: what it is of, and a sign of its numbers."""

MOST_FORM_CARDS = 40
"""Nobody has as many; some may be of numbers that the job has no more."""

_DATE = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")
_DAYS = (31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


@dataclass(frozen=True)
class Read:
    """What a check read, metres."""

    check: str
    value: float


@dataclass(frozen=True)
class Record:
    """What was done: ``done`` by step number, in order, ``formed`` by the form cards' marks; ``date`` as
    ``2026-05-31``; ``parent`` names the job that this one is a copy of; ``ticket``: the locate ticket's number,
    ``called``: when it was called, in free words. Empty where the job doesn't say."""

    done: tuple[int, ...] = ()
    formed: tuple[str, ...] = ()
    read: tuple[Read, ...] = ()
    by: str = ""
    date: str = ""
    parent: str = ""
    ticket: str = ""
    called: str = ""


def read_record(reader: Reader) -> Record:
    """Return what a job keeps of the work; raises ``BadJob``."""
    done, formed = _done(reader)
    return Record(
        done=done,
        formed=formed,
        read=_read(reader),
        by=reader.text("by", BY_LIMIT),
        date=_date(reader),
        parent=reader.text("parent", PARENT_LIMIT),
        ticket=reader.text("ticket", TICKET_LIMIT),
        called=reader.text("called", TICKET_LIMIT),
    )


def _done(reader: Reader) -> tuple[tuple[int, ...], tuple[str, ...]]:
    steps: set[int] = set()
    cards: dict[str, None] = {}
    for number, value in enumerate(reader.rows("done", MOST_STEPS + MOST_FORM_CARDS)):
        field = f"done[{number}]"
        if isinstance(value, str) and FORM_CARD.fullmatch(value):
            cards[value] = None
            continue
        if isinstance(value, float) and value.is_integer():
            value = int(value)
        if not isinstance(value, int) or isinstance(value, bool) or not 1 <= value <= MOST_STEPS:
            raise bad(field, "done.step", most=MOST_STEPS)
        if value in steps:
            raise bad(field, "done.twice", step=value)
        steps.add(value)
    if steps and "method" not in reader.job:
        # What was driven stands where one method's step put it; another method's step of that number is another stake.
        raise bad("done", "done.no_method")
    return tuple(sorted(steps)), tuple(cards)


def _read(reader: Reader) -> tuple[Read, ...]:
    quiet = Reader(reader.job, reader.tape, None)  # these aren't entries of the drawing, to be compared with it
    rows = []
    for number, row in enumerate(reader.rows("read", MOST_READ)):
        one = quiet.within(f"read[{number}]", row, ("check", "value"))
        check = one.text("check", CHECK_LIMIT)
        value = one.length("value", zero=True)
        if not check or value is None:
            raise bad(one.field("value" if check else "check"), "done.read_half")
        rows.append(Read(check, value))
    return tuple(rows)


def _date(reader: Reader) -> str:
    text = reader.text("date", len("2026-05-31"))
    if not text:
        return ""
    found = _DATE.fullmatch(text)
    year, month, day = (int(part) for part in found.groups()) if found else (0, 0, 0)
    leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    if not year or not 1 <= month <= 12 or not 1 <= day <= _DAYS[month - 1] - (month == 2 and not leap):
        raise bad("date", "done.date")
    return text
