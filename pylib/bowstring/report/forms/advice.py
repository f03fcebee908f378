"""All methods side by side in an answer, what is in their way, and which to take. Lengths in metres."""

from typing import TypedDict, final

# One thing that stops a method: at which step and between which marks, what it is, and that in a sentence.
BlockRow = TypedDict("BlockRow", {"kind": str, "step": int, "from": str, "to": str, "what": str, "text": str})


@final
class MethodRow(TypedDict):
    """One method for this job; its figures are ``None`` where there is no such layout for the arc.

    Attributes:
        parallel: metres from the chord of the string that its ordinates are from, ``None`` for any other.
        stakes, measurements: how many; hands: people that it takes.
        longest_pull: metres of tape; behind: metres that its marks reach behind the chord.
        miss_95, all_95: metres that the worst stake and all stakes stay within at 95 %; ``all_95`` only in a
            whole answer.
        fair_95: metres off the mid-ordinate over its two neighbours that the least fair stake stays within at 95 %.
        shift: metres, the largest miss that is known; expected: metres, ``miss_95`` and ``shift`` together.
    """

    method: str
    name: str
    parallel: float | None
    everyday: bool
    possible: bool
    why_not: str | None
    stakes: int | None
    measurements: int | None
    longest_pull: float | None
    longest_pull_shown: str | None
    miss_95: float | None
    miss_95_shown: str | None
    fair_95: float | None
    fair_95_shown: str | None
    all_95: float | None
    all_95_shown: str | None
    shift: float | None
    shift_shown: str | None
    expected: float | None
    expected_shown: str | None
    reliable: bool | None
    hands: int
    behind: float | None
    behind_shown: str | None
    blocks: list[BlockRow]


@final
class ChangeRow(TypedDict):
    """A change of the site that would make a method possible; ``size`` metres, or how many people."""

    kind: str
    what: str
    size: float
    method: str
    halve_first: int
    parallel: float | None
    text: str


@final
class AdvicePart(TypedDict):
    """The method to take, ``None`` where none can be; ``holds``: whether it keeps the tolerance, if there is one;
    ``fair``: whether it keeps the fair curve's limit, if there is one.

    ``decided``: ``place`` or ``fair``, whichever limit the choice hung on; ``None`` without limits. ``changes``: what
    would make one possible, where none is.
    """

    method: str | None
    halve_first: int
    parallel: float | None
    text: str
    holds: bool | None
    fair: bool | None
    decided: str | None
    changes: list[ChangeRow]
