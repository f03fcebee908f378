"""What an answer tells of the joints; lengths in metres, angles in degrees, each with the crew's text beside it."""

from typing import TypedDict, final


@final
class JointRow(TypedDict):
    """A joint, or the slab's end: its ``number`` from A (0 for an end), ``name`` as it is written (``5``, ``B``), where
    it stands along each form from A, and the stake that stands there, empty where none does. ``apron``: that one begins
    or ends there, in words, else empty."""

    number: int
    name: str
    outside: float
    inside: float
    outside_shown: str
    inside_shown: str
    stake: str
    apron: str


@final
class PanelsRow(TypedDict):
    """So many panels, equal but for an apron that parts them, as they are offered: ``text`` and ``more`` stand on the
    button; ``over``: longer than the job says that they may be."""

    count: int
    outside: float
    inside: float
    outside_shown: str
    inside_shown: str
    ratio: float
    chosen: bool
    text: str
    more: str
    over: bool


@final
class GridRow(TypedDict):
    """A straight joint of a slab that fills its curve; metres, degrees.

    Attributes:
        number: as it is written; kind: ``square`` to the string, or ``along`` it.
        at: along the string from A (below 0 before A), or off the string; arc: where it meets the curve, along it from
            A; arc_shown: of one along the string the nearer place, which is as far from B at its other end.
        corner: between it and the curve; sharp: whether that breaks off.
    """

    number: int
    kind: str
    at: float
    at_shown: str
    arc: list[float]
    arc_shown: str
    corner: float
    corner_shown: str
    sharp: bool


@final
class JointsPart(TypedDict):
    """The joints, square to the curve; of a slab that fills its curve, square to its string and along it: ``rows`` is
    empty then and ``grid`` has them, ``outside`` and ``inside`` are a panel's sides along the string and off it.

    Attributes:
        state: ``usual``, ``near`` or ``stop``, as its row has it; asked: the job says how far apart, or how many.
        count: how many panels; outside, inside: the length of one along each form; ratio: its longest side over its
            shortest (of the worst one, where the width changes).
        most: the longest that a panel may be along the outer form; most_shown, why_most: which rule took effect.
        depth: how deep a joint is cut at least, ``None`` as long as no thickness is said, and in a wall.
        longer: how much longer the back of the outer board is than its face; nothing of a wall, whose form is no board.
        corner: the least angle between a joint and an edge, degrees: 90 where the width is the same all along.
        rows: the joints from A on, and B last; offers: the counts to choose from.
        text: the row's conclusion; conclusion: the page's, over two lines; stop: why no table stands there, else empty.
        warned: what is wrong with the panels' shape, and what cures it; empty where nothing is.
        taped: how they are taped; lines: how and why, in order; cautions: where the hand is. In these what stands
            between stars is bold on a page.
    """

    state: str
    asked: bool
    count: int
    outside: float
    inside: float
    outside_shown: str
    inside_shown: str
    ratio: float
    most: float
    most_shown: str
    why_most: str
    depth: float | None
    depth_shown: str
    longer: float
    longer_shown: str
    corner: float
    rows: list[JointRow]
    grid: list[GridRow]
    offers: list[PanelsRow]
    text: str
    conclusion: str
    stop: str
    warned: str
    taped: str
    lines: list[str]
    cautions: list[str]
