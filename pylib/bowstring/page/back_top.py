"""The top at the other end of straight sides, told beside the top that is typed at A or B."""

from __future__ import annotations

from bowstring.job.job import Job
from bowstring.report.forming.grade_said import cross_of, waits_for
from bowstring.report.forming.heights import elevation
from bowstring.report.forming.plan import of_curve
from bowstring.units.tape import Tape
from bowstring.words import say


def backs_told(job: Job, seen: Tape) -> dict[str, str]:
    """Return, by the id of the field that a top is typed in, where that brings the top straight back of it: of a slab
    with straight sides, once its slope off the string is known. A drawing often gives the top at the building."""
    slab, grade = job.forming.slab, job.forming.grade
    low = of_curve(grade.low, job.side)
    if not slab.fills or slab.sides is None or slab.both_ends or grade.crown is not None:
        return {}
    if grade.cross != 0 and (low is None or waits_for(grade, low) == "low"):
        return {}
    fall = cross_of(grade, low) * slab.sides
    key = "numbers.top_building" if slab.back == "against" else "numbers.top_back"
    tops = (("grade-from", "A-2", grade.start), ("grade-to", "B-2", grade.end))
    unit = "ft" if seen.feet else "m"
    levels = ((name, corner, f"{elevation(seen, top - fall)} {unit}") for name, corner, top in tops if top is not None)
    return {name: say(key, corner=corner, level=level) for name, corner, level in levels}
