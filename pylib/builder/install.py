"""Runs in the browser's Python (see prepare.mjs): install the wheels ``names``; leaves their sources in ``packed``."""

# ruff: noqa: F704  (top-level await is right where this runs)
import io
import site
import zipfile
from pathlib import Path

import micropip

folder = Path(site.getsitepackages()[0])
before = set(folder.rglob("*.py"))
await micropip.install([f"emfs:/wheels/{name}" for name in names], index_urls=[])  # noqa: F821
made = io.BytesIO()
with zipfile.ZipFile(made, "w") as bundle:
    for file in sorted(set(folder.rglob("*.py")) - before):
        name = file.relative_to(folder).as_posix()
        bundle.writestr(name, lean(name, file.read_bytes(), stand_ins))  # noqa: F821
packed = made.getvalue()
