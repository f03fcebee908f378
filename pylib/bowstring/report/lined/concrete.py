"""On which hand the concrete lies for who walks along a line, and which edge of it an arc of the line is."""

from __future__ import annotations

from bowstring.forming.line.pieces import Bend
from bowstring.job.terms import OTHER
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say


def concrete_told(plan: LinePlan) -> str:
    """Return on which hand the concrete is, walking from the line's start; empty while that isn't known."""
    if plan.edge is None:
        return ""
    if plan.edge == CENTER:
        return say("lined.concrete_both", half=_half(plan)) if plan.width is not None else say("lined.concrete_middle")
    return say(f"lined.concrete_{plan.edge}", hand=_hand(plan.edge))


def concrete_at_arc(plan: LinePlan) -> str:
    """Return the same of the arc that is staked, walking from A to B, and which edge of the concrete it is."""
    piece = plan.line.pieces[plan.settled.said.at]
    if plan.edge is None or not isinstance(piece, Bend):
        return ""
    arc = say("lined.drawn_arc" if plan.plan.layout.job.outward else "lined.this_arc")
    if plan.edge == CENTER:
        return say("lined.arc_both", half=_half(plan), arc=arc) if plan.width is not None else ""
    # Its center is on the hand to which it turns: concrete on that hand lies toward the center.
    outer = OTHER[plan.edge] == piece.hand
    return say("lined.arc_outer" if outer else "lined.arc_inner", hand=_hand(plan.edge), arc=arc)


def _hand(edge: str) -> str:
    """The hand of the concrete: the other one than the edge of it that the line is."""
    return say(f"hand.{OTHER[edge]}").upper()


def _half(plan: LinePlan) -> str:
    return plan.tape.show_whole((plan.width or 0.0) / 2)
