"""The unit in which this device shows lengths, whatever the job is in: no job, no link and no file says it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from bowstring.units.as_shown import as_shown
from bowstring.units.lengths import UNITS
from bowstring.units.spelled import spelled
from bowstring.units.tape import Tape, make_tape

if TYPE_CHECKING:
    from bowstring.report.forms.answer import Answer

_here: str | None = None


def show_in(unit: str | None) -> None:
    """Show every length in a unit from now on, ``None`` for each job's own; raises ``ValueError`` for what is none."""
    global _here
    if unit is not None and unit not in UNITS:
        raise ValueError(f"no such unit: {unit!r}")
    _here = unit


def shown_here() -> str | None:
    """Return the unit in which lengths are shown, ``None`` for each job's own."""
    return _here


def unit_here(fields: Mapping[str, str]) -> str:
    """Return the unit in which the lengths of a job are shown."""
    from bowstring.page.fields import unit_of

    return _here or unit_of(fields)


def tape_here(fields: Mapping[str, str]) -> Tape:
    """Return the tape by which the lengths of a job are shown and taped; raises ``BadJob`` for a mark that is none."""
    from bowstring.page.fields import unit_of

    return seen_here(make_tape(unit_of(fields), fields.get("mark") or None))


def kept_text(typed: str, shown: str, fields: Mapping[str, str]) -> str:
    """Return what was typed over the number ``shown`` as it is kept with the job: with its unit where the device shows
    another one than the job's."""
    from bowstring.page.fields import unit_of

    own, text = unit_of(fields), typed.strip()
    return as_shown(text, shown, own) if _here in (None, own) else spelled(text, shown, _here)


def seen_here(tape: Tape) -> Tape:
    """Return the tape by which a job's lengths are shown, ``tape`` being its own."""
    return tape.seen_in(_here)


def answering_here(fields: Mapping[str, str]) -> Answer:
    """Return the answer to what stands in the fields, shown in this device's unit; raises ``BadJob``."""
    from bowstring import answering
    from bowstring.page.unit import settled_job

    return answering(settled_job(fields), shown=_here)


def note_of(fields: Mapping[str, str]) -> str:
    """Return the words for a job that is shown in another unit than its own, empty for any other."""
    if _here is None:
        return ""
    from bowstring.page.unit import tape_of
    from bowstring.report.shown_in import told_units

    tape = tape_of(fields)
    return told_units(tape, seen_here(tape))
