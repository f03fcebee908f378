"""The rows of the build's first screen, in the order in which a crew needs them."""

from __future__ import annotations

from bowstring.report.forming.boards import report_boards, row_of_boards
from bowstring.report.forming.edges import report_edges, row_of_edges
from bowstring.report.forming.grades import report_grades, row_of_grades
from bowstring.report.forming.joints import report_joints, row_of_joints
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pour import report_pour, row_of_pour
from bowstring.report.forms.build import BuildRow


def report_build(plan: Plan) -> list[BuildRow]:
    """Return the answer's ``build``."""
    return [
        row_of_edges(plan, report_edges(plan)),
        row_of_boards(plan, report_boards(plan)),
        row_of_joints(plan, report_joints(plan)),
        row_of_grades(plan, report_grades(plan)),
        row_of_pour(plan, report_pour(plan)),
    ]
