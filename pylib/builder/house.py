"""Where things stand in the house, and how the builder runs a program or gives up."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LOCKS = ROOT / ".build"
PACKAGES = ROOT / "pylib"
BUILDER = PACKAGES / "builder"
PACKAGE = PACKAGES / "bowstring"
TESTS = ROOT / "tests"
SOURCES = ROOT / "site"
VENV = ROOT / ".venv"
CACHE = ROOT / ".cache"
DIST = ROOT / "dist"
SITE = DIST / "site"


class CannotGoOn(Exception):
    """What stops a command: the sentence says what is wrong and what would do."""


def tell(text: str) -> None:
    """Print one line about progress on standard error, where it can't mix with a result."""
    print(text, file=sys.stderr, flush=True)


def lock_file(group: str) -> Path:
    """Return the lock file of a dependency group of pyproject.toml."""
    return LOCKS / f"requirements-{group}.txt"


def digest(files: Iterable[Path]) -> str:
    """Return the SHA-256 of files, their names below the house included, whatever order they come in."""
    total = hashlib.sha256()
    for file in sorted(files):
        content = file.read_bytes()
        total.update(f"{file.relative_to(ROOT).as_posix()}\0{len(content)}\0".encode())
        total.update(content)
    return total.hexdigest()


def environment_with(changes: Mapping[str, str]) -> dict[str, str]:
    """Return this process's environment with some variables changed."""
    return {**os.environ, **changes}


def _readable(output: str) -> str:
    """Return the end of what a program printed: some quote a whole minified script on one line."""
    return "\n".join(line[:400] for line in output.rstrip().splitlines()[-60:])


def run(command: Sequence[str | Path], *, doing: str, cwd: Path = ROOT, **changes: str) -> str:
    """Run a program and return its standard output.

    Raises ``CannotGoOn``, with what the program printed, when it fails.
    """
    done = subprocess.run(
        [str(word) for word in command],
        cwd=cwd,
        env=environment_with(changes),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        errors="replace",
    )
    if done.returncode:
        raise CannotGoOn(f"{doing} failed (exit {done.returncode}):\n{_readable(done.stdout + done.stderr)}")
    return done.stdout


def run_in_sight(command: Sequence[str | Path], **changes: str) -> int:
    """Run a program with its output in sight and return its exit code."""
    words = [str(word) for word in command]
    return subprocess.run(words, cwd=ROOT, env=environment_with(changes), stdin=subprocess.DEVNULL).returncode
