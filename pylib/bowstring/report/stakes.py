"""The stakes and the marks of a layout: where each stands, and how true each stake will be."""

from __future__ import annotations

from bowstring.layout.comparison import Row
from bowstring.layout.frame import DrawingFrame
from bowstring.layout.layout import Layout
from bowstring.report.accuracy import stake_figures


def report_marks(layout: Layout) -> list[dict[str, object]]:
    """Return the answer's ``marks``: every mark that the steps and the checks use, in metres."""
    return [{"name": name, "x": point.x, "y": point.y} for name, point in layout.marks.items()]


def report_stakes(layout: Layout, own: Row) -> list[dict[str, object]]:
    """Return the answer's ``stakes`` from A to B; ``own``: the row of the layout's method."""
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
