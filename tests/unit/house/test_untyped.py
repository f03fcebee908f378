"""Modules without their types, as the page gets them: they answer alike, and load less."""

from __future__ import annotations

import ast
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from builder.inside.unfold import unfolded
from builder.inside.untyped import untyped

FUTURE = "from __future__ import annotations\n"


def stripped(text: str) -> str:
    return ast.unparse(untyped(ast.parse(FUTURE + text))).removeprefix(FUTURE.strip()).strip()


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("from bowstring.a import B\n\ndef f(b: B, *c: B, d: B=1, **e: B) -> B:\n    return b",
         "def f(b, *c, d=1, **e):\n    return b"),
        ("from bowstring.a import B, C\n\ndef f(b: B):\n    c: C = C(b)\n    d: B\n    return c",
         "from bowstring.a import C\n\ndef f(b):\n    c = C(b)\n    pass\n    return c"),
        ("from typing import NamedTuple\nfrom bowstring.a import B\n\nclass P(NamedTuple):\n    b: B",
         "from typing import NamedTuple\n\nclass P(NamedTuple):\n    b: B"),
        ("from typing import TYPE_CHECKING\nif TYPE_CHECKING:\n    from bowstring.a import B\nx = 1", "x = 1"),
        ("from bowstring.a import B\n__all__ = ['B']", "from bowstring.a import B\n__all__ = ['B']"),
        ("import json\nfrom pathlib import Path\nx: int = 1", "import json\nfrom pathlib import Path\nx: int = 1"),
        ("from bowstring.a import B\nTable = dict[str, B]", "from bowstring.a import B\nTable = dict[str, B]"),
        ("def f():\n\n    class C:\n        a: int", "def f():\n\n    class C:\n        a: int"),
    ],
)  # fmt: skip
def test_what_only_a_checker_reads_goes_and_all_else_stays(text: str, left: str) -> None:
    assert stripped(text) == left


def test_a_module_that_evaluates_its_annotations_is_left_alone() -> None:
    text = "from bowstring.a import B\n\ndef f(b: B):\n    return b"
    assert ast.unparse(untyped(ast.parse(text))) == text


ANSWERED = """
import json, sys
sys.path.insert(0, sys.argv[1])
from bowstring import answer, write_link
from bowstring.demo import DEMO
from bowstring.sheet.text import sheet_text
from bowstring.page.fields import fields_of_job
told = answer(DEMO)
names = [name for name in sys.modules if name.startswith("bowstring.")]
print(json.dumps([json.dumps(told), sheet_text(told), write_link(DEMO), fields_of_job(DEMO), names]))
"""


def test_the_package_without_types_answers_as_with_them_and_loads_fewer_modules(house: Path, tmp_path: Path) -> None:
    package = house / "pylib" / "bowstring"
    for file in package.rglob("*.py"):
        place = tmp_path / "bowstring" / file.relative_to(package)
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_text(ast.unparse(untyped(unfolded(ast.parse(file.read_text("utf-8"))))), "utf-8")
    results = []
    for folder in (house / "pylib", tmp_path):
        command = [sys.executable, "-B", "-c", ANSWERED, str(folder)]
        done = subprocess.run(
            command, capture_output=True, text=True, check=True, env={**os.environ, "PYTHONHASHSEED": "0"}
        )
        results.append(json.loads(done.stdout))
    (*typed, with_types), (*bare, without) = results
    assert bare == typed
    assert set(without) < set(with_types)
    assert not [name for name in without if name.startswith("bowstring.report.forms.")]


def test_nobody_reads_annotations_when_the_program_runs(house: Path) -> None:
    for file in (house / "pylib" / "bowstring").rglob("*.py"):
        text = file.read_text("utf-8")
        assert "get_type_hints" not in text and "__annotations__" not in text, file


def test_no_module_asks_of_a_dataclass_what_the_pages_ones_dont_have() -> None:
    """The page's classes are unfolded and know no fields: ``replace``, ``fields`` and ``asdict`` fail there alone."""
    root = Path(__file__).parents[3] / "pylib" / "bowstring"
    trees = {path: ast.parse(path.read_text("utf-8")) for path in root.rglob("*.py")}
    asked = {
        alias.name
        for tree in trees.values()
        for node in ast.walk(tree)
        if isinstance(node, ast.ImportFrom) and node.module == "dataclasses"
        for alias in node.names
    }
    whole = [path for path, tree in trees.items() for node in ast.walk(tree)
             if isinstance(node, ast.Import) and any(one.name == "dataclasses" for one in node.names)]  # fmt: skip
    assert asked == {"dataclass", "field"} and not whole
