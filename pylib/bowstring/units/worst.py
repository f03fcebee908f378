"""How far off the worst stake may stand, written everywhere alike: never less than it is, by the tape's own marks."""

from __future__ import annotations

from bowstring.units.tape import Tape


def worst_shown(tape: Tape, metres: float, limit: float | None = None) -> str:
    r"""Return a miss, metres (0 or more), as the first mark that is no less; ``limit``: what it may be, which stands
    beside it by ``Tape.show_limit``.

    A miss that keeps its limit never reads as over it: where the mark above would, it is told finer.

    >>> from bowstring.units.tape import make_tape
    >>> tape = make_tape("ft-in", "1/8 in")
    >>> worst_shown(tape, 0.0076), worst_shown(tape, 0.0076, 0.0254 * 0.3)
    ('3/8 in', '0.30 in')
    """
    above = tape.down(metres)
    if above < metres * (1 - 1e-9):
        above += tape.mark
    if limit is not None and metres <= limit < above * (1 - 1e-9):
        return tape.show_cost(metres)
    return tape.show_up(metres)
