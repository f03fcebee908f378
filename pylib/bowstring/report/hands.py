"""The words for a hand, which every sentence, sheet and drawing takes from here: none where it isn't known."""

from __future__ import annotations

from bowstring.job.line import ArcSaid
from bowstring.job.terms import OTHER
from bowstring.layout.layout import Layout
from bowstring.words import say


def hand_told(layout: Layout) -> str:
    """Return the sentence that says on which hand the curve is, in the words of where somebody stands."""
    side = layout.side
    if side is None:
        return say("hand.unknown")
    if layout.job.start == "one-end":
        key = "hand.walking_arc" if _after_arc(layout) else "hand.walking"
        return say(key, turn=say(f"hand.{OTHER[side]}"), hand=say(f"hand.{side}"))
    return say("hand.standing", hand=say(f"hand.{side}"), turn=say(f"hand.{OTHER[side]}"))


def _after_arc(layout: Layout) -> bool:
    """Whether the piece of a line before the staked arc is an arc: nobody walks along a straight toward it."""
    line = layout.job.line
    return line is not None and line.at > 0 and isinstance(line.pieces[line.at - 1], ArcSaid)


def curve_hand(layout: Layout) -> str:
    """Return the curve's hand for somebody at A who faces B."""
    return say(f"hand.{layout.side}") if layout.side else say("hand.curve")


def away_hand(layout: Layout) -> str:
    """Return the hand away from the curve for somebody at A who faces B."""
    return say(f"hand.{OTHER[layout.side]}") if layout.side else say("hand.away")


def turn_hand(layout: Layout, left: bool) -> str:
    """Return the hand of something that is on the ``left`` in the frame, where y is toward the curve.

    A curve on the right is the frame's mirror image.
    """
    if layout.side is None:
        return say("hand.open")
    return say("hand.left" if left != (layout.side == "right") else "hand.right")
