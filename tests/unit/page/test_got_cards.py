"""The panel of what was got, of every card that offers it: whatever the method, the start and what is in the way."""

from __future__ import annotations

import html
import json
import re
from typing import Any

import pytest

from bowstring.faces.stakes import stakes_html
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.got import got_panel
from card_jobs import BLOCKED, JOBS, PLAIN, job, told

SPLIT = {"ends": [{"to": "nail", "distance": "10 ft"}, {"to": "post", "distance": "20 ft"}]}
"""Ties of both ends: they stand in no card, and no panel is in their way."""

MORE: dict[str, dict[str, Any]] = {
    f"{name}, tied": {**JOBS[name], "ties": {"A": SPLIT["ends"], "B": SPLIT["ends"]}}
    for name in ("halving", "a string 8", "a blocked chord")
}


def text_of(made: dict[str, Any]) -> str:
    return " ".join(html.unescape(re.sub(r"<[^>]+>", " ", made["html"])).split())


def offered(answer: Any) -> list[int]:
    """The cards with the button "I got something else", stopped or not."""
    shown = {**answer, "stops": []}
    cards = [card["number"] for card in answer["cards"]]
    return [card for card in cards if 'data-do="got"' in stakes_html(shown, card)]  # type: ignore[arg-type]


def panels(name: str) -> list[tuple[dict[str, Any], dict[str, Any]]]:
    whole = {**PLAIN, **(JOBS | MORE)[name]}
    whole = {key: value for key, value in whole.items() if value is not None}
    answer, fields = told(name) if name in JOBS else _answer(whole), fields_of_job(whole)
    cards = offered(answer)
    assert cards
    asked: Any = {"fields": fields, "got": {}}
    return [(answer["cards"][card - 1], got_panel(answer, asked, card)) for card in cards]


def _answer(whole: dict[str, Any]) -> Any:
    from bowstring import answering

    return answering(whole)  # type: ignore[arg-type]


@pytest.mark.parametrize("name", [*JOBS, *MORE])
def test_every_panel_is_made_and_says_either_what_to_type_or_what_to_do(name: str) -> None:
    for card, made in panels(name):
        shown, fields = text_of(made), len(re.findall("<input ", made["html"]))
        assert shown.split("!")[0].strip(), card
        if fields:
            assert "Nothing is typed here" not in shown and "ype " in shown, card
            assert fields >= min(len(card["numbers"]), 6) or card["steps"], card
        else:
            assert "Only type over" not in shown and "Type what" not in shown, card
            assert "again" in shown and "Back to the card" in shown, card
        assert 'class="btn first"' in made["html"] and "  " not in shown, card


@pytest.mark.parametrize("name", ["a string 8", "a string -3", "a string squared", "got a pin of a string"])
def test_a_parallel_string_that_reads_something_else_leads_to_its_pins(name: str) -> None:
    (card, made), *_more = [
        one for one in panels(name) if one[0]["kind"].startswith("parallel_") and not one[0]["sets"]
    ]
    cards = told(name)["cards"]
    steps = [int(step) for step in re.findall(r'data-do="go" data-step="([0-9]+)"', made["html"])]
    assert [cards[step - 1]["sets"] for step in steps] == [["PA"], ["PB"], ["A", "B"]]
    assert f"It must read {card['numbers'][0]['shown']}" in text_of(made).replace(" .", ".")
    assert made["html"].count('class="btn first"') == 1 and "Set PA again" in text_of(made)


def _choices(made: dict[str, Any]) -> list[dict[str, str]]:
    found = re.findall(r'class="btn(?: first)?" data-do="fill" data-fill="([^"]*)"', made["html"])
    return [json.loads(html.unescape(text)) for text in found]


@pytest.mark.parametrize(("name", "longer", "times"), [
    ("a blocked chord", 0.01, 2), ("a blocked chord, no room behind", 0.01, None), ("past the tape", 0.04, 1),
    ("many pulls", 0.04, 1), ("off a blocked chord, ends, outside", 0.01, None),
])  # fmt: skip
def test_the_chord_found_follows_from_what_proves_ends_that_exist(name: str, longer: float, times: int | None) -> None:
    """What is read there is a part of the chord, or what is left of it: entered, the card asks for that reading."""
    answer, fields = told(name), fields_of_job(job(name))
    card = next(one for one in reversed(answer["cards"]) if one["kind"].startswith("prove_"))
    step = answer["steps"][card["steps"][-1] - 1]
    read, drawn = step["measures"][-1]["distance"], answer["arc"]["chord"]
    text = f"{read + longer:.6f} m"
    asked: Any = {"fields": fields, "got": {"f0": text, "f1": text}}
    made = got_panel(answer, asked, card["number"])
    assert "What does" in text_of(made) and "That makes" in text_of(made)
    found = _choices(made)[0]
    now = {**fields, **{key: value for key, value in found.items() if value}}
    after = _answer(job_of_fields(now))  # type: ignore[arg-type]
    chord = after["fit"]["found"]
    whole = drawn / read if times is None or times == 2 else 1
    assert chord == pytest.approx(drawn + longer * whole, abs=2e-5)
    if times == 2:
        assert whole == pytest.approx(2)
    again = after["steps"][card["steps"][-1] - 1]
    assert again["measures"][-1]["distance"] == pytest.approx(read + longer, abs=2e-5)
    reopened = got_panel(after, {"fields": now}, card["number"])  # type: ignore[typeddict-item]
    (typed, other) = re.findall(r'<input [^>]*value="([^"]*)"', reopened["html"])  # type: ignore[call-overload]
    assert typed == other and typed


def test_ends_that_the_crew_set_are_set_again() -> None:
    answer = _answer({**PLAIN, **BLOCKED, "start": "neither"})
    fields = fields_of_job({**PLAIN, **BLOCKED, "start": "neither"})
    card = next(one for one in answer["cards"] if one["sets"] == ["DA", "DB"])
    made = got_panel(answer, {"fields": fields}, card["number"])  # type: ignore[typeddict-item]
    assert "Set B again" in text_of(made) and "<input" not in made["html"]  # type: ignore[operator]


@pytest.mark.parametrize(("arc", "first"), [
    ({"arc-chord": "38 ft", "arc-sagitta": "5' 3\""}, "sagitta"),
    ({"arc-chord": "38 ft", "arc-radius": "37 ft"}, "radius"),
    ({"arc-radius": "37 ft", "arc-sagitta": "5' 3\""}, "radius"),
    ({"arc-chord": "38 ft", "arc-arc_length": "60 ft"}, "arc_length"),
    ({"arc-chord": "38 ft", "arc-central_angle": "60"}, "directions"),
])  # fmt: skip
def test_what_the_drawing_gave_is_held_first(arc: dict[str, str], first: str) -> None:
    fields = {**arc, "side": "left", "drawn_to": "face", "method": "halving", "levels": "2"}
    answer = _answer(job_of_fields(fields))  # type: ignore[arg-type]
    chord = answer["arc"]["chord"] + 0.009
    text = f"{chord:.4f} m"
    made = got_panel(answer, {"fields": fields, "got": {"f0": text, "f1": text}}, 2)  # type: ignore[typeddict-item]
    assert _choices(made)[0]["found-hold"] == first
