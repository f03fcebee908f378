"""The form sheet's back: the tops of the forms, what is signed off before the truck, the order, the cautions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from html import escape
from typing import Literal

from bowstring.faces.build_parts import bold
from bowstring.faces.paper_head import foot_html, head_html
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, fitting, tall, width
from bowstring.faces.paper_wall import is_wall
from bowstring.faces.paper_wall_tops import is_level, level_told, sizes, tops_html
from bowstring.report.alone import edges_of, grades_of, pour_of, wanted_joints
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart, TopPart, TopRow
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

ROWS = (29, 27, 25, 23, 21, 19, 17)
_JOINT_TYPE, _JOINT_SIDES = 13.0, 5.5
MANY = 12
"""Rows over which what stands under the tops is smaller."""
_LOWER = 56.0

_FIXED = 44.0 + 26.0 + 64.0 + 56.0  # head, last line, who signs, gaps
_HEADS = 42.0
_SIGN_ROW = 22.0
_ORDER = 262.0
"""How high the order stands beside what is signed off."""
_ORDER_WALL = 12.0
"""How much higher the order of two pours stands: its unit, and both nets, in a line more each."""
_JOINTS, _JOINTS_LOW = 74.0, 62.0


@dataclass(frozen=True)
class _Block:
    """What is told of both forms at some places: what the places are, what the forms are called, a place's name with
    what it has on each."""

    name: str
    sides: list[str]
    cells: list[tuple[str, ...]]


_ROOMY = 12.0
"""How much higher a row is to write in, where there is room for that in each."""


def pour_sides(answer: Answer, date: str) -> tuple[str, list[TopRow]]:
    """Return the back, and the tops that it has no room for."""
    grades, pour = grades_of(answer), pour_of(answer)
    signs = _sign_rows(answer)
    wall = is_wall(answer)
    in_a_line = wall and grades is not None and is_level(grades)
    tops = [] if in_a_line else _rows(grades, "stake", "back")
    joints = [] if in_a_line or wanted_joints(answer) is None else _rows(grades, "joint")
    safe = [say(f"forms.safe_{name}") for name in ("governs", "cement_wall" if wall else "cement", "line")]
    waits = _waits(answer)
    blocks = [*_blocks(say("forms.joint"), joints, "tight"), *_blocks(say("grades.digs"), _digs(grades), "dig")]
    beside = max(_HEADS + _SIGN_ROW * len(signs), _order_tall(pour) + (_ORDER_WALL if wall else 0.0))
    rest = PAGE_TALL - _FIXED - _HEADS - beside
    head_told = _head_told(answer, grades, in_a_line=in_a_line)
    rest -= tall([*safe, *waits, *head_told], 14.0, 18.0, PAGE_WIDE - 30.0, 4.0)
    dense, row, fit = _fitted(len(tops), len(blocks), rest)
    title = say("forms.back_title", title=brief.title(answer))
    parts = [
        head_html(answer, say("forms.back"), date, title=title, numbers=False),
        *(f'<p class="tops-told{" one" if in_a_line else ""}">{bold(text)}</p>' for text in head_told),
        tops_table(tops[:fit], grades, wall=wall),
        *map(_block_html, blocks),
        *_nones(waits),
        f'<div class="before-truck">{sign_off(signs)}{_order(pour)}</div>',
        f'<ul class="safe">{"".join(f"<li>{marked(text)}</li>" for text in safe)}</ul>',
        signatures(),
        f'<div class="notes">{escape(say("paper.notes"))}</div>' if in_a_line else "",
        foot_html(say("forms.foot_grades") if tops else "", brief.title(answer)),
    ]
    label = escape(say("forms.back"))
    size = _size(dense=dense, roomy=in_a_line and rest >= _ROOMY * len(signs))
    kind = f"side forms {'of-wall ' if wall else ''}{size}row-{row}"
    back = f'<section class="{kind}" aria-label="{label}">{"".join(parts)}</section>'
    return back, tops[fit:]


def _waits(answer: Answer) -> list[str]:
    """What the back waits for, and why there is no order."""
    rows = answer["build"]
    waits = [row["text"] for row in rows if row["key"] in ("grades", "pour") and row["state"] == "open"]
    return waits + [f"{row['text']}. {row['more']}" for row in rows if row["key"] == "pour" and row["state"] == "stop"]


def _nones(waits: list[str]) -> list[str]:
    return [f'<p class="none">{marked(text)}</p>' for text in waits]


def _size(*, dense: bool, roomy: bool) -> str:
    """The class of a side whose rows are lower, or higher, than usual."""
    return "dense " if dense else "roomy " if roomy else ""


def _fitted(tops: int, blocks: int, rest: float) -> tuple[bool, int, int]:
    """Whether what stands under the tops is smaller, as it is where it has to be; how high their rows are; how many
    have room."""
    least = ROWS[-1] * tops
    dense = tops > MANY or rest - _JOINTS * blocks < least <= rest - _JOINTS_LOW * blocks + _LOWER
    room = rest - _JOINTS_LOW * blocks + _LOWER if dense else rest - _JOINTS * blocks
    row = fitting(ROWS, room / max(tops, 1))
    return dense, row, max(1, int(room / row))


def _rows(grades: GradesPart | None, *kinds: str) -> list[TopRow]:
    return [row for row in grades["rows"] if row["kind"] in kinds] if grades else []


def _order_tall(pour: PourPart | None) -> float:
    return _ORDER + tall([pour["footing_text"], *pour["deep"]["thin"]], 14.0, 17.0, 236.0) if pour else 0.0


def _head_told(answer: Answer, grades: GradesPart | None, *, in_a_line: bool) -> list[str]:
    if grades is None:
        return []
    if in_a_line:
        return [level_told(grades)]
    if grades["stop"]:
        return [f"{grades['stop']['head']} {grades['stop']['text']}"]
    return [" ".join(grades["conclusion"]), *grades["warnings"]]


def tops_table(rows: list[TopRow], grades: GradesPart | None, *, wall: bool) -> str:
    """Return both tops at each stake, with a place for what was set and for how deep the base is under it."""
    if grades is None or not rows:
        return ""
    if wall:
        return tops_html(rows, grades)
    beside = [name for name in _BESIDE if name in grades["has"]][:1]
    one = [say("forms.top"), *(say(f"forms.{name}") for name in beside), say("forms.as_set")]
    heads = [say("forms.stake"), *([*one] * len(grades["sides"])), say("forms.base_under")]
    edges = "".join(
        f'<th scope="colgroup" colspan="{len(one)}">{escape(say(f"forms.{name}_form"))}</th>'
        for name in ("outer", "inner")[: len(grades["sides"])]
    )
    body = ""
    for row in rows:
        cells = ""
        for top in _both(row):
            cells += f'<td class="big">{marked(top["shown"])}</td>'
            cells += "".join(f"<td>{marked(_BESIDE[name](top))}</td>" for name in beside) + '<td class="write"></td>'
        body += f'<tr><th scope="row">{marked(row["name"])}</th>{cells}<td class="write"></td></tr>'
    names = "".join(f'<th scope="col">{escape(text)}</th>' for text in heads)
    return (
        f'<table class="tops"><thead><tr><td></td>{edges}<td></td></tr><tr>{names}</tr></thead>'
        f"<tbody>{body}</tbody></table>"
    )


_BESIDE: dict[str, Callable[[TopPart], str]] = {
    "rod": lambda top: top["rod"],
    "elevation": lambda top: top["elevation"],
    "feet": lambda top: top["feet"],
}
"""What stands beside a top, the first that there is: it's what whoever sets it reads."""


def _both(row: TopRow) -> list[TopPart]:
    """The tops of a place: of a slab that fills its curve there is one."""
    return [top for top in (row["outside"], row["inside"]) if top]


def _digs(grades: GradesPart | None) -> list[TopRow]:
    """Where the ground was measured: how much is cut or filled under each form."""
    return grades["digs"] if grades and not grades["stop"] else []


def _blocks(name: str, rows: list[TopRow], what: Literal["tight", "dig"]) -> list[_Block]:
    """What stands beside each other, of joints or of stakes, in as many equal blocks as it takes to have room."""
    if not rows:
        return []
    sides = [say("forms.outer"), say("forms.inner")]
    cells = [(row["name"], *(top[what] for top in _both(row))) for row in rows]
    widest = max(width(text, _JOINT_TYPE) for row in cells for text in row)
    first = max(width(text, _JOINT_TYPE) for text in (name, *sides))
    wide = max(1, int((PAGE_WIDE - first - 20.0) / (widest + _JOINT_SIDES)))
    count = -(-len(cells) // -(-len(cells) // wide))
    return [_Block(name, sides, cells[start : start + count]) for start in range(0, len(cells), count)]


def _block_html(block: _Block) -> str:
    """What is told of both forms at some places, side by side; once where it is the same on both."""
    names, *told = zip(*block.cells, strict=True)
    lines = [(block.name, names)]
    lines += [(say("forms.both"), told[0])] if len(set(told)) == 1 else list(zip(block.sides, told, strict=False))
    body = "".join(
        f'<tr><th scope="row">{escape(name)}</th>{"".join(f"<td>{marked(text)}</td>" for text in texts)}</tr>'
        for name, texts in lines
    )
    return f'<table class="joint-tops"><tbody>{body}</tbody></table>'


def _sign_rows(answer: Answer) -> list[tuple[str, str]]:
    """What is signed off before the truck comes: what it is, and what it must be."""
    edges, joints, pour, shown = edges_of(answer), wanted_joints(answer), pour_of(answer), answer["staked_shown"]
    tolerance, depth = answer["tolerance_shown"], pour["depth_shown"] if pour else ""
    rows = [(say("forms.sign_arc"), say("forms.within", tolerance=tolerance) if tolerance else "")]
    rows += [(say("forms.sign_chord"), f"{shown['chord']}; {shown['sagitta']}")]
    if edges:
        rows += sizes(answer) if is_wall(answer) else _sizes_of(edges)
    rows += _slopes(answer)
    if joints and not joints["stop"]:
        rows += [(say("walled.joints" if is_wall(answer) else "forms.sign_joints"), _joints_cut(joints, pour))]
    if is_wall(answer):
        return rows + [(say(f"forms.sign_{name}"), "") for name in ("sleeves", "services", "booked")]
    rows += [(say("forms.sign_base"), depth)]
    if pour and pour["deep"]["apron_depth"]:
        rows += [(say("deep.sign_apron"), pour["deep"]["apron_depth"])]
    return rows + [(say(f"forms.sign_{name}"), "") for name in ("stakes", "sleeves", "services", "booked")]


def _sizes_of(edges: EdgesPart) -> list[tuple[str, str]]:
    """The width, or how deep a slab is that fills its curve, and the diagonals of its sides."""
    far = edges["far_width_shown"] if edges["far_width"] is not None else ""
    name = say("forms.sign_width" if edges["stick"] is not None else _deep(edges))
    rows = [(name, say("forms.tapers", near=edges["width_shown"], far=far) if far else edges["width_shown"])]
    if edges["sides"] is not None:
        rows.append((say("pad.sign_diagonals"), edges["diagonal_shown"]))
    return rows


def _deep(edges: EdgesPart) -> str:
    return "fill.sign_deep" if edges["sides"] is None else "pad.sign_deep"


def _joints_cut(joints: JointsPart, pour: PourPart | None) -> str:
    """How many joints there are and how deep they are cut, in an apron, too."""
    count = str(_joint_count(joints))
    if joints["depth"] is None:
        return count
    depth, deeper = joints["depth_shown"], pour["deep"]["apron_joint"] if pour else ""
    return f"{count}; {say('deep.sign_joints', depth=depth, apron=deeper) if deeper else depth}"


def _joint_count(joints: JointsPart) -> int:
    """How many joints there are: one less than panels in a row, or all that cross a slab which fills its curve."""
    return len(joints["grid"]) if joints["grid"] or not joints["rows"] else joints["count"] - 1


def _slopes(answer: Answer) -> list[tuple[str, str]]:
    """The tops and the two slopes, where the grades may be used."""
    grades = grades_of(answer)
    if grades is None or grades["stop"]:
        return []
    if is_wall(answer):  # nobody walks on one: its slopes are told, not judged
        tops = "forms.sign_tops" if wanted_joints(answer) else "forms.sign_tops_alone"
        return [(say(tops), say("forms.as_above"))]
    steepest = next((one["shown"] for one in grades["slopes"] if one["line"] == grades["steepest"]), "")
    level = say("forms.level_feet" if answer["unit"] in ("ft-in", "ft") else "forms.level_metric")
    back = [row["outside"]["tight"] for row in grades["rows"] if row["kind"] == "back"]
    far = say("pad.far_tops", first=back[0], last=back[-1]) if back else ""
    return [
        (say("forms.sign_tops"), say("forms.as_above")),
        *([(say("pad.sign_tops"), far)] if far else []),
        (say("forms.sign_slopes", level=level), f"{steepest}; {grades['drop']}"),
    ]


def sign_off(rows: list[tuple[str, str]]) -> str:
    """Return what is signed off: what it is, and what it must be."""
    heads = "".join(f'<th scope="col">{escape(say(f"forms.{name}"))}</th>' for name in ("what", "must", "got", "init"))
    body = "".join(
        f'<tr><th scope="row">{marked(what)}</th><td class="big">{marked(must)}</td>'
        '<td class="write"></td><td class="write"></td></tr>'
        for what, must in rows
    )
    return (
        f'<div><h3>{escape(say("forms.sign_off"))}</h3><table class="sign-off"><thead><tr>{heads}</tr></thead>'
        f"<tbody>{body}</tbody></table></div>"
    )


def _order(pour: PourPart | None) -> str:
    """The order in the largest type, what changes it, and when to call."""
    if pour is None:
        return "<div></div>"
    heads = "".join(
        f'<th scope="col">{escape(say(f"forms.{name}"))}</th>' for name in ("truck_out", "plan", "call_short")
    )
    rows = "".join(
        f'<tr><th scope="row">{marked(one["out"])}</th><td>{marked(one["plan_shown"])}</td>'
        f'<td class="big">{marked(one["call_shown"])}</td></tr>'
        for one in pour["reach"]
    )
    call = escape(say("forms.call", where=pour["reach_where"]))
    table = f"<table><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>"
    reach = f"<h3>{call}</h3>{table}" if rows else ""
    thin = "".join(f"<p><b>{bold(text)}</b></p>" for text in pour["deep"]["thin"])
    footing = f"<p><b>{bold(pour['footing_text'])}</b></p>" if pour["footing_text"] else ""
    blanks = "".join(f'<p class="fill-in">{escape(say(f"forms.{name}"))}</p>' for name in ("plant", "ordered"))
    return (
        f'<div class="boxed order"><p class="most"><b>{marked(pour["number"])}</b> {escape(pour["unit"])}</p>'
        f"<p>{bold(pour['why'])}</p>{thin}<p>{bold(pour['low_text'])}</p>{footing}{reach}{blanks}</div>"
    )


def signatures() -> str:
    """Return where whoever answers for the forms signs."""
    names = ("paper.by", "paper.checked", "forms.date_time", "forms.may_pour")
    return f'<div class="signs">{"".join(f"<p>{escape(say(name))}</p>" for name in names)}</div>'
