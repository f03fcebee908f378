"""How far stakes stand off the fair curve, and what checks read: held against many thousands of crews, and by hand."""

from __future__ import annotations

from math import cos, hypot, radians, sqrt
from typing import Any

import numpy as np
import pytest

from bowstring.analysis.checks import Check
from bowstring.analysis.error_model import STAKE
from bowstring.analysis.limits import RECOMMENDED
from bowstring.job.job import DRIVEN
from bowstring.units.sizes import INCH
from bowstring.units.tape import make_tape
from helping import about, answer_to
from montecarlo import Crews
from unit.analysis.test_monte_carlo import ARCS, COUNT, LOOSE_ENDS, METHODS, NEAR, WAYS, job_of, possible, staked

SHARE = 4.5 * sqrt(0.95 * 0.05 / COUNT)
"""A share of 95 % of so many draws has a standard error of 0.15 %: 4.5 of those are let pass."""

SHORT = 6.0
"""Deviations that a reading must be long: a shorter one is bent by the stakes' own scatter (a distance has no sign)."""


def mid_ordinates(crews: Crews, before: str, here: str, after: str) -> Any:
    """Each crew's mid-ordinate over two neighbours, with its sign: twice the triangle's area over its base."""
    base = crews.at[after] - crews.at[before]
    return ((crews.at[here] - crews.at[before]) * base.conjugate()).imag / np.abs(base)


def hold_fair(job: dict[str, Any]) -> int:
    layout, _accuracy, crews = staked(job)
    told = answer_to(job)
    names = [stake["name"] for stake in told["stakes"]]
    held = 0
    for stake, before, here, after in zip(told["stakes"][1:-1], names, names[1:], names[2:], strict=False):
        sampled = mid_ordinates(crews, before, here, after)
        exact = complex(*layout.marks[after]) - complex(*layout.marks[before])
        if stake["sigma_fair"] * 20 < abs(exact):  # a string that turns by little
            assert np.std(sampled) == pytest.approx(stake["sigma_fair"], rel=NEAR), here
            held += 1
    return held


@pytest.mark.parametrize("arc", ARCS)
@pytest.mark.parametrize("method", METHODS)
def test_the_fair_curve_of_every_method_on_every_arc(method: str, arc: str) -> None:
    job = job_of(**{**ARCS[arc], "method": method, "centre": "reachable"})
    if possible(method, job) and (method, arc) != ("tapes", "flat"):  # flat tapes aren't relied on
        assert hold_fair(job) == 2 ** job["levels"] - 1


@pytest.mark.parametrize("way", WAYS)
def test_the_fair_curve_of_every_way_a_method_can_be_used(way: str) -> None:
    assert hold_fair(job_of(**{"arc": {"chord": 18, "sagitta": 3.4}, **WAYS[way]})) >= 3


def test_what_neighbours_share_cancels_and_what_they_don_t_adds_up() -> None:
    """Stakes driven each by itself: root(1 + 1/4 + 1/4) of one stake's, squared off a string's straight part nearly so.
    Ends loose alike: the whole curve moves, and stays as fair as it was."""
    nothing = {"read": 0, "scale": 0, "line": 0, "angle": 0, "stake": 0}
    flat = {"arc": {"chord": 40, "sagitta": 0.4}, "method": "ordinates", "levels": 4}
    alone = answer_to(job_of(**{**flat, "errors": {**nothing, "stake": 0.003}}))["stakes"][8]
    assert alone["sigma_across"] == pytest.approx(0.003, rel=1e-3)
    assert alone["sigma_fair"] == pytest.approx(0.003 * sqrt(1.5), rel=1e-3)
    ends = [{**end, "x": x, "sigma": 0.01} for end, x in zip(LOOSE_ENDS, (0, 40), strict=True)]
    shared = answer_to(job_of(**{**flat, "errors": nothing, "known": ends}))
    assert min(stake["sigma_across"] for stake in shared["stakes"]) > 0.006
    assert max(stake["sigma_fair"] or 0 for stake in shared["stakes"]) < 1e-4
    assert [stake["name"] for stake in shared["stakes"] if stake["sigma_fair"] is None] == ["A", "B"]


def test_a_centre_pin_moves_the_pad_and_leaves_its_edge_fair() -> None:
    """Swung from one pin, all stakes go with it. A tape that is 1 in 1000 long makes the whole pad as much larger, and
    so each mid-ordinate: R (1 - cos of one gap's angle) = 80 mm, by 0.08 mm."""
    job = job_of(arc={"radius": 6, "central_angle": 150}, method="centre", centre="reachable", levels=4)
    stakes = answer_to(job)["stakes"]
    assert max(stake["sigma_across"] for stake in stakes) > 0.004
    scale_free = {**job, "errors": {**job["errors"], "stake": 0, "read": 1e-5, "scale": 1e-3}}
    # A and B stand where they were, so only the stakes beside them are out of line with what moved.
    inner = answer_to(scale_free)["stakes"][2:-2]
    assert min(stake["sigma_across"] for stake in inner) > 1e-4
    for stake in inner:
        assert stake["sigma_fair"] == pytest.approx(1e-3 * 6 * (1 - cos(radians(150 / 16))), rel=0.05)


def test_each_row_of_methods_has_the_worst_of_its_stakes() -> None:
    told = answer_to(job_of(arc={"chord": 18, "sagitta": 3.4}, method="produced", centre="reachable"))
    own = next(row for row in told["methods"] if row["method"] == "produced")
    assert own["fair_95"] == pytest.approx(1.96 * max(stake["sigma_fair"] or 0 for stake in told["stakes"]), rel=1e-12)
    assert own["fair_95"] == told["accuracy"]["fair_95"]
    assert {row["fair_95"] is None for row in told["methods"]} == {False}


def read_by(crews: Crews, check: Check) -> Any:
    """What each crew reads at a check, with its own tape: from marks as the crew has them."""

    def place(mark: str) -> Any:
        if check.along is not None and mark == check.start:  # along the string from A
            way = crews.at["B"] - crews.at["A"]
            return crews.at["A"] + way / np.abs(way) * check.along
        if mark.startswith("mid "):
            first, second = mark.removeprefix("mid ").split("-")
            return (crews.at[first] + crews.at[second]) / 2
        return crews.at[mark]

    read = crews.model.read
    ends = crews.rng.normal(0, read, (2, crews.count))
    return np.abs(place(check.end) - place(check.start)) / crews.scale + ends[0] - ends[1]


def hold_limits(job: dict[str, Any]) -> int:
    layout, _accuracy, crews = staked(job)
    told, held = answer_to(job)["checks"], 0
    for row, check in zip(told, layout.checks, strict=True):
        if check.distance > SHORT * row["expected"] / 1.96:
            out = np.abs(read_by(crews, check) - check.distance)
            with about(row["kind"], row["from"], row["to"]):
                assert np.mean(out <= row["expected"]) == pytest.approx(0.95, abs=SHARE)
                held += 1
    return held


@pytest.mark.parametrize("arc", ["ordinary", "half circle", "greater arc"])
@pytest.mark.parametrize("method", METHODS)
def test_95_of_100_readings_of_every_check_stay_within_what_is_expected(method: str, arc: str) -> None:
    job = job_of(**{**ARCS[arc], "method": method, "centre": "reachable"})
    if possible(method, job):
        assert hold_limits(job) >= 7


@pytest.mark.parametrize("way", ["halving on loose ends", "produced on loose ends", "tangents from the corner"])
def test_what_is_expected_where_the_ends_are_loose_or_a_corner_stands(way: str) -> None:
    assert hold_limits(job_of(**{"arc": {"chord": 18, "sagitta": 3.4}, **WAYS[way]})) >= 8


def test_a_check_by_hand() -> None:
    """Nothing off but the reading: two ends of the check's own. With stakes that stand each by itself, a gap's too."""
    nothing = {"scale": 0, "line": 0, "angle": 0, "stake": 0, "read": 0}
    job = job_of(arc={"chord": 40, "sagitta": 0.4}, method="ordinates", levels=3)
    for row in answer_to({**job, "errors": {**nothing, "stake": 0.003}})["checks"]:
        if row["kind"] == "gap" and not {"A", "B"} & {row["from"], row["to"]}:
            assert row["expected"] == pytest.approx(1.96 * 0.003 * sqrt(2), rel=1e-6)
        if row["kind"] == "alternate" and row["to"] == "K4":
            assert row["expected"] == pytest.approx(1.96 * 0.003 * sqrt(1.5), rel=1e-6)
    tape = answer_to({**job, "errors": {**nothing, "read": 0.001}})["checks"]
    assert min(row["expected"] for row in tape) >= 1.96 * 0.001 * sqrt(2)


def test_one_tape_that_is_wrong_everywhere_shows_in_no_gap() -> None:
    """A swing with a tape that is long by 1 in 1000: every gap comes out long and reads right; so does the closing one,
    but for what the chord, which was there, doesn't follow."""
    nothing = {"read": 0, "line": 0, "angle": 0, "stake": 0}
    job = job_of(arc={"radius": 6, "central_angle": 120}, method="produced", errors={**nothing, "scale": 1e-3})
    rows = answer_to(job)["checks"]
    closing = next(row for row in rows if row["kind"] == "closing")
    assert closing["expected"] > 1.96e-3  # the chord of 10.4 m stays, all gaps are 1 in 1000 off
    crossings = [row for row in rows if row["kind"] == "cross" and row["from"] == "A"]
    assert crossings and all(row["expected"] < 1e-3 * closing["expected"] for row in crossings[:1])


@pytest.mark.parametrize("feet", [True, False])
@pytest.mark.parametrize("driven", DRIVEN)
def test_each_thing_driven_has_its_own_error(driven: str, feet: bool) -> None:
    said = {"pin": (1 / 8, 3), "board": (1 / 8, 3), "marked": (1 / 16, 1.5), "hub": (1 / 32, 0.8)}[driven]
    unit = "ft-in" if feet else "m"
    told = answer_to({"unit": unit, "arc": {"radius": 10, "chord": 12}, "driven": driven})
    size = said[0] * INCH if feet else said[1] / 1000
    assert told["accuracy"]["errors"]["stake"] == pytest.approx(float(size), rel=1e-12) == STAKE[driven][feet]
    own = answer_to({"unit": unit, "arc": {"radius": 10, "chord": 12}, "driven": driven, "errors": {"stake": "4 mm"}})
    assert own["accuracy"]["errors"]["stake"] == 0.004


JOBS: dict[str, dict[str, Any]] = {
    "a walk": {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"},
    "a walk by its tape": {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "method": "produced", "tolerance": "1/4 in"},
    "a flat curb": {"arc": {"chord": "60 ft", "sagitta": "7 in"}, "spacing": "5 ft", "tolerance": "1/8 in"},
    "metric": {"unit": "mm", "arc": {"radius": 9000, "central_angle": 80}, "levels": 3, "tolerance": "6 mm"},
    "no tolerance": {"unit": "m", "arc": {"radius": 9, "central_angle": 80}, "method": "tapes", "levels": 3},
}


@pytest.mark.parametrize("name", JOBS)
def test_limits_are_shown_rounded_down_to_a_mark_and_at_least_one(name: str) -> None:
    job = JOBS[name]
    tape = make_tape(job.get("unit", "ft-in"), None)
    for row in answer_to(job)["checks"]:
        for limit in ("expected", "allowed"):
            if row[limit] is None:
                assert row[f"{limit}_shown"] is None and "tolerance" not in job
                continue
            marks = max(int(row[limit] / tape.mark + 1e-9), 1)
            assert row[f"{limit}_shown"] == tape.show(marks * tape.mark), row
        assert row["blind"] is (row["allowed"] is not None and row["allowed"] < tape.mark)


@pytest.mark.parametrize("name", JOBS)
def test_the_checks_to_make_first_can_judge(name: str) -> None:
    rows = answer_to(JOBS[name])["checks"]
    best = [row for row in rows if row["recommended"]]
    able = [row for row in rows if row["judges"] and (not row["blind"] or row["kind"] == "closing")]
    assert len(best) == min(RECOMMENDED, len(able)) and all(row in able for row in best)
    assert bool(best) is (name != "a flat curb")
    for row in rows:
        assert row["judges"] is (row["expected"] <= row["distance"] / 2)
        assert ("can't judge" in row["text"]) is not row["judges"]


def test_a_check_that_cant_judge_is_there_and_is_never_recommended() -> None:
    rows = answer_to(JOBS["a flat curb"])["checks"]
    unable = [row for row in rows if not row["judges"]]
    assert unable and not any(row["recommended"] for row in unable)


@pytest.mark.parametrize("method", ["centre", "produced", "angles", "coordinates"])
def test_every_method_of_equal_gaps_asks_for_the_closing_gap(method: str) -> None:
    arc = {"radius": 8, "central_angle": 70}
    told = answer_to({"unit": "m", "arc": arc, "method": method, "levels": 3, "centre": "reachable"})
    closing = [row for row in told["checks"] if row["kind"] == "closing"]
    assert [(row["from"], row["to"]) for row in closing] == [("K7", "B")]
    assert closing[0]["recommended"] and closing[0]["text"].endswith(f"must read {closing[0]['shown']}.")
    taped = [one for step in told["steps"] for one in step["measures"] if "distance" in one]
    assert not any({one["from"], one["to"]} == {"K7", "B"} for one in taped)


def test_two_tapes_from_the_ends_tape_the_last_gap_in_a_step() -> None:
    told = answer_to({"unit": "m", "arc": {"radius": 8, "central_angle": 70}, "method": "tapes", "levels": 3})
    assert {"B", "K7"} in [{one["from"], one["to"]} for step in told["steps"] for one in step["measures"]]
    assert not [row for row in told["checks"] if row["kind"] == "closing"]


def test_methods_of_other_gaps_have_no_gap_that_closes() -> None:
    for method in ("halving", "rule", "ordinates", "tangent"):
        told = answer_to({"unit": "m", "arc": {"radius": 8, "central_angle": 70}, "method": method, "levels": 3})
        assert not [row for row in told["checks"] if row["kind"] == "closing"], method


def test_the_closing_gap_of_a_chain_is_out_by_what_went_wrong_on_the_way() -> None:
    """Each gap by itself stays within little; what closes holds the sum of all."""
    job = {"unit": "m", "arc": {"radius": 20, "central_angle": 70}, "method": "produced", "levels": 4}
    rows = {row["kind"]: row for row in answer_to(job)["checks"]}
    model = answer_to(job)["accuracy"]["errors"]
    one_gap = 1.96 * hypot(model["read"] * 2, model["stake"] * sqrt(2))
    assert rows["closing"]["expected"] > 4 * one_gap
