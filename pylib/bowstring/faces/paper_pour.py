"""The form sheet's back: the tops of the forms, what is signed off before the truck, the order, the cautions."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from bowstring.faces.build_parts import bold
from bowstring.faces.paper_head import OLD_LINE, foot_html, head_html, old_tall
from bowstring.faces.paper_pour_tall import GAP, base_line, digs_head, in_columns, levels_table, order_tall, sign_tall
from bowstring.faces.paper_signed import sign_off, sign_rows, signatures
from bowstring.faces.paper_sizes import BOLD, PAGE_TALL, PAGE_WIDE, fitting, set_lines, set_tall
from bowstring.faces.paper_wall import is_wall
from bowstring.faces.paper_wall_tops import groups_html, is_level, level_told, tops_html
from bowstring.report.alone import edges_of, grades_of, pour_of, wanted_joints
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_grades import GradesPart, LevelTable, TopPart, TopRow
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


def pour_sides(answer: Answer, date: str, old: str = "") -> tuple[str, list[TopRow], list[TopRow]]:
    """Return the back, the tops that it has no room for, and the places with their cut or fill if it has none for all
    of those; ``old``: what it says of stakes that stand by old numbers."""
    grades, wall = grades_of(answer), is_wall(answer)
    in_a_line = wall and grades is not None and is_level(grades)
    tops = [] if in_a_line else _rows(grades, "stake", "back")
    joints = [] if in_a_line or wanted_joints(answer) is None else _rows(grades, "joint")
    told = _Told(
        say("forms.back_title", title=brief.title(answer)),
        [say(f"forms.safe_{name}") for name in ("governs", "cement_wall" if wall else "cement", "line")],
        _waits(answer),
        _head_told(answer, grades, in_a_line=in_a_line),
        sign_rows(answer),
        large=in_a_line,
    )
    fit, beside, digs = _with_digs(answer, told, tops, _beside_of(joints, grades, in_a_line=in_a_line), old)
    parts = [
        head_html(answer, say("forms.back"), date, title=told.title, numbers=False, old=old),
        *(
            f'<p class="tops-told{" one" if in_a_line else ""}">{bold(text)}</p>'
            for text in _over(told, tops, fit.dense)
        ),
        tops_table(tops[: fit.rows], grades, wall=wall),
        beside.made(dense=fit.dense)[0],
        *_nones(told.waits),
        f'<div class="before-truck">{sign_off(told.signs)}{_order(pour_of(answer), told.signs, dense=fit.dense)}</div>',
        f'<ul class="safe">{"".join(f"<li>{marked(text)}</li>" for text in told.safe)}</ul>',
        signatures(),
        f'<div class="notes">{escape(say("paper.notes"))}</div>' if in_a_line else "",
        "" if fit.dense and tops else foot_html(say("forms.foot_grades") if tops else "", brief.title(answer)),
    ]
    label = escape(say("forms.back"))
    size = _size(dense=fit.dense, roomy=in_a_line and fit.left >= _ROOMY * len(told.signs))
    kind = f"side forms {'of-wall ' if wall else ''}{size}row-{fit.row}"
    back = f'<section class="{kind}" aria-label="{label}">{"".join(parts)}</section>'
    return back, tops[fit.rows :], digs


@dataclass(frozen=True)
class _Told:
    """What stands on the back but for the tops and the order: its title, the cautions, what it waits for, what is said
    over the tops, ``large`` where no tops follow, what is signed off."""

    title: str
    safe: list[str]
    waits: list[str]
    head: list[str]
    signs: list[tuple[str, str]]
    large: bool


@dataclass(frozen=True)
class _Beside:
    """What stands in columns beside each other: the joints' tops, and the cut or fill where the ground was measured;
    and what lies under a wall's top."""

    joints: list[TopRow]
    levels: LevelTable | None
    digs: list[TopRow]

    def made(self, *, dense: bool) -> tuple[str, float]:
        """Return the tables, and how high they stand."""
        tables = [
            in_columns(self.joints, say("forms.joint"), "tight", dense=dense),
            levels_table(self.levels, dense=dense),
            in_columns(self.digs, digs_head(self.digs), "dig", dense=dense),
        ]
        return "".join(html for html, _high in tables), sum(high for _html, high in tables)


def _beside_of(joints: list[TopRow], grades: GradesPart | None, *, in_a_line: bool) -> _Beside:
    """What there is of that; of a top that rises every stake has its own levels."""
    if grades is None or grades["stop"]:
        return _Beside(joints, None, [])
    return _Beside(joints, grades["levels"] if in_a_line else None, grades["digs"])


@dataclass(frozen=True)
class _Fit:
    """Whether what stands under the tops is smaller, how high a row of them is, how many have room, what is left."""

    dense: bool
    row: int
    rows: int
    left: float


def _with_digs(
    answer: Answer, told: _Told, tops: list[TopRow], beside: _Beside, old: str
) -> tuple[_Fit, _Beside, list[TopRow]]:
    """Return how the back is set, what stands there in columns, and the places with their cut or fill that it has no
    room for: all of them or none, so that nobody looks for the rest."""
    fit = _fitted(answer, told, tops, beside, old)
    if fit.left >= 0.0 or not beside.digs:
        return fit, beside, []
    without = _Beside(beside.joints, beside.levels, [])
    return _fitted(answer, told, tops, without, old), without, beside.digs


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
    head = set_tall(told.waits, 15.0, 18.0, PAGE_WIDE, gap=GAP, part=BOLD)
    size = (20.0, 24.0) if told.large else (15.0, 18.0)
    head += set_tall(_over(told, tops, dense), *size, PAGE_WIDE, gap=GAP, part=BOLD)
    over = set_lines(told.title, _TITLE, _TITLE_ROOM, BOLD) - 1 if len(told.title) <= _LONG else 0
    title = over * _TITLE_LINE
    heads = _HEADS if tops else 0.0
    foot = 0.0 if dense and tops else _FOOT
    return _FIXED + foot + title + head + heads + truck + GAP + safe + (_SIGNED_LOW if dense else _SIGNED)


def _over(told: _Told, tops: list[TopRow], dense: bool) -> list[str]:
    """What stands over the tops: on a side that has no room for a last line, that each is rounded, too."""
    if not dense or not tops:
        return told.head
    both = " ".join([*told.head[:1], say("forms.foot_grades")])
    return [both, *told.head[1:]] if set_lines(both, 15.0, PAGE_WIDE, BOLD) == 1 else told.head


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
        return [level_told(grades), *grades["warnings"], *to]
    if grades["stop"]:
        return [f"{grades['stop']['head'].rstrip('.')}. {grades['stop']['text']}"]
    if is_wall(answer):
        return [" ".join(grades["conclusion"]), *grades["warnings"], *to]
    return [" ".join(grades["conclusion"]), *to, *grades["warnings"]]


def _dug_to(answer: Answer, grades: GradesPart) -> list[str]:
    """How far a wall is dug past its ends, and to what its cut and fill are told."""
    edges = edges_of(answer)
    if edges is None or not is_wall(answer):
        return []
    told = [edges["ends"]["dug"]] if edges["ends"]["dug"] else []
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
    edges = groups_html(("outer", "inner")[: len(grades["sides"])], len(one), grades)
    body = ""
    for row in rows:
        cells = ""
        for top in _both(row):
            cells += f'<td class="big">{marked(top["shown"])}</td>'
            cells += "".join(f"<td>{marked(_BESIDE[name](top))}</td>" for name in beside) + '<td class="write"></td>'
        body += (
            f'<tr><th scope="row">{marked(row["name"])}</th>{cells}<td class="write">{marked(row["base"])}</td></tr>'
        )
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


def _order(pour: PourPart | None, signs: list[tuple[str, str]], *, dense: bool) -> str:
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
    base = base_line(pour, signs, dense=dense)
    base = f"<p>{bold(base)}</p>" if base else ""
    blanks = "".join(f'<p class="fill-in">{escape(say(f"forms.{name}"))}</p>' for name in ("plant", "ordered"))
    return (
        f'<div class="boxed order"><p class="most"><b>{marked(pour["number"])}</b> {escape(pour["unit"])}</p>'
        f"<p>{bold(pour['why'])}</p>{thin}<p>{bold(pour['low_text'])}</p>{base}{footing}{reach}{blanks}</div>"
    )
