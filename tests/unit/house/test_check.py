"""The test command: every check runs, and one that isn't content fails the whole with a word on what would do."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import pytest

from builder import check


def ran(monkeypatch: pytest.MonkeyPatch, failing: str, *, tidy: bool = False) -> tuple[int, list[str]]:
    """Return the exit code, and the checks in their order, when the one whose words hold ``failing`` fails.

    ``tidy``: the same of what formats.
    """
    seen: list[str] = []

    def run(command: Sequence[str | Path], **changes: str) -> int:
        words = [Path(word).stem for word in command[:1]] + [str(word) for word in command[1:]]
        seen.append(" ".join(words[2:] if words[1] == "-m" else words))
        return int(bool(failing) and failing in seen[-1])

    monkeypatch.setattr(check, "run_in_sight", run)
    monkeypatch.setattr(check.environment, "ensure", lambda *groups: None)
    for program in ("biome", "esbuild"):
        monkeypatch.setattr(check.programs, program, lambda program=program: Path(program))
    return (check.tidy() if tidy else check.test([], quick=True)), seen


def test_all_checks_run_and_the_tests_come_last(monkeypatch: pytest.MonkeyPatch) -> None:
    code, seen = ran(monkeypatch, "")
    assert code == 0
    assert [words.split()[0] for words in seen] == ["ruff", "ruff", "biome", "mypy", "pytest"]


@pytest.mark.parametrize("failing", ["ruff check", "ruff format", "biome", "mypy", "pytest"])
def test_one_check_that_fails_fails_the_whole_and_stops_no_other(
    monkeypatch: pytest.MonkeyPatch, failing: str, capfd: pytest.CaptureFixture[str]
) -> None:
    code, seen = ran(monkeypatch, failing)
    assert code == 1 and len(seen) == 5
    told = capfd.readouterr().err
    assert "Failed: " in told and (check.REMEDY in told) == (failing in ("ruff format", "biome"))


@pytest.mark.parametrize("failing", ["", "ruff format", "biome"])
def test_everything_is_formatted_by_one_command(monkeypatch: pytest.MonkeyPatch, failing: str) -> None:
    code, seen = ran(monkeypatch, failing, tidy=True)
    assert code == bool(failing)
    assert seen[1:] == ["ruff format .", "biome check --write --linter-enabled=false"]
