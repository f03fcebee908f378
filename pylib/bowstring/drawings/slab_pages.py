"""What each page of the build shows on the slab: its first screen, the second edge, joints, tops, and the pour."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import pairwise
from math import dist

from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.labels import LEADER, LINE, Label
from bowstring.drawings.slab_shape import NAMES
from bowstring.drawings.slab_sketch import APART, LEFT, RIGHT, SlabSketch, apart
from bowstring.drawings.stepdiscs import RADIUS, draw_discs
from bowstring.drawings.svg import Point
from bowstring.report.alone import grades_of, joints_of, pour_of, wanted_joints
from bowstring.report.forming.plan import LIES
from bowstring.report.forming.slopes import percent
from bowstring.report.forms.build_edges import EdgesPart, SecondEdge
from bowstring.report.forms.build_grades import GradesPart
from bowstring.words import say

_DISC = 25.0
"""Least distance of two discs, drawing units."""

_SAME = 1e-9
"""Of a length: two panels are as long as each other."""

_WIDTH_AT = (0.9, 0.86, 0.93)
_CROSS_AT = (-0.9, -0.86, -0.93)
_CROSS_BETWEEN = (-0.5, -0.45, -0.55, -0.4)
_LANDMARK = 112.0


def _first(made: SlabSketch) -> None:
    """The first screen: both edges, how wide, and which way water and feet go."""
    edges = _edges_of(made)
    _cuts(made)
    made.stakes()
    made.ends()
    _apron(made, edges)
    _width(made, edges)
    grades = grades_of(made.answer)
    if grades is not None and not grades["stop"]:
        _cross(made, grades, _free(made, _CROSS_AT))
    radius = {row["key"]: row["radius_shown"] for row in edges["lines"] if row["radius"] is not None}
    for side in ("outside", "inside"):
        tapers = "" if radius.get(side) else "_taper"
        key = f"walled.draw_{side}{tapers}" if edges["faces"] else f"build.draw_{side}{tapers}"
        made.beside(side, say(key, radius=radius.get(side, "")), (0.0, -0.15, 0.15, -0.3))
    foot(made, grades)


SHEET = "sheet"
"""The page of the plan on the form sheet, whose lines and thicknesses stand beside it."""

_STEEP, _ROOMY, _PAST, _AT_END = 1.2, 36.0, 10.0, 60.0
"""Half an angle from which ends turn in; a hollow in which a line of words has room; units past what is written at an
end, and how far under it a name reaches."""


def _sheet(made: SlabSketch) -> None:
    """The same as on the first screen, as wide as a sheet is: what its table tells of the edges doesn't stand there."""
    edges, grades = _edges_of(made), grades_of(made.answer)
    _cuts(made)
    made.stakes()
    made.ends()
    _apron(made, edges)
    _width(made, edges)
    if grades is not None and not grades["stop"]:
        _cross(made, grades, _free(made, _CROSS_AT))
    if made.shape.half > _STEEP:
        foot(made, grades)
        return
    for name, share in (("A", -1.0), ("B", 1.0)):
        _named(made, made.answer["ends"]["A" if name == "A" else "B"], made.shape.on("inside", share))
    slope = _along(grades)
    if grades is not None and slope and grades["high"]:
        _runs(made, grades["high"], say("build.draw_up", slope=slope, end=grades["high"]))


def _named(made: SlabSketch, text: str, at: Point) -> None:
    """What stands at an end, past all that is written there."""
    (x, y), way = at, -1.0 if at[0] < made.room.middle else 1.0
    near = [box for box in made.sketch.texts if box.bottom > y - 8.0 and box.top < y + _AT_END]
    far = max([x * way, *(edge * way for box in near for edge in (box.left, box.right))]) * way
    if text:
        anchor = "end" if way < 0 else "start"
        made.sketch.paragraph(text, (far + way * _PAST, y - 4.0), NAMES, "word", anchor, "quiet")


def _runs(made: SlabSketch, high: str, text: str) -> None:
    """Which end is high, in the hollow of the arc where that has room; else under all."""
    low, crown = made.shape.on("inside", 1.0)[1], made.shape.on("inside", 0.0)[1]
    wide, middle = text_width(text, "number") / 2 + 40.0, made.room.middle
    there = Box(middle - wide, low - 8.0, middle + wide, low + 14.0)
    free = low - crown >= _ROOMY and not any(there.overlaps(box) for box in made.sketch.texts)
    made.toward(high, text, low - 4.0 if free else made.sketch.edge.bottom + 1.0)


def _apron(made: SlabSketch, edges: EdgesPart) -> None:
    """A thicker stretch: its ends, square across as the slab's own, and how thick it is."""
    pour = pour_of(made.answer)
    if pour is None or not pour["deep"]["apron_ends"]:
        return
    first, last = (2 * at / edges["outside"]["length"] - 1 for at in pour["deep"]["apron_ends"])
    made.sketch.lines(
        [[made.shape.on(side, share) for side in ("outside", "inside")] for share in (first, last)], "string"
    )
    middle = (first + last) / 2
    made.beside("inside", say("deep.draw", depth=pour["deep"]["apron_depth"]), (middle, middle - 0.1, middle + 0.1))


def _width(made: SlabSketch, edges: EdgesPart) -> None:
    """How wide it is: between two joints, or of a width that changes at both ends."""
    if edges["far_width"] is None:
        share = _free(made, _WIDTH_AT)
        made.across(share, "arrow strong")
        made.beside("inside", edges["width_shown"], (share,), "big", "hot")
        return
    for share, shown in ((-1.0, edges["width_shown"]), (1.0, edges["far_width_shown"])):
        made.across(share, "arrow strong", 0.0)
        x, y = made.shape.outward(share)
        made.near(shown, made.shape.on("inside", share), (-x, -y), classes="hot")


def _cross(made: SlabSketch, grades: GradesPart, share: float) -> None:
    """Which way water runs across, and how steeply."""
    if not grades["low"] or not grades["cross"]:
        return
    sides = ("outside", "inside") if grades["low"] == "inside" else ("inside", "outside")
    made.flow(*(made.shape.on(side, share) for side in sides))
    way = say("build.draw_in" if grades["low"] == "inside" else "build.draw_out")
    made.beside(grades["low"], say("build.draw_cross", slope=percent(grades["cross"]), way=way), (share,), reach=6.0)


def foot(made: SlabSketch, grades: GradesPart | None) -> None:
    """The landmarks under their ends, and between them which end is high."""
    sketch, top = made.sketch, made.sketch.edge.bottom + 3.0
    ends = [("start", LEFT), ("end", RIGHT)] if made.shape.turn > 0 else [("end", RIGHT), ("start", LEFT)]
    for name, (anchor, x) in zip(("A", "B"), ends, strict=True):
        text = made.answer["ends"]["A" if name == "A" else "B"]
        if text:
            sketch.paragraph(text, (x, top), _LANDMARK, "word", anchor, "quiet")
    slope = _along(grades)
    if grades is not None and slope and grades["high"]:
        made.toward(grades["high"], say("build.draw_up", slope=slope, end=grades["high"]), top)


def _along(grades: GradesPart | None) -> str:
    """The running slope along the center line as a text."""
    rows = grades["slopes"] if grades is not None and not grades["stop"] else []
    return next((row["shown"] for row in rows if row["line"] == "center"), "")


def _second(made: SlabSketch) -> None:
    """The second edge, gauged off the first, squared by its diagonals, and its own string."""
    edges = _edges_of(made)
    made.stakes()
    made.ends()
    at = {name: made.shape.on("stakes", share) for name, share in made.share.items()}
    for second in edges["seconds"]:
        _partners(made, second, at)
    inner = [row for row in edges["seconds"] if row["edge"] == "inside"] or edges["seconds"]
    _stick(made, inner[0], at)
    _diagonals(made, edges, at)
    if not inner[0]["blocked"]:
        _string(made, inner[0])


def _stick(made: SlabSketch, second: SecondEdge, at: Mapping[str, Point]) -> None:
    """The stick at the stake that is nearest to a quarter of the line; from face to face where stakes stand on neither
    edge nor halfway."""
    row = min(second["rows"], key=lambda one: abs(made.share[one["stake"]] + 0.5))
    share = made.share[row["stake"]]
    start, shown = at[row["stake"]], row["width_shown"]
    if _edges_of(made)["yours"] not in LIES:
        start, shown = made.shape.on("outside" if second["edge"] == "inside" else "inside", share), row["slab_shown"]
    made.sketch.lines([[start, at[row["name"]]]], "arrow strong")
    text = say("build.draw_stick", width=shown)
    made.beside("outside", text, (share, share - 0.1), "number", "hot")


def _partners(made: SlabSketch, second: SecondEdge, at: dict[str, Point]) -> None:
    side = second["edge"]
    places = {row["name"]: made.shape.on(side, made.share[row["stake"]]) for row in second["rows"]}
    at |= places
    first, last = second["rows"][0]["name"], second["rows"][-1]["name"]
    for name in apart(places, (first, last)):
        made.sketch.stake(name, places[name], "new")
    for name, share in ((first, -1.0), (last, 1.0)):
        made.name(name, places[name], share, classes="hot", low=side == "inside")


def _diagonals(made: SlabSketch, edges: EdgesPart, at: Mapping[str, Point]) -> None:
    """The diagonals of one bay, and what they read."""
    if not edges["bays"]:
        return
    bay = edges["bays"][int(len(edges["bays"]) * 0.72)]
    lines = [[at[name] for name in ends] for ends in bay["ends"] if all(name in at for name in ends)]
    if not lines or min(dist(*line) for line in lines) < APART:
        return
    made.sketch.drawing.lines(lines, "line cut")
    middle = (made.share[bay["first"]] + made.share[bay["last"]]) / 2
    alike = bay["forth_shown"] == bay["back_shown"]
    text = say("build.draw_both", shown=bay["forth_shown"]) if alike else f"{bay['forth_shown']}, {bay['back_shown']}"
    made.beside("outside", text, (middle, middle - 0.1, middle + 0.15))


def _string(made: SlabSketch, second: SecondEdge) -> None:
    ends = [made.shape.on(second["edge"], share) for share in (-1.0, 1.0)]
    made.sketch.lines([ends], "string")
    (x, y), (x2, _y2) = ends
    text = say("build.draw_string", shown=second["chord_shown"])
    made.sketch.label(Label(text, "number", [((x + x2) / 2, y)], (0.0, 1.0), 4.0))


def _joints(made: SlabSketch) -> None:
    """The joints by their numbers, and the sides of a panel that is as long as the longest."""
    joints, edges, shape = joints_of(made.answer), _edges_of(made), made.shape
    assert joints is not None
    whole = edges["outside"]["length"]
    shares = {row["number"]: 2 * row["outside"] / whole - 1 for row in joints["rows"] if row["number"]}
    made.cuts(list(shares.values()))
    made.corners()
    made.ends()
    for second in edges["seconds"]:
        for row, share in ((second["rows"][0], -1.0), (second["rows"][-1], 1.0)):
            made.name(row["name"], shape.on(second["edge"], share), share, low=second["edge"] == "inside")
    bounds = [-1.0, *shares.values(), 1.0]
    inner = [0.0, *(row["inside"] for row in joints["rows"])]
    longest = [after - before >= joints["inside"] * (1 - _SAME) for before, after in pairwise(inner)]
    middle = len(bounds) // 2 - 1
    panel = min((one for one, told in enumerate(longest) if told), key=lambda one: abs(one - middle), default=middle)
    first, last = bounds[panel], bounds[panel + 1]
    for side in ("outside", "inside"):
        made.sketch.drawing.path(shape.curve(side, first, last), "line arrow strong")
    made.beside("inside", joints["inside_shown"], ((first + last) / 2,), "number", "hot", 6.0)
    _numbers(made, shares)


def _numbers(made: SlabSketch, shares: Mapping[int, float]) -> None:
    """The joints' numbers outside the outer edge, so many of them as have room."""
    kept: list[Point] = []
    for number, share in shares.items():
        (x, y), (ox, oy) = made.shape.on("outside", share), made.shape.outward(share)
        at = (x + ox * 15.0, y + oy * 15.0)
        if all(dist(at, other) >= _DISC for other in kept) and LEFT < at[0] < RIGHT:
            if made.sketch.ground.taken(
                Box(at[0] - RADIUS, at[1] - RADIUS, at[0] + RADIUS, at[1] + RADIUS), LEADER + 1
            ):
                continue
            kept.append(at)
            made.sketch.see((at[0], at[1] - RADIUS))
            draw_discs(made.sketch, [(number, [at])])


def _grades(made: SlabSketch) -> None:
    """The tops at the four corners, and how steep each edge runs."""
    grades = grades_of(made.answer)
    assert grades is not None
    _cuts(made)
    made.corners()
    made.ends()
    stakes = [row for row in grades["rows"] if row["kind"] == "stake"]
    for row, share in ((stakes[0], -1.0), (stakes[-1], 1.0)) if stakes else ():
        for side, way, top in (("outside", 1.0, row["outside"]), ("inside", -1.0, row["inside"])):
            x, y = made.shape.outward(share)
            if top is None:
                continue
            made.near(top["shown"], made.shape.on(side, share), (x * way, y * way))
    if not grades["stop"]:
        _cross(made, grades, _free(made, _CROSS_BETWEEN))
    for slope in grades["slopes"]:
        if slope["line"] in ("outside", "inside") and grades["high"]:
            text = say(f"build.draw_runs_{slope['line']}", slope=slope["shown"], end=grades["high"])
            made.beside(slope["line"], text, (0.0, 0.1, 0.2))


def _pour(made: SlabSketch) -> None:
    """How far the concrete has to be at half a truck and at three quarters."""
    pour, edges, shape = pour_of(made.answer), _edges_of(made), made.shape
    assert pour is not None
    whole = edges["outside"]["length"]
    _cuts(made)
    made.ends()
    rows = pour["reach"]
    shares = [2 * row["call"] / whole - 1 for row in rows]
    if rows:
        poured = shape.curve("outside", -1.0, shares[0])
        back = shape.curve("inside", shares[0], -1.0)
        made.sketch.drawing.path([*poured, ("L", *back[0][1:]), *back[1:], ("Z",)], "slab")
    for row, share in zip(rows, shares, strict=True):
        made.across(share, "arrow strong", 0.0)
        at, out = shape.on("outside", share), shape.outward(share)
        made.sketch.fits(Label(row["out"], "number", [at], out, 7.0), LINE, "hot")
    start = shape.between(-0.9, 0.5)
    made.flow(start, shape.between(min(-0.6, shares[0] - 0.1) if shares else -0.6, 0.5))


def _cuts(made: SlabSketch) -> None:
    joints, edges = wanted_joints(made.answer), made.edges
    if joints is not None and edges is not None:
        whole = edges["outside"]["length"]
        made.cuts([2 * row["outside"] / whole - 1 for row in joints["rows"] if row["number"]])


def _edges_of(made: SlabSketch) -> EdgesPart:
    assert made.edges is not None
    return made.edges


def _free(made: SlabSketch, shares: tuple[float, ...]) -> float:
    """Return the share of some that is farthest from all stakes and joints."""
    joints, edges = joints_of(made.answer), _edges_of(made)
    taken = list(made.share.values())
    if joints is not None:
        taken += [2 * row["outside"] / edges["outside"]["length"] - 1 for row in joints["rows"]]
    return max(shares, key=lambda share: round(min(abs(share - one) for one in taken), 3))


PAGES: dict[str, Callable[[SlabSketch], None]] = {
    "": _first,
    "edges": _second,
    "joints": _joints,
    "grades": _grades,
    "pour": _pour,
    "boards": SlabSketch.plain,
    SHEET: _sheet,
}
