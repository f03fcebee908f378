"""Each lesson's exercise: a question, the sum step by step, and the answer; all numbers from the package."""

from __future__ import annotations

from collections.abc import Callable
from math import degrees, hypot, sqrt
from typing import NamedTuple

from bowstring.geometry.plane import Point as Place
from bowstring.units.sizes import FOOT, INCH
from bowstring.units.tape import make_tape
from bowstring.wall.board import LEFT, RIGHT, Board, Sheet, fitting
from bowstring.wall.errors import moved
from bowstring.wall.hand_sum import bow_sum, next_sagitta
from bowstring.wall.job_ends import LEAST_BENT
from bowstring.wall.shape import Frame, Given, outline, plain, share
from bowstring.wall.triangles import lean
from bowstring.words import say


class Exercise(NamedTuple):
    """What is asked, how it is worked, and what comes out."""

    question: list[str]
    steps: list[str]
    answer: str
    given: Given | None = None  # what is drawn beside it


_OWN = {True: ((24.0, 2.0), (20.0, 5.0)), False: ((8.0, 0.5), (6.0, 1.5))}


def _numbers(feet: bool, number: int) -> Given:
    """An exercise's own chord and mid-ordinate, out of two, in feet or in metres."""
    chord, sagitta = _OWN[feet][number]
    unit = FOOT if feet else 1.0
    return Given(chord * unit, sagitta * unit, make_tape("ft-in" if feet else "m", None))


def _asked(lesson: int, given: Given, **more: str) -> list[str]:
    values = {"chord": given.show(given.chord), "out": given.show(given.sagitta), **more}
    return [say(f"lesson.{lesson}.exercise", **values), say(f"lesson.{lesson}.exercise_then", **values)]


def _bow(feet: bool) -> Exercise:
    given = _numbers(feet, 0)
    half, out, square, rest, radius = bow_sum(given)
    steps = [f"{half} × {half} = {square}", f"{square} ÷ {out} = {rest}", f"({rest} + {out}) ÷ 2 = {radius}"]
    return Exercise(_asked(1, given), steps, given.show(given.arc.radius), given)


def _square(feet: bool) -> Exercise:
    size, sides = (FOOT, (6, 8, 10)) if feet else (1.0, (1.8, 2.4, 3.0))
    error, far = (INCH / 8, 20 * FOOT) if feet else (0.005, 6.0)
    tape = make_tape("ft-in" if feet else "m", None)
    along, out, long = (side * size for side in sides)
    leaned = lean(along, out, error)
    names = "-".join(plain(f"{side:.1f}") for side in sides)
    values = {"sides": names, "error": tape.show_near(error), "far": tape.show(far)}
    question = [say("lesson.2.exercise", **values), say("lesson.2.exercise_then", **values)]
    sum_ = say(
        "lesson.2.sum",
        long=plain(f"{long / size:.1f}"),
        along=plain(f"{along / size:.1f}"),
        error=tape.show_near(error),
    )
    step = f"{tape.show_small(error * long / along)} ÷ {plain(f'{out / size:.1f}')} × {plain(f'{far / size:.1f}')}"
    return Exercise(question, [sum_, step], tape.show_near(far * leaned))  # to a mark: the sum is good to that


def _halving(feet: bool) -> Exercise:
    given = _numbers(feet, 0)
    long = hypot(given.half, given.sagitta)
    out = next_sagitta(given)
    middle, off, following = (given.show(one) for one in (long / 2, out, hypot(long / 2, out)))
    steps = [say("lesson.3.step_middle", middle=middle), say("lesson.3.step_off", out=off)]
    question = _asked(3, given, long=given.show(long))
    return Exercise(question, steps, say("lesson.3.comes_out", middle=middle, out=off, long=following), given)


def _quarter(feet: bool) -> Exercise:
    given = _numbers(feet, 1)
    exact, quarter = next_sagitta(given), given.sagitta / 4
    turned = f"{2 * degrees(given.arc.half_angle):.1f}"
    steps = [
        say("lesson.4.step_bend", angle=turned, share=f"{share(given.arc.half_angle):.4f}"),
        say("lesson.4.step_next", exact=given.fine(exact), quarter=given.fine(quarter)),
    ]
    return Exercise(_asked(4, given), steps, given.fine(exact - quarter), given)


def _errors(feet: bool) -> Exercise:
    given = Given.own("ft-in" if feet else "m")
    off = moved(given, "Q1", given.inch)
    told = [say("lesson.5.step_moved", stakes=" ".join(off.dragged), off=given.small(off.most))]
    told.append(say("lesson.5.step_ordinates"))
    values = {"off": given.inch_shown}
    return Exercise([say("lesson.5.exercise", **values), say("lesson.5.exercise_then")], told, ", ".join(off.dragged))


def _parabola(feet: bool) -> Exercise:
    given = _numbers(feet, 1)
    x = given.half / 2
    flat = given.sagitta * (1 - (x / given.half) ** 2)
    radius = given.arc.radius
    round_ = sqrt(radius * radius - x * x) - (radius - given.sagitta)
    steps = [
        say("lesson.6.step_parabola", up=given.fine(flat)),
        say("lesson.6.step_circle", up=given.fine(round_)),
    ]
    return Exercise(_asked(6, given, away=given.show(x)), steps, given.fine(round_ - flat), given)


EXERCISES: dict[int, Callable[[bool], Exercise]] = {
    1: _bow,
    2: _square,
    3: _halving,
    4: _quarter,
    5: _errors,
    6: _parabola,
}


def exercise_sheet(lesson: int, feet: bool, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """Return the exercise as a lesson's last sheet: asked first, then worked, then answered."""
    exercise = EXERCISES[lesson](feet)
    board = Board(id, say("lesson.exercise"), kick)
    board.head(say("lesson.exercise"))
    board.stroke("lesson.guess")
    _picture(board, exercise.given)
    y = 200.0
    for line in exercise.question:
        board.text(line, (LEFT, y), 38, "start", room=RIGHT - LEFT)
        y += 60
    y += 30
    for step in exercise.steps:
        board.stroke("lesson.step", step=step)
        board.text(step, (LEFT + 40, y), 38, "start", "num", room=RIGHT - LEFT - 40)
        y += 66
    board.stroke("lesson.comes_out", answer=exercise.answer)
    size = fitting(exercise.answer, 84, RIGHT - LEFT - 40 if exercise.given is None else 600)
    board.text(exercise.answer, (LEFT + 40, y + 60), size, "start", "hot num")
    return board.finish()


def _picture(board: Board, given: Given | None) -> None:
    """The arc that is asked about, low at the right."""
    if given is None:
        return
    shown, _way = given.shape(LEAST_BENT)
    frame = Frame(outline(shown.arc), (720.0, 400.0, 1180.0, 610.0))
    ends, foot = [frame.at(Place(x, 0.0)) for x in (0.0, shown.chord)], frame.at(Place(shown.half, 0.0))
    board.line(ends, "string")
    board.line(frame.arc(shown.arc), "arc")
    top = frame.at(Place(shown.half, shown.sagitta))
    board.arrow(foot, (top[0], top[1] + 8))
    for name, at in zip("AB", ends, strict=True):
        board.stake(at, 12)
        board.text(name, (at[0], at[1] + 50), 34)
