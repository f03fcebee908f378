"""The words for a hand, which every sentence, sheet and drawing takes from here: none where it isn't known."""

from __future__ import annotations

from bowstring.job.terms import OTHER
from bowstring.layout.layout import Layout
from bowstring.words import say


def hand_told(layout: Layout) -> str:
    """Return the sentence that says on which hand the curve is, in the words of where somebody stands."""
    side = layout.side
    if side is None:
        return say("hand.unknown")
    if layout.job.start == "one-end":
        return say("hand.walking", turn=say(f"hand.{OTHER[side]}"), hand=say(f"hand.{side}"))
    return say("hand.standing", hand=say(f"hand.{side}"), turn=say(f"hand.{OTHER[side]}"))


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
