"""The long sheet's sections of the build, in the order in which a crew needs them."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from bowstring.report.forms.answer import Answer
from bowstring.sheet import build_lined
from bowstring.sheet.blocks import Block
from bowstring.sheet.build_boards import boards
from bowstring.sheet.build_edges import edges
from bowstring.sheet.build_grades import grades
from bowstring.sheet.build_joints import joints
from bowstring.sheet.build_pour import pour

SECTIONS: dict[str, tuple[str, Callable[[Answer], Iterable[Block]]]] = {
    "edges": ("edges.title", edges),
    "boards": ("boards.title", boards),
    "joints": ("joints.title", joints),
    "grades": ("grades.title", grades),
    "pour": ("pour.title", pour),
    **{f"lined-{key}": (f"build.{key}", build_lined.part_of(key)) for key in build_lined.KEYS},
}
"""By the part of the answer, or that of a line of several pieces; its title, and what makes it."""
