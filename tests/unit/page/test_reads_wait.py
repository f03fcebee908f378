"""What was read counts for stakes that stand as the job has them: none that aren't set, none by old numbers."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring import answer, answering
from bowstring.demo import DEMO
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.words import say
from stood_fields import FIELDS, WALK, M, card, worked
from unit.report.test_build_pad import PAD

FINE = {**FIELDS, "levels": "3"}
LAST = M + 6
"""The card of its last stake."""


def shown(fields: dict[str, str], face: str = "checks", calls: Calls | None = None) -> dict[str, Any]:
    asked = {"fields": fields, "face": face, "card": None, "panel": "", "address": ""}
    told: dict[str, Any] = json.loads((calls or Calls()).handle("face", json.dumps(asked)))
    return {**told, "html": unescape(told["html"])}


def read(fields: dict[str, str], over: dict[str, str] | None = None) -> dict[str, str]:
    """Every check read dead on, but for those of ``over``."""
    rows: dict[str, str] = {}
    for number, row in enumerate(answering(job_of_fields({**fields, "done": "", "stood": ""}))["checks"]):
        rows[f"read-{number}-check"] = row["key"]
        rows[f"read-{number}-value"] = (over or {}).get(row["key"], row["shown"])
    return {**fields, **rows}


def kinds(html: str) -> dict[str, str]:
    return {key: kind for kind, key in re.findall(r'<li class="(\w*)"[^>]* data-check="([^"]+)"', html)}


def ticked(paper: str) -> int:
    """How many boxes of its checks are ticked."""
    return paper.partition('<table class="checks">')[2].partition("</table>")[0].count('class="tick in"')


def everything() -> dict[str, str]:
    return read(worked(FINE, LAST))


def test_where_all_stands_all_that_was_read_counts() -> None:
    told = shown(everything())
    assert set(kinds(told["html"]).values()) == {"in"} and say("face_checks.head_done", wanted=11) in told["html"]
    assert told["state"] == {"sign": "computed", "text": say("page.state_ready")}


def test_on_the_other_hand_nothing_is_judged_that_touches_a_stake() -> None:
    """Left to right: every stake that was driven is on the wrong side, so that each check that has one waits."""
    fields = {**everything(), "side": "right"}
    told = shown(fields)
    assert set(kinds(told["html"]).values()) == {"waits"}
    assert say("read.waits", told="M, Q1, Q2 and 4 more set by old numbers") in told["html"]
    assert told["state"]["text"] == "Old numbers: M, Q1 +5" and told["badges"]["checks"] == ""
    paper = shown(fields, "paper")["html"]
    assert ticked(paper) == 0 and say("read.waits", told="M, Q1, Q2 and 4 more set by old numbers") in paper


@pytest.mark.parametrize("reading", ["3 ft", "20 ft"])
def test_no_stake_is_suspected_by_the_new_numbers(reading: str) -> None:
    """By the chord of now two checks would be out by what they were read at the old one, and an innocent be named."""
    fields = {**read(worked(FINE, LAST), {"A-Q2": reading, "Q1-B": reading}), "arc-chord": "38' 4\""}
    told = shown(fields)
    assert set(kinds(told["html"]).values()) == {"waits"}
    assert 'class="suspect"' not in told["html"] and 'class="found"' not in told["html"]
    assert told["badges"]["checks"] == ""
    back = shown({**fields, "arc-chord": "38 ft"})  # and by the numbers that they were set by it is judged again
    assert kinds(back["html"])["A-Q2"] == kinds(back["html"])["Q1-B"] == "out" and back["badges"]["checks"] == "2"


def test_checks_between_stakes_that_stand_are_judged_on() -> None:
    """R1 and R2 are to be set again: what touches neither counts, all else waits and says for what."""
    fields = everything()
    open_cards = {str(one["number"]) for one in answering(job_of_fields(FINE))["cards"] if one["stake"] in ("R1", "R2")}
    fields["done"] = " ".join(number for number in fields["done"].split() if number not in open_cards)
    told, calls = shown(fields), Calls()
    waiting = {"R1-R2-Q1", "R2-R3-M", "foot-R1", "foot-R2"}
    assert {key for key, kind in kinds(told["html"]).items() if kind == "waits"} == waiting
    assert {kind for key, kind in kinds(told["html"]).items() if key not in waiting} == {"in"}
    assert say("read.waits", told="R1, R2 not set yet") in told["html"]
    assert say("read.wait_one", told="R2 not set yet") in told["html"]
    assert say("face_checks.head_done", wanted=11) not in told["html"]
    state = {"sign": "ask", "text": "4 checks wait", "panel": "checks"}
    assert told["state"] == state == shown(fields, "stakes", calls)["state"]
    assert json.loads(calls.handle("numbers_later", json.dumps({"fields": fields})))["state"] == state
    assert say("read.waits", told="R1, R2 not set yet") in shown(fields, "paper", calls)["html"]
    assert ticked(shown(everything(), "paper", calls)["html"]) == 3
    assert ticked(shown(fields, "paper", calls)["html"]) < 3
    again = {**fields, "done": everything()["done"]}  # one page: what was kept of the answer is told anew
    assert shown(again, "checks", calls)["state"]["sign"] == "computed"


def test_who_works_by_the_paper_ticks_nothing_and_is_judged() -> None:
    assert set(kinds(shown(read(FINE))["html"]).values()) == {"in"}
    fields = {**read(FINE), "done": str(M)}  # a stake that was set again from the checks is all that he ticked
    assert set(kinds(shown(fields)["html"]).values()) == {"in"}


def test_what_a_bad_reading_says_stands_beside_that_it_waits() -> None:
    fields = {**everything(), "side": "right"}
    number = next(name.split("-")[1] for name, text in fields.items() if text == "A-Q2")
    fields[f"read-{number}-value"] = "yes"
    assert kinds(shown(fields)["html"])["A-Q2"] == "unread"


def test_a_card_tells_what_was_read_at_what_it_sets() -> None:
    fields, m = everything(), answering(job_of_fields(FINE))["cards"][M - 1]
    assert m["stake"] == "M" and card(fields, M)["touched"] == {"stake": "M", "checks": ["R2-R3-M"]}
    ends: Any = card(fields, 2)["touched"]
    assert ends["stake"] == "A, B" and {"A-Q2", "Q1-B", "foot-R1"} <= set(ends["checks"])
    assert "R2-R3-M" not in ends["checks"]
    assert "touched" not in card(worked(FINE, LAST), M)


def test_a_job_by_itself_says_the_same_of_its_steps() -> None:
    """In a file: step 6 and 7 set R1 and R2, and aren't among those that are done."""
    rows = [{"check": row["key"], "value": row["shown"]} for row in answer(DEMO)["checks"]]
    steps = [row["number"] for row in answer(DEMO)["steps"]]
    job: Any = {**DEMO, "method": "halving", "read": rows, "done": steps}
    assert answer(job)["read"]["count"] == 5 and answer(job)["read"]["waits"] == ""
    missing = answer({**job, "done": [number for number in steps if number not in (6, 7)]})["read"]
    assert missing["count"] == 3 and missing["waits"] == say("read.waits", told="R1, R2 not set yet")
    assert answer({**job, "done": []})["read"]["count"] == 5


def far(fields: dict[str, str]) -> dict[str, Any]:
    """What proves the far corners, or a line, read dead on."""
    rows = answering(job_of_fields({**fields, "done": "", "stood": ""}))["far_checks"]["rows"]
    read = {f"read-{100 + number}-check": row["key"] for number, row in enumerate(rows)}
    return fields | read | {f"read-{100 + number}-value": row["shown"] for number, row in enumerate(rows)}


def test_far_corners_wait_until_their_card_is_done() -> None:
    pad = fields_of_job(PAD)
    first = answering(PAD)["cards"]
    last = max(one["number"] for one in first if one["stake"])
    fields = far(worked(pad, last))
    told = shown(fields)
    assert kinds(told["html"])["A-B-2"] == kinds(told["html"])["A-2-B-2"] == "waits"
    assert (
        say("read.wait_one", told="A-2, B-2 not set yet") in told["html"] and told["state"]["text"] == "5 checks wait"
    )
    number = next(one for one in range(last + 1, last + 8) if "A-2" in card(fields, one)["html"].partition("thumb")[0])
    at = card(fields, number)
    assert at["touched"]["stake"] == "A-2, B-2" and "A-B-2" in at["touched"]["checks"]
    fields = {**fields, "done": f"{fields['done']} {at['marks'][str(number)]}"}
    assert kinds(shown(fields)["html"])["A-B-2"] == "in"
    longer = shown({**fields, "slab-sides": "16 ft"})  # they stand by the old one
    assert kinds(longer["html"])["A-B-2"] == "waits" and longer["badges"]["checks"] == ""
    assert say("read.wait_one", told="B-2 set by old numbers") in longer["html"]


def test_along_a_line_all_waits_for_whatever_stands_by_old_numbers() -> None:
    fields = fields_of_job(WALK)
    last = max(one["number"] for one in answering(WALK)["cards"] if one["stake"])
    fields = far(worked(fields, last))
    keys = [text for name, text in fields.items() if name.endswith("-check")]
    assert keys and {kinds(shown(fields)["html"])[key] for key in keys} == {"in"}
    other = {**fields, "arc-radius": "32 ft"}
    assert {kinds(shown(other)["html"])[key] for key in keys} == {"waits"}
