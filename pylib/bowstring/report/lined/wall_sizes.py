"""A wall along a line, in sizes: what the front of its form sheet says of it, and what is signed off."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.forming.plan import is_wall
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.wall_heights import depths_under
from bowstring.report.forms.build_lined import LinedSign
from bowstring.report.lined.plan import LinePlan
from bowstring.words import say

_UNDER = ("footing", "under", "dig")
"""What lies under a wall's top on its footing, from above."""


def size_of(plan: LinePlan) -> str:
    """Return how thick and high a wall is, and its footing's size; empty of a slab, and before its width."""
    if plan.width is None or not is_wall(plan.plan):
        return ""
    said, shown = plan.said.slab, say("forms.wall_thick", width=plan.tape.show(plan.width))
    if said.thickness is not None:
        shown = say("forms.wall_high", thick=shown, height=thick(plan.tape, said.thickness))
    told = [say("lined.wall", size=shown)]
    if said.footing_width is not None and said.footing_depth is not None:
        wide, deep = (thick(plan.tape, size) for size in (said.footing_width, said.footing_depth))
        told.append(say("forms.wall_footing", width=wide, depth=deep))
    return " ".join(told)


def signs_of(plan: LinePlan) -> list[LinedSign]:
    """Return what is signed off of a wall, its footing first, as it is poured; none of a slab."""
    if not is_wall(plan.plan):
        return []
    return [{"what": what, "must": must} for what, must in _signs(plan)]


def _signs(plan: LinePlan) -> Iterator[tuple[str, str]]:
    said, tape = plan.said.slab, plan.tape
    for name, size in (("footing_width", said.footing_width), ("footing_depth", said.footing_depth)):
        if size is not None:
            yield say(f"forms.sign_{name}"), thick(tape, size)
    yield say("lined.sign_thick"), tape.show(plan.width) if plan.width is not None else ""
    if said.thickness is None:
        return
    yield say("forms.sign_high"), thick(tape, said.thickness)
    depths = depths_under(plan.plan)
    for name in _UNDER if "dig" in depths else ():
        if name in depths:
            yield say(f"lined.sign_{name}"), thick(tape, depths[name])
