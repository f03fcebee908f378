"""What is fetched for the page: the browser's Python as one npm package, and the wheels that go into it.

Both are pinned by hash, fetched by name through the registries' ordinary clients, and kept in ``.cache``.
"""

from __future__ import annotations

import tempfile
from pathlib import Path

from builder import environment, npm
from builder.house import CACHE, digest, lock_file, run, tell

PYODIDE = npm.version("pyodide")
PYODIDE_FILES = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "python_stdlib.zip",
    "pyodide-lock.json",
    "package.json",
)
PAGE_PYTHON = "3.14"


def pyodide() -> Path:
    """Return the folder with the browser's Python, fetched and checked the first time."""
    return npm.fetched("pyodide", "pyodide", PYODIDE_FILES)


def page_wheels() -> list[Path]:
    """Return the wheels of other people's packages that the page's Python gets, micropip among them."""
    lock = lock_file("site")
    folder = CACHE / f"wheels-{digest([lock])[:12]}"
    if not folder.is_dir():
        tell("Fetching the wheels for the page's Python")
        CACHE.mkdir(exist_ok=True)
        with tempfile.TemporaryDirectory(dir=CACHE) as work:
            made = Path(work) / "wheels"
            run(
                [
                    *(environment.python(), "-m", "pip", "download", *environment.QUIET, *environment.LOCKED),
                    *("--no-deps", "--python-version", PAGE_PYTHON, "--implementation", "py"),
                    *("--abi", "none", "--platform", "any", "--dest", made, "-r", lock),
                ],
                doing="Fetching the wheels for the page's Python",
            )
            npm.keep(made, folder)
    return sorted(folder.glob("*.whl"))
