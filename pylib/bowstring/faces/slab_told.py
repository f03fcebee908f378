"""What the slab's panel says as it is typed: the other edge, or what is to be settled before there is one."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from bowstring.faces.help_line import fill_button
from bowstring.faces.one_line import length_of, metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import deep_asked, edge_in, fills, has_no_inner, is_conflict, is_wall
from bowstring.faces.typed_dig import clear_of_dig
from bowstring.geometry.arc import Arc
from bowstring.sheet.markup import marked
from bowstring.words import say

if TYPE_CHECKING:
    from bowstring.forming.slab import Lies
    from bowstring.report.forms.in_dig import InDigPart

_LIES: dict[str, Lies] = {"outside": "inside", "centre": "both", "inside": "outside"}
"""Where the slab lies from the line, by where the line runs in it."""

_OF_WALL = {
    "numbers.slab_which": "numbers.slab_which.of_wall",
    "numbers.slab_centre": "numbers.slab_centre.of_wall",
    "numbers.slab_no_inner": "numbers.slab_no_inner.of_wall",
    "numbers.slab_inner": "numbers.slab_inner.of_wall",
    "numbers.slab_outer": "numbers.slab_outer.of_wall",
    "numbers.slab_edges": "numbers.slab_edges.of_wall",
}


def slab_told(
    arcs: Arcs, typed: Typed, side: str | None, arc: Arc | None = None, in_dig: InDigPart | None = None
) -> str:
    """Return it as HTML, empty while there is nothing to be said; ``arc``: the one that is laid out, where a chord that
    was found makes it another than the drawing's; ``in_dig``: what the answer says of a wall's dig, where ground was
    measured there."""
    first = _first(arcs, typed)
    if first:
        return f'<div data-tint="">{first}</div>'
    line = arc or (arcs.settled.arc if arcs.settled and not _is_found(typed) else None)
    if fills(typed):
        return "" if line is None else _filled(arcs, typed, line) + _in_dig(arcs, typed, side, None)
    width = metres_of(arcs, typed, "width")
    if not width or line is None:
        drawn_to = typed.get("drawn_to")
        return _of_poured("numbers.slab_centre", typed) if drawn_to == "centre" and "edge" not in typed else ""
    edge = edge_in(typed, side)
    if edge is None:
        return ""
    if has_no_inner(arcs, typed, side, line.radius):
        instead = fill_button({"slab-fills": "yes"}, say("fill.instead")) if edge == "outside" else ""
        return f'<div data-tint="">{_of_poured("numbers.slab_no_inner", typed)}{instead}</div>'
    told = _of_wall(arcs, typed) + _edges(arcs, typed, line, width, edge) + _in_dig(arcs, typed, side, in_dig)
    return told + (_of_poured("numbers.slab_centre", typed) if edge == "centre" and "edge" not in typed else "")


def _first(arcs: Arcs, typed: Typed) -> str:
    """What has to be settled before anything is told, with its answers."""
    deep = deep_asked(arcs, typed)
    if deep:
        return _told("walled.told", thickness=deep) + _what_poured(deep)
    return _of_poured("numbers.slab_which", typed) + _ways_out(typed) if is_conflict(typed) else ""


def _of_poured(key: str, typed: Typed, **values: str) -> str:
    """What is told of a slab, or the same of a wall."""
    return _told(_OF_WALL[key] if is_wall(typed) else key, **values)


def _what_poured(deep: str) -> str:
    """A button for each thing that so deep a number could mean."""
    return "".join(
        fill_button({"slab-poured": what}, say(f"walled.is_{what}", thickness=deep)) for what in ("wall", "slab")
    )


def _of_wall(arcs: Arcs, typed: Typed) -> str:
    """What can't be right of a wall: thicker than it's high, or on a footing narrower than it."""
    if not is_wall(typed):
        return ""
    thick, high = (metres_of(arcs, typed, name) or 0.0 for name in ("width", "slab-thickness"))
    foot, told = metres_of(arcs, typed, "slab-footing_width") or 0.0, ""
    width, height = length_of(arcs, typed, "width"), length_of(arcs, typed, "slab-thickness", small=True)
    if thick > high > 0:
        told = _told("walled.swapped", width=width, height=height)
    if 0 < foot < thick:
        told += _told("walled.narrow", footing=length_of(arcs, typed, "slab-footing_width", small=True), width=width)
    return f'<div data-tint="">{told}</div>' if told else ""


def _in_dig(arcs: Arcs, typed: Typed, side: str | None, in_dig: InDigPart | None) -> str:
    """That the stakes would be dug out, and how far off the line they wouldn't."""
    clear = clear_of_dig(arcs, typed, side)
    if clear is None:
        return ""
    from bowstring.report.forming.in_dig import deep_told, dug_told, ways_out_of

    show = arcs.shown.show_up
    key = "walled.in_dig_fill" if fills(typed) else "walled.in_dig"  # toward the center all is slab
    told = _told(key, outside=show(clear.outside), inside=show(clear.inside))
    deep = in_dig["deep_shown"] if in_dig else deep_told(clear, arcs.tape, arcs.shown)
    texts = [dug_told(clear, arcs.shown, wall=is_wall(typed)), *([say("in_dig.by_depth", deep=deep)] if deep else [])]
    made = in_dig["ways"] if in_dig else ways_out_of(clear, arcs.tape, arcs.shown)
    ways = "".join(fill_button(way["fields"], way["text"]) for way in made)
    return f"{told}<p>{marked(' '.join(texts))}</p>{ways}"


def _filled(arcs: Arcs, typed: Typed, line: Arc) -> str:
    """How large the slab is that fills its curve, with its straight sides where some are typed."""
    from bowstring.forming.pad import Pad, takes_sides
    from bowstring.forming.segment import Segment
    from bowstring.report.forming.quantities import area_text

    shown, sides = arcs.shown, metres_of(arcs, typed, "slab-sides")
    if sides:
        if not takes_sides(line):
            without = fill_button({"slab-sides": "", "slab-both_ends": ""}, say("pad.without"))
            return f'<div data-tint="">{_told("numbers.slab_no_sides")}{without}</div>'
        made = Pad(line, sides, "slab-both_ends" in typed)
        return _told("numbers.slab_pad", chord=shown.show(line.chord), deep=shown.show(made.deep),
                     area=area_text(made.area, shown.feet))  # fmt: skip
    filled = Segment(line)
    return _told("numbers.slab_filled", chord=shown.show(line.chord), deep=shown.show(filled.deep),
                 area=area_text(filled.area, shown.feet))  # fmt: skip


def _edges(arcs: Arcs, typed: Typed, line: Arc, width: float, edge: str) -> str:
    from bowstring.forming.slab import Slab

    show = arcs.shown.show
    end = metres_of(arcs, typed, "slab-end_width")
    if end is not None and end != width:
        return _told("numbers.slab_tapered", width=show(width), end=length_of(arcs, typed, "slab-end_width"))
    lies = _LIES[edge]
    slab = Slab.along(line, width, lies)
    if lies == "both":
        half = arcs.shown.show_whole(width / 2)
        return _of_poured("numbers.slab_edges", typed, outer=show(slab.outer), inner=show(slab.inner), half=half)
    other = slab.line(slab.inner if lies == "inside" else slab.outer)
    key = "numbers.slab_inner" if lies == "inside" else "numbers.slab_outer"
    values = {"radius": show(other.radius), "chord": show(other.chord), "sagitta": show(other.sagitta)}
    return _of_poured(key, typed, **values)


def _is_found(typed: Typed) -> bool:
    return any(name.startswith("found-chord") for name in typed)


def _told(key: str, **values: str) -> str:
    strong, _, rest = say(key, **values).partition("|")
    return f"<p><b>{marked(strong)}</b> {marked(rest)}</p>"


def _ways_out(typed: Typed) -> str:
    both = {"edge": "centre", "slab-fills": ""} if fills(typed) else {"edge": "centre"}
    line = escape(say("numbers.slab_line"))
    return (
        fill_button(both, say("numbers.slab_both"))
        + f'<button type="button" class="small" data-do="panel" data-panel="line">{line}</button>'
    )
