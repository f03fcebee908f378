"""The house stays readable: its files and functions are short at the median, and no function is long or branches much.

The numbers are printed at the end of a run, so that somebody sees them move before they leave their bounds.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from unit.house.counting import Function, Numbers, counted, functions_of

BRANCHING = '''
def chosen(rows, wanted=None):
    """Not counted.

    Nor this.
    """
    try:
        found = [row for row in rows if row]  # a comprehension is one branch, whatever it leaves out
    except ValueError:
        found = []

    for row in found or ():
        while row and wanted:
            row = 1 if row else 2
    if found:
        match found:
            case []:
                return None
            case _:
                return found
'''


def test_the_house_is_readable(house: Path, record_property: Callable[[str, object], None]) -> None:
    numbers = counted(house / "pylib")
    assert len(numbers.files) > 100 and len(numbers.functions) > 500
    record_property("told", numbers.report())
    assert numbers.complaints() == []


def test_lines_and_branches_are_counted() -> None:
    (found,) = functions_of(BRANCHING, "here")
    assert found == Function("here:chosen", 14, 10)


def test_a_function_in_another_is_counted_by_itself_too() -> None:
    source = "def outer():\n    def inner():\n        return 1 if 2 else 3\n    return inner\n"
    assert list(functions_of(source, "")) == [Function(":outer", 3, 1), Function(":inner", 1, 1)]


def test_what_leaves_its_bound_is_named() -> None:
    good = [Function(f"f{number}", 8, 15) for number in range(3)]
    assert Numbers({"a": 125, "b": 400}, good).complaints() != []
    assert Numbers({"a": 125}, good).complaints() == []
    assert len(Numbers({"a": 125}, [Function("f", 9, 0)]).complaints()) == 1
    for one in (Function("long", 51, 0), Function("branched", 1, 16)):
        (line,) = Numbers({"a": 1}, [*good, one]).complaints()
        assert one.name in line and line in Numbers({"a": 1}, [*good, one]).report()
