"""The job on the wall: the second round, and why its number is what it is."""

from __future__ import annotations

from math import hypot

from bowstring.drawings.svg import Point
from bowstring.geometry.plane import Point as Place
from bowstring.wall.board import NAME, Board, Sheet, width_of
from bowstring.wall.hand_sum import HandSum, hand_sum, next_sagitta
from bowstring.wall.job_ends import LEAST_BENT, bent_note, first_frame, kick_of
from bowstring.wall.shape import Frame, Given, outline
from bowstring.words import say

_BENT = (0.26, 0.46)
"""Between these the slim triangle is slim, and yet to be seen."""
_BOX = (92.0, 300.0, 1136.0, 600.0)
_WORDS = 34.0


def next_sheet(given: Given, id: str) -> Sheet:
    """The slim triangle at M, the same one on half of the half chord, and the sum by hand."""
    shown, way = given.shape(*_BENT)
    end = given.ends[0]
    stake, other = ("Q2", "Q1") if given.mirrored else ("Q1", "Q2")
    sum_ = hand_sum(given)
    out = given.show(next_sagitta(given))
    board = Board(id, say("wall.next.told", out=out, stake=stake), kick_of(given))
    places = _Places(shown)
    board.head(say("wall.next"))
    board.stroke("wall.next.half", end=end)
    board.line([places.a, (places.landed[0] + 40, places.a[1])], "string")
    board.line([places.foot, places.m], "string")
    _stakes(board, places, end, stake, fresh=False)
    bent_note(board, way, 704.0)
    board.stroke("wall.next.string", end=end)
    board.line([places.a, places.m], "string")
    board.line(places.arc, "ghost")
    board.stroke("wall.next.swing", end=end)
    board.swing(places.a, places.m, places.landed, "dash")
    board.stroke("wall.next.slim", past=sum_.past)
    board.shape([places.m, places.foot, places.landed], "fill")
    board.text(f"h − a = {sum_.past}", (1232, places.a[1] + 46), _WORDS, "end", "hot num")
    board.stroke("wall.next.same", end=end, stake=stake)
    board.shape([places.a, places.middle, places.q], "fill")
    board.text(say("wall.half_of_h"), _half_at(places), _WORDS, "start")
    board.text(say("wall.next_word"), (places.q[0] + 44, places.q[1] + 34), _WORDS, "start", "hot")
    board.stroke("wall.next.stake", stake=stake)
    _stakes(board, places, end, stake, fresh=True)
    _numbers(board, places, sum_)
    _sum(board, given, sum_, out, places.q[0] - 48 - 46 - width_of(stake, NAME))
    _whole(board, given, stake, other)
    return board.finish()._replace(zoom=_zoom(given, places))


def _zoom(given: Given, places: _Places) -> tuple[float, float, float]:
    """What brings the grown half onto that half in the picture of round 1."""
    first = first_frame(given.shape(LEAST_BENT)[0])
    scale = first.scale / places.scale
    x, y = first.at(Place(0.0, 0.0))
    return round(scale, 4), round(x - scale * places.a[0], 2), round(y - scale * places.a[1], 2)


class _Places:
    """Where the marks of the grown half are on the board: M's foot at the right, the end at the left."""

    def __init__(self, shown: Given) -> None:
        quarter, out = shown.arc.point_at(0.25), Place(shown.half, shown.sagitta)
        long = hypot(shown.half, shown.sagitta)
        self.scale = min((_BOX[2] - _BOX[0]) / long, (_BOX[3] - _BOX[1]) / shown.sagitta)
        self._x = _BOX[2] - self.scale * long
        self.a, self.foot, self.landed = (self.at(Place(x, 0.0)) for x in (0.0, shown.half, long))
        self.m, self.q = self.at(out), self.at(quarter)
        self.middle = self.at(Place(out.x / 2, out.y / 2))
        self.arc = [self.at(shown.arc.point_at(step / 96)) for step in range(49)]

    def at(self, place: Place) -> Point:
        """Return where a place is on the board."""
        return self._x + self.scale * place.x, _BOX[3] - self.scale * place.y


def _stakes(board: Board, places: _Places, end: str, stake: str, fresh: bool) -> None:
    board.stake(places.a)
    board.stake(places.m)
    if fresh:
        board.stake(places.q, 16, "now")
        board.text(stake, (places.q[0] - 26, places.q[1] - 16), NAME, "end", "hot")
        return
    board.text(end, (places.a[0], places.a[1] + 58), NAME)
    board.text("M", (places.m[0] + 32, places.m[1] - 4), NAME, "start")


def _numbers(board: Board, places: _Places, sum_: HandSum) -> None:
    """What the three sides are called, and how long they are."""
    board.stroke("wall.next.sides", half=sum_.half, out=sum_.sagitta, long=sum_.long)
    board.text(f"a = {sum_.half}", ((places.a[0] + places.foot[0]) / 2, places.a[1] + 46), _WORDS, "middle", "num")
    board.text(f"s = {sum_.sagitta}", (places.foot[0] - 14, places.foot[1] - 116), _WORDS, "end", "halo num")
    at = (places.foot[0] - 60, places.a[1] - 56)
    free = at[0] - _half_at(places)[0] - width_of(say("wall.half_of_h"), _WORDS) - 24
    whole = f"h = √(a² + s²) = {sum_.long}"
    board.text(whole if width_of(whole, _WORDS) < free else f"h = {sum_.long}", at, _WORDS, "end", "halo num")


def _half_at(places: _Places) -> Point:
    return (places.a[0] + places.middle[0]) / 2 + 60, (places.a[1] + places.middle[1]) / 2 + 52


def _sum(board: Board, given: Given, sum_: HandSum, out: str, room: float) -> None:
    """The same shape gives a proportion, and the proportion the number."""
    board.stroke("wall.next.proportion")
    board.text(say("wall.next.like"), (48, 176), 32, "start", room=600)
    board.stroke("wall.next.solved")
    board.text(say("wall.next.formula"), (48, 228), 38, "start", room=600)
    board.stroke("wall.next.sum", long=sum_.long, past=sum_.past, twice=sum_.twice)
    board.text(f"= {sum_.long} × {sum_.past} ÷ {sum_.twice}", (48, 280), 38, "start", "num", room=600)
    board.stroke("wall.next.result", next=sum_.next, unit=given.unit_word, out=out)
    board.text(f"= {sum_.next} {given.unit_word} = {out}", (48, 338), 46, "start", "hot num", room=room)


def _whole(board: Board, given: Given, stake: str, other: str) -> None:
    """The whole arc, small, with both stakes of the round."""
    board.stroke("wall.next.both", stake=stake, other=other)
    shown, _way = given.shape(LEAST_BENT)
    frame = Frame(outline(shown.arc), (800.0, 176.0, 1200.0, 246.0))
    ends, top = [frame.at(Place(x, 0.0)) for x in (0.0, shown.chord)], frame.at(Place(shown.half, shown.sagitta))
    board.line(ends, "thin")
    board.line(frame.arc(shown.arc), "cut")
    board.line([ends[0], top, ends[1]], "thin")
    for at in (*ends, top):
        board.stake(at, 9)
    for name, part, side in ((stake, 0.25, "end"), (other, 0.75, "start")):
        at = frame.at(shown.arc.point_at(part))
        board.stake(at, 12, "now")
        board.text(name, (at[0] + (-20 if side == "end" else 20), at[1] - 8), 30, side, "hot")
