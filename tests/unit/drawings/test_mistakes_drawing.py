"""The drawing of a blunder: true stakes where they belong, crosses where they would stand, nothing on one another."""

from __future__ import annotations

import math
from functools import cache
from itertools import pairwise
from typing import Any

import pytest

from bowstring.drawings.mistakes import MOST_DRAWN, mistakes_svg
from bowstring.drawings.svg import SIZES
from bowstring.words import say
from helping import SAID, about
from unit.drawings.drawing_boxes import assert_clear
from unit.drawings.drawing_cases import answered, own
from unit.drawings.drawing_reader import Read

ORDINARY: dict[str, Any] = {"arc": {"chord": "38'", "sagitta": "5'"}, "levels": 3, "tolerance": "1/4 in"}
METHODS = ("halving", "ordinates", "tapes", "centre", "produced", "tangent")
_JOBS: dict[str, dict[str, Any]] = {
    **{name: {**ORDINARY, "method": name, "centre": "reachable"} for name in METHODS},
    "right": {**ORDINARY, "side": "right", "offset": "1-1/2 in", "toward": "centre"},
    "right swing": {
        **ORDINARY,
        "side": "right",
        "offset": "4 ft",
        "toward": "outside",
        "method": "centre",
        "centre": "reachable",
    },
    "flat": {"unit": "m", "arc": {"chord": 60, "sagitta": 0.4}, "levels": 4},
    "half circle": {"unit": "ft", "arc": {"radius": 20, "chord": 40}, "levels": 4, "side": "right"},
    "beyond": {
        "unit": "mm",
        "arc": {"radius": 6000, "central_angle": 300},
        "levels": 5,
        "method": "centre",
        "centre": "reachable",
    },
    "six levels": {"arc": {"chord": "168'", "sagitta": "33'"}, "levels": 6},
    "eight levels": {"unit": "m", "arc": {"radius": 60, "central_angle": 70}, "levels": 8},
}
JOBS = {name: {**SAID, **job} for name, job in _JOBS.items()}


@cache
def read_case(name: str, kind: str) -> Read:
    return Read(mistakes_svg(answered(JOBS[name]), kind, id="m"))


def kinds_of(name: str) -> list[str]:
    return [row["kind"] for row in answered(JOBS[name])["mistakes"]]


@pytest.mark.parametrize("name", JOBS)
def test_nothing_overlaps_and_every_drawn_stake_is_named(name: str) -> None:
    for kind in kinds_of(name):
        with about(kind):
            answer = answered(JOBS[name])
            read = read_case(name, kind)
            assert_clear(read)
            stakes = read.stakes()
            assert {"A", "B"} <= set(stakes) and len(stakes) <= MOST_DRAWN
            assert {words.stake for words in read.words() if words.stake} == set(stakes)
            if len(answer["stakes"]) <= MOST_DRAWN:
                assert set(stakes) == {stake["name"] for stake in answer["stakes"]}
            assert (say("mistake.draw.some") in read.flowing_text()) == (len(stakes) < len(answer["stakes"]))


@pytest.mark.parametrize("name", JOBS)
def test_squares_and_crosses_stand_in_proportion_to_the_figures(name: str) -> None:
    """The way from square to cross on paper is one factor of the way in metres, with the rise's own stretch."""
    for kind in kinds_of(name):
        with about(kind):
            in_proportion(answered(JOBS[name]), kind, read_case(name, kind))


def in_proportion(answer: dict[str, Any], kind: str, read: Read) -> None:
    """Assert that every stake that moves has its cross, all by one factor."""
    at = {one: places[0] for one, places in read.stakes().items()}
    true = {stake["name"]: (stake["x"], stake["y"]) for stake in answer["stakes"]}
    row = next(one for one in answer["mistakes"] if one["kind"] == kind)
    wrong = {stake["name"]: (stake["x"], stake["y"]) for stake in row["stakes"]}
    scale = (at["B"][0] - at["A"][0]) / true["B"][0]  # A is at the right where the curve is on the right
    assert (scale < 0) == (answer["side"] == "right")
    high = max((one for one in at if one not in "AB"), key=lambda one: true[one][1])
    rise = (at[high][1] - at["A"][1]) / true[high][1]
    assert rise < 0, "the curve is up on paper"
    ways = {one: ((wrong[one][0] - true[one][0]) * scale, (wrong[one][1] - true[one][1]) * rise) for one in at}
    longest = max(ways, key=lambda one: math.hypot(*ways[one]))
    crosses, length = read.crosses(), math.hypot(*ways[longest])
    assert crosses

    def fits(factor: float) -> bool:
        """One factor puts every stake that moves onto a cross, and there is no other cross."""
        places = [(at[one][0] + factor * x, at[one][1] + factor * y, at[one]) for one, (x, y) in ways.items()]
        moved = [(x, y) for x, y, home in places if math.dist((x, y), home) > 2.0]
        return len(moved) == len(crosses) and all(
            min(math.dist(place, cross) for cross in crosses) < 0.05 for place in moved
        )

    assert any(fits(math.dist(cross, at[longest]) / length) for cross in crosses)


@pytest.mark.parametrize("name", JOBS)
def test_the_words_can_be_read_on_a_phone_and_on_paper(name: str) -> None:
    """On a phone 360 px wide, with margins, at least 11 px; on 110 mm of paper at least 8 pt."""
    for kind in kinds_of(name):
        with about(kind):
            left, _top, right, _bottom = read_case(name, kind).box
            assert min(SIZES.values()) * 328 / (right - left) >= 11
            assert min(SIZES.values()) * 110 / (right - left) / 0.3528 >= 8


@pytest.mark.parametrize("name", JOBS)
def test_a_curve_on_the_wrong_hand_is_drawn_on_the_other_side_of_the_string(name: str) -> None:
    answer = answered(JOBS[name])
    read = Read(mistakes_svg(answer, "wrong_hand", id="m"))
    at = {one: places[0] for one, places in read.stakes().items()}
    string = at["A"][1]
    inner = [place[1] for one, place in at.items() if one not in "AB"]
    assert all(y < string for y in inner)
    assert all(y > string for _x, y in read.crosses())
    title, description = read.described()
    assert title == say("mistake.draw.title")
    assert answer["hand"] in description and f"on your {answer['side']}," in description


def test_a_blunder_that_is_not_there_is_refused() -> None:
    with pytest.raises(KeyError):
        mistakes_svg(answered(JOBS["tapes"]), "diameter", id="m")


def test_a_stake_nowhere_is_refused() -> None:
    answer = own(answered(JOBS["halving"]))
    answer["mistakes"][0]["stakes"][3]["x"] = math.nan
    with pytest.raises(ValueError):
        mistakes_svg(answer, answer["mistakes"][0]["kind"], id="m")


@pytest.mark.parametrize("name", ["six levels", "eight levels"])
def test_of_two_stakes_as_near_to_the_one_that_moved_most_the_first_gives_up_its_place(name: str) -> None:
    """So a job has one drawing, whatever order a set has."""
    answer = own(answered(JOBS[name]))
    row = answer["mistakes"][0]
    every = [stake["name"] for stake in row["stakes"]]
    drawn = {every[round(number * (len(every) - 1) / (MOST_DRAWN - 1))] for number in range(MOST_DRAWN)}
    places = sorted(every.index(one) for one in drawn)
    between = [pair for pair in pairwise(places) if pair[0] > 0 and sum(pair) % 2 == 0]
    assert len(between) >= 4
    for before, after in between:
        row["moved_at"] = every[(before + after) // 2]
        found = set(Read(mistakes_svg(answer, row["kind"], id="m")).stakes())
        assert found == drawn - {every[before]} | {row["moved_at"]}
