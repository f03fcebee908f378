"""What a crew read at the checks, as it was typed: kept with a job, no stake hangs on it.

A reading that is no length stops nothing: it is told at its check. So it is taken out before the job is read.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.errors import BadJob, bad
from bowstring.job.record import MOST_READ
from bowstring.job.terms import RECORD_KEYS
from bowstring.units.lengths import UNITS, read_length


@dataclass(frozen=True)
class CheckRead:
    """What was read at a check, as it was typed."""

    check: str
    value: object


@dataclass(frozen=True)
class Kept:
    """The readings in their order, a check as often as it was taped; who read, and when."""

    read: tuple[CheckRead, ...] = ()
    by: str = ""
    date: str = ""


def part_kept(job: object) -> tuple[object, Kept]:
    """Return a job without those readings that are no lengths, and all that were read; raises ``BadJob``.

    What else is kept stays in the job as far as a job's reader knows it.
    """
    if not isinstance(job, Mapping) or not any(key in job for key in RECORD_KEYS):
        return job, Kept()
    rows = job.get("read", ())
    if not isinstance(rows, list | tuple) or len(rows) > MOST_READ:
        raise bad("read", "site.rows", most=MOST_READ)
    read = tuple(CheckRead(str(row.get("check", "")), row.get("value", "")) for row in rows if isinstance(row, Mapping))
    rest = dict(job)
    if "read" in rest:
        unit = job.get("unit")
        rest["read"] = [row for row in rows if _is_length(row, unit if unit in UNITS else UNITS[0])]
    return rest, Kept(read, str(job.get("by", "")), str(job.get("date", "")))


def _is_length(row: object, unit: str) -> bool:
    """Whether a row's value can be read; what is no row at all is left for the job's reader to refuse."""
    if not isinstance(row, Mapping) or "value" not in row:
        return True
    try:
        read_length(row["value"], unit, "read", zero=True)
    except BadJob:
        return False
    return True
