"""Lines walked by plain trigonometry and slabs put together by shapely, to hold the package's own against."""

from __future__ import annotations

from itertools import pairwise
from math import ceil, pi, radians, tan

import numpy as np
import shapely
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy
from numpy.typing import NDArray
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Piece, Straight
from bowstring.forming.line.runs import Pose
from bowstring.geometry.plane import Point

STEP = 1e-3
"""Radians between the points on an arc: its polygon lacks a part of STEP²/6 of the area, 1.7e-7."""

Row = NDArray[np.float64]
"""Places one after the other: x, y and heading."""


def walk(line: Line) -> list[Row]:
    """Each piece as a row of places, by its center: no formula of the package."""
    x, y, heading = line.start.point.x, line.start.point.y, line.start.heading
    rows = []
    for piece in line.pieces:
        heading += piece.kink
        if isinstance(piece, Straight):
            last = (x + piece.length * np.cos(heading), y + piece.length * np.sin(heading), heading)
            row = np.array([(x, y, heading), last])
        else:
            out = piece.radius if piece.hand == "left" else -piece.radius
            headings = heading + np.linspace(0, piece.turn, ceil(abs(piece.turn) / STEP) + 1)
            xs = x - out * np.sin(heading) + out * np.sin(headings)
            ys = y + out * np.cos(heading) - out * np.cos(headings)
            row = np.column_stack([xs, ys, headings])
            row[0] = (x, y, heading)  # to the last bit, so that neighbours leave no crack
        x, y, heading = row[-1]
        rows.append(row)
    return rows


def aside(row: Row, left: float) -> Row:
    """The same places as points so far to the left."""
    return np.column_stack([row[:, 0] - left * np.sin(row[:, 2]), row[:, 1] + left * np.cos(row[:, 2])])


def union(line: Line, left: float, right: float) -> BaseGeometry:
    """The slab as shapely has it: each piece's strip, and outside of each kink the kite up to the miter."""
    rows = walk(line)
    parts = []
    for row in rows:  # the line's own ends are corners, too: a kite shares them to the last bit
        ends = [aside(row, left), row[-1:, :2], aside(row[::-1], -right), row[:1, :2]]
        parts.append(Polygon(np.concatenate(ends)))
    for (before, after), piece in zip(pairwise(rows), line.pieces[1:], strict=True):
        far = -right if piece.kink > 0 else left
        on = abs(far) * tan(abs(piece.kink) / 2)
        (x, y, heading), last, first = before[-1], aside(before[-1:], far)[0], aside(after[:1], far)[0]
        if on > 1e-6:
            tip = (last[0] + on * np.cos(heading), last[1] + on * np.sin(heading))
            parts.append(Polygon([(x, y), last, tip, first]))
    return shapely.union_all([shapely.make_valid(part) for part in parts])


def straights() -> SearchStrategy[Piece]:
    return st.builds(Straight, st.floats(4, 40))


@st.composite
def bends(draw: DrawFn) -> Bend:
    radius = draw(st.floats(2, 60))
    return Bend.of(radius, draw(st.floats(max(4 / radius, 0.1), 4)) * draw(st.sampled_from([1, -1])))


@st.composite
def lines(draw: DrawFn, kinks: bool = False, most: int = 6) -> Line:
    """A random line of pieces at least 4 m long, tangent or with kinks up to 80 degrees here and there."""
    pieces = draw(st.lists(st.one_of(straights(), bends()), min_size=1, max_size=most))
    turns = [0.0] + [
        radians(draw(st.one_of(st.just(0.0), st.floats(-80, -0.01), st.floats(0.01, 80)))) if kinks else 0.0
        for _ in pieces[1:]
    ]
    start = Pose(Point(draw(st.floats(-50, 50)), draw(st.floats(-50, 50))), draw(st.floats(-pi, pi)))
    return Line(tuple(piece.kinked(turn) for piece, turn in zip(pieces, turns, strict=True)), start)
