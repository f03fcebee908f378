"""The rule of the house: a lower floor never imports a higher one, and files stay small."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

PACKAGE = Path(__file__).resolve().parents[3] / "pylib" / "bowstring"
LONGEST = 400  # lines

# The house, lowest floor first: a module or a package imports only its own floor and those before it.
FLOORS = (
    "version",
    "words",
    "errors",
    "units",
    "geometry",
    "forming",
    "construction",
    "methods",
    "job",
    "analysis",
    "layout",
    "report",
    "__init__",
    "demo",
    "drawings",
    "sheet",
    "faces",
    "wall",
    "page",
    "terminal",
    "__main__",
)
# The door itself: a view or the terminal may take what the package makes public, nothing below may.
DOOR = "__init__"
OUTSIDE_ALLOWED = {("drawings.svg", "svgwrite"), ("drawings.qr", "segno")}


def name_of(file: Path) -> str:
    """Return a module's name below the package, the package itself as ``__init__``."""
    parts = list(file.relative_to(PACKAGE).with_suffix("").parts)
    if parts[-1] == "__init__" and len(parts) > 1:
        parts.pop()
    return ".".join(parts)


def is_module(name: str) -> bool:
    """Tell whether a dotted name below the package is one of its modules or packages."""
    place = PACKAGE.joinpath(*name.split("."))
    return place.with_suffix(".py").is_file() or (place / "__init__.py").is_file()


FILES = {name_of(file): file for file in sorted(PACKAGE.rglob("*.py"))}


def floor_of(name: str) -> int:
    """Return the floor's number; fails for a module that has no place in the house yet."""
    room = name.partition(".")[0]
    assert room in FLOORS, f"bowstring.{name} has no floor: give it a place in FLOORS"
    return FLOORS.index(room)


def imports(source: str, module: str, is_package: bool) -> Iterator[tuple[int, str]]:
    """Yield line and absolute dotted name of everything that a source imports, wherever it does."""
    package = f"bowstring.{module}".removesuffix(".__init__").split(".")
    if not is_package:
        package.pop()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) + 1 - node.level] if node.level else []
            origin = ".".join([*base, *filter(None, [node.module])])
            for alias in node.names:
                deeper = f"{origin}.{alias.name}"
                inside = origin.split(".")[0] == "bowstring"
                yield node.lineno, deeper if inside and is_module(deeper.partition(".")[2]) else origin


def own_target(imported: str) -> str | None:
    """Return the module's name below the package, or None when something else is imported."""
    top, _, rest = imported.partition(".")
    return (rest or DOOR) if top == "bowstring" else None


@cache
def found_imports(module: str) -> list[tuple[int, str]]:
    file = FILES[module]
    return list(imports(file.read_text("utf-8"), module, file.name == "__init__.py"))


def climbs(module: str, found: list[tuple[int, str]]) -> list[str]:
    """Return a sentence for each import that reaches a higher floor."""
    faults = []
    for line, imported in found:
        target = own_target(imported)
        if target is not None and floor_of(target) > floor_of(module):
            faults.append(f"bowstring.{module}, line {line}: imports the higher bowstring.{target}")
    return faults


def strangers(module: str, found: list[tuple[int, str]]) -> list[str]:
    """Return a sentence for each import from outside the standard library that the module may not have."""
    faults = []
    for line, imported in found:
        top = imported.partition(".")[0]
        if top != "bowstring" and top not in sys.stdlib_module_names and (module, top) not in OUTSIDE_ALLOWED:
            faults.append(f"bowstring.{module}, line {line}: imports {top}")
    return faults


def test_a_module_imports_no_higher_floor() -> None:
    assert [fault for module in FILES for fault in climbs(module, found_imports(module))] == []


def test_a_module_needs_the_standard_library_only_but_for_the_drawings() -> None:
    assert [fault for module in FILES for fault in strangers(module, found_imports(module))] == []


def test_a_module_imports_by_its_full_name() -> None:
    """Dynamic imports would slip past the rule; only the catalogue finds its topics by itself, and what faces import
    anyway is imported beforehand."""
    sources = {module: file.read_text("utf-8") for module, file in FILES.items()}
    assert [name for name, text in sources.items() if "importlib" in text or "__import__" in text] == [
        "page.warming",
        "words",
    ]


def circle(graph: dict[str, set[str]]) -> list[str]:
    """Return the modules of one circle of imports, empty when there's none."""
    try:
        TopologicalSorter(graph).prepare()
    except CycleError as error:
        return list(error.args[1])
    return []


def test_no_modules_import_each_other_in_a_circle() -> None:
    """On a floor too there is an order."""
    graph: dict[str, set[str]] = {}
    for module in FILES:
        targets = {own_target(imported) for _, imported in found_imports(module)}
        graph[module] = {target for target in targets if target is not None}
    assert circle(graph) == []
    assert circle({"arc": {"pairs"}, "pairs": {"roots"}, "roots": {"arc"}}) != []


def test_files_stay_small() -> None:
    top = PACKAGE.parents[1]
    sources = [
        file
        for folder in (top / "pylib", top / "tests", top / "site")
        for pattern in ("*.py", "*.js", "*.mjs", "*.css", "*.html")
        for file in folder.rglob(pattern)
    ]
    assert len(sources) > len(FILES)
    long = {
        file.relative_to(top).as_posix(): lines
        for file in [*sources, top / "build.py"]
        if (lines := len(file.read_text("utf-8").splitlines())) > LONGEST
    }
    assert long == {}


def test_the_rule_sees_a_climbing_import() -> None:
    """The checks above can fail: each way to write an import is seen."""
    for source in (
        "from bowstring.drawings import svg",
        "import bowstring.drawings.svg",
        "from .drawings import svg",
        "def late():\n    from bowstring.drawings.svg import draw",
        "from bowstring import answer",
    ):
        assert climbs("geometry.plane", list(imports(source, "errors", False))), source
    assert climbs("analysis.rule", list(imports("from ..report.answer import answer", "analysis.rule", False)))
    assert not climbs(
        "geometry.plane", list(imports("from bowstring.errors import bad\nimport math", "geometry.plane", False))
    )


def test_the_rule_sees_a_stranger() -> None:
    found = list(imports("import math, numpy.linalg\nfrom svgwrite import Drawing", "geometry.plane", False))
    assert len(strangers("geometry.plane", found)) == 2
    assert strangers("drawings.svg", [(1, "svgwrite.shapes")]) == []
