"""Sites at random, on the arc of test_advice.py: where nothing works, a change that is offered does what it says."""

from __future__ import annotations

from math import asin, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bowstring import answer
from bowstring.words import LANGUAGES, say, speak
from unit.layout.test_advice import ARC, FOOT, box, possible, row

EVERYDAY = {"centre", "halving", "ordinates", "tangent", "tapes"}
H = asin(0.8)

boxes = st.builds(
    lambda x, y, w, h, stops: (x, y, x + w, y + h, stops),
    st.integers(-10, 45), st.integers(-20, 25), st.sampled_from([0.5, 2, 8, 30]), st.sampled_from([0.5, 2, 5]),
    st.sampled_from(["tape", "feet"]),
)  # fmt: skip
sites = st.fixed_dictionaries(
    {"ground": st.lists(boxes, min_size=1, max_size=4), "levels": st.integers(1, 3)},
    optional={"hands": st.just(1), "tape": st.sampled_from([{"length": f"{feet} ft"} for feet in (8, 12, 21, 24)]),
              "room": st.sampled_from([{"inside": "3 ft"}, {"behind": "5 ft"}, {"outside": "1 ft"}])},
)  # fmt: skip


@given(sites)
@settings(max_examples=max(30, settings.default.max_examples * 3 // 10), deadline=None)
def test_every_change_that_is_offered_does_what_it_says(site: dict[str, Any]) -> None:
    rows = [box(f"thing {number}", *where) for number, where in enumerate(site["ground"])]
    job = {**site, "arc": ARC, "ground": rows}
    advice = answer(job, whole=False)["advice"]
    assert advice["method"] is not None or not possible(answer(job, whole=False)) & EVERYDAY
    for change in advice["changes"]:
        mended, feet = dict(job), f"{change['size'] / FOOT:.6f} ft"
        if change["kind"] == "string":
            mended["parallel"] = f"{change['parallel']:.9f} m"
            strung = [one for one in answer(mended, whole=False)["methods"] if one["parallel"] is not None]
            assert any(one["possible"] for one in strung), change
            continue
        if change["kind"] == "obstacle":
            mended["ground"] = [one for one in rows if one["name"] != change["what"]]
        elif change["kind"] == "room":
            mended["room"] = {**job["room"], change["what"]: feet}
        elif change["kind"] == "levels":
            mended["levels"] = next(n for n in range(1, 8) if 2 * 25 * sin(H / 2**n) * FOOT <= change["size"])
        else:
            mended[change["kind"]] = {"length": feet} if change["kind"] == "tape" else int(change["size"])
        if change["halve_first"]:
            mended |= {"method": "ordinates", "halve_first": change["halve_first"]}
        assert not row(answer(job, whole=False), change["method"])["possible"]
        assert row(answer(mended, whole=False), change["method"])["possible"], change


def test_a_string_parallel_to_the_chord_is_offered_where_it_would_do() -> None:
    """A bank along the chord and an oak inside the curve: no string of halving and no offset from the chord gets by."""
    bank = {"name": "bank", "stops": "tape", "outline": [["5 ft", "-1 ft"], ["55 ft", "-1 ft"], ["55 ft", "0.5 ft"],
                                                         ["5 ft", "0.5 ft"]]}  # fmt: skip
    oak = {"name": "oak", "stops": "tape", "at": ["20 ft", "3 ft"], "diameter": "2 ft"}
    job = {"arc": {"chord": "60 ft", "sagitta": "7 ft 6 in"}, "side": "left", "drawn_to": "face", "ground": [bank, oak]}
    advice = answer(job, whole=False)["advice"]
    assert advice["method"] is None
    (change,) = [one for one in advice["changes"] if one["kind"] == "string"]
    assert change["parallel"] == pytest.approx(change["size"])
    assert (
        "is blocked by bank" in advice["text"]
        and "Instead: String 10' 0\" off A-B, on the curve's side." in advice["text"]
    )
    (way,) = answer(job, whole=False)["ways_out"]
    assert way["button"] == "String 10' 0\" off A-B, on the curve's side" and way["fields"]["parallel"] == "10' 0\""
    taken = answer({**job, **way["fields"]}, whole=False)
    assert taken["stops"] == [] and taken["parallel"] == pytest.approx(change["parallel"])
    done = answer({**job, "parallel": f"{change['parallel']} m"}, whole=False)
    assert done["advice"]["method"] == done["method"] == "ordinates" and done["parallel"] == change["parallel"]
    assert done["stops"] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_on_which_side_of_the_chord_a_string_is_stands_on_its_button(language: str) -> None:
    speak(language)
    try:
        sides = [say(f"advice.string_{side}", size="8 ft") for side in ("toward", "behind")]
    finally:
        speak(LANGUAGES[0])
    assert len(set(sides)) == 2 and all("8 ft" in one and "A-B" in one for one in sides)
    assert ("curv" in sides[0]) and ("curv" not in sides[1])


def test_another_start_is_offered_where_it_would_do() -> None:
    """A shed below the corner stops what is set from it; the ends themselves can be taped, and halved between."""
    shed = {"name": "shed", "stops": "tape", "outline": [["-1 ft", "10 ft"], ["19 ft", "10 ft"], ["19 ft", "14 ft"],
                                                         ["-1 ft", "14 ft"]]}  # fmt: skip
    job = {"arc": {"chord": "40 ft", "sagitta": "8 ft"}, "side": "left", "drawn_to": "face", "start": "corner",
           "ground": [shed]}  # fmt: skip
    advice = answer(job, whole=False)["advice"]
    assert advice["method"] is None
    offered = {change["what"]: change for change in advice["changes"] if change["kind"] == "start"}
    assert "ends" in offered and "corner" not in offered
    for start in ("ends", "one-end"):
        mended = answer({**job, "start": start}, whole=False)
        if start in offered:
            assert row(mended, offered[start]["method"])["possible"] and offered[start]["text"] in advice["text"]
            assert mended["stops"] == [] and mended["advice"]["method"]
        else:
            assert mended["advice"]["method"] is None
    ends = answer({**job, "start": "ends", "ground": [box("shed", 3, -1, 17, 20)]}, whole=False)["advice"]
    assert all(change["kind"] != "start" for change in ends["changes"])
