"""The boards along a line, told: one arc as an arc alone has it, a walk by hand, kinks, and what doesn't bend."""

from __future__ import annotations

import re
from itertools import pairwise
from math import ceil, radians
from typing import Any

import pytest

import bowstring
from bowstring.units.lengths import read_length
from bowstring.words import say, speak
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK

ROW, MORE = 34, 40
"""Letters that a row has room for on a narrow phone."""


def answered(job: dict[str, Any], **other: Any) -> Any:
    return bowstring.answering({**job, **other})  # type: ignore[typeddict-item]


def page(job: dict[str, Any], **other: Any) -> Any:
    return next(one for one in answered(job, **other)["lined"]["pages"] if one["key"] == "boards")


def table(told: Any, title: str) -> list[list[str]]:
    return next(one["rows"] for one in told["tables"] if one["title"] == say(title))


def tight(radius: str, **other: Any) -> dict[str, Any]:
    """The creek walk with its second arc at another radius."""
    line = [*CREEK["line"][:2], {"arc": {"radius": radius, "central_angle": "40"}, "turn": "right"}, *CREEK["line"][3:]]
    return {**CREEK, "line": line, **other}


@pytest.mark.parametrize(
    "board", [{}, {"overrun": "0"}, {"gap": "2 ft", "kind": "2x4"}, {"lengths": ["8 ft", "12 ft"]}]
)
def test_one_arc_as_a_line_has_the_boards_of_the_arc_alone(board: dict[str, Any]) -> None:
    alone, told = answered(WALK, board=board)["boards"], page(ONE_ARC, board=board)
    first, second = alone["edges"]
    assert told["short"] == alone["short"] and told["more"] == alone["more"] and told["state"] == alone["state"]
    assert [row[2:] for row in table(told, "boards.cut_head")] == [
        [row["needs"], row["boards"]] for row in alone["cut"]
    ]
    assert table(told, "boards.buy_head") == [
        [row["board"], row["length_shown"], f"{row['count']}"] for row in alone["buy"]
    ]
    gaps = [say("lined.gaps", gaps=edge["gaps"], gap=edge["gap_shown"]) for edge in (first, second)]
    assert table(told, "boards.stakes_head") == [["Arc 1", *gaps]]
    splices = [splice["along_shown"] for edge in (first, second) for splice in edge["splices"]]
    assert [row[1] for row in table(told, "lined.splices_head")] == splices
    assert [row[:2] for row in table(told, "boards.title")] == [
        [row["name"], row["least_shown"]] for row in alone["rows"]
    ]
    made = answered(ONE_ARC, board=board)["boards"]
    assert made == {"board": next(row["name"] for row in alone["rows"] if row["used"]), "stakes": alone["stakes"]}


def test_the_creek_walks_stakes_by_hand() -> None:
    """At most 3 ft along the straights; along an arc as far as sqrt(8 R 1/4 in), the miss of a straight piece."""
    told, made = page(CREEK), answered(CREEK)["boards"]
    count = 0
    for turns in ((28, 27), (34, 21)):
        arcs = [r * radians(a) / (8 * r / 48) ** 0.5 for r, a in zip(turns, (70, 40), strict=True)]
        count += sum(map(ceil, (20 / 3, *arcs, 8.5 / 3))) + 1 + 2
    splices = len(table(told, "lined.splices_head"))
    assert (made["board"], made["stakes"]) == ("1x4", count + splices + 2 * 3)  # each end form is 6 ft wide
    assert "End forms at both ends: every 3' 0\", 2 even spaces in each form, a stake at both ends." in told["lines"]
    assert any(line.startswith(f"{ceil(made['stakes'] * 1.1)} stakes: {made['stakes']},") for line in told["lines"])
    assert say("lined.tightest", edge="Arc 3, right edge", radius="21' 0\"") in told["lines"]
    straights = [row for row in table(told, "boards.stakes_head") if row[0].startswith("Straight")]
    assert straights == [["Straight 1", *["7 x 2' 10-1/4\""] * 2], ["Straight 4", *["3 x 2' 10\""] * 2]]


def test_the_creek_walks_cut_list_holds_its_boards() -> None:
    told = page(CREEK)
    rows = table(told, "boards.cut_head")
    # 2 + 20 + (28 - 1/32) x 70° + (27 + 1/32) x 40° + 8.5 + 2 = 85.5394 ft, and 34 and 21 ft the other way: 88.7393
    needs = [2 + 20 + (28 - 1 / 32) * radians(70) + (27 + 1 / 32) * radians(40) + 10.5,
             2 + 20 + (34 + 1 / 32) * radians(70) + (21 - 1 / 32) * radians(40) + 10.5]  # fmt: skip
    for row, need in zip(rows, needs, strict=False):
        assert abs(_feet(row[2]) - need) < 1 / 96
        boards = [float(one) for one in row[3].split(", ")]
        assert need <= sum(boards) < need + 16
    assert rows[-1][2] == "2 of 6' 0\""


def _feet(text: str) -> float:
    feet, inches = text.rstrip('"').split("' ")
    whole, _, part = inches.partition("-")
    if "/" in whole:
        whole, part = "0", whole
    top, _, bottom = part.partition("/")
    return float(feet) + (float(whole) + (float(top) / float(bottom) if part else 0)) / 12


def test_boards_end_at_kinks() -> None:
    told = page(KINKED)
    names = [row[0] for row in table(told, "boards.cut_head")]
    assert names[:6] == [f"{hand} form, run {run}" for hand in ("Left", "Right") for run in (1, 2, 3)]
    assert say("lined.cut_at_kinks") in told["lines"] and say("lined.cut_at_kinks") not in page(CREEK)["lines"]
    gaps = [int(cell.split(" x ")[0]) for row in table(told, "boards.stakes_head") for cell in row[1:]]
    splices = len(table(told, "lined.splices_head"))
    assert answered(KINKED)["boards"]["stakes"] == sum(gaps) + 2 * 3 + 2 * 2 + splices + 2 * 3


def test_what_does_not_bend_is_told_by_its_piece_and_edge() -> None:
    told = page(tight("12 ft"))
    assert (told["state"], told["short"], told["panel"]) == ("stop", "Nothing here bends", "slab")
    assert told["more"] == "Arc 3, right edge: R 9' 0\"" and "Arc 3, right edge" in told["stop"] and not told["tables"]
    # What a kerf leaves of the 2x4, 1/2 in, takes 9 ft less 1/4 in by 160 times it, 6 ft 8 in, but not by 250.
    clear = page({**tight("12 ft"), "board": {"level": "clear"}})
    kerfed = [
        any(line.startswith("Or kerf the 2x4 (Arc 3, right edge):") for line in one["lines"]) for one in (told, clear)
    ]
    assert kerfed == [False, True]
    assert answered(tight("12 ft"))["boards"]["board"] is None
    both = page({**CREEK, "line": [{"arc": {"radius": "9 ft", "central_angle": "40"}, "turn": "left"},
                                   {"straight": "6 ft"}, *tight("12 ft")["line"][2:]]})  # fmt: skip
    assert both["more"] == "Arc 1, left edge: R 6' 0\"" and "Arc 3, right edge" in both["lines"][0]
    near = page(tight("15 ft"))  # the inner edge at 12 ft: 1x4 takes it in clear lumber
    assert near["state"] == "near" and near["tables"] and near["short"] == "1x4 bends only in clear lumber"


def test_before_the_slab_the_line_alone_is_told() -> None:
    without = {key: value for key, value in CREEK.items() if key != "width"}
    told = page(without)
    assert (told["state"], told["more"]) == ("open", say("boards.line_alone")) and answered(without)["boards"] is None
    assert page(CREEK, board={"kind": "oak"})["short"] == say("boards.how_thick")
    wall = page(CREEK, slab={"poured": "wall", "thickness": "4 ft"})
    assert (wall["short"], wall["more"]) == (say("walled.forms_designed"), say("walled.by_supplier"))
    deep = page(CREEK, slab={"poured": "slab", "thickness": "4 ft"})
    assert deep["short"] == say("boards.wall") and deep["more"] == say("boards.wall_more")
    line = [*CREEK["line"][:3], {"straight": "8 ft", "kink": "2"}]
    assert page(CREEK, line=line)["panel"] == "pieces" and answered(CREEK, line=line)["boards"] is None


@pytest.mark.parametrize("language", ["english", "spanish", "british"])
@pytest.mark.parametrize("job", [CREEK, KINKED, METRIC_LINE, tight("12 ft"), tight("15 ft"), tight("200 ft")])
def test_a_row_has_room_in_every_language(job: dict[str, Any], language: str) -> None:
    speak(language)
    try:
        for board in ({}, {"kind": "2x4"}, {"level": "selected"}, {"overrun": "0", "level": "selected"}):
            told = page(job, board=board)
            assert len(told["short"]) <= ROW and len(told["more"]) <= MORE, (told["short"], told["more"])
    finally:
        speak("english")


def _of_an_arc(pages: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The pages without the one table that is of the staked arc, by its name."""
    return [{**page, "tables": [one for one in page["tables"] if one["key"] != "at_stakes"]} for page in pages]


@pytest.mark.parametrize(("job", "arcs"), [(FIVE, (2, 4)), ({**FIVE, "edge": "right"}, (2, 4)), (CREEK, (2, 3))])
@pytest.mark.parametrize("board", [{}, {"overrun": "0", "lengths": ["8 ft", "12 ft"]}])
def test_which_arc_is_staked_changes_nothing_of_what_is_built(
    job: dict[str, Any], arcs: tuple[int, int], board: dict[str, Any]
) -> None:
    first, other = (answered(job, board=board, at=at) for at in arcs)
    for part in ("edges", "boards", "joints", "grades", "pour", "build"):
        assert first[part] == other[part]
    assert _of_an_arc(first["lined"]["pages"]) == _of_an_arc(other["lined"]["pages"])
    assert first["lined_sheet"] == other["lined_sheet"]


def test_own_rounds_of_an_arc_change_nothing_of_the_boards_of_several() -> None:
    assert page({**FIVE, "levels": 1}) == page({**FIVE, "levels": 5})


@pytest.mark.parametrize("job", [FIVE, {**FIVE, "edge": "centre", "drawn_to": "centre"}, CREEK, METRIC_LINE])
def test_only_boards_along_an_arc_are_counted_as_bent(job: dict[str, Any]) -> None:
    told, unit = answered(job), job.get("unit", "ft-in")
    edges = next(one for one in told["lined"]["pages"] if one["key"] == "edges")
    kinds, bent, boards = [piece["kind"] for piece in told["line"]["pieces"]], 0, 0
    for hand in ("left", "right"):
        rows = next(one["rows"] for one in edges["tables"] if one["key"] == hand)
        ends = [read_length(row[-1], unit, "at").metres for row in rows]
        arcs = [span for span, kind in zip(pairwise([0.0, *ends]), kinds, strict=True) if kind == "arc"]
        splices = [row[1] for row in table(page(job), "lined.splices_head") if row[0] == say(f"lined.form_{hand}")]
        places = [-1.0, *(read_length(at, unit, "at").metres for at in splices), ends[-1] + 1.0]
        boards += len(places) - 1
        bent += sum(any(first < far and last > near for near, far in arcs) for first, last in pairwise(places))
    assert page(job)["more"].split()[0] == f"{bent}"
    assert bent <= boards


def test_boards_of_straights_alone_are_not_counted_as_bent() -> None:
    # By hand, from the splices: the left form's 12' 0" and 88' 0" are on straights 1 and 5, the right form's 10' 0" and
    # 90' 0", too; the four boards outside of these lie along straights alone, eleven of fifteen reach an arc.
    assert page(FIVE)["more"].startswith("11 boards")
    assert sum(len(row[3].split(", ")) for row in table(page(FIVE), "boards.cut_head")[:2]) == 15


def test_the_least_radius_of_a_board_is_one_number_on_the_page() -> None:
    """Of an inner edge, in the table and in the text under it."""
    line = [{"straight": "12 ft"}, {"arc": {"radius": "25 ft", "central_angle": "60"}, "turn": "right"}]
    for job in ({**FIVE, "line": line, "at": 2}, FIVE, CREEK, METRIC_LINE):
        told = page(job)
        bends = {row[0]: row[1] for row in table(told, "boards.title")}
        text = next(one for one in told["lines"] if "no tighter than" in one)
        said = dict(reversed(one) for one in re.findall(r"R (.+?) for ([^;.]+)", text))
        assert said and said == {board: bends[board] for board in said}
