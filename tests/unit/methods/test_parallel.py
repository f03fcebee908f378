"""Ordinates from a string parallel to the chord: its numbers by hand, its hand, how it is proved, when it is taken."""

from __future__ import annotations

from typing import Any

import pytest

import bowstring
from helping import answer_to


def near(one: float, other: float) -> bool:
    return one == pytest.approx(other, abs=1e-9)


def job(parallel: Any, **more: Any) -> dict[str, Any]:
    """Radius 25 m over a chord of 40 m: the sagitta is 10 m, and all ordinates over whole metres are roots."""
    return {
        "bowstring": 1, "unit": "m", "mark": "1 mm", "arc": {"chord": 40, "sagitta": 10}, "side": "left",
        "drawn_to": "face", "method": "ordinates", "parallel": parallel, "stations": [5, 13, 20], **more,
    }  # fmt: skip


def steps_of(**more: Any) -> list[dict[str, Any]]:
    told: Any = answer_to(job(**more), whole=False)
    return [step for step in told["steps"] if step["level"]]


def shown(step: dict[str, Any]) -> list[str]:
    return [measure["shown"] for measure in step["measures"]]


def test_the_numbers_by_hand_behind_the_chord() -> None:
    """9 m behind it: the diagonal is 41 m (9-40-41). Over 5, 13 and 20 m the circle around (20, -15) stands at
    root(625 - 225) - 15 = 5, root(625 - 49) - 15 = 9 and 10 m: 9 m more from the string."""
    pa, pb, proof, first, second, third = steps_of(parallel="-9 m", tape={"length": 50})
    assert [pa["kind"], pb["kind"], proof["kind"]] == ["parallel_crossed_behind"] * 2 + ["parallel_crossed"]
    assert shown(pa) == shown(pb) == ["9.000 m", "41.000 m"] and shown(proof) == ["40.000 m"]
    assert [shown(step) for step in (first, second)] == [["5.000 m", "14.000 m"], ["13.000 m", "18.000 m"]]
    assert shown(third) == ["20.000 m", "19.000 m"]
    assert "on the right (facing B from A), away from the curve" in pa["text"]
    assert "square off to the left (facing PB from PA), toward A-B, 14.000 m" in first["text"]


def test_the_numbers_by_hand_beyond_the_curve() -> None:
    """30 m toward the curve: the diagonal is 50 m (3-4-5); from the string 25, 21 and 20 m back to the arc."""
    pa, _pb, _proof, *stakes = steps_of(parallel=30, tape={"length": 50})
    assert shown(pa) == ["30.000 m", "50.000 m"]
    assert [shown(step)[-1] for step in stakes] == ["25.000 m", "21.000 m", "20.000 m"]
    assert "square off to the right (facing PB from PA), toward A-B" in stakes[0]["text"]


def test_a_string_through_the_arc_has_ordinates_on_both_hands() -> None:
    """7 m from the chord: over 5 m the arc is 2 m back toward it, over 13 m 2 m on; the table says which way."""
    told: Any = answer_to(job(7), whole=False)
    (table,) = told["tables"]
    assert [row[-1] for row in table["rows"]] == [
        "2.000 m toward A-B",
        "2.000 m away from A-B",
        "3.000 m away from A-B",
    ]
    texts = [step["text"] for step in told["steps"] if step["stake"]]
    assert "to the right (facing PB from PA), toward A-B" in texts[0]
    assert "to the left (facing PB from PA), away from A-B" in texts[1]


def test_the_other_hand_turns_the_words_and_no_number() -> None:
    left, right = steps_of(parallel=-9), steps_of(parallel=-9, side="right")
    turn = {"left": "right", "right": "left"}
    for one, other in zip(left, right, strict=True):
        words = [turn.get(word, word) for word in one["text"].split()]
        assert words == other["text"].split()


def test_past_a_half_circle_the_string_runs_on_past_its_ends() -> None:
    """Radius 25 m, rise 40 m over a chord of 40 m: at three parts of the arc, and the widest places stand 5 m out."""
    told: Any = answer_to(
        {"unit": "m", "arc": {"chord": 40, "sagitta": 40}, "method": "ordinates", "parallel": -10, "levels": 3,
         "side": "left", "drawn_to": "face", "tape": {"length": 60}}, whole=False,
    )  # fmt: skip
    kinds = [step["kind"] for step in told["steps"] if step["stake"]]
    assert "parallel_toward_past" in kinds and "parallel_toward_on" in kinds
    assert all(kind.startswith("parallel_toward") for kind in kinds), "behind the chord all stakes are toward it"
    past = next(step for step in told["steps"] if step["kind"] == "parallel_toward_past")
    at = {mark["name"]: mark for mark in told["marks"]}[past["stake"]]
    assert at["x"] < 0 and near(past["measures"][0]["distance"], -at["x"]) and near(
        past["measures"][1]["distance"], at["y"] + 10)  # fmt: skip
    assert "from PB on past PA" in past["text"]


def test_a_stake_right_over_an_end_is_squared_off_that_end() -> None:
    """A three-quarter circle in six parts: a third of it from A stands square over A, one diameter's chord up."""
    told: Any = answer_to(
        {"unit": "m", "arc": {"radius": 2, "central_angle": 270}, "method": "ordinates", "parallel": -1,
         "spacing": "1.6 m", "side": "left", "drawn_to": "face"}, whole=False,
    )  # fmt: skip
    over = [step for step in told["steps"] if step["kind"] == "parallel_toward_end"]
    assert [step["stake"] for step in over] == ["K2", "K4"]
    assert [[one["from"] for one in step["measures"]] for step in over] == [["PA"], ["PB"]]
    assert near(over[0]["measures"][0]["distance"], 2 * 2**0.5 + 1)
    (table,) = told["tables"]
    assert [row[1:3] for row in table["rows"] if row[0] in ("K2", "K4")] == [["at PA", "0"], ["at PB", "0"]]


WALL = {"name": "hedge", "stops": "tape", "outline": [[15, -1], [25, -1], [25, 1], [15, 1]]}


def test_where_the_chord_is_blocked_its_row_is_possible_and_the_chords_own_is_not() -> None:
    told: Any = answer_to(job(30, ground=[WALL], tape={"length": 50}), whole=False)
    plain, parallel = (row for row in told["methods"] if row["method"] == "ordinates")
    assert (plain["parallel"], parallel["parallel"]) == (None, 30)
    assert not plain["possible"] and "hedge" in plain["why_not"]
    assert parallel["possible"] and parallel["why_not"] is None
    assert told["parallel"] == 30 and told["method"] == "ordinates"
    behind: Any = answer_to(job(-9, ground=[WALL], tape={"length": 50}), whole=False)
    row = next(row for row in behind["methods"] if row["parallel"])
    assert not row["possible"], "from behind the chord the offset to the middle runs through the hedge"


def test_where_a_diagonal_is_blocked_the_ends_are_squared_off_the_string() -> None:
    """A tree 5 m behind the chord's middle stands in both diagonals of a string 9 m behind, and in nothing else."""
    tree = {"name": "oak", "stops": "tape", "outline": [[19, -5.5], [21, -5.5], [21, -3.5], [19, -3.5]]}
    pa, pb, proof, *_ = steps_of(parallel=-9, ground=[tree], tape={"length": 50}, stations=[5])
    assert [pa["kind"], pb["kind"], proof["kind"]] == ["parallel_squared_behind"] * 2 + ["parallel_squared"]
    assert shown(pa) == ["9.000 m"] and shown(proof) == ["40.000 m"]
    told: Any = answer_to(job(-9, ground=[tree, WALL], tape={"length": 50}, stations=[5]), whole=False)
    row = next(row for row in told["methods"] if row["parallel"])
    assert not row["possible"] and {block["what"] for block in row["blocks"]} == {"oak"}, "no string A-B either"


def test_a_tape_shorter_than_the_diagonal_squares_the_ends_and_proves_by_what_it_can() -> None:
    for length, kind in ((41, "crossed"), (40.5, "squared"), (30, "strung")):
        steps = steps_of(parallel=-9, tape={"length": length}, stations=[5])
        assert steps[2]["kind"] == f"parallel_{kind}"
        assert max(one["distance"] for step in steps for one in step["measures"]) <= length + 1e-6


def test_every_pull_of_every_step_is_within_the_tape_or_told() -> None:
    told: Any = answer_to(job(-9, tape={"length": 12}, stations=[5]), whole=False)
    row = next(row for row in told["methods"] if row["parallel"])
    assert {block["kind"] for block in row["blocks"]} == {"tape"}


def test_it_is_advised_at_the_distance_given_and_the_chord_is_not() -> None:
    """A hedge across the middle of the chord stops halving and the chord's own ordinates, beds at its ends the tangents
    and the tapes from A and B: what is left is the string."""
    beds = [{"name": name, "stops": "tape", "outline": [[x, 0.2], [x + 4, 0.2], [x + 4, 1], [x, 1]]}
            for name, x in (("bed", 3), ("box", 33))]  # fmt: skip
    more: dict[str, Any] = {"ground": [WALL, *beds], "tape": {"length": 50}, "room": {"behind": 10}}
    told: Any = answer_to(job(30, **more), whole=False)
    assert (told["advice"]["method"], told["advice"]["parallel"]) == ("ordinates", 30)
    text = "Use ordinates from a string parallel to A-B, 30.000 m beyond it toward the curve"
    assert told["advice"]["text"].startswith(text)
    open_ground: Any = answer_to(job(-9), whole=False)
    assert (open_ground["advice"]["method"], open_ground["advice"]["parallel"]) != ("ordinates", None)
    without = job(-9, **more)
    del without["parallel"]
    rows: Any = answer_to(without, whole=False)
    assert all(row["parallel"] is None for row in rows["methods"]) and rows["parallel"] is None


def test_halving_first_wins_and_the_string_is_compared_all_the_same() -> None:
    told: Any = answer_to({**{key: value for key, value in job(-9).items() if key != "stations"},
                                  "halve_first": 1}, whole=False)  # fmt: skip
    assert told["parallel"] is None and told["halve_first"] == 1
    assert [row["parallel"] for row in told["methods"] if row["method"] == "ordinates"] == [None, -9]


def test_it_goes_with_every_method_as_a_row_of_its_own() -> None:
    whole = job(-9, method="tapes")
    del whole["stations"]
    rows: Any = answer_to(whole, whole=False)["methods"]
    names = [row["name"] for row in rows if row["method"] == "ordinates"]
    assert names == ["ordinates from the long chord", "ordinates from a string parallel to A-B, 9.000 m behind it"]


def test_links_carry_it() -> None:
    whole = job("-9 m", levels=3)
    del whole["stations"]
    assert bowstring.read_link(bowstring.write_link(whole)) == {**whole, "bowstring": 1}


def test_a_stake_on_the_string_itself_is_squared_off_by_nothing() -> None:
    """9 m from the chord the arc crosses the string over 13 m; half a mark of 1 mm is as good as on it."""
    told: Any = answer_to(job("9.0004 m"), whole=False)
    first, second, _third = [step for step in told["steps"] if step["stake"]]
    assert second["kind"] == "parallel_over_on" and "Drive K2 there, on the string." in second["text"]
    assert first["kind"] == "parallel_toward_on"
    assert told["tables"][0]["rows"][1][-1] == "none: on the string"
    moved: Any = answer_to(job("9.0006 m"), whole=False)
    assert [step["kind"] for step in moved["steps"] if step["stake"] == "K2"] == ["parallel_toward_on"]


def oak(number: int, x: float, y: float) -> dict[str, Any]:
    return {"name": f"oak no. {number}", "stops": "tape", "at": [x, y], "diameter": 0.3}


ON_CHORD, ON_DIAGONAL = oak(1, 9, 0), oak(2, 27, -6.075)
"""On A-B, 9 m along it; and on A-PB, 9 m behind the chord: 27 (9/40) = 6.075."""


def stopped_by(*ground: dict[str, Any]) -> tuple[list[str], list[dict[str, Any]]]:
    told: Any = answer_to(job(-9, tape={"length": 50}, ground=list(ground)), whole=False)
    steps = [step for step in told["steps"] if step["kind"].startswith("parallel") and not step["stake"]]
    return [stop for stop in told["stops"] if "oak" in stop], steps


def test_a_trunk_on_one_diagonal_leaves_the_other() -> None:
    """No string goes from A to B, and A-PB is blocked: PB is set from PA, and proved from A to a mark 10 m from it on
    the string: 30 and 9 m, root(981) = 31.321."""
    stops, (pa, pb, proof) = stopped_by(ON_CHORD, ON_DIAGONAL)
    assert not stops
    assert shown(pa) == ["9.000 m", "41.000 m"] and shown(pb) == ["9.000 m", "40.000 m"]
    assert "cross 9.000 m from B with 40.000 m from PA" in pb["text"]
    assert proof["kind"] == "parallel_leaning" and shown(proof) == ["10.000 m", "31.321 m"]
    assert "P1, 10.000 m from PB. Tape A to P1" in proof["text"]


def test_a_trunk_on_the_tape_that_proves_a_corner_leaves_another() -> None:
    """The third stands on A-P1, at 22 m along and 6.6 m back: the next mark is 40/3 m from PB, root(26.667² + 81)."""
    stops, (_pa, _pb, proof) = stopped_by(ON_CHORD, ON_DIAGONAL, oak(3, 22, -6.6))
    assert not stops and shown(proof) == ["13.333 m", "28.144 m"]


def test_where_no_diagonal_is_free_the_job_stops_and_says_which() -> None:
    stops, _steps = stopped_by(ON_CHORD, ON_DIAGONAL, oak(3, 13, -6.075))
    assert "The tape from A to PB is blocked by oak no. 2." in stops[0]
    assert "The tape from B to PA is blocked by oak no. 3." in stops[0]


def test_with_nothing_on_the_chord_both_corners_are_squared_off_it() -> None:
    stops, steps = stopped_by(ON_DIAGONAL)
    assert not stops and [step["kind"] for step in steps][-1] == "parallel_squared"
