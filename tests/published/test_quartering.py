"""Halving and quartering in a surveying text."""

from __future__ import annotations

import pytest

from helping import solve


def test_offsets_by_quartering() -> None:
    """W. Schofield and M. Breach, Engineering Surveying, sixth edition, section "Short and/or small-radius curves",
    "Halving and quartering": offsets 20, 5, 1.25 m."""
    rows = solve({"chord": "300 m", "sagitta": "20 m"}, levels=3)["halving"]
    assert [row["rule_sagitta"] for row in rows] == pytest.approx([20, 5, 1.25], rel=1e-12)
