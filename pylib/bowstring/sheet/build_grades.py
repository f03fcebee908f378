"""The grades on the long sheet."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.alone import digs_called, dug_at, grades_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_grades import GradesPart, TopPart, TopRow
from bowstring.sheet.blocks import Block, Items, Paragraph, Table
from bowstring.words import say
from bowstring.words.stars import unstarred


def grades(answer: Answer) -> Iterator[Block]:
    """The tops of both forms at every stake and joint, where the water goes, and what the slopes may be."""
    part = grades_of(answer)
    if part is None:
        return
    if part["stop"]:
        stop = part["stop"]
        yield Items([f"{stop['head']}: {' '.join(filter(None, (stop['text'], stop['why'])))}"], "stop")
        yield Paragraph(say("grades.none_yet"), "stop")
        return
    yield Paragraph(" ".join(part["conclusion"]), "key")
    yield Items([line for line in [*map(unstarred, part["judged"]), *part["below"], part["water"]] if line])
    yield Items([*part["warnings"], *part["asks"], *part["cautions"]], "caution")
    if part["levels"]:
        yield Table(part["levels"]["heads"], part["levels"]["rows"], part["levels"]["heads"][0])
    if part["rows"]:
        yield _tops(part)
    yield from _instrument(answer, part)
    yield from _dig(part)
    yield from _crown(part)
    yield Items([unstarred(text) for text in (*part["base"], *part["notes"])])


def _tops(part: GradesPart) -> Table:
    """Both tops at every stake and joint. No more columns than leave each number on one line."""
    feet = [say("grades.feet")] if "feet" in part["has"] else []
    rows = [
        [_name(row), *(text for top in _edges(row) for text in (top["shown"], *([top["feet"]] if feet else [])))]
        for row in part["rows"]
    ]
    head = [say("grades.stake"), *(head for side in _sides(part) for head in (side, *feet))]
    return Table(head, rows, say("grades.table"))


def _instrument(answer: Answer, part: GradesPart) -> Iterator[Block]:
    unit = "ft" if answer["unit"] in ("ft", "ft-in") else "m"
    heads = {"elevation": say("grades.elevation", unit=unit), "rod": say("grades.rod"), "rod_marks": say("grades.rod")}
    has = [name for name in heads if name in part["has"] or (name == "rod_marks" and {"rod", "feet"} <= {*part["has"]})]
    if has:
        one = [heads[name] for name in has]
        rows = [[_name(row), *(_text(top, name) for top in _edges(row) for name in has)] for row in part["rows"]]
        yield Table([say("grades.stake"), *one * len(part["sides"])], rows, say("grades.by_instrument"))


def _dig(part: GradesPart) -> Iterator[Block]:
    rows = [[row["name"], *(dug_at(top) or say("sheet.none") for top in _edges(row))] for row in part["digs"]]
    if rows:
        yield Table([say("grades.stake"), *_sides(part)], rows, digs_called(part["digs"]))


def _name(row: TopRow) -> str:
    return say("grades.joint_number", number=row["name"]) if row["kind"] == "joint" else row["name"]


def _sides(part: GradesPart) -> list[str]:
    return [say("grades.outer" if side == "outside" else "grades.inner") for side in part["sides"]]


def _edges(row: TopRow) -> list[TopPart]:
    return [top for top in (row["outside"], row["inside"]) if top]


def _text(top: TopPart, name: str) -> str:
    texts = {"elevation": top["elevation"], "rod": top["rod"], "rod_marks": top["rod_marks"]}
    return texts[name] or say("sheet.none")


def _crown(part: GradesPart) -> Iterator[Block]:
    if part["across"]:
        feet = [say("grades.feet")] if part["across"][0]["feet"] else []
        head = [say("grades.from_edge"), say("grades.over_edges"), *feet]
        rows = [[row["across_shown"], row["shown"], *([row["feet"]] if feet else [])] for row in part["across"]]
        yield Table(head, rows, say("grades.across_table"))
