"""The slab that a job asks for along its line, or what is still to be said for it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

from bowstring.errors import BadJob, bad
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend
from bowstring.forming.line.slab import LineSlab
from bowstring.job.forming import Forming
from bowstring.job.line import LineSaid
from bowstring.job.line_settled import SettledLine, questions, settle_line, slab_on
from bowstring.report.forming.edge_marks import CENTER
from bowstring.report.forming.plan import EDGE, WIDTH, Plan
from bowstring.report.stations import station_shown
from bowstring.units.tape import Tape
from bowstring.words import say

HANDS = ("left", "right")


@dataclass(frozen=True)
class LinePlan:
    """What the parts of a line's build start from.

    Attributes:
        plan: that of the arc that is staked: what the job says of boards and lumber, and its tape.
        settled: the line.
        edge: where it runs in the slab: ``centre``, or it is its ``left`` or ``right`` edge; ``None`` where that isn't
            known: never assumed, but for a radius that is drawn to the center line.
        slab: between its two edges; ``None`` where the width or the edge isn't said, or where there is ``wrong``.
        wrong: why no slab of this width can follow the line.
    """

    plan: Plan
    settled: SettledLine
    edge: str | None
    slab: LineSlab | None
    wrong: BadJob | None

    @property
    def line(self) -> Line:
        """The line, in its own frame: from the origin along the x axis."""
        return self.settled.line

    @property
    def said(self) -> Forming:
        """What the job says of the slab."""
        return self.plan.said

    @property
    def tape(self) -> Tape:
        """The one that texts are written by."""
        return self.plan.tape

    @property
    def width(self) -> float | None:
        """Metres, where the job says it."""
        return self.plan.width

    @property
    def waits(self) -> tuple[str, ...]:
        """What has to be said before there is a slab: ``WIDTH``, ``EDGE``."""
        return tuple(
            what for what, there in ((WIDTH, self.width is not None), (EDGE, self.edge is not None)) if not there
        )

    @cached_property
    def asks(self) -> list[str]:
        """What the line leaves open, as questions."""
        return questions(self.settled, self.along)

    @property
    def stationed(self) -> bool:
        """Whether the job says its starting station."""
        return self.plan.layout.job.station is not None

    def along(self, metres: float) -> str:
        """Return how far along the line a place is: its station where the job says the starting one, else its length
        from the start."""
        return station_shown(self.plan.layout.job, metres) or self.tape.show_running(metres)

    @cached_property
    def middle(self) -> tuple[float, ...]:
        """How long the middle of the slab is along each piece, metres; raises ``ValueError`` where there is no slab."""
        if self.slab is None:
            raise ValueError("no slab, no middle")
        lefts, rights = self.slab.left_edge.lengths, self.slab.right_edge.lengths
        return tuple((left + right) / 2 for left, right in zip(lefts, rights, strict=True))


def line_plan_of(plan: Plan, said: LineSaid) -> LinePlan:
    """Return the plan of a line whose staked arc has a plan of its own. Raises ``BadJob`` where a piece can't be."""
    tape = plan.layout.job.tape
    settled = settle_line(said, tape.mark, plan.tape.show)
    edge, width = edge_of(plan), plan.width
    slab, wrong = None, _not_along(plan, settled.line)
    if width is not None and edge is not None and wrong is None and not plan.asks_what:
        try:
            slab = slab_of(settled, width, edge, plan.tape.show)
        except BadJob as refusal:
            wrong = refusal
    return LinePlan(plan, settled, edge, slab, wrong)


def _not_along(plan: Plan, line: Line) -> BadJob | None:
    """Return what the job says of its slab that nobody builds along a line of several pieces."""
    far = plan.said.slab.far_width
    if far is not None and far != plan.width:
        return bad("slab.end_width", "line.no_taper")
    if not plan.said.slab.fills:
        return None
    if sum(isinstance(piece, Bend) for piece in line.pieces) == 1:  # its straights are meant as the pad's sides
        return bad("slab.fills", "line.no_fill_sides", panel=say("numbers.line_slab"))
    return bad("slab.fills", "line.no_fill")


def edge_of(plan: Plan) -> str | None:
    """Return where a line runs in its slab: ``centre``, ``left`` or ``right`` for who walks along it, or ``None``.

    Inside and outside of the curve say nothing of a line that bends both ways.
    """
    return edge_in(plan.said.edge, plan.layout.job.drawn_to)


def edge_in(said: str | None, drawn: str | None) -> str | None:
    """Return the same, of where the slab is said to lie and what the drawing's line is."""
    if drawn == CENTER:
        return drawn if said in (None, drawn) else None
    return said if said in (CENTER, *HANDS) else None


def slab_of(settled: SettledLine, width: float, edge: str, show: Callable[[float], str] = str) -> LineSlab:
    """Return the slab of a width in metres along a line that runs at ``edge`` in it; raises as ``slab_on``."""
    left, right = {CENTER: (width / 2, width / 2), "left": (0.0, width), "right": (width, 0.0)}[edge]
    return slab_on(settled, left, right, show)
