"""How exactly a crew works: the standard deviations of what it does, and what tape makes of them.

The model: every measured distance has a reading error at each of its two ends; the tape's scale is one number for the
whole job, since one tape is used; a stake is plumbed and driven with an error in x and in y; a mark on a string lies
off it; an angle is turned with an error. All independent. Sources: the tape classes' greatest permitted error, UK
Measuring Instruments Regulations 2016, S.I. 2016/1153, Schedule 1I (Annex MI-008 of Directive 2014/32/EU), taken as the
half width of an even spread, so divided by the root of 3; a reading to a mark is even over one mark, so mark/root 12;
the others are common practice, no source, and can be changed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import radians, sqrt

from bowstring.units.sizes import INCH

TAPE_CLASSES = {"I": (0.1, 0.1), "II": (0.3, 0.2), "III": (0.6, 0.4)}
"""Greatest permitted error (a + b L) in millimetres, L in metres: a and b by class."""

STAKE = {
    "pin": {True: INCH / 8, False: 0.003},
    "board": {True: INCH / 8, False: 0.003},
    "marked": {True: INCH / 16, False: 0.0015},
    "hub": {True: INCH / 32, False: 0.0008},
}
"""Metres, in x and in y, by what is driven, where the tape reads feet and where it doesn't (common practice, no
source). A stake marked on its top and a hub's tack are set by a reading taken after the driving, so what the driving
does isn't in them."""

LINE = {True: INCH / 16, False: 0.0015}
"""Metres across a string (common practice, no source)."""

ANGLE = 1 / 60
"""Degrees: a minute, as a builder's transit is read (common practice, no source)."""


@dataclass(frozen=True)
class ErrorModel:
    """Standard deviations: metres; ``scale`` a part of one; ``angle`` radians."""

    read: float
    scale: float
    stake: float
    line: float
    angle: float

    @property
    def pull(self) -> float:
        """The reading error of a measured distance: both of its ends, metres."""
        return self.read * sqrt(2)


def tape_scale(tape_class: str, longest_pull: float) -> float:
    """Return the standard deviation of a tape's scale: (a + b L)/(L root 3) at the longest pull L in metres.

    0 for a job without a pull.

    >>> f"{tape_scale('II', 30.0):.2e}"
    '1.21e-04'
    """
    a, b = TAPE_CLASSES[tape_class]
    return (a + b * longest_pull) / 1000 / (longest_pull * sqrt(3)) if longest_pull > 0 else 0.0


def error_model(
    mark: float, feet: bool, tape_class: str, longest_pull: float, given: Mapping[str, float], driven: str = "pin"
) -> ErrorModel:
    """Return the model for a tape mark in metres, with what a job says itself in place of the usual values.

    ``driven``: a key of ``STAKE``.

    >>> model = error_model(0.005, False, "II", 30.0, {"stake": 0.004})
    >>> model.stake, round(model.read, 6)
    (0.004, 0.001443)
    >>> error_model(0.005, False, "II", 30.0, {}, "hub").stake
    0.0008
    """
    return ErrorModel(
        read=given.get("read", mark / sqrt(12)),
        scale=given.get("scale", tape_scale(tape_class, longest_pull)),
        stake=given.get("stake", STAKE[driven][feet]),
        line=given.get("line", LINE[feet]),
        angle=radians(given.get("angle", ANGLE)),
    )
