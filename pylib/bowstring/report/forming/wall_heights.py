"""How far under a wall's top its footing and its dig are, told; as levels and rod readings where those are given."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.grades import Grade, rod
from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import thick
from bowstring.words import say


def below_told(plan: Plan, grade: Grade, *, level: bool) -> list[str]:
    """Return how far the footing and the dig are under a wall's top, as sentences; none of a slab.

    ``level``: one line holds all along, else levels and readings are those at A.
    """
    if not on_footing(plan) or plan.said.slab.thickness is None:
        return []
    return list(_told(plan, grade, "all" if level else "A"))


def _told(plan: Plan, grade: Grade, where: str) -> Iterator[str]:
    tape, said, depths = plan.tape, plan.said.grade, _depths(plan)
    shown = {name: thick(tape, depth) for name, depth in depths.items()}
    if "dig" not in depths:
        yield say("walled.below_bottom", height=shown["wall"])
    elif "under" in depths:
        yield say("walled.below_base", footing=shown["footing"], under=shown["under"], dig=shown["dig"])
    else:
        yield say("walled.below", footing=shown["footing"], dig=shown["dig"])
    levels = {name: grade.start - depth for name, depth in {"top": 0.0, **depths}.items()}
    if said.start is not None:
        told = ", ".join(say(f"walled.of_{name}", at=elevation(tape, level)) for name, level in levels.items())
        yield say(f"walled.levels_{where}", unit="ft" if tape.feet else "m", told=told)
    if said.instrument is not None:
        reads = {name: rod(said.instrument, level) for name, level in levels.items()}
        told = ", ".join(say(f"walled.of_{name}", at=_read(plan, read)) for name, read in reads.items() if read >= 0)
        if told:
            yield say(f"walled.rods_{where}", told=told)
    if where == "A":
        yield say("walled.runs_with_top")


def _depths(plan: Plan) -> dict[str, float]:
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
    """Return a rod reading in hundredths of a foot, with inches beside them where the tape has those."""
    hundredths = elevation(plan.tape, reads)
    return say("walled.read", feet=hundredths, marks=plan.tape.show(reads)) if plan.tape.unit == "ft-in" else hundredths
