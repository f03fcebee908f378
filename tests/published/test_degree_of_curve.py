"""The radius of a 1° curve, arc definition: 5,729.578 ft.

US Army FM 5-430-00-1 / US Air Force AFJPAM 32-8013, Volume I, Planning and Design of Roads, Airfields, and Heliports in
the Theater of Operations - Road Design, 26 August 1994, Appendix F "Curve Tables", "Functions of a 1-degree curve", the
text to Table F-1.
"""

from __future__ import annotations

from helping import feet, solve
from printed import assert_printed


def test_one_degree_of_arc() -> None:
    """FM 5-430-00-1, 1994, Appendix F, the text to Table F-1."""
    assert_printed(feet({"degree": 1, "chord": 100})["radius"], "5729.578")


def test_degree_of_curve_is_in_international_feet_whatever_the_job_is_in() -> None:
    """FM 5-430-00-1, 1994, Appendix F, the text to Table F-1."""
    one = solve({"degree": 1, "central_angle": 20}, "m")["arc"]["radius"]
    assert abs(one / 0.3048 - 5729.578) <= 0.0005
