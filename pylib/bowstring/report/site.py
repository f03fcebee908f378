"""The site as an answer tells it: obstacles and known marks, for the drawings and the sheet."""

from __future__ import annotations

from bowstring.layout.layout import Layout
from bowstring.report.forms.site import SitePart


def report_site(layout: Layout) -> SitePart:
    """Return the answer's ``site``: tape, hands, obstacles and known marks, in metres in the frame of the chord."""
    site, tape = layout.job.site, layout.job.shown
    return {
        "tape": {"length": site.tape_length, "shown": tape.show(site.tape_length), "class": site.tape_class},
        "hands": site.hands,
        "obstacles": [
            {"name": one.name, "stops": "tape" if one.stops_tape else "feet",
             "outline": [[point.x, point.y] for point in one.outline],
             "at": [one.circle.centre.x, one.circle.centre.y] if one.circle else None,
             "diameter": 2 * one.circle.radius if one.circle else None}
            for one in site.obstacles
        ],
        "known": [{"name": mark.name, "x": mark.point.x, "y": mark.point.y, "sigma": mark.sigma}
                  for mark in site.known],
        "fall": {"along": site.along, "across": site.across},
        "axes": ("n-e" if site.north_first else "x-y") if site.control and layout.side else None,
    }  # fmt: skip
