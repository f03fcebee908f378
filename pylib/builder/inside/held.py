"""Modules held in memory, by name: the page's own way to import, in the page's Python.

Python's own way from an archive opens it, looks a name up in several places and reads, in Python, for each module.
Here a name is looked up once in a dictionary. The build makes it (``compile.py``) in two parts: what the first face
needs comes with the library, the rest after the first answer.
"""

from __future__ import annotations

import marshal
import sys
from types import ModuleType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable
from _frozen_importlib import ModuleSpec

LIBRARY = "/lib/python314.zip"
WHOLE = "/lib/whole.zip"
"""All of Python's own modules, once somebody needed one that isn't held."""

FIRST = "first.bin"
"""What lies in the library beside the modules that the runtime imports by itself."""


class Held:
    """A finder and loader of modules whose code it holds: ``{name: (whether it is a package, marshalled code)}``."""

    def __init__(self) -> None:
        self._modules: dict[str, tuple[bool, bytes]] = {}

    def take(self, content: bytes) -> None:
        """Hold more modules; ``content``: the dictionary, marshalled."""
        self._modules.update(marshal.loads(content))

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        if name not in self._modules:
            return None
        is_package, _code = self._modules[name]
        spec = ModuleSpec(name, self, is_package=is_package)  # type: ignore[arg-type]
        if is_package:  # as if it lay in an archive: a module that isn't held is looked for there
            spec.submodule_search_locations = [f"{place}/{name.replace('.', '/')}" for place in (LIBRARY, WHOLE)]
        return spec

    def create_module(self, spec: ModuleSpec) -> None:
        """Leave it to Python."""

    def exec_module(self, module: ModuleType) -> None:
        exec(marshal.loads(self._modules[module.__name__][1]), module.__dict__)


def begin() -> Callable[[bytes], None]:
    """Import from what came with the library from now on; return how more is taken."""
    held = Held()
    held.take(globals()["__loader__"].get_data(f"{LIBRARY}/{FIRST}"))
    sys.meta_path.insert(0, held)
    return held.take
