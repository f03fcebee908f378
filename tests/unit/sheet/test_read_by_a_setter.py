"""What somebody who reads a sheet line by line trips over."""

from typing import Any

from bowstring.sheet.text import sheet_text
from helping import answer_to

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
    return " ".join(sheet_text(answer_to(job)).split())


def test_over_uneven_gaps_nobody_is_told_to_square_off_the_midpoint() -> None:
    """K7, K8, K9 are at 7, 8 and 8.45 m along the tangent: the midpoint of K7-K9 is 290 mm from K8, nearly along the
    string, while square off it K8 stands 0.5 x 1.080 x 0.495 / 20 = 13 mm away."""
    told = sheet_text(answer_to(TANGENT))
    assert "K8 over K7 to K9" not in told, "a tape along the string sees nothing of how far off K8 stands"
    even = next(line for line in told.splitlines() if "K1 over A" in line and "25 mm" in line)
    assert "mid-ordinate over" in even


def test_only_a_blunder_that_nothing_sees_is_said_to_be_unseen() -> None:
    caught = answer_to(TANGENT)
    assert all(row["caught_by"] for row in caught["mistakes"])
    assert "Where no check catches one, it says so." not in one_line(TANGENT)
    assert not all(row["caught_by"] for row in answer_to(FLAT)["mistakes"])
    assert "Where no check catches one, it says so." in one_line(FLAT)


def test_without_a_side_no_place_to_stand_is_named() -> None:
    unsaid = {key: value for key, value in FLAT.items() if key != "side"}
    rounds = answer_to(unsaid)["halving"]  # its sheet has none of them: it is stopped
    assert all("there to the curve's side. Holding" in row["how"] for row in rounds)
    assert "there to the left (standing at the end nearer A, facing the other). Holding" in one_line(FLAT)


def test_somebody_alone_is_told_of_the_swing() -> None:
    """The radius is (12 x 12 + 3 x 3) / 6 = 25.5 ft; a shorter tape doesn't reach."""
    alone = answer_to({**FLAT, "hands": 1})["advice"]["text"]
    assert "one person can swing the arc" in alone and "25' 6\" from the curve" in alone
    assert "swing the arc" not in answer_to({**FLAT, "hands": 1, "tape": {"length": "25 ft"}})["advice"]["text"]


def test_three_taped_sides_are_not_called_points() -> None:
    told = answer_to({**FLAT, "arc": {"three_sides": ["21 ft", "22 ft", "40 ft"]}})
    assert "The arc was worked out from three taped sides." in told["notes"]


def test_a_string_that_the_ends_were_proved_along_is_up() -> None:
    told = one_line({**FLAT, "arc": {"chord": "140 ft", "sagitta": "12 ft"}})
    assert told.count("Stretch the string from A to B.") == 1 and "Leave the string from A to B up." in told


def test_a_miss_of_many_tolerances_is_not_answered_with_care() -> None:
    """1/32 in is less than a third of what any method comes to here: no care makes up for it."""
    fine = answer_to({**FLAT, "tolerance": "1/32 in"})["advice"]["text"]
    assert "comes close to your" in fine and "ask the designer or surveyor" in fine and "take more care" not in fine
    assert "take more care" in answer_to({**FLAT, "tolerance": "1/4 in"})["advice"]["text"]


def test_words_in_a_table_are_whole() -> None:
    job = {**FLAT, "found": {"chord": ["24' 2\"", "24' 2\""], "tape": "level", "hold": "radius", "sure": True}}
    told = sheet_text(answer_to({**job, "fall": {"along": 0, "across": 0}}))
    assert "mid-ordinate" in told.split("the arc by each choice")[1].split("hold the end")[0].split("kink")[0]
    assert not any(line.rstrip().endswith("hold the mi") or "  hold the mi " in line for line in told.splitlines())


def test_the_gap_that_closes_the_work_is_no_check_that_no_step_measured() -> None:
    """It is asked for once, where the last stake is set; the other checks stay."""
    job = {**TANGENT, "method": "angles"}
    assert any(check["kind"] == "closing" for check in answer_to(job)["checks"])
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
    poor = answer_to(BANK)
    assert poor["method"] == "produced" and any(
        "Careful work won't make up for that." in text for text in poor["cautions"]
    )
    open_ground = answer_to({key: value for key, value in BANK.items() if key != "ground"})
    assert not any("Careful work won't make up" in text for text in open_ground["cautions"])


SIX = {"unit": "m", "arc": {"radius": "6 m", "central_angle": "230"}, "method": "ordinates", "halve_first": 1,
       "drawn_to": "face", "side": "left"}  # fmt: skip
"""Past a half circle, in gaps that get shorter toward each short chord's middle, from 1.040 m to 635 mm."""


def part(told: str, title: str) -> list[str]:
    """The lines of a part of a printed sheet."""
    lines = told.splitlines()
    start = lines.index(title) + 2
    return lines[start : next((n for n in range(start, len(lines)) if lines[n].startswith("-----")), len(lines)) - 1]


def test_uneven_gaps_are_one_line_of_the_checks() -> None:
    checks = part(sheet_text(answer_to(SIX)), "CHECKS")
    assert sum("gap between" in line for line in checks) == 1
    told = " ".join(" ".join(checks).split())
    assert "K24: 635 mm" in told and "A to K1, K15 to" in told  # the narrowest, and the widest
    # A blunder that a gap sees names one of those that are printed.
    kept = {(row["from"], row["to"]) for row in answer_to(SIX)["checks"]}
    seen = [(one["from"], one["to"]) for row in answer_to(SIX)["mistakes"] for one in row["caught_by"]]
    assert seen and set(seen) <= kept


def test_a_check_that_cannot_judge_is_not_printed_beside_those_that_can() -> None:
    told = answer_to(TANGENT)
    (poor,) = [row for row in told["checks"] if not row["judges"]]
    assert poor["to"] == "K9" and poor["kind"] == "alternate"
    text = " ".join(sheet_text(told).split())
    assert "K9 over K8 to K10" not in text and "an't judge" not in text
    assert all(
        (one["from"], one["to"]) != (poor["from"], poor["to"]) for row in told["mistakes"] for one in row["caught_by"]
    )


def test_checks_that_cannot_judge_are_printed_where_nothing_else_is_there() -> None:
    small = {"unit": "m", "arc": {"chord": "0.6 m", "sagitta": "12 mm"}, "levels": 2, "side": "left",
             "drawn_to": "face", "tolerance": "20 mm"}  # fmt: skip
    told = answer_to({**small, "method": "ordinates"})
    assert told["checks"] and not any(row["judges"] for row in told["checks"] if not row["blind"])
    assert "can't judge" in sheet_text(told) and "No check here can judge by itself." in one_line(small)
    # The closing gap judges: that one is asked for where the last stake is set, and no other is printed.
    closed = answer_to({**small, "method": "angles"})
    seeing = [row for row in closed["checks"] if not row["blind"] or row["kind"] == "closing"]
    assert [row["kind"] for row in seeing if row["judges"]] == ["closing"] and len(seeing) > 1
    text = " ".join(sheet_text(closed).split())
    assert "can't judge" not in text and "The last gap, taped above, is the check here" in text
    assert "Close the work: tape the last gap" in text


def test_past_a_half_circle_nothing_is_said_to_be_out_of_reach_that_two_tapes_reach() -> None:
    told = one_line({**SIX, "method": "tapes", "halve_first": 0})
    assert "chord alone" not in told and "where no offset from the string A to B reaches" in told


def test_a_string_that_no_step_goes_by_is_not_stretched() -> None:
    job = {"unit": "m", "arc": {"radius": 20, "central_angle": 50}, "drawn_to": "face", "side": "left",
           "start": "corner", "centre": "reachable"}  # fmt: skip
    for method in ("centre", "tangent", "tapes", "produced", "angles", "coordinates"):
        told = one_line({**job, "method": method})
        assert "Stretch the string from A to B" not in told and "crosswind at a pull" not in told, method
        assert (
            "At A, facing B: the curve is on your left, and it turns right." in told
            and "carry the line A-B on past" in told
        )
    for method in ("halving", "ordinates"):
        told = one_line({**job, "method": method})
        assert "Stretch the string from A to B" in told and "carry the string on past" in told, method
    # Off the drawn line the ends were set by themselves: they are taped all the same.
    hubs = one_line({**job, "method": "tapes", "offset": "1 m", "toward": "outside"})
    assert "Tape from A to B, level: it must read" in hubs and "Stretch the string from A to B" not in hubs


def test_one_obstacle_is_told_once_in_a_cell() -> None:
    oak = {"name": "oak", "stops": "tape", "at": ["19 ft", "2 ft"], "diameter": "2 ft"}
    told = answer_to({**FLAT, "arc": {"chord": "38 ft", "sagitta": "63 in"}, "ground": [oak]})
    rows = [row for row in told["methods"] if not row["possible"] and row["why_not"] and "oak" in row["why_not"]]
    assert rows and any(len(row["blocks"]) > 1 for row in rows)
    assert all(row["why_not"].count("oak") == 1 for row in rows)


def test_a_tape_held_level_has_no_slope_numbers() -> None:
    job = {**FLAT, "arc": {"chord": "38 ft", "sagitta": "63 in"}, "fall": {"along": 4, "across": 2}}
    found = {"chord": ["38 ft 2 in", "38 ft 2 in"], "hold": "radius", "sure": True}
    level = answer_to({**job, "found": {**found, "tape": "level"}})
    text = " ".join(sheet_text(level).split())
    assert "on the slope" not in text and "The ground slopes." not in text and "slope figures" not in text
    assert text.count("slop") == 1 and "Hold the tape level: along sloping ground it reads long." in text
    assert not any("slope" in measure for step in level["steps"] for measure in step["measures"])
    laid = one_line({**job, "found": {**found, "tape": "ground", "fall": "18 in"}})
    assert "on the slope" in laid and "The ground slopes." in laid
