"""What was got is taken back, or the stake moved: only what hangs on it doesn't stand any more."""

from __future__ import annotations

import html
import json
import re
from typing import Any

from bowstring import answering
from bowstring.page.fields import job_of_fields
from bowstring.page.got import got_panel

ARC = {"arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}
STRING = {**ARC, "method": "ordinates", "levels": "3"}
HALVED = {**ARC, "method": "halving", "levels": "3"}


def got(fields: dict[str, str], stake: str, **typed: str) -> dict[str, Any]:
    answer = answering(job_of_fields(fields))
    card = next(one["number"] for one in answer["cards"] if one["stake"] == stake)
    return got_panel(answer, {"fields": fields, "got": typed}, card)


def used(fields: dict[str, str], stake: str, **typed: str) -> dict[str, str]:
    made = got(fields, stake, **typed)
    return {name: text for name, text in {**fields, **made["fill"]}.items() if text}


def fills(made: dict[str, Any]) -> list[tuple[str, dict[str, str], list[int]]]:
    """The buttons that change fields: what each says, the fields, and the cards that don't stand any more."""
    found = re.findall(r'data-do="fill" data-fill="([^"]*)" data-undone="([^"]*)"[^>]*>(.*?)</button>', made["html"])
    return [
        (html.unescape(text), json.loads(html.unescape(fields)), [int(card) for card in cards.split()])
        for fields, cards, text in found
    ]


def stakes_of(fields: dict[str, str], cards: list[int]) -> list[str | None]:
    told = answering(job_of_fields(fields))["cards"]
    return [told[card - 1]["stake"] for card in cards]


def test_whoever_moves_a_stake_that_was_got_has_got_nothing_there_any_more() -> None:
    stood = used(STRING, "K3", m1="4' 11\"")
    assert answering(job_of_fields(stood))["got"]
    made = got(stood, "K3")
    (move, forget) = sorted(fills(made), key=lambda one: "Move" not in one[0])
    assert re.match("Move K3 (?:in|out)ward", move[0]) and "Forget" in forget[0]
    assert move[1:] == forget[1:]
    moved = {name: text for name, text in {**stood, **move[1]}.items() if text}
    after, plain = answering(job_of_fields(moved)), answering(job_of_fields(STRING))
    assert after["got"] == [] and after["cards"] == plain["cards"]
    assert [(row["key"], row["shown"]) for row in after["checks"]] == [
        (row["key"], row["shown"]) for row in plain["checks"]
    ]
    assert stakes_of(stood, move[2]) == ["K3"]  # no later stake hangs on it


def test_using_or_forgetting_it_unticks_no_stake_whose_numbers_stay() -> None:
    made = got(STRING, "K3", m1="4' 11\"")
    assert made["undone"] == []
    halved = got(HALVED, "Q1", m1="1' 4-1/4\"")
    assert stakes_of(HALVED, halved["undone"]) == ["R1", "R2"]
    stood = used(HALVED, "Q1", m1="1' 4-1/4\"")
    ((_text, _fields, undone),) = [one for one in fills(got(stood, "Q1")) if "Forget" in one[0]]
    assert stakes_of(HALVED, undone) == ["Q1", "R1", "R2"]


def test_a_card_says_that_the_next_numbers_start_from_there_only_where_they_do() -> None:
    def said(fields: dict[str, str], stake: str) -> tuple[str, str]:
        answer = answering(job_of_fields(fields))
        return (
            next(one["text"] for one in answer["cards"] if one["stake"] == stake),
            next(one["text"] for one in answer["steps"] if one["stake"] == stake),
        )

    for text in said(used(STRING, "K3", m1="4' 11\""), "K3"):
        assert "No other stake's number changes." in text and "start from" not in text and "start there" not in text
    for text in said(used(HALVED, "Q1", m1="1' 4-1/4\""), "Q1"):
        assert ("start from" in text or "start there" in text) and "No other stake's number" not in text
    for text in said(used(HALVED, "R1", m1='3-3/4"'), "R1"):
        assert "No other stake's number changes." in text and "start from" not in text and "start there" not in text


def test_what_was_got_off_a_parallel_string_is_told_as_it_is_measured() -> None:
    fields = {**STRING, "parallel": "8 ft"}
    stood = used(fields, "K3", m1=_near(fields, "K3"))
    card = next(one for one in answering(job_of_fields(stood))["cards"] if one["stake"] == "K3")
    labels = [one["label"] for one in card["numbers"]]
    assert labels[-1] == "square off" and labels[0].startswith("along from ") and "mark on" not in " ".join(labels)


def _near(fields: dict[str, str], stake: str) -> str:
    """A quarter inch more than the card asks for off its string."""
    step = next(one for one in answering(job_of_fields(fields))["steps"] if one["stake"] == stake)
    return f"{step['measures'][-1]['distance'] + 0.00635:.4f} m"


def test_a_check_says_so_where_its_stake_stands_on_the_other_side_of_the_string() -> None:
    fields = {**ARC, "method": "ordinates", "levels": "4"}
    plain = answering(job_of_fields(fields))
    row = next(one for one in plain["checks"] if one["key"] == "K7-K9-K8")
    step = next(one for one in plain["steps"] if one["stake"] == "K8")
    assert not any(one["inside"] for one in plain["checks"])
    short = f"{step['measures'][-1]['distance'] - 2 * row['distance']:.4f} m"
    number = len([one for one in step["measures"] if "distance" in one]) - 1
    stood = {**fields, "got-0-stake": "K8", "got-0-sure": "yes", "got-0-measures-0-from": step["measures"][-1]["from"],
             "got-0-measures-0-to": "K8", "got-0-measures-0-distance": short}  # fmt: skip
    assert number >= 0
    after = answering(job_of_fields(stood))
    there = next(one for one in after["checks"] if one["key"] == "K7-K9-K8")
    assert there["inside"] and abs(there["distance"] - row["distance"]) < 0.002  # the same number, on the other side
    assert "K8 is inside it" in there["text"]
    from bowstring.faces.checks import name_of

    assert "INSIDE the string" in name_of(there)[1] and "INSIDE" not in name_of(row)[1]
    assert [one["key"] for one in after["checks"] if one["inside"]] == ["K7-K9-K8"]
