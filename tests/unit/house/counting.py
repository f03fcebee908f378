"""The house's numbers: how long its files and functions are, and how much they branch."""

from __future__ import annotations

import ast
import statistics
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

MEDIAN_FILE, MEDIAN_FUNCTION = 125, 8
LONGEST, MOST_BRANCHES = 50, 15
TOLD, TOLD_OTHERS = 10, 5
"""How many of the longest functions a report names, and how many of the others."""

BRANCHES = (
    *(ast.If, ast.For, ast.AsyncFor, ast.While, ast.IfExp, ast.ExceptHandler, ast.comprehension),
    *(ast.BoolOp, ast.match_case),
)


@dataclass(frozen=True)
class Function:
    """A function; ``lines`` are those of its body without its docstring, blank ones and comments included."""

    name: str
    lines: int
    branches: int

    @property
    def over(self) -> bool:
        return self.lines > LONGEST or self.branches > MOST_BRANCHES

    def __str__(self) -> str:
        return f"{self.lines:3} lines, {self.branches:2} branches: {self.name}"


def functions_of(source: str, place: str) -> Iterator[Function]:
    """Yield the functions of a source; one that stands in another is counted in both."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            body = node.body[1:] if ast.get_docstring(node, clean=False) is not None else node.body
            lines = (body[-1].end_lineno or 0) - body[0].lineno + 1 if body else 0
            branches = sum(isinstance(inner, BRANCHES) for inner in ast.walk(node))
            yield Function(f"{place}:{node.name}", lines, branches)


@dataclass(frozen=True)
class Numbers:
    """What was counted: each file's lines by its place, and every function."""

    files: dict[str, int]
    functions: Sequence[Function]

    @property
    def median_file(self) -> float:
        return statistics.median(self.files.values())

    @property
    def median_function(self) -> float:
        return statistics.median(function.lines for function in self.functions)

    def complaints(self) -> list[str]:
        """Return what has left its bound."""
        medians = [
            f"the median {what} has {median:g} lines, more than {most}"
            for what, median, most in (
                ("file", self.median_file, MEDIAN_FILE),
                ("function", self.median_function, MEDIAN_FUNCTION),
            )
            if median > most
        ]
        return medians + [
            f"over {LONGEST} lines or {MOST_BRANCHES} branches: {one}" for one in self.functions if one.over
        ]

    def report(self) -> str:
        """Return the medians with their bounds, the longest, and what has left its bound."""
        longest = sorted(self.functions, key=lambda one: (-one.lines, one.name))[:TOLD]
        branched = sorted(self.functions, key=lambda one: (-one.branches, one.name))[:TOLD_OTHERS]
        files = sorted(self.files.items(), key=lambda row: (-row[1], row[0]))[:TOLD_OTHERS]
        lines = [
            f"{len(self.files)} files, median {self.median_file:g} lines (at most {MEDIAN_FILE})",
            f"{len(self.functions)} functions, median {self.median_function:g} lines (at most {MEDIAN_FUNCTION})",
            "The longest files:",
            *(f"  {length:3} lines: {place}" for place, length in files),
            f"The longest functions (at most {LONGEST} lines):",
            *(f"  {one}" for one in longest),
            f"The most branched functions (at most {MOST_BRANCHES} branches):",
            *(f"  {one}" for one in branched),
        ]
        return "\n".join([*lines, *self.complaints()])


def counted(top: Path) -> Numbers:
    """Count every Python file below a folder."""
    texts = {file.relative_to(top).as_posix(): file.read_text("utf-8") for file in sorted(top.rglob("*.py"))}
    functions = [function for place, text in texts.items() for function in functions_of(text, place)]
    return Numbers({place: len(text.splitlines()) for place, text in texts.items()}, functions)
