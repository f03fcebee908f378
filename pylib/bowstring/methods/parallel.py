"""Ordinates from a string: along the long chord from its middle, or along one parallel to it.

The parallel is a rectangle's far side: two tapes find each of its ends, the distance from one end of the chord and the
rectangle's diagonal from the other, so that nothing need be taped or strung along A-B itself. Where the diagonals can't
be taped its ends are squared off the string A-B. Then the sides left over prove it. Where one diagonal alone is free,
and no string goes from A to B, the corner that lost its own is set from the other corner, and proved by a tape from one
end to a mark on the string.
"""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.construction import STRING, Along, Bisect, CrossTapes, Line, Move, Recipe, SquareOff, Stake
from bowstring.geometry.arc import HALF_TURN_COSINE
from bowstring.geometry.plane import Point, distance, unit_vector
from bowstring.methods.ends import TOO_SHORT
from bowstring.methods.setting import FITS, Parallel, Setting

ENDS = {"A": "PA", "B": "PB"}
"""The marks on the parallel, square off each end of the chord."""

SEEN = "P1"
"""The mark on the parallel to which a tape proves it where one of its diagonals is blocked."""

FEET = "par"
"""What stands before a stake's name in the name of its foot on the parallel."""


class SquareOffString(SquareOff):
    """A length squared off a string that has to be stretched for it first."""

    @property
    def lines(self) -> tuple[Line, ...]:
        return (*super().lines, (STRING, self.start, self.end))


def overhangs(setting: Setting) -> bool:
    """Whether the arc turns past a half circle: it bulges beyond the ends of its chord."""
    return setting.arc.cosine < -HALF_TURN_COSINE


def off_string(recipe: Recipe, setting: Setting, stakes: Sequence[Stake]) -> None:
    """Ordinates from the string, each measured along it from its middle or from its nearer end."""
    start, end, y = "A", "B", 0.0
    if setting.parallel:
        set_parallel(recipe, setting.arc.chord, setting.parallel)
        start, end, y = ENDS["A"], ENDS["B"], setting.parallel.distance
    chord = setting.arc.chord
    middle = f"mid {start}-{end}" if setting.rounds and not overhangs(setting) else ""
    if middle:
        recipe.do("string_middle", 1, [Bisect(middle, start, end)], [(start, middle)], start=start, end=end)
    for stake in stakes[1:-1]:
        point = setting.arc.point_at(stake.fraction)
        if not recipe.moved.isdisjoint((start, end, middle)):
            _off_moved(recipe, setting, (start, end, middle), stake.name, point)
            continue
        near = point.x <= chord / 2 * FITS  # the middle's last digit says nothing
        ends = (start, end) if near else (end, start)
        along = abs(point.x - chord / 2) if middle else point.x if near else chord - point.x
        line = (middle, *ends[::-1]) if middle else (ends[0], *ends)
        _ordinate(recipe, stake.name, line, along, point.y - y, _kind(setting.parallel, point.y - y))


def _off_moved(recipe: Recipe, setting: Setting, marks: tuple[str, str, str], stake: str, true: Point) -> None:
    """One stake from a string of which a mark stands elsewhere: its numbers from where the marks are."""
    start, end, middle = marks
    a, b = recipe.at[start], recipe.at[end]
    way = unit_vector(a, b)
    origin = recipe.at[middle] if middle else a
    along, out = way.dot(true.minus(origin)), way.cross(true.minus(origin))
    if middle:
        line = (middle, start, end) if along >= 0 else (middle, end, start)
        along = abs(along)
    elif along <= distance(a, b) / 2:
        line = (start, start, end)
    else:
        line, along = (end, end, start), distance(a, b) - along
    _ordinate(recipe, stake, line, along, out, _kind(setting.parallel, out))


def _kind(parallel: Parallel | None, out: float) -> str:
    """What the step of a stake ``out`` metres off its string is called: where it stands as seen from it."""
    if parallel is None:
        return "ordinate"
    way = "over" if abs(out) < parallel.fine else "toward" if parallel.distance * out < 0 else "away"
    return f"parallel_{way}"


def _ordinate(recipe: Recipe, stake: str, line: tuple[str, str, str], along: float, out: float, kind: str) -> None:
    """One stake: ``along`` metres from the first mark of the ``line`` toward the last (negative: on past it), then
    ``out`` metres off it, positive toward the curve's side."""
    origin, start, end = line
    from_middle = origin != start
    foot = origin
    moves: list[Move] = []
    measures: list[tuple[str, str]] = []
    if abs(along) <= TOO_SHORT:
        where = "middle" if from_middle else "end"
    else:
        where = "mid" if from_middle else "on" if along > 0 else "past"
        foot = f"{'foot' if kind == 'ordinate' else FEET} {stake}"
        moves.append(Along(foot, origin, end, along))
        measures.append((origin, foot))
    # The curve's side is on the left of A-B and on the right of B-A.
    left = (out > 0) == (start in ("A", ENDS["A"]))
    moves.append(SquareOff(stake, foot, start, end, abs(out), left=left))
    measures.append((foot, stake))
    recipe.do(f"{kind}_{where}", 1, moves, measures, stake=stake, start=start, end=end, foot=foot)


def set_parallel(recipe: Recipe, chord: float, parallel: Parallel) -> None:
    """Write down both ends of the parallel string, and what proves that it is parallel; ``chord``: metres."""
    off = parallel.distance
    side = "curve" if off > 0 else "behind"
    corners = {"A": Point(0.0, off), "B": Point(chord, off)}
    pairs = [("A", "B"), ("B", "A")]
    for end, other in pairs[::-1] if parallel.lost == "A" else pairs:
        mark = ENDS[end]
        recipe.truth[mark] = corners[end]
        left = (off > 0) == (end == "A")  # the curve's side, seen from this end toward the other
        if parallel.squared:
            move: Move = SquareOffString(mark, end, end, other, abs(off), left=left)
            measures = [(end, mark)]
        else:
            if end == parallel.lost:  # the corner that stands is on the same side of it as the far end
                other = ENDS[other]
            move = CrossTapes(mark, end, abs(off), other, distance(recipe.at[other], corners[end]), left=left)
            measures = [(end, mark), (other, mark)]
        way = "squared" if parallel.squared else "crossed"
        recipe.do(f"parallel_{way}_{side}", 1, [move], measures, start=end, end=other, peg=mark)
    first, last = ENDS["A"], ENDS["B"]
    if not recipe.moved.isdisjoint((first, last)):  # a string that is parallel no more has a length of its own
        kind = "parallel_stood" if parallel.proved else "parallel_stood_strung"
        recipe.do(kind, 1, measure=[(first, last)] if parallel.proved else [], start=first, end=last)
        return
    if parallel.lost:
        (eye, part), corner = parallel.sight, ENDS[parallel.lost]
        far = last if corner == first else first
        recipe.do("parallel_leaning", 1, [Along(SEEN, corner, far, part * chord)], [(corner, SEEN), (eye, SEEN)],
                  start=corner, end=far, eye=eye, seen=SEEN)  # fmt: skip
        return
    proof = "strung" if not parallel.proved else "squared" if parallel.squared else "crossed"
    recipe.do(f"parallel_{proof}", 1, measure=[(first, last)] if parallel.proved else [], start=first, end=last)
