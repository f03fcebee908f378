"""Road curves by the arc definition of degree, 100 ft of arc, out of worked problems. Feet and degrees throughout."""

from __future__ import annotations

from helping import feet
from printed import assert_printed


def test_highway_text_problem() -> None:
    """Printed in a worked solution to a university highway text's problem, source not named fully: recomputed at 50
    digits. D 8° (arc definition), I 25°30', PI at 12+50."""
    one = feet({"degree": 8, "central_angle": "25° 30'"})
    assert_printed(one["radius"], "716.20")
    assert_printed(one["tangent_length"], "162.06")
    assert_printed(one["arc_length"], "318.75")
    assert_printed(1250 - one["tangent_length"], "1087.94")
    assert_printed(1250 - one["tangent_length"] + one["arc_length"], "1406.69")


def test_licence_review_problem() -> None:
    """Printed in a US surveying licence review problem, source not named fully: recomputed at 50 digits. D 2° (arc
    definition), I 75°, PI at 38+40.23."""
    one = feet({"degree": 2, "central_angle": 75})
    assert_printed(one["radius"], "2864.79")
    assert_printed(one["tangent_length"], "2198.23")
    assert_printed(3840.23 - one["tangent_length"], "1642.00")
    assert_printed(3840.23 - one["tangent_length"] + one["arc_length"], "5392.00")
