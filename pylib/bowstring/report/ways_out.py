"""What settles each stop: another method, another measurement, or an answer that somebody has to give."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.report.advice import block_text, name_of, string_of, string_text
from bowstring.report.caution import Caution
from bowstring.report.cautions import stopping
from bowstring.report.forms.cards import WayOutRow
from bowstring.report.work import Work
from bowstring.words import say

HAND, GIVEN, ENDS, LINE, FINE, GOT, METHOD = "hand", "given", "ends", "line", "fine", "got", "method"
PIECES = "pieces"
"""What is asked again: a question of the numbers, what was got at a stake, another method."""

IN_THE_WAY = "way"

SETTLES: Mapping[str, str] = {
    "caution.points_other_hand": HAND,
    "caution.hand_unsaid": HAND,
    "caution.turn_unsaid": HAND,
    "caution.odd_one": GIVEN,
    "caution.odd_one_none": GIVEN,
    "caution.disagrees": GIVEN,
    "caution.disagrees_none": GIVEN,
    "caution.landmark_same": ENDS,
    "caution.landmark_swapped": ENDS,
    "caution.landmark_mark": ENDS,
    "caution.landmark_blank": ENDS,
    "caution.unlikely_tolerance": FINE,
    "caution.line_unsure": LINE,
    "caution.line_unsaid": LINE,
    "caution.board_on_centre": LINE,
    "caution.method_blocked": METHOD,
    "caution.method_hands": METHOD,
    "caution.method_hopeless": METHOD,
    "caution.method_unreliable": METHOD,
    "caution.rule_over": METHOD,
    "caution.got_far": GOT,
    "caution.got_over": GOT,
    "caution.got_astray": GOT,
    "caution.got_astray_sure": GOT,
    "caution.got_apart": GOT,
    "caution.got_slip": GOT,
    "fit.apart": ENDS,
    "fit.slip": ENDS,
    "fit.choose": ENDS,
    "fit.do_not_build": ENDS,
    "line.kink_asked": PIECES,
    "line.kink_at_end": ENDS,
}
"""What settles a stop, by the key of its sentence."""


def report_ways_out(work: Work) -> list[WayOutRow]:
    """Return the answer's ``ways_out``, in the order of its ``stops``."""
    found = stopping(work.layout, work.own, lambda: work.advice.row)
    return [_way_out(work, one.text, _reason(work, one), SETTLES[one.key]) for one in found]


def _reason(work: Work, stop: Caution) -> str:
    """What is told of a stop where it stands alone: of all that is in a method's way the first will do."""
    blocks = work.own.blocks
    return block_text(work.layout, blocks[0]) if stop.key == "caution.method_blocked" and blocks else stop.text


def _way_out(work: Work, stop: str, reason: str, what: str) -> WayOutRow:
    if what != METHOD:
        return {"stop": stop, "reason": reason, "text": say(f"way_out.{what}"), "button": say(f"way_out.{what}.do"),
                "panel": "" if what == GIVEN else what, "fields": {}}  # fmt: skip
    text, best = say("way_out.method", method=say(f"method.name.{work.layout.method.name}")), work.advice.row
    if best is None:
        string = string_of(work.advice)
        if string and string.parallel:
            taken = {"method": string.method.name, "parallel": work.job.tape.show(string.parallel.distance)}
            return {"stop": stop, "reason": reason, "text": text, "button": string_text(work.layout, string),
                    "panel": None, "fields": taken}  # fmt: skip
        return {"stop": stop, "reason": reason, "text": text, "button": say("way_out.ground.do"), "panel": IN_THE_WAY,
                "fields": {}}  # fmt: skip
    fields = {"method": best.method.name}
    if best.halve_first:
        fields["halve_first"] = str(best.halve_first)
    if best.parallel:
        fields["parallel"] = work.job.tape.show(best.parallel.distance)
    button = say("way_out.method.do", method=name_of(work.layout, best))
    return {"stop": stop, "reason": reason, "text": text, "button": button, "panel": None, "fields": fields}
