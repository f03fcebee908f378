"""An outline tapped on the plan of the site: from points of the drawing to corners on the ground, as they are typed."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from bowstring.geometry.outlines import fault_of
from bowstring.geometry.plane import Point, distance
from bowstring.job.obstacles import LEAST_DIAMETER
from bowstring.job.terms import MOST_CORNERS, STOPS
from bowstring.page.rows import MOST, filled_rows, outline_text
from bowstring.page.talk import Asked
from bowstring.page.unit import tape_of
from bowstring.units.tape import Tape
from bowstring.words import say

LEAST_CORNERS = 3

ROUND = "round"
DRAWN = (*STOPS, ROUND)
"""What can be drawn on the plan: outlines, by what they stop, and what is round and stops both."""


def drawn_obstacle(asked: Asked) -> Mapping[str, object]:
    """Return the fields of an obstacle that was tapped on the plan.

    ``{"fields": {id: text}, "stops": one of ``DRAWN``, "scale": text, "turn": text, "points": [[x, y], ...]}``, points
    in the drawing's units, ``scale`` and ``turn`` as the plan's frame carries them (see ``siteplan``), gives
    ``{"fields": {id: text}}``: the next free row's name, what it stops, and its outline to the tape's marks (of what
    is round its center and its diameter, from a tap on each); or ``{"error": text}``.

    Raises ``ValueError`` for what the page never sends.
    """
    drawn = str(asked["stops"])
    if drawn not in DRAWN:
        raise ValueError("no such plan")
    stops = STOPS[0] if drawn == ROUND else drawn
    points = _on_the_ground(asked)
    typed = {name: text.strip() for name, text in asked["fields"].items() if text.strip()}
    tape = tape_of(typed)
    corners = _without_repeats([Point(tape.round(point.x), tape.round(point.y)) for point in points])
    row = _free_row(typed, stops)
    wrong = _wrong_circle(corners) if drawn == ROUND else _wrong(corners)
    if wrong is not None or row is None:
        return {"error": wrong or say("siteplan.full", most=MOST["ground"])}
    place = f"ground-{row}"
    return {
        "fields": {
            f"{place}-name": typed.get(f"{place}-name") or _name(typed, drawn),
            f"{place}-stops": stops,
            **_placed(place, corners, tape, drawn),
        }
    }


def _placed(place: str, corners: Sequence[Point], tape: Tape, drawn: str) -> dict[str, str]:
    """Return the fields that say where it is. A circle is no smaller than what was tapped."""
    texts = [[tape.show(corner.x), tape.show(corner.y)] for corner in corners]
    if drawn != ROUND:
        return {f"{place}-outline": outline_text(texts)}
    marks = math.ceil(2 * distance(*corners) / tape.mark - 1e-6)
    return {f"{place}-at": outline_text(texts[:1]), f"{place}-diameter": tape.show(marks * tape.mark)}


def _wrong_circle(corners: Sequence[Point]) -> str | None:
    """Return what is wrong with a circle's center and a place on its edge, or ``None``."""
    if len(corners) != 2:
        return say("siteplan.round_taps")
    return None if 2 * distance(*corners) >= LEAST_DIAMETER else say("siteplan.round_small")


def _on_the_ground(asked: Asked) -> list[Point]:
    """Return the tapped points in metres in the chord's frame. Raises ``ValueError``."""
    scale, turn = float(asked["scale"]), str(asked["turn"])
    if turn not in ("1", "-1") or not (math.isfinite(scale) and scale > 0):
        raise ValueError("no such plan")
    points = [(float(x), float(y)) for x, y in asked["points"]]
    if not all(math.isfinite(value) for point in points for value in point):
        raise ValueError("points must be finite")
    return [Point(x / (scale * int(turn)), -y / scale) for x, y in points]


def _without_repeats(corners: Sequence[Point]) -> list[Point]:
    """Return corners without those that were tapped twice, the last on the first too."""
    return [corner for number, corner in enumerate(corners) if corner != corners[number - 1] or len(corners) == 1]


def _wrong(corners: Sequence[Point]) -> str | None:
    """Return what is wrong with an outline, or ``None``: too few corners or too many, or sides that cross."""
    if len(corners) < LEAST_CORNERS:
        return say("siteplan.few")
    if len(corners) > MOST_CORNERS:
        return say("siteplan.many", most=MOST_CORNERS)
    fault = fault_of(corners)
    return say(f"siteplan.{fault}") if fault else None


def _free_row(typed: Mapping[str, str], stops: str) -> int | None:
    """Return the first row that has no outline yet and isn't said to stop something else, or ``None``."""
    filled = filled_rows(typed, "ground")
    for row in range(MOST["ground"]):
        placed = any(f"ground-{row}-{name}" in typed for name in ("outline", "at", "diameter"))
        fits = typed.get(f"ground-{row}-stops", stops) == stops and not placed
        if row not in filled or fits:
            return row
    return None


def _name(typed: Mapping[str, str], drawn: str) -> str:
    """Return a name that no other obstacle has."""
    taken = {text.casefold() for name, text in typed.items() if name.startswith("ground-") and name.endswith("-name")}
    plain = say(f"siteplan.name.{drawn}")
    names = [plain, *(f"{plain} {number}" for number in range(2, MOST["ground"] + 2))]
    return next(name for name in names if name.casefold() not in taken)
