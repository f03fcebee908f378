"""What somebody who reads a sheet line by line trips over."""

from typing import Any

from bowstring import answer
from bowstring.sheet.text import sheet_text

FLAT: dict[str, Any] = {
    "bowstring": 1,
    "arc": {"chord": "24 ft", "sagitta": "3 ft"},
    "drawn_to": "face",
    "side": "left",
}
TANGENT: dict[str, Any] = {
    "bowstring": 1, "unit": "m", "arc": {"radius": "20 m", "central_angle": "50"}, "method": "tangent",
    "start": "corner", "drawn_to": "face", "side": "left",
}  # fmt: skip


def one_line(job: dict[str, Any]) -> str:
    return " ".join(sheet_text(answer(job)).split())


def test_over_uneven_gaps_nobody_is_told_to_square_off_the_midpoint() -> None:
    """K7, K8, K9 are at 7, 8 and 8.45 m along the tangent: the midpoint of K7-K9 is 290 mm from K8, nearly along the
    string, while square off it K8 stands 0.5 x 1.080 x 0.495 / 20 = 13 mm away."""
    told = sheet_text(answer(TANGENT))
    line = next(line for line in told.splitlines() if "K8 over K7 to K9" in line)
    assert line.split("  ")[1] == "string's midpoint straight" and "290 mm" in line
    even = next(line for line in told.splitlines() if "K1 over A" in line and "25 mm" in line)
    assert "mid-ordinate over" in even


def test_only_a_blunder_that_nothing_sees_is_said_to_be_unseen() -> None:
    caught = answer(TANGENT)
    assert all(row["caught_by"] for row in caught["mistakes"])
    assert "No check catches the worst one." not in one_line(TANGENT)
    assert not all(row["caught_by"] for row in answer(FLAT)["mistakes"])
    assert "No check catches the worst one." in one_line(FLAT)


def test_without_a_side_no_place_to_stand_is_named() -> None:
    unsaid = {key: value for key, value in FLAT.items() if key != "side"}
    rounds = answer(unsaid)["halving"]  # its sheet has none of them: it is stopped
    assert all("there to the curve's side. Holding" in row["how"] for row in rounds)
    assert "there to the left (standing at the end nearer A, facing the other). Holding" in one_line(FLAT)


def test_somebody_alone_is_told_of_the_swing() -> None:
    """The radius is (12 x 12 + 3 x 3) / 6 = 25.5 ft; a shorter tape doesn't reach."""
    alone = answer({**FLAT, "hands": 1})["advice"]["text"]
    assert "one person can swing the arc" in alone and "25' 6\" from the curve" in alone
    assert "swing the arc" not in answer({**FLAT, "hands": 1, "tape": {"length": "25 ft"}})["advice"]["text"]


def test_three_taped_sides_are_not_called_points() -> None:
    told = answer({**FLAT, "arc": {"three_sides": ["21 ft", "22 ft", "40 ft"]}})
    assert "The arc was worked out from three taped sides." in told["notes"]


def test_a_string_that_the_ends_were_proved_along_is_up() -> None:
    told = one_line({**FLAT, "arc": {"chord": "140 ft", "sagitta": "12 ft"}})
    assert told.count("Stretch the string from A to B.") == 1 and "Leave the string from A to B up." in told


def test_a_miss_of_many_tolerances_is_not_answered_with_care() -> None:
    """1/32 in is less than a third of what any method comes to here: no care makes up for it."""
    fine = answer({**FLAT, "tolerance": "1/32 in"})["advice"]["text"]
    assert "by far: ask the designer or surveyor" in fine and "take more care" not in fine
    assert "take more care" in answer({**FLAT, "tolerance": "1/4 in"})["advice"]["text"]


def test_words_in_a_table_are_whole() -> None:
    job = {**FLAT, "found": {"chord": ["24' 2\"", "24' 2\""], "tape": "level", "hold": "radius", "sure": True}}
    told = sheet_text(answer({**job, "fall": {"along": 0, "across": 0}}))
    assert "mid-ordinate" in told.split("the arc by each choice")[1].split("hold the end")[0].split("kink")[0]
    assert not any(line.rstrip().endswith("hold the mi") or "  hold the mi " in line for line in told.splitlines())


def test_the_gap_that_closes_the_work_is_no_check_that_no_step_measured() -> None:
    """It is asked for once, where the last stake is set; the other checks stay."""
    job = {**TANGENT, "method": "angles"}
    assert any(check["kind"] == "closing" for check in answer(job)["checks"])
    told = one_line(job)
    assert (
        told.count("Close the work: tape the last gap") == 1
        and "closing gap" not in told.split(" CHECKS ")[1].split(" IF ")[0]
    )
    assert "corner to middle" in told


BANK: dict[str, Any] = {
    "bowstring": 1, "arc": {"chord": "60 ft", "sagitta": "7 ft 6 in"}, "drawn_to": "face", "side": "left",
    "start": "corner", "tolerance": "1/2 in",
    "ground": [{"name": "bank", "stops": "tape",
                "outline": [["5 ft", "-1 ft"], ["55 ft", "-1 ft"], ["55 ft", "2 ft"], ["5 ft", "2 ft"]]}],
}  # fmt: skip
"""The bank lies over the long chord: no string goes from A to B, and chords produced alone go round it."""


def test_where_no_string_goes_none_is_carried_on_past_the_end() -> None:
    told = one_line(BANK)
    assert "No string goes straight from A to B here." in told and "carry the string on" not in told
    assert "Its stake: in line with the straight, 2' 0\" from the end." in told
    free = one_line({key: value for key, value in BANK.items() if key != "ground"})
    assert "carry the string on past the end for 1' 9-1/8\"" in free  # 24 cos 28.07 = 21.18 in


def test_a_method_that_cannot_hold_the_tolerance_says_so_above_its_steps() -> None:
    poor = answer(BANK)
    assert poor["method"] == "produced" and any("No care makes up for that much." in text for text in poor["cautions"])
    open_ground = answer({key: value for key, value in BANK.items() if key != "ground"})
    assert not any("No care makes up" in text for text in open_ground["cautions"])
