"""The two dresses of the one page: served from a site's files, or saved whole in one file.

The template leaves four places open: ``[[policy]]`` and ``[[links]]`` in its head, ``[[script]]`` and ``[[packed]]`` at
its end. A saved page is first made without what is packed in it (the shell, with a place ``[[packed:NAME]]`` for each
part): the build fills it, and so does the page itself when somebody saves it with a job.
"""

from __future__ import annotations

import base64
import hashlib
import json
import os
import re
from collections.abc import Mapping
from html import escape
from pathlib import Path

from builder import squeeze
from builder.house import CACHE

SQUEEZED = (
    "pyodide.mjs",
    "pyodide.asm.mjs",
    "pyodide.asm.wasm",
    "library.zip",
    "rest.bin",
    "words-en-gb.json",
    "words-es.json",
    "shell",
)
PLAIN = ("worker", "wall")
"""What a saved page holds: squeezed, and plain what scripts are: their text becomes their address."""

AT_MARK = "@AT@"  # stands in the early script where the folder of the page's files belongs
START_MARK = '"@START@"'  # stands there where the files that a start needs belong, with their hashes

_BLOCK, _BITS, _SINGLE = 13, 13, 6
_MOST = 2**_BITS - 1
_SHIFTS = range(8 * _BLOCK - _BITS, -1, -_BITS)
_SIGNS = "".join(map(chr, range(33, 124))).replace("<", "|")
_PAIRS = [_SIGNS[number // 91] + _SIGNS[number % 91] for number in range(_MOST + 1)]

_NOTHING = "object-src 'none'; base-uri 'none'; form-action 'none'; frame-src 'none'"
_PACKED = re.compile(r"\[\[packed:([a-z_.-]+)\]\]")


def integrity(content: bytes) -> str:
    """Return what a browser checks a file by."""
    return f"sha256-{_base64(hashlib.sha256(content).digest())}"


def _hash(text: str) -> str:
    return f"'{integrity(text.encode())}'"


def _base64(content: bytes) -> str:
    return base64.b64encode(content).decode()


def _filled(template: str, **places: str) -> str:
    for name, text in places.items():
        mark = f"[[{name}]]"
        if template.count(mark) != 1:
            raise ValueError(f"the template has {template.count(mark)} places {mark}, not one")
        template = template.replace(mark, text)
    return template


def _looks(styles: Mapping[str, str]) -> list[str]:
    """Return the styles as they stand in the page: nothing has to be fetched before it's painted."""
    return [f"@media print {{\n{text}}}\n" if name == "print.css" else text for name, text in styles.items()]


def served(
    template: str, at: str, styles: Mapping[str, str], early: str, address: str, start: Mapping[str, str]
) -> str:
    """Return the template of the served page, whose files lie in the folder ``at`` beside it.

    ``early`` is the script that starts the worker, before anything else is read; ``address`` is where the page is
    published, or nothing: then it is wherever it is opened; ``start`` is every file that a start needs, with its hash.
    """
    early = early.replace(AT_MARK, at).replace(START_MARK, json.dumps(start))
    looks = _looks(styles)
    policy = (
        f"default-src 'none'; script-src 'self' {_hash(early)} 'wasm-unsafe-eval'; "
        f"style-src {' '.join(map(_hash, looks))} @STYLE@; img-src 'self' data:; "
        f"connect-src 'self'; worker-src 'self'; manifest-src 'self'; {_NOTHING}"
    )
    links = [
        f"<script>{early}</script>",
        *(f"<style>{text}</style>" for text in looks),
        '<link rel="icon" href="icon.svg" type="image/svg+xml">',
        '<link rel="apple-touch-icon" href="icons/180.png">',
        '<link rel="manifest" href="bowstring.webmanifest">',
        f'<meta name="bowstring-address" content="{escape(address)}">',
        '<meta name="bowstring-job" content="">',
        f'<script type="module" src="{at}/page.js" integrity="{start[f"{at}/page.js"]}"></script>',
    ]
    files = {name: f"{at}/pyodide/{name}" for name in ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm")}
    files |= {name: f"{at}/python/{name}" for name in ("library.zip", "rest.bin")}
    files |= {name: f"{at}/{name}" for name in SQUEEZED if name.startswith("words-")}
    files |= {"worker": f"{at}/worker.js", "wall": f"{at}/wall.js", "shell": f"{at}/shell.html"}
    packed = f'<script type="application/json" id="files">{json.dumps(files)}</script>'
    return _filled(template, policy=policy, links="\n".join(links), script="", packed=packed)


def shell(template: str, styles: Mapping[str, str], icon: str, script: str) -> str:
    """Return the template of a saved page: its styles and script in it, and a place for each packed part.

    No address is open to it but what it holds itself: what an injected element asked for would not be answered.
    """
    looks = _looks(styles)
    policy = (
        f"default-src 'none'; script-src {_hash(script)} 'strict-dynamic' 'wasm-unsafe-eval'; "
        f"style-src {' '.join(map(_hash, looks))} @STYLE@; img-src data:; connect-src 'none'; "
        f"worker-src data:; {_NOTHING}"
    )
    links = [
        f'<link rel="icon" href="data:image/svg+xml;base64,{_base64(icon.encode())}">',
        *(f"<style>{text}</style>" for text in looks),
        '<meta name="bowstring-address" content="[[packed:address]]">',
        '<meta name="bowstring-job" content="[[packed:link]]">',
    ]
    packed = [
        f'<script type="text/plain" id="packed-{name}">[[packed:{name}]]</script>' for name in (*PLAIN, *SQUEEZED)
    ]
    return _filled(
        template,
        policy=policy,
        links="\n".join(links),
        script=f'<script type="module">{script}</script>',
        packed="\n".join(packed),
    )


def saved(shell_file: Path, parts: Mapping[str, Path], address: str) -> str:
    """Return a saved page that holds the example: the shell filled with what a served page fetches."""
    files = {"shell": shell_file, **parts}
    tight = squeeze.tight([file for name, file in files.items() if name in SQUEEZED])
    texts = {name: _kept(tight[file]) if file in tight else _base64(file.read_bytes()) for name, file in files.items()}
    texts |= {"link": "", "address": escape(address)}
    return _PACKED.sub(lambda mark: texts[mark[1]], shell_file.read_text("utf-8"))


def _kept(content: bytes) -> str:
    """Return what is packed of these bytes; it takes seconds for the large ones, and they change rarely."""
    there = CACHE / "packed" / hashlib.sha256(content).hexdigest()
    if not there.is_file():
        there.parent.mkdir(parents=True, exist_ok=True)
        made = there.with_name(f"{there.name}.{os.getpid()}")  # whole or not at all
        made.write_text(packed(content), "ascii")
        made.replace(there)
    return there.read_text("ascii")


def packed(content: bytes) -> str:
    """Return bytes as ``packed.js`` reads them: two signs of 91 for thirteen bits, one for the last six or fewer; none
    can end the element around them."""
    whole = len(content) - len(content) % _BLOCK
    made = []
    for start in range(0, whole, _BLOCK):
        number = int.from_bytes(content[start : start + _BLOCK], "big")
        made += [_PAIRS[number >> shift & _MOST] for shift in _SHIFTS]
    left = 8 * (len(content) - whole)
    number = int.from_bytes(content[whole:], "big")
    while left > _SINGLE:
        left -= _BITS
        made.append(_PAIRS[(number >> left if left >= 0 else number << -left) & _MOST])
    if left > 0:
        made.append(_SIGNS[number << (_SINGLE - left) & 63])
    return "".join(made)
