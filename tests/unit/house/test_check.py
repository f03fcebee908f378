"""The test command: every check runs, and one that isn't content fails the whole with a word on what would do."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from builder import check


def ran(monkeypatch: pytest.MonkeyPatch, failing: str) -> tuple[int, list[str]]:
    """Return the exit code, and the checks in their order, when the one whose words hold ``failing`` fails."""
    seen: list[str] = []

    def run(command: Sequence[str | Path], **changes: str) -> int:
        seen.append(" ".join(map(str, command[2:])))
        return int(bool(failing) and failing in seen[-1])

    monkeypatch.setattr(check, "run_in_sight", run)
    monkeypatch.setattr(check.environment, "ensure", lambda *groups: None)
    return check.test([], quick=True), seen


def test_all_checks_run_and_the_tests_come_last(monkeypatch: pytest.MonkeyPatch) -> None:
    code, seen = ran(monkeypatch, "")
    assert code == 0
    assert [words.split()[0] for words in seen] == ["ruff", "ruff", "mypy", "pytest"]


@pytest.mark.parametrize("failing", ["ruff check", "ruff format", "mypy", "pytest"])
def test_one_check_that_fails_fails_the_whole_and_stops_no_other(
    monkeypatch: pytest.MonkeyPatch, failing: str, capfd: pytest.CaptureFixture[str]
) -> None:
    code, seen = ran(monkeypatch, failing)
    assert code == 1 and len(seen) == 4
    told = capfd.readouterr().err
    assert "Failed: " in told and ("Run .venv/bin/ruff format ." in told) == (failing == "ruff format")
