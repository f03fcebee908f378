"""The job on the wall: what there is, and the first round."""

from __future__ import annotations

from math import hypot, sqrt

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.wall.board import HIGH, KICK, LEAST, NAME, QUIET, WIDE, Board, Sheet, fitting, width_of
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

LEAST_BENT = 0.16
"""Mid-ordinate over half the chord, under which an arc can't be told from its string across a room."""
_BOX = (108.0, 190.0, 1172.0, 420.0)
_STEEP = 0.55  # mid-ordinate over half the chord
_TITLE = 400.0  # how wide a title may be


def kick_of(given: Given) -> list[tuple[str, str]]:
    """Return the line over the sentences: the job and its two numbers."""
    title = given.title or say("wall.job")
    return [
        (_short(title), ""),
        (say("wall.by_halving"), "quiet"),
        (say("wall.chord"), "quiet"),
        (given.show(given.chord), "box"),
        (say("wall.mid_ordinate"), "quiet"),
        (given.show(given.sagitta), "box"),
    ]


def _short(title: str) -> str:
    """A title as far as its first comma, or as a line has room for it."""
    first = title.partition(",")[0]
    if width_of(first, KICK) <= _TITLE:
        return first
    while width_of(f"{first}…", KICK) > _TITLE:
        first = first[:-1].rstrip()
    return f"{first}…"


def bent_note(board: Board, way: str, y: float = 160.0) -> None:
    """Say on the picture that the arc is drawn bent otherwise than it is."""
    if way:
        board.text(say(f"wall.drawn_{way}"), (1232, y), QUIET, "end", "quiet")


def name_ends(board: Board, frame: Frame, given: Given, shown: Given) -> None:
    """The two end stakes with their names."""
    for name, x in zip(given.ends, (0.0, shown.chord), strict=True):
        at = frame.at(Place(x, 0.0))
        board.stake(at)
        board.text(name, (at[0], at[1] + 62), NAME)


def first_frame(shown: Given) -> Frame:
    """Return how round 1 lies on the board: round 2 grows out of it."""
    return Frame(outline(shown.arc), _BOX)


def ends_sheet(given: Given, id: str) -> Sheet:
    """Two stakes, the string, the arc that is wanted, and where its center is."""
    shown, way = given.shape(LEAST_BENT)
    frame = Frame(outline(shown.arc), _BOX)
    left, right = frame.at(Place(0.0, 0.0)), frame.at(Place(shown.chord, 0.0))
    chord = given.show(given.chord)
    board = Board(id, say("wall.ends.told", chord=chord), kick_of(given))
    board.head(say("wall.ends"))
    for end, at in zip(given.ends, (left, right), strict=True):
        board.stroke("wall.ends.stake" if end == given.ends[0] else "wall.ends.other", end=end)
        board.stake(at)
        board.text(end, (at[0], at[1] + 62), NAME)
    board.stroke("wall.ends.string")
    board.line([(left[0] + 16, left[1]), (right[0] - 16, right[1])], "string")
    board.stroke("wall.ends.number", chord=chord)
    middle, y = (left[0] + right[0]) / 2, left[1]
    size = fitting(chord, 84, right[0] - left[0] - 120)
    room = width_of(chord, size) / 2 + 14
    board.rect((middle - room, y - 0.5 * size, middle + room, y + 0.5 * size), "plain")
    board.text(chord, (middle, y + 0.36 * size), size, "middle", "num")
    board.stroke("wall.ends.arc")
    board.line(frame.arc(shown.arc), "ghost")
    for at in (left, right):
        board.stake(at)
    bent_note(board, way)
    top = frame.at(shown.arc.point_at(0.5))
    if shown.sagitta < shown.half:
        board.text(say("wall.ends.wanted"), (top[0], top[1] - 26), NAME, "middle", "quiet")
    board.stroke("wall.ends.center")
    _center(board, given, middle, y)
    if shown.arc.cosine < 0 and given.arc.cosine < 0:
        board.dot(frame.at(shown.arc.centre), 9, "disc")
    return board.finish()


def _center(board: Board, given: Given, x: float, y: float) -> None:
    """Where the center is: past the foot of the picture, or on the arc's side of the string."""
    away = given.arc.radius * abs(given.arc.cosine)
    where = "middle" if away < given.tape.mark else "inside" if given.arc.cosine < 0 else "away"
    if where == "away":
        board.line([(x, y + 70), (x, y + 130)], "dash")
        board.shape([(x, y + 162), (x - 17, y + 130), (x + 17, y + 130)], "disc")
    board.shape(
        [(40, HIGH + 20), *((40 + 12 * step, _shore(step / 100)) for step in range(101)), (WIDE - 40, HIGH + 20)],
        "water",
    )
    board.text(say(f"wall.ends.{where}", away=given.show(away)), (WIDE / 2, 662), 34, "middle", "num", room=860)


def _shore(part: float) -> float:
    return HIGH + 20 - 138 * sqrt(4 * part * (1 - part))


def first_sheet(given: Given, id: str) -> Sheet:
    """Round 1: the middle, the mid-ordinate square off, M, and what proves it."""
    shown, way = given.shape(LEAST_BENT)
    frame = first_frame(shown)
    left, right = frame.at(Place(0.0, 0.0)), frame.at(Place(shown.chord, 0.0))
    foot, top = frame.at(Place(shown.half, 0.0)), frame.at(Place(shown.half, shown.sagitta))
    half, out = given.show(given.half), given.show(given.sagitta)
    long = given.show(hypot(given.half, given.sagitta))
    board = Board(id, say("wall.first.told", half=half, out=out, long=long), kick_of(given))
    board.line([left, right], "string")
    name_ends(board, frame, given, shown)
    bent_note(board, way)
    board.head(say("wall.first", out=out))
    board.stroke("wall.first.halves", half=half)
    for x in ((left[0] + foot[0]) / 2, (right[0] + foot[0]) / 2):
        board.disc(1, (x, foot[1]))
    _half_numbers(board, half, left, foot, right)
    board.stroke("wall.first.middle")
    board.dot(foot, 11, "fill")
    board.corner(foot, (1, 0), (0, -1))
    board.stroke("wall.first.arrow")
    board.arrow(foot, (top[0], top[1] + 20))
    beside = (
        (foot[1] + top[1]) / 2 + 8 if shown.sagitta < _STEEP * shown.half else top[1] + 14
    )  # clear of the half chords
    board.disc(2, (foot[0] + 62, beside))
    board.stroke("wall.first.number", out=out)
    board.boxed(out, (foot[0] + 110 + width_of(out, NAME) / 2, beside))
    board.stroke("wall.first.drive")
    board.stake(top, 18, "now")
    board.text("M", (top[0], top[1] - 30), 44, "middle", "hot")
    board.stroke("wall.first.short")
    for side, end in ((-1, left), (1, right)):
        board.line([(end[0] - side * 14, end[1] - 9), (top[0] + side * 18, top[1] + 7)], "dash")
        board.ticked(((end[0] + top[0]) / 2, (end[1] + top[1]) / 2))
    board.stroke("wall.first.same")
    _proved(board, 1, say("wall.first.square"))
    board.stroke("wall.first.reads", long=long)
    for side, end in ((-1, left), (1, right)):
        at = ((end[0] + top[0]) / 2 + side * 34, (end[1] + top[1]) / 2 - 26)
        board.text(long, at, NAME, "end" if side < 0 else "start", "num")
    board.stroke("wall.first.twice", out=out, inch=given.inch_shown, seen=given.small(_seen(given)))
    _proved(board, 2, say("wall.first.tape_twice", out=out))
    return board.finish()


def _half_numbers(board: Board, half: str, left: Point, foot: Point, right: Point) -> None:
    """Half the string, under each half, or outside where it is too short for that."""
    room = foot[0] - left[0] - 60
    if width_of(half, LEAST) < room:
        for end in (left, right):
            board.text(half, ((end[0] + foot[0]) / 2, foot[1] + 62), 48, "middle", "num", room=room)
        return
    board.text(half, (left[0] - 44, foot[1] + 62), NAME, "end", "num")
    board.text(half, (right[0] + 44, foot[1] + 62), NAME, "start", "num")


def _seen(given: Given) -> float:
    """How much longer a half chord reads where M stands a small mistake too far out."""
    return hypot(given.half, given.sagitta + given.inch) - hypot(given.half, given.sagitta)


def _proved(board: Board, row: int, words: str) -> None:
    y = 494 + 76 * row
    if row == 1:
        board.rect((124, 520, 1156, 690), "box")
    if row == 1:
        board.ticked((182, y), 24)
    else:
        board.warned((182, y))
    board.text(words, (230, y + 14), 38, "start", room=900)
