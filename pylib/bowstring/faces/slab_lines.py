"""The lines of the slab and of its slope on the numbers face. No stake hangs on either: nobody is asked for them."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.errors import BadJob
from bowstring.faces.one_line import SAID, USUAL, QuestionLine, capital, length_of, line_of, metres_of
from bowstring.faces.questions import panel_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.job.terms import BACKS, DEEPEST_SLAB, LINE_ENDS, is_lined
from bowstring.units.slopes import STEEPEST, read_slope, show_slope
from bowstring.words import say

OF_A_CURVE = ("inside", "outside")
"""Edges by which a curve is meant: a line of several pieces has a left and a right one."""


def slab_line(arcs: Arcs, typed: Typed, side: str | None) -> QuestionLine:
    """Return the line of the slab; ``side``: the hand on which the curve is, where somebody says it."""
    if not any(panel_of(name) == "slab" for name in typed):
        return line_of(say("numbers.unsaid"), USUAL)
    width, asked = length_of(arcs, typed, "width"), deep_asked(arcs, typed)
    if asked:
        return line_of(say("walled.asked", thickness=asked), SAID)
    if fills(typed) and not is_conflict(typed):
        return line_of(capital(say("numbers.joint").join(_of_fill(arcs, typed))), SAID)
    if is_conflict(typed):
        return line_of(say("numbers.slab_conflict"), SAID)
    if width and arcs.settled and has_no_inner(arcs, typed, side, arcs.settled.arc.radius):
        return line_of(say("numbers.slab_reaches", width=width), SAID)
    pieces = [*_of_wall(arcs, typed, width)] if is_wall(typed) else []
    return line_of(capital(say("numbers.joint").join([*pieces, *_of_slab(arcs, typed, width)])), SAID)


def is_wall(typed: Typed) -> bool:
    """Tell whether a wall is poured."""
    return typed.get("slab-poured") == "wall"


def deep_asked(arcs: Arcs, typed: Typed) -> str:
    """Return the thickness as shown where it must be said if it's a wall, empty otherwise."""
    deep = metres_of(arcs, typed, "slab-thickness", bare=False) or 0.0
    asked = deep > DEEPEST_SLAB and not typed.get("slab-poured")
    return length_of(arcs, typed, "slab-thickness", small=True) if asked else ""


def _of_wall(arcs: Arcs, typed: Typed, width: str) -> Iterator[str]:
    height = length_of(arcs, typed, "slab-thickness", small=True)
    wide, deep = (length_of(arcs, typed, f"slab-footing_{name}", small=True) for name in ("width", "depth"))
    yield say("walled.line", width=width or say("walled.blank"), height=height or say("walled.blank"))
    if wide and deep:
        yield say("walled.line_footing", width=wide, depth=deep)


def _of_slab(arcs: Arcs, typed: Typed, width: str) -> Iterator[str]:
    end, wall = length_of(arcs, typed, "slab-end_width"), is_wall(typed)
    if wall and not (width and end and end != width):
        pass  # said of the wall
    elif width and end and end != width:
        yield say("numbers.slab_tapers", width=width, end=end)
    else:
        yield say("numbers.slab_wide", width=width) if width else say("numbers.slab_no_width")
    drawn_to = typed.get("drawn_to", "")
    edge = edge_said(typed) or (drawn_to if drawn_to == "centre" else "")
    if edge:
        yield say(f"numbers.slab_lies.{edge}")
    elif width:
        yield say("numbers.slab_no_side")
    thickness = length_of(arcs, typed, "slab-thickness", small=True)
    if thickness and not wall:
        yield say("numbers.slab_thick", thickness=thickness)
    yield from _of_ends(typed)


def _of_ends(typed: Typed) -> Iterator[str]:
    """Which ends meet concrete that stands there: of a line of several pieces its own, by the words for those."""
    ends = [end for end in LINE_ENDS if typed.get(f"slab-at_{end}") == BACKS[1]]
    if not ends:
        return
    if is_lined(typed):
        named = say("ends.both_of_line") if len(ends) > 1 else say(f"ends.of_line.{ends[0]}")
    else:
        named = say("ends.both") if len(ends) > 1 else ends[0]
    yield say("numbers.slab_at", ends=named)


def fills(typed: Typed) -> bool:
    """Tell whether the slab is all that lies between the curve and its string."""
    return "slab-fills" in typed


def _of_fill(arcs: Arcs, typed: Typed) -> Iterator[str]:
    yield say("numbers.slab_fills")
    sides = length_of(arcs, typed, "slab-sides")
    if sides:
        yield say("numbers.slab_both_sides" if "slab-both_ends" in typed else "numbers.slab_sides", sides=sides)
        if "slab-both_ends" not in typed:
            yield say(f"numbers.slab_back.{typed.get('slab-back') or 'formed'}")
    thickness = length_of(arcs, typed, "slab-thickness", small=True)
    if thickness:
        yield say("numbers.slab_thick", thickness=thickness)


def edge_said(typed: Typed) -> str | None:
    """Return where the line is said to run in the slab, ``None`` where nothing says it: inside and outside, said of an
    arc before it got other pieces, say nothing of a line that bends both ways."""
    edge = typed.get("edge") or None
    return None if edge in OF_A_CURVE and is_lined(typed) else edge


def is_side_open(typed: Typed) -> bool:
    """Tell whether the work has a width, and nobody has said to which side of the line it lies."""
    drawn_to = typed.get("drawn_to", "")
    is_middle = drawn_to == "centre"
    return "width" in typed and not fills(typed) and edge_said(typed) is None and not is_middle


def side_asked(typed: Typed) -> str:
    """Return what the bar asks where that is open."""
    return say("numbers.state_side_of_wall" if is_wall(typed) else "numbers.state_side")


def is_conflict(typed: Typed) -> bool:
    """Tell whether the drawing's line is the middle of the work, and the slab is said to lie on one side of it."""
    drawn_to, edge = typed.get("drawn_to"), typed.get("edge")
    return drawn_to == "centre" and (fills(typed) or edge not in (None, drawn_to))


def edge_in(typed: Typed, side: str | None) -> str | None:
    """Return where the line runs in the slab: ``outside``, ``inside`` or ``centre``; ``None`` where nothing says it."""
    from bowstring.report.forming.plan import edge_of  # with all that a layout is

    return edge_of(edge_said(typed), side, typed.get("drawn_to"))


def has_no_inner(arcs: Arcs, typed: Typed, side: str | None, radius: float) -> bool:
    """Tell whether the slab along a line of a radius, metres, reaches the center."""
    width = max(metres_of(arcs, typed, name) or 0.0 for name in ("width", "slab-end_width"))
    return {"outside": width, "centre": width / 2}.get(edge_in(typed, side) or "", 0.0) >= radius


def slope_line(arcs: Arcs, typed: Typed) -> QuestionLine:
    """Return the line of the slope."""
    if not any(panel_of(name) == "slope" for name in typed):
        return line_of(say("numbers.unsaid"), USUAL)
    pieces = [*_along(arcs, typed), *_across(arcs, typed)] or [say("numbers.slope_limits")]
    return line_of(capital(say("numbers.joint").join(pieces)), SAID)


def _along(arcs: Arcs, typed: Typed) -> Iterator[str]:
    tops = {end: _top(arcs, typed, name) for end, name in (("A", "grade-from"), ("B", "grade-to"))}
    lined = is_lined(typed)
    filled = ".of_fill" if fills(typed) and not lined else ""  # it has one form at A, and no outer one
    if all(tops.values()):
        key = "numbers.slope_tops.line" if lined else f"numbers.slope_tops{filled}"
        yield say(key, first=tops["A"], last=tops["B"], unit=_unit(arcs))
    slope, high = _percent(typed, "grade-slope"), typed.get("grade-high", "")
    if slope == "0":
        yield say("numbers.slope_level.line" if lined else "numbers.slope_level")
    elif slope:
        other = "A" if high == "B" else "B"
        yield (
            _at_end("slope_up", high, lined, ".along" if typed.get("grade-along") else "", slope=slope, other=other)
            if high
            else say("numbers.slope_no_end", slope=slope)
        )
    elif high and not all(tops.values()):
        yield _at_end("slope_no_slope", high, lined)
    if not all(tops.values()):
        unit = _unit(arcs)
        yield from (_at_end(f"slope_top{filled}", end, lined, top=top, unit=unit) for end, top in tops.items() if top)


def _unit(arcs: Arcs) -> str:
    return "ft" if arcs.shown.feet else "m"


def _at_end(key: str, end: str, lined: bool, along: str = "", **values: str) -> str:
    """What is said of A or B; of a line's own ends as its start and its end: A and B are its arc's there."""
    if lined:
        values.pop("other", None)
        return say(f"numbers.{key}.line_{end}{along}", **values)
    return say(f"numbers.{key}", end=end, **values)


def _across(arcs: Arcs, typed: Typed) -> Iterator[str]:
    crown = length_of(arcs, typed, "grade-crown", small=True)
    cross, low = _percent(typed, "grade-cross"), typed.get("grade-low", "")
    if low in OF_A_CURVE and is_lined(typed):
        low = ""
    if crown:
        yield say("numbers.slope_crown", crown=crown)
    elif cross == "0":
        yield say("numbers.slope_flat")
    elif low:
        filled = ".of_fill" if fills(typed) and low in OF_A_CURVE else ""
        yield say(f"numbers.slope_down.{low}{filled}", cross=cross or _usual_cross())
    elif cross or (not is_wall(typed) and ("grade-slope" in typed or "grade-to" in typed)):
        yield say("numbers.slope_no_edge")


def _usual_cross() -> str:
    from bowstring.report.forming.plan import USUAL_CROSS

    return f"{100 * USUAL_CROSS:g}"


def _percent(typed: Typed, name: str) -> str:
    """Return a slope in percent as it is shown, empty where none is typed or it can't be read."""
    text = typed.get(name, "")
    try:
        return show_slope(read_slope(text, name, STEEPEST)).removesuffix("%") if text else ""
    except BadJob:
        return ""


def _top(arcs: Arcs, typed: Typed, name: str) -> str:
    metres = metres_of(arcs, typed, name, signed=True)
    if metres is None:
        return ""
    from bowstring.report.forming.heights import elevation  # no level in inches: nobody's drawing has one

    return elevation(arcs.shown, metres)
