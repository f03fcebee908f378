"""One caution: its sentence, and whether nobody should build before it is settled."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.words import say

STOPS = frozenset(
    {
        "caution.points_other_hand",
        "caution.odd_one",
        "caution.odd_one_none",
        "caution.disagrees",
        "caution.disagrees_none",
        "caution.hand_unsaid",
        "caution.turn_unsaid",
        "caution.landmark_same",
        "caution.landmark_swapped",
        "caution.landmark_mark",
        "caution.landmark_blank",
        "caution.unlikely_tolerance",
        "caution.line_unsure",
        "caution.line_unsaid",
        "caution.board_on_centre",
        "caution.method_blocked",
        "caution.method_hands",
        "caution.method_unreliable",
        "caution.method_hopeless",
        "caution.rule_over",
        "caution.got_far",
        "caution.got_over",
        "caution.got_astray",
        "caution.got_astray_sure",
        "caution.got_apart",
        "caution.got_slip",
        "fit.apart",
        "fit.slip",
        "fit.choose",
        "fit.do_not_build",
        "line.kink_asked",
        "line.kink_at_end",
    }
)
"""The cautions that say so themselves: each asks for an answer from the drawing or for another measurement."""


@dataclass(frozen=True)
class Caution:
    """A caution's sentence; ``stops``: not to be built from before it is settled; ``key``: that of its sentence."""

    text: str
    stops: bool
    key: str


def caution(key: str, **values: object) -> Caution:
    """Return the caution of a message key."""
    return Caution(say(key, **values), key in STOPS, key)
