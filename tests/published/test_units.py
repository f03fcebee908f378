"""Units: the international foot and inch, exactly, and not the US survey foot."""

from __future__ import annotations

import pytest

from helping import solve

# NIST/NOAA, 84 FR 55562 (2019) and 85 FR 62698 (2020): 0.3048 m exactly; the survey foot, 1200/3937 m, is
# superseded.
FOOT, SURVEY_FOOT = 0.3048, 1200 / 3937


@pytest.mark.parametrize("feet", [1, 10, 100, 3937])
def test_a_foot_is_the_international_foot(feet: int) -> None:
    for text, unit in ((f"{feet} ft", "m"), (f"{feet}'", "ft-in"), (feet, "ft"), (f"{feet * 12} in", "mm")):
        chord = solve({"chord": text, "central_angle": 60}, unit)["arc"]["chord"]
        assert chord == pytest.approx(feet * FOOT, rel=1e-14)
        assert abs(chord / (feet * SURVEY_FOOT) - 1) > 1.9e-6


def test_the_survey_foot_is_two_parts_in_a_million_longer() -> None:
    chord = solve({"chord": "1000000 ft", "sagitta": "100000 ft"}, "ft")["arc"]["chord"]
    assert (1e6 * SURVEY_FOOT / chord - 1) * 1e6 == pytest.approx(2.000004, abs=5e-7)


def test_degree_of_curve_is_in_international_feet_whatever_the_job_is_in() -> None:
    one = solve({"degree": 1, "central_angle": 20}, "m")["arc"]["radius"]
    assert abs(one / FOOT - 5729.578) <= 0.0005  # US Army FM 5-430-00-1, Appendix F


@pytest.mark.parametrize("text", ["25.4 mm", "1 in", "2.54 cm", "0.0254 m", '1"'])
def test_an_inch_is_25_4_millimetres(text: str) -> None:
    assert solve({"chord": text, "central_angle": 60})["arc"]["chord"] == pytest.approx(0.0254, rel=1e-14)
