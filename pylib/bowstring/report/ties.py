"""Cautions of the ends' ties: one that the tape is too short for, or that something is in the way of, brings nothing
back."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.analysis.obstructions import SPARE, Obstructions
from bowstring.layout.layout import Layout
from bowstring.layout.limits import limits_of
from bowstring.report.caution import Caution, caution


def cautions_of_ties(layout: Layout) -> Iterator[Caution]:
    """Yield each tie that can't be taped; what is in its way is seen where it goes to a known point."""
    job, at = layout.job, layout.recipe.at
    ground = Obstructions(layout.staked, limits_of(job))
    known = {mark.name.casefold(): mark.point for mark in job.site.known}
    for end, ties in job.ties.items():
        stands = f"{end}0" if job.outward else end
        for tie in ties:
            values = {"end": stands, "to": tie.to, "shown": job.shown.show(tie.distance)}
            if tie.distance > job.site.tape_length + SPARE:
                yield caution("caution.tie_over_tape", tape=job.shown.show(job.site.tape_length), **values)
            elif tie.to.casefold() in known:
                for what in ground.stoppers(at[stands], known[tie.to.casefold()]):
                    yield caution("caution.tie_blocked", what=what, **values)
