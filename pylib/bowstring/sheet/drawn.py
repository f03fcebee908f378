"""The drawings that stand in a sheet, by their kind; what draws one is imported when the first of its kind is drawn."""

from __future__ import annotations

from collections.abc import Callable

from bowstring.report.forms.answer import Answer
from bowstring.sheet.blocks import Drawing


def drawn(drawing: Drawing, answer: Answer, name: str) -> str:
    """Return a drawing as SVG with ``name`` as its id, empty where this answer has none.

    Raises ``ValueError`` when a figure can't be drawn.
    """
    return _KINDS[drawing.kind](drawing, answer, name)


def _plan(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.plan import plan_svg

    return plan_svg(answer, id=name)


def _level(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.level import level_svg

    return level_svg(answer, drawing.level, id=name)


def _stick(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.stick import stick_svg

    return stick_svg(answer, id=name)


def _on_line(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.stakeline import stake_line_svg

    return stake_line_svg(answer, id=name)


def _method(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.method import method_svg

    return method_svg(answer, id=name)


def _site(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.siteplan import site_plan_svg

    return site_plan_svg(answer, id=name)


def _scatter(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.scatter import scatter_svg

    return scatter_svg(answer, id=name)


def _triangle(drawing: Drawing, answer: Answer, name: str) -> str:
    from bowstring.drawings.triangle import has_triangle, triangle_svg

    return triangle_svg(answer, drawing.level, id=name, way="triangle") if has_triangle(answer, drawing.level) else ""


_KINDS: dict[str, Callable[[Drawing, Answer, str], str]] = {
    "plan": _plan,
    "level": _level,
    "stick": _stick,
    "on-line": _on_line,
    "way": _method,
    "site": _site,
    "scatter": _scatter,
    "triangle": _triangle,
}
