"""Ordinates from the long chord: the arcs from memory, their ordinates recomputed at 50 digits."""

from __future__ import annotations

import pytest

from helping import metres
from printed import assert_printed, laid, taped

ROWS = {
    "C 80, M 4, R 202": ({"chord": 80, "sagitta": 4}, 202, 10, ["4.0000", "3.7523", "3.0075", "1.7599"]),
    "C 80, M 5, R 162.5": ({"chord": 80, "sagitta": 5}, 162.5, 10, ["5.0000", "4.6920", "3.7645", "2.2068"]),
    "C 72, R 120": (
        {"chord": 72, "radius": 120},
        120,
        6,
        ["5.5273", "5.3772", "4.9258", "4.1696", "3.1028", "1.7168"],
    ),
}


@pytest.mark.parametrize(("given", "radius", "step", "printed"), ROWS.values(), ids=ROWS.keys())
def test_ordinates_every_so_far_from_mid_chord(
    given: dict[str, float], radius: float, step: int, printed: list[str]
) -> None:
    """The ordinate at x from mid-chord is the sagitta of the long chord less the sagitta of the chord 2x of
    the same circle."""
    long = metres(dict(given))
    assert long["radius"] == pytest.approx(radius, rel=1e-12)
    for number, figure in enumerate(printed):
        less = metres({"radius": long["radius"], "chord": 2 * step * number})["sagitta"] if number else 0.0
        assert abs(long["sagitta"] - less - float(figure)) <= 0.00005
    assert metres({"radius": long["radius"], "chord": long["chord"]})["sagitta"] == pytest.approx(
        long["sagitta"], rel=1e-11
    )


ORDINATES = {
    "C 80, M 4": ({"chord": 80, "sagitta": 4}, 10, ["4.0000", "3.7523", "3.0075", "1.7599"]),
    "C 80, M 5": ({"chord": 80, "sagitta": 5}, 10, ["5.0000", "4.6920", "3.7645", "2.2068"]),
    "C 72, R 120": ({"chord": 72, "radius": 120}, 6, ["5.5273", "5.3772", "4.9258", "4.1696", "3.1028", "1.7168"]),
}


@pytest.mark.parametrize(("given", "step", "printed"), ORDINATES.values(), ids=ORDINATES.keys())
def test_ordinates_as_they_are_taped(given: dict[str, float], step: int, printed: list[str]) -> None:
    """Every so far along the string, from its nearer end, and the same from both."""
    chord, count = given["chord"], len(printed)
    stations = [step * number for number in range(1, 2 * count)]
    answer = laid("m", given, "ordinates", stations=stations)
    for number, station in enumerate(stations, 1):
        near = "A" if station <= chord / 2 else "B"
        assert taped(answer, near, f"foot K{number}") == pytest.approx(min(station, chord - station), abs=1e-9)
        assert_printed(taped(answer, f"foot K{number}", f"K{number}"), printed[abs(number - count)])
