"""A lesson on paper: one page for the learner with blanks, one with the answers; and a page for string and chalk."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape

from bowstring.sheet.markup import marked
from bowstring.wall.chalk import chalk_html
from bowstring.wall.exercises import EXERCISES
from bowstring.wall.figures import kick_of, sheets_of
from bowstring.wall.filled import BLANK_END, BLANK_START, lines_of, table_of
from bowstring.wall.learner import for_learner
from bowstring.wall.shape import Given
from bowstring.wall.suits import for_lesson
from bowstring.words import say

CHALK = 7
"""The number of the page with string and chalk, after the six lessons."""
_CROP = ("0 0 1280 720", "0 126 1280 586")
"""A picture as it stands on the wall, and without the lines over it."""
_TABLED = (4,)
"""Lessons with a table: their picture is smaller."""


def handout_html(number: int, given: Given | None) -> str:
    """Return a handout's pages as HTML, every text escaped.

    Raises ``ValueError`` for a handout that there isn't.
    """
    if number == CHALK:
        return chalk_html(given or Given.own())
    if number not in EXERCISES:
        raise ValueError(f"no such handout: {number!r}")
    numbers = for_lesson(number, given).given
    return "".join(_page(number, numbers, answers) for answers in (False, True))


def _page(lesson: int, given: Given, answers: bool) -> str:
    kind = ("answers" if answers else "asked") + (" tabled" if lesson in _TABLED else "")
    return f'<section class="leaf {kind}">{"".join(_parts(lesson, given, answers))}</section>'


def _parts(lesson: int, given: Given, answers: bool) -> Iterator[str]:
    (_word, _class), (name, _other) = kick_of(lesson)
    blank = '<i class="blank name"></i>'
    right = f"<b>{escape(say('handout.answers'))}</b>" if answers else f"{escape(say('handout.name'))} {blank}"
    yield f"<header><h1>{lesson}. {escape(name)}</h1><p>{right}</p></header>"
    sheet = sheets_of(lesson, given)[0]
    svg = sheet.svg.replace(f'viewBox="{_CROP[0]}"', f'viewBox="{_CROP[1]}"')
    question = sheet.strokes[0]["sentence"]
    svg = svg.replace(f'"wall-{lesson}', f'"{"a" if answers else "q"}-{lesson}')
    yield svg if answers else for_learner(svg, question)
    yield f"<h2>{marked(question)}</h2><ol>"
    for line in lines_of(lesson, given):
        yield f"<li>{_filled(line, answers)}</li>"
    yield "</ol>"
    if lesson in _TABLED:
        yield _table(table_of(given), answers)
    exercise = EXERCISES[lesson](given.tape.feet)
    yield f"<h2>{escape(say('handout.exercise'))}</h2>"
    yield "".join(f"<p>{marked(line)}</p>" for line in exercise.question)
    worked = "".join(f"<p>{marked(step)}</p>" for step in exercise.steps) if answers else ""
    came = f'<b class="given">{marked(exercise.answer)}</b>' if answers else '<i class="blank name"></i>'
    yield f'<div class="work">{worked}</div><p>{escape(say("handout.answer"))} {came}</p>'


def _filled(line: str, answers: bool) -> str:
    """A line with its blanks: filled in on the page with the answers."""
    html = []
    for place, piece in enumerate(line.split(BLANK_START)):
        value, _end, rest = piece.partition(BLANK_END) if place else ("", "", piece)
        if place:
            html.append(f'<b class="given">{marked(value)}</b>' if answers else '<i class="blank"></i>')
        html.append(marked(rest))
    return "".join(html)


def _table(rows: list[list[str]], answers: bool) -> str:
    """A table whose first row of numbers is done for the learner; of the others the first two columns."""
    head, *body = rows
    cells = "".join(f'<th scope="col">{escape(cell)}</th>' for cell in head)
    html = [f"<table><thead><tr>{cells}</tr></thead><tbody>"]
    for number, row in enumerate(body):
        shown = [
            f"<td>{escape(cell) if answers or number == 0 or column < 2 else ''}</td>"
            for column, cell in enumerate(row)
        ]
        html.append(f"<tr>{''.join(shown)}</tr>")
    return "".join([*html, "</tbody></table>"])
