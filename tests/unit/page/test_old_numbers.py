"""Where stakes stand by old numbers every face says so: the bar, a line over the newer numbers, the paper's front."""

from __future__ import annotations

import json
from html import unescape
from typing import Any

import pytest

from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job
from bowstring.page.pieces import staked_at
from bowstring.words import say
from stood_fields import FIELDS, WALK, M, is_stop, worked

BUILT = {"width": "5 ft", "edge": "outside", "slab-thickness": "4 in"}


def shown(fields: dict[str, str], face: str, calls: Calls | None = None) -> dict[str, Any]:
    asked = {"fields": fields, "face": face, "card": None, "panel": "", "address": ""}
    told: dict[str, Any] = json.loads((calls or Calls()).handle("face", json.dumps(asked)))
    return told


def bar_of_numbers(fields: dict[str, str]) -> dict[str, str]:
    told = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields})))
    state: dict[str, str] = told["state"]
    return state


ON_SIDE = "Old numbers: M, Q1. The numbers here are newer: don't build off those stakes."
BOTH = "Set by the old numbers: M, Q1. The numbers here are newer."


@pytest.mark.parametrize("face", ["checks", "build", "paper", "why", "stakes"])
def test_every_face_says_that_stakes_stand_by_old_numbers(face: str) -> None:
    fields = worked({**FIELDS, **BUILT}, M + 1)
    assert shown(fields, face)["state"]["sign"] != "stop" and "old" not in shown(fields, face)["state"]["text"]
    later = {**fields, "arc-chord": "39 ft"}
    told = shown(later, face)
    assert told["state"] == {"sign": "stop", "text": "Old numbers: M, Q1"} == bar_of_numbers(later)
    html = unescape(told["html"])
    assert html.count(BOTH) == (face in ("checks", "build", "paper"))
    if face == "paper":
        front, *others = html.split('<section class="side ')[1:]
        assert front.startswith("front") and BOTH in front
        assert len(others) == 3 and all(ON_SIDE in one for one in others)
    assert ON_SIDE not in unescape(shown(fields, face)["html"])
    assert BOTH not in unescape(shown(fields, face)["html"])
    assert bar_of_numbers(fields)["sign"] == "computed"


def test_every_side_of_a_line_s_paper_says_it_too() -> None:
    later = {**line_of_two(), "after-0-radius": "25 ft"}
    front, *others = unescape(shown(later, "paper")["html"]).split('<section class="side ')[1:]
    told = "Old numbers: arc 3. The numbers here are newer: don't build off those stakes."
    assert len(others) >= 3 and all(told in one for one in others) and told not in front


def test_the_line_stands_inside_of_what_scrolls() -> None:
    later = {**worked({**FIELDS, **BUILT}), "arc-chord": "39 ft"}
    for face, first in (("checks", '<div class="face-checks'), ("build", '<div class="face-build">')):
        head, line, _rest = shown(later, face)["html"].partition('<p class="banner stop old">')
        assert line and head.startswith(first) and head.count("<") == 1


def test_what_is_asked_of_the_slab_comes_after_it() -> None:
    fields = worked({**FIELDS, "width": "5 ft"})
    assert shown(fields, "build")["state"]["sign"] == "ask"
    assert shown({**fields, "arc-chord": "39 ft"}, "build")["state"]["sign"] == "stop"


def test_of_many_the_bar_names_two() -> None:
    later = {**worked(FIELDS, M + 2), "arc-chord": "39 ft"}
    assert shown(later, "checks")["state"]["text"] == say("stood.state_more", names="M, Q1", count=1)


def test_a_stake_on_which_nothing_else_hangs_is_told_by_no_face() -> None:
    """What was got at M is in no other stake yet; a width and a title move none."""
    fields = worked({**FIELDS, **BUILT})
    for change in ({"got-0-stake": "M", "got-0-sagitta": "5' 3-1/8\""}, {"width": "6 ft", "title": "Dock"}):
        assert shown({**fields, **change}, "checks")["state"]["text"] == say("page.state_ready")


def line_of_two() -> dict[str, str]:
    """Both arcs begun, the first one staked."""
    first = worked({"unit": "ft-in", **fields_of_job(WALK)}, 5)
    return staked_at(worked(staked_at(first, 3), M), 2)


@pytest.mark.parametrize("face", ["stakes", "checks", "build", "paper"])
def test_an_arc_of_the_line_that_is_staked_no_more_is_told_too(face: str) -> None:
    fields, calls = line_of_two(), Calls()
    assert not is_stop(fields) and shown(fields, face, calls)["state"]["text"] != say("stood.state", names="arc 3")
    later = {**fields, "after-0-radius": "25 ft"}
    told = shown(later, face, calls)
    assert told["state"] == {"sign": "stop", "text": "Old numbers: arc 3"}
    line = "Set by the old numbers: Arc 3: B, M. The numbers here are newer."  # past a kink B is set by the line
    assert (line in unescape(told["html"])) == (face != "stakes")
    assert is_stop(staked_at(later, 3)) and not is_stop(later)


def test_both_arcs_are_told_in_one_line() -> None:
    later = {**line_of_two(), "after-0-radius": "25 ft", "arc-radius": "33 ft"}
    told = shown(later, "checks")
    assert told["state"]["text"] == "Old numbers: arcs 2, 3"
    html = unescape(told["html"])
    # The pin that B of arc 2 is set off, and B with it; its end is where arc 3 begins.
    assert "Set by the old numbers: Arc 2: F, B, K1; Arc 3: A, B, M. The numbers here are newer." in html


def test_the_line_s_other_pieces_lay_nothing_out_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the stakes of another arc stand by the numbers as they are, no face waits for them."""
    from bowstring.page import old_numbers, stood

    fields, laid = line_of_two(), []
    monkeypatch.setattr(old_numbers, "answering_here", lambda one: laid.append(one))
    monkeypatch.setattr(stood, "answering", lambda one, **_more: laid.append(one))
    assert shown(fields, "checks")["sign"] == "computed"
    assert laid == []
