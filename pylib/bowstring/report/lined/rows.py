"""The parts of a line's build, each told once, and the rows of its first screen."""

from __future__ import annotations

from functools import cached_property

from bowstring.construction.scatter import Errors
from bowstring.job.kept import Kept
from bowstring.job.line import LineSaid
from bowstring.report.forming.asked import rows_asked
from bowstring.report.forming.ends import against
from bowstring.report.forming.plan import Plan
from bowstring.report.forms.build import BuildRow, LinePart
from bowstring.report.forms.build_lined import (
    LinedBoards,
    LinedEdges,
    LinedGrades,
    LinedJoints,
    LinedPage,
    LinedPart,
    LinedPour,
    LinedSheet,
)
from bowstring.report.forms.cards import CardRow
from bowstring.report.forms.in_dig import InDigPart
from bowstring.report.forms.read import FarChecks
from bowstring.report.kinked import b_from_line
from bowstring.report.lined import boards, edges, grades, joints, passes, pour
from bowstring.report.lined.concrete import concrete_at_arc, concrete_told
from bowstring.report.lined.hubs import LineHubs, hubs_along
from bowstring.report.lined.line import Beside, report_line, report_part
from bowstring.report.lined.line_page import page_of_line
from bowstring.report.lined.on_paper import sheet_of
from bowstring.report.lined.pages import page_of, row_of
from bowstring.report.lined.plan import line_plan_of
from bowstring.report.lined.standing import cautions_along, standing_along
from bowstring.report.lined.wall_sizes import size_of
from bowstring.report.waiting import Waits


class Lined:
    """What the answer tells of a line; raises ``BadJob`` where a piece of it can't be."""

    def __init__(self, plan: Plan, said: LineSaid) -> None:
        self.plan = line_plan_of(plan, said)

    @cached_property
    def line(self) -> LinePart:
        """The answer's ``line``."""
        return report_line(self.plan)

    @cached_property
    def edges(self) -> LinedEdges | None:
        """The answer's ``edges``."""
        return edges.short_of(self.plan)

    @cached_property
    def boards(self) -> LinedBoards | None:
        """The answer's ``boards``."""
        return boards.short_of(self.plan)

    @cached_property
    def joints(self) -> LinedJoints | None:
        """The answer's ``joints``."""
        return joints.short_of(self.plan)

    @cached_property
    def grades(self) -> LinedGrades | None:
        """The answer's ``grades``."""
        return grades.short_of(self.plan)

    @cached_property
    def pour(self) -> LinedPour | None:
        """The answer's ``pour``."""
        return pour.short_of(self.plan)

    @cached_property
    def pages(self) -> list[LinedPage]:
        """The pages behind the rows."""
        if self.plan.plan.asks_what:
            asked = rows_asked(self.plan.plan)
            waits = [page_of(row["key"], "open", row["text"], row["more"], "slab") for row in asked]
            return [page_of_line(self.plan), *waits]
        rest = [page(self.plan) for page in (boards.page, joints.page, grades.page, pour.page)]
        return [page_of_line(self.plan), edges.page(self.plan, self.hubs), *rest]

    @cached_property
    def hubs(self) -> LineHubs | None:
        """Where the hubs stand: many places are tried for it, so it is found once."""
        return hubs_along(self.plan)

    @cached_property
    def cautions(self) -> list[str]:
        """What is doubtful of the line."""
        return cautions_along(self.plan)

    @cached_property
    def part(self) -> LinedPart:
        """The answer's ``lined``."""
        b_from_a = b_from_line(self.plan.plan.layout, short=True)
        told, plan = (concrete_told(self.plan), concrete_at_arc(self.plan)), self.plan.plan
        beside = Beside(b_from_a, *told, standing_along(self.plan), size_of(self.plan), against(plan))
        return report_part(self.plan, self.pages, beside)

    @cached_property
    def sheet(self) -> LinedSheet:
        """The answer's ``lined_sheet``."""
        return sheet_of(self.plan, self.hubs)

    @cached_property
    def second_pass(self) -> list[str]:
        """The answer's ``second_pass``."""
        return passes.second_pass(self.plan, self.hubs)

    @cached_property
    def in_dig(self) -> InDigPart | None:
        """The answer's ``in_dig``."""
        return passes.report_in_dig(self.plan, self.hubs)

    @cached_property
    def form_cards(self) -> list[CardRow]:
        """The answer's ``form_cards``."""
        return passes.report_form_cards(self.plan, self.hubs)

    def far_checks(self, kept: Kept, errors: Errors, waits: Waits) -> FarChecks:
        """Return the answer's ``far_checks``."""
        from bowstring.report.lined.far_checks import report_far

        return report_far(self.plan, kept, errors, waits)

    def rows(self) -> list[BuildRow]:
        """Return the answer's ``build``."""
        return [row_of(page) for page in self.pages]
