"""What was got at stakes, as the answer has it. Metres, positive outward."""

from typing import TypedDict, final


@final
class GotMove(TypedDict):
    """What to do with a stake that has to be moved; ``distance``: metres across, positive outward."""

    text: str
    distance: float


@final
class GotSlip(TypedDict):
    """What the readings look like; ``kind`` as in ``analysis/slips``, or ``apart``: they disagree."""

    kind: str
    text: str


@final
class LaterNumber(TypedDict):
    """A number of a later stake that changes; empty ``was`` or ``now``: there is none."""

    stake: str
    label: str
    was: str
    now: str


@final
class GotRow(TypedDict):
    """One stake, or another mark of a step, where it really stands.

    Attributes:
        stake: the mark as the job names it; at: the stake of its step, ``None`` where that drives none.
        across: how far that stake is off the arc, ``None`` without one; shown: the same as a text.
        within: whether it is within the tolerance; without one ``False`` where nobody drives a stake so badly, or a
            mark is far off its place, and otherwise ``None``.
        usual: without a tolerance, whether stakes usually stand as near, otherwise ``None``.
        bump: how far it is off the mid-ordinate over its two neighbours as they will stand; fair: whether that is
            within the fair limit, ``None`` without one.
        apart: by how much its readings disagree; doubt: they do by more than tapes may, so that nothing stands on them.
        must: sentences for what wasn't read, and must read something else now.
        later: the first numbers that change; changes: how many stakes get others.
        text: all that, told in a sentence or two; onward: the one of them that tells of the numbers after it.
    """

    stake: str
    at: str | None
    across: float | None
    shown: str
    within: bool | None
    usual: bool | None
    bump: float | None
    bump_shown: str
    fair: bool | None
    apart: float
    doubt: bool
    must: list[str]
    move: GotMove | None
    slip: GotSlip | None
    later: list[LaterNumber]
    changes: int
    text: str
    onward: str
