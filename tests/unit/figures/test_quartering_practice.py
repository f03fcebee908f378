"""The quarter rule on the figures that the trade passes on. Common practice, no source; the exact values computed."""

from __future__ import annotations

from helping import solve

INCH = 0.0254


def test_chord_190_sagitta_40() -> None:
    """Common practice, no source: chord 190 ft, sagitta 40 ft, the next two 10 ft each by the rule.
    Computed: the exact second sagitta is 10.4078 ft, h 103.078, and the rule's quarter stakes stand 4.89 in
    inside the arc."""
    answer = solve({"chord": "190 ft", "sagitta": "40 ft"}, "ft-in", levels=2)
    second = answer["halving"][1]
    assert abs(second["rule_sagitta"] / 0.3048 - 10) < 1e-11
    assert abs(second["chord"] / 0.3048 - 103.078) <= 0.0005
    assert abs(second["sagitta"] / 0.3048 - 10.4078) <= 0.00005
    assert abs(answer["rule"]["worst_miss"] / INCH + 4.89) <= 0.005
    assert answer["rule"]["at"] == answer["stakes"][1]["name"]
    better = 40 / 4 * (1 + (40 / 190) ** 2)  # computed: M/4 (1 + (M/C)²) is within 0.42 in
    assert abs((better - second["sagitta"] / 0.3048) * 12 - 0.42) <= 0.005
