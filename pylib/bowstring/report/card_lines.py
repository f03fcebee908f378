"""What the drawing of a card shows of its moves: strings, what is taped along and off them, tapes, sights."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from bowstring.construction import (
    PULL,
    Along,
    Bisect,
    CrossTapes,
    Measure,
    Move,
    Sight,
    SquareOff,
    Step,
    Take,
    TurnOff,
)
from bowstring.methods.ends import SHOWN_BY
from bowstring.report.forms.cards import CardLine

Discs = Mapping[frozenset[str], int]
"""The disc of each pull, by its two marks."""

TURNED = frozenset({"turned"})
"""In place of a pull's marks: the angle."""

DASHED = ("match", "sight", "string", "straight")


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
            lines.append(_line("match" if disc is None else "tape", one.start, one.end, disc))
    if not lines and {"start", "end"} <= step.names.keys() and step.kind != "string_none":
        lines.append(_line("string", step.names["start"], step.names["end"]))
    return lines


def _same(line: CardLine, other: CardLine) -> bool:
    return line["kind"] == other["kind"] and {line["from"], line["to"]} == {other["from"], other["to"]}


def _line(kind: str, start: str, end: str, disc: int | None = None, at: str | None = None) -> CardLine:
    return {"kind": kind, "from": start, "to": end, "disc": disc, "at": at}


def _joins(line: CardLine, start: str, end: str) -> bool:
    return line["kind"] not in ("string", "turn", "sight") and {line["from"], line["to"]} == {start, end}


def _of_move(move: Move, step: Step, discs: Discs) -> Iterator[CardLine]:
    def disc(start: str, end: str) -> int | None:
        return discs.get(frozenset((start, end)))

    if isinstance(move, Bisect):
        half = disc(move.start, move.mark)
        yield _line("string", move.start, move.end)
        yield _line("on", move.start, move.mark, half)
        yield _line("on", move.mark, move.end, half)
    elif isinstance(move, Along):
        yield _line("string", move.toward, move.start)
        kind = "on" if move.length >= 0 else "past"
        yield _line(kind, move.start, move.mark, disc(move.start, move.mark))
    elif isinstance(move, SquareOff):
        yield _line("string", move.start, move.end)
        yield _line("off", move.foot, move.mark, disc(move.foot, move.mark))
        if move.slide:
            yield _line("match", move.start, move.mark)
            yield _line("match", move.mark, move.end)
    elif isinstance(move, CrossTapes):
        yield _line("tape", move.first, move.mark, disc(move.first, move.mark))
        yield _line("tape", move.second, move.mark, disc(move.second, move.mark))
    elif isinstance(move, TurnOff | Sight):
        yield _line("sight", move.at, move.back)
        yield _line("turn", move.back, move.mark, discs.get(TURNED), move.at)
        chained = move.at if isinstance(move, TurnOff) else move.chained
        if chained != move.at:
            yield _line("sight", move.at, move.mark)
        yield _line("tape", chained, move.mark, disc(chained, move.mark))
    elif isinstance(move, Take):
        if move.mark in SHOWN_BY:
            yield _line("straight", move.mark, step.names.get("start", "P"))
    else:
        yield from (_line("tape" if what == PULL else "string", start, end, disc(start, end))
                    for what, start, end in move.lines)  # fmt: skip
