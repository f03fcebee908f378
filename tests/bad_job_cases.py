"""Jobs that can't be used, each with a readable name and the fields that may be named as the trouble's place.

A field ending in `*` stands for itself and everything below it. Where a trouble lies between two givens,
either of them or the whole `arc` may be named. The keys beside the arc stand in bad_job_keys.py.
"""

from __future__ import annotations

from typing import Any

Case = tuple[str, Any, tuple[str, ...]]
GOOD_ARC: dict[str, Any] = {"chord": 10, "sagitta": 1}
CASES: list[Case] = []
LENGTH_GIVENS = ("radius", "chord", "sagitta", "arc_length", "tangent_length", "external")
NOT_A_NUMBER: dict[str, Any] = {
    "nan": float("nan"),
    "inf": float("inf"),
    "minus-inf": float("-inf"),
    "true": True,
    "list": [1],
    "object": {"m": 1},
    "huge-integer": 10**400,
}


def job(**keys: Any) -> dict[str, Any]:
    return {"bowstring": 1, "unit": "m", "arc": dict(GOOD_ARC), **keys}


def inches(**keys: Any) -> dict[str, Any]:
    return {"bowstring": 1, "unit": "ft-in", "arc": {"chord": "40 ft", "sagitta": "6 ft"}, **keys}


def add(name: str, bad: Any, *fields: str) -> None:
    CASES.append((name, bad, fields))


def add_arc(name: str, given: Any, *fields: str, unit: str = "m", **keys: Any) -> None:
    add(name, {"bowstring": 1, "unit": unit, "arc": given, **keys}, *fields)


# What is no job at all.
for kind, value in {
    "list": [],
    "text": "arc",
    "number": 5,
    "none": None,
    "true": True,
    "nested": [[[]]],
}.items():
    add(f"job-is-{kind}", value, "job")
add("job-is-empty", {}, "arc", "job")
for kind, value in {"none": None, "list": [1, 2], "text": "chord 10", "number": 3, "true": True}.items():
    add(f"arc-is-{kind}", job(arc=value), "arc")

# Impossible arcs: every pair.
IMPOSSIBLE: dict[str, dict[str, Any]] = {
    "chord-over-diameter": {"radius": 5, "chord": 10.001},
    "sagitta-is-diameter": {"radius": 5, "sagitta": 10},
    "sagitta-over-diameter": {"radius": 5, "sagitta": 11},
    "arc-over-circle": {"radius": 5, "arc_length": 31.5},
    "radius-full-turn": {"radius": 5, "central_angle": 360},
    "radius-minus-tangent": {"radius": 5, "tangent_length": -1},
    "radius-minus-external": {"radius": 5, "external": -1},
    "chord-minus-sagitta": {"chord": 10, "sagitta": -1},
    "arc-under-chord": {"chord": 10, "arc_length": 9.99},
    "arc-equals-chord": {"chord": 10, "arc_length": 10},
    "chord-full-turn": {"chord": 10, "central_angle": 360},
    "chord-over-two-tangents": {"chord": 10, "tangent_length": 4.9},
    "chord-equals-two-tangents": {"chord": 10, "tangent_length": 5},
    "chord-zero-external": {"chord": 10, "external": 0},
    "sagitta-too-high-for-arc": {"sagitta": 3.63, "arc_length": 10},
    "sagitta-longer-than-arc": {"sagitta": 12, "arc_length": 10},
    "sagitta-over-a-turn": {"sagitta": 3, "central_angle": 400},
    "sagitta-too-high-for-tangent": {"sagitta": 3.01, "tangent_length": 10},
    "sagitta-over-external": {"sagitta": 3, "external": 2.9},
    "sagitta-equals-external": {"sagitta": 3, "external": 3},
    "arc-full-turn": {"arc_length": 10, "central_angle": 360},
    "arc-over-two-tangents": {"arc_length": 10.01, "tangent_length": 5},
    "arc-equals-two-tangents": {"arc_length": 10, "tangent_length": 5},
    "arc-minus-external": {"arc_length": 10, "external": -2},
    "tangent-at-180": {"central_angle": 180, "tangent_length": 5},
    "tangent-beyond-180": {"central_angle": 200, "tangent_length": 5},
    "external-at-180": {"central_angle": 180, "external": 5},
    "external-beyond-180": {"central_angle": 270, "external": 5},
    "external-equals-tangent": {"tangent_length": 5, "external": 5},
    "external-over-tangent": {"tangent_length": 5, "external": 6},
}
for name, given in IMPOSSIBLE.items():
    add_arc("impossible-" + name, given, "arc", *(f"arc.{field}" for field in given))
add_arc(
    "impossible-three-givens",
    {"radius": 1, "chord": 50, "central_angle": 380},
    "arc",
    "arc.radius",
    "arc.chord",
    "arc.central_angle",
)
add_arc("impossible-degree-chord", {"degree": 100, "chord": 120}, "arc", "arc.degree", "arc.chord", unit="ft")

# Each given: zero, negative, not a number, not a length.
for field in LENGTH_GIVENS:
    other: dict[str, Any] = {"central_angle": 60}
    place = "arc." + field
    add_arc(f"{field}-zero", {field: 0, **other}, place, "arc")
    add_arc(f"{field}-negative", {field: -3, **other}, place, "arc")
    add_arc(f"{field}-negative-text", {field: "-3 m", **other}, place)
    add_arc(f"{field}-empty", {field: "", **other}, place, "arc")
    add_arc(f"{field}-words", {field: "quite long", **other}, place)
    for kind, value in NOT_A_NUMBER.items():
        add_arc(f"{field}-{kind}", {field: value, **other}, place)
for kind, value in {
    **NOT_A_NUMBER,
    "zero": 0,
    "negative": -30,
    "turn": 360,
    "over-turn": 725.5,
    "words": "half",
    "empty": "",
    "radians": "1 rad",
    "gon": "50 gon",
    "minutes-70": "45° 70'",
    "seconds-75": "45° 40' 75\"",
    "two-points": "45.40.12",
    "decimal-and-minutes": "45.5° 30'",
    "length": "12 m",
    "fraction": "1/0",
    "long": "4" * 6000,
    "minus-text": "-45°",
    "tab-only": "\t",
}.items():
    add_arc(
        f"central_angle-{kind}",
        {"radius": 10, "central_angle": value},
        "arc.central_angle",
        *(["arc"] if value == "" else []),
    )
for kind, value in {**NOT_A_NUMBER, "zero": 0, "negative": -1, "words": "sharp"}.items():
    add_arc(f"degree-{kind}", {"degree": value, "chord": 50}, "arc.degree", unit="ft")

# Too few, too many kinds.
add_arc("no-givens", {}, "arc")
for field in LENGTH_GIVENS:
    add_arc(f"only-{field}", {field: 5}, "arc", "arc." + field)
add_arc("only-angle", {"central_angle": 50}, "arc", "arc.central_angle")
add_arc("only-degree", {"degree": 5}, "arc", "arc.degree")
add_arc("only-greater", {"greater": True}, "arc")
add_arc("one-and-none", {"chord": None, "sagitta": 1}, "arc", "arc.chord", "arc.sagitta")
add_arc(
    "points-and-radius",
    {"points": [[0, 0], [5, 1], [10, 0]], "radius": 13},
    "arc",
    "arc.points",
    "arc.radius",
)

# Texts that are no length, or could be two.
NO_LENGTH = [
    "40' 6' 3\"",
    "12 m 5 ft",
    "40.5' 6\"",
    "6 1/0 in",
    "1/0 in",
    "5 furlongs",
    "1_000 m",
    "nan",
    "inf",
    "infinity m",
    "0x10",
    "5..2 m",
    "5.2.1 m",
    "m",
    "'",
    "ft 5",
    "5 m m",
    "12 km/h",
    "5 ft 6 m",
    "1/2/3 in",
    "5; 6",
    "=5+5",
    "5 m\x00",
    "5\nm\n6",
    "\ud800 m",
    "9" * 5000 + " m",
    "1/2 " * 3000,
    "1 " * 4000 + "in",
    "5 °",
    '5\' 6" 7"',
    "1,2,3 m",
]
for text in NO_LENGTH:
    label = ascii(text[:12]).strip("'\"") + ("..." if len(text) > 12 else "")
    add_arc(f"no-length-{label}-{len(text)}", {"chord": text, "central_angle": 60}, "arc.chord")
TWO_READINGS = ["6-1/2", "40-1/2", "1/2", "3/8", "½", "6½", "6 1/2", "40-6-1/2"]
for text in TWO_READINGS:
    add_arc(f"ambiguous-{text}", {"chord": text, "central_angle": 60}, "arc.chord", unit="ft-in")
    add(f"ambiguous-spacing-{text}", inches(spacing=text), "spacing")
    add(f"ambiguous-offset-{text}", inches(offset=text, toward="centre"), "offset")
for value in ("1/4", "0.25", 0.25, 1, "1", "½"):
    add(f"bare-tolerance-{value!r}", inches(tolerance=value), "tolerance")
for value in ("1/8", "0.125", 0.125, "1/16", "⅛"):
    add(f"bare-mark-{value!r}", inches(mark=value), "mark")
for text in ("1,234 m", "1,234", "12,345 mm"):
    add_arc(f"thousands-or-decimals-{text}", {"chord": text, "central_angle": 60}, "arc.chord")

# Points.
POINTS: dict[str, Any] = {
    "none": None,
    "text": "0,0 5,1 10,0",
    "object": {"A": [0, 0]},
    "empty": [],
    "two": [[0, 0], [10, 0]],
    "four": [[0, 0], [5, 1], [7, 1], [10, 0]],
    "flat-list": [0, 0, 5, 1, 10, 0],
    "triple": [[0, 0, 0], [5, 1, 0], [10, 0, 0]],
    "single": [[0], [5], [10]],
    "nan": [[0, 0], [5, float("nan")], [10, 0]],
    "inf": [[0, 0], [5, float("inf")], [10, 0]],
    "true": [[0, 0], [5, True], [10, 0]],
    "words": [[0, 0], [5, "up"], [10, 0]],
    "null": [[0, 0], [5, None], [10, 0]],
    "in-line": [[0, 0], [5, 0], [10, 0]],
    "in-line-slanted": [[0, 0], [1, 3], [2, 6]],
    "outside-in-line": [[0, 0], [20, 0], [10, 0]],
    "same-ends": [[0, 0], [5, 1], [0, 0]],
    "middle-on-first": [[0, 0], [0, 0], [10, 0]],
    "middle-on-last": [[0, 0], [10, 0], [10, 0]],
    "all-same": [[1, 1], [1, 1], [1, 1]],
    "objects": [{"x": 0, "y": 0}, {"x": 5, "y": 1}, {"x": 10, "y": 0}],
    "huge": [[0, 0], [10**400, 1], [10, 0]],
}
for kind, value in POINTS.items():
    add_arc(f"points-{kind}", {"points": value}, "arc.points*", "arc")
