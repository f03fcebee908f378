"""A wall's forms are two faces, its footing's are boards on stakes; its dig is told in plan and by the depth."""

from __future__ import annotations

import re
from math import asin, ceil
from typing import Any

import pytest

from bowstring.faces.build import build_html
from bowstring.faces.paper import paper_html
from bowstring.forming.plywood import sheets_of
from bowstring.sheet.text import sheet_text
from helping import answer_to
from radius_wall import WALL
from slab_jobs import WALK

ANGLE = 2 * asin(16 / 28)


def test_both_faces_are_told_with_their_areas_by_hand() -> None:
    """Length times height: R 28 ft and R 27 ft 4 in over the same angle, 3 ft 6 in high."""
    told = answer_to(WALL)["edges"]["faces"]
    outside, inside = (f"{ANGLE * radius * 3.5:.1f} ft²" for radius in (28, 28 - 8 / 12))
    assert told[0] == "Wall forms: 34' 0-3/4\" outside, 33' 3\" inside, 3' 6\" high"
    for radius, feet in ((28, 34 + 0.75 / 12), (28 - 8 / 12, 33.25)):
        assert abs(ANGLE * radius - feet) < 1 / 192  # half of the tape's 1/8 in
    assert told[1] == f"Contact area: {outside} outside, {inside} inside."
    row = answer_to(WALL)["build"][1]
    assert row["text"] == "Faces 34' 0-3/4\" and 33' 3\"" and "1x12" in row["more"]
    page = build_html(answer_to(WALL), "boards")  # type: ignore[arg-type]
    assert ">Forms <b>" in page and ">Boards <b>" not in page and ">Boards <b>" in build_html(answer_to(WALK), "boards")  # type: ignore[arg-type]


@pytest.mark.parametrize(("radius", "thickness"), [("28 ft", "3/4 in"), ("17.5 ft", "5/8"), ("13 ft", "1/2 in"),
                         ("9 ft", "3/8 in")])  # fmt: skip
def test_plywood_by_the_panel_makers_table(radius: str, thickness: str) -> None:
    """APA, concrete-form panels, bent dry along the grain: 3/8 in to 8 ft, 1/2 in to 12 ft, 3/4 in to 20 ft. The list
    has no 5/8 in: between 16 and 20 ft it is 1/2 in."""
    told = " ".join(answer_to({**WALL, "arc": {"radius": radius, "chord": "12 ft"}})["edges"]["faces"])
    assert f"Plywood up to {thickness.replace('5/8', '1/2 in')} bends dry" in told


def test_sheets_stand_end_to_end_along_each_face() -> None:
    told = " ".join(answer_to(WALL)["edges"]["faces"])
    outer, inner = (ceil(ANGLE * radius / 8) for radius in (28, 28 - 8 / 12))
    assert f"{outer} outside, {inner} inside" in told
    high = " ".join(answer_to({**WALL, "slab": {**WALL["slab"], "thickness": "7 ft"}})["edges"]["faces"])
    assert f"{2 * outer} outside, {2 * inner} inside" in high


BY_SHEET = "Sheets 4' 0\" x 8' 0\""


@pytest.mark.parametrize(("high", "told"), [
    ("4 ft", f"{BY_SHEET}, to the full height of the wall: 6 outside, 6 inside."),
    ("8 ft", f"{BY_SHEET}, to the full height of the wall: 12 outside, 12 inside."),
    # 12 strips of 2 in and a saw cut of 1/8 in are 25-1/2 in of one sheet
    ("4 ft 2 in", f"{BY_SHEET}: 6 outside, 6 inside, and 1 to rip: the upper row is only 2\" high."),
    # two strips of 2 ft a sheet, twelve strips
    ("2 ft", f"{BY_SHEET}: 6 for both faces, ripped 2' 0\" high."),
    ("6 ft", f"{BY_SHEET}: 6 outside, 6 inside, and 6 to rip: the upper row is only 2' 0\" high."),
    # three of 1 ft: four with their cuts are more than 4 ft
    ("5 ft", f"{BY_SHEET}: 6 outside, 6 inside, and 4 to rip: the upper row is only 1' 0\" high."),
    ("6 ft 1 in", f"{BY_SHEET}, to the full height of the wall: 12 outside, 12 inside."),
])  # fmt: skip
def test_a_low_upper_row_is_ripped_out_of_as_many_sheets_as_it_takes(high: str, told: str) -> None:
    """Faces of 42 ft 9 in and 41 ft 9 in, six sheets long each; counted by hand."""
    arc = {"radius": "34 ft", "chord": "40 ft"}
    job = {**WALL, "arc": arc, "width": "10 in", "slab": {**WALL["slab"], "thickness": high}}
    edges = answer_to(job)["edges"]
    assert told in edges["faces"] and told in edges["faces_sheet"]


@pytest.mark.parametrize(("high", "told"), [
    ("1.2 m", "Sheets 1.200 m x 2.400 m, to the full height of the wall: 6 outside, 6 inside."),
    ("1.25 m", "Sheets 1.200 m x 2.400 m: 6 outside, 6 inside, and 1 to rip: the upper row is only 50 mm high."),
    ("0.6 m", "Sheets 1.200 m x 2.400 m: 6 for both faces, ripped 600 mm high."),
])  # fmt: skip
def test_metric_sheets_are_ripped_too(high: str, told: str) -> None:
    """Faces of 13.0 m and 12.7 m, 2.4 m a sheet: six each."""
    slab = {"poured": "wall", "thickness": high, "footing_width": "0.75 m", "footing_depth": "0.3 m"}
    job = {**WALL, "unit": "m", "arc": {"radius": "10.4 m", "chord": "12.2 m"}, "width": "0.25 m", "slab": slab,
           "joints": {"every": "3 m"}, "tolerance": "6 mm"}  # fmt: skip
    assert told in answer_to(job)["edges"]["faces"]


def test_no_face_is_left_bare_and_no_sheet_cut_into_more_than_it_is() -> None:
    for high in (0.3, 1.0, 1.9, 2.0, 2.1, 3.99, 4.0, 4.005, 4.02, 5.3, 6.0, 7.9, 8.0, 9.1):
        made = sheets_of((42.8, 41.7), high, (4.0, 8.0), 1 / 96)
        assert made.rows * 4.0 + made.strip >= high - 1 / 96 and made.each == (6 * made.rows,) * 2
        if made.strip:
            of_one = ceil(12 / made.ripped)
            assert of_one * made.strip + (of_one - 1) / 96 <= 4 + 1 / 96 + 1e-9


def test_the_footing_is_formed_as_a_slab_of_its_depth() -> None:
    """Beside a slab of the footing's own measures: the same board, and within a stake as many."""
    told = " ".join(answer_to(WALL)["edges"]["faces"])
    assert "34' 10-1/2\" outside on R 28' 8\", 32' 5-1/4\" inside on R 26' 8\"" in told
    slab = {**WALL, "arc": {"radius": "28 ft 8 in", "central_angle": "69.69961"}, "width": "2 ft",
            "slab": {"thickness": "10 in"}}  # fmt: skip
    boards = answer_to(slab)["boards"]
    assert boards is not None and " ".join(boards["conclusion"]) in told
    stakes = int(told.split(" form stakes")[0].rsplit(" ", 1)[1])
    assert abs(stakes - boards["with_spare"]) <= 2


def test_no_form_stake_of_a_wall_stands_anywhere() -> None:
    answer = answer_to(WALL)
    edges = answer["edges"]
    assert not any("form" in line["key"] for line in edges["lines"])
    assert edges["stick"]["marks"] == []
    paper = paper_html(answer)  # type: ignore[arg-type]
    assert "Outer form stakes" not in paper and "Inner form stakes" not in paper
    assert "Slab INSIDE" not in paper and "INSIDE the drawing" in paper
    page = build_html(answer, "boards")  # type: ignore[arg-type]
    assert "Plywood up to" in page and "licensed" in page
    walk = answer_to(WALK)["edges"]
    assert walk["faces"] == [] and any(line["key"] == "outer_form" for line in walk["lines"])


def test_the_dig_in_plan_is_the_footing_and_what_is_dug_past_it() -> None:
    """R 29 ft 8 in to R 25 ft 8 in over the angle, and 1 ft past each end, 4 ft wide."""
    area = ANGLE * (29 + 8 / 12 + 25 + 8 / 12) / 2 * 4 + 2 * 4
    told = " ".join(answer_to(WALL)["edges"]["passes"])
    assert f"{area:.1f} ft² in plan, {area / 27:.1f} yd³" in told
    assert "After the footing's pour" in told and "base" not in told


def of_footing(deep: str, **job: Any) -> tuple[str, Any]:
    answer = answer_to({**WALL, **job, "slab": {**WALL["slab"], "footing_depth": deep}})
    return " ".join(answer["edges"]["faces"]), answer["edges"]["footing"]


@pytest.mark.parametrize(("deep", "told"), [
    ("11 in", ""),
    ("11-3/4 in", ""),  # half an inch is nothing under a form
    ("12 in", "1x12 is 11-1/4 in high: for 1' 0\" set it 3/4\" off the ground, and bank earth against it."),
    ("14 in", "1x12 is 11-1/4 in high: too low for 1' 2\" of concrete. Use a taller board, or stack two."),
])  # fmt: skip
def test_a_board_too_low_for_the_footing_is_said_to_be(deep: str, told: str) -> None:
    """A 1x12 is 11-1/4 in high (American Softwood Lumber Standard PS 20): 3/4 in short of 12, 2-3/4 of 14."""
    said, boards = of_footing(deep)
    assert (told in said) if told else ("off the ground" not in said and "too low" not in said)
    assert not told or told in boards["notes"]
    answer = answer_to({**WALL, "slab": {**WALL["slab"], "footing_depth": deep}})
    assert ("1x12 too low, 11-1/4 in high" in answer["build"][1]["more"]) == (deep == "14 in")
    caution = build_html(answer, "boards").partition("<details")[0].count('class="care"')  # type: ignore[arg-type]
    assert caution == bool(told)


def test_a_slab_is_told_of_its_low_board_as_a_footing_is() -> None:
    notes = answer_to({**WALK, "slab": {"thickness": "12 in"}})["boards"]["notes"]
    assert 'set it 3/4" off the ground' in notes[-1]
    high = answer_to({**WALK, "slab": {"thickness": "4 in"}, "board": {"kind": "1x4"}})["boards"]["notes"]
    assert not any("off the ground" in note for note in high)  # 3-1/2 for 4 in


def test_the_footings_forms_are_listed_bought_and_staked_as_a_slabs() -> None:
    """The same as of a slab along the footing's own edges, behind one line."""
    answer = answer_to(WALL)
    footing = answer["edges"]["footing"]
    slab = answer_to({**WALL, "arc": {"radius": "28 ft 8 in", "central_angle": "69.69961"}, "width": "2 ft",
                      "slab": {"thickness": "10 in"}, "board": {"overrun": "1 ft"}})["boards"]  # fmt: skip
    assert [row["needs"] for row in footing["cut"]] == [row["needs"] for row in slab["cut"]]
    count = sum(row["count"] for row in footing["buy"])
    page, sheet = build_html(answer, "boards"), sheet_text(answer)  # type: ignore[arg-type]
    assert f"{count} boards, {footing['with_spare']} form stakes, a tenth spare" in page
    assert page.index("<details") < page.index("To buy")
    assert "To buy" in sheet and footing["stakes_how"][0] in sheet
    assert answer_to(WALK)["edges"]["footing"] is None
    bare = answer_to({**WALL, "slab": {"poured": "wall", "thickness": "3 ft 6 in"}})["edges"]
    assert bare["footing"] is None and "footing" not in " ".join(bare["faces"])


def test_a_footings_splices_keep_off_no_stake_of_the_layout() -> None:
    """None stands at its form. Its inner edge, 40 ft 8 in on R 32 ft 4 in and a foot past each end, is 42 ft 8 in:
    10, 10, 10 and 14 ft are as much lumber as 14, 14 and 16, with a splice more."""
    wall = {"poured": "wall", "thickness": "4 ft 2 in", "footing_width": "2 ft 6 in", "footing_depth": "12 in"}
    job = {**WALL, "arc": {"radius": "34 ft", "chord": "40 ft"}, "width": "10 in", "slab": wall, "levels": 4}
    footing = answer_to({**job, "offset": "3 ft", "toward": "outside", "driven": "hub"})["edges"]["footing"]
    inner = footing["cut"][1]["boards"]
    assert sorted(int(size) for size in re.findall(r"\d+", inner)) == [14, 14, 16], inner
    assert not footing["gave_way"]


def test_the_end_forms_have_a_count_a_width_and_a_height() -> None:
    """They stand between both faces, square to the line: as wide as the wall is thick there."""
    slab = {"poured": "wall", "thickness": "3 ft 6 in"}
    edges = answer_to({**WALL, "width": "9 in", "slab": slab})["edges"]
    assert 'End forms: 2, 9" wide, 3\' 6" high.' in edges["faces"] and edges["faces_sheet"][-2] in edges["faces"]
    tapered = answer_to({**WALL, "width": "9 in", "slab": {**slab, "end_width": "14 in"}})["edges"]
    assert 'End forms: 9" wide at A, 1\' 2" at B, 3\' 6" high.' in tapered["faces"]


def test_what_the_line_is_for_before_the_first_pour() -> None:
    edges = answer_to(WALL)["edges"]
    assert any("dowels and key" in text and "before its pour" in text for text in edges["passes"])
    assert any("assumed to end flush with the wall" in text for text in edges["faces"])
    bare = answer_to({**WALL, "slab": {"poured": "wall", "thickness": "3 ft 6 in"}})["edges"]
    assert not any("dowels" in text for text in bare["passes"])


def test_a_walls_stick_speaks_of_forms_and_of_the_wall() -> None:
    wall, walk = answer_to(WALL)["edges"]["stick"], answer_to(WALK)["edges"]["stick"]
    assert wall["how"][0] == "Set the outer form first." and "makes the wall thinner by" in wall["slip_text"]
    assert "board first" in walk["how"][0] and "concrete narrow" in walk["slip_text"]


def test_a_walls_grade_question_asks_of_its_top() -> None:
    job = {key: value for key, value in WALL.items() if key != "grade"}
    assert "Is its top level?" in build_html(answer_to(job), "", "slope")  # type: ignore[arg-type]
    walk = {key: value for key, value in WALK.items() if key != "grade"}
    assert "How steep is it?" in build_html(answer_to(walk), "", "slope")  # type: ignore[arg-type]


@pytest.mark.parametrize(("overdig", "said", "past"), [
    (None, None, "1' 0\""), ("3 ft", None, "2' 0\""), ("8 in", None, '8"'), ("4 in", None, ""),
    (None, "3 ft", "1' 0\""),
    (None, "0", ""),
])  # fmt: skip
def test_a_footings_boards_run_on_no_farther_than_it_is_dug(overdig: str | None, said: str | None, past: str) -> None:
    """What runs past an end can't be longer than the dig there, 1 ft where nothing is said; by less than 6 in nothing
    holds it."""
    slab = {**WALL["slab"], **({"overdig": overdig} if overdig else {})}
    edges = answer_to({**WALL, "slab": slab, "board": {"overrun": said} if said else {}})["edges"]
    told = " ".join(edges["footing"]["ends"])
    if past:
        assert f"Carry the board {past} past A and B" in told
    else:
        assert "Carry the board" not in told and "2' 0\" past" not in told


def test_a_walls_paper_tells_of_its_dig_to_where_and_past_its_ends() -> None:
    ground = [{"stake": "A", "edge": "outside", "level": "102 ft"}]
    dug = {**WALL, "grade": {**WALL["grade"], "from": "104.50 ft", "ground": ground}}
    told = paper_html(answer_to(dug), "May 31")  # type: ignore[arg-type]
    plain = " ".join(re.sub(r"<[^>]+>", "", told).split())
    for text in (
        "1&#x27; 10&quot;; 102.00",  # 104.50 less 42 and 10 in is 100.17
        "are to the underside of the footing",
        "past A and B too",
        "After the footing&#x27;s pour, set the line",
    ):
        assert text in plain, text
    assert "in plan" not in plain  # how much that is stands with the build


def test_diagonals_of_a_wall_that_tapers_are_listed() -> None:
    """Corner to corner of a bay that widens: one way is not the other, though no stake has moved."""
    wide = {**WALL, "slab": {**WALL["slab"], "end_width": "14 in"}}
    edges = answer_to(wide)["edges"]
    assert any(bay["forth_shown"] != bay["back_shown"] for bay in edges["bays"])
    assert "has slid" not in edges["check"] and "as listed" in edges["check"]
    plain = " ".join(re.sub(r"<[^>]+>", "", paper_html(answer_to(wide), "May 31")).split())  # type: ignore[arg-type]
    assert "has slid" not in plain
    few = {**wide, "levels": 2}
    plain = " ".join(re.sub(r"<[^>]+>", "", paper_html(answer_to(few), "May 31")).split())  # type: ignore[arg-type]
    for bay in answer_to(few)["edges"]["bays"]:
        assert f"{bay['first']}-{bay['last']} " in plain
    assert "has slid" in answer_to(WALK)["edges"]["check"]
