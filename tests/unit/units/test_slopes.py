"""Slopes as drawings give them."""

from __future__ import annotations

from fractions import Fraction

import pytest

import bowstring
from bowstring import BadJob
from bowstring.units.slopes import is_plain, read_slope, show_slope
from helping import answer_to
from slab_jobs import WALK

SAID = {
    # By hand: a rise of so many inches over 12, of so many millimetres over 1,000, one over so many.
    "2": Fraction(2), "1.5%": Fraction(3, 2), " 2 % ": Fraction(2), ".5": Fraction(1, 2),
    '1/4" per ft': Fraction(25, 12), "1/8 in per foot": Fraction(25, 24), '1/8"/ft': Fraction(25, 24),
    "1/4 per ft": Fraction(25, 12), "0.25 in / ft": Fraction(25, 12), "1-1/2 in per ft": Fraction(25, 2),
    "1/4″/′": Fraction(25, 12), "1:48": Fraction(25, 12), "1 in 50": Fraction(2), "1 : 20": Fraction(5),
    "20 mm/m": Fraction(2), "1 cm per m": Fraction(1), "0": Fraction(0),
}  # fmt: skip


@pytest.mark.parametrize(("typed", "percent"), SAID.items())
def test_as_drawings_give_them(typed: str, percent: Fraction) -> None:
    assert read_slope(typed, "grade.slope", 25) == percent


@pytest.mark.parametrize("typed", ["1/4", "1-1/4"])
def test_a_fraction_alone_is_asked_for(typed: str) -> None:
    with pytest.raises(BadJob, match="inches per foot or percent"):
        read_slope(typed, "grade.slope", 25)


@pytest.mark.parametrize(
    "typed", ["26", "1:3", "-1", "2:1", "48:1", "1/4 in", "1/0 per ft", "1:0", "4 per m", "1/4 per yd", "", "x", True,
              None, '4" per ft', "1 in per 48", "9" * 99]
)  # fmt: skip
def test_what_is_no_slope_is_refused(typed: object) -> None:
    with pytest.raises(BadJob):
        read_slope(typed, "grade.slope", 25)


def test_a_job_has_the_same_tops_by_either_and_says_how_it_was_read() -> None:
    percent, foot = (
        answer_to({**WALK, "grade": {**WALK["grade"], "slope": slope}}) for slope in (25 / 12, '1/4" per ft')
    )
    assert [one["outside"]["level"] for one in foot["grades"]["rows"]] == pytest.approx(
        [one["outside"]["level"] for one in percent["grades"]["rows"]], abs=1e-12
    )
    read = {one["field"]: one for one in foot["readings"]}
    assert read["grade.slope"]["typed"] == '1/4" per ft' and "2.083%" in str(read["grade.slope"])
    assert "grade.slope" not in {one["field"] for one in percent["readings"]}
    with pytest.raises(BadJob, match=r"grade\.cross"):
        bowstring.answer({**WALK, "grade": {"cross": "1/8"}})  # type: ignore[typeddict-item]


def test_it_is_told_in_percent() -> None:
    assert [show_slope(one) for one in (Fraction(2), Fraction(25, 24), Fraction(0))] == ["2%", "1.042%", "0%"]
    assert is_plain("2 %") and is_plain(2.0) and not is_plain("1:50")


@pytest.mark.parametrize(
    ("field", "asked"), [("grade.slope", "which end is high"), ("grade.cross", "which edge is low")]
)
@pytest.mark.parametrize("typed", ["-1.2", "-1.2%", "\N{MINUS SIGN}2", "-1:50", -1.2])
def test_a_slope_with_a_minus_says_to_leave_it_off(field: str, asked: str, typed: object) -> None:
    with pytest.raises(BadJob, match=f"Leave off the minus; tap {asked}"):
        read_slope(typed, field, 25)


def test_a_limit_with_a_minus_is_no_slope_as_before() -> None:
    for field, typed in (("grade.limit", "-5"), ("grade.slope", "-x"), ("grade.slope", "-")):
        with pytest.raises(BadJob, match="isn't a slope from 0 to 25%"):
            read_slope(typed, field, 25)
