"""The form sheet: both edges, boards and joints on its front; grade, sign-off and pour on its back (``paper_pour``)."""

from __future__ import annotations

from html import escape

from bowstring.drawings.slab import cropped_svg, slab_svg
from bowstring.drawings.slab_fill import PAPER
from bowstring.drawings.slab_pages import SHEET
from bowstring.drawings.slab_shape import sheet_room
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_cuts import cut_rows
from bowstring.faces.paper_form_tables import Column, columns_of, lines_html, set_lines, tables_html
from bowstring.faces.paper_forms_tall import Around, Fitted, fitted
from bowstring.faces.paper_forms_told import told_of
from bowstring.faces.paper_head import duo_html, foot_html, head_html, old_tall
from bowstring.faces.paper_lined import lined_sides
from bowstring.faces.paper_pour import pour_sides, tops_table
from bowstring.faces.paper_pour_tall import dig_sides
from bowstring.faces.paper_sizes import PAGE_WIDE
from bowstring.faces.paper_wall import is_wall, stakes_at, wall_front
from bowstring.report.alone import boards_of, edges_of, grades_of, joints_of, line_ends_of, pour_of
from bowstring.report.forming.plan import LIES
from bowstring.report.forming.rows import is_without_sides
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import TopRow
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import DeepPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say
from bowstring.words.stars import unstarred

_COLUMNS = 3
"""Of a table of marks along an edge: the stake, along, square off."""
MORE = 34
"""Rows of a table on a further page."""


def forms_sides(answer: Answer, date: str, old: str = "") -> str:
    """Return the form sheet's sides, empty for a job without a slab, and for one that nobody may build yet; ``old``:
    what each says of stakes that stand by old numbers. Without any each says there which check is out: it is signed
    off on them."""
    old = old or ("" if answer["stops"] else brief.reads_out(answer))  # a side may go out by itself
    if answer["lined"]:
        return lined_sides(answer, date, old)
    edges = None if answer["stops"] else edges_of(answer)
    if edges is None:
        return "" if answer["stops"] else _none(answer, date)
    made = wall_front if is_wall(answer) else _front
    front, rest = made(answer, edges, date, old)
    back, tops, digs = pour_sides(answer, date, old)
    return front + back + _more(answer, rest, tops, digs, old)  # the back right behind the front, on the same sheet


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


def _front(answer: Answer, edges: EdgesPart, date: str, old: str) -> tuple[str, list[Column]]:
    """The front, and the tables' rows that it has no room for."""
    boards, joints = boards_of(answer), joints_of(answer)
    pour = pour_of(answer)
    deep = pour["deep"] if pour else None
    apron = _apron_told(deep)
    told = [*_stands(edges), *told_of(answer, edges, boards, deep), *_cut_to(answer), *_joints_stop(joints), *apron]
    columns = columns_of(answer, edges, joints)
    title = say("forms.front_title", title=brief.title(answer))
    foot = say("paper.safe_board") if boards else "", say("forms.turn_over")
    cuts, slab, beside = _cuts(answer), _slab(answer, edges), edges["sides"] is not None
    few = set_lines(edges, few=boards is not None and not boards["remedy"])
    usual = Around(title, slab, set_lines(edges), cuts, told, foot, beside)
    small = Around(title, slab, few, [], [*told, *_in_a_line(cuts)], foot, beside)
    fit = fitted(answer, {False: usual, True: small}, columns, old_tall(old), dense=bool(apron))
    around = small if fit.dense else usual
    first = "".join(tables_html(column) for column in fit.shown)
    label = escape(say("forms.front"))
    where = f'<div class="wide">{"".join(f"<p>{marked(text)}</p>" for text in slab)}</div>'
    plan = _plan(answer, edges, fit)
    listed = f'<ul class="form-told">{"".join(f"<li>{bold(text)}</li>" for text in around.told)}</ul>'
    parts = [
        head_html(answer, say("forms.front"), date, title=title, old=old),
        duo_html(answer, where, "form-hand"),
        "" if beside else plan,
        f'<div class="form-lines">{lines_html(around.lines)}{_boxed(around.box)}</div>',
        f'<div class="{_class_of(columns, len(columns))}">{first}</div>',
        f'<div class="told-beside of-{fit.drawn}">{listed}{plan}</div>' if beside else listed,
        foot_html(foot[0], say("forms.go_on") if fit.rest else foot[1]),
    ]
    dense = "dense " if fit.dense else ""
    front = f'<section class="side forms {dense}row-{fit.row}" aria-label="{label}">{"".join(parts)}</section>'
    return front, fit.rest


def _stands(edges: EdgesPart) -> list[str]:
    """What stands in the concrete or in the dig, in one paragraph, as the build says it."""
    told = " ".join(unstarred(row["text"]) for row in edges["standing"])
    return [f"*{told}*"] if told else []


def _cut_to(answer: Answer) -> list[str]:
    """To which bottom cut and fill are told on the back: it is said last of the base, where that is known."""
    grades = grades_of(answer)
    if grades is None or not grades["digs"] or say("grades.no_base") in grades["asks"]:
        return []
    return grades["base"][-1:]


def _joints_stop(joints: JointsPart | None) -> list[str]:
    """What stops the joints, or what is wrong with them."""
    told = (joints["stop"] or joints["warned"]) if joints else ""
    return [f"*{told}*"] if told else []


def _plan(answer: Answer, edges: EdgesPart, fit: Fitted) -> str:
    """The slab drawn; a pad with its corners, diagonal, joints and slope, which stands beside what proves its edges: it
    is about as high as wide."""
    if edges["edge"] in LIES:
        room = sheet_room(PAGE_WIDE, fit.drawn)
        return f'<div class="low slab drawn-{fit.drawn}">{slab_svg(answer, SHEET, id="form-plan", room=room)}</div>'
    if edges["sides"] is None:
        return f'<div class="low slab drawn-{fit.drawn}">{slab_svg(answer, id="form-plan")}</div>'
    return f'<div class="low slab beside-{fit.drawn}">{cropped_svg(answer, PAPER, id="form-plan")}</div>'


def _apron_told(deep: DeepPart | None) -> list[str]:
    """A thicker stretch: where it is, and its joints."""
    if deep is None or not deep["apron"]:
        return []
    dug = [] if deep["dig_apron"] else [deep["apron"][0]]  # how deep it is dug there stands with the dig already
    return [*dug, " ".join(deep["joints"])]


def _class_of(columns: list[Column], least: int) -> str:
    """How the tables stand beside each other: an edge that tapers has its width in a column more."""
    tapers = any(len(heads) > _COLUMNS for _name, heads, _rows in columns)
    return f"form-tables of-{max(least, len(columns))}{' tapers' if tapers else ''}"


def _more(answer: Answer, tables: list[Column], tops: list[TopRow], digs: list[TopRow], old: str) -> str:
    """The sides that follow both: the rest of the front's tables, then the rest of the tops, then the cut or fill that
    the back has no room for; two of them on one where they have room."""
    title = say("forms.front_title", title=brief.title(answer))
    inside: list[tuple[int, str]] = []
    most = max((len(rows) for _name, _head, rows in tables), default=0)
    for start in range(0, most, MORE):
        now = [(name, head, rows[start : start + MORE]) for name, head, rows in tables if rows[start:]]
        made = "".join(tables_html([one]) for one in now)
        inside.append((min(MORE, most - start), f'<div class="{_class_of(tables, 2)}">{made}</div>'))
    grades = grades_of(answer)
    for start in range(0, len(tops), MORE):
        part = tops[start : start + MORE]
        inside.append((len(part), tops_table(part, grades, wall=is_wall(answer))))
    inside += dig_sides(digs)
    if len(inside) == 2 and inside[0][0] + inside[1][0] + 4 <= MORE:
        inside = [(MORE, inside[0][1] + inside[1][1])]
    head = head_html(answer, say("forms.more"), "", title=title, numbers=False, old=old)
    label = escape(say("forms.more"))
    return "".join(
        f'<section class="side forms row-25" aria-label="{label}">{head}{made}</section>' for _rows, made in inside
    )


def _slab(answer: Answer, edges: EdgesPart) -> list[str]:
    """Which line the stakes stand on, and where the slab is from it."""
    width = edges["width_shown"]
    if edges["far_width"] is not None:
        width = say("forms.slab_tapers", near=width, far=edges["far_width_shown"])
    pour = pour_of(answer)
    thick = [say("forms.thick", depth=pour["depth_shown"])] if pour else []
    if pour and pour["deep"]["apron_paper"]:
        thick.append(pour["deep"]["apron_paper"])
    lies = say(f"forms.slab_{edges['edge']}", width=width)
    if edges["sides"] is not None:
        ends = {} if edges["both_ends"] else line_ends_of(answer)
        which = "pad.paper_both" if edges["both_ends"] else "pad.paper_one"
        chord = next(one["chord_shown"] for one in edges["lines"] if one["key"] == "outside")
        lies = say(which, chord=chord, sides=edges["sides_shown"], deep=edges["width_shown"], **ends)
    return [stakes_at(answer, edges), " ".join([lies, *thick[:1]]), *thick[1:]]


def _cuts(answer: Answer) -> list[str]:
    """What stands in the box of the boards: what bends, what to cut, how many stakes."""
    boards = boards_of(answer)
    if boards is None:
        row = next(one for one in answer["build"] if one["key"] == "boards")
        return [f"*{row['text']}*", row["more"]] if row["state"] == "near" else []
    alone = boards["remedy"] and boards["cut"]  # no board bends, and the straight forms stand by themselves
    stakes = say("forms.form_stakes_straight" if alone else "forms.form_stakes", count=boards["with_spare"])
    return [f"*{boards['short']}*", *cut_rows(boards), f"*{stakes}*"]


def _in_a_line(cuts: list[str]) -> list[str]:
    """What stands in the box of the boards, in one paragraph."""
    told = (f"{text[:1].upper()}{text[1:]}" for text in cuts)
    return [" ".join(text if text.rstrip("*").endswith(".") else f"{text}." for text in told)] if cuts else []


def _boxed(box: list[str]) -> str:
    return f'<div class="boxed">{"".join(f"<p>{bold(text)}</p>" for text in box)}</div>' if box else ""
