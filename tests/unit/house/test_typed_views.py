"""The views read a typed answer: nothing in them would let a misspelt key through the type checker.

That it does check them is ``python3 build.py test --quick``'s; this is what it can't see: a type that takes anything,
and a way to read that asks for no key of the answer's own.
"""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

PACKAGE = Path(__file__).resolve().parents[3] / "pylib" / "bowstring"
VIEWS = ("sheet", "drawings", "faces", "page")
FILES = {
    file.relative_to(PACKAGE).as_posix(): file for view in VIEWS for file in sorted((PACKAGE / view).rglob("*.py"))
}
ANY_ALLOWED = {
    "drawings/svg.py",  # its library has no types
    "page/talk.py",  # what the page's script sends
}
CAST_ALLOWED = {"page/fields.py", "page/pieces.py"}  # what was typed, as a job
IGNORE_ALLOWED = {"drawings/svg.py"}
ANSWERS = ("answer", "answered")
"""What an answer is called where it is handed on."""
TYPED = ("typed", "fields")
"""What stands in the form's fields is called so where it is handed on: texts by ids, any of which may be missing."""
TEXTS = ("Typed", "Mapping[str, str]", "dict[str, str]", "str", "tuple[tuple[str, str], ...]")


def loose_ends(source: str, name: str) -> list[str]:
    """Return a line for each thing in a view that keeps the type checker from seeing a wrong key."""
    found: list[tuple[int, str]] = []
    tree = ast.parse(source)
    # A lambda's are what it is handed on as.
    by_lambda = {arg for node in ast.walk(tree) if isinstance(node, ast.Lambda) for arg in node.args.args}
    for node in ast.walk(tree):
        line = getattr(node, "lineno", 0)
        if isinstance(node, ast.Name | ast.Attribute):
            called = node.id if isinstance(node, ast.Name) else node.attr
            if called == "Any" and name not in ANY_ALLOWED:
                found.append((line, "Any"))
            if called == "cast" and name not in CAST_ALLOWED:
                found.append((line, "cast"))
        if isinstance(node, ast.arg) and node.arg in ANSWERS and node not in by_lambda:
            said = ast.unparse(node.annotation) if node.annotation else "nothing"
            if said != "Answer":
                found.append((line, f"{node.arg} is {said}"))
        if isinstance(node, ast.arg) and node.arg in TYPED and node not in by_lambda:
            said = ast.unparse(node.annotation) if node.annotation else "nothing"
            if said.removesuffix(" | None") not in TEXTS:
                found.append((line, f"{node.arg} is {said}"))
        if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store) and node.id == "Answer":
            found.append((line, "another Answer"))
        if _gets_by_name(node) and not name.startswith("page/"):  # the page reads what its script asks so
            found.append((line, "get"))
    lines = enumerate(source.splitlines(), 1)
    found += [(line, "type: ignore") for line, text in lines if "type: ignore" in text and name not in IGNORE_ALLOWED]
    return [f"{name}, line {line}: {what}" for line, what in sorted(found)]


def _gets_by_name(node: ast.AST) -> bool:
    """Whether a key is read by ``get``: of a typed dict that gives no fault for one that it doesn't have."""
    if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "get"):
        return False
    if isinstance(node.func.value, ast.Name) and node.func.value.id in TYPED:
        return False
    return any(isinstance(one, ast.Constant) and isinstance(one.value, str) for one in node.args[:1])


def test_a_view_reads_typed_answers() -> None:
    ends = {name: loose_ends(file.read_text("utf-8"), name) for name, file in FILES.items()}
    assert {name: found for name, found in ends.items() if found} == {}


def test_every_view_is_looked_at() -> None:
    assert len(FILES) > 30
    assert {*ANY_ALLOWED, *CAST_ALLOWED, *IGNORE_ALLOWED} <= FILES.keys()


@pytest.mark.parametrize(
    ("source", "what"),
    [
        ("from typing import Any\ndef f(row: Mapping[str, Any]) -> str: ...", "Any"),
        ("import typing\nrow: typing.Any = 1", "Any"),
        ("def f(answer: Mapping[str, object]) -> str: ...", "answer is Mapping[str, object]"),
        ("def f(answer) -> str: ...", "answer is nothing"),
        ("def f(one: int, *, answered: dict[str, object]) -> str: ...", "answered is dict[str, object]"),
        ("Answer = Mapping[str, object]", "another Answer"),
        ("row = cast(StepRow, one)", "cast"),
        ("side = answer.get('side', 'left')", "get"),
        ("def f(row: StepRow) -> str: return row.get('side', '')", "get"),
        ("def f(typed: StepRow) -> str: return typed.get('side', '')", "typed is StepRow"),
        ("def f(fields) -> str: return fields.get('side', '')", "fields is nothing"),
        ("side = answer['sied']  # type: ignore[typeddict-item]", "type: ignore"),
    ],
)
def test_the_rule_sees_what_lets_a_wrong_key_through(source: str, what: str) -> None:
    (line,) = loose_ends(source, "sheet/new.py")
    assert line.endswith(f": {what}")


def test_the_rule_lets_a_typed_view_be() -> None:
    source = "def f(answer: Answer) -> str:\n    return SIGNS.get(kind, '') + answer['side']\nf(lambda answer: answer)"
    assert loose_ends(source, "sheet/new.py") == []
    assert loose_ends("unit = asked.get('unit', '')", "page/new.py") == []
    assert loose_ends("def f(typed: Typed) -> str:\n    return typed.get('unit', '')", "faces/new.py") == []
