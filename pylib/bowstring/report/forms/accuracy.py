"""How true the stakes will be, as an answer tells it. Metres, and degrees for the angle."""

from typing import TypedDict, final


@final
class ErrorsPart(TypedDict):
    """The error model, one standard deviation each: metres; ``scale`` a part of one, ``angle`` degrees."""

    read: float
    scale: float
    stake: float
    line: float
    angle: float


# A row of the error model: what it is, how large, and whether the job says so itself.
ModelRow = TypedDict("ModelRow", {"name": str, "label": str, "shown": str, "from": str})


@final
class BiasRow(TypedDict):
    """A shift that can be taken out: what it does at the stake that it moves most, metres."""

    kind: str
    worst_miss: float
    at: str
    shown: str
    text: str


@final
class AccuracyPart(TypedDict):
    """What the stakes stay within, metres.

    Attributes:
        miss_95, at: the worst stake at 95 %, and which; all_95: all at once.
        fair_95, fair_at: off the mid-ordinate over its two neighbours, the least fair stake at 95 %, and which.
        chance: of all being within the tolerance, a part of one; ``None`` without a tolerance.
        reliable: whether the figures can be relied on.
    """

    miss_95: float
    all_95: float
    fair_95: float
    fair_at: str
    at: str
    chance: float | None
    reliable: bool
    errors: ErrorsPart
    model: list[ModelRow]
    lines: list[str]
    biases: list[BiasRow]
