"""The cards of one step: what its parts say, with the step's own numbers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property

from bowstring.analysis.triangles import Square
from bowstring.construction import Measure, Move, Step
from bowstring.layout.layout import Layout
from bowstring.layout.limits import squares_here
from bowstring.report.card_lines import TURNED, lines_of
from bowstring.report.card_part import ANGLE, DEFLECTION, SHORT_CHORDS, SQUARE, WHOLE, Part
from bowstring.report.card_table import AS_GOT, PARTS
from bowstring.report.faced import hands_of
from bowstring.report.forms.cards import CardNumber, CardRight, CardRow
from bowstring.report.forms.steps import StepRow, TapeMeasure
from bowstring.report.got import label_of
from bowstring.report.hands import away_hand, curve_hand
from bowstring.report.numbers import off_the_arc
from bowstring.report.places import far_back, place_name
from bowstring.report.proofs import proof_values
from bowstring.report.square import blade_words
from bowstring.report.steps import alone, kind_told
from bowstring.words import say

FROM_MIDDLE = ("ordinate_mid", "ordinate_middle")
"""Ordinates along a string that is walked from A to B, whichever of its halves they are on."""


class Told:
    """One step with all that its cards say of it."""

    def __init__(self, layout: Layout, step: Step, row: StepRow, squares: Mapping[str, Square]) -> None:
        self.layout, self.step, self.row, self.squares = layout, step, row, squares
        self.kind = kind_told(layout, step)
        self.taped: list[TapeMeasure] = [one for one in row["measures"] if "distance" in one]

    @cached_property
    def hand(self) -> str:
        """The hand that the step goes to, in capitals: nobody may miss it."""
        hands = hands_of(self.layout, self.step)
        kinds = ["turn_hand", "off_hand", "swing_hand", "cross_hand"]
        if self.kind in FROM_MIDDLE:
            kinds = []
        elif self.kind == "sight_back":
            kinds = ["deflection_hand"]
        return next((hands[kind] for kind in kinds if kind in hands), curve_hand(self.layout)).upper()

    @cached_property
    def values(self) -> dict[str, object]:
        """The values of the step's sentences and labels."""
        step, square = self.step, next((move.squares for move in self.step.moves if move.squares), None)
        values: dict[str, object] = {"start": "A", "end": "B", **step.names, "hand": self.hand}
        values["curve"] = curve_hand(self.layout).upper()
        values["turns"] = away_hand(self.layout).upper()  # a curve that lies left of A-B turns right
        values["driven"] = next(iter(step.driven), "")
        values["back"] = far_back(self.layout.marks, step.sets, self.layout.job.shown.feet)
        if step.stake and step.stands:
            values["off"] = off_the_arc(self.layout.job.shown, self.layout.misses.by_stake[step.stake])
        if square:
            values.setdefault("first", square.start)
            values.setdefault("last", square.end)
        return values

    def cards(self) -> list[CardRow]:
        """Return the step's cards, without their running numbers."""
        parts = PARTS[self.kind] if self.kind in PARTS else (Part(),)
        return [self._card(part) for part in parts if self._is_taped(part)]

    def _is_taped(self, part: Part) -> bool:
        """Whether the step has all that a part tells: what no tape reaches isn't measured."""
        return all(isinstance(source, str) or source < len(self.taped) for _label, source in part.numbers)

    def _card(self, part: Part) -> CardRow:
        step, numbers = self.step, part.numbers
        if self.kind not in PARTS:  # a method's own move
            numbers = tuple(("between", place) for place in range(len(self.taped)))
        moves = step.moves[slice(*part.moves)] if part.moves else step.moves
        shown = [self._number(disc, label, source) for disc, (label, source) in enumerate(numbers, 1)]
        sets = [move.mark for move in moves]
        return {
            "number": 0,
            "kind": self.kind,
            "mark": "",
            "steps": [self.row["number"]],
            "stake": step.stake,
            "sets": sets,
            "title": self._title(),
            "main": shown[-1]["shown"] if shown else "",
            "where": self._where(),
            "text": say(f"card.{part.text or self.kind}{alone(self.layout, step)}", **self.values),
            "numbers": shown,
            "right": self._right(part, moves),
            "notes": [],
            "lines": lines_of(step, moves, self._measures(part), self._discs(numbers)),
        }

    def _measures(self, part: Part) -> Sequence[Measure]:
        """The measures of a part: all that its moves' marks are in."""
        if not part.moves:
            return self.step.measures
        told = [source for _label, source in part.numbers] + [part.shows]
        return [self.step.measures[place] for place in told if isinstance(place, int)]

    def _discs(self, numbers: Sequence[tuple[str, int | str]]) -> dict[frozenset[str], int]:
        """The disc of each pull; one that reads as a numbered one has its disc too."""
        discs: dict[frozenset[str], int] = {}
        by_text: dict[str, int] = {}
        for disc, (_label, source) in enumerate(numbers, 1):
            if isinstance(source, str):
                discs[TURNED] = disc
                continue
            one = self.taped[source]
            discs[frozenset((one["from"], one["to"]))] = by_text[one["shown"]] = disc
        if len(numbers) < len(self.taped) and self.kind in SHARED:
            for one in self.taped:
                if one["shown"] in by_text:
                    discs.setdefault(frozenset((one["from"], one["to"])), by_text[one["shown"]])
        return discs

    def _number(self, disc: int, label: str, source: int | str) -> CardNumber:
        slope, values = None, self.values
        if source == ANGLE:
            shown = next(one["shown"] for one in self.row["measures"] if "angle" in one)
        elif source == DEFLECTION:
            shown = self.row["deflection"] or ""
        else:
            one = self.taped[int(source)]
            shown = one["shown"]
            if self.kind in AS_GOT:  # what was measured is told as somebody measures it
                return {"disc": disc, "label": label_of(one["from"], one["to"]), "shown": shown, "slope": None}
            values = {**values, "from": place_name(one["from"]), "to": place_name(one["to"])}
            if self.kind == "have_ends" and taped_otherwise(self.layout):
                label = "taped"  # nothing must read what was found there
            if "slope" in one and one["slope_shown"] != shown:
                slope = say("card.slope", shown=one["slope_shown"])
        return {"disc": disc, "label": say(f"card.label.{label}", **values), "shown": shown, "slope": slope}

    def _right(self, part: Part, moves: Sequence[Move]) -> CardRight | None:
        if not part.right:
            return None
        if part.shows == SQUARE:
            return self._square(moves)
        values, shown = self.values, None
        if part.shows == SHORT_CHORDS:
            shown = self.row["half_chord"]
        elif part.shows == WHOLE:
            whole = proof_values(self.layout, self.step, [one["text"] for one in self.taped])["whole"]
            shown = str(whole)
        elif isinstance(part.shows, int):
            one = self.taped[part.shows]
            shown, values = one["shown"], {**values, "from": one["from"], "to": one["to"]}
        more = say("card.right.offset_again") if part.shows == SHORT_CHORDS else ""
        return {"text": say(f"card.right.{part.right}", **values), "shown": shown, "more": more}

    def _square(self, moves: Sequence[Move]) -> CardRight | None:
        """How an offset is squared; nothing where all sides of its own triangle are taped."""
        tape = self.layout.job.shown
        square = next((self.squares[move.mark] for move in moves if move.mark in self.squares), None)
        if square is None:
            return None
        if not square.shape:
            return {"text": say("card.right.blade", blade=blade_words(tape)), "shown": None, "more": ""}
        along, out, across = (tape.show(side) for side in (square.along, square.out, square.long_side))
        toward = place_name(square.toward)
        text = say("card.right.square", toward=toward, along=along, out=out, across=across)
        return {"text": text, "shown": None, "more": ""}

    def _title(self) -> str:
        step, names = self.step, self.step.names
        if self.kind in TITLED:
            return say(f"card.title.{self.kind}", **self.values)
        if step.sagitta is not None:
            return say("card.title.halved", **names)
        if step.stake:
            return say("card.title.stake", **names)
        if "peg" in names:
            return say("card.title.peg", **names)
        return say("card.title.prove" if self.kind.startswith("prove_") else "card.title.end", **self.values)

    def _where(self) -> str:
        step = self.step
        if step.stake is None:
            return say("card.where.ends" if not step.level else "card.where.line")
        if step.sagitta is not None:
            return say("card.where.round", round=step.level, stake=step.stake)
        return say("card.where.stake", stake=step.stake)


def taped_otherwise(layout: Layout) -> tuple[str, str] | None:
    """Return the drawn chord and the taped one, as texts, where somebody taped another one than is drawn."""
    if layout.ground is None:
        return None
    drawn, found = (layout.job.shown.show(one) for one in (layout.settled.arc.chord, layout.ground.found))
    return (drawn, found) if drawn != found else None


SHARED = ("centre_behind", "centre_inside", "produce_first", "produce_straight", "produce", "prove_parts")
"""Kinds whose one number is held twice."""

TITLED = ("have_ends", "set_ends", "have_ends_untaped", "set_ends_untaped", "have_straight", "have_straight_short",
          "have_arc", "have_arc_past", "have_arc_square", "have_corner",
          "from_corner", "from_corner_untaped", "string", "string_up", "string_none", "no_string", "string_taped",
          "ends_taped", "string_middle", "parallel_crossed", "parallel_squared", "parallel_strung", "parallel_leaning",
          "parallel_stood", "parallel_stood_strung")  # fmt: skip
"""Kinds that have a title of their own in the list."""


def squares_for(layout: Layout) -> Mapping[str, Square]:
    """Return how each offset that a triangle squares is squared, by its mark."""
    squared = any(move.squares and not move.squares.slide for step in layout.recipe.steps for move in step.moves)
    return squares_here(layout.job, layout.setting, layout.recipe) if squared else {}
