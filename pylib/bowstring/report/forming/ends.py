"""The ends of a slab along its line: closed by a form of its own, or against concrete that stands there."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.job.terms import LINE_ENDS
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.words import say


def against(plan: Plan) -> tuple[str, ...]:
    """Return the ends, of ``A`` and ``B``, at which the slab meets concrete that stands there."""
    return () if plan.said.slab.fills else plan.said.slab.against


def formed(plan: Plan) -> tuple[str, ...]:
    """Return the ends that have a form of their own: all that nobody says anything else of."""
    return tuple(end for end in LINE_ENDS if end not in against(plan))


def named(plan: Plan, ends: Sequence[str]) -> str:
    """Return what some ends are called: of a line of several pieces its start and its end."""
    if plan.layout.job.line is None:
        return say("ends.both") if len(ends) > 1 else "".join(ends)
    return say("ends.both_of_line") if len(ends) > 1 else "".join(say(f"ends.of_line.{end}") for end in ends)


def ends_of_arc(plan: Plan) -> tuple[str, ...]:
    """Return the ends of the staked arc that meet such concrete: of a line only where it begins or ends with it."""
    line = plan.layout.job.line
    if line is None:
        return against(plan)
    own = {"A": line.at == 0, "B": line.at == len(line.pieces) - 1}
    return tuple(end for end in against(plan) if own[end])


def past_ends(plan: Plan, past: float, key: str) -> list[str]:
    """Return how the dig goes on ``past`` the formed ends, metres, by the message ``key`` where both are, and that it
    stops at what stands at the others; nothing where it goes on past neither and both are formed."""
    told = {"size": plan.tape.show_whole(past), "ends": named(plan, formed(plan))}
    found = [say(key, **told)] if past and formed(plan) else []
    return [*found, *stops(plan)]


def stops(plan: Plan) -> list[str]:
    """Return that the dig stops at the concrete that stands at an end; nothing where both are formed."""
    return [say("ends.dig_stops", ends=named(plan, against(plan)))] if against(plan) else []


def told(plan: Plan) -> list[str]:
    """Return what an end against concrete means for its forms and its joint; nothing where both are formed."""
    if not against(plan):
        return []
    ends = named(plan, against(plan))
    return [say("ends.told_wall" if is_wall(plan) else "ends.told", ends=ends)]


def widths(plan: Plan) -> dict[str, float]:
    """Return how wide the slab is at each end, metres; raises ``ValueError`` where no width is said."""
    if plan.width is None:
        raise ValueError("no width, no ends")
    far = plan.said.slab.far_width
    return dict(zip(LINE_ENDS, (plan.width, plan.width if far is None else far), strict=True))
