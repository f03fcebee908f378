"""What a pour takes, as numbers: the order in the plant's steps, and what it would be for another slab."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.pour import CUBIC_YARD, Order, bags, order
from bowstring.forming.slab import Slab, Taper
from bowstring.report.forming.plan import Plan, slab_of
from bowstring.report.forming.quantities import INCH, ordered_number

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


@dataclass(frozen=True)
class Pouring:
    """The concrete of a plan.

    Attributes:
        yards: whether the plant sells cubic yards; unit: cubic metres in one of what it sells.
        slab: as it is built.
        area, depth: square metres, metres; waste: a share; step, truck: in the plant's unit.
        order: cubic metres.
    """

    yards: bool
    unit: float
    slab: Slab | Taper
    area: float
    depth: float
    waste: float
    step: float
    truck: float
    order: Order

    def again(self, area: float, depth: float, waste: float) -> Order:
        """Return the order for another area, depth (square metres, metres) or waste from the same plant."""
        return order(area * depth, waste, self.step * self.unit)

    @property
    def low_extra(self) -> float:
        """What a base that is a little low takes more, cubic metres."""
        return self.area * LOW[self.yards]

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
    """Return the concrete of a plan, ``None`` where there is no slab yet or no thickness is said."""
    said = plan.said.slab
    slab = slab_of(plan)
    if slab is None or said.thickness is None:
        return None
    yards = plan.layout.job.tape.feet
    unit = CUBIC_YARD if yards else 1.0
    waste = USUAL_WASTE if said.waste is None else said.waste
    step, truck = said.step or USUAL_STEP, said.truck or USUAL_TRUCK[yards]
    area = slab.area
    return Pouring(yards, unit, slab, area, said.thickness, waste, step, truck,
                   order(area * said.thickness, waste, step * unit))  # fmt: skip
