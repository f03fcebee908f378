"""An example job, invented: no such place, post or pier. Its ground leaves halving as the method to take."""

from __future__ import annotations

from bowstring.job.form import JobForm, ObstacleForm


def _area(name: str, stops: str, *corners: tuple[str, str]) -> ObstacleForm:
    return {"name": name, "stops": stops, "outline": [list(corner) for corner in corners]}


DEMO: JobForm = {
    "bowstring": 1,
    "title": "Bandstand walk, Alder Green (an invented example)",
    "note": "Outer form of a curved walk. The arc's center lies in the pond; nobody may step into the flower beds.",
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""},
    "ends": {"A": "lamp post by the kiosk", "B": "gate pier"},
    "side": "left",
    "mark": "1/16 in",
    "tolerance": "1/4 in",
    "fair": "3/16 in",
    "levels": 3,
    "drawn_to": "face",
    "driven": "hub",
    "ground": [
        _area("pond", "feet", ("12 ft", "-40 ft"), ("26 ft", "-40 ft"), ("30 ft", "-30 ft"), ("25 ft", "-22 ft"),
              ("14 ft", "-23 ft"), ("9 ft", "-31 ft")),
        _area("west bed", "feet", ("2.5 ft", "-2 ft"), ("17 ft", "-2 ft"), ("17 ft", "1.2 ft"), ("2.5 ft", "1 ft")),
        _area("east bed", "feet", ("21 ft", "-2 ft"), ("35.5 ft", "-2 ft"), ("35.5 ft", "1 ft"), ("21 ft", "1.2 ft")),
        _area("hedge", "tape", ("5 ft", "7 ft"), ("33 ft", "7 ft"), ("33 ft", "9 ft"), ("5 ft", "9 ft")),
    ],
}  # fmt: skip
