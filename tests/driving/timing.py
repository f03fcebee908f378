"""Times of the page in one engine, in a phone's window, beside the bare runtime's, in one and the same run.

All times are milliseconds from the start of a navigation until what is measured is on screen, read from the page's own
clock.
"""

from __future__ import annotations

import contextlib
import shutil
import tempfile
import time
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from bowstring.page.linking import link_of
from builder import runtime, serve
from builder.house import SITE
from builder.website import SAVED
from driving.drivers import PHONE, Driver
from line_jobs import METRIC
from slab_jobs import WALK

DONE = "return window.doneAt ?? null"
FIRST_FACE = "return performance.getEntriesByName('bowstring-sheet')[0]?.startTime ?? null"
PAINTED = "return performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null"
OFFLINE = "return document.documentElement.dataset.offline === 'ready' || null"
KEYSTROKES = 30
ROUNDS = 6  # of taps: each goes through all faces, after another number was typed
CARDS = 12  # turned, there and back
PATIENCE_WORK = 300.0  # seconds for all that fingers do
BUILT = {"build_arc": WALK, "build_line": METRIC}
SETTLED = 1.0  # seconds that a browser gets to come to rest
BARE = "(await loadPyodide({ indexURL })).runPython('1 + 1');"
STOCK = """
const pyodide = await loadPyodide({ indexURL });
const wheel = await (await fetch("WHEEL")).arrayBuffer();
pyodide.unpackArchive(wheel, "wheel");
document.body.innerHTML = pyodide.runPython(`
import svgwrite
drawing = svgwrite.Drawing(size=("300px", "100px"))
drawing.add(drawing.line((0, 0), (300, 100), stroke="black"))
drawing.tostring()
`);
"""
PAGE = """<!doctype html><meta charset="utf-8"><body><script type="module">
const { loadPyodide } = await import("./pyodide.mjs");
const indexURL = "./";
%s
window.doneAt = performance.now();
</script>"""
# What fingers do on the example, each time when what came of the last is on screen: type into the chord's field, go
# from face to face, turn cards.
WORKING = """
const field = document.getElementById("arc-chord");
const root = document.documentElement;
const computed = () => root.dataset.sheet === "computed" && root.dataset.stale === undefined;
const pause = (time) => new Promise((resolve) => setTimeout(resolve, time));
const click = (selector) => document.querySelector(selector).click();
const card = () => Number(document.querySelector("#stakes .card")?.dataset.card);
const times = { keystroke: [], face: [], card: [] };
const taken = async (what, act, there) => {
  const start = performance.now();
  act();
  while (!(computed() && there())) await pause(1);
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  times[what].push(performance.now() - start);
  await pause(150);
};
const type = (count) => {
  field.value = `${38 + (count % 9)}' ${count % 12}"`;
  field.dispatchEvent(new InputEvent("input", { bubbles: true }));
};
const turnTo = (face) => taken("face", () => click(`[data-tab=${face}]`), () => root.dataset.face === face);
window.longTasks = [];
try {
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map((one) => one.duration)))
    .observe({ type: "longtask" });
} catch {}
(async (keystrokes, rounds, cards) => {
  click("#ask-example");
  while (!field.value || !computed()) await pause(1);
  for (let count = 0; count < keystrokes; count += 1) await taken("keystroke", () => type(count), () => true);
  for (let count = 0; count < rounds; count += 1) {
    type(count);
    await pause(1000); // what the numbers say later is said
    for (const face of ["stakes", "checks", "build", "paper", "why", "numbers"]) await turnTo(face);
  }
  type(0); // no stop: its cards can be turned
  await pause(1000);
  await turnTo("stakes");
  for (const [step, by] of [["done", 1], ["back", -1]]) {
    for (let count = 0; count < cards / 2; count += 1) {
      const next = card() + by;
      while ("turned" in document.documentElement.dataset) await pause(10); // a second tap is taken for the glove's
      await taken("card", () => click(`#stakes [data-do=${step}]`), () => card() === next);
    }
  }
  window.worked = times;
})(...arguments).catch((fault) => (window.failed = String(fault)));
"""
# A key in the slab's thickness while Build is on the screen, each time until its last change is painted.
BUILDING = """
const [keystrokes, told] = arguments;
const field = document.getElementById("slab-thickness");
const face = document.getElementById("face-build");
const pause = (time) => new Promise((resolve) => setTimeout(resolve, time));
const computed = () => document.documentElement.matches("[data-sheet=computed]:not([data-stale])");
const times = [];
delete window.worked;
(async () => {
  while (!field.value || !computed()) await pause(1);
  document.querySelector("[data-tab=build]").click();
  while (face.hidden || !computed()) await pause(1);
  await pause(2500); // what is made while nobody waits is made
  for (let count = 0; count < keystrokes; count += 1) {
    let painted = 0;
    const watch = new MutationObserver(() =>
      requestAnimationFrame(() => setTimeout(() => (painted = performance.now()))),
    );
    watch.observe(face, { subtree: true, childList: true, characterData: true, attributes: true });
    const start = performance.now();
    field.value = `${100 + count} mm`; // none that was asked for before
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    await pause(400); // sooner than what is made while nobody waits
    watch.disconnect();
    if (painted) times.push(painted - start);
  }
  window.worked = { [told]: times };
})().catch((fault) => (window.failed = String(fault)));
"""
WORKED = "if (window.failed) throw new Error(window.failed); return window.worked ?? null"


@dataclass
class Times:
    """What was measured in one engine: milliseconds by what it was, one for each round; all taps and keys together."""

    version: str = ""
    rows: dict[str, list[float]] = field(default_factory=dict)
    taps: dict[str, list[float]] = field(default_factory=dict)
    long_tasks: list[float] = field(default_factory=list)

    def note(self, what: str, milliseconds: float | None) -> None:
        if milliseconds is not None:
            self.rows.setdefault(what, []).append(milliseconds)


@contextlib.contextmanager
def bare_pages() -> Iterator[str]:
    """Serve the stock runtime with a page that starts it, and one that draws with it; gives the address."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "bare"
        shutil.copytree(runtime.pyodide(), folder)
        (wheel,) = (file for file in runtime.page_wheels() if file.name.startswith("svgwrite-"))
        shutil.copyfile(wheel, folder / wheel.name)
        (folder / "bare.html").write_text(PAGE % BARE, "utf-8")
        (folder / "stock.html").write_text(PAGE % STOCK.replace("WHEEL", wheel.name), "utf-8")
        with serve.served(folder) as address:
            yield address


@contextlib.contextmanager
def fresh(make: type[Driver]) -> Iterator[Driver]:
    """Start a browser that has nothing of any page, in memory or on disk; its own start is over when this begins."""
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        driver = make(Path(folder), PHONE)
        try:
            driver.go("about:blank")
            time.sleep(SETTLED)
            yield driver
        finally:
            driver.close()


def one_round(times: Times, make: type[Driver], bare: str) -> None:
    """Measure everything once, each in a browser of its own: code compiled for one would serve the next."""
    for what in ("bare", "stock"):
        with fresh(make) as driver:
            times.version = driver.version
            driver.go(f"{bare}{what}.html")
            times.note(what, driver.until_some(DONE))
    with fresh(make) as driver:
        with serve.served(SITE) as address:
            driver.go(address)
            times.note("first", driver.until_some(FIRST_FACE))
            times.note("painted", driver.run(PAINTED))
            driver.until_some(OFFLINE)
            driver.go("about:blank")
            driver.go(address)
            times.note("repeat", driver.until_some(FIRST_FACE))
            driver.go("about:blank")
        driver.go(address)
        times.note("offline", driver.until_some(FIRST_FACE))
        driver.run(WORKING, KEYSTROKES, ROUNDS, CARDS)  # last: the visits before it begin with an empty face
        for what, taken in driver.until_some(WORKED, patience=PATIENCE_WORK).items():
            times.taps.setdefault(what, []).extend(taken)
        times.long_tasks += driver.run("return window.longTasks")
    for told, job in BUILT.items():
        with fresh(make) as driver, serve.served(SITE) as address:
            driver.go(f"{address}#{link_of(job)[0]}")  # type: ignore[arg-type]
            driver.until_some("return document.getElementById('slab-thickness')?.value || null")
            driver.run(BUILDING, KEYSTROKES, told)
            times.taps.setdefault(told, []).extend(driver.until_some(WORKED, patience=PATIENCE_WORK)[told])
    with fresh(make) as driver:
        driver.go(SAVED.as_uri())
        times.note("saved", driver.until_some(FIRST_FACE))
