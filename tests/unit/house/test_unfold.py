"""Dataclasses written out for the page: the same classes as ``@dataclass`` makes, without its work at the start."""

from __future__ import annotations

import ast
import importlib
import inspect
import pkgutil
import sys
import types
from dataclasses import fields, is_dataclass
from typing import Any

import pytest

import bowstring
from builder.inside.unfold import unfolded
from helping import about

NAMES = [
    module.name for module in pkgutil.walk_packages(bowstring.__path__, "bowstring.") if "__main__" not in module.name
]


def source_of(name: str) -> str:
    return inspect.getsource(importlib.import_module(name))


WITH = [name for name in NAMES if "@dataclass" in source_of(name)]


def run(text: str, name: str) -> types.ModuleType:
    module = types.ModuleType(name)
    sys.modules[name] = module  # @dataclass looks there for a class that is left to it
    try:
        exec(compile(unfolded(ast.parse(text)), name, "exec", dont_inherit=True), module.__dict__)
    finally:
        del sys.modules[name]
    return module


def parameters(kind: type) -> list[tuple[str, Any]]:
    rows = list(inspect.signature(kind).parameters.values())
    made = {one.name for one in fields(kind) if callable(one.default_factory)} if is_dataclass(kind) else set()
    return [(row.name, ... if row.name in made else row.default) for row in rows]


def test_every_dataclass_of_the_package_is_written_out() -> None:
    assert len(WITH) > 20
    for name in WITH:
        assert "dataclass" not in ast.unparse(unfolded(ast.parse(source_of(name)))), name


def test_the_package_makes_no_use_of_what_only_dataclasses_know() -> None:
    for name in NAMES:
        for node in ast.walk(ast.parse(source_of(name))):
            if isinstance(node, ast.ImportFrom) and node.module == "dataclasses":
                assert {alias.name for alias in node.names} <= {"dataclass", "field"}, name


def same_as_the_decorators(name: str) -> None:
    """Assert that each dataclass of a module, written out, is the one that the decorator makes."""
    real, ours = importlib.import_module(name), run(source_of(name), f"written_out_{name.replace('.', '_')}")
    for kind in [kind for kind in vars(real).values() if isinstance(kind, type) and kind.__module__ == name]:
        if not is_dataclass(kind):
            continue
        other = getattr(ours, kind.__name__)
        assert parameters(other) == parameters(kind)
        assert other.__match_args__ == kind.__match_args__  # type: ignore[attr-defined]
        if hasattr(kind, "__post_init__"):
            continue  # takes no values but real ones: below
        values = [f"value {place}" for place in range(len(fields(kind)))]
        one, two, third = other(*values), other(*values), other(*values[:-1], "another")
        assert repr(one) == repr(kind(*values))
        assert one == two != third and one != kind(*values)
        frozen = kind.__dataclass_params__.frozen  # type: ignore[attr-defined]
        if frozen:
            assert hash(one) == hash(two) == hash(kind(*values))
            with pytest.raises(AttributeError, match="cannot assign"):
                setattr(one, fields(kind)[0].name, "new")
            with pytest.raises(AttributeError, match="cannot delete"):
                delattr(one, fields(kind)[0].name)
        else:
            assert other.__hash__ is None
            one.__init__(*values[:-1], "another")
            assert one == third


def test_a_class_written_out_is_the_class_that_dataclass_makes() -> None:
    for name in WITH:
        with about(name):
            same_as_the_decorators(name)


def test_what_checks_its_own_values_does_so_written_out() -> None:
    tape = run(source_of("bowstring.units.tape"), "written_out_tape").Tape
    assert repr(tape("mm", 0.005)) == "Tape(unit='mm', mark=0.005)"
    with pytest.raises(ValueError, match="no mark"):
        tape("mm", 0.0051)


def test_a_made_default_is_made_for_each() -> None:
    text = (
        "from dataclasses import dataclass, field\n@dataclass\n"
        "class Bag:\n    a: int\n    b: list = field(default_factory=list)\n"
    )
    bag = run(text, "written_out_bag").Bag
    first, second = bag(1), bag(1)
    first.b.append(2)
    assert (first.b, second.b, bag(1, [3]).b) == ([2], [], [3]) and not hasattr(bag, "b")


@pytest.mark.parametrize(
    "inside",
    ["a: int = max(1, 2)", "a: ClassVar[int] = 1", "a: int\n    def __eq__(self, other): return True", "a: list = []"],
)
def test_what_is_not_plain_is_left_alone(inside: str) -> None:
    text = f"@dataclass\nclass Bag:\n    {inside}\n"
    assert ast.unparse(unfolded(ast.parse(text))) == ast.unparse(ast.parse(text))


def test_other_wishes_are_left_alone() -> None:
    for text in (
        "@dataclass(order=True)\nclass Bag:\n    a: int\n",
        "@dataclass\nclass Bag(Parent, metaclass=Kind):\n    a: int\n",
    ):
        assert ast.unparse(unfolded(ast.parse(text))) == ast.unparse(ast.parse(text))


def test_a_child_of_a_plain_class_is_written_out_and_stays_a_child() -> None:
    text = (
        "from abc import ABC, abstractmethod\nfrom dataclasses import dataclass\n"
        "class Parent(ABC):\n    size = 1\n    @abstractmethod\n    def full(self): ...\n"
        "@dataclass(frozen=True)\nclass Bag(Parent):\n    a: int\n    def full(self): return self.a > self.size\n"
        "@dataclass(frozen=True)\nclass Sieve(Parent):\n    a: int\n"
    )
    assert "dataclass" not in ast.unparse(unfolded(ast.parse(text)))
    made = run(text, "written_out_child")
    assert made.Bag(2).full() and isinstance(made.Bag(2), made.Parent)
    with pytest.raises(TypeError, match="abstract"):
        made.Sieve(2)
