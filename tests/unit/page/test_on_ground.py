"""A piece of a line changed under an arc that is driven farther on: its stakes stand by old numbers, and it is told.

Where places belong is worked out here by itself: a line's pieces one after another as complex numbers, the long chord
of an arc 2 R sin(I/2), turned off its tangent by I/2 (simple curves, any surveying text).
"""

from __future__ import annotations

import cmath
import json
from html import unescape
from math import pi, radians, sin
from typing import Any

import pytest

from bowstring import answering
from bowstring.geometry.plane import Point
from bowstring.job.form import JobForm
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.on_ground import grounds
from bowstring.page.pieces import staked_at
from bowstring.words import say
from stood_fields import is_stop, worked

FOOT = 0.3048
LINE: JobForm = {
    "bowstring": 1,
    "title": "Garden walk",
    "line": [
        {"straight": "12 ft"},
        {"arc": {"radius": "30 ft", "central_angle": "40"}, "turn": "left"},
        {"straight": "8 ft"},
        {"arc": {"radius": "25 ft", "central_angle": "55"}, "turn": "right"},
        {"straight": "10 ft"},
    ],
    "width": "5 ft",
    "edge": "left",
    "drawn_to": "face",
    "slab": {"thickness": "4 in"},
}
ALL, LAST = 12, 6
"""Cards of arc 2, all of them; of arc 4 up to Q1."""

OWN4 = "F, B, M, Q1"
WHOLE4 = f"A, S, {OWN4}"


@pytest.fixture(scope="module", name="both")
def _both() -> dict[str, str]:
    """Arc 2 driven whole, arc 4 up to Q1 and staked."""
    first = worked({"unit": "ft-in", **fields_of_job(LINE)}, ALL)
    return worked(staked_at(first, 4), LAST)


def shown(fields: dict[str, str], face: str = "checks") -> dict[str, Any]:
    asked = {"fields": fields, "face": face, "card": None, "panel": "", "address": ""}
    told: dict[str, Any] = json.loads(handle("face", json.dumps(asked)))
    return told


def at_start_of(pieces: list[tuple[float, float]], number: int, toward: complex = 1) -> complex:
    """Where a piece begins, feet: of lengths, and radii with angles in degrees, above 0 to the left; 0 a straight's."""
    place = 0j
    for size, angle in pieces[: number - 1]:
        half = radians(angle) / 2
        chord = 2 * size * sin(abs(half)) if angle else size
        place += toward * cmath.exp(1j * half) * chord
        toward *= cmath.exp(2j * half)
    return place


PIECES: list[tuple[float, float]] = [(12, 0), (30, 40), (8, 0), (25, -55), (10, 0)]
MOVES = [
    ({"before-2-straight": "10 ft"}, 3, (10.0, 0.0), f"Arc 4: A, {OWN4}"),  # S stays: where the straight begins
    ({"before-0-straight": "14 ft"}, 1, (14.0, 0.0),
     f"Arc 2: A, S, F, B, M, Q1, Q2, R1 and 3 more; Arc 4: {WHOLE4}"),
    ({"before-1-radius": "32 ft"}, 2, (32.0, 40.0),
     f"Arc 2: F, B, M, Q1, Q2, R1, R2, R3 and 1 more; Arc 4: {WHOLE4}"),
    ({"before-1-central_angle": "41"}, 2, (30.0, 41.0),
     f"Arc 2: F, B, M, Q1, Q2, R1, R2, R3 and 1 more; Arc 4: {WHOLE4}"),
    ({"before-1-turn": "right"}, 2, (30.0, -40.0),
     f"Arc 2: F, B, M, Q1, Q2, R1, R2, R3 and 1 more; Arc 4: {WHOLE4}"),
]  # fmt: skip


@pytest.mark.parametrize(("change", "number", "piece", "told"), MOVES)
def test_every_later_arc_is_told_with_its_a_and_s(
    both: dict[str, str], change: dict[str, str], number: int, piece: tuple[float, float], told: str
) -> None:
    """And where A is on the ground by both jobs is where the line's pieces, one after another, put it."""
    later = {**both, **change}
    assert not is_stop(both) and is_stop(later)
    line = say("stood.told", told=say("page.stood", names=told))
    for face in ("checks", "build", "paper"):
        assert line in unescape(shown(later, face)["html"])
    assert shown(later)["state"] == {
        "sign": "stop", "text": "Old numbers: arcs 2, 4" if "Arc 2" in told else "Old numbers: arc 4"}  # fmt: skip
    found = grounds(job_of_fields(both), job_of_fields(later))
    assert found is not None
    moved = [*PIECES[: number - 1], piece, *PIECES[number:]]
    for placed, pieces in zip(found, (PIECES, moved), strict=True):
        at_a, expected = placed(Point(0.0, 0.0)), at_start_of(pieces, 4)
        assert (at_a.x / FOOT, at_a.y / FOOT) == pytest.approx((expected.real, expected.imag), abs=1e-9)
    assert abs(at_start_of(moved, 4) - at_start_of(PIECES, 4)) > 1 / 8


def test_of_the_arc_that_is_staked_now_the_stop_says_the_same(both: dict[str, str]) -> None:
    first = staked_at(both, 2)
    assert not is_stop(first) and shown(first)["state"]["text"] == say("page.state_ready")
    straight = {**first, "before-0-straight": "14 ft"}
    html = unescape(shown(straight, "stakes")["html"])
    assert say("page.stood", names="Arc 2: A, S, F, B, M, Q1, Q2, R1 and 3 more") in html and is_stop(straight)
    later = {**first, "after-0-straight": "10 ft"}  # behind it: the other arc's alone
    assert not is_stop(later) and shown(later)["state"]["text"] == "Old numbers: arc 4"
    assert is_stop(staked_at(later, 4))


@pytest.mark.parametrize("change", [
    {"after-0-straight": "14 ft"}, {"before-0-straight": "12.001 ft"}, {"before-0-straight": "144 in"},
    {"width": "6 ft"}, {"title": "Walk"},
])  # fmt: skip
def test_what_moves_no_stake_is_told_by_no_face(both: dict[str, str], change: dict[str, str]) -> None:
    assert "Old numbers" not in shown({**both, **change})["state"]["text"] and not is_stop({**both, **change})


def test_a_kink_put_in_before_it_turns_all_of_it(both: dict[str, str]) -> None:
    """By 2 degrees at the end of arc 2: 8 ft farther on A is off by 2 (8 ft) sin 1."""
    later = {**both, "before-2-kink": "2 left"}
    assert shown(later)["state"]["text"] == "Old numbers: arc 4"
    assert f"Arc 4: A, {OWN4}" in unescape(shown(later)["html"])
    found = grounds(job_of_fields(both), job_of_fields(later))
    assert found is not None
    was, now = (placed(Point(0.0, 0.0)) for placed in found)
    assert abs(complex(*was) - complex(*now)) / FOOT == pytest.approx(2 * 8 * sin(pi / 180), abs=1e-9)


def test_before_a_stake_stands_a_and_s_alone_are_told_too() -> None:
    fields = worked({"unit": "ft-in", **fields_of_job(LINE)}, 2)
    later = {**fields, "before-0-straight": "14 ft"}
    assert not is_stop(fields) and is_stop(later)
    assert say("page.stood", names="Arc 2: A, S") in unescape(shown(later)["html"])


def test_the_old_number_is_kept_and_nothing_else_goes_back(both: dict[str, str]) -> None:
    """The straight behind the arc, which moves none of it, and the width stay as they are by now."""
    later = {**both, "after-0-straight": "11 ft", "before-2-straight": "10 ft", "width": "6 ft"}
    told = json.loads(handle("set_back", json.dumps({"fields": later})))
    assert told["said"] == say("stood.set_back", what="Before 3: Straight 10 ft to 8 ft")
    assert {**told["fields"], "done": ""} == {**later, "before-2-straight": "8 ft", "done": ""}
    assert not is_stop(told["fields"]) and "Old numbers" not in shown(told["fields"])["state"]["text"]


def test_set_again_by_the_newer_numbers_no_arc_is_told(both: dict[str, str]) -> None:
    later = {**both, "before-2-straight": "10 ft", "done": "", "stood": "", "built": "", "edged": ""}
    assert "Old numbers" not in shown(worked(later, LAST))["state"]["text"]


TIES = {"ties-A-0-to": "oak", "ties-A-0-distance": "20 ft", "ties-A-1-to": "hydrant", "ties-A-1-distance": "31 ft",
        "ties-B-0-to": "gate", "ties-B-0-distance": "12 ft", "ties-B-1-to": "hydrant",
        "ties-B-1-distance": "25 ft"}  # fmt: skip


@pytest.mark.parametrize(("said", "stays"), [
    ({"start": "ends", "turn": "", "side": "left", **TIES}, True),
    ({"start": "ends", "turn": "", "side": "left"}, False),  # both ends set, off the line for all that anybody knows
    (TIES, False),  # A and its straight are the line's
])  # fmt: skip
def test_ends_that_landmarks_tie_down_stay_whatever_comes_before(
    both: dict[str, str], said: dict[str, str], stays: bool
) -> None:
    fresh = {**both, **said, "done": "", "stood": "", "edged": ""}
    fields = worked({name: text for name, text in fresh.items() if text}, 4)
    assert any(card["stake"] for card in answering(job_of_fields(fields))["cards"][:5])
    assert is_stop({**fields, "before-2-straight": "10 ft"}) is not stays


def test_an_arc_set_from_one_that_is_tied_down_moves_with_that_alone(both: dict[str, str]) -> None:
    """Arc 4 hangs on arc 2's end: the straight before that doesn't carry it, the one between does."""
    first = {**staked_at(both, 2), "start": "ends", "turn": "", "side": "right", **TIES}
    held = staked_at({name: text for name, text in first.items() if text}, 4)
    fields = worked({**held, "done": "", "stood": ""}, LAST)
    assert not is_stop({**fields, "before-0-straight": "14 ft"})
    assert is_stop({**fields, "before-2-straight": "10 ft"}) and is_stop({**fields, "before-1-radius": "32 ft"})


def test_an_arc_that_can_t_be_laid_out_any_more_is_told_with_all_that_is_driven(both: dict[str, str]) -> None:
    """Its method, pinned with the first card, has no stakes for an arc that flat: nothing of it stands by the numbers
    of now."""
    later = {**staked_at(both, 2), "after-1-radius": "25 ft", "after-1-central_angle": "0.01"}
    from bowstring.errors import BadJob

    with pytest.raises(BadJob):
        answering(job_of_fields({**staked_at(later, 4), "done": "", "stood": ""}))
    assert f"Arc 4: A, S, {OWN4}" in unescape(shown(later)["html"])
    assert shown(later)["state"]["text"] == "Old numbers: arc 4"
