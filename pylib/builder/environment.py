"""The project's own Python environment in ``.venv``, filled from the lock files and nothing else."""

from __future__ import annotations

import json
import os
import sys
import venv
from pathlib import Path

from builder.house import VENV, CannotGoOn, digest, lock_file, run, tell

STAMP = VENV / "installed.json"
# A package is taken as a wheel with a known hash or not at all: nothing is compiled or run to install it.
LOCKED = ("--require-hashes", "--only-binary", ":all:")
QUIET = ("--quiet", "--disable-pip-version-check", "--no-input")


def python() -> Path:
    """Return the environment's interpreter, whether it exists yet or not."""
    return VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def packages_folder() -> Path:
    """Return the folder that the environment's packages are in."""
    for folder in [*VENV.glob("lib/python*/site-packages"), VENV / "Lib" / "site-packages"]:
        if folder.is_dir():
            return folder
    raise CannotGoOn("The environment in .venv is broken. Run python3 build.py clean, then this again.")


def installed() -> dict[str, str]:
    """Return the hash of each lock that the environment was filled from, by group; empty without one."""
    if not python().exists():
        return {}
    try:
        stamp: dict[str, str] = json.loads(STAMP.read_text("utf-8"))
    except (OSError, ValueError):
        return {}
    return stamp


def ensure(*groups: str) -> None:
    """Make the environment hold what the lock files of ``groups`` say; quick when it already does."""
    wanted = {group: digest([lock_file(group)]) for group in groups}
    have = installed()
    if wanted.items() <= have.items():
        return
    if not have or any(have.get(group, lock) != lock for group, lock in wanted.items()):
        tell(f"Making .venv with Python {sys.version.split()[0]}")
        venv.create(VENV, clear=True, with_pip=True, symlinks=os.name != "nt")
        have = {}
    tell(f"Installing the locked packages: {', '.join(groups)}")
    files = [word for group in groups for word in ("-r", str(lock_file(group)))]
    run([python(), "-m", "pip", "install", *QUIET, *LOCKED, *files], doing="Installing the locked packages")
    STAMP.write_text(json.dumps({**have, **wanted}, indent=1), "utf-8")
