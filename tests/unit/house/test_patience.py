"""No test waits for less than a busy machine needs."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

LIMIT = re.compile(r"\btimeout=([0-9_]+)")
LEAST = 60
"""Seconds: a limit of fewer, or of so few milliseconds, is one that a machine with other work may miss."""


def short_limits(text: str) -> list[str]:
    """Return the limits in a test's text that are too short; a browser's are in milliseconds, all others in seconds."""
    limits = [(found[0], int(found[1])) for found in LIMIT.finditer(text)]
    return [limit for limit, number in limits if number < LEAST or 1000 <= number < LEAST * 1000]


@pytest.mark.parametrize("limit", ["timeout=2000", "timeout=10", "timeout=5_000"])
def test_a_short_limit_is_found(limit: str) -> None:
    assert short_limits(f"expect(page).to_be({limit})") == [limit]


def test_no_test_has_a_limit_that_a_busy_machine_may_miss(house: Path) -> None:
    files = [file for file in sorted((house / "tests").rglob("*.py")) if file != Path(__file__)]
    found = {file.name: short_limits(file.read_text("utf-8")) for file in files}
    assert len(files) > 50 and {name: limits for name, limits in found.items() if limits} == {}
