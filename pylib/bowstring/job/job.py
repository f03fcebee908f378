"""A job read: every value checked, in metres, degrees and names, with how each was read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from bowstring.errors import bad
from bowstring.geometry.given import Given
from bowstring.geometry.plane import Point
from bowstring.job.arc_given import ArcGiven, read_arc
from bowstring.job.forming import KEYS as FORMING_KEYS
from bowstring.job.forming import Forming, read_forming
from bowstring.job.found import Found, read_found
from bowstring.job.got import Got, read_got
from bowstring.job.hand import read_hand
from bowstring.job.landmarks import LANDMARK_LIMIT, read_ends
from bowstring.job.reader import Reader, Reading
from bowstring.job.record import Record, read_record
from bowstring.job.site import KEYS as SITE_KEYS
from bowstring.job.site import Site, read_site
from bowstring.job.terms import OTHER, RECORD_KEYS
from bowstring.methods.ends import STARTS
from bowstring.methods.halving import MOST_LEVELS
from bowstring.methods.meant import USUAL_LEVELS
from bowstring.units.lengths import UNITS
from bowstring.units.tape import Tape, make_tape

if TYPE_CHECKING:  # few jobs have a line
    from bowstring.job.line import LineSaid

VERSION = 1
"""The version of the job's form."""

KEYS = (
    "bowstring", "title", "note", "unit", "mark", "arc", "line", "at", "station", "ends", "side", "turn", "offset",
    "toward", "tolerance", "fair", "spacing", "levels", "drawn_to", "driven", "diameter", "width", "start", "ties",
    "found", "got", "greater",
    *SITE_KEYS, *FORMING_KEYS, *RECORD_KEYS,
)  # fmt: skip

TOWARD = ("centre", "outside")
DRAWN_TO = ("face", "back", "centre", "flow line", "lip", "unsure")
DRIVEN = ("pin", "marked", "hub", "board")

THICKEST_PIN = 0.06
"""Metres (some 2-3/8 in): nobody drives a thicker pin to mark a line (common practice, no source)."""

TITLE_LIMIT, NOTE_LIMIT = 80, 280
"""Most characters of the free texts."""


@dataclass(frozen=True)
class Tie:
    """A distance in metres from an end to something that stays."""

    to: str
    distance: float


@dataclass(frozen=True)
class Job:
    """A job in metres and degrees; see the job's table in DEVELOPERS.md for each key's meaning.

    ``outward`` is the offset in metres, positive away from the centre, 0 without one; ``side`` is the hand that the
    job's ``side`` or ``turn`` says, for somebody at A who faces B, ``None`` when neither does; ``sides``: the taped
    distances A-C, C-B and A-B; ``diameter``: metres, the pin's, ``width``: the work's, where the job says them;
    ``fair``: metres that a stake may be off the mid-ordinate over its two neighbours, half the tolerance where the job
    doesn't say it. ``tape`` is the job's own and decides; ``shown`` is the one of whoever reads it, by which lengths
    are written and taped. No job and no link says that one. ``line``: its pieces, one of whose arcs, the piece ``at``
    (from 0), is the job's arc; ``None`` for an arc alone. ``station``: metres, of the line's start, or of A
    where there is no line; ``None`` where the job doesn't say it.
    """

    title: str
    note: str
    tape: Tape
    shown: Tape
    line: LineSaid | None
    at: int
    station: float | None
    givens: tuple[Given, ...]
    points: tuple[Point, Point, Point] | None
    sides: tuple[float, float, float] | None
    greater: bool
    ends: Mapping[str, str]
    side: str | None
    outward: float
    tolerance: float | None
    fair: float | None
    spacing: float | None
    levels: int | None
    usual_levels: bool
    drawn_to: str | None
    driven: str
    diameter: float | None
    width: float | None
    start: str
    ties: Mapping[str, tuple[Tie, ...]]
    found: Found | None
    got: Mapping[str, Got]
    site: Site
    forming: Forming
    record: Record
    readings: tuple[Reading, ...]

    @property
    def mark_shown(self) -> str:
        """The mark that the job is held to, in the unit in which it is shown."""
        return self.tape.show_mark() if self.shown == self.tape else self.shown.show_small(self.tape.mark)


def read_job(job: object, shown: str | None = None) -> Job:
    """Return a job read and checked, value by value; ``shown``: the unit of whoever reads it, where it's another one.

    Raises ``BadJob`` for the first thing that can't be used. Whether the givens make an arc is not asked here.

    >>> job = read_job({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}})
    >>> [(given.field, given.value) for given in job.givens]
    [('chord', 11.5824), ('sagitta', 1.6002)]
    """
    if not isinstance(job, Mapping):
        raise bad("job", "job.not_an_object")
    version = job.get("bowstring", VERSION)
    if isinstance(version, bool) or version != VERSION:
        raise bad("bowstring", "job.version", version=VERSION)
    unit = job.get("unit", "ft-in")
    if not isinstance(unit, str) or unit not in UNITS:
        raise bad("unit", "job.choice", choices=", ".join(UNITS))
    tape = make_tape(unit, job["mark"]) if "mark" in job else make_tape(unit, None)
    seen = tape.seen_in(shown)
    reader = Reader(job, tape, KEYS, shown=seen)
    curve = _curve(reader)
    arc = curve.given
    outward = _outward(reader)
    driven = reader.choice("driven", DRIVEN) or DRIVEN[0]
    tolerance = reader.length("tolerance", bare=False)
    fair = reader.length("fair", bare=False)
    return Job(
        title=reader.text("title", TITLE_LIMIT),
        note=reader.text("note", NOTE_LIMIT, lines=True),
        tape=tape,
        shown=seen,
        line=curve.line,
        at=curve.at,
        station=reader.station("station"),
        givens=arc.givens,
        points=arc.points,
        sides=arc.sides,
        greater=curve.greater,
        ends=read_ends(reader),
        side=curve.side,
        outward=outward,
        tolerance=tolerance,
        fair=tolerance / 2 if fair is None and tolerance is not None else fair,
        spacing=reader.length("spacing"),
        levels=_levels(reader),
        usual_levels=reader.job.get("levels") == USUAL_LEVELS,
        drawn_to=reader.choice("drawn_to", DRAWN_TO),
        driven=driven,
        diameter=_diameter(reader, driven),
        width=reader.length("width"),
        start=reader.choice("start", STARTS) or curve.start,
        ties=_read_ties(reader),
        found=read_found(reader),
        got=read_got(reader),
        site=read_site(reader, tape),
        forming=read_forming(reader),
        record=read_record(reader),
        readings=tuple(reader.readings),
    )


@dataclass(frozen=True)
class _Curve:
    """What the job says of the arc that is staked: its own one, or a piece of its line."""

    given: ArcGiven
    greater: bool
    side: str | None
    start: str = STARTS[0]
    line: LineSaid | None = None
    at: int = 0


def _curve(reader: Reader) -> _Curve:
    if "line" not in reader.job:
        if "at" in reader.job:
            raise bad("at", "line.at_alone")
        return _Curve(read_arc(reader), _greater(reader), read_hand(reader))
    from bowstring.job.line import read_line

    line = read_line(reader)
    at, piece = line.staked
    side = None if piece.turn is None else OTHER[piece.turn]  # who walks a curve to the left has it on his right
    # What stands before it on the line is its tangent at A, but where it kinks off.
    tangent = at > 0 and piece.kink is None
    return _Curve(piece.given, piece.greater, side, STARTS[1] if tangent else STARTS[0], line, at)


def _greater(reader: Reader) -> bool:
    arc = reader.inside("arc", None)
    here, there = reader.flag("greater"), arc.flag("greater") if arc else None
    if here is not None and there is not None and here != there:
        raise bad("greater", "job.greater_twice")
    return bool(here or there)


def _outward(reader: Reader) -> float:
    toward = reader.choice("toward", TOWARD)
    offset = reader.length("offset", zero=True)
    if offset is None and toward is not None:
        raise bad("offset", "job.toward_alone")
    if offset and toward is None:
        raise bad("toward", "job.offset_alone")
    return (offset or 0.0) * (-1 if toward == "centre" else 1)


def _levels(reader: Reader) -> int | None:
    if "levels" not in reader.job:
        return None
    levels = reader.job["levels"]
    if levels == USUAL_LEVELS:
        return None
    if isinstance(levels, float) and levels.is_integer():
        levels = int(levels)
    if not isinstance(levels, int) or isinstance(levels, bool) or not 1 <= levels <= MOST_LEVELS:
        raise bad("levels", "job.levels", most=MOST_LEVELS)
    return levels


def _diameter(reader: Reader, driven: str) -> float | None:
    diameter = reader.length("diameter", bare=False)
    if diameter is None:
        return None
    if driven != "pin":
        raise bad("diameter", "job.diameter_of_pin")
    if diameter > THICKEST_PIN:
        raise bad("diameter", "job.thick_pin", most=reader.tape.both(THICKEST_PIN))
    return diameter


def _read_ties(reader: Reader) -> dict[str, tuple[Tie, ...]]:
    ties = reader.inside("ties", ("A", "B"))
    read: dict[str, tuple[Tie, ...]] = {}
    for end in ("A", "B"):
        if ties is None or end not in ties.job:
            continue
        rows = []
        for number, row in enumerate(ties.items(end, 2)):
            tie = ties.within(f"{end}[{number}]", row, ("to", "distance"))
            to = tie.text("to", LANDMARK_LIMIT)
            distance = tie.length("distance")
            if not to or distance is None:
                raise bad(tie.field("to" if not to else "distance"), "job.tie_half")
            rows.append(Tie(to, distance))
        read[end] = tuple(rows)
    return read
