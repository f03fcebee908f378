"""Both edges along a line, told: a walk by hand, kinks, what is tight or doesn't go, and what it waits for."""

from __future__ import annotations

from math import radians, tan
from typing import Any

import pytest

import bowstring
from bowstring.words import speak
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK

FOOT = 0.3048
ROW, MORE = 34, 40
"""Letters that a row has room for on a narrow phone."""


def answered(job: dict[str, Any], **other: Any) -> Any:
    return bowstring.answering({**job, **other})  # type: ignore[typeddict-item]


def page(job: dict[str, Any] = CREEK, **other: Any) -> Any:
    return next(one for one in answered(job, **other)["lined"]["pages"] if one["key"] == "edges")


def straights(*kinks: str, edge: str = "centre") -> dict[str, Any]:
    """Straights of 12 ft with kinks between them, an arc after them, 6 ft wide."""
    line = [{"straight": "12 ft"}, *({"straight": "12 ft", "kink": kink} for kink in kinks),
            {"arc": {"radius": "40 ft", "central_angle": "20"}, "turn": "left"}]  # fmt: skip
    drawn = "centre" if edge == "centre" else "face"
    return {**CREEK, "line": line, "edge": edge, "drawn_to": drawn}


def test_a_walk_by_hand() -> None:
    """Left R 28 and 27 ft, right R 34 and 21 ft, through 70 and 40 degrees: 34.208, 18.850, 41.539, 14.661 ft."""
    told = page()
    left, right, _hubs = told["tables"]
    assert left["rows"] == [
        ["Straight 1", "straight", "20' 0\"", "20' 0\""],
        ["Arc 2", "28' 0\"", "34' 2-1/2\"", "54' 2-1/2\""],
        ["Arc 3", "27' 0\"", "18' 10-1/4\"", "73' 0-3/4\""],
        ["Straight 4", "straight", "8' 6\"", "81' 6-3/4\""],
    ]
    assert [row[1:] for row in right["rows"]] == [
        ["straight", "20' 0\"", "20' 0\""],
        ["34' 0\"", "41' 6-1/2\"", "61' 6-1/2\""],
        ["21' 0\"", "14' 7-7/8\"", "76' 2-3/8\""],
        ["straight", "8' 6\"", "84' 8-3/8\""],
    ]
    assert (told["state"], told["short"]) == ("usual", "Edges 81' 6-3/4\", 84' 8-3/8\"")
    assert told["more"] == "left and right; 6' 0\" wide"
    assert told["conclusion"] == "The left edge is *81' 6-3/4\"* long, the right edge *84' 8-3/8\"*, 6' 0\" apart."
    lines = " ".join(told["lines"])
    assert '0": the line; 3\' 0": face of each board; 3\' 0-3/4": its stakes' in lines
    assert "The stick gives each edge, 3' 0\" off the line." in lines and "miter" not in lines


def test_one_arc_as_a_line_has_the_edges_of_the_arc_alone() -> None:
    alone, told = answered(WALK)["edges"], page(ONE_ARC)
    rows = {line["key"]: line for line in alone["lines"]}
    for table, key in zip(told["tables"][:2], ("outside", "inside"), strict=True):
        assert [row[1] for row in table["rows"]] == [rows[key]["radius_shown"]]
    made = answered(ONE_ARC)["edges"]
    assert made["left"]["length"] == pytest.approx(alone["outside"]["length"])
    assert made["right"]["length"] == pytest.approx(alone["inside"]["length"])
    assert made["area"] == pytest.approx(alone["area"])
    assert "Set the left board first: the line is its face. The stick gives the right one, 5' 0\" off." in told["lines"]
    assert alone["stick"]["slip_text"] in told["lines"]


def test_a_miter_is_told_by_hand() -> None:
    """3 ft off the line a kink of 30 degrees runs on, or takes off, 3 tan 15 = 0.8038 ft; 6 ft off it is twice that."""
    assert round(3 * tan(radians(15)), 4) == 0.8038
    (both,) = (line for line in page(straights("30 left"))["lines"] if "Straight 2 begins" in line)
    assert both == (
        "Where Straight 2 begins, both forms meet on a miter. "
        'The right one runs 9-5/8" past square across the kink, on both pieces. '
        'The left one stops short: 9-5/8" before it, 9-5/8" after it.'
    )
    told = page(straights("30 left"))["tables"][:2]
    assert [table["rows"][0][2] for table in told] == ["11' 2-3/8\"", "12' 9-5/8\""]
    (run,) = (line for line in page(straights("30 left", edge="left"))["lines"] if "Straight 2 begins" in line)
    assert "the right form runs 1' 7-1/4\" past square" in run and "left one turns at the line's own corner" in run
    (cut,) = (line for line in page(straights("30 right", edge="left"))["lines"] if "Straight 2 begins" in line)
    assert "the right form stops short of square across the kink: 1' 7-1/4\" before it, 1' 7-1/4\" after it" in cut
    assert sum("begins" in line for line in page(KINKED)["lines"]) == 2


def test_a_tight_inner_edge_is_named() -> None:
    sharp = [*CREEK["line"][:2], {"arc": {"radius": "8 ft", "central_angle": "40"}, "turn": "right"}]
    told = page(line=sharp)
    assert (told["state"], told["more"]) == ("near", "inner R 5' 0\" at piece 3: tight")
    assert "Arc 3 has a tight inner edge. If you can reach its center, swing it at 5' 0\"." in told["lines"]
    assert not any("dig reaches" in line for line in told["lines"])
    assert any("Inside Arc 3 the dig reaches" in line for line in page(line=sharp, slab={"overdig": "5 ft"})["lines"])


def test_what_does_not_go_is_a_stop() -> None:
    told = page(width="60 ft")
    assert (told["state"], told["short"], told["panel"]) == ("stop", "No slab along this line", "slab")
    assert "Piece 3 has no right edge" in told["stop"] and "smaller width" in told["stop"] and told["tables"] == []
    for key in ("joints", "pour"):
        other = next(one for one in answered(CREEK, width="60 ft")["lined"]["pages"] if one["key"] == key)
        assert other["state"] == "stop" and other["stop"] == told["stop"] and other["tables"] == []


def test_what_it_waits_for() -> None:
    said = {key: value for key, value in CREEK.items() if key not in ("width", "edge", "drawn_to")}
    assert page(said)["short"] == "Needs the width and the side"
    assert page(said, width="5 ft")["short"] == "Needs the side"
    assert page(said, edge="left")["short"] == "Needs the width"


def test_a_kink_whose_hand_is_not_said_gives_no_edge_no_joint_and_no_order() -> None:
    kinked = [*CREEK["line"][:3], {"straight": "8 ft 6 in", "kink": "2"}]
    told = answered(CREEK, line=kinked)
    assert told["edges"] is None and told["joints"] is None and told["pour"] is None
    for one in told["lined"]["pages"]:
        if one["key"] in ("edges", "joints", "pour"):
            assert (one["state"], one["panel"], one["tables"]) == ("open", "pieces", [])
            assert "does piece 4 kink left or right" in one["more"]


def test_a_second_width_is_a_stop_of_edges_joints_and_concrete() -> None:
    told = answered(CREEK, slab={**CREEK["slab"], "end_width": "4 ft"})
    assert told["edges"] is None and told["joints"] is None and told["pour"] is None
    for one in told["lined"]["pages"]:
        if one["key"] in ("edges", "joints", "pour"):
            assert (one["state"], one["tables"]) == ("stop", []) and one["stop"]


def test_a_slab_over_itself_is_told() -> None:
    ring = [{"straight": "30 ft"}, {"arc": {"radius": "20 ft", "central_angle": "80"}, "turn": "right"},
            {"arc": {"radius": "25 ft", "central_angle": "330"}, "turn": "left"}, {"straight": "30 ft"}]  # fmt: skip
    told = page(line=ring)
    assert told["state"] == "near" and "The slab lies over itself" in told["lines"][0]
    pour = answered(CREEK, line=ring)["lined"]["pages"][-1]
    assert pour["state"] == "near" and any("counts that place twice" in line for line in pour["lines"])


@pytest.mark.parametrize("language", ["english", "british", "spanish"])
@pytest.mark.parametrize("job", [CREEK, KINKED, METRIC_LINE, ONE_ARC])
def test_rows_are_short_in_every_language(language: str, job: dict[str, Any]) -> None:
    speak(language)
    try:
        for more in ({}, {"joints": {"panels": 1}}, {"joints": {"panels": 40}}, {"slab": {}}):
            for one in answered(job, **more)["lined"]["pages"]:
                if one["key"] in ("edges", "joints", "pour"):
                    assert len(one["short"].replace("~", "")) <= ROW, one["short"]
                    assert len(one["more"].replace("~", "")) <= MORE, one["more"]
    finally:
        speak("english")


def _told(job: dict[str, Any]) -> str:
    return " ".join(page(job)["lines"]).replace("*", "")


def test_the_dig_is_told_below_the_form_tops_at_the_apron_too() -> None:
    # By hand: 4 in of slab on 4 in of base is 8 in; 6 in at the apron on the same base, 10 in.
    told = _told(FIVE)
    assert 'Dig to 8" below the form tops: 4" of slab on 4" of base.' in told
    assert 'dig 2" deeper between the forms. There it is 10" below the form tops.' in told
    sheet = answered(FIVE)["lined_sheet"]
    assert 'There it is *10"*' in " ".join(one for part in sheet["parts"] for one in part["lines"])
    assert sheet["apron_shown"] == '6"'


@pytest.mark.parametrize(
    ("slab", "told"),
    [
        ({"thickness": "4 in"}, 'Dig to 4" below the form tops, deeper for a base: none is given.'),
        ({"thickness": "4 in", "base": "0 in"}, 'Dig to 4" below the form tops: there is no base.'),
        ({"thickness": "5 in", "base": "3-1/2 in"}, 'Dig to 8-1/2" below the form tops: 5" of slab on 3-1/2" of base.'),
        (
            {"thickness": "4 in", "base": "4 in", "edge_width": "8 in", "edge_depth": "10 in"},
            'Along both forms, 8" wide, to 1\' 2".',
        ),
    ],
)
def test_how_deep_is_said_by_what_the_job_says(slab: dict[str, str], told: str) -> None:
    assert told in _told({**FIVE, "slab": slab})


def test_without_a_thickness_no_depth_is_told() -> None:
    assert "below the form tops" not in _told({**FIVE, "slab": {"base": "4 in"}})
