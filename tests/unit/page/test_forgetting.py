"""What was got at stakes that a layout hasn't got: told where it is refused, and forgotten by one tap; emptied rows."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

from bowstring.page.calls import handle
from bowstring.page.fields import field_of, job_of_fields
from bowstring.words import say

PLAIN = {
    "unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face",
    "method": "ordinates", "levels": "2",
}  # fmt: skip


def row(number: int, stake: str, distance: str = "5' 0\"") -> dict[str, str]:
    place = f"got-{number}-measures-0"
    return {
        f"got-{number}-stake": stake, f"{place}-from": "A", f"{place}-to": stake, f"{place}-distance": distance,
        f"got-{number}-sure": "yes",
    }  # fmt: skip


def told(call: str, fields: dict[str, str], **more: object) -> dict[str, Any]:
    asked = {"fields": fields, "focus": "", "short": False, "drawn": False, "panel": "", **more}
    made: dict[str, Any] = json.loads(handle(call, json.dumps(asked)))
    return made


def fills(html: str) -> list[dict[str, str]]:
    return [json.loads(unescape(text)) for text in re.findall(r'data-fill="([^"]*)"', html)]


def test_a_stake_that_this_layout_hasnt_got_is_forgotten_by_one_tap() -> None:
    fields = PLAIN | row(0, "R2") | row(2, "LL1")  # the row between is a free one
    html = told("face", fields, face="stakes", card=1)["html"]
    assert say("got.unknown_stake.wrong", stake="R2") in unescape(html) and say("page.forget", stakes="R2, LL1") in html
    (blanks,) = fills(html)
    assert set(blanks) == set(row(0, "R2") | row(2, "LL1")) and not any(blanks.values())
    settled = {name: text for name, text in {**fields, **blanks}.items() if text}
    assert settled == PLAIN and told("face", settled, face="stakes", card=1)["sign"] == "computed"


def test_a_stop_for_something_else_forgets_nothing_and_names_its_field() -> None:
    html = told("face", PLAIN | {"tolerance": "about"}, face="stakes", card=1)["html"]
    assert not fills(html) and f"<p>{say('form.tolerance')}: " in html
    assert 'data-open="fine"' in html and 'data-field="tolerance"' in html


def test_an_emptied_row_holds_nothing_whatever_was_read_at_its_stake() -> None:
    emptied = {**row(0, "R2"), "got-0-stake": ""}
    assert "got" not in job_of_fields(PLAIN | emptied)
    both = PLAIN | emptied | row(1, "R1")
    assert [one["stake"] for one in job_of_fields(both)["got"]] == ["R1"]
    assert field_of("got[0].stake", both) == "got-1-stake"  # the job's first row is the form's second
    assert told("face", PLAIN | emptied, face="stakes", card=1)["sign"] == "computed"


def test_a_row_tells_what_it_holds() -> None:
    echoes = told("numbers", PLAIN | row(0, "R2"))["echoes"]
    assert "Holds" in echoes["got-0-stake"] and "A to R2" in echoes["got-0-stake"]
    assert fills(echoes["got-0-stake"]) == [dict.fromkeys(row(0, "R2"), "")]
    assert "got-0-stake" not in told("numbers", PLAIN | {"got-0-stake": "M", "got-0-sagitta": "5 ft"})["echoes"]
