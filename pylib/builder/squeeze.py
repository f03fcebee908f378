"""Brotli and gzip beside each file of the site, for servers that give what a browser can take; and gzip for what a
saved page holds, where no server can give anything better.

What was squeezed once is kept in ``.cache`` by the hash of its content: the large files change rarely, and squeezing
them as well as can be takes most of a minute.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import tempfile
from pathlib import Path

from builder import environment, npm
from builder.house import BUILDER, CACHE, run, tell

FORMATS = {"br": "br", "gz": "gzip"}
"""The endings of squeezed files, and what a server calls their encoding; best first."""

KINDS = frozenset({".css", ".html", ".js", ".json", ".mjs", ".svg", ".wasm", ".webmanifest", ".zip"})
LEAST = 512  # bytes: smaller files aren't worth a second copy
BEST = 11
QUICK = 5


def is_squeezed(file: Path) -> bool:
    """Tell whether a file is the squeezed copy of another."""
    return file.suffix.removeprefix(".") in FORMATS


def worth_it(folder: Path) -> list[Path]:
    """Return the files of a folder that squeezed copies are made of."""
    files = (file for file in folder.rglob("*") if file.is_file() and file.suffix in KINDS)
    return sorted(file for file in files if file.stat().st_size >= LEAST)


def beside(folder: Path, *, best: bool) -> None:
    """Put squeezed copies beside the files of a built site; ``best``: as small as can be, however long it takes.

    A copy that was made best is taken by a quick run too.
    """
    environment.ensure("build")
    kept = CACHE / "squeezed"
    kept.mkdir(parents=True, exist_ok=True)
    wanted: dict[Path, Path] = {}
    jobs: dict[Path, dict[str, object]] = {}
    for file in worth_it(folder):
        name = hashlib.sha256(file.read_bytes()).hexdigest()
        for ending in FORMATS:
            copies = {quality: kept / f"{name}-{quality}.{ending}" for quality in (BEST, QUICK)}
            there = copies[BEST] if best or copies[BEST].is_file() else copies[QUICK]
            wanted[file.with_name(f"{file.name}.{ending}")] = there
            if not there.is_file():
                quality = BEST if there == copies[BEST] else QUICK
                jobs[there] = {"from": str(file), "to": str(there), "format": ending, "quality": quality}
    if jobs:
        tell("Squeezing the site's files" + (" as small as can be: a minute, the first time" if best else ""))
        _squeeze(list(jobs.values()))
    for place, copy in wanted.items():
        place.unlink(missing_ok=True)
        try:
            os.link(copy, place)
        except OSError:
            shutil.copyfile(copy, place)


def _squeeze(jobs: list[dict[str, object]]) -> None:
    with tempfile.TemporaryDirectory() as folder:
        todo = Path(folder) / "jobs.json"
        todo.write_text(json.dumps(jobs), "utf-8")
        run([npm.node(), BUILDER / "squeeze.mjs", todo], doing="Squeezing the site's files")


def tight(files: list[Path]) -> dict[Path, bytes]:
    """Return each file as small as gzip can be, with no date in it: equal files give equal bytes.

    Every browser unpacks it at the speed of any other; it is some 4 % smaller than the runtime's own packing.
    """
    environment.ensure("build")
    kept = CACHE / "squeezed"
    kept.mkdir(parents=True, exist_ok=True)
    made = {file: kept / f"{hashlib.sha256(file.read_bytes()).hexdigest()}-tight.gz" for file in files}
    todo = [str(place) for file, copy in made.items() if not copy.is_file() for place in (file, copy)]
    if todo:
        run([environment.python(), BUILDER / "tighten.py", *todo], doing="Squeezing the saved page's parts")
    return {file: copy.read_bytes() for file, copy in made.items()}
