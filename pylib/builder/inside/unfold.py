"""Dataclasses written out as the methods that they would make, by the browser's own Python.

``@dataclass`` writes each class's methods as text and compiles them whenever the program starts; for some fifty classes
that is a tenth of the page's start. Here it's done once, when the site is built. A class with anything beyond fields,
plain defaults, ``field(default_factory=...)`` and methods of its own is left to ``@dataclass``. A parent is taken to
have no fields; a test holds every class to what ``@dataclass`` makes. ``dataclasses.replace`` and the like don't know
what is written out.
"""

import ast

LEAVE = {"__init__", "__eq__", "__hash__", "__repr__", "__setattr__", "__delattr__", "__match_args__", "__slots__"}


def unfolded(tree: ast.Module) -> ast.Module:
    """Return the module with its dataclasses written out, and without the import that nothing needs any more."""
    for node in ast.walk(tree):
        if isinstance(node, ast.ClassDef):
            _unfold(node)
    _drop_imports(tree, {node.id for node in ast.walk(tree) if isinstance(node, ast.Name)})
    return ast.fix_missing_locations(tree)


def _unfold(node: ast.ClassDef) -> None:
    frozen = _frozen(node)
    fields = _fields(node)
    if frozen is None or fields is None or node.keywords:
        return
    names = {part.name for part in node.body if isinstance(part, ast.FunctionDef)}
    if names & LEAVE:
        return
    text = _methods(node.name, fields, frozen, "__post_init__" in names)
    node.decorator_list = []
    for part in node.body:
        if isinstance(part, ast.AnnAssign) and part.value and _factory(part.value):
            part.value = None
    node.body += ast.parse(text).body[0].body  # type: ignore[attr-defined]


def _frozen(node: ast.ClassDef) -> bool | None:
    """Tell whether a dataclass is frozen; ``None`` when it is none, or one with other wishes."""
    if len(node.decorator_list) != 1:
        return None
    return {"dataclass": False, "dataclass(frozen=True)": True}.get(ast.unparse(node.decorator_list[0]))


def _fields(node: ast.ClassDef) -> dict[str, str] | None:
    """Return the fields with the text of their defaults, empty where there is none; ``None`` for what isn't plain."""
    fields: dict[str, str] = {}
    for part in node.body:
        if isinstance(part, ast.AnnAssign):
            plain = part.value is None or _factory(part.value) or not _calls(part.value)
            if not plain or "ClassVar" in ast.unparse(part.annotation) or "InitVar" in ast.unparse(part.annotation):
                return None
            fields[part.target.id] = ast.unparse(part.value) if part.value else ""  # type: ignore[union-attr]
        elif not isinstance(part, ast.FunctionDef | ast.Expr):
            return None
    return fields


def _factory(value: ast.expr) -> str:
    """Return what makes a field's value anew for each instance, empty where nothing does."""
    text = ast.unparse(value)
    name = text.removeprefix("field(default_factory=").removesuffix(")")
    return name if name != text and name.isidentifier() else ""


def _calls(value: ast.expr) -> bool:
    return any(isinstance(node, ast.Call | ast.List | ast.Dict | ast.Set) for node in ast.walk(value))


def _methods(name: str, fields: dict[str, str], frozen: bool, after: bool) -> str:
    made = {field: _factory(ast.parse(default, mode="eval").body) for field, default in fields.items() if default}
    takes, sets = "", []
    for field, default in fields.items():
        value = f"{made[field]}() if {field} is ... else {field}" if made.get(field) else field
        takes += f", {field}=..." if made.get(field) else f", {field}={default}" if default else f", {field}"
        sets.append(f"_set(self, {field!r}, {value})" if frozen else f"self.{field} = {value}")
    mine, others = (f"({''.join(f'{who}.{field}, ' for field in fields)})" for who in ("self", "other"))
    told = ", ".join(f"{field}={{self.{field}!r}}" for field in fields)
    lines = [
        f"class {name}:",
        f" def __init__(self{takes}):",
        *(["  _set = object.__setattr__"] if frozen else []),
        *(f"  {line}" for line in sets),
        *(["  self.__post_init__()"] if after else []),
        "  return None",
        " def __eq__(self, other):",
        f"  return {mine} == {others} if other.__class__ is self.__class__ else NotImplemented",
        " def __repr__(self):",
        f"  return f'{{self.__class__.__qualname__}}({told})'",
        f" __match_args__ = {tuple(fields)!r}",
    ]
    if not frozen:
        return "\n".join([*lines, " __hash__ = None"])
    return "\n".join(
        [
            *lines,
            " def __hash__(self):",
            f"  return hash({mine})",
            " def __setattr__(self, name, value):",
            "  raise AttributeError(f'cannot assign to field {name!r}')",
            " def __delattr__(self, name):",
            "  raise AttributeError(f'cannot delete field {name!r}')",
        ]
    )


def _drop_imports(tree: ast.Module, used: set[str]) -> None:
    for node in list(tree.body):
        if isinstance(node, ast.ImportFrom) and node.module == "dataclasses":
            node.names = [alias for alias in node.names if alias.name in used]
            if not node.names:
                tree.body.remove(node)
