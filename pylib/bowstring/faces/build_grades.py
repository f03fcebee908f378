"""The page of the build's grades."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bowstring.faces.build_parts import (
    Cell,
    Choice,
    Row,
    choices,
    conclusion,
    folded,
    heading,
    note,
    panel_button,
    paragraph,
    stop,
    table,
)
from bowstring.report.alone import digs_called, grades_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_grades import GradesPart, TopPart, TopRow
from bowstring.words import say

PANEL = "slope"


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing; nothing as long as something has to be said first."""
    part = grades_of(answer)
    if part is None:
        return ""
    return "".join(_stopped(part) if part["stop"] else _told(part, answer["unit"]))


def _stopped(part: GradesPart) -> Iterator[str]:
    assert part["stop"] is not None
    yield stop(part["stop"]["head"], part["stop"]["text"], part["stop"]["why"])
    yield paragraph(say("grades.none_yet"))
    yield _ways(part)
    yield panel_button(say("grades.change"), PANEL)


def _told(part: GradesPart, unit: str) -> Iterator[str]:
    yield conclusion("\n".join(part["conclusion"]), " ".join(part["judged"]))
    if part["warnings"]:
        yield note(" ".join(part["warnings"]))
        yield _ways(part)
    yield "".join(map(paragraph, part["below"]))
    yield _levels(part)
    stakes = [row for row in part["rows"] if row["kind"] != "joint"]
    joints = [row for row in part["rows"] if row["kind"] == "joint"]
    if stakes:
        yield _tops(part, stakes, say("grades.stake"), say("grades.table"))
    if part["water"]:
        yield paragraph(part["water"])
    if joints:
        yield heading(say("grades.at_joints"))
        yield _tops(part, joints, say("grades.joint"), say("grades.at_joints"))
    yield from _instrument(part, unit)
    yield from _dig(part)
    yield from _crown(part)
    if part["base"]:
        yield heading(say("grades.base"))
        yield paragraph(" ".join(part["base"]))
    yield from (note(text) for text in [*part["asks"], *part["cautions"]])
    first, *rest = part["notes"]
    if not rest:
        yield paragraph(first, quiet=True)
        return
    yield folded(say("grades.reading"), first, "".join(paragraph(text, quiet=True) for text in rest))


def _levels(part: GradesPart) -> str:
    """What lies under a wall's top, with levels and readings: the names over them, for which a phone has no room."""
    if part["levels"] is None:
        return ""
    where, *heads = part["levels"]["heads"]
    rows = [Row(name, cells, over=True) for name, *cells in part["levels"]["rows"]]
    return heading(where) + table(heads, rows, where)


def _ways(part: GradesPart) -> str:
    buttons = [Choice(way["text"], way["fields"]) for way in part["ways"]]
    return choices(say("grades.change"), buttons) if buttons else ""


def _tops(part: GradesPart, rows: Sequence[TopRow], name: str, label: str) -> str:
    """Return the tops of both forms side by side, each with hundredths of a foot where inches stand there."""
    feet = [say("grades.feet")] if "feet" in part["has"] else []
    heads = [name, *(head for side in _sides(part) for head in (side, *feet))]
    made = [Row(row["name"], [cell for edge in _edges(row) for cell in _height(edge, bool(feet))]) for row in rows]
    return table(heads, made, label, split=2 + len(feet))


def _sides(part: GradesPart) -> list[str]:
    """What each form's column is called."""
    return [say("grades.outer" if side == "outside" else "grades.inner") for side in part["sides"]]


def _height(top: TopPart, feet: bool) -> list[str | Cell]:
    return [top["shown"], *([Cell(top["feet"], quiet=True)] if feet else [])]


def _instrument(part: GradesPart, unit: str) -> Iterator[str]:
    """Give elevations and rod readings, of whichever there are."""
    named = {
        "elevation": say("grades.elevations", unit="ft" if unit in ("ft", "ft-in") else "m"),
        "rod": say("grades.rods"),
    }
    heads = [say("grades.stake"), *_sides(part)]
    for name, title in named.items():
        if name in part["has"]:
            rows = [Row(_name(row), [_read(top, name) for top in _edges(row)]) for row in part["rows"]]
            yield heading(title)
            yield paragraph(part["read_from"])
            yield table(heads, rows, title, split=2)


def _read(top: TopPart, name: str) -> str | Cell:
    return top["elevation"] if name == "elevation" else Cell(top["rod"], top["rod_marks"])


def _dig(part: GradesPart) -> Iterator[str]:
    rows = [Row(row["name"], [Cell(edge["dig"], edge["ground"]) for edge in _edges(row)]) for row in part["digs"]]
    if not rows:
        return
    title = digs_called(part["digs"])
    yield heading(title)
    yield table([say("grades.stake"), *_sides(part)], rows, title, split=2)


def _crown(part: GradesPart) -> Iterator[str]:
    if not part["across"]:
        return
    feet = [say("grades.feet")] if part["across"][0]["feet"] else []
    rows = [
        Row(row["across_shown"], [row["shown"], *([Cell(row["feet"], quiet=True)] if feet else [])])
        for row in part["across"]
    ]
    yield heading(say("grades.across_table"))
    yield table([say("grades.from_edge"), say("grades.over_edges"), *feet], rows, say("grades.across_table"))


def _edges(row: TopRow) -> list[TopPart]:
    return [top for top in (row["outside"], row["inside"]) if top]


def _name(row: TopRow) -> str:
    return say("grades.joint_number", number=row["name"]) if row["kind"] == "joint" else row["name"]
