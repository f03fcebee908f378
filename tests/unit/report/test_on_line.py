"""Which point of the stake is on the line, how to work with it, and where the board runs on."""

from __future__ import annotations

from math import cos, hypot, radians, sin
from typing import Any

import pytest

from bowstring.job.job import DRIVEN
from bowstring.sheet.text import sheet_text
from helping import answer_to

JOB: dict[str, Any] = {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 2, "drawn_to": "face", "side": "left"}
OUTSIDE = {"offset": "4 ft", "toward": "outside"}


def part(**keys: Any) -> dict[str, Any]:
    told: dict[str, Any] = answer_to({**JOB, **keys})["on_line"]
    return told


def flowing(text: str) -> str:
    return " ".join(text.split())


@pytest.mark.parametrize("driven", DRIVEN)
def test_each_has_its_point_its_sentences_and_its_section(driven: str) -> None:
    told = part(driven=driven)
    others = [part(driven=other)["point"] for other in DRIVEN if other != driven]
    assert told["point"] not in others and len(told["lines"]) == 2
    sheet = flowing(sheet_text(answer_to({**JOB, "driven": driven})))  # type: ignore[arg-type]
    assert all(text in sheet for text in (told["point"], *told["lines"], told["drawn_to"]))


def test_a_pin_holds_a_board_off_by_half_of_itself() -> None:
    told = part(driven="pin", diameter="5/8 in")
    assert told["half"] == pytest.approx(0.0254 * 5 / 16, rel=1e-12) and told["half_shown"] == '5/16"'
    assert any('holds the board 5/16" off' in line for line in told["lines"])
    metric = answer_to({"unit": "mm", "arc": {"radius": 9000, "chord": 8000}, "levels": 2, "diameter": "16 mm"})
    assert metric["on_line"]["half_shown"] == "8 mm"
    unsaid = part(driven="pin")
    assert unsaid["half"] is None and any("5/16 in for a 5/8-in pin" in line for line in unsaid["lines"])


def test_a_hub_is_read_again_and_its_tack_moved() -> None:
    lines = " ".join(part(driven="hub")["lines"])
    assert "read the tape again" in lines and "move the tack, not the hub" in lines


def test_a_board_is_gauged_and_not_squared_off() -> None:
    for keys in ({}, {"offset": "1-1/2 in", "toward": "outside"}):
        lines = " ".join(part(driven="board", **keys)["lines"])
        assert "temporary pins" in lines and "scrap of the same board" in lines and "Don't square them off" in lines


def test_hubs_outside_are_come_back_from_by_a_stick() -> None:
    assert part(driven="hub")["come_back"] is None
    told = part(driven="hub", **OUTSIDE)["come_back"]
    assert "stick 4' 0\" long" in told and "each tack" in told and "touches every sweep" in told
    assert part(driven="board", **OUTSIDE)["come_back"] is None


@pytest.mark.parametrize("toward", ["outside", "centre"])
def test_every_sweep_of_that_stick_touches_the_line(toward: str) -> None:
    """By the figures: from each hub the drawn circle is the stick's length away, and no nearer."""
    told = answer_to({**JOB, "driven": "hub", "offset": "4 ft", "toward": toward})
    staked, drawn = told["staked"], told["arc"]
    centre = staked["chord"] / 2, staked["sagitta"] - staked["radius"]
    for stake in told["stakes"]:
        away = hypot(stake["x"] - centre[0], stake["y"] - centre[1])
        assert abs(away - drawn["radius"]) == pytest.approx(4 * 0.3048, rel=1e-9)


@pytest.mark.parametrize("arc", [
    {"chord": "38 ft", "sagitta": "5' 3\""}, {"radius": "10 ft", "central_angle": 180},
    {"radius": "10 ft", "central_angle": 250},
])  # fmt: skip
@pytest.mark.parametrize("off", [{}, {"offset": "6 in", "toward": "centre"}])
def test_the_board_runs_on_along_the_tangent(arc: dict[str, Any], off: dict[str, Any]) -> None:
    """Two feet from the end, square to its radius, on the side away from the curve."""
    told = answer_to({**JOB, "arc": arc, "driven": "board", **off})
    run, staked = told["on_line"]["overrun"], told["staked"]
    half = radians(staked["central_angle"]) / 2
    assert run["length"] == pytest.approx(0.6096, rel=1e-12)
    assert (run["along"], run["off"]) == pytest.approx((0.6096 * cos(half), 0.6096 * sin(half)), abs=1e-12)
    centre = staked["chord"] / 2, staked["sagitta"] - staked["radius"]
    for end, stake in zip((0.0, staked["chord"]), run["stakes"], strict=True):
        way = stake["x"] - end, stake["y"]
        assert hypot(*way) == pytest.approx(0.6096, rel=1e-12) and way[1] < 0
        assert way[0] * (centre[0] - end) + way[1] * centre[1] == pytest.approx(0, abs=1e-9)
        assert hypot(stake["x"] - centre[0], stake["y"] - centre[1]) > staked["radius"]
    for text in ("length", "off") if abs(run["along"]) < 1e-9 else ("length", "along", "off"):
        assert run[f"{text}_shown"] in run["text"]
    assert "Against concrete nothing runs on" in run["text"]


def test_a_metric_board_runs_on_600_millimetres_and_hubs_have_none() -> None:
    told = answer_to({"unit": "mm", "arc": {"radius": 9000, "chord": 8000}, "levels": 2})["on_line"]
    assert told["overrun"]["length_shown"] == "600 mm"
    assert part(driven="hub")["overrun"] is None


def test_a_width_tells_how_far_a_face_is_from_the_centre_line() -> None:
    told = part(drawn_to="centre", width="4 ft")["drawn_to"]
    assert "At 4' 0\" wide, each face is 2' 0\" from the centerline" in told
    assert "wide, each" not in part(drawn_to="centre")["drawn_to"]
    assert "wide, each" not in part(drawn_to="face", width="4 ft")["drawn_to"]
    assert (
        answer_to({**JOB, "drawn_to": "centre", "width": "4 ft"})["stakes"]
        == answer_to({**JOB, "drawn_to": "centre"})["stakes"]
    )


def test_a_line_that_isnt_known_means_nothing_for_the_offset() -> None:
    assert part(drawn_to="unsure")["drawn_to"] is None
    assert answer_to({key: value for key, value in JOB.items() if key != "drawn_to"})["on_line"]["drawn_to"] is None


WALK: dict[str, Any] = {
    "arc": {"radius": "41' 6\"", "chord": "36 ft"}, "side": "left", "levels": 2, "drawn_to": "face", "edge": "inside",
    "width": "4' 6\"", "board": {"kind": "2x4"}, "driven": "pin", "diameter": "3/4 in", "toward": "centre",
}  # fmt: skip
FILL: dict[str, Any] = {
    "arc": {"chord": "24 ft", "sagitta": "3 ft"}, "side": "left", "levels": 2, "drawn_to": "face", "driven": "pin",
    "slab": {"fills": True, "thickness": "4 in"}, "board": {"kind": "1x4"}, "diameter": "3/4 in",
    "toward": "outside",
}  # fmt: skip


def forms_of(job: dict[str, Any]) -> tuple[dict[str, Any], dict[str, Any]]:
    """The line's part, and the forms' own row along the curve."""
    answer = answer_to(job)
    edges: Any = answer["edges"]
    row = next(line for line in edges["lines"] if line["key"] in ("inner_form", "outer_form") and line["yours"])
    return dict(answer["on_line"]), dict(row)


@pytest.mark.parametrize(("job", "board"), [(WALK, 1.5), (FILL, 0.75)], ids=["walk", "fills"])
def test_pins_that_hold_a_board_are_on_its_back_by_their_edges(job: dict[str, Any], board: float) -> None:
    """2x4 and 1x4 are 1-1/2 in and 3/4 in thick (PS 20, American Softwood Lumber Standard, the dressed sizes): a pin of
    3/4 in takes 3/8 in of that where its center is on the board's back."""
    told, row = forms_of({**job, "offset": f"{board} in"})
    assert told["pins"] == "back" and told["point"] == "The line is each pin's edge toward the board, not its center."
    assert row["note"].endswith("your pins' edges") and "edge toward the board" in told["card"]
    centers = {1.5: '1-7/8"', 0.75: '1-1/8"'}[board]
    assert told["lines"][-1] == f"To work by centers instead, set the offset to {centers}."
    form = " ".join(answer_to({**job, "offset": f"{board} in"})["edges"]["form"])  # type: ignore[index]
    assert "set each pin's edge on the line, not its center" in form and centers in form


@pytest.mark.parametrize(("job", "board"), [(WALK, 1.5), (FILL, 0.75)], ids=["walk", "fills"])
def test_pins_hold_a_board_by_their_centers_half_a_pin_behind_it(job: dict[str, Any], board: float) -> None:
    answer = answer_to({**job, "offset": f"{board + 3 / 8} in"})
    told, row = forms_of({**job, "offset": f"{board + 3 / 8} in"})
    assert told["pins"] == "past" and told["point"] == "The line is the center of each pin." and not told["card"]
    assert not any("off it" in line for line in told["lines"]), "the half would be taken twice"
    clear = abs(answer["staked"]["radius"] - answer["arc"]["radius"]) - 0.0254 * 3 / 8
    assert clear == pytest.approx(0.0254 * board, abs=1e-12), "from the concrete to the pin's edge there is the board"
    assert row["note"].endswith("your pins, centers half a pin behind it") and row["off"] == 0.0


@pytest.mark.parametrize(("offset", "driven"), [("1-5/8 in", "pin"), ("1 in", "pin"), ("1-1/2 in", "marked")])
def test_what_stands_in_a_boards_place_holds_none(offset: str, driven: str) -> None:
    job = {**WALK, "offset": offset, "driven": driven}
    if driven != "pin":
        del job["diameter"]
    answer = answer_to(job)
    assert "pull each before its board" in answer["edges"]["form"][-1], "no form stake"  # type: ignore[index]
    assert not answer["on_line"]["pins"]
    free = answer_to({**job, "offset": "3 in"})
    assert not any("pull each" in text for text in free["edges"]["form"])  # type: ignore[index]


def test_no_number_of_a_stake_changes_by_which_point_of_a_pin_is_on_the_line() -> None:
    job = {**WALK, "offset": "1-1/2 in"}
    for other in ({"driven": "hub"}, {"driven": "pin", "diameter": "5/8 in"}):
        changed = {
            name: value for name, value in {**job, **other}.items() if name != "diameter" or other["driven"] == "pin"
        }
        stakes = [(one["x"], one["y"]) for one in answer_to(changed)["stakes"]]
        assert stakes == [(one["x"], one["y"]) for one in answer_to(job)["stakes"]]


def test_without_a_slab_it_is_told_what_a_board_would_do() -> None:
    job = {name: value for name, value in WALK.items() if name not in ("width", "edge", "board")}
    told = part(**{**job, "offset": "1-1/2 in"})
    assert told["pins"] == "maybe" and "their edge toward the board" in told["point"] and told["card"]
    assert part(**{**job, "offset": "2 ft"})["pins"] == ""
