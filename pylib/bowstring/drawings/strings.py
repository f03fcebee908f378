"""What is read at each string of a level: the steps' own numbers, different where something else was found.

A row of ``halving`` holds the arc's numbers. Once a stake stands elsewhere (``got``), the steps after it are
made anew and a row's number would be a wrong one: one that no step gives is left out.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.halving import LevelRow
from bowstring.report.forms.stakes import StakeRow
from bowstring.report.forms.steps import Reading, TapeMeasure, TurnedAngle

Numbers = tuple[str | None, str, str, tuple[str, str] | None]
_NOMINAL = 1e-7  # metres: a step's length this near a row's is the row's


@dataclass(frozen=True)
class String:
    """One string of a level, from an older stake to the next, and the new stake over its middle.

    Texts as the crew reads them; ``half_chords`` from the start and from the end; ``None`` where nobody says.
    """

    start: StakeRow
    new: StakeRow
    end: StakeRow
    chord: str | None
    half: str
    sagitta: str
    half_chords: tuple[str, str] | None
    nominal: bool
    """Whether these are the level's row's own numbers."""
    crossed: bool = False
    """Whether its stake is set by two tapes from its ends, so that neither its middle nor its offset is used."""

    @property
    def names(self) -> tuple[str, str, str]:
        """The names of its start, its new stake and its end."""
        return (self.start["name"], self.new["name"], self.end["name"])

    @property
    def numbers(self) -> Numbers:
        """Everything that is read, to compare strings by."""
        if self.crossed:
            return (None, "", "", self.half_chords)
        return (self.chord, self.half, self.sagitta, self.half_chords)

    @property
    def half_chord(self) -> str | None:
        """The half chord's text where both are alike."""
        both = self.half_chords
        return both[0] if both is not None and both[0] == both[1] else None


def row_of(answer: Answer, level: int) -> LevelRow:
    """Return the halving row of a level. Raises ``KeyError`` when there is none."""
    for row in answer["halving"]:
        if row["level"] == level:
            return row
    raise KeyError(f"no level {level}")


def strings_of(answer: Answer, level: int) -> list[String]:
    """Return a level's strings from A to B. Raises ``KeyError`` for a level without any."""
    row = row_of(answer, level)
    read = _read(answer)
    standing = [stake for stake in answer["stakes"] if stake["level"] <= level]
    threes = zip(standing, standing[1:], standing[2:], strict=False)
    crossed = {step["stake"] for step in answer["steps"] if step["kind"] == "stake_crossed"}
    strings = [_string(row, read, three, three[1]["name"] in crossed) for three in threes if three[1]["level"] == level]
    if not strings:
        raise KeyError(f"no string at level {level}")
    return strings


def _read(answer: Answer) -> dict[frozenset[str], tuple[float, str]]:
    """Every distance that a step measures or reads, by its two marks; what is measured wins."""
    read: dict[frozenset[str], tuple[float, str]] = {}
    measured = [measure for step in answer["steps"] for measure in step["measures"]]
    readings = [reading for step in answer["steps"] for reading in step["readings"]]
    every: list[Reading | TapeMeasure | TurnedAngle] = [*readings, *measured]
    for one in every:
        if "distance" in one:
            read[frozenset((one["from"], one["to"]))] = (one["distance"], one["shown"])
    return read


def _string(
    row: LevelRow,
    read: Mapping[frozenset[str], tuple[float, str]],
    stakes: tuple[StakeRow, StakeRow, StakeRow],
    crossed: bool,
) -> String:
    start, name, end = (stake["name"] for stake in stakes)
    middle = f"mid {name}"

    def between(one: str, other: str) -> tuple[float, str] | None:
        return read.get(frozenset((one, other)))

    half = between(start, middle) or between(middle, end) or (row["half"], row["half_shown"])
    sagitta = between(middle, name) or (row["sagitta"], row["sagitta_shown"])
    chord, first, second = between(start, end), between(start, name), between(name, end)
    nominal = math.isclose(half[0], row["half"], abs_tol=_NOMINAL, rel_tol=0) and math.isclose(
        sagitta[0], row["sagitta"], abs_tol=_NOMINAL, rel_tol=0
    )
    shown: tuple[str, str] | None = (first[1], second[1]) if first and second else None
    if nominal and shown is None:
        shown = (row["half_chord_shown"],) * 2
    spoken = chord[1] if chord else row["chord_shown"] if nominal else None
    return String(stakes[0], stakes[1], stakes[2], spoken, half[1], sagitta[1], shown, nominal, crossed)
