"""Units: the international foot, exactly, and not the US survey foot.

National Institute of Standards and Technology and National Oceanic and Atmospheric Administration, "Deprecation of the
United States (U.S.) Survey Foot": notice, Federal Register 84 FR 55562, 17 October 2019; final determination, Federal
Register 85 FR 62698, 5 October 2020. One foot is 0.3048 m exactly; the survey foot, 1200/3937 m, is superseded from
1 January 2023.
"""

from __future__ import annotations

import pytest

from helping import solve

# 84 FR 55562 (2019) and 85 FR 62698 (2020).
FOOT, SURVEY_FOOT = 0.3048, 1200 / 3937


@pytest.mark.parametrize("feet", [1, 10, 100, 3937])
def test_a_foot_is_the_international_foot(feet: int) -> None:
    """84 FR 55562 (2019) and 85 FR 62698 (2020)."""
    for text, unit in ((f"{feet} ft", "m"), (f"{feet}'", "ft-in"), (feet, "ft"), (f"{feet * 12} in", "mm")):
        chord = solve({"chord": text, "central_angle": 60}, unit)["arc"]["chord"]
        assert chord == pytest.approx(feet * FOOT, rel=1e-14)
        assert abs(chord / (feet * SURVEY_FOOT) - 1) > 1.9e-6


def test_the_survey_foot_is_two_parts_in_a_million_longer() -> None:
    """Both feet by 84 FR 55562 (2019) and 85 FR 62698 (2020); the digits of their ratio computed."""
    chord = solve({"chord": "1000000 ft", "sagitta": "100000 ft"}, "ft")["arc"]["chord"]
    assert (1e6 * SURVEY_FOOT / chord - 1) * 1e6 == pytest.approx(2.000004, abs=5e-7)
