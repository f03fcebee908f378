r"""Bowstring: an exact arc put on the ground, from the drawing's numbers to stakes, with a tape and a string.

A job goes in and its answer comes out, both plain JSON values:

    >>> import bowstring
    >>> answer = bowstring.answer({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "levels": 1})
    >>> [(stake["name"], stake["x_shown"], stake["y_shown"]) for stake in answer["stakes"]]
    [('A', '0"', '0"'), ('M', '19\' 0"', '5\' 3"'), ('B', '38\' 0"', '0"')]

What can't be answered is refused with a ``BadJob`` that names the field, what is wrong and what would do.
"""

from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.job.link import read_link
from bowstring.report.answer import answer, answering
from bowstring.report.linked import write_link
from bowstring.version import __version__

if TYPE_CHECKING:
    from bowstring.job.form import JobForm
    from bowstring.report.forms.answer import Answer

__all__ = ["Answer", "BadJob", "JobForm", "__version__", "answer", "answering", "read_link", "write_link"]


def __getattr__(name: str) -> object:
    """The forms are for type checkers: who runs a program loads them only by asking."""
    if name == "Answer":
        from bowstring.report.forms.answer import Answer

        return Answer
    if name == "JobForm":
        from bowstring.job.form import JobForm

        return JobForm
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
