"""Jobs that can't be used for what stands beside the arc: unknown keys, wrong values, deep nesting. See
bad_job_cases.py."""

from __future__ import annotations

from typing import Any

from bad_job_cases import CASES, GOOD_ARC, add, job

# Unknown keys, at every depth.
add("unknown-key", job(colour="red"), "colour", "job")
add("unknown-misspelt", job(tolerence="5 mm"), "tolerence", "job")
add("unknown-capital", job(Unit="m"), "Unit", "job")
add("unknown-empty-name", {**job(), "": 1}, "job")
add("unknown-newline-name", {**job(), "a\nb": 1}, "*")
add("unknown-escape-name", {**job(), "\x1b[31mred": 1}, "*")
add("unknown-long-name", {**job(), "x" * 9000: 1}, "*")
add("unknown-number-name", {**job(), 5: 1}, "job", "5")
add("unknown-in-arc", job(arc={**GOOD_ARC, "curvature": 4}), "arc.curvature", "arc")
add("unknown-in-arc-misspelt", job(arc={"cord": 10, "sagitta": 1}), "arc.cord", "arc")
add("unknown-in-ends", job(ends={"A": "oak", "C": "elm"}), "ends.C", "ends")
add("unknown-in-ends-lower", job(ends={"a": "oak"}), "ends.a", "ends")
add("unknown-in-ties", job(ties={"C": []}), "ties.C", "ties")
add("unknown-in-found", job(found={"chord": [10, 10], "colour": 1}), "found.colour", "found")
add("unknown-in-got", job(got=[{"stake": "M", "sagitta": 1, "colour": 1}]), "got*")

# One key at a time.
BAD_VALUES: dict[str, dict[str, Any]] = {
    "bowstring": {"two": 2, "zero": 0, "text": "1", "half": 1.5, "true": True, "list": [1], "minus": -1},
    "unit": {
        "cm": "cm",
        "feet": "feet",
        "capital": "FT-IN",
        "number": 5,
        "empty": "",
        "list": ["m"],
        "space": " m ",
        "object": {},
    },
    "title": {
        "81": "t" * 81,
        "number": 5,
        "list": ["a"],
        "nul": "a\x00b",
        "escape": "a\x1b[2Jb",
        "delete": "a\x7fb",
        "half-pair": "a\ud800",
    },
    "note": {
        "281": "n" * 281,
        "number": 5,
        "nul": "a\x00b",
        "escape": "\x1b]0;x\x07",
        "object": {},
        "half-pair": "\udfff",
    },
    "side": {"up": "up", "capital": "LEFT", "number": 1, "true": True, "empty": "", "list": ["left"]},
    "mark": {
        "third": "1/3 in",
        "zero": 0,
        "negative": -0.005,
        "coarse": 1,
        "word": "fine",
        "true": True,
        "list": [0.005],
        "other-size": "0.002 m",
        "nan": float("nan"),
        "64th": "1/64 in",
    },
    "tolerance": {
        "negative": -0.01,
        "word": "tight",
        "true": True,
        "list": [],
        "nan": float("nan"),
        "inf": float("inf"),
    },
    "spacing": {
        "zero": 0,
        "negative": -1,
        "word": "wide",
        "true": True,
        "list": [1],
        "nan": float("nan"),
        "object": {"m": 1},
    },
    "levels": {
        "zero": 0,
        "minus": -1,
        "13": 13,
        "half": 2.5,
        "word": "three",
        "true": True,
        "list": [3],
        "nan": float("nan"),
        "huge": 10**30,
        "inf": float("inf"),
    },
    "greater": {"text": "yes", "number": 1, "list": [True]},
    "drawn_to": {"front": "front", "number": 1, "true": True},
    "start": {"middle": "middle", "number": 0, "list": ["ends"]},
    "ends": {"text": "A", "list": ["oak", "elm"], "number": 4},
    "ties": {"text": "oak 3 m", "list": [], "number": 3},
    "found": {"text": "10 m", "list": [10, 10], "number": 10},
    "got": {"text": "M", "object": {"stake": "M", "sagitta": 1}, "number": 4},
}
for key, values in BAD_VALUES.items():
    for kind, value in values.items():
        add(f"{key}-{kind}", job(**{key: value}), key, *(["job"] if key == "bowstring" else []))
for end in ("A", "B"):
    for kind, value in {"41": "x" * 41, "number": 5, "nul": "\x00", "list": [], "escape": "\x1b[1m"}.items():
        add(f"ends-{end}-{kind}", job(ends={end: value}), f"ends.{end}")
add("greater-in-arc-text", job(arc={"radius": 5, "chord": 6, "greater": "yes"}), "arc.greater")
add(
    "greater-contradicts",
    job(arc={"radius": 5, "chord": 6, "greater": False}, greater=True),
    "greater",
    "arc.greater",
    "arc",
)

# Offset and what is driven.
add("offset-alone", job(offset=0.1), "toward", "offset")
add("offset-negative", job(offset=-0.1, toward="centre"), "offset")
add("offset-word", job(offset="thick", toward="centre"), "offset")
add("offset-true", job(offset=True, toward="centre"), "offset")
add("offset-nan", job(offset=float("nan"), toward="outside"), "offset")
add("offset-past-centre", job(offset=14, toward="centre"), "offset")
add("offset-to-the-centre", job(arc={"radius": 5, "central_angle": 60}, offset=5, toward="centre"), "offset")
for kind, value in {
    "in": "in",
    "center": "inward",
    "number": 1,
    "true": True,
    "list": ["centre"],
    "empty": "",
}.items():
    add(f"toward-{kind}", job(offset=0.1, toward=value), "toward")
add("hub-without-toward", job(driven="hub", offset=1), "offset", "driven", "toward")
add("diameter-of-a-hub", job(driven="hub", diameter="5/8 in"), "diameter", "driven")
add("diameter-of-a-post", job(diameter="4 in"), "diameter")
add("diameter-nothing", job(diameter="0 in"), "diameter")
add("diameter-list", job(diameter=["5/8 in"]), "diameter")
add("width-nothing", job(width=0), "width")
add("width-word", job(width="wide"), "width")
add("fair-nothing", job(fair="0 in"), "fair")
add("fair-negative", job(fair="-1 mm"), "fair")
add("fair-word", job(fair="smooth"), "fair")
add("driven-nail", job(driven="nail"), "driven")
add("driven-number", job(driven=2), "driven")

# What was done and read.
DONE = {"method": "halving"}
for kind, value in {
    "number": 3, "text": "1, 2", "zero": [0], "minus": [1, -1], "half": [1.5], "true": [True], "twice": [2, 1, 2],
    "none": [None], "beyond": [10**9], "many": [1] * 5001, "object": {"1": True},
}.items():  # fmt: skip
    add(f"done-{kind}", job(done=value, **DONE), "done*")
add("done-without-a-method", job(done=[1]), "done")
add("done-without-a-method-by-rounds", job(done=[1], levels=2), "done")
for kind, row in {  # a reading that is no length stops nothing: it is told at its check
    "text": "A-Q2 3 m", "no-check": {"value": "3 m"}, "blank-check": {"check": " ", "value": "3 m"},
    "no-value": {"check": "A-Q2"}, "long-check": {"check": "Q" * 41, "value": "3 m"},
    "stranger": {"check": "A-Q2", "value": "3 m", "by": "me"}, "nul": {"check": "A\x00", "value": "3 m"},
}.items():  # fmt: skip
    add(f"read-{kind}", job(read=[row]), "read[0]*")
add("read-object", job(read={"check": "A-Q2", "value": "3 m"}), "read")
add("by-long", job(by="b" * 41), "by")
add("by-number", job(by=7), "by")
add("ticket-long", job(ticket="t" * 41), "ticket")
add("ticket-number", job(ticket=4417), "ticket")
add("called-long", job(called="c" * 41), "called")
add("called-list", job(called=["Monday"]), "called")
add("parent-long", job(parent="p" * 81), "parent")
add("parent-list", job(parent=["walk"]), "parent")
for kind, value in {
    "word": "today", "short": "2026-5-3", "turned": "31-05-2026", "month": "2026-13-01", "none": "2026-00-10",
    "april": "2026-04-31", "leap": "2026-02-29", "century": "2100-02-29", "time": "2026-05-31T07:00",
    "number": 20260531, "other-digits": "\u0662\u0660\u0662\u0666-05-31",
}.items():  # fmt: skip
    add(f"date-{kind}", job(date=value), "date")

# Ties, what was found, what was got.
add("ties-one", job(ties={"A": [{"to": "oak", "distance": 3}]}), "ties.A*", "ties")
add(
    "ties-distance-minus",
    job(ties={"A": [{"to": "oak", "distance": -3}, {"to": "elm", "distance": 4}]}),
    "ties.A*",
)
add(
    "ties-distance-word",
    job(ties={"B": [{"to": "oak", "distance": "far"}, {"to": "elm", "distance": 4}]}),
    "ties.B*",
)
add("ties-no-object", job(ties={"A": [{"distance": 3}, {"to": "elm", "distance": 4}]}), "ties.A*")
add("ties-A-text", job(ties={"A": "oak 3 m"}), "ties.A*")
add("found-chord-words", job(found={"chord": ["ten", "ten"]}), "found.chord*")
add("found-chord-minus", job(found={"chord": [-10, 10]}), "found.chord*")
add("found-chord-three", job(found={"chord": [10, 10, 10]}), "found.chord*")
add("found-tape-loose", job(found={"chord": [10, 10], "tape": "loose"}), "found.tape")
add("found-hold-chord", job(found={"chord": [10.1, 10.1], "tape": "level", "hold": "chord"}), "found.hold")
add(
    "found-sure-text",
    job(found={"chord": [10.1, 10.1], "tape": "level", "hold": "radius", "sure": "yes"}),
    "found.sure",
)
add("got-unknown-stake", job(got=[{"stake": "Q9", "sagitta": 1}]), "got*")
add("got-nothing", job(got=[{"stake": "M"}]), "got*")
add("got-minus", job(got=[{"stake": "M", "sagitta": -1}]), "got*")
add("got-list-of-text", job(got=["M"]), "got*")


def _deep(levels: int) -> Any:
    value: Any = 1
    for _ in range(levels):
        value = [value]
    return value


add("deep-title", job(title=_deep(3000)), "title", "job")
add("deep-chord", job(arc={"chord": _deep(3000), "sagitta": 1}), "arc.chord", "job")
add("deep-arc", job(arc=_deep(3000)), "arc", "job")

ALL = tuple(CASES)
