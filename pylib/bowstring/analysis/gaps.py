"""Which gaps between neighbours are worth a check: the common one, and those that are odd."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.analysis.checks import Check

FEW = 3
"""So many lengths are told as they are; nobody tapes a list of more."""


def telling_gaps(checks: Sequence[Check], mark: float) -> tuple[Check, ...]:
    """Return the checks without the gaps that only lead from one length to the next: kept are the widest, the
    narrowest and the common ones, where they read (to a ``mark``, metres) more than a few lengths."""

    def reads(gap: Check) -> int:
        return round(gap.distance / mark)

    lengths = sorted(reads(check) for check in checks if check.kind == "gap")
    if len(set(lengths)) <= FEW:
        return tuple(checks)
    middle = lengths[len(lengths) // 2]
    common = max(lengths, key=lambda length: (lengths.count(length), -abs(length - middle)))
    kept = {lengths[0], common, lengths[-1]}
    return tuple(check for check in checks if check.kind != "gap" or reads(check) in kept)
