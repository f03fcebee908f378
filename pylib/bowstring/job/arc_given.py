"""What a job's ``arc`` gives, under the contract's own names or a drawing's: measures, points or three sides."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from bowstring.errors import bad
from bowstring.geometry.given import ANGLES, FIELDS, Given
from bowstring.geometry.plane import Point
from bowstring.job.letters import without_letters
from bowstring.job.reader import Reader, Reading
from bowstring.job.terms import DEGREE_BY
from bowstring.units.angles import both_angles, read_angle

ALIASES = {
    "delta": "central_angle",
    "rise": "sagitta",
    "mid_ordinate": "sagitta",
    "middle_ordinate": "sagitta",
    "bow": "sagitta",
}
"""Other names of a measure as drawings have them, each with the contract's own."""

WHOLE = {"points": "arc.beside_points", "three_sides": "arc.beside_sides"}
"""What settles the arc alone, with the refusal of anything beside it."""


@dataclass(frozen=True)
class ArcGiven:
    """What a job gives of its arc: two or more measures, three points, or the sides A-C, C-B and A-B in metres."""

    givens: tuple[Given, ...] = ()
    points: tuple[Point, Point, Point] | None = None
    sides: tuple[float, float, float] | None = None


def named_plainly(arc: Mapping[Any, object], place: str = "arc") -> dict[object, object]:
    """Return a job's arc under the contract's own names; raises ``BadJob`` where one measure stands there twice.

    >>> named_plainly({"chord": "38 ft", "rise": "5 ft"})
    {'chord': '38 ft', 'sagitta': '5 ft'}
    """
    named: dict[object, object] = {}
    first: dict[object, object] = {}
    for key, value in arc.items():
        name = ALIASES.get(key, key) if isinstance(key, str) else key
        if name in named:
            raise bad(f"{place}.{key}", "arc.twice", one=first[name], other=key)
        named[name], first[name] = value, key
    if "radius" in named and "diameter" in named:
        raise bad(f"{place}.diameter", "arc.twice", one="radius", other="diameter")
    return named


def read_arc(reader: Reader) -> ArcGiven:
    """Return what a job, or a piece of its line, gives of its arc; raises ``BadJob``."""
    arc = reader.inside("arc", (*FIELDS, *ALIASES, "degree_by", *WHOLE, "greater"))
    if arc is None:
        raise bad(reader.field("arc"), "arc.missing")
    arc.job = named_plainly(arc.job, arc.place)
    for whole, refusal in WHOLE.items():
        if whole in arc.job:
            beside = [name for name in (*FIELDS, *WHOLE) if name in arc.job and name != whole]
            if beside:
                raise bad(arc.field(beside[0]), refusal)
    by_chord = _degree_by(arc)
    if "points" in arc.job:
        return ArcGiven(points=_points(arc))
    if "three_sides" in arc.job:
        return ArcGiven(sides=_sides(arc))
    return ArcGiven(tuple(_given(arc, name, by_chord) for name in FIELDS if name in arc.job))


def _degree_by(arc: Reader) -> bool:
    by = arc.choice("degree_by", DEGREE_BY)
    if by is not None and "degree" not in arc.job:
        raise bad(arc.field("degree_by"), "arc.degree_by_alone")
    return by == "chord"


def _given(arc: Reader, name: str, by_chord: bool) -> Given:
    field, value = arc.field(name), without_letters(arc.job[name], name, arc.field(name))
    if name not in ANGLES:
        length = arc.read(field, value, typed=arc.job[name])
        return Given(name, length.metres, length.place)
    angle = read_angle(value, field)
    if name == "central_angle" and angle.degrees >= 360:
        raise bad(field, "arc.full_circle")
    chord_degree = name == "degree" and by_chord
    if chord_degree and angle.degrees > 180:
        raise bad(field, "arc.degree_by_chord")
    arc.readings.append(Reading(field, str(arc.job[name]).strip(), lambda: both_angles(angle.degrees)))
    return Given(name, angle.degrees, angle.place, chord_degree)


def _points(arc: Reader) -> tuple[Point, Point, Point]:
    points = []
    for number, row in enumerate(arc.items("points", 3)):
        field = f"points[{number}]"
        x, y = arc.within(field, row).items(None, 2)
        points.append(Point(arc.coordinate(f"{field}[0]", x), arc.coordinate(f"{field}[1]", y)))
    return points[0], points[1], points[2]


def _sides(arc: Reader) -> tuple[float, float, float]:
    rows = arc.items("three_sides", 3)
    one, two, three = (arc.value(f"three_sides[{number}]", row) for number, row in enumerate(rows))
    return one, two, three
