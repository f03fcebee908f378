"""The form sheet of a line of several pieces, one sheet: what is set on its front; tops, slopes, the order, what to buy
and what is signed off on its back. Tables that neither has room for stand on further sides."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape
from itertools import product

from bowstring.drawings.lined import lined_svg
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_flow import ROWS, Band, has_room, html_of, placed
from bowstring.faces.paper_head import foot_html, head_html, old_tall
from bowstring.faces.paper_lined_tables import bands_of, bought, hubs_told, slopes_html, splices_told, table_of
from bowstring.faces.paper_signed import sign_off, signatures, standing_rows
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, lines, tall, width
from bowstring.report.alone import called
from bowstring.report.forming.slopes import percent
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_lined import LinedPart, LinedSheet, LinedTable
from bowstring.report.forms.checks import CheckRow
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

_WIDE, _HIGH = 680.0, 118.0
DRAWN = (150, 120, 100, 84)
"""Heights of the drawing that the style has for these sides."""

_HEAD, _FOOT, _GAP = 44.0, 22.0, 7.0
_FOOT_LINE, _FOOT_GAP = 17.0, 12.0
_TITLE_ROOM, _FRAME = 440.0, 5.0
_STRONG, _STRONG_LINE, _TOLD, _TOLD_LINE = 14.5, 17.0, 13.0, 15.5
_BOX_SIDES, _BOX_OVER, _ORDER_WIDE = 24.0, 14.0, 244.0
_SIGN_ROW, _SIGN_HEADS, _SIGN_LINE, _SIGNS = 19.0, 40.0, 15.0, 46.0
_ORDER_HEAD, _ORDER_ROW, _ORDER_LINE, _ORDER_FIXED = 48.0, 22.0, 14.0, 80.0
_CALL_WIDE = (48.0, 60.0, 72.0, 50.0)
"""What each column has where it says when to call."""
_SIGN_WIDE = (222.0, 92.0)
"""What a name has in its line where it is signed off, and what it must be."""
ONE_SHEET = 2
"""Sides."""

_MOST_SIGNED, _SOME_SIGNED = 5, 4
"""At most so many of the distances past the line's joins are signed off: more have no room on a long line's side. Then
so many where all of them would take a side more: each catches what no other does, and the Checks have the rest."""
_SAFE, _SAFE_LINE = 13.0, 15.5
_BOLD, _DIGITS = 0.9, 0.96
"""Of the room of a plain text what a bold one has, and one that is half numbers."""

Told = tuple[str, float]
"""HTML, and how high it stands, pixels."""


def lined_sides(answer: Answer, date: str, old: str = "") -> str:
    """Return the sides of a line's form sheet, empty for an arc alone and for a job that nobody may build yet; ``old``:
    what each says of stakes that stand by old numbers."""
    part, sheet = answer["lined"], answer["lined_sheet"]
    if part is None or sheet is None or answer["stops"]:
        return ""
    count = len(answer["far_checks"]["rows"])
    full = _Sheet(answer, part, sheet, count if count <= _MOST_SIGNED else _SOME_SIGNED, old)
    if full.count <= ONE_SHEET or not count:
        return full.html(date)
    some = [_Sheet(answer, part, sheet, most, old) for most in (_SOME_SIGNED, 0) if most < count]
    return min([full, *some], key=lambda one: one.count).html(date)  # of as many sides the first, which has the most


@dataclass(frozen=True)
class _Fit:
    """How the tables are set: the height of a row, of the drawing, whether with hundredths of a foot; what stands on
    each side."""

    row: int
    drawn: int
    feet: bool
    made: list[list[Band]]

    def html(self, side: int) -> str:
        """The tables of a side, from 0."""
        return "".join(html_of(band, self.row) for band in self.made[side])


class _Sheet:
    """The form sheet in the making."""

    def __init__(self, answer: Answer, part: LinedPart, sheet: LinedSheet, most: int, old: str) -> None:
        self.answer, self.part, self.sheet, self.old = answer, part, sheet, old
        self.pages = {page["key"]: page for page in part["pages"]}
        self.lines = {paper["key"]: paper["lines"] for paper in sheet["parts"]}
        self.titles = tuple(say(f"lined.{name}_title", title=brief.title(answer)) for name in ("front", "back"))
        self.signed = _signed(answer, sheet, most)
        self.front, self.back = self._front(), self._back()
        self.fit = self._fitted(self.front, self.back)
        self.count = len(self.fit.made)

    def html(self, date: str) -> str:
        front, back, fit, count = self.front, self.back, self.fit, self.count
        drawing = lined_svg(self.answer, id="form-plan", wide=_WIDE, high=_HIGH)
        which = say("lined.sides", side=say("forms.front"), count=count)
        above, below = front
        first = [
            head_html(self.answer, which, date, title=self.titles[0], numbers=False, old=self.old),
            f'<div class="low slab drawn-{fit.drawn}">{drawing}</div>',
            above[0],
            f'<div class="flow">{fit.html(0)}</div>',
            below[0],
            foot_html(*self._foot()),
        ]
        above, below = back
        second = [
            head_html(self.answer, say("forms.back"), date, title=self.titles[1], numbers=False, old=self.old),
            above[0],
            f'<div class="flow">{fit.html(1)}</div>',
            below[0],
            signatures(),
            foot_html(say("forms.foot_grades") if self.answer["grades"] else "", brief.title(self.answer)),
        ]
        both = _side(say("forms.front"), fit.row, first) + _side(say("forms.back"), fit.row, second)
        return both + "".join(self._more(fit, number) for number in range(3, count + 1))

    def _foot(self) -> tuple[str, str]:
        """The front's last line, both ends of it: where the caution has no room beside it, the number of sides says
        that the sheet is turned over."""
        left, right = say("paper.safe_board") if self.answer["boards"] is not None else "", say("forms.turn_over")
        beside = PAGE_WIDE - width(right, 14.0) - _FOOT_GAP
        return left, right if lines(left, 14.0, beside) == 1 else ""

    def _more(self, fit: _Fit, number: int) -> str:
        which = say("lined.side", side=say("forms.more"), number=number, count=len(fit.made))
        head = head_html(self.answer, which, "", title=self.titles[0], numbers=False, old=self.old)
        return _side(which, fit.row, [head, f'<div class="flow">{fit.html(number - 1)}</div>'])

    def _fitted(self, front: tuple[Told, Told], back: tuple[Told, Told]) -> _Fit:
        """The fewest sides; among those with the hundredths, the largest rows, the largest drawing."""
        heads = [
            _HEAD + old_tall(self.old) + max(0.0, lines(title, 23.0, _TITLE_ROOM) - 1) * 26.0 for title in self.titles
        ]
        left, right = self._foot()
        foot = (
            _FOOT + (lines(left, 14.0, PAGE_WIDE - (width(right, 14.0) + _FOOT_GAP if right else 0.0)) - 1) * _FOOT_LINE
        )
        both = {feet: [*self._rows_of(feet)] for feet in (True, False)}
        best: tuple[tuple[int, bool, int, int], list[list[Band]]] | None = None
        for feet, drawn in product((True, False), DRAWN):
            rooms = (
                PAGE_TALL - heads[0] - drawn - _FRAME - front[0][1] - front[1][1] - foot - 5 * _GAP,
                PAGE_TALL - heads[1] - back[0][1] - back[1][1] - _SIGNS - _FOOT - 5 * _GAP,
            )
            for row, bands in both[feet]:
                made = placed(bands, row, rooms, PAGE_TALL - heads[0] - 2 * _GAP)
                key = (len(made), not feet, -row, -drawn)
                if best is None or key < best[0]:
                    best = key, made
        assert best is not None  # there is always a row
        (_count, no_feet, row, drawn), made = best
        return _Fit(-row, -drawn, not no_feet, made)

    def _rows_of(self, feet: bool) -> Iterator[tuple[int, list[Band]]]:
        """Yield each height of a row that has room, with its tables: where pieces begin first in their own."""
        tried = [bands_of(self.part, self.sheet, feet=feet, apart=apart) for apart in (True, False)]
        found = [(row, bands) for bands in tried for row in ROWS if has_room(bands, row)]
        yield from found or [(ROWS[-1], tried[0])]

    def _front(self) -> tuple[Told, Told]:
        """What stands over the tables of the front, and under them."""
        parts = [f"{self.pages['line']['short']}.", self._edges(), self.part["concrete"]]
        strong = " ".join(part.replace("*", "") for part in parts if part)
        boards = [self._strong("boards"), *splices_told(self.part), *self.lines["boards"]]
        told = [
            ("edges", [*self.lines["edges"], hubs_told(self.part)]),
            ("boards", boards),
            ("line", self.lines["line"]),
        ]
        return _strong(strong), _boxed(
            [(called(self.answer, key), " ".join(texts)) for key, texts in told if any(texts)]
        )

    def _edges(self) -> str:
        """How wide and how thick the slab is, or what its edges wait for."""
        width, depth = self.sheet["width_shown"], self.sheet["depth_shown"]
        if self.answer["edges"] is None:
            return self._strong("edges")
        if self.part["wall_shown"]:
            return self.part["wall_shown"]
        return say("lined.slab_thick", width=width, depth=depth) if depth else say("lined.slab_wide", width=width)

    def _back(self) -> tuple[Told, Told]:
        """What stands over the tables of the back, and under them."""
        above = [
            _strong(self._strong("grades")),
            _plain(" ".join(self.lines["grades"])),
            slopes_html(self.part),
            _plain(" ".join([f"*{self._strong('joints')}*", *self.lines["joints"]])),
        ]
        buy = bought(self.part, self.sheet)
        below = [
            _plain(say("lined.to_buy", what=buy)) if buy else ("", 0.0),
            *self._before_truck(),
            _safe(wall=bool(self.sheet["wall_signs"])),
        ]
        return _together(above), _together(below)

    def _strong(self, key: str) -> str:
        """What a part comes to; of one that waits for an answer, or is stopped, that."""
        page = self.pages[key]
        if page["stop"]:
            return f"{page['short']}. {page['stop']}"
        if page["conclusion"]:
            return page["conclusion"].replace("*", "")
        more = page["more"].replace("*", "")
        parted = "; " if more.lstrip("~")[:1].islower() else ". "  # a row's second fact may go on with its first
        told = parted.join(text for text in (page["short"].replace("*", ""), more) if text)
        return told.removesuffix(".") + "."

    def _before_truck(self) -> list[Told]:
        """What is signed off, beside it the order with as many of its sentences as have room there; then the rest."""
        high = _SIGN_HEADS + sum(_sign_tall(what, must) for what, must in self.signed)
        told, reach = list(self.lines["pour"]), table_of(self.part, "reach")
        box = _ORDER_FIXED + tall([self._strong("pour")], 20.0, 24.0, _ORDER_WIDE)
        if reach:
            box += tall([reach["title"]], _STRONG, _STRONG_LINE, _ORDER_WIDE) + _ORDER_HEAD
            box += sum(_call_tall(row) for row in reach["rows"])
        inside = []
        while told and box + _plain_tall(told[0], _ORDER_WIDE) <= high:
            box += _plain_tall(told[0], _ORDER_WIDE)
            inside.append(told.pop(0))
        order = _order(self._strong("pour"), inside, reach)
        both = f'<div class="before-truck">{sign_off(self.signed)}{order}</div>', max(high, box)
        return [both, *([_plain(" ".join(told))] if told else [])]


def _side(label: str, row: int, parts: Sequence[str]) -> str:
    return f'<section class="side forms lined flow-{row}" aria-label="{escape(label)}">{"".join(parts)}</section>'


def _together(told: Sequence[Told]) -> Told:
    """What stands under each other, with the gaps between."""
    shown = [one for one in told if one[0]]
    return "".join(html for html, _high in shown), sum(high for _html, high in shown) + _GAP * len(shown)


def _strong(text: str) -> Told:
    return f"<p class=strong>{bold(text)}</p>", tall([text], _STRONG, _STRONG_LINE, PAGE_WIDE * _BOLD)


def _plain(text: str) -> Told:
    return (f"<p class=told>{bold(text)}</p>", _plain_tall(text, PAGE_WIDE)) if text else ("", 0.0)


def _plain_tall(text: str, room: float) -> float:
    return tall([text], _TOLD, _TOLD_LINE, room)


def _boxed(told: Sequence[tuple[str, str]]) -> Told:
    """What is done at the forms, each part's sentences after its name."""
    if not told:
        return "", 0.0
    rows = "".join(f"<li><b>{marked(name)}.</b> {bold(text)}</li>" for name, text in told)
    high = sum(_plain_tall(f"{name}. {text}", (PAGE_WIDE - _BOX_SIDES) * _DIGITS) for name, text in told)
    return f'<ul class="form-told">{rows}</ul>', high + _BOX_OVER


def _sign_tall(what: str, must: str) -> float:
    """How high a row is that is signed off; what is long stands in two lines."""
    return max(_SIGN_ROW, max(lines(what, 13.0, _SIGN_WIDE[0]), lines(must, 13.0, _SIGN_WIDE[1])) * _SIGN_LINE + 1.0)


def _call_tall(row: Sequence[str]) -> float:
    """How high a row is that says when to call: the load and what is there may stand in several lines."""
    most = max(lines(cell, 13.0, room) for cell, room in zip(row, _CALL_WIDE, strict=True))
    return max(_ORDER_ROW, most * _ORDER_LINE + 2.0)


def _order(strong: str, inside: Sequence[str], reach: LinedTable | None) -> str:
    """What is ordered, large, when to call, and where it was ordered."""
    blanks = "".join(f'<p class="fill-in">{escape(say(f"forms.{name}"))}</p>' for name in ("plant", "ordered"))
    told = "".join(f"<p>{bold(text)}</p>" for text in inside)
    call = ""
    if reach:
        heads = "".join(f'<th scope="col">{bold(head)}</th>' for head in reach["heads"])
        rows = "".join(
            f'<tr><th scope="row">{bold(out)}</th><td>{bold(plan)}</td><td class="big">{bold(short)}</td>'
            f"<td>{bold(there)}</td></tr>"
            for out, plan, short, there in reach["rows"]
        )
        table = f"<table><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>"
        call = f"<h3>{bold(reach['title'])}</h3>{table}"
    return f'<div class="boxed order"><p class="of-line">{bold(strong)}</p>{told}{call}{blanks}</div>'


def _signed(answer: Answer, sheet: LinedSheet, most: int) -> list[tuple[str, str]]:
    """What is signed off before the truck comes: what it is, and what it must be; so many of the distances at most that
    prove the whole line."""
    part, joints = answer["lined"], answer["joints"]
    tolerance = answer["tolerance_shown"]
    kinks = [piece["kink_shown"] for piece in part["pieces"] if piece["kink_shown"]] if part else []
    rows = [(say("lined.sign_line"), say("forms.within", tolerance=tolerance) if tolerance else "")]
    rows += [(say("lined.sign_kinks"), "; ".join(kinks))] if kinks else []
    for row in _spread(answer["far_checks"]["rows"], most):
        must = say("lined.sign_must", must=row["shown"], limit=row["limit_shown"])
        rows.append((say("face_checks.straight", start=row["from"], end=row["to"]), must))
    wall = bool(sheet["wall_signs"])
    rows += [(one["what"], one["must"]) for one in sheet["wall_signs"]]
    if answer["edges"] is not None and not wall:
        rows.append((say("lined.sign_width"), sheet["width_shown"]))
    rows += _tops_signed(answer, wall=wall)
    if joints is not None:
        rows.append((say("walled.joints" if wall else "forms.sign_joints"), str(joints["count"] - 1)))
    rows += [] if wall else [(say("forms.sign_base"), sheet["depth_shown"])]
    rows += [*_other_depths(sheet), *standing_rows(answer)]
    last = ("sleeves", "services", "booked") if wall else ("stakes", "sleeves", "services", "booked")
    return rows + [(say(f"forms.sign_{name}"), "") for name in last]


def _other_depths(sheet: LinedSheet) -> Iterator[tuple[str, str]]:
    """A thick edge, an apron, and the strip at ends that meet old concrete."""
    if sheet["edge_signed"]:
        yield say("forms.sign_edge"), sheet["edge_signed"]
    if sheet["apron_shown"]:
        yield say("deep.sign_apron"), sheet["apron_shown"]
    yield from ((one["what"], one["must"]) for one in sheet["strip_signs"])


def _spread(rows: Sequence[CheckRow], most: int) -> list[CheckRow]:
    """So many rows at most, from the first to the last all along the line, or the last alone."""
    if len(rows) <= most:
        return list(rows)
    return [rows[(at + 1) * len(rows) // most - 1] for at in range(most)]


def _tops_signed(answer: Answer, *, wall: bool) -> list[tuple[str, str]]:
    """The tops and the steepest slope; of a wall, on which nobody walks, the tops."""
    grades = answer["grades"]
    if grades is None or "rows" in grades:
        return []
    steepest = say("lined.most", slope=percent(grades["steepest"]), limit=percent(grades["limit"]))
    tops = [(say("lined.sign_tops"), say("lined.as_listed"))]
    return tops if wall else [*tops, (say("lined.sign_slope"), steepest)]


def _safe(*, wall: bool) -> Told:
    told = [say(f"forms.safe_{name}") for name in ("governs", "cement_wall" if wall else "cement", "line")]
    rows = "".join(f"<li>{marked(text)}</li>" for text in told)
    return f'<ul class="safe">{rows}</ul>', tall(told, _SAFE, _SAFE_LINE, PAGE_WIDE - 36.0, 4.0)
