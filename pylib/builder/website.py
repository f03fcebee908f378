"""The served site in ``dist/site`` and the saved page ``dist/bowstring.html``: the package, the browser's Python, the
rendered page and its files.

Whatever a page fetches lies in a folder named by what it is made of, so that a page of one version never gets a file of
another: an open page outlives its files on the server, and finds them on the device.
"""

from __future__ import annotations

import ast
import hashlib
import json
import os
import shutil
import tempfile
from pathlib import Path

from builder import dress, dressing, environment, library, npm, runtime, scripts, squeeze
from builder.house import (
    BUILDER,
    DIST,
    PACKAGE,
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
VERSION_FILE = PACKAGE / "version.py"
SAVED = DIST / "bowstring.html"
SCRIPT_MAP = DIST / "page.js.map"  # beside the site, in neither dress of the page: serve gives it to a browser's tools
TEMPLATE = SOURCES / "page.html"
SCRIPTS = SOURCES / "scripts"
STYLES = (
    "style.css",
    "face-numbers.css",
    "face-stakes.css",
    "face-got.css",
    "face-checks.css",
    "face-build.css",
    "face-paper.css",
    "face-why.css",
    "sheet.css",
    "print.css",
)
BESIDE = ("icon.svg", "bowstring.webmanifest", "icons")  # what keeps its name from version to version
VERSION_MARK = "@VERSION@"  # stands in the workers where the page's version belongs
LOCK_MARK = '"@LOCK@"'  # stands in the worker where the runtime's lock belongs
WHOLE = "python_stdlib.zip"  # fetched only when the prepared library lacks something: no part of what a device keeps
LIBRARY_MARKS = {library.FIRST: "@LIBRARY@", library.REST: "@REST@"}  # stand in the worker where the hashes belong
START = (
    "page.js",
    "worker.js",
    *(f"pyodide/pyodide.{end}" for end in ("mjs", "asm.mjs", "asm.wasm")),
    *(f"python/{name}" for name in LIBRARY_MARKS),
)
"""What a start needs, the page itself apart: where it fails, each is looked at."""
FILES_MARK = '"@FILES@"'  # stands in the service worker where the files and their hashes belong
RENDER = """
import json, pathlib, sys
from bowstring.page.build import build_page
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES, TAGS
version, *files = sys.argv[1:]
page, *_ = templates = {file: pathlib.Path(file).read_text("utf-8") for file in files}
rendered = {}
for language in LANGUAGES[1:]:
    speak(language)
    rendered[TAGS[language]] = build_page(templates[page], version)
speak(LANGUAGES[0])
for file, template in templates.items():
    pathlib.Path(file).write_bytes(build_page(template, version).encode("utf-8"))
sys.stdout.buffer.write(json.dumps(rendered).encode("ascii"))
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
    files = [ROOT / "pyproject.toml", lock_file("site"), lock_file("build"), npm.LOCK]
    builders = (
        "dress.py",
        "dressing.py",
        "library.py",
        "npm.py",
        "programs.py",
        "runtime.py",
        "scripts.py",
        "website.py",
    )
    files += [library.LIST, library.PROGRAM, *library.INSIDE.glob("*.py"), *library.STAND_INS.rglob("*.py")]
    files += [BUILDER / name for name in builders]
    return digest(files + _own_files(PACKAGE) + _own_files(SOURCES))


def package_version() -> str:
    """Return ``__version__`` of the package, read without importing it."""
    for node in ast.parse(VERSION_FILE.read_text("utf-8")).body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "__version__":
            return str(ast.literal_eval(node.value))
    raise CannotGoOn(f"{VERSION_FILE.relative_to(ROOT)} does not set __version__.")


def _write_runtime(folder: Path) -> None:
    folder.mkdir()
    source = runtime.pyodide()
    for name in ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", WHOLE):
        shutil.copyfile(source / name, folder / name)


def lock() -> str:
    """Return the runtime's lock without packages to fetch elsewhere: the page uses its own site's files only."""
    whole = json.loads((runtime.pyodide() / "pyodide-lock.json").read_text("utf-8"))
    return json.dumps({"info": whole["info"], "packages": {}})


def early_script() -> str:
    """Return the script in the page's head: it starts the worker, then sees to it that a failing start is told."""
    return "".join((SCRIPTS / name).read_text("utf-8") for name in ("early.js", "host.js"))


def _write_page(folder: Path, at: str, version: str, address: str) -> Path:
    """Write the page with its files, rendered, and the script's map beside the folder; return a saved page's shell."""
    here = folder / at
    template = TEMPLATE.read_text("utf-8")
    styles = {name: (SOURCES / name).read_text("utf-8") for name in STYLES}
    script, script_map = scripts.bundled(SCRIPTS / "page.js")
    (here / "page.js").write_bytes(script.encode())
    (folder.parent / SCRIPT_MAP.name).write_bytes(script_map.encode())
    (here / "wall.js").write_bytes(scripts.bundled(SCRIPTS / "wall" / "wall.js").script.encode())
    worker = (SCRIPTS / "worker.js").read_text("utf-8").replace(VERSION_MARK, version).replace(LOCK_MARK, lock())
    for name, mark in LIBRARY_MARKS.items():
        worker = worker.replace(mark, dress.integrity((here / "python" / name).read_bytes()))
    (here / "worker.js").write_bytes(worker.encode())
    start = {f"{at}/{name}": dress.integrity((here / name).read_bytes()) for name in START}
    for name in BESIDE:
        if (SOURCES / name).is_dir():
            shutil.copytree(SOURCES / name, folder / name)
        else:
            shutil.copyfile(SOURCES / name, folder / name)
    page, shell = folder / "index.html", here / "shell.html"
    page.write_bytes(dress.served(template, at, styles, early_script(), address, start).encode())
    shell.write_bytes(dress.shell(template, styles, (SOURCES / "icon.svg").read_text("utf-8"), script).encode())
    rendered = run(
        [environment.python(), "-c", RENDER, version, page, shell],
        doing="Rendering the page",
        PYTHONPATH=str(PACKAGES),
    )
    english = page.read_text("utf-8")
    for tag, other in json.loads(rendered).items():
        (here / words_file(tag)).write_text(dressing.dressing(english, other, tag), "utf-8")
    return shell


def words_file(tag: str) -> str:
    """Return the name of the file with the page's own words in a language."""
    return f"words-{tag.lower()}.json"


def write_service_worker(folder: Path, version: str) -> None:
    """Write the service worker with every file of the site and its hash; the page itself is at the folder's address."""
    files = {}
    parts = (path for path in folder.rglob("*") if path.is_file() and not squeeze.is_squeezed(path))
    for file in sorted(path for path in parts if path.name != WHOLE):
        name = file.relative_to(folder).as_posix()
        files["./" if name == "index.html" else name] = dress.integrity(file.read_bytes())
    text = (SOURCES / "sw.js").read_text("utf-8")
    text = text.replace(VERSION_MARK, version).replace(FILES_MARK, json.dumps(files, indent=1))
    (folder / "sw.js").write_bytes(text.encode())


def _parts(here: Path) -> dict[str, Path]:
    """Return the files that a saved page holds, by the names of their places."""
    names = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm")
    files = {name: here / "pyodide" / name for name in names}
    files |= {name: here / "python" / name for name in LIBRARY_MARKS}
    files |= {file.name: file for file in sorted(here.glob("words-*.json"))}
    return {**files, "worker": here / "worker.js", "wall": here / "wall.js"}


def build(address: str = "") -> Path:
    """Return the folder of the served site, built anew only when something that it is made of has changed.

    ``address`` is where the site will be published: what links begin with in a saved page. Without one a page that
    was saved from a site has that site's, and the one that the build makes has none.
    """
    # The address stands in the page: two pages that differ in it are two versions.
    inputs = hashlib.sha256(f"{inputs_digest()} {address}".encode()).hexdigest()
    if SITE.is_dir() and SAVED.is_file() and STAMP.is_file() and STAMP.read_text("utf-8") == inputs:
        return SITE
    environment.ensure("build")
    version = f"{package_version()}+{inputs[:8]}"
    tell(f"Building the site, version {version}")
    DIST.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory(dir=DIST, prefix=".work-") as name:
        work = Path(name)
        made = work / "site"
        at = f"v-{inputs[:8]}"
        (made / at).mkdir(parents=True)
        _write_runtime(made / at / "pyodide")
        (made / at / "python").mkdir()
        library.write(made / at / "python", work)
        shell = _write_page(made, at, version, address)
        saved = dress.saved(shell, _parts(made / at), address)
        write_service_worker(made, version)
        STAMP.unlink(missing_ok=True)
        SAVED.write_bytes(saved.encode())
        os.replace(work / SCRIPT_MAP.name, SCRIPT_MAP)
        if SITE.exists():
            os.replace(SITE, work / "old")
        os.replace(made, SITE)
    STAMP.write_text(inputs, "utf-8")
    return SITE
