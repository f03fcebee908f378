"""What the chord found on the ground makes of the arc drawn: taken, or not taken and why."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from bowstring.analysis.fieldfit import Fit, TapeSlip, fit_chord, slips
from bowstring.errors import BadJob, bad
from bowstring.geometry.arc import Arc
from bowstring.job.found import HOLDS
from bowstring.job.job import Job
from bowstring.units.lengths import read_length
from bowstring.units.sizes import FOOT
from bowstring.units.tape import Tape

CLOSE_MARKS = 2
CLOSE_PART = 1 / 2000
"""Two measurements of a chord agree within two marks or a 2000th of it (common practice, no source)."""

FAR = 5
"""How many times that two lengths must differ before swapped digits are thought of."""


@dataclass(frozen=True)
class Ground:
    """What was found, and the arc that follows.

    Attributes:
        found: metres, level, the mean of both measurements.
        apart: metres between the two.
        slips: what the difference from the drawn chord looks like.
        options: the arc over the found chord for each thing that could be held.
        taken: the option used, or ``None``: then the drawn arc stands.
        reason: why nothing was taken: ``apart``, ``slip``, ``choose`` or ``None``.
        arc: the arc to build.
        agrees: nothing was chosen to be held and the found chord is the drawn one within what a tape tells.
    """

    found: float
    apart: float
    slips: tuple[TapeSlip, ...]
    options: tuple[Fit, ...]
    taken: Fit | None
    reason: str | None
    arc: Arc
    agrees: bool = False


def meet_ground(drawn: Arc, job: Job) -> Ground:
    """Return what the found chord makes of a drawn arc; raises ``BadJob`` where what is held makes no arc."""
    found = job.found
    assert found is not None
    first, second = found.levelled
    chord, apart = (first + second) / 2, abs(first - second)
    close = max(CLOSE_MARKS * job.tape.mark, CLOSE_PART * drawn.chord)
    outward = max(job.outward, -drawn.radius)  # an offset past the centre is refused later
    staked = drawn.concentric(outward)
    feet = job.tape.feet
    looks_like = tuple(slips(drawn, staked, chord, list(swapped(job.tape, drawn.chord, close)), close, feet))
    options = tuple(fit_chord(drawn, chord, hold) for hold in HOLDS)
    reason = None
    if apart > close:
        reason = "apart"
    elif looks_like and not found.sure:
        reason = "slip"
    elif found.hold is None and abs(chord - drawn.chord) <= close:
        return Ground(chord, apart, looks_like, options, None, None, drawn, True)
    elif found.hold is None:
        reason = "choose"
    if reason:
        return Ground(chord, apart, looks_like, options, None, reason, drawn)
    taken = next(option for option in options if option.hold == found.hold)
    if taken.arc is None:
        raise bad("found.hold", "found.no_arc")
    return Ground(chord, apart, looks_like, options, taken, None, taken.arc)


def swapped(tape: Tape, length: float, near: float) -> Iterator[float]:
    """Yield the lengths that come out when two neighbouring digits of a shown length are swapped.

    In the job's own unit, feet also in decimals. A swap among the last digits changes no more than a real difference
    would, so what comes within a few times ``near`` explains nothing.
    """
    texts = {tape.show(length)} | ({f"{length / FOOT:.2f} ft"} if tape.feet else set())
    seen: set[int] = set()
    for text in sorted(texts):
        for place, (one, other) in enumerate(pairwise(text)):
            if one.isdigit() and other.isdigit() and one != other:
                typed = text[:place] + other + one + text[place + 2 :]
                try:
                    metres = read_length(typed, tape.unit, "found.chord").metres
                except BadJob:
                    continue
                if abs(metres - length) > FAR * near and round(metres / near) not in seen:
                    seen.add(round(metres / near))
                    yield metres
