"""The checks' face: a row and an input a check, what is out first to be taped again, no number on a stopped job."""

from __future__ import annotations

import json
import re
from typing import Any
from xml.etree import ElementTree

import pytest

from bowstring import Answer, answering
from bowstring.demo import DEMO
from bowstring.faces.checks import checks_html, ordered
from bowstring.faces.checks_line import verdict_line
from bowstring.words import say
from helping import SAID

ORDINATES: dict[str, Any] = {
    **SAID,
    "unit": "m",
    "side": "right",
    "arc": {"chord": 12, "sagitta": 2.2},
    "tolerance": "10 mm",
    "method": "ordinates",
}
OUT = ("Q1-B", "29' 1-7/8\"")
FOUND = (OUT, ("R1-R2-Q1", '4-3/8"'), ("R2-R3-M", '4"'), ("A-Q2", "29' 1-1/2\""))


def asked(*rows: tuple[str, str], job: Any = DEMO) -> Answer:
    return answering({**job, "read": [{"check": key, "value": value} for key, value in rows]})


def face(*rows: tuple[str, str], job: Any = DEMO) -> ElementTree.Element:
    """Return the face, read strictly: what isn't closed or escaped fails here."""
    html = re.sub(r"<input([^>]*)>", r"<input\1/>", checks_html(asked(*rows, job=job)))
    return ElementTree.fromstring(html)


def text_of(element: ElementTree.Element) -> str:
    return " ".join("".join(element.itertext()).split())


def inputs(element: ElementTree.Element) -> list[dict[str, str]]:
    return [one.attrib for one in element.iter("input") if one.get("data-check")]


def of_class(element: ElementTree.Element, name: str) -> list[ElementTree.Element]:
    return [one for one in element.iter() if name in one.get("class", "").split()]


@pytest.mark.parametrize("job", [DEMO, ORDINATES])
def test_every_check_has_a_row_with_its_number_and_an_input(job: Any) -> None:
    rows = [row for row in answering(job)["checks"] if not row["blind"] or row["kind"] == "closing"]
    html = face(job=job)
    fields = inputs(html)
    assert {one["data-check"] for one in fields} == {row["key"] for row in rows} and len(fields) == len(rows)
    assert len({one["id"] for one in fields}) == len(fields)
    assert all(re.fullmatch(r"read-\d+", one["id"]) for one in fields)
    told = text_of(html)
    assert all(row["shown"] in told and row["expected_shown"] in told for row in rows)
    first = [row["key"] for row in rows if row["recommended"]]
    assert [one["data-check"] for one in fields[: len(first)]] == first


def test_the_head_counts_and_says_how_many_to_tape() -> None:
    assert text_of(of_class(face(), "checks-head")[0]) == "0 of 5 read. Tape all 5 before you build."
    assert text_of(of_class(face(OUT), "checks-head")[0]) == "1 of 5 read, 1 out. Don't build yet."
    assert "Tape the first 3" in text_of(of_class(face(job=ORDINATES), "checks-head")[0])
    all_in = tuple((row["key"], row["shown"]) for row in answering(DEMO)["checks"])
    assert text_of(of_class(face(*all_in), "checks-head")[0]) == "All 5 read, and all are in."


def test_after_a_first_out_the_first_button_tapes_it_again_and_nobody_is_suspect() -> None:
    html = face(OUT)
    first = next(html.iter("button"))
    assert (first.get("data-do"), text_of(first)) == ("focus", "Tape it again")
    again = [one for one in inputs(html) if one["data-check"] == "Q1-B"]
    assert [one["data-nth"] for one in again] == ["0", "1"] and again[1]["value"] == ""
    assert first.get("data-for") == again[1]["id"]
    assert not of_class(html, "suspect") and "?" not in text_of(html)


def test_a_suspect_is_named_with_the_card_that_sets_it_again_and_ringed() -> None:
    """The face of the stakes begins with the locate ticket, and counts that too."""
    answer = asked(*FOUND)
    html = face(*FOUND)
    card = next(row["number"] for row in answer["cards"] if row["stake"] == "Q1")
    step = next(row["number"] for row in answer["steps"] if row["stake"] == "Q1")
    assert answer["cards"][card - 1]["steps"] == [step] and card != step
    go = next(one for one in html.iter("button") if one.get("data-do") == "go")
    assert (go.get("data-step"), go.get("data-stake")) == (str(card), "Q1")
    assert text_of(go) == f"Set Q1 again: step {card}"
    svg = next(one for one in html.iter() if one.tag.endswith("svg"))
    names = ["".join(one.itertext()) for one in svg.iter() if one.tag.endswith("text")]
    assert "Q1?" in names
    dashed = [one for one in svg.iter() if "bd-dash" in one.get("class", "")]
    assert len(dashed) == 2  # the two that are out


def test_what_was_typed_stands_in_its_input_and_in_or_out_is_a_word_and_a_sign() -> None:
    html = face(*FOUND)
    assert {one["data-check"]: one["value"] for one in inputs(html) if one["data-nth"] == "0"} == {
        **dict(FOUND),
        "R3-R4-Q2": "",
    }
    said = {row.get("data-check"): text_of(row) for row in html.iter("li")}
    assert 'OUT. 7/16" over. 1/4" allowed.' in said["Q1-B"] and "✕" in said["Q1-B"]
    assert 'IN. 1/16" over. 1/4" allowed.' in said["A-Q2"] and "✓" in said["A-Q2"]


def test_a_text_that_is_no_length_is_told_at_its_row() -> None:
    row = next(row for row in face(("A-Q2", '<b>"fish"')).iter("li") if row.get("data-check") == "A-Q2")
    assert "can't be read" in text_of(row) and "fish" in text_of(row)
    assert next(row.iter("input")).get("value") == '<b>"fish"'
    assert not of_class(row, "sign")


def test_a_stopped_job_has_no_number_and_a_way_out() -> None:
    html = face(*FOUND, job={key: value for key, value in DEMO.items() if key != "side"})
    assert not list(html.iter("input")) and not [one for one in html.iter() if one.tag.endswith("svg")]
    button = next(html.iter("button"))
    assert (button.get("data-do"), button.get("data-face")) == ("face", "numbers")
    assert not re.search(r"\d", text_of(html))


def test_hundreds_of_checks_stay_a_face() -> None:
    html = face(job={**SAID, "arc": {"chord": "90 ft", "sagitta": "30 ft"}, "levels": 6})
    assert 12 < len(inputs(html)) <= 60
    assert "more checks" in text_of(next(html.iter("summary")))


OFF: dict[str, Any] = {
    **SAID,
    "arc": {"chord": "30 ft", "sagitta": "2' 2-3/8\""},
    "levels": 3,
    "method": "halving",
    "got": [{"stake": "M", "measures": [{"from": "mid M", "to": "M", "distance": "2' 3-1/8\""}]}],
}


def all_in(job: Any) -> str:
    rows = tuple((row["key"], row["shown"]) for row in answering(job)["checks"])
    return text_of(of_class(face(*rows, job=job), "checks-head")[0])


def test_all_in_is_not_all_well_while_a_stake_stands_off_the_arc() -> None:
    """The checks must read what the stakes as they stand make of them, so all of them are in."""
    assert all_in(OFF) == "All in, but M stands 3/4 in outside the arc. Move it, or ask."
    near = {**OFF, "got": [{"stake": "M", "measures": [{"from": "mid M", "to": "M", "distance": "2' 2-1/2\""}]}]}
    assert all_in(near).endswith("and all are in.")
    q1 = {"stake": "Q1", "sure": True, "measures": [{"from": "mid Q1", "to": "Q1", "distance": '7"'}]}
    assert all_in({**OFF, "got": [*OFF["got"], q1]}) == "All in, but M, Q1 stand off the arc. Move them, or ask."


def test_a_suspect_s_button_names_the_checks_that_touch_it_and_no_other() -> None:
    answer = asked(*FOUND)
    go = next(one for one in face(*FOUND).iter("button") if one.get("data-do") == "go")
    (one,) = answer["read"]["suspects"]
    assert json.loads(go.get("data-checks", "")) == one["checks"]
    for row in answer["checks"]:
        named = {row["to"], *row["from"].removeprefix("mid ").split("-")}
        assert (row["key"] in one["checks"]) is bool(named & {"Q1", *one["again"]}), row["key"]


def test_what_was_set_again_is_told_until_all_that_touches_it_is_taped_anew() -> None:
    def told(*rows: tuple[str, str]) -> list[str]:
        html = re.sub(r"<input([^>]*)>", r"<input\1/>", checks_html(asked(*rows), "Q1|Q1-B|A-Q2"))
        return [text_of(one) for one in of_class(ElementTree.fromstring(html), "anew")]

    (line,) = told()
    assert line.startswith("Q1 was set again.") and told(("A-Q2", "29' 1-1/2\"")) == [line]
    assert told(("A-Q2", "29' 1-1/2\""), ("Q1-B", "29' 1-1/2\"")) == []


def test_the_head_follows_what_is_read() -> None:
    rows = [row for row in answering(DEMO)["checks"] if row["recommended"]]
    head = text_of(of_class(face(*((row["key"], row["shown"]) for row in rows)), "checks-head")[0])
    assert head == "First 3 are in. 2 to go."
    some = text_of(of_class(face(*((row["key"], row["shown"]) for row in rows[:2])), "checks-head")[0])
    assert some == "2 of 5 read. Tape all 5 before you build."


def test_beside_in_stands_the_reading_that_is_in() -> None:
    rows = (("A-Q2", "29' 3\""), ("A-Q2", "29' 1-1/2\""), ("A-Q2", "29' 1-1/2\""))
    row = next(one for one in face(*rows).iter("li") if one.get("data-check") == "A-Q2")
    assert [one["value"] for one in inputs(row)] == ["29' 1-1/2\"", "29' 3\"", "29' 1-1/2\""]
    assert "Left out: 29' 3\"." in text_of(row)


def test_a_stake_that_is_set_again_is_followed_by_what_was_set_from_it() -> None:
    from bowstring.faces.checks import hanging_cards

    answer = asked()
    one: Any = {"step": 9, "again": ["R1", "R2"], "mark": "Q1", "kind": "stake", "checks": []}
    step = next(row for row in answer["steps"] if row["stake"] == "Q1")
    cards = hanging_cards(answer, {**one, "step": step["number"]})
    assert [answer["cards"][number - 1]["stake"] for number in cards] == ["R1", "R2"]
    go = next(one for one in face(*FOUND).iter("button") if one.get("data-do") == "go")
    assert isinstance(json.loads(go.get("data-then", "")), list)


def test_a_stake_off_the_arc_has_the_way_to_its_card_once_all_is_read() -> None:
    rows = tuple((row["key"], row["shown"]) for row in answering(OFF)["checks"])
    card = next(row["number"] for row in answering(OFF)["cards"] if row["stake"] == "M")
    (button,) = [one for one in face(*rows, job=OFF).iter("button") if one.get("data-do") == "go"]
    assert button.get("data-step") == str(card) and text_of(button) == f"Go to M: step {card}"
    assert not [one for one in face(*rows[1:], job=OFF).iter("button") if one.get("data-do") == "go"]


def test_readings_that_put_every_check_in_leave_nobody_suspect_however_they_came() -> None:
    """Read out twice, then in three times, or typed over: the readings say so, whatever button was pressed."""
    rows = {row["key"]: row["shown"] for row in ordered(answering(DEMO))}
    before = (OUT, *FOUND)
    assert [one["mark"] for one in asked(*before)["read"]["suspects"]] == ["Q1"]
    for typed_over in (False, True):
        old = () if typed_over else (OUT, OUT)
        answer = asked(*old, *(3 * [(OUT[0], rows[OUT[0]])]), *rows.items())
        assert answer["read"]["outs"] == 0 and answer["read"]["suspects"] == []
        html = checks_html(answer)
        assert 'class="suspect"' not in html and say("face_checks.ring", stake="Q1") not in html


def test_what_was_set_from_a_stake_is_cleared_with_it_and_that_is_said() -> None:
    def told(anew: str) -> str:
        found = re.search('<p class="anew"[^>]*>([^<]*)', checks_html(asked(), anew))
        return found[1] if found else ""

    assert told("Q1|Q1-B|R1-R2-Q1") == "Q1 was set again. What was read at it is cleared. Tape those checks again."
    assert "What was read at it, and at what was set from it, is cleared." in told("Q1|Q1-B|R2-R3-M")
    assert told("|Q1-B").startswith("The stakes were set again.") and told("") == ""


def line(*rows: tuple[str, str], job: Any = DEMO) -> str:
    return " ".join(map(text_of, of_class(face(*rows, job=job), "line")))


def test_the_verdict_stands_in_one_line_that_leads_up_to_it() -> None:
    assert line() == "" and line(FOUND[1]) != "" and line(("A-Q2", "29' 1-1/2\"")) == ""
    (button,) = of_class(face(OUT), "line")
    assert (button.tag, button.attrib["data-do"]) == ("button", "verdict")
    assert line(OUT) == "Q1 to B is out: see" and line(OUT, ("Q1-B", "29' 1-1/2\"")) == "Readings disagree: see"
    suspects = asked(*FOUND)["read"]["suspects"]
    assert line(*FOUND) == (f"{suspects[0]['mark']} is out: see" if len(suspects) == 1 else "Several things fit: see")
    rows = [row for row in answering(DEMO)["checks"] if not row["blind"] or row["kind"] == "closing"]
    assert line(*((row["key"], row["shown"]) for row in rows)) == "All 5 read, and all are in."


def test_the_line_names_what_fits() -> None:
    def told(*rows: dict[str, Any]) -> str:
        read: Any = {"outs": 2, "judged": True, "rows": [], "suspects": rows}
        return re.sub("<[^>]*>", "", verdict_line(read, "", ""))

    stake, other, slip, end = ({"kind": kind, "mark": mark} for kind, mark in
                               (("stake", "R2"), ("stake", "K6"), ("slip", ""), ("end", "A")))  # fmt: skip
    assert [told(), told(stake), told(slip), told(end)] == [
        "No one stake fits: see", "R2 is out: see", "One slip fits: see", "The ends are out: see"]  # fmt: skip
    assert told(stake, other) == "R2 or K6 is out: see"
    assert told(stake, slip) == told(stake, other, end) == "Several things fit: see"
