"""How deep the concrete is at each form, against the board that stands there: told once, for slab, pad and line."""

from __future__ import annotations

from typing import NamedTuple

from bowstring.forming.boards import Board
from bowstring.forming.pad import Pad
from bowstring.report.forming.boards_bending import name_of
from bowstring.report.forming.edge_lines import overdig_of
from bowstring.report.forming.fill_stand import bent_of
from bowstring.report.forming.formboard import form_of, practice_of, straight_of
from bowstring.report.forming.plan import Plan, is_designed
from bowstring.report.forming.quantities import thick
from bowstring.report.forming.thick_edge import along_of, at_building, thick_edge
from bowstring.words import say
from bowstring.words.stars import unstarred

DUST = 1e-9


class Formed(NamedTuple):
    """A board with how deep the concrete is behind it, metres; ``edge``: it is a thick edge there."""

    board: Board
    deep: float
    edge: bool

    @property
    def gap(self) -> float:
        """How far the concrete goes below the board's foot, metres, below 0 where the board goes deeper."""
        return self.deep - self.board.height


def forms_of(plan: Plan) -> list[Formed]:
    """Return the forms along a slab: both edges of a band, the curve and the straight ones of a slab that fills it. The
    curve's is left out where no board bends to it, all where the slab's thickness isn't said or the forms are designed;
    the ends of a band are none of them."""
    slab, edge, filled = plan.said.slab.thickness, thick_edge(plan), plan.filled
    if slab is None or is_designed(plan):
        return []

    def formed(board: Board, *, by_edge: bool) -> Formed:
        return Formed(board, edge.deep, True) if edge and by_edge else Formed(board, slab, False)

    if filled is None:
        return [formed(form_of(plan), by_edge=True)]
    curve = [formed(form_of(plan), by_edge=True)] if bent_of(plan) else []
    along, straight = along_of(plan), straight_of(plan)
    if not isinstance(filled, Pad):
        return [*curve, formed(straight, by_edge=True)]
    back = [formed(straight, by_edge=along == "all")] if filled.backed else []
    return [*curve, formed(straight, by_edge=along != "curve"), *back]


def lowest(plan: Plan, *, edge: bool) -> Formed | None:
    """Return the lowest board at a thick edge, or where the concrete is as deep as the slab; ``None`` without one."""
    return _lowest(forms_of(plan), edge=edge)


def held(plan: Plan) -> Formed | None:
    """Return the lowest board below which cut earth holds a thick edge: no base lies past that. ``None`` where boards
    reach down to it, or as good as that."""
    return _held(plan, forms_of(plan))


def at_forms(plan: Plan) -> list[str]:
    """Return what holds the concrete below boards that are lower than it: of a slab earth banked against their foot,
    where they are a little low; a taller board is told by itself."""
    forms = forms_of(plan)
    return [*_below_told(plan, forms), *_bank(plan, _lowest(forms, edge=False), "boards.bank")]


def edge_told(plan: Plan) -> list[str]:
    """Return the same of a thick edge alone."""
    return _edge_told(plan, forms_of(plan))


def below_told(plan: Plan) -> list[str]:
    """Return the same of a thick edge and an apron's edge."""
    return _below_told(plan, forms_of(plan))


def edge_notes(plan: Plan) -> list[str]:
    """Return that for the card of the boards."""
    return [unstarred(text) for text in below_told(plan)]


def edge_sizes(plan: Plan) -> list[float]:
    """Return what that is told of, as numbers, metres; none where nothing is told."""
    forms, apron = forms_of(plan), plan.said.slab.apron
    if not _below_told(plan, forms):
        return []
    return [*(size for one in forms for size in (one.deep, one.board.height)), *([apron.thickness] if apron else [])]


def past_edge(plan: Plan) -> str:
    """Return how it is dug past the trench of a thick edge: to the board's foot where earth is the form, else with the
    trench; empty without such an edge, and where it isn't dug past the forms."""
    forms = forms_of(plan)
    low = _lowest(forms, edge=True)
    if low is None or not overdig_of(plan):
        return ""
    return say("deep.past_held" if _held(plan, forms) else "deep.past_boards", foot=thick(plan.tape, low.board.height))


def trench_notes(plan: Plan) -> list[str]:
    """Return the same for the card of the dig, with what stands at a building."""
    if thick_edge(plan) is None:
        return []
    forms = forms_of(plan)
    low = _lowest(forms, edge=True)
    kind = "inside" if low is None or not overdig_of(plan) else "held" if _held(plan, forms) else "boards"
    foot = thick(plan.tape, low.board.height) if low else ""
    return [say(f"forming.note.edges_{kind}{'_building' if at_building(plan) else ''}", foot=foot)]


def against(plan: Plan, board: Board, *, straight: bool = False) -> float:
    """Return how deep concrete presses on a board along a curve, or a ``straight`` one beside it, metres: as deep as
    the slab, at a thick edge as deep as the board reaches. As deep as the board is high where no thickness is said."""
    slab, edge = plan.said.slab.thickness, thick_edge(plan)
    if slab is None:
        return board.height
    if edge is None or (straight and isinstance(plan.filled, Pad) and along_of(plan) == "curve"):
        return slab
    return max(slab, min(edge.deep, board.height))


def _lowest(forms: list[Formed], *, edge: bool) -> Formed | None:
    return min((one for one in forms if one.edge is edge), key=lambda one: one.board.height, default=None)


def _held(plan: Plan, forms: list[Formed]) -> Formed | None:
    low = _lowest(forms, edge=True)
    return low if low and low.gap > practice_of(plan).lowered + DUST else None


def _below_told(plan: Plan, forms: list[Formed]) -> list[str]:
    return [*_edge_told(plan, forms), *_apron_told(plan, forms)]


def _edge_told(plan: Plan, forms: list[Formed]) -> list[str]:
    low = _held(plan, forms)
    if low is None:
        return _bank(plan, _lowest(forms, edge=True), "boards.bank_edge")
    return [_below(plan, low, forms, "edge")]


def _apron_told(plan: Plan, forms: list[Formed]) -> list[str]:
    apron = plan.said.slab.apron
    if apron is None or not forms or plan.filled is not None or apron.thickness <= max(one.deep for one in forms):
        return []
    at = Formed(forms[0].board, apron.thickness, False)
    return [_below(plan, at, forms, "apron")] if at.gap > practice_of(plan).lowered + DUST else []


def _below(plan: Plan, one: Formed, forms: list[Formed], what: str) -> str:
    alike = len({form.board.height for form in forms}) == 1
    board = say("boards.board") if alike else name_of(one.board)
    sizes = {"deep": one.deep, "height": one.board.height, "gap": one.gap}
    return say(f"boards.below_{what}", board=board, **{key: thick(plan.tape, size) for key, size in sizes.items()})


def _bank(plan: Plan, low: Formed | None, key: str) -> list[str]:
    if low is None or not DUST < low.gap <= practice_of(plan).lowered + DUST:
        return []
    shown = plan.tape.show_limit
    return [say(key, board=name_of(low.board), height=shown(low.board.height), gap=shown(low.gap))]
