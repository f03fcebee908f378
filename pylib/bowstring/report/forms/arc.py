"""The arc's own parts of an answer: its measures, its offset, what was given of it, and what was found on the ground.

Lengths in metres, angles in degrees.
"""

from typing import TypedDict, final


@final
class ArcMeasures(TypedDict):
    """An arc by its seven measures, metres and for ``central_angle`` degrees.

    The last two are ``None`` from a half circle on, where the tangents don't meet.
    """

    radius: float
    chord: float
    sagitta: float
    arc_length: float
    central_angle: float
    tangent_length: float | None
    external: float | None


@final
class ArcTexts(TypedDict):
    """The seven measures as a crew reads them: lengths to the nearest mark, the angle in degrees and minutes."""

    radius: str
    chord: str
    sagitta: str
    arc_length: str
    central_angle: str
    tangent_length: str | None
    external: str | None


@final
class EndsPart(TypedDict):
    """What stands at each end of the drawn line; empty where the job doesn't say."""

    A: str
    B: str


@final
class TieRow(TypedDict):
    """A distance (metres) from an end to something that stays."""

    to: str
    distance: float
    shown: str


@final
class ReadingRow(TypedDict):
    """One input: its place in the job, as it was typed and as it was taken."""

    field: str
    typed: str
    text: str


@final
class OffsetPart(TypedDict):
    """How far (metres) from the drawn line the stakes stand; ``toward``: ``centre`` or ``outside``."""

    distance: float
    toward: str
    shown: str
    text: str


@final
class GivenRow(TypedDict):
    """A given beside what the arc has: metres or degrees as the field is; ``used``: whether it settled the arc."""

    field: str
    value: float
    computed: float | None
    difference: float | None
    agrees: bool
    value_shown: str
    computed_shown: str | None
    used: bool


@final
class FitOption(TypedDict):
    """The found chord with one thing held: that arc in metres (``None`` where there is none).

    ``kink``: degrees by which its ends' directions are off the drawing's.
    """

    hold: str
    label: str
    radius: float | None
    sagitta: float | None
    arc_length: float | None
    radius_shown: str | None
    sagitta_shown: str | None
    arc_length_shown: str | None
    kink: float
    kink_shown: str
    buildable: bool
    taken: bool


@final
class FitPart(TypedDict):
    """What the chord found on the ground (metres) makes of the drawn arc; ``reason``: why nothing was taken."""

    found: float
    found_shown: str
    drawn_shown: str
    difference_shown: str
    apart_shown: str
    slips: list[str]
    options: list[FitOption]
    reason: str | None
