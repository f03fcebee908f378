"""The page's code tells a fault by its function and the line where that begins."""

from __future__ import annotations

import ast
import traceback
from collections.abc import Iterator
from pathlib import Path
from types import CodeType

from builder.inside.lines import at_their_first_line

SOURCES = sorted((Path(__file__).parents[3] / "pylib" / "bowstring").rglob("*.py"))
FAILS = "def f(a):\n    a += 1\n    return (\n        a\n        / 0\n    )\n\n\nf(2)\n"


def codes(code: CodeType) -> Iterator[CodeType]:
    yield code
    for part in code.co_consts:
        if isinstance(part, CodeType):
            yield from codes(part)


def failing(code: CodeType) -> list[tuple[str, int | None]]:
    """In which functions a fault is, and in which lines, from the outside in, as a traceback is written."""
    try:
        exec(code, {})
    except ZeroDivisionError as fault:
        written = traceback.TracebackException.from_exception(fault)
        assert "ZeroDivisionError" in "".join(written.format())
        return [(frame.name, frame.lineno) for frame in written.stack][1:]
    raise AssertionError


def test_all_of_a_function_is_on_its_first_line() -> None:
    assert len(SOURCES) > 200
    for file in SOURCES:
        code = compile(ast.parse(file.read_text("utf-8")), file.name, "exec")
        for whole, lean in zip(codes(code), codes(at_their_first_line(code)), strict=True):
            lines = {line for _start, _end, line in lean.co_lines()}
            assert lines == {whole.co_firstlineno} and lean.co_code == whole.co_code, (file, whole.co_name)
            assert len(list(lean.co_positions())) == len(list(whole.co_positions()))


def test_a_fault_is_told_by_its_function_and_the_line_where_that_begins() -> None:
    code = compile(FAILS, "fails.py", "exec")
    assert [line != 1 for _name, line in failing(code)] == [True, True]
    assert failing(at_their_first_line(code)) == [("<module>", 1), ("f", 1)]


def test_code_without_lines_still_says_what_fails_in_it() -> None:
    code = at_their_first_line(compile(FAILS, "fails.py", "exec"), told=False)
    assert failing(code) == [("<module>", None), ("f", None)]
