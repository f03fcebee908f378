"""Which point of the stake is on the line, and how that line is worked with. Lengths in metres."""

from typing import TypedDict, final

from bowstring.report.forms.stakes import PlaceRow


@final
class OverrunPart(TypedDict):
    """Where the work runs on straight: the stake past each end, on the tangent.

    Attributes:
        length: from the end to it; along: on the string's line, positive past the end, negative toward the other;
            off: square off the string, away from the curve.
        stakes: where they stand, named by their ends.
    """

    length: float
    along: float
    off: float
    length_shown: str
    along_shown: str
    off_shown: str
    text: str
    stakes: list[PlaceRow]


@final
class OnLinePart(TypedDict):
    """What is driven, and which point of it is on the line.

    Attributes:
        point: that point, in a sentence; lines: the way of working that goes with it.
        pins: how pins stand to the forms: ``back``, the line is the back of a board, and their edges are on it;
            ``past``, their centers are set half a pin behind that; ``maybe``, the offset is as thick as a board; empty.
        card: what a card says of it that drives a pin whose center isn't, or may not be, on the line.
        half: half a pin's diameter, by which a board is held off a pin that is centred on the line; ``None`` where the
            diameter isn't known.
        drawn_to: what the drawing's line means for the offset, ``None`` where it isn't said.
        come_back: how to come back from stakes that stand off the line, ``None`` where they stand on it.
        overrun: ``None`` for hubs.
    """

    point: str
    pins: str
    card: str
    lines: list[str]
    half: float | None
    half_shown: str | None
    drawn_to: str | None
    come_back: str | None
    overrun: OverrunPart | None
