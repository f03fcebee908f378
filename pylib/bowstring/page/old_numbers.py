"""What every face says where stakes stand by old numbers: those of the staked arc, and of a line's other arcs."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from html import escape

from bowstring.errors import BadJob
from bowstring.page.beside import done_of, for_layout, marks_of
from bowstring.page.linking import link_of
from bowstring.page.pieces import AFTER, BEFORE, kept_of, rows_in, staked_at, staked_of_several
from bowstring.page.shown import answering_here, shown_here
from bowstring.page.staking import marks_named, stood_text
from bowstring.page.stood import answer_before, marks_done, moved_corners, moved_marks
from bowstring.page.unit import settled_job
from bowstring.report.forms.answer import Answer
from bowstring.report.linked import with_method
from bowstring.words import remembered, say

Typed = Mapping[str, str]
Old = dict[int, list[str]]
"""What stands by old numbers, by the piece of the line; 0: of an arc that is the only one."""

NAMED = 2
"""Marks, or arcs, that the bar has room for."""


def old_numbers(answered: Answer, fields: Typed, link: Callable[[], str]) -> Old:
    """Return the marks that stand by other numbers than those in the fields; ``link`` makes the job's own."""
    found: Old = {}
    done = done_of(fields)
    if done and fields.get("stood", "").strip():
        found[staked_of_several(fields)] = moved_marks(answered, fields, done, link())
    for number in _begun(fields):
        found[number] = list(_of_arc(tuple(sorted(staked_at(fields, number).items())), shown_here()))
    return {number: marks for number, marks in sorted(found.items()) if marks}


def _begun(fields: Typed) -> list[int]:
    """The pieces of a line that are staked no more, and of which something was done."""
    before, after = (rows_in(fields, group) for group in (BEFORE, AFTER))
    rows = [*(row for _number, row in before), {}, *(row for _number, row in after)]
    return [number for number, row in enumerate(rows, 1) if (kept := kept_of(row)).get("stood") and kept.get("done")]


@remembered(16)
def _of_arc(typed: tuple[tuple[str, str], ...], shown: str | None) -> tuple[str, ...]:
    """The same of another arc of the line, by the fields with that one staked; none where they can't be read, and all
    that is driven where nothing can be laid out by the numbers of now."""
    fields = dict(typed)
    try:
        job = settled_job(for_layout(fields))
        old = answer_before(fields, link_of(job)[0])
    except BadJob:
        return ()
    if "method" in job and old is None:
        return ()
    try:
        answered = answering_here(for_layout(fields))
        return tuple(moved_marks(answered, fields, done_of(fields), link_of(with_method(job, answered))[0]))
    except BadJob:
        return tuple(marks_done(old, done_of(fields))) if old else ()


def bar_text(old: Old) -> str:
    """Return what the bar says: two lines at most on a phone of 360."""
    names = old[0] if 0 in old else [str(number) for number in old]
    more, told = len(names) - NAMED, ", ".join(names[:NAMED])
    if 0 not in old:
        told = say("stood.arcs", numbers=told) if len(names) > 1 else say("stood.arc", number=told)
    return say("stood.state_more", names=told, count=more) if more > 0 else say("stood.state", names=told)


def called(old: Old, at: int) -> list[str]:
    """Return what stands by old numbers: marks of the staked arc, and the other arcs as they are called; ``at``: which
    one is staked, 0 where it is the only one."""
    each = (marks if number == at else [say("stood.arc", number=number)] for number, marks in old.items())
    return [name for names in each for name in names]


def told(old: Old) -> str:
    """Return what stands by old numbers, in one line."""
    if 0 in old:
        return say("stood.told", told=stood_text(old[0]))
    names = "; ".join(marks_named(marks, number) for number, marks in old.items())
    return say("stood.told", told=say("page.stood", names=names))


def side_text(old: Old) -> str:
    """Return what each side of the paper says, short: a side may go out by itself."""
    return say("stood.on_side", told=bar_text(old))


def corners_text(answered: Answer, fields: Typed) -> str:
    """Return what the paper says of a pad's far corners that were set by other numbers, empty where none were."""
    corners = [] if answered["stops"] else moved_corners(answered["form_cards"], marks_of(fields))
    return say("stood.told", told=stood_text(corners)) if corners else ""


def forms_text() -> str:
    """Return what the forms' sides of the paper say where cards of theirs are done by other numbers than they have."""
    return say("stood.told", told=f"{say('stood.state_forms')}.")


def on_top(html: str, old: Old) -> str:
    """Return a face with that line at its top, inside of what scrolls."""
    return line_on_top(html, told(old), "banner stop old")


def line_on_top(html: str, line: str, kind: str = "banner") -> str:
    """Return a face with a line at its top, inside of what scrolls; ``kind``: its classes."""
    head, end, rest = html.partition(">")
    return f'{head}{end}<p class="{kind}">{escape(line)}</p>{rest}' if end else html
