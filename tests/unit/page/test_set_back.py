"""Stakes that stand by old numbers are kept: of what was changed since, no more is taken back than moves them."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring import answering
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.pieces import staked_at
from bowstring.words import say
from stood_fields import FIELDS, FOUND, PB, STRING, WALK, M, card, is_stop, worked

BUILT = {"width": "5 ft", "edge": "outside", "slab-thickness": "4 in", "joints-every": "5 ft",
         "ground-0-name": "the tree", "ground-0-at": "2 ft, 20 ft",
         "ground-0-diameter": "1 ft", "ground-0-stops": "feet"}  # fmt: skip
SINCE = {"width": "6 ft", "slab-apron-from": "0", "slab-apron-to": "3 ft", "slab-apron-thickness": "6 in",
         "ground-0-at": "4 ft, 25 ft", "board-gap": "2 ft", "title": "Dock walk", "grade-slope": "2",
         "tape-length": "50 ft", "ticket": "B-4417", "read-0-check": "A-M", "read-0-value": "19 ft 8 in"}  # fmt: skip
"""What is changed later and moves no stake."""


def kept(fields: dict[str, str]) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(handle("set_back", json.dumps({"fields": fields})))
    return told


def stakes(fields: dict[str, str]) -> dict[str, tuple[float, float]]:
    return {one["name"]: (one["x"], one["y"]) for one in answering(job_of_fields(fields))["stakes"]}


def order(fields: dict[str, str]) -> str:
    """What is ordered."""
    pour = answering(job_of_fields(fields))["pour"]
    assert pour is not None
    return json.dumps(pour)


@pytest.mark.parametrize(("change", "said"), [
    ({"arc-chord": "39 ft"}, "Chord 39 ft to 38 ft"),
    ({"arc-chord": "", "arc-radius": "40 ft"}, "Chord, Radius"),
    ({"side": "right"}, "Which side the curve is on"),
    ({"method": "ordinates"}, "Method"),
    ({"offset": "1 in", "toward": "outside"}, "Offset of the stakes from the drawn line, Offset toward"),
    (FOUND, "Measured from A, Measured from B, How the tape was held and 1 more"),
])  # fmt: skip
def test_what_moves_a_stake_goes_back_and_all_else_stays(change: dict[str, str], said: str) -> None:
    fields = worked({**FIELDS, **BUILT}, M + 1)
    later = {**fields, **SINCE}
    assert not is_stop(later) and is_stop({**later, **change})
    told = kept({**later, **change})
    assert told["said"] == say("stood.set_back", what=said)
    held = {name: text.strip() for name, text in later.items()}
    assert told["fields"] == held and not is_stop(told["fields"])
    assert stakes(told["fields"]) == stakes(fields) != stakes({**later, **change}) or {"side", "method"} & change.keys()
    assert order(told["fields"]) == order(later) != order(fields)


def test_of_two_that_move_a_stake_both_go_back_and_one_that_moves_none_stays() -> None:
    fields = worked({**FIELDS, "levels": "2"}, M)
    told = kept({**fields, "arc-sagitta": "5 ft", "side": "right", "levels": "3", "ends-A": "oak"})
    assert told["said"] == say("stood.set_back", what="Mid-ordinate 5 ft to 5' 3\", Which side the curve is on")
    assert told["fields"] == {**fields, "levels": "3", "ends-A": "oak", "done": told["fields"]["done"]}


def test_what_is_in_the_way_goes_back_only_where_the_pins_are_set_round_it() -> None:
    """With the wall there the parallel string's pins are squared off; without it two tapes cross."""
    from card_jobs import PLAIN, box

    wall = {**PLAIN, "method": "ordinates", "parallel": "8 ft", "ground": [box("the wall", 34.5, -11, 36, 0.1)]}
    fields = worked({"unit": "ft-in", **fields_of_job(wall)}, 5)
    assert "PA" in "".join(answering(job_of_fields(fields))["cards"][3]["sets"])
    gone = {name: "" for name in fields if name.startswith("ground-")}
    assert is_stop({**fields, **gone})
    told = kept({**fields, **gone, "title": "By the wall", "spacing": ""})
    assert told["said"] == say("stood.set_back", what="Obstacle 1"), told
    assert {name: told["fields"][name] for name in gone} == {name: fields[name] for name in gone}
    assert told["fields"]["title"] == "By the wall" and not is_stop(told["fields"])


def test_pins_alone_are_kept_too() -> None:
    fields = worked(STRING, PB)
    told = kept({**fields, **FOUND, "width": "4 ft", "edge": "inside"})
    assert told["fields"]["width"] == "4 ft" and not FOUND.keys() & told["fields"].keys()
    assert not is_stop(told["fields"])


def test_a_unit_takes_all_back_since_bare_numbers_are_read_by_it() -> None:
    bare = {**FIELDS, "arc-chord": "38", "arc-sagitta": "5.25", **BUILT}
    fields = worked(bare, M)
    later = {**fields, "unit": "m", "width": "1.5", "note": "by hand"}
    assert is_stop(later)
    told = kept(later)
    assert (told["fields"]["unit"], told["fields"]["width"]) == ("ft-in", "5 ft")
    assert "note" not in told["fields"] and told["said"].startswith("Set back: ")
    assert not is_stop(told["fields"])


def test_of_a_line_only_the_arc_whose_stakes_stand_goes_back() -> None:
    """What comes after it, and what was done of that, stays as it is by now; the straight before it moves it, too."""
    first = worked({"unit": "ft-in", **fields_of_job(WALK)}, 5)
    there = worked(staked_at(first, 3), 4)
    back = staked_at(there, 2)
    more = back["after-0-more"]
    assert "done" in json.loads(more) and not is_stop(back)
    changed = {**back, "arc-radius": "33 ft", "before-0-straight": "22 ft", "after-0-radius": "25 ft", "width": "7 ft"}
    assert is_stop(changed)
    told = kept(changed)
    both = "Radius 33 ft to 31 ft, Before 1: Straight 22 ft to 20 ft"
    assert told["said"] == say("stood.set_back", what=both)
    held = {**changed, "arc-radius": "31 ft", "before-0-straight": "20 ft"}
    assert told["fields"] == {**held, "done": told["fields"]["done"], "after-0-more": more}


def test_a_piece_that_was_put_in_takes_no_work_from_another_where_the_line_has_to_go_back() -> None:
    """Of a line that goes back as a whole each arc has its own work, by where it lies."""
    from bowstring.page.set_back import PARTS, _with

    assert ("after",) in PARTS

    fields = staked_at(worked(staked_at({"unit": "ft-in", **fields_of_job(WALK)}, 3), 4), 2)
    old = {name: text for name, text in fields.items() if not name.endswith("-more")}
    moved = {name: text for name, text in fields.items() if not name.startswith("after-")}
    moved |= {name.replace("after-0", "after-1"): text for name, text in fields.items() if name.startswith("after-0")}
    moved |= {"after-0-straight": "3 ft", "after-2-straight": "8 ft 6 in"}
    made = _with(moved, old, moved, [("after",)])
    assert json.loads(made["after-0-more"]) == json.loads(fields["after-0-more"])
    assert made == fields


def test_a_text_that_is_no_link_is_refused() -> None:
    assert "error" in kept({**FIELDS, "done": "1 2 3 4", "stood": "b1"})


def test_the_card_that_was_done_last_still_stands() -> None:
    fields = worked(FIELDS, M)
    told = kept({**fields, "arc-chord": "39 ft"})["fields"]
    assert card(told)["card"] == M + 1
