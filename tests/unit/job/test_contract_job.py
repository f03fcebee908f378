"""How a job is read: defaults, levels and spacing, marks, the offset, free text."""

from __future__ import annotations

import math
from typing import Any

import pytest

from helping import answer_to, solve

PLAIN: dict[str, Any] = {"arc": {"chord": "40 ft", "sagitta": "6 ft"}}


def test_defaults_of_an_empty_job_with_an_arc() -> None:
    bare = answer_to(dict(PLAIN))
    full = answer_to({**PLAIN, "bowstring": 1, "unit": "ft-in", "mark": "1/8 in", "side": "left"})
    assert bare["arc"] == full["arc"] and bare["stakes"] == full["stakes"]
    for one, other in zip(bare["halving"], full["halving"], strict=True):  # in words only the second has a hand
        assert {**one, "how": ""} == {**other, "how": ""}
    assert bare["rounding"] == full["rounding"] and bare["side"] is None and full["side"] == "left"
    assert bare["unit"] == "ft-in"


@pytest.mark.parametrize("levels", [1, 2, 5, 12])
def test_levels(levels: int) -> None:
    got = answer_to({"unit": "m", "arc": {"chord": 400, "sagitta": 60}, "levels": levels})
    assert len(got["halving"]) == levels and len(got["stakes"]) == 2**levels + 1


def gap(got: dict[str, Any], levels: int) -> float:
    """The straight gap between neighbouring stakes after so many levels, metres."""
    staked = got["staked"]
    return float(2 * staked["radius"] * math.sin(math.radians(staked["central_angle"]) / 2 / 2**levels))


def rise(got: dict[str, Any], level: int) -> float:
    """The sagitta of a level, metres."""
    half = math.radians(got["staked"]["central_angle"]) / 2 / 2 ** (level - 1)
    return float(2 * got["staked"]["radius"] * math.sin(half / 2) ** 2)


# How a length is read in each unit is held elsewhere: here one of each beside all angles in metres.
SPACINGS: list[tuple[int, str, Any, float]] = [
    *((degrees, "m", wide, wide) for degrees in (40, 180, 300) for wide in (3.0, 11.4, 500.0)),
    (40, "m", "75 cm", 0.75),
    (40, "mm", 2500, 2.5),
    (40, "ft", 5, 1.524),
    (180, "ft-in", "4 ft", 1.2192),
    (40, "ft-in", "2' 6\"", 0.762),
]


@pytest.mark.parametrize(("degrees", "unit", "spacing", "metres_wide"), SPACINGS)
def test_spacing_takes_the_fewest_levels_that_keep_every_gap(
    degrees: int, unit: str, spacing: Any, metres_wide: float
) -> None:
    got = answer_to({"unit": unit, "arc": {"radius": "20 m", "central_angle": degrees}, "spacing": spacing})
    levels = len(got["halving"])
    assert gap(got, levels) <= metres_wide
    assert levels == 1 or gap(got, levels - 1) > metres_wide
    for one, two in zip(got["stakes"], got["stakes"][1:], strict=False):
        assert math.dist((one["x"], one["y"]), (two["x"], two["y"])) <= metres_wide + 1e-9


def test_spacing_is_measured_on_the_staked_arc() -> None:
    """Stakes far outside a tight arc stand wider than their shadows on the drawn arc."""
    got = answer_to(
        {
            "unit": "m",
            "arc": {"radius": 4, "central_angle": 90},
            "spacing": 1.2,
            "offset": 2,
            "toward": "outside",
        }
    )
    assert gap(got, len(got["halving"])) <= 1.2
    assert got["staked"]["radius"] == pytest.approx(6)


def test_levels_win_over_spacing() -> None:
    got = answer_to({**PLAIN, "levels": 2, "spacing": "1 ft"})
    assert len(got["halving"]) == 2


@pytest.mark.parametrize(
    ("unit", "mark", "mark_metres", "widest"),
    [
        ("ft-in", "1/8 in", 0.003175, 1.2192),
        ("ft-in", "1/32 in", 0.00079375, 1.2192),
        ("ft-in", "1/2 in", 0.0127, 1.2192),
        ("ft", None, 0.003048, 1.2192),
        ("ft", 0.1, 0.03048, 1.2192),
        ("m", None, 0.005, 1.2),
        ("mm", "10 mm", 0.01, 1.2),
    ],
)
@pytest.mark.parametrize(
    "given",
    [
        {"chord": "40 m", "sagitta": "6 m"},
        {"chord": "40 m", "sagitta": "0.3 m"},
        {"radius": "3 m", "central_angle": 300},
        {"chord": "100 m", "sagitta": "30 mm"},
    ],
    ids=str,
)
def test_default_levels(given: dict[str, Any], unit: str, mark: Any, mark_metres: float, widest: float) -> None:
    """Until the gap is at most 4 ft or 1.2 m, stopping before a sagitta under 4 marks (but one level at
    least)."""
    got = answer_to({"unit": unit, "arc": given, **({} if mark is None else {"mark": mark})})
    levels = 1
    while gap(got, levels) > widest and rise(got, levels + 1) >= 4 * mark_metres:
        levels += 1
    assert len(got["halving"]) == levels


MARKS = [
    ("ft-in", "1/2 in"),
    ("ft-in", "1/4 in"),
    ("ft-in", "1/8 in"),
    ("ft-in", "1/16 in"),
    ("ft-in", "1/32 in"),
    ("ft", 0.1),
    ("ft", "0.01 ft"),
    ("ft", "0.1"),
    ("m", 0.01),
    ("m", "0.005 m"),
    ("m", 0.001),
    ("m", "5 mm"),
    ("mm", 1),
    ("mm", "5 mm"),
    ("mm", 10),
]


@pytest.mark.parametrize(("unit", "mark"), MARKS, ids=str)
def test_every_mark_of_the_contract(unit: str, mark: Any) -> None:
    got = answer_to({"unit": unit, "arc": {"chord": "12 m", "sagitta": "1.7 m"}, "mark": mark, "levels": 3})
    assert isinstance(got["mark"], str) and got["mark"]
    fine = {
        "1/2 in": 12.7,
        "1/4 in": 6.35,
        "1/8 in": 3.175,
        "1/16 in": 1.5875,
        "1/32 in": 0.79375,
        "0.01 ft": 3.048,
        "0.1": 30.48,
        "0.005 m": 5,
        "5 mm": 5,
    }
    size = fine[mark] if isinstance(mark, str) else mark * {"ft": 304.8, "m": 1000, "mm": 1}[unit]
    assert abs(got["rounding"]["worst_miss"]) <= 3 * size / 1000  # three levels, half a mark each, carried on


@pytest.mark.parametrize(("toward", "sign"), [("centre", -1), ("outside", 1)])
@pytest.mark.parametrize("degrees", [30, 180, 290])
def test_offset_is_concentric(toward: str, sign: int, degrees: int) -> None:
    got = solve({"radius": 10, "central_angle": degrees}, offset="0.15 m", toward=toward)
    assert got["arc"]["radius"] == pytest.approx(10, rel=1e-12)
    assert got["staked"]["radius"] == pytest.approx(10 + sign * 0.15, rel=1e-12)
    assert got["staked"]["central_angle"] == pytest.approx(degrees, rel=1e-12)


def test_the_example_moved_by_an_inch_and_a_half() -> None:
    """Computed: chord 168 ft, sagitta 33 ft, moved 1-1/2 in: the chord changes by 2.04 in and the sagitta
    by 0.40 in."""
    got = solve({"chord": "168'", "sagitta": "33'"}, "ft-in", offset="1-1/2 in", toward="centre")
    assert (got["arc"]["chord"] - got["staked"]["chord"]) / 0.0254 == pytest.approx(2.042, abs=0.0005)
    assert (got["arc"]["sagitta"] - got["staked"]["sagitta"]) / 0.0254 == pytest.approx(0.401, abs=0.0005)


def test_free_text_comes_through_as_typed() -> None:
    got = answer_to(
        {
            **PLAIN,
            "title": "Path <b>1</b> & more",
            "note": "ümlaut 'quoted'",
            "ends": {"A": "the oak", "B": "gate post, left"},
        }
    )
    assert got["title"] == "Path <b>1</b> & more" and got["note"] == "ümlaut 'quoted'"
    assert got["ends"] == {"A": "the oak", "B": "gate post, left"}


def test_longest_free_text_is_taken() -> None:
    texts: dict[str, Any] = {"title": "t" * 80, "note": "n" * 280, "ends": {"A": "a" * 40, "B": "b" * 40}}
    got = answer_to({**PLAIN, **texts})
    assert {name: got[name] for name in texts} == texts


def test_a_sensitive_given_is_cautioned_and_a_solid_one_is_not() -> None:
    """One 5 mm mark on a 10 mm rise moves the radius by half; on a 2 m rise it moves nothing that matters."""
    loose = solve({"chord": 10, "sagitta": 0.1})["cautions"]
    solid = solve({"chord": 10, "sagitta": 2})["cautions"]
    assert len(loose) > len(solid)
