"""Numbers changed under stakes that stand: a stop, and nothing else of the job is."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest

from bowstring import answering
from bowstring.page import stood
from bowstring.page.beside import read_of
from bowstring.page.calls import Calls
from bowstring.page.fields import job_of_fields
from bowstring.words import say
from stood_fields import FIELDS, FOUND, PB, STRING, M, card, is_stop, worked


@pytest.mark.parametrize("change", [
    {"arc-chord": "39 ft"}, {"side": "right"}, {"method": "ordinates"}, {"offset": "1 in", "toward": "outside"}, FOUND,
])  # fmt: skip
def test_what_moves_a_stake_that_stands_is_a_stop(change: dict[str, str]) -> None:
    fields = worked(FIELDS)
    assert not is_stop(fields)
    assert is_stop({**fields, **change})
    assert say("page.stood_one", names="M") in card({**fields, **change})["html"] or "method" in change


@pytest.mark.parametrize("change", [
    {"title": "Boathouse curb"}, {"ticket": "B-4417", "called": "2028-02-24"}, {"tolerance": "1/4 in"},
    {"ends-A": "lamp post"}, {"width": "5 ft", "edge": "outside", "slab-thickness": "4 in", "grade-slope": "2"},
    {"got-0-stake": "M", "got-0-sagitta": "5' 3-1/8\""},
])  # fmt: skip
def test_what_moves_none_is_no_stop(change: dict[str, str]) -> None:
    assert not is_stop({**worked(FIELDS), **change})


def test_until_a_stake_stands_the_numbers_may_change() -> None:
    """The chord found at its card belongs to what all stakes stand on."""
    begun = worked(FIELDS, 2)
    assert not is_stop({**begun, **FOUND})
    fields = worked({**begun, **FOUND, "done": ""})
    assert not is_stop(fields)
    assert is_stop({**fields, "found-chord-0": "38' 0-5/8\"", "found-chord-1": "38' 0-5/8\""})


GOT = {"got-0-stake": "M", "got-0-sagitta": "5' 3-1/2\""}
Q1 = M + 1


@pytest.mark.parametrize("change", [
    {"got-0-sagitta": "5' 2-1/2\""}, {"got-0-stake": "", "got-0-sagitta": ""}, {"arc-chord": "39 ft"},
])  # fmt: skip
def test_what_was_got_is_a_stop_once_later_stakes_stand_on_it(change: dict[str, str]) -> None:
    fields = {**worked(FIELDS), **GOT}
    assert not is_stop(fields)
    assert not is_stop({**fields, **change}) or "arc-chord" in change  # M stands where it stands, and nothing on it yet
    fields = worked(fields, Q1, Q1)
    assert not is_stop(fields)
    html = card({**fields, **change})["html"]
    both = say("page.stood", names="M, Q1")
    assert say("page.stood_one", names="Q1") in html or (both in html and "arc-chord" in change)


def test_what_is_told_of_a_stake_after_later_ones_were_set_without_it_is_a_stop() -> None:
    fields = worked(FIELDS, Q1)
    assert not is_stop(fields)
    assert say("page.stood_one", names="Q1") in card({**fields, **GOT})["html"]
    assert not is_stop({**fields, "got-0-stake": "Q1", "got-0-sagitta": "1' 4\""})  # nothing hangs on that one yet


def test_the_old_numbers_are_those_of_the_card_that_was_done_last() -> None:
    fields = worked({**worked(FIELDS), **GOT}, Q1, Q1)
    told = json.loads(Calls().handle("open_link", json.dumps({"text": fields["stood"]})))["fields"]
    assert {name: told[name] for name in GOT} == GOT


def test_pins_that_the_stakes_are_set_from_are_told_where_their_numbers_change() -> None:
    """With the chord found their diagonal is another one, and no stake stands yet."""
    fields = worked(STRING, PB)
    assert not is_stop(fields)
    assert say("page.stood", names="PA, PB") in card({**fields, **FOUND})["html"]
    assert not is_stop({**fields, "tolerance": "1/4 in"}) and not is_stop({**worked(STRING, 2), **FOUND})
    late = worked(fields, PB + 3, PB + 1)
    assert say("page.stood", names="PA, PB, K1, K2") in card({**late, **FOUND})["html"]


def test_what_proves_ends_that_exist_is_no_stop_as_long_as_its_numbers_stay() -> None:
    """Where the point beside is, and what is marked toward the ends, hangs on no chord: what is read across does."""
    from bowstring.page.fields import fields_of_job
    from card_jobs import PLAIN, box

    wall = {**PLAIN, "method": "ordinates", "parallel": "8 ft", "ground": [box("the wall", 34.5, -11, 36, 0.1)]}
    fields = worked({"unit": "ft-in", **fields_of_job(wall)}, 3)
    assert not is_stop({**fields, **FOUND})
    fields = worked(fields, 5, 4)
    assert say("page.stood", names="PA, PB") in card({**fields, **FOUND})["html"]


def test_of_many_the_first_are_named() -> None:
    from bowstring.page.staking import stood_text

    assert stood_text([f"K{number}" for number in range(1, 11)]) == say(
        "page.stood", names=say("page.stood_more", names="K1, K2, K3, K4, K5, K6, K7, K8", count=2)
    )


def test_a_card_is_turned_without_laying_the_old_job_out(monkeypatch: pytest.MonkeyPatch) -> None:
    fields, calls, laid = worked(FIELDS), Calls(), []
    monkeypatch.setattr(stood, "answering", lambda job: laid.append(job))
    assert card(fields, M, calls)["card"] == M
    assert card({**fields, "edge": "inside", "joints-panels": "9", "board-gap": "2 ft"}, M, calls)["card"] == M
    assert laid == []


def test_a_suspect_s_card_tells_what_is_old_once_it_is_done_again() -> None:
    """Whoever comes to it, by a button or not; no other card does, and none where nothing is out."""
    fields = worked(FIELDS, 7)
    checks = answering(job_of_fields(fields))["checks"]
    touching = next(row for row in checks if "Q1" in (row["from"], row["to"]))
    reads = f"{touching['distance'] / 0.3048 + 0.2:.3f} ft"
    far = {f"read-{row}-check": touching["key"] for row in (0, 1)} | {f"read-{row}-value": reads for row in (0, 1)}
    answer = answering({**job_of_fields(fields), "read": read_of(far)})
    suspects = {one["mark"]: one for one in answer["read"]["suspects"]}
    assert suspects
    for number in range(1, 8):
        told = card({**fields, **far}, number).get("suspect")
        steps = answer["cards"][number - 1]["steps"]
        named = [mark for mark, one in suspects.items() if one["step"] in steps and mark]
        assert (told or {}).get("stake") == (named[0] if named else None)
        if told:
            assert set(told["checks"]) == set(suspects[told["stake"]]["checks"]) and touching["key"] in told["checks"]
        assert "suspect" not in card(fields, number)


def later(fields: dict[str, str]) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields})))
    return told


def test_the_filled_button_sets_the_stakes_by_the_numbers_that_hold_now() -> None:
    """Who taps the large one without reading must not be left with a change of the drawing taken back."""
    html = card({**worked(FIELDS), "arc-chord": "39 ft"})["html"]
    buttons = re.findall('<button type="button" class="([^"]*)" data-do="([^"]*)"', html)
    assert [does for _looks, does in buttons] == ["restart", "stood"]
    assert "first" in buttons[0][0].split() and "first" not in buttons[1][0].split()


def test_the_numbers_say_that_stakes_stand_by_old_ones() -> None:
    fields = worked(FIELDS)
    assert later(fields)["go"] == say("numbers.go_on", step=M + 1)
    changed = {**fields, "arc-chord": "39 ft"}
    told = later(changed)
    assert told["go"] == say("numbers.go_old")
    assert told["state"] == card(changed)["state"] and told["state"]["sign"] == "stop"
    assert later({**changed, "done": "", "stood": ""})["go"] == say("numbers.go")


@pytest.mark.parametrize("change", [{"title": "Boathouse curb"}, {"width": "5 ft", "edge": "outside"}])
def test_the_numbers_say_nothing_of_old_ones_where_none_moved(change: dict[str, str]) -> None:
    told = later({**worked(FIELDS), **change})
    assert told["go"] == say("numbers.go_on", step=M + 1) and told["state"]["sign"] == "computed"


def test_sides_changed_under_far_corners_that_stand_are_a_stop_that_names_them() -> None:
    """Their card done with 21 ft, then 22 ft typed: nothing but the two corners is set again, and 21 ft clears it."""
    fields = {"unit": "ft-in", "arc-chord": "14 ft", "arc-radius": "7 ft", "side": "left", "drawn_to": "face",
              "levels": "2", "start": "ends", "slab-fills": "yes",
              "slab-sides": "21 ft", "slab-thickness": "5 in"}  # fmt: skip
    told = card(fields)
    corners = next(n for n in range(1, told["count"] + 1) if 'data-kind="form_corners"' in card(fields, n)["html"])
    stood = worked(fields, corners - 1)
    told = card(stood, corners)
    mark = told["marks"][str(corners)]
    stood = {**stood, **told["fixed"], "done": f"{stood['done']} {mark}"}
    assert say("page.stood", names="A-2, B-2") not in card(stood)["html"]
    stop = card({**stood, "slab-sides": "22 ft"})["html"]
    assert say("page.stood", names="A-2, B-2") in stop and 'data-do="restart"' not in stop
    left = stood["done"].replace(mark, "").strip()
    assert say("page.stood", names="A-2, B-2") not in card({**stood, "slab-sides": "22 ft", "done": left})["html"]
    assert say("page.stood", names="A-2, B-2") in card({**stood, "slab-sides": "22 ft", "title": "Patio"})["html"]
    told = say("stood.told", told=say("page.stood", names="A-2, B-2"))
    for sides, count in (("21 ft", 0), ("22 ft", 4)):  # the stakes' two sides of paper, and the forms' two
        asked = {"fields": {**stood, "slab-sides": sides}, "face": "paper", "card": None, "panel": "", "address": ""}
        assert json.loads(Calls().handle("face", json.dumps(asked)))["html"].count(told) == count


def test_stakes_that_stand_in_a_job_from_a_file_stand_by_its_numbers() -> None:
    fields = worked(FIELDS, M)
    text = json.loads(Calls().handle("job_file", json.dumps({"fields": fields})))["text"]
    opened = json.loads(Calls().handle("open_file", json.dumps({"text": text})))["fields"]
    assert not is_stop(opened) and is_stop({**opened, "arc-chord": "39 ft"})
