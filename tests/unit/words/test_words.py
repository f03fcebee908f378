"""The message catalogue is whole: every sentence asked for exists, every one that exists is asked for.

And no sentence for a person stands anywhere else.
"""

from __future__ import annotations

import ast
import builtins
import importlib
import pkgutil
import re
from collections.abc import Iterator
from pathlib import Path
from string import Formatter

from bowstring.words import catalogue, english
from bowstring.words.topics import TOPICS
from helping import all_hold

PACKAGE = Path(__file__).resolve().parents[3] / "pylib" / "bowstring"
SOURCES = [file for file in sorted(PACKAGE.rglob("*.py")) if file.relative_to(PACKAGE).parts[0] != "words"]
TREES = {file.relative_to(PACKAGE).as_posix(): ast.parse(file.read_text("utf-8")) for file in SOURCES}
# A job as somebody would type it: its note is that person's own text and no message.
TYPED_BY_SOMEBODY = {"demo.py"}
HALVES = (".wrong", ".remedy")
# Four words or more in a row, the last followed by the end of a sentence.
SENTENCE = re.compile(r"(?:[^\W\d_][\w'’-]*[,;:]?\s+){3,}[^\W\d_][\w'’-]*\s?[.?!](?:\s|$)")
# How the page's template names a message.
MARK = re.compile(r"@([a-z0-9_.]+)@")
TAG = re.compile(r"<[^<>]*>")


def calls(tree: ast.AST) -> Iterator[tuple[ast.Call, str, ast.expr]]:
    """Yield each call of ``say`` or ``bad`` with the function's name and the key it's given."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name = getattr(node.func, "id", getattr(node.func, "attr", ""))
        place = {"say": 0, "bad": 1}.get(name)
        if place is None:
            continue
        named = [word.value for word in node.keywords if word.arg == "key"]
        if named or len(node.args) > place:
            yield node, name, named[0] if named else node.args[place]


def literal(key: ast.expr) -> list[str]:
    """Return the keys that an expression spells out: a literal, or a choice between literals."""
    if isinstance(key, ast.IfExp):
        return literal(key.body) + literal(key.orelse)
    return [key.value] if isinstance(key, ast.Constant) and isinstance(key.value, str) else []


def prefix(text: ast.AST) -> str | None:
    """Return the start of a text put together, if it can start a key: ``length.`` of f"length.{name}"."""
    first: ast.AST | None = None
    if isinstance(text, ast.JoinedStr) and text.values:
        first = text.values[0]
    elif isinstance(text, ast.BinOp) and isinstance(text.op, ast.Add):
        first = text.left
    if isinstance(first, ast.Constant):
        start = str(first.value)
        return start if re.fullmatch(r"[a-z0-9_]+\.[a-z0-9_.]*", start) else None
    return None


def keys_of(name: str, key: str) -> list[str]:
    return [key + half for half in HALVES] if name == "bad" else [key]


def missing_keys(tree: ast.AST, messages: dict[str, str]) -> list[str]:
    """Return a sentence for each key that a source asks for and the catalogue doesn't have."""
    faults = []
    for node, name, key in calls(tree):
        for wanted in (each for word in literal(key) for each in keys_of(name, word)):
            if wanted not in messages:
                faults.append(f"line {node.lineno}: no message {wanted}")
        family = prefix(key)
        if family is not None and not any(known.startswith(family) for known in messages):
            faults.append(f"line {node.lineno}: no message starts with {family}")
    return faults


def values_of(template: str) -> set[str]:
    """Return the names of the values that a template takes."""
    return {re.split(r"[.\[]", field)[0] for _, field, _, _ in Formatter().parse(template) if field}


def missing_values(tree: ast.AST, messages: dict[str, str]) -> list[str]:
    """Return a sentence for each message that needs a value which the call doesn't give."""
    faults = []
    for node, name, key in calls(tree):
        given = {word.arg for word in node.keywords}
        if None in given:  # a call with **values: only a run can tell
            continue
        for wanted in (each for word in literal(key) for each in keys_of(name, word)):
            needed = values_of(messages.get(wanted, ""))
            faults += [f"line {node.lineno}: {wanted} needs {value}" for value in sorted(needed - given)]
    return faults


def unused(trees: list[ast.AST], messages: dict[str, str], marks: set[str]) -> list[str]:
    """Return the keys that no source names, whole or by the start of a longer text, nor the template."""
    nodes = [node for tree in trees for node in ast.walk(tree)]
    words = {node.value for node in nodes if isinstance(node, ast.Constant) and isinstance(node.value, str)}
    words |= marks
    families = tuple(start for node in nodes if (start := prefix(node)) is not None)
    return [
        key
        for key in messages
        if key not in words
        and key.removesuffix(HALVES[0]).removesuffix(HALVES[1]) not in words
        and not key.startswith(families)
    ]


def for_programmers(tree: ast.AST) -> set[ast.AST]:
    """Return the nodes whose text no user reads: docstrings, asserts, what Python's own exceptions say."""
    spared: set[ast.AST] = set()
    for node in ast.walk(tree):
        lone = isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
        called = getattr(node.exc, "func", None) if isinstance(node, ast.Raise) else None
        own = isinstance(called, ast.Name) and hasattr(builtins, called.id)
        if lone or own or isinstance(node, ast.Assert):
            spared.update(ast.walk(node))
    return spared


def shown(node: ast.AST) -> str:
    """Return the text of a string or an f-string, its values as the letter x and its tags left out."""
    if isinstance(node, ast.JoinedStr):
        pieces = [str(part.value) if isinstance(part, ast.Constant) else "x" for part in node.values]
        return TAG.sub(" ", "".join(pieces))
    return TAG.sub(" ", node.value) if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


def sentences(tree: ast.AST) -> list[str]:
    """Return each sentence for a person that stands in a source, with its line."""
    spared = for_programmers(tree)
    texts = [node for node in ast.walk(tree) if isinstance(node, ast.Constant | ast.JoinedStr)]
    return [
        f"line {node.lineno}: {shown(node)}" for node in texts if node not in spared and SENTENCE.search(shown(node))
    ]


def asks_for_what_exists(source: str) -> None:
    assert missing_keys(TREES[source], catalogue()) == []


def test_every_message_asked_for_exists() -> None:
    all_hold({source: (source,) for source in TREES}, asks_for_what_exists)


def gives_its_values(source: str) -> None:
    assert missing_values(TREES[source], catalogue()) == []


def test_every_message_gets_its_values() -> None:
    all_hold({source: (source,) for source in TREES}, gives_its_values)


def holds_no_sentence(source: str) -> None:
    assert sentences(TREES[source]) == []


def test_no_sentence_stands_outside_the_catalogue() -> None:
    all_hold({source: (source,) for source in TREES.keys() - TYPED_BY_SOMEBODY}, holds_no_sentence)


def test_every_message_is_asked_for() -> None:
    marks = set(MARK.findall((PACKAGE.parents[1] / "site" / "page.html").read_text("utf-8")))
    assert unused(list(TREES.values()), catalogue(), marks) == []


def test_what_is_wrong_comes_with_what_would_do() -> None:
    stems = [{key.removesuffix(half) for key in catalogue() if key.endswith(half)} for half in HALVES]
    assert stems[0], "the catalogue has no refusals at all"
    assert stems[0] == stems[1]


def test_every_template_can_be_read() -> None:
    """A lone brace in a template would be a traceback on somebody's sheet."""
    for key, template in catalogue().items():
        assert template.strip(), key
        for _, field, _, _ in Formatter().parse(template):
            assert field is None or re.match(r"[a-z_]\w*", field), f"{key}: {{{field}}} has no name"


def test_the_checks_see_what_they_look_for() -> None:
    messages = {"a.one": "{x} is {y}", "a.two.wrong": "", "a.two.remedy": "", "b.three": "", "c.four": ""}
    asked = ast.parse('say("a.none"); bad(f, "a.one"); say(f"d.{k}"); say("a.one" if k else "z")')
    assert len(missing_keys(asked, messages)) == 5
    assert missing_values(ast.parse('say("a.one", x=1)'), messages) == ["line 1: a.one needs y"]
    assert unused([ast.parse('say("a.one"); bad(f, "a.two"); say(f"b.{k}")')], messages, set()) == ["c.four"]
    assert unused([ast.parse('"b." + k; f("a.one", "a.two")')], messages, {"c.four"}) == []
    unread = ast.parse('"""A docstring that is long."""\nassert x, "This is for programmers only."')
    assert sentences(unread) == []
    assert sentences(ast.parse('raise TypeError("This is for programmers only.")')) == []
    assert len(sentences(ast.parse('f(f"<p>Measure {n} from the <b>end</b>.</p>")'))) == 1
    assert len(sentences(ast.parse('raise BadJob("This is for a person.")'))) == 1


def test_each_message_is_found_by_the_first_word_of_its_key() -> None:
    modules = [module.name for module in pkgutil.iter_modules(english.__path__)]
    held = {name: importlib.import_module(f"{english.__name__}.{name}").MESSAGES for name in modules}
    groups = {(key.partition(".")[0], name) for name, messages in held.items() for key in messages}
    assert {(group, name) for group, names in TOPICS.items() for name in names} == groups
