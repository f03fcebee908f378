"""How far under a wall's top its footing and its dig are, told; as levels and rod readings where those are given."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.levels import reading
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import thick
from bowstring.report.forms.build_grades import LevelTable
from bowstring.words import say


def below_told(plan: Plan, *, level: bool) -> list[str]:
    """Return how far the footing and the dig are under a wall's top, as sentences; none of a slab. ``level``: whether
    its top is, all along."""
    if not on_footing(plan) or plan.said.slab.thickness is None:
        return []
    return [_below(plan), *([] if level else [say("walled.runs_with_top")])]


def _below(plan: Plan) -> str:
    shown = {name: thick(plan.tape, depth) for name, depth in depths_under(plan).items()}
    if "dig" not in shown:
        return say("walled.below_bottom", height=shown["wall"])
    if "under" in shown:
        return say("walled.below_base", footing=shown["footing"], under=shown["under"], dig=shown["dig"])
    return say("walled.below", footing=shown["footing"], dig=shown["dig"])


def levels_of(plan: Plan, start: float, *, level: bool) -> LevelTable | None:
    """Return the levels and the readings of a wall's top and of what is under it, of those that the job has; ``None``
    of a slab, and where it has neither. ``start``: the top at A, metres, or all along where that is ``level``."""
    said, tape = plan.said.grade, plan.tape
    hi = said.instrument
    if not on_footing(plan) or plan.said.slab.thickness is None or (said.start is None and hi is None):
        return None
    heads = [say("walled.all_along" if level else "walled.at_A"), say("walled.head_below")]
    heads += [] if said.start is None else [say("walled.head_level", unit="ft" if tape.feet else "m")]
    heads += [] if hi is None else [say("walled.head_rod", hi=elevation(tape, hi))]
    rows = []
    for name, depth in {"top": 0.0, **depths_under(plan)}.items():
        row = [say(f"walled.row_{name}"), thick(tape, depth) if depth else "0"]
        row += [] if said.start is None else [elevation(tape, start - depth)]
        row += [] if hi is None else [_read(plan, reading(tape, hi, start - depth))]
        rows.append(row)
    return {"heads": heads, "rows": rows}


def levels_told(plan: Plan, start: float) -> Iterator[str]:
    """Yield the levels and the readings of a top that is level all along, and of what is under it, as sentences."""
    tape, said = plan.tape, plan.said.grade
    if not on_footing(plan) or plan.said.slab.thickness is None:
        return
    levels = {name: start - depth for name, depth in {"top": 0.0, **depths_under(plan)}.items()}
    if said.start is not None:
        told = ", ".join(say(f"walled.of_{name}", at=elevation(tape, level)) for name, level in levels.items())
        yield say("walled.levels", unit="ft" if tape.feet else "m", told=told)
    if said.instrument is not None:
        reads = {name: _read(plan, reading(tape, said.instrument, level)) for name, level in levels.items()}
        told = ", ".join(say(f"walled.of_{name}", at=read) for name, read in reads.items() if read)
        if told:
            yield say("walled.rods", told=told)


def depths_under(plan: Plan) -> dict[str, float]:
    """Return what is so far under the top, metres, from above."""
    said, deep = plan.said.slab, underside(plan)
    assert said.thickness is not None
    if deep is None:
        return {"wall": said.thickness}
    found = {"footing": said.thickness}
    if said.base:
        found["under"] = deep
    return {**found, "dig": deep + (said.base or 0.0)}


def _read(plan: Plan, reads: float) -> str:
    """Return a rod reading in hundredths of a foot, with inches beside them where the tape has those; empty over the
    instrument, where none can be read."""
    if reads < 0:
        return ""
    hundredths = elevation(plan.tape, reads)
    return say("walled.read", feet=hundredths, marks=plan.tape.show(reads)) if plan.tape.unit == "ft-in" else hundredths
