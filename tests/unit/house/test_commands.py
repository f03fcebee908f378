"""The command line of build.py: an old Python can read it, and clean takes only what the commands made."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from builder import commands


def test_an_old_python_can_read_the_file_that_tells_it_that_it_is_too_old(house: Path) -> None:
    source = (house / "build.py").read_text("ascii")
    ast.parse(source, feature_version=(3, 4))
    with pytest.raises(SyntaxError):
        ast.parse(f"{source}\nf'{{1}}'\n", feature_version=(3, 4))
    with pytest.raises(SyntaxError):
        ast.parse(f"{source}\nnumber: int = 1\n", feature_version=(3, 4))


def test_clean_takes_what_was_made_and_nothing_that_is_only_linked_to(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(commands, "ROOT", tmp_path)
    for name in ("DIST", "CACHE", "PACKAGES", "TESTS"):
        monkeypatch.setattr(commands, name, tmp_path / name)
        (tmp_path / name / "room" / "__pycache__").mkdir(parents=True)
        (tmp_path / name / "room" / "kept.py").touch()
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    monkeypatch.setattr(commands, "VENV", tmp_path / "linked")
    (tmp_path / "linked").symlink_to(elsewhere)
    assert commands.main(["clean"]) == 0
    left = {path.relative_to(tmp_path).as_posix() for path in tmp_path.rglob("*")}
    rooms = {f"{name}{place}" for name in ("PACKAGES", "TESTS") for place in ("", "/room", "/room/kept.py")}
    assert left == rooms | {"elsewhere"}
