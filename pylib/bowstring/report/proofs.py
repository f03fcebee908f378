"""The numbers of a step that proves the ends where no single pull goes from one to the other."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.construction import Step
from bowstring.geometry.plane import distance
from bowstring.layout.layout import Layout
from bowstring.layout.limits import squares_here
from bowstring.report.square import square_words
from bowstring.words import say


def proof_values(layout: Layout, step: Step, lengths: Sequence[str]) -> dict[str, object]:
    """Return the values of such a step's sentence beside its own measures, whose texts are ``lengths``; none for any
    other step."""
    if not step.kind.startswith("prove_"):
        return _untaped(layout, step)
    at, tape = layout.recipe.at, layout.job.shown
    whole = distance(at[step.names["start"]], at[step.names["end"]])
    values: dict[str, object] = {"whole": tape.show(whole), "rest": lengths[-1]}
    if "beside" in step.names:
        times = f"{whole / step.measures[-1].length:.0f}"
        values |= {"times": times, "part": say(f"proof.part_{times}")}
    return values


def _untaped(layout: Layout, step: Step) -> dict[str, object]:
    """How an end is squared off a straight where the third side of its triangle can't be taped."""
    if step.level or not step.kind.endswith("_untaped"):
        return {}
    squares = squares_here(layout.job, layout.setting, layout.recipe)
    found = [squares[mark] for mark in step.sets if mark in squares]
    return {"square": square_words(layout.job.shown, found[0])} if found else {}
