"""The pieces before and after the staked arc: a job of what is typed, and back; another arc staked, and back."""

from __future__ import annotations

import json
import re
from html import unescape
from math import cos, radians, sin
from typing import Any, cast

import pytest

from bowstring import answer, read_link, write_link
from bowstring.faces.one_line import OPEN
from bowstring.faces.questions import ASKS, LATE
from bowstring.job.form import ArcForm, JobForm
from bowstring.page.calls import handle
from bowstring.page.fields import field_of, fields_of_job, job_of_fields
from bowstring.page.measuring import shown_numbers
from bowstring.page.pieces import staked_at
from bowstring.page.unit import unit_note
from bowstring.sheet.of_line import title_of
from bowstring.units.tape import make_tape
from bowstring.words import say

CREEK: JobForm = {
    "bowstring": 1,
    "title": "Creek walk",
    "line": [
        {"straight": "20 ft"},
        {"arc": {"radius": "31 ft", "central_angle": "70"}, "turn": "left"},
        {"arc": {"radius": "24 ft", "central_angle": "40"}, "turn": "right", "kink": "2 left"},
        {"straight": "8 ft 6 in", "kink": "3", "turn": "right"},
    ],
    "width": "6 ft",
    "edge": "centre",
    "drawn_to": "centre",
    "slab": {"thickness": "4 in"},
}


def numbers(fields: dict[str, str]) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(handle("numbers", json.dumps({"fields": fields, "focus": ""})))
    return told


def test_a_line_comes_back_from_its_fields() -> None:
    again = job_of_fields(fields_of_job(CREEK))
    assert (again["line"], again["at"], again["start"]) == (CREEK["line"], 2, "one-end")
    assert answer(again)["line"] == answer(CREEK)["line"]
    assert job_of_fields(fields_of_job(again)) == again
    assert read_link(write_link(again))["line"] == CREEK["line"]


@pytest.mark.parametrize(("typed", "kept"), [
    ("2 izquierda", "2 left"), ("2° a la derecha", "2° right"), ("Izq 2.5", "left 2.5"), ("2 DER", "2 right"),
    ("2 left", "2 left"), ("2 izquierdas", "2 izquierdas"),
])  # fmt: skip
def test_a_kinks_hand_may_be_typed_in_spanish(typed: str, kept: str) -> None:
    """The last is no word for a hand: it stays as typed, and the job refuses it."""
    fields = {**fields_of_job(CREEK), "kink": typed, "after-0-kink": typed}
    pieces = cast("list[dict[str, Any]]", job_of_fields(fields)["line"])
    assert (pieces[1]["kink"], pieces[2]["kink"]) == (kept, kept)


def test_of_an_arc_alone_nothing_changes() -> None:
    assert "line" not in job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5 ft", "side": "left"})


@pytest.mark.parametrize("at", [2, 3])
def test_another_arc_is_staked_and_what_was_done_comes_back(at: int) -> None:
    fields = {**fields_of_job(CREEK), "levels": "3", "done": "1 2", "arc-degree": "", "ends-A": "oak"}
    there = staked_at(fields, 3)
    # It kinks where it begins: no straight before it shows its tangent, so it is set out from its ends.
    assert (there["arc-radius"], there["start"], there["side"]) == ("24 ft", "ends", "left")
    assert there["kink"] == "2 left" and "turn" not in there
    assert not {"levels", "done", "ends-A"} & there.keys()
    assert job_of_fields(there)["line"][1]["work"] == {"ends": {"A": "oak"}, "levels": 3}
    assert answer(job_of_fields(there))["line"] == answer(CREEK)["line"]
    back = staked_at({**there, "levels": "2"}, at)
    if at == 2:
        assert back == {name: text for name, text in {**fields, **_moved(back)}.items() if text}
    else:
        assert back["levels"] == "2"


def _moved(back: dict[str, str]) -> dict[str, str]:
    """What was said of the other arc meanwhile: it is kept in its row."""
    return {name: text for name, text in back.items() if name == "after-0-more"}


def test_stakes_beside_the_line_stay_on_one_hand_of_it() -> None:
    """The first arc turns left, the next one right: the same hand is inside of the one and outside of the other."""
    fields = {**fields_of_job(CREEK), "offset": "2 ft", "toward": "centre"}
    there = staked_at(fields, 3)
    assert there["toward"] == "outside" and staked_at(there, 2)["toward"] == "centre"


def test_files_of_two_arcs_are_told_apart() -> None:
    fields = {**fields_of_job(CREEK), "offset": "0", "method": "halving", "levels": "1"}
    for at, own in ((2, fields), (3, {**staked_at(fields, 3), "method": "halving", "levels": "1"})):
        made = json.loads(handle("hand_file", json.dumps({"fields": own, "kind": "people"})))
        assert made["name"] == f"bowstring-creek-walk-arc-{at}-stakes.csv"
        assert f"\n{at}-M," in made["text"].replace("\r", "")


def test_a_straight_or_nothing_is_never_staked() -> None:
    fields = fields_of_job(CREEK)
    assert staked_at(fields, 1) == staked_at(fields, 2) == staked_at(fields, 9) == fields


def test_an_arc_is_kept_whole_that_has_more_than_its_row_shows() -> None:
    points: ArcForm = {"points": [["0", "0"], ["10 ft", "2 ft"], ["20 ft", "0"]]}
    large: ArcForm = {"radius": "30 ft", "chord": "20 ft", "greater": True}
    job: JobForm = {"line": [{"arc": points, "turn": "right"}, {"arc": large, "turn": "left"}]}
    assert job_of_fields(fields_of_job(job))["line"] == job["line"]
    fields = staked_at(fields_of_job(job), 2)
    assert fields["greater"] and job_of_fields(fields)["line"] == job["line"]
    assert job_of_fields(staked_at(fields, 1))["line"] == job["line"]


def test_what_is_wrong_is_told_at_its_own_field() -> None:
    fields = fields_of_job(CREEK)
    for name, text in (("before-0-straight", "x"), ("after-0-radius", "x"), ("after-1-kink", "400")):
        assert [error["id"] for error in numbers({**fields, name: text})["errors"]] == [name]
    assert field_of("line[1].arc.radius", fields) == "arc-radius"
    assert field_of("line[2].kink", fields) == "after-0-kink"
    both = numbers({**fields, "before-0-radius": "9 ft"})["errors"]
    assert [error["id"] for error in both] == ["before-0-straight"]


def test_numbers_that_are_kept_unseen_are_told_when_the_unit_changes() -> None:
    there = staked_at({**fields_of_job(CREEK), "spacing": "5"}, 3)
    assert "5" not in unit_note(there)
    told = unit_note({**there, "unit": "m", "unit_before": "ft-in"})
    assert told.count("<li>") == 1 and say("form.spacing") in told


def test_the_face_counts_the_pieces() -> None:
    told = numbers(fields_of_job(CREEK))
    assert told["lined"] and told["lines"]["pieces"]["text"] == "Before: 1 straight, after: 1 arc, 1 straight"
    arc = {"radius": "30 ft", "central_angle": "20", "turn": "left"}
    many = {f"after-{row}-{name}": text for row in (0, 2, 4) for name, text in arc.items()}
    many |= {f"after-{row}-straight": "9 ft" for row in (1, 3)}
    kept = {name: text for name, text in fields_of_job(CREEK).items() if not name.startswith("after-")}
    told = numbers({**kept, **many})
    assert told["lines"]["pieces"]["text"] == "Before: 1 straight, after: 3 arcs, 2 straights"  # in turn
    assert not numbers({"arc-chord": "38 ft"})["lined"]


def panel(fields: dict[str, str]) -> dict[str, str]:
    told = json.loads(handle("numbers", json.dumps({"fields": fields, "focus": "", "panel": "pieces"})))
    return {name: plain(text) for name, text in told["echoes"].items()}


def plain(html: str) -> str:
    return unescape(re.sub("<svg.*?</svg>|<[^>]*>", "", html)).strip()


def test_the_panel_tells_each_piece_where_it_meets_the_one_before_and_where_the_line_ends() -> None:
    """The ends by coordinates: each piece walked by itself, in feet, from the start along the x axis."""
    told = panel(fields_of_job(CREEK))
    x, y, way = 20.0, 0.0, 0.0
    for radius, turn in ((31.0, 70.0), (24.0, -40.0)):
        way += 2 * (turn < 0)  # the second arc kinks 2 degrees to the left
        sign = 1 if turn > 0 else -1
        centre = (x - sign * radius * sin(radians(way)), y + sign * radius * cos(radians(way)))
        way += turn
        x, y = centre[0] + sign * radius * sin(radians(way)), centre[1] - sign * radius * cos(radians(way))
    way -= 3  # and the last straight 3 to the right
    x, y = x + 8.5 * cos(radians(way)), y + 8.5 * sin(radians(way))
    ahead, off = (make_tape("ft-in", None).show(length * 0.3048) for length in (x, y))
    assert told["line-ends"] == say("lined.ends_left", first=say("lined.first_straight"), ahead=ahead, off=off)
    assert told["line-long"].endswith(say("pieces.ends", angle=f"{way:g}°", hand="left"))
    assert told["own-said"] == say("pieces.own", radius="31' 0\"", angle="70°", hand="LEFT")
    assert told["after-0-long"] == make_tape("ft-in", None).show(24 * radians(40) * 0.3048)
    assert "before-0-join" not in told and told["own-join"] == "Tangent, no kink"
    assert told["after-0-join"].startswith("Kink 2° left") and told["after-1-join"].startswith("Kink 3° right")
    assert '4-1/4" off in 10 ft' in told["after-0-join"]  # 2 x 10 ft x sin 1 degree = 4.19 in


def test_a_curve_that_reverses_is_told_and_one_that_goes_on_isn_t() -> None:
    fields = {name: text for name, text in fields_of_job(CREEK).items() if name != "after-0-kink"}
    assert "reverses" in panel(fields)["after-0-join"]
    assert "reverses" not in panel({**fields, "after-0-turn": "left"})["after-0-join"]


def test_while_a_piece_is_half_typed_the_others_are_told_and_nothing_is_drawn() -> None:
    fields = fields_of_job(CREEK)
    del fields["after-0-central_angle"]
    told = panel(fields)
    assert told["line-long"] == say("pieces.waits") and "line-drawn" not in told and "line-ends" not in told
    assert "after-0-long" not in told and told["own-long"] and "2 left" in told["after-0-join"]


def test_the_panel_tells_nothing_while_it_is_shut_nor_of_an_arc_alone() -> None:
    told = json.loads(handle("numbers", json.dumps({"fields": fields_of_job(CREEK), "focus": ""})))
    assert "line-long" not in told["echoes"]
    assert "line-long" not in panel({"arc-chord": "38 ft", "arc-sagitta": "5 ft", "side": "left"})


def test_an_arc_without_its_turn_is_named() -> None:
    fields = {**fields_of_job(CREEK), "after-0-turn": ""}
    assert panel(fields)["line-long"] == say("pieces.waits_turn", number=3)
    assert panel({**fields, "after-0-turn": "right", "after-0-radius": ""})["line-long"] == say("pieces.waits")


def test_the_edges_of_a_line_are_asked_by_hand() -> None:
    """The center of an arc that turns left is on the left of who walks it: toward it is the left edge."""
    fields = fields_of_job({key: value for key, value in CREEK.items() if key != "title"})
    for at, (inner, outer) in ((2, ("left", "right")), (3, ("right", "left"))):
        told = numbers(staked_at(fields, at))["echoes"]["offset"]
        buttons = re.findall(r"data-fill='([^']*)'|data-fill=\"([^\"]*)\"", told)
        first, second = (unescape("".join(one)) for one in buttons[:2])
        assert '"centre"' in first and '"outside"' in second
        assert told.index(say(f"numbers.edge_{inner}", half="3' 0\"").split(",")[0]) < told.index(
            say(f"numbers.edge_{outer}", half="3' 0\"").split(",")[0]
        )


def test_a_line_without_a_title_has_one_name_whichever_arc_is_staked() -> None:
    fields = fields_of_job({key: value for key, value in CREEK.items() if key != "title"})
    assert {numbers(staked_at(fields, at))["called"] for at in (2, 3)} == {say("page.called_line", count=4)}
    for at in (2, 3):
        made = answer(job_of_fields(staked_at(fields, at)))
        assert title_of(made) == say("sheet.untitled_line", count=4)


def test_a_line_may_begin_with_its_straights_and_says_what_its_arc_lacks() -> None:
    """Nothing is typed of the arc yet, then its numbers, then its hand: the row of the arc says what is to be given."""
    typed = {"before-0-straight": "12 ft", "after-0-straight": "20 ft"}
    assert panel(typed)["own-said"] == say("pieces.own_waits")
    typed |= {"arc-radius": "40 ft"}
    assert panel(typed)["own-said"] == say("pieces.own_waits")
    typed |= {"arc-arc_length": "30 ft"}
    assert panel(typed)["own-said"] == say("pieces.own_hand")
    whole = panel({**typed, "side": "right"})
    assert whole["own-said"] not in (say("pieces.own_hand"), say("pieces.own_waits"))
    assert "62' 0\"" in whole["line-long"]  # 12 + 30 + 20


def test_the_pieces_are_the_first_question_and_stand_there_before_any_number() -> None:
    assert ASKS[0] == "pieces" and "pieces" not in LATE
    assert numbers({})["lines"]["pieces"]["text"] == say("numbers.pieces_usual")


def test_an_arc_of_a_line_without_its_hand_is_a_question_and_no_stop() -> None:
    typed = {"before-0-straight": "12 ft", "arc-radius": "40 ft", "arc-arc_length": "30 ft", "drawn_to": "face"}
    face = numbers(typed)
    assert face["lines"]["hand"]["state"] == OPEN and face["ask"] == "hand"
    assert face["state"]["text"] == say("numbers.state_open", count=1)


@pytest.mark.parametrize("typed", ["12' chord", "chord 12 ft", "cuerda 12 ft"])
def test_a_chord_in_another_arcs_angle_is_shown_its_own_box(typed: str) -> None:
    fields = {"arc-radius": "30 ft", "arc-chord": "20 ft", "turn": "left", "start": "one-end",
              "after-0-radius": "25 ft", "after-0-central_angle": typed, "after-0-turn": "right"}  # fmt: skip
    errors: Any = shown_numbers({"fields": fields, "focus": "", "short": False, "drawn": False})["errors"]  # type: ignore[typeddict-item]
    told = {error["id"]: error["text"] for error in errors}
    assert told["after-0-central_angle"] == say("pieces.chord_here", place=say("form.piece_chord"))
    errors = shown_numbers({"fields": {**fields, "after-0-central_angle": "12x"}, "focus": "", "short": False,
                            "drawn": False})["errors"]  # type: ignore[typeddict-item]  # fmt: skip
    assert "chord" not in errors[0]["text"]
