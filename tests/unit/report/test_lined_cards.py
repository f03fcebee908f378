"""The forms' cards of a line of several pieces: the numbers of its pages, and by what each counts as done."""

from __future__ import annotations

import re
from cmath import exp
from html import unescape
from itertools import pairwise
from math import radians
from typing import Any

import pytest

from bowstring import Answer, answering
from bowstring.drawings.pass_section import pass_svg
from bowstring.faces.stakes import count, stakes_html
from bowstring.job.record import FORM_CARD
from bowstring.page.pieces import staked_at
from bowstring.report.forms.cards import CardRow
from bowstring.report.work import Work
from bowstring.units.lengths import read_length
from bowstring.words import catalogue, speak
from bowstring.words.languages import LANGUAGES
from helping import about
from line_jobs import SHAPES, arc, straight
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC
from slab_jobs import WALK
from unit.report.test_cards import MOST, is_said_in_few_words, words
from unit.report.test_lined_hubs import AT_JOINT, AT_MIDDLE, GARDEN, staked, trunk

ALL_OF_THEM = ["hubs", "dig", "base", "line", "stakes", "boards", "tops", "pour"]
FOOT = 0.3048
OFFSET: dict[str, Any] = {**CREEK, "offset": "3 ft", "toward": "outside"}
CLEAR: dict[str, Any] = {**CREEK, "offset": "5 ft", "toward": "outside"}
JOBS: dict[str, dict[str, Any]] = {
    "creek": CREEK, "five": FIVE, "kinked": KINKED, "metric": METRIC_LINE, "one arc": ONE_ARC, "offset": OFFSET,
    "clear": CLEAR, "garden": staked(GARDEN, 3, {3: trunk(AT_MIDDLE)}),
    "kinks": SHAPES["kinks"], "many": SHAPES["many"], "bulb": SHAPES["bulb"],
}  # fmt: skip


def told(job: dict[str, Any], **more: Any) -> Answer:
    return answering({**job, **more})  # type: ignore[typeddict-item]


def cards_of(job: dict[str, Any], **more: Any) -> dict[str, CardRow]:
    return {card["kind"].removeprefix("form_"): card for card in told(job, **more)["form_cards"]}


def shown(card: CardRow) -> list[str]:
    return [one["shown"] for one in card["numbers"]]


def table(answer: Answer, key: str) -> Any:
    assert answer["lined"] is not None
    return next(one for page in answer["lined"]["pages"] for one in page["tables"] if one["key"] == key)


@pytest.mark.parametrize(
    ("job", "whats"),
    [
        (CREEK, ALL_OF_THEM),
        (OFFSET, ALL_OF_THEM),
        (CLEAR, ALL_OF_THEM[1:]),
        ({**CREEK, "slab": {}}, []),
        ({key: value for key, value in CREEK.items() if key != "width"}, []),
        ({**CREEK, "slab": {"poured": "wall", "thickness": "3 ft"}}, []),
        ({**CREEK, "width": "60 ft"}, []),
    ],
)
def test_a_line_has_the_cards_of_what_it_says(job: dict[str, Any], whats: list[str]) -> None:
    answer = told(job)
    assert answer["second_pass"] == whats
    assert [card["kind"] for card in answer["form_cards"]] == [f"form_{what}" for what in whats]
    assert [card["number"] for card in answer["form_cards"]] == list(range(1, len(whats) + 1))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", JOBS)
def test_a_card_is_said_in_few_words_and_drawn(language: str, name: str) -> None:
    speak(language)
    answer = told(JOBS[name])
    for card in answer["form_cards"]:
        with about(card["kind"], card["text"]):
            assert is_said_in_few_words(card)
            assert {line["disc"] for line in card["lines"]} == {one["disc"] for one in card["numbers"]}
            drawn = pass_svg(answer, card, id="x")
            hand = catalogue(language)["forming.draw_left"].replace("~", "")
            places = [(line["from"], line["to"]) for line in card["lines"] if line["from"] == line["to"]]
            assert len(set(places)) == len(places)  # no disc lies over another
            assert hand in drawn and FORM_CARD.fullmatch(card["mark"])


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_of_a_card_is_short_enough(language: str) -> None:
    said = {key: text for key, text in catalogue(language).items() if key.startswith("forming.")}
    assert {key: text for key, text in said.items() if words(text) > MOST} == {}


def test_the_numbers_are_the_pages_own() -> None:
    answer, cards = told(FIVE), cards_of(FIVE)
    hubs, gaps = table(answer, "hubs")["rows"], table(answer, "stakes")["rows"]
    assert len(hubs) == 6 and f"{shown(cards['hubs'])[0]} left" in told(FIVE)["in_dig"]["hint"]  # type: ignore[index]
    assert "left" in cards["hubs"]["numbers"][0]["label"]
    # Drawn to the left edge, 5 ft wide, dug a foot past both.
    assert shown(cards["dig"]) == ["1' 0\"", "6' 0\""] and shown(cards["line"]) == ["2' 0\"", "5' 0\""]
    assert shown(cards["base"]) == ['8"', '4"'] and any('dig 10" down' in note for note in cards["base"]["notes"])
    for label, kind in (("between form stakes, arcs", "Arc"), ("between form stakes, straights", "Straight")):
        sizes = [cell.partition(" x ")[2] for row in gaps if row[0].startswith(kind) for cell in row[1:]]
        (size,) = (one["shown"] for one in cards["stakes"]["numbers"] if one["label"] == label)
        assert size == min(sizes, key=lambda text: read_length(text, "ft-in", "gap").metres)
    splices = table(answer, "splices")["rows"]
    for hand in ("Left", "Right"):
        (note,) = (one for one in cards["boards"]["notes"] if one.startswith(hand))
        places = [row[1] for row in splices if row[0].startswith(hand)]
        assert ", ".join(places[:4]) in note and (len(places) <= 4 or f"{len(places) - 4} more" in note)
    grades = next(page for page in answer["lined"]["pages"] if page["key"] == "grades")  # type: ignore[index]
    said = grades["conclusion"].replace("*", "")
    assert all(text in said for text in shown(cards["tops"]))
    pour, reach = answer["pour"], table(answer, "reach")["rows"]
    assert pour is not None
    assert shown(cards["pour"])[1] == reach[-2][2]


def test_each_hub_reads_the_stakes_beside_its_own() -> None:
    """Arc 2 of the walk turns left at R 42 through 32 degrees in eight parts; its hubs are 2 ft left, at R 40: by the
    law of cosines, from complex numbers."""
    card = cards_of(FIVE)["hubs"]
    apart = abs(40 * exp(1j * radians(4)) - 42)
    assert card["right"] is not None and card["right"]["shown"] is not None
    read = read_length(card["right"]["shown"], "ft-in", "right").metres / FOOT
    assert read == pytest.approx(apart, abs=1 / 12 / 16 * 1.001)


def test_one_arc_as_a_line_has_the_numbers_of_the_arc_alone() -> None:
    alone, along = cards_of(WALK), cards_of(ONE_ARC)
    for what in ("hubs", "dig", "base", "line", "pour"):
        assert shown(alone[what]) == shown(along[what]), what
    assert alone["hubs"]["right"] == along["hubs"]["right"]
    assert alone["line"]["right"] and along["line"]["right"]
    assert alone["line"]["right"]["shown"] == along["line"]["right"]["shown"]
    assert sorted(shown(alone["tops"])) == sorted(shown(along["tops"]))


def test_offset_stakes_are_set_again_from_the_hubs_to_both_edges() -> None:
    """Stakes 3 ft outside of a left turn, 6 ft wide around the line: the right edge runs under them, the left one 6 ft
    off. The dig's right line is a foot past; hubs 2 ft off the stakes are 5 ft off the line."""
    cards = cards_of(OFFSET)
    assert shown(cards["hubs"]) == ["2' 0\""] and "right" in cards["hubs"]["numbers"][0]["label"]
    assert shown(cards["dig"]) == ["7' 0\"", "1' 0\""]
    assert shown(cards["line"]) == ["8' 0\"", "2' 0\""]
    assert [one["label"] for one in cards["line"]["numbers"]] == ["hub to the left edge", "hub to the right edge"]
    clear = cards_of(CLEAR)
    assert shown(clear["line"]) == ["8' 0\"", "2' 0\""] and clear["line"]["numbers"][0]["label"].startswith("stake")
    assert [one["label"] for one in clear["dig"]["numbers"]] == [
        "left dig line, left of your line", "right dig line, left of your line",
    ]  # fmt: skip
    assert shown(clear["dig"]) == ["9' 0\"", "1' 0\""]


@pytest.mark.parametrize(("job", "arcs"), [(FIVE, (2, 4)), (CREEK, (2, 3)), (KINKED, (2, 4))])
def test_cards_of_the_whole_line_count_whichever_arc_is_staked(job: dict[str, Any], arcs: tuple[int, int]) -> None:
    first, other = ({what: card["mark"] for what, card in cards_of(job, at=at).items()} for at in arcs)
    assert {what for what in first if first[what] != other[what]} == {"hubs"}


def test_a_card_hangs_on_its_own_numbers_alone() -> None:
    before = {what: card["mark"] for what, card in cards_of(FIVE).items()}
    changes: dict[str, tuple[dict[str, Any], set[str]]] = {
        "base": ({"slab": {**FIVE["slab"], "base": "6 in"}}, {"base"}),
        "overdig": ({"slab": {**FIVE["slab"], "overdig": "14 in"}}, {"hubs", "dig", "line"}),
        "slope": ({"grade": {**FIVE["grade"], "slope": 3}}, {"tops"}),
        "waste": ({"slab": {**FIVE["slab"], "waste": 15}}, {"pour"}),
        "gap": ({"board": {"gap": "2 ft"}}, {"stakes"}),
        "title": ({"title": "Another"}, set()),
    }
    for name, (change, hang) in changes.items():
        after = {what: card["mark"] for what, card in cards_of(FIVE, **change).items()}
        with about(name):
            assert {what for what in before if before[what] != after[what]} == hang


def test_a_mark_is_the_same_in_every_language_and_unit() -> None:
    plain = [card["mark"] for card in told(FIVE)["form_cards"]]
    for language in LANGUAGES:
        speak(language)
        for unit in ("ft-in", "ft", "m", "mm"):
            there = answering(FIVE, shown=unit)["form_cards"]  # type: ignore[arg-type]
            assert [card["mark"] for card in there] == plain, (language, unit)


def test_a_stake_whose_hub_has_no_room_where_the_others_stand_is_told_its_own() -> None:
    """A well where the hub of the arc's middle would be, too small to be in the way of any other: 5 ft to the right of
    the middle of an arc of R 31 that turns left, in the frame of its own chord."""
    middle = 31 * (1 - exp(1j * radians(35)).real)
    x, y = 31 * exp(1j * radians(35)).imag, middle + 5
    well = {"name": "well", "stops": "feet",
            "outline": [[x - 0.1, y - 0.1], [x + 0.1, y - 0.1], [x + 0.1, y + 0.1], [x - 0.1, y + 0.1]]}  # fmt: skip
    job = {**CREEK, "method": "halving", "levels": 2}
    free, blocked = cards_of(job)["hubs"], cards_of(job, ground=[{**well}])["hubs"]
    assert not any("instead" in note for note in free["notes"])
    assert blocked["numbers"][0]["label"] != free["numbers"][0]["label"] or any(
        note.startswith("M's hub") for note in blocked["notes"]
    )


@pytest.mark.parametrize("tree", [AT_MIDDLE, AT_JOINT])
def test_the_line_is_set_again_from_hubs_that_differ_whichever_arc_is_staked(tree: list[str]) -> None:
    """A tree moves arc 3's hubs from 2 ft left to 7 ft right, but for the one at its A, which is square to arc 2."""
    grounds = {3: trunk(tree)}
    first, other = (cards_of(staked(GARDEN, at, grounds)) for at in (2, 3))
    assert {what for what in first if first[what]["mark"] != other[what]["mark"]} == {"hubs"}
    for cards in (first, other):
        line = cards["line"]
        assert shown(line) == ["2' 0\"", "5' 0\""] and "to the right" in line["numbers"][0]["label"]
        assert line["notes"][0] == "Arc 3: from its hubs 7' 0\" to the left (A: 2' 0\" to the right)."
    assert first["line"]["mark"] != cards_of(GARDEN)["line"]["mark"]
    assert "as written" in cards_of(GARDEN)["line"]["numbers"][0]["label"]


def test_from_hubs_that_differ_to_both_edges_of_stakes_beside_the_slab() -> None:
    """Stakes 2 ft to the right of the left edge, so 3 ft from the right one; arc 3's hubs, of a right turn, on the
    other hand: what is to one edge and to the other is 5 ft apart on either hand."""
    job = {**GARDEN, "offset": "2 ft", "toward": "centre"}
    line = cards_of(staked(job, 3, {3: trunk(["11 ft", "5 ft"], "6 ft")}))["line"]
    (note,) = (note for note in line["notes"] if note.startswith("Arc 3: from its hub"))
    for texts in (shown(line), re.findall(r"edge (.+?\")", note)[:2]):
        one, two = (read_length(text, "ft-in", "edge").metres / FOOT for text in texts)
        assert abs(one - two) == pytest.approx(5)


def test_hubs_that_differ_are_proved_bay_by_bay() -> None:
    """Arc 3 turns right at R 25, its hubs 7 ft toward the center, at R 18: each stake an angle on from its neighbor
    reads to that one's hub by the law of cosines, from complex numbers; A's hub is 2 ft left, square to its tangent."""
    job = staked(GARDEN, 3, {3: trunk(AT_MIDDLE)})
    card = cards_of(job)["hubs"]
    assert card["right"] is not None and "side must read" in card["right"]["text"]
    said = {
        bay: part.partition(": ")[0]
        for part in card["right"]["more"].split("; ") if part[0].isdecimal()
        for bay in part.partition(": ")[2].split(", ")
    }  # fmt: skip
    work = Work(job)  # type: ignore[arg-type]
    assert work.lined is not None
    shares = work.lined.plan.plan.shares()
    assert len(said) == len(shares) - 1
    for (one, start), (other, end) in pairwise(shares):
        apart = abs(18 * exp(1j * radians(60 * (end - start))) - 25)
        read = read_length(said[f"{one}-{other}"], "ft-in", "bay").metres / FOOT
        assert read == pytest.approx(apart, abs=1 / 12 / 16 * 1.001)
    stray = abs(27 - 25 * exp(1j * radians(60 * shares[1][1])))
    (own,) = re.findall(r"A's hub to K1: (.+)$", card["right"]["more"])
    assert read_length(own, "ft-in", "own").metres / FOOT == pytest.approx(stray, abs=1 / 12 / 16 * 1.001)


def test_an_arc_that_kinks_off_another_takes_the_hub_that_stands_there() -> None:
    job = {**CREEK, "line": [arc("31 ft", "40", "left"), arc("24 ft", "40", "right", kink="12 left"), straight("9 ft")]}
    assert any(note == "A's hub is square to Arc 1." for note in cards_of(job, at=2)["hubs"]["notes"])
    assert not any("square to" in note for note in cards_of(job, at=1)["hubs"]["notes"])


def test_nothing_is_set_without_a_slope_or_a_board_that_bends() -> None:
    said = catalogue()
    open_ = cards_of({key: value for key, value in CREEK.items() if key != "grade"})["tops"]
    assert open_["text"] == said["forming.tops_open"] and not open_["numbers"]
    steep = cards_of(CREEK, grade={"slope": 9, "high": "B", "low": "left", "stops": True})["tops"]
    assert steep["text"] == said["forming.tops_stop"] and not steep["numbers"]
    stiff = cards_of(CREEK, board={"kind": "2x4"}, line=[straight("9 ft"), arc("6 ft", "60", "left")])
    assert stiff["boards"]["text"] == stiff["stakes"]["text"] == said["forming.boards_none"]
    assert cards_of(CREEK, board={"kind": "bendy stuff"})["boards"]["text"] == said["forming.boards_which"]


def test_the_first_card_says_that_the_dig_takes_the_stakes() -> None:
    answer = told(FIVE)
    part = answer["in_dig"]
    assert part is not None and part["ways"] == [] and "2' 0\" left" in part["hint"]
    html, first = stakes_html(answer, 1), len(answer["cards"]) + 1
    assert "*" not in part["hint"] and part["hint"] in unescape(re.sub(r"<[^>]+>", "", html))
    # The hubs' card says of which arc they are, with the button to the other; the whole line's cards say neither.
    assert "<span>Arc 2</span>" in stakes_html(answer, first) and 'data-at="4"' in stakes_html(answer, first)
    assert "data-at" not in stakes_html(answer, first + 1) and "Piece 2" not in stakes_html(answer, first + 1)
    assert '<details class="in-dig"><summary>The dig takes these stakes' in html and 'class="ways"' not in html
    assert told(CLEAR)["in_dig"] is None
    assert count(answer) == len(answer["cards"]) + len(ALL_OF_THEM)  # no board card of the layout is left out of it


def test_what_is_done_of_the_whole_line_stays_done_when_another_arc_is_staked() -> None:
    fields = {
        "before-0-straight": "18 ft", "start": "one-end", "turn": "left", "arc-radius": "42 ft",
        "arc-central_angle": "32", "after-0-radius": "52 ft", "after-0-central_angle": "36", "after-0-turn": "right",
        "done": "1 2 form_hubs-00000001 form_dig-00000002",
    }  # fmt: skip
    other = staked_at(fields, 3)
    assert other["done"].split() == ["form_dig-00000002"]
    other["done"] += " 1 form_hubs-00000003 form_base-00000004"
    back = staked_at(other, 2)
    assert sorted(back["done"].split()) == sorted(
        ["1", "2", "form_hubs-00000001", "form_dig-00000002", "form_base-00000004"]
    )
    assert "done" not in staked_at({**fields, "done": ""}, 3)
