"""A pad in the drawing over the measures: its sides behind the string, the other curve, a building at its back."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.faces.live_drawing import live_drawing
from bowstring.faces.settling import arcs_of_fields
from bowstring.page.fields import fields_of_job
from unit.report.test_build_pad import BOTH, PAD
from unit.report.test_pad_ends import AGAINST

LONG: dict[str, Any] = {**PAD, "slab": {**PAD["slab"], "sides": "90 ft"}}
SHORT: dict[str, Any] = {**PAD, "slab": {**PAD["slab"], "sides": "3 ft"}}


def drawn(job: dict[str, Any], *, short: bool = False, side: str | None = "left") -> str:
    typed = {name: text for name, text in fields_of_job(job).items() if text}  # type: ignore[arg-type]
    return live_drawing(arcs_of_fields(typed), typed, side=side, focus="", short=short)


def lines(svg: str) -> list[list[tuple[float, float]]]:
    """Every line with its points, whichever it is."""
    found = []
    for path in re.findall(r' d="(M[^"]*)"', svg):
        for piece in path.split("M")[1:]:
            numbers = [float(one) for one in re.findall(r"-?[\d.]+", piece)]
            found.append(list(zip(numbers[::2], numbers[1::2], strict=True)))
    return found


def sides_of(svg: str) -> list[list[tuple[float, float]]]:
    """The straight lines that run straight down from A and B."""
    return [one for one in lines(svg) if len(one) == 2 and one[0][0] == one[1][0] and one[0][0] != 180.0]


@pytest.mark.parametrize("job", [PAD, AGAINST, BOTH, LONG])
def test_both_sides_run_back_from_a_and_b(job: dict[str, Any]) -> None:
    svg = drawn(job)
    left, right = sides_of(svg)
    arc = next(one for one in reversed(lines(svg)) if len(one) > 15)  # drawn after what lies behind it
    assert (left[0], right[0]) == (arc[0], arc[-1])
    assert left[1][1] == right[1][1] > left[0][1]
    assert max(y for one in lines(svg) for _x, y in one) <= 162.0  # over the names at the ends


def test_short_sides_are_drawn_as_long_as_they_are_and_long_ones_short() -> None:
    """3 ft of sides beside a chord of 20 ft: 3/20 of its drawn length; 90 ft as long as 15."""
    for job, feet in ((SHORT, 3.0), (LONG, None)):
        left, right = sides_of(drawn(job))
        long, chord = left[1][1] - left[0][1], right[0][0] - left[0][0]
        assert long == pytest.approx(chord * feet / 20 if feet else 44.0, abs=0.2)


def test_a_building_is_drawn_and_named_where_there_is_one() -> None:
    assert ">building<" in drawn(AGAINST) and "run back from it to a building." in drawn(AGAINST)
    for job in (PAD, BOTH, {**AGAINST, "slab": {"thickness": "4 in", "fills": True}}):
        assert "building" not in drawn(job)


def test_nothing_is_drawn_behind_an_arc_without_sides_or_without_a_hand() -> None:
    bare = {**PAD, "slab": {"thickness": "4 in", "fills": True}}
    assert not sides_of(drawn(bare)) and drawn(AGAINST, short=True) == drawn(bare, short=True)
    assert drawn(AGAINST, side=None) == drawn(bare, side=None)
