"""What an answer tells beside the steps: the rule of thumb, the rounding, the gap and the story stick. Metres."""

from typing import TypedDict, final


@final
class RuleMiss(TypedDict):
    """How far (metres, positive outside) the rule of thumb would put a stake off the arc."""

    name: str
    miss: float
    shown: str


@final
class AlternatePart(TypedDict):
    """The reading (metres) that shows the rule of thumb: over every other stake, true and by the rule."""

    true: float
    in_rule: float
    at: str


@final
class RulePart(TypedDict):
    """What the rule of thumb would cost.

    Attributes:
        worst_miss, at: metres, and the stake; holds: whether that is within the tolerance, ``None`` without one.
        good_up_to: the rise as a part of the chord up to which it would hold, ``None`` without a tolerance.
    """

    worst_miss: float
    at: str
    holds: bool | None
    shown: str
    stakes: list[RuleMiss]
    alternate: AlternatePart | None
    good_up_to: float | None
    text: str
    lines: list[str]


@final
class StakeMiss(TypedDict):
    """How far (metres, positive outside) a stake stands off the arc."""

    name: str
    miss: float


@final
class RoundingPart(TypedDict):
    """Where the stakes stand when the shown numbers are held exactly; ``eats_half``: of the tolerance."""

    worst_miss: float
    at: str
    shown: str
    stakes: list[StakeMiss]
    eats_half: bool
    text: str


@final
class GapPart(TypedDict):
    """The widest gap between neighbouring stakes, straight, and the arc's rise over it, metres."""

    straight: float
    shown: str
    rise: float
    rise_shown: str
    text: str


@final
class StickMark(TypedDict):
    """A mark on the story stick, metres from its zero end."""

    label: str
    distance: float
    shown: str


@final
class StickPart(TypedDict):
    """The story stick: its length in metres and its marks, shortest first; none for methods that set no offset."""

    length: float
    marks: list[StickMark]
