"""The form sheet: both edges, boards and joints on its front; grade, sign-off and pour on its back (``paper_pour``)."""

from __future__ import annotations

from html import escape

from bowstring.drawings.slab import slab_svg
from bowstring.drawings.slab_fill import PAPER
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_form_tables import Column, columns_of, lines_html, set_lines, table_html
from bowstring.faces.paper_head import duo_html, foot_html, head_html
from bowstring.faces.paper_lined import lined_sides
from bowstring.faces.paper_pour import pour_sides
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, fitting, tall
from bowstring.faces.paper_wall import is_wall, stakes_at, wall_front
from bowstring.report.alone import boards_of, edges_of, joints_of, pour_of
from bowstring.report.forming.rows import is_without_sides
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_boards import BoardsPart, CutRow
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

ROWS = (29, 27, 25, 23, 21, 19, 17)
"""Heights of a row that the style has for this sheet."""
MORE = 34
"""Rows of a table on a further page."""

_FIXED = 62.0 + 94.0 + 154.0 + 26.0 + 58.0  # head, boxes, drawing, last line, gaps
_HEADS = 44.0  # a table's heading and its column heads
_LINES, _LINE_ROW = 20.0, 23.0

_PLAN = 150.0
PAD_PLANS = (250, 150)
"""How high the plan of a slab is, pixels, and that of a pad in the classes that the style has."""

MANY = 12
"""Rows over which what stands around the tables is smaller."""
_LOWER = 40.0


def forms_sides(answer: Answer, date: str) -> str:
    """Return the form sheet's sides, empty for a job without a slab, and for one that nobody may build yet."""
    if answer["lined"]:
        return lined_sides(answer, date)
    edges = None if answer["stops"] else edges_of(answer)
    if edges is None:
        return "" if answer["stops"] else _none(answer, date)
    made = wall_front if is_wall(answer) else _front
    front, rest = made(answer, edges, date)
    back, tops = pour_sides(answer, date)
    return front + back + _more(answer, rest) + tops  # the back right behind the front, on the same sheet


def _none(answer: Answer, date: str) -> str:
    """A side that says why there is no form sheet, where a slab is said that can't be; empty where none is said."""
    row = next(one for one in answer["build"] if one["key"] == "edges")
    if row["state"] != "stop":
        return ""
    title = say("forms.front_title", title=brief.title(answer))
    why = say("pad.no_form_sheet" if is_without_sides(row) else "forms.none")
    told = f"<b>{marked(row['text'])}</b><span>{marked(row['more'])}</span><span>{marked(why)}</span>"
    return (
        f'<section class="side forms" aria-label="{escape(say("forms.front"))}">'
        f"{head_html(answer, say('forms.front'), date, title=title)}"
        f'<div class="stop"><strong>{escape(say("paper.stop"))}</strong>{told}</div></section>'
    )


def _front(answer: Answer, edges: EdgesPart, date: str) -> tuple[str, list[Column]]:
    """The front, and the tables' rows that it has no room for."""
    boards, joints = boards_of(answer), joints_of(answer)
    apron = _apron_told(answer)
    told, lines = [*_told(edges, boards), *_joints_stop(joints), *apron], set_lines(edges)
    columns = columns_of(answer, edges, joints)
    fixed = _FIXED + _LINES + _LINE_ROW * len(lines) + _HEADS
    most = max((len(rows) for _name, _head, rows in columns), default=1)
    many = most > MANY or bool(apron)
    size, leading = (13.0, 15.0) if many else (14.0, 17.0)
    fixed += sum(tall([text], size, leading, PAGE_WIDE - 24.0) for text in told) + 14.0 - (_LOWER if many else 0.0)
    row = fitting(ROWS, (PAGE_TALL - fixed) / max(most, 1))
    fit = int((PAGE_TALL - fixed) / row)
    first = "".join(table_html(name, head, rows[:fit]) for name, head, rows in columns)
    label = escape(say("forms.front"))
    parts = [
        head_html(answer, say("forms.front"), date, title=say("forms.front_title", title=brief.title(answer))),
        duo_html(
            answer,
            f'<div class="wide">{"".join(f"<p>{marked(text)}</p>" for text in _slab(answer, edges))}</div>',
            "form-hand",
        ),
        _plan(answer, edges, PAGE_TALL - fixed - row * most),
        f'<div class="form-lines">{lines_html(lines)}{_cuts(answer)}</div>',
        f'<div class="form-tables of-{len(columns)}">{first}</div>',
        f'<ul class="form-told">{"".join(f"<li>{bold(text)}</li>" for text in told)}</ul>',
        foot_html(say("paper.safe_board") if boards else "", say("forms.turn_over")),
    ]
    dense = "dense " if many else ""
    front = f'<section class="side forms {dense}row-{row}" aria-label="{label}">{"".join(parts)}</section>'
    rest = [(name, head, rows[fit:]) for name, head, rows in columns]
    return front, rest if most > fit else []


def _joints_stop(joints: JointsPart | None) -> list[str]:
    return [f"*{joints['stop']}*"] if joints and joints["stop"] else []


def _plan(answer: Answer, edges: EdgesPart, room: float) -> str:
    """The slab drawn; a pad with its corners, diagonal, joints and slope, as large as the rest of the side lets it be:
    ``room`` more pixels than any other has."""
    if edges["sides"] is None:
        return f'<div class="low slab">{slab_svg(answer, id="form-plan")}</div>'
    more = next((size for size in PAD_PLANS if size <= _PLAN + room), PAD_PLANS[-1])
    return f'<div class="low slab pad-{more}">{slab_svg(answer, PAPER, id="form-plan")}</div>'


def _apron_told(answer: Answer) -> list[str]:
    pour = pour_of(answer)
    return [pour["deep"]["apron"][0], " ".join(pour["deep"]["joints"])] if pour and pour["deep"]["apron"] else []


def _more(answer: Answer, columns: list[Column]) -> str:
    """The rows that the front has no room for, a page or more."""
    sides = ""
    most = max((len(rows) for _name, _head, rows in columns), default=0)
    for start in range(0, most, MORE):
        now = "".join(table_html(name, head, rows[start : start + MORE]) for name, head, rows in columns)
        title = say("forms.front_title", title=brief.title(answer))
        sides += (
            f'<section class="side forms row-25" aria-label="{escape(say("forms.more"))}">'
            f"{head_html(answer, say('forms.more'), '', title=title, numbers=False)}"
            f'<div class="form-tables of-{len(columns)}">{now}</div></section>'
        )
    return sides


def _slab(answer: Answer, edges: EdgesPart) -> list[str]:
    """Which line the stakes stand on, and where the slab is from it."""
    values = {"width": edges["width_shown"], "far": edges["far_width_shown"]}
    key = "tapers" if edges["far_width"] is not None else edges["edge"]
    pour = pour_of(answer)
    thick = [say("forms.thick", depth=pour["depth_shown"])] if pour else []
    if pour and pour["deep"]["apron_shown"]:
        thick.append(say("deep.on_paper", apron=pour["deep"]["apron_shown"]))
    lies = say(f"forms.slab_{key}", **values)
    if edges["sides"] is not None:
        which = "pad.paper_both" if edges["both_ends"] else "pad.paper_one"
        chord = next(one["chord_shown"] for one in edges["lines"] if one["key"] == "outside")
        lies = say(which, chord=chord, sides=edges["sides_shown"], deep=edges["width_shown"])
    return [stakes_at(answer, edges), lies, *thick]


def _cuts(answer: Answer) -> str:
    """The boards in a box: what bends, what to cut, how many stakes."""
    boards = boards_of(answer)
    if boards is None:
        row = next(one for one in answer["build"] if one["key"] == "boards")
        told = f"<p><b>{bold(row['text'])}</b></p><p>{bold(row['more'])}</p>"
        return f'<div class="boxed">{told}</div>' if row["state"] == "near" else ""
    bent = {edge["board"] for edge in boards["edges"]}  # the line above the rows tells it
    cut = "".join(
        f"<p>{marked(say('forms.cut' if row['board'] in bent else 'forms.cut_of', **_cells(row)))}</p>"
        for row in boards["cut"]
    )
    stakes = marked(say("forms.form_stakes", count=boards["with_spare"]))
    return f'<div class="boxed"><p><b>{bold(boards["short"])}</b></p>{cut}<p><b>{stakes}</b></p></div>'


def _cells(row: CutRow) -> dict[str, str]:
    return {"name": row["name"], "board": row["board"], "boards": row["boards"]}


def _told(edges: EdgesPart, boards: BoardsPart | None) -> list[str]:
    """What proves the second edge, and how the boards are held."""
    check = say("forms.diagonals", shown=edges["diagonal_shown"]) if edges["alike"] else edges["check"]
    told = [*(text for one in edges["seconds"] for text in (one["text"], one["blocked"]) if text)]
    told += [*edges["form"], *edges["sides_how"], check] if edges["stick"] is None else [check]
    footed = any(one["key"] == "footing_outside" for one in edges["lines"])
    told += [say("forms.dig_footing" if footed else "forms.dig", past=edges["overdig_shown"])]
    if boards is None:
        return told
    if boards["remedy"]:  # no board to screw yet
        return [*told, *boards["bank"], boards["remedy"]]
    return [*told, say("forms.screws" if edges["stick"] is not None else "fill.screws"), *boards["bank"]]
