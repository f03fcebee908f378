r"""Bowstring: an exact arc put on the ground, from the drawing's numbers to stakes, with a tape and a string.

A job goes in and its answer comes out, both plain JSON values:

    >>> import bowstring
    >>> answer = bowstring.answer({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "levels": 1})
    >>> [(stake["name"], stake["x_shown"], stake["y_shown"]) for stake in answer["stakes"]]
    [('A', '0"', '0"'), ('M', '19\' 0"', '5\' 3"'), ('B', '38\' 0"', '0"')]

What can't be answered is refused with a ``BadJob`` that names the field, what is wrong and what would do.
"""

from importlib import import_module
from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.version import __version__

if TYPE_CHECKING:
    from bowstring.job.form import JobForm
    from bowstring.job.link import read_link
    from bowstring.report.answer import answer, answering
    from bowstring.report.forms.answer import Answer
    from bowstring.report.linked import write_link

__all__ = ["Answer", "BadJob", "JobForm", "__version__", "answer", "answering", "read_link", "write_link"]

_WHERE = {
    "Answer": "bowstring.report.forms.answer",
    "JobForm": "bowstring.job.form",
    "answer": "bowstring.report.answer",
    "answering": "bowstring.report.answer",
    "read_link": "bowstring.job.link",
    "write_link": "bowstring.report.linked",
}


def __getattr__(name: str) -> object:
    """What is behind the door is loaded when it is first asked for: who reads a measure needs no layout."""
    if name not in _WHERE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    found: object = getattr(import_module(_WHERE[name]), name)
    globals()[name] = found
    return found
