"""The form sheet of a line of several pieces: where the line, its edges and joints are on the front; tops, boards, the
order and what is signed off on the back; a table that is long goes on over further sides."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape

from bowstring.drawings.lined import lined_svg
from bowstring.faces.build_parts import bold
from bowstring.faces.paper_flow import ROWS, Block, Text, sides
from bowstring.faces.paper_head import foot_html, head_html
from bowstring.faces.paper_pour import sign_off, signatures
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, lines, tall
from bowstring.report.forming.slopes import percent
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_lined import LinedPage, LinedPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say

ORDER = ("line", "edges", "joints", "boards", "grades", "pour")
"""The parts as they follow each other: the line, its edges and joints begin the front."""

_LEFT_OUT = ("boards.title", "lined.slopes", "lined.splices_head", "boards.buy_head", "pour.changes")
"""Titles of tables that no crew needs at the forms: the page and the long sheet have them."""

_SENTENCES = {"line": 9, "edges": 7, "joints": 3, "boards": 3, "pour": 3}
"""How many of a part's sentences stand on paper: they are in the order in which a crew needs them."""

_WIDE, _HIGH, _DRAWN = 680.0, 118.0, 156.0
_HEAD, _FOOT, _GAPS = 58.0, 24.0, 28.0
_SIGN_ROW, _SIGN_HEADS, _SIGNS, _ORDER = 21.0, 44.0, 64.0, 130.0


def lined_sides(answer: Answer, date: str) -> str:
    """Return the sides of a line's form sheet, empty for an arc alone and for a job that nobody may build yet."""
    part = answer["lined"]
    if part is None or answer["stops"]:
        return ""
    row, made = _fitted(answer, part)
    made += [""] * (2 - len(made))
    front_title, back_title = (say(f"lined.{name}_title", title=brief.title(answer)) for name in ("front", "back"))
    drawing = f'<div class="low slab">{lined_svg(answer, id="form-plan", wide=_WIDE, high=_HIGH)}</div>'
    boards = answer["boards"] is not None
    first = [
        head_html(answer, say("forms.front"), date, title=front_title, numbers=False),
        drawing,
        f'<div class="flow">{made[0]}</div>',
        foot_html(say("paper.safe_board") if boards else "", say("forms.turn_over")),
    ]
    second = [
        head_html(answer, say("forms.back"), date, title=back_title, numbers=False),
        f'<div class="flow">{made[1]}</div>',
        f'<div class="before-truck">{sign_off(_signed(answer))}{_order(part)}</div>',
        _safe_html(),
        signatures(),
        foot_html(say("forms.foot_grades") if answer["grades"] else "", brief.title(answer)),
    ]
    both = _side(say("forms.front"), row, first) + _side(say("forms.back"), row, second)
    return both + "".join(_more(answer, front_title, row, rest) for rest in made[2:])


def _fitted(answer: Answer, part: LinedPart) -> tuple[int, list[str]]:
    """The rows with which it takes the fewest sides, the largest of those, and what stands on each side."""
    beside = max(_SIGN_HEADS + _signs_tall(answer), _ORDER)
    low = beside + tall(_safe(), 14.0, 18.0, PAGE_WIDE - 30.0, 4.0) + _SIGNS
    rooms = (PAGE_TALL - _HEAD - _DRAWN - _FOOT - _GAPS, PAGE_TALL - _HEAD - low - _FOOT - _GAPS)
    tries = [(row, sides(list(_blocks(part)), row, rooms, PAGE_TALL - _HEAD - _GAPS)) for row in ROWS]
    return min(tries, key=lambda one: (len(one[1]), -one[0]))


def _signs_tall(answer: Answer) -> float:
    """How high the rows are that are signed off; what is long stands in two lines."""
    rows = _signed(answer)
    return sum(max(_SIGN_ROW, max(lines(what, 13.0, 170.0), lines(must, 13.0, 96.0)) * 16.0) for what, must in rows)


def _blocks(part: LinedPart) -> Iterator[Block]:
    """Everything in the order in which it is built; the tops at the staked arc's own stakes come last."""
    last = say("lined.at_stakes", piece=part["pieces"][part["at"] - 1]["name"])
    for key in ORDER:
        page = next(page for page in part["pages"] if page["key"] == key)
        yield Text(say(f"build.{key}"), title=True)
        yield from (block for block in _told(page) if isinstance(block, Text) or block["title"] != last)
    yield from (table for page in part["pages"] for table in page["tables"] if table["title"] == last)


def _told(page: LinedPage) -> Iterator[Block]:
    """What a page says on paper; of one that waits for an answer, or is stopped, that."""
    if page["stop"]:
        yield Text(page["short"], strong=True)
        yield Text(page["stop"])
        return
    yield Text(page["conclusion"] or page["short"], strong=True)
    if not page["conclusion"] and page["more"]:
        yield Text(page["more"])
    left_out = [say(key) for key in _LEFT_OUT]
    yield from (table for table in page["tables"] if table["title"] not in left_out)
    yield from (Text(line) for line in page["lines"][: _SENTENCES.get(page["key"], 0)])


def _side(label: str, row: int, parts: Sequence[str]) -> str:
    return f'<section class="side forms lined flow-{row}" aria-label="{escape(label)}">{"".join(parts)}</section>'


def _more(answer: Answer, title: str, row: int, inside: str) -> str:
    head = head_html(answer, say("forms.more"), "", title=title, numbers=False)
    return _side(say("forms.more"), row, [head, f'<div class="flow">{inside}</div>'])


def _signed(answer: Answer) -> list[tuple[str, str]]:
    """What is signed off before the truck comes: what it is, and what it must be."""
    part, joints, grades = answer["lined"], answer["joints"], answer["grades"]
    tolerance = answer["tolerance_shown"]
    kinks = [piece["kink_shown"] for piece in part["pieces"] if piece["kink_shown"]] if part else []
    rows = [(say("lined.sign_line"), say("forms.within", tolerance=tolerance) if tolerance else "")]
    rows += [(say("lined.sign_kinks"), "; ".join(kinks))] if kinks else []
    if answer["edges"] is not None:
        rows.append((say("lined.sign_width"), ""))
    if grades is not None and "rows" not in grades:
        most = say("lined.most", slope=percent(grades["steepest"]), limit=percent(grades["limit"]))
        rows += [(say("lined.sign_tops"), say("forms.as_above")), (say("lined.sign_slope"), most)]
    if joints is not None:
        rows.append((say("forms.sign_joints"), str(joints["count"] - 1)))
    rows.append((say("forms.sign_base"), ""))
    return rows + [(say(f"forms.sign_{name}"), "") for name in ("stakes", "sleeves", "services", "booked")]


def _order(part: LinedPart) -> str:
    """What is ordered, large, and where it was ordered."""
    page = next(page for page in part["pages"] if page["key"] == "pour")
    blanks = "".join(f'<p class="fill-in">{escape(say(f"forms.{name}"))}</p>' for name in ("plant", "ordered"))
    told = f"<p class=of-line>{bold(page['short'])}</p>" if page["state"] != "open" and not page["stop"] else ""
    return f'<div class="boxed order">{told}{blanks}</div>'


def _safe() -> list[str]:
    return [say(f"forms.safe_{name}") for name in ("governs", "cement", "line")]


def _safe_html() -> str:
    return f'<ul class="safe">{"".join(f"<li>{marked(text)}</li>" for text in _safe())}</ul>'
