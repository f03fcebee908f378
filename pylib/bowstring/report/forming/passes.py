"""The second pass of the work: the forms' cards, which follow those of the layout once there is a slab to build."""

from __future__ import annotations

from collections.abc import Callable

from bowstring.forming.pad import Filled, Pad
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.report.forming.pouring import pouring_of
from bowstring.report.forming.rows import Built
from bowstring.report.forms.build_pour import PourPart
from bowstring.report.forms.cards import CardRow

AFTER_DIG = ("base", "line", "stakes", "boards", "tops", "pour")


def second_pass(plan: Plan) -> list[str]:
    """Return what the cards of the second pass are of, in order; none where the slab can't be built yet, none of a
    wall, whose forms and dig are designed.

    No part of the build is told for it.
    """
    if pouring_of(plan) is None or is_designed(plan):
        return []
    if plan.filled is not None:
        from bowstring.report.forming.pass_fill import is_dug_out

        corners = [CORNERS] if isinstance(plan.filled, Pad) else []
        return [*corners, *(["hubs"] if is_dug_out(plan) else []), "dig", *AFTER_DIG]
    if plan.slab is None:
        return []
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
    makers = _of_fill(built, plan.filled, built.pour) if plan.filled is not None else _of_band(built, built.pour)
    cards = [makers[what]() for what in whats]
    for number, card in enumerate(cards, 1):
        card["number"] = number
    return cards


def _of_fill(built: Built, filled: Filled, pour: PourPart) -> dict[str, Callable[[], CardRow]]:
    """What makes each card of a slab that fills its curve."""
    from bowstring.report.forming import pass_corners, pass_fill, pass_set_out

    plan, pad = built.plan, filled if isinstance(filled, Pad) else None
    return {
        **({CORNERS: lambda: pass_corners.corners_card(plan, pad)} if pad else {}),
        "hubs": lambda: pass_fill.hubs_card(plan, filled),
        "dig": lambda: pass_fill.dig_card(plan, filled),
        "base": lambda: pass_set_out.base_card(plan),
        "line": lambda: pass_fill.line_card(plan, filled),
        "stakes": lambda: pass_fill.stakes_card(plan, built.boards),
        "boards": lambda: pass_fill.boards_card(plan, built.boards),
        "tops": lambda: pass_fill.tops_card(plan, filled, built.grades, built.joints),
        "pour": lambda: pass_fill.pour_card(plan, filled, pour),
    }


def _of_band(built: Built, pour: PourPart) -> dict[str, Callable[[], CardRow]]:
    """What makes each card of a slab between two edges."""
    from bowstring.report.forming import pass_build, pass_set_out
    from bowstring.report.forming.edge_marks import marks_of

    plan, marks = built.plan, marks_of(built.plan)
    return {
        "hubs": lambda: pass_set_out.hubs_card(plan, marks),
        "dig": lambda: pass_set_out.dig_card(plan, marks),
        "base": lambda: pass_set_out.base_card(plan),
        "line": lambda: pass_set_out.line_card(plan, marks),
        "stakes": lambda: pass_build.stakes_card(plan, built.boards),
        "boards": lambda: pass_build.boards_card(plan, built.boards),
        "tops": lambda: pass_build.tops_card(plan, built.grades, built.joints),
        "pour": lambda: pass_build.pour_card(plan, pour),
    }
