"""What comes from npm is the locked package to the last bit, or isn't used; each machine has its programs."""

from __future__ import annotations

import io
import os
import platform
import re
import sys
import tarfile
from pathlib import Path

import pytest

from builder import npm, programs
from builder.house import CannotGoOn

MACHINES = [
    ("linux", "x86_64"),
    ("linux", "aarch64"),
    ("darwin", "x86_64"),
    ("darwin", "arm64"),
    ("win32", "AMD64"),
    ("win32", "ARM64"),
]


def packed(file: Path) -> Path:
    """Write a small npm package with a program and a text in it."""
    with tarfile.open(file, "w:gz") as archive:
        for name, mode in (("bin/tool", 0o755), ("readme", 0o644)):
            member = tarfile.TarInfo(f"package/{name}")
            member.mode, member.size = mode, len(name)
            archive.addfile(member, io.BytesIO(name.encode()))
    return file


def test_a_package_is_unpacked_only_where_it_is_the_locked_one(tmp_path: Path) -> None:
    package = packed(tmp_path / "tool.tgz")
    pinned = npm.integrity(package.read_bytes())
    made = tmp_path / "made"
    made.mkdir()
    with pytest.raises(CannotGoOn, match="not the one this project pins"):
        npm.unpack(package, "tool@1", npm.integrity(b"another"), ["bin/tool"], made)
    with pytest.raises(CannotGoOn, match="no file bin/other"):
        npm.unpack(package, "tool@1", pinned, ["bin/other"], made)
    assert list(made.iterdir()) == []
    npm.unpack(package, "tool@1", pinned, ["bin/tool", "readme"], made)
    assert {file.name: file.read_text() for file in made.iterdir()} == {"tool": "bin/tool", "readme": "readme"}
    if os.name != "nt":
        assert os.access(made / "tool", os.X_OK) and not (made / "readme").stat().st_mode & 0o111


def test_a_folder_that_another_run_has_made_stays(tmp_path: Path) -> None:
    for name in ("made", "late"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "file").write_text(name)
        assert npm.keep(tmp_path / name, tmp_path / "kept") == tmp_path / "kept"
    assert [file.name for file in tmp_path.iterdir()] == ["kept"]
    assert (tmp_path / "kept" / "file").read_text() == "made"


def test_every_lock_is_a_version_and_whole_hashes() -> None:
    for product, lock in npm.locked().items():
        assert re.fullmatch(r"\d+\.\d+\.\d+", lock["version"]), product
        assert lock["integrity"] and all(
            re.fullmatch(r"sha512-[A-Za-z0-9+/]{86}==", text) for text in lock["integrity"].values()
        )


@pytest.mark.parametrize(("system", "processor"), MACHINES)
def test_each_machine_has_its_programs(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, system: str, processor: str
) -> None:
    monkeypatch.setattr(sys, "platform", system)
    monkeypatch.setattr(platform, "machine", lambda: processor)
    asked: list[tuple[str, str]] = []

    def fetched(product: str, package: str, files: list[str], *, kept: str) -> Path:
        asked.append((package, kept))
        return tmp_path

    monkeypatch.setattr(npm, "fetched", fetched)
    assert {programs.esbuild().stem, programs.biome().stem} == {"esbuild", "biome"}
    assert len({kept for _, kept in asked}) == 1
    for (package, _), product in zip(asked, ("esbuild", "biome"), strict=True):
        assert package in npm.locked()[product]["integrity"]


def test_a_machine_without_a_locked_program_is_told_what_to_do(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(platform, "machine", lambda: "vax")
    with pytest.raises(CannotGoOn, match=r"vax\): add its package to \.build/npm\.toml"):
        programs.esbuild()
