"""The width stick: a lath with a mark at each board's face, and one where the form stakes stand."""

from __future__ import annotations

from bowstring.drawings.sketch import Sketch
from bowstring.report.forms.build_edges import WidthStick
from bowstring.words import say

_LONG, _WIDE, _PAST = 300.0, 16.0, 7.0
_FIRST, _OTHER, _FORM = 14.0, 240.0, 272.0
"""Where its marks are drawn: not to scale, a board is thin."""

_ROW = 19.0


def width_stick_svg(stick: WidthStick, *, id: str) -> str:
    """Return the drawing of a stick that has the same marks all along, as SVG; ``id``: prefix of the ids inside.

    Raises ``ValueError`` for a stick that has others at every stake.
    """
    if len(stick["marks"]) != 3:
        raise ValueError("a stick with a mark for each stake isn't drawn")
    (first, zero), (other, width), (form, behind) = stick["marks"]
    told = ", ".join(f"{name} {size}" for name, size in stick["marks"])
    sketch = Sketch(id=id, title=stick["title"], description=say("edges.stick_drawn", marks=told))
    sketch.lines([[(0.0, 0.0), (_LONG, 0.0), (_LONG, _WIDE), (0.0, _WIDE), (0.0, 0.0)]], "")
    sketch.drawing.path([("M", (_OTHER, 0.0)), ("L", (_FORM, 0.0)), ("L", (_FORM, _WIDE)), ("L", (_OTHER, _WIDE)),
                         ("Z",)], "slab")  # fmt: skip
    for place in (_FIRST, _OTHER, _FORM):
        sketch.lines([[(place, -_PAST), (place, _WIDE + _PAST)]], "arc")
    above = -_PAST - 5.0
    sketch.words(zero, (_FIRST, above), "number")
    sketch.words(width, (_OTHER + 8.0, above), "end", "end", "hot")
    below = _WIDE + _PAST + 14.0
    sketch.words(first, (0.0, below), "word", "start", "quiet")
    sketch.words(other, (_LONG, below + _ROW), "word", "end", "quiet")
    sketch.words(say("edges.stick_at", size=behind, what=form), (_LONG, below + 2 * _ROW), "word", "end", "quiet")
    return sketch.finish()
