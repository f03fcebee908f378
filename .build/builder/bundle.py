"""Runs inside the browser's Python (see bundle.mjs): install the wheels ``names``, return an archive."""

# ruff: noqa: F704  (top-level await is right where this runs)
import io
import site
import zipfile
from pathlib import Path

import micropip

# The same date in every archive, the earliest that the format knows: equal sources give equal bytes.
DATE = (1980, 1, 1, 0, 0, 0)
# What installers leave for themselves; none of it is read in the page.
LEFT_OUT = {"RECORD", "INSTALLER", "REQUESTED", "direct_url.json"}
LEFT_OUT |= {"PYODIDE_SOURCE", "PYODIDE_URL", "PYODIDE_SHA256"}


def installed_files(folder: Path) -> set[Path]:
    return {
        file
        for file in folder.rglob("*")
        if file.is_file() and file.name not in LEFT_OUT and "__pycache__" not in file.parts
    }


def archive(folder: Path, files: set[Path]) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as bundle:
        for file in sorted(files):
            entry = zipfile.ZipInfo(file.relative_to(folder).as_posix(), DATE)
            entry.external_attr = 0o644 << 16
            bundle.writestr(entry, file.read_bytes(), zipfile.ZIP_DEFLATED, 9)
    return made.getvalue()


folder = Path(site.getsitepackages()[0])
before = installed_files(folder)
# No index: a wheel that wants something which isn't among these fails here and not in somebody's browser.
await micropip.install([f"emfs:/wheels/{name}" for name in names], index_urls=[])  # noqa: F821
archive(folder, installed_files(folder) - before)
