"""The paper face: one sheet, front and back, that a crew carries; further pages only for more stakes than it holds."""

from __future__ import annotations

from dataclasses import dataclass
from html import escape

from bowstring.drawings.lowplan import NARROW, low_plan_svg
from bowstring.drawings.signs import line_sign
from bowstring.faces.located import BOX, ticket_html, ticket_text
from bowstring.faces.paper_back import back_side
from bowstring.faces.paper_forms import forms_sides
from bowstring.faces.paper_head import duo_html, foot_html, head_html, turns_tall
from bowstring.faces.paper_more import more_sides
from bowstring.faces.paper_sizes import MOST_ROWS, PAGE_WIDE, Sizes, lines, sizes, tall
from bowstring.faces.paper_table import checks_html, tables_html
from bowstring.faces.unread import unread_told
from bowstring.report.forms.answer import Answer
from bowstring.sheet import brief
from bowstring.sheet.firsts import First, firsts
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import arc_of, arc_title, with_others
from bowstring.sheet.setting import Setting, settings, split
from bowstring.words import say

_STOP, _STOP_ROOM = (19, 16, 13), 330.0
DENSE = 10
"""Rows over which what stands around the tables is in a smaller type."""
MANY = 12
"""Rows up to which it stands beside the hand to which hand the curve turns; of more where all have room even so."""
_CHECK = 270.0
_NARROW_TALL = 190.0
_HALF = (PAGE_WIDE - 12.0) / 2
_LAST = 24.0
_FIXED = _LAST + 50.0 + 10.0  # the last line, the gaps between the parts, the frame of the hand's box


def paper_html(
    answer: Answer,
    link: str = "",
    date: str = "",
    *,
    marks_in: bool = False,
    all_stand: bool = False,
    old: tuple[str, str] = ("", ""),
    unread: str = "",
) -> str:
    """Return the paper of an answer as an ``article``; every text in it is escaped.

    ``link`` is the job's own, ``date`` the day that it is printed, as a text; ``marks_in``: the marks of the services
    are on the ground; ``all_stand``: every stake stands, so that the front tells where no check was read; ``unread``:
    what it says then of a line of several pieces; ``old``: what the front says of stakes that stand by old numbers, and
    what every other side does, in a line. Where something has to be settled before anybody builds, the front says so
    and no number of a step stands on it.

    Raises ``ValueError`` when a figure can't be drawn.
    """
    stopped = bool(answer["stops"])
    tables: list[Setting] = [] if stopped else settings(answer)
    nothing: list[Setting] = []
    told, in_short = old
    marks = _Marks(marks_in, all_stand, told, unread)
    front, rest = (_stopped(answer, date), nothing) if stopped else _front(answer, tables, date, marks)
    back, built = back_side(answer, link, date, stopped=stopped, old="" if stopped else in_short)
    forms = forms_sides(answer, date, in_short)
    more = more_sides(answer, rest, built, even=bool(forms), old=in_short)
    return f'<article class="paper">{front}{back}{more}{forms}</article>'


@dataclass(frozen=True)
class _Marks:
    """What is on the ground already: the marks of the services, every stake; and what is said of those that stand by
    old numbers, and of a line's checks that nobody read."""

    services: bool
    stakes: bool
    old: str
    unread: str = ""


def _told(answer: Answer, there: _Marks) -> list[str]:
    """What stands under the tables: how far off the stakes are, what was read of the checks, their stations."""
    unread = (there.unread or unread_told(answer)) if there.stakes else ""
    told = (brief.stands_off(answer), unread, brief.reads_out(answer), brief.stations(answer).replace("*", ""))
    return [text for text in told if text]


def _front(answer: Answer, tables: list[Setting], date: str, there: _Marks) -> tuple[str, list[Setting]]:
    """The front, and the tables' rows that it has no room for."""
    before, found = firsts(answer), brief.checks(answer)
    ticket = ticket_text(answer)
    services = say("paper.ticket", ticket=ticket) if ticket else say("paper.services")
    count = sum(len(table.rows) for table in tables)
    dense = count > DENSE
    fixed = _FIXED + _firsts_tall(before, services, dense)
    fixed += tall((" ".join(table.how) for table in tables), 14.0, 18.0, PAGE_WIDE) + 30.0 * len(tables) + 34.0
    fixed += tall([_foot(answer)], 14.0, 18.0, PAGE_WIDE - 215.0) + 4.0
    fixed += sum(18.0 * (lines(one.what, 17.0, _CHECK) - 1) for one in found)
    fixed += tall(brief.ties(answer), 14.0, 18.0, PAGE_WIDE)
    told = _told(answer, there)
    old = [there.old] if there.old else []
    fixed += sum(tall([text], 14.0, 18.0, PAGE_WIDE) for text in told)
    fixed += max(0.0, tall(old, 14.0, 18.0, PAGE_WIDE, 7.0) - _LAST)  # nobody springs a board on stakes that move
    turning, fitted = _fitted(answer, tables, len(found) or 1, fixed)
    shown, rest = split(tables, min(MOST_ROWS, fitted.rows))
    on = f'<p class="goes-on">{marked(say("paper.goes_on", page=3))}</p>' if rest else ""
    parts = [
        head_html(answer, say("paper.front"), date),
        *(f'<p class="goes-on old">{marked(text)}</p>' for text in old),
        _duo(answer, turning),
        _plan(answer, fitted),
        _firsts(before, ticket_html(answer, marks_in=there.services)),
        tables_html(shown),
        on,
        *(f'<p class="goes-on">{marked(text)}</p>' for text in told),
        checks_html(found, brief.no_check(answer) if not found else ""),
        "" if old else f'<p class="last">{BOX}<span>{marked(brief.last(answer))}</span></p>',
        foot_html(_foot(answer), say("paper.turn_over")),
    ]
    dense_class = "dense " if dense else ""
    fill = "fill " if not rest else ""
    classes = f"side front {dense_class}{fill}row-{fitted.row} big-{fitted.big} plan-{fitted.plan}"
    return f'<section class="{classes}" aria-label="{escape(say("paper.front"))}">{"".join(parts)}</section>', rest


def _fitted(answer: Answer, tables: list[Setting], others: int, fixed: float) -> tuple[bool, Sizes]:
    """Whether it stands beside the hand to which hand the curve turns, and the sizes of all: where that would send rows
    to a further page, it doesn't."""
    count = sum(len(table.rows) for table in tables)
    fitted = sizes(tables, others, fixed + _top_tall(answer, count > DENSE, True))
    if count <= MANY or fitted.rows >= count:
        return True, fitted
    return False, sizes(tables, others, fixed + _top_tall(answer, count > DENSE, False))


def _foot(answer: Answer) -> str:
    """The front's last line: which arc of a line it is of, how true the stakes have to be."""
    arc = arc_of(answer)
    return say("paper.foot_of_arc", arc=arc, told=brief.foot(answer)) if arc else brief.foot(answer)


def _stopped(answer: Answer, date: str) -> str:
    """The front of a job that can't be built yet: why, and what settles it."""
    stops = "".join(f"<li>{marked(text)}</li>" for text in answer["stops"])
    out = list(brief.way_out(answer))
    ways = "".join(f'<p class="way">{marked(text)}</p>' for text in out)
    told = [*answer["stops"], *out]
    size = next((one for one in _STOP if tall(told, one, one * 1.3, 590.0, 8.0) <= _STOP_ROOM), _STOP[-1])
    plan = 190 if size == _STOP[0] else 110
    blanks = "".join(f'<p class="blank">{escape(say(f"paper.stop_{part}"))}</p>' for part in ("asked", "answer"))
    parts = [
        head_html(answer, say("paper.front"), date, numbers=False),
        f'<div class="stop said-{size}"><strong>{escape(say("paper.stop"))}</strong>'
        f"<p>{marked(say('paper.stop_do'))}</p>"
        f"<ul>{stops}</ul>{ways}</div>",
        _duo(answer, True),
        _plan(answer, Sizes(0, 0, plan, 0)),
        f'<div class="asked">{blanks}</div>',
        foot_html("", say("paper.turn_over_stopped")),
    ]
    label = escape(say("paper.front"))
    return f'<section class="side front stopped plan-{plan}" aria-label="{label}">{"".join(parts)}</section>'


def _top_tall(answer: Answer, dense: bool, turning: bool) -> float:
    """How high the head and the boxes of line and hand stand."""
    title = arc_title(answer)
    size = 30.0 if len(title) <= 34 else 23.0 if len(title) <= 52 else 18.0
    head = lines(title, size, PAGE_WIDE - 110.0) * size * 1.1 + 34.0
    measures = lines("    ".join(brief.measures(answer)), 16.0, PAGE_WIDE)
    head += 30.0 if brief.drawing(answer) else 0.0
    told = tall(brief.line(answer), *((13.0, 15.0, 146.0) if dense else (14.5, 17.4, 192.0)))
    size, leading, room = (14.0, 16.8, 252.0) if dense else (16.0, 19.2, 206.0)
    standing = tall([brief.stand(answer)], size, leading, room) + 38.0 + (turns_tall(answer, room) if turning else 0.0)
    arc = with_others(answer)
    head += lines(arc, 16.0, PAGE_WIDE) * 20.0 if arc else 0.0
    return head + (measures - 1) * 20.0 + max(told, standing, 66.0)


def _duo(answer: Answer, turning: bool) -> str:
    """What the line is, and on which hand the curve; where many stakes leave no room, not to which it turns."""
    line = "".join(f"<p>{marked(text)}</p>" for text in brief.line(answer))
    return duo_html(answer, f"{line_sign(answer, id='paper-line')}<div>{line}</div>", "paper-hand", turning=turning)


def _plan(answer: Answer, fitted: Sizes) -> str:
    svg = low_plan_svg(answer, id="paper-plan", height=float(fitted.plan))
    told = " ".join(brief.ties(answer))
    ties = f'<p class="ties">{marked(" ".join([say("paper.ties"), told]))}</p>' if told else ""
    narrow = low_plan_svg(answer, id="paper-plan-narrow", height=_NARROW_TALL, wide=NARROW)
    return f'<div class="low">{svg}</div><div class="low narrow">{narrow}</div>{ties}'


def _firsts(before: list[First], ticket: str) -> str:
    steps = "".join(f"<li>{BOX}<b>{one.number}</b><span>{marked(one.text)}</span></li>" for one in before)
    return f'<ul class="firsts {_columns(before)}">{ticket}{steps}</ul>'


def _columns(before: list[First]) -> str:
    """Three boxes side by side where all are short, otherwise two."""
    return "three" if len(before) <= 2 and all(len(one.text) < 64 for one in before) else "two"


def _firsts_tall(before: list[First], services: str, dense: bool) -> float:
    ticket = f"{services} {say('paper.marks_in')}" + " " * 26
    columns, rooms = (3, (186.0, 158.0, 158.0)) if _columns(before) == "three" else (2, (_HALF - 56.0,) * 2)
    texts = [ticket, *(one.text for one in before)]
    rows = [texts[start : start + columns] for start in range(0, len(texts), columns)]
    size, leading = (13.0, 15.2) if dense else (15.0, 17.5)
    return sum(
        max(24.0, *(lines(text, size, room) * leading for text, room in zip(row, rooms, strict=False))) + 6.0
        for row in rows
    )
