"""The page's code keeps the lines of its source, and loses their columns alone."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path
from types import CodeType

from builder.inside.lines import without_columns

SOURCES = sorted((Path(__file__).parents[3] / "pylib" / "bowstring").rglob("*.py"))


def codes(code: CodeType) -> Iterator[CodeType]:
    yield code
    for part in code.co_consts:
        if isinstance(part, CodeType):
            yield from codes(part)


def test_each_instruction_keeps_its_line_and_has_no_column() -> None:
    assert len(SOURCES) > 200
    for file in SOURCES:
        code = compile(ast.parse(file.read_text("utf-8")), file.name, "exec")
        for whole, lean in zip(codes(code), codes(without_columns(code)), strict=True):
            assert list(lean.co_lines()) == list(whole.co_lines()), (file, whole.co_name)
            assert {place[2:] for place in lean.co_positions()} <= {(None, None)}


def test_a_line_far_away_and_one_further_up_are_kept() -> None:
    text = "def f(a):\n    return (\n" + "\n" * 5000 + "        a +\n" + "\n" * 70 + "        g(\n            a))\n"
    code = compile(text, "far.py", "exec")
    for whole, lean in zip(codes(code), codes(without_columns(code)), strict=True):
        assert list(lean.co_lines()) == list(whole.co_lines())


def test_code_without_lines_still_says_what_fails_in_it() -> None:
    code = without_columns(compile("def f():\n    return 1 / 0\n", "none.py", "exec"), lines=False)
    named: dict[str, object] = {}
    exec(code, named)
    function = named["f"]
    assert callable(function)
    assert {line for *_, line in function.__code__.co_lines()} == {None}
    try:
        function()
    except ZeroDivisionError as fault:
        assert fault.__traceback__ is not None and fault.__traceback__.tb_next is not None
