"""The form boards along a line: how long, where they end, what is opposite, and what no splice is near."""

from __future__ import annotations

from itertools import pairwise
from math import radians, tan

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bowstring.forming.cutting import Rules, Run, best_order
from bowstring.forming.line.boards import Form, forms_of, shares_of_arcs, stretches
from bowstring.forming.line.edges import NoEdge
from bowstring.forming.line.line import Line
from bowstring.forming.line.pieces import Bend, Straight
from bowstring.forming.line.slab import LineSlab
from unit.forming.walked import bends, straights

THICK = 0.75 / 12
STOCK = (8.0, 10.0, 12.0, 14.0, 16.0)


def creek() -> LineSlab:
    """In feet: 20 straight, R 31 70° left, R 24 40° right, 8.5 straight; 6 wide, the line in its middle."""
    pieces = (Straight(20.0), Bend.of(31.0, radians(70)), Bend.of(24.0, radians(-40)), Straight(8.5))
    return LineSlab(Line(pieces), 3.0, 3.0)


def test_the_creek_walks_boards_by_hand() -> None:
    """Half a board's thickness outside of the slab: nearer to the center on the inside of a turn, farther outside."""
    [(left, right)] = forms_of(creek(), THICK, 2.0)
    half, first, last = THICK / 2, radians(70), radians(40)
    assert left.run.length == pytest.approx(2 + 20 + (28 - half) * first + (27 + half) * last + 8.5 + 2)
    assert right.run.length == pytest.approx(2 + 20 + (34 + half) * first + (21 - half) * last + 8.5 + 2)
    assert left.edges == pytest.approx((20, 28 * first, 27 * last, 8.5))
    assert left.run.edge == pytest.approx(left.run.length - 4) and (left.run.past, left.run.beyond) == (2, 2)


def test_one_arc_has_the_run_of_an_arc_alone() -> None:
    [(left, right)] = forms_of(LineSlab(Line((Bend.of(62.0, -0.8),)), 0.0, 5.0), THICK, 2.0)
    for form, radius in ((left, 62 + THICK / 2), (right, 57 - THICK / 2)):
        alone = Run(radius * 0.8 + 4, 2.0)
        assert form.run.length == pytest.approx(alone.length) and form.run.edge == pytest.approx(alone.edge)
        for along in (0.0, 2.0, 17.3, alone.length - 1):
            assert form.run.share(along) == pytest.approx(alone.share(along))
    assert shares_of_arcs(Line((Bend.of(62.0, -0.8),)), left, 4) == pytest.approx((0, 0.25, 0.5, 0.75, 1))


@given(st.lists(st.one_of(straights(), bends()), min_size=1, max_size=5), st.floats(0.1, 0.9))
def test_opposite_places_have_one_share(pieces: list[Straight | Bend], part: float) -> None:
    """Both boards where they stand square off one station have the share of the slab's middle there."""
    line = Line(tuple(pieces))
    try:
        [(left, right)] = forms_of(LineSlab(line, 0.5, 1.0), 0.02, 0.6)
    except NoEdge:
        assume(False)
    for row in range(len(pieces)):
        middle = (sum(left.middles[:row]) + part * left.middles[row]) / sum(left.middles)
        for form in (left, right):
            along = form.before + sum(form.boards[:row]) + part * form.boards[row]
            assert form.run.share(along) == pytest.approx(middle)
            piece, at = form.on_edge(along)
            assert piece == row and at == pytest.approx(sum(form.edges[:row]) + part * form.edges[row])


def test_a_board_ends_at_a_kink() -> None:
    """Two straights, 20° right: the left boards run on to the miter, the right ones are cut back, in their middle."""
    pieces = (Straight(12.0), Straight(9.0, radians(-20)), Bend.of(30.0, 0.5))
    slab = LineSlab(Line(pieces), 2.0, 3.0)
    assert stretches(slab.line) == (range(1), range(1, 3))
    (first, other), (second, last) = forms_of(slab, THICK, 2.0)
    half, corner = THICK / 2, tan(radians(10))
    assert first.run.length == pytest.approx(2 + 12 + (2 + half) * corner) and (first.before, first.after) == (2, 0)
    assert other.run.length == pytest.approx(2 + 12 - (3 + half) * corner)
    assert second.run.length == pytest.approx(9 + (2 + half) * corner + (28 - half) * 0.5 + 2)
    assert (last.before, last.after) == (0, 2) and last.begins == pytest.approx(12 - 3 * corner)
    assert second.on_edge(0.0) == (1, pytest.approx(12 + 2 * corner))


def test_splices_keep_off_joins_quarters_and_each_other() -> None:
    """Measured on the ground: none within a foot of a place to keep off, none within two of one across the slab."""
    line = creek().line
    forms = forms_of(creek(), THICK, 2.0)[0]
    quarters = shares_of_arcs(line, forms[0], 4)
    order = best_order(tuple(form.run for form in forms), STOCK, Rules(6.0, 0.01, 1.0, 2.0, (), quarters))
    assert order is not None and not any(order.broken.values())
    middle = sum(forms[0].middles)
    found: list[list[float]] = []
    for place, form in enumerate(forms):
        spots = _places(form, quarters)
        cuts = order.splices(place)
        assert all(abs(cut - spot) > 1 - 1e-6 for cut in cuts for spot in spots)
        assert sum(order.pieces[place]) == pytest.approx(form.run.length)
        found.append([form.run.share(cut) * middle for cut in cuts])
    assert all(abs(one - other) > 2 - 1e-6 for one in found[0] for other in found[1])


def _places(form: Form, shares: tuple[float, ...]) -> list[float]:
    """Where shares are along a form's board, by halving."""
    found = []
    for share in shares:
        low, high = 0.0, form.run.length
        for _ in range(60):
            middle = (low + high) / 2
            low, high = (middle, high) if form.run.share(middle) < share else (low, middle)
        found.append(low)
    assert all(first < last for first, last in pairwise(found))
    return found
