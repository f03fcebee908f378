"""Sites at random: whatever is in the way, a sheet asks for nothing that its own ground doesn't allow.

The geometry is shapely's, not the package's; lengths are feet unless said otherwise.
"""

from __future__ import annotations

from itertools import combinations
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon
from shapely import Point as Spot

from bowstring import BadJob, answer
from bowstring.analysis.triangles import corners_of
from bowstring.geometry.outlines import SKIN
from bowstring.job.job import read_job
from bowstring.job.services import may_be_service
from bowstring.layout.layout import lay_out
from bowstring.layout.limits import squares_here
from helping import about

FOOT = 0.3048
TOUCH = 0.0051
"""Metres: a tape that lies along a wall may touch it by this much."""
DEEP = SKIN * 1.01
FREE_TO_CHOOSE = {"S", "T"}
"""Where a straight's direction is shown is the crew's own choice."""

boxes = st.builds(
    lambda x, y, w, h, stops, name: (name, stops, [(x, y), (x + w, y), (x + w, y + h), (x, y + h)]),
    st.integers(-12, 48), st.integers(-22, 26), st.sampled_from([0.5, 2, 8, 25]), st.sampled_from([0.5, 2, 6]),
    st.sampled_from(["tape", "feet"]), st.sampled_from(["shed", "oak", "gas meter", "Water main", "manhole"]),
)  # fmt: skip
sites = st.fixed_dictionaries(
    {
        "ground": st.lists(boxes, max_size=4),
        "levels": st.integers(1, 4),
        "method": st.sampled_from(
            ["centre", "halving", "rule", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates"]
        ),
        "arc": st.sampled_from([{"chord": "40 ft", "sagitta": "10 ft"}, {"chord": "40 ft", "sagitta": "3 ft"},
                                {"chord": "30 ft", "sagitta": "40 ft"}, {"chord": "70 ft", "sagitta": "12 ft"}]),
        "start": st.sampled_from(["ends", "one-end", "corner", "neither"]),
    },
    optional={
        "offset": st.sampled_from(["1-1/2 in", "2 ft"]),
        "toward": st.sampled_from(["centre", "outside"]),
        "tolerance": st.sampled_from(["1/4 in", "1 in"]),
        "parallel": st.sampled_from(["8 ft", "-4 ft", "14 ft"]),
        "side": st.sampled_from(["left", "right"]),
        "tape": st.sampled_from([{"length": f"{length} ft"} for length in (12, 25, 33)]),
        "room": st.sampled_from([{"inside": "3 ft"}, {"behind": "5 ft"}, {"outside": "2 ft"}]),
    },
)  # fmt: skip


def job_of(site: dict[str, Any]) -> dict[str, Any]:
    ground = [
        {"name": f"{name} {number}", "stops": stops, "outline": [[f"{x} ft", f"{y} ft"] for x, y in outline]}
        for number, (name, stops, outline) in enumerate(site["ground"], 1)
    ]
    job = {**site, "ground": ground, "drawn_to": "face", "centre": "reachable"}
    if ("offset" in job) != ("toward" in job):
        job = {key: value for key, value in job.items() if key not in ("offset", "toward")}
    return job


class Ground:
    """The outlines of a job, metres."""

    def __init__(self, site: dict[str, Any]) -> None:
        shapes = [(stops, Polygon([(x * FOOT, y * FOOT) for x, y in outline]))
                  for _name, stops, outline in site["ground"]]  # fmt: skip
        # A way no deeper inside than the skin touches: so the walls' cores are what nothing may run through.
        self.walls = [shape.buffer(-DEEP) for stops, shape in shapes if stops == "tape"]
        self.all = [shape for _stops, shape in shapes]
        self.tape = float(site.get("tape", {"length": "100 ft"})["length"].split()[0]) * FOOT

    def lets_through(self, one: Any, other: Any) -> bool:
        line = LineString([one, other])
        return all(line.intersection(wall).length <= TOUCH for wall in self.walls)

    def bears(self, place: Any) -> bool:
        return not any(shape.contains(Spot(place)) and shape.exterior.distance(Spot(place)) > TOUCH
                       for shape in self.all)  # fmt: skip


def pairs_of(check: dict[str, Any]) -> list[tuple[str, str]]:
    """The marks between which a check stretches a string or tapes."""
    pairs = [(check["from"], check["to"])]
    if check["kind"] == "alternate":
        first, second = check["from"].removeprefix("mid ").split("-")
        pairs += [(first, second), (first, check["from"]), (check["from"], second)]
    if check["kind"] == "ordinate":
        pairs += [("A", "B"), ("A", check["from"])]
    return pairs


@given(sites)
@settings(max_examples=max(60, settings.default.max_examples), deadline=None)
def test_no_sheet_asks_for_what_its_ground_forbids(site: dict[str, Any]) -> None:
    job = job_of(site)
    try:
        sheet = answer(job, whole=False)
    except BadJob:
        return  # no such arc, start or method
    ground, at = Ground(site), {mark["name"]: (mark["x"], mark["y"]) for mark in sheet["marks"]}
    for check in sheet["checks"]:
        for one, other in pairs_of(check):
            with about("check", check["kind"], one, other):
                assert ground.lets_through(at[one], at[other])
                if {one, other} != {"A", "B"} and not (check["kind"] == "alternate" and one != check["from"] != other):
                    assert LineString([at[one], at[other]]).length <= ground.tape + 1e-6
        assert all(ground.bears(at[check[end]]) for end in ("from", "to"))
    from_string = "parallel" in job and job["method"] == "ordinates"
    own = next(row for row in sheet["methods"]
               if row["method"] == sheet["method"] and (row["parallel"] is not None) == from_string)  # fmt: skip
    if own["possible"]:
        steps_hold(sheet, ground, at)
        triangles_hold(job, ground)
    else:
        assert sheet["stops"] and own["why_not"]
    for change in sheet["advice"]["changes"]:
        assert change["kind"] != "obstacle" or not may_be_service(change["what"])
    told = {frozenset((block["from"], block["to"])) for block in own["blocks"] if block["kind"] in ("pull", "tape")}
    if own["possible"]:
        assert not told


def steps_hold(sheet: dict[str, Any], ground: Ground, at: dict[str, Any]) -> None:
    """Every length that a step tapes is free and no longer than the tape, and all marks can be stood at."""
    for step in sheet["steps"]:
        for measure in step["measures"]:
            if "distance" in measure:
                with about("step", step["kind"], measure["from"], measure["to"]):
                    assert measure["distance"] <= ground.tape + 1e-6
                    assert ground.lets_through(at[measure["from"]], at[measure["to"]])
        assert all(ground.bears(at[mark]) for mark in step["marks"] if mark not in FREE_TO_CHOOSE)
        if step["kind"] in ("string", "string_taped", "prove_two", "prove_parts"):
            assert ground.lets_through(at[step["names"]["start"]], at[step["names"]["end"]])


def triangles_hold(job: dict[str, Any], ground: Ground) -> None:
    """Each squaring triangle lies free on the ground."""
    layout = lay_out(read_job(job))
    squares = squares_here(layout.job, layout.setting, layout.recipe)
    for step in layout.recipe.steps:
        for move in step.moves:
            square = move.squares
            if square and square.mark in squares:
                with about("triangle", square.mark):
                    corners = corners_of(layout.recipe.at, square, squares[square.mark])
                    assert all(ground.lets_through(one, other) for one, other in combinations(corners, 2))
                    assert all(ground.bears(corner) for corner in corners)
    for stake in layout.stakes:
        if layout.method.exact:
            assert abs(layout.staked.miss(layout.recipe.at[stake.name])) < 1e-7, stake.name
