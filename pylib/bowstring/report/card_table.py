"""What stands on the cards of each kind of step: the sentence, its numbers with their labels, how to know it is right.

A kind that has no row here shows every measure of its step by its two marks.
"""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.report.card_part import ANGLE, DEFLECTION, SHORT_CHORDS, SQUARE, WHOLE, Part

_TAPES = Part((("from_start", 0), ("from_end", 1)), "tapes")
_SLID = Part((("half", 0), ("off", 1)), "short_chords", SHORT_CHORDS)
_ALONG, _OFF = ("along", 0), ("off", 1)
_BY_TRIANGLE = ("square", SQUARE)
_ORDINATE = Part((_ALONG, _OFF), *_BY_TRIANGLE)
_ONE_OFF = Part((("off", 0),), *_BY_TRIANGLE)
_PRODUCED = (("carried_on", 0), ("swung_in", 2))
_SIGHT = Part((("turn", ANGLE), ("onto", 0)), "backsight")
_OFFSET = {
    way: Part(((along, 0), ("off", 1)), "must_read", 2)
    for way, along in (("toward", "toward"), ("away", "past"))
}  # fmt: skip
_STRAIGHT = {
    back: Part(((along, 0), ("off_away", 1)), "must_read", 2)
    for back, along in (("", "past_straight"), ("_back", "back_straight"))
}  # fmt: skip
_BESIDE = (
    Part((("from_start", 0), ("from_end", 1)), "tapes", None, "", (0, 1)),
    Part((("toward_start", 2), ("toward_end", 3)), "must_read", 4, "prove_beside_across", (1, 3)),
)


def _far(place: int, moves: tuple[int, int]) -> Part:
    """The check of a tangent's mark from the far end of an arc: a card of its own, where a tape gets there."""
    return Part((("must_read", place),), "", None, "have_arc_check", moves)


_ENDS: dict[str, tuple[Part, ...]] = {
    "have_ends": (Part((("must_read", 0),), "ends"),),
    "set_ends": (Part((("must_read", 0),), "ends"),),
    "have_ends_untaped": (Part(),),
    "set_ends_untaped": (Part(),),
    "prove_two": (Part((("nail", 0), ("must_read", 1)), "pulls", WHOLE),),
    "prove_parts": (Part((("each_pull", 0), ("must_read", -1)), "pulls", WHOLE),),
    "prove_beside": _BESIDE,
    "prove_beside_inside": _BESIDE,
    "prove_corner": (Part((("toward_s", 0), ("toward_t", 1)), "must_read", 2),),
    "have_straight": (Part(),),
    "have_straight_short": (Part((("must_read", 0),)),),
    "have_arc": (Part((("toward", 0), ("off", 1)), "must_read", 2, "", (0, 4)), _far(3, (4, 4))),
    "have_arc_past": (Part((("past", 0), ("off", 1)), "must_read", 2, "have_arc", (0, 4)), _far(3, (4, 4))),
    "have_arc_square": (Part((("off", 0),), *_BY_TRIANGLE, "have_arc", (0, 3)), _far(1, (3, 3))),
    "from_straight": (_STRAIGHT[""],),
    "from_straight_back": (_STRAIGHT["_back"],),
    "from_straight_untaped": (Part(_STRAIGHT[""].numbers, *_BY_TRIANGLE, "from_straight"),),
    "from_straight_back_untaped": (Part(_STRAIGHT["_back"].numbers, *_BY_TRIANGLE, "from_straight_back"),),
    "have_corner": (Part(),),
    "from_corner": (Part((("toward_s", 0), ("toward_t", 1)), "must_read", 2),),
    "from_corner_untaped": (Part((("toward_s", 0), ("toward_t", 1)), "proved_next", None, "from_corner"),),
    "offset_away": (Part((("past", 0),)),),
    "offset_toward": (Part((("toward", 0),)),),
    "offset_square_out": (Part((("off_straight", 0),), *_BY_TRIANGLE),),
    "offset_square_in": (Part((("off_straight", 0),), *_BY_TRIANGLE),),
    **{
        f"offset_{way}_{side}": (Part(_OFFSET[way].numbers, "must_read", 2, f"offset_{way}_off"),)
        for way in ("toward", "away")
        for side in ("arc", "back", "near", "far")
    },
    "string": (Part(),),
    "string_up": (Part(),),
    "string_none": (Part(),),
    "string_taped": (Part((("must_read", 0),), "again"),),
    "ends_taped": (Part((("must_read", 0),), "again"),),
    "no_string": (Part(),),
}

_HALVING: dict[str, tuple[Part, ...]] = {
    "stake": (_SLID,),
    "stake_back": (_SLID,),
    "stake_got": (Part((("half", 0), ("off_got", 1))),),
    "stake_crossed": (Part(_TAPES.numbers, "tapes", None, "cross"),),
}

_CENTRE: dict[str, tuple[Part, ...]] = {
    "centre_behind": (Part((("from_both", 0),), "tapes"),),
    "centre_inside": (Part((("from_both", 0),), "tapes", None, "centre_behind"),),
    "centre_half": (Part((("half", 0),)),),
    "centre_near": (Part((("half", 0), ("off", 1)), "both_read", 2),),
    "centre_near_inside": (Part((("half", 0), ("off", 1)), "both_read", 2, "centre_near"),),
    "swing": (Part((("from_centre", 0), ("from_other", 1)), "tapes"),),
    "swing_beside": (Part((("from_start", 0), ("from_other", 1)), "tapes", None, "swing"),),
}

_OF_STRING: dict[str, tuple[Part, ...]] = {
    "string_middle": (Part((("half", 0),)),),
    "ordinate": (_ORDINATE,),
    "ordinate_mid": (Part((("from_middle", 0), ("off_b", 1)), *_BY_TRIANGLE),),
    "ordinate_middle": (Part((("off_b", 0),), *_BY_TRIANGLE),),
    "parallel_crossed_curve": (Part(_TAPES.numbers, "tapes", None, "cross"),),
    "parallel_crossed_behind": (Part(_TAPES.numbers, "tapes", None, "cross"),),
    "parallel_squared_curve": (Part(_ONE_OFF.numbers, *_BY_TRIANGLE, "peg_square"),),
    "parallel_squared_behind": (Part(_ONE_OFF.numbers, *_BY_TRIANGLE, "peg_square"),),
    "parallel_crossed": (Part((("must_read", 0),), "diagonals"),),
    "parallel_squared": (Part((("must_read", 0),), "square_again", None, "parallel_crossed"),),
    "parallel_leaning": (Part((("along", 0),), "must_read", 1),),
    "parallel_strung": (Part((), "twice"),),
    "parallel_stood": (Part((("must_read", 0),)),),
    "parallel_stood_strung": (Part(),),
    **{f"parallel_{way}_{where}": (Part(numbers, *_BY_TRIANGLE, f"parallel_{where}"),)
       for way in ("toward", "away")
       for where, numbers in (
           ("on", (_ALONG, _OFF)), ("mid", (("from_middle", 0), _OFF)), ("past", (("past_string", 0), _OFF)),
           ("end", (("off", 0),)), ("middle", (("off", 0),)),
       )},
    **{f"parallel_over_{where}": (Part(numbers),)
       for where, numbers in (("on", (_ALONG,)), ("mid", (("from_middle", 0),)), ("past", (("past_string", 0),)),
                              ("end", ()), ("middle", ()))},
}  # fmt: skip

_ONWARD: dict[str, tuple[Part, ...]] = {
    "cross": (_TAPES,),
    "polar": (Part((("turn", ANGLE), ("tape_line", 0)), "backsight"),),
    "sight": (_SIGHT,),
    "sight_ahead": (Part(_SIGHT.numbers, "backsight", None, "sight"),),
    "sight_back": (Part((("turn_plunged", DEFLECTION), ("onto", 0)), "backsight"),),
    "peg": (_ORDINATE,),
    "peg_back": (Part((("past_end", 0), _OFF), *_BY_TRIANGLE),),
    "peg_square": (_ONE_OFF,),
    "tangent_offset": (_ORDINATE,),
    "tangent_offset_out": (Part(_ORDINATE.numbers, *_BY_TRIANGLE, "tangent_offset"),),
    "tangent_offset_past": (Part((("past", 0), ("off_away_from", 1)), *_BY_TRIANGLE),),
    "produce_first": (Part(_PRODUCED, "tapes"),),
    "produce_straight": (Part(_PRODUCED, "tapes", None, "produce"),),
    "produce": (Part(_PRODUCED, "tapes"),),
}

PARTS: Mapping[str, tuple[Part, ...]] = {**_ENDS, **_HALVING, **_CENTRE, **_OF_STRING, **_ONWARD}
"""The cards of each kind of step, by the name of its sentence."""

AS_GOT = ("stands", "stands_helper")
"""Kinds of steps whose mark stands already: their numbers are whatever was told of it."""
