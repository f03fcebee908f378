"""A job's line settled: each arc from its givens, all pieces in their places, and the slab along it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from bowstring.errors import BadJob, bad
from bowstring.forming.line.edges import NoEdge
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Hand, Piece, Straight
from bowstring.forming.line.slab import LineSlab
from bowstring.geometry.givens import Settled, settle
from bowstring.geometry.three import through_points, through_sides
from bowstring.job.forming import SlabSaid
from bowstring.job.line import ArcSaid, LineSaid
from bowstring.job.terms import LINE_ENDS
from bowstring.words import say


@dataclass(frozen=True)
class SettledLine:
    """A line, how its arcs were settled (one for each piece, ``None`` for a straight), and what the job says of it."""

    said: LineSaid
    line: Line
    arcs: tuple[Settled | None, ...]


def settle_line(said: LineSaid, mark: float, show: Callable[[float], str] = str) -> SettledLine:
    """Return the line that a job says; ``mark`` is the tape's in metres, ``show`` writes a length for a refusal.

    Each arc is settled as the job's own is (``geometry.givens.settle``). Raises ``BadJob``, with the piece's place,
    where the givens of one make no arc.
    """
    pieces: list[Piece] = []
    arcs: list[Settled | None] = []
    for number, piece in enumerate(said.pieces):
        kink = piece.kink.turn if piece.kink else 0.0
        if isinstance(piece, ArcSaid):
            settled, hand = _settled(piece, f"line[{number}]", mark, show)
            pieces.append(Bend(settled.arc, hand, kink))
            arcs.append(settled)
        else:
            pieces.append(Straight(piece.length, kink))
            arcs.append(None)
    return SettledLine(said, Line(tuple(pieces)), tuple(arcs))


def refuse_ends(settled: SettledLine, slab: SlabSaid) -> None:
    """Raise ``BadJob`` where a job says what closes its slab at an end of a line that closes on itself."""
    said = [end for end, what in zip(LINE_ENDS, (slab.at_a, slab.at_b), strict=True) if what is not None]
    if said and settled.line.is_closed:
        raise bad(f"slab.at_{said[0]}", "ends.no_closed")


def before_staked(said: LineSaid, mark: float, show: Callable[[float], str] = str) -> Piece | None:
    """Return the piece that ends where the staked arc begins, tangent to it; ``None`` where there is none, or a kink.

    ``mark`` and ``show`` as ``settle_line`` has them; raises ``BadJob``, with the piece's place.
    """
    if said.at == 0 or said.pieces[said.at].kink is not None:
        return None
    piece = said.pieces[said.at - 1]
    if isinstance(piece, ArcSaid):
        settled, hand = _settled(piece, f"line[{said.at - 1}]", mark, show)
        return Bend(settled.arc, hand)
    return Straight(piece.length)


def _settled(piece: ArcSaid, place: str, mark: float, show: Callable[[float], str]) -> tuple[Settled, Hand]:
    """Return a piece's arc and its hand; three points bulge to the hand that the arc turns away from."""
    told: Hand | None = None
    try:
        if piece.given.points:
            arc, bulges_left = through_points(*piece.given.points)
            settled, told = Settled(arc, None, ()), "right" if bulges_left else "left"
        elif piece.given.sides:
            settled = Settled(through_sides(*piece.given.sides), None, ())
        else:
            settled = settle(list(piece.given.givens), piece.greater, mark, show)
    except BadJob as refusal:
        raise BadJob(f"{place}.{refusal.field}", refusal.wrong, refusal.remedy, refusal.key) from None
    if told and piece.turn and told != piece.turn:
        raise bad(f"{place}.turn", "line.turn_and_points", points=say(f"hand.{told}"), turn=say(f"hand.{piece.turn}"))
    hand = piece.turn or told
    if hand is None:
        raise bad(f"{place}.turn", "line.no_turn")
    return settled, hand


def slab_on(settled: SettledLine, left: float, right: float, show: Callable[[float], str] = str) -> LineSlab:
    """Return the slab that reaches ``left`` and ``right`` metres from a line; ``show`` writes a length.

    Raises ``BadJob`` where an arc's inner edge has no radius, or where the edges inside of a kink don't meet.
    """
    try:
        return LineSlab(settled.line, left, right)
    except NoEdge as reason:
        piece = settled.line.pieces[reason.piece]
        hand, number = say(f"hand.{reason.hand}"), reason.piece + 1
        if reason.why == "radius" and isinstance(piece, Bend):
            radius = show(piece.radius)
            raise bad("width", "line.no_radius", hand=hand, piece=number, radius=radius) from None
        raise bad("width", "line.no_room", hand=hand, piece=number) from None


def questions(settled: SettledLine, show: Callable[[float], str] = str) -> list[str]:
    """Return what the line leaves open and a sheet has to ask before anybody builds: which way a kink turns.

    ``show`` writes a length in metres.
    """
    stations = settled.line.stations
    return [say("line.kink_asked", piece=number + 1, station=show(stations[number])) for number in settled.said.asks]
