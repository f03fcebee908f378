"""The page of the build's edges."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from bowstring.drawings.widthstick import width_stick_svg
from bowstring.faces.build_parts import (
    Cell,
    Choice,
    Row,
    card,
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
from bowstring.report.alone import edges_of
from bowstring.report.forming.rows import is_without_sides
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import BayRow, EdgesPart, LineRow, SecondEdge, WidthStick
from bowstring.sheet.markup import NUMBER
from bowstring.words import say

_LENGTH = re.compile(rf"(?<!\w)(?:{NUMBER.pattern})")
"""A length that is no part of a mark's name: R1 in is one inch of nothing."""

MOST = 64
"""Rows of a table on a phone: nobody sets hundreds of marks off one."""

CENTER_LINE = "centre"
"""The line of the stakes, where that is the middle of the slab."""


def page_html(answer: Answer) -> str:
    """Return the inside of the page, under its drawing."""
    part = edges_of(answer)
    return "".join(_page(part)) if part else _stopped(answer)


def _stopped(answer: Answer) -> str:
    """Where no inner edge is left there is no table: only what to change."""
    row = next(row for row in answer["build"] if row["key"] == "edges")
    if row["state"] != "stop":
        return ""
    instead = Choice(say("fill.instead"), {"slab-fills": "yes"})
    change = say("edges.change")
    if is_without_sides(row):
        change = say("pad.change")
        instead = Choice(say("pad.without"), {"slab-sides": "", "slab-both_ends": ""})
    ways = "" if answer["drawn_to"] == "centre" else choices(change, [instead])
    return stop(row["text"], row["more"]) + panel_button(change, row["panel"]) + ways


def _page(part: EdgesPart) -> Iterator[str]:
    yield conclusion(part["conclusion"])
    yield "".join(note(one["text"]) for one in part["standing"])
    yield "".join(paragraph(strong(text)) for text in [*part["ends"]["told"], *part["taper"]])
    yield _lines(part["lines"])
    yield paragraph(strong(" ".join(part["form"])))
    if part["sides_how"]:
        yield heading(say("pad.sides_head"))
        yield "".join(paragraph(strong(text)) for text in part["sides_how"])
    yield heading(say("edges.passes"))
    first, *rest = part["passes"]
    yield (note if part["dug_out"] else paragraph)(strong(first))
    yield paragraph(strong(" ".join(rest)))
    yield "".join(note(strong(text)) for text in part["off_line"])
    if part["stick"] is not None:
        yield _stick(part["stick"])
    for second in part["seconds"]:
        yield heading(say("edges.ends_head", edge=second["name"]))
        yield paragraph(strong(second["text"]))
    yield from _check(part)
    for second in part["seconds"]:
        yield from _own(
            second, part["yours"] == CENTER_LINE, say("edges.width_of_wall" if part["faces"] else "edges.width")
        )
    yield _off(part["lines"])
    yield "".join(paragraph(strong(text), quiet=True) for text in part["notes"])


def strong(text: str) -> str:
    """Return a sentence with its lengths between stars, so that they are bold.

    >>> strong("Paint it 300 mm past the edge.")
    'Paint it *300 mm* past the edge.'
    """
    return _LENGTH.sub(r"*\g<0>*", text)


def _lines(lines: Sequence[LineRow]) -> str:
    heads = [say(f"edges.{name}") for name in ("radius", "chord", "mid_ordinate")]
    rows = [
        Row(line["name"], [line["radius_shown"], line["chord_shown"], line["sagitta_shown"]], line["note"],
            key=line["set"], over=True)
        for line in lines
    ]  # fmt: skip
    return table(heads, rows, say("edges.title"))


def _off(lines: Sequence[LineRow]) -> str:
    """How far each line is from the stakes, and how long it is."""
    heads = [say(f"edges.{name}") for name in ("off", "arc")]
    rows = [
        Row(line["name"], [line["off_shown"], Cell(line["arc_length_shown"], quiet=True)], key=line["set"], over=True)
        for line in lines
    ]
    told = ", ".join(f"{line['name']} {line['off_shown']}" for line in lines if line["set"])
    return folded(say("edges.off_head"), told, table(heads, rows, say("edges.off_head")))


def _stick(stick: WidthStick) -> str:
    marks = width_stick_svg(stick, id="width-stick") if stick["marks"] else ""
    told = " ".join([*stick["how"], stick["slip_text"]]).strip()
    return card(stick["title"], marks + paragraph(strong(told)))


def _check(part: EdgesPart) -> Iterator[str]:
    diagonal = part["diagonal_shown"]
    fills = "fill.check_head" if part["sides"] is None else "pad.check_head"
    yield heading(say("edges.check_head" if part["bays"] else fills))
    yield paragraph(strong(part["check"]))
    if part["bays"] and not diagonal:
        rows = [row for bay in part["bays"] for row in _diagonals(bay)]
        yield table([say("edges.bay"), say("edges.reads")], rows[:MOST], say("edges.check_head"))
        yield from _some(rows)


def _diagonals(bay: BayRow) -> Iterator[Row]:
    for (start, end), shown in zip(bay["ends"], (bay["forth_shown"], bay["back_shown"]), strict=True):
        yield Row(say("edges.diagonal", start=start, end=end), [shown])


def _own(second: SecondEdge, halved: bool, width: str) -> Iterator[str]:
    """Each mark off the edge's own string, where that can be up, with what the stick has where that isn't the same all
    along: how wide the concrete is, told as ``width``, or ``halved`` how far off its stake the edge is."""
    rows = second["rows"]
    columns = {
        "along_shown": ("" if second["blocked"] else say("edges.along", first=rows[0]["name"])),
        "off_shown": ("" if second["blocked"] else say("edges.square_off")),
        "width_shown": (say("edges.from_stake") if second["tapers"] and halved else ""),
        "slab_shown": (width if second["tapers"] and not halved else ""),
    }
    told = {column: head for column, head in columns.items() if head}
    if told:
        made = [Row(row["name"], [str(dict(row)[column]) for column in told]) for row in rows]
        title = second["name"] if second["blocked"] else second["own"]
        yield heading(title)
        yield table([say("edges.stake"), *told.values()], made[:MOST], title)
        yield from _some(made)


def _some(rows: Sequence[Row]) -> Iterator[str]:
    if len(rows) > MOST:
        yield paragraph(say("edges.some", shown=MOST, count=len(rows)), quiet=True)
