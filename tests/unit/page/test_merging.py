"""Two windows on one job: what both changed is put together, and nothing becomes another number unasked."""

from __future__ import annotations

from pathlib import Path

import pytest

from bowstring.page.unit import is_unit_open
from in_node import run

Fields = dict[str, str]
FEET = {"unit": "ft-in", "arc-chord": "38", "arc-sagitta": "5"}
MERGED = "const { merged } = await page('merging.js');\ntold(given.map((windows) => merged(...windows)));\n"


def merged(folder: Path, base: Fields, own: Fields, other: Fields) -> tuple[Fields, list[list[str]]]:
    """Both windows' fields put together, and what is to be chosen."""
    (told,) = run(folder, MERGED, [base, own, other])
    return told["fields"], told["both"]


def test_different_fields_go_together_and_one_field_is_chosen(tmp_path: Path) -> None:
    own, other = {**FEET, "arc-sagitta": "6", "arc-chord": "40"}, {**FEET, "arc-chord": "39", "tolerance": "1/2 in"}
    fields, both = merged(tmp_path, FEET, own, other)
    assert both == [["arc-chord", "40", "39"]]
    assert fields == {**FEET, "arc-sagitta": "6", "arc-chord": "40", "tolerance": "1/2 in"}


@pytest.mark.parametrize("open_there", [True, False])
def test_a_number_typed_under_the_other_unit_is_asked_about(tmp_path: Path, open_there: bool) -> None:
    typed = {**FEET, "arc-sagitta": "5.5"}
    metres = {**FEET, "unit": "m", "arc-chord": "12"} | ({"unit_before": "ft-in"} if open_there else {})
    for own, other in ((typed, metres), (metres, typed)):
        fields, both = merged(tmp_path, FEET, own, other)
        assert both == []
        assert fields == {"unit": "m", "arc-chord": "12", "arc-sagitta": "5.5", "unit_before": "ft-in"}
        assert is_unit_open(fields)


def test_both_typed_one_number_in_two_units(tmp_path: Path) -> None:
    own, other = {**FEET, "arc-chord": "40"}, {**FEET, "unit": "m", "arc-chord": "12"}
    fields, both = merged(tmp_path, FEET, own, other)
    assert both == [["arc-chord", "40", "12"]] and fields["unit_before"] == "ft-in"
    same = merged(tmp_path, FEET, {**FEET, "arc-chord": "12"}, other)
    assert same[1] == [] and is_unit_open(same[0])  # 12 ft and 12 m


def test_a_settled_unit_is_asked_about_no_more(tmp_path: Path) -> None:
    asked = {**FEET, "unit": "m", "unit_before": "ft-in"}
    settled = {**FEET, "unit": "m", "arc-chord": "12"}
    assert merged(tmp_path, asked, asked, settled)[0] == settled
    titled = {**FEET, "title": "Lodge 4", "side": "left"}
    assert "unit_before" not in merged(tmp_path, FEET, titled, settled)[0]  # nothing of it is a length


def read(row: int, check: str, value: str) -> Fields:
    return {f"read-{row}-check": check, f"read-{row}-value": value}


def test_each_window_s_reading_is_kept_whole(tmp_path: Path) -> None:
    fields, both = merged(tmp_path, FEET, {**FEET, **read(0, "A-Q2", "30 ft")}, {**FEET, **read(0, "M-B", "19 ft")})
    assert both == [] and fields == {**FEET, **read(0, "A-Q2", "30 ft"), **read(1, "M-B", "19 ft")}
    twice = merged(tmp_path, FEET, {**FEET, **read(0, "A-Q2", "30 ft")}, {**FEET, **read(0, "A-Q2", "29 ft")})
    assert twice == ({**FEET, **read(0, "A-Q2", "30 ft"), **read(1, "A-Q2", "29 ft")}, [])  # taped twice


def test_a_reading_that_both_corrected_is_chosen(tmp_path: Path) -> None:
    base, own, other = ({**FEET, **read(0, "A-Q2", value)} for value in ("30 ft", "31 ft", "29 ft"))
    fields, both = merged(tmp_path, base, own, other)
    assert both == [["read-0-value", "31 ft", "29 ft"]] and fields["read-0-check"] == "A-Q2"
    emptied = merged(tmp_path, base, FEET, other)
    assert emptied == (other, [])  # never a check without what was read, nor that without its check
    assert merged(tmp_path, base, FEET, base) == (FEET, [])


def got(row: int, stake: str, **texts: str) -> Fields:
    return {f"got-{row}-stake": stake} | {f"got-{row}-{name}": text for name, text in texts.items()}


def test_what_was_got_at_a_stake_is_never_mixed(tmp_path: Path) -> None:
    own, other = got(0, "M", sagitta="5 ft", sure="yes"), got(0, "Q1", sagitta="1 ft")
    assert merged(tmp_path, {}, own, other) == ({**own, **got(1, "Q1", sagitta="1 ft")}, [])
    again = got(0, "M", sagitta="5.1 ft")
    fields, both = merged(tmp_path, {}, own, again)
    assert fields == own and sorted(both) == [["got-0-sagitta", "5 ft", "5.1 ft"], ["got-0-sure", "yes", ""]]


def test_two_obstacles_stand_behind_each_other(tmp_path: Path) -> None:
    own, other = ({"ground-0-name": name, "ground-0-stops": "tape"} for name in ("shed", "pond"))
    fields, both = merged(tmp_path, {}, own, other)
    assert both == [] and fields == {**own, "ground-1-name": "pond", "ground-1-stops": "tape"}
