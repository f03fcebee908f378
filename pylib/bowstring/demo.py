"""An example job, invented: no such place, post or pier."""

from __future__ import annotations

from bowstring.job.form import JobForm

DEMO: JobForm = {
    "bowstring": 1,
    "title": "Bandstand walk, Alder Green (an invented example)",
    "note": "Outer form of a curved walk; the centre of the arc lies in the pond.",
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""},
    "ends": {"A": "lamp post by the kiosk", "B": "gate pier"},
    "side": "left",
    "tolerance": "1/4 in",
    "levels": 3,
    "drawn_to": "face",
    "driven": "pin",
}
