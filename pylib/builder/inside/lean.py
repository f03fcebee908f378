"""Other people's modules without what the page never asks of them, made so by the browser's own Python.

The files of ``stand_ins`` stand in the place of modules of the same name, each for one edition of it, known by its
hash: a newer runtime or library stops the build until somebody has looked. With all that isn't imported any more these
would be a third of the page's start.
"""

import hashlib
import io
import re
import zipfile
from collections.abc import Mapping

# In the library for drawings, the way to fetch fonts is imported when it's used: the page may fetch nothing.
CONTAINER = "svgwrite/container.py", "a959f3fa559181a40445d2ac39ab6c054241e85a3f753fc13b4ba3deaca9edc3"
FETCHES = b"from urllib.request import urlopen\r\n"
FETCHES_LATER = b"""
def urlopen(*words, **wishes):
    from urllib.request import urlopen
    return urlopen(*words, **wishes)

"""
STANDS_FOR = re.compile(r"# Stands for sha256 ([0-9a-f]{64})\n")


def lean(file: str, source: bytes, stand_ins: Mapping[str, str]) -> bytes:
    """Return a module's source as the page gets it; ``file`` is its place in the library.

    Raises ``LookupError`` when it is another edition than was looked at.
    """
    found = hashlib.sha256(source).hexdigest()
    if file == CONTAINER[0]:
        _same(file, found, CONTAINER[1])
        return source.replace(FETCHES, FETCHES_LATER)
    if file in stand_ins:
        stands_for = STANDS_FOR.match(stand_ins[file])
        _same(file, found, stands_for[1] if stands_for else "")
        return stand_ins[file].encode()
    return source


def lean_library(archive: bytes, stand_ins: Mapping[str, str]) -> bytes:
    """Return an archive of modules, made lean."""
    made = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(archive)) as old, zipfile.ZipFile(made, "w") as new:
        for name in old.namelist():
            new.writestr(name, lean(name, old.read(name), stand_ins))
    return made.getvalue()


def _same(file: str, found: str, wanted: str) -> None:
    if found != wanted:
        raise LookupError(f"{file} is another edition than its stand-in was made for: {found}")
