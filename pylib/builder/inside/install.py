"""The package and what it needs, installed by the browser's own Python (see ``prepare.mjs``)."""

import io
import site
import zipfile
from collections.abc import Mapping, Sequence
from pathlib import Path

import micropip

from builder.inside.lean import lean


async def installed(wheels: Sequence[str], stand_ins: Mapping[str, str]) -> bytes:
    """Install wheels and return an archive of their modules' sources, made lean.

    No index: a wheel that wants something which isn't among these fails here and not in somebody's browser.
    """
    folder = Path(site.getsitepackages()[0])
    before = set(folder.rglob("*.py"))
    await micropip.install([f"emfs:{wheel}" for wheel in wheels], index_urls=[])
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as bundle:
        for file in sorted(set(folder.rglob("*.py")) - before):
            name = file.relative_to(folder).as_posix()
            bundle.writestr(name, lean(name, file.read_bytes(), stand_ins))
    return made.getvalue()
