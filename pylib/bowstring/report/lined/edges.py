"""Both edges along a line, told."""

from __future__ import annotations

from collections.abc import Iterator

from bowstring.forming.line.edges import Edge
from bowstring.forming.line.pieces import OTHER, Bend, Hand
from bowstring.forming.line.sides import sides_of
from bowstring.forming.line.slab import LineSlab
from bowstring.report.forming.edge_board import board_of
from bowstring.report.forming.edge_lines import footing_past
from bowstring.report.forming.edges import TIGHT
from bowstring.report.forming.ends import told as ends_met
from bowstring.report.forming.pins import held_lines
from bowstring.report.forming.plan import EDGE, WIDTH, is_wall
from bowstring.report.forming.standing import short_told
from bowstring.report.forms.build_edges import EdgeLength
from bowstring.report.forms.build_lined import LinedEdges, LinedPage, LinedTable
from bowstring.report.lined.dig import Inner, dug, inners
from bowstring.report.lined.edge_stick import slip_told, stick_told
from bowstring.report.lined.held import held_page
from bowstring.report.lined.hubs import LineHubs
from bowstring.report.lined.hubs_told import (
    again_told,
    first_told,
    set_told,
    straights_told,
    strays_told,
    table_of_hubs,
)
from bowstring.report.lined.line import name_of
from bowstring.report.lined.pages import page_of
from bowstring.report.lined.plan import LinePlan
from bowstring.report.lined.standing import near_dig, standing_along
from bowstring.words import say

_OPEN = {(WIDTH, EDGE): "edges.open", (WIDTH,): "edges.open_width", (EDGE,): "edges.open_side"}
HANDS: tuple[Hand, Hand] = ("left", "right")


def short_of(plan: LinePlan) -> LinedEdges | None:
    """Return the answer's ``edges``, ``None`` where something has to be said first."""
    if plan.slab is None or plan.asks:
        return None
    return {
        "left": _length(plan, plan.slab.left_edge),
        "right": _length(plan, plan.slab.right_edge),
        "area": plan.slab.area,
    }


def _length(plan: LinePlan, edge: Edge) -> EdgeLength:
    return {"length": edge.length, "length_shown": plan.tape.show_running(edge.length)}


def page(plan: LinePlan, hubs: LineHubs | None) -> LinedPage:
    """Return the page of the edges; ``hubs``: ``None`` before there is a slab."""
    if held := held_page(plan, "edges"):
        return held
    if plan.slab is None or plan.width is None:
        return page_of("edges", "open", say(_OPEN[plan.waits]), "", "slab")
    left, right = (plan.tape.show_running(edge.length) for edge in (plan.slab.left_edge, plan.slab.right_edge))
    width, tight = plan.tape.show(plan.width), _tight(plan, plan.slab)
    standing = standing_along(plan)
    near = bool(tight or plan.slab.overlaps or standing)
    made = page_of("edges", "near" if near else "usual", say("lined.edges_row", left=left, right=right))
    made["more"] = say("lined.edges_more", width=width)
    if tight:
        one = min(tight, key=lambda inner: inner.radius)
        made["more"] = say("lined.edges_tight", radius=plan.tape.show(one.radius), piece=one.piece)
    wall = is_wall(plan.plan)
    made["more"] = " ".join(short_told(row["where"], row["name"], wall=wall) for row in standing) or made["more"]
    made["conclusion"] = say("lined.edges_conclusion", left=left, right=right, width=width)
    made["tables"] = [*(_table(plan, plan.slab, hand) for hand in HANDS), *(table_of_hubs(hubs) if hubs else ())]
    made["lines"] = [*(row["text"] for row in standing), *near_dig(plan), *_lines(plan, plan.slab, tight, hubs)]
    return made


def _tight(plan: LinePlan, slab: LineSlab) -> list[Inner]:
    """The inner edges that are swung from their center, as those of one arc are."""
    least = max(TIGHT[plan.plan.layout.job.tape.feet], slab.width)
    return [inner for inner in inners(slab) if inner.radius < least * (1 - 1e-9)]


def _table(plan: LinePlan, slab: LineSlab, hand: Hand) -> LinedTable:
    """One edge, piece by piece."""
    edge, tape = slab.left_edge if hand == "left" else slab.right_edge, plan.tape
    rows = []
    for number, (side, piece) in enumerate(zip(sides_of(edge), slab.line.pieces, strict=True), 1):
        radius = say("lined.none")
        if isinstance(piece, Bend):
            radius = tape.show(piece.radius - (edge.left if piece.hand == "left" else -edge.left))
        rows.append([name_of(plan, number), radius, tape.show_running(side.length), tape.show_running(side.ends)])
    heads = [say("lined.head_piece"), say("lined.head_radius"), say("lined.head_long"), say("lined.head_station")]
    title = say("lined.left_edge" if hand == "left" else "lined.right_edge")
    return {"key": hand, "title": title, "heads": heads, "rows": rows}


def _lines(plan: LinePlan, slab: LineSlab, tight: list[Inner], hubs: LineHubs | None) -> Iterator[str]:
    for one in slab.overlaps:
        yield say("lined.overlap", first=one.first + 1, second=one.second + 1)
    yield from ends_met(plan.plan)
    yield from first_told(hubs) if hubs else ()
    yield from stick_told(plan, slab)
    yield from slip_told(plan, slab)
    yield from _set(plan, slab, tight)
    yield say("walled.ends_square" if is_wall(plan.plan) else "lined.ends_square")
    if is_wall(plan.plan):
        yield say("walled.no_stakes")
        yield from _footing_off(plan)
    else:
        name, thickness = board_of(plan.plan)
        yield say("edges.form_behind", size=plan.tape.show_whole(thickness), board=name)
        yield from held_lines(plan.plan)
    yield from set_told(hubs) if hubs else ()
    yield from dug(plan, slab)
    yield from again_told(hubs) if hubs else ()
    if any(plan.plan.layout.slope):
        yield say("edges.level")


def paper_lines(plan: LinePlan, hubs: LineHubs | None) -> list[str]:
    """Return what the form sheet says of the edges: how they are set; none before there is a slab."""
    slab = plan.slab
    if slab is None or plan.asks:
        return []
    before = [*first_told(hubs), *straights_told(hubs), *strays_told(hubs)] if hubs else []
    again = [*again_told(hubs)] if hubs else []
    stands = [say("walled.no_stakes"), *_footing_off(plan)] if is_wall(plan.plan) else held_lines(plan.plan)
    stick = stick_told(plan, slab, short=True)
    return [*before, *dug(plan, slab), *again, *stick, *_set(plan, slab, _tight(plan, slab)), *stands]


def _footing_off(plan: LinePlan) -> Iterator[str]:
    """How far a wall's footing reaches past each of its faces."""
    past = footing_past(plan.plan)
    if past is not None:
        key = "edges.footing_middle" if past > 0 else "edges.footing_narrow"
        yield say(key, past=plan.tape.show(abs(past)))


def _set(plan: LinePlan, slab: LineSlab, tight: list[Inner]) -> Iterator[str]:
    """How the edges are set at kinks and at tight arcs."""
    yield from _miters(plan, slab)
    for inner in tight:
        yield say("lined.swing", piece=name_of(plan, inner.piece), radius=plan.tape.show(inner.radius))


def _miters(plan: LinePlan, slab: LineSlab) -> Iterator[str]:
    """What each kink does to both edges."""
    tape = plan.tape
    sides = {"left": sides_of(slab.left_edge), "right": sides_of(slab.right_edge)}
    for number, join in enumerate(slab.line.joins):
        if join.tangent:
            continue
        inner: Hand = "left" if join.kink > 0 else "right"
        outer = OTHER[inner]
        on, cut = sides[outer][number].after, -sides[inner][number].after
        yield say(
            "lined.miter" if on > 0 and cut > 0 else "lined.miter_run" if on > 0 else "lined.miter_cut",
            piece=name_of(plan, number + 2),
            outer=say(f"hand.{outer}"),
            on=tape.show(max(on, 0.0)),
            inner=say(f"hand.{inner}"),
            before=tape.show(max(cut, 0.0)),
            after=tape.show(max(-sides[inner][number + 1].before, 0.0)),
        )
    if any(not join.tangent for join in slab.line.joins):
        yield say("lined.miter_how")
