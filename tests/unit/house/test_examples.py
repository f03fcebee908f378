"""The examples in the package's docstrings are true: what stands under ``>>>`` is what comes."""

from __future__ import annotations

import doctest
import importlib
import types
from collections.abc import Iterable
from pathlib import Path

import pytest

import bowstring

TOP = Path(bowstring.__file__).parent


def name_of(file: Path) -> str:
    """Return a module's dotted name."""
    return ".".join(file.relative_to(TOP.parent).with_suffix("").parts).removesuffix(".__init__")


WITH = [name_of(file) for file in sorted(TOP.rglob("*.py")) if ">>> " in file.read_text("utf-8")]


def found(module: types.ModuleType) -> Iterable[doctest.DocTest]:
    """Return the docstrings of a module that have examples."""
    return [test for test in doctest.DocTestFinder(exclude_empty=True).find(module) if test.examples]


def complaints(tests: Iterable[doctest.DocTest]) -> str:
    """Run examples and return what was said of those that aren't true."""
    said: list[str] = []
    runner = doctest.DocTestRunner()
    for test in tests:
        runner.run(test, out=said.append)
    return "".join(said)


@pytest.mark.parametrize("name", WITH)
def test_the_examples_of_a_module_are_true(name: str) -> None:
    tests = found(importlib.import_module(name))
    assert tests, "its examples stand where nothing runs them: only docstrings are read"
    if said := complaints(tests):
        pytest.fail(said, pytrace=False)


def test_the_door_and_the_reading_of_a_length_have_examples() -> None:
    assert {"bowstring", "bowstring.units.lengths"} <= set(WITH)


def test_an_example_that_is_not_true_is_seen() -> None:
    module = types.ModuleType("wrong", "A sum:\n\n>>> 2 + 2\n5\n")
    assert "Expected:\n    5\nGot:\n    4" in complaints(found(module))
