"""Modules without what only a type checker reads, by the browser's own Python.

Annotations of functions are made into objects each time a function is defined, and an import for their sake loads a
module that nothing else asks for. Both are dropped when the site is built. What a class says of its fields stays.
"""

import ast

FROM = ("bowstring", "typing", "collections.abc")
"""Modules whose import does nothing but bring names."""


def untyped(tree: ast.Module) -> ast.Module:
    """Return a module without the annotations of its functions and the imports that only annotations needed.

    A module that evaluates its annotations (without ``from __future__ import annotations``) is left as it is.
    """
    if not any(isinstance(node, ast.ImportFrom) and node.module == "__future__" for node in tree.body):
        return tree
    tree = _Stripping().visit(tree)
    used = _used(tree)
    tree.body = [node for node in tree.body if _kept(node, used)]
    return ast.fix_missing_locations(tree)


class _Stripping(ast.NodeTransformer):
    """Takes annotations off functions, and off the variables inside them."""

    def __init__(self) -> None:
        self._inside = 0

    def visit_FunctionDef(self, node: ast.FunctionDef) -> ast.AST:
        for each in (*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs, node.args.vararg, node.args.kwarg):
            if each:
                each.annotation = None
        node.returns = None
        self._inside += 1
        self.generic_visit(node)
        self._inside -= 1
        return node

    def visit_ClassDef(self, node: ast.ClassDef) -> ast.AST:
        inside, self._inside = self._inside, 0
        self.generic_visit(node)
        self._inside = inside
        return node

    def visit_AnnAssign(self, node: ast.AnnAssign) -> ast.AST:
        if not self._inside:
            return node
        plain = ast.Assign([node.target], node.value) if node.value else ast.Pass()
        return ast.copy_location(plain, node)

    def visit_If(self, node: ast.If) -> ast.AST | None:
        if isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING":
            return None
        return self.generic_visit(node)


def _used(tree: ast.Module) -> set[str]:
    """The names that a module still asks for, those that it gives to others by ``__all__`` included."""
    used: set[str] = set()
    todo: list[ast.AST] = [tree]
    while todo:
        node = todo.pop()
        if isinstance(node, ast.Name):
            used.add(node.id)
        elif isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "__all__":
            used |= set(ast.literal_eval(node.value))
        elif isinstance(node, ast.AnnAssign):  # its annotation is kept as a text
            todo += [node.target, *([node.value] if node.value else [])]
            continue
        todo += ast.iter_child_nodes(node)
    return used


def _kept(node: ast.stmt, used: set[str]) -> bool:
    """Take the names that nothing asks for off an import; tell whether anything of a statement is left."""
    if not isinstance(node, ast.ImportFrom) or not str(node.module).startswith(FROM):
        return True
    node.names = [alias for alias in node.names if (alias.asname or alias.name) in used]
    return bool(node.names)
