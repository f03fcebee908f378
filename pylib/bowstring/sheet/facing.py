"""On which hand something lies of somebody on the ground, for tables that say it once for all their rows."""

from __future__ import annotations

from bowstring.job.terms import OTHER
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.steps import StepRow
from bowstring.words import say

Places = dict[str, tuple[float, float]]


def places(answer: Answer) -> Places:
    """Return where every mark is (metres, y toward the curve)."""
    return {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}


def curve_hand(answer: Answer) -> str:
    """Return the curve's hand, at A facing B, in capitals; where it isn't known, who says it."""
    return say(f"paper.{answer['side']}") if answer["side"] else say("paper.hand_unknown")


def away_hand(answer: Answer) -> str:
    """Return the hand away from the curve, at A facing B."""
    return say(f"paper.{OTHER[answer['side']]}") if answer["side"] else say("paper.hand_unknown")


def hand_of(answer: Answer, at: Places, start: str, end: str, foot: str, mark: str, *, back: bool = False) -> str:
    """Return the hand of a mark for somebody at ``foot`` who faces as from ``start`` to ``end`` (``back``: the other
    way). A curve on the right is the frame's mirror image."""
    if answer["side"] is None:
        return say("paper.hand_unknown")
    (ax, ay), (bx, by), (fx, fy), (mx, my) = at[start], at[end], at[foot], at[mark]
    left = ((bx - ax) * (my - fy) - (by - ay) * (mx - fx) > 0) != back
    return say("paper.left" if left != (answer["side"] == "right") else "paper.right")


def off_tangent(answer: Answer, at: Places, step: StepRow) -> str:
    """Return the hand to which a step squares its stake off a tangent, for who faces as the marks run along it."""
    names, past = step["names"], step["kind"] == "tangent_offset_past"
    return hand_of(answer, at, names["start"], names["other"], names["start"], str(step["stake"]), back=past)


ACROSS = ("stake_crossed", "cross", "polar", "sight", "sight_ahead", "sight_back")
"""Steps whose stake is on a hand of the line from their first mark to their second."""


def hand_in(answer: Answer, at: Places, step: StepRow) -> str | None:
    """Return the hand on which a step sets its stake, ``None`` where its row says it itself or none is asked for."""
    kind, names, stake = step["kind"], step["names"], str(step["stake"])
    if kind == "ordinate":
        return hand_of(answer, at, names["first"], names["last"], names["foot"], stake)
    if kind.startswith("ordinate_"):
        return curve_hand(answer)
    if kind in ACROSS:
        return hand_of(answer, at, names["start"], names["end"], names["start"], stake, back=kind == "sight_back")
    if kind == "swing":
        return hand_of(answer, at, names["start"], names["other"], names["start"], stake)
    if kind.startswith("produce"):
        return hand_of(answer, at, names["start"], names["ahead"], names["start"], stake)
    return None
