"""The depths that were measured down to the base, told: their mean, what was taken, and where it is thin."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.deep import Deep
from bowstring.report.forming.deepness import LEAST, Along, reads_of
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.pouring import Pouring
from bowstring.report.forming.quantities import INCH, fine_tape, thick
from bowstring.words import say

ALLOWED_MEAN, ALLOWED_ONE = 0.375 * INCH, 0.75 * INCH
"""Metres: how much thinner than drawn a slab on the ground may be on average, and at one place: ACI 117-10, 4.5.4, as a
concrete trade magazine quotes it. The job's own specification goes before it."""

SAME = 1e-6
"""Metres: a depth that is short by less is as drawn."""


def mean_of(pouring: Pouring) -> float:
    """Return how deep the slab is on average, thick edges aside, metres."""
    deep, body = pouring.deep, pouring.body
    return sum(one.volume(body, 1.0) for one in deep.stretches) / body.area


def mean_shown(plan: Plan, pouring: Pouring) -> str:
    """Return it, to 1/16 in or 1 mm."""
    return fine_tape(plan.tape).show(mean_of(pouring))


def count_of(plan: Plan) -> int:
    """Return how many depths were measured."""
    return len(plan.said.slab.depths)


def short_told(plan: Plan, pouring: Pouring) -> str:
    """Return by what the order goes, as a row's second fact; empty where it goes by the drawing."""
    if not pouring.measured:
        return say("deep.one") if plan.said.slab.depths else ""
    return say("deep.by_depths", count=count_of(plan), mean=mean_shown(plan, pouring))


def measured_lines(plan: Plan, pouring: Pouring) -> list[str]:
    """Return what the measured depths make of the order, and what was taken; empty where nothing was measured."""
    if not plan.said.slab.depths:
        return []
    if not pouring.measured:
        return [say("deep.two_needed", least=LEAST)]
    drawn = pouring.drawn()
    key = "deep.drawn_bags" if pouring.small else "deep.drawn_yards" if pouring.yards else "deep.drawn_metres"
    lines = [say(key, order=pouring.called(drawn)), *_means(plan, pouring), say("deep.ends_taken")]
    if pouring.deep.edges(pouring.body, 1.0):
        lines.append(say("deep.edges_taken"))
    if plan.said.grade.crown:
        lines.append(say("deep.crown"))
    return lines


def _means(plan: Plan, pouring: Pouring) -> Iterator[str]:
    """What was measured in each stretch of one drawn thickness; of what was measured nowhere, that it is as drawn."""
    deep, fine = pouring.deep, fine_tape(plan.tape)
    if deep.apron is None:
        return
    for one in deep.stretches:
        what = "apron" if one.first == deep.apron.first else "before" if one.first < deep.apron.first else "after"
        key = f"deep.mean_{what}" if one.reads else f"deep.unread_{what}"
        yield say(key, mean=fine.show(one.mean(pouring.body)), count=len(one.reads))


def thin_told(plan: Plan, deep: Deep, places: Along) -> tuple[list[str], str]:
    """Return where the base is so high that the slab comes out thinner than it is drawn, and how much of it a standard
    allows; both empty where it nowhere does."""
    tape, fine, told, short = plan.tape, fine_tape(plan.tape), [], []
    for read, (share, depth) in zip(plan.said.slab.depths, reads_of(plan, places), strict=True):
        drawn = deep.drawn(share)
        short.append(drawn - depth)
        if drawn - depth > SAME:
            at = tape.show_running(read.at)
            told.append(say("deep.thin", at=at, depth=thick(tape, depth), drawn=thick(tape, drawn)))
    if not told:
        return [], ""
    over = max(short) > ALLOWED_ONE + SAME or sum(short) / len(short) > ALLOWED_MEAN + SAME
    limits = {"mean": fine.show(ALLOWED_MEAN), "one": fine.show(ALLOWED_ONE)}
    return told, say("deep.thin_over" if over else "deep.thin_limit", **limits)
