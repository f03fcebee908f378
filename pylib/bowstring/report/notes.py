"""Notes: what a crew should know besides, and the cautions that stand above every sheet."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from bowstring.geometry.plane import distance
from bowstring.layout.layout import Layout
from bowstring.methods.setting import FITS
from bowstring.words import say


def report_top() -> list[str]:
    """Return the fixed cautions that stand above every sheet."""
    return [say("top.authority"), say("top.services"), say("top.stakes")]


def report_notes(layout: Layout, *, by_rounds: bool = False) -> list[str]:
    """Return the notes of a layout; ``by_rounds``: nothing but the rounds asked for chose its method."""
    job, tape = layout.job, layout.job.shown
    notes = []
    if len(layout.settled.pair) == 2:
        first, second = layout.settled.pair
        pair = say("and", first=say(f"measure.{first.field}"), second=say(f"measure.{second.field}"))
        notes.append(say("note.settled", pair=pair))
    else:
        notes.append(say("note.settled_sides" if job.sides else "note.settled_points"))
    if layout.ground and layout.ground.taken:
        notes.append(say("note.resolved", hold=say(f"fit.hold_{layout.ground.taken.hold}")))
    if job.levels is not None and job.spacing is not None:
        notes.append(say("note.levels_win", levels=layout.levels))
    if by_rounds:
        key = "usual" if job.levels is None else "one" if job.levels == 1 else "many"
        notes.append(say(f"note.rounds_{key}", levels=job.levels))
    if not any(job.ends.values()):
        notes.append(say("note.landmarks"))
    if not job.ties:
        notes.append(say("note.ties"))
    if job.outward:
        notes.append(
            say(
                "note.offset",
                chord=tape.show_small(layout.staked.chord - layout.drawn.chord),
                sagitta=tape.show_small(layout.staked.sagitta - layout.drawn.sagitta),
            )
        )
    if job.tolerance is None:
        notes.append(say("note.tolerance"))
    if layout.method.halves:
        notes.append(say("note.square"))
    return [*notes, *_strings(layout), say("note.spring")]


def _strings(layout: Layout) -> Iterator[str]:
    """What the strings of ordinates and tangent offsets were chosen for, and where they leave a wide gap."""
    setting, tape, at = layout.setting, layout.job.shown, layout.marks
    if layout.parallel and setting.halve_first:
        yield say("note.halve_first_wins")
    if setting.rounds and layout.method.stand.rounds(setting):
        gap, start, end = max((distance(at[one.name], at[other.name]), one.name, other.name)
                              for one, other in pairwise(layout.stakes))  # fmt: skip
        if gap > setting.rounds.gap * FITS:
            yield say("note.steep", start=start, end=end, gap=tape.show(gap))
