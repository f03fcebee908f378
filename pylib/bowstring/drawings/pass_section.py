"""A card of the forms drawn: a cut across the slab and its dig, the outside of the curve at the left, not to scale."""

from __future__ import annotations

from bowstring.drawings.boxes import Box
from bowstring.drawings.sketch import Sketch
from bowstring.drawings.slab import slab_svg
from bowstring.drawings.stepdiscs import draw_discs
from bowstring.drawings.svg import Point as Place
from bowstring.geometry.plane import Point, distance
from bowstring.report.alone import edges_of, grades_of
from bowstring.report.forming.fill_edges import FILLS
from bowstring.report.forming.pass_card import CORNERS
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.arc import OffsetPart
from bowstring.report.forms.build_lined import LinedPart
from bowstring.report.forms.cards import CardRow
from bowstring.words import say

VIEW = Box(0.0, 0.0, 360.0, 160.0)
_ACROSS = {"hub_outside": 34.0, "dig_outside": 78.0, "outside": 116.0, "top": 148.0, "bottom": 148.0, "slab": 180.0,
           "base": 212.0, "inside": 244.0, "dig_inside": 282.0, "hub_inside": 326.0}  # fmt: skip
_GROUND, _BED, _BOTTOM = 74.0, 112.0, 132.0
_ROWS = (34.0, 54.0)
"""Over the ground, for what is taped across; a gauge from edge to edge lies over the bed."""
_GAUGE = 94.0
_BOARD, _DROP = 7.0, 12.0
_THICKEST = 3.0
_HATCH = 8.0
_ON_BED = frozenset({"stake", "outside", "inside"})
_DEPTHS = {"bottom": _BOTTOM, "base": _BED}
_BEFORE = ("form_hubs", "form_dig")
_SETTING = ("form_stakes", "form_boards")
_FORMED = ("form_stakes", "form_boards", "form_tops", "form_pour")


class PassSection:
    """The drawing of one card in the making."""

    def __init__(self, answer: Answer, card: CardRow, id: str) -> None:
        self.answer, self.card = answer, card
        labels = (f"{one['disc']}: {one['label']}, {one['shown']}." for one in card["numbers"])
        title = say("forming.draw_title", number=card["number"], title=card["title"])
        self.sketch = Sketch(id=id, title=title, description=" ".join([card["text"], *labels]))
        self.across = {**_ACROSS, "stake": _stake_at(answer)}
        self.wall = _is_against(answer)

    def finish(self) -> str:
        """Return the drawing as SVG."""
        kind = self.card["kind"]
        self._ground(dug=kind not in _BEFORE)
        if kind in _FORMED:
            self._forms(fall=kind == "form_tops", poured=kind == "form_pour")
        self._marks()
        for line in self.card["lines"]:
            self._line(line["from"], line["to"], line["disc"] or 0)
        outside, inside = _sides(self.answer)
        for key, at, anchor in ((outside, 6.0, "start"), (inside, 354.0, "end")):
            self.sketch.words(say(key), (at, 154.0), "word", anchor, "quiet")
        self.sketch.words(say("card.draw.not_to_scale"), (354.0, 16.0), "word", "end", "quiet")
        return self.sketch.finish(within=VIEW)

    def _ground(self, *, dug: bool) -> None:
        """The ground and the dig in it, dashed where it is still to come; its base."""
        left, right = self.across["dig_outside"], self._dug_to()
        pit = [(left, _GROUND), (left, _BOTTOM), (right, _BOTTOM), (right, _GROUND)]
        lines = self.sketch.drawing.lines
        far = right if self.wall else 360.0
        if self.wall:
            self._building(right)
        if not dug:
            lines([[(0.0, _GROUND), (far, _GROUND)]], "line string")
            lines([pit], "line soft dash")
            return
        lines([[(0.0, _GROUND), *pit, (far, _GROUND)]], "line string")
        lines([[(left, _BED), (right, _BED)]], "line cut")
        if self.card["kind"] == "form_base":
            outer, inner = self.across["outside"], self.across["inside"]
            lines([[(outer, _BED), (outer, _GROUND), (inner, _GROUND), (inner, _BED)]], "line soft dash")

    def _dug_to(self) -> float:
        """Where the dig ends across from the curve: past the edge there, or at the face of a building."""
        return self.across["inside" if self.wall else "dig_inside"]

    def _building(self, face: float) -> None:
        """The wall that closes the slab across from its curve, cut through and hatched, down past the dig."""
        low, top = _BOTTOM + 8.0, _ROWS[0] + 6.0
        self.sketch.drawing.lines([[(face, top), (face, low)]], "line")
        strokes = [top + _HATCH * step for step in range(1, int((low - top) / _HATCH))]
        self.sketch.drawing.lines([[(face, y + _HATCH), (face + _HATCH, y)] for y in strokes], "line soft")

    def _forms(self, *, fall: bool, poured: bool) -> None:
        """Both boards on the bed, each with its stake behind it, one lower or the slab between them poured."""
        outer, inner = self.across["outside"], self.across["inside"]
        grades = grades_of(self.answer) if fall else None
        low = grades["low"] if grades else None
        tops = {at: _GROUND + (_DROP if low == side else 0.0) for side, at in (("outside", outer), ("inside", inner))}
        stand = [(outer, -1.0, 1.0), *([] if self.wall else [(inner, 1.0, _across_thick(self.answer))])]
        for at, way, thick in stand[_unformed(self.answer, self.card) :]:
            back = at + way * _BOARD * thick
            self._box(at, tops[at], back, _BED + 3.0, "stake")
            self._pointed(back + way * 5.0, tops[at] + 6.0, _BOTTOM + 12.0, "stake")
        if poured:
            self._box(outer, _GROUND, inner, _BED, "slab")
        elif low:
            self.sketch.drawing.lines([[(outer, _GROUND), (inner, _GROUND)]], "line soft dash")

    def _box(self, left: float, top: float, right: float, low: float, look: str) -> None:
        corners = ((right, top), (right, low), (left, low))
        self.sketch.drawing.path([("M", (left, top)), *(("L", corner) for corner in corners), ("Z",)], look)

    def _pointed(self, x: float, top: float, tip: float, look: str) -> None:
        """A stake or a hub as it stands in the ground."""
        corners = ((x + 4.0, top), (x + 4.0, tip - 8.0), (x, tip), (x - 4.0, tip - 8.0))
        self.sketch.drawing.path([("M", (x - 4.0, top)), *(("L", corner) for corner in corners), ("Z",)], look)
        self.sketch.ground.take_box(Box(x - 4.0, top, x + 4.0, tip))

    def _marks(self) -> None:
        """The stakes and hubs of a card, what it sets strong; and where the dig lines are painted."""
        kind = self.card["kind"]
        named = {name for line in self.card["lines"] for name in (line["from"], line["to"])}
        for name in sorted(named):
            x = self.across[name]
            if name.startswith("hub"):
                self._pointed(x, _GROUND - 12.0, _GROUND + 30.0, "stake new" if kind == "form_hubs" else "stake")
            elif name == "stake":
                deep = _BOTTOM + 10.0 if self._stands_in_dig(x) else _GROUND + 24.0
                self._pointed(x, _GROUND - 14.0, deep, "stake new" if kind == "form_line" else "stake")
            elif name.startswith("dig") and not (self.wall and name == "dig_inside"):
                self.sketch.drawing.lines([[(x, _GROUND - 5.0), (x, _GROUND + 5.0)]], "line arrow strong")
            elif name in ("outside", "inside") and kind == "form_line":
                self.sketch.drawing.lines([[(x, _GAUGE - 9.0), (x, _BED)]], "line arrow")

    def _stands_in_dig(self, x: float) -> bool:
        return self.card["kind"] not in _BEFORE and self.across["dig_outside"] < x < self._dug_to()

    def _line(self, start: str, end: str, disc: int) -> None:
        """What is measured, with its disc: down from the top, across, or at one place."""
        if end in _DEPTHS:
            x = self.across[end]
            self._measured((x, _GROUND), (x, _DEPTHS[end]), disc)
        elif start == end:
            x = self.across[start]
            y = (_GROUND + _BED) / 2 if start == "slab" else _ROWS[1] - 2.0
            draw_discs(self.sketch, [(disc, [(x, y)])])
        else:
            y = _GAUGE if {start, end} <= _ON_BED and self.card["kind"] == "form_line" else _ROWS[min(disc, 2) - 1]
            self._measured((self.across[start], y), (self.across[end], y), disc)

    def _measured(self, start: Place, end: Place, disc: int) -> None:
        self.sketch.arrow(start, end, feathers=False)
        middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
        aside = 16.0 if start[0] == end[0] else 0.0  # a short arrow downward shows whole
        spots: list[Place] = [(middle[0] + aside, middle[1]), (middle[0] - 16.0, middle[1])]
        draw_discs(self.sketch, [(disc, spots)])


def _sides(answer: Answer) -> tuple[str, str]:
    """What stands under the left and the right of the drawing: of a line's the hands of who walks along it."""
    if answer["lined"] is not None:
        return "forming.draw_left", "forming.draw_right"
    if _is_against(answer):
        return "forming.draw_outside", "pad.draw_building"
    return "forming.draw_outside", "forming.draw_straight" if _fills(answer) else "forming.draw_inside"


def _is_against(answer: Answer) -> bool:
    """Whether a building closes the slab across from its curve: no form, no stakes and no dig past it there."""
    edges = edges_of(answer)
    return edges is not None and _fills(answer) and bool(edges["strip_shown"])  # other slabs' strips are at their ends


def _fills(answer: Answer) -> bool:
    """Whether the slab fills its curve: across from that is a straight edge, or the curve of the other end."""
    edges = edges_of(answer)
    return edges is not None and edges["edge"] == FILLS


def _across_thick(answer: Answer) -> float:
    """How many times as thick as the curve's board the one across from it is drawn: as it is, where that is straight;
    no thicker than leaves room for its stake in the dig."""
    edges = edges_of(answer)
    if edges is None or edges["both_ends"] or edges["straight_gap"] is None or not edges["curve_gap"]:
        return 1.0
    return min(_THICKEST, max(1.0, edges["straight_gap"] / edges["curve_gap"]))


def _unformed(answer: Answer, card: CardRow) -> int:
    """How many of the two edges have no form yet, the curve first: no board bends to it, and nobody knows what does."""
    edges = edges_of(answer)
    if edges is None or edges["straight_gap"] is None or edges["curve_gap"] or card["kind"] not in _SETTING:
        return 0
    return 2 if edges["both_ends"] else 1


def _stake_at(answer: Answer) -> float:
    """Where the stakes stand across the drawing, by how far off them both edges are."""
    edges, past = edges_of(answer), 0.5 if answer["lined"] is None else _along(answer["lined"], answer["offset"])
    for line in edges["lines"] if edges else ():
        if line["key"] in ("outside", "inside") and line["off"] is not None and edges:
            past = line["off"] / edges["width"] + (line["key"] == "inside")
    low, high = _ACROSS["hub_outside"] + 14.0, _ACROSS["hub_inside"] - 14.0
    return min(high, max(low, _ACROSS["outside"] + past * (_ACROSS["inside"] - _ACROSS["outside"])))


def _along(part: LinedPart, offset: OffsetPart | None) -> float:
    """How far across a line's slab its stakes stand, from the left edge: 0 to 1 between the edges."""
    line, left, right = ([Point(**run["start"]) for run in part["shape"][key][:1]] for key in ("line", "left", "right"))
    if not left:
        return 0.5
    off, width = distance(line[0], left[0]), distance(left[0], right[0])
    turn = part["pieces"][part["at"] - 1]["turn"]
    if offset is not None:  # away from the center is to the right of an arc that turns left
        off += offset["distance"] * (1 if (offset["toward"] == "outside") == (turn == "left") else -1)
    return off / width


def pass_svg(answer: Answer, card: CardRow, *, id: str) -> str:
    """Return the drawing of one card of the forms as SVG, of a pad's far corners its plan; ``id``: prefix of the ids
    inside."""
    if card["kind"] == f"form_{CORNERS}":
        return slab_svg(answer, CORNERS, id=id)
    return PassSection(answer, card, id).finish()
