"""What the drawing of a card shows of its moves: strings, what is taped along and off them, tapes, sights."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from bowstring.construction import Measure, Move, Step
from bowstring.construction.move import MATCH, ON, SIGHT, STRAIGHT, STRING, TAPE, TURN
from bowstring.methods.ends import SHOWN_BY
from bowstring.report.forms.cards import CardLine

Discs = Mapping[frozenset[str], int]
"""The disc of each pull, by its two marks."""

TURNED = frozenset({"turned"})
"""In place of a pull's marks: the angle."""

PLAIN = (STRING, SIGHT, MATCH, STRAIGHT)
"""Lines along which nothing is taped or turned here."""


def lines_of(step: Step, moves: Sequence[Move], measures: Sequence[Measure], discs: Discs) -> list[CardLine]:
    """Return a card's lines: of its moves, then those of its measures that no move is taped by."""
    lines: list[CardLine] = []
    if step.kind == "prove_parts":  # the first nail and the last ones say it all
        moves, measures = (moves[0], moves[-1]), (measures[0], measures[-1])
    for move in moves:
        for line in _of_move(move, step, discs):
            if not any(_same(line, one) for one in lines):
                lines.append(line)
    for one in measures:
        if not any(_joins(line, one.start, one.end) for line in lines):
            disc = discs.get(frozenset((one.start, one.end)))
            lines.append(_line(MATCH if disc is None else TAPE, one.start, one.end, disc))
    if not lines and {"start", "end"} <= step.names.keys() and step.kind != "string_none":
        lines.append(_line(STRING, step.names["start"], step.names["end"]))
    return lines


def _same(line: CardLine, other: CardLine) -> bool:
    return line["kind"] == other["kind"] and {line["from"], line["to"]} == {other["from"], other["to"]}


def _line(kind: str, start: str, end: str, disc: int | None = None, at: str | None = None) -> CardLine:
    return {"kind": kind, "from": start, "to": end, "disc": disc, "at": at}


def _joins(line: CardLine, start: str, end: str) -> bool:
    return line["kind"] not in (STRING, TURN, SIGHT) and {line["from"], line["to"]} == {start, end}


def _of_move(move: Move, step: Step, discs: Discs) -> Iterator[CardLine]:
    if move.mark in SHOWN_BY and not move.uses:
        start = step.names.get("start", "P")
        yield _line(STRAIGHT, move.mark, start, discs.get(frozenset((move.mark, start))))
    half = None
    for kind, start, end, at in move.drawn:
        disc = discs.get(TURNED if kind == TURN else frozenset((start, end)))
        if kind == ON:  # a string's other half reads the same
            disc = half = disc or half
        yield _line(kind, start, end, None if kind in PLAIN else disc, at or None)
