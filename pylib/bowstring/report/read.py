"""What was read at the checks, held against what they must read, told."""

from __future__ import annotations

import re
from collections.abc import Collection
from math import isclose
from typing import NamedTuple

from bowstring.analysis.limits import Judged
from bowstring.analysis.slips import Slip, slips_of
from bowstring.errors import BadJob
from bowstring.forming.pad import FAR_PAIRS, SIDE_PAIRS
from bowstring.job.job import Job
from bowstring.job.kept import Kept
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.report.checks import judged_checks, limit_shown
from bowstring.report.forms.read import ReadPart, ReadRow, SuspectRow
from bowstring.report.forms.steps import StepRow
from bowstring.report.got import told_slip
from bowstring.report.suspects import told_suspects
from bowstring.report.waiting import Waits
from bowstring.units.as_shown import as_shown
from bowstring.units.lengths import read_length, said_unit
from bowstring.units.spelled import spelled
from bowstring.units.tape import Tape
from bowstring.words import say

_FAR = tuple(f"{start}-{end}" for start, end in FAR_PAIRS + SIDE_PAIRS)
"""Readings that prove a pad's far corners: they are told by themselves."""

LINE_END = "end"
"""How the marks are called, before their number from 0, between which a line of several pieces is proved."""

_ALONG = re.compile(f"{LINE_END}[0-9]+-{LINE_END}[0-9]+")

OUT = ("again", "out", "differ")
"""Verdicts of a check that isn't in."""

NO_VERDICT = ("unread", "waits")
"""Those of one of which nothing that was read counts."""


def report_read(layout: Layout, own: Row, kept: Kept, steps: list[StepRow], waits: Waits) -> ReadPart:
    """Return the answer's ``read``; ``own``: the row of the layout's method, ``kept``: what was read, ``waits``: the
    marks at which nothing that was read counts."""
    assert own.accuracy is not None
    checks = {one.check.key: one for one in judged_checks(layout, own.accuracy.spread) if one.shows}
    typed = typed_of(kept)
    here = {key: waits.at(checks[key].check.follows) for key in typed if key in checks}
    rows = [read_row(layout.job, checks[key], typed[key], waits=at.told) for key, at in here.items()]
    outs = [row for row in rows if row["verdict"] in OUT]
    # Readings that disagree say nothing yet: whatever is named has to explain every one.
    differ = any(row["verdict"] == "differ" for row in outs)
    twice = not differ and (any(row["verdict"] == "out" for row in outs) or len(outs) > 1)
    told: list[SuspectRow] = []
    suspects, every, more = told, True, 0
    if twice:
        suspects, every, more = told_suspects(layout, checks, rows, steps, own.accuracy.spread)
    if len(suspects) == 1:  # one thing explains them all: no row has a slip of its own
        rows = [read_row(layout.job, checks[key], typed[key], hint=False, waits=at.told) for key, at in here.items()]
    return {
        "by": kept.by,
        "date": kept.date,
        "wanted": len(checks),
        "count": sum(row["verdict"] not in NO_VERDICT for row in rows),
        "outs": len(outs),
        "judged": twice,
        "rows": rows,
        "suspects": suspects,
        "text": say("read.differ_first") if differ else _text(outs, twice, len(suspects), every) + _more(more),
        "lost": _lost(typed, checks),
        "waits": waits.at({mark for key in here for mark in checks[key].check.follows}).line,
    }


def typed_of(kept: Kept) -> dict[str, list[object]]:
    """Return what was read at each check, by its key, in order."""
    typed: dict[str, list[object]] = {}
    for row in kept.read:
        if str(row.value).strip():
            typed.setdefault(row.check, []).append(row.value)
    return typed


def _lost(typed: Collection[str], checks: Collection[str]) -> list[str]:
    """The readings of checks that there are no more; those of a pad's far corners, and along a line, are told
    elsewhere."""
    return [key for key in typed if key not in checks and key not in _FAR and not _ALONG.fullmatch(key)]


def _text(outs: list[ReadRow], twice: bool, suspects: int, every: bool) -> str:
    if not outs:
        return ""
    if not twice:
        return say("read.again")
    if not suspects:
        return say("read.no_single")
    if suspects == 1 and not every:
        return say("read.found_nearly")
    return say("read.found" if suspects == 1 else "read.found_two" if suspects == 2 else "read.found_many")


def _more(count: int) -> str:
    """How much fits as well and isn't told: the readings don't tell it from what is."""
    return f" {say('read.more_fits' if count == 1 else 'read.more_fit', count=count)}" if count else ""


class Reading(NamedTuple):
    """One reading of a check: where it stands among what was typed, its length and how far over, metres."""

    place: int
    length: float
    over: float
    is_in: bool


def _readings(own: Tape, distance: float, meant: list[object], limit: float) -> tuple[list[Reading], str | None]:
    """Return those that can be read, which are judged whatever else was typed, and what is wrong with the last."""
    found: list[Reading] = []
    wrong: str | None = None
    for place, value in enumerate(meant):
        try:
            length = read_length(value, own.unit, "read", zero=True).metres
        except BadJob as why:
            wrong = f"{why.wrong} {why.remedy}"
            continue
        wrong = None
        # What was read is held against what is printed: that is what the crew sees, and takes one from the other. By
        # the unit of a reading everybody knows which print that was, in whichever unit he looks at it.
        printed = _print_of(value, own)
        off = length - printed.round(distance)
        found.append(Reading(place, length, off, _is_in(off, max(limit, printed.mark))))
    return found, wrong


def read_row(job: Job, one: Judged, values: list[object], hint: bool = True, waits: str = "") -> ReadRow:
    """Return a check that was read, judged; ``values``: every reading as it was typed; ``hint``: name a slip that it
    looks like; ``waits``: why none of them counts, empty where they do."""
    own, tape = job.tape, job.shown
    limit = max(own.down(one.limit), own.mark)
    must = own.show(one.check.distance)
    meant = [as_shown(value, must, own.unit) if isinstance(value, str) else value for value in values]
    found, wrong = _readings(own, one.check.distance, meant, limit)
    lengths, inside = [read.length for read in found], [read.is_in for read in found]
    verdict = "unread" if not found else "waits" if waits else _verdict(inside)
    counts = None if verdict in NO_VERDICT else _counting(inside, verdict)
    counted = None if counts is None else found[counts]
    typed = [_as_typed(value, must, job) for value in values]
    row: ReadRow = {
        "check": one.check.key,
        "marks": list(one.check.follows),
        "typed": typed,
        "value": None,
        "value_shown": None,
        "over": None,
        "over_shown": None,
        "counts": None,
        "limit": limit,
        "limit_shown": limit_shown(job, one.limit),
        "verdict": verdict,
        "text": say("read.wait_one", told=waits) if verdict == "waits" else say("read.unread"),
        "wrong": wrong,
    }
    if counted is None:
        return row
    place, length, over, _ = counted
    slip = _slip(tape, one, length) if hint else []
    left_out = [read.length for read in found if not read.is_in]
    row["value"], row["value_shown"], row["counts"] = length, tape.show_whole(length), place
    row["over"], row["over_shown"] = over, _size(tape, over)
    row["text"] = _told(
        job, one, verdict, over, typed[place], lengths, counts or 0, str(meant[place]).strip(), left_out, slip
    )
    return row


def _print_of(value: object, own: Tape) -> Tape:
    """The tape whose print a reading was held against: by its own unit where it says one."""
    return own.seen_in(said_unit(value) if isinstance(value, str) else None)


def _as_typed(value: object, must: str, job: Job) -> str:
    """A reading as it was typed; a bare one is in the job's unit, which is said where another unit is shown."""
    text = str(value).strip()
    return text if job.shown == job.tape else spelled(text, must, job.tape.unit)


def _size(tape: Tape, over: float) -> str:
    """How far out, finer than the mark where it was read so."""
    if tape.round(over) != 0 and not isclose(tape.round(over), over, rel_tol=1e-9):
        return tape.show_limit(abs(over))
    return tape.show_whole(abs(over)) if abs(over) > tape.mark / 1000 else tape.show(0.0)


def _is_in(over: float, limit: float) -> bool:
    return abs(over) <= limit * (1 + 1e-9)


def _verdict(readings: list[bool]) -> str:
    """``readings``: of each whether it is in."""
    inside = sum(readings)
    outside = len(readings) - inside
    if inside == outside:
        return "differ"
    if inside > outside:
        return "in"
    return "again" if len(readings) == 1 else "out"


def _counting(readings: list[bool], verdict: str) -> int:
    """The number of the reading that counts: the last one on the side that the verdict took."""
    return max(
        (number for number, is_in in enumerate(readings) if is_in is (verdict == "in")),
        default=len(readings) - 1,
    )


def _slip(tape: Tape, one: Judged, length: float) -> list[str]:
    """What a reading that is out looks like, the likeliest, as a stake's card names it."""
    check = one.check
    kinds = slips_of(check.distance, length, tape)
    return [told_slip(tape, Slip(kind, check.start, check.end, check.distance, length)) for kind in kinds][:1]


def _told(
    job: Job, one: Judged, verdict: str, over: float, typed: str, lengths: list[float], counts: int,
    meant: str, left_out: list[float], slip: list[str],
) -> str:  # fmt: skip
    tape = job.shown
    if verdict == "differ":
        return _disagree(tape, lengths)
    limit = limit_shown(job, one.limit)
    if abs(over) <= tape.mark / 1000:
        size = say("read.right_on")
    else:
        size = say("read.over" if over > 0 else "read.under", size=_size(tape, over))
    told = [say("read.limit", size=size, limit=limit)]
    if verdict == "in":
        told += [say("read.left_out", shown=tape.show_whole(length)) for length in left_out][:1]
    if verdict == "in":
        told += _bump(job, one, over)
    if verdict == "in" and not one.judges:
        told.append(say("read.proves_little"))
    if verdict != "in":
        told += slip
    # A bare number may have been meant otherwise, but for one that is shown just as it was typed.
    shown = tape.show_whole(lengths[counts])
    bare = verdict != "in" and typed.replace(".", "", 1).isdigit() and shown.split()[0] != typed
    alike = "/" in typed and shown == f'{typed}"'  # a fraction that is shown just so is of an inch
    if (meant != typed or bare or _in_another(meant, job)) and not alike:
        told.append(say("read.read_as", typed=typed, shown=shown))
    return " ".join(told)


def _bump(job: Job, one: Judged, over: float) -> list[str]:
    """A stake that may stand there, and yet stands out of line with its two neighbours for the fair curve's limit: over
    the string between them that is just what is read. Half a mark of it is the tape's."""
    if one.check.kind != "alternate" or job.fair is None or abs(over) <= job.fair + job.tape.mark / 2:
        return []
    return [say("read.bump", stake=one.check.end, fair=job.shown.show_limit(job.fair))]


def _in_another(typed: str, job: Job) -> bool:
    """Whether a reading stands there in another unit than the one that the job is shown in."""
    metric = ("m", "mm")
    said, shown = said_unit(typed) or job.tape.unit, job.shown.unit
    return said != shown and not (said in metric and shown in metric)


def _disagree(tape: Tape, lengths: list[float]) -> str:
    """Readings of which as many are in as are out."""
    if len(lengths) > 2:
        return say("read.differ_more")
    first, second = (tape.show_whole(length) for length in lengths)
    return say("read.differ", first=first, second=second)
