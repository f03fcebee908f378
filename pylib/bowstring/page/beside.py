"""What is kept with a job beside the form's fields: which steps stand, what was read, by whom and when, the ticket."""

from __future__ import annotations

import re
from collections.abc import Mapping

from bowstring.job.record import FORM_CARD, MOST_FORM_CARDS

MOST_ROWS = 200
"""Rows of readings that the page keeps at most; a job may have more."""

MOST_SIGNS = 2000
"""Of a text that is kept so."""

PLAIN = ("done", "by", "date", "ticket", "called", "stood", "built", "edged", "parent", "received", "anew",
         "unit_before")  # fmt: skip
"""``done``: numbers of the cards that stand and marks of those of the forms, apart by blanks;
``stood``: the link of the job that they stand on;
``built``: the links of the jobs by which cards of the forms were done, apart by blanks;
``edged``: the link of the job by which the stakes are an edge of the slab;
``parent``: what names the job that this one is a copy of; ``received``: what a copy of this one will name, as long as
it is as it came by a link; ``anew``: the stake that was set again and the checks that are taped anew, apart by
``|``;
``unit_before``: the unit that bare numbers were typed in, as long as nobody has said whether the present one holds."""

READ_ROW = re.compile(r"read-(?P<row>[0-9]{1,4})-(?P<what>check|value)")

_OF_THE_DAY = tuple(name for name in PLAIN if name != "unit_before")

OF_THE_DAY = "|".join((*_OF_THE_DAY, re.sub(r"\?P<[a-z]+>", "?:", READ_ROW.pattern)))
"""What no stake hangs on, as a pattern, the script's too: what was done, read and noted, and whence a job came."""

NO_STAKE = tuple(name for name in _OF_THE_DAY if name not in ("by", "date", "ticket", "called"))
"""Those of them that change nothing of what a sheet says, either."""

Typed = Mapping[str, str]


def is_beside(name: str) -> bool:
    """Tell whether a field's id is of those that stand in no form."""
    return name in PLAIN or READ_ROW.fullmatch(name) is not None


def is_plain(field: tuple[str, str]) -> bool:
    """Tell whether a field, its id and its text, is one that may be shown as it came: a reading may be any text."""
    name, text = field
    return not is_beside(name) or (text.isprintable() and len(text) <= MOST_SIGNS)


def done_of(fields: Typed) -> tuple[int, ...]:
    """Return the cards that stand, in order; what is no number isn't counted."""
    return tuple(
        sorted({int(text) for text in fields.get("done", "").split() if re.fullmatch("[1-9][0-9]{0,4}", text)})
    )


def marks_of(fields: Typed) -> tuple[str, ...]:
    """Return the marks of the forms' cards that are done, by numbers that may be others by now."""
    found = dict.fromkeys(text for text in fields.get("done", "").split() if FORM_CARD.fullmatch(text))
    return tuple(found)[:MOST_FORM_CARDS]


def is_read(fields: Typed) -> bool:
    """Tell whether anything of a reading is told, at once: where nothing is, nothing has to be looked at for it."""
    return any(text and name.startswith("read-") for name, text in fields.items())


def read_of(fields: Typed) -> list[dict[str, str]]:
    """Return the readings that are told, as a job has them."""
    rows = sorted({int(found["row"]) for name in fields if (found := READ_ROW.fullmatch(name))})
    pairs = [(fields.get(f"read-{row}-check", "").strip(), fields.get(f"read-{row}-value", "").strip()) for row in rows]
    return [{"check": check, "value": value} for check, value in pairs if check and value]


def for_layout(fields: Typed) -> dict[str, str]:
    """Return the fields without those that no stake hangs on: what was worked out for them holds while they change."""
    return {name: text for name, text in fields.items() if name not in NO_STAKE}


def readings_in(fields: Typed) -> dict[str, object]:
    """Return what was read at the checks, by whom and when, the ticket, and what the job is a copy of, by the
    job's keys; a date that is none yet is left out."""
    read = read_of(fields)
    job: dict[str, object] = {"read": read} if read else {}
    for name in ("by", "date", "ticket", "called", "parent"):
        text = fields.get(name, "").strip()
        if text and (name != "date" or re.fullmatch("[0-9]{4}-[0-9]{2}-[0-9]{2}", text)):
            job[name] = text
    return job


def fields_of(job: Mapping[str, object]) -> dict[str, str]:
    """Return the fields that hold what a job keeps of the work; their values were read before."""
    fields = {name: str(job[name]) for name in ("by", "date", "ticket", "called", "parent") if job.get(name)}
    done, read = job.get("done"), job.get("read")
    if isinstance(done, list | tuple) and done:
        fields["done"] = " ".join(str(number) for number in done)
    for row, one in enumerate(read if isinstance(read, list | tuple) else ()):
        fields |= {f"read-{row}-check": str(one["check"]), f"read-{row}-value": str(one["value"])}
    return fields
