"""What decides about a job never asks in which unit somebody looks at it."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import bowstring

PACKAGE = Path(bowstring.__file__).parent
DECIDING = ("geometry", "construction", "methods", "analysis", "layout")


def asked_in(source: str) -> list[int]:
    """The lines on which an attribute ``shown`` is read."""
    return [one.lineno for one in ast.walk(ast.parse(source)) if isinstance(one, ast.Attribute) and one.attr == "shown"]


@pytest.mark.parametrize("floor", DECIDING)
def test_the_shown_tape_is_not_asked_where_something_is_decided(floor: str) -> None:
    modules = sorted((PACKAGE / floor).rglob("*.py"))
    assert modules
    assert not [str(one) for one in modules if asked_in(one.read_text(encoding="utf-8"))]


def test_a_module_that_asks_would_be_found() -> None:
    assert asked_in("x = 1\ny = layout.job.shown.mark\n") == [2]
