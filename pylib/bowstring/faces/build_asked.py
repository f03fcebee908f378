"""Which question of the build is open, read from what was asked: its answer is looked for in the job itself."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.report.forming.plan import edge_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build import BuildRow

BOTH = ("outside", "inside")

_LEFT_OPEN: dict[str, tuple[tuple[str, *tuple[tuple[str, ...], ...]], ...]] = {
    "slab": (("width", ("width",)), ("edge", ("edge",)), ("thickness", ("slab", "thickness"))),
    "slope": (
        ("slope", ("grade", "slope"), ("grade", "to")),
        ("high", ("grade", "high"), ("grade", "to")),
        ("low", ("grade", "low"), ("grade", "crown")),
    ),
}
"""The questions of each panel in the order in which they are asked, and where in a job each may be answered."""


def asked_of(row: BuildRow, job: Mapping[str, object]) -> str:
    """Return which question of a row's panel is open, or ``more`` where the job has an answer to each."""
    for question, *places in _LEFT_OPEN.get(row["panel"], ()):
        if not any(_said(job, place) for place in places):
            return question
    return "more"


def sides_of(answer: Answer, job: Mapping[str, object]) -> tuple[str, ...]:
    """Return on which sides of the line the slab may lie, as far as the job says it."""
    said = job.get("edge")
    edge = edge_of(said if isinstance(said, str) else None, answer["side"], answer["drawn_to"])
    return {"outside": ("inside",), "inside": ("outside",)}.get(edge or "", BOTH)


def _said(job: Mapping[str, object], place: tuple[str, ...]) -> bool:
    value: object = job
    for key in place:
        value = value.get(key) if isinstance(value, Mapping) else None
    return value not in (None, "")
