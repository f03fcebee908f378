"""What stands right under typed figures of the slab as they are typed: both forms' tops, and along which line an apron
is taken."""

from __future__ import annotations

from bowstring.faces.one_line import metres_of
from bowstring.faces.settling import Arcs, Typed
from bowstring.faces.slab_lines import edge_in, fills, has_no_inner, is_wall
from bowstring.geometry.arc import Arc
from bowstring.job.terms import is_lined
from bowstring.sheet.markup import marked
from bowstring.words import say

APRON, TOPS = "apron-told", "tops-told"
"""Where each stands on the page."""


def slab_beside(arcs: Arcs, typed: Typed, side: str | None, arc: Arc | None = None) -> dict[str, str]:
    """Return what is told, as HTML by where it stands, empty while there is nothing; ``arc``: the one that is laid out,
    where it isn't that of the fields."""
    line = arc or (arcs.settled.arc if arcs.settled else None)
    one_arc = not (is_lined(typed) or fills(typed) or is_wall(typed))
    told = {APRON: _apron(arcs, typed, side, line), TOPS: _tops(arcs, typed, side)} if one_arc else {}
    return {APRON: "", TOPS: "", **told}


def _apron(arcs: Arcs, typed: Typed, side: str | None, line: Arc | None) -> str:
    """Along which line it is taken, and where that is along the other; asked where nobody says it."""
    ends = [metres_of(arcs, typed, f"slab-apron-{end}") for end in ("from", "to")]
    said = typed.get("slab-apron-along", "")
    if None in ends or edge_in(typed, side) in (None, "outside"):
        return ""
    strong = marked(say(f"numbers.apron_{said or 'asked'}"))
    longer = _longer(arcs, typed, side, line)
    on_other = ""
    if longer:
        times = longer if said == "line" else 1 / longer
        first, last = (arcs.shown.show_running((at or 0.0) * times) for at in ends)
        other = "line" if said == "line" else "outer"
        on_other = f" {marked(say(f'numbers.apron_{other}_other', first=first, last=last))}"
    told = f"<p><b>{strong}</b>{on_other}</p>"
    return told if said else f'<div data-tint="">{told}</div>'


def _longer(arcs: Arcs, typed: Typed, side: str | None, line: Arc | None) -> float:
    """How many times as long as the drawing's line the outer form is; 0 where that isn't known, or changes along it."""
    width, edge = metres_of(arcs, typed, "width"), edge_in(typed, side)
    if not width or line is None or metres_of(arcs, typed, "slab-end_width") not in (None, width):
        return 0.0
    if has_no_inner(arcs, typed, side, line.radius):
        return 0.0
    return 1 + (width if edge == "inside" else width / 2) / line.radius


def _tops(arcs: Arcs, typed: Typed, side: str | None) -> str:
    """Both forms' tops where one of the outer form's is typed."""
    from bowstring.report.forming.heights import elevation

    tops = {end: metres_of(arcs, typed, f"grade-{name}", signed=True) for end, name in (("A", "from"), ("B", "to"))}
    known = {end: top for end, top in tops.items() if top is not None}
    falls = _falls(arcs, typed, side) if known else None
    if falls is None:
        return ""
    outer, inner = (
        say("numbers.joint").join(
            say("numbers.top_at", end=end, top=elevation(arcs.shown, top - lower * falls[end]))
            for end, top in known.items()
        )
        for lower in (0, 1)
    )
    return (
        f"<p>{marked(say('numbers.tops_outer', tops=outer))} <b>{marked(say('numbers.tops_inner', tops=inner))}</b></p>"
    )


def _falls(arcs: Arcs, typed: Typed, side: str | None) -> dict[str, float] | None:
    """How far the inner form stands under the outer one at A and at B, metres; ``None`` where nobody says it yet."""
    from bowstring.errors import BadJob
    from bowstring.report.forming.plan import USUAL_CROSS, of_curve
    from bowstring.units.slopes import STEEPEST, read_slope

    width = metres_of(arcs, typed, "width")
    if not width:
        return None
    if "grade-crown" in typed:
        return {"A": 0.0, "B": 0.0}
    try:
        percent = read_slope(typed["grade-cross"], "grade.cross", STEEPEST) if "grade-cross" in typed else None
    except BadJob:
        return None
    cross = USUAL_CROSS if percent is None else float(percent / 100)
    low = of_curve(typed.get("grade-low"), side)
    if cross and low is None:
        return None
    drop = cross if low == "inside" else -cross
    return {"A": drop * width, "B": drop * (metres_of(arcs, typed, "slab-end_width") or width)}
