"""The boards, told: a 5-ft walk inside R 62 ft as it was worked by hand, and what changes the conclusion."""

from __future__ import annotations

from typing import Any

import pytest

from bowstring import answering
from bowstring.forming.boards import POUND_FORCE
from bowstring.forming.strip import strip
from bowstring.report.forms.build import BuildRow
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.words import speak
from form_jobs import CROSSED
from helping import SAID, answer_to

FOOT, INCH = 0.3048, 0.0254
WALK: dict[str, Any] = {
    **SAID,
    "arc": {"radius": "62 ft", "chord": "48 ft"},
    "levels": 3,
    "side": "left",
    "width": "5 ft",
    "edge": "outside",
    "slab": {"thickness": "4 in"},
}
ROW, MORE = 34, 40
"""Letters that a row has room for on a narrow phone."""


def told(**other: Any) -> tuple[BuildRow, BoardsPart]:
    answer = answering({**WALK, **other})
    part = answer["boards"]
    assert part is not None
    return row(**other), part


def row(**other: Any) -> BuildRow:
    return next(one for one in answering({**WALK, **other})["build"] if one["key"] == "boards")


def of_radius(feet: float) -> dict[str, Any]:
    """A walk whose outer edge has a radius, over an arc of about 50 degrees."""
    return {"arc": {"radius": f"{feet} ft", "chord": f"{feet * 0.85} ft"}}


def test_a_walk_of_five_feet() -> None:
    first, part = told()
    assert (first["state"], first["text"], first["panel"]) == ("usual", "1x4 bends; so does 2x4", "")
    assert part["conclusion"] == ["1x4 bends to both edges.", "So does 2x4."]
    assert "R 57' 0\"" in part["tighter_told"]
    one, two = part["rows"][:2]
    assert (one["least_shown"], two["least_shown"]) == ("15' 8\"", "31' 4\"")  # of the edge: half a board more
    assert (one["push_shown"], two["push_shown"]) == ("9 lb", "70 lb")
    assert one["push"] is not None and one["push"] / POUND_FORCE == pytest.approx(8.7, abs=0.05)
    assert '4-3/4" on the outer edge, 5-1/8" on the inner' in part["bow"][0]
    assert part["springs_shown"] == '5-1/8"'


def test_the_walks_edges() -> None:
    _, part = told()
    outer, inner = part["edges"]
    assert [edge["length_shown"] for edge in part["edges"]] == ["53' 3-3/4\"", "49' 3-1/2\""]
    assert [edge["gap_shown"] for edge in part["edges"]] == ["2' 10-3/4\"", "2' 10\""]
    assert [edge["gaps"] for edge in part["edges"]] == [17, 16]
    assert [sum(edge["boards"]) / FOOT for edge in part["edges"]] == pytest.approx([54, 50])
    assert outer["bow"] is not None and outer["bow"] / INCH == pytest.approx(0.08, abs=0.005)
    # 6 of them behind the two end forms: each is 5 ft wide, at most 4 ft from stake to stake, ends included
    assert (part["stakes"], part["with_spare"]) == (45 + 2 * 3, 57)
    assert "End forms at A and B: every 2' 6\", 2 even spaces in each form, a stake at both ends." in part["stakes_how"]
    assert "Kickers aren't counted: a stake more for each one." in part["stakes_how"]
    assert inner["end_miss"] == pytest.approx(57 * FOOT * strip(inner["gap"] / (57 * FOOT)).miss, rel=2e-3)
    assert inner["end_miss_shown"] == "1/8 in"


def test_the_walks_cut_list() -> None:
    _, part = told()
    assert [(row["name"], row["needs"]) for row in part["cut"][2:]] == [
        ("splices", "6 of 2' 0\""),
        ("end forms", "2 of 5' 0\""),
    ]
    assert part["cut"][2]["boards"] == "14"  # six of 2 ft and five saw cuts: more than 12 ft
    assert part["cut"][3]["boards"] == "12"
    bought = sum(row["count"] * row["length"] for row in part["buy"])
    listed = sum(sum(edge["boards"]) for edge in part["edges"]) + (14 + 12) * FOOT
    assert bought == pytest.approx(listed)
    assert part["gave_way"] == []
    stakes = [share * 45.3128 for share in (0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1)]
    inner = [splice["along"] / FOOT for splice in part["edges"][1]["splices"]]
    outer = [splice["along"] / FOOT * 57 / 62 for splice in part["edges"][0]["splices"]]
    assert len(inner) == len(outer) == 3
    assert min(abs(one - stake) for one in inner for stake in stakes) >= 0.99
    assert min(abs(one - other) for one in inner for other in outer) >= 2 * 57 / 59.5 - 0.01


@pytest.mark.parametrize(
    ("feet", "board", "state", "text"),
    [
        (38.0, {}, "usual", "1x4 bends; so does 2x4"),
        (36.5, {}, "usual", "1x4 bends; 2x4 only just"),
        (36.2, {}, "usual", "1x4 bends; 2x4 almost"),
        (34.0, {}, "usual", "1x4 bends; 2x4 doesn't"),
        (21.6, {}, "usual", "1x4 bends; 2x4 doesn't"),
        (20.7, {}, "usual", "1x4 bends, but only just"),
        (20.6, {}, "near", "1x4 bends only in clear lumber"),
        (20.6, {"level": "clear"}, "near", "1x4 bends only in clear lumber"),
        (14.0, {}, "stop", "Nothing here bends"),
        (14.0, {"level": "selected"}, "near", "1x4 bends only in picked strips"),
        (14.0, {"level": "selected", "overrun": "0 ft"}, "stop", "Nothing here bends"),
        (11.0, {"level": "selected"}, "stop", "Nothing here bends"),
        (30.0, {"kind": "2x4"}, "near", "2x4 bends only in clear lumber"),
        (24.0, {"kind": "2x4"}, "stop", "2x4 won't bend; 1x4 does"),
        (60.0, {"thickness": "1 in", "kind": "ply"}, "usual", "ply bends"),
        (12.0, {"thickness": "1/4 in"}, "usual", "Yours bends"),
        (9.0, {"thickness": "2 in"}, "stop", "Yours won't bend here"),
    ],
)
def test_what_bends(feet: float, board: dict[str, str], state: str, text: str) -> None:
    first, part = told(**of_radius(feet), board=board)
    assert (first["state"], first["text"]) == (state, text)
    assert bool(part["cut"]) == (state != "stop") == bool(part["buy"])
    assert first["panel"] == ("slab" if state == "stop" else "")
    assert bool(part["otherwise"]) == (state != "usual")
    assert part["state"] == state


@pytest.mark.parametrize(("inner", "says"), [
    (1.06, "So does 2x4."),
    (1.04, "So does 2x4, but only just: try one first."),
    (1.001, "So does 2x4, but only just: try one first."),
    (0.999, "2x4 almost does."),
    (0.96, "2x4 almost does."),
    (0.94, "2x4 does not."),
])  # fmt: skip
def test_a_board_within_a_twentieth_of_its_least_radius_only_just_bends(inner: float, says: str) -> None:
    """250 times 1-1/2 in at the board's middle, 3/4 in of it outside the inner edge, 5 ft inside the outer one."""
    feet = inner * 250 * 1.5 / 12 + 0.75 / 12 + 5
    _, part = told(**of_radius(feet))
    assert part["conclusion"] == ["1x4 bends to both edges.", says]
    verdicts = {row["name"]: row["verdict"] for row in part["rows"]}
    assert (verdicts["2x4"] == "only just") == (1 <= inner < 1.05)
    assert verdicts["1x4"] == "bends"


def test_before_the_slab_is_said_the_line_alone_is_told() -> None:
    for left_out in ("width", "edge"):
        build = answering({key: value for key, value in WALK.items() if key != left_out})["build"]
        said = next(one for one in build if one["key"] == "boards")
        assert (said["state"], said["text"], said["panel"]) == ("open", "1x4 bends; so does 2x4", "slab")
        assert "your line" in said["more"]


def test_a_board_of_unknown_thickness_is_asked_for() -> None:
    answer = answering({**WALK, "board": {"kind": "bender"}})
    first = row(board={"kind": "bender"})
    assert answer["boards"] is None
    assert (first["state"], first["text"], first["more"]) == ("open", "How thick is your board?", "bender")


def test_a_width_that_reaches_the_center_is_a_stop() -> None:
    first = row(**of_radius(10), width="12 ft")
    assert first["state"] == "stop" and "inner edge" in first["text"]


def test_the_slabs_thickness_chooses_the_boards_height() -> None:
    first, part = told(slab={"thickness": "6 in"})
    assert first["text"] == "1x6 bends; so does 2x6"
    assert {row["board"] for row in part["cut"]} == {"1x6", "2x6"}
    assert not [note for note in part["notes"] if "too low" in note]
    _, low = told(slab={"thickness": "6 in"}, board={"kind": "1x4"})
    assert [note for note in low["notes"] if "too low" in note]


def test_why_the_stakes_stand_so() -> None:
    """3 ft on a long radius (common practice); on a short one a piece that lies straight misses by 1/4 in at most; deep
    concrete bows a 1x board."""
    _, long = told()
    assert "common practice" in long["edges"][0]["reason"]
    _, short = told(**of_radius(25))
    assert "1/4 in" in short["edges"][1]["reason"]
    assert all(edge["gap"] ** 2 / (8 * edge["radius"]) <= INCH / 4 * (1 + 1e-9) for edge in short["edges"])
    _, deep = told(slab={"thickness": "8 in"})
    assert "bow" in deep["edges"][0]["reason"]
    assert all(edge["bow"] is not None and edge["bow"] <= INCH / 8 * (1 + 1e-9) for edge in deep["edges"])
    _, own = told(board={"gap": "5 ft"})
    assert "yours" in own["edges"][0]["reason"] and "wide" in own["edges"][0]["reason"]
    assert own["edges"][0]["gaps"] == 10


def test_a_metric_job_has_metric_boards() -> None:
    first, part = told(unit="m", arc={"radius": "19 m", "chord": "15 m"}, width="1.5 m", slab={"thickness": "100 mm"})
    assert first["text"] == "25x100 bends; so does 47x100"
    assert part["rows"][0]["push_shown"].endswith(" kg")
    assert part["unit_shown"] == "m"
    assert all(piece > 0 for edge in part["edges"] for piece in edge["pieces"])
    assert min(piece for edge in part["edges"] for piece in edge["pieces"]) >= 2.0
    _, seen = told(), answering({**WALK}, shown="mm")["boards"]
    assert seen is not None and seen["rows"][0]["name"] == "1x4"  # who looks at it in millimetres buys no other boards


def test_a_width_that_changes() -> None:
    _, part = told(slab={"thickness": "4 in", "end_width": "8 ft"})
    inner = part["edges"][1]
    # At B the edge is 54 ft from the center and comes nearer by 3 ft over 0.795 rad: it bends a little tighter there.
    assert inner["radius"] / FOOT == pytest.approx((54**2 + 3.774**2) ** 1.5 / (54**2 + 2 * 3.774**2), abs=0.01)
    assert inner["length"] < 49.29 * FOOT
    assert [row["needs"] for row in part["cut"]][-1] == "5' 0\" and 8' 0\""


def test_the_line_on_the_other_edge_and_in_the_middle() -> None:
    for edge, radii in (("inside", (67, 62)), ("centre", (64.5, 59.5))):
        _, part = told(edge=edge)
        assert [one["radius"] / FOOT for one in part["edges"]] == pytest.approx(radii)


def test_where_stakes_leave_no_room_the_rule_that_gave_way_is_said() -> None:
    _, part = told(levels=5)
    assert part["gave_way"][0].startswith("No order")
    assert len(part["gave_way"]) == 2
    assert part["gave_way"][1].startswith("6 splices land within 1' 0\" of a layout stake: 13' 11-7/8\", outer board (")
    assert part["gave_way"][1].count("board (") == 6


def test_the_one_splice_near_a_stake_is_told_with_its_place() -> None:
    """By hand: R3 is ten sixteenths of 37' 2-13/16" along the inner edge, 23' 3-1/4"; the splice at 24' 0-3/8" is
    9-1/8 in past it."""
    _head, text = answer_to(CROSSED)["boards"]["gave_way"]
    assert text == 'One splice lands within 1\' 0" of a layout stake: 24\' 0-3/8", inner board (9-1/8" from R3).'


def test_without_an_overrun_the_ends_are_told_as_loose() -> None:
    _, part = told(board={"overrun": "0 ft"})
    assert [edge["stakes"] - len(edge["splices"]) for edge in part["edges"]] == [18, 17]
    assert any("stop at A and B" in line for line in part["ends"])
    assert "at A" in part["bending"][0]


@pytest.mark.parametrize("language", ["english", "british", "spanish"])
@pytest.mark.parametrize("feet", [60.0, 30.0, 20.6, 14.0])
def test_a_row_has_room_in_every_language(language: str, feet: float) -> None:
    speak(language)
    try:
        for board in ({}, {"kind": "2x4"}, {"level": "selected"}, {"thickness": "1/2 in"}):
            first, _ = told(**of_radius(feet), board=board)
            assert len(first["text"]) <= ROW, first["text"]
            assert len(first["more"]) <= MORE, first["more"]
    finally:
        speak("english")


def test_steep_and_tiny_slabs_are_told_too() -> None:
    for other in (
        {"arc": {"radius": "6 ft", "chord": "11.9 ft"}, "width": "2 ft"},
        {"arc": {"radius": "3 ft", "chord": "2 ft"}, "width": "1 ft"},
        {"arc": {"radius": "2000 ft", "chord": "300 ft"}, "width": "20 ft", "slab": {"thickness": "12 in"}},
        {"arc": {"radius": "62 ft", "chord": "3 ft"}},
    ):
        first, part = told(**other)
        assert first["text"] and part["stakes"] >= 8
        assert all(edge["gap"] > 0 for edge in part["edges"])
