"""What the page asks for its wall: a figure, the slider's table, the list, or a handout."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from bowstring.errors import BadJob
from bowstring.page.talk import Asked
from bowstring.words import say

if TYPE_CHECKING:
    from bowstring.page.answering import LastAnswer
    from bowstring.wall.shape import Given

_WORDS = (
    *("title", "list", "keys", "stroke_of", "progress", "handout", "try_it", "chord", "mid_ordinate"),
    *("own", "own_show", "own_keep", "own_back", "own_enter", "numbers", "full_screen", "to_job"),
)


def shown_wall(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return what a wall shows: one of

    ``{"fields", "figure": 0 to 6}``  ``{"name", "sheets": [{"svg", "strokes": [{"sentence", "said"}]}], "words"}``:
    0 is the job, the others are the lessons, on this job's numbers where they suit; ``slider``: the sheet that has one;
    ``{"fields", "slider": 1}``       the rows that the slider of the lesson about the quarter runs over;
    ``{"fields", "list": 1}``         ``{"figures": [{"figure", "name", "svg"}], "words"}``;
    ``{"fields", "handout": 1 to 7}`` ``{"html"}``: a lesson's two pages, 7 is the page with string and chalk;
    ``{"fields", "numbers": 1}``      ``{"chord", "out", "fields"}`` or ``{"error"}``, see ``class_numbers.py``.

    With ``own``, ``{"chord": text, "out": text}``, all of it is of the class's own numbers.

    Raises ``ValueError`` for a figure that there isn't.
    """
    if asked.get("numbers") is not None:
        from bowstring.page.class_numbers import numbers_on_the_wall

        job, _why_none = _given({**asked, "own": None}, last)
        return {**numbers_on_the_wall(asked, job), "words": _words()}
    given, stopped = _given(asked, last)
    for kind, answered in _KINDS.items():
        if asked.get(kind) is not None:
            return answered(given, stopped, int(asked[kind]))
    raise ValueError("nothing was asked of the wall")


def _given(asked: Asked, last: LastAnswer) -> tuple[Given | None, tuple[str, str]]:
    """The job's numbers, or the class's; without them why there are none, as a line and what to do."""
    from bowstring.wall.shape import Given

    try:
        if asked.get("own") is not None:
            from bowstring.page.class_numbers import class_given

            return class_given(asked), ("", "")
        answered = last.for_fields(asked["fields"])
        if answered["stops"]:
            return None, (say("wall.stopped"), say("wall.stopped_told"))
        if answered["got"]:  # its later stakes have numbers of their own
            return None, (say("wall.got"), say("wall.got_told"))
        return Given.of_answer(answered), ("", "")
    except BadJob as refusal:
        if refusal.key == "page.unit_open":
            return None, (say("wall.stopped"), say("wall.stopped_told"))
        return None, (say("wall.not_yet"), say("wall.not_yet_told"))


def _figure(given: Given | None, stopped: tuple[str, str], figure: int) -> Mapping[str, object]:
    from bowstring.wall.figures import NAMES, SLIDER, sheets_of

    sheets = [sheet._asdict() for sheet in sheets_of(figure, given, stopped)]
    slider = SLIDER[1] if figure == SLIDER[0] else None
    return {"name": say(NAMES[figure]), "sheets": sheets, "slider": slider, "words": _words()}


def _slider(given: Given | None, stopped: tuple[str, str], _asked: int) -> Mapping[str, object]:
    from bowstring.wall.bend import slider
    from bowstring.wall.figures import SLIDER
    from bowstring.wall.suits import for_lesson

    return slider(for_lesson(SLIDER[0], given).given)


def _list(given: Given | None, stopped: tuple[str, str], _asked: int) -> Mapping[str, object]:
    from bowstring.wall.figures import NAMES, thumbnail

    rows = [{"figure": figure, "name": say(key), "svg": thumbnail(figure, given)} for figure, key in enumerate(NAMES)]
    return {"figures": rows, "words": _words()}


def _handout(given: Given | None, stopped: tuple[str, str], handout: int) -> Mapping[str, object]:
    from bowstring.wall.handouts import handout_html

    return {"html": handout_html(handout, given)}


def _words() -> dict[str, str]:
    places = {"stroke": "{stroke}", "count": "{count}"}
    return {word: say(f"wall.{word}", **places) for word in _WORDS}


_KINDS: Mapping[str, Callable[[Given | None, tuple[str, str], int], Mapping[str, object]]] = {
    "figure": _figure,
    "slider": _slider,
    "list": _list,
    "handout": _handout,
}
