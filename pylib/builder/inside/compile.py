"""What the page's Python starts with, and the rest, compiled by the browser's own Python (see ``prepare.mjs``).

Of the standard library and of other people's packages those modules that are listed, of this project's own package all
that a page can ask for. Three kinds: what the runtime imports by itself lies in an archive, as it wants it; what the
first face needs is held in one piece beside it; the rest is a file of its own, fetched after the first answer
(``held.py`` imports both).

The compiler has to be the page's own: code is good for one minor version. Equal sources give equal bytes: no dates, and
files taken for what they are, unchecked. Stored, not squeezed: nothing has to be inflated when the page starts,
and what squeezes a whole file for the way does it better.
"""

import ast
import importlib.util
import io
import marshal
import zipfile
from pathlib import Path

from builder.inside.held import FIRST
from builder.inside.lines import at_their_first_line
from builder.inside.unfold import unfolded
from builder.inside.untyped import untyped

DATE = (1980, 1, 1, 0, 0, 0)  # the earliest that the format knows
UNCHECKED = (1).to_bytes(4, "little")  # PEP 552: named by the source's hash, never compared with it
OWN = "bowstring"
HELD = "held"
"""The name that ``held.py`` has in the library."""
ELSEWHERE = (
    *("bowstring.__main__", "bowstring.terminal", "bowstring.words.english.terminal", "bowstring.words.english.usage"),
    *("bowstring.sheet.short", "bowstring.sheet.text", "bowstring.page.build"),
)
"""The project's own modules that no page asks for: the terminal's, and what makes the page."""
WORDS = "bowstring/words/"  # nothing fails in a line of these
TYPES = "bowstring.report.forms."
"""Modules of types alone: once annotations are off hardly one is imported, but by the door, and no page asks there."""
OPTIMIZE = 2  # no docstrings, no asserts
PROTOCOL = 2  # of marshal's: each value written out, so that equal values are equal bytes


class Library:
    """All modules of a page, compiled.

    Raises ``LookupError`` when ``listed`` (one name a line) has what isn't in the archives of sources.
    """

    def __init__(self, listed: str, *archives: bytes) -> None:
        wanted = {line for line in listed.splitlines() if line and not line.startswith("#")}
        files = {_module_name(file): (file, source) for file, source in _sources(archives).items()}
        if missing := wanted - files.keys():
            raise LookupError(f"the list of modules names what isn't there: {', '.join(sorted(missing))}")
        own = {name for name in files if name.split(".")[0] == OWN} - set(ELSEWHERE)
        files[HELD] = f"{HELD}.py", Path(__file__).with_name("held.py").read_bytes()
        trees = {name: _tree(*files[name]) for name in sorted({HELD} | wanted | own)}
        asked = {found for name, tree in trees.items() if name != OWN for found in _imported(tree, name)}
        self._files = {name: files[name] for name in trees if not name.startswith(TYPES) or name in asked}
        self._codes = {name: _compiled(trees[name], file) for name, (file, _source) in self._files.items()}

    def archive_of_all(self) -> bytes:
        """Return everything as the runtime can import it by itself: to see what it imports."""
        return self.archive(set(self._files), set())

    def archive(self, by_itself: set[str], first: set[str]) -> bytes:
        """Return the library: ``by_itself``, what the runtime imports, as an archive, with ``first`` in one piece."""
        made = io.BytesIO()
        with zipfile.ZipFile(made, "w") as bundle:
            for name in sorted(self._files.keys() & ({HELD} | by_itself)):
                file, source = self._files[name]
                head = importlib.util.MAGIC_NUMBER + UNCHECKED + importlib.util.source_hash(source)
                _put(bundle, f"{file}c", head + self._codes[name])
            _put(bundle, FIRST, self.piece(first - by_itself))
        return made.getvalue()

    def piece(self, names: set[str]) -> bytes:
        """Return modules as ``held.py`` takes them."""
        chosen = {name: self._files[name][0].endswith("__init__.py") for name in self._files.keys() & names}
        order = sorted(chosen, key=_beside)
        return marshal.dumps({name: (chosen[name], self._codes[name]) for name in order}, PROTOCOL)

    def rest(self, known: set[str]) -> bytes:
        """Return all modules that are not ``known``, as ``held.py`` takes them."""
        return self.piece(self._files.keys() - known - {HELD})


def _put(bundle: zipfile.ZipFile, name: str, content: bytes) -> None:
    entry = zipfile.ZipInfo(name, DATE)
    entry.external_attr = 0o644 << 16
    bundle.writestr(entry, content, zipfile.ZIP_STORED)


def _sources(archives: tuple[bytes, ...]) -> dict[str, bytes]:
    found: dict[str, bytes] = {}
    for archive in archives:
        with zipfile.ZipFile(io.BytesIO(archive)) as bundle:
            found |= {name: bundle.read(name) for name in bundle.namelist() if name.endswith(".py")}
    return found


def _module_name(file: str) -> str:
    return file.removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def _beside(name: str) -> list[str]:
    """What modules are ordered by: one topic's words in all languages, which share their keys, stand side by side."""
    pieces = name.split(".")
    return [*pieces[:2], *reversed(pieces[2:])] if pieces[:2] == [OWN, "words"] else pieces


def _tree(file: str, source: bytes) -> ast.Module:
    tree = ast.parse(source, file)
    return untyped(unfolded(tree)) if file.split("/")[0] == OWN else tree


def _imported(tree: ast.Module, name: str) -> set[str]:
    """The modules that a module imports names from, wherever it does; types import nothing but more of them."""
    found = {node.module for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and node.module}
    return set() if name.startswith(TYPES) else found


def _compiled(tree: ast.Module, file: str) -> bytes:
    code = compile(tree, file, "exec", dont_inherit=True, optimize=OPTIMIZE)
    return marshal.dumps(at_their_first_line(code, told=file.split("/")[0] == OWN and not file.startswith(WORDS)))
