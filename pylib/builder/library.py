"""The library that the page's Python starts with: compiled, cut to the modules that ``.build/library.txt`` lists."""

from __future__ import annotations

import tempfile
from pathlib import Path

from builder import environment, npm, runtime
from builder.house import BUILDER, DIST, LOCKS, run, tell

LIST = LOCKS / "library.txt"
STAND_INS = BUILDER / "stand_ins"
PROGRAM = BUILDER / "prepare.mjs"
INSIDE = BUILDER / "inside"
FIRST, REST = "library.zip", "rest.bin"
"""What a start needs, and what is fetched after the first answer."""

HEADER = """\
# The modules that the page's Python is started with, bowstring's own aside: python3 build.py library writes them anew.
# A module that is missing here is found in the whole library, where there is a network, and the page says so.
"""


def package_wheel(folder: Path) -> Path:
    """Return the package's own wheel, made in ``folder``; needs the environment's build group and no network."""
    run(
        [environment.python(), "-m", "hatchling", "build", "--target", "wheel", "--directory", folder],
        doing="Making the package's wheel",
    )
    (wheel,) = folder.glob("*.whl")
    return wheel


def _prepare(listed: Path | str, result: Path, work: Path, doing: str) -> None:
    wheels = [package_wheel(work / "wheel"), *runtime.page_wheels()]
    run([npm.node(), PROGRAM, runtime.pyodide(), listed, result, *wheels], doing=doing)


def write(folder: Path, work: Path) -> None:
    """Write the prepared library (``FIRST`` and ``REST``); ``work`` is a folder for what is made on the way."""
    _prepare(LIST, folder, work, "Preparing the page's library")


def trace() -> Path:
    """Write the list anew from what the page's questions import; return it."""
    environment.ensure("build")
    tell("Tracing what the page's Python imports")
    DIST.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=DIST, prefix=".work-") as name:
        found = Path(name) / "modules.txt"
        _prepare("-", found, Path(name), "Tracing the page's library")
        LIST.write_text(f"{HEADER}{found.read_text('utf-8')}\n", "utf-8")
    return LIST
