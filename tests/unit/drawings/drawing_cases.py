"""Answers of many shapes for the drawings' tests, made by short textbook formulas.

Circle geometry: radius = (half chord^2 + rise^2) / (2 rise); half angle = 2 atan(rise / half chord); the
sagitta of a chord that spans an angle t is radius * (1 - cos(t / 2)). Written for the tests alone, so that
they don't depend on the package's own core.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

FOOT, INCH = 0.3048, 0.0254
LETTERS = ["M", "Q", "R", "X", "W", "Y", "H", "J", "L", "Z", "G", "V"]

SHAPES: dict[str, dict[str, Any]] = {
    "ordinary": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 3},
    "one level": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 1},
    "right hand": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 3, "side": "right"},
    "offset": {"chord": 38 * FOOT, "rise": 5 * FOOT, "levels": 2, "offset": 1.5 * INCH, "toward": "centre"},
    "hub": {
        "chord": 38 * FOOT,
        "rise": 5 * FOOT,
        "levels": 3,
        "offset": 4 * FOOT,
        "toward": "outside",
        "side": "right",
    },
    "flat": {"chord": 60 * FOOT, "rise": 6 * INCH, "levels": 4},
    "flat hub": {"chord": 60 * FOOT, "rise": 6 * INCH, "levels": 2, "offset": 3 * FOOT, "toward": "outside"},
    "very flat": {"chord": 100.0, "rise": 0.001, "levels": 1, "unit": "m"},
    "a little flat": {"chord": 60 * FOOT, "rise": 4.9 * FOOT, "levels": 3, "side": "right"},
    "steep": {"chord": 12.0, "rise": 4.1, "levels": 4, "unit": "mm"},
    "semicircle": {"chord": 24 * FOOT, "rise": 12 * FOOT, "levels": 4},
    "greater": {"chord": 20 * FOOT, "rise": 17 * FOOT, "levels": 4, "side": "right"},
    "nine tenths": {"chord": 9.27, "rise": 9.27 / 2 * math.tan(math.radians(81)), "levels": 5, "unit": "m"},
    "nine tenths offset": {
        "chord": 9.27,
        "rise": 9.27 / 2 * math.tan(math.radians(81)),
        "levels": 3,
        "unit": "m",
        "offset": 0.9,
        "toward": "centre",
    },
    "five levels": {"chord": 96 * FOOT, "rise": 19 * FOOT, "levels": 5},
    "six levels": {"chord": 190 * FOOT, "rise": 40 * FOOT, "levels": 6},
}


def show(metres: float, unit: str) -> str:
    """Write a length as a tape would, to 1/8 in or 5 mm."""
    if unit == "m":
        return f"{round(metres / 0.005) * 0.005:.3f} m"
    if unit == "mm":
        return f"{round(metres / 0.005) * 5} mm"
    eighths = round(metres / INCH * 8)
    feet, rest = divmod(eighths, 96)
    inches, part = divmod(rest, 8)
    whole = math.gcd(part, 8)
    fraction = f"{part // whole}/{8 // whole}" if part else ""
    tail = "-".join(piece for piece in (str(inches) if inches or not fraction else "", fraction) if piece)
    return f"{feet}' {tail}\"" if feet else f'{tail}"'


def seven(radius: float, half: float) -> dict[str, float | None]:
    """Return the seven keys of an arc."""
    lesser = half < math.pi / 2 - 1e-12
    return {
        "radius": radius,
        "chord": 2 * radius * math.sin(half),
        "sagitta": 2 * radius * math.sin(half / 2) ** 2,
        "arc_length": 2 * radius * half,
        "central_angle": math.degrees(2 * half),
        "tangent_length": radius * math.tan(half) if lesser else None,
        "external": radius * (1 / math.cos(half) - 1) if lesser else None,
    }


def shown(arc: dict[str, float | None], unit: str) -> dict[str, str | None]:
    """Return the seven texts."""
    return {
        key: None if value is None else f"{value:.2f}°" if key == "central_angle" else show(value, unit)
        for key, value in arc.items()
    }


def stake_names(levels: int) -> list[tuple[str, int]]:
    """Return the stakes' names and levels from A to B."""
    names = [("A", 0), ("B", 0)]
    for level in range(1, levels + 1):
        grown: list[tuple[str, int]] = []
        for index, (one, _) in enumerate(pairwise(names)):
            grown += [one, ("M" if level == 1 else f"{LETTERS[level - 1]}{index + 1}", level)]
        names = [*grown, names[-1]]
    return names


def squaring(level: int, half: float, sagitta: float, side: float, unit: str) -> dict[str, Any]:
    """Return a row's way of keeping square: another one for each of the first three levels."""
    way = {1: "triangle", 2: "slide"}.get(level, "square")
    along, out = 0.8 * half, 0.6 * half
    long_side = math.hypot(along, out)
    return {
        "way": way,
        "text": "keep it square",
        "lines": [],
        "along": along,
        "out": out,
        "long_side": long_side,
        "whole": "3-4-5",
        "along_shown": show(along, unit),
        "out_shown": show(out, unit),
        "long_side_shown": show(long_side, unit),
    }


def make(
    chord: float,
    rise: float,
    levels: int,
    *,
    side: str = "left",
    unit: str = "ft-in",
    offset: float = 0.0,
    toward: str = "centre",
    title: str = "Pond edge, north bed",
    ends: tuple[str, str] = ("nail in the oak root", "corner of the pump house"),
) -> dict[str, Any]:
    """Return an answer with the keys that drawings read; chord and rise are the drawn arc's, metres."""
    half = 2 * math.atan2(rise, chord / 2)
    drawn = seven((chord**2 / 4 + rise**2) / (2 * rise), half)
    radius = float(drawn["radius"] or 0) + (offset if toward == "outside" else -offset)
    staked = seven(radius, half)
    length, sagitta, wide = (
        float(staked["arc_length"] or 0),
        float(staked["sagitta"] or 0),
        float(staked["chord"] or 0),
    )
    names = stake_names(levels)
    stakes = []
    for index, (name, level) in enumerate(names):
        angle = half * (2 * index / (len(names) - 1) - 1)
        x, y = wide / 2 + radius * math.sin(angle), sagitta - 2 * radius * math.sin(angle / 2) ** 2
        stakes.append(
            {
                "name": name,
                "x": x,
                "y": y,
                "along": length * index / (len(names) - 1),
                "level": level,
                "miss": 0.0,
            }
        )
    rows, marks, steps = [], [dict(stake) for stake in stakes], []
    if offset:
        away = offset if toward == "centre" else -offset
        for name, way, x in (("A0", -1, 0.0), ("B0", 1, wide)):
            marks.append({"name": name, "x": x + way * away * math.sin(half), "y": away * math.cos(half)})
    for level in range(1, levels + 1):
        part = half / 2 ** (level - 1)
        string, arrow, short = (
            2 * radius * math.sin(part),
            2 * radius * math.sin(part / 2) ** 2,
            2 * radius * math.sin(part / 2),
        )
        set_now = [stake["name"] for stake in stakes if stake["level"] == level]
        rows.append(
            {
                "level": level,
                "chord": string,
                "sagitta": arrow,
                "half": string / 2,
                "half_chord": short,
                "stakes": set_now,
                "rule_sagitta": sagitta / 4 ** (level - 1),
                "by_hand": [],
                "chord_shown": show(string, unit),
                "half_shown": show(string / 2, unit),
                "sagitta_shown": show(arrow, unit),
                "rule_shown": "",
                "half_chord_shown": show(short, unit),
                "squaring": squaring(level, string / 2, arrow, short, unit),
            }
        )
        standing = [stake for stake in stakes if stake["level"] <= level]
        for before, new, after in zip(standing, standing[1:], standing[2:], strict=False):
            if new["level"] == level:
                middle = f"mid {new['name']}"
                marks.append({"name": middle, "x": (before["x"] + after["x"]) / 2, "y": (before["y"] + after["y"]) / 2})
                steps.append(
                    {
                        "number": len(steps) + 1,
                        "text": "",
                        "level": level,
                        "kind": "halve",
                        "marks": [new["name"]],
                        "measures": [
                            {
                                "from": before["name"],
                                "to": after["name"],
                                "distance": string,
                                "shown": show(string, unit),
                            },
                            {
                                "from": before["name"],
                                "to": middle,
                                "distance": string / 2,
                                "shown": show(string / 2, unit),
                            },
                            {
                                "from": middle,
                                "to": new["name"],
                                "distance": arrow,
                                "shown": show(arrow, unit),
                            },
                        ],
                    }
                )
    stick = [
        {"label": f"sagitta {row['level']}", "distance": row["sagitta"], "shown": row["sagitta_shown"]}
        for row in reversed(rows)
    ]
    return {
        "version": "test",
        "title": title,
        "note": "",
        "unit": unit,
        "mark": "1/8 in",
        "side": side,
        "ends": {"A": ends[0], "B": ends[1]},
        "arc": drawn,
        "staked": staked,
        "arc_shown": shown(drawn, unit),
        "staked_shown": shown(staked, unit),
        "halving": rows,
        "stakes": stakes,
        "marks": marks,
        "steps": steps,
        "stick": {"length": sagitta, "marks": stick},
        "offset": {"distance": offset, "toward": toward, "shown": show(offset, unit), "text": ""} if offset else None,
    }


def found_from(answer: dict[str, Any], start: str) -> dict[str, Any]:
    """Return the answer with the marks from which a crew finds the drawn ends: ``corner`` or ``one-end``.

    The straights leave the chord at half the central angle; the corner is the tangent length from both ends,
    the foot is where a square to A's straight runs through B; S and T are 10 ft back.
    """
    answer["start"] = start
    at = {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}
    (ax, ay), (bx, by) = (at.get(f"{end}0", at[end]) for end in ("A", "B"))
    half, back = math.radians(answer["arc"]["central_angle"]) / 2, 10 * FOOT
    along, out = math.cos(half), math.sin(half)
    marks = {"S": (ax - back * along, ay - back * out)}
    if start == "corner":
        marks["P"] = ((ax + bx) / 2, ay + (bx - ax) / 2 * math.tan(half))
        marks["T"] = (bx + back * along, by - back * out)
    else:
        marks["F"] = (ax + (bx - ax) * along * along, ay + (bx - ax) * along * out)
    answer["marks"] += [{"name": name, "x": x, "y": y} for name, (x, y) in marks.items()]
    return answer


def case(name: str, **changes: Any) -> dict[str, Any]:
    """Return the answer of a shape from ``SHAPES``, with changes."""
    return make(**{**SHAPES[name], **changes})
