"""The parts of a build, each told once, and the rows of its first screen, in the order in which a crew needs them."""

from __future__ import annotations

from functools import cached_property

from bowstring.report.forming.asked import rows_asked
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.words import say

PARTS = ("edges", "boards", "joints", "grades", "pour")


def rows_without_sides() -> list[BuildRow]:
    """Return the rows where straight sides are said, and none run back from a curve of more than a half circle."""
    told, more = say("pad.no_sides"), say("pad.no_sides_more")
    return [{"key": key, "state": "stop", "text": told, "more": more, "panel": "slab"} for key in PARTS]


def is_without_sides(row: BuildRow) -> bool:
    """Tell whether a row is one of those."""
    return row["state"] == "stop" and row["text"] == say("pad.no_sides")


class Built:
    """What the answer tells of a plan: a part by itself and its row are one telling, made when it is first read."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan

    @cached_property
    def edges(self) -> EdgesPart | None:
        """The answer's ``edges``."""
        from bowstring.report.forming.edges import report_edges
        from bowstring.report.forming.fill_edges import report_fill_edges

        if self.plan.filled is not None:
            return report_fill_edges(self.plan, self.plan.filled)
        return report_edges(self.plan)

    @cached_property
    def boards(self) -> BoardsPart | None:
        """The answer's ``boards``."""
        from bowstring.report.forming.boards import report_boards

        return report_boards(self.plan)

    @cached_property
    def joints(self) -> JointsPart | None:
        """The answer's ``joints``."""
        from bowstring.report.forming.fill_joints import report_fill_joints
        from bowstring.report.forming.joints import report_joints

        if self.plan.filled is not None:
            return report_fill_joints(self.plan, self.plan.filled)
        return report_joints(self.plan)

    @cached_property
    def grades(self) -> GradesPart | None:
        """The answer's ``grades``."""
        from bowstring.report.forming.fill_grades import report_fill_grades
        from bowstring.report.forming.grades import empty, report_grades

        if self.plan.filled is not None:
            return report_fill_grades(self.plan, self.plan.filled, empty(self.plan))
        return report_grades(self.plan)

    @cached_property
    def pour(self) -> PourPart | None:
        """The answer's ``pour``."""
        from bowstring.report.forming.pour import report_pour

        return report_pour(self.plan)

    def rows(self) -> list[BuildRow]:
        """Return the answer's ``build``."""
        from bowstring.report.forming.boards import row_of_boards
        from bowstring.report.forming.edges import row_of_edges
        from bowstring.report.forming.grades import row_of_grades
        from bowstring.report.forming.joints import row_of_joints
        from bowstring.report.forming.pour import row_of_pour

        if self.plan.asks_what:
            return rows_asked(self.plan)
        if self.plan.no_sides:
            return rows_without_sides()
        if self.plan.said.slab.fills:
            return self._rows_of_fill()
        return [
            row_of_edges(self.plan, self.edges),
            self._row_of_faces() if is_wall(self.plan) else row_of_boards(self.plan, self.boards),
            row_of_joints(self.plan, self.joints),
            row_of_grades(self.plan, self.grades),
            row_of_pour(self.plan, self.pour),
        ]

    def _row_of_faces(self) -> BuildRow:
        """The boards' row of a wall: its two faces, and what its footing is formed with."""
        from bowstring.report.forming.boards import row_of_boards
        from bowstring.report.forming.edge_marks import marks_of
        from bowstring.report.forming.wall_faces import faces_row

        row = row_of_boards(self.plan, self.boards)
        if self.plan.slab is None or row["state"] != "near":
            return row
        text, more = faces_row(self.plan, marks_of(self.plan))
        return {**row, "text": text, "more": more}

    def _rows_of_fill(self) -> list[BuildRow]:
        """The same of a slab that fills its curve."""
        from bowstring.report.forming.boards import row_of_boards
        from bowstring.report.forming.fill_edges import row_of_fill_edges
        from bowstring.report.forming.fill_grades import row_of_fill_grades
        from bowstring.report.forming.fill_joints import row_of_fill_joints
        from bowstring.report.forming.pour import row_of_pour

        return [
            row_of_fill_edges(self.plan, self.edges),
            row_of_boards(self.plan, self.boards),
            row_of_fill_joints(self.plan, self.joints),
            row_of_fill_grades(self.plan, self.grades),
            row_of_pour(self.plan, self.pour),
        ]
