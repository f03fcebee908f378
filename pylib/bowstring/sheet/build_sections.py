"""The long sheet's sections of the build, in the order in which a crew needs them."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Block
from bowstring.sheet.build_boards import boards
from bowstring.sheet.build_edges import edges
from bowstring.sheet.build_grades import grades
from bowstring.sheet.build_joints import joints
from bowstring.sheet.build_pour import pour

SECTIONS: dict[str, Callable[[Answer], Iterable[Block]]] = {
    "edges": edges,
    "boards": boards,
    "joints": joints,
    "grades": grades,
    "pour": pour,
}
"""By the part of the answer; each one's title is ``PART.title``."""
