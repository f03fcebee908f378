"""Into how many panels a slab along a line is jointed: decided once, for its joints and for its concrete."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.line.panels import LinePanels, Stops, fewest, spread
from bowstring.forming.line.sweep import Sweep
from bowstring.job.forming import MOST_PANELS
from bowstring.report.forming.panels import COUNT, NEAR_END, is_within, limit_of, longest_of
from bowstring.report.lined.deepness import deep_along, place_of
from bowstring.report.lined.plan import LinePlan


@dataclass(frozen=True)
class LineJointing:
    """Panels along a line, and how they came to be.

    Attributes:
        chosen: those that are built.
        most: the longest that they may be along either form, metres, by ``rule``; limit: the usual most of this
            thickness, metres.
    """

    chosen: LinePanels
    most: float
    rule: str
    limit: float

    @property
    def too_many(self) -> bool:
        """Whether they are more than anybody marks."""
        return sum(self.chosen.counts) > MOST_PANELS

    @property
    def too_long(self) -> bool:
        """Whether a panel is longer than is usual."""
        return self.chosen.longest > self.limit * (1 + 1e-9)

    @property
    def stopped(self) -> bool:
        """Whether nobody should make these joints yet: no place of one is told."""
        return self.too_many or self.too_long


def jointing_of(plan: LinePlan) -> LineJointing | None:
    """Return the panels of a plan, ``None`` where there is no slab yet."""
    if plan.slab is None:
        return None
    stops = _stops(plan)
    sweep, said, limit = Sweep(plan.slab), plan.said.joints, limit_of(plan.plan)
    most, rule = longest_of(plan.plan, plan.slab.width, limit)
    if said.count is not None:
        return LineJointing(spread(sweep, said.count, stops), most, COUNT, limit)
    return LineJointing(fewest(sweep, most, stops), most, rule, limit)


def _stops(plan: LinePlan) -> Stops:
    """Where an apron begins and ends, as shares of the pieces: where two pieces meet a joint stands anyhow."""
    apron, slab, deep = plan.said.slab.apron, plan.slab, deep_along(plan)
    if apron is None or slab is None or deep is None:
        return ()
    line, near = slab.line, NEAR_END[plan.tape.feet]
    found: list[tuple[float, ...]] = [()] * len(line.pieces)
    for at in (apron.start, apron.end):
        if is_within(plan.plan, at, line.length) and all(abs(at - station) > near for station in line.stations):
            piece, share = place_of(Sweep(slab), at)
            found[piece] = (*found[piece], share)
    return tuple(found)
