"""A refusal says what really is in the way, not what that leads to."""

from __future__ import annotations

from typing import Any

import pytest

import bowstring
from bowstring.errors import BadJob

JOB: dict[str, Any] = {"unit": "m", "side": "left", "drawn_to": "face"}


def refused(method: str, radius: float, angle: float, **keys: Any) -> BadJob:
    with pytest.raises(BadJob) as caught:
        bowstring.answer({**JOB, "arc": {"radius": radius, "central_angle": angle}, "method": method, **keys})
    return caught.value


@pytest.mark.parametrize("spacing", [None, 0.01, 1, 5])
@pytest.mark.parametrize(
    ("method", "angle", "keys", "key"),
    [
        ("tangent", 170, {"tangent_from": "A"}, "tangent_overhang_one"),
        ("tangent", 91, {"tangent_from": "B"}, "tangent_overhang_one"),
        ("tangent", 200, {"tangent_from": "A"}, "tangent_overhang"),
        ("tangent", 200, {}, "tangent_overhang"),
        ("ordinates", 200, {}, "ordinates_overhang"),
        ("tapes", 120, {"known": [{"name": "nail", "x": 0, "y": 0}], "tapes_from": ["A", "nail"]}, "marks_are_one"),
    ],
)
def test_the_arc_s_own_reason_comes_before_the_number_of_stakes(
    method: str, angle: float, keys: dict[str, Any], key: str, spacing: float | None
) -> None:
    why = refused(method, 20, angle, **keys, **({} if spacing is None else {"spacing": spacing}))
    assert (why.field, why.key) == ("method", f"method.{key}")


@pytest.mark.parametrize(
    ("method", "says", "silent"), [("halving", "halving", "gaps are"), ("tapes", "4096", "halving")]
)
def test_a_spacing_too_narrow_speaks_of_the_method_asked_for(method: str, says: str, silent: str) -> None:
    why = refused(method, 20, 100, spacing=0.001)
    assert why.field == "spacing" and says in str(why) and silent not in str(why)


def test_the_comparison_gives_the_arc_s_own_reason_too() -> None:
    """Past a half circle no number of stakes along a tangent would do: it isn't told as too many of them."""
    answer = bowstring.answer({**JOB, "arc": {"radius": 10, "central_angle": 250}, "spacing": 2, "method": "halving"})
    rows = {row["method"]: row for row in answer["methods"]}
    assert "more than half a circle" in rows["tangent"]["why_not"]
    assert "more than half a circle" in rows["ordinates"]["why_not"]
