"""Write the lock files anew: from the dependency groups of pyproject.toml, which needs ``uv`` on the path, and npm's.

Newer versions come in by running this and reading the difference; for npm, write them into its lock first.
Hashes are of every file that a version has, for every machine; no file names a registry.
"""

from __future__ import annotations

import re
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "pylib"))

from builder import environment, npm  # noqa: E402

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


def npm_locked() -> str:
    """Return the text of npm's lock, with the hash of each package in the version that the lock names."""
    environment.ensure("build")
    lines = []
    version = ""
    with tempfile.TemporaryDirectory() as work:
        for line in npm.LOCK.read_text("utf-8").splitlines():
            if found := re.match(r'version = "(.*)"', line):
                version = found[1]
            elif found := re.match(r'"(.+)" = ', line):
                wanted = f"{found[1]}@{version}"
                integrity = npm.npm("view", wanted, "dist.integrity", doing=f"Asking npm for {wanted}", cwd=Path(work))
                line = f'"{found[1]}" = "{integrity.strip()}"'
            lines.append(line)
    return "\n".join([*lines, ""])


if __name__ == "__main__":
    npm.LOCK.write_text(npm_locked(), "utf-8")
    for group in GROUPS:
        lock_file(group).write_text(locked(group), "utf-8")
