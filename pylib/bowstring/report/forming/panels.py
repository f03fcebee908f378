"""Into how many panels a slab is jointed: decided once, for its joints and for the tops at them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.forming.joints import ISOLATION, NARROW, Panels, is_past, offered, panels, usual_most
from bowstring.forming.partly import width_at
from bowstring.forming.slab import Slab, Taper
from bowstring.job.forming import MOST_PANELS
from bowstring.report.forming.deepness import along_arc, deep_of
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.quantities import down_to, fine_tape

THIN = 4 * 0.0254
"""Metres: whose longest panel is taken where no thickness is said; it is the least that walks have."""

NEAR_END = {True: 0.0254, False: 0.025}
"""Metres: an apron that ends no farther from a slab's end ends with it (common practice, no source)."""

EVERY, COUNT, WIDTH, THICKNESS, BAND = "every", "count", "width", "thickness", "band"
"""What says how long a panel may be: the job, in lengths or in panels; the width; the thickness; that of a band so
narrow that its width says nothing."""


@dataclass(frozen=True)
class Jointing:
    """Panels, and how they came to be.

    Attributes:
        chosen: those that are built; offers: those to choose from, the fewest first that are short enough.
        most: the longest that they may be along the outer form, metres, by ``rule``.
        limit: the usual most of this thickness, metres.
    """

    chosen: Panels
    offers: tuple[Panels, ...]
    most: float
    rule: str
    limit: float

    @property
    def too_long(self) -> bool:
        """Whether the panels that were chosen are longer than is usual."""
        return self.chosen.outside > self.limit * (1 + 1e-9)

    @property
    def stopped(self) -> bool:
        """Whether nobody should make these joints yet: no place and no top of one is told."""
        return self.too_long or self.chosen.count > MOST_PANELS


def jointing_of(plan: Plan) -> Jointing | None:
    """Return the panels of a plan, ``None`` where there is no slab yet."""
    slab = slab_of(plan)
    if slab is None:
        return None
    said, limit = plan.said.joints, limit_of(plan)
    most, rule = longest_of(plan, width_at(slab, 0.5), limit)
    fixed = _fixed(plan, slab)
    offers = _offers(slab, most, limit, fixed)
    chosen = offers[0]
    if said.count is not None:
        chosen, rule = panels(slab, said.count, fixed), COUNT
        offers = offers if chosen in offers else (chosen, offers[0])
    return Jointing(chosen, offers, most, rule, limit)


def longer_panels(plan: Plan, jointing: Jointing) -> Panels | None:
    """Return the most panels, fewer than are chosen and none longer than is usual, whose shape is right; ``None`` where
    there are none."""
    slab = slab_of(plan)
    assert slab is not None  # it has panels
    fixed = _fixed(plan, slab)
    fewer = (panels(slab, count, fixed) for count in range(jointing.chosen.count - 1, len(fixed), -1))
    return next((one for one in fewer if one.outside <= jointing.limit * (1 + 1e-9) and not is_past(one.ratio)), None)


def chosen_panels(plan: Plan) -> Panels | None:
    """Return the panels that are built, ``None`` where there is no slab yet, or nobody should make such joints."""
    jointing = jointing_of(plan)
    return None if jointing is None or jointing.stopped else jointing.chosen


def limit_of(plan: Plan) -> float:
    """Return the usual most between joints, metres, down to a half foot or a tenth of a metre."""
    thickness = plan.said.slab.thickness or THIN
    step = 0.1524 if plan.layout.job.tape.feet else 0.1
    return max(step, down_to(usual_most(thickness), step))


def is_band(plan: Plan) -> bool:
    """Whether it is too narrow all along for its panels to be judged by their shape."""
    widths = (plan.width or 0.0, plan.taper.last if plan.taper else 0.0)
    return max(widths) < NARROW * (1 - 1e-9)


def longest_of(plan: Plan, width: float, limit: float) -> tuple[float, str]:
    """Return how long a panel may be along an edge, metres, and what says so."""
    if plan.said.joints.every is not None:
        return plan.said.joints.every, EVERY
    if is_band(plan):
        return limit, BAND
    if width < limit:
        return width, WIDTH
    return limit, THICKNESS


def _fixed(plan: Plan, slab: Slab | Taper) -> list[float]:
    """The shares of a slab at which a joint has to stand: where its apron begins and ends."""
    places = along_arc(slab)
    apron, deep = plan.said.slab.apron, deep_of(plan, places)
    if apron is None or deep is None:
        return []
    return [places.share(at) for at in (apron.start, apron.end) if is_within(plan, at, places.length)]


def is_within(plan: Plan, at: float, length: float) -> bool:
    """Tell whether an apron's end, metres, lies within a slab of a length: at the slab's own end there is no joint."""
    near = NEAR_END[plan.layout.job.tape.feet]
    return near < at < length - near


def _offers(slab: Slab | Taper, most: float, limit: float, fixed: Sequence[float]) -> tuple[Panels, ...]:
    """Return the fewest panels that are short enough and one fewer; one more, where that would be too long or none."""
    first, *fewer = offered(slab, most, fixed)
    if first.outside > limit * (1 + 1e-9):  # as the job asks for them: beside them stand those that would do
        return first, offered(slab, limit, fixed)[0]
    if fewer and fewer[0].outside <= limit * (1 + 1e-9):
        return first, fewer[0]
    return first, panels(slab, first.count + 1, fixed)


def isolation_shown(plan: Plan) -> str:
    """Return how thick the strip of an isolation joint is."""
    return fine_tape(plan.tape).show(ISOLATION[plan.layout.job.tape.feet])
