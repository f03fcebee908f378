"""The second pass of the work: the forms' cards, which follow those of the layout once there is a slab to build."""

from __future__ import annotations

from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pouring import is_designed, pouring_of
from bowstring.report.forming.rows import Built
from bowstring.report.forms.cards import CardRow

AFTER_DIG = ("base", "line", "stakes", "boards", "tops", "pour")


def second_pass(plan: Plan) -> list[str]:
    """Return what the cards of the second pass are of, in order; none where the slab can't be built yet, none of a
    wall, whose forms and dig are designed, and none of a slab that fills its curve.

    No part of the build is told for it.
    """
    if plan.slab is None or pouring_of(plan) is None or is_designed(plan):
        return []  # what fills its curve has one form alone, and no second edge to set
    from bowstring.report.forming.edge_marks import marks_of
    from bowstring.report.forming.edge_stick import dug_out

    hubs = ["hubs"] if dug_out(plan, marks_of(plan)) else []
    return [*hubs, "dig", *AFTER_DIG]


def report_form_cards(built: Built) -> list[CardRow]:
    """Return the answer's ``form_cards``."""
    plan = built.plan
    whats = second_pass(plan)
    if not whats or built.pour is None:
        return []
    from bowstring.report.forming import pass_build, pass_set_out
    from bowstring.report.forming.edge_marks import marks_of

    marks, pour = marks_of(plan), built.pour
    makers = {
        "hubs": lambda: pass_set_out.hubs_card(plan, marks),
        "dig": lambda: pass_set_out.dig_card(plan, marks),
        "base": lambda: pass_set_out.base_card(plan),
        "line": lambda: pass_set_out.line_card(plan, marks),
        "stakes": lambda: pass_build.stakes_card(plan, built.boards),
        "boards": lambda: pass_build.boards_card(plan, built.boards),
        "tops": lambda: pass_build.tops_card(plan, built.grades, built.joints),
        "pour": lambda: pass_build.pour_card(plan, pour),
    }
    cards = [makers[what]() for what in whats]
    for number, card in enumerate(cards, 1):
        card["number"] = number
    return cards
