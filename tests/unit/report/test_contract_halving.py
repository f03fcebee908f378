"""Halving rows, stakes, marks, measures: the figures of a construction, recomputed here from the circle
alone."""

from __future__ import annotations

import json
import math
from typing import Any

import pytest
from mpmath import mp, mpf

import bowstring
from halving_jobs import JOBS, answer, answered, staked_arc

KINDS = pytest.mark.parametrize("name", JOBS)


def angle_between(at: Any, one: Any, two: Any) -> float:
    a = math.atan2(one[1] - at[1], one[0] - at[0]) - math.atan2(two[1] - at[1], two[0] - at[0])
    a = abs(math.degrees(a)) % 360
    return min(a, 360 - a)


@KINDS
def test_drawn_and_staked_arc(name: str) -> None:
    got = answer(name)
    radius, half = staked_arc(name)
    want = {
        "radius": radius,
        "chord": 2 * radius * mp.sin(half),
        "sagitta": radius * (1 - mp.cos(half)),
        "arc_length": 2 * radius * half,
        "central_angle": mp.degrees(2 * half),
    }
    for field, exact in want.items():
        assert got["staked"][field] == pytest.approx(float(exact), rel=1e-12), field
    assert set(got["staked"]) == set(got["arc"])
    if "offset" not in JOBS[name]:
        assert got["staked"] == got["arc"]
    else:
        signed = {"to-centre": -0.0381, "outside": 1.2}[name]
        assert got["staked"]["radius"] - got["arc"]["radius"] == pytest.approx(signed, abs=1e-12)


@KINDS
def test_halving_rows(name: str) -> None:
    rows = answer(name)["halving"]
    radius, half = staked_arc(name)
    assert [row["level"] for row in rows] == list(range(1, JOBS[name]["levels"] + 1))
    for row in rows:
        part = half / 2 ** (row["level"] - 1)
        assert row["chord"] == pytest.approx(float(2 * radius * mp.sin(part)), rel=1e-12)
        assert row["sagitta"] == pytest.approx(float(radius * (1 - mp.cos(part))), rel=1e-12)
        rule = radius * (1 - mp.cos(half)) / 4 ** (row["level"] - 1)
        assert row["rule_sagitta"] == pytest.approx(float(rule), rel=1e-12)


@KINDS
def test_stakes_stand_on_the_arc_at_equal_arcs_from_a_to_b(name: str) -> None:
    stakes = answer(name)["stakes"]
    radius, half = staked_arc(name)
    gaps = 2 ** JOBS[name]["levels"]
    assert len(stakes) == gaps + 1
    assert stakes[0]["name"] == "A" and stakes[-1]["name"] == "B"
    assert len({stake["name"] for stake in stakes}) == gaps + 1
    half_chord, centre_y = radius * mp.sin(half), -radius * mp.cos(half)
    for number, stake in enumerate(stakes):
        turn = half * (1 - mpf(2 * number) / gaps)  # from the middle of the arc, toward A positive
        x, y = half_chord - radius * mp.sin(turn), centre_y + radius * mp.cos(turn)
        assert abs(stake["x"] - x) <= 1e-9 and abs(stake["y"] - y) <= 1e-9, stake
        assert abs(stake["along"] - 2 * radius * half * number / gaps) <= 1e-9, stake
    assert (stakes[0]["x"], stakes[0]["y"]) == (0, 0)
    assert stakes[gaps // 2]["name"] == "M" and stakes[gaps // 2]["y"] > 0


def test_side_turns_words_and_not_figures() -> None:
    left = bowstring.answer({**JOBS["right-hand"], "side": "left"})
    right = answer("right-hand")
    assert (left["side"], right["side"]) == ("left", "right")
    for key in ("arc", "staked", "halving", "stakes", "marks", "rule", "rounding"):
        assert json.loads(json.dumps(left[key])) == right[key] or key == "halving", key
    for one, two in zip(left["halving"], right["halving"], strict=True):
        assert (one["chord"], one["sagitta"]) == (two["chord"], two["sagitta"])
    said = [
        json.dumps([step["text"] for step in one["steps"]]) + json.dumps(one["cautions"] + one["notes"])
        for one in (left, right)
    ]
    assert said[0] != said[1] and "right" in said[1]


@KINDS
def test_stakes_are_marks_and_steps_use_marks_only(name: str) -> None:
    got = answer(name)
    marks = {mark["name"]: (mark["x"], mark["y"]) for mark in got["marks"]}
    assert len(marks) == len(got["marks"]), "a mark's name stands for one place"
    for stake in got["stakes"]:
        assert marks[stake["name"]] == (stake["x"], stake["y"])
    assert [step["number"] for step in got["steps"]] == list(range(1, len(got["steps"]) + 1))
    for step in got["steps"]:
        assert step["text"].strip()
        assert set(step["marks"]) <= set(marks), step
        for measure in step["measures"]:
            assert {measure[key] for key in ("at", "from", "to") if key in measure} <= set(marks), measure
    used = {mark for step in got["steps"] for mark in step["marks"]}
    assert used >= {stake["name"] for stake in got["stakes"]}, "every stake is set by a step"


@KINDS
def test_every_measure_is_the_distance_of_its_marks(name: str) -> None:
    got = answer(name)
    marks = {mark["name"]: (mark["x"], mark["y"]) for mark in got["marks"]}
    size = got["staked"]["radius"]
    measures = [measure for step in got["steps"] for measure in step["measures"]]
    assert len(measures) >= len(got["stakes"]) - 2
    for measure in measures:
        assert measure["shown"].strip()
        if "distance" in measure:
            real = math.dist(marks[measure["from"]], marks[measure["to"]])
            assert measure["distance"] == pytest.approx(real, rel=1e-9, abs=1e-12 * size), measure
        else:
            real = angle_between(marks[measure["at"]], marks[measure["from"]], marks[measure["to"]])
            assert measure["angle"] == pytest.approx(real, abs=1e-7), measure


@KINDS
def test_the_steps_measure_each_rows_sagitta(name: str) -> None:
    got = answer(name)
    distances = [m["distance"] for step in got["steps"] for m in step["measures"] if "distance" in m]
    for row in got["halving"]:
        same = [d for d in distances if abs(d - row["sagitta"]) < 1e-9 * max(1, row["sagitta"])]
        assert len(same) >= 2 ** (row["level"] - 1), row


def test_stake_names_never_change_when_a_level_is_added() -> None:
    job = JOBS["beyond"]
    few = {(s["name"], round(s["along"], 6)) for s in bowstring.answer({**job, "levels": 3})["stakes"]}
    many = {(s["name"], round(s["along"], 6)) for s in bowstring.answer({**job, "levels": 5})["stakes"]}
    assert few < many


@KINDS
def test_answer_is_plain_json_and_repeats(name: str) -> None:
    job = {"bowstring": 1, **JOBS[name]}
    before = json.dumps(job)
    first = bowstring.answer(job)
    assert json.dumps(job) == before, "the job is not changed"
    text = json.dumps(first, allow_nan=False)
    assert json.loads(text) == first, "plain JSON values, no tuples"
    assert text == answered(name), "asked another time"


@KINDS
def test_all_the_contracts_keys_are_there(name: str) -> None:
    got = answer(name)
    assert set(got) >= {
        "arc",
        "staked",
        "given",
        "halving",
        "rule",
        "rounding",
        "stakes",
        "marks",
        "steps",
        "checks",
        "cautions",
        "notes",
    }
    assert all(isinstance(text, str) and text.strip() for text in got["cautions"] + got["notes"])
