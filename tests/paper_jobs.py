"""Jobs for the sheet of paper: every method and start, each unit, up to sixteen stakes; invented, all of them."""

from __future__ import annotations

from typing import Any

LONG_A, LONG_B = "NE corner of the old pump house, brass nail", "fire hydrant No. 7 by the west loading door"
TIES = {
    "A": [{"to": "manhole rim", "distance": "14' 2-1/2\""}, {"to": "curb nail", "distance": "9' 7\""}],
    "B": [{"to": "hydrant", "distance": "6' 3\""}, {"to": "door jamb", "distance": "18' 11\""}],
}
WALL = {
    "name": "wall",
    "stops": "tape",
    "outline": [["4 ft", "-1 ft"], ["30 ft", "-1 ft"], ["30 ft", "1 ft"], ["4 ft", "1 ft"]],
}
SAID: dict[str, Any] = {"bowstring": 1, "side": "left", "drawn_to": "face"}


def _job(**keys: Any) -> dict[str, Any]:
    return {**SAID, **keys}


JOBS: dict[str, dict[str, Any]] = {
    "halving": _job(
        title="Reading garden, outer edge",
        arc={"chord": "41 ft", "sagitta": "6' 2\""},
        levels=3,
        tolerance="1/4 in",
        ends={"A": "lamp post", "B": "gate pier"},
        ties=TIES,
        method="halving",
    ),
    "four rounds": _job(
        arc={"chord": "76' 4-1/2\"", "sagitta": "11' 9\""},
        levels=4,
        mark="1/16 in",
        tolerance="3/8 in",
        ends={"A": LONG_A[:40], "B": LONG_B[:40]},
        side="right",
        method="halving",
    ),
    "from the corner": _job(
        unit="ft",
        arc={"radius": "22 ft", "central_angle": 74},
        start="corner",
        levels=4,
        tolerance="0.04 ft",
        method="halving",
    ),
    "hubs off one end": _job(
        arc={"radius": "31 ft", "central_angle": 95},
        start="one-end",
        turn="left",
        side="right",
        driven="hub",
        offset="3 ft",
        toward="outside",
        levels=4,
        tolerance="1/4 in",
        method="halving",
        ends={"A": LONG_A[:40], "B": LONG_B[:40]},
    ),
    "the quarter rule": _job(arc={"chord": "30 ft", "sagitta": "3' 7\""}, levels=2, method="rule"),
    "ordinates": _job(unit="m", arc={"chord": "12.4 m", "sagitta": "1.65 m"}, method="ordinates", tolerance="10 mm"),
    "ordinates at stations": _job(
        arc={"chord": "36 ft", "sagitta": "4 ft"},
        method="ordinates",
        stations=["4 ft", "8 ft", "12 ft", "16 ft", "20 ft", "24 ft"],
    ),
    "ordinates from a parallel string": _job(
        arc={"chord": "27 ft", "sagitta": "4 ft"},
        method="ordinates",
        parallel="6 ft",
        side="right",
        tolerance="1/2 in",
    ),
    "halved, then ordinates": _job(
        unit="m",
        arc={"radius": "7 m", "central_angle": 150},
        method="ordinates",
        halve_first=1,
        spacing="1.6 m",
    ),
    "tangents at the corner": _job(
        unit="m", arc={"radius": "26 m", "central_angle": 42}, start="corner", method="tangent", spacing="2 m"
    ),
    "tangents from pegs": _job(
        arc={"chord": "52 ft", "sagitta": "8 ft"}, method="tangent", spacing="6 ft", side="right"
    ),
    "two tapes": _job(
        arc={"chord": "33 ft", "sagitta": "7 ft"}, method="tapes", spacing="3 ft", side="right", drawn_to="back"
    ),
    "two tapes from pins": _job(
        unit="mm",
        arc={"chord": 8200, "sagitta": 1450},
        method="tapes",
        tapes_from=["gate", "sill"],
        known=[{"name": "gate", "x": 500, "y": -4200}, {"name": "sill", "x": 7600, "y": -3900}],
    ),
    "a swing": _job(arc={"radius": "17 ft", "chord": "25 ft"}, centre="reachable", method="centre", driven="board"),
    "chords produced": _job(
        arc={"radius": "75 ft", "arc_length": "88 ft"},
        method="produced",
        start="one-end",
        turn="right",
        spacing="8 ft",
    ),
    "angles off the chord": _job(
        unit="m", arc={"radius": "34 m", "central_angle": 61}, method="angles", spacing="3 m", side="right"
    ),
    "angles off the straight": _job(
        arc={"radius": "60 ft", "central_angle": 70},
        method="angles",
        start="one-end",
        turn="left",
        side="right",
        spacing="6 ft",
    ),
    "coordinates": _job(
        unit="m",
        arc={"chord": "21 m", "sagitta": "3.3 m"},
        method="coordinates",
        spacing="2 m",
        control={
            "marks": [{"mark": "A", "n": 5120.25, "e": 884.1}, {"mark": "B", "n": 5129.4, "e": 903.002}],
            "axes": "n-e",
        },
    ),
    "on a slope, over the chord found": _job(
        arc={"chord": "40 ft", "sagitta": "5' 6\""},
        levels=3,
        fall={"along": 5, "across": 3},
        method="halving",
        found={"chord": ["40' 1\"", "40' 1\""], "tape": "level", "hold": "radius", "sure": True},
    ),
    "no hand, no line, a wall": {
        "bowstring": 1,
        "arc": {"chord": "34 ft", "sagitta": "5 ft"},
        "ground": [WALL],
        "method": "halving",
        "levels": 3,
        "tolerance": "1/4 in",
    },
}
