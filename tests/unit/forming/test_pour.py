"""Concrete to order, against figures that somebody else printed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring.forming.pour import CUBIC_YARD, bags, loads, mean_depth, order, reached, steps_up

FOOT, INCH = 0.3048, 0.0254
volumes, steps = st.floats(0.01, 500), st.sampled_from([0.25, 0.5, 0.1, 1.0])


def yards(square_feet: float, inches: float) -> float:
    return square_feet * FOOT**2 * inches * INCH / CUBIC_YARD


def test_a_yard_covers_what_the_trade_says() -> None:
    """81, 64.8 and 54 square feet at 4, 5 and 6 inches: common practice, no source."""
    for inches, covered in ((4, 81), (5, 64.8), (6, 54)):
        assert yards(covered, inches) == pytest.approx(1)


def test_a_printed_example() -> None:
    """420 square feet at 4 in: printed 5.18 cubic yards (cut off; 5.185), with 5 % 5.44 (a ready-mix guide, quoted)."""
    made = order(yards(420, 4) * CUBIC_YARD, 0.05, 0.25 * CUBIC_YARD)
    assert made.needed / CUBIC_YARD == pytest.approx(5.185, abs=5e-4)
    assert made.with_waste / CUBIC_YARD == pytest.approx(5.44, abs=5e-3)
    assert made.ordered / CUBIC_YARD == pytest.approx(5.5)


@given(volumes, steps)
def test_an_order_is_whole_steps_and_the_next_one_down_is_too_little(volume: float, step: float) -> None:
    up = steps_up(volume, step)
    assert up / step == pytest.approx(round(up / step), abs=1e-9)
    assert up >= volume - 1e-8 * step and up - step < volume


@given(st.integers(1, 400), steps)
def test_what_is_on_a_step_stays_there(count: int, step: float) -> None:
    assert steps_up(count * step, step) == pytest.approx(count * step)


def test_half_an_inch_of_low_base_is_an_eighth_of_a_four_inch_slab() -> None:
    area = 236.5 * FOOT**2
    made, low = (order(area * depth * INCH, 0.08, 0.25 * CUBIC_YARD) for depth in (4, 4.5))
    assert low.needed / made.needed == pytest.approx(1.125)
    assert made.ordered / CUBIC_YARD == pytest.approx(3.25)
    assert made.fills(area) * area == pytest.approx(made.ordered - made.needed)


def test_depths_are_weighed_by_what_lies_between_them() -> None:
    assert mean_depth(((0, 0.10), (3, 0.12), (4, 0.14))) == pytest.approx((3 * 0.11 + 1 * 0.13) / 4)
    for wrong in (((0.0, 0.1),), ((1.0, 0.1), (1.0, 0.2))):
        with pytest.raises(ValueError, match="two places"):
            mean_depth(wrong)


@given(volumes, st.floats(3, 10))
def test_loads_are_full_but_the_last(volume: float, truck: float) -> None:
    count, last = loads(volume, truck)
    assert (count - 1) * truck + last == pytest.approx(volume)
    assert 0 < last <= truck * (1 + 1e-9)


def test_bags_round_up() -> None:
    assert bags(0.6 * 142, 0.6) == 142 and bags(0.6 * 141.2, 0.6) == 142


def test_short_of_its_share_of_the_form_the_order_is_too_small() -> None:
    planned, least = reached(0.5, 3.25, 2.92, 49.3)
    assert least == pytest.approx(24.65) and planned == pytest.approx(49.3 * 0.5 * 3.25 / 2.92)
    assert reached(0.95, 3.25, 2.92, 49.3)[0] == 49.3


def test_what_makes_no_order_is_refused() -> None:
    for volume, waste, step in ((0, 0.05, 0.25), (1, -0.01, 0.25), (1, 0.05, 0)):
        with pytest.raises(ValueError, match="order"):
            order(volume, waste, step)
