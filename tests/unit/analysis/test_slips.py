"""What a reading that differs looks like, each slip planted."""

from __future__ import annotations

import pytest

from bowstring.analysis.slips import find_slips, slips_of
from bowstring.construction import Measure
from bowstring.units.lengths import read_length
from bowstring.units.tape import make_tape
from slipped import job_of, laid_out

INCHES = [
    ("4' 0-1/8\"", "5' 0-1/8\"", ["foot"]),
    ("4' 0-1/8\"", "3' 0-1/8\"", ["foot"]),
    ("4' 0-1/8\"", "5' 0-1/4\"", ["foot"]),  # the foot, and a mark that was there besides
    ("1' 4\"", "1' 5\"", ["inch"]),
    ("1' 4\"", "1' 3\"", ["inch"]),
    ("16' 3\"", "19' 3\"", ["six_nine"]),
    ("19' 8-1/2\"", "16' 8-1/2\"", ["six_nine"]),
    ('9"', '6"', ["six_nine"]),
    ("12' 3\"", "21' 3\"", ["swapped"]),
    ("1' 4-3/8\"", "1' 4-3/4\"", ["fraction"]),
    ("1' 4\"", "1' 4-1/8\"", []),  # a mark
    ("1' 4\"", "1' 4-1/2\"", []),
    ("1' 4\"", "1' 4\"", []),
    ("10' 0\"", "17' 2\"", []),
]
METRES = [
    ("4.125 m", "4.225 m", ["decimetre"]),
    ("4.125 m", "4.025 m", ["decimetre"]),
    ("4.125 m", "5.125 m", ["metre"]),
    ("4.170 m", "4.710 m", ["swapped"]),
    ("6.200 m", "9.200 m", ["six_nine"]),
    ("4.125 m", "4.150 m", []),
    ("4.125 m", "4.130 m", []),
]


@pytest.mark.parametrize(("unit", "asked", "read", "kinds"), [
    *(("ft-in", *row) for row in INCHES), *(("m", *row) for row in METRES),
])  # fmt: skip
def test_a_planted_slip_is_named(unit, asked, read, kinds):
    lengths = (read_length(text, unit, "test").metres for text in (asked, read))
    found = list(slips_of(*lengths, make_tape(unit, None)))
    assert found[:1] == kinds, found


def test_an_eighth_read_as_a_quarter_is_a_mark_of_a_finer_tape_only():
    lengths = tuple(read_length(text, "ft-in", "test").metres for text in ('3-1/8"', '3-1/4"'))
    assert list(slips_of(*lengths, make_tape("ft-in", None))) == []
    assert list(slips_of(*lengths, make_tape("ft-in", "1/32 in"))) == ["fraction"]


def found_at(name, stake, pair, length):
    layout = laid_out(job_of(name))
    step = next(one for one in layout.recipe.steps if one.stake == stake)
    asked = next(one.length for one in _all(layout, step) if {one.start, one.end} == set(pair))
    read = length(layout)
    told = [Measure(*pair, read)]
    slips = find_slips(told, [Measure(*pair, asked)], step.moves, layout.recipe.at, step.names, layout.job.tape)
    return [one.kind for one in slips]


def _all(layout, step):
    from bowstring.analysis.taped import taped_in
    from bowstring.geometry.plane import distance

    at = layout.recipe.at
    return [Measure(one, other, distance(at[one], at[other])) for one, other in taped_in(step)]


def test_a_foot_taped_from_the_string_s_other_end():
    def other(layout):
        return layout.staked.chord - layout.recipe.at["foot K2"].x

    assert "other_end" in found_at("ordinates", "K2", ("A", "foot K2"), other)
    assert "other_end" not in found_at("ordinates", "K2", ("A", "foot K2"), lambda layout: other(layout) + 0.02)


def test_a_stake_set_on_the_other_hand():
    """A to K2 by the gap from the stake before: on the other side of the chord it is the mirror image's distance."""
    from math import hypot

    def mirrored(layout):
        at = layout.recipe.at
        return hypot(at["K2"].x - at["K1"].x, -at["K2"].y - at["K1"].y)

    layout = laid_out(job_of("ordinates"))
    step = next(one for one in layout.recipe.steps if one.stake == "K2")
    at = layout.recipe.at
    asked = hypot(at["K2"].x - at["K1"].x, at["K2"].y - at["K1"].y)
    pair = ("K1", "K2")
    slips = find_slips([Measure(*pair, mirrored(layout))], [Measure(*pair, asked)], step.moves, at, step.names,
                       layout.job.tape)  # fmt: skip
    assert [one.kind for one in slips] == ["other_hand"]
