"""A wall along a line, hubs off it: its distances off the hubs, its sizes and depths, by sums of the test's own."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from typing import Any

import pytest

from bowstring.faces.build import build_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import CREEK, ONE_ARC
from radius_wall import WALL as RADIUS_WALL
from slab_jobs import WALK

WALL: dict[str, Any] = {
    "bowstring": 1, "drawn_to": "face", "width": "10 in", "edge": "left", "tolerance": "1/4 in",
    "line": [{"straight": "12 ft"}, {"arc": {"radius": "28 ft", "central_angle": "75"}, "turn": "right"}],
    "slab": {"poured": "wall", "thickness": "3 ft 6 in", "footing_width": "30 in", "footing_depth": "12 in"},
    "joints": {"every": "10 ft"}, "grade": {"from": "104.50 ft", "instrument": "109.20 ft", "slope": 0, "cross": 0},
}  # fmt: skip
OFF: dict[str, Any] = {"offset": "3 ft", "toward": "outside", "driven": "hub"}


@pytest.fixture(autouse=True)
def _english() -> Iterator[None]:
    yield
    speak("english")


def page(job: dict[str, Any], key: str) -> Any:
    return next(one for one in answer_to(job)["lined"]["pages"] if one["key"] == key)


def on_paper(job: dict[str, Any]) -> str:
    html = re.sub(r"</?(span|b)\b[^>]*>", "", forms_sides(answer_to(job), "May 31"))
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).replace("\N{NO-BREAK SPACE}", " ").split())


def test_a_walls_paper_signs_off_its_footing_and_its_dig() -> None:
    """By hand: 42 in of wall and 12 of footing are 54: dug 4 ft 6 in under the top, 104.50 - 4.50 = 100.00."""
    told = on_paper(WALL)
    for row in ("Footing width 2' 6\"", "Footing thickness 1' 0\"", "Wall height 3' 6\"",
                "Top of footing under top 3' 6\"", "Bottom of dig under top 4' 6\"",
                "Wall 10\" thick, 3' 6\" high. Footing 2' 6\" x 1' 0\"."):  # fmt: skip
        assert row in told, row
    assert "bottom of dig 100.00" in told and "bottom of dig 9.20" in told
    for of_a_slab in ("Base under top", "Sawing", "Steepest edge", "Slab 10", "Stakes screwed", "Skip them"):
        assert of_a_slab not in told, of_a_slab


def test_a_base_under_the_footing_is_dug_too() -> None:
    told = on_paper({**WALL, "slab": {**WALL["slab"], "base": "4 in"}})
    assert "Underside of footing under top 4' 6\"" in told and "Bottom of dig under top 4' 10\"" in told


def test_a_wall_without_its_footings_depth_has_no_depth_of_dig() -> None:
    bare = {key: value for key, value in WALL["slab"].items() if not key.startswith("footing")}
    told = on_paper({**WALL, "slab": bare})
    assert "Wall height 3' 6\"" in told and "under top" not in told


def test_a_slabs_paper_is_as_it_was() -> None:
    told, answer = on_paper(CREEK), answer_to(CREEK)
    assert "Base under top: avg., least" in told and "Sawing" in told and "Steepest edge" in told
    assert answer["lined"]["wall_shown"] == "" and answer["lined_sheet"]["wall_signs"] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_signs_a_walls_dig(language: str) -> None:
    speak(language)
    told = on_paper({**WALL, "title": language})  # answers are kept, whatever the language
    assert f"{say('lined.sign_dig')} 4' 6\"" in told


def test_hubs_off_a_wall_say_where_its_faces_footing_and_dig_are() -> None:
    """By hand, inches to the right of hubs 36 left of the left face: faces at 36 and 46; a 30-in footing centered on 41
    reaches 26 and 56; dug 12 past it, 14 and 68."""
    for told in (" ".join(page({**WALL, **OFF}, "edges")["lines"]), on_paper({**WALL, **OFF})):
        assert "wall faces 3' 0\" and 3' 10\" to the RIGHT" in told
        assert "Footing edges 2' 2\" and 4' 8\" to the RIGHT" in told
        assert "Dig lines 1' 2\" and 5' 8\" to the RIGHT" in told
        assert '0": one face' not in told and "The line is the left face" not in told


def test_hubs_on_the_other_hand_of_a_wall() -> None:
    """Toward the center, to the right: 36 in from the left face is 26 from the right one; both are left of the hubs."""
    told = " ".join(page({**WALL, **OFF, "toward": "centre"}, "edges")["lines"])
    assert "wall faces 2' 2\" and 3' 0\" to the LEFT" in told
    assert "Footing edges 1' 4\" and 3' 10\" to the LEFT" in told and 'Dig lines 4" and 4\' 10" to the LEFT' in told


def test_a_slabs_stakes_off_its_line_are_told_so_too() -> None:
    """The creek walk runs 3 ft to each side of its line; its first arc turns left and its stakes stand 5 ft outside,
    to the right: edges 2 and 8 ft to the left of them, dug 1 ft more. A walk drawn to its edge: 2 ft off that."""
    told = " ".join(page({**CREEK, "offset": "5 ft", "toward": "outside"}, "edges")["lines"])
    assert "edges 2' 0\" and 8' 0\" to the LEFT" in told and "Dig lines 1' 0\" and 9' 0\" to the LEFT" in told
    assert "stick" not in told
    near = " ".join(page({**CREEK, "offset": "1 ft", "toward": "outside"}, "edges")["lines"])
    assert "edges 4' 0\" to the LEFT and 2' 0\" to the RIGHT" in near
    edge = " ".join(page({**ONE_ARC, "offset": "2 ft", "toward": "outside"}, "edges")["lines"])
    assert "edges 2' 0\" and" in edge and say("lined.first_left", width="5' 0\"") not in edge


def test_stakes_on_the_line_keep_the_stick() -> None:
    told = " ".join(page(WALL, "edges")["lines"])
    assert '0": one face; 10": the other face' in told and "Off your stakes" not in told


def test_each_panels_concrete_is_its_own() -> None:
    """By hand, cubic yards of a wall 10 in by 42 in: two panels of 6 ft of straight take 0.65 each; the arc's middle,
    on R 27 ft 7 in over 75 degrees, is 36.107 ft in four: 0.976 each. Their average is none of them."""
    each = 6 * (10 / 12) * 3.5 / 27, (28 - 5 / 12) * 1.3089969389957472 / 4 * (10 / 12) * 3.5 / 27
    told = " ".join(page(WALL, "pour")["lines"])
    assert f"from *{each[0]:.2f} yd³* to *{each[1]:.2f} yd³*" in told and "Each panel takes" not in told


def test_joints_of_a_wall_that_waits_go_by_no_slabs_thickness() -> None:
    """Its 3 ft 6 in are its height: no spacing hangs on them, on a line and on one arc."""
    waits = {key: value for key, value in WALL.items() if key != "edge"}
    alone = {key: value for key, value in waits.items() if key != "line"} | {
        "arc": WALL["line"][1]["arc"],
        "side": "left",
    }
    for job in (waits, alone):
        row = next(one for one in answer_to(job)["build"] if one["key"] == "joints")
        assert row["state"] == "open" and row["more"] == say("walled.joints")
    assert "Base under top" not in on_paper(waits) and "Bottom of dig under top 4' 6\"" in on_paper(waits)


def test_a_wall_whose_stakes_stand_clear_gets_them_off_its_straight_too_and_its_line_again_on_the_footing() -> None:
    """The arc's cards set A to B; at the straight's start nothing is set, and the wall there would have no stake."""
    job = {
        **WALL,
        **OFF,
        "line": [WALL["line"][0], {"arc": {"radius": "34 ft", "central_angle": "60"}, "turn": "right"}],
    }
    lines, told = page(job, "edges")["lines"], on_paper(job)
    for text in (say("lined.hubs_straight", places=say("lined.hub_start")), say("walled.line_first"),
                 say("walled.line_again_stakes")):  # fmt: skip
        assert text in lines and text in told, text
    bare = {key: value for key, value in WALL["slab"].items() if not key.startswith("footing")}
    assert say("walled.line_first") not in page({**job, "slab": bare}, "edges")["lines"]
    on_line = {key: value for key, value in job.items() if key not in OFF}
    assert say("walled.line_again") in page(on_line, "edges")["lines"]
    assert not any(
        "No arc's card" in text for text in page(on_line, "edges")["lines"]
    )  # there the hubs' own table does


def test_a_walls_forms_are_no_boards_on_paper_and_sentences_begin_with_capitals() -> None:
    told = on_paper(WALL)
    assert "Forms. The wall's forms are designed; the footing's boards aren't listed. " in told
    assert say("walled.designed") in told and "Boards." not in told and ". bracing" not in told
    answer = answer_to(WALL)
    assert ">Forms <b>" in build_html(answer, "boards") and ">Boards <b>" not in build_html(answer, "boards")  # type: ignore[arg-type]
    deep = on_paper({**CREEK, "slab": {"poured": "slab", "thickness": "4 ft"}})
    assert "Boards. This deep, forms are designed; bracing too" in deep


def test_joints_are_marked_on_a_walls_face_of_no_board() -> None:
    """A wall's form is plywood of no known thickness: nothing runs longer by a board's."""
    lines = page(WALL, "joints")["lines"]
    assert say("walled.taped_line") in lines and not any("board" in text for text in lines)
    alone = answer_to(RADIUS_WALL)["joints"]
    assert alone["taped"] == say("walled.taped") and (alone["longer"], alone["longer_shown"]) == (0.0, "")
    html = build_html(answer_to(RADIUS_WALL), "joints")  # type: ignore[arg-type]
    assert "board" not in re.sub(r"<[^>]+>", " ", html)
    assert "board" in answer_to(WALK)["joints"]["taped"]
