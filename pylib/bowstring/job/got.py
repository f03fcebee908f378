"""What the crew really got at a stake, as a job gives it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bowstring.errors import bad
from bowstring.job.reader import Reader

MOST_GOT = 1000
"""Rows: nobody measures more stakes again, and the form has as many."""


@dataclass(frozen=True)
class Got:
    """What was really measured at a stake: its sagitta, or the two half chords (from A's side and from B's), metres."""

    stake: str
    sagitta: float | None = None
    half_chords: tuple[float, float] | None = None


def read_got(reader: Reader) -> dict[str, Got]:
    """Return what was got at stakes, by stake name; raises ``BadJob``."""
    if "got" not in reader.job:
        return {}
    rows = reader.job["got"]
    if not isinstance(rows, list | tuple):
        raise bad("got", "got.not_a_list")
    if len(rows) > MOST_GOT:
        raise bad("got", "got.too_many", most=MOST_GOT, count=len(rows))
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
