"""What an answer tells of the pour: areas in square metres, volumes in cubic metres, each with the crew's text."""

from typing import TypedDict, final


@final
class ReachRow(TypedDict):
    """How far the concrete has to be at a moment: ``out`` says which part of which truck is out, ``share`` is that part
    of the whole order; ``plan`` and ``call`` are metres along the
    outer form from A, or along the string (on plan there; short of the other
    it won't last), ``joint`` the joint at which the second is read, 0 where none is near."""

    out: str
    share: float
    plan: float
    call: float
    plan_shown: str
    call_shown: str
    joint: int


@final
class ChangeRow(TypedDict):
    """What changes the order: ``what`` in words, the order then, and whether it is another one."""

    what: str
    more: str
    order: float
    order_shown: str
    changed: bool


@final
class BulkheadPart(TypedDict):
    """Where a short load may end: at which joint, metres along each form from A, and what would end there."""

    joint: int
    outside: float
    inside: float
    text: str


@final
class DeepPart(TypedDict):
    """Where the slab isn't as thick as elsewhere, or its base was measured; each empty where there is none of it.

    Attributes:
        apron: how a thicker stretch is dug, what it takes; joints: where its ends want one; apron_shown: how thick it
            is and where, apron_paper: where on both forms, apron_depth: how thick alone, apron_joint: how deep a
            joint in it is cut, apron_ends: metres along the outer form from A.
        edge_dug, edge_past, edge_signed: the trench of a thick edge, how it is dug past that, and what must be under
            the tops there; edge_building: that one at a building is figured, and the order without it.
        dig_shown, dig_apron: how far under the tops it is dug, and in the apron; empty where no base is said.
        measured: what the measured depths make of the order; measured_shown: by what it goes; thin: where they are less
            than drawn; limit: how much of that a standard allows.
    """

    apron: list[str]
    joints: list[str]
    apron_shown: str
    apron_paper: str
    apron_depth: str
    apron_joint: str
    apron_ends: list[float]
    edge_dug: str
    edge_past: str
    edge_signed: str
    edge_building: str
    dig_shown: str
    dig_apron: str
    measured: list[str]
    measured_shown: str
    thin: list[str]
    limit: str


@final
class PourPart(TypedDict):
    """The concrete.

    Attributes:
        state: ``usual`` or ``near``, as its row has it.
        area, volume, with_waste, order: square and cubic metres; order: in whole steps of the plant's.
        yards: whether texts are in cubic yards; volume_yards, order_yards: cubic yards, whatever the texts are in.
        depth: metres; waste: a share; step, truck: cubic metres.
        loads: how many trucks; last: cubic metres on the last one.
        footing, footing_order: what the footing takes, and its own order, cubic metres; ``None`` where there is none.
        bag_count, by_bags: bags for what is needed with its waste; whether they are the conclusion.
        low: metres, the lowest base that the order fills; per_panel: cubic metres, ``None``
            where panels differ: of a slab that fills its curve, or isn't as deep throughout.
        number, unit: the conclusion as one large number; text: as a sentence; why: how it came to be.
        deep: what differs from one thickness throughout.
        reach: when to call; reach_where: along what the places of it are, reach_note: how it is read. changes: what
            changes the order.
        bulkhead: for a short load, ``None`` where there is no joint.
        base_text: how much base lies under it, short, empty where none is said and for a wall.
        low_text: how low a base it fills; measure: what is done about that; both empty for a wall.
        footing_text: what the footing takes, which is ordered by itself; it stands among the lines, too.
        lines: how it comes and what the form is; cautions: where the hand is; notes: what isn't told here. In these
            what stands between stars is bold on a page.
    """

    state: str
    area: float
    volume: float
    with_waste: float
    order: float
    yards: bool
    volume_yards: float
    order_yards: float
    area_shown: str
    volume_shown: str
    order_shown: str
    depth: float
    depth_shown: str
    waste: float
    waste_said: bool
    step: float
    truck: float
    loads: int
    last: float
    footing: float | None
    footing_order: float | None
    bag_count: int
    bag_shown: str
    by_bags: bool
    low: float
    low_shown: str
    per_panel: float | None
    number: str
    unit: str
    text: str
    why: str
    deep: DeepPart
    reach: list[ReachRow]
    reach_where: str
    reach_note: str
    changes: list[ChangeRow]
    bulkhead: BulkheadPart | None
    base_text: str
    low_text: str
    footing_text: str
    measure: str
    lines: list[str]
    cautions: list[str]
    notes: list[str]
