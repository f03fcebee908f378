"""The chord found on the ground, as a job gives it."""

from __future__ import annotations

from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.geometry.plane import level_length
from bowstring.job.reader import Reader

TAPED = ("level", "ground")

HOLDS = ("radius", "sagitta", "arc_length", "directions")
"""What can be held when the chord on the ground isn't the drawn one."""


@dataclass(frozen=True)
class Found:
    """The chord as it was found.

    Attributes:
        levelled: the two measurements, level, metres.
        hold: what to hold, or ``None`` while that isn't chosen.
        sure: the crew measured again and is sure.
        held_level: the tape was held level, not laid on the ground.
    """

    levelled: tuple[float, float]
    hold: str | None
    sure: bool
    held_level: bool


def read_found(reader: Reader) -> Found | None:
    """Return the chord found, or ``None``; raises ``BadJob``."""
    found = reader.inside("found", ("chord", "tape", "fall", "hold", "sure"))
    if found is None:
        return None
    first, second = found.items("chord", 2)
    chords = found.value("chord[0]", first), found.value("chord[1]", second)
    taped = found.choice("tape", TAPED)
    fall = found.length("fall", zero=True)
    if taped is None:
        raise bad(found.field("tape"), "found.tape_unsaid")
    if taped == "ground" and fall is None:
        raise bad(found.field("fall"), "found.fall_unsaid")
    if taped == "level" and fall:
        raise bad(found.field("fall"), "found.fall_level")
    if fall and fall >= min(chords):
        raise bad(found.field("fall"), "found.fall_over_length")
    levelled = level_length(chords[0], fall or 0.0), level_length(chords[1], fall or 0.0)
    return Found(levelled, found.choice("hold", HOLDS), bool(found.flag("sure")), taped == "level")
