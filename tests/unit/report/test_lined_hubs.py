"""Hubs outside the dig of a line: where they stand, by coordinates of our own and shapely's polygons."""

from __future__ import annotations

import random
import re
from cmath import exp
from html import unescape
from math import radians, sin
from typing import Any

import pytest
import shapely
from shapely.geometry import LineString
from shapely.geometry import Point as Spot

import bowstring
from bowstring.faces.paper_forms import forms_sides
from bowstring.report.lined.ground import things_along
from bowstring.report.lined.hubs import LineHubs, hubs_along
from bowstring.report.lined.hubs_told import first_told
from bowstring.report.lined.pass_set_out import hubs_card
from bowstring.report.work import Work
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import about, answer_to
from line_jobs import SHAPES, arc, straight
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK
from unit.forming.walked import aside, union, walk

FOOT = 0.3048
HAIRPIN: dict[str, Any] = {
    **CREEK, "width": "4 ft",
    "line": [straight("30 ft"), arc("6 ft", "180", "left"), straight("30 ft")],
}  # fmt: skip
"""Out and back, 12 ft apart: between the legs 8 ft of ground, of which the digs leave 6."""
SHUT: dict[str, Any] = {**HAIRPIN, "line": [straight("30 ft"), arc("3 ft 6 in", "180", "left"), straight("30 ft")]}
"""Out and back, 7 ft apart: between the legs the dig takes all but a foot."""
GARDEN: dict[str, Any] = {
    "bowstring": 1, "width": "5 ft", "edge": "left", "drawn_to": "face", "slab": {"thickness": "4 in"},
    "line": [straight("12 ft"), {"arc": {"radius": "40 ft", "arc_length": "30 ft"}, "turn": "left"},
             arc("25 ft", "60", "right"), straight("20 ft")],
}  # fmt: skip
"""A walk of 5 ft on the right of its line, two arcs that meet."""
AT_MIDDLE, AT_JOINT = ["12 ft 6 in", "4 ft 10-1/8 in"], ["0 ft", "1 ft 6 in"]
"""Where a tree's middle is in the frame of arc 3's stakes: 18 in to the left of its M (its mid-ordinate is 3 ft 4-1/8
in, 25 ft less 25 cos 30), and 18 in off its A."""
JOBS: dict[str, dict[str, Any]] = {
    "creek": CREEK, "kinked": KINKED, "metric": METRIC_LINE, "one arc": ONE_ARC, "five": FIVE, "hairpin": HAIRPIN,
    "shut": SHUT, **{name: job for name, job in SHAPES.items() if "width" in job},
}  # fmt: skip


def hubs_of(job: dict[str, Any]) -> LineHubs:
    work = Work(job)  # type: ignore[arg-type]
    assert work.lined is not None
    found = hubs_along(work.lined.plan)
    assert found is not None
    return found


def staked(job: dict[str, Any], at: int, grounds: dict[int, list[Any]]) -> dict[str, Any]:
    """A line with one of its arcs staked, from 1: what is in the way of the others is kept with them, by arc."""
    line = [
        {**piece, "work": {"ground": grounds[number]}} if number in grounds and number != at else piece
        for number, piece in enumerate(job["line"], 1)
    ]
    return {**job, "line": line, "at": at, **({"ground": grounds[at]} if at in grounds else {})}


def trunk(at: list[str], wide: str = "18 in") -> list[Any]:
    return [{"name": "elm", "stops": "tape", "at": at, "diameter": wide}]


def page(job: dict[str, Any], **other: Any) -> Any:
    answer = bowstring.answering({**job, **other})  # type: ignore[typeddict-item]
    assert answer["lined"] is not None
    return next(one for one in answer["lined"]["pages"] if one["key"] == "edges")


def table(job: dict[str, Any], **other: Any) -> list[list[str]]:
    return next((one["rows"] for one in page(job, **other)["tables"] if one["key"] == "hubs"), [])


@pytest.mark.parametrize("name", JOBS)
def test_no_hub_stands_in_any_pieces_concrete_or_dig(name: str) -> None:
    """The slab put together by shapely, grown by the overdig of a foot or 0.3 m: every hub is outside of it, and at
    least half a foot, or 0.15 m."""
    hubs = hubs_of(JOBS[name])
    slab = union(hubs.slab.line, hubs.slab.left, hubs.slab.right)
    past, spare = (FOOT, FOOT / 2) if hubs.feet else (0.3, 0.15)
    assert len(hubs.ends) == len(hubs.plan.line.pieces) + 1
    for hub in hubs.all:
        with about(name, str(hub.mark)):
            assert hub.point is not None
            assert shapely.distance(slab, Spot(*hub.point)) >= past + spare - 1e-4


@pytest.mark.parametrize("name", JOBS)
def test_each_hub_is_square_off_its_mark(name: str) -> None:
    """By walking the pieces: a hub's mark is an end of a piece or a place on the staked arc, and the hub is on the
    normal there."""
    hubs = hubs_of(JOBS[name])
    rows = walk(hubs.slab.line)
    for number, hub in enumerate(hubs.ends):
        row = rows[hub.mark.square]
        end = row[:1] if hub.mark.square == number else row[-1:]
        hand, off = hub.reach or ("left", 0.0)
        ((x, y),) = aside(end, off if hand == "left" else -off)
        assert hub.point is not None
        assert (hub.point.x, hub.point.y) == pytest.approx((x, y), abs=1e-9)


def test_a_walk_by_hand_has_its_hubs_two_feet_off_its_own_edge() -> None:
    """Drawn to its left edge, dug a foot past it and a foot clear: 2 ft to the left. Along straights hub to hub is as
    long as the straight; over an arc of R 42 through 32 degrees to the left it is the chord of R 40 ft."""
    rows = table(FIVE)
    assert [row[1] for row in rows] == ["18' 0\"", "22' 0-5/8\"", "11' 0\"", "33' 4-1/2\"", "14' 0\"", "-"]
    assert round(2 * 40 * sin(radians(16)) * 12 * 8) == round((22 * 12 + 5 / 8) * 8)
    assert round(2 * 54 * sin(radians(18)) * 12 * 8) == round((33 * 12 + 4.5) * 8)
    assert [row[0] for row in rows][:3] == ["the start", "Arc 2 begins", "Straight 3 begins"]
    assert (
        "Before you dig, set a hub *2' 0\" left* of each stake and piece end: the dig takes them."
        in page(FIVE)["lines"]
    )


@pytest.mark.parametrize("at", [2, 3])
def test_the_hubs_of_the_ends_are_the_same_whichever_arc_is_staked(at: int) -> None:
    assert page(CREEK, at=at)["lines"] == page(CREEK)["lines"] and table(CREEK, at=at) == table(CREEK)


@pytest.mark.parametrize("name", JOBS)
def test_hub_to_hub_is_what_the_coordinates_say(name: str) -> None:
    """Each end by the sum of the chords before it, its hub square off it: complex numbers, nothing of the package."""
    hubs, job = hubs_of(JOBS[name]), JOBS[name]
    place, heading, ends = 0j, 0.0, [(0j, 0.0)]
    for piece in hubs.plan.line.pieces:
        heading += piece.kink
        angle = piece.turn
        chord = piece.length if not angle else piece.length / (angle / 2) * sin(angle / 2)
        place += chord * exp(1j * (heading + angle / 2))
        heading += angle
        ends.append((place, heading))
    for hub, after in zip(hubs.ends, hubs.ends[1:], strict=False):
        if any(abs(piece.kink) for piece in hubs.plan.line.pieces):
            break  # square to which piece is told elsewhere
        spots = []
        for number, one in ((hubs.ends.index(hub), hub), (hubs.ends.index(after), after)):
            at, way = ends[number]
            hand, off = one.reach or ("left", 0.0)
            spots.append(at + off * exp(1j * (way + radians(90 if hand == "left" else -90))))
        apart = hubs.apart(hub, after)
        assert apart is None or apart == pytest.approx(abs(spots[1] - spots[0]), abs=1e-9)
    assert job


def test_one_arc_as_a_line_has_the_hubs_of_the_arc_alone() -> None:
    alone = bowstring.answering(WALK)["form_cards"][0]  # type: ignore[arg-type]
    assert alone["kind"] == "form_hubs" and alone["numbers"][0]["shown"] == "2' 0\""
    # The outside of a curve to the right is its left.
    assert page(ONE_ARC)["lines"][0] == say("lined.hubs_first", off="2' 0\" left") and len(table(ONE_ARC)) == 2


def test_between_two_legs_hubs_change_hands_where_the_other_leg_is_dug() -> None:
    """A slab of 8 ft with the line on its right edge: hubs are nearest on the right. A hairpin to the right of 10 ft
    puts the other leg's concrete there, whose near edge is the right one, too."""
    job = {**CREEK, "width": "8 ft", "edge": "right", "drawn_to": "face",
           "line": [straight("30 ft"), arc("1 ft 6 in", "180", "right"), straight("30 ft")]}  # fmt: skip
    hubs = hubs_of(job)
    assert hubs.reaches[0][0] == "right"
    assert {hub.reach[0] for hub in hubs.ends if hub.reach} == {"left"}
    slab = union(hubs.slab.line, hubs.slab.left, hubs.slab.right)
    assert all(shapely.distance(slab, Spot(*hub.point)) > 1.5 * FOOT for hub in hubs.all if hub.point)


def test_a_hub_does_not_land_on_what_stands_there() -> None:
    """A shed over the start's hub on the nearer side: the start has its hub on the other one, or farther off. The frame
    of what stands there is that of the staked arc: A is 20 ft on along the first piece, its chord turns off by half of
    70 degrees to the left, and y is away from the center."""
    free = hubs_of(CREEK).ends[0]
    assert free.point is not None
    away = complex(free.point.x / FOOT - 20, free.point.y / FOOT)
    turned = away * exp(-1j * radians(35))
    x, y = turned.real, -turned.imag
    shed = {"name": "shed", "stops": "feet",
            "outline": [[x - 1, y - 1], [x + 1, y - 1], [x + 1, y + 1], [x - 1, y + 1]]}  # fmt: skip
    blocked = hubs_of({**CREEK, "ground": [shed]}).ends
    assert blocked[0].reach != free.reach
    assert [hub.reach for hub in blocked[1:]] == [hub.reach for hub in hubs_of(CREEK).ends[1:]]
    rows = table({**CREEK, "ground": [shed]})
    assert rows[0][1] != rows[1][1]
    (told,) = (line for line in page({**CREEK, "ground": [shed]})["lines"] if line.startswith("Except"))
    assert told == f"Except: the start, *{rows[0][1]}*."


@pytest.mark.parametrize("at", [2, 3])
def test_a_tree_at_one_arc_moves_its_hubs_whichever_arc_is_staked(at: int) -> None:
    """18 in off the middle of arc 3, on its left: hubs 2 ft left would stand in it, on the right 7 ft is clear of the
    walk's 5 ft, a foot of dig and a foot."""
    job = staked(GARDEN, at, {3: trunk(AT_MIDDLE)})
    assert page(job)["lines"][1] == say("lined.hubs_first", off="2' 0\" left")  # the first: the tree is in the dig
    assert any("Arc 3, *7' 0\" right*" in line for line in page(job)["lines"])


@pytest.mark.parametrize("seed", range(6))
def test_hubs_are_one_set_whichever_arc_is_staked_and_none_is_in_a_tree(seed: int) -> None:
    """Lines of pieces and trees by chance, the trees kept each with an arc: the hubs of the ends and every arc's reach
    are the same for each arc that is staked, what is told of them, too; shapely's circles hold no hub of them."""
    dice = random.Random(seed)
    pieces = [straight("12 ft"), *(
        arc(f"{dice.uniform(22, 60):.1f} ft", f"{dice.uniform(20, 70):.1f}", dice.choice(["left", "right"]))
        for _ in range(3)
    ), straight("9 ft")]  # fmt: skip
    job = {**GARDEN, "line": pieces, "edge": dice.choice(["left", "right"]), "method": "coordinates"}
    grounds = {
        at: [{"name": f"{at} tree {number}", "stops": dice.choice(["tape", "feet"]), "diameter": "18 in",
              "at": [f"{dice.uniform(-2, 25):.2f} ft", f"{dice.uniform(-10, 10):.2f} ft"]} for number in range(4)]
        for at in (2, 3, 4)
    }  # fmt: skip
    told = []
    for at in (2, 3, 4):
        hubs = hubs_of(staked(job, at, grounds))
        trees = [Spot(*tree.centre).buffer(tree.radius, quad_segs=64)
                 for one in things_along(hubs.plan) if (tree := one.circle)]  # fmt: skip
        assert len(trees) == 12
        assert not any(tree.contains(Spot(*hub.point)) for tree in trees for hub in hubs.all if hub.point)
        for arc_at in (1, 2, 3):
            reach = hubs.arc_reach(arc_at)
            if reach:
                places = aside(walk(hubs.slab.line)[arc_at], (1 if reach[0] == "left" else -1) * reach[1])
                assert not any(tree.buffer(-0.01).intersects(LineString(places)) for tree in trees)
        ends = [hub.reach for hub in hubs.ends]
        apart = [hubs.apart(one, other) for one, other in zip(hubs.ends, hubs.ends[1:], strict=False)]
        rounded = [None if far is None else round(far, 6) for far in apart]
        told.append((ends, rounded, [hubs.arc_reach(one) for one in (1, 2, 3)], [*first_told(hubs)], hubs.alike))
    assert told[0] == told[1] == told[2]


def test_stakes_clear_of_the_dig_need_no_hubs() -> None:
    """Drawn to the middle of 6 ft, dug a foot past it: 4 ft off the line is the dig line, 5 ft is clear of it."""
    off = {"offset": "5 ft", "toward": "outside", "driven": "hub"}
    assert table(CREEK, **off) == []
    lines = page(CREEK, **off)["lines"]
    assert say("edges.clear_of_dig") in lines and not any("hub" in line for line in lines)
    near = page(CREEK, offset="3 ft", toward="outside")["lines"]
    assert near[0] == say("lined.hubs_first", off="2' 0\" right")  # 3 and 2 ft are as far as 5 ft off the line


def test_where_no_hub_has_room_no_distance_is_told_for_it() -> None:
    """Every distance that is tried is within the dig: an arc and an end say so, and none of them has a number."""
    hubs = hubs_of(CREEK)
    hubs.__dict__["choices"] = [("left", 0.1), ("right", 0.1)]
    first, others, *rooms = first_told(hubs)
    assert first == say("lined.hubs_first", off="5' 0\" right")
    assert others == "Except: Arc 2, *no room*; Arc 3, *no room*."
    assert len(rooms) == 5 and rooms[0] == say("lined.hubs_no_room", place="the start")
    card = hubs_card(hubs)
    assert any(note == say("forming.note.hub_none", stake="A") for note in card["notes"]) and card["right"] is None


def test_the_dig_goes_first_and_names_the_other_arcs() -> None:
    lines = page(FIVE)["lines"]
    assert say("lined.hubs_arcs") in lines and say("edges.line_again") in lines
    assert lines.index(say("lined.hubs_first", off="2' 0\" left")) == 0
    assert not any("Stake every arc" in line for line in page(ONE_ARC)["lines"])
    assert say("lined.hubs_kink") in page(KINKED)["lines"]


def test_paper_has_the_hubs_and_what_is_said_of_them() -> None:
    answer = bowstring.answering(FIVE)  # type: ignore[arg-type]
    sheet = answer["lined_sheet"]
    assert sheet is not None
    (edges,) = (part["lines"] for part in sheet["parts"] if part["key"] == "edges")
    assert edges[0] == say("lined.hubs_first", off="2' 0\" left")
    (front, *_rest) = re.findall(r"<section.*?</section>", forms_sides(answer, "May 31"), re.DOTALL)
    text = unescape(re.sub(r"<[^>]+>", "", front))
    told = ", ".join(row[1] for row in table(FIVE)[:-1])
    assert f"Hub to hub: {told}." in text


def front_of(job: dict[str, Any]) -> str:
    (front, *_rest) = re.findall(r"<section.*?</section>", forms_sides(answer_to(job), "May 31"), re.DOTALL)
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", front)).split())


@pytest.mark.parametrize("at", [2, 3])
def test_paper_says_where_each_pieces_hub_stands_where_they_differ(at: int) -> None:
    """Arc 3's hubs are 7 ft right, but for the one at its A: square to arc 2, 2 ft left: paper says both."""
    text = front_of(staked(GARDEN, at, {3: trunk(AT_MIDDLE)}))
    assert "Arc 3, 7' 0\" right (its A: 2' 0\" left , square to Arc 2)." in text.replace(" )", ")")
    assert say("lined.head_next") in text
    rows = table(staked(GARDEN, at, {3: trunk(AT_MIDDLE)}))
    assert [row[1] for row in rows] == ["2' 0\" left"] * 3 + ["7' 0\" right", "2' 0\" left"]
    assert all(f"{row[1]} {row[2]}" in text for row in rows[:-1])
    assert say("lined.head_next") not in front_of(GARDEN)


def test_paper_has_the_second_pass_of_a_line() -> None:
    """The same whichever arc is staked: what its hubs read is on its own cards."""
    for at in (2, 4):
        assert say("edges.line_again") in front_of({**FIVE, "at": at})


def test_an_arc_that_stands_as_most_tells_the_hub_at_its_a_that_is_another_arcs() -> None:
    """A tree at arc 2, whose hubs move to the right; the one where arc 3 begins is square to arc 2 and moves along."""
    lines = page(staked(GARDEN, 3, {2: trunk(["14 ft 6 in", "8 in"])}))["lines"]
    (told,) = (line for line in lines if line.startswith("Except"))
    assert told == "Except: Arc 2, *7' 0\" right*; Arc 3 begins, *7' 0\" right*."


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["five", "kinked", "metric"])
def test_it_is_said_in_few_words(language: str, name: str) -> None:
    speak(language)
    try:
        told = page(JOBS[name])
        rows = next(one for one in told["tables"] if one["key"] == "hubs")["rows"]
        assert all(len(cell) <= 34 for row in rows for cell in row)
        for line in told["lines"]:
            if "hub" in line or "peg" in line or "trompo" in line:
                assert all(len(sentence.split()) <= 20 for sentence in line.split(". ")), line
    finally:
        speak("english")
