"""Stakes that the dig would take: told on the first card with a tap that sets them clear, before one is driven."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring.faces.numbers import numbers
from bowstring.faces.passes import count
from bowstring.faces.stakes import stakes_html
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job
from bowstring.units.tape import make_tape
from bowstring.words import say
from helping import answer_to

ARC = {"bowstring": 1, "unit": "ft-in", "arc": {"chord": "48 ft", "sagitta": "4 ft 10 in"}, "side": "left",
       "drawn_to": "face", "levels": 2, "edge": "outside"}  # fmt: skip
FOOTED = {"poured": "wall", "thickness": "42 in", "footing_width": "24 in", "footing_depth": "10 in"}
WALL = {**ARC, "width": "8 in", "slab": FOOTED}
WALK = {**ARC, "width": "5 ft", "slab": {"thickness": "4 in"}}


def first_stake(answer: Any) -> int:
    return next(int(card["number"]) for card in answer["cards"] if card["stake"])


def filled_in(html: str) -> list[dict[str, str]]:
    """The fields that the buttons of a caution fill."""
    inside = html.partition('class="in-dig"')[2].partition("</section>")[0]
    return [json.loads(unescape(text)) for text in re.findall('data-fill="([^"]*)"', inside)]


def plain(html: str) -> str:
    return unescape(re.sub("<[^>]+>", "", html))


def test_a_walls_first_card_says_that_its_stakes_stand_in_the_dig_and_a_tap_sets_them_clear() -> None:
    """8 in inside the line on 24 in of footing, dug a foot past it: the dig ends 8 + 12 = 20 in outside the line and
    8 + 8 + 12 = 28 in inside it. As far from it as it is deep, 42 + 10 = 52 in, in whole feet: 72 in are 6 ft outside,
    80 in 7 ft inside."""
    answer = answer_to(WALL)
    html = stakes_html(answer, 1)
    assert '<div class="in-dig"' in html
    assert "Your stakes stand in the dig. Dug 1' 0\" past the footing." in plain(html)
    ways = filled_in(html)
    assert ways == [{"offset": "6' 0\"", "toward": "outside"}, {"offset": "7' 0\"", "toward": "centre"}]
    for way in ways:
        settled = answer_to({**WALL, **way})
        assert settled["in_dig"] is None and not settled["edges"]["dug_out"]
        assert "in-dig" not in stakes_html(settled, 1)


def test_the_card_of_the_ticket_stays_the_way_on() -> None:
    html = stakes_html(answer_to(WALL), 1)
    assert f'data-do="done" data-step="1">{say("card.do.located")}' in html
    assert say("in_dig.hint_deep", deep="4' 4\"") in plain(html)
    shallow = {**WALL, "slab": {**WALL["slab"], "thickness": "2 in"}}
    assert say("in_dig.hint") in plain(stakes_html(answer_to(shallow), 1))  # a foot clear is as far as that


def test_it_is_gone_once_a_stake_stands_and_folded_till_then() -> None:
    answer = answer_to(WALL)
    first = first_stake(answer)
    assert '<details class="in-dig"' in stakes_html(answer, first, range(1, first))
    for card in range(1, count(answer) + 1):
        assert "in-dig" not in stakes_html(answer, card, [first])


def test_a_slabs_hubs_have_a_card_so_it_stands_folded_on_the_first_alone() -> None:
    answer = answer_to(WALK)
    assert "hubs" in answer["second_pass"]
    html = stakes_html(answer, 1)
    assert '<details class="in-dig"' in html and "The dig takes these stakes. Dug 1' 0\" past each edge." in plain(html)
    assert filled_in(html)[0] == {"offset": "2' 0\"", "toward": "outside"}
    assert all("in-dig" not in stakes_html(answer, card) for card in range(2, count(answer) + 1))
    settled = answer_to({**WALK, **filled_in(html)[0]})
    assert "hubs" not in settled["second_pass"] and "in-dig" not in stakes_html(settled, 1)


@pytest.mark.parametrize("job", [ARC, {**WALK, "edge": None}, {**ARC, "slab": {"thickness": "4 in"}}])
def test_a_job_that_says_no_slab_says_nothing_of_a_dig(job: dict[str, Any]) -> None:
    job = {key: value for key, value in job.items() if value is not None}
    assert answer_to(job)["in_dig"] is None
    assert "in-dig" not in stakes_html(answer_to(job), 1)


def test_a_slab_that_fills_its_curve_has_no_clear_place_inside() -> None:
    answer = answer_to({**ARC, "slab": {"fills": True, "thickness": "4 in"}})
    assert [way["toward"] for way in filled_in(stakes_html(answer, 1))] == ["outside"]


def test_no_way_leads_to_the_center() -> None:
    """A wall 8 in thick on a radius of 8 ft 1 in: 7 ft inside leaves 1 ft 1 in, on 7 ft 11 in only 11 in are left."""
    small = {**WALL, "arc": {"radius": "8 ft 1 in", "chord": "6 ft"}}
    assert len(answer_to(small)["in_dig"]["ways"]) == 2
    smaller = {**WALL, "arc": {"radius": "7 ft 11 in", "chord": "6 ft"}}
    assert [way["fields"]["toward"] for way in answer_to(smaller)["in_dig"]["ways"]] == ["outside"]


def test_in_metres_it_is_whole_tenths_and_read_back_as_such() -> None:
    """0.2 m inside the line on 0.6 m of footing, dug 0.3 m past it: 0.2 + 0.3 = 0.5 m outside, 0.7 m inside; its depth
    of 1.1 + 0.25 m more is 1.9 and 2.1 m."""
    footed = {"poured": "wall", "thickness": "1.1 m", "footing_width": "0.6 m", "footing_depth": "0.25 m"}
    wall = {**WALL, "unit": "m", "arc": {"chord": "14", "sagitta": "1.4"}, "width": "0.2", "slab": footed}
    answer = answer_to(wall)
    ways = filled_in(stakes_html(answer, 1))
    assert [answer_to({**wall, **way})["offset"]["distance"] for way in ways] == pytest.approx([1.9, 2.1])
    assert [answer_to({**wall, **way})["in_dig"] for way in ways] == [None, None]


@pytest.mark.parametrize("more", [
    {}, {"edge": "inside"}, {"drawn_to": "centre", "edge": "centre"}, {"offset": "1 ft", "toward": "outside"},
    {"slab": {**FOOTED, "overdig": "18 in"}},
])  # fmt: skip
def test_the_panel_offers_the_same_and_says_what_is_dug(more: dict[str, Any]) -> None:
    job = {**WALL, **more}
    told, answer = numbers(fields_of_job(job)), answer_to(job)["in_dig"]  # type: ignore[arg-type]
    fills = [json.loads(unescape(text)) for text in re.findall('data-fill="([^"]*)"', told["slab"])]
    assert fills == [way["fields"] for way in answer["ways"]]
    past = "1' 6\"" if "slab" in more else "1' 0\""
    assert f"Dug {past} past the footing." in plain(told["slab"]) and past in answer["text"]


FILL = {**ARC, "slab": {"fills": True, "thickness": "4 in"}}
PAD = {**ARC, "slab": {"fills": True, "thickness": "4 in", "sides": "10 ft"}}


@pytest.mark.parametrize("job", [WALL, WALK, FILL, PAD], ids=["wall", "walk", "filled", "pad"])
def test_the_bar_says_so_of_a_wall_till_a_stake_is_driven_and_the_panel_of_any(job: dict[str, Any]) -> None:
    fields = fields_of_job(job)  # type: ignore[arg-type]
    calls = Calls()

    def bars(typed: dict[str, str]) -> list[dict[str, str]]:
        face = json.loads(calls.handle("face", json.dumps({"fields": typed, "face": "stakes", "card": None})))
        later = json.loads(calls.handle("numbers_later", json.dumps({"fields": typed})))
        return [dict(numbers(typed)["state"]), later["state"], face["state"]]

    told = {"text": say("numbers.state_in_dig"), "sign": "ask", "panel": "slab"}
    if job is WALL:
        assert bars(fields) == [told] * 3
    else:  # two passes are how a slab is built: its hubs have a card
        assert [bar["sign"] for bar in bars(fields)] == ["computed"] * 3
    fills = [json.loads(unescape(text)) for text in re.findall('data-fill="([^"]*)"', numbers(fields)["slab"])]
    assert fills == [way["fields"] for way in answer_to(job)["in_dig"]["ways"]]
    for fill in fills:
        assert [bar["sign"] for bar in bars({**fields, **fill})] == ["computed"] * 3
        assert "data-fill" not in numbers({**fields, **fill})["slab"]
    driven = {**fields, "stood": "a job"}
    assert numbers(driven)["state"]["text"] == say("numbers.state_done") and "data-fill" not in numbers(driven)["slab"]


def test_a_stop_comes_before_it() -> None:
    around = [["20 ft", "-2 ft"], ["28 ft", "-2 ft"], ["28 ft", "2 ft"], ["20 ft", "2 ft"]]
    over = {**WALK, "method": "halving", "ground": [{"name": "shed", "stops": "tape", "outline": around}]}
    assert answer_to(over)["stops"] and answer_to(over)["in_dig"] is not None
    told = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields_of_job(over)})))["state"]  # type: ignore[arg-type]
    assert told == {"text": say("numbers.state_stopped"), "sign": "stop"}


@pytest.mark.parametrize("job", [
    {**ARC, "slab": {"thickness": "4 in"}}, {**FILL, "drawn_to": "centre"},
    {**WALK, "offset": "3 ft", "toward": "outside"}, {**WALK, "after": [{"straight": "20 ft"}]},
    {**PAD, "arc": {"radius": "10 ft", "central_angle": "200"}},
])  # fmt: skip
def test_it_says_nothing_of_what_is_no_slab_and_of_stakes_off_it(job: dict[str, Any]) -> None:
    assert numbers(fields_of_job(job))["state"]["text"] != say("numbers.state_in_dig")  # type: ignore[arg-type]


@pytest.mark.parametrize("more", [
    {}, {"edge": "inside"}, {"slab": {"thickness": "4 in", "end_width": "8 ft"}}, {"slab": {"overdig": "4 in"}},
    {"drawn_to": "centre", "edge": "centre"}, {"offset": "5 ft 6 in", "toward": "centre"},
])  # fmt: skip
def test_as_it_is_typed_the_dig_of_a_slab_is_the_answers(more: dict[str, Any]) -> None:
    job = {**WALK, **more}
    answer, told = answer_to(job)["in_dig"], plain(numbers(fields_of_job(job))["slab"])  # type: ignore[arg-type]
    tape = make_tape("ft-in", None)
    assert f"over {tape.show_up(answer['outside'])} outside, or {tape.show_up(answer['inside'])} inside" in told


def test_the_depth_that_was_taken_stands_in_the_sentence() -> None:
    """42 in and 10 in of footing are 4 ft 4 in; with 6 in of base 4 ft 10 in. Ground 2 ft under the top leaves
    2 ft 4 in of cut on the side where it was measured, told on the panel as in the answer."""
    assert "(4' 4\" taken)" in answer_to(WALL)["in_dig"]["hint"] and "(4' 4\" taken)" in panel(WALL)
    based = {**WALL, "slab": {**FOOTED, "base": "6 in"}}
    assert "Stay back from the dig as far as it is deep (4' 10\" taken)." in panel(based)
    ground = [{"stake": "A", "edge": "outside", "level": "-2 ft"}]
    measured = {**WALL, "slab": {**FOOTED, "base": "0 in"}, "grade": {"slope": 0, "ground": ground}}
    assert "(2' 4\" taken)" in answer_to(measured)["in_dig"]["hint"] and "(2' 4\" taken)" in panel(measured)
    both = [*ground, {"stake": "A", "edge": "inside", "level": "-1 ft"}]
    told = "(2' 4\" outside, 3' 4\" inside taken)"
    measured["grade"]["ground"] = both
    assert told in answer_to(measured)["in_dig"]["hint"] and told in panel(measured)


def panel(job: dict[str, Any]) -> str:
    """What the slab's panel says once the layout is there."""
    told = json.loads(Calls().handle("numbers_later", json.dumps({"fields": fields_of_job(job)})))  # type: ignore[arg-type]
    return plain(told["slab"])


def test_a_card_says_it_in_14_words() -> None:
    for job in (WALL, WALK, PAD):
        told = answer_to(job)["in_dig"]
        for text in (told["text"], told["hint"], *(way["text"] for way in told["ways"])):
            assert len(text.split()) <= 14, text
