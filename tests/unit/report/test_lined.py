"""A line of several pieces in the answer: the whole line, its edges, the concrete, what is asked, what is refused."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring import BadJob, answer, write_link
from bowstring.faces.paper import paper_html
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES

FOOT = 0.3048
CREEK: dict[str, Any] = {
    "title": "Creek walk",
    "line": [
        {"straight": "20 ft"},
        {"arc": {"radius": "31 ft", "central_angle": 70}, "turn": "left"},
        {"arc": {"radius": "24 ft", "central_angle": 40}, "turn": "right"},
        {"straight": "8 ft 6 in"},
    ],
    "width": "6 ft", "edge": "centre", "drawn_to": "centre", "slab": {"thickness": "4 in"},
}  # fmt: skip


def test_a_walk_of_four_pieces() -> None:
    """By hand: R I for each arc, R +- 3 ft for its edges; the middle's length times the width."""
    told = answer(CREEK)  # type: ignore[arg-type]
    line = told["line"]
    assert line["length"] / FOOT == pytest.approx(83.1289, abs=1e-4)
    assert [piece["kind"] for piece in line["pieces"]] == ["straight", "arc", "arc", "straight"]
    assert [piece["turn"] for piece in line["pieces"]] == [None, "left", "right", None]
    assert [join["station"] / FOOT for join in line["joins"]] == pytest.approx([20, 57.8736, 74.6289], abs=1e-4)
    assert [join["kink"] for join in line["joins"]] == [0, 0, 0]
    edges, pour = told["edges"], told["pour"]
    assert edges and pour and edges["left"] and edges["right"]
    # Left: 20 + 28 (70 deg) + 27 (40 deg) + 8.5; right: 20 + 34 (70 deg) + 21 (40 deg) + 8.5.
    assert edges["left"]["length"] / FOOT == pytest.approx(81.5581, abs=1e-4)
    assert edges["right"]["length"] / FOOT == pytest.approx(84.6996, abs=1e-4)
    assert pour["area"] / FOOT**2 == pytest.approx(83.1289 * 6, abs=1e-3)
    assert pour["volume"] == pytest.approx(pour["area"] * 4 / 12 * FOOT)


def test_an_arc_as_a_line_is_the_arc_alone() -> None:
    alone = answer({"arc": {"radius": "62 ft", "chord": "48 ft"}, "side": "left", "width": "5 ft", "edge": "left",
                    "drawn_to": "face", "slab": {"thickness": "4 in", "waste": 8}})  # fmt: skip
    lined = answer({"line": [{"arc": {"radius": "62 ft", "chord": "48 ft"}, "turn": "right"}], "width": "5 ft",
                    "edge": "left", "drawn_to": "face", "slab": {"thickness": "4 in", "waste": 8}})  # fmt: skip
    assert lined["line"] == alone["line"]
    for name in ("left", "right"):
        one, other = lined["edges"], alone["edges"]
        assert one and other
        assert one[name]["length"] == pytest.approx(other[name]["length"])  # type: ignore[literal-required]
    assert lined["pour"] and alone["pour"]
    for name in ("area", "volume", "order"):
        assert lined["pour"][name] == pytest.approx(alone["pour"][name])  # type: ignore[literal-required]
    assert [stake["name"] for stake in lined["stakes"]] == [stake["name"] for stake in alone["stakes"]]


def test_what_a_piece_cannot_be_is_refused_at_its_place() -> None:
    bad = {**CREEK, "line": [*CREEK["line"][:2], {"arc": {"chord": "9 ft", "radius": "4 ft"}, "turn": "left"}]}
    with pytest.raises(BadJob) as refusal:
        answer(bad)  # type: ignore[arg-type]
    assert refusal.value.field.startswith("line[2].arc")


def test_a_width_that_no_arc_leaves_room_for_is_a_stop_and_gives_no_order() -> None:
    told = answer({**CREEK, "width": "60 ft"})  # type: ignore[typeddict-item]
    assert told["edges"] is None and told["pour"] is None
    row = next(row for row in told["build"] if row["key"] == "edges")
    assert (row["state"], row["panel"]) == ("stop", "slab")


def test_inside_and_outside_say_nothing_of_a_line() -> None:
    for edge in ("inside", "outside"):
        told = answer({**CREEK, "edge": edge, "drawn_to": "face"})  # type: ignore[typeddict-item]
        assert told["edges"] is None
        assert next(row for row in told["build"] if row["key"] == "edges")["state"] == "open"


def test_a_kink_whose_hand_is_not_said_is_asked() -> None:
    kinked = [*CREEK["line"][:3], {"straight": "8 ft 6 in", "kink": 2}]
    lined = answer({**CREEK, "line": kinked})["lined"]  # type: ignore[typeddict-item]
    assert lined and len(lined["asks"]) == 1
    said = answer({**CREEK, "line": [*kinked[:3], {**kinked[3], "turn": "right"}]})["lined"]  # type: ignore[typeddict-item]
    assert said and not said["asks"] and said["pieces"][3]["looks_shown"] == '4-1/4" off in 10 ft'


def test_a_link_of_nine_pieces_fits_two_messages() -> None:
    """306 characters with an address of up to 40."""
    pieces: list[dict[str, Any]] = [{"straight": "12 ft"}]
    for number, radius in enumerate((31, 24, 40, 18, 27)):
        turn = "right" if number % 2 else "left"
        pieces.append({"arc": {"radius": f"{radius} ft", "central_angle": 35 + 5 * number}, "turn": turn})
        if number < 3:
            pieces.append({"straight": f"{9 + number} ft 6 in"})
    job = {**CREEK, "line": pieces, "joints": {"every": "5 ft"}, "grade": {"slope": 2, "high": "B", "low": "left"}}
    assert len(pieces) == 9
    assert len(write_link(job)) + 41 <= 306  # type: ignore[arg-type]


@pytest.mark.parametrize("slab", [{"end_width": "4 ft"}, {"fills": True}])
def test_what_no_line_has_stops_its_slab(slab: dict[str, Any]) -> None:
    told = answer({**CREEK, "slab": {**CREEK["slab"], **slab}})  # type: ignore[typeddict-item]
    assert told["edges"] is None and told["pour"] is None
    assert {row["state"] for row in told["build"] if row["key"] != "line"} <= {"stop", "open"}


@pytest.mark.parametrize("language", LANGUAGES)
def test_straights_typed_beside_a_pads_curve_are_taken_out_and_no_period_is_doubled(language: str) -> None:
    """One arc between straights is a pad that was typed as a line; with two arcs nobody knows which the slab fills."""
    arc: dict[str, Any] = {"arc": {"chord": "16 ft", "sagitta": "3 ft"}, "turn": "right"}
    straight = {"straight": "10 ft"}
    said = {"bowstring": 1, "unit": "ft-in", "drawn_to": "face", "slab": {"fills": True, "thickness": "5 in"}}
    speak(language)
    try:
        panel = say("numbers.line_slab")
        for pieces, sides in (
            ([straight, arc, straight], True),
            ([arc, straight], True),
            ([arc, straight, arc], False),
        ):
            told: Any = answer({**said, "line": pieces, "at": pieces.index(arc) + 1})  # type: ignore[typeddict-item]
            stops = [page["stop"] for page in told["lined"]["pages"] if page["stop"]]
            remedy = "line.no_fill_sides.remedy" if sides else "line.no_fill.remedy"
            assert stops and all(say(remedy, panel=panel) in stop for stop in stops)
            assert ".." not in re.sub("<[^>]+>", "", paper_html(told))
    finally:
        speak("english")
