"""The parts of a job that tell of the site: the method asked for, tape and hands, what is in the way, known marks, the
slope, and how exactly the crew works."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from bowstring.errors import bad
from bowstring.geometry.plane import Point
from bowstring.job.names import NAME_LIMIT, like_a_mark, name_of
from bowstring.job.obstacles import Obstacle, read_obstacles
from bowstring.job.reader import Reader
from bowstring.job.terms import CLASSES, ERRORS, MOST_KNOWN, TANGENT_FROM
from bowstring.methods.catalogue import BY_NAME
from bowstring.methods.meant import USUAL_LEVELS
from bowstring.methods.stands import Stand
from bowstring.units.angles import read_angle
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape
from bowstring.words import say

USUAL_TAPE = 100 * FOOT
"""Metres (100 ft)."""

MOST_STATIONS = 500
STEEPEST = 50.0
"""Percent: on steeper ground nobody sets forms with a tape and a string."""

LOOSEST_ANGLE = 5.0
"""Degrees: nobody who turns an angle is off by more; what is isn't a deviation but another angle."""

ERROR_SIZES = {"read": 0.1, "stake": 0.1, "line": 0.1}
"""Metres: a crew that is off by more (4 in at every reading) works by pacing."""

LEAST_PARALLEL = 0.05
"""Metres (2 in): a string nearer to the chord than this is the chord's own, or no length at all."""

_PLAIN = re.compile(r"[-+]?([0-9]+\.?[0-9]*|\.[0-9]+)")
"""A number as a crew writes it."""


@dataclass(frozen=True)
class Known:
    """A mark that exists, and how exactly its place is known: one standard deviation in x and in y, metres."""

    name: str
    point: Point
    sigma: float


@dataclass(frozen=True)
class Site:
    """What a job says of the site and of the way it is worked on; lengths in metres.

    Attributes:
        method: the method asked for, ``None`` where the job leaves that to the tool.
        centre_reachable: somebody said that a peg can stand at the arc's centre.
        tape_length, tape_class: the longest tape and its accuracy class.
        hands: how many people there are.
        room: how far there is room: ``behind`` the chord, ``inside`` and ``outside`` the curve, where that is said.
        along, across: the ground's fall in percent, from A to B and away from the chord toward the curve's side.
        errors: standard deviations that stand in for the usual ones, by name: metres, ``scale`` a part of one,
            ``angle`` degrees.
        halve_first: how often the arc is halved before ordinates are taken from each smaller chord.
        parallel: metres from the chord toward the curve, negative behind it, of a string parallel to it that ordinates
            may be taken from.
        control: two marks whose coordinates the drawing gives, with those; and whether they are northing and easting.
    """

    method: str | None = None
    centre_reachable: bool = False
    tape_length: float = USUAL_TAPE
    tape_class: str = "III"
    hands: int = 2
    obstacles: tuple[Obstacle, ...] = ()
    room: Mapping[str, float] = field(default_factory=dict)
    known: tuple[Known, ...] = ()
    along: float = 0.0
    across: float = 0.0
    errors: Mapping[str, float] = field(default_factory=dict)
    tangent_from: str = TANGENT_FROM[2]
    tapes_from: tuple[str, str] = ("A", "B")
    control: tuple[tuple[str, Point], tuple[str, Point]] | None = None
    north_first: bool = False
    stations: tuple[float, ...] = ()
    first_gap: float | None = None
    halve_first: int = 0
    parallel: float | None = None

    def by(self, method: str, halve_first: int) -> Site:
        """Return the same site with this method, the arc halved so often before."""
        return Site(**{**vars(self), "method": method, "halve_first": halve_first})


KEYS = (
    "method", "centre", "tape", "hands", "ground", "room", "known", "fall", "errors", "tangent_from", "tapes_from",
    "control", "stations", "first_gap", "halve_first", "parallel",
)  # fmt: skip


def read_site(reader: Reader, tape: Tape) -> Site:
    """Return what a job says of the site; raises ``BadJob``."""
    known = _known(reader)
    names = {"A", "B", *(mark.name for mark in known)}
    length, klass = _tape(reader)
    along, across = _fall(reader)
    control, north_first = _control(reader, names)
    return Site(
        method=reader.choice("method", tuple(BY_NAME)),
        centre_reachable=reader.choice("centre", ("reachable",)) is not None,
        tape_length=length,
        tape_class=klass or ("III" if tape.unit == "ft-in" else "II"),
        hands=_whole(reader, "hands", 1, 20) or 2,
        obstacles=read_obstacles(reader),
        room=_room(reader),
        known=known,
        along=along,
        across=across,
        errors=_errors(reader),
        tangent_from=reader.choice("tangent_from", TANGENT_FROM) or TANGENT_FROM[2],
        tapes_from=_two_marks(reader, names),
        control=control,
        north_first=north_first,
        stations=_stations(reader),
        first_gap=_first_gap(reader),
        halve_first=_halve_first(reader),
        parallel=_parallel(reader),
    )


def _tape(reader: Reader) -> tuple[float, str | None]:
    tape = reader.inside("tape", ("length", "class"))
    if tape is None:
        return USUAL_TAPE, None
    return tape.length("length") or USUAL_TAPE, tape.choice("class", CLASSES)


def _number(reader: Reader, name: str, low: float, high: float, *, percent: bool = False) -> float | None:
    """Return a plain number, or ``None`` when it isn't there; a sign for percent only where percent is meant."""
    value = reader.job.get(name)
    if isinstance(value, str):
        text = value.strip()
        if not _PLAIN.fullmatch(text.removesuffix("%").rstrip() if percent else text):
            raise bad(reader.field(name), "job.number", low=f"{low:g}", high=f"{high:g}")
    return reader.number(name, low, high)


def _whole(reader: Reader, name: str, low: int, high: int) -> int | None:
    number = _number(reader, name, low, high)
    if number is not None and not number.is_integer():
        raise bad(reader.field(name), "site.whole")
    return None if number is None else int(number)


def _room(reader: Reader) -> dict[str, float]:
    names = ("behind", "inside", "outside")
    room = reader.inside("room", names)
    if room is None:
        return {}
    read = {name: room.length(name, zero=True) for name in names}
    return {name: length for name, length in read.items() if length is not None}


def _known(reader: Reader) -> tuple[Known, ...]:
    marks: list[Known] = []
    names: set[str] = set()
    for number, row in enumerate(reader.rows("known", MOST_KNOWN)):
        one = reader.within(f"known[{number}]", row, ("name", "x", "y", "sigma"))
        name, seen = name_of(one)
        if not seen or (name not in ("A", "B") and like_a_mark(seen)):
            raise bad(one.field("name"), "site.known_name", name=seen)
        if seen.casefold() in names:
            raise bad(one.field("name"), "site.known_twice", name=seen)
        names.add(seen.casefold())
        for axis in ("x", "y"):
            if axis not in one.job:
                raise bad(one.field(axis), "site.known_place", name=name)
        point = Point(one.coordinate("x", one.job["x"]), one.coordinate("y", one.job["y"]))
        marks.append(Known(name, point, one.length("sigma", zero=True) or 0.0))
    return tuple(marks)


def _fall(reader: Reader) -> tuple[float, float]:
    fall = reader.inside("fall", ("along", "across"))
    if fall is None:
        return 0.0, 0.0
    return (
        _number(fall, "along", -STEEPEST, STEEPEST, percent=True) or 0.0,
        _number(fall, "across", -STEEPEST, STEEPEST, percent=True) or 0.0,
    )


def _errors(reader: Reader) -> dict[str, float]:
    errors = reader.inside("errors", ERRORS)
    read: dict[str, float] = {}
    for name in ERRORS:
        if errors is None or name not in errors.job:
            continue
        if name == "scale":
            value = _number(errors, name, 0.0, 0.1)
        elif name == "angle":
            value = _error_angle(errors)
        else:
            # A bare 0.125 would be an inch and a half in feet and inches: there only nothing goes without unit.
            value = errors.length(name, zero=True, bare=_is_nothing(errors.job[name]))
            if value is not None and value > ERROR_SIZES[name]:
                raise bad(errors.field(name), "site.error_large", most=reader.tape.both(ERROR_SIZES[name]))
        read[name] = value or 0.0
    return read


def _is_nothing(typed: object) -> bool:
    """Whether a value is a plain 0, as a number or as text."""
    if isinstance(typed, str):
        return bool(_PLAIN.fullmatch(typed.strip())) and float(typed) == 0
    return isinstance(typed, int | float) and not isinstance(typed, bool) and typed == 0


def _error_angle(errors: Reader) -> float:
    typed = errors.job["angle"]
    if _is_nothing(typed):
        return 0.0  # an angle of nothing is no angle elsewhere
    angle = read_angle(typed, errors.field("angle")).degrees
    if angle > LOOSEST_ANGLE:
        raise bad(errors.field("angle"), "site.angle_large", most=f"{LOOSEST_ANGLE:g}")
    return angle


def _two_marks(reader: Reader, names: set[str]) -> tuple[str, str]:
    if "tapes_from" not in reader.job:
        return "A", "B"
    first, second = reader.items("tapes_from", 2)
    for number, mark in enumerate((first, second)):
        if not isinstance(mark, str) or mark not in names:
            raise bad(f"tapes_from[{number}]", "site.no_such_mark", known=", ".join(sorted(names)))
    if first == second:
        raise bad("tapes_from[1]", "site.mark_twice", mark=first)
    return str(first), str(second)


def _control(reader: Reader, names: set[str]) -> tuple[tuple[tuple[str, Point], tuple[str, Point]] | None, bool]:
    """Return the two control marks with the drawing's coordinates, and whether those are northing and easting."""
    group = reader.inside("control", ("marks", "axes"))
    if group is None:
        return None, False
    north_first = group.choice("axes", ("x-y", "n-e")) == "n-e"
    rows: list[tuple[str, Point]] = []
    for number, row in enumerate(group.items("marks", 2)):
        one = group.within(f"marks[{number}]", row, ("mark", "x", "y", "n", "e"))
        mark = one.text("mark", NAME_LIMIT)
        if mark not in names:
            raise bad(one.field("mark"), "site.no_such_mark", known=", ".join(sorted(names)))
        pair = ("n", "e") if north_first else ("x", "y")
        other = next((axis for axis in ("x", "y", "n", "e") if axis in one.job and axis not in pair), None)
        if other:
            raise bad(one.field(other), "site.control_axes", axes=say("and", first=pair[0], second=pair[1]))
        for axis in pair:
            if axis not in one.job:
                raise bad(one.field(axis), "site.control_place", axes=say("and", first=pair[0], second=pair[1]))
        first, second = (one.coordinate(axis, one.job[axis]) for axis in pair)
        rows.append((mark, Point(second, first) if north_first else Point(first, second)))
    if rows[0][0] == rows[1][0]:
        raise bad("control.marks[1].mark", "site.mark_twice", mark=rows[0][0])
    return (rows[0], rows[1]), north_first


def _stations(reader: Reader) -> tuple[float, ...]:
    rows = reader.rows("stations", MOST_STATIONS)
    if "stations" in reader.job and not rows:
        raise bad(reader.field("stations"), "site.stations_none")
    return tuple(reader.value(f"stations[{number}]", row) for number, row in enumerate(rows))


def _could(reader: Reader, wish: Callable[[Stand], bool]) -> bool:
    """Whether a wish means anything for the method said; where none is, one is taken for which it does."""
    said = reader.job.get("method")
    return said is None or wish(BY_NAME[str(said)].stand)


def _first_gap(reader: Reader) -> float | None:
    gap = reader.length("first_gap")
    if gap is None:
        return None
    if "spacing" not in reader.job or "levels" in reader.job:
        raise bad("first_gap", "site.first_gap_alone")
    if not _could(reader, lambda stand: stand.first_gap):
        raise bad("first_gap", "site.first_gap_method")
    return gap


def _halve_first(reader: Reader) -> int:
    times = _whole(reader, "halve_first", 0, 6) or 0
    if not times:
        return 0
    if not _could(reader, lambda stand: stand.halve_first):
        raise bad("halve_first", "site.halve_first_method")
    if "stations" in reader.job:
        raise bad("halve_first", "site.halve_first_stations")
    levels = reader.job.get("levels", USUAL_LEVELS)
    if levels != USUAL_LEVELS and times > float(str(levels)):
        raise bad("halve_first", "site.halve_first_levels")
    return times


def _parallel(reader: Reader) -> float | None:
    if "parallel" not in reader.job:
        return None
    distance = reader.coordinate("parallel", reader.job["parallel"])
    if abs(distance) < LEAST_PARALLEL:
        raise bad("parallel", "site.parallel_close", least=reader.tape.both(LEAST_PARALLEL))
    return distance
