"""The short sheet as plain text: what a crew carries, a screen or two; every other part stands on the long one."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.forms.answer import Answer
from bowstring.sheet import brief
from bowstring.sheet.blocks import MANY, Table
from bowstring.sheet.facing import curve_hand
from bowstring.sheet.firsts import firsts
from bowstring.sheet.of_line import of_line, with_others
from bowstring.sheet.setting import Setting, settings, split
from bowstring.sheet.text import NOTE, SIGNS, WIDTH, capitals, table_lines, wrap, wrapped
from bowstring.words import say


def short_text(answer: Answer) -> str:
    """Return the short sheet as lines of at most 80 columns, ending with a line end.

    >>> from bowstring import answer
    >>> text = short_text(answer({"bowstring": 1, "arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "side": "left",
    ...                           "drawn_to": "face", "method": "halving", "levels": 3}))
    >>> "square off, LEFT" in text, len(text.splitlines()) < 50
    (True, True)
    """
    stopped = bool(answer["stops"])
    lines = [*wrap(brief.title(answer), WIDTH), "=" * WIDTH]
    if of_line(answer):
        lines += wrapped(with_others(answer), SIGNS["key"])
    if not stopped:
        lines += wrap(brief.drawing(answer), WIDTH) if brief.drawing(answer) else []
        lines += wrap(", ".join(brief.measures(answer)), WIDTH)
    hand = ", ".join(filter(None, [curve_hand(answer), brief.turns(answer)]))
    lines += wrapped(f"{brief.stand(answer)} {hand}.", SIGNS["key"])
    lines += wrap(" ".join(brief.line(answer)), WIDTH)
    lines += _stops(answer) if stopped else _work(answer)
    lines += _titled(say("paper.cautions_title"))
    for text in brief.cautions(answer):
        lines += wrapped(text, SIGNS["caution"])
    for line in answer["note"].split("\n") if answer["note"] else ():
        lines += [NOTE + part for part in wrap(line, WIDTH - len(NOTE)) or [""]]
    lines += ["", *wrap(say("paper.all"), WIDTH)]
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _titled(title: str) -> list[str]:
    return ["", *wrap(capitals(title), WIDTH)]


def _stops(answer: Answer) -> Iterator[str]:
    """Why nobody may build yet, and what settles it: no number of a step stands beside it."""
    yield from _titled(say("paper.stop"))
    yield from wrap(say("paper.stop_do"), WIDTH)
    for text in answer["stops"]:
        yield from wrapped(text, SIGNS["stop"])
    for text in brief.way_out(answer):
        yield from wrapped(text, SIGNS["key"])


def _work(answer: Answer) -> Iterator[str]:
    told = brief.ties(answer)
    if told:
        yield from wrap(" ".join([say("paper.ties"), *told]), WIDTH)
    yield from _titled(say("paper.first_title"))
    yield from wrapped(say("paper.services_short"), "  ! ")
    for one in firsts(answer):
        yield from wrapped(one.text, f"{one.number:>3}. ")
    yield from _titled(say("paper.stakes_title"))
    tables = settings(answer)
    shown, rest = split(tables, MANY * 4)
    for table in shown:
        yield from _table(table)
    if rest:
        count = sum(len(table.rows) for table in tables)
        yield from wrap(say("paper.some_rows", shown=MANY * 4, count=count), WIDTH)
    yield from _titled(say("paper.checks"))
    found = brief.checks(answer)
    if found:
        head = [say("sheet.check"), say("paper.must_read"), say("paper.may_be_out")]
        yield from table_lines(Table(head, [[one.what, one.reads, one.limit] for one in found]))
    else:
        yield from wrap(brief.no_check(answer), WIDTH)
    yield ""
    yield from wrap(brief.last(answer), WIDTH)
    yield from wrap(brief.foot(answer), WIDTH)


def _table(table: Setting) -> Iterator[str]:
    yield from wrap(" ".join(table.how), WIDTH)
    yield from table_lines(Table(["", *table.head], [[str(row.number), *row.cells] for row in table.rows]))
