"""The line itself, told: its pieces, where they meet, and where it ends."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from math import degrees
from typing import NamedTuple, Protocol

from bowstring.forming.line.edges import EdgeRun
from bowstring.forming.line.line import TEN_FEET, THREE_METRES, Join, Line
from bowstring.forming.line.pieces import Bend, Piece
from bowstring.forming.line.runs import Pose, Run
from bowstring.forming.line.slab import LineSlab
from bowstring.job.line_settled import SettledLine
from bowstring.report.forms.build import LinePart, PieceRow
from bowstring.report.forms.build_lined import (
    LinedPage,
    LinedPart,
    LinedPiece,
    LinedPoint,
    LinedRun,
    LinedShape,
    LinedStanding,
)
from bowstring.report.lined.plan import LinePlan
from bowstring.units.angles import show_dms
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape
from bowstring.words import say


class Lined(Protocol):
    """A line that is told: of a job that is laid out (``LinePlan``), or as it is typed (``LineTyped``)."""

    @property
    def settled(self) -> SettledLine:
        """What the job says of it, settled."""

    @property
    def line(self) -> Line:
        """The line itself."""

    @property
    def slab(self) -> LineSlab | None:
        """The slab along it, ``None`` where there is none."""

    @property
    def tape(self) -> Tape:
        """The one that texts are written by."""

    @property
    def asks(self) -> list[str]:
        """What the line leaves open, as questions."""

    @property
    def stationed(self) -> bool:
        """Whether a starting station is said."""

    def along(self, metres: float) -> str:
        """How far along the line a place is, as a station where the starting one is said."""


def report_line(plan: LinePlan) -> LinePart:
    """Return the answer's ``line``."""
    return {
        "pieces": [_row(piece) for piece in plan.line.pieces],
        "joins": [{"station": join.station, "kink": degrees(join.kink)} for join in plan.line.joins],
        "length": plan.line.length,
    }


def _row(piece: Piece) -> PieceRow:
    if isinstance(piece, Bend):
        return {"kind": "arc", "length": piece.length, "radius": piece.radius, "turn": piece.hand}
    return {"kind": "straight", "length": piece.length, "radius": None, "turn": None}


class Beside(NamedTuple):
    """What is told of a line beside itself: how B is set from A; where the concrete lies along the line, and along the
    staked arc; what stands in it; a wall's sizes; which ends meet concrete that stands there."""

    b_from_a: str = ""
    concrete: str = ""
    concrete_at_arc: str = ""
    standing: Sequence[LinedStanding] = ()
    wall_shown: str = ""
    against: Sequence[str] = ()


NOTHING = Beside()


def report_part(plan: Lined, pages: list[LinedPage], beside: Beside = NOTHING) -> LinedPart:
    """Return the answer's ``lined``, with the pages of its build."""
    joins = (None, *plan.line.joins)
    pieces = zip(plan.line.pieces, joins, strict=True)
    return {
        "at": plan.settled.said.at + 1,
        "length_shown": plan.tape.show_running(plan.line.length),
        "ends": ends_told(plan),
        "pieces": [_piece(plan, number, *both) for number, both in enumerate(pieces, 1)],
        "shape": _shape(plan),
        "asks": plan.asks,
        "cautions": [*cautions_of_line(plan), *(row["text"] for row in beside.standing)],
        "pages": pages,
        "b_from_a": beside.b_from_a,
        "stations_shown": _stations(plan),
        "concrete": beside.concrete,
        "concrete_at_arc": beside.concrete_at_arc,
        "standing": [*beside.standing],
        "wall_shown": beside.wall_shown,
        "against": [*beside.against],
    }


def _stations(plan: Lined) -> str:
    """The stations of the staked arc's ends, empty where the job says no starting one."""
    at = plan.settled.said.at
    if not plan.stationed:
        return ""
    first, last = (plan.along(plan.line.stations[number]) for number in (at, at + 1))
    return say("lined.staked_stations", first=first, last=last)


def name_of(plan: Lined, number: int) -> str:
    """Return what the piece ``number`` (from 1) is called."""
    piece = plan.line.pieces[number - 1]
    return say("lined.arc" if isinstance(piece, Bend) else "lined.straight", number=number)


def _piece(plan: Lined, number: int, piece: Piece, join: Join | None) -> LinedPiece:
    tape = plan.tape
    length = tape.show_running(piece.length)
    if isinstance(piece, Bend):
        shown = {"radius": tape.show(piece.radius), "angle": show_dms(degrees(abs(piece.turn)))}
        text = say("lined.arc_text", length=length, hand=say(f"hand.{piece.hand}"), **shown)
    else:
        text = length
    kinked = join is not None and not join.tangent
    return {
        "number": number,
        "kind": "arc" if isinstance(piece, Bend) else "straight",
        "turn": piece.hand if isinstance(piece, Bend) else "",
        "staked": number == plan.settled.said.at + 1,
        "name": name_of(plan, number),
        "text": text,
        "kink": degrees(join.kink) if join else 0.0,
        "kink_shown": kink_told(join) if join and kinked else "",
        "looks_shown": looks_told(plan, join) if join and kinked else "",
    }


def kink_told(join: Join) -> str:
    """Return a kink's size and its hand."""
    return say("lined.kink", angle=show_dms(degrees(abs(join.kink))), hand=say(f"hand.{_hand(join)}"))


def _hand(join: Join) -> str:
    return "left" if join.kink > 0 else "right"


def looks_told(plan: Lined, join: Join) -> str:
    """Return how far off a kink looks."""
    length, size, unit = (TEN_FEET, FOOT, "ft") if plan.tape.feet else (THREE_METRES, 1.0, "m")
    return say("lined.looks", off=plan.tape.show(join.looks(length)), length=f"{length / size:g} {unit}")


def ends_told(plan: Lined) -> str:
    """Return where the line ends, for who stands at its start and looks along the first piece, and which way it goes
    there."""
    tape, end = plan.tape, plan.line.end
    ahead, left = end.point.x, end.point.y
    side = "on" if not tape.round(abs(left)) else "left" if left > 0 else "right"
    key = f"lined.ends_{side}" if ahead >= 0 else f"lined.ends_back_{side}"
    return say(key, first=first_told(plan), ahead=tape.show(abs(ahead)), off=tape.show(abs(left)))


def first_told(plan: Lined) -> str:
    """Return along what somebody looks who stands at the start: the first piece, or an arc's tangent there."""
    return say("lined.first_arc" if isinstance(plan.line.pieces[0], Bend) else "lined.first_straight")


def _shape(plan: Lined) -> LinedShape:
    slab = plan.slab
    return {
        "line": _runs(plan.line.runs),
        "left": [] if slab is None else _runs(_edge(slab.left_edge.runs)),
        "right": [] if slab is None else _runs(_edge(slab.right_edge.runs)),
    }


def _edge(runs: Iterable[EdgeRun]) -> list[Run]:
    return [part.run for part in runs]


def _runs(runs: Iterable[Run]) -> list[LinedRun]:
    return [
        {"start": _point(run.start), "end": _point(run.end), "curvature": run.curvature, "length": run.length}
        for run in runs
    ]


def _point(place: Pose) -> LinedPoint:
    return {"x": place.point.x, "y": place.point.y}


def cautions_of_line(plan: Lined) -> list[str]:
    """Return what is doubtful: where the slab lies over itself."""
    if plan.slab is None:
        return []
    return [say("lined.overlap", first=one.first + 1, second=one.second + 1) for one in plan.slab.overlaps]


def kinks_told(plan: LinePlan) -> Iterator[str]:
    """Yield where each kink is, and how far off it looks."""
    for number, join in enumerate(plan.line.joins, 1):
        if not join.tangent:
            told = {"kink": kink_told(join), "looks": looks_told(plan, join)}
            yield say("lined.kink_at", station=plan.along(join.station), piece=number + 1, **told)
