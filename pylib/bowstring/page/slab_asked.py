"""Which question of the build is open, read from what stands in the fields."""

from __future__ import annotations

import re
from collections.abc import Mapping

from bowstring.faces.build import panel_asked
from bowstring.faces.slab_lines import OF_A_CURVE
from bowstring.report.forming.plan import edge_of
from bowstring.report.forms.answer import Answer
from bowstring.report.lined.plan import edge_in

BOTH = ("outside", "inside")

_LEFT_OPEN = {
    "slab": (
        ("width", ("width",)),
        ("edge", ("edge",)),
        ("thickness", ("slab-thickness",)),
        ("poured", ("slab-poured",)),
    ),
    "slope": (
        ("slope", ("grade-slope", "grade-to")),
        ("high", ("grade-high", "grade-to")),
        ("low", ("grade-low", "grade-crown")),
    ),
}
"""The questions of each panel in the order in which they are asked, and the fields by which each is answered."""

_OF_A_BAND = ("width", "edge")
"""Of a slab that fills its curve nobody asks these."""


def open_question(answer: Answer, fields: Mapping[str, str]) -> str:
    """Return the first question that is open, ``more`` where the fields have an answer to each of ``_LEFT_OPEN``."""
    filling = bool(fields.get("slab-fills", "").strip())
    for question, names in _LEFT_OPEN.get(panel_asked(answer), ()):
        if filling and question in _OF_A_BAND:
            if question == "edge" and answer["drawn_to"] == "centre":
                return question  # the middle of a work is no edge to fill to
            continue
        if question == "edge" and _edge_of(answer, fields):
            continue  # a radius that is drawn to the center line says it, too
        if question == "poured" and not _waits(answer, "pour"):
            continue  # nothing asks it
        if question == "high" and is_level(fields):
            continue  # neither end is
        if not any(_is_said(answer, name, fields) for name in names):
            return question
    return "more"


def _is_said(answer: Answer, name: str, fields: Mapping[str, str]) -> bool:
    """Whether a field has an answer: inside and outside are none of a line of several pieces."""
    text = fields.get(name, "").strip()
    return bool(text) and not (answer["lined"] is not None and name in ("edge", "grade-low") and text in OF_A_CURVE)


def _waits(answer: Answer, key: str) -> bool:
    return any(row["key"] == key and row["state"] == "open" for row in answer["build"])


def is_level(fields: Mapping[str, str]) -> bool:
    """Tell whether the slope that is said is none."""
    return re.fullmatch(r"0*[.,]?0*\s*%?", fields.get("grade-slope", "").strip() or "-") is not None


def sides_of(answer: Answer, fields: Mapping[str, str]) -> tuple[str, ...]:
    """Return on which sides of the line the slab may lie, as far as it is said."""
    return {"outside": ("inside",), "inside": ("outside",)}.get(_edge_of(answer, fields) or "", BOTH)


def _edge_of(answer: Answer, fields: Mapping[str, str]) -> str | None:
    said = fields.get("edge", "").strip() or None
    if answer["lined"] is not None:
        return edge_in(said, answer["drawn_to"])
    return edge_of(said, answer["side"], answer["drawn_to"])
