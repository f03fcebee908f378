"""The form sheet's back: the tops of the forms, what is signed off before the truck, the order, the cautions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from bowstring.faces.build_parts import bold
from bowstring.faces.paper_head import OLD_LINE, foot_html, head_html, old_tall
from bowstring.faces.paper_pour_tall import GAP, in_columns, order_tall, sign_tall
from bowstring.faces.paper_sizes import BOLD, PAGE_TALL, PAGE_WIDE, fitting, set_lines, set_tall
from bowstring.faces.paper_wall import is_wall
from bowstring.faces.paper_wall_tops import is_level, level_told, sizes, tops_html
from bowstring.report.alone import edges_of, grades_of, pour_of, standing_in, wanted_joints
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart, TopPart, TopRow
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

ROWS = (29, 27, 25, 23, 21, 19, 18)
"""Heights of a row that the style has for this sheet; in a lower one the type of a top has no room."""
MANY = 12
"""Rows over which what stands under the tops is smaller."""

_FIXED, _FOOT = 44.0 + GAP, 21.0 + GAP
_HEADS = 32.0 + GAP
_SIGNED, _SIGNED_LOW = 26.0 + 20.0, 14.0 + 20.0
_WALL = 12.0
"""How much higher the order of two pours may stand: its unit, and both nets, in a line more each."""
_TITLE, _TITLE_LINE, _TITLE_ROOM = 30.0, 32.4, 578.0
_ROOMY = 12.0
"""How much higher a row is to write in, where there is room for that in each."""


def pour_sides(answer: Answer, date: str, old: str = "") -> tuple[str, list[TopRow]]:
    """Return the back, and the tops that it has no room for; ``old``: what it says of stakes that stand by old
    numbers."""
    grades, wall = grades_of(answer), is_wall(answer)
    in_a_line = wall and grades is not None and is_level(grades)
    tops = [] if in_a_line else _rows(grades, "stake", "back")
    joints = [] if in_a_line or wanted_joints(answer) is None else _rows(grades, "joint")
    told = _Told(
        say("forms.back_title", title=brief.title(answer)),
        [say(f"forms.safe_{name}") for name in ("governs", "cement_wall" if wall else "cement", "line")],
        _waits(answer),
        _head_told(answer, grades, in_a_line=in_a_line),
        _sign_rows(answer),
    )
    fit = _fitted(answer, told, tops, beside := _Beside(joints, _digs(grades)), old)
    parts = [
        head_html(answer, say("forms.back"), date, title=told.title, numbers=False, old=old),
        *(
            f'<p class="tops-told{" one" if in_a_line else ""}">{bold(text)}</p>'
            for text in _over(told, tops, fit.dense)
        ),
        tops_table(tops[: fit.rows], grades, wall=wall),
        beside.made(dense=fit.dense)[0],
        *_nones(told.waits),
        f'<div class="before-truck">{sign_off(told.signs)}{_order(pour_of(answer))}</div>',
        f'<ul class="safe">{"".join(f"<li>{marked(text)}</li>" for text in told.safe)}</ul>',
        signatures(),
        f'<div class="notes">{escape(say("paper.notes"))}</div>' if in_a_line else "",
        "" if fit.dense and tops else foot_html(say("forms.foot_grades") if tops else "", brief.title(answer)),
    ]
    label = escape(say("forms.back"))
    size = _size(dense=fit.dense, roomy=in_a_line and fit.left >= _ROOMY * len(told.signs))
    kind = f"side forms {'of-wall ' if wall else ''}{size}row-{fit.row}"
    back = f'<section class="{kind}" aria-label="{label}">{"".join(parts)}</section>'
    return back, tops[fit.rows :]


@dataclass(frozen=True)
class _Told:
    """What stands on the back but for the tops and the order: its title, the cautions, what it waits for, what is said
    over the tops, what is signed off."""

    title: str
    safe: list[str]
    waits: list[str]
    head: list[str]
    signs: list[tuple[str, str]]


@dataclass(frozen=True)
class _Beside:
    """What stands in columns beside each other: the joints' tops, and the cut or fill where the ground was measured."""

    joints: list[TopRow]
    digs: list[TopRow]

    def made(self, *, dense: bool) -> tuple[str, float]:
        """Return both tables, and how high they stand."""
        tables = [
            in_columns(self.joints, say("forms.joint"), "tight", dense=dense),
            in_columns(self.digs, say("grades.digs"), "dig", dense=dense),
        ]
        return "".join(html for html, _high in tables), sum(high for _html, high in tables)


@dataclass(frozen=True)
class _Fit:
    """Whether what stands under the tops is smaller, how high a row of them is, how many have room, what is left."""

    dense: bool
    row: int
    rows: int
    left: float


def _fitted(answer: Answer, told: _Told, tops: list[TopRow], beside: _Beside, old: str) -> _Fit:
    """Return how the back is set: smaller where there are many tops, and wherever they have no room otherwise. The line
    of what stands by ``old`` numbers has its room whether it is there or not: no top goes to another side for it."""
    for dense in [False, True] if len(tops) <= MANY else [True]:
        room = PAGE_TALL - _beside_tops(answer, told, tops, dense=dense) - beside.made(dense=dense)[1]
        left = room - OLD_LINE - ROWS[-1] * len(tops)
        if left >= 0.0:
            break
    if left < 0.0:
        return _Fit(True, ROWS[-1], max(1, int((room - OLD_LINE) / ROWS[-1])), left)
    row = fitting(ROWS, (room - old_tall(old)) / max(len(tops), 1))
    return _Fit(dense, row, len(tops), left)


def _beside_tops(answer: Answer, told: _Told, tops: list[TopRow], *, dense: bool) -> float:
    """How high all but the tops and the joints' stands."""
    wall, pour = is_wall(answer), pour_of(answer)
    truck = _WALL * wall + max(
        sign_tall(told.signs, dense=dense, roomy=False), order_tall(pour, dense=dense, wall=wall)
    )
    safe = set_tall(told.safe, *((13.0, 15.6) if dense else (15.0, 18.0)), PAGE_WIDE - 46.0, gap=4.0) + GAP
    head = set_tall([*_over(told, tops, dense), *told.waits], 15.0, 18.0, PAGE_WIDE, gap=GAP, part=BOLD)
    over = set_lines(told.title, _TITLE, _TITLE_ROOM, BOLD) - 1 if len(told.title) <= _LONG else 0
    title = over * _TITLE_LINE
    heads = _HEADS if tops else 0.0
    foot = 0.0 if dense and tops else _FOOT
    return _FIXED + foot + title + head + heads + truck + GAP + safe + (_SIGNED_LOW if dense else _SIGNED)


def _over(told: _Told, tops: list[TopRow], dense: bool) -> list[str]:
    """What stands over the tops: on a side that has no room for a last line, that each is rounded, too."""
    if not dense or not tops:
        return told.head
    return [" ".join([*told.head[:1], say("forms.foot_grades")]), *told.head[1:]]


_LONG = 34
"""Letters of a title over which its type is smaller, and it stands in a line as a rule."""


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


def _rows(grades: GradesPart | None, *kinds: str) -> list[TopRow]:
    return [row for row in grades["rows"] if row["kind"] in kinds] if grades else []


def _head_told(answer: Answer, grades: GradesPart | None, *, in_a_line: bool) -> list[str]:
    if grades is None:
        return []
    to = _dug_to(answer, grades)
    if in_a_line:
        return [level_told(grades), *to]
    if grades["stop"]:
        return [f"{grades['stop']['head']} {grades['stop']['text']}"]
    return [" ".join(grades["conclusion"]), *to, *grades["warnings"]]


def _dug_to(answer: Answer, grades: GradesPart) -> list[str]:
    """How far a wall is dug past its ends, to what its cut and fill are told, from which ground, and whether stakes
    stand near to it."""
    edges = edges_of(answer)
    if edges is None or not is_wall(answer):
        return []
    told = [say("walled.dig_ends", past=edges["overdig_shown"])] if edges["overdig"] else []
    if grades["digs"]:
        told += [*(text for text in grades["asks"] if text == say("walled.no_base")), *grades["base"]]
    return [" ".join(told)] if told else []


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


def standing_rows(answer: Answer) -> list[tuple[str, str]]:
    """Return the row of what stands in the concrete or in the dig, empty where nothing does: somebody signs for it."""
    names = standing_in(answer)
    return [(say("forms.sign_standing"), ", ".join(names))] if names else []


def _sign_rows(answer: Answer) -> list[tuple[str, str]]:
    """What is signed off before the truck comes: what it is, and what it must be."""
    edges, joints, pour, shown = edges_of(answer), wanted_joints(answer), pour_of(answer), answer["staked_shown"]
    tolerance, depth = answer["tolerance_shown"], pour["depth_shown"] if pour else ""
    quarters = ", ".join(brief.quarter_names(answer))
    rows = [(say("forms.sign_arc", stakes=quarters), say("forms.within", tolerance=tolerance) if tolerance else "")]
    rows += [(say("forms.sign_chord"), f"{shown['chord']}; {shown['sagitta']}")]
    if edges:
        rows += sizes(answer) if is_wall(answer) else [*_sizes_of(edges), *_far_of(answer, edges)]
    rows += _slopes(answer)
    if joints and not joints["stop"]:
        rows += [(say("walled.joints" if is_wall(answer) else "forms.sign_joints"), _joints_cut(joints, pour))]
    if is_wall(answer):
        return (
            rows
            + standing_rows(answer)
            + [(say(f"forms.sign_{name}"), "") for name in ("sleeves", "services", "booked")]
        )
    rows += [(say("forms.sign_base"), _with_apron(depth, pour["deep"]["apron_depth"] if pour else ""))]
    rows += [(say("forms.sign_edge"), pour["deep"]["edge_signed"])] if pour and pour["deep"]["edge_signed"] else []
    rows += [(say("pad.sign_strip"), edges["strip_shown"])] if edges and edges["strip_shown"] else []
    rows += standing_rows(answer)
    return rows + [(say(f"forms.sign_{name}"), "") for name in ("stakes", "sleeves", "services", "booked")]


def _sizes_of(edges: EdgesPart) -> list[tuple[str, str]]:
    """The width, or how deep a slab is that fills its curve."""
    far = edges["far_width_shown"] if edges["far_width"] is not None else ""
    name = say("forms.sign_width" if edges["stick"] is not None else _deep(edges))
    return [(name, say("forms.tapers", near=edges["width_shown"], far=far) if far else edges["width_shown"])]


def _far_of(answer: Answer, edges: EdgesPart) -> list[tuple[str, str]]:
    """What proves a pad's far corners: both sides, the back, both diagonals, and by how much those may differ."""
    far = {row["key"]: row for row in answer["far_checks"]["rows"]}
    apart = answer["far_checks"]["apart"]
    if edges["sides"] is None or apart is None:
        return []
    side, across, diagonal = far["A-A-2"], far["A-2-B-2"], far["A-B-2"]
    return [
        (say("pad.sign_sides"), f"{side['shown']}; {across['shown']}"),
        (say("pad.sign_diagonals"), f"{diagonal['shown']}; {apart['limit_shown']}"),
    ]


def _deep(edges: EdgesPart) -> str:
    return "fill.sign_deep" if edges["sides"] is None else "pad.sign_deep"


def _joints_cut(joints: JointsPart, pour: PourPart | None) -> str:
    """How many joints there are and how deep they are cut, in an apron, too."""
    count = str(_joint_count(joints))
    if joints["depth"] is None:
        return count
    depth, deeper = joints["depth_shown"], pour["deep"]["apron_joint"] if pour else ""
    return f"{count}; {_with_apron(depth, deeper)}"


def _with_apron(depth: str, apron: str) -> str:
    return say("deep.sign_both", depth=depth, apron=apron) if apron else depth


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
        return [(say(tops, middle=brief.middle_name(answer)), say("forms.as_above"))]
    steepest = next((one["shown"] for one in grades["slopes"] if one["line"] == grades["steepest"]), "")
    level = say("forms.level_feet" if answer["unit"] in ("ft-in", "ft") else "forms.level_metric")
    back = [row["outside"]["tight"] for row in grades["rows"] if row["kind"] == "back"]
    far = say("pad.far_tops", first=back[0], last=back[-1]) if back else ""
    return [
        (say("forms.sign_tops", middle=brief.middle_name(answer)), say("forms.as_above")),
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
    asked = [pour["deep"]["edge_building"]] if pour["deep"]["edge_building"] else []
    thin = "".join(f"<p><b>{bold(text)}</b></p>" for text in [*pour["deep"]["thin"], *asked])
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
