"""The test command: lint, format, types and every test, one after the other.

Side by side they would win little: linting and formatting take hundredths of a second, types some four seconds the
first time and a third of one after that, and the tests keep every processor busy by themselves.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from builder import browser, environment, programs, website
from builder.house import run_in_sight, tell

PROCESSES = "2"
REMEDY = "Run python3 build.py format"


def _step(name: str, command: Sequence[str | Path], *, remedy: str = "", **changes: str) -> bool:
    """Run a program with its output in sight; tell whether it was content, and if not, a remedy."""
    tell(f"--- {name}")
    content = run_in_sight(command, **changes) == 0
    if remedy and not content:
        tell(remedy)
    return content


def _module(*words: str) -> list[str | Path]:
    """Return the command that runs a module of the environment."""
    return [environment.python(), "-m", *words]


def tidy() -> int:
    """Format every source, and sort what it imports; return the exit code."""
    environment.ensure("build", "test")
    commands: list[list[str | Path]] = [
        _module("ruff", "check", "--select", "I", "--fix", "."),
        _module("ruff", "format", "."),
        [programs.biome(), "check", "--write", "--linter-enabled=false"],
    ]
    return max(run_in_sight(command) for command in commands)


def test(extra: Sequence[str], *, quick: bool) -> int:
    """Run the checks and return the exit code: 0 when all were content.

    ``extra`` goes to pytest; ``quick`` leaves the browser out, and with it the site.
    """
    environment.ensure("build", "test")
    programs.esbuild()  # here, and not by several tests at once
    changes = {}
    if not quick:
        changes[browser.VARIABLE] = browser.ensure()
        browser.ensure_others()
        website.build()
    skipped = ["--ignore=tests/browser", "--ignore=tests/engines"] if quick else []
    # A file at a time to whoever is free, the browser's long ones first: one process keeps a file's answers and pages.
    words = ["pytest", "-n", PROCESSES, "--dist", "loadfile", "--no-loadscope-reorder", *skipped, *extra]
    # The tests come last, so that their closing line closes the output; a failure before them still counts.
    results = {
        "ruff": _step("ruff", _module("ruff", "check", "--output-format", "concise", ".")),
        "format": _step("format", _module("ruff", "format", "--check", "."), remedy=REMEDY),
        "biome": _step("biome", [programs.biome(), "check", "--error-on-warnings"], remedy=REMEDY),
        "mypy": _step("mypy", _module("mypy")),
        "pytest": _step("pytest", _module(*words), **changes),
    }
    failed = [name for name, content in results.items() if not content]
    if failed:
        tell(f"Failed: {', '.join(failed)}")
    return 1 if failed else 0
