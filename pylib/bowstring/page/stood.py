"""Stakes that stand on other numbers than those in the fields."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping

from bowstring import BadJob, JobForm, answering
from bowstring.job.link import read_link
from bowstring.page.fields import job_of_fields
from bowstring.report.forms.answer import Answer

LEAST_MOVED = 0.0005
"""Metres: no tape shows less."""

_NO_STAKE_HANGS_ON = (
    "title",
    "note",
    "ends",
    "ties",
    "got",
    "tolerance",
    "fair",
    "read",
    "done",
    "by",
    "date",
)


def moved_stakes(answered: Answer, fields: Mapping[str, str], done: Collection[int], link: str) -> int:
    """Return how many of the stakes that stand have another place now, or another hand or method than they were set by.

    ``fields`` hold ``stood``, the link of the job that they were set by; one that can't be read says nothing. ``link``:
    that of the job in the fields.
    """
    try:
        before, now = read_link(fields["stood"]), job_of_fields(fields)
        # Both as a link has them: every card that is turned comes by here, and an equal job needn't be laid out.
        if _said(before) == _said(read_link(link)):
            return 0
        # What was got since brought later stakes elsewhere by itself, and belongs to both.
        if "got" in now:
            before = {**before, "got": now["got"]}
        old = answering(before)
        places = {stake["name"]: (stake["x"], stake["y"]) for stake in old["stakes"]}
    except BadJob:
        return 0
    names = {
        card["stake"] for card in old["cards"] if card["number"] in done and card["stake"]
    }  # counted as they were set
    if old["side"] != answered["side"] or old["method"] != answered["method"]:
        return len(names)
    today = {stake["name"]: (stake["x"], stake["y"]) for stake in answered["stakes"]}
    return sum(_apart(places.get(name), today.get(name)) for name in names)


def _said(job: JobForm) -> str:
    return json.dumps({key: value for key, value in job.items() if key not in _NO_STAKE_HANGS_ON}, sort_keys=True)


def _apart(one: tuple[float, float] | None, other: tuple[float, float] | None) -> bool:
    if one is None or other is None:
        return one is not other
    return max(abs(one[0] - other[0]), abs(one[1] - other[1])) > LEAST_MOVED
