"""The joints, told."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_joints import JointsPart
from bowstring.words import say


def report_joints(plan: Plan) -> JointsPart | None:
    """Return the answer's ``joints``, ``None`` where something has to be said first."""
    return None


def row_of_joints(plan: Plan, part: JointsPart | None) -> BuildRow:
    """Return the row of the first screen."""
    return {"key": "joints", "state": "open", "text": say("joints.open"), "more": "", "panel": "slab"}
