"""What a job gives the methods to work from: the arc, the straights and the marks that stand, in the chord's frame."""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, sin

from bowstring.errors import bad
from bowstring.geometry.arc import Arc
from bowstring.geometry.plane import Point, distance
from bowstring.job.job import Job
from bowstring.job.terms import OTHER
from bowstring.methods.catalogue import BY_NAME
from bowstring.methods.ends import BACK, Before
from bowstring.methods.setting import FITS, Rounds, Setting
from bowstring.units.sizes import FOOT

CLOSE_MARKS, CLOSE_PART = 4, 1 / 2000
"""Two control marks whose distance differs from the drawing's by more than four marks (each of four coordinates is off
by half a last digit) or a 2000th of it are not the marks, or not its numbers (common practice, no source)."""

ROUND = 1e-9
"""Of a unit: a float's dust under a whole one."""

BACK_METRES, HALF_METRE = 4.0, 0.5
"""Metres: as far back as a metric crew is told to set S, and the step of a round distance."""

END_MARKS = 2
"""Tape marks by which the place typed for an end may differ from the layout's: what rounding its number makes."""


def setting_of(job: Job, drawn: Arc, staked: Arc, rounds: Rounds | None = None) -> Setting:
    """Return the setting of a job's methods; raises ``BadJob`` where a mark can't stand where it is said to."""
    site = job.site
    known = _known(job, staked)
    _meet_stations(job, staked)
    _meet_first_gap(job, staked)
    setting = Setting(
        arc=staked,
        straights=_straights(job, drawn, staked),
        known=known,
        tangent_from=site.tangent_from,
        tapes_from=site.tapes_from,
        halve_first=site.halve_first,
        centre_reachable=site.centre_reachable,
        control=(site.control[0][0], site.control[1][0]) if site.control else ("A", "B"),
        rounds=rounds,
    )
    if site.control:
        _meet_control(job, setting)
    return setting


def _known(job: Job, staked: Arc) -> dict[str, Point]:
    """The known marks; those typed for the ends have to stand where the layout has them."""
    known = {}
    for number, mark in enumerate(job.site.known):
        if mark.name in ("A", "B"):
            true = Point(0.0 if mark.name == "A" else staked.chord, 0.0)
            off = distance(true, mark.point)
            if off > END_MARKS * job.tape.mark:
                raise bad(f"known[{number}].x", "site.known_off", name=mark.name, off=job.tape.show_small(off),
                          x=job.tape.show(true.x))  # fmt: skip
        else:
            known[mark.name] = mark.point
    return known


def _meet_stations(job: Job, staked: Arc) -> None:
    """Chosen stations stand on the chord, each by itself, for a method that can go by them."""
    stations, tape = job.site.stations, job.tape
    for number, x in enumerate(stations):
        if job.site.method and not BY_NAME[job.site.method].stand.stations:
            raise bad("stations", "site.stations_method")
        if not 0 < x < staked.chord:
            raise bad(f"stations[{number}]", "site.stations_off", station=tape.show(x),
                      chord=tape.show(staked.chord))  # fmt: skip
    for one, other in pairwise(sorted(stations)):
        if other - one < tape.mark:
            last = max(number for number, x in enumerate(stations) if x in (one, other))
            raise bad(f"stations[{last}]", "site.stations_twice", station=tape.show(other))


def _meet_first_gap(job: Job, staked: Arc) -> None:
    """A first gap of its own is on the arc, and no wider than the others."""
    gap, tape = job.site.first_gap, job.tape
    if gap is None:
        return
    if gap >= min(staked.chord, 2 * staked.radius):
        raise bad("first_gap", "site.first_gap_long", gap=tape.show(gap))
    if job.spacing is not None and gap > job.spacing * FITS:
        raise bad("first_gap", "site.first_gap_wide", gap=tape.show(gap), spacing=tape.show(job.spacing))


def _straights(job: Job, drawn: Arc, staked: Arc) -> dict[str, tuple[str, bool]]:
    """The marks of the straights that lie on the tangents of the stakes' own line; off it they lie beside."""
    if staked is not drawn:
        return {}
    if job.start == "corner":
        return {"A": ("P", True), "B": ("P", True)}
    return {"A": ("S", False)} if job.start == "one-end" else {}


def far_back_on(length: float, feet: bool) -> tuple[float, bool]:
    """Return how far back on a straight of a length S is set, metres, and whether that is all of it."""
    most = BACK if feet else BACK_METRES
    return min(length, most), length < most


def before_of(job: Job, side: str | None) -> Before | None:
    """Return the piece of the job's line that shows the tangent at A, ``None`` for a job without one; ``side``: the
    curve's.

    S stands at the beginning of a straight that is shorter than a crew goes back; off an arc a round distance behind A,
    no longer than its chord: a line that is carried on farther than it is long swings. Raises ``BadJob`` where the
    piece is none.
    """
    if job.line is None:
        return None
    from bowstring.forming.line.pieces import Bend
    from bowstring.job.line_settled import before_staked

    piece = before_staked(job.line, job.tape.mark, job.tape.show)
    if piece is None:
        return None
    if not isinstance(piece, Bend):
        back, short = far_back_on(piece.length, job.tape.feet)
        return Before(back, True) if short else None
    unit, most = (FOOT, 10) if job.tape.feet else (HALF_METRE, 6)
    back = min(most, int(piece.arc.chord / unit + ROUND)) * unit or piece.arc.chord
    own = OTHER.get(side or "", piece.hand)  # who walks a curve to the right has it on his left
    return Before(back, False, piece.arc, piece.hand, piece.hand == own, job.line.at)


def _meet_control(job: Job, setting: Setting) -> None:
    """The two control marks stand as far apart here as on the drawing, or they are not those, or not its numbers."""
    assert job.site.control is not None
    (first, one), (second, other) = job.site.control
    here, drawn = distance(setting.place(first), setting.place(second)), distance(one, other)
    if abs(here - drawn) > max(CLOSE_MARKS * job.tape.mark, CLOSE_PART * here):
        tape = job.tape
        raise bad("control", "site.control_far", drawn=tape.show(drawn), here=tape.show(here),
                  off=tape.show_small(abs(here - drawn)))  # fmt: skip


class DrawingFrame:
    """Turns places in the chord's frame into the drawing's coordinates, by its two control marks.

    The chord's frame has y toward the curve whatever its hand; a curve on the right is its mirror image, so y is turned
    over before the frame is turned and moved. No scale: the drawing's distance was held against the layout's before.
    """

    def __init__(self, job: Job, setting: Setting, right_hand: bool) -> None:
        assert job.site.control is not None
        (first, one), (second, other) = job.site.control
        self.flip = -1.0 if right_hand else 1.0
        self.origin, self.drawn = self._plain(setting.place(first)), one
        here = self._plain(setting.place(second)).minus(self.origin)
        there = other.minus(one)
        turn = atan2(here.cross(there), here.dot(there))
        self.c, self.s = cos(turn), sin(turn)
        self.north_first = job.site.north_first

    def _plain(self, point: Point) -> Point:
        return Point(point.x, point.y * self.flip)

    def of(self, point: Point) -> tuple[float, float]:
        """Return a place's two coordinates on the drawing, metres: x and y, or northing and easting."""
        way = self._plain(point).minus(self.origin)
        x = self.drawn.x + way.x * self.c - way.y * self.s
        y = self.drawn.y + way.x * self.s + way.y * self.c
        return (y, x) if self.north_first else (x, y)
