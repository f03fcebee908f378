"""What a crew did and read, which a job keeps beside what was asked: no stake hangs on it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.errors import bad

KEPT = ("read", "by", "date", "done")
"""The keys of a job that a layout doesn't look at."""

MOST_READ = 2000
"""Rows: every check that a form has, read twice."""


@dataclass(frozen=True)
class CheckRead:
    """What was read at a check, as it was typed: one that is no length is told at its place, and stops nothing."""

    check: str
    value: object


@dataclass(frozen=True)
class Kept:
    """The readings in their order, a check as often as it was taped; who read, and when."""

    read: tuple[CheckRead, ...] = ()
    by: str = ""
    date: str = ""


def part_kept(job: object) -> tuple[object, Kept]:
    """Return a job without what is only kept with it, and that; raises ``BadJob`` where it can't be kept."""
    if not isinstance(job, Mapping) or not any(key in job for key in KEPT):
        return job, Kept()
    rows = job.get("read", ())
    if not isinstance(rows, list | tuple) or len(rows) > MOST_READ:
        raise bad("read", "site.rows", most=MOST_READ)
    read = tuple(CheckRead(str(row.get("check", "")), row.get("value", "")) for row in rows if isinstance(row, Mapping))
    rest = {key: value for key, value in job.items() if key not in KEPT}
    return rest, Kept(read, str(job.get("by", "")), str(job.get("date", "")))
