"""The verdict of all readings in one line: it stays at the top of the checks and leads up to the whole of it."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.report.forms.read import ReadPart, SuspectRow
from bowstring.words import say

EITHER = 2
"""Suspects that are told by name."""


def verdict_line(read: ReadPart, head: str, out: str) -> str:
    """Return the line as a button, empty as long as no check is out and some are unread.

    ``head``: what stands over the checks; ``out``: the check that is to be taped again, where nothing is judged yet.
    """
    told, kind = _told(read, head, out), " out" if read["outs"] else ""
    if not told:
        return ""
    return f'<button type="button" class="line{kind}" data-do="verdict">{escape(told)}</button>'


def _told(read: ReadPart, head: str, out: str) -> str:
    if not read["outs"]:
        first, point, _rest = head.partition(". ")
        return first + point.strip()
    if any(row["verdict"] == "differ" for row in read["rows"]):
        return say("face_checks.line_differ")
    if not read["judged"]:
        return say("face_checks.line_out", what=out)
    return _suspected(read["suspects"])


def _suspected(suspects: Sequence[SuspectRow]) -> str:
    if not suspects:
        return say("face_checks.line_nothing")
    marks = [one["mark"] for one in suspects]
    if len(suspects) > EITHER or (len(suspects) == EITHER and not all(marks)):
        return say("face_checks.line_many")
    if len(suspects) == EITHER:
        return say("face_checks.line_either", one=marks[0], other=marks[1])
    one = suspects[0]
    if one["kind"] == "end":
        return say("face_checks.line_ends")
    return say("face_checks.line_out", what=one["mark"]) if one["mark"] else say("face_checks.line_slip")
