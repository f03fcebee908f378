"""No method named means the advised one: which is taken, and that naming it changes nothing."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import BadJob, answer
from bowstring.job.job import read_job
from bowstring.layout.taken import take
from helping import answer_to

ARC = {"chord": "40 ft", "sagitta": "10 ft"}
PLAIN: dict[str, Any] = {"arc": ARC, "side": "left", "drawn_to": "face"}
POST = {"name": "the post", "stops": "tape",
        "outline": [["33 ft", "1 ft"], ["33.4 ft", "1 ft"], ["33.4 ft", "1.4 ft"], ["33 ft", "1.4 ft"]]}  # fmt: skip
"""On the way of the tape from A to the stakes next to B; no string or offset of halving comes there."""


def taken(**more: Any) -> str:
    return answer_to({**PLAIN, **more})["method"]


def test_the_advised_method_is_taken_and_told_as_not_named() -> None:
    told = answer_to({**PLAIN, "tolerance": "2 in"})
    assert told["method"] == told["advice"]["method"] == "tapes" and told["method_said"] is False
    assert {step["kind"] for step in told["steps"] if step["level"]} == {"cross"}
    named = answer_to({**PLAIN, "tolerance": "2 in", "method": "tapes"})
    assert named["method_said"] is True
    different = {key for key in told if told[key] != named[key]}
    assert different == {"method_said"}


def test_rounds_of_halving_mean_halving_whatever_is_advised() -> None:
    told = answer_to({**PLAIN, "tolerance": "2 in", "levels": 3})
    assert told["method"] == "halving" != told["advice"]["method"] and told["method_said"] is True


@pytest.mark.parametrize(
    ("more", "note"),
    [
        ({"levels": 3}, "3 rounds are asked for, so the method is halving."),
        ({"levels": 1}, "One round is asked for, so the method is halving."),
        ({"levels": "usual"}, "Rounds of halving are asked for, so the method is halving."),
        ({"levels": 3, "method": "halving"}, None),
        ({"levels": 3, "method": "ordinates"}, None),
        ({"levels": 3, "halve_first": 1}, None),
        ({"levels": 3, "got": [{"stake": "M", "sagitta": "10 ft"}]}, None),
        ({"tolerance": "2 in"}, None),
    ],
)
def test_rounds_that_chose_the_method_are_told(more: dict[str, Any], note: str | None) -> None:
    told = answer_to({**PLAIN, **more})
    assert [text for text in told["notes"] if "so the method is halving" in text] == ([note] if note else [])


@pytest.mark.parametrize(
    ("words", "method"),
    [
        ({"stations": ["10 ft", "25 ft"]}, "ordinates"),
        ({"halve_first": 1}, "ordinates"),
        ({"got": [{"stake": "M", "sagitta": "10 ft"}]}, "halving"),
    ],
)
def test_what_only_one_method_knows_of_means_that_method(words: dict[str, Any], method: str) -> None:
    assert taken(**words) == method


def test_a_first_gap_takes_a_method_that_can_begin_with_one() -> None:
    told = answer_to({**PLAIN, "spacing": "6 ft", "first_gap": "3 ft"})
    assert told["method"] in ("tapes", "produced", "angles", "coordinates")
    first, second = told["stakes"][:2]
    assert ((first["x"] - second["x"]) ** 2 + (first["y"] - second["y"]) ** 2) ** 0.5 == pytest.approx(3 * 0.3048)


def test_what_is_in_the_way_changes_what_is_taken() -> None:
    free = take(read_job({**PLAIN, "tolerance": "2 in"}))
    barred = take(read_job({**PLAIN, "tolerance": "2 in", "ground": [POST]}))
    assert barred.layout.method is not free.layout.method
    assert barred.advice and barred.advice.row and barred.advice.row.possible


def test_the_rows_are_those_of_the_same_job_with_its_method_named() -> None:
    """Ordinates from the chord keep their row beside those from the parallel string that is taken."""
    wall = {"name": "wall", "stops": "tape",
            "outline": [["20 ft", "1 ft"], ["40 ft", "1 ft"], ["40 ft", "3 ft"], ["20 ft", "3 ft"]]}  # fmt: skip
    job = {
        **PLAIN,
        "arc": {"chord": "60 ft", "sagitta": "7.5 ft"},
        "parallel": "9 ft",
        "tolerance": "1 in",
        "ground": [wall],
    }
    told = answer_to(job)
    strings = [row["parallel"] for row in told["methods"] if row["method"] == "ordinates"]
    assert told["method"] == "ordinates" and strings == [None, pytest.approx(9 * 0.3048)]
    assert told["methods"] == answer_to({**job, "method": "ordinates"})["methods"]


def test_where_nothing_is_possible_the_arc_is_halved_and_the_sheet_stops() -> None:
    told = answer_to({**PLAIN, "hands": 1})
    assert told["advice"]["method"] is None and told["method"] == "halving" and told["stops"]


def test_a_swing_is_offered_only_where_somebody_said_that_the_centre_can_be_reached() -> None:
    unsaid, said = answer_to(PLAIN), answer_to({**PLAIN, "centre": "reachable"})
    rows = [next(row for row in told["methods"] if row["method"] == "centre") for told in (unsaid, said)]
    assert [row["possible"] for row in rows] == [False, True] and "center can be reached" in rows[0]["why_not"]
    assert unsaid["advice"]["method"] != "centre" == said["advice"]["method"]
    with pytest.raises(BadJob) as refused:
        answer({**PLAIN, "method": "centre"})
    assert refused.value.field == "method" and "center" in refused.value.wrong


sizes = st.floats(0.03, 0.45)
grounds = st.lists(
    st.tuples(st.floats(-0.1, 1.1), st.floats(-0.2, 0.6), st.floats(0.02, 0.3), st.sampled_from(("tape", "feet"))),
    max_size=3,
)


@settings(max_examples=25, deadline=None)
@given(sizes, grounds, st.sampled_from((None, "1/4 in", "1 in", "3 in")), st.sampled_from((1, 2)))
def test_naming_what_was_taken_changes_nothing(part: float, ground: Any, tolerance: str | None, hands: int) -> None:
    """The advice for the named method is that method again: a sheet never advises against what it chose by itself."""
    chord = 12.0
    obstacles = [
        {"name": f"bed {number}", "stops": stops,
         "outline": [[x * chord, y * chord], [(x + size) * chord, y * chord], [x * chord, (y + size) * chord]]}
        for number, (x, y, size, stops) in enumerate(ground)
    ]  # fmt: skip
    job: dict[str, Any] = {"unit": "m", "arc": {"chord": chord, "sagitta": chord * part}, "side": "right",
                           "drawn_to": "face", "ground": obstacles, "hands": hands}  # fmt: skip
    if tolerance:
        job["tolerance"] = tolerance
    told = answer(job, whole=False)
    advice = told["advice"]
    if advice["method"] is None:
        assert told["method"] == "halving" and told["stops"]
        return
    assert (told["method"], told["halve_first"]) == (advice["method"], advice["halve_first"])
    named = answer({**job, "method": told["method"], "halve_first": told["halve_first"]}, whole=False)
    assert named["advice"] == advice and named["steps"] == told["steps"] and named["stops"] == told["stops"]
