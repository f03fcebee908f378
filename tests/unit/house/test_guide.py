"""What DEVELOPERS.md names is there: each file it sends somebody to, and each name in a module."""

from __future__ import annotations

import re
from pathlib import Path

ROOT = Path(__file__).parents[3]
QUOTED = re.findall(r"`([^`\n]+)`", (ROOT / "DEVELOPERS.md").read_text("utf-8"))
FILE = re.compile(r"[\w./-]+\.(?:py|m?js|css|json|txt|toml|html|md)\b")
NAME = re.compile(r"((?:\w+/)+\w+)\.([A-Za-z_]\w*)")
BUILT = "dist/"
FOLDERS = ("pylib", "site", "tests", ".build", ".ci")
THERE = [path for folder in FOLDERS for path in (ROOT / folder).rglob("*") if path.is_file()]
THERE += [path for path in ROOT.iterdir() if path.is_file()]


def ending(name: str) -> list[Path]:
    return [path for path in THERE if path.as_posix().endswith("/" + name)]


def test_each_file_is_there() -> None:
    names = {name for text in QUOTED for name in FILE.findall(text) if not name.startswith(BUILT)}
    assert len(names) > 150
    assert [name for name in sorted(names) if not ending(name)] == [], "moved, or gone"


def test_each_name_stands_in_its_module() -> None:
    found = [match.groups() for text in QUOTED if (match := NAME.fullmatch(text)) and not FILE.fullmatch(text)]
    assert len(found) > 10
    wrong = []
    for module, name in found:
        texts = [path.read_text("utf-8") for path in ending(module + ".py")]
        line = re.compile(rf"^\s*(def |class )?{name}\b", re.MULTILINE)
        if not any(line.search(text) for text in texts):
            wrong.append(f"{module}.{name}")
    assert wrong == [], "renamed, or gone"
