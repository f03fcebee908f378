"""Rows of what was got at stakes, as the numbers tell them: what each holds, and those that a layout can't take up."""

from __future__ import annotations

import re
from collections.abc import Mapping

from bowstring.errors import BadJob
from bowstring.faces.help_line import fill_button
from bowstring.page.rows import blanks_of, measures_in, told_rows
from bowstring.page.shown import answering_here
from bowstring.sheet.markup import marked
from bowstring.words import say

_ROW = re.compile(r"got\[([0-9]+)\]")


def held_by_rows(fields: Mapping[str, str]) -> dict[str, str]:
    """Return what was read at each stake that the panel of its card was told, as HTML by the id of its row's name: the
    row shows a name alone. With a button that forgets it."""
    told = {}
    for row in told_rows(fields, "got"):
        stake = fields.get(f"got-{row}-stake", "").strip()
        read = [_reading(fields, row, number) for number in measures_in(fields, row)]
        if stake and read:
            button = fill_button(blanks_of(fields, row), say("page.forget", stakes=stake))
            told[f"got-{row}-stake"] = f"{marked(say('page.got_holds', read='; '.join(read)))} {button}"
    return told


def _reading(fields: Mapping[str, str], row: int, number: int) -> str:
    names = ("from", "to", "distance")
    start, end, shown = (fields.get(f"got-{row}-measures-{number}-{name}", "").strip() for name in names)
    return say("page.got_read", start=start, end=end, shown=shown)


def forgets(fields: Mapping[str, str], refusal: BadJob) -> tuple[str, dict[str, str]]:
    """Return what stakes a job is refused for, one or several, and the fields that forget what was got at all of them:
    both empty where it's refused for something else.

    As much of the rest is asked again as is refused for another row: each goes by itself.
    """
    blanks: dict[str, str] = {}
    left, names = dict(fields), []
    wrong: BadJob | None = refusal
    while wrong is not None and (found := _ROW.match(wrong.field)):
        rows = told_rows(left, "got")
        if int(found[1]) >= len(rows):
            break
        row = rows[int(found[1])]
        names.append(left.get(f"got-{row}-stake", "").strip() or say("form.row_got", number=row + 1))
        mine = blanks_of(left, row)
        blanks |= mine
        left = {name: text for name, text in left.items() if name not in mine}
        wrong = _refusal(left)
    return ", ".join(names), blanks


def _refusal(fields: Mapping[str, str]) -> BadJob | None:
    try:
        answering_here(fields)
    except BadJob as refusal:
        return refusal
    return None
