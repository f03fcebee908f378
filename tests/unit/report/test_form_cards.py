"""The forms' cards: which a job has, that their numbers are the parts' own, and by what each counts as done."""

from __future__ import annotations

import re
from math import cos
from typing import Any

import pytest

from bowstring import Answer, answering
from bowstring.report.forms.cards import CardRow
from bowstring.words import catalogue, speak
from bowstring.words.languages import LANGUAGES
from edge_jobs import FOOT, about_center, shares
from form_jobs import WALL
from helping import about
from slab_jobs import ALL, DEEP, METRIC, WALK
from unit.report.test_cards import MOST, is_said_in_few_words, words

ALL_OF_THEM = ["hubs", "dig", "base", "line", "stakes", "boards", "tops", "pour"]
BASED: dict[str, Any] = {**WALK, "slab": {**WALK["slab"], "base": "4 in"}}
FAR: dict[str, Any] = {**WALK, "offset": "8 ft", "toward": "outside", "driven": "hub"}
TAPERED: dict[str, Any] = {**ALL, "grade": WALK["grade"]}
SIDED: dict[str, Any] = {**METRIC, "side": "right"}
FILL: dict[str, Any] = {"arc": {"radius": "10 ft", "chord": "20 ft"}, "drawn_to": "face", "side": "left",
                        "slab": {"thickness": "4 in", "base": "4 in", "fills": True},
                        "grade": {"slope": 1, "high": "A", "low": "outside"}, "board": {"level": "clear"}}  # fmt: skip
PAD: dict[str, Any] = {**FILL, "slab": {**FILL["slab"], "sides": "15 ft"}}
ENDS: dict[str, Any] = {**FILL, "slab": {**PAD["slab"], "both_ends": True}}
FAR_PAD: dict[str, Any] = {**PAD, "offset": "3 ft", "toward": "outside", "driven": "hub"}
NEAR_FILL: dict[str, Any] = {**FILL, "offset": "6 in", "toward": "outside", "driven": "hub"}
JOBS = {"walk": WALK, "based": BASED, "far": FAR, "all": ALL, "tapered": TAPERED, "deep": DEEP, "metric": SIDED,
        "filled": FILL, "rounded": PAD, "both ends": ENDS, "far rounded": FAR_PAD,
        "near filled": NEAR_FILL}  # fmt: skip


def told(job: dict[str, Any]) -> Answer:
    return answering(job)  # type: ignore[arg-type]


def cards_of(job: dict[str, Any]) -> dict[str, CardRow]:
    return {card["kind"].removeprefix("form_"): card for card in told(job)["form_cards"]}


def marks_of(job: dict[str, Any]) -> dict[str, str]:
    return {what: card["mark"] for what, card in cards_of(job).items()}


def shown(card: CardRow) -> list[str]:
    return [one["shown"] for one in card["numbers"]]


def without(job: dict[str, Any], key: str) -> dict[str, Any]:
    return {name: value for name, value in job.items() if name != key}


@pytest.mark.parametrize(
    ("job", "whats"),
    [
        (WALK, ALL_OF_THEM),
        (ALL, ALL_OF_THEM),
        (without(WALK, "grade"), ALL_OF_THEM),
        (FAR, ALL_OF_THEM[1:]),  # hubs stand clear of the dig already
        (without(WALK, "width"), []),
        (without(WALK, "edge"), []),
        ({**WALK, "slab": {"waste": 8}}, []),  # no thickness
        ({**WALK, "width": "63 ft"}, []),  # no inner edge
        (WALL, []),
        (FILL, ALL_OF_THEM),
        (PAD, ["corners", *ALL_OF_THEM]),
        (FAR_PAD, ["corners", *ALL_OF_THEM[1:]]),
        ({**PAD, "arc": {"radius": "10 ft", "central_angle": "200"}}, []),  # no sides run back from that
        ({**PAD, "slab": {"fills": True, "sides": "15 ft"}}, []),  # no thickness
    ],
)
def test_a_job_has_the_cards_of_what_it_says(job: dict[str, Any], whats: list[str]) -> None:
    answer = told(job)
    assert answer["second_pass"] == whats
    assert [card["kind"] for card in answer["form_cards"]] == [f"form_{what}" for what in whats]
    assert [card["number"] for card in answer["form_cards"]] == list(range(1, len(whats) + 1))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", JOBS)
def test_a_card_is_said_in_few_words(language: str, name: str) -> None:
    speak(language)
    for card in told(JOBS[name])["form_cards"]:
        with about(card["kind"], card["text"]):
            assert is_said_in_few_words(card)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_for_a_card_is_short_enough(language: str) -> None:
    said = {key: text for key, text in catalogue(language).items() if re.fullmatch(r"forming\.[a-z_]+", key)}
    assert len(said) > 20
    assert {key: text for key, text in said.items() if words(text) > MOST} == {}


@pytest.mark.parametrize("name", JOBS)
def test_each_disc_stands_on_the_drawing(name: str) -> None:
    for card in told(JOBS[name])["form_cards"]:
        with about(card["kind"]):
            assert {line["disc"] for line in card["lines"]} == {one["disc"] for one in card["numbers"]}


def test_the_numbers_are_the_parts_own() -> None:
    answer, cards = told(BASED), cards_of(BASED)
    edges, boards, pour, grades = answer["edges"], answer["boards"], answer["pour"], answer["grades"]
    assert edges and boards and pour and grades
    lines = {line["key"]: line["off_shown"] for line in edges["lines"]}
    assert shown(cards["dig"]) == ["1' 0\"", "6' 0\""]
    assert lines["dig_outside"].startswith("1' 0\"") and lines["dig_inside"].startswith("6' 0\"")
    assert shown(cards["base"]) == ['8"', pour["depth_shown"]]
    assert shown(cards["line"]) == [*shown(cards["hubs"]), edges["stick"]["length_shown"]]
    right = cards["line"]["right"]
    assert right and right["shown"] == edges["diagonal_shown"] != ""
    assert shown(cards["stakes"]) == [one["gap_shown"] for one in boards["edges"]]
    notes = " ".join(cards["boards"]["notes"])
    splices = [one["along_shown"] for edge in boards["edges"] for one in edge["splices"]]
    assert len(splices) > 2 and all(one in notes for one in splices)
    assert [one.rstrip(".") for one in shown(cards["tops"])] == re.findall(r'[-\d/]+"', " ".join(grades["conclusion"]))
    level = cards["tops"]["right"]
    assert level and level["shown"] == grades["drop"]
    assert shown(cards["pour"]) == [pour["number"], pour["reach"][-3:][0]["call_shown"]]
    assert pour["bulkhead"] and f"joint {pour['bulkhead']['joint']}." in " ".join(cards["pour"]["notes"])


@pytest.mark.parametrize(
    ("changes", "label", "off"),
    [
        ({}, "hub_outside", 2.0),  # the line is the outer edge: a foot of dig, a foot clear of it
        ({"edge": "inside"}, "hub_inside", 2.0),
        ({"slab": {**WALK["slab"], "overdig": "20 in"}}, "hub_outside", 3.0),
        ({"drawn_to": "centre", "edge": "centre"}, "hub_outside", 5.0),  # two and a half, and two: to the whole foot
    ],
)
def test_a_hub_stands_past_the_dig_and_reads_the_same_from_both_sides(
    changes: dict[str, Any], label: str, off: float
) -> None:
    card = cards_of({**WALK, **changes})["hubs"]
    (number,) = card["numbers"]
    assert number["shown"] == f"{off:.0f}' 0\"" and number["label"] == catalogue()[f"forming.label.{label}"]
    radius, angle = 62 * FOOT, 2 * 0.3974808
    sign = 1 if label == "hub_outside" else -1
    (_first, here), (_next, there) = shares(3)[:2]
    apart = abs(about_center(angle, radius + sign * off * FOOT, here) - about_center(angle, radius, there))
    assert card["right"] and card["right"]["shown"]
    feet, inches = card["right"]["shown"].rstrip('"').split("' ")
    whole, _, part = inches.partition("-")
    top, _, low = (part or "0/1").partition("/")
    read = (int(feet) + (int(whole) + int(top) / int(low)) / 12) * FOOT
    assert read == pytest.approx(apart, abs=FOOT / 12 / 16 * 1.001)


def test_hubs_keep_off_what_stands_there_and_say_so_where_they_cant() -> None:
    shed = {"name": "shed", "stops": "feet", "outline": [["22 ft", "4 ft"], ["26 ft", "4 ft"], ["26 ft", "9 ft"],
                                                         ["22 ft", "9 ft"]]}  # fmt: skip
    assert cards_of({**WALK, "levels": 3, "ground": [shed]})["hubs"]["numbers"][0]["label"].endswith(
        "toward the center"
    )
    both = [shed, {**shed, "name": "well", "outline": [["20 ft", "-9 ft"], ["28 ft", "-9 ft"], ["28 ft", "-1 ft"],
                                                       ["20 ft", "-1 ft"]]}]  # fmt: skip
    notes = cards_of({**WALK, "ground": both})["hubs"]["notes"]
    assert any("M's hub lands on shed" in note for note in notes)


def test_a_card_hangs_on_its_own_numbers_alone() -> None:
    before = marks_of(BASED)
    changes: dict[str, tuple[dict[str, Any], set[str]]] = {
        "base": ({"slab": {**BASED["slab"], "base": "6 in"}}, {"base"}),
        "thickness": ({"slab": {**BASED["slab"], "thickness": "5 in"}}, {"base", "stakes", "boards", "tops", "pour"}),
        "overdig": ({"slab": {**BASED["slab"], "overdig": "14 in"}}, {"hubs", "dig", "line"}),
        "waste": ({"slab": {**BASED["slab"], "waste": 15}}, {"pour"}),
        "slope": ({"grade": {**BASED["grade"], "slope": 3}}, {"tops"}),
        "gap": ({"board": {"gap": "2 ft"}}, {"stakes", "boards"}),
        "width": ({"width": "6 ft"}, {"dig", "line", "stakes", "boards", "tops", "pour", "hubs"}),
        "title": ({"title": "Another"}, set()),
    }
    for name, (change, hang) in changes.items():
        after = marks_of({**BASED, **change})
        with about(name):
            assert {what for what in before if before[what] != after[what]} <= hang
            assert bool(hang) == (before != after)
            assert all(
                before[what] != after[what]
                for what in hang
                if (what in ("base", "dig", "stakes") and name != "thickness") or len(hang) == 1
            )


@pytest.mark.parametrize("job", [WALK, TAPERED, SIDED])
def test_a_mark_is_the_same_in_every_language_and_unit(job: dict[str, Any]) -> None:
    plain = marks_of(job)
    for language in LANGUAGES:
        speak(language)
        for unit in ("ft-in", "ft", "m", "mm"):
            there = answering(job, shown=unit)["form_cards"]  # type: ignore[arg-type]
            assert {card["kind"].removeprefix("form_"): card["mark"] for card in there} == plain


def test_nothing_is_set_without_a_slope_or_a_board_that_bends() -> None:
    open_, stop = cards_of(without(WALK, "grade"))["tops"], cards_of(ALL)["tops"]
    assert open_["text"] == catalogue()["forming.tops_open"] and not open_["numbers"]
    assert stop["text"] == catalogue()["forming.tops_stop"] and not stop["numbers"]
    stiff = cards_of({**WALK, "arc": {"radius": "12 ft", "chord": "14 ft"}, "board": {"kind": "2x4"}})["boards"]
    assert stiff["text"] == catalogue()["forming.boards_none"] and not stiff["numbers"]
    strange = cards_of({**WALK, "board": {"kind": "bendy stuff"}})["boards"]
    assert strange["text"] == catalogue()["forming.boards_which"] and not strange["numbers"]


def test_cards_of_a_filled_slab_have_the_numbers_of_its_parts() -> None:
    """Dug a foot past and a foot clear: hubs 2 ft off. B is 2.4 in and the curve's middle 1.8 in low; half of the
    order must reach the middle of the string."""
    cards = cards_of(FILL)
    assert shown(cards["hubs"]) == ["2' 0\""]
    assert shown(cards["dig"]) == ["1' 0\"", "1' 0\""]
    assert shown(cards["line"]) == ["2' 0\"", "20' 0\""]
    assert cards["line"]["right"] is not None and cards["line"]["right"]["shown"] == "10' 0\""
    assert shown(cards["tops"]) == ['2-3/8"', '1-3/4"']
    assert shown(cards["stakes"])[1] == "4' 0\""
    pour = told(FILL)["pour"]
    assert pour is not None
    assert shown(cards["pour"]) == [pour["number"], pour["reach"][0]["call_shown"]]


def test_cards_of_a_round_ended_pad_prove_its_sides_by_what_no_step_pulls() -> None:
    cards = cards_of(PAD)
    assert shown(cards["line"]) == ["2' 0\"", "15' 0\""]
    assert cards["line"]["right"] is not None and cards["line"]["right"]["shown"] == "25' 0\""
    assert "The sides run 15' 0\" back, square to A to B." in cards["dig"]["notes"]
    assert 'A-2: 2-3/4" high. B-2: 1/4" high. Other tops, joints: paper.' in cards["tops"]["notes"]
    assert shown(cards_of(FAR_PAD)["line"]) == ["3' 0\"", "15' 0\""]
    assert shown(cards_of(NEAR_FILL)["line"])[0] == "2' 6\""  # 1-1/2 ft, up to 2 ft off, and the 6 in


def test_a_hub_of_a_filled_slab_is_as_far_from_its_neighbors_as_the_coordinates_say() -> None:
    answer = told(FILL)
    (_text, number), *_ = [(one["label"], one["shown"]) for one in answer["form_cards"][0]["numbers"]]
    right = answer["form_cards"][0]["right"]
    assert number == "2' 0\"" and right is not None
    step = answer["stakes"][1]["along"] / answer["staked"]["radius"]
    radius = 10 * FOOT
    apart = ((radius + 2 * FOOT) ** 2 + radius**2 - 2 * radius * (radius + 2 * FOOT) * cos(step)) ** 0.5
    assert abs(apart / FOOT - feet_of(right["shown"] or "")) < 1 / 180


def feet_of(text: str) -> float:
    found = re.fullmatch(r"(\d+)' (\d+)(?:-(\d+)/(\d+))?\"", text)
    assert found
    feet, inches, top, low = found.groups()
    return int(feet) + (int(inches) + (int(top) / int(low) if top else 0)) / 12


def test_sides_that_change_bring_back_the_cards_that_hang_on_them() -> None:
    old, new = marks_of(PAD), marks_of({**PAD, "slab": {**PAD["slab"], "sides": "16 ft"}})
    assert {what for what in old if old[what] != new[what]} == {
        "corners", "hubs", "dig", "line", "stakes", "tops", "pour",
    }  # fmt: skip


def test_the_far_corners_have_a_card_before_the_dig_and_no_step_pulls_what_proves_them() -> None:
    """20 by 15 ft: the diagonal is 25 ft by 3-4-5. The sides are squared by 12, 16 and 20 ft, 4 times that triangle."""
    card = cards_of(PAD)["corners"]
    assert card["number"] == 1 and shown(card) == ["15' 0\""]
    assert card["right"] is not None and card["right"]["shown"] == "25' 0\""
    assert "3-4-5: 12' 0\", 16' 0\" back (past the corner), 20' 0\" across." in card["notes"]
    assert "The dig takes them: set again after." in card["notes"]
    far = cards_of(FAR_PAD)["corners"]["notes"]
    assert "A0 and B0 are the concrete's corners, not your stakes." in far and not any("dig" in note for note in far)
    assert "corners" not in cards_of(FILL)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({}, "Pull each pin before the board."),
        ({"driven": "marked"}, "Pull each layout stake before the board."),
        ({"driven": "hub"}, ""),  # its top is nearly flush
        ({"driven": "board"}, ""),
        ({"offset": "1 ft", "toward": "outside"}, ""),  # the boards go elsewhere
        ({"drawn_to": "centre", "edge": "centre"}, ""),
    ],
)
def test_what_stands_in_the_boards_place_is_pulled_first(changes: dict[str, Any], said: str) -> None:
    """Half a pin that is centered on the line stands where the board's face goes: common practice, no source."""
    for job in (WALK, FILL) if "edge" not in changes else (WALK,):
        cards = {card["kind"]: card for card in told({**job, **changes})["form_cards"]}
        notes = [note for note in cards["form_boards"]["notes"] if note.startswith("Pull each")]
        assert notes == [said] * bool(said)
        edges = told({**job, **changes})["edges"]
        assert edges is not None
        forms = [text for text in edges["form"] if text.startswith(("Pull each", "Screw the board"))]
        if said:
            assert len(forms) == 1 and forms[0].endswith("was. Mark the place on top.")
