"""A module of the page's script, asked under Node: what it makes of what it is given, without a browser."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path
from typing import Any

from bowstring.page.build import build_page
from builder import npm, website


def run(folder: Path, lines: str, *given: object) -> Any:
    """Return what a script of some ``lines`` prints as JSON with ``told(...)``: it has what is ``given`` as ``given``,
    and ``page(name)`` imports a module of the page, in which the page's words stand and nothing else."""
    words = json.loads(build_page("@FORM@\0@VERSION@\0@STYLE@\0@WORDS@", "0").rsplit("\0", 1)[1])
    head = (
        f"const words = {json.dumps(json.dumps(words))};\n"
        "const classList = { toggle() {} };\n"
        "const part = { textContent: words, elements: [], hidden: true, classList, querySelectorAll: () => [] };\n"
        "part.addEventListener = () => {};\n"
        "const byId = (id) => (id.startsWith('packed') ? null : part);\n"
        "const documentElement = { dataset: {} };\n"
        "globalThis.document = { getElementById: byId, querySelector: () => null, documentElement };\n"
        f"const page = (name) => import({json.dumps(website.SCRIPTS.as_uri())} + '/' + name);\n"
        f"const given = {json.dumps(given)};\n"
        "const told = (what) => console.log(JSON.stringify(what));\n"
    )
    script = folder / "asked.mjs"
    script.write_text(head + lines, "utf-8")
    done = subprocess.run([npm.node(), script], capture_output=True, text=True, encoding="utf-8", timeout=120)
    assert done.returncode == 0, done.stderr[-2000:]
    return json.loads(done.stdout)
