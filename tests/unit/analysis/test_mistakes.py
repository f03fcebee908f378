"""The blunders, each held against the same blunder staked out in the complex plane (``mistake_crews``)."""

from __future__ import annotations

import itertools
import json
import math
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

import numpy as np
import pytest

import bowstring
from bowstring.job.job import read_job
from bowstring.layout.layout import lay_out
from bowstring.report.mistakes import report_mistakes
from helping import about
from unit.analysis.mistake_crews import (
    FOOT,
    INCH,
    JOBS,
    METRES,
    Curve,
    Places,
    burn_of,
    burned,
    lengths,
    staked,
    told,
)


def assert_stands(name: str, row: dict[str, Any], expected: Places) -> None:
    """The stakes stand where this test puts them, and the worst miss is theirs."""
    found = {stake["name"]: complex(stake["x"], stake["y"]) for stake in row["stakes"]}
    assert list(found) == list(expected)
    assert np.allclose(list(found.values()), list(expected.values()), rtol=0, atol=1e-9)
    curve = Curve(JOBS[name])
    off = {stake: curve.miss(place) for stake, place in expected.items()}
    assert abs(row["worst_miss"]) == pytest.approx(max(map(abs, off.values())), abs=1e-9)
    assert row["worst_miss"] == pytest.approx(off[row["at"]], abs=1e-9)


@pytest.mark.parametrize("name", JOBS)
def test_every_long_pull_burned(name: str) -> None:
    job, (rows, _answer) = JOBS[name], told(name)
    burn = burn_of(job)
    try:
        expected = staked(job, lambda _stake, _pull, length: burned(length, burn))
    except ValueError:  # tapes that don't meet: nobody drives a stake there, so it isn't told
        assert "burned_foot_all" not in rows and "tapes" in name
        return
    long = sum(burned(length, burn) != length for length in lengths(job))
    assert ("burned_foot_all" in rows) == (long > 1)
    if long > 1:
        assert_stands(name, rows["burned_foot_all"], expected)


@pytest.mark.parametrize("name", JOBS)
def test_one_pull_burned_is_the_one_that_throws_the_stakes_farthest(name: str) -> None:
    """Every pull is tried here, one after the other."""
    job, (rows, _answer) = JOBS[name], told(name)
    burn, curve = burn_of(job), Curve(job)
    tried = []
    for wrong in range(len(lengths(job))):
        calls = iter(range(10**6))

        def held(_stake: str, _pull: int, length: float, wrong: int = wrong, calls: Any = calls) -> float:
            return burned(length, burn) if next(calls) == wrong else length

        try:
            places = staked(job, held)
        except ValueError:
            continue
        tried.append((max(abs(curve.miss(place)) for place in places.values()), places))
    worst = max(size for size, _places in tried)
    row = rows["burned_foot"]
    assert abs(row["worst_miss"]) == pytest.approx(worst, rel=1e-9)
    found = [complex(stake["x"], stake["y"]) for stake in row["stakes"]]
    # Among equals (mirror images) it is one of those tried here.
    assert any(np.allclose(found, list(places.values()), rtol=0, atol=1e-9) for size, places in tried
               if size > worst * (1 - 1e-9))  # fmt: skip


@pytest.mark.parametrize("name", [name for name in JOBS if "metres" not in name])
def test_tenths_read_as_inches(name: str) -> None:
    """10.4 ft read as 10 ft 4 in: what stands after the point, in tenths, becomes inches."""

    def held(_stake: str, _pull: int, length: float) -> float:
        # A half of the last digit goes up, as the sheet shows it; the arithmetic's dust is below nine digits.
        shown = Decimal(f"{length / FOOT:.9f}").quantize(Decimal("0.01"), ROUND_HALF_UP)
        whole, _, decimals = str(shown).partition(".")
        return int(whole) * FOOT + int(decimals) / 10 * INCH

    rows, _answer = told(name)
    assert_stands(name, rows["tenths_as_inches"], staked(JOBS[name], held))


def test_no_tenths_are_read_as_inches_on_a_metric_tape() -> None:
    assert not any("tenths_as_inches" in told(name)[0] for name in JOBS if "metres" in name)


@pytest.mark.parametrize("name", JOBS)
def test_the_arc_s_length_laid_off_for_the_chord(name: str) -> None:
    job, (rows, _answer) = JOBS[name], told(name)
    curve = Curve(job)
    try:
        expected = staked(job, lambda _stake, _pull, length: length, complex(2 * curve.radius * curve.half_angle))
    except ValueError:  # two tapes that leave a gap show it at the first stake
        assert "arc_for_chord" not in rows and "tapes" in name
        return
    assert_stands(name, rows["arc_for_chord"], expected)
    assert "Taping A to B" in rows["arc_for_chord"]["told"]


@pytest.mark.parametrize("name", [name for name in JOBS if "centre" in name])
def test_the_arc_s_length_held_for_each_gap(name: str) -> None:
    job, (rows, _answer) = JOBS[name], told(name)
    curve = Curve(job)
    gap = 2 * curve.radius * curve.half_angle / 8
    expected = staked(job, lambda stake, pull, length: gap if pull == 1 and stake != "C" else length)
    chord = 2 * curve.radius * math.sin(curve.half_angle / 8)
    mark = {"feet": INCH / 8, "metr": 0.005, "tent": 0.01 * FOOT}[name[:4]]
    assert ("arc_for_gaps" in rows) == (gap - chord >= mark), "what is no mark longer can't be held"
    if "arc_for_gaps" in rows:
        assert_stands(name, rows["arc_for_gaps"], expected)


@pytest.mark.parametrize("name", [name for name in JOBS if "centre" in name])
def test_the_diameter_pulled_for_the_radius(name: str) -> None:
    job, (rows, _answer) = JOBS[name], told(name)
    expected = staked(job, lambda stake, pull, length: 2 * length if stake == "C" or pull == 0 else length)
    assert_stands(name, rows["diameter"], expected)


@pytest.mark.parametrize("name", [name for name in JOBS if "halving" in name or "ordinates" in name])
def test_a_triangle_laid_with_its_long_side_along_the_string(name: str) -> None:
    """The angle at the foot by the cosine rule: between the long side and the leg out, over against the other leg."""
    job, (rows, answer) = JOBS[name], told(name)
    row = rows.get("wrong_leg")
    if "halving" in name:
        squaring = answer["halving"][0]["squaring"]
        legs = (squaring["along"], squaring["out"]) if squaring["along"] else None
    else:
        legs = whole_triangle(job)
    assert (row is None) == (legs is None)
    if row is None or legs is None:
        return
    a, b = legs
    c = math.hypot(a, b)
    cosine = (b * b + c * c - a * a) / (2 * b * c)
    lean = (cosine, math.sqrt(1 - cosine**2))
    assert_stands(name, row, staked(job, lambda _stake, _pull, length: length, lean=lean))


def whole_triangle(job: dict[str, Any]) -> tuple[float, float] | None:
    """The legs of the triangle that the sheet prints for ordinates, read off its sentence."""
    name = next(name for name, one in JOBS.items() if one is job)
    rows, answer = told(name)
    if "wrong_leg" not in rows:
        return None
    shown = [rows["wrong_leg"]["text"].split("(")[1].split(" along, ")[0]]
    assert any(shown[0] in line for line in answer["square"]), "the sheet's own triangle"
    text = rows["wrong_leg"]["text"].split("(")[1].split(")")[0]
    along, out = (part.rsplit(" ", 1)[0] for part in text.split(", ")[:2])
    return read_length(along), read_length(out)


def read_length(shown: str) -> float:
    if shown.endswith((" ft", " m")):
        return float(shown.split()[0]) * (FOOT if shown.endswith("ft") else 1.0)
    feet, inches = shown.rstrip('"').split("' ")
    return int(feet) * FOOT + int(inches) * INCH


@pytest.mark.parametrize("name", JOBS)
def test_the_wrong_hand_is_the_mirror_image_and_no_check_sees_it(name: str) -> None:
    rows, answer = told(name)
    row = rows["wrong_hand"]
    true = staked(JOBS[name], lambda _stake, _pull, length: length)
    found = {stake["name"]: complex(stake["x"], stake["y"]) for stake in row["stakes"]}
    for stake, place in true.items():
        # Ordinates stand at equal steps of the chord, the others at equal arcs: both are ``true``.
        assert found[stake] == pytest.approx(place.conjugate(), abs=1e-9)
    assert row["worst_miss"] == pytest.approx(max(2 * place.imag for place in true.values()), abs=1e-9)
    assert not row["caught"] and row["caught_by"] == []
    for check in answer["checks"]:
        read = measured(check, found)
        assert read == pytest.approx(check["distance"], abs=1e-9)
    assert f"on your {JOBS[name]['side']}" in row["told"] and row["told"].startswith("NO check")


def measured(check: dict[str, Any], at: Places) -> float:
    """What a check reads between these stakes: its string's middle, its foot on the string A to B, or a stake."""
    start = check["from"]
    if start.startswith("mid "):
        one, other = start[4:].split("-")
        from_here = (at[one] + at[other]) / 2
    elif start.startswith("foot "):
        from_here = at["A"] + (at["B"] - at["A"]) / abs(at["B"] - at["A"]) * check["along"]
    else:
        from_here = at[start]
    return abs(at[check["to"]] - from_here)


@pytest.mark.parametrize("name", JOBS)
def test_the_checks_named_are_those_that_differ_by_more_than_is_allowed(name: str) -> None:
    rows, answer = told(name)
    assert_checks(rows, answer, {"feet": INCH / 8, "metr": 0.005, "tent": 0.01 * FOOT}[name[:4]])


@pytest.mark.parametrize("method", ["halving", "tapes", "centre"])
def test_a_foot_is_taped_from_where_a_stands_when_a_is_moved(method: str) -> None:
    """A four-foot hub line forgotten: both ends, and the string between them, stand elsewhere."""
    job = {**METRES, "method": method, "centre": "reachable", "offset": "1.2 m", "toward": "outside"}
    rows = json.loads(json.dumps(report_mistakes(lay_out(read_job(job)))))
    row = {one["kind"]: one for one in rows if one["kind"] == "no_offset"}
    assert {one["kind"] for one in row["no_offset"]["caught_by"]} >= {"ordinate"}
    assert_checks(row, bowstring.answering(job), 0.005)


def assert_checks(rows: dict[str, Any], answer: dict[str, Any], mark: float) -> None:
    """Those checks are named that this test finds out of what is allowed, with its readings, the best one first."""
    for kind, row in rows.items():
        at = {stake["name"]: complex(stake["x"], stake["y"]) for stake in row["stakes"]}
        expected = {}
        for check in answer["checks"]:
            out = measured(check, at) - check["distance"]
            allowed = 2 * mark if check["allowed"] is None else check["allowed"]
            if not check["blind"] and abs(out) > allowed:
                expected[check["from"], check["to"]] = (out, abs(out) / allowed)
        found = {(one["from"], one["to"]): one for one in row["caught_by"]}
        assert row["caught_count"] == len(expected), kind
        assert row["caught"] == bool(expected)
        assert set(found) == set(expected)
        for key, one in found.items():
            assert one["out"] == pytest.approx(expected[key][0], abs=1e-9)
            assert one["reads"] - one["should"] == pytest.approx(one["out"], abs=1e-9)
            assert one["reads_shown"] != one["should_shown"]
        if expected:
            best = max(ratio for _out, ratio in expected.values())
            first = row["caught_by"][0]
            assert expected[first["from"], first["to"]][1] == pytest.approx(best, rel=1e-5)
            assert first["reads_shown"] in row["told"] and first["should_shown"] in row["told"]
        else:
            assert ("NO check on this sheet catches it" in row["told"]) != ("No later check would" in row["told"])


def only(job: dict[str, Any], kind: str) -> dict[str, Any] | None:
    rows = report_mistakes(lay_out(read_job(job)))
    return next((json.loads(json.dumps(row)) for row in rows if row["kind"] == kind), None)


def test_a_blunder_within_the_allowances_is_reported_as_not_caught() -> None:
    """A 6-mm board forgotten where 15 mm is allowed: every reading stays within what it may be out."""
    job = {"unit": "m", "mark": "0.001 m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 3,
           "offset": "0.006 m", "toward": "centre", "tolerance": "0.015 m"}  # fmt: skip
    row = only(job, "no_offset")
    assert row is not None
    assert abs(row["worst_miss"]) <= 0.015 and row["moved"] <= 0.015
    assert not row["caught"] and row["caught_by"] == []
    # What proves the ends reads it all the same, 6 mm off: then nobody is told that nothing catches it.
    assert row["told"].startswith("Taping A to B catches it") and "is allowed" in row["told"]
    assert "No later check would." in row["told"] and "NO check" not in row["told"]
    # The same board forgotten where less is allowed is seen.
    strict = only({**job, "tolerance": "0.002 m"}, "no_offset")
    assert strict is not None and strict["caught"]


def test_the_offset_forgotten_is_the_sheet_s_own_halving_from_the_drawn_ends() -> None:
    """From A0 and B0, which stand on the staked arc's radii, the board's thickness farther out."""
    job = {"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 2, "offset": "0.04 m", "toward": "centre"}
    row = only(job, "no_offset")
    assert row is not None
    curve = Curve(job)
    radius = curve.radius - 0.04
    along, up = 0.04 * math.sin(curve.half_angle), 0.04 * math.cos(curve.half_angle)
    chord = 2 * radius * math.sin(curve.half_angle)
    a, b = complex(-along, up), complex(chord + along, up)
    middle = (a + b) / 2 + 1j * radius * (1 - math.cos(curve.half_angle))
    places = {"A": a, "M": middle, "B": b}
    for name, (one, other) in {"Q1": (a, middle), "Q2": (middle, b)}.items():
        out = 1j * (other - one) / abs(other - one)
        places[name] = (one + other) / 2 + out * radius * (1 - math.cos(curve.half_angle / 2))
    for stake in row["stakes"]:
        assert complex(stake["x"], stake["y"]) == pytest.approx(places[stake["name"]], abs=1e-9)
    assert row["worst_miss"] == pytest.approx(0.04, abs=1e-9)


def test_the_drawn_radius_pulled_from_the_right_centre() -> None:
    job = {"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 2, "offset": "0.04 m", "toward": "centre",
           "method": "centre", "centre": "reachable", "side": "right"}  # fmt: skip
    row = only(job, "wrong_radius")
    assert row is not None
    assert [row["at"], row["worst_miss"]] == ["K1", pytest.approx(0.04, abs=1e-9)]
    assert only({**job, "offset": "0 m"}, "wrong_radius") is None


def test_the_corner_sees_the_wrong_hand_where_it_stands_on_the_ground() -> None:
    """Its distance to the middle grows by twice the sagitta; among the stakes nothing does."""
    row = only(
        {"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 3, "start": "corner", "side": "left"},
        "wrong_hand",
    )
    assert row is not None
    (seen,) = row["caught_by"]
    assert (seen["from"], seen["to"]) == ("P", "M")
    assert seen["out"] == pytest.approx(2 * 2.5, abs=1e-9)


@pytest.mark.parametrize("angle", [60, 130, 180, 250, 320])
def test_a_wrong_hand_s_miss_is_the_way_to_the_arc_itself(angle: float) -> None:
    """Against 20,000 places along the arc: not to the stake's own place, nor to the rest of the circle."""
    job = {"unit": "m", "arc": {"radius": 10, "central_angle": angle}, "levels": 3, "side": "left"}
    row = only(job, "wrong_hand")
    assert row is not None
    half = math.radians(angle) / 2
    turns = np.linspace(-half, half, 20001)
    arc = complex(10 * math.sin(half), -10 * math.cos(half)) + 10j * np.exp(1j * turns)
    off = {stake["name"]: float(np.abs(arc - complex(stake["x"], stake["y"])).min()) for stake in row["stakes"]}
    assert row["worst_miss"] == pytest.approx(max(off.values()), abs=1e-5)
    assert off[row["at"]] == pytest.approx(max(off.values()), abs=1e-5)
    assert row["worst_miss"] <= row["moved"] * (1 + 1e-9)


def test_every_check_that_counts_is_listed() -> None:
    job = {"unit": "m", "arc": {"radius": 20, "central_angle": 90}, "levels": 5, "side": "left", "method": "halving"}
    counts = [(row["caught_count"], len(row["caught_by"])) for row in report_mistakes(lay_out(read_job(job)))]
    assert all(count == listed for count, listed in counts) and max(count for count, _listed in counts) > 12


def test_a_reading_of_the_step_itself_is_told_where_no_check_is_left() -> None:
    """One round of halving: M's half chords are all there is."""
    row = only({"unit": "m", "arc": {"chord": 18, "sagitta": 2.5}, "levels": 1, "side": "left"}, "burned_foot")
    assert row is not None and not row["caught"]
    read, right = math.hypot(9, 2.4), math.hypot(9, 2.5)
    own = f"A to M would read {round(read / 0.005) * 0.005:.3f} m; it must read {round(right / 0.005) * 0.005:.3f} m."
    assert own in row["told"] and "NO check" not in row["told"]
    assert row["told"].endswith("No later check would, and M would stand 100.0 mm off the line.")


@pytest.mark.parametrize("tolerance", [None, "5 mm", "1/2 in"])
@pytest.mark.parametrize("start", ["ends", "corner"])
def test_no_blunder_is_both_unseen_and_seen(tolerance: str | None, start: str) -> None:
    bank = {"name": "bank", "stops": "tape", "outline": [["5 ft", "-1 ft"], ["55 ft", "-1 ft"], ["55 ft", "2 ft"],
                                                         ["5 ft", "2 ft"]]}  # fmt: skip
    told = 0
    for method, ground in itertools.product(("ordinates", "tapes", "halving"), ([], [bank])):
        job = {"arc": {"chord": "60 ft", "sagitta": "90 in"}, "side": "left", "method": method, "levels": 3,
               "ground": ground, "start": start, **({"tolerance": tolerance} if tolerance else {})}  # fmt: skip
        for row in report_mistakes(lay_out(read_job(job))):
            with about(method, row["kind"]):
                rest = row["told"].replace("NO check on this sheet catches it", "")
                seen = "catches it" in rest or "Its own step shows it" in rest
                assert seen != ("NO check" in row["told"])
                told += 1
    assert told > 12


def test_what_cannot_happen_is_left_out() -> None:
    """No radius is pulled, no offset given, no triangle laid; the ends come from the corner; one level has no gaps."""
    kinds = {
        row["kind"] for row in report_mistakes(lay_out(read_job({**METRES, "method": "tapes", "start": "corner"})))
    }
    assert kinds == {"burned_foot", "burned_foot_all", "wrong_hand"} or kinds == {"burned_foot", "wrong_hand"}
    half_turn = {
        "unit": "ft",
        "arc": {"radius": 20, "chord": 40},
        "levels": 3,
        "method": "centre",
        "centre": "reachable",
    }
    assert only(half_turn, "diameter") is None, "the tapes of the diameter and of the gap leave a gap"


def test_thousands_of_stakes_are_listed_as_far_as_somebody_would_read() -> None:
    rows = report_mistakes(lay_out(read_job({"unit": "m", "arc": {"radius": 60, "central_angle": 70}, "levels": 9})))
    for row in rows:
        names = [stake["name"] for stake in row["stakes"]]  # type: ignore[attr-defined]
        assert len(names) == len(set(names)) == 65 and {names[0], names[-1]} == {"A", "B"}
