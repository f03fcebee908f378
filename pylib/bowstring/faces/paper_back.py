"""The back of the paper: what was built, the story stick, the cautions, the job's link, and who signs for it."""

from __future__ import annotations

from html import escape

from bowstring.drawings.lath import lath_svg
from bowstring.faces.paper_head import of_line_html, old_html
from bowstring.faces.paper_sizes import PAGE_TALL, PAGE_WIDE, ROWS, fitting, tall
from bowstring.faces.paper_table import built_html
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.stakes import StakeRow
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.sheet.of_line import arc_title, with_others
from bowstring.words import say

MOST_BUILT, LEAST_BUILT = 24, 19
"""Rows of what was built that the back holds, both ends among them, where each is at least so high, pixels."""
CODE = 112.0
"""The link's code, its blank around it included: 29.6 mm on paper."""
_FIXED = 44.0 + 42.0 + 50.0 + 34.0  # head, the table's heads, who signs, gaps
_NOTES, _GAP = 70.0, 12.0  # two lines of notes; between them and the code
_INSIDE = PAGE_WIDE - 40.0
_ROOMY = 20
"""Rows that it holds anyhow; up to which they are rather higher than the job's own cautions many."""
_MORE_LINE = 22.0


def back_side(answer: Answer, link: str, date: str, *, stopped: bool, old: str = "") -> tuple[str, list[list[str]]]:
    """Return the back, and the rows of what was built that it has no room for; ``old``: see ``old_html``: its room
    is the notes'."""
    built = [] if stopped else built_rows(answer)
    stick = "" if stopped else _stick(answer)
    usual, own = brief.safe(answer), brief.own_cautions(answer)
    tail, tail_tall = _tail(link)
    fixed = _FIXED + (114.0 if stick else 0.0) + tail_tall
    fixed += tall([with_others(answer)], 16.0, 20.0, PAGE_WIDE) if with_others(answer) else 0.0
    fixed += tall(answer["note"].split("\n"), 14.0, 17.0, _INSIDE, 2.0) if answer["note"] else 0.0
    fixed += tall(usual, 15.0, 18.0, _INSIDE, 4.0)
    most = MOST_BUILT if (PAGE_TALL - fixed - _MORE_LINE) / MOST_BUILT >= LEAST_BUILT else _ROOMY
    shown, rest = built[:most], built[most:]
    least = fixed + len(shown) * (ROWS[-3] if len(shown) <= _ROOMY else LEAST_BUILT)
    told = _within(own, PAGE_TALL - least)
    row = fitting(ROWS[2:], (PAGE_TALL - fixed - tall(told, 14.0, 17.0, _INSIDE, 4.0)) / max(len(shown), 1))
    title = say("paper.built_title", title=arc_title(answer))
    day = f"<span>{escape(date)}</span>" if date else ""
    long = "short" if len(title) <= 40 else "longest"
    parts = [
        f'<div class="head"><h2 class="{long}">{marked(title)}</h2>'
        f'<p class="which">{day}<b>{escape(say("paper.back"))}</b></p>{of_line_html(answer)}{old_html(old)}</div>',
        built_table(answer, shown) if shown else "",
        stick,
        _cautions(usual, told, len(own) - len(told)),
        f'<p class="note">{marked(answer["note"])}</p>' if answer["note"] else "",
        tail,
        _signs(),
    ]
    label = escape(say("paper.back"))
    return f'<section class="side back row-{row}" aria-label="{label}">{"".join(parts)}</section>', rest


def _within(own: list[str], room: float) -> list[str]:
    """As many of a job's own cautions as there is room for, less where a line has to say how many more."""
    if tall(own, 14.0, 17.0, _INSIDE, 4.0) <= room:
        return own
    told: list[str] = []
    for text in own:
        if tall([*told, text], 14.0, 17.0, _INSIDE, 4.0) > room - 22.0:
            break
        told.append(text)
    return told


def built_rows(answer: Answer) -> list[list[str]]:
    """Return each stake with where it must be, along the string from A and square off it; after that, as built, where
    it stands if something else was got at it."""
    rows = []
    for stake in answer["stakes"]:
        moved = "meant" in stake
        must = stake["meant"] if moved else stake
        on_drawing = list(must["drawing_shown"]) if answer["site"]["axes"] else []
        built = [stake["x_shown"], stake["y_shown"], _off_by(stake)] if moved else []
        rows.append([stake["name"], must["x_shown"], must["y_shown"], *on_drawing, *built])
    return rows


def _off_by(stake: StakeRow) -> str:
    off = stake["meant"]["off_shown"]
    return say(f"paper.off_{'on' if not off else 'out' if stake['miss'] > 0 else 'in'}", off=off)


def built_table(answer: Answer, rows: list[list[str]]) -> str:
    """Return the table of what was built; with the drawing's own coordinates in place of grades where it has them."""
    axes = answer["site"]["axes"]
    names = [say(f"paper.{name}") for name in ("stake", "along", "square_off")]
    built = [say(f"paper.{name}") for name in ("along", "square_off", "off_by")]
    if axes:
        drawing = [say(f"table.drawing_{place}_{axes}") for place in ("first", "second")]
        head = [(say("paper.built_must"), 3), (say("paper.built_drawing"), 2), (say("paper.built_is"), 3)]
        return built_html(head, [*names, *drawing, *built], rows, 5)
    grade = [say(f"paper.{name}") for name in ("stake_top", "cut_fill")]
    head = [(say("paper.built_must"), 3), (say("paper.built_is"), 3), (say("paper.built_grade"), 2)]
    return built_html(head, [*names, *built, *grade], rows, 3)


def _stick(answer: Answer) -> str:
    svg = lath_svg(answer, id="paper-stick")
    return f'<div class="lath"><h3>{marked(say("paper.stick"))}</h3>{svg}</div>' if svg else ""


def _cautions(usual: list[str], own: list[str], more: int) -> str:
    first = "".join(f"<li>{marked(text)}</li>" for text in usual)
    then = "".join(f'<li class="own">{marked(text)}</li>' for text in own)
    last = (
        f'<li class="own">{marked(say("paper.safe_one_more" if more == 1 else "paper.safe_more", count=more))}</li>'
        if more
        else ""
    )
    return f'<ul class="safe">{first}{then}{last}</ul>'


def _tail(link: str) -> tuple[str, float]:
    """Return the job's link, with its code where that can be scanned off paper, and room for notes; and how high they
    stand at least."""
    from bowstring.drawings.qr import MOST_PRINTED, code_of, qr_svg

    notes = f'<div class="notes">{escape(say("paper.notes"))}</div>'
    if not link:
        return notes, _NOTES
    code = code_of(link, MOST_PRINTED)
    told = say("paper.scan" if code else "paper.no_code")
    text = f'<p class="link">{escape(told)} <span>{escape(link)}</span></p>'
    wide = PAGE_WIDE - (CODE + _GAP if code else 0.0)
    high = tall([f"{told} {link}"], 12.0, 15.0, wide) + 10.0 + _NOTES
    if code is None:
        return f'<div class="tail">{text}{notes}</div>', high
    return f'<div class="tail coded">{text}{qr_svg(code, id="paper-code")}{notes}</div>', max(high, CODE)


def _signs() -> str:
    blanks = "".join(f"<p>{escape(say(f'paper.{name}'))}</p>" for name in ("by", "checked", "date", "tape"))
    return f'<div class="signs">{blanks}</div>'
