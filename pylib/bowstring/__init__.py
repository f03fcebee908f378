r"""Bowstring: an exact arc put on the ground, from the drawing's numbers to stakes, with a tape and a string.

A job goes in and its answer comes out, both plain JSON values:

    >>> import bowstring
    >>> answer = bowstring.answer({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "levels": 1})
    >>> [(stake["name"], stake["x_shown"], stake["y_shown"]) for stake in answer["stakes"]]
    [('A', '0"', '0"'), ('M', '19\' 0"', '5\' 3"'), ('B', '38\' 0"', '0"')]

What can't be answered is refused with a ``BadJob`` that names the field, what is wrong and what would do.
"""

from types import ModuleType
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


def __getattr__(name: str) -> object:
    """What is behind the door is loaded when it is first asked for: who reads a measure needs no layout."""
    if name in ("answer", "answering"):
        from bowstring.report import answer as answers

        return _kept(name, answers)
    if name == "read_link":
        from bowstring.job import link

        return _kept(name, link)
    if name == "write_link":
        from bowstring.report import linked

        return _kept(name, linked)
    if name == "Answer":
        from bowstring.report.forms import answer as forms

        return _kept(name, forms)
    if name == "JobForm":
        from bowstring.job import form

        return _kept(name, form)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def _kept(name: str, module: ModuleType) -> object:
    """Return what a module has by a name, which from now on is the door's own."""
    globals()[name] = getattr(module, name)
    return globals()[name]
