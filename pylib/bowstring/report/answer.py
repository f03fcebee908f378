"""The one door: a job in, an answer out, plain JSON values on both sides."""

from __future__ import annotations

from bowstring.job.job import Job, read_job
from bowstring.layout.comparison import Row, advise, compare
from bowstring.layout.frame import DrawingFrame
from bowstring.layout.layout import Layout, lay_out
from bowstring.report.accuracy import report_accuracy, stake_figures
from bowstring.report.advice import report_advice, report_methods
from bowstring.report.cautions import report_cautions, report_stops
from bowstring.report.givens import report_given
from bowstring.report.halving import report_levels
from bowstring.report.mistakes import report_mistakes
from bowstring.report.notes import report_notes, report_top
from bowstring.report.numbers import shown_measures
from bowstring.report.results import report_checks, report_fit, report_gap, report_rounding, report_rule, report_stick
from bowstring.report.site import report_site
from bowstring.report.square import report_square
from bowstring.report.steps import report_steps
from bowstring.report.table import report_tables
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
    steps = report_steps(layout, shown)
    return {
        "version": __version__,
        **_head(read, layout),
        "arc": layout.drawn.measures(),
        "staked": layout.staked.measures(),
        "arc_shown": shown_measures(read.tape, layout.drawn.measures()),
        "staked_shown": shown_measures(read.tape, layout.staked.measures()),
        "offset": _offset(read),
        "given": report_given(layout),
        "fit": report_fit(layout),
        "held": bool(layout.ground and layout.ground.taken),
        "halving": report_levels(layout),
        "gap": report_gap(layout),
        "rule": report_rule(layout),
        "rounding": report_rounding(layout),
        "stakes": _stakes(layout, own),
        "marks": [{"name": name, "x": point.x, "y": point.y} for name, point in layout.marks.items()],
        "steps": steps,
        "tables": report_tables(layout, steps),
        "square": report_square(layout),
        "checks": report_checks(layout, shown),
        "mistakes": report_mistakes(layout),
        "stick": report_stick(layout),
        "accuracy": report_accuracy(layout, own),
        "methods": report_methods(layout, rows, whole),
        "advice": report_advice(layout, rows, advise(layout, rows)),
        "warnings_top": report_top(),
        "stops": report_stops(layout, own),
        "cautions": report_cautions(layout, own),
        "site": report_site(layout),
        "notes": report_notes(layout),
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
