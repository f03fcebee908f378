"""The rule of the house: a method and a move say themselves what others ask of them.

Nobody outside ``methods`` compares a method's name or lists some methods, and nobody outside ``construction`` asks for
a move's class: whoever did would silently leave out the next one.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from bowstring.construction import Move
from bowstring.methods.catalogue import METHODS

PACKAGE = Path(__file__).resolve().parents[3] / "pylib" / "bowstring"
SOURCES = {file.relative_to(PACKAGE).as_posix(): file.read_text("utf-8") for file in sorted(PACKAGE.rglob("*.py"))}
NAMES = {method.name for method in METHODS}
# A job's own values that happen to be spelled like a method: the drawn line, the side of an offset, the line in a slab.
VALUES = {("centre", "drawn_to"), ("centre", "toward"), ("centre", "edge")}


def classes_of(kind: type) -> Iterator[str]:
    """Yield the names of the package's own moves."""
    for child in kind.__subclasses__():
        if child.__module__.startswith("bowstring."):
            yield child.__name__
        yield from classes_of(child)


CLASSES = set(classes_of(Move))


def texts(node: ast.AST) -> list[str]:
    """Return the literal texts of a node: its own, or those that it lists."""
    parts = node.elts if isinstance(node, ast.Tuple | ast.List | ast.Set) else [node]
    return [part.value for part in parts if isinstance(part, ast.Constant) and isinstance(part.value, str)]


def last_word(node: ast.AST) -> str:
    """Return the last word of a place: ``drawn_to`` of ``job.drawn_to`` and of ``answer["drawn_to"]``."""
    if isinstance(node, ast.Subscript) and isinstance(node.slice, ast.Constant):
        return str(node.slice.value)
    return str(getattr(node, "attr", getattr(node, "id", "")))


def named_methods(tree: ast.AST) -> list[str]:
    """Return a sentence for each place where a source tells methods apart by their names."""
    faults = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Compare):
            sides = [node.left, *node.comparators]
            places = {last_word(side) for side in sides}
            found = {text for side in sides for text in texts(side)} & NAMES
            found -= {text for text in found if any((text, place) in VALUES for place in places)}
        elif isinstance(node, ast.MatchValue):
            found = set(texts(node.value)) & NAMES
        elif isinstance(node, ast.Tuple | ast.List | ast.Set) and len(node.elts) > 1:
            found = set(texts(node)) if len(texts(node)) == len(node.elts) and set(texts(node)) <= NAMES else set()
        elif isinstance(node, ast.Dict) and node.keys:
            keys = [text for key in node.keys if key for text in texts(key)]
            found = set(keys) if len(keys) == len(node.keys) and set(keys) <= NAMES else set()
        else:
            continue
        faults += [f"line {node.lineno}: tells the method {name} by its name" for name in sorted(found)]
    return faults


def named_moves(tree: ast.AST) -> list[str]:
    """Return a sentence for each place where a source asks for a move's class."""
    faults = []
    for node in ast.walk(tree):
        asked: list[ast.AST] = []
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("isinstance", "issubclass"):
            asked = list(node.args[1:])
        elif isinstance(node, ast.Compare):
            asked = [node.left, *node.comparators]
        elif isinstance(node, ast.MatchClass):
            asked = [node.cls]
        names = {last_word(part) for one in asked for part in ast.walk(one)}
        words = {text for one in asked for part in ast.walk(one) for text in texts(part)}
        kinds = sorted((names | words) & CLASSES)
        faults += [f"line {getattr(node, 'lineno', 0)}: asks for the class {kind}" for kind in kinds]
    return faults


def test_there_are_methods_and_moves_to_look_for() -> None:
    assert {"halving", "centre", "tapes"} <= NAMES
    assert {"Take", "Bisect", "Along", "SquareOff", "CrossTapes", "TurnOff", "Sight"} <= CLASSES


def test_nobody_tells_methods_apart_by_their_names() -> None:
    outside = {name: text for name, text in SOURCES.items() if not name.startswith("methods/")}
    assert {name: found for name, text in outside.items() if (found := named_methods(ast.parse(text)))} == {}


def test_nobody_asks_for_a_moves_class() -> None:
    outside = {name: text for name, text in SOURCES.items() if not name.startswith("construction/")}
    assert {name: found for name, text in outside.items() if (found := named_moves(ast.parse(text)))} == {}


@pytest.mark.parametrize(
    "bad",
    [
        'if method.name == "rule": pass',
        'if answer["method"] in ("halving", "rule"): pass',
        'if answer.get("method", "halving") not in ("halving", "rule"): pass',
        'if "centre" == row.method.name: pass',
        'OFFSETS = ("ordinates", "tangent", "produced")',
        'HANDS = {"centre": 1, "tapes": 2}',
        'match name:\n    case "angles": pass',
        'if method["drawn"] == "centre": pass',
    ],
)
def test_the_check_sees_a_methods_name(bad: str) -> None:
    assert named_methods(ast.parse(bad))


@pytest.mark.parametrize(
    "bad",
    [
        "if isinstance(move, SquareOff): pass",
        "if isinstance(move, Along | construction.TurnOff): pass",
        "if isinstance(move, (Take, Bisect)): pass",
        "if type(move) is CrossTapes: pass",
        'if type(move).__name__ == "Sight": pass',
        "match move:\n    case Bisect(): pass",
    ],
)
def test_the_check_sees_a_moves_class(bad: str) -> None:
    assert named_moves(ast.parse(bad))


@pytest.mark.parametrize(
    "good",
    [
        'if job.drawn_to == "centre": pass',
        'outward = -1 if toward == "centre" else 1',
        'told = {"halving": levels, "rule": rule, "arc": arc}',
        'say(f"method.name.{method.name}")',
        "if method.halves and not method.exact: pass",
        "if move.squares and not move.squares.slide: pass",
        "move: SquareOff = make(SquareOff)",
    ],
)
def test_the_check_lets_a_jobs_values_and_facts_be(good: str) -> None:
    assert named_methods(ast.parse(good)) == named_moves(ast.parse(good)) == []
