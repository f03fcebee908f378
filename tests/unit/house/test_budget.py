"""The page's weight: what a first visit and a saved page cost, held by .build/budget.toml."""

from __future__ import annotations

import tomllib
from pathlib import Path

import brotli
import pytest

from bowstring.words.languages import TAGS
from builder import runtime, squeeze, website
from builder.house import LOCKS, SITE

BUDGET = tomllib.loads((LOCKS / "budget.toml").read_text("utf-8"))
BARE = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip", "pyodide-lock.json")


@pytest.fixture(scope="module")
def version() -> Path:
    if not SITE.is_dir():
        pytest.skip("no site was built: python3 build.py test builds it")
    (folder,) = SITE.glob("v-*")
    return folder


def weight(*files: Path) -> int:
    """Return the bytes of files squeezed by a quick brotli: from their copies where those are quick ones."""
    return sum(len(brotli.compress(file.read_bytes(), quality=squeeze.QUICK)) for file in files)


def test_a_first_visit_and_its_parts_stay_within_the_budget(version: Path) -> None:
    most = BUDGET["squeezed"]
    page = weight(SITE / "index.html", version / "page.js", version / "worker.js")
    library = weight(version / "python" / "library.zip")
    core = weight(*(version / "pyodide" / name for name in BARE[:3]))
    assert page <= most["page"]
    assert library <= most["library"]
    assert weight(version / "python" / "rest.bin") <= most["rest"]
    assert page + library + core <= most["first_visit"]
    bare = core + weight(*(runtime.pyodide() / name for name in BARE[3:]))
    assert page + library + core <= BUDGET["share"]["of_bare"] * bare


def test_a_saved_page_stays_within_the_budget(version: Path) -> None:
    assert website.SAVED.stat().st_size <= BUDGET["plain"]["saved_page"]


def test_nothing_lies_on_the_site_that_no_page_asks_for(version: Path) -> None:
    files = {file.relative_to(version).as_posix() for file in version.rglob("*") if file.is_file()}
    wanted = {"page.js", "worker.js", "wall.js", "shell.html", "python/library.zip", "python/rest.bin"}
    wanted |= {f"words-{tag.lower()}.json" for tag in TAGS.values() if tag != "en"}
    wanted |= {f"pyodide/{name}" for name in (*BARE[:3], website.WHOLE)}
    assert {file for file in files if not squeeze.is_squeezed(Path(file))} == wanted
