"""Write the lock files anew from the dependency groups of pyproject.toml; needs ``uv`` on the path.

Newer versions come in by running this and reading the difference. Hashes are of every file that a version
has, for every machine; no file names a registry.
"""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
FOLDER = ROOT / ".build"
# Each group with a word on what it's for, for which Python, and the group whose versions it has to share.
GROUPS = {
    "site": (
        "Installed in the page's own Python (3.14) when the site is built.",
        ["--python-version=3.14"],
        None,
    ),
    "build": (
        "Installed on the machine that builds the site.",
        ["--python-version=3.11", "--universal"],
        "site",
    ),
    "test": (
        "Installed beside requirements-build.txt on the machine that tests; the two share their versions.",
        ["--python-version=3.11", "--universal"],
        "build",
    ),
}
LOCKING = "uv pip compile --no-config --quiet --generate-hashes --only-binary=:all: --no-header --no-annotate"


def lock_file(group: str) -> Path:
    return FOLDER / f"requirements-{group}.txt"


def locked(group: str) -> str:
    """Return the text of a group's lock file."""
    purpose, options, shared = GROUPS[group]
    words = [*LOCKING.split(), *options, "--group", f"pyproject.toml:{group}"]
    if shared:
        words.append(f"--constraint={lock_file(shared)}")
    if group == "test":  # what the build's lock has already isn't said twice
        named = re.findall(r"^([\w.-]+)==", lock_file("build").read_text("utf-8"), re.MULTILINE)
        words += [f"--no-emit-package={name}" for name in named]
    done = subprocess.run(words, cwd=ROOT, check=True, stdout=subprocess.PIPE, text=True)
    origin = f'the group "{group}" of pyproject.toml, with the hash of every file there is.'
    return f"# {purpose}\n# Locked (pylib/builder/lock.py): {origin}\n{done.stdout}"


if __name__ == "__main__":
    for group in GROUPS:
        lock_file(group).write_text(locked(group), "utf-8")
