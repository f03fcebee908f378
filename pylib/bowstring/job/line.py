"""A line of straights and arcs as a job says it, piece by piece: lengths, each arc's givens, hands and kinks.

A kink's hand is part of its angle: ``"2° left"``, or on a straight its ``turn``. A bare angle doesn't tell it: it is
taken to the left (with a minus to the right), and the sheet has to ask.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from math import radians

from bowstring.errors import BadJob, bad
from bowstring.forming.line.pieces import Hand, sign_of
from bowstring.job.arc_given import ArcGiven, read_arc
from bowstring.job.obstacles import Obstacle, read_obstacles
from bowstring.job.reader import Reader, Reading
from bowstring.job.terms import SIDES
from bowstring.units.angles import both_angles, read_angle
from bowstring.units.echo import quoted

MOST_PIECES = 60
"""No walk has as many."""

BESIDE = ("arc", "side", "turn", "greater")
"""What each arc of a line says by itself, and the job doesn't."""

SHARPEST = 150.0
"""Degrees: past it a miter stands nearly four widths off, and no form is built so (common practice, no source)."""

_HANDS: dict[str, Hand] = {
    "left": "left", "lt": "left", "l": "left", "right": "right", "rt": "right", "r": "right"
}  # fmt: skip
_WORD = "|".join(_HANDS)
_KINK = re.compile(rf"(?:({_WORD})\b\.?)?\s*([-+−]?)\s*(.*?)\s*(?:(?<![a-z])({_WORD})\.?)?", re.IGNORECASE | re.DOTALL)
_NOTHING = re.compile(r"0+(\.0*)?\s*°?")


@dataclass(frozen=True)
class KinkSaid:
    """By how much a piece turns off from the one before it, degrees, never below 0, and to which hand; ``said`` is
    false where the hand isn't said and left was taken (right for a minus)."""

    angle: float
    hand: Hand
    said: bool

    @property
    def turn(self) -> float:
        """Radians, above 0 to the left."""
        return sign_of(self.hand) * radians(self.angle)


@dataclass(frozen=True)
class StraightSaid:
    """A straight: its length in metres; ``kink``: ``None`` where it is tangent to the piece before it."""

    length: float
    kink: KinkSaid | None = None


@dataclass(frozen=True)
class ArcSaid:
    """An arc: what is given of it, whether the larger of two is meant, to which hand it turns (``None`` where its three
    points tell that), its kink, and what was said to be in the way while it was staked, in the frame of its stakes."""

    given: ArcGiven
    greater: bool
    turn: Hand | None
    kink: KinkSaid | None = None
    ground: tuple[Obstacle, ...] = ()


@dataclass(frozen=True)
class LineSaid:
    """A line's pieces in the order in which somebody walks along them; ``at``: the number, from 0, of the arc that is
    staked."""

    pieces: tuple[StraightSaid | ArcSaid, ...]
    at: int = 0

    @property
    def staked(self) -> tuple[int, ArcSaid]:
        """The arc that is staked, with its number from 0; raises ``BadJob`` for a line without an arc."""
        piece = self.pieces[self.at]
        if not isinstance(piece, ArcSaid):
            raise bad("line", "line.no_arc")
        return self.at, piece

    @property
    def asks(self) -> tuple[int, ...]:
        """The numbers, from 0, of the pieces whose kink doesn't say its hand."""
        kinks = [piece.kink for piece in self.pieces]
        return tuple(number for number, kink in enumerate(kinks) if kink and not kink.said)


def read_line(reader: Reader) -> LineSaid:
    """Return the line that a job says; raises ``BadJob``.

    Lengths are read in the job's unit into metres, angles into degrees. Whether the givens make arcs is not asked here.
    """
    for key in BESIDE:
        if key in reader.job:
            raise bad("line", "line.with_arc") if key == "arc" else bad(key, "line.beside")
    rows = reader.rows("line", MOST_PIECES)
    if not rows:
        raise bad("line", "line.empty")
    pieces = tuple(_piece(reader, number, row) for number, row in enumerate(rows))
    return LineSaid(pieces, _at(reader, pieces))


def _at(reader: Reader, pieces: tuple[StraightSaid | ArcSaid, ...]) -> int:
    """Return which arc is staked: the job's ``at`` counts pieces from 1; without it the first."""
    arcs = [number for number, piece in enumerate(pieces) if isinstance(piece, ArcSaid)]
    at = reader.number("at", 1, len(pieces))
    if at is None or not arcs:
        return arcs[0] if arcs else 0
    if at - 1 not in arcs:
        raise bad("at", "line.at_no_arc", arcs=", ".join(str(number + 1) for number in arcs))
    return int(at) - 1


def _piece(reader: Reader, number: int, row: object) -> StraightSaid | ArcSaid:
    piece = reader.within(f"line[{number}]", row, ("straight", "arc", "turn", "kink", "work"))
    if ("straight" in piece.job) == ("arc" in piece.job):
        raise bad(piece.place, "line.piece_kind")
    if number == 0 and "kink" in piece.job:
        raise bad(piece.field("kink"), "line.first_kink")
    return _straight(piece) if "straight" in piece.job else _arc(piece)


def _straight(piece: Reader) -> StraightSaid:
    length, turn = piece.measured("straight").metres, _hand(piece)
    kink = _kink(piece, turn)
    if turn and not kink:
        raise bad(piece.field("turn"), "line.turn_of_straight")
    return StraightSaid(length, kink)


def _arc(piece: Reader) -> ArcSaid:
    given, turn = read_arc(piece), _hand(piece)
    if turn is None and given.points is None:
        raise bad(piece.field("turn"), "line.no_turn")
    arc = piece.inside("arc", None)
    return ArcSaid(given, bool(arc and arc.flag("greater")), turn, _kink(piece, None), _ground(piece))


def _ground(piece: Reader) -> tuple[Obstacle, ...]:
    """What is in the way of an arc that isn't staked now; what was only half said of it then is none."""
    work = piece.job.get("work")
    if not isinstance(work, Mapping):
        return ()
    try:
        return read_obstacles(Reader(work, piece.tape, None, piece.field("work")))
    except BadJob:
        return ()


def _hand(piece: Reader) -> Hand | None:
    word = piece.choice("turn", SIDES)
    return None if word is None else _HANDS[word]


def _pieces(value: object) -> tuple[str | None, str, object, str | None]:
    """Return the hand before a kink's angle, its sign, the angle itself, and the hand after it."""
    if isinstance(value, int | float) and not isinstance(value, bool):
        return None, "-" if value < 0 else "", abs(value), None
    if not isinstance(value, str):
        return None, "", value, None
    found = _KINK.fullmatch(value.strip())
    before, sign, angle, after = found.groups() if found else (None, "", "", None)
    return before, sign, angle, after


def _kink(piece: Reader, turn: Hand | None) -> KinkSaid | None:
    """Return the kink that a piece says, ``None`` without one or for 0; ``turn``: the hand that stands beside it."""
    if "kink" not in piece.job:
        return None
    field, value = piece.field("kink"), piece.job["kink"]
    before, sign, plain, after = _pieces(value)
    if _NOTHING.fullmatch(str(plain)):
        return None
    degrees = read_angle(plain, field).degrees
    if degrees > SHARPEST:
        raise bad(field, "line.kink_sharp", most=f"{SHARPEST:g}°")
    hands = {_HANDS[word.lower()] for word in (before, after) if word} | ({turn} if turn else set())
    if len(hands) > 1 or (hands and sign in ("-", "−")):
        raise bad(field, "line.kink_hands", typed=quoted(str(value)))
    piece.readings.append(Reading(field, str(value).strip(), lambda: both_angles(degrees)))
    if hands:
        return KinkSaid(degrees, hands.pop(), True)
    return KinkSaid(degrees, "right" if sign in ("-", "−") else "left", False)
