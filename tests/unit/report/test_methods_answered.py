"""What the answer says of every method's steps: its measures, its hands, its stations, the drawing's coordinates."""

from __future__ import annotations

from itertools import pairwise
from math import acos, cos, degrees, dist, hypot, radians, sin
from typing import Any

import mpmath
import pytest

from exact_circle import Circle
from helping import answer_to

METHODS = ("centre", "halving", "rule", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")

EXACT = 1e-9
"""Metres."""

EVERY_START: dict[str, dict[str, Any]] = {
    "ends": {},
    "one end": {"start": "one-end"},
    "corner": {"start": "corner"},
    "outside": {"offset": 0.3, "toward": "outside"},
    "inside from a corner": {"offset": 0.3, "toward": "centre", "start": "corner"},
}


def answered(**keys: Any) -> Any:
    usual = {} if "spacing" in keys else {"levels": 3}
    return answer_to({"bowstring": 1, "unit": "m", "arc": {"chord": 18, "sagitta": 3.4}, **usual, **keys})


@pytest.mark.parametrize("start", EVERY_START)
@pytest.mark.parametrize("method", METHODS)
def test_every_measure_is_the_distance_or_the_angle_of_its_marks(method: str, start: str) -> None:
    answer = answered(method=method, centre="reachable", **EVERY_START[start])
    at = {mark["name"]: (mark["x"], mark["y"]) for mark in answer["marks"]}
    taped = turned = 0
    for step in answer["steps"]:
        assert set(step["marks"]) <= set(at)
        for measure in step["measures"]:
            if "angle" in measure:
                here, one, other = (at[measure[part]] for part in ("at", "from", "to"))
                a, b = (complex(*place) - complex(*here) for place in (one, other))
                assert measure["angle"] == pytest.approx(
                    degrees(acos((a * b.conjugate()).real / abs(a) / abs(b))), abs=1e-6
                )
                turned += 1
            else:
                assert measure["distance"] == pytest.approx(dist(at[measure["from"]], at[measure["to"]]), abs=1e-12)
                taped += 1
    assert taped >= 8 and (turned == 7) is (method in ("angles", "coordinates"))
    for stake in answer["stakes"]:
        assert (stake["x"], stake["y"]) == at[stake["name"]]


def test_stations_stand_where_they_were_asked_for_in_order() -> None:
    answer = answered(method="ordinates", stations=[12, 0.25, "7.5 m", 9])
    circle = Circle(18, 3.4)
    places = [(stake["x"], stake["y"]) for stake in answer["stakes"][1:-1]]
    assert [round(x, 9) for x, _y in places] == [0.25, 7.5, 9, 12]
    for (x, y), want in zip(places, (0.25, 7.5, 9, 12), strict=True):
        assert (x, y) == pytest.approx(circle.over(want), abs=EXACT)


@pytest.mark.parametrize("method", ["centre", "tapes", "produced", "angles", "coordinates"])
def test_a_first_gap_then_equal_ones_then_what_is_left(method: str) -> None:
    stakes = answered(method=method, centre="reachable", first_gap=0.7, spacing=2.5)["stakes"]
    gaps = [dist((a["x"], a["y"]), (b["x"], b["y"])) for a, b in pairwise(stakes)]
    assert gaps[0] == pytest.approx(0.7, abs=EXACT)
    assert gaps[1:-1] == pytest.approx([2.5] * (len(gaps) - 2), abs=EXACT)
    assert 0 < gaps[-1] < 2.5
    assert len(gaps) > 5


def test_halve_first_then_equal_steps_along_each_smaller_chord() -> None:
    stakes = answered(method="ordinates", halve_first=1, spacing=2)["stakes"]
    names = [stake["name"] for stake in stakes]
    middle = names.index("M")
    assert (stakes[middle]["x"], stakes[middle]["y"]) == pytest.approx((9, 3.4), abs=EXACT)
    along = complex(9, 3.4) / abs(complex(9, 3.4))
    steps = [(complex(stake["x"], stake["y"]) / along).real for stake in stakes[: middle + 1]]
    gaps = [two - one for one, two in pairwise(steps)]
    assert gaps == pytest.approx([hypot(9, 3.4) / middle] * middle, abs=EXACT)
    assert len(names) == 2 * middle + 1


HANDS: dict[str, tuple[str, dict[str, Any], str, bool]] = {
    # the method, its keys, the kind of step, and whether its sentence names the curve's own hand
    "ordinates": ("ordinates", {}, "ordinate", True),
    "angles": ("angles", {}, "sight", True),
    "the centre behind the chord": ("centre", {}, "centre_behind", False),
    "the centre inside": ("centre", {"arc": {"chord": 8, "sagitta": 9}}, "centre_inside", True),
    "the centre near the chord": ("centre", {"arc": {"radius": 6, "central_angle": 160}}, "centre_near", False),
    "halving": ("halving", {}, "stake", True),
    "the string": ("tapes", {}, "string", True),
}


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("name", HANDS)
def test_the_sentences_name_the_hand_on_the_ground(name: str, side: str) -> None:
    method, keys, kind, own = HANDS[name]
    answer = answered(method=method, centre="reachable", side=side, **keys)
    text = next(step["text"] for step in answer["steps"] if step["kind"] == kind)
    other = {"left": "right", "right": "left"}[side]
    named, unnamed = (side, other) if own else (other, side)
    text = text.replace(f"it turns {other}", "")  # an arc that lies left of its string turns right
    assert f" {named}" in text and unnamed not in text


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("keys", [{}, {"start": "corner"}, {"start": "one-end"}], ids=["ends", "corner", "one end"])
def test_a_turned_hand_is_that_of_the_marks_on_the_ground(side: str, keys: dict[str, Any]) -> None:
    """Tangent offsets and coordinates: the hand in the sentence against the cross product of the marks, a curve on the
    right being the mirror image of the frame."""
    known = [{"name": "Post", "x": 9, "y": 1}]
    control = {"marks": [{"mark": "Post", "x": 9, "y": 1}, {"mark": "A", "x": 0, "y": 0}]}
    for method, more in (("tangent", {}), ("coordinates", {"known": known, "control": control})):
        answer = answered(method=method, centre="reachable", side=side, **keys, **more)
        mirror = -1 if side == "right" else 1
        at = {mark["name"]: complex(mark["x"], mirror * mark["y"]) for mark in answer["marks"]}
        seen = set()
        for step in answer["steps"]:
            if step["kind"] not in ("tangent_offset", "tangent_offset_past", "polar"):
                continue
            names = step["names"]
            if step["kind"] == "polar":
                way, off = at[names["end"]] - at[names["start"]], at[names["stake"]] - at[names["start"]]
            else:
                # Seen from the end toward the foot, whether that's toward the mark or away from it.
                way, off = at[names["foot"]] - at[names["start"]], at[names["stake"]] - at[names["foot"]]
            hand = "left" if (way.conjugate() * off).imag > 0 else "right"
            assert f"to the {hand}" in step["text"], step["text"]
            seen.add(hand)
        assert seen == {"left", "right"}


@pytest.mark.parametrize("axes", ["x-y", "n-e"])
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("turn", [0.0, 37.0, 200.0])
def test_drawing_coordinates_are_a_rigid_move_of_the_ground(axes: str, side: str, turn: float) -> None:
    """The drawing is seen from above, as the ground is: a curve on the left of A-B lies on the left of it there too,
    a curve on the right on the right. The two control marks fix turn and place."""
    onto = complex(cos(radians(turn)), sin(radians(turn)))
    origin, mirror = complex(5012.25, 3050.5), -1 if side == "right" else 1
    post = complex(-4, 3)

    def drawn(place: complex) -> complex:
        return origin + onto * complex(place.real, mirror * place.imag)

    def row(mark: str, place: complex) -> dict[str, Any]:
        value = drawn(place)
        across, up = axes.split("-")[::-1] if axes == "n-e" else axes.split("-")
        return {"mark": mark, across: value.real, up: value.imag}

    answer = answered(
        method="coordinates",
        side=side,
        known=[{"name": "Post", "x": post.real, "y": post.imag}],
        control={"axes": axes, "marks": [row("Post", post), row("B", 18 + 0j)]},
    )
    circle = Circle(18, 3.4)
    for number, stake in enumerate(answer["stakes"]):
        want = drawn(complex(*circle.at(mpmath.mpf(number) / 8)))
        first, second = stake["drawing"]
        got = complex(second, first) if axes == "n-e" else complex(first, second)
        assert abs(got - want) <= 1e-8  # five thousand metres hold so many digits
    # The hand on the drawing itself: from A to B the middle stake is on the side that was said.
    a, middle, b = (
        complex(*(stake["drawing"][::-1] if axes == "n-e" else stake["drawing"]))
        for stake in (answer["stakes"][0], answer["stakes"][4], answer["stakes"][-1])
    )
    assert (((b - a).conjugate() * (middle - a)).imag > 0) is (side == "left")


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_side_turns_words_and_no_figure(side: str) -> None:
    one, other = answered(method="tangent", side=side), answered(method="tangent")
    assert one["marks"] == other["marks"] and one["stakes"] == other["stakes"]
