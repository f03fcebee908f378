"""Jobs of thousands of stakes: as long as their number, and no longer."""

from __future__ import annotations

from time import process_time
from typing import Any

import pytest

from bowstring import answering
from bowstring.sheet.text import sheet_text
from helping import about

LARGE: dict[str, Any] = {
    "unit": "m",
    "side": "left",
    "drawn_to": "face",
    "tolerance": "10 mm",
    "tape": {"length": "4000 m"},
}
LARGE["arc"] = {"radius": "2000 m", "chord": "3000 m"}


def seconds_for(rounds: int, more: dict[str, Any]) -> float:
    """The processor's time for a whole answer and its sheet; other programs don't count."""
    began = process_time()
    answered = answering({**LARGE, **more, "levels": rounds}, whole=True)
    parts = dict(answered)
    sheet_text(answered)
    taken = process_time() - began
    assert len(parts["stakes"]) == 2**rounds + 1  # type: ignore[arg-type]
    return taken


@pytest.mark.parametrize("method", ["halving", "ordinates"])
def test_time_grows_as_the_number_of_stakes(method: str) -> None:
    more = {"method": method}
    few = min(seconds_for(6, more) for _ in range(3))
    many = seconds_for(10, more)  # sixteen times the stakes
    with about(method, few, many):
        assert many < 3 * 16 * few
