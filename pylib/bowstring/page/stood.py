"""Stakes that stand on other numbers than those in the fields."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
from typing import NamedTuple

from bowstring import BadJob, JobForm, answering
from bowstring.job.link import read_link
from bowstring.page.shown import shown_here
from bowstring.report.forms.answer import Answer

LEAST_MOVED = 0.0005
"""Metres: no tape shows less."""


class Standing(NamedTuple):
    """Where a stake stands, and by which numbers it's set."""

    x: float
    y: float
    numbers: tuple[str, ...]


_NO_STAKE_HANGS_ON = (
    "title",
    "note",
    "ends",
    "ties",
    "tolerance",
    "fair",
    "read",
    "done",
    "by",
    "date",
    "ticket",
    "called",
)


def moved_stakes(answered: Answer, fields: Mapping[str, str], done: Collection[int], link: str) -> int:
    """Return how many of the stakes that stand have another place now, or another hand, method or number than they were
    set by.

    ``fields`` hold ``stood``, the link of the job that they were set by, as it was when a card was done last; one that
    can't be read says nothing. ``link``: that of the job in the fields. A stake that something else was got at stands
    where it stands: it's those after it that hang on what was got.
    """
    try:
        # Both as a link has them: every card that is turned comes by here, and an equal job needn't be laid out.
        before, now = read_link(fields["stood"]), read_link(link)
        if _said(before) == _said(now):
            return 0
        old = answering(before, shown=shown_here())
        stood = _standing(old)
    except BadJob:
        return 0
    names = {
        card["stake"] for card in old["cards"] if card["number"] in done and card["stake"]
    }  # counted as they were set
    if old["side"] != answered["side"] or old["method"] != answered["method"]:
        return len(names)
    got, today = _got_elsewhere(before, now), _standing(answered)
    numbers = bool(got)  # what else was got at one stake is in the numbers of those after it
    return sum(_apart(stood.get(name), today.get(name), numbers=numbers) for name in names if name not in got)


def _standing(answered: Answer) -> dict[str, Standing]:
    """Each stake's place, and the numbers of the step that sets it."""
    numbers = {step["stake"]: tuple(one["shown"] for one in step["measures"]) for step in answered["steps"]}
    return {one["name"]: Standing(one["x"], one["y"], numbers.get(one["name"], ())) for one in answered["stakes"]}


def _got_elsewhere(one: JobForm, other: JobForm) -> set[str]:
    """The stakes at which one job has other readings than the other."""
    first, second = ({str(row.get("stake", "")).upper(): row for row in job.get("got", ())} for job in (one, other))
    return {name for name in first.keys() | second.keys() if first.get(name) != second.get(name)}


def _said(job: JobForm) -> str:
    return json.dumps({key: value for key, value in job.items() if key not in _NO_STAKE_HANGS_ON}, sort_keys=True)


def _apart(one: Standing | None, other: Standing | None, *, numbers: bool) -> bool:
    if one is None or other is None:
        return one is not other
    far = max(abs(one.x - other.x), abs(one.y - other.y)) > LEAST_MOVED
    return far or (numbers and one.numbers != other.numbers)
