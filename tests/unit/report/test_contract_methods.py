"""What the contract says of methods, accuracy, the ground and the advice, taken word by word."""

from __future__ import annotations

import json
import math
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from bowstring import BadJob
from helping import answer_to

METHODS = ("centre", "halving", "rule", "ordinates", "tangent", "produced", "tapes", "angles", "coordinates")
ROW = {"method", "possible", "why_not", "stakes", "measurements", "longest_pull", "miss_95", "all_95", "hands"}
PACKAGE = Path(__file__).resolve().parents[3] / "pylib"


def ask(**more: object) -> dict[str, Any]:
    usual = {"centre": "reachable", "unit": "m", "arc": {"chord": "12 m", "sagitta": "2 m"}, "levels": 3}
    return answer_to({**usual, **more}, whole=True)


def test_halving_is_what_is_done_unless_another_way_is_asked_for() -> None:
    assert ask()["method"] == "halving"
    with pytest.raises(BadJob) as refused:
        ask(method="string")
    assert refused.value.field == "method"


def test_the_terminal_takes_another_method_than_the_job_says(tmp_path: Path) -> None:
    job = tmp_path / "job.json"
    job.write_text(json.dumps({"arc": {"chord": "38 ft", "sagitta": "5 ft"}, "method": "tapes"}), "utf-8")
    for words, method in (([], "tapes"), (["--method", "ordinates"], "ordinates"), (["--method", "rule"], "rule")):
        run = subprocess.run(
            [sys.executable, "-m", "bowstring", str(job), "--json", *words],
            env={"PYTHONPATH": str(PACKAGE)}, capture_output=True, text=True, check=True,
        )  # fmt: skip
        assert json.loads(run.stdout)["method"] == method
    run = subprocess.run(
        [sys.executable, "-m", "bowstring", str(job), "--method", "string"],
        env={"PYTHONPATH": str(PACKAGE)}, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert run.returncode == 2 and run.stdout == "" and run.stderr.startswith("method: ")
    assert run.stderr.count("\n") == 1


def test_there_is_a_row_for_each_method_and_its_figures_are_those_of_the_method_when_asked_for() -> None:
    rows = {row["method"]: row for row in ask()["methods"]}
    assert set(rows) == set(METHODS) and all(row.keys() >= ROW for row in rows.values())
    for method, row in rows.items():
        own = ask(method=method, centre="reachable")
        told = own["accuracy"]
        largest = max(stake["sigma_across"] for stake in own["stakes"])
        assert row["possible"] is True and row["why_not"] is None
        assert row["stakes"] == len(own["stakes"]) == 9
        assert math.isclose(row["miss_95"], told["miss_95"], rel_tol=1e-12)
        assert math.isclose(row["miss_95"], 1.96 * largest, rel_tol=1e-12)
        assert row["all_95"] >= row["miss_95"]
        pulls = [measure["distance"] for step in own["steps"] if step["level"]
                 for measure in step["measures"] if "distance" in measure]  # fmt: skip
        assert math.isclose(row["longest_pull"], max(pulls), rel_tol=1e-12)


@pytest.mark.parametrize(
    ("unit", "mark", "klass"),
    [("ft-in", 0.0254 / 8, "III"), ("ft", 0.003048, "II"), ("m", 0.005, "II"), ("mm", 0.005, "II")],
)
def test_the_usual_errors_are_the_mark_over_root_12_and_the_class_over_root_3(
    unit: str, mark: float, klass: str
) -> None:
    """a and b of the tape classes: UK Measuring Instruments Regulations 2016, S.I. 2016/1153, Schedule 1I."""
    a, b = {"II": (0.3, 0.2), "III": (0.6, 0.4)}[klass]
    told = answer_to({"unit": unit, "arc": {"chord": "12 m", "sagitta": "2 m"}, "levels": 3, "method": "tapes"})
    errors = told["accuracy"]["errors"]  # type: ignore[index]
    longest = next(row for row in told["methods"] if row["method"] == "tapes")["longest_pull"]  # type: ignore[attr-defined]
    assert math.isclose(errors["read"], mark / math.sqrt(12), rel_tol=1e-12)
    assert math.isclose(errors["scale"], (a + b * longest) / 1000 / (longest * math.sqrt(3)), rel_tol=1e-12)
    assert math.isclose(errors["stake"], 0.003175 if unit in ("ft-in", "ft") else 0.003, rel_tol=1e-12)


def test_errors_of_the_job_s_own_stand_in_for_the_usual_ones_by_name() -> None:
    given = {"read": "2 mm", "scale": 1e-4, "stake": "1 mm", "line": "0.5 mm", "angle": "0° 2'"}
    told = ask(errors=given)["accuracy"]["errors"]
    assert told == pytest.approx({"read": 0.002, "scale": 1e-4, "stake": 0.001, "line": 0.0005, "angle": 2 / 60})
    nothing = dict.fromkeys(given, 0)
    for method in METHODS:
        found = ask(method=method, centre="reachable", errors=nothing)
        assert all(stake["sigma_across"] == stake["sigma_along"] == 0 for stake in found["stakes"])
        assert found["accuracy"]["miss_95"] == found["accuracy"]["all_95"] == 0


def test_the_ends_are_exact_unless_a_known_mark_carries_a_sigma() -> None:
    """Two tapes from A and B alone, every other error 0: an end's error along the chord goes on by geometry."""
    nothing = dict.fromkeys(("read", "scale", "stake", "line", "angle"), 0)
    job = {"unit": "m", "arc": {"chord": "6 m", "sagitta": "4 m"}, "levels": 1, "method": "tapes", "errors": nothing}
    exact = answer_to(job)["stakes"]
    assert all(stake["sigma_across"] == 0 for stake in exact)  # type: ignore[attr-defined]
    known = [{"name": "A", "x": 0, "y": 0, "sigma": "3 mm"}]
    a, middle, b = answer_to({**job, "known": known})["stakes"]  # type: ignore[misc]
    assert a["sigma_across"] == pytest.approx(0.003) and a["sigma_along"] == pytest.approx(0.003)
    assert b["sigma_across"] == b["sigma_along"] == 0
    # Rows (3, 4)/5 and (-3, 4)/5: A's shift (p, q) moves the first tape's end by (3p + 4q)/5, so the crown by
    # x = (3p + 4q)/6 and y = (3p + 4q)/8.
    assert middle["sigma_along"] == pytest.approx(0.003 * 5 / 6)
    assert middle["sigma_across"] == pytest.approx(0.003 * 5 / 8)


def test_a_way_that_is_not_possible_says_what_stops_it() -> None:
    shed = {"name": "shed", "stops": "tape", "outline": [[5, -3], [7, -3], [7, -1], [5, -1]]}
    rows = {row["method"]: row for row in ask(ground=[shed])["methods"]}
    assert rows["centre"]["possible"] is False and "shed" in rows["centre"]["why_not"]
    assert rows["ordinates"]["possible"] is True
    short = {row["method"]: row for row in ask(tape={"length": "5 m"})["methods"]}
    assert short["halving"]["possible"] is False and "5.000 m" in short["halving"]["why_not"]
    alone = {row["method"]: row for row in ask(hands=1)["methods"]}
    assert [method for method, row in alone.items() if row["possible"]] == ["centre"]


def test_the_advice_is_a_method_and_a_sentence() -> None:
    advice = ask()["advice"]
    assert advice["method"] in METHODS and advice["text"].endswith(".")


def test_a_sheet_of_a_way_that_is_blocked_stops() -> None:
    pond = {"name": "pond", "stops": "feet", "outline": [[5, 1.5], [7, 1.5], [7, 2.5], [5, 2.5]]}
    for method in ("halving", "ordinates"):
        assert any("pond" in text for text in ask(method=method, centre="reachable", ground=[pond])["stops"])
    assert not any("pond" in text for text in ask(ground=[])["stops"])
