"""One archive of compiled modules, made by the browser's own Python (see ``prepare.mjs``).

Of the standard library and of other people's packages those that are listed, of this project's own package all that a
page can ask for.
The compiler has to be the page's own: code is good for one minor version. Equal sources give equal bytes: no dates, and
files taken for what they are, unchecked. Stored, not squeezed: nothing has to be inflated when the page starts,
and what squeezes the whole archive for the way does it better.
"""

import ast
import importlib.util
import io
import marshal
import zipfile

from builder.inside.unfold import unfolded
from builder.inside.untyped import untyped

DATE = (1980, 1, 1, 0, 0, 0)  # the earliest that the format knows
UNCHECKED = (1).to_bytes(4, "little")  # PEP 552: named by the source's hash, never compared with it
OWN = "bowstring"
ELSEWHERE = (
    *("bowstring.__main__", "bowstring.terminal", "bowstring.words.english.terminal", "bowstring.words.english.usage"),
    *("bowstring.sheet.short", "bowstring.sheet.text", "bowstring.page.build"),
)
"""The project's own modules that no page asks for: the terminal's, and what makes the page."""
OPTIMIZE = 2  # no docstrings, no asserts


def library(listed: str, *archives: bytes) -> bytes:
    """Return the page's library: the modules that ``listed`` names, one a line, from archives of sources.

    Raises ``LookupError`` when it names what isn't there.
    """
    wanted = {line for line in listed.splitlines() if line and not line.startswith("#")}
    files = {_module_name(file): (file, source) for file, source in _sources(archives).items()}
    if missing := wanted - files.keys():
        raise LookupError(f"the list of modules names what isn't there: {', '.join(sorted(missing))}")
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as bundle:
        own = {name for name in files if name.split(".")[0] == OWN} - set(ELSEWHERE)
        for name in sorted(wanted | own):
            file, source = files[name]
            entry = zipfile.ZipInfo(f"{file}c", DATE)
            entry.external_attr = 0o644 << 16
            bundle.writestr(entry, _compiled(source, file), zipfile.ZIP_STORED)
    return made.getvalue()


def _sources(archives: tuple[bytes, ...]) -> dict[str, bytes]:
    found: dict[str, bytes] = {}
    for archive in archives:
        with zipfile.ZipFile(io.BytesIO(archive)) as bundle:
            found |= {name: bundle.read(name) for name in bundle.namelist() if name.endswith(".py")}
    return found


def _module_name(file: str) -> str:
    return file.removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def _compiled(source: bytes, file: str) -> bytes:
    tree = ast.parse(source, file)
    if file.split("/")[0] == OWN:
        tree = untyped(unfolded(tree))
    code = compile(tree, file, "exec", dont_inherit=True, optimize=OPTIMIZE)
    return importlib.util.MAGIC_NUMBER + UNCHECKED + importlib.util.source_hash(source) + marshal.dumps(code)
