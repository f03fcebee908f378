"""No test without an assertion of its own, or of a helper's that it calls: one that can't fail proves nothing."""

from __future__ import annotations

import ast
from collections.abc import Iterable, Iterator
from pathlib import Path

TESTS = Path(__file__).resolve().parents[2]
PYTEST = {"raises", "fail", "warns"}
Function = ast.FunctionDef | ast.AsyncFunctionDef


def functions(tree: ast.AST) -> Iterator[Function]:
    yield from (node for node in ast.walk(tree) if isinstance(node, Function))


def names_in(node: ast.AST) -> set[str]:
    """Every function that is called or handed on by its name: a helper may be given one to call."""
    bare = {one.id for one in ast.walk(node) if isinstance(one, ast.Name)}
    return bare | {one.func.attr for one in ast.walk(node) if isinstance(one, ast.Call) and is_attribute(one.func)}


def is_attribute(node: ast.expr) -> bool:
    return isinstance(node, ast.Attribute)


def is_fixture(function: Function) -> bool:
    return any("fixture" in ast.unparse(decorator) for decorator in function.decorator_list)


def asserts_itself(node: ast.AST) -> bool:
    """Whether an assertion stands in it: ``assert``, ``pytest.raises`` and its like, or the browser's ``expect``."""
    for one in ast.walk(node):
        if isinstance(one, ast.Assert):
            return True
        if not isinstance(one, ast.Call):
            continue
        called = one.func
        if isinstance(called, ast.Name) and called.id == "expect":
            return True
        if isinstance(called, ast.Attribute) and called.attr in PYTEST and ast.unparse(called.value) == "pytest":
            return True
    return False


def asserting(trees: Iterable[ast.AST]) -> set[str]:
    """Return the names of the functions that assert, themselves or by one that they call."""
    known: dict[str, list[Function]] = {}
    for tree in trees:
        for function in functions(tree):
            if not is_fixture(function):  # what a fixture holds of every test is no test's own
                known.setdefault(function.name, []).append(function)
    # A name that means several functions counts when each of them asserts.
    found = {name for name, meant in known.items() if all(map(asserts_itself, meant))}
    while True:
        more = {
            name
            for name, meant in known.items()
            if name not in found and all(asserts_itself(one) or names_in(one) & found for one in meant)
        }
        if not more:
            return found
        found |= more


def without(trees: dict[str, ast.Module]) -> list[str]:
    """Return file, line and name of each test that asserts nothing."""
    helpers = asserting(trees.values())
    return [
        f"{file}, line {function.lineno}: {function.name}"
        for file, tree in trees.items()
        for function in functions(tree)
        if function.name.startswith("test_")
        and not asserts_itself(function)
        and not names_in(function) & (helpers - {function.name})
    ]


def test_every_test_asserts() -> None:
    files = sorted(TESTS.rglob("*.py"))
    trees = {file.relative_to(TESTS).as_posix(): ast.parse(file.read_text("utf-8")) for file in files}
    assert sum(function.name.startswith("test_") for tree in trees.values() for function in functions(tree)) > 500
    assert without(trees) == []


def test_the_check_sees_what_it_looks_for() -> None:
    source = """
def holds(x): assert x
def goes_on(x): holds(x)
def looks(x): return x
def test_none(): looks(1)
def test_own(): assert looks(1)
def test_by_a_helper(): goes_on(1)
def test_by_one_handed_on(): map(holds, [1])
def test_refused():
    with pytest.raises(ValueError): looks(1)
def test_in_the_browser(): expect(page).to_be_visible()
def test_none_either(): page.click("a")
def test_by_another_test(): test_none()
@pytest.fixture
def page(): assert True
def test_by_a_fixture(page): page.click("a")
"""
    found = without({"one.py": ast.parse(source)})
    assert [line.rpartition(": ")[2] for line in found] == [
        "test_none",
        "test_none_either",
        "test_by_another_test",
        "test_by_a_fixture",
    ]
