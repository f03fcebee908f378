"""Jobs that between them ask for every kind of card: all methods and starts, past what blocks, flat, nearly round."""

from __future__ import annotations

from typing import Any

from bowstring import answering

PLAIN: dict[str, Any] = {
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "side": "left", "drawn_to": "face", "levels": 3,
    "centre": "reachable",
}  # fmt: skip
EVERYDAY = ("halving", "rule", "centre", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")
TALL = {"chord": "40 ft", "sagitta": "10 ft"}
STEEP = {"chord": "40 ft", "sagitta": "24 ft"}
ROUND = {"radius": "30 ft", "central_angle": 340}
TURNED = {"radius": "30 ft", "central_angle": 170}
SQUARE = {"radius": "20 ft", "central_angle": 180}


def box(name: str, left: float, low: float, right: float, high: float, stops: str = "tape") -> dict[str, Any]:
    """An obstacle in feet."""
    corners = [(left, low), (right, low), (right, high), (left, high)]
    return {"name": name, "stops": stops, "outline": [[f"{x} ft", f"{y} ft"] for x, y in corners]}


def arc(radius: str, angle: float, turn: str, **more: str) -> dict[str, Any]:
    """An arc as a piece of a line."""
    return {"arc": {"radius": radius, "central_angle": angle}, "turn": turn, **more}


OTHER = {"left": "right", "right": "left"}
OAK, SHED = box("the oak", 18, -3, 22, 7), box("the shed", 18, 3, 22, 7)
BLOCKED = {"arc": TALL, "levels": 2, "tolerance": "1 in", "ground": [OAK]}
METRIC: dict[str, Any] = {
    "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "method": "ordinates", "levels": None, "tape": {"length": 60},
}  # fmt: skip
OFF = {"offset": "2 ft", "toward": "outside", "driven": "hub"}

JOBS: dict[str, dict[str, Any]] = {
    **{method: {"method": method} for method in EVERYDAY},
    **{f"{method} from {start}": {"method": method, "start": start}
       for method in ("halving", "tangent", "produced", "angles") for start in ("one-end", "corner")},
    "neither": {"method": "halving", "start": "neither"},
    "off the line": {"method": "halving", **OFF},
    "off the line, to the center": {"method": "halving", **OFF, "toward": "centre", "start": "corner"},
    "off a half circle": {"method": "halving", **OFF, "arc": SQUARE},
    "off a half circle, to the center": {"method": "halving", **OFF, "arc": SQUARE, "toward": "centre"},
    "off a round arc": {"method": "halving", **OFF, "arc": ROUND},
    "off a round arc, to the center": {"method": "halving", **OFF, "arc": ROUND, "toward": "centre"},
    "one end past half": {"method": "halving", "start": "one-end", "arc": {"chord": "20 ft", "sagitta": "15 ft"}},
    "one end past half, blocked": {"method": "tapes", "start": "one-end", "arc": {"chord": "40 ft", "sagitta": "25 ft"},
                                   "ground": [OAK]},
    "a blocked chord": BLOCKED,
    "a blocked chord, neither": {**BLOCKED, "start": "neither"},
    "a blocked chord, no room behind": {**BLOCKED, "method": "tapes", "room": {"behind": "4 ft"}},
    "a blocked chord from one end": {**BLOCKED, "start": "one-end"},
    "a blocked chord from one end past half": {**BLOCKED, "start": "one-end", "arc": STEEP},
    "a blocked chord from the corner": {**BLOCKED, "start": "corner"},
    **{f"off a blocked chord, {start}, {toward}": {**BLOCKED, "start": start, "offset": "2 ft", "toward": toward}
       for start in ("ends", "corner", "one-end") for toward in ("centre", "outside")},
    "off a blocked steep chord": {**BLOCKED, "arc": {"chord": "40 ft", "sagitta": "26 ft"}, **OFF},
    "off a blocked steep chord, to the center": {**BLOCKED, "arc": {"chord": "40 ft", "sagitta": "26 ft"}, **OFF,
                                                 "toward": "centre"},
    "past the tape": {"arc": {"chord": "186 ft", "sagitta": "20 ft"}, "method": "ordinates"},
    "many pulls": {"arc": {"chord": "186 ft", "sagitta": "20 ft"}, "method": "angles", "tape": {"length": "30 ft"}},
    "past a shed": {"arc": TALL, "levels": 2, "ground": [SHED], "method": "halving"},
    "got": {"method": "halving", "got": [{"stake": "M", "sagitta": "5' 3-1/2\""}], "tolerance": "2 in"},
    "got too far out": {"arc": {"chord": "100 ft", "sagitta": "6 in"}, "levels": 2, "method": "halving",
                        "got": [{"stake": "M", "sagitta": "12 in"}]},
    "got a center": {"method": "centre", "got": [{"stake": "C", "measures": [
        {"from": "A", "to": "C", "distance": "37' 1\""}]}]},
    "got a corner": {"method": "tangent", "levels": 5, "got": [{"stake": "TA", "measures": [
        {"from": "foot TA", "to": "TA", "distance": "9' 4\""}]}]},
    "got a pin of a string": {"method": "ordinates", "parallel": "8 ft", "got": [{"stake": "PA", "measures": [
        {"from": "A", "to": "PA", "distance": "8' 1\""}]}]},
    "got a pin of a string too long to prove": {
        "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "method": "ordinates", "parallel": -9, "levels": None,
        "tape": {"length": 36},
        "got": [{"stake": "PA", "measures": [{"from": "A", "to": "PA", "distance": "9.03 m"}]}]},
    "a string of which one diagonal is free": {
        "unit": "m", "arc": {"chord": 40, "sagitta": 10}, "method": "ordinates", "parallel": -9, "levels": None,
        "tape": {"length": 50},
        "ground": [{"name": name, "stops": "tape", "at": at, "diameter": 0.3}
                   for name, at in (("oak", [9, 0]), ("elm", [27, -6.075]))]},
    "got a stake": {"method": "ordinates", "got": [{"stake": "K2", "measures": [
        {"from": "foot K2", "to": "K2", "distance": "4' 0-1/4\""}]}]},
    "tapes off the line": {"method": "tapes", **OFF},
    "center inside": {"method": "centre", "arc": {"chord": "8 ft", "sagitta": "9 ft"}},
    "center half": {"method": "centre", "arc": SQUARE},
    "center near": {"method": "centre", "arc": {"radius": "20 ft", "central_angle": 160}},
    "center near inside": {"method": "centre", "arc": {"radius": "20 ft", "central_angle": 200}},
    "round distances": {"method": "ordinates", "levels": None},
    "tangents of a half circle": {"method": "tangent", "arc": SQUARE},
    "a round arc produced": {"method": "produced", "arc": {"radius": "20 ft", "central_angle": 200}},
    "a round arc": {"method": "halving", "arc": ROUND},
    "a round arc, halved before": {"method": "ordinates", "arc": ROUND, "halve_first": 1},
    "a flat arc": {"method": "halving", "arc": {"chord": "100 ft", "sagitta": "1 ft"}},
    "a flat arc by offsets": {"method": "tangent", "arc": {"chord": "100 ft", "sagitta": "1 ft"}},
    "a flat arc by angles": {"method": "angles", "arc": {"chord": "100 ft", "sagitta": "1 ft"}, "start": "one-end"},
    "steep angles": {"method": "angles", "arc": TURNED, "start": "one-end"},
    **{f"a string {parallel}": {"method": "ordinates", "parallel": f"{parallel} ft"} for parallel in (-3, 2, 8)},
    **{f"a string {parallel} m, {name}": {**METRIC, "parallel": parallel, **more}
       for parallel in (9, 10) for name, more in (("stations", {"stations": [5, 13, 20]}), ("round distances", {}))},
    **{f"a string {parallel} m over its ends": {**METRIC, "arc": {"radius": 2, "central_angle": 270},
                                                "parallel": parallel, "spacing": "1.6 m"}
       for parallel in (-1, 1, 2.8284271247)},
    "a string at a stake past its ends": {**METRIC, "arc": {"radius": 20, "central_angle": 270}, "levels": 2,
                                          "parallel": 21.796068},
    "a string 2 ft, round distances": {"method": "ordinates", "parallel": "2 ft", "levels": None},
    "a string, round distances": {"method": "ordinates", "parallel": "8 ft", "levels": None},
    "a string behind, round distances": {"method": "ordinates", "parallel": "-3 ft", "levels": None},
    "a string past its ends": {"unit": "m", "arc": {"chord": 40, "sagitta": 40}, "method": "ordinates", "parallel": -10,
                               "tape": {"length": 60}},
    "a string away past its ends": {"unit": "m", "arc": {"chord": 40, "sagitta": 40}, "method": "ordinates",
                                    "parallel": 10, "tape": {"length": 60}},
    "a string squared": {"method": "ordinates", "parallel": "-3 ft", "ground": [box("a bush", 14, -2.5, 16, -1)]},
    "a string squared, beyond": {"method": "ordinates", "parallel": "8 ft", "ground": [box("a bush", 14, 2, 16, 5)]},
    "a string too long to prove": {"unit": "m", "arc": {"chord": 40, "sagitta": 10}, "method": "ordinates",
                                   "parallel": -9, "tape": {"length": 36}},
    "a board": {"method": "halving", "driven": "board"},
    "on a slope": {"method": "halving", "fall": {"along": 8, "across": 3}},
    "in millimeters": {"method": "ordinates", "unit": "mm", "arc": {"chord": 12000, "sagitta": 1500}},
    "sixteenths, long": {"method": "halving", "arc": {"chord": "238' 7-15/16\"", "sagitta": "25' 3\""},
                         "mark": "1/16 in", "tape": {"length": "300 ft"}},
    **{f"after an arc of {angle} degrees": {"line": [arc("20 ft", angle, "left"), arc("30 ft", 60, "right")], "at": 2}
       for angle in (70, 180, 220)},
    "after a long arc, with a short tape": {"line": [arc("60 ft", 70, "right"), arc("30 ft", 60, "right")], "at": 2,
                                            "tape": {"length": "50 ft"}},
    "after a short straight": {"line": [{"straight": "7 ft"}, arc("30 ft", 60, "right")]},
    "after a kink": {"line": [{"straight": "20 ft"}, arc("30 ft", 60, "right", kink="8 left")]},
}  # fmt: skip
OF_A_LINE = ("arc", "side")
"""What each arc of a line says by itself."""


def job(name: str, **changes: Any) -> dict[str, Any]:
    """One of the jobs, whole; of a line that is to be on the right every hand is the other one."""
    made = {**PLAIN, **JOBS[name], **changes}
    if "line" in made:
        if made["side"] == "right":
            made["line"] = [{key: OTHER.get(text, text) if key == "turn" else text.replace("left", "right")
                             if key == "kink" else text for key, text in piece.items()}
                            for piece in made["line"]]  # fmt: skip
        made = {key: value for key, value in made.items() if key not in OF_A_LINE}
    return {key: value for key, value in made.items() if value is not None}


def told(name: str, **changes: Any) -> Any:
    """Its answer, part by part."""
    return answering(job(name, **changes))  # type: ignore[arg-type]
