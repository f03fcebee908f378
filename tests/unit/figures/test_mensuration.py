"""Single arcs out of old mensuration, each to half a unit of its last printed digit. Sources not named fully."""

from __future__ import annotations

import pytest

from helping import metres, solve


def test_diameter_from_a_versed_sine() -> None:
    """Printed in an 18th-century English mensuration text, problem 15, source not named fully: recomputed at 50 digits.
    Chord 36 in, versed sine 6 in: diameter 60 in."""
    one = solve({"chord": "36 in", "sagitta": "6 in"}, "ft-in")["arc"]
    assert 2 * one["radius"] / 0.0254 == pytest.approx(60, rel=1e-12)


def test_sector_from_a_half_arcs_chord() -> None:
    """Printed in an 18th-century mensuration article, source not named fully: recomputed at 50 digits. R 10, chord of
    half the arc 10, versed sine 5: sector 104.720."""
    answer = solve({"radius": 10, "sagitta": 5}, levels=2)
    assert answer["halving"][1]["chord"] == pytest.approx(10, rel=1e-12)
    assert abs(10 * answer["arc"]["arc_length"] / 2 - 104.720) <= 0.0005


def test_segment_of_a_circle() -> None:
    """The same article, source not named fully: recomputed at 50 digits. R 50, chord 60: angle 73°44', sector 1608.6,
    triangle 1200, segment 408.6; exact 1608.753 and 408.753, since the print rounds the angle to the minute."""
    one = metres({"radius": 50, "chord": 60})
    assert abs(one["central_angle"] - (73 + 44 / 60)) <= 0.5 / 60
    sector = 50 * one["arc_length"] / 2
    triangle = one["chord"] * (50 - one["sagitta"]) / 2
    assert abs(triangle - 1200) < 1e-8
    assert abs(sector - 1608.753) <= 0.0005 and abs(sector - triangle - 408.753) <= 0.0005
    printed = 50 * metres({"radius": 50, "central_angle": "73° 44'"})["arc_length"] / 2
    assert abs(printed - 1608.6) <= 0.05 and abs(printed - 1200 - 408.6) <= 0.05


def test_arc_from_two_chords_by_the_old_rule() -> None:
    """Printed in The English Cyclopaedia, "Mensuration", edition not known, so source not named fully: recomputed at 50
    digits. (8 e - c)/3 with e the half arc's chord; 30° arc, R 9: 4.7124."""
    answer = solve({"radius": 9, "central_angle": 30}, levels=2)
    assert abs(answer["arc"]["arc_length"] - 4.7124) <= 0.00005
    rule = (8 * answer["halving"][1]["chord"] - answer["halving"][0]["chord"]) / 3
    assert abs(rule - 4.71234) <= 0.000005


@pytest.mark.parametrize(("degrees", "part"), [(30, 102389), (60, 6439), (90, 1285)])
def test_how_short_the_old_rule_is(degrees: float, part: int) -> None:
    """Computed identity, at 50 digits: always short, by 1/102389 at 30°, 1/6439 at 60°, 1/1285 at 90°."""
    assert abs(old_rule_part(degrees) - part) <= 0.5


def old_rule_part(degrees: float) -> float:
    answer = solve({"radius": 9, "central_angle": degrees}, levels=2)
    rule = (8 * answer["halving"][1]["chord"] - answer["halving"][0]["chord"]) / 3
    length: float = answer["arc"]["arc_length"]
    return length / (length - rule)


def test_where_the_cyclopaedias_claim_holds() -> None:
    """The English Cyclopaedia, edition not known, so source not named fully, claims 1/7000 at 60°; recomputed at 50
    digits, that holds only to 58.75°."""
    assert old_rule_part(58.74) > 7000 > old_rule_part(58.76)
    assert old_rule_part(60) < 7000
