"""The stakes and the marks of a layout: where each stands, and how true each stake will be."""

from __future__ import annotations

from bowstring.analysis.accuracy import ELLIPSE_95, StakeSpread
from bowstring.construction import Stake
from bowstring.layout.frame import DrawingFrame
from bowstring.layout.layout import Layout
from bowstring.layout.rows import Row
from bowstring.report.forms.stakes import Ellipse, MeantRow, PlaceRow, StakeRow
from bowstring.report.stations import stations_of


def report_marks(layout: Layout) -> list[PlaceRow]:
    """Return the answer's ``marks``: every mark that the steps and the checks use, in metres."""
    return [{"name": name, "x": point.x, "y": point.y} for name, point in layout.marks.items()]


def report_stakes(layout: Layout, own: Row) -> list[StakeRow]:
    """Return the answer's ``stakes`` from A to B; ``own``: the row of the layout's method."""
    rows: list[StakeRow] = []
    tape = layout.job.shown
    # Without the hand it isn't known on which side of the control line the stakes are.
    known = layout.job.site.control and layout.side
    frame = DrawingFrame(layout.job, layout.setting, layout.side == "right") if known else None
    assert own.accuracy is not None
    stations = stations_of(layout)
    stood = {step.stake for step in layout.recipe.steps if step.stands}
    for stake, spread in zip(layout.stakes, own.accuracy.stakes, strict=True):
        point = layout.marks[stake.name]
        along = layout.along(stake)
        row: StakeRow = {
            "name": stake.name,
            "x": point.x,
            "y": point.y,
            "along": along,
            "x_shown": tape.show_running(point.x),
            "y_shown": tape.show(point.y),
            "along_shown": tape.show_running(along),
            "level": stake.level,
            "miss": layout.misses.by_stake[stake.name],
            "sigma_across": spread.across,
            "sigma_along": spread.along,
            "sigma_fair": spread.fair,
            "sigma_across_shown": tape.show_cost(spread.across),
            "sigma_along_shown": tape.show_cost(spread.along),
            "sigma_fair_shown": None if spread.fair is None else tape.show_cost(spread.fair),
            "ellipse": _ellipse(spread),
        }
        if stake.name in stations:
            row["station_shown"] = stations[stake.name]
        if stake.name in stood:
            row["meant"] = _meant(layout, stake, frame)
        if frame:
            pair = frame.of(point)
            row["drawing"], row["drawing_shown"] = list(pair), [tape.show_running(value) for value in pair]
        rows.append(row)
    return rows


def _meant(layout: Layout, stake: Stake, frame: DrawingFrame | None) -> MeantRow:
    """Its place on the arc, whatever was got there."""
    tape, place = layout.job.shown, layout.staked.point_at(stake.fraction)
    miss = layout.misses.by_stake[stake.name]
    row: MeantRow = {
        "x_shown": tape.show_running(place.x),
        "y_shown": tape.show(place.y),
        "off_shown": tape.show_near(miss) if tape.round(abs(miss)) else "",
    }
    if frame:
        row["drawing_shown"] = [tape.show_running(value) for value in frame.of(place)]
    return row


def _ellipse(spread: StakeSpread) -> Ellipse:
    return {"long": ELLIPSE_95 * spread.long, "short": ELLIPSE_95 * spread.short, "turned": spread.turned}
