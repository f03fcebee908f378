"""What stands at the ends and at the far ends of their ties: free texts that must not be read two ways."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations

from bowstring.construction import HELPERS
from bowstring.job.looks import alike, blank, skeleton
from bowstring.job.names import like_a_mark
from bowstring.job.reader import Reader

LANDMARK_LIMIT = 40

_WORDS = (*HELPERS, "end", "point", "pt", "stake", "mark", "peg")
"""What somebody, or the construction itself, puts before a mark's name."""

_CALLED = re.compile(f"^({'|'.join(_WORDS)})(?=.)", re.IGNORECASE)


def read_ends(reader: Reader) -> dict[str, str]:
    """Return the landmark of each end, empty where none is given; one of unseen spaces stays as it was typed."""
    ends = reader.inside("ends", ("A", "B"))
    return {end: read_landmark(ends, end) if ends else "" for end in ("A", "B")}


def read_landmark(reader: Reader, name: str) -> str:
    """Return a landmark as text."""
    text = reader.text(name, LANDMARK_LIMIT)
    typed = reader.job.get(name, "")
    return text or (typed.strip(" \t\n") if isinstance(typed, str) else "")


def doubts_of_landmarks(ends: Mapping[str, str], ties: Mapping[str, Sequence[str]]) -> Iterator[tuple[str, str, str]]:
    """Yield what could be read two ways: its kind, the end and the landmark.

    The kinds: ``blank`` to the eye, ``swapped`` (one end has the other's name), ``mark`` (a name that a mark of the
    sheet has, or might have), ``same`` (both ends alike), ``tie`` (both ties of an end go to one thing).
    """
    for end, landmark in ends.items():
        if not landmark:
            continue
        name = _mark_in(landmark)
        if blank(landmark):
            yield "blank", end, landmark
        elif alike(name, "B" if end == "A" else "A"):
            yield "swapped", end, landmark
        elif like_a_mark(name):
            yield "mark", end, landmark
    named = [landmark for landmark in ends.values() if landmark and not blank(landmark)]
    if len(named) == 2 and alike(*named):
        yield "same", "", named[0]
    for end, things in ties.items():
        if any(alike(one, other) for one, other in combinations(things, 2)):
            yield "tie", end, things[0]


def _mark_in(landmark: str) -> str:
    """Return the name that a landmark may be read as: without the word before it, and without spaces."""
    return _CALLED.sub("", skeleton(landmark), count=1)
