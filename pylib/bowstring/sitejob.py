"""The parts of a job that tell of the site: the method asked for, tape and hands, what is in the way, known marks, the
slope, and how exactly the crew works."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field

from bowstring.angles import read_angle
from bowstring.errors import bad
from bowstring.methods.catalogue import BY_NAME, USUAL
from bowstring.methods.setting import TANGENT_FROM
from bowstring.plane import Point
from bowstring.reader import Reader
from bowstring.sizes import FOOT
from bowstring.tape import Tape
from bowstring.walks.reach import Obstacle

CLASSES = ("I", "II", "III")
STOPS = ("tape", "feet")
ERRORS = ("read", "scale", "stake", "line", "angle")
USUAL_TAPE = 100 * FOOT
"""Metres (100 ft)."""

MOST_OBSTACLES, MOST_CORNERS, MOST_KNOWN, MOST_STATIONS = 40, 60, 20, 500
NAME_LIMIT = 30
STEEPEST = 50.0
"""Percent: on steeper ground nobody sets forms with a tape and a string."""

_TAKEN = re.compile(r"[A-Z]|[A-Z][0-9]+|T[AB]|(mid|foot|tan|ahead)( .*)?", re.IGNORECASE)
"""Names that marks of the construction have, or might have."""


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
        method: the method asked for.
        tape_length, tape_class: the longest tape and its accuracy class.
        hands: how many people there are.
        room: how far there is room: ``behind`` the chord, ``inside`` and ``outside`` the curve, where that is said.
        along, across: the ground's fall in percent, from A to B and away from the chord toward the curve's side.
        errors: standard deviations that stand in for the usual ones, by name: metres, ``scale`` a part of one,
            ``angle`` degrees.
        halve_first: how often the arc is halved before ordinates are taken from each smaller chord.
        control: two marks whose coordinates the drawing gives, with those; and whether they are northing and easting.
    """

    method: str = USUAL
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


KEYS = (
    "method", "tape", "hands", "ground", "room", "known", "fall", "errors", "tangent_from", "tapes_from", "control",
    "stations", "first_gap", "halve_first",
)  # fmt: skip


def read_site(reader: Reader, tape: Tape) -> Site:
    """Return what a job says of the site; raises ``BadJob``."""
    known = _known(reader)
    names = {"A", "B", *(mark.name for mark in known)}
    length, klass = _tape(reader)
    along, across = _fall(reader)
    control, north_first = _control(reader, names)
    return Site(
        method=reader.choice("method", tuple(BY_NAME)) or USUAL,
        tape_length=length,
        tape_class=klass or ("III" if tape.unit == "ft-in" else "II"),
        hands=_hands(reader),
        obstacles=_obstacles(reader),
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
    )


def _tape(reader: Reader) -> tuple[float, str | None]:
    tape = reader.inside("tape", ("length", "class"))
    if tape is None:
        return USUAL_TAPE, None
    return tape.length("length") or USUAL_TAPE, tape.choice("class", CLASSES)


def _hands(reader: Reader) -> int:
    hands = reader.number("hands", 1, 20)
    if hands is None:
        return 2
    if not hands.is_integer():
        raise bad("hands", "site.hands")
    return int(hands)


def _rows(reader: Reader, name: str, most: int) -> list[object]:
    rows = reader.job.get(name, [])
    if not isinstance(rows, list | tuple) or len(rows) > most:
        raise bad(reader.field(name), "site.rows", most=most)
    return list(rows)


def _obstacles(reader: Reader) -> tuple[Obstacle, ...]:
    obstacles = []
    for number, row in enumerate(_rows(reader, "ground", MOST_OBSTACLES)):
        one = reader.within(f"ground[{number}]", row, ("name", "stops", "outline"))
        name = one.text("name", NAME_LIMIT)
        stops = one.choice("stops", STOPS)
        if stops is None:
            raise bad(one.field("stops"), "site.stops_unsaid")
        corners = _rows(one, "outline", MOST_CORNERS)
        if len(corners) < 3:
            raise bad(one.field("outline"), "site.outline_short")
        outline = tuple(_point(one, f"outline[{corner}]", pair) for corner, pair in enumerate(corners))
        obstacles.append(Obstacle(name or f"{number + 1}", stops == "tape", outline))
    return tuple(obstacles)


def _point(reader: Reader, place: str, pair: object) -> Point:
    x, y = reader.within(place, pair).items(None, 2)
    return Point(reader.coordinate(f"{place}[0]", x), reader.coordinate(f"{place}[1]", y))


def _room(reader: Reader) -> dict[str, float]:
    names = ("behind", "inside", "outside")
    room = reader.inside("room", names)
    if room is None:
        return {}
    read = {name: room.length(name, zero=True) for name in names}
    return {name: length for name, length in read.items() if length is not None}


def _known(reader: Reader) -> tuple[Known, ...]:
    marks: list[Known] = []
    for number, row in enumerate(_rows(reader, "known", MOST_KNOWN)):
        one = reader.within(f"known[{number}]", row, ("name", "x", "y", "sigma"))
        name = one.text("name", NAME_LIMIT)
        if not name or (name not in ("A", "B") and _TAKEN.fullmatch(name)):
            raise bad(one.field("name"), "site.known_name", name=name)
        if any(mark.name.casefold() == name.casefold() for mark in marks):
            raise bad(one.field("name"), "site.known_twice", name=name)
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
        fall.number("along", -STEEPEST, STEEPEST) or 0.0,
        fall.number("across", -STEEPEST, STEEPEST) or 0.0,
    )


def _errors(reader: Reader) -> dict[str, float]:
    errors = reader.inside("errors", ERRORS)
    read: dict[str, float] = {}
    for name in ERRORS:
        if errors is None or name not in errors.job:
            continue
        if name == "scale":
            value = errors.number(name, 0.0, 0.1)
        elif name == "angle":
            text = errors.job[name]
            nothing = not isinstance(text, bool | str) and text == 0
            value = 0.0 if nothing else read_angle(text, errors.field(name)).degrees
        else:
            value = errors.length(name, zero=True)
        read[name] = value or 0.0
    return read


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


def _control(
    reader: Reader, names: set[str]
) -> tuple[tuple[tuple[str, Point], tuple[str, Point]] | None, bool]:
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
        for axis in pair:
            if axis not in one.job:
                raise bad(one.field(axis), "site.control_place", axes=" and ".join(pair))
        first, second = (one.coordinate(axis, one.job[axis]) for axis in pair)
        rows.append((mark, Point(second, first) if north_first else Point(first, second)))
    if rows[0][0] == rows[1][0]:
        raise bad("control.marks[1].mark", "site.mark_twice", mark=rows[0][0])
    return (rows[0], rows[1]), north_first


def _stations(reader: Reader) -> tuple[float, ...]:
    rows = _rows(reader, "stations", MOST_STATIONS)
    return tuple(reader.value(f"stations[{number}]", row) for number, row in enumerate(rows))


def _first_gap(reader: Reader) -> float | None:
    gap = reader.length("first_gap")
    if gap is not None and ("spacing" not in reader.job or "levels" in reader.job):
        raise bad("first_gap", "site.first_gap_alone")
    return gap


def _halve_first(reader: Reader) -> int:
    times = reader.number("halve_first", 0, 6)
    if times and reader.job.get("method") != "ordinates":
        raise bad("halve_first", "site.halve_first_method")
    if times and not times.is_integer():
        raise bad("halve_first", "site.hands")
    return int(times or 0)
