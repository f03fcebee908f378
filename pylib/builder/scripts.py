"""The page's scripts made one by esbuild: one module that imports nothing, and the map of where its lines come from.

Only spaces and comments go: names and lines stay readable where something fails. Squeezed, lines without spaces would
save another 2 kB of a first visit's 4 MB.
"""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import NamedTuple

from builder import programs
from builder.house import DIST, run

# What can start the page's Python at all reads this edition of the language; newer syntax is written out in its terms.
TARGET = "es2022"
OPTIONS = (
    "--bundle",
    "--format=esm",
    f"--target={TARGET}",
    "--charset=utf8",
    "--log-level=warning",
    "--loader:.css=text",
)


class Bundle(NamedTuple):
    script: str
    map: str  # for a browser's own tools: a script's place by its line in the bundle


def bundled(entry: Path) -> Bundle:
    """Return one module that holds ``entry`` and every module that it needs."""
    # The map names the modules from where it lies: beside the site.
    DIST.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=DIST, prefix=".work-") as work:
        made = Path(work) / "page.js"
        run(
            [programs.esbuild(), entry, *OPTIONS, "--sourcemap=external", f"--outfile={made}"],
            doing="Making the page's scripts one",
        )
        return Bundle(made.read_text("utf-8"), made.with_suffix(".js.map").read_text("utf-8"))
