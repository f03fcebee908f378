"""What a pour takes, as numbers: the order in the plant's steps, and what it would be for another slab."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from bowstring.forming.deep import Deep
from bowstring.forming.joints import ISOLATION
from bowstring.forming.pad import Filled, Pad
from bowstring.forming.partly import area_to, bands_to
from bowstring.forming.pour import CUBIC_YARD, Order, bags, order
from bowstring.forming.rest import within_to
from bowstring.forming.slab import Slab, Taper
from bowstring.report.forming.deepness import along_arc, deep_of
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.quantities import INCH, ordered_number
from bowstring.words import say

USUAL_WASTE = 0.10
"""5 and 10 % are usual; published are 3 to 20 %."""

USUAL_STEP = 0.25
"""Cubic yards or cubic metres: common practice, no source."""

USUAL_TRUCK = {True: 10.0, False: 6.0}
"""Cubic yards, cubic metres: what a mixer brings (from memory)."""

BAGS = {True: ("80 lb", 0.60 * 0.3048**3), False: ("25 kg", 0.0115)}
"""Bags of dry mix, and what one makes, cubic metres (both from memory): 0.60 cubic feet, and 11.5 litres."""

SMALL = {True: CUBIC_YARD, False: 0.75}
"""Cubic metres: what is under it is bagged."""

LOW = {True: INCH / 2, False: 0.010}
"""Metres: how much lower than drawn a base easily comes out."""


THICKER = {True: INCH, False: 0.025}
WIDER = {True: 6 * INCH, False: 0.150}


class Body(Protocol):
    """Concrete between two forms, as far as its volume asks; ``share``: 0 at its start, 1 at its end."""

    @property
    def area(self) -> float:
        """Square metres."""

    def area_to(self, share: float) -> float:
        """Return the area up to a share, square metres."""

    def bands_to(self, wide: float, share: float) -> float:
        """Return the area up to a share that lies within ``wide`` metres of a form, square metres."""


@dataclass(frozen=True)
class ArcBody:
    """A slab on one arc; a share is one of its angle."""

    slab: Slab | Taper

    @property
    def area(self) -> float:
        """Square metres."""
        return self.slab.area

    def area_to(self, share: float) -> float:
        """Return the area up to a share of the angle, square metres."""
        return area_to(self.slab, share)

    def bands_to(self, wide: float, share: float) -> float:
        """Return the area up to a share of the angle that lies within ``wide`` metres of a form, square metres."""
        return bands_to(self.slab, wide, share)


def runs_back(filled: Filled) -> bool:
    """Tell whether a slab with straight sides is deeper than wide."""
    return isinstance(filled, Pad) and filled.deep > filled.wide * (1 + 1e-9)


def strip_of(plan: Plan) -> float:
    """Return how thick the isolation strip is at the back of straight sides that end at a building, metres: what the
    slab is less there; 0 where there is none."""
    pad = plan.filled
    if not isinstance(pad, Pad) or not pad.against:
        return 0.0
    strip = ISOLATION[plan.layout.job.tape.feet]
    return strip if strip < pad.sides else 0.0


def poured_of(plan: Plan, filled: Filled) -> Filled:
    """Return what is concrete of a slab that fills its curve: against a building it is less the strip there."""
    strip = strip_of(plan)
    if not strip or not isinstance(filled, Pad):
        return filled
    return Pad(filled.arc, filled.sides - strip, filled.both, filled.against)


@dataclass(frozen=True)
class FillBody:
    """A slab that fills its curve; a share is one of its width along the string, or of its depth where the front of a
    pour comes from its ``back``: that runs the short way across; ``along``: how far round its edge is thick."""

    slab: Filled
    back: bool
    along: str = "all"

    @property
    def area(self) -> float:
        """Square metres."""
        return self.slab.area

    def area_to(self, share: float) -> float:
        """Return the area up to a share of the width, or of the depth, square metres."""
        if share >= 1:
            return self.slab.area
        slab = self.slab
        return slab.area_from_back(share) if isinstance(slab, Pad) and self.back else slab.area_to(share)

    def bands_to(self, wide: float, share: float) -> float:
        """Return the area up to such a share that lies within ``wide`` metres of a form, square metres."""
        return within_to(self.slab, wide, share, back=self.back, along=self.along)


@dataclass(frozen=True)
class Pouring:
    """The concrete of a plan.

    Attributes:
        yards: whether the plant sells cubic yards; unit: cubic metres in one of what it sells.
        body: as it is built.
        deep: how deep it is, as drawn or as measured.
        waste: a share; step, truck: in the plant's unit.
        order: cubic metres.
    """

    yards: bool
    unit: float
    body: Body
    deep: Deep
    waste: float
    step: float
    truck: float
    order: Order

    def again(
        self,
        *,
        depth: float | None = None,
        waste: float | None = None,
        body: Body | None = None,
        more: float = 0.0,
    ) -> Order:
        """Return the order from the same plant for another depth (metres), waste or body, or for so much more (cubic
        metres)."""
        deep = self.deep if depth is None else self.deep.again(depth)
        needed = deep.volume(body or self.body, 1.0) + more
        return order(needed, self.waste if waste is None else waste, self.step * self.unit)

    def drawn(self) -> Order:
        """Return what would be ordered by the drawing alone, whatever was measured."""
        return order(self.deep.as_drawn().volume(self.body, 1.0), self.waste, self.step * self.unit)

    def of_order(self, made: Order) -> Pouring:
        """Return another order from the same plant."""
        return Pouring(**{**vars(self), "order": made})

    def volume_to(self, share: float) -> float:
        """Return what the part up to a share takes, cubic metres."""
        return self.deep.volume(self.body, share)

    @property
    def area(self) -> float:
        """Square metres."""
        return self.body.area

    @property
    def depth(self) -> float:
        """As drawn where nothing is thicker, metres."""
        return self.deep.depth

    @property
    def even(self) -> bool:
        """Whether it is equally deep from end to end."""
        return not self.deep.reads and self.deep.apron is None

    @property
    def measured(self) -> bool:
        """Whether the order goes by measured depths."""
        return bool(self.deep.reads)

    @property
    def low_extra(self) -> float:
        """What a base that is a little low takes more, cubic metres: nothing where it was measured how low it is."""
        return 0.0 if self.measured else self.area * LOW[self.yards]

    @property
    def small(self) -> bool:
        """Whether it is a pour for bags."""
        return self.order.with_waste < SMALL[self.yards]

    @property
    def bought(self) -> float:
        """What comes, cubic metres: in whole bags, or in whole steps of the plant's."""
        return self.bags(self.order) * BAGS[self.yards][1] if self.small else self.order.ordered

    def bags(self, made: Order) -> int:
        """Return how many bags make an order with its waste."""
        return bags(made.with_waste, BAGS[self.yards][1])

    def called(self, made: Order) -> str:
        """Return an order as a number of what is bought: bags, or what the plant sells."""
        return f"{self.bags(made)}" if self.small else ordered_number(made.ordered, self.step, self.yards)

    @property
    def tight(self) -> bool:
        """Whether the order has next to nothing over what is needed with its waste: under a tenth of a step."""
        return self.order.ordered - self.order.with_waste < self.step * self.unit / 10


def pouring_of(plan: Plan) -> Pouring | None:
    """Return the concrete of a plan, ``None`` where there is no slab yet, no thickness is said, or it can't be as deep
    as is said."""
    slab = slab_of(plan)
    if plan.filled is None and slab is None:
        return None
    along = None if slab is None else along_arc(slab)
    deep = deep_of(plan, along)
    if deep is None:
        return None
    if plan.filled is not None:
        round_to = plan.said.slab.edge_along or "all"
        return pouring_in(plan, FillBody(poured_of(plan, plan.filled), runs_back(plan.filled), round_to), deep)
    assert slab is not None
    return pouring_in(plan, ArcBody(slab), deep)


def pouring_in(plan: Plan, body: Body, deep: Deep) -> Pouring:
    """Return the concrete between two forms, as deep as is told."""
    said = plan.said.slab
    yards = plan.layout.job.tape.feet
    unit = CUBIC_YARD if yards else 1.0
    waste = USUAL_WASTE if said.waste is None else said.waste
    step, truck = said.step or USUAL_STEP, said.truck or USUAL_TRUCK[yards]
    return Pouring(yards, unit, body, deep, waste, step, truck, order(deep.volume(body, 1.0), waste, step * unit))


def conclusion_of(pouring: Pouring) -> tuple[str, str, str]:
    """Return the conclusion as one number, what it counts, and as a sentence."""
    if pouring.small:
        bag, count = BAGS[pouring.yards][0], pouring.called(pouring.order)
        return count, say("pour.unit_bags", bag=bag), say("pour.bags", count=count, bag=bag)
    number = ordered_number(pouring.order.ordered, pouring.step, pouring.yards)
    if pouring.yards:
        return number, say("pour.unit_yards"), say("pour.order_yards", number=number)
    return number, say("pour.unit_metres"), say("pour.order_metres", number=number)


def footing_of(plan: Plan, pouring: Pouring) -> Order | None:
    """Return the order of the footing under the middle of the slab or wall, ``None`` where there is none.

    As wide on either side of the middle: the middle's length times the width, exactly, where the middle's distance from
    the center changes evenly with the angle.
    """
    slab = slab_of(plan)
    if slab is None or plan.filled is not None:
        return None
    middle = slab.middle if isinstance(slab, Slab) else sum(
        edge.radius(share) for edge in (slab.outside, slab.inside) for share in (0.0, 1.0)) / 4  # fmt: skip
    return footing_along(plan, pouring, middle * slab.angle)


def footing_along(plan: Plan, pouring: Pouring, length: float) -> Order | None:
    """Return the order of a footing so long, metres, ``None`` where the job says none."""
    said = plan.said.slab
    if said.footing_width is None or said.footing_depth is None:
        return None
    return order(length * said.footing_width * said.footing_depth, pouring.waste, pouring.step * pouring.unit)
