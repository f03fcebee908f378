"""The served site in ``dist/site``: the package, the browser's Python, the rendered page and its files."""

from __future__ import annotations

import ast
import json
import os
import shutil
import tempfile
from pathlib import Path

from builder import environment, runtime
from builder.house import (
    BUILDER,
    DIST,
    PACKAGES,
    ROOT,
    SITE,
    SOURCES,
    CannotGoOn,
    digest,
    lock_file,
    run,
    tell,
)

STAMP = DIST / "site-inputs.txt"
VERSION_FILE = PACKAGES / "bowstring" / "version.py"
TEMPLATE = SOURCES / "page.html"
VERSION_MARK = "@VERSION@"  # stands in the scripts of site/ where the page's version belongs
RENDER = """
import pathlib, sys
from bowstring.views.page import build_page
template, target, version = sys.argv[1:]
page = build_page(pathlib.Path(template).read_text("utf-8"), version)
pathlib.Path(target).write_bytes(page.encode("utf-8"))
"""


def _own_files(folder: Path) -> list[Path]:
    """Return the files of a folder of sources, without what interpreters and systems leave there.

    README's pictures stand among the page's files but are none of its own.
    """
    return [
        file
        for file in folder.rglob("*")
        if file.is_file() and not {"__pycache__", "pictures"} & set(file.parts) and not file.name.startswith(".")
    ]


def inputs_digest() -> str:
    """Return the SHA-256 of everything that the site is made of."""
    files = [ROOT / "pyproject.toml", lock_file("site"), lock_file("build")]
    files += [BUILDER / name for name in ("bundle.mjs", "bundle.py", "runtime.py", "website.py")]
    return digest(files + _own_files(PACKAGES) + _own_files(SOURCES))


def package_version() -> str:
    """Return ``__version__`` of the package, read without importing it."""
    for node in ast.parse(VERSION_FILE.read_text("utf-8")).body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "__version__":
            return str(ast.literal_eval(node.value))
    raise CannotGoOn(f"{VERSION_FILE.relative_to(ROOT)} does not set __version__.")


def _package_wheel(folder: Path) -> Path:
    run(
        [environment.python(), "-m", "hatchling", "build", "--target", "wheel", "--directory", folder],
        doing="Making the package's wheel",
    )
    (wheel,) = folder.glob("*.whl")
    return wheel


def _write_runtime(folder: Path) -> None:
    folder.mkdir()
    source = runtime.pyodide()
    for name in ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip"):
        shutil.copyfile(source / name, folder / name)
    # The runtime's list of packages to fetch elsewhere is emptied: the page uses its own site's files only.
    lock = json.loads((source / "pyodide-lock.json").read_text("utf-8"))
    emptied = json.dumps({"info": lock["info"], "packages": {}}, indent=1)
    (folder / "pyodide-lock.json").write_bytes(emptied.encode())


def _write_packages(archive: Path, work: Path) -> None:
    archive.parent.mkdir()
    wheels = [_package_wheel(work / "wheel"), *runtime.page_wheels()]
    run(
        [runtime.node(), BUILDER / "bundle.mjs", runtime.pyodide(), archive, *wheels],
        doing="Installing the wheels into the page's Python",
    )


def _write_page(folder: Path, version: str) -> None:
    for file in _own_files(SOURCES):
        target = folder / file.relative_to(SOURCES)
        target.parent.mkdir(parents=True, exist_ok=True)
        if file.suffix == ".js":
            target.write_bytes(file.read_bytes().replace(VERSION_MARK.encode(), version.encode()))
        elif file != TEMPLATE:
            shutil.copyfile(file, target)
    run(
        [environment.python(), "-c", RENDER, TEMPLATE, folder / "index.html", version],
        doing="Rendering the page",
        PYTHONPATH=str(PACKAGES),
    )


def build() -> Path:
    """Return the folder of the served site, built anew only when something that it is made of has changed."""
    inputs = inputs_digest()
    if SITE.is_dir() and STAMP.is_file() and STAMP.read_text("utf-8") == inputs:
        return SITE
    environment.ensure("build")
    version = f"{package_version()}+{inputs[:8]}"
    tell(f"Building the site, version {version}")
    DIST.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=DIST, prefix=".work-") as name:
        work = Path(name)
        made = work / "site"
        made.mkdir()
        _write_runtime(made / "pyodide")
        _write_packages(made / "python" / "packages.zip", work)
        _write_page(made, version)
        STAMP.unlink(missing_ok=True)
        if SITE.exists():
            os.replace(SITE, work / "old")
        os.replace(made, SITE)
    STAMP.write_text(inputs, "utf-8")
    return SITE
