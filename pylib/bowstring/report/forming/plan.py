"""The slab that a job asks for along its arc, or what is still to be said for it."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.forming.edge import Edge
from bowstring.forming.pad import Filled, Pad, takes_sides
from bowstring.forming.partly import along
from bowstring.forming.segment import Segment
from bowstring.forming.slab import OFF, Lies, Slab, Taper
from bowstring.geometry.arc import Arc
from bowstring.job.forming import ApronSaid, Forming, SlabSaid
from bowstring.layout.layout import Layout
from bowstring.units.tape import Tape

LIES: dict[str, Lies] = {"outside": "inside", "centre": "both", "inside": "outside"}
"""Where the slab lies from the line, by where the line runs in it: a line that is the outside edge has it inside."""

WIDTH, EDGE, THICKNESS = "width", "edge", "thickness"
"""What a part waits for."""

USUAL_CROSS = 0.015
"""Rise over run: under the 1:48 that a walking surface may have at most (2010 ADA Standards 403.3), with room for a
form's own error."""


@dataclass(frozen=True)
class Plan:
    """What the parts of a build start from.

    Attributes:
        layout: the arc and its stakes; said: what the job says of the slab; tape: the one that texts are written by.
        edge: where the line runs in the slab, ``outside``, ``inside`` or ``centre``; ``None`` where that isn't known:
            never assumed, but for a radius that is drawn to the center line.
        slab: between its two edges; ``None`` where the width or the edge isn't said, or where there is ``no_inner``.
            Where the width tapers it has the width at A all along.
        taper: the slab whose width at B is another; ``None`` where it isn't.
        no_inner: a width reaches the arc's center.
        filled: everything between the curve and the string from A to B, where the job says that the slab is that; it
            has no ``slab`` then, whatever width is said.
        no_sides: straight sides are said to run back from a curve of more than a half circle.
        of_footing: it is the footing of a wall, poured as a slab: it ends in the dig, where the wall does.
    """

    layout: Layout
    said: Forming
    tape: Tape
    edge: str | None
    slab: Slab | None
    taper: Taper | None
    no_inner: bool
    filled: Filled | None = None
    no_sides: bool = False
    of_footing: bool = False

    @property
    def asks_what(self) -> bool:
        """Whether it must be said first if it's a wall: there is no slab till then."""
        return self.said.slab.asks_what

    @property
    def line(self) -> Arc:
        """The drawing's own line."""
        return self.layout.drawn

    @property
    def width(self) -> float | None:
        """Metres, where the job says it."""
        return self.layout.job.width

    @property
    def waits(self) -> tuple[str, ...]:
        """What has to be said before there is a slab: ``WIDTH``, ``EDGE``."""
        if self.said.slab.fills:
            return () if self.filled else (EDGE,)
        return tuple(
            what for what, there in ((WIDTH, self.width is not None), (EDGE, self.edge is not None)) if not there
        )

    @property
    def edges(self) -> tuple[Edge, Edge]:
        """The outer and the inner edge, each off the drawing's own line.

        Raises ``ValueError`` where there is no slab.
        """
        if self.slab is None or self.width is None or self.edge is None:
            raise ValueError("no slab, no edges")
        far = self.taper.last if self.taper else self.width
        outer, inner = (Edge(self.line, part * self.width, part * far) for part in OFF[LIES[self.edge]])
        return outer, inner

    def shares(self) -> tuple[tuple[str, float], ...]:
        """Return every stake's name with its share of the angle, A first, B last."""
        layout = self.layout
        whole = layout.staked.arc_length
        return tuple((stake.name, layout.along(stake) / whole) for stake in layout.stakes)


def line_ends(plan: Plan) -> dict[str, str]:
    """Return what the ends of the drawn line are called, as ``a`` and ``b``: where the stakes stand off it A and B are
    the stakes, and the ends of the line, which are the concrete's corners, A0 and B0."""
    return {end.lower(): f"{end}0" if plan.layout.job.outward else end for end in ("A", "B")}


def is_wall(plan: Plan) -> bool:
    """Tell whether a wall is poured."""
    return plan.said.slab.is_wall


def is_designed(plan: Plan) -> bool:
    """Tell whether no board on stakes holds the concrete: its forms are designed."""
    return is_wall(plan) or plan.said.slab.is_deep


def slab_of(plan: Plan, wider: float = 0.0) -> Slab | Taper | None:
    """Return the slab of a plan as it is built, its width changing or not, wider all along by so much, metres, off the
    same line; ``None`` where there is none."""
    if plan.width is None or plan.edge is None or plan.slab is None:
        return None
    try:
        if plan.taper is not None:
            made = plan.taper
            return Taper(made.radius, made.first + wider, made.last + wider, made.angle, made.lies)
        return Slab.along(plan.line, plan.width + wider, LIES[plan.edge])
    except ValueError:
        return None


def plan_of(layout: Layout, said: Forming) -> Plan:
    """Return the plan of a layout."""
    edge = edge_of(said.edge, layout.side, layout.job.drawn_to)
    if said.slab.asks_what:
        return Plan(layout, said, layout.job.shown, edge, None, None, False)
    if said.slab.fills:  # the line is the concrete's own edge: the middle of a work can't be that
        filled = filled_of(layout, said) if layout.job.drawn_to != "centre" else None
        no_sides = said.slab.sides is not None and not takes_sides(layout.drawn)
        return Plan(layout, said, layout.job.shown, "outside" if filled else None, None, None, False, filled, no_sides)
    width, far = layout.job.width, said.slab.far_width
    slab, taper, no_inner = None, None, False
    if width is not None and edge is not None:
        try:
            if far is not None and far != width:
                taper = Taper(layout.drawn.radius, width, far, 2 * layout.drawn.half_angle, LIES[edge])
            slab = Slab.along(layout.drawn, width, LIES[edge])
        except ValueError:
            slab, taper, no_inner = None, None, True
    built = taper or slab
    return Plan(layout, _outer(layout, said, built) if built else said, layout.job.shown, edge, slab, taper, no_inner)


def _outer(layout: Layout, said: Forming, slab: Slab | Taper) -> Forming:
    """What is said, with an apron that is given along the drawing's line as it lies along the outer form: every part
    reads that alone. Past an end it is as far past it."""
    apron = said.slab.apron
    if apron is None or not apron.on_line or layout.job.line is not None:  # along several pieces it lies on them anyhow
        return said
    length = layout.drawn.arc_length

    def outer(at: float) -> float:
        return along(slab, "outside", min(at / length, 1.0)) + max(0.0, at - length)

    moved = ApronSaid(outer(apron.start), outer(apron.end), apron.thickness, apron.on_line, apron.said)
    made = SlabSaid(**{**vars(said.slab), "apron": moved})
    return Forming(said.edge, made, said.board, said.joints, said.grade)


def filled_of(layout: Layout, said: Forming) -> Filled | None:
    """Return what fills the curve, with its straight sides where some are said; ``None`` where none run back from
    it."""
    sides = said.slab.sides
    if sides is None:
        return Segment(layout.drawn)
    return (
        Pad(layout.drawn, sides, said.slab.both_ends, said.slab.back == "against")
        if takes_sides(layout.drawn)
        else None
    )


def edge_of(said: str | None, side: str | None, drawn_to: str | None) -> str | None:
    """Return where the line runs in the slab: ``outside``, ``inside``, ``centre``, or ``None`` where nothing says it.

    A hand is that of somebody who walks from A to B: where the curve is on his left, his left edge is the outside one.
    A radius that is drawn to the center line of the work says it, too; where the job says otherwise, nothing does.
    """
    if drawn_to == "centre":
        return drawn_to if said in (None, drawn_to) else None
    return of_curve(said, side)


def of_curve(said: str | None, side: str | None) -> str | None:
    """Return which edge of a curve is said, ``outside`` or ``inside``; ``centre`` stays what it is.

    A hand is that of somebody who walks from A to B. ``None`` where nothing is said, or the curve's hand isn't known.
    """
    if said in ("left", "right"):
        return None if side is None else "outside" if said == side else "inside"
    return said
