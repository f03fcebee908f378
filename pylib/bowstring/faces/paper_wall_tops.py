"""The back of a wall's form sheet: its top, in one line where it is level, and its sizes to sign off."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.report.alone import edges_of, pour_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_grades import GradesPart, TopRow
from bowstring.sheet.markup import marked
from bowstring.words import say

LEVEL = 1e-6
"""Metres: tops no farther apart are one height."""


def is_level(grades: GradesPart) -> bool:
    """Whether one line tells all tops: there is a single height, or none was said."""
    tops = [top["level"] for row in grades["rows"] for top in (row["outside"], row["inside"]) if top]
    return not grades["stop"] and all(abs(top - tops[0]) <= LEVEL for top in tops)


def level_told(grades: GradesPart) -> str:
    """Return a level top in a line: how far under it the footing and the dig are, and from which height it is read,
    where no table has that."""
    read_from = [grades["read_from"]] if grades["read_from"] and not grades["levels"] else []
    below = grades["below"][1:] if grades["levels"] else grades["below"]
    return " ".join([f"{' '.join(grades['conclusion'])}.", *below, *read_from])


def groups_html(sides: Sequence[str], columns: int, grades: GradesPart) -> str:
    """Return the heads over each form's columns, so many of them; the first says from which height its tops are read,
    and by what instrument."""
    names = [say(f"forms.{side}_form") for side in sides]
    if grades["read_short"]:
        names[0] = say("forms.read_from", form=names[0], read=grades["read_short"])
    return "".join(f'<th scope="colgroup" colspan="{columns}">{escape(name)}</th>' for name in names)


def sizes(answer: Answer) -> list[tuple[str, str]]:
    """Return a wall's sizes and its footing's as they are signed off: the footing first, as it is poured."""
    edges, pour = edges_of(answer), pour_of(answer)
    if edges is None:
        return []
    names = ("footing_width", "footing_depth")
    rows = [(say(f"forms.sign_{name}"), shown) for name, shown in zip(names, edges["footing_shown"], strict=False)]
    far = edges["far_width_shown"] if edges["far_width"] is not None else ""
    thick = say("forms.tapers", near=edges["width_shown"], far=far) if far else edges["width_shown"]
    rows.append((say("forms.sign_thick"), thick))
    return [*rows, *([(say("forms.sign_high"), pour["depth_shown"])] if pour else [])]


def tops_html(rows: list[TopRow], grades: GradesPart) -> str:
    """Return a wall's tops at its stakes, one column for both forms where they stand level across, with levels and rod
    in place of hundredths where the job has them, and a place for what was set at each form."""
    across = all(row["inside"] and abs(row["inside"]["level"] - row["outside"]["level"]) <= LEVEL for row in rows)
    by_rod = [name for name in grades["has"] if name in ("elevation", "rod")]
    shown = by_rod or [name for name in grades["has"] if name == "feet"]
    one = [say("forms.top"), *(say(f"forms.{name}") for name in shown)]
    sides = ("both",) if across else ("outer", "inner")
    blanks = [say("forms.outer_set"), say("forms.inner_set")] if across else [say("forms.as_set")]
    groups = groups_html(sides, len(one) + len(blanks), grades)
    names = [say("forms.stake"), *([*one, *blanks] * len(sides))]
    body = ""
    for row in rows:
        cells = ""
        for top in [row["outside"], row["inside"]][: len(sides)]:
            assert top is not None
            texts = {"elevation": top["elevation"], "rod": top["rod"], "feet": top["feet"]}
            cells += f'<td class="big">{marked(top["shown"])}</td>'
            cells += "".join(f"<td>{marked(texts[name])}</td>" for name in shown)
            cells += '<td class="write"></td>' * len(blanks)
        body += f'<tr><th scope="row">{marked(row["name"])}</th>{cells}</tr>'
    heads = "".join(f'<th scope="col">{escape(text)}</th>' for text in names)
    return f'<table class="tops"><thead><tr><td></td>{groups}</tr><tr>{heads}</tr></thead><tbody>{body}</tbody></table>'
