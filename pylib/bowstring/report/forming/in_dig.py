"""Stakes that would be dug out, told before one is driven: how far off the drawing's line they stand clear."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from bowstring.report.forming.cut_deep import cut_beside
from bowstring.report.forming.edge_lines import dug_past, footing_past, overdig_of
from bowstring.report.forming.plan import Plan, is_designed, is_wall
from bowstring.report.forms.in_dig import InDigPart, OutOfDig
from bowstring.units.sizes import FOOT
from bowstring.units.spelled import typed_length
from bowstring.units.tape import Tape
from bowstring.words import say

CLEAR = {True: FOOT, False: 0.3}
"""Metres past the dig line, at least, where the tape reads feet and where it doesn't (common practice, no source)."""

STEP = {True: FOOT, False: 0.1}
"""Metres: a distance off the dig is a whole number of these, easily written on a stake and read again."""

DUST = 1e-9


@dataclass(frozen=True)
class Clear:
    """How far off the drawing's line, metres, each way, the dig reaches.

    Attributes:
        outside, inside: away from the center and toward it; radius: the drawing's line's; past: how far it is dug past
            each edge, or past a footing that reaches ``beyond`` the faces.
        deep_out, deep_in: how deep a wall's dig is cut on either side, as far as that is known.
    """

    outside: float
    inside: float
    radius: float
    past: float
    beyond: bool
    deep_out: float = 0.0
    deep_in: float = 0.0

    def takes(self, outward: float) -> bool:
        """Tell whether a stake so far outward of the line, metres, stands in the dig.

        >>> one = Clear(0.6, 0.9, 20.0, 0.3, False)
        >>> one.takes(0.0), one.takes(0.61), one.takes(-0.9)
        (True, False, True)
        """
        return -self.inside <= outward <= self.outside


def whole_off(reach: float, *, feet: bool, deep: float = 0.0) -> float:
    """Return the least whole distance, metres, that is clear past a dig line ``reach`` metres off: a hub's distance. As
    far from a cut so ``deep`` as that is deep (common practice, no source).

    >>> whole_off(0.61, feet=False), whole_off(0.61, feet=False, deep=1.5)
    (1.0, 2.2)
    """
    return ceil((reach + max(CLEAR[feet], deep)) / STEP[feet] - DUST) * STEP[feet]


def clear_of(plan: Plan) -> Clear | None:
    """Return how far the dig of a plan reaches; ``None`` where there is no slab."""
    past, radius, beyond = dug_past(plan), plan.line.radius, (footing_past(plan) or 0.0) > 0
    if plan.filled is not None:  # all is dug between the curve and its string
        return Clear(past, radius, radius, overdig_of(plan), beyond)
    if plan.slab is None:
        return None
    outer, inner = plan.edges
    out, within = max(outer.first, outer.last), min(inner.first, inner.last)
    deep = (cut_beside(plan, side) for side in ("outside", "inside"))
    return Clear(out + past, past - within, radius, overdig_of(plan), beyond, *deep)


def report_in_dig(plan: Plan) -> InDigPart | None:
    """Return the answer's ``in_dig``; ``None`` where the stakes stand clear of the dig, and where there is no slab."""
    clear, job = clear_of(plan), plan.layout.job
    if clear is None or not clear.takes(job.outward):
        return None
    head, deep = say("in_dig.head" if is_designed(plan) else "in_dig.head_slab"), deep_told(clear, job.tape, plan.tape)
    text = say("in_dig.told", head=head, dug=dug_told(clear, plan.tape, wall=is_wall(plan)))
    return {
        "text": text,
        "hint": say("in_dig.hint_deep", deep=deep) if deep else say("in_dig.hint"),
        "deep_shown": deep,
        "designed": is_designed(plan),
        "outside": clear.outside,
        "inside": clear.inside,
        "ways": ways_out_of(clear, job.tape, plan.tape),
    }


def ways_out_of(clear: Clear, tape: Tape, seen: Tape) -> list[OutOfDig]:
    """Return how to set the stakes clear of the dig; ``tape``: the job's, in whose unit a field is read, ``seen``: the
    one that texts are written by."""
    ways: list[OutOfDig] = []
    sides = (
        ("outside", "outside", clear.outside, clear.deep_out),
        ("inside", "centre", clear.inside, clear.deep_in),
    )
    for side, toward, reach, deep in sides:
        off = whole_off(reach, feet=tape.feet, deep=deep)
        if side == "inside" and clear.radius - off < CLEAR[tape.feet]:
            continue  # at the center they would stand on each other
        text = say(f"in_dig.{side}", off=seen.show_whole(off))
        ways.append({"text": text, "fields": {"offset": typed_length(off, tape), "toward": toward}})
    return ways


def dug_told(clear: Clear, seen: Tape, *, wall: bool) -> str:
    """Return how far it is dug past what, as a sentence: the number that the others hang on."""
    what = "footing" if clear.beyond else "wall" if wall else "slab"
    return say("in_dig.dug", past=say(f"in_dig.past_{what}", past=seen.show_whole(clear.past)))


def deep_told(clear: Clear, tape: Tape, seen: Tape) -> str:
    """Return how deep the dig was taken to be where stakes are set farther off than clear of it for that, on each side
    where those differ; empty where they aren't. ``tape`` and ``seen`` as for ``ways_out_of``."""
    out, within = clear.deep_out, clear.deep_in
    if max(out, within) <= CLEAR[tape.feet]:
        return ""
    outside, inside = seen.show_up(out), seen.show_up(within)
    return outside if outside == inside else say("in_dig.deep_each", outside=outside, inside=inside)
