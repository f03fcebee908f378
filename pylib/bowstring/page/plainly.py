"""A job's values under the names that the form has for them: the form asks for each thing in one way."""

from __future__ import annotations

from collections.abc import Mapping

from bowstring.job.arc_given import named_plainly
from bowstring.job.reader import SPELLED
from bowstring.job.terms import OTHER

_SPELLED = ("toward", "drawn_to", "method", "edge")
"""Keys whose values may be spelled otherwise."""


def as_asked(job: Mapping[str, object]) -> dict[str, object]:
    """Return a job that can be used as the form asks for it.

    The arc under the contract's own names; the hand as ``turn`` with one end and its straight, otherwise as ``side``.

    >>> as_asked({"arc": {"rise": "5 ft", "chord": "38 ft"}, "start": "one-end", "side": "left"})
    {'arc': {'sagitta': '5 ft', 'chord': '38 ft'}, 'start': 'one-end', 'turn': 'right'}
    """
    asked = {key: SPELLED.get(str(value), value) if key in _SPELLED else value for key, value in job.items()}
    arc = asked.get("arc")
    if isinstance(arc, Mapping):
        asked["arc"] = named_plainly(arc)
    asked_for, other = ("turn", "side") if asked.get("start") == "one-end" else ("side", "turn")
    said = asked.pop(other, None)
    if said in OTHER:
        asked.setdefault(asked_for, OTHER[str(said)])
    return asked
