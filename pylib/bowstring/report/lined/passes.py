"""The second pass of the work along a line of several pieces: the cards of an arc alone, of all its pieces at once."""

from __future__ import annotations

from collections.abc import Callable

from bowstring.report.forming.in_dig import clear_of, dug_told
from bowstring.report.forming.passes import AFTER_DIG
from bowstring.report.forming.plan import is_designed, is_wall
from bowstring.report.forms.cards import CardRow
from bowstring.report.forms.in_dig import InDigPart
from bowstring.report.lined.hubs import LineHubs
from bowstring.report.lined.hubs_told import first_told
from bowstring.report.lined.pass_set_out import has_hubs
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.pour import pouring_along
from bowstring.words import say


def second_pass(plan: LinePlan, hubs: LineHubs | None) -> list[str]:
    """Return what the cards of the second pass are of, in order; none where the slab can't be built yet, none of a
    wall."""
    if hubs is None or pouring_along(plan) is None or is_designed(plan.plan):
        return []
    return [*(["hubs"] if has_hubs(hubs) else []), "dig", *AFTER_DIG]


def report_in_dig(plan: LinePlan, hubs: LineHubs | None) -> InDigPart | None:
    """Return the answer's ``in_dig``: what is set before the dig; ``None`` where it takes no stake of the staked arc.

    How to set the stakes clear isn't told: off one arc it may be in another piece's dig.
    """
    clear = clear_of(plan.plan)
    if hubs is None or clear is None or not hubs.of_arc:
        return None
    head = say("in_dig.head" if is_designed(plan.plan) else "in_dig.head_slab")
    return {
        "text": say("in_dig.told", head=head, dug=dug_told(clear, plan.tape, wall=is_wall(plan.plan))),
        "hint": " ".join(first_told(hubs)).replace("*", ""),
        "deep_shown": "",
        "designed": is_designed(plan.plan),
        "outside": clear.outside,
        "inside": clear.inside,
        "ways": [],
    }


def report_form_cards(plan: LinePlan, hubs: LineHubs | None) -> list[CardRow]:
    """Return the answer's ``form_cards``."""
    from bowstring.report.forming.pass_set_out import base_card
    from bowstring.report.lined import pass_build, pass_set_out

    whats = second_pass(plan, hubs)
    if hubs is None or not whats:
        return []
    makers: dict[str, Callable[[], CardRow]] = {
        "hubs": lambda: pass_set_out.hubs_card(hubs),
        "dig": lambda: pass_set_out.dig_card(hubs),
        "base": lambda: base_card(plan.plan, over_line=True),
        "line": lambda: pass_set_out.line_card(hubs),
        "stakes": lambda: pass_build.stakes_card(plan),
        "boards": lambda: pass_build.boards_card(plan),
        "tops": lambda: pass_build.tops_card(plan),
        "pour": lambda: pass_build.pour_card(plan),
    }
    cards = [makers[what]() for what in whats]
    for number, card in enumerate(cards, 1):
        card["number"] = number
    return cards
