"""Arcs whose radius, half chord and sagitta are whole numbers. Computed identity: every Pythagorean triple
gives two."""

from __future__ import annotations

import pytest

from helping import metres

# The sixteen primitive triples with hypotenuse up to 100.
TRIPLES = [
    (3, 4, 5),
    (5, 12, 13),
    (8, 15, 17),
    (7, 24, 25),
    (20, 21, 29),
    (12, 35, 37),
    (9, 40, 41),
    (28, 45, 53),
    (11, 60, 61),
    (16, 63, 65),
    (33, 56, 65),
    (48, 55, 73),
    (13, 84, 85),
    (36, 77, 85),
    (39, 80, 89),
    (65, 72, 97),
]
# Spelt out: radius, chord, sagitta.
SPELT = [
    (5, 6, 1),
    (5, 8, 2),
    (13, 10, 1),
    (13, 24, 8),
    (17, 16, 2),
    (17, 30, 9),
    (25, 14, 1),
    (25, 48, 18),
    (29, 40, 8),
    (29, 42, 9),
    (37, 24, 2),
    (37, 70, 25),
    (202, 80, 4),
]
ARCS = sorted(set(SPELT) | {(c, 2 * leg, c - other) for a, b, c in TRIPLES for leg, other in ((a, b), (b, a))})


@pytest.mark.parametrize(("radius", "chord", "sagitta"), ARCS)
def test_whole_numbers_come_back(radius: int, chord: int, sagitta: int) -> None:
    want = {"radius": radius, "chord": chord, "sagitta": sagitta}
    for left_out in want:
        given = {field: value for field, value in want.items() if field != left_out}
        got = metres(given)
        for field, value in want.items():
            assert got[field] == pytest.approx(value, rel=1e-12), (given, field)


@pytest.mark.parametrize(("radius", "chord", "sagitta"), ARCS)
def test_the_other_arc_on_the_same_chord(radius: int, chord: int, sagitta: int) -> None:
    got = metres({"radius": radius, "chord": chord}, greater=True)
    assert got["sagitta"] == pytest.approx(2 * radius - sagitta, rel=1e-12)


def test_the_triples_are_right_triangles() -> None:
    assert len(TRIPLES) == 16
    assert all(a * a + b * b == c * c for a, b, c in TRIPLES)
    assert all((r - m) ** 2 + (c / 2) ** 2 == r * r for r, c, m in SPELT)
