"""Cautions of the method that was asked for: what is in its way, and what it can't keep."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.report.advice import name_of, why_not
from bowstring.report.caution import Caution, caution
from bowstring.report.demand import HOPELESS
from bowstring.units.worst import worst_shown


def cautions_of_method(layout: Layout, own: Row, advised: Callable[[], Row | None]) -> Iterator[Caution]:
    """Yield what keeps this method from being staked here, and what its numbers cost.

    ``advised``: finds the row of the advised method, which takes the comparison of all; asked where it is needed.
    """
    tape, tolerance = layout.job.shown, layout.job.tolerance
    method = name_of(layout, own)
    if own.blocks:
        yield caution("caution.method_blocked", method=method, why=why_not(layout, own))
    if own.few_hands:
        yield caution("caution.method_hands", method=method, hands=own.method.hands, there=layout.job.site.hands)
    # Sagittae of less than a few marks are told by themselves, and what they do stays small.
    if not own.method.halves and own.accuracy is not None and not own.accuracy.reliable:
        yield caution("caution.method_unreliable", method=method)
    yield from _hopeless(layout, own, method, advised)
    if not own.method.exact and layout.misses.worst:
        worst, at = abs(layout.misses.worst), layout.misses.at
        if tolerance is not None and worst > tolerance:
            shown, allowed = tape.show_over(worst, tolerance)
            yield caution("caution.rule_over", worst=shown, at=at, tolerance=allowed)
        else:
            yield caution("caution.rule", worst=tape.show_small(worst), at=at)
    site = layout.job.site
    if any(layout.slope):
        yield caution("caution.slope_numbers")
    in_parts = any(step.kind in ("prove_two", "prove_parts") for step in layout.recipe.steps)
    if own.longest_pull and in_parts and layout.staked.chord > site.tape_length:
        yield caution("caution.chord_over_tape", chord=tape.show(layout.staked.chord), tape=tape.show(site.tape_length))


def _hopeless(layout: Layout, own: Row, method: str, advised: Callable[[], Row | None]) -> Iterator[Caution]:
    """A method whose worst stake may be many tolerances off: no care makes up for it. Who chose it is stopped, and told
    which other to take; where it is itself the advised one, or none is, nothing else would do better."""
    tape, tolerance = layout.job.shown, layout.job.tolerance
    if tolerance is None or not own.possible or own.accuracy is None or own.accuracy.miss_95 <= HOPELESS * tolerance:
        return  # by the scatter alone: what was got, or a rule's own miss, is told by itself
    miss = worst_shown(tape, own.accuracy.miss_95, tolerance)
    values = {"method": method, "miss": miss, "tolerance": tape.show_limit(tolerance)}
    better = advised()
    if better is None or (better.stands_for(own) and better.halve_first == own.halve_first):
        yield caution("caution.method_misses", **values)
        return
    yield caution(
        "caution.method_hopeless",
        advised=name_of(layout, better),
        best=worst_shown(tape, better.expected, tolerance),
        **values,
    )
