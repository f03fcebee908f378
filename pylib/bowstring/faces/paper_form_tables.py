"""The form sheet's tables: the lines along the curve, the edges off their own strings, the joints."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from bowstring.faces.located import BOX
from bowstring.report.alone import line_ends_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart, LineRow, SecondEdge
from bowstring.report.forms.build_joints import JointsPart
from bowstring.sheet.markup import marked
from bowstring.words import say

Cells = Sequence[str]
Column = tuple[str, Cells, list[Cells]]
"""A table's title, its heads and its rows."""

_STAND = ("outer_form", "outside", "inside", "inner_form", "string", "string_form", "sides", "back",
          "other_curve", "footing_outside",
          "footing_inside")  # fmt: skip
_GAUGED = ("outer_form", "inner_form")
_LINE_HEADS = ("line", "off_stakes", "radius", "chord", "mid_ordinate", "arc")


def columns_of(answer: Answer, edges: EdgesPart, joints: JointsPart | None) -> list[Column]:
    """Return the tables side by side: edges off their own strings, and joints."""
    columns = [_second(one, answer) for one in edges["seconds"] if not one["blocked"]]
    if joints and not joints["stop"]:
        columns += [_joints(joints)] if joints["rows"] else _grid(joints, line_ends_of(answer))
    return columns


def set_lines(edges: EdgesPart, *, few: bool = False) -> list[LineRow]:
    """Return the lines of boards and stakes: digging is told in a sentence, the middle only where it's set. ``few``:
    without those of form stakes, of which a sentence tells."""
    gauged = _GAUGED if few else ()
    return [one for one in edges["lines"] if one["yours"] or (one["key"] in _STAND and one["key"] not in gauged)]


def lines_html(lines: list[LineRow], *, off: bool = False) -> str:
    """Return the lines as a table; ``off``: with how far off the stakes each stands."""
    names = [name for name in _LINE_HEADS if off or name != "off_stakes"]
    heads = "".join(f'<th scope="col">{escape(say(f"forms.{name}"))}</th>' for name in names)
    rows = ""
    for one in lines:
        cells = [one["radius_shown"], one["chord_shown"], one["sagitta_shown"], one["arc_length_shown"]]
        cells = [one["off_shown"], *cells] if off else cells
        strong = ' class="off"' if one["set"] else ""
        body = "".join(f"<td>{marked(text)}</td>" for text in cells)
        rows += f'<tr{strong}><th scope="row">{marked(one["name"])}</th>{body}</tr>'
    return f'<table class="lines"><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>'


def _second(second: SecondEdge, answer: Answer) -> Column:
    hand = say(f"paper.{answer['side']}") if answer["side"] else ""
    title = say("forms.own_string" if hand else "forms.own_string_no_hand", name=second["name"], hand=hand)
    head = [say("forms.stake"), say("forms.along"), say("forms.square_off")]
    rows: list[Cells] = [[row["name"], row["along_shown"], row["off_shown"]] for row in second["rows"]]
    if second["tapers"]:
        head, widths = [*head, say("forms.wide")], [row["slab_shown"] for row in second["rows"]]
        rows = [[*row, width] for row, width in zip(rows, widths, strict=True)]
    return title, head, rows


def _joints(joints: JointsPart) -> Column:
    head = (say("forms.joint"), say("forms.outer_form"), say("forms.inner_form"))
    rows: list[Cells] = [(row["name"], row["outside_shown"], row["inside_shown"]) for row in joints["rows"]]
    return say("forms.joints"), head, rows


def _grid(joints: JointsPart, ends: dict[str, str]) -> list[Column]:
    """The joints of a slab that fills its curve: those square to its string, those along it; ``ends``: the string's."""
    made: list[Column] = []
    for kind in ("square", "along"):
        rows: list[Cells] = [
            (str(row["number"]), row["at_shown"], row["arc_shown"]) for row in joints["grid"] if row["kind"] == kind
        ]
        if rows:
            head = (say("forms.joint"), say(f"fill.at_{kind}", **ends), say(f"fill.curve_{kind}", **ends))
            made.append((say(f"fill.head_{kind}", **ends), head, rows))
    return made


def table_html(title: str, head: Cells, rows: Sequence[Cells]) -> str:
    """Return one of the tables side by side, a box to tick at each row's end."""
    return tables_html([(title, head, list(rows))])


def tables_html(column: Sequence[Column]) -> str:
    """Return tables under each other; one without rows is left out."""
    return f"<div>{''.join(_table(title, head, rows) for title, head, rows in column if rows)}</div>"


def _table(title: str, head: Cells, rows: Sequence[Cells]) -> str:
    heads = "".join(f'<th scope="col">{escape(text)}</th>' for text in head)
    body = "".join(
        f'<tr><th scope="row">{marked(first)}</th>{"".join(f"<td>{marked(cell)}</td>" for cell in cells)}'
        f'<td class="bx">{BOX}</td></tr>'
        for first, *cells in rows
    )
    table = f"<table><thead><tr>{heads}<td></td></tr></thead><tbody>{body}</tbody></table>"
    return f"<h3>{marked(title)}</h3>{table}"
