"""A line in a job: pieces, hands and kinks, what is refused and what is asked."""

from __future__ import annotations

from math import degrees
from typing import Any

import pytest

from bowstring.errors import BadJob
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.givens import settle
from bowstring.job.job import read_job
from bowstring.job.line import ArcSaid, LineSaid, StraightSaid, read_line
from bowstring.job.line_settled import SettledLine, questions, settle_line, slab_on
from bowstring.job.reader import Reader
from bowstring.units.tape import make_tape

FOOT = 0.3048
STRAIGHT: dict[str, Any] = {"straight": "20 ft"}
LEFT: dict[str, Any] = {"arc": {"radius": "31 ft", "central_angle": 70}, "turn": "left"}
RIGHT: dict[str, Any] = {"arc": {"radius": "24 ft", "delta": "40°"}, "turn": "right"}
WALK = [STRAIGHT, LEFT, RIGHT, {"straight": 8.5}]
TAPE = make_tape("ft-in", None)


def reader_of(job: dict[str, Any]) -> Reader:
    return Reader(job, TAPE, ("line", "arc"))


def said(pieces: object) -> LineSaid:
    return read_line(reader_of({"line": pieces}))


def settled(pieces: object) -> SettledLine:
    return settle_line(said(pieces), TAPE.mark, TAPE.show)


def refused(pieces: object) -> BadJob:
    with pytest.raises(BadJob) as refusal:
        settled(pieces)
    return refusal.value


def test_a_walk_of_four_pieces() -> None:
    """20 + 37.874 + 16.755 + 8.5 = 83.129 ft, by R I."""
    line = settled(WALK).line
    assert line.length / FOOT == pytest.approx(83.129, abs=5e-4)
    assert [degrees(run.end.heading) for run in line.runs] == pytest.approx([0, 70, 30, 30])
    assert line.end.point == pytest.approx((67.044 * FOOT, 37.224 * FOOT), abs=5e-4 * FOOT)
    assert all(join.tangent for join in line.joins)


def test_each_arc_is_settled_as_the_jobs_own_is() -> None:
    """The same givens, in the job's arc and in a piece: one radius, one angle, one other arc."""
    for arc in (
        {"radius": "31 ft", "chord": "40 ft"},
        {"radius": "31 ft", "chord": "40 ft", "greater": True},
        {"chord": "38 ft", "rise": "5 ft 3 in"},
        {"degree": 40, "degree_by": "chord", "arc_length": "30 ft"},
        {"chord": "24 ft", "sagitta": "4 ft", "radius": "20 ft"},
    ):
        job = read_job({"arc": arc})
        own = settle(list(job.givens), job.greater, TAPE.mark, TAPE.show)
        piece = settled([STRAIGHT, {"arc": arc, "turn": "left"}])
        assert piece.arcs == (None, own)


def test_points_tell_the_hand_and_sides_do_not() -> None:
    for points, hand in (([[0, 0], [1, 1], [2, 0]], "right"), ([[0, 0], [1, -1], [2, 0]], "left")):
        for turn in ({}, {"turn": hand}):
            line = settled([{"arc": {"points": points}, **turn}]).line
            assert degrees(line.pieces[0].turn) == pytest.approx(180 if hand == "left" else -180)
        other = {"left": "right", "right": "left"}[hand]
        assert refused([{"arc": {"points": points}, "turn": other}]).field == "line[0].turn"
    sides = {"three_sides": ["5 ft", "5 ft", "8 ft"]}
    assert refused([{"arc": sides}]).key == "line.no_turn"
    assert settled([{"arc": sides, "turn": "right"}]).line.pieces[0].turn < 0


@pytest.mark.parametrize(
    ("kink", "beside", "turn", "known"),
    [
        ("2° left", {}, 2, True),
        ("2 right", {}, -2, True),
        ("2 R", {}, -2, True),
        ("L 2°", {}, 2, True),
        ("2°30' Rt.", {}, -2.5, True),
        (2, {"turn": "right"}, -2, True),
        ("2° left", {"turn": "left"}, 2, True),
        (2, {}, 2, False),
        ("2.5", {}, 2.5, False),
        (-2, {}, -2, False),
        ("-2°", {}, -2, False),
    ],
)
def test_a_kink_on_a_straight(kink: object, beside: dict[str, str], turn: float, known: bool) -> None:
    line = settled([STRAIGHT, {"straight": "8 ft", "kink": kink, **beside}])
    assert degrees(line.line.joins[0].kink) == pytest.approx(turn)
    assert line.said.asks == (() if known else (1,))
    asked = questions(line, TAPE.show)
    assert (asked == []) == known
    assert known or ("left or right" in asked[0] and "20' 0\"" in asked[0])


def test_a_kink_before_an_arc_has_its_own_hand() -> None:
    """The arc's turn says where the arc goes, not where the kink does."""
    for kink, known, turn in (("2° right", True, -2), ("2° left", True, 2), (2, False, 2)):
        line = settled([STRAIGHT, {**LEFT, "kink": kink}])
        assert degrees(line.line.joins[0].kink) == pytest.approx(turn)
        assert degrees(line.line.pieces[1].turn) == pytest.approx(70)
        assert bool(questions(line)) != known


@pytest.mark.parametrize("kink", [0, 0.0, "0", "0°", "0.00"])
def test_no_kink_is_tangent(kink: object) -> None:
    piece = said([STRAIGHT, {"straight": "8 ft", "kink": kink}]).pieces[1]
    assert isinstance(piece, StraightSaid) and piece.kink is None


@pytest.mark.parametrize(
    ("pieces", "field", "key"),
    [
        ([], "line", "line.empty"),
        ({}, "line", "site.rows"),
        ([STRAIGHT] * 61, "line", "site.rows"),
        ([STRAIGHT, 3], "line[1]", "job.not_a_group"),
        ([{}], "line[0]", "line.piece_kind"),
        ([{**STRAIGHT, **LEFT}], "line[0]", "line.piece_kind"),
        ([{"arc": LEFT["arc"]}], "line[0].turn", "line.no_turn"),
        ([{**LEFT, "turn": "up"}], "line[0].turn", "job.choice"),
        ([STRAIGHT, {**STRAIGHT, "turn": "left"}], "line[1].turn", "line.turn_of_straight"),
        ([{**STRAIGHT, "kink": 2}], "line[0].kink", "line.first_kink"),
        ([STRAIGHT, {**STRAIGHT, "kink": 151}], "line[1].kink", "line.kink_sharp"),
        ([STRAIGHT, {**STRAIGHT, "kink": "-2 left"}], "line[1].kink", "line.kink_hands"),
        ([STRAIGHT, {**STRAIGHT, "kink": "2 left", "turn": "right"}], "line[1].kink", "line.kink_hands"),
        ([STRAIGHT, {**STRAIGHT, "kink": -2, "turn": "left"}], "line[1].kink", "line.kink_hands"),
        ([STRAIGHT, {**STRAIGHT, "kink": "2 rad"}], "line[1].kink", "angle.other_unit"),
        ([STRAIGHT, {**STRAIGHT, "kink": True}], "line[1].kink", "angle.kind"),
        ([STRAIGHT, {**STRAIGHT, "colour": 2}], "line[1].colour", "job.unknown_key"),
        ([{**LEFT, "arc": {"radius": "3 ft"}}], "line[0].arc", "arc.too_few"),
        ([{**LEFT, "arc": {"radius": "3 ft", "chord": "9 ft"}}], "line[0].arc.chord", "pair.chord_over_diameter"),
        ([{**LEFT, "arc": {"rise": "1 ft", "sagitta": "1 ft"}}], "line[0].arc.sagitta", "arc.twice"),
        ([{**LEFT, "arc": {"radius": "3 ft", "width": "1 ft"}}], "line[0].arc.width", "job.unknown_key"),
        ([{**LEFT, "arc": {"points": [[0, 0], [1, 1], [2, 0]], "chord": 2}}], "line[0].arc.chord", "arc.beside_points"),
        ([{**LEFT, "arc": {"points": [[0, 0], [1, 1], [2, 2]]}}], "line[0].arc.points", "arc.points_straight"),
        ([{"straight": "-3 ft"}], "line[0].straight", "length.sign"),
    ],
)
def test_what_cannot_be_read_is_refused_in_its_place(pieces: object, field: str, key: str) -> None:
    refusal = refused(pieces)
    assert (refusal.field, refusal.key) == (field, key)
    assert refusal.wrong and refusal.remedy


def test_a_line_and_an_arc_are_one_too_many() -> None:
    with pytest.raises(BadJob) as refusal:
        read_line(reader_of({"line": WALK, "arc": LEFT["arc"]}))
    assert refusal.value.key == "line.with_arc"


def test_a_slab_on_a_line() -> None:
    slab = slab_on(settled(WALK), 3 * FOOT, 3 * FOOT)
    assert isinstance(slab, LineSlab)
    assert slab.area / FOOT**2 == pytest.approx(6 * 83.1288, abs=5e-3)  # the line runs in its middle


def test_a_slab_that_cannot_follow_is_refused_in_words() -> None:
    with pytest.raises(BadJob) as refusal:
        slab_on(settled(WALK), 31 * FOOT, 0.0, TAPE.show)
    assert (refusal.value.field, refusal.value.key) == ("width", "line.no_radius")
    assert "Piece 2" in refusal.value.wrong and "left" in refusal.value.wrong and "31' 0\"" in refusal.value.wrong
    short = settled([{"straight": "1 ft"}, {**STRAIGHT, "kink": "90° right"}])
    with pytest.raises(BadJob) as refusal:
        slab_on(short, 0.0, 2 * FOOT, TAPE.show)
    assert refusal.value.key == "line.no_room" and "right" in refusal.value.wrong


def test_each_value_tells_how_it_was_read() -> None:
    reader = reader_of({"line": [STRAIGHT, {**LEFT, "kink": "2° right"}]})
    line = read_line(reader)
    assert line and isinstance(line.pieces[1], ArcSaid)
    assert [reading.field for reading in reader.readings] == [
        "line[0].straight",
        "line[1].arc.radius",
        "line[1].arc.central_angle",
        "line[1].kink",
    ]
    assert reader.readings[3].typed == "2° right" and "2°" in reader.readings[3].text


def test_a_job_stakes_one_arc_of_its_line() -> None:
    """The first arc, or the one that is named; from its tangent where a piece stands before it."""
    job = read_job({"line": WALK})
    assert job.line is not None and (job.at, job.side, job.start) == (1, "right", "one-end")
    assert [given.value for given in job.givens] == [pytest.approx(31 * FOOT), 70]
    other = read_job({"line": WALK, "at": 3, "start": "ends"})
    assert (other.at, other.side, other.start) == (2, "left", "ends")
    assert read_job({"line": [LEFT, STRAIGHT]}).start == "ends"


@pytest.mark.parametrize(
    ("job", "field", "key"),
    [
        ({"line": [STRAIGHT]}, "line", "line.no_arc"),
        ({"line": WALK, "at": 1}, "at", "line.at_no_arc"),
        ({"line": WALK, "at": 9}, "at", "job.number"),
        ({"line": WALK, "side": "left"}, "side", "line.beside"),
        ({"line": WALK, "arc": LEFT["arc"]}, "line", "line.with_arc"),
        ({"arc": LEFT["arc"], "at": 1}, "at", "line.at_alone"),
    ],
)
def test_what_a_job_with_a_line_may_not_say(job: dict[str, Any], field: str, key: str) -> None:
    with pytest.raises(BadJob) as refusal:
        read_job(job)
    assert (refusal.value.field, refusal.value.key) == (field, key)
