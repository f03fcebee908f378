"""A form board sprung against its stakes: where it is tightest, and how far its middle bows from straight."""

from __future__ import annotations

from math import cos, sin

from bowstring.drawings.boxes import Box
from bowstring.drawings.labels import FAINT, Label
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.slab_sketch import LEFT, RIGHT
from bowstring.drawings.svg import Point
from bowstring.drawings.turn import turn_of
from bowstring.report.alone import boards_of
from bowstring.report.forming.boards_list import OTHER_CURVE
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_HALF, _RADIUS = 0.56, 300.0
"""Half the angle that the board is drawn with, and its radius: a bow is always drawn larger than it is."""

_THICK, _BEHIND = 9.0, -8.0
_TIGHT = 0.62
_STAKES = (-0.96, -_TIGHT, -0.28, 0.28, _TIGHT, 0.96)
_MIDDLE = 180.0


def board_svg(answer: Answer, *, id: str) -> str:
    """Return the drawing of a sprung board as SVG; ``id``: prefix of the ids inside."""
    boards = boards_of(answer)
    assert boards is not None
    sketch = Sketch(id=id, title=say("build.draw_board"), description=" ".join([*boards["conclusion"], *boards["bow"]]))
    turn = turn_of(answer["side"])
    for left in (LEFT - 130.0, RIGHT):
        sketch.ground.take_box(Box(left, -170.0, left + 130.0, 170.0))
    sketch.see((LEFT, 0.0), (RIGHT, 0.0))
    face, back = ([_at(step / 30 - 1, off) for step in range(61)] for off in (0.0, _THICK))
    outline = [*face, *reversed(back), face[0]]
    sketch.lines([outline], "")
    # The inner edge's board, the tighter one: its stakes stand toward the center, the concrete on the other side. The
    # one of a slab that fills its curve has them outside.
    behind = _behind(answer)
    for share in _STAKES:
        sketch.stake("", _at(share, behind), "new" if abs(share) == _TIGHT else "stake")
    ends = [_at(-1.0, 0.0), _at(1.0, 0.0)]
    sketch.drawing.lines([ends], "line soft cut")
    sketch.ground.take_lines(ends, FAINT)
    if boards["springs_shown"]:
        foot = (_MIDDLE, ends[0][1])
        sketch.arrow(foot, _at(0.0, 0.0), feathers=False)
        sketch.label(Label(boards["springs_shown"], "big", [(_MIDDLE, foot[1] - 15.0)], (1.0, 0.0), 6.0), "hot")
    return _words(sketch, answer, turn)


def _behind(answer: Answer) -> float:
    return _THICK - _BEHIND if _is_alone(answer) else _BEHIND


def _is_alone(answer: Answer) -> bool:
    """Whether no board is bent but along the curve that a slab fills, or the one at either end."""
    boards = boards_of(answer)
    return boards is not None and {edge["edge"] for edge in boards["edges"]} <= {"outside", OTHER_CURVE}


def _words(sketch: Sketch, answer: Answer, turn: int) -> str:
    boards = boards_of(answer)
    assert boards is not None
    alone = _is_alone(answer)
    tight = _at(-_TIGHT * turn, _behind(answer))
    sketch.label(Label(say("build.draw_tightest"), "number", [tight], (-0.1 * turn, -1.0), 20.0, 200.0))
    spot, way = (_at(0.55 * turn, 0.0), 1.0) if alone else (_at(0.55 * turn, _THICK), -1.0)
    sketch.label(Label(say("build.draw_concrete"), "word", [spot], (0.4 * turn * -way, way), 12.0), "quiet")
    larger = say("fill.draw_larger" if alone else "build.draw_larger", stock=boards["springs"])
    text = larger if boards["springs"] else say("build.draw_not_to_scale")
    sketch.paragraph(text, (_MIDDLE, sketch.edge.bottom + 3.0), RIGHT - LEFT, "word", "middle", "quiet")
    return sketch.finish()


def _at(share: float, off: float) -> Point:
    angle = share * _HALF
    radius = _RADIUS + off
    return (_MIDDLE + radius * sin(angle), _RADIUS - radius * cos(angle))
