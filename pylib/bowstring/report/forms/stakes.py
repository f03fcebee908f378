"""Where an answer's stakes and marks stand, and how true each stake will be.

Metres in the frame of the staked chord: A at the origin, x toward B, y toward the arc.
"""

from typing import NotRequired, TypedDict, final


@final
class PlaceRow(TypedDict):
    """A name and its place, metres."""

    name: str
    x: float
    y: float


@final
class Ellipse(TypedDict):
    """What a stake stays within at 95 %: half axes in metres; ``turned``: degrees from across the
    arc to the long one, toward B."""

    long: float
    short: float
    turned: float


@final
class MeantRow(TypedDict):
    """Where a stake belongs that something else was got at, and how far off that it stands, as texts.

    Attributes:
        off_shown: how far off the arc, without a side; empty for less than a mark of the tape.
        drawing_shown: in the drawing's axes, only where the stake has ``drawing``.
    """

    x_shown: str
    y_shown: str
    off_shown: str
    drawing_shown: NotRequired[list[str]]


@final
class StakeRow(TypedDict):
    """A stake, metres: its place, how far along the arc, and how far off it (positive outside) it stands.

    Attributes:
        level: 0 for the ends.
        sigma_across, sigma_along: one standard deviation across the arc and along it, metres.
        sigma_fair: that of the mid-ordinate of this stake over its two neighbours, ``None`` at the ends.
        drawing: only where the drawing gives two marks' coordinates: the stake's own, metres, in its axes' order.
        station_shown: only where the job says its starting station.
        meant: only where something else was got at it.
    """

    name: str
    x: float
    y: float
    along: float
    x_shown: str
    y_shown: str
    along_shown: str
    level: int
    miss: float
    sigma_across: float
    sigma_along: float
    sigma_fair: float | None
    sigma_across_shown: str
    sigma_along_shown: str
    sigma_fair_shown: str | None
    ellipse: Ellipse
    station_shown: NotRequired[str]
    meant: NotRequired[MeantRow]
    drawing: NotRequired[list[float]]
    drawing_shown: NotRequired[list[str]]
