"""The one door: a job in, an answer out, plain JSON values on both sides."""

from __future__ import annotations

from bowstring.comparison import Row, advise, compare
from bowstring.job import Job, read_job
from bowstring.layout import Layout, lay_out
from bowstring.setting import DrawingFrame
from bowstring.telling.accuracy import stake_figures, told_accuracy
from bowstring.telling.advice import told_advice, told_methods
from bowstring.telling.cautions import told_cautions, told_stops
from bowstring.telling.givens import told_given
from bowstring.telling.halving import told_levels
from bowstring.telling.mistakes import told_mistakes
from bowstring.telling.notes import told_notes, told_top
from bowstring.telling.numbers import shown_measures
from bowstring.telling.results import told_checks, told_fit, told_gap, told_rounding, told_rule, told_stick
from bowstring.telling.site import told_site
from bowstring.telling.square import told_square
from bowstring.telling.steps import told_steps
from bowstring.telling.table import told_tables
from bowstring.version import __version__
from bowstring.words import say


def answer(job: dict[str, object], *, whole: bool = True) -> dict[str, object]:
    """Return the whole answer to a job: the arc, the steps, the stakes, what they cost and how to check them.

    ``job`` and the answer are of the forms that the contract in DEVELOPERS.md gives; lengths in the answer are metres,
    angles degrees, as full-precision floats beside the texts that a crew reads. The job isn't changed. Not ``whole``:
    without the one dear figure that no sheet shows, ``all_95`` of the methods that weren't asked for.

    Raises ``BadJob`` when the job can't be used, with the field, what is wrong and what would do.
    """
    read = read_job(job)
    layout = lay_out(read)
    shown: dict[float, str] = {}
    rows = compare(layout)
    own = next(row for row in rows if row.method is layout.method)
    steps = told_steps(layout, shown)
    return {
        "version": __version__,
        **_head(read, layout),
        "arc": layout.drawn.measures(),
        "staked": layout.staked.measures(),
        "arc_shown": shown_measures(read.tape, layout.drawn.measures()),
        "staked_shown": shown_measures(read.tape, layout.staked.measures()),
        "offset": _offset(read),
        "given": told_given(layout),
        "fit": told_fit(layout),
        "held": bool(layout.ground and layout.ground.taken),
        "halving": told_levels(layout),
        "gap": told_gap(layout),
        "rule": told_rule(layout),
        "rounding": told_rounding(layout),
        "stakes": _stakes(layout, own),
        "marks": [{"name": name, "x": point.x, "y": point.y} for name, point in layout.marks.items()],
        "steps": steps,
        "tables": told_tables(layout, steps),
        "square": told_square(layout),
        "checks": told_checks(layout, shown),
        "mistakes": told_mistakes(layout),
        "stick": told_stick(layout),
        "accuracy": told_accuracy(layout, own),
        "methods": told_methods(layout, rows, whole),
        "advice": told_advice(layout, rows, advise(layout, rows)),
        "warnings_top": told_top(),
        "stops": told_stops(layout, own),
        "cautions": told_cautions(layout, own),
        "site": told_site(layout),
        "notes": told_notes(layout),
    }


def _head(job: Job, layout: Layout) -> dict[str, object]:
    """What the job said of itself, and how each input was read."""
    return {
        "title": job.title,
        "note": job.note,
        "unit": job.tape.unit,
        "mark": job.tape.show_mark(),
        "side": layout.side,
        "ends": dict(job.ends),
        "drawn_to": job.drawn_to,
        "driven": job.driven,
        "start": job.start,
        "tolerance": job.tolerance,
        "tolerance_shown": None if job.tolerance is None else job.tape.show_small(job.tolerance),
        "levels": layout.levels,
        "method": layout.method.name,
        "halve_first": layout.setting.halve_first,
        "ties": {
            end: [{"to": tie.to, "distance": tie.distance, "shown": job.tape.show(tie.distance)} for tie in ties]
            for end, ties in job.ties.items()
        },
        "readings": [{"field": one.field, "typed": one.typed, "text": one.text} for one in job.readings],
    }


def _offset(job: Job) -> dict[str, object] | None:
    if not job.outward:
        return None
    toward = "outside" if job.outward > 0 else "centre"
    shown = job.tape.both(abs(job.outward))
    text = say(f"offset.{toward}", shown=shown, driven=say(f"driven.{job.driven or 'stake'}"))
    return {
        "distance": abs(job.outward),
        "toward": toward,
        "shown": job.tape.show(abs(job.outward)),
        "text": text,
    }


def _stakes(layout: Layout, own: Row) -> list[dict[str, object]]:
    rows, tape = [], layout.job.tape
    frame = DrawingFrame(layout.job, layout.setting, layout.side == "right") if layout.job.site.control else None
    assert own.accuracy is not None
    for stake, spread in zip(layout.stakes, own.accuracy.stakes, strict=True):
        point = layout.marks[stake.name]
        along = layout.along(stake)
        rows.append(
            {
                "name": stake.name,
                "x": point.x,
                "y": point.y,
                "along": along,
                "x_shown": tape.show(point.x),
                "y_shown": tape.show(point.y),
                "along_shown": tape.show(along),
                "level": stake.level,
                "miss": layout.misses.by_stake[stake.name],
                **stake_figures(layout, spread),
            }
        )
        if frame:
            pair = frame.of(point)
            rows[-1] |= {"drawing": list(pair), "drawing_shown": [tape.show(value) for value in pair]}
    return rows
