"""What every face says where stakes stand by old numbers: those of the staked arc, and of a line's other arcs."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from html import escape

from bowstring.errors import BadJob
from bowstring.page.beside import done_of, for_layout
from bowstring.page.linking import link_of
from bowstring.page.pieces import AFTER, BEFORE, kept_of, rows_in, staked_at
from bowstring.page.shown import answering_here, shown_here
from bowstring.page.staking import stood_text
from bowstring.page.stood import answer_before, moved_marks
from bowstring.page.unit import settled_job
from bowstring.report.forms.answer import Answer
from bowstring.report.linked import with_method
from bowstring.words import remembered, say

Typed = Mapping[str, str]
Old = dict[int, list[str]]
"""What stands by old numbers, by the piece of the line; 0: of the arc that is staked now."""

NAMED = 2
"""Marks that the bar has room for."""


def old_numbers(answered: Answer, fields: Typed, link: Callable[[], str]) -> Old:
    """Return the marks that stand by other numbers than those in the fields; ``link`` makes the job's own."""
    found: Old = {}
    done = done_of(fields)
    if done and fields.get("stood", "").strip():
        found[0] = moved_marks(answered, fields, done, link())
    for number in _begun(fields):
        found[number] = list(_of_arc(tuple(sorted(staked_at(fields, number).items())), shown_here()))
    return {number: marks for number, marks in found.items() if marks}


def _begun(fields: Typed) -> list[int]:
    """The pieces of a line that are staked no more, and of which something was done."""
    before, after = (rows_in(fields, group) for group in (BEFORE, AFTER))
    rows = [*(row for _number, row in before), {}, *(row for _number, row in after)]
    return [number for number, row in enumerate(rows, 1) if (kept := kept_of(row)).get("stood") and kept.get("done")]


@remembered(16)
def _of_arc(typed: tuple[tuple[str, str], ...], shown: str | None) -> tuple[str, ...]:
    """The same of another arc of the line, by the fields with that one staked; none where it can't be laid out."""
    fields = dict(typed)
    try:
        job = settled_job(for_layout(fields))
        if "method" in job and answer_before(fields, link_of(job)[0]) is None:
            return ()
        answered = answering_here(for_layout(fields))
        return tuple(moved_marks(answered, fields, done_of(fields), link_of(with_method(job, answered))[0]))
    except BadJob:
        return ()


def bar_text(old: Old) -> str:
    """Return what the bar says, short."""
    names = called(old)
    told = ", ".join(names[:NAMED])
    more = len(names) - NAMED
    return say("stood.state_more", names=told, count=more) if more > 0 else say("stood.state", names=told)


def called(old: Old) -> list[str]:
    """Return what stands by old numbers: marks of the staked arc, and the other arcs as they are called."""
    return [name for number, marks in old.items() for name in ([_arc(number)] if number else marks)]


def _arc(number: int) -> str:
    return say("stood.arc", number=number)


def told(old: Old) -> str:
    """Return what stands by old numbers, in one line."""
    each = [
        say("stood.of_arc", number=number, told=stood_text(marks)) if number else stood_text(marks)
        for number, marks in old.items()
    ]
    return say("stood.told", told=" ".join(each))


def side_text(old: Old) -> str:
    """Return what each side of the paper says, short: a side may go out by itself."""
    return say("stood.on_side", told=bar_text(old))


def on_top(html: str, old: Old) -> str:
    """Return a face with that line at its top, inside of what scrolls."""
    return line_on_top(html, told(old), "banner stop old")


def line_on_top(html: str, line: str, kind: str = "banner") -> str:
    """Return a face with a line at its top, inside of what scrolls; ``kind``: its classes."""
    head, end, rest = html.partition(">")
    return f'{head}{end}<p class="{kind}">{escape(line)}</p>{rest}' if end else html
