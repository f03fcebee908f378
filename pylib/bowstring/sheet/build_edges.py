"""Both edges on the long sheet."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bowstring.report.alone import edges_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart, PartnerRow, SecondEdge
from bowstring.sheet.blocks import MANY, Block, Heading, Items, Paragraph, Table
from bowstring.words import say

MOST = 2 * MANY
"""Rows of a table."""


def edges(answer: Answer) -> Iterator[Block]:
    """Every line that is set, how the second edge is set from the first, and what proves it."""
    part = edges_of(answer)
    if part is None:
        row = next(row for row in answer["build"] if row["key"] == "edges")
        if row["state"] == "stop":
            yield Items([say("edges.stopped", text=row["text"], more=row["more"])], "stop")
        return
    yield Paragraph(part["conclusion"], "key")
    if part["standing"]:
        yield Items([one["text"] for one in part["standing"]], "stop")
    if part["ends"]["told"] or part["taper"]:
        yield Items([*part["ends"]["told"], *part["taper"]])
    yield from _lines(part)
    yield Items([*part["passes"], *part["off_line"], *part["form"], *part["sides_how"]], first=1)
    stick = part["stick"]
    if stick is not None:
        yield Heading(stick["title"])
        yield Items([*stick["how"], *([stick["slip_text"]] if stick["slip_text"] else [])])
    for second in part["seconds"]:
        yield from _second(second, part)
    yield from _check(part)
    yield Items(part["notes"])


def _lines(part: EdgesPart) -> Iterator[Block]:
    lines = part["lines"]
    head = [say(f"edges.{name}") for name in ("line", "radius", "chord", "mid_ordinate", "arc")]
    texts = ("name", "radius_shown", "chord_shown", "sagitta_shown", "arc_length_shown")
    yield Table(head, [[str(dict(line)[text]) for text in texts] for line in lines])
    yield Table(
        [say("edges.line"), say("edges.off"), say("edges.what")],
        [[line["name"], line["off_shown"], line["note"] or say("edges.none")] for line in lines],
    )


def _width(part: EdgesPart) -> str:
    """Over the column of how wide the concrete is: a wall is thick."""
    return say("edges.width_of_wall" if part["faces"] else "edges.width")


def _second(second: SecondEdge, part: EdgesPart) -> Iterator[Block]:
    yield Heading(say("edges.ends_head", edge=second["name"]))
    yield Paragraph(second["text"])
    rows = second["rows"]
    if second["blocked"]:
        if second["tapers"]:
            widths = [[row["name"], row["width_shown"], row["slab_shown"]] for row in rows]
            yield from _table([say("edges.stake"), say("edges.from_stake"), _width(part)], widths)
        return
    head = [say("edges.stake"), say("edges.along", first=rows[0]["name"]), say("edges.square_off")]
    head += [say("edges.from_stake"), _width(part)]
    yield Heading(second["own"])
    yield from _table(head, [_cells(row) for row in rows])


def _cells(row: PartnerRow) -> list[str]:
    return [row["name"], row["along_shown"], row["off_shown"], row["width_shown"], row["slab_shown"]]


def _check(part: EdgesPart) -> Iterator[Block]:
    diagonal = part["diagonal_shown"]
    fills = "fill.check_head" if part["sides"] is None else "pad.check_head"
    yield Heading(say("edges.check_head" if part["bays"] else fills))
    yield Paragraph(part["check"])
    if part["bays"] and not diagonal:
        rows = [
            [say("edges.diagonal", start=start, end=end), shown]
            for bay in part["bays"]
            for (start, end), shown in zip(bay["ends"], (bay["forth_shown"], bay["back_shown"]), strict=True)
        ]
        yield from _table([say("edges.bay"), say("edges.reads")], rows)


def _table(head: Sequence[str], rows: Sequence[Sequence[str]]) -> Iterator[Block]:
    yield Table(head, rows[:MOST])
    if len(rows) > MOST:
        yield Paragraph(say("edges.some", shown=MOST, count=len(rows)))
