"""The slab between its two edges as the build shows it: on the first screen, and for each page what that is about.

It reads the answer alone. Where nobody has said yet how wide the slab is, or where it lies, the line stands by itself,
with dots where its sides might be.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from bowstring.drawings.slab_board import board_svg
from bowstring.drawings.slab_fill import FILLED, draw_back
from bowstring.drawings.slab_pages import PAGES
from bowstring.drawings.slab_shape import MIDDLE, PHONE, Room
from bowstring.drawings.slab_sketch import SlabSketch
from bowstring.report.alone import boards_of, grades_of, joints_of, pour_of
from bowstring.report.forming.rows import is_without_sides
from bowstring.report.forms.answer import Answer
from bowstring.words import say

BOTH = ("outside", "inside")

_THERE: dict[str, Callable[[Answer], bool]] = {
    "joints": lambda answer: joints_of(answer) is not None,
    "grades": lambda answer: grades_of(answer) is not None,
    "pour": lambda answer: pour_of(answer) is not None,
}
"""Whether there is what a page tells of."""


_BESIDE, _WHOLE = 45.0, 125.0
"""Drawing units: what the names beside a slab take, and half as wide as which nothing is gained."""


def cropped_svg(answer: Answer, page: str, *, id: str) -> str:
    """Return a page's drawing no wider than its slab with the names beside it, as SVG: a deep slab is drawn larger by
    it. Raises ``ValueError`` as ``slab_svg``."""
    svg, shape = slab_svg(answer, page, id=id), SlabSketch(answer, page, id).shape
    places = [shape.on(side, share) for side in ("outside", "stakes") for share in (-1.0, 0.0, 1.0)]
    half = max(abs(x - MIDDLE) for x, _y in places) + _BESIDE
    if half >= _WHOLE:
        return svg
    return re.sub(r'viewBox="0 (\S+) 360 ', rf'viewBox="{MIDDLE - half:g} \1 {2 * half:g} ', svg, count=1)


def slab_svg(answer: Answer, page: str = "", sides: Sequence[str] = BOTH, *, id: str, room: Room = PHONE) -> str:
    """Return the drawing of a page, or of the first screen, as SVG; ``id``: prefix of the ids inside.

    ``sides``: where the slab may lie, as long as it isn't known; ``room``: where it is drawn. Raises ``ValueError``
    where the arc can't be drawn.
    """
    if page == "boards" and boards_of(answer) is not None:
        return board_svg(answer, id=id)
    made = SlabSketch(answer, page, id, room)
    if not made.shape.known:
        _unknown(made, () if is_without_sides(answer["build"][0]) else sides)
    elif page in _THERE and not _THERE[page](answer):
        made.plain()
    else:
        if made.shape.filled:
            draw_back(made)
        (FILLED if made.shape.filled else PAGES)[page](made)
    return made.finish()


def _unknown(made: SlabSketch, sides: Sequence[str]) -> None:
    """The line, and dots where its sides might be."""
    made.stakes()
    made.ends()
    if not sides:
        return
    for side in sides:
        made.dotted(1 if side == "outside" else -1)
    asked = ["build.draw_this", "build.draw_or_this"] if len(sides) > 1 else ["build.draw_wide"]
    for side, key in zip(sides, asked, strict=True):
        made.beside_line(say(key), 1 if side == "outside" else -1)
