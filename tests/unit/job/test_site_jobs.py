"""What a job says of the site: good values in several units, and values that can't be used, each refused at its place
with what is wrong and what would do."""

from __future__ import annotations

import re
from math import dist
from typing import Any

import pytest

from bowstring import BadJob, answer
from bowstring.job.job import read_job
from bowstring.job.site import KEYS, Site
from helping import SAID, all_hold

FOOT, INCH = 0.3048, 0.0254
SQUARE = [[2, 1], [4, 1], [4, 2], [2, 2]]
HUB, PIN = {"name": "hub", "x": -2, "y": 3}, {"name": "pin", "x": 12, "y": 3}


def job(**more: Any) -> dict[str, Any]:
    """A job in metres: chord 10, sagitta 1, three levels where it has no spacing."""
    levels = {} if "spacing" in more else {"levels": 3}
    return {**SAID, "unit": "m", "arc": {"chord": 10, "sagitta": 1}, **levels, **more}


def site(**more: Any) -> Site:
    answer(job(**more), whole=False)
    return read_job(job(**more)).site


def obstacle(**more: Any) -> dict[str, Any]:
    return {"ground": [{"name": "shed", "stops": "tape", "outline": SQUARE, **more}]}


def control(*marks: Any, **more: Any) -> dict[str, Any]:
    return {"method": "coordinates", "control": {"marks": list(marks), **more}}


# What is good.

LENGTHS = [("30 m", 30.0), (30, 30.0), ("30", 30.0), ("30000 mm", 30.0), ("100 ft", 30.48),
           ("98' 5-1/2\"", 98 * FOOT + 5.5 * INCH)]  # fmt: skip


@pytest.mark.parametrize(("typed", "metres"), LENGTHS)
def test_lengths_in_several_units(typed: Any, metres: float) -> None:
    assert site(tape={"length": typed}).tape_length == pytest.approx(metres)
    for place in ("behind", "inside", "outside"):
        assert site(room={place: typed}).room == {place: pytest.approx(metres)}
    read = site(**obstacle(outline=[[typed, 50], [90, 60], [70, typed]])).obstacles[0].outline
    assert (read[0].x, read[2].y) == pytest.approx((metres, metres))
    known = site(known=[{"name": "hub", "x": typed, "y": "-2 m", "sigma": "1/4 in"}]).known[0]
    assert (known.point.x, known.point.y, known.sigma) == pytest.approx((metres, -2, 0.25 * INCH))


@pytest.mark.parametrize(("unit", "bare"), [("m", 1.0), ("mm", 0.001), ("ft", FOOT), ("ft-in", FOOT)])
def test_a_bare_number_is_in_the_jobs_unit(unit: str, bare: float) -> None:
    arc = {"chord": "10 m", "sagitta": "1 m"}
    read = read_job({"unit": unit, "arc": arc, "tape": {"length": 25}, "room": {"behind": 3},
                     "known": [{"name": "hub", "x": -4, "y": 5}]}).site  # fmt: skip
    assert (read.tape_length, read.room["behind"]) == pytest.approx((25 * bare, 3 * bare))
    assert (read.known[0].point.x, read.known[0].point.y) == pytest.approx((-4 * bare, 5 * bare))


def test_what_is_left_out_is_the_usual() -> None:
    read = site()
    assert (read.method, read.hands, read.tape_class, read.room, read.obstacles) == (None, 2, "II", {}, ())
    assert read.tape_length == pytest.approx(100 * FOOT)
    assert read_job({"arc": {"chord": 10, "sagitta": 1}}).site.tape_class == "III"
    assert site(ground=[], known=[], room={}, fall={}, errors={}, tape={}) == read


@pytest.mark.parametrize(
    ("typed", "percent"), [(2, 2.0), ("2", 2.0), ("2%", 2.0), ("-1.5 %", -1.5), (".5", 0.5), (-50, -50.0)]
)
def test_a_fall_in_percent(typed: Any, percent: float) -> None:
    assert site(fall={"along": typed}).along == percent and site(fall={"across": typed}).across == percent


@pytest.mark.parametrize(
    ("name", "typed", "value"),
    [("read", "1/16 in", INCH / 16), ("stake", 0, 0.0), ("line", "2 mm", 0.002), ("scale", "0.0002", 0.0002),
     ("scale", 0, 0.0), ("angle", "0°1'", 1 / 60), ("angle", 0, 0.0), ("angle", "0", 0.0), ("angle", 0.02, 0.02)],
)  # fmt: skip
def test_errors_of_a_crew(name: str, typed: Any, value: float) -> None:
    assert site(errors={name: typed}).errors == {name: pytest.approx(value)}


def test_marks_that_stand() -> None:
    """Two tapes from known marks; the ends may carry a sigma where they are given with their own places."""
    told = answer(job(method="tapes", known=[HUB, PIN], tapes_from=["hub", "pin"]), whole=False)
    pulls = {(one["from"], one["to"]) for step in told["steps"] for one in step["measures"]}  # type: ignore[attr-defined]
    assert {("hub", "K1"), ("pin", "K1")} <= pulls
    ends = [{"name": "A", "x": 0, "y": 0, "sigma": "10 mm"}, {"name": "B", "x": 10, "y": 0, "sigma": "10 mm"}]
    exact, loose = answer(job(), whole=False), answer(job(known=ends), whole=False)
    assert loose["accuracy"]["miss_95"] > exact["accuracy"]["miss_95"]  # type: ignore[index]
    for one, other in zip(exact["stakes"], loose["stakes"], strict=True):  # type: ignore[call-overload]
        assert (one["x"], one["y"]) == (other["x"], other["y"]), "a sigma moves nothing"


def test_the_ends_sigma_is_the_stakes_own() -> None:
    """With nothing else wrong the middle stake goes as the mean of both ends: sigma / root 2 across."""
    ends = [{"name": name, "x": x, "y": 0, "sigma": "10 mm"} for name, x in (("A", 0), ("B", 10))]
    none = dict.fromkeys(("read", "scale", "stake", "line", "angle"), 0)
    told = answer(job(known=ends, errors=none, method="ordinates", stations=[5]), whole=False)
    stakes = {stake["name"]: stake for stake in told["stakes"]}  # type: ignore[attr-defined]
    assert stakes["A"]["sigma_across"] == pytest.approx(0.010) and stakes["B"]["sigma_across"] == pytest.approx(0.010)
    assert stakes["K1"]["sigma_across"] == pytest.approx(0.010 / 2**0.5)


def test_coordinates_of_the_drawing_on_both_hands_and_axes() -> None:
    """A at E 100, N 200, B 10 m due east: the middle stake, 1 m off, lies to the north when the curve is on the left of
    somebody at A who faces B, to the south when it is on the right. Northing first turns only the order."""
    by_xy = control({"mark": "A", "x": 100, "y": 200}, {"mark": "B", "x": 110, "y": 200})
    by_ne = control({"mark": "A", "n": 200, "e": 100}, {"mark": "B", "n": 200, "e": 110}, axes="n-e")
    for side, north in (("left", 201.0), ("right", 199.0)):
        for given, pair in ((by_xy, [105.0, north]), (by_ne, [north, 105.0])):
            told = answer(job(side=side, **given), whole=False)
            middle = next(stake for stake in told["stakes"] if stake["name"] == "K4")  # type: ignore[attr-defined]
            assert middle["drawing"] == pytest.approx(pair)


def test_an_outline_may_come_back_to_its_first_corner_and_run_either_way() -> None:
    plain = site(**obstacle()).obstacles[0].outline
    closed = site(**obstacle(outline=[*SQUARE, SQUARE[0]])).obstacles[0].outline
    assert len(closed) == 4 and set(closed) == set(plain)
    doubled = [corner for corner in SQUARE for _ in range(2)]
    assert len(site(**obstacle(outline=doubled)).obstacles[0].outline) == 4
    around = [answer(job(**obstacle(outline=rows)), whole=False)["methods"] for rows in (SQUARE, SQUARE[::-1])]
    assert around[0] == around[1]


def test_an_obstacle_without_a_name_is_told_by_its_number() -> None:
    rows = [{"stops": "tape", "outline": [[x, -3], [x + 1, -3], [x + 1, -1], [x, -1]]} for x in (0, 3)]
    told = answer(job(ground=rows, centre="reachable"), whole=False)
    (swing,) = (row for row in told["methods"] if row["method"] == "centre")  # type: ignore[attr-defined]
    assert "blocked by Obstacle 1" in swing["why_not"]


def tree(**more: Any) -> dict[str, Any]:
    """A round obstacle; ``None`` leaves a key out."""
    row = {"name": "oak", "stops": "tape", "at": [5, -2], "diameter": "800 mm", **more}
    return {"ground": [{key: value for key, value in row.items() if value is not None}]}


def test_a_round_obstacle_by_its_middle_and_its_diameter() -> None:
    """800 mm wide, 2 m behind the middle of the chord: nowhere smaller than that, nowhere a millimetre larger."""
    (oak,) = site(**tree()).obstacles
    out = [dist(corner, (5, -2)) for corner in oak.outline]
    assert oak.stops_tape and min(out) > 0.4 and max(out) < 0.401
    told = answer(job(**tree()), whole=False)["site"]["obstacles"]  # type: ignore[index]
    assert (told[0]["at"], told[0]["diameter"]) == ([5, -2], pytest.approx(0.8))
    assert answer(job(**obstacle()), whole=False)["site"]["obstacles"][0]["at"] is None  # type: ignore[index]


STRANGE = ["{0} {what}", "100% wall", "<b>shed</b>", "Ñ-house", "\u4e95", "wall corner 2", "middle", "TAP"]


@pytest.mark.parametrize("name", STRANGE)
def test_names_that_only_look_strange(name: str) -> None:
    assert site(**obstacle(name=name)).obstacles[0].name == name
    assert site(known=[{**HUB, "name": name}]).known[0].name == name


def test_stations_a_first_gap_and_halving_first() -> None:
    assert site(method="ordinates", stations=["2 m", 5, "2500 mm"]).stations == (2.0, 5.0, 2.5)
    assert site(method="centre", centre="reachable", spacing=2, first_gap="500 mm").first_gap == 0.5
    assert site(method="ordinates", halve_first=2).halve_first == 2
    assert site(method="ordinates", halve_first="1").halve_first == 1


# What can't be used: the job, and where the trouble is.

NAN, INF = float("nan"), float("inf")
JUNK: dict[str, Any] = {"none": None, "text": "x", "number": 7, "true": True, "deep": [[[[]]]], "nan": NAN}
BAD: dict[str, tuple[dict[str, Any], str]] = {}
for key in ("tape", "room", "fall", "errors", "control"):
    for kind, value in JUNK.items():
        BAD[f"{key}-is-{kind}"] = ({key: value}, key)
for key in ("ground", "known", "stations", "tapes_from"):
    for kind in ("none", "text", "number", "true", "nan"):
        BAD[f"{key}-is-{kind}"] = ({key: JUNK[kind], "method": "ordinates"}, key)
BAD["centre-word"] = ({"centre": "close by"}, "centre")
for kind, value in {"none": None, "nan": NAN, "inf": INF, "half": 1.5, "zero": 0, "minus": -2, "many": 21,
                    "true": True, "percent": "2%", "underscore": "1_0",
                    "arabic": "٢", "wide": "２", "word": "two", "list": [2]}.items():  # fmt: skip
    BAD[f"hands-{kind}"] = ({"hands": value}, "hands")
for kind, value in {"none": None, "nan": NAN, "inf": -INF, "true": True, "zero": 0, "minus": -3, "minus-text": "-3 m",
                    "word": "long", "list": [30]}.items():  # fmt: skip
    BAD[f"tape-length-{kind}"] = ({"tape": {"length": value}}, "tape.length")
    if kind != "zero":
        BAD[f"room-{kind}"] = ({"room": {"behind": value}}, "room.behind")
        BAD[f"sigma-{kind}"] = ({"known": [{**HUB, "sigma": value}]}, "known[0].sigma")
        BAD[f"error-read-{kind}"] = ({"errors": {"read": value}}, "errors.read")
for kind, value in {"none": None, "nan": NAN, "inf": INF, "true": True, "word": "left", "list": [1]}.items():
    BAD[f"corner-{kind}"] = (obstacle(outline=[[0, 0], [value, 1], [3, 3]]), "ground[0].outline[1][0]")
    BAD[f"known-place-{kind}"] = ({"known": [{**HUB, "y": value}]}, "known[0].y")
    BAD[f"station-{kind}"] = ({"method": "ordinates", "stations": [2, value]}, "stations[1]")
    BAD[f"control-{kind}"] = (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": value, "y": 0}),
                              "control.marks[1].x")  # fmt: skip
for kind, value in {"200": 200, "minus-60": -60, "nan": NAN, "none": None, "true": True, "degrees": "2°",
                    "underscore": "1_0",
                    "comma": "2,5", "per-mille": "20‰", "two-signs": "2%%"}.items():  # fmt: skip
    BAD[f"fall-{kind}"] = ({"fall": {"across": value}}, "fall.across")
BAD |= {
    "method-unknown": ({"method": "string"}, "method"),
    "tape-class": ({"tape": {"class": "IV"}}, "tape.class"),
    "tape-class-number": ({"tape": {"class": 2}}, "tape.class"),
    "tape-key": ({"tape": {"long": 30}}, "tape.long"),
    "room-key": ({"room": {"left": 3}}, "room.left"),
    "error-key": ({"errors": {"sag": 1}}, "errors.sag"),
    "error-read-large": ({"errors": {"read": "5 m"}}, "errors.read"),
    "error-scale-percent": ({"errors": {"scale": "0.02%"}}, "errors.scale"),
    "error-scale-large": ({"errors": {"scale": 0.5}}, "errors.scale"),
    "error-scale-minus": ({"errors": {"scale": -0.001}}, "errors.scale"),
    "error-scale-nan": ({"errors": {"scale": NAN}}, "errors.scale"),
    "error-angle-large": ({"errors": {"angle": 45}}, "errors.angle"),
    "error-angle-minus": ({"errors": {"angle": -1}}, "errors.angle"),
    "error-angle-none": ({"errors": {"angle": None}}, "errors.angle"),
    "ground-row-text": ({"ground": ["shed"]}, "ground[0]"),
    "ground-row-list": ({"ground": [[]]}, "ground[0]"),
    "ground-row-empty": ({"ground": [{}]}, "ground[0].stops"),
    "ground-many": ({"ground": [{"stops": "feet", "outline": SQUARE}] * 41}, "ground"),
    "ground-key": (obstacle(colour="red"), "ground[0].colour"),
    "stops-nothing": (obstacle(stops="sight"), "ground[0].stops"),
    "stops-list": (obstacle(stops=["tape"]), "ground[0].stops"),
    "outline-none": (obstacle(outline=None), "ground[0].outline"),
    "outline-empty": (obstacle(outline=[]), "ground[0].outline"),
    "outline-two": (obstacle(outline=[[0, 0], [1, 1]]), "ground[0].outline"),
    "outline-two-and-back": (obstacle(outline=[[0, 0], [1, 1], [0, 0]]), "ground[0].outline"),
    "outline-flat": (obstacle(outline=[0, 0, 1, 0, 1, 1]), "ground[0].outline[0]"),
    "outline-triples": (obstacle(outline=[[0, 0, 0], [1, 0, 0], [1, 1, 0]]), "ground[0].outline[0]"),
    "outline-objects": (obstacle(outline=[{"x": 0, "y": 0}] * 3), "ground[0].outline[0]"),
    "outline-many": (obstacle(outline=[[number, number**2] for number in range(61)]), "ground[0].outline"),
    "outline-bow": (obstacle(outline=[[0, 0], [2, 2], [2, 0], [0, 2]]), "ground[0].outline"),
    "outline-pinched": (obstacle(outline=[[0, 0], [4, 0], [2, 2], [4, 4], [0, 4], [2, 2]]), "ground[0].outline"),
    "outline-spike": (obstacle(outline=[[0, 0], [4, 0], [4, 4], [4, 2], [0, 2]]), "ground[0].outline"),
    "outline-line": (obstacle(outline=[[0, 0], [1, 0], [2, 0]]), "ground[0].outline"),
    "outline-paper": (obstacle(outline=[[0, 1], [9, 1], [9, "1001 mm"], [0, "1001 mm"]]), "ground[0].outline"),
    "outline-far": (obstacle(outline=[[0, 0], [1e12, 0], [1, 1]]), "ground[0].outline[1][0]"),
    "circle-and-corners": (obstacle(at=[5, -2], diameter=1), "ground[0].at"),
    "circle-no-diameter": (tree(diameter=None), "ground[0].diameter"),
    "circle-no-middle": (tree(at=None), "ground[0].at"),
    "circle-no-width": (tree(diameter=0), "ground[0].diameter"),
    "circle-thin": (tree(diameter="12 mm"), "ground[0].diameter"),
    "circle-minus": (tree(diameter=-1), "ground[0].diameter"),
    "circle-three": (tree(at=[1, 2, 3]), "ground[0].at"),
    "circle-words": (tree(at=["left", 2]), "ground[0].at[0]"),
    "circle-no-stops": (tree(stops=None), "ground[0].stops"),
    "obstacle-twice": ({"ground": [*obstacle()["ground"], *obstacle(name=" SHED ")["ground"]]}, "ground[1].name"),
    "obstacle-as-unnamed": ({"ground": [*obstacle(name="Obstacle 2")["ground"], *obstacle(name="")["ground"]]},
                            "ground[1].name"),
    "obstacle-like-an-end": (obstacle(name="B"), "ground[0].name"),
    "obstacle-like-a-stake": (obstacle(name="K2"), "ground[0].name"),
    "obstacle-turns-reading": (obstacle(name="wall \u202e4 m"), "ground[0].name"),
    "obstacle-isolates": (obstacle(name="\u2067wall"), "ground[0].name"),
    "obstacle-newline": (obstacle(name="wall\nB"), "ground[0].name"),
    "obstacle-long": (obstacle(name="w" * 31), "ground[0].name"),
    "known-many": ({"known": [{"name": f"hub {n}", "x": n, "y": 4} for n in range(21)]}, "known"),
    "known-row-text": ({"known": ["hub"]}, "known[0]"),
    "known-row-empty": ({"known": [{}]}, "known[0].name"),
    "known-no-y": ({"known": [{"name": "hub", "x": 3}]}, "known[0].y"),
    "known-name-number": ({"known": [{**HUB, "name": 5}]}, "known[0].name"),
    "known-twice": ({"known": [HUB, {**PIN, "name": "HUB"}]}, "known[1].name"),
    "known-twice-wide": ({"known": [{**HUB, "name": "hub 1"}, {**PIN, "name": "hub  \uff11"}]}, "known[1].name"),
    "known-twice-unseen": ({"known": [HUB, {**PIN, "name": "hu\u200bb"}]}, "known[1].name"),
    "known-A-elsewhere": ({"known": [{"name": "A", "x": "20 mm", "y": 0, "sigma": "2 mm"}]}, "known[0].x"),
    "known-B-on-another-chord": ({"known": [{"name": "B", "x": "10.04 m", "y": 0, "sigma": "2 mm"}]}, "known[0].x"),
    "known-A-and-B-swapped": ({"known": [{"name": "A", "x": 10, "y": 0}]}, "known[0].x"),
    "tapes-from-one": ({"tapes_from": ["A"]}, "tapes_from"),
    "tapes-from-three": ({"tapes_from": ["A", "B", "A"]}, "tapes_from"),
    "tapes-from-same": ({"tapes_from": ["A", "A"]}, "tapes_from[1]"),
    "tapes-from-unknown": ({"tapes_from": ["A", "hub"]}, "tapes_from[1]"),
    "tapes-from-small": ({"tapes_from": ["a", "B"]}, "tapes_from[0]"),
    "tapes-from-list": ({"tapes_from": [["A"], "B"]}, "tapes_from[0]"),
    "tapes-from-one-place": ({"method": "tapes", "tapes_from": ["hub", "nail"],
                              "known": [HUB, {**HUB, "name": "nail"}]}, "method"),
    "tangent-from": ({"tangent_from": "C"}, "tangent_from"),
    "control-one": (control({"mark": "A", "x": 0, "y": 0}), "control.marks"),
    "control-none": ({"control": {}}, "control.marks"),
    "control-same": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "A", "x": 10, "y": 0}), "control.marks[1].mark"),
    "control-unknown": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "hub", "x": 9, "y": 0}),
                        "control.marks[1].mark"),
    "control-no-place": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B"}), "control.marks[1].x"),
    "control-axes": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": 10, "y": 0}, axes="e-n"),
                     "control.axes"),
    "control-other-axes": (control({"mark": "A", "n": 0, "e": 0}, {"mark": "B", "n": 10, "e": 0}),
                           "control.marks[0].n"),
    "control-both-axes": (control({"mark": "A", "n": 0, "e": 0, "x": 0}, {"mark": "B", "n": 0, "e": 10}, axes="n-e"),
                          "control.marks[0].x"),
    "control-far": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": 11, "y": 0}), "control"),
    "control-40-mm-off": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": 10.04, "y": 0}), "control"),
    "control-in-feet": (control({"mark": "A", "x": 0, "y": 0}, {"mark": "B", "x": 32.81, "y": 0}), "control"),
    "stations-empty": ({"method": "ordinates", "stations": []}, "stations"),
    "stations-many": ({"method": "ordinates", "stations": [5] * 501}, "stations"),
    "stations-at-the-end": ({"method": "ordinates", "stations": [5, 10]}, "stations[1]"),
    "stations-beyond": ({"method": "ordinates", "stations": ["10.5 m"]}, "stations[0]"),
    "stations-zero": ({"method": "ordinates", "stations": [0]}, "stations[0]"),
    "stations-minus": ({"method": "ordinates", "stations": [-2]}, "stations[0]"),
    "stations-twice": ({"method": "ordinates", "stations": [2, 5, "2000 mm"]}, "stations[2]"),
    "stations-under-a-mark-apart": ({"method": "ordinates", "stations": [2, "2003 mm"]}, "stations[1]"),
    "stations-by-halving": ({"method": "halving", "stations": [2]}, "stations"),
    "stations-by-tapes": ({"method": "tapes", "stations": [2]}, "stations"),
    "stations-halved-first": ({"method": "ordinates", "stations": [2], "halve_first": 1}, "halve_first"),
    "first-gap-alone": ({"method": "tapes", "first_gap": 1}, "first_gap"),
    "first-gap-with-levels": ({"method": "tapes", "spacing": 2, "levels": 3, "first_gap": 1}, "first_gap"),
    "first-gap-by-halving": ({"method": "halving", "spacing": 2, "first_gap": 1}, "first_gap"),
    "first-gap-by-ordinates": ({"method": "ordinates", "spacing": 2, "first_gap": 1}, "first_gap"),
    "first-gap-over-spacing": ({"method": "tapes", "spacing": 2, "first_gap": "2.1 m"}, "first_gap"),
    "first-gap-over-chord": ({"method": "tapes", "spacing": 20, "first_gap": 12}, "first_gap"),
    "first-gap-zero": ({"method": "tapes", "spacing": 2, "first_gap": 0}, "first_gap"),
    "halve-first-by-halving": ({"method": "halving", "halve_first": 1}, "halve_first"),
    "centre-far": ({"centre": "far"}, "centre"),
    "centre-unsaid": ({"method": "centre"}, "method"),
    "halve-first-half": ({"method": "ordinates", "halve_first": 0.5}, "halve_first"),
    "halve-first-seven": ({"method": "ordinates", "halve_first": 7}, "halve_first"),
    "halve-first-minus": ({"method": "ordinates", "halve_first": -1}, "halve_first"),
    "parallel-zero": ({"method": "ordinates", "parallel": 0}, "parallel"),
    "parallel-on-the-chord": ({"parallel": "-40 mm"}, "parallel"),
    "parallel-list": ({"parallel": [2]}, "parallel"),
    "parallel-words": ({"parallel": "behind"}, "parallel"),
    "halve-first-over-levels": ({"method": "ordinates", "halve_first": 4}, "halve_first"),
}  # fmt: skip
for name in ("C", "m", "K2", "q11", "T", "TA", "tb", "A0", "mid M", "foot K1", "Tan", "ahead K2", "", "A\u200b",
             "\uff21", "\uff2b\uff11", "\u0410", "\u0412", "\u039c", "Q\u0661"):  # fmt: skip
    BAD[f"known-name-{name!a}"] = ({"known": [{**HUB, "name": name}]}, "known[0].name")


def refused_at(more: dict[str, Any], field: str) -> None:
    with pytest.raises(BadJob) as caught:
        answer(job(**more))
    error = caught.value
    assert error.field == field
    assert error.wrong.strip() and error.remedy.strip().endswith(".")
    line = str(error)
    assert line.isprintable() and len(line) < 500 and not re.search(r"\{\w*\}", line)


def test_refused_at_its_place_with_a_remedy() -> None:
    all_hold(BAD, refused_at)


def test_all_keys_of_the_site_are_tried() -> None:
    assert {field.split("[")[0].split(".")[0] for _more, field in BAD.values()} >= set(KEYS)
    assert len({repr(more) for more, _field in BAD.values()}) >= 80


def test_the_rounding_of_a_drawings_coordinates_is_let_pass() -> None:
    """A chord turned by 30°, both ends to the centimetre: each coordinate is off by up to 5 mm, the chord by 14."""
    marks = {"mark": "A", "x": 100, "y": 200}, {"mark": "B", "x": 108.67, "y": 204.99}
    told = answer(job(**control(*marks)), whole=False)
    assert told["method"] == "coordinates"
    end = told["stakes"][-1]["drawing"]  # type: ignore[index]
    assert end == pytest.approx([108.67, 204.99], abs=0.015)
