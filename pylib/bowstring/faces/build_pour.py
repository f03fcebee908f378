"""The page of the build's concrete."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.faces.build_parts import Cell, Row, folded, heading, huge, note, panel_button, paragraph, stop, table
from bowstring.report.alone import pour_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_pour import DeepPart, PourPart
from bowstring.words import say


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing."""
    part = pour_of(answer)
    return "".join(_page(part)) if part else _stopped(answer)


def _stopped(answer: Answer) -> str:
    """Where there can be no order: why, and where that is changed."""
    row = next(row for row in answer["build"] if row["key"] == "pour")
    if row["state"] != "stop":
        return ""
    return stop(row["text"], row["more"]) + panel_button(say("deep.change"), row["panel"])


def _page(part: PourPart) -> Iterator[str]:
    yield huge(part["number"], part["unit"], part["why"])
    yield from _deep(part["deep"])
    if part["reach"]:
        yield heading(say("pour.call"), part["reach_where"])
        yield _reach(part)
        yield paragraph(part["reach_note"])
    if part["bulkhead"] is not None:
        yield paragraph(part["bulkhead"]["text"])
    yield heading(say("pour.changes"))
    yield _changes(part)
    if part["low_text"]:
        yield paragraph(f"*{part['low_text']}* {part['measure']}")
    yield heading(say("pour.comes"))
    yield "".join(paragraph(line) for line in part["lines"])
    yield "".join(note(text) for text in part["cautions"])
    yield "".join(paragraph(text, quiet=True) for text in part["notes"])


def _deep(part: DeepPart) -> Iterator[str]:
    """Where it is thin, a thicker stretch, and what was measured."""
    if part["thin"]:
        yield "".join(map(note, part["thin"])) + paragraph(part["limit"], quiet=True)
    if part["apron"]:
        inside = "".join(map(paragraph, [*part["apron"], *part["joints"]]))
        yield folded(say("deep.apron_title"), part["apron_shown"], inside)
    if part["measured"]:
        first, *rest = part["measured"]
        yield folded(say("deep.measured_title"), first, "".join(map(paragraph, rest)))


def _reach(part: PourPart) -> str:
    heads = [say("pour.out"), say("pour.on_plan"), say("pour.call_at")]
    rows = [
        Row(
            row["out"],
            [
                Cell(row["plan_shown"], quiet=True),
                Cell(row["call_shown"], say("pour.at_joint", joint=row["joint"]) if row["joint"] else ""),
            ],
        )
        for row in part["reach"]
    ]
    return table(heads, rows, say("pour.call_table", where=part["reach_where"]), split=2)


def _changes(part: PourPart) -> str:
    heads = [say("pour.if"), _bought(part)]
    rows = [Row(row["what"], [row["order_shown"]], row["more"]) for row in part["changes"]]
    return table(heads, rows, say("pour.changes"))


def _bought(part: PourPart) -> str:
    if part["by_bags"]:
        return say("pour.then_bags")
    return say("pour.then_yards" if part["yards"] else "pour.then_metres")
