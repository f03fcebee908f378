"""On which hand the curve is: as the job says it, for somebody at A who faces B, or who walks toward the arc.

Walking along the straight toward the arc somebody looks along the tangent at A, which the chord leaves toward the arc's
inside by half the central angle. So a curve that turns left has B ahead to the left, and bulges to the right of A-B.
"""

from __future__ import annotations

from bowstring.errors import bad
from bowstring.job.reader import Reader
from bowstring.job.terms import OTHER, SIDES
from bowstring.words import say


def read_hand(reader: Reader) -> str | None:
    """Return the hand of the curve for somebody at A who faces B, from ``side`` or ``turn``, or ``None``.

    Raises ``BadJob`` where the two say opposite things.
    """
    side, turn = reader.choice("side", SIDES), reader.choice("turn", SIDES)
    if turn is None:
        return side
    if side is not None and side != OTHER[turn]:
        hands = {"turn": turn, "side": side, "other": OTHER[side]}
        raise bad("turn", "job.turn_and_side", **{what: say(f"hand.{hand}") for what, hand in hands.items()})
    return OTHER[turn]
