"""The wall's figures by number: 0 is the job, 1 to 6 are the lessons; each is a list of sheets."""

from __future__ import annotations

from collections.abc import Callable

from bowstring.wall.board import Board, Sheet
from bowstring.wall.bow import bow_sheet
from bowstring.wall.errors import errors_sheet
from bowstring.wall.exercises import exercise_sheet
from bowstring.wall.halves import halving_sheet, proof_sheet
from bowstring.wall.job_ends import ends_sheet, first_sheet
from bowstring.wall.job_next import next_sheet
from bowstring.wall.job_rounds import rounds_sheet
from bowstring.wall.job_stakes import stakes_sheet
from bowstring.wall.parabola import parabola_sheet
from bowstring.wall.quarter import slider_sheet, three_sheet
from bowstring.wall.shape import Given
from bowstring.wall.suits import for_lesson
from bowstring.wall.triangles import cost_sheet, square_sheet
from bowstring.words import say

NAMES = ("wall.job_strokes", *(f"lesson.{number}.name" for number in range(1, 7)))
SLIDER = (4, 1)
"""The figure that has the slider, and on which of its sheets, from 0 on."""
_LESSONS: dict[int, tuple[Callable[[Given, str, list[tuple[str, str]]], Sheet], ...]] = {
    1: (bow_sheet,),
    2: (square_sheet, cost_sheet),
    3: (halving_sheet, proof_sheet),
    4: (three_sheet, slider_sheet),
    5: (errors_sheet,),
    6: (parabola_sheet,),
}
_PICTURES = (0, 0, 0, 0, 0, 0, 0)
"""Which sheet of each figure stands for it in the list."""


def sheets_of(figure: int, given: Given | None, stopped: tuple[str, str] = ("", "")) -> list[Sheet]:
    """Return a figure's sheets. Without a job's numbers figure 0 says why there are none.

    Raises ``ValueError`` for a figure that there isn't.
    """
    if figure == 0:
        return job_sheets(given, "wall-0") if given else [_none(stopped)]
    if figure not in _LESSONS:
        raise ValueError(f"no such figure: {figure!r}")
    numbers, why = for_lesson(figure, given)
    kick = kick_of(figure, why)
    id = f"wall-{figure}"
    sheets = [sheet(numbers, f"{id}-{number}", kick) for number, sheet in enumerate(_LESSONS[figure], 1)]
    return [*sheets, exercise_sheet(figure, numbers.tape.feet, f"{id}-exercise", kick)]


def kick_of(lesson: int, why: str = "") -> list[tuple[str, str]]:
    """Return the line over a lesson's sentences; ``why`` it has numbers of its own, as ``for_lesson`` says."""
    instead = [(say(f"lesson.too_{why}"), "quiet")] if why else []
    return [(say("lesson.number", number=lesson), "quiet"), (say(f"lesson.{lesson}.name"), ""), *instead]


def job_sheets(given: Given, id: str) -> list[Sheet]:
    """Return the construction of a job by halving; what a second round tells only where there is one."""
    further = [next_sheet, rounds_sheet] if given.levels > 1 else []
    sheets = [ends_sheet, first_sheet, *further, stakes_sheet]
    return [sheet(given, f"{id}-{number}") for number, sheet in enumerate(sheets, 1)]


def thumbnail(figure: int, given: Given | None) -> str:
    """Return the picture that stands for a figure in the list, empty where there is none."""
    if figure == 0:
        return stakes_sheet(given, "list-0").svg if given else ""
    return _LESSONS[figure][_PICTURES[figure]](for_lesson(figure, given).given, f"list-{figure}", kick_of(figure)).svg


def _none(stopped: tuple[str, str]) -> Sheet:
    """A sheet without a picture: why there is no job to show, and what to do."""
    board = Board("wall-0-none", stopped[0], [(say("wall.job_strokes"), "")])
    board.head(stopped[0])
    board.stroke("wall.no_figure")
    board.text(stopped[1], (48, 220), 38, "start")
    board.text(say("wall.no_figure"), (48, 300), 38, "start", "quiet")
    return board.finish()
