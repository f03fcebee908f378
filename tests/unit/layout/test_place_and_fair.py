"""Two questions of one layout: how far a stake may be from its place, how far from the curve through its neighbours."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.layout.demand import Demand
from helping import answer_to

INCH = 0.0254
POND: dict[str, Any] = {
    "name": "the pond",
    "stops": "feet",
    "outline": [["17 ft", "-34 ft"], ["21 ft", "-34 ft"], ["21 ft", "-29 ft"], ["17 ft", "-29 ft"]],
}
WALK: dict[str, Any] = {
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "side": "left", "drawn_to": "face", "driven": "hub",
    "ground": [POND],
}  # fmt: skip
"""Its centre (19, -31.75) ft lies in the pond, so nobody swings. Two tapes take 14 readings and are the least fair."""


def told(**keys: Any) -> dict[str, Any]:
    return answer_to({**WALK, **keys})


def row(answer: dict[str, Any], method: str) -> dict[str, Any]:
    return next(one for one in answer["methods"] if one["method"] == method)


def test_the_place_alone_takes_the_fewest_readings() -> None:
    easy = told(tolerance="1 in", fair="1 in")
    assert not row(easy, "centre")["possible"]
    assert row(easy, "tapes")["expected"] < INCH
    assert (easy["advice"]["method"], easy["advice"]["decided"]) == ("tapes", "place")
    assert "Place on the drawing decided it." in easy["advice"]["text"]


def test_a_fair_curve_asks_for_another_method() -> None:
    fair = told(tolerance="1 in", fair="1/4 in")
    tapes, advice = row(fair, "tapes"), fair["advice"]
    assert tapes["expected"] < INCH and tapes["fair_95"] > INCH / 4
    assert advice["method"] in ("halving", "ordinates") and advice["decided"] == "fair"
    assert row(fair, advice["method"])["fair_95"] <= INCH / 4
    assert advice["holds"] is advice["fair"] is True and "The fair curve decided it." in advice["text"]


def test_the_limit_of_the_fair_curve_is_half_the_tolerance_unless_said() -> None:
    half, same = told(tolerance="1/2 in"), told(tolerance="1/2 in", fair="1/4 in")
    assert half["advice"] == same["advice"] and half["advice"]["fair"] is True
    assert told(tolerance="1/4 in")["advice"]["fair"] is False
    assert "1/8 in is allowed" in told(tolerance="1/4 in")["advice"]["text"]


def test_a_fair_limit_alone_decides_by_itself_and_without_both_nothing_does() -> None:
    alone = told(fair="1/4 in")["advice"]
    assert (alone["decided"], alone["holds"], alone["fair"]) == ("fair", None, True)
    neither = told()["advice"]
    assert (neither["decided"], neither["holds"], neither["fair"]) == (None, None, None)
    assert "fair" not in neither["text"] and "decided" not in neither["text"]


def test_what_nobody_holds_is_told_of_the_limit_that_it_is() -> None:
    """Pins in a fine curve: the place is held, the fair curve by no method."""
    pins = told(driven="pin", tolerance="1/2 in")["advice"]
    assert pins["holds"] is True and pins["fair"] is False and pins["decided"] == "fair"
    assert "no way here" not in pins["text"]


def test_the_harder_of_the_two_is_what_a_method_comes_to() -> None:
    class Row:
        expected, fair_95 = 3.0, 2.0

    place, fair, both = Demand(4.0, None), Demand(None, 1.0), Demand(4.0, 1.0)
    assert [demand.need(Row()) for demand in (place, fair, both)] == [3.0, 2.0, 8.0]  # type: ignore[arg-type]
    assert [demand.holds(Row()) for demand in (place, fair, both)] == [True, False, False]  # type: ignore[arg-type]
    assert Demand(None, None).holds(Row()) is None  # type: ignore[arg-type]


def first_lines(**keys: Any) -> list[str]:
    lines = told(**keys)["accuracy"]["lines"]
    return lines[: next(number for number, line in enumerate(lines) if line.startswith("The stake"))]


def test_what_to_do_comes_before_any_percentage() -> None:
    pins = first_lines(driven="pin", tolerance="1/4 in")
    assert re.fullmatch(r"Bare pins: expect the worst about [0-9/-]+ in off\.", pins[0]), pins
    assert re.fullmatch(r"(Hubs and tacks|Stakes marked).* holds in \d+ of \d+ layouts\.", pins[1]), pins
    assert not any("%" in line for line in pins)


@pytest.mark.parametrize("keys", [
    {"driven": "pin", "tolerance": "1/4 in"}, {"driven": "board", "tolerance": "3/8 in"},
    {"driven": "marked", "tolerance": "1/8 in"}, {"driven": "hub", "tolerance": "1/8 in"},
])  # fmt: skip
def test_what_it_promises_is_what_the_package_says_of_that_job(keys: dict[str, str]) -> None:
    """The second line's way of working, asked as a job of its own, keeps the share that the line tells."""
    line = first_lines(**keys)[-1]
    driven = "hub" if line.startswith("Hubs") else "marked" if line.startswith("Stakes marked") else keys["driven"]
    finer = re.search(r"read to ([0-9/]+ in)", line)
    own = told(**{**keys, "driven": driven, **({"mark": finer[1]} if finer else {})})
    share = re.search(r"(\d+) of (\d+) layouts", line)
    part = int(share[1]) / int(share[2]) if share else 0.0
    assert part <= own["accuracy"]["chance"] < part + 0.1
    assert own["accuracy"]["chance"] > told(**keys)["accuracy"]["chance"]


def test_a_layout_that_holds_says_so_and_asks_for_nothing() -> None:
    easy = first_lines(driven="hub", tolerance="1/2 in")
    assert len(easy) == 1 and easy[0].startswith("Hubs and tacks") and re.search(r" of \d+ layouts", easy[0])


def test_without_a_tolerance_it_says_how_far_off_alone() -> None:
    assert [line.split(":")[0] for line in first_lines(driven="marked")] == ["Stakes marked on top after driving"]


def test_a_crew_that_gives_its_own_figures_is_offered_no_others() -> None:
    own = first_lines(driven="pin", tolerance="1/4 in", errors={"stake": "1/8 in", "read": "1/32 in"})
    assert len(own) == 2 and own[1].startswith("Nothing finer is offered")


def test_the_sheet_tells_both() -> None:
    lines = told(driven="pin", tolerance="1/4 in")["accuracy"]["lines"]
    assert any("of its true place across the arc" in line for line in lines)
    assert any(line.startswith("Off the fair curve") for line in lines)
