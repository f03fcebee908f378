"""How far under a wall's top its footing and its dig are, told; as levels and rod readings where those are given."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.report.forming.footing import on_footing, underside
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.levels import reading
from bowstring.report.forming.plan import Plan
from bowstring.report.forming.quantities import thick
from bowstring.words import say

ALL, START, NONE = "all", "A", ""
"""Where levels and readings hold: all along, at A, or they are told of nowhere."""


def below_told(plan: Plan, start: float, where: str) -> list[str]:
    """Return how far the footing and the dig are under a wall's top, as sentences; none of a slab.

    ``start``: its top where it begins, metres; ``where``: ``ALL`` of a top that is level, else ``START`` or ``NONE``.
    """
    if not on_footing(plan) or plan.said.slab.thickness is None:
        return []
    told = [_below(plan), *(_levels(plan, start, where) if where else ())]
    return told if where == ALL else [*told, say("walled.runs_with_top")]


def _below(plan: Plan) -> str:
    shown = {name: thick(plan.tape, depth) for name, depth in depths_under(plan).items()}
    if "dig" not in shown:
        return say("walled.below_bottom", height=shown["wall"])
    if "under" in shown:
        return say("walled.below_base", footing=shown["footing"], under=shown["under"], dig=shown["dig"])
    return say("walled.below", footing=shown["footing"], dig=shown["dig"])


def _levels(plan: Plan, start: float, where: str) -> Iterator[str]:
    """Yield the levels and the readings of what is under a top, and its own."""
    tape, said = plan.tape, plan.said.grade
    levels = {name: start - depth for name, depth in {"top": 0.0, **depths_under(plan)}.items()}
    if said.start is not None:
        told = ", ".join(say(f"walled.of_{name}", at=elevation(tape, level)) for name, level in levels.items())
        yield say(f"walled.levels_{where}", unit="ft" if tape.feet else "m", told=told)
    if said.instrument is not None:
        reads = {name: reading(tape, said.instrument, level) for name, level in levels.items()}
        told = ", ".join(say(f"walled.of_{name}", at=_read(plan, read)) for name, read in reads.items() if read >= 0)
        if told:
            yield say(f"walled.rods_{where}", told=told)


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
    """Return a rod reading in hundredths of a foot, with inches beside them where the tape has those."""
    hundredths = elevation(plan.tape, reads)
    return say("walled.read", feet=hundredths, marks=plan.tape.show(reads)) if plan.tape.unit == "ft-in" else hundredths
