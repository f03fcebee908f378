"""Times the package and the page, and weighs the site: a table on standard output and in ``dist/bench.md``.

Runs in the project's environment (``python3 build.py bench``). Every time is the median of five.
"""

from __future__ import annotations

import functools
import platform
import statistics
import sys
import time
from collections.abc import Callable

import brotli
from playwright.sync_api import Browser, sync_playwright

from bowstring import answer
from builder import browser, runtime, serve
from builder.house import DIST, SITE

TIMES = 5
LEVELS = range(3, 11)
JOB = {"bowstring": 1, "arc": {"chord": "132 ft", "sagitta": "24 ft"}, "tolerance": "1/4 in"}
PATIENCE = 60_000  # milliseconds

# Notes when the page's own sign says that the sheet on screen is Python's answer.
WATCH = """
new MutationObserver((changes, observer) => {
  if (document.documentElement?.dataset.sheet !== "computed") return;
  window.computedAt = performance.now();
  observer.disconnect();
}).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-sheet"] });
"""
BARE = """
async (folder) => {
  const start = performance.now();
  const { loadPyodide } = await import(folder + "pyodide.mjs");
  (await loadPyodide({ indexURL: folder })).runPython("1 + 1");
  return performance.now() - start;
}
"""


def median(measure: Callable[[], float]) -> float:
    """Return the median of five measurements."""
    return statistics.median(measure() for _ in range(TIMES))


def answer_time(levels: int) -> float:
    """Return the milliseconds that one answer takes."""
    start = time.perf_counter()
    answer({**JOB, "levels": levels})
    return (time.perf_counter() - start) * 1000


def bare_time(chromium: Browser, address: str) -> float:
    """Return the milliseconds of loading the runtime alone from its own folder, in an empty page, nothing cached."""
    context = chromium.new_context()
    try:
        page = context.new_page()
        page.set_default_timeout(PATIENCE)
        page.route("**/empty", lambda route: route.fulfill(content_type="text/html", body="<!doctype html>"))
        page.goto(f"{address}empty")
        return float(page.evaluate(BARE, address))
    finally:
        context.close()


def page_time(chromium: Browser, address: str) -> float:
    """Return the milliseconds from the page's start to the computed sheet, nothing cached."""
    context = chromium.new_context()
    try:
        page = context.new_page()
        page.set_default_timeout(PATIENCE)
        page.add_init_script(WATCH)
        page.goto(address)
        page.wait_for_selector('html[data-sheet="computed"]', state="attached")
        return float(page.evaluate("window.computedAt"))
    finally:
        context.close()


def time_rows() -> list[str]:
    """Return the table's rows of times."""
    rows = []
    for levels in LEVELS:
        taken = median(functools.partial(answer_time, levels))
        rows.append(f"| answer, {levels} levels | {taken:.2f} ms |")
    bare_site = serve.served(runtime.pyodide())  # the site has no stock library's list, and its own in other places
    with serve.served(SITE) as address, bare_site as bare_address, sync_playwright() as playwright:
        chromium = playwright.chromium.launch(executable_path=browser.ensure(), args=browser.arguments())
        bare = median(lambda: bare_time(chromium, bare_address))
        whole = median(lambda: page_time(chromium, address))
        version = chromium.version
        chromium.close()
    return [
        *rows,
        f"| bare runtime, Chromium {version} | {bare:.0f} ms |",
        f"| page to computed sheet, Chromium {version} | {whole:.0f} ms ({whole / bare:.2f} of bare) |",
    ]


def size_rows() -> list[str]:
    """Return the table's rows of sizes, each file of the site and the whole."""
    rows, total, total_packed = [], 0, 0
    for file in sorted(file for file in SITE.rglob("*") if file.is_file()):
        content = file.read_bytes()
        size, packed = len(content), len(brotli.compress(content, quality=9))
        total, total_packed = total + size, total_packed + packed
        rows.append(f"| {file.relative_to(SITE).as_posix()} | {size:,} | {packed:,} |")
    return [*rows, f"| all | {total:,} | {total_packed:,} |"]


def main() -> int:
    """Measure, print and write the tables."""
    table = "\n".join(
        [
            f"Python {platform.python_version()}, {platform.machine()}; medians of {TIMES}.",
            "",
            "| what | time |",
            "| --- | ---: |",
            *time_rows(),
            "",
            "| file | bytes | bytes, brotli 9 |",
            "| --- | ---: | ---: |",
            *size_rows(),
        ]
    )
    print(table)
    (DIST / "bench.md").write_text(table + "\n", "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
