"""The tops at each stake and joint, on both edges."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.band import CENTER, INNER, OUTER
from bowstring.forming.deep import Deep
from bowstring.forming.grades import Grade, crown, cut_or_fill, rod
from bowstring.forming.pad import Pad
from bowstring.report.forming.deepness import along_arc, deep_of
from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.heights import elevation, hundredths, size_of, tape_of_heights
from bowstring.report.forming.levels import over, reading
from bowstring.report.forming.panels import jointing_of
from bowstring.report.forming.plan import Plan, is_wall, of_curve, slab_of
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.thick_edge import edge_at
from bowstring.report.forms.build_grades import AcrossRow, TopPart, TopRow
from bowstring.words import say


def rows_of(plan: Plan, grade: Grade) -> list[TopRow]:
    """Return both tops at every stake, A to B, then at every joint."""
    side, slab = plan.layout.side, slab_of(plan)
    ground = {(read.stake, of_curve(read.edge, side)): read.level for read in plan.said.grade.ground}
    deep = None if slab is None else deep_of(plan, along_arc(slab))
    if deep is None:
        ground = {}  # nothing says how deep the base is there
    return [
        {
            "kind": kind,
            "name": name,
            "share": share,
            "outside": _top(
                plan, grade, share, OUTER, ground.get((name, "outside")) if kind == "stake" else None, deep
            ),
            "inside": _top(plan, grade, share, INNER, ground.get((name, "inside")) if kind == "stake" else None, deep),
            "base": base_at(plan, deep, share),
        }
        for kind, name, share in _places(plan)
    ]


def base_at(plan: Plan, deep: Deep | None, share: float, *, back: bool = False) -> str:
    """Return how deep the base must be under the tops at a share, by a form with a thick edge that edge's; empty where
    nothing says it, and of a wall. ``back``: at a corner behind straight sides."""
    if deep is None or is_wall(plan):
        return ""
    by_edge = (plan.said.slab.thickness or 0.0) + edge_at(plan, back=back)
    return thick(plan.tape, max(deep.drawn(share), by_edge))


def has_of(rows: list[TopRow]) -> list[str]:
    """Return which of a top's texts exist in any row beside its height."""
    tops = [top for row in rows for top in (row["outside"], row["inside"]) if top]
    return [name for name in ("feet", "elevation", "rod", "dig") if any(dict(top)[name] for top in tops)]


def digs_of(rows: list[TopRow]) -> list[TopRow]:
    """Return the rows under which the ground was measured, and its cut or fill can be told."""
    return [row for row in rows if any(top and top["dig"] for top in (row["outside"], row["inside"]))]


def unknown_stakes(plan: Plan) -> list[str]:
    """Return at which names the ground was measured that no stake has."""
    names = {name for name, _ in plan.shares()}
    if isinstance(plan.filled, Pad):
        names |= set(backs_of(plan, plan.filled)[1])
    return list(dict.fromkeys(read.stake for read in plan.said.grade.ground if read.stake not in names))


def backs_of(plan: Plan, pad: Pad) -> tuple[list[tuple[str, float]], list[str]]:
    """Return the stakes behind which tops stand at the other end, and what those places are called: its two corners,
    and where that is round straight back of every stake."""
    found = [(name, share) for name, share in plan.shares() if pad.both or not 0 < share < 1]
    return found, [say("pad.back_of", stake=name) for name, _share in found]


def lacks_hand(plan: Plan) -> bool:
    """Return whether the ground was measured on the left or the right of a curve whose hand isn't known; of a slab that
    fills its curve there is one edge."""
    return plan.filled is None and any(of_curve(read.edge, plan.layout.side) is None for read in plan.said.grade.ground)


def _places(plan: Plan) -> Iterator[tuple[str, str, float]]:
    yield from (("stake", name, share) for name, share in plan.shares())
    jointing = jointing_of(plan)
    if jointing is not None and not jointing.stopped:
        panels = jointing.chosen
        yield from (("joint", str(number), share) for number, share in enumerate(panels.shares[:-1], 1))


def _top(plan: Plan, grade: Grade, share: float, across: float, ground: float | None, deep: Deep | None) -> TopPart:
    deeper = max(deep.drawn(share) - deep.depth, edge_at(plan, back=False)) if deep else 0.0
    return top_of(plan, grade.top(share, across), grade.start, ground, deeper)


def top_of(plan: Plan, top: float, start: float, ground: float | None, deeper: float = 0.0) -> TopPart:
    """Return what is told of a top, metres, over the one at A; ``ground``: the height measured under it, if any;
    ``deeper``: how much thicker the slab is there than elsewhere."""
    tape, said = plan.tape, plan.said.grade
    told = over(tape, top, start)
    reads = None if said.instrument is None else rod(said.instrument, top)
    seen = reads is not None and reads >= 0
    return {
        "level": top - start,
        "shown": told.shown,
        "tight": told.tight,
        "low": told.low,
        "feet": told.feet,
        "elevation": "" if said.start is None else elevation(tape, top),
        "rod": elevation(tape, reading(tape, said.instrument, top)) if said.instrument is not None and seen else "",
        "rod_marks": tape.show(reads) if reads is not None and seen and tape.unit == "ft-in" else "",
        "dig": "" if ground is None else _dig(plan, top - deeper, ground),
        "ground": "" if ground is None or not on_footing(plan) else elevation(tape, ground),
    }


def _dig(plan: Plan, top: float, ground: float) -> str:
    """Return how much is cut or filled; empty as long as nothing says how thick the slab is, or a wall's footing."""
    deep = underside(plan)
    if deep is None:
        return ""
    metres = cut_or_fill(top, deep, plan.said.slab.base or 0.0, ground)
    if not tape_of_heights(plan.tape).round(metres):
        return say("grades.no_dig")
    return say("grades.cut" if metres > 0 else "grades.fill", depth=size_of(plan.tape, metres))


def across_rows(plan: Plan, grade: Grade) -> list[AcrossRow]:
    """Return a crown's heights at the quarter points of the width, from one edge to the other."""
    if not grade.crown:
        return []
    rows: list[AcrossRow] = []
    width = grade.band.width(CENTER)
    for quarter in range(5):
        above = crown(4.0, grade.crown, float(quarter))
        marks = tape_of_heights(plan.tape)
        rows.append(
            {
                "across": width * quarter / 4,
                "across_shown": plan.tape.show(width * quarter / 4),
                "height": above,
                "shown": marks.show(above) if marks.round(above) else "0",  # over the edges: none is a low one
                "feet": hundredths(above) if plan.tape.unit == "ft-in" else "",
            }
        )
    return rows
