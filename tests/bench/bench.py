"""Times the package and the page, and weighs the site: a table on standard output and in ``dist/bench.md``.

Runs in the project's environment (``python3 build.py bench``). What is compared was measured in one run, turn by turn;
the table has medians, and ratios to the bare runtime: ``loadPyodide()`` of the same version and ``1 + 1``.
"""

from __future__ import annotations

import functools
import math
import platform
import statistics
import sys
import time
from collections.abc import Callable, Sequence

from bowstring import JobForm, answer
from builder import runtime, squeeze
from builder.house import DIST, SITE, tell
from builder.website import SAVED
from driving.drivers import ENGINES
from driving.timing import Times, bare_pages, one_round

TAPS = {
    "keystroke": "keystroke to redrawn face of the numbers",
    "face": "tap to another face",
    "card": "a card turned",
    "build_arc": "keystroke to redrawn Build, one arc",
    "build_line": "keystroke to redrawn Build, a line of five arcs and four straights",
}
TIMES = 5  # each answer
LEVELS = range(3, 11)
JOB: JobForm = {"bowstring": 1, "arc": {"chord": "132 ft", "sagitta": "24 ft"}, "tolerance": "1/4 in"}
ROWS = {
    "bare": "bare runtime, `1 + 1`",
    "stock": "stock runtime, svgwrite, a first drawing",
    "painted": "the page's first visit: something is on screen",
    "first": "first visit to the first computed face, the empty one of the numbers",
    "repeat": "repeat visit",
    "offline": "repeat visit, no network",
    "saved": "saved page from a disk",
}


def median(measure: Callable[[], float]) -> float:
    """Return the median of five measurements."""
    return statistics.median(measure() for _ in range(TIMES))


def answer_time(levels: int) -> float:
    """Return the milliseconds that one answer takes."""
    start = time.perf_counter()
    answer({**JOB, "levels": levels})
    return (time.perf_counter() - start) * 1000


def answer_rows() -> list[str]:
    """Return how the time of an answer grows with its stakes."""
    taken = {levels: median(functools.partial(answer_time, levels)) for levels in LEVELS}
    rows = [
        f"| {levels} levels, {2**levels - 1} stakes | {milliseconds:.1f} ms | {milliseconds / (2**levels - 1):.3f} ms |"
        for levels, milliseconds in taken.items()
    ]
    growth = (taken[10] / 1023) / (taken[6] / 63)
    return [*rows, f"| time per stake at 1023 stakes over that at 63 | | {growth:.2f} |"]


def measured(rounds: int) -> dict[str, Times]:
    """Return the times of every engine that is on this machine."""
    found = {name: make for name, (make, find) in ENGINES.items() if find()}
    times = {name: Times() for name in found}
    with bare_pages() as bare:
        for number in range(rounds):
            for name, make in found.items():
                tell(f"round {number + 1} of {rounds}: {name}")
                one_round(times[name], make, bare)
    return times


def percentile(values: Sequence[float], percent: float) -> float:
    """Return the value below which so many percent of the values lie, by nearest rank."""
    ordered = sorted(values)
    return ordered[max(0, math.ceil(percent / 100 * len(ordered)) - 1)]


def engine_rows(times: Times) -> list[str]:
    """Return an engine's rows: medians, ratios to the bare runtime, and what a keystroke and a tap take."""
    bare = statistics.median(times.rows["bare"])
    rows = []
    for what, told in ROWS.items():
        if what in times.rows:
            taken = statistics.median(times.rows[what])
            rows.append(f"| {told} | {taken:.0f} ms | {taken / bare:.2f} |")
    for what, told in TAPS.items():
        middle, slow = statistics.median(times.taps[what]), percentile(times.taps[what], 95)
        rows.append(f"| {told}, median; 95 of 100 within | {middle:.0f} ms; {slow:.0f} ms | |")
    if times.long_tasks:
        count, longest = len(times.long_tasks), max(times.long_tasks)
        rows.append(f"| tasks over 50 ms on the page's own thread; the longest | {count}; {longest:.0f} ms | |")
    return rows


def size_rows() -> list[str]:
    """Return the sizes of the site's files, as they are and as well squeezed as they stand there."""
    rows = []
    for file in squeeze.worth_it(SITE):
        copy = file.with_name(f"{file.name}.br")
        squeezed = f"{copy.stat().st_size:,}" if copy.is_file() else ""
        rows.append(f"| {file.relative_to(SITE).as_posix()} | {file.stat().st_size:,} | {squeezed} |")
    return [*rows, f"| {SAVED.name} (saved page) | {SAVED.stat().st_size:,} | |"]


def report(rounds: int) -> str:
    """Return the whole report as Markdown; ``rounds``: how often each thing is measured in each engine."""
    head = f"Python {platform.python_version()}, {platform.machine()}; medians of {rounds}; pyodide {runtime.PYODIDE}."
    lines = [head]
    for name, times in measured(rounds).items():
        lines += ["", f"| {name} {times.version} | time | of bare |", "| --- | ---: | ---: |", *engine_rows(times)]
    lines += ["", "| one answer, this machine's Python | time | per stake |", "| --- | ---: | ---: |", *answer_rows()]
    lines += ["", "| file | bytes | brotli |", "| --- | ---: | ---: |", *size_rows()]
    return "\n".join(lines)


def main() -> int:
    """Measure, print and write the tables."""
    table = report(int(sys.argv[1]))
    print(table)
    (DIST / "bench.md").write_text(table + "\n", "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
