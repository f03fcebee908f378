"""The site as an answer has it: metres in the frame of the chord, slopes in percent."""

from typing import TypedDict, final

# The longest tape in metres, and its accuracy class.
TapePart = TypedDict("TapePart", {"length": float, "shown": str, "class": str})


@final
class ObstacleRow(TypedDict):
    """Something in the way; ``stops``: ``tape`` or ``feet``; ``outline``: pairs of metres, around the circle of what is
    round: its middle ``at`` and its ``diameter``, otherwise ``None``."""

    name: str
    stops: str
    outline: list[list[float]]
    at: list[float] | None
    diameter: float | None


@final
class KnownRow(TypedDict):
    """A mark that exists, metres; ``sigma``: one standard deviation of its place in x and in y."""

    name: str
    x: float
    y: float
    sigma: float


@final
class FallPart(TypedDict):
    """The ground's fall in percent, from A to B and away from the chord toward the curve's side."""

    along: float
    across: float


@final
class SitePart(TypedDict):
    """Tape, hands, obstacles and known marks; ``axes``: ``x-y`` or ``n-e`` where the drawing gives coordinates."""

    tape: TapePart
    hands: int
    obstacles: list[ObstacleRow]
    known: list[KnownRow]
    fall: FallPart
    axes: str | None
