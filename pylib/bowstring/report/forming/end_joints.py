"""Where a slab meets concrete that stands at an end of its line, told: the joint, its strip, and the tops there."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.ends import against, named, widths
from bowstring.report.forming.panels import NEAR_END, isolation_shown
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.thick_edge import thick_edge
from bowstring.report.forms.build_grades import TopPart
from bowstring.words import say


def _deep_at(plan: Plan, end: str, length: float) -> str:
    """How deep the concrete is at an end of a slab so long along its outer form, or along its line; empty where nobody
    says, and where a thick edge leaves it more than one depth."""
    said = plan.said.slab
    if said.thickness is None or thick_edge(plan) is not None:
        return ""
    apron, near = said.apron, NEAR_END[plan.layout.job.tape.feet]
    reaches = apron is not None and (apron.start <= near if end == "A" else apron.end >= length - near)
    return thick(plan.tape, apron.thickness if apron is not None and reaches else said.thickness)


def joints_told(plan: Plan, length: float) -> Iterator[str]:
    """Yield the isolation joint at each end against concrete, and who says if anything ties it; ``length``: of the
    slab, as ``_deep_at`` wants it. Of a wall the drawing says it."""
    ends = against(plan)
    if ends and is_wall(plan):
        yield say("ends.joint_wall", ends=named(plan, ends))
        return
    for end in ends:
        deep = _deep_at(plan, end, length)
        shown = {"end": named(plan, [end]), "gap": isolation_shown(plan), "width": plan.tape.show(widths(plan)[end])}
        yield say("ends.joint", **shown, deep=deep) if deep else say("ends.joint_full", **shown)
    if ends:
        yield say("ends.dowels")


def buy_strip(plan: Plan, length: float) -> list[str]:
    """Return the isolation strip that is bought for those joints, none of a wall."""
    ends = () if is_wall(plan) else against(plan)
    if not ends:
        return []
    first, *others = (plan.tape.show(widths(plan)[end]) for end in ends)
    pieces = say("boards.both", first=first, last=others[0]) if others else first
    if others == [first]:
        pieces = say("boards.so_many", count=2, length=first)
    shown, deep = {"pieces": pieces, "gap": isolation_shown(plan)}, _one_depth(plan, length)
    return [say("ends.buy", **shown, deep=deep) if deep else say("ends.buy_full", **shown)]


def _one_depth(plan: Plan, length: float) -> str:
    """How deep the concrete is at the ends against what stands there; empty where that isn't one depth."""
    deep = {_deep_at(plan, end, length) for end in against(plan)}
    return deep.pop() if len(deep) == 1 else ""


def strip_shown(plan: Plan, length: float) -> str:
    """Return the strip as it is signed off: how thick, and how deep where that is one depth; empty without one."""
    if is_wall(plan) or not against(plan):
        return ""
    return "; ".join(text for text in (isolation_shown(plan), _one_depth(plan, length)) if text)


def tops_told(plan: Plan, tops: dict[str, tuple[str, str]]) -> list[str]:
    """Return of each end against concrete what tops the slopes make there, of both forms as texts, and that somebody
    has to shoot what stands there; where a top is given there, that it meets."""
    given, found = dict(zip(LINE_ENDS, (plan.said.grade.start, plan.said.grade.end), strict=True)), []
    for end in against(plan):
        first, last = tops[end]
        kind, of_line = "open" if given[end] is None else "met", plan.layout.job.line is not None
        key = f"ends.top_{kind}.of_line" if of_line else f"ends.top_{kind}"
        lip = [] if is_wall(plan) else [say("ends.lip")]  # nobody walks on one
        found.append(" ".join([say(key, end=named(plan, [end]), first=first, last=last), *lip]))
    return found


def top_shown(plan: Plan, top: TopPart) -> str:
    """Return a top as a level of the job, where it has them, else as what it is above the start."""
    return f"{top['elevation']} {'ft' if plan.tape.feet else 'm'}" if top["elevation"] else top["shown"]
