"""The page of the build's joints."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.faces.build_parts import Cell, Choice, Row, choices, conclusion, heading, note, paragraph, stop, table
from bowstring.report.alone import joints_of, line_ends_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_joints import JointsPart
from bowstring.words import say


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing."""
    part = joints_of(answer)
    return "".join(_page(part, line_ends_of(answer))) if part else ""


def _page(part: JointsPart, ends: dict[str, str]) -> Iterator[str]:
    if part["stop"]:  # no table: its numbers are nobody's
        yield stop(part["text"], part["stop"])
        yield _choices(part)
        yield paragraph(part["why_most"], quiet=True)
        return
    several = part["count"] > 1
    yield conclusion(part["conclusion"], part["taped"] if several else "")
    if part["rows"] and several:
        yield _table(part)
    yield from _grid(part, ends)
    yield _choices(part)
    yield heading(say("joints.cut") if part["cautions"] else say("walled.joints"))
    yield "".join(paragraph(line) for line in part["lines"])
    yield "".join(note(text) for text in part["cautions"])


def _table(part: JointsPart) -> str:
    heads = [say("joints.joint"), say("joints.outer_form"), say("joints.inner_form")]
    rows = [
        Row(
            row["name"],
            [row["outside_shown"], row["inside_shown"]],
            "; ".join(filter(None, [say("joints.at", stake=row["stake"]) if row["stake"] else "", row["apron"]])),
            key=bool(row["stake"] or row["apron"]),
        )
        for row in part["rows"]
    ]
    return table(heads, rows, say("joints.table"), split=2)


def _grid(part: JointsPart, ends: dict[str, str]) -> Iterator[str]:
    """The joints of a slab that fills its curve: those square to its string, then those along it; ``ends``: the
    string's."""
    for kind in ("square", "along"):
        rows = [
            Row(
                str(row["number"]),
                [row["at_shown"], row["arc_shown"], Cell(row["corner_shown"], fits=not row["sharp"])],
            )
            for row in part["grid"]
            if row["kind"] == kind
        ]
        if rows:
            title = say(f"fill.head_{kind}", **ends)
            places = say(f"fill.at_{kind}", **ends), say(f"fill.curve_{kind}", **ends)
            heads = [say("joints.joint"), *places, say("fill.corner")]
            yield heading(title)
            yield table(heads, rows, title)


def _choices(part: JointsPart) -> str:
    buttons = [
        Choice(one["text"], {"joints-panels": str(one["count"])}, one["more"], one["chosen"], one["over"])
        for one in part["offers"]
    ]
    return choices(say("joints.how_many"), buttons)
