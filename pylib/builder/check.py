"""The test command: lint, format, types and every test, one after the other.

Side by side they would win little: linting and formatting take hundredths of a second, types some four seconds the
first time and a third of one after that, and the tests keep every processor busy by themselves.
"""

from __future__ import annotations

from collections.abc import Sequence

from builder import browser, environment, website
from builder.house import run_in_sight, tell

PROCESSES = "2"


def _step(name: str, words: Sequence[str], *, remedy: str = "", **changes: str) -> bool:
    """Run a module of the environment with its output in sight; tell whether it was content, and if not, a remedy."""
    tell(f"--- {name}")
    content = run_in_sight([environment.python(), "-m", *words], **changes) == 0
    if remedy and not content:
        tell(remedy)
    return content


def test(extra: Sequence[str], *, quick: bool) -> int:
    """Run the checks and return the exit code: 0 when all were content.

    ``extra`` goes to pytest; ``quick`` leaves the browser out, and with it the site.
    """
    environment.ensure("build", "test")
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
        "ruff": _step("ruff", ["ruff", "check", "--output-format", "concise", "."]),
        "format": _step("format", ["ruff", "format", "--check", "."], remedy="Run .venv/bin/ruff format ."),
        "mypy": _step("mypy", ["mypy"]),
        "pytest": _step("pytest", words, **changes),
    }
    failed = [name for name, content in results.items() if not content]
    if failed:
        tell(f"Failed: {', '.join(failed)}")
    return 1 if failed else 0
