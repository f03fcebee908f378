"""The inch, exactly."""

from __future__ import annotations

import pytest

from helping import solve


@pytest.mark.parametrize("text", ["25.4 mm", "1 in", "2.54 cm", "0.0254 m", '1"'])
def test_an_inch_is_25_4_millimetres(text: str) -> None:
    """Computed identity: a twelfth of the international foot, 0.3048/12 m."""
    assert solve({"chord": text, "central_angle": 60})["arc"]["chord"] == pytest.approx(0.0254, rel=1e-14)
