"""What the panel of a line's pieces tells as they are typed: its drawing, each piece's length and join, its end."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from math import degrees, pi, remainder

from bowstring.drawings.lined import typed_svg
from bowstring.errors import BadJob
from bowstring.faces.build_parts import bold
from bowstring.forming.line.line import Join
from bowstring.forming.line.pieces import Bend, Piece
from bowstring.job.form import JobForm
from bowstring.job.terms import SIDES
from bowstring.page.fields import job_of_fields
from bowstring.page.pieces import AFTER, BEFORE, TURN, rows_in
from bowstring.report.lined.line import looks_told, report_part
from bowstring.report.lined.typed import LineTyped, line_typed
from bowstring.sheet.markup import marked
from bowstring.units.angles import show_dms
from bowstring.units.tape import Tape
from bowstring.words import say

OWN = "own"
"""What stands in the ids of the staked arc's row in place of its group and number."""

HIGH = 104.0
"""Drawing units that the line may reach on the panel: the rows under it are wanted on the same screen."""

Typed = Mapping[str, str]


def told_of_pieces(typed: Typed, tape: Tape, seen: Tape) -> dict[str, str]:
    """Return what is told in the panel, as HTML by the id of its place without ``-echo``.

    ``typed``: what stands in the fields, empty ones left out, some of it of another piece than the arc; ``tape``: the
    job's, ``seen``: the one that lengths are shown by. Of a line that isn't whole yet each piece that is, is told.
    """
    names = _names(typed)
    try:
        job = job_of_fields(typed)
    except BadJob as refusal:
        return {"line-long": _waits(refusal)}
    try:
        line = line_typed({**job}, tape, seen)
    except BadJob as refusal:
        return {"line-long": _waits(refusal), **_apart(names, job, tape, seen)}
    told = _lengths(names, line.line.pieces, seen)
    told |= {f"{name}-join": _join(line, *both) for name, both in zip(names[1:], _joins(line), strict=True)}
    part = report_part(line, [])
    told["line-drawn"] = typed_svg(part, seen.unit, id="line-drawn", high=HIGH)
    told["line-long"] = (
        f"<span>{bold(say('pieces.long', length=part['length_shown']))}</span><span>{_ends(line)}</span>"
    )
    told["line-ends"] = marked(part["ends"])
    return told


def _waits(refusal: BadJob) -> str:
    """What the drawing waits for: which arc has no hand yet, where that is missing."""
    if refusal.key == "line.no_turn":
        return bold(say("pieces.waits_turn", number=int(refusal.field.partition("[")[2].partition("]")[0]) + 1))
    return marked(say("pieces.waits"))


def _names(typed: Typed) -> list[str]:
    """The rows in the line's order, as their ids have them."""
    before, after = ([f"{group}-{row}" for row, _texts in rows_in(typed, group)] for group in (BEFORE, AFTER))
    return [*before, OWN, *after]


def _apart(names: list[str], job: JobForm, tape: Tape, seen: Tape) -> dict[str, str]:
    """What is told of each piece by itself, where one of them is none yet."""
    told: dict[str, str] = {}
    for number, (name, piece) in enumerate(zip(names, job["line"], strict=True)):
        typed = f"{say('form.piece_kink')}: {piece.get('kink', '')}"
        tangent = bold(say("pieces.tangent")) if number else ""
        told[f"{name}-join"] = f'<span class="kink">{marked(typed)}</span>' if "kink" in piece else tangent
        plain = {key: value for key, value in piece.items() if key != "kink"}
        try:
            alone = line_typed({"line": [plain]}, tape, seen)
        except BadJob:
            told |= {"own-said": marked(say(f"pieces.own_{_own_lacks(plain, tape, seen)}"))} if name == OWN else {}
            continue
        told |= _lengths([name], alone.line.pieces, seen)
    return told


def _own_lacks(piece: Mapping[str, object], tape: Tape, seen: Tape) -> str:
    """What the staked arc lacks: its hand, where it is one with any; else numbers."""
    try:
        line_typed({"line": [{**piece, TURN: SIDES[0]}]}, tape, seen)
    except BadJob:
        return "waits"
    return "waits" if TURN in piece else "hand"


def _lengths(names: list[str], pieces: tuple[Piece, ...], seen: Tape) -> dict[str, str]:
    """How long each arc is; of the staked one all that stands in its row."""
    told: dict[str, str] = {}
    for name, piece in zip(names, pieces, strict=True):
        if not isinstance(piece, Bend):
            continue
        told[f"{name}-long"] = marked(seen.show_running(piece.length))
        if name == OWN:
            hand = say(f"numbers.hand.{piece.hand}")
            values = {"radius": seen.show(piece.radius), "angle": angle_told(abs(piece.turn))}
            told["own-said"] = marked(say("pieces.own", hand=hand, **values))
    return told


def angle_told(radians: float) -> str:
    """Return an angle without the minutes and seconds that it hasn't got.

    >>> angle_told(pi / 6), angle_told(pi / 8)
    ('30°', "22°30'")
    """
    return show_dms(degrees(radians)).removesuffix('00"').removesuffix("00'")


def _joins(line: LineTyped) -> list[tuple[Join, Piece, Piece]]:
    return [(join, *both) for join, both in zip(line.line.joins, pairwise(line.line.pieces), strict=True)]


def _join(line: LineTyped, join: Join, before: Piece, after: Piece) -> str:
    """How a piece meets the one before it."""
    if join.tangent:
        turns = isinstance(before, Bend) and isinstance(after, Bend) and before.hand != after.hand
        return bold(say("pieces.reverses" if turns else "pieces.tangent"))
    left = join.kink > 0
    told = say("pieces.kink", angle=angle_told(abs(join.kink)), hand=say(f"hand.{'left' if left else 'right'}"))
    end = 3 if left else 19
    picture = (
        '<svg width="76" height="22" viewBox="0 0 76 22" aria-hidden="true"><path class="d" d="M38 11h36"/>'
        f'<path d="M2 11h36l34 {end - 11}"/></svg>'
    )
    return f'<span class="kink">{bold(told)} <small>{marked(looks_told(line, join))}</small></span>{picture}'


def _ends(line: LineTyped) -> str:
    """Which way the line goes at its end, off its first piece."""
    turn = remainder(line.line.end.heading - line.line.start.heading, 2 * pi)
    if round(degrees(turn) * 3600) == 0:
        return marked(say("pieces.ends_on"))
    hand = say(f"hand.{'left' if turn > 0 else 'right'}")
    return marked(say("pieces.ends", angle=angle_told(abs(turn)), hand=hand))
