"""What is in the way on the site: obstacles, and how a job gives them."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.geometry.outlines import Circle, fault_of
from bowstring.geometry.plane import Point
from bowstring.job.names import like_a_mark, name_of
from bowstring.job.reader import Reader
from bowstring.job.terms import MOST_CORNERS, MOST_OBSTACLES, STOPS
from bowstring.words import say

LEAST_DIAMETER = 0.0127
"""Metres (1/2 in): what is thinner than a pin is in nobody's way."""


@dataclass(frozen=True)
class Obstacle:
    """Something in the way: its outline in metres in the frame of the chord, and whether it stops a tape too.

    Its outline is a ``Circle`` where the job gave its middle and its diameter.
    """

    name: str
    stops_tape: bool
    outline: tuple[Point, ...]

    @property
    def circle(self) -> Circle | None:
        """The circle that it is, if it is one."""
        return self.outline if isinstance(self.outline, Circle) else None

    def box(self) -> tuple[float, float, float, float]:
        """Return its least and greatest x, then y."""
        xs, ys = [p.x for p in self.outline], [p.y for p in self.outline]
        return min(xs), max(xs), min(ys), max(ys)


def read_obstacles(reader: Reader) -> tuple[Obstacle, ...]:
    """Return what is in the way, in the job's order; raises ``BadJob``."""
    obstacles: list[Obstacle] = []
    names: set[str] = set()
    for number, row in enumerate(reader.rows("ground", MOST_OBSTACLES)):
        one = reader.within(f"ground[{number}]", row, ("name", "stops", "outline", "at", "diameter"))
        name, seen = name_of(one)
        if seen and like_a_mark(seen):
            raise bad(one.field("name"), "site.obstacle_name", name=seen)
        if not seen:
            name = seen = say("site.obstacle", number=number + 1)
        if seen.casefold() in names:
            raise bad(one.field("name"), "site.obstacle_twice", name=seen)
        names.add(seen.casefold())
        stops = one.choice("stops", STOPS)
        if stops is None:
            raise bad(one.field("stops"), "site.stops_unsaid")
        obstacles.append(Obstacle(name, stops == "tape", _circle(one) if _is_round(one) else _outline(one)))
    return tuple(obstacles)


def _is_round(reader: Reader) -> bool:
    """Whether an obstacle is given by its middle and its diameter; raises ``BadJob`` for an outline beside them."""
    found = [name for name in ("at", "diameter") if name in reader.job]
    if found and "outline" in reader.job:
        raise bad(reader.field(found[0]), "site.outline_and_circle")
    return bool(found)


def _circle(reader: Reader) -> Circle:
    for name in ("at", "diameter"):
        if name not in reader.job:
            raise bad(reader.field(name), "site.circle_half")
    centre, diameter = reader.point("at", reader.job["at"]), reader.length("diameter")
    assert diameter is not None
    if diameter < LEAST_DIAMETER:
        raise bad(reader.field("diameter"), "site.circle_small", least=reader.tape.both(LEAST_DIAMETER))
    return Circle.around(centre, diameter / 2)


def _outline(reader: Reader) -> tuple[Point, ...]:
    rows = [reader.point(f"outline[{number}]", pair)
            for number, pair in enumerate(reader.rows("outline", MOST_CORNERS))]  # fmt: skip
    # A corner that is given again at once, or the first one at the end, adds none.
    corners = tuple(corner for number, corner in enumerate(rows) if corner != rows[number - 1])
    if len(corners) < 3:
        raise bad(reader.field("outline"), "site.outline_short")
    fault = fault_of(corners)
    if fault:
        raise bad(reader.field("outline"), f"site.outline_{fault}")
    return corners
