"""The story stick lying down, for a sheet of paper: its marks to scale, numbers over them, stakes under."""

from __future__ import annotations

from bowstring.drawings.boxes import Box, text_width
from bowstring.drawings.labels import spread
from bowstring.drawings.lowplan import WIDE
from bowstring.drawings.sketch import MARGIN, Sketch
from bowstring.report.forms.answer import Answer
from bowstring.words import say

_LONG = WIDE - 60.0
_THICK = 20.0


def lath_svg(answer: Answer, *, id: str) -> str | None:
    """Return the lath as SVG, ``None`` where there are no marks or no room for their words beside each other."""
    stick = answer["stick"]
    marks = sorted(stick["marks"], key=lambda mark: mark["distance"])
    if not marks or not stick["length"]:
        return None
    names = [mark["label"].partition(": ")[2] or mark["label"] for mark in marks]
    gap = 10.0 + max(
        *(text_width(mark["shown"], "number") for mark in marks), *(text_width(name, "word") for name in names)
    )
    if gap * len(marks) > _LONG:
        return None
    places = [_LONG * mark["distance"] / stick["length"] for mark in marks]
    labels = spread(places, gap)
    shift = min(0.0, _LONG - labels[-1])
    labels = [max(label + shift, 0.0) for label in labels]
    listed = ", ".join(say("draw.stick.mark", label=mark["label"], shown=mark["shown"]) for mark in marks)
    sketch = Sketch(id=id, title=say("draw.stick.title"), description=say("draw.stick.desc", marks=listed))
    sketch.lines([[(0.0, 0.0), (_LONG, 0.0), (_LONG, _THICK), (0.0, _THICK), (0.0, 0.0)]], "string")
    sketch.words("0", (0.0, -8.0), "number")
    for mark, name, place, label in zip(marks, names, places, labels, strict=True):
        sketch.lines([[(place, 0.0), (place, _THICK)]], "arrow")
        sketch.lines([[(place, 0.0), (label, -5.0)], [(place, _THICK), (label, _THICK + 5.0)]], "soft")
        sketch.words(mark["shown"], (label, -8.0), "number")
        sketch.words(name, (label, _THICK + 18.0), "word")
    sketch.cover(Box(-30.0 + MARGIN, -20.0, _LONG + 30.0 - MARGIN, _THICK + 24.0))
    return sketch.finish()
