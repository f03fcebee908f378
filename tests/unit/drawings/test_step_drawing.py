"""The drawing of a card: nothing covers anything, all on the paper, on the true hand, with the card's own numbers."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest

from bowstring.drawings.boxes import Box, text_box
from bowstring.drawings.step import step_svg
from bowstring.drawings.stepdiscs import RADIUS
from card_jobs import EVERYDAY, JOBS, told
from helping import about
from unit.drawings.drawing_reader import SVG, Read

KINDS = ("end", "name", "number", "word")
HALF = 9.0
"""Half a mark's square, drawing units."""

SAME_PLACE = "parallel_over_end"
"""A stake that stands at a mark of its string."""

ARCS = {
    "flat": {"chord": "100 ft", "sagitta": "1 ft"},
    "340 degrees": {"radius": "30 ft", "central_angle": 340},
    "170 degrees": {"radius": "30 ft", "central_angle": 170},
    "a quarter": {"radius": "30 ft", "central_angle": 90},
}
NO_SUCH_LAYOUT = [(method, "340 degrees") for method in ("ordinates", "tangent", "angles")]
METHODS = ("halving", "centre", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates")


def boxes(read: Read) -> list[tuple[str, Box]]:
    """What must stand clear: every text but those in discs, every disc, every mark's square."""
    found = []
    for text in read.words():
        if "bd-in" not in text.classes:
            kind = next(kind for kind in KINDS if f"bd-{kind}" in text.classes)
            found.append((text.text, text_box(text.text, kind, text.at, text.anchor)))
    for one in read.root.iter(f"{SVG}circle"):
        x, y, radius = (float(one.attrib[key]) for key in ("cx", "cy", "r"))
        if radius == RADIUS:
            found.append(("a disc", Box(x - radius, y - radius, x + radius, y + radius)))
    for name, places in read.stakes().items():
        found += [(f"[{name}]", Box(x - HALF, y - HALF, x + HALF, y + HALF)) for x, y in places]
    return found


def is_clear(answer: Any, card: Any) -> None:
    read = Read(step_svg(answer, card, id="step"))
    left, top, right, bottom = read.box
    every = boxes(read)
    for text, box in every:
        assert left <= box.left and box.right <= right and top <= box.top and box.bottom <= bottom, text
    for (one, box), (other, second) in combinations(every, 2):
        assert not box.overlaps(second, -0.5) or card["kind"] == SAME_PLACE, (one, other)
    discs = {text.text for text in read.words() if "bd-in" in text.classes}
    assert discs == {str(one["disc"]) for one in card["numbers"]}


@pytest.mark.parametrize(
    ("name", "side"), [*((name, "left") for name in JOBS), *((name, "right") for name in EVERYDAY)]
)
def test_nothing_covers_anything_on_any_card(name: str, side: str) -> None:
    answer = told(name, side=side)
    seen = set()
    for card in answer["cards"]:
        if card["kind"] in seen and card["number"] % 3:
            continue  # stakes that go alike: every third
        seen.add(card["kind"])
        with about(name, card["number"], card["kind"]):
            is_clear(answer, card)
    assert seen


@pytest.mark.parametrize(("method", "arc"), [
    (method, arc) for method in METHODS for arc in ARCS if (method, arc) not in NO_SUCH_LAYOUT
])  # fmt: skip
def test_flat_arcs_and_nearly_round_ones_are_as_clear(method: str, arc: str) -> None:
    answer = told(method, arc=ARCS[arc], levels=4)
    for card in answer["cards"]:
        with about(arc, card["number"], card["kind"]):
            is_clear(answer, card)


def test_names_keep_clear_where_stakes_have_long_ones() -> None:
    answer = told("halving", levels=7)
    for card in answer["cards"][-12:]:
        is_clear(answer, card)
    assert any(len(card["stake"] or "") > 2 for card in answer["cards"])


def of_paper(answer: Any, card: Any) -> dict[str, tuple[float, float]]:
    return {name: places[0] for name, places in Read(step_svg(answer, card, id="step")).stakes().items()}


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("name", ["halving", "a round arc", "a flat arc"])
def test_a_stake_of_halving_is_over_its_string_on_the_true_hand(name: str, side: str) -> None:
    answer = told(name, side=side)
    for card in answer["cards"]:
        if card["kind"] != "stake":
            continue
        step = answer["steps"][card["steps"][0] - 1]
        at = of_paper(answer, card)
        (x, y), (x2, y2), (sx, sy) = (at[step["names"][part]] for part in ("start", "end", "stake"))
        assert y == pytest.approx(y2, abs=0.01) and sy < y - 30, "the curve is up"
        assert (x < x2) is (side == "left")
        # On paper y runs down: the cross product is negative for what is on the left.
        across = (x2 - x) * (sy - y) - (y2 - y) * (sx - x)
        assert (across < 0) is (side == "left")


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("method", ["ordinates", "tapes", "tangent", "coordinates", "centre", "produced"])
def test_each_step_is_drawn_on_the_hand_that_its_card_says(method: str, side: str) -> None:
    """Against the ground: a curve on the right is the frame's mirror image."""
    answer = told(method, side=side)
    ground = {mark["name"]: (mark["x"], mark["y"] if side == "left" else -mark["y"]) for mark in answer["marks"]}
    looked = 0
    for card in answer["cards"]:
        paper = of_paper(answer, card)
        for a, b, c in combinations(sorted(paper), 3):
            turns = []
            for at in (ground, paper):
                (x, y), (x2, y2), (x3, y3) = at[a], at[b], at[c]
                turns.append((x2 - x) * (y3 - y) - (y2 - y) * (x3 - x))
            on_paper = -turns[1]  # y runs down
            if abs(turns[0]) > 0.05 and abs(on_paper) > 200:
                assert (turns[0] > 0) is (on_paper > 0), (card["kind"], a, b, c)
                looked += 1
    assert looked > 2


def test_it_says_where_it_is_not_to_scale() -> None:
    flat, steep = told("a flat arc"), told("halving", arc={"radius": "20 ft", "central_angle": 180})
    (one,) = [card for card in flat["cards"] if card["stake"] == "M"]
    assert "not to scale" in Read(step_svg(flat, one, id="x")).all_text()
    ends = next(card for card in steep["cards"] if card["kind"] == "stake")
    assert "Step" in Read(step_svg(steep, ends, id="x")).described()[0]


def test_what_is_said_of_it_has_the_numbers() -> None:
    answer = told("halving")
    card = next(card for card in answer["cards"] if card["stake"] == "Q1")
    title, description = Read(step_svg(answer, card, id="x")).described()
    assert "Q1" in title
    for one in card["numbers"]:
        assert one["label"] in description and one["shown"] in description


def test_what_stands_is_in_outline_and_what_is_set_now_is_full() -> None:
    answer = told("halving")
    card = next(card for card in answer["cards"] if card["stake"] == "Q1")
    read = Read(step_svg(answer, card, id="x"))
    assert read.classes_of_stake("Q1") == [{"bd-stake", "bd-new"}]
    assert read.classes_of_stake("A") == read.classes_of_stake("M") == [{"bd-stake"}]


def test_what_is_in_the_way_is_drawn() -> None:
    answer = told("past a shed")
    card = next(card for card in answer["cards"] if card["kind"] == "stake_crossed")
    assert 'data-stops="tape"' in step_svg(answer, card, id="x")
