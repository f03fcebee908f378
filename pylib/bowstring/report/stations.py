"""The stations of the stakes of the arc that is staked, where the job says its starting station."""

from __future__ import annotations

from bowstring.job.job import Job
from bowstring.job.line_settled import settle_line
from bowstring.layout.layout import Layout
from bowstring.units.stationing import show_station


def station_shown(job: Job, along: float) -> str:
    """Return the station so many metres past the job's starting one, empty where it says none; in the job's own unit:
    stations are the drawing's."""
    return "" if job.station is None else show_station(job.station + along, feet=job.tape.feet)


def stations_of(layout: Layout) -> dict[str, str]:
    """Return each stake's station by its name, A and B with them; none where the job says no starting station.

    The line's own: a stake beside it has the station of the place that it stands square off.
    """
    job = layout.job
    if job.station is None:
        return {}
    start = 0.0
    if job.line is not None:
        start = settle_line(job.line, job.tape.mark, job.shown.show).line.stations[job.at]
    whole = layout.staked.arc_length
    return {
        stake.name: station_shown(job, start + layout.along(stake) / whole * layout.drawn.arc_length)
        for stake in layout.stakes
    }
