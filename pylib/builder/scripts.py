"""The page's scripts made one: modules in the order in which they need each other, imports and exports taken off."""

from __future__ import annotations

import re
from pathlib import Path

from builder.house import CannotGoOn

_IMPORT = re.compile(r'^import \{[^}]*\} from "\./([a-z_]+\.js)";\n', re.MULTILINE)
_EXPORT = re.compile(r"^export (?=(?:async )?(?:function|const|let) )", re.MULTILINE)
_NAME = re.compile(r"^(?:async )?(?:function|const|let) ([A-Za-z_]\w*)", re.MULTILINE)


def bundled(entry: Path) -> str:
    """Return one module that holds ``entry`` and every module that it needs.

    All share one scope, so raises ``CannotGoOn`` when two of them have a name in common at their top level.
    """
    order: list[Path] = []
    _visit(entry, order)
    texts = [_EXPORT.sub("", _IMPORT.sub("", module.read_text("utf-8"))) for module in order]
    seen: dict[str, Path] = {}
    for module, text in zip(order, texts, strict=True):
        if re.search(r"^(?:import|export)\b", text, re.MULTILINE):
            raise CannotGoOn(f"{module.name} imports or exports in a way that isn't understood here.")
        for name in _NAME.findall(text):
            if seen.setdefault(name, module) != module:
                raise CannotGoOn(f"{seen[name].name} and {module.name} both have a {name}.")
    return "\n".join(texts)


def _visit(module: Path, order: list[Path]) -> None:
    if module in order:
        return
    for name in _IMPORT.findall(module.read_text("utf-8")):
        _visit(module.parent / name, order)
    if module not in order:
        order.append(module)
