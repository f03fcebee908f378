"""How deep a slab is along its form: a job's apron and measured depths as shares of the slab, or why they can't be."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from itertools import pairwise
from typing import NamedTuple

from bowstring.forming.deep import Apron, Deep, Depths
from bowstring.forming.partly import along, share_of
from bowstring.forming.slab import Slab, Taper
from bowstring.report.forming.plan import Plan, is_wall
from bowstring.words import say

LEAST = 2
"""Depths by which an order can go: one says nothing of the rest."""


class Refusal(NamedTuple):
    """Why there is no order: a row's two lines."""

    text: str
    more: str


@dataclass(frozen=True)
class Along:
    """Where places along a slab lie.

    Attributes:
        length: of what they are told along, metres; over_line: whether that is a line of several pieces, and not the
            outer form.
        share: the share of the slab at so many metres; raises ``ValueError`` where the slab has no square end.
        near: the same of a depth, for which a place beside the corner of a kink does.
    """

    length: float
    over_line: bool
    share: Callable[[float], float]
    near: Callable[[float], float]


def along_arc(slab: Slab | Taper) -> Along:
    """Return how places are told along the outer form of a slab on one arc, from A."""
    length = along(slab, "outside", 1.0)
    share = partial(_share, slab, length)
    return Along(length, False, share, share)


def _share(slab: Slab | Taper, length: float, at: float) -> float:
    if at <= 0 or at >= length:
        return 0.0 if at <= 0 else 1.0
    return at / length if isinstance(slab, Slab) else share_of(at / length, partial(along, slab, "outside"))


def deep_of(plan: Plan, places: Along | None) -> Deep | None:
    """Return how deep the slab of a plan is, ``None`` where it says no thickness or can't be as it says; ``places``:
    ``None`` of a slab that fills its curve."""
    said = plan.said.slab
    if said.thickness is None or refusal_of(plan, places) is not None:
        return None
    edge, edge_depth = said.edge_width or 0.0, said.edge_depth or said.thickness
    if places is None:
        return Deep(said.thickness, edge, edge_depth)
    apron = None
    if said.apron is not None:
        first, last = places.share(said.apron.start), places.share(said.apron.end)
        apron = Apron(first, last, said.apron.thickness)
    return Deep(said.thickness, edge, edge_depth, apron, reads_of(plan, places) if len(said.depths) >= LEAST else ())


def reads_of(plan: Plan, places: Along) -> Depths:
    """Return every depth that was measured, by shares."""
    return tuple((places.near(read.at), read.depth) for read in plan.said.slab.depths)


def refusal_of(plan: Plan, places: Along | None) -> Refusal | None:
    """Return why no slab is as deep as a plan says, ``None`` where one can be."""
    said = plan.said.slab
    if said.thickness is None or (said.apron is None and not said.depths):
        return None
    if is_wall(plan):
        return _refusal("wall" if said.apron else "wall_depths")
    if said.fills or places is None:
        return _refusal("fill" if said.apron else "fill_depths")
    return _apron_refused(plan, places) or _depths_refused(plan, places)


def _refusal(key: str, **values: str) -> Refusal:
    return Refusal(say(f"deep.{key}"), say(f"deep.{key}_more", **values))


def _apron_refused(plan: Plan, places: Along) -> Refusal | None:
    apron = plan.said.slab.apron
    if apron is None:
        return None
    past = _past(plan, places, apron.end)
    if past:
        return _refusal("apron_past_line" if places.over_line else "apron_past", **past)
    try:
        first, last = places.share(apron.start), places.share(apron.end)
    except ValueError:
        return _refusal("apron_kink")
    return None if first < last else _refusal("apron_none", at=plan.tape.show_running(apron.start))


def _past(plan: Plan, places: Along, at: float) -> dict[str, str]:
    """What is told of a place past the end, empty of one that isn't: a mark over, a place is the end as it is shown."""
    tape = plan.tape
    if at <= places.length + max(tape.mark, plan.layout.job.tape.mark):
        return {}
    return {"at": tape.show_running(at), "length": tape.show_running(places.length)}


def _depths_refused(plan: Plan, places: Along) -> Refusal | None:
    said, tape, close = plan.said.slab, plan.tape, plan.layout.job.tape.mark / 2
    for read in said.depths:
        past = _past(plan, places, read.at)
        if past:
            return _refusal("depth_past_line" if places.over_line else "depth_past", **past)
        ends = (said.apron.start, said.apron.end) if said.apron else ()
        if any(abs(read.at - end) <= close for end in ends if 0 < end < places.length):
            return _refusal("depth_step", at=tape.show_running(read.at))
    try:
        shares = [share for share, _depth in reads_of(plan, places)]
    except ValueError:
        return _refusal("depth_kink")
    return None if all(one < two for one, two in pairwise(shares)) else _refusal("depth_kink")
