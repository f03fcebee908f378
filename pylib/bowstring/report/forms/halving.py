"""The levels of the halving in an answer, and how each one's sagitta is kept square. Lengths in metres."""

from typing import TypedDict, final


@final
class WayRow(TypedDict):
    """One way to keep a sagitta square (``slide``, ``triangle``, ``square``, ``eye``), and what a slip in it does."""

    way: str
    text: str


@final
class SquaringPart(TypedDict):
    """How a level's sagitta is kept square: the half string and the half chords, and a right triangle's sides.

    The triangle's, metres and texts, are ``None`` where there is none; ``whole`` names one of whole numbers (3-4-5).
    ``way`` is the preferred one of ``ways``.
    """

    way: str
    half: float
    half_chord: float
    along: float | None
    out: float | None
    long_side: float | None
    along_shown: str | None
    out_shown: str | None
    long_side_shown: str | None
    whole: str | None
    ways: list[WayRow]
    text: str


@final
class LevelRow(TypedDict):
    """One level of halving: the figures of its strings, metres, exact and by the quarter rule (``rule_...``).

    ``stakes`` names those it drives; ``how`` is one sentence for all its strings, ``None`` where their numbers differ;
    ``by_hand`` its sagitta worked out, line by line.
    """

    level: int
    chord: float
    sagitta: float
    rule_sagitta: float
    half: float
    half_chord: float
    chord_shown: str
    half_shown: str
    sagitta_shown: str
    rule_shown: str
    half_chord_shown: str
    stakes: list[str]
    mostly_rounding: bool
    how: str | None
    by_hand: list[str]
    squaring: SquaringPart
