"""Lesson 4: why a quarter, and why not quite; the picture that the slider works on is its second sheet."""

from __future__ import annotations

from math import degrees

from bowstring.geometry.plane import Point as Place
from bowstring.wall.bend import BENDS, FIRST, JOB_MARK, TRACK, miss_at
from bowstring.wall.board import LEFT, Board, Sheet
from bowstring.wall.job_ends import bent_note
from bowstring.wall.shape import Frame, Given, arc_of, share
from bowstring.words import say

_FLAT, _LEAST = 0.0525, 0.16
"""Mid-ordinate over half the chord of the flat arc, and the least that a job's is drawn with."""
_WIDE = 330.0


def three_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """A flat arc, this job's, and a half circle, each with its share."""
    shown, way = given.shape(_LEAST)
    flat = given.half * _FLAT
    board = Board(id, say("lesson.4.told"), kick)
    board.head(say("lesson.4.question"))
    rows = [(flat, flat, "flat"), (given.half, given.half, "semi")]
    past = given.sagitta > given.half  # then it comes last
    rows.insert(2 if past else 1, (given.sagitta, shown.sagitta, "past" if past else "job"))
    for number, (sagitta, drawn, key) in enumerate(rows):
        true, arc = arc_of(given.chord, sagitta), arc_of(given.chord, drawn)
        x = 214.0 + 426 * number
        frame = Frame([arc.point_at(0), arc.point_at(1)], (x - _WIDE / 2, 0.0, x + _WIDE / 2, 400.0))
        ends = [frame.at(Place(one, 0.0)) for one in (0.0, arc.chord)]
        top, quarter = frame.at(arc.point_at(0.5)), frame.at(arc.point_at(0.25))
        board.stroke(f"lesson.4.{key}", angle=f"{2 * degrees(true.half_angle):.0f}")
        if key == "job":
            bent_note(board, way)
        board.line(ends, "string")
        board.line(frame.arc(arc), "arc")
        board.line([ends[0], top], "dash")
        board.line([(x, ends[0][1]), top], "string")
        board.line([((ends[0][0] + top[0]) / 2, (ends[0][1] + top[1]) / 2), quarter], "shaft")
        for at in (*ends, top):
            board.stake(at, 10)
        board.stake(quarter, 11, "now")
        board.text(f"{share(true.half_angle):.3f}", (x, 470), 60, "middle", "num")
        board.text(say(f"lesson.4.{key}_word"), (x, 520), 30, "middle", "quiet")
    board.stroke("lesson.4.half")
    board.text(say("lesson.4.half_word"), (LEFT, 592), 34, "start", "tell")
    board.stroke("lesson.4.climb")
    board.text(say("lesson.4.climb_word"), (LEFT, 640), 34, "start", "tell")
    board.head(say("lesson.4.answer"))
    board.stroke("lesson.4.exact")
    board.text(say("lesson.4.exact_word"), (LEFT, 688), 34, "start", "hot")
    return board.finish()


def slider_sheet(given: Given, id: str, kick: list[tuple[str, str]]) -> Sheet:
    """The track with the miss over it; the arc over it is put there by the slider."""
    chord = given.show(given.chord)
    board = Board(id, say("lesson.4.slider_told", chord=chord), kick)
    board.head(say("lesson.4.slider", chord=chord))
    board.stroke("lesson.4.track", chord=chord)
    left, right, y = TRACK
    most = miss_at(given, BENDS)
    points = []
    for step in range(FIRST, BENDS + 1, 2):
        x = left + (right - left) * (step - FIRST) / (BENDS - FIRST)
        points.append((x, y - 104 * miss_at(given, step) / most))
    board.shape([(left, y), *points, (right, y)], "fill")
    board.line([(left, y), (right, y)], "arc")
    for bend, key in ((90, "right"), (180, "half")):
        x = left + (right - left) * (bend - FIRST) / (BENDS - FIRST)
        board.line([(x, y - 16), (x, y + 16)], "string")
        board.text(say(f"lesson.4.mark_{key}", angle=str(bend)), (x, y + 54), 26)
    job = 2 * degrees(given.arc.half_angle)
    x = left + (right - left) * (job - FIRST) / (BENDS - FIRST)
    board.line([(x, y - 16), (x, y + 16)], JOB_MARK)
    if abs(job - 90) > 45 and abs(job - 180) > 45:
        board.text(say("lesson.4.mark_job", angle=f"{job:.1f}"), (x, y + 54), 26)
    board.text(say("lesson.4.graph", most=given.fine(most)), (1060, 556), 26, "end", "hot num", room=420)
    board.head(say("lesson.4.slider_answer"))
    board.stroke("lesson.4.bend")
    return board.finish()
