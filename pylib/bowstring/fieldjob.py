"""The parts of a job that come from the ground: the chord found, and what was got at a stake."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.methods.halving import Got
from bowstring.reader import Reader
from bowstring.walks.fieldfit import HOLDS, level_length

TAPED = ("level", "ground")


@dataclass(frozen=True)
class Found:
    """The chord as it was found.

    Attributes:
        levelled: the two measurements, level, metres.
        hold: what to hold, or ``None`` while that isn't chosen.
        sure: the crew measured again and is sure.
    """

    levelled: tuple[float, float]
    hold: str | None
    sure: bool


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
    return Found(levelled, found.choice("hold", HOLDS), bool(found.flag("sure")))


def read_got(reader: Reader) -> dict[str, Got]:
    """Return what was got at stakes, by stake name; raises ``BadJob``."""
    if "got" not in reader.job:
        return {}
    rows = reader.job["got"]
    if not isinstance(rows, list | tuple):
        raise bad("got", "got.not_a_list")
    read: dict[str, Got] = {}
    for number, row in enumerate(rows):
        got = reader.within(f"got[{number}]", row, ("stake", "sagitta", "half_chords"))
        stake = got.text("stake", 8).upper()  # no two names differ by the size of a letter
        if not stake:
            raise bad(got.field("stake"), "got.no_stake")
        if stake in read:
            raise bad(got.field("stake"), "got.twice", stake=stake)
        if not {"sagitta", "half_chords"} & got.job.keys():
            raise bad(got.field("sagitta"), "got.neither", stake=stake)
        if "sagitta" in got.job and "half_chords" in got.job:
            raise bad(got.field("sagitta"), "got.one_of_two")
        if "sagitta" in got.job:
            read[stake] = Got(stake, sagitta=got.length("sagitta"))
        else:
            pair: Sequence[object] = got.items("half_chords", 2)
            read[stake] = Got(
                stake,
                half_chords=(got.value("half_chords[0]", pair[0]), got.value("half_chords[1]", pair[1])),
            )
    return read
