"""Sites at random, those of test_ground_fuzz.py: no sheet says two things that can't both be so."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import BadJob, answer
from bowstring.report.demand import HOPELESS
from bowstring.sheet.text import sheet_text
from helping import about
from unit.layout.test_ground_fuzz import job_of, sites

OTHER = {"left": "right", "right": "left", "LEFT": "RIGHT", "RIGHT": "LEFT"}
HANDS = re.compile(r"\b(left|right|LEFT|RIGHT)\b")
FACING = re.compile(r"(?:to|on) the (left|right) \(facing (\w+) from (\w+)\)")
FEW = max(25, settings.default.max_examples // 4)
tolerances = st.sampled_from(["1/16 in", "1/4 in", "1/2 in", "1 in"])


def plain(text: str) -> str:
    """A text without what a longer word moves: where its lines end and how long its rules are."""
    return re.sub(r"-{2,}", "-", " ".join(text.split()))


def swapped(text: str) -> str:
    """A plain text of the other hand."""
    return HANDS.sub(lambda found: OTHER[found[1]], plain(text))


def texts(value: Any) -> Iterator[str]:
    if isinstance(value, Mapping):
        for one in value.values():
            yield from texts(one)
    elif isinstance(value, list):
        for one in value:
            yield from texts(one)
    elif isinstance(value, str):
        yield value


@given(sites, st.sampled_from(["left", "right"]))
@settings(max_examples=FEW, deadline=None)
def test_the_other_hand_is_the_same_sheet_in_a_mirror(site: dict[str, Any], side: str) -> None:
    job = {**job_of(site), "side": side}
    try:
        one, other = (answer({**job, "side": hand}, whole=False) for hand in (side, OTHER[side]))
    except BadJob:
        return  # no such arc, start or method
    for mine, theirs in zip(texts(one), texts(other), strict=True):
        assert swapped(mine) == plain(theirs)
    assert swapped(sheet_text(one)) == plain(sheet_text(other))
    assert set(re.findall(r"facing B[:,] the curve is on your (left|right)", " ".join(sheet_text(one).split()))) == {
        side
    }
    at = {mark["name"]: (mark["x"], mark["y"]) for mark in one["marks"]}
    for step in one["steps"]:
        for hand, facing, start in FACING.findall(step["text"]):
            if step["stake"] and facing in at and start in at:
                (x, y), (fx, fy), (sx, sy) = at[start], at[facing], at[step["stake"]]
                left = (fx - x) * (sy - y) - (fy - y) * (sx - x)  # more than 0: left of the line in the frame,
                with about(step["text"]):  # which is the ground's own where the curve is on the left, else its mirror
                    seen = "left" if (left > 0) == (side == "left") else "right"
                    assert abs(left) < 1e-6 or hand == seen


@given(sites, tolerances)
@settings(max_examples=FEW, deadline=None)
def test_no_stake_is_told_in_tolerance_and_stopped_for_it(site: dict[str, Any], tolerance: str) -> None:
    try:
        sheet = answer({**job_of(site), "side": "left", "tolerance": tolerance}, whole=False)
    except BadJob:
        return
    own = next(row for row in sheet["methods"] if row["method"] == sheet["method"]
               and (row["parallel"] is None) == (sheet["parallel"] is None))  # fmt: skip
    advice, allowed = sheet["advice"], sheet["tolerance"]
    hopeless = [stop for stop in sheet["stops"] if "Careful work won't make up for that." in stop]
    advised = advice["method"] == sheet["method"] and not advice["halve_first"]
    if hopeless:
        assert own["miss_95"] > HOPELESS * allowed and (sheet["accuracy"]["chance"] or 0.0) < 0.5
        assert not (advised and advice["holds"]) and "Use " in hopeless[0]
        told = [line for line in sheet["accuracy"]["lines"] if line.startswith("Bare pins")]
        assert not any(" holds in " in line and "hardly" not in line for line in told)
    elif own["possible"] and own["miss_95"] is not None and own["miss_95"] > HOPELESS * allowed:
        assert sheet["stops"] or advised or advice["method"] is None
    if any("the quarter rule's numbers" in stop for stop in sheet["stops"]):
        assert sheet["rule"]["holds"] is False and "within the" not in sheet["rule"]["text"]
    for row in sheet["mistakes"]:
        rest = row["told"].replace("NO check on this sheet catches it", "")
        assert not ("NO check" in row["told"] and ("catches it" in rest or "Its own step shows it" in rest))
