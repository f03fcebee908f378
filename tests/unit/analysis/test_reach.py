"""What the ground lets through, against shapely's plane geometry and against lists of lines written by hand.

The arc is that of the 3-4-5 triangle: chord 40 m, sagitta 10 m, radius 25 m, its centre 15 m behind the chord.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import asin, atan2, hypot, inf, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LinearRing, LineString, Polygon
from shapely import Point as Spot

from bowstring.analysis.obstructions import Obstructions
from bowstring.analysis.reach import (
    Blocked,
    Limits,
    blocks_of,
    longest_pull,
    measurements_of,
    needs_of,
)
from bowstring.analysis.squaring import Kit
from bowstring.analysis.triangles import squares_of
from bowstring.construction import Recipe
from bowstring.geometry.arc import Arc
from bowstring.geometry.outlines import SKIN, TOUCH, Circle, fault_of, holds, inside_of, within
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import Obstacle
from bowstring.methods.catalogue import BY_NAME
from bowstring.methods.method import recipe_of, stakes_for
from bowstring.methods.setting import Setting
from bowstring.units.sizes import INCH
from helping import all_hold
from outline_shapes import spots, stars

ARC = Arc.of_angle(25.0, asin(0.8))
FAR = 1e6


def recipe(method: str, arc: Arc = ARC, levels: int = 2) -> Recipe:
    setting = Setting(arc)
    stakes = stakes_for(BY_NAME[method], setting, levels=levels, spacing=None)
    return recipe_of(BY_NAME[method], setting, stakes)


def square(x: float, y: float, half: float, name: str = "post", stops_tape: bool = True) -> Obstacle:
    corners = ((-half, -half), (half, -half), (half, half), (-half, half))
    return Obstacle(name, stops_tape, tuple(Point(x + a, y + b) for a, b in corners))


def found(steps: Recipe, *obstacles: Obstacle, arc: Arc = ARC, tape: float = FAR, **room: float) -> list[Blocked]:
    return list(blocks_of(arc, steps, Limits(tape, room, obstacles)))


# Circles.


@given(
    st.floats(-3, 3), st.floats(-3, 3), st.floats(0.05, 2), *(st.floats(-5, 5) for _ in range(4)),
)  # fmt: skip
def test_a_round_outline_is_its_circle_and_its_corners_stand_around_it(
    x: float, y: float, radius: float, ax: float, ay: float, bx: float, by: float
) -> None:
    circle, a, b = Circle.around(Point(x, y), radius), Point(ax, ay), Point(bx, by)
    true = Spot(x, y).buffer(radius, quad_segs=2000).intersection(LineString([a, b])).length
    deep = Spot(x, y).distance(LineString([a, b])) if a != b else inf
    assume(abs(deep - (radius - SKIN)) > 1e-6)
    assert inside_of(circle, a, b) == pytest.approx(true if deep < radius - SKIN else 0.0, abs=2e-3)
    assert within(circle, a) is (hypot(ax - x, ay - y) < radius - SKIN) or abs(hypot(ax - x, ay - y) - radius) < 0.01
    around = Polygon(circle)
    assert around.is_valid and around.contains(Spot(x, y).buffer(radius * (1 - 1e-9), quad_segs=500))
    assert max(hypot(corner.x - x, corner.y - y) for corner in circle) < radius * 1.001


def test_a_tape_may_touch_a_tree_and_not_run_through_it() -> None:
    """A tree of 1 m: the tape along y = 0 passes its middle by 0.5, 0.499 and 0.49 m (2 root(0.5² - 0.49²) = 0.199 m
    inside)."""
    for off, inside in ((0.5, 0.0), (0.499, 0.0), (0.49, 2 * (0.5**2 - 0.49**2) ** 0.5)):
        tree = Circle.around(Point(3.0, off), 0.5)
        assert inside_of(tree, Point(0.0, 0.0), Point(9.0, 0.0)) == pytest.approx(inside, abs=1e-12)
    halfway = Circle.around(Point(3.0, 0.0), 0.5)
    assert inside_of(halfway, Point(0.0, 0.0), Point(3.0, 0.0)) == pytest.approx(0.5)
    assert inside_of(halfway, Point(2.9, 0.0), Point(3.1, 0.0)) == pytest.approx(0.2)


def test_an_oak_on_the_chord_stops_the_string_and_a_box_beside_it_nothing() -> None:
    oak = Obstacle("oak", True, Circle.around(Point(20.0, 0.0), 0.4))
    box = Obstacle("box", True, Circle.around(Point(13.0, -0.33), 0.25))
    blocked = found(recipe("ordinates"), oak, box)
    assert {one.what for one in blocked} == {"oak"} and "string" in {one.kind for one in blocked}
    bed = Obstacle("bed", False, Circle.around(ARC.point_at(0.5), 0.3))
    assert [(one.kind, one.what) for one in found(recipe("ordinates"), bed)] == [("feet", "bed")]


# Outlines against shapely.


@given(stars(), spots, spots)
def test_the_length_inside_is_shapelys(outline: list[Point], a: Point, b: Point) -> None:
    """Pieces of which the middle is no deeper than the skin count as touching; away from corners on the line."""
    line, shape = LineString([a, b]), Polygon(outline)
    assume(line.length > 0.01 and min(line.distance(Spot(corner)) for corner in outline) > 1e-6)
    assume(min(shape.exterior.distance(Spot(end)) for end in (a, b)) > 1e-6)
    cut = line.intersection(shape)
    pieces = [] if cut.is_empty else list(getattr(cut, "geoms", [cut]))
    depths = [shape.exterior.distance(piece.interpolate(0.5, normalized=True)) for piece in pieces]
    assume(all(abs(depth - SKIN) > 1e-6 for depth in depths))
    want = sum(piece.length for piece, depth in zip(pieces, depths, strict=True) if depth > SKIN)
    assert inside_of(outline, a, b) == pytest.approx(want, abs=1e-7)


@given(stars(), spots)
def test_what_an_outline_holds_is_shapelys(outline: list[Point], point: Point) -> None:
    shape, depth = Polygon(outline), Polygon(outline).exterior.distance(Spot(point))
    assume(depth > 1e-6 and abs(depth - SKIN) > 1e-6)
    assert holds(outline, point) == shape.contains(Spot(point))
    assert within(outline, point) == (shape.contains(Spot(point)) and depth > SKIN)


whole = st.builds(lambda x, y: Point(10.0 * x, 10.0 * y), st.integers(0, 6), st.integers(0, 6))


@given(st.lists(whole, min_size=3, max_size=7, unique=True), whole, whole)
def test_corners_sides_and_ends_that_touch(corners: list[Point], a: Point, b: Point) -> None:
    """On a grid nearly everything touches: what lies on the outline itself isn't inside."""
    middle = Point(sum(p.x for p in corners) / len(corners), sum(p.y for p in corners) / len(corners))
    outline = sorted(corners, key=lambda p: atan2(p.y - middle.y, p.x - middle.x))
    shape = Polygon(outline)
    assume(shape.is_valid and shape.area > 1 and a != b)
    line = LineString([a, b])
    on_it = line.intersection(shape.exterior)
    want = line.intersection(shape).length - on_it.length
    assert inside_of(outline, a, b) == pytest.approx(want, abs=1e-7)
    assert inside_of(outline, a, b) == pytest.approx(inside_of(outline[::-1], b, a), abs=1e-9)
    assert within(outline, a) == shape.contains(Spot(a))


@given(st.lists(whole, min_size=3, max_size=7))
def test_outlines_that_cross_themselves_are_shapelys(corners: list[Point]) -> None:
    outline = [corner for number, corner in enumerate(corners) if corner != corners[number - 1]]
    assume(len(outline) >= 3)
    if Polygon(outline).convex_hull.area == 0:
        assert fault_of(outline) == "thin"
    else:
        assert (fault_of(outline) is None) == LinearRing(outline).is_simple


@pytest.mark.parametrize(("width", "fault"), [(0.0, "thin"), (0.004, "thin"), (0.006, None), (0.1, None)])
def test_a_fence_that_is_let_in_is_met(width: float, fault: str | None) -> None:
    """A strip 10 m long, slanted: its width is told, or it is refused; what is let in stops a tape across it."""
    fence = [Point(0, 0), Point(8, 6), Point(8 - 0.6 * width, 6 + 0.8 * width), Point(-0.6 * width, 0.8 * width)]
    assert fault_of(fence) == fault
    assert (inside_of(fence, Point(4 - 3, 3 + 4), Point(4 + 3, 3 - 4)) > TOUCH) == (width > TOUCH)


@pytest.mark.parametrize("turn", [0, 1, 2, 3])
@pytest.mark.parametrize("deep", [0.0, 0.002, -1.0])
def test_a_tape_along_any_side_of_a_wall(turn: int, deep: float) -> None:
    """Whichever side of it, exactly on it or no deeper than a touch."""
    wall = [Point(0, 0), Point(9, 0), Point(9, 2), Point(0, 2)]
    for _ in range(turn):
        wall = [Point(-p.y, p.x) for p in wall]
    one, other, inward = wall[0], wall[1], wall[2].minus(wall[1])
    size = hypot(*inward)
    a, b = (p.plus(inward, deep / size) for p in (one, other))
    assert inside_of(wall, a, b) == 0.0
    a, b = (p.plus(inward, 0.02 / size) for p in (one, other))
    assert inside_of(wall, a, b) == pytest.approx(9.0)


# Every line of every method, by hand. Two levels: M, Q1, Q2 by halving, K1 to K3 otherwise.

HALVING = [
    "A B", "A, mid M", "mid M, B", "mid M, M", "A M", "M B", "A, mid Q1", "mid Q1, M", "mid Q1, Q1", "A Q1", "Q1 M",
    "M, mid Q2", "mid Q2, B", "mid Q2, Q2", "M Q2", "Q2 B",
]  # fmt: skip
PEG = ["A B", "A, foot TA", "foot TA, TA", "A TA"]
LINES: dict[str, list[str]] = {
    "centre": ["A C", "B C", "C K1", "A K1", "C K2", "K1 K2", "C K3", "K2 K3"],
    "halving": HALVING,
    "rule": HALVING,
    "ordinates": ["A B", *(f"{end}, foot K{i}" for i, end in ((1, "A"), (2, "A"), (3, "B"))),
                  *(f"foot K{i}, K{i}" for i in (1, 2, 3))],
    "tangent": [*PEG, "B, foot TB", "foot TB, TB", "B TB", "A, tan K1", "A, tan K2", "B, tan K3",
                *(f"tan K{i}, K{i}" for i in (1, 2, 3))],
    "tapes": ["A K1", "B K1", "A K2", "B K2", "A K3", "B K3"],
    "produced": [*PEG, *(f"{before}, ahead {stake}" for before, stake in (("A", "K1"), ("K1", "K2"), ("K2", "K3"))),
                 "A K1", "K1 K2", "K2 K3", *(f"ahead K{i}, K{i}" for i in (1, 2, 3))],
    "angles": ["A B", "A K1", "A K2", "A K3", "K1 K2", "K2 K3"],
    "coordinates": ["A B", "A K1", "A K2", "A K3"],
}  # fmt: skip
NO_PULL = {"A B", "A TA", "B TB"}
"""Strings and sights alone."""

SIGHTS_ALONE = {"angles": {"A K2", "A K3"}}


def marks(line: str) -> tuple[str, str]:
    one, other = line.split(", ") if "," in line else line.split(" ")
    return one, other


def lines(blocks: Iterable[Blocked]) -> set[frozenset[str]]:
    kinds = ("pull", "string", "sight")
    return {frozenset((block.start, block.end)) for block in blocks if block.kind in kinds}


def metres(method: str) -> dict[str, LineString]:
    at = recipe(method).at
    return {line: LineString([at[mark] for mark in marks(line)]) for line in LINES[method]}


@pytest.mark.parametrize("method", LINES)
def test_no_line_is_left_out_and_none_is_made_up(method: str) -> None:
    """Something that covers the whole site stops every line, and stands on every mark that is set."""
    blocks = found(recipe(method), square(20, 0, 200))
    assert lines(blocks) == {frozenset(marks(line)) for line in LINES[method]}
    feet = {block.start for block in blocks if block.kind == "feet"}
    assert feet == {mark for line in LINES[method] for mark in marks(line)} - {"A", "B"}


@pytest.mark.parametrize("method", LINES)
def test_a_post_on_a_line_is_found_and_one_beside_it_is_not(method: str) -> None:
    all_hold({line: (method, line) for line in LINES[method]}, stops_on_the_line_alone)


def stops_on_the_line_alone(method: str, line: str) -> None:
    steps, pair = recipe(method), marks(line)
    a, b = (steps.at[mark] for mark in pair)
    middle, size = Point((a.x + b.x) / 2, (a.y + b.y) / 2), distance(a, b)
    aside = Point(-(b.y - a.y) / size, (b.x - a.x) / size)
    assert frozenset(pair) in lines(found(steps, square(*middle, 0.02)))
    line_there = LineString([a, b])
    for hand in (0.05, 0.08, 0.09, 0.1, 0.12, 0.14, 0.2):
        for post in (square(*middle.plus(aside, side), 0.02) for side in (hand, -hand)):
            near = line_there.distance(Polygon(post.outline))
            if abs(near - 3 * INCH) > 1e-4 and size > 1.5:  # of a short one the next test tells
                assert (frozenset(pair) in lines(found(steps, post))) is (near < 3 * INCH), (hand, near)
    assert not lines(found(steps, square(*middle, 0.02, stops_tape=False))), "a tape passes over a pond"


@pytest.mark.parametrize("method", LINES)
def test_nobody_stands_in_a_pond(method: str) -> None:
    steps = recipe(method)
    for mark in {mark for line in LINES[method] for mark in marks(line)} - {"A", "B"}:
        for stops_tape in (False, True):
            blocks = found(steps, square(*steps.at[mark], 0.05, stops_tape=stops_tape))
            assert mark in {block.start for block in blocks if block.kind == "feet"}
        beside = square(steps.at[mark].x + 0.1, steps.at[mark].y, 0.05, stops_tape=False)
        assert mark not in {block.start for block in found(steps, beside)}


@pytest.mark.parametrize("method", LINES)
def test_the_tape_and_the_room_are_those_of_the_lines(method: str) -> None:
    """Against shapely: the longest pull, how far a line lies behind the chord, inside and outside the circle."""
    steps, ways, centre = recipe(method), metres(method), Spot(20, -15)
    none = NO_PULL | SIGHTS_ALONE.get(method, set())
    ends = [Spot(end) for way in ways.values() for end in way.coords]
    needs = {
        "tape": max(way.length for line, way in ways.items() if line not in none),
        "behind": max(-end.y for end in ends),
        "inside": max(25 - centre.distance(way) for way in ways.values()),
        "outside": max(centre.distance(end) for end in ends) - 25,
    }
    assert needs_of(ARC, steps) == pytest.approx(needs, abs=1e-9)
    for kind, size in needs.items():
        if size < 0.01:
            continue
        for there, stopped in ((size + 0.001, False), (size, False), (size - 0.001, True)):
            given_ = {"tape": there} if kind == "tape" else {kind: there}
            blocks = found(steps, **given_)
            assert ({block.kind for block in blocks} == {kind}) if stopped else not blocks
            if stopped:
                assert max(block.size for block in blocks) == pytest.approx(size)
    assert not found(steps, tape=needs["tape"], behind=max(needs["behind"], 0), inside=needs["inside"],
                     outside=max(needs["outside"], 0))  # fmt: skip


def test_the_longest_pull_is_told_with_every_method() -> None:
    """2 R sin of half the angle between: A to K3 for two tapes, the radius for a swing, half the chord for
    ordinates."""
    assert longest_pull(recipe("tapes")) == pytest.approx(50 * sin(0.75 * asin(0.8)))
    assert longest_pull(recipe("centre")) == pytest.approx(25)
    assert longest_pull(recipe("ordinates")) == pytest.approx(20)


def test_readings_are_counted_as_a_crew_takes_them() -> None:
    """Three stakes. Swing: 2 tapes, 3 gaps, one radius. A halving stake: 2 + 1 + 2; an ordinate: 1 + 1 + 3 for the
    triangle; tangents: two pegs of 5 besides; produced: a peg, then 3; angles and coordinates: an angle and a tape."""
    counted = {method: measurements_of(recipe(method).steps) for method in LINES}
    assert counted == {
        "centre": 6, "halving": 15, "rule": 15, "ordinates": 15, "tangent": 25, "tapes": 6, "produced": 14,
        "angles": 6, "coordinates": 6,
    }  # fmt: skip


# Squaring triangles.


def triangles(steps: Recipe, *posts: Obstacle, arc: Arc = ARC) -> dict[str, str]:
    return {block.start: block.what for block in found(steps, *posts, arc=arc) if block.kind == "triangle"}


def test_a_triangle_finds_room_on_one_side_or_a_smaller_one_does() -> None:
    """The middle ordinate is 10 m: of feet, 30-40-50 reaches it and lies along 30 ft = 9.144 m, up 12.192 m; its long
    side passes (20 -/+ 4.572, 6.096). With posts on both the next one is taken. What stands at the foot itself, on both
    sides of the ordinate, stops even a framing square, 0.610 m along and 0.406 m up."""
    left, right = square(20 - 4.572, 6.096, 0.05, "left post"), square(20 + 4.572, 6.096, 0.05, "right post")
    steps = recipe("ordinates")
    sizes = []
    for posts in ((), (left,), (right,), (left, right)):
        chosen = squares_of(steps, Kit(), Obstructions(ARC, Limits(FAR, {}, posts)))["K2"]
        sizes.append((chosen.along, chosen.out, chosen.toward))
        assert not triangles(steps, *posts)
    assert sizes[0][:2] == pytest.approx((9.144, 12.192))
    assert sizes[1] == (*sizes[0][:2], "B") and sizes[2] == (*sizes[0][:2], "A") and sizes[3][:2] != sizes[0][:2]
    close = [square(20 + hand * 0.3, 0.1, 0.2, f"{hand} post") for hand in (1, -1)]
    assert triangles(steps, *close)["foot K2"] in ("1 post", "-1 post")
    assert triangles(steps, close[0]) == {}


@pytest.mark.parametrize("wall", [1.1, 1.02])
def test_a_leg_out_may_end_at_the_stake(wall: float) -> None:
    """Sagitta 1 m on a chord of 20: R = (100 + 1)/2 = 50.5. A leg out is 4 ft = 1.219 m where there is room; with a
    wall right behind the stakes it is 3 ft, 0.914 m."""
    arc = Arc.of_angle(50.5, asin(10 / 50.5))
    behind = Obstacle("wall", True, (Point(-5, wall), Point(25, wall), Point(25, 2), Point(-5, 2)))
    assert not found(recipe("ordinates", arc, 1), behind, arc=arc)
    assert "foot K1" not in triangles(recipe("ordinates", arc, 1), behind, arc=arc)


def test_a_stopped_offset_is_told_once() -> None:
    """A post on the ordinate itself stops the tape; that there is no triangle either says nothing more."""
    kinds = {block.kind for block in found(recipe("ordinates"), square(20, 5, 0.1)) if "K2" in block.end}
    assert kinds == {"pull"}


def test_marks_that_no_step_sets_are_not_asked_for() -> None:
    """A recipe without the steps that find the ends says nothing of where they stand."""
    assert not found(recipe("tapes"), square(0, 0, 0.3, stops_tape=False))
