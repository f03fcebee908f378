"""Both passes as they are walked: one running number, each pass with its own count, no card of the forms too soon."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring import Answer, answering
from bowstring.faces.build import build_html
from bowstring.faces.checks import checks_html, ordered
from bowstring.faces.passes import card_at, changed, count, first_open, layout_cards, marks, running, standing
from bowstring.faces.stakes import stakes_html, steps_list_html
from bowstring.page.answering import LastAnswer
from bowstring.page.beside import done_of, marks_of
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
from bowstring.page.measuring import shown_later
from bowstring.page.staking import staking
from bowstring.report.forming.rows import Built
from bowstring.words import say
from slab_jobs import WALK

BARE = {key: value for key, value in WALK.items() if key not in ("edge", "slab", "joints", "grade")}
FIELDS = fields_of_job({**WALK, "method": "halving"})


def told(job: dict[str, Any]) -> Answer:
    return answering(job)  # type: ignore[arg-type]


def shown(fields: dict[str, str], **asked: Any) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(handle("face", json.dumps({"fields": fields, "face": "stakes", **asked})))
    return found


def test_the_forms_are_counted_by_themselves() -> None:
    answer = told(WALK)
    first, follow = len(layout_cards(answer)), len(answer["form_cards"])
    assert (first, follow, count(answer)) == (len(answer["cards"]), 8, len(answer["cards"]) + 8)
    done = [*range(1, first + 1), first + 1]
    assert say("card.step", number=first, count=first) in stakes_html(answer, first, done)
    html = stakes_html(answer, first + 2, done)
    assert say("forming.step", number=2, count=follow) in html and f'data-card="{first + 2}"' in html
    assert html.count('<i class="d">') == 1 and html.count('<i class="n">') == 1
    assert 'data-do="got"' not in html and f'data-do="done" data-step="{first + 2}"' in html
    assert 'data-face="paper"' in stakes_html(answer, count(answer)) and "data-face" not in html
    assert stakes_html(answer, 99) == stakes_html(answer, count(answer))
    assert [running(answer, card_at(answer, number)) for number in range(1, count(answer) + 1)] == list(
        range(1, count(answer) + 1)
    )


def test_a_job_without_a_slab_is_walked_as_before() -> None:
    answer = told(BARE)
    assert count(answer) == len(answer["cards"]) and standing(answer, (1, 2), ("form_dig-00000000",)) == [1, 2]
    assert say("forming.list") not in steps_list_html(answer, 1)
    assert "marks" not in shown(fields_of_job(BARE))


def test_before_the_dig_no_board_is_sprung_and_the_forms_have_one() -> None:
    board = {**WALK, "driven": "board"}
    assert told(board)["cards"][-1]["kind"] == "board"
    assert [card["kind"] for card in layout_cards(told(board))][-1] == "checks"
    assert layout_cards(told({**BARE, "driven": "board"}))[-1]["kind"] == "board"


def test_the_first_open_card_is_of_the_layout_until_forms_are_built() -> None:
    answer = told(WALK)
    first = len(layout_cards(answer))
    stakes = list(range(1, first))  # all but the checks
    assert first_open(answer, stakes) == first
    assert first_open(answer, [*stakes, first]) == first + 1
    assert first_open(answer, [*stakes, first + 1], building=True) == first + 2
    assert first_open(answer, [*stakes[:-1], first + 1], building=True) == first - 1, "a stake that was taken back"
    assert first_open(answer, range(1, count(answer) + 1)) == count(answer)


def test_while_stakes_are_set_no_part_of_the_build_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    made: list[str] = []

    def noted(part: str, told: Any) -> property:
        return property(lambda self: (made.append(part), told(self))[1])

    for part in ("edges", "boards", "joints", "grades", "pour"):
        monkeypatch.setattr(Built, part, noted(part, vars(Built)[part].func))
    last = LastAnswer()
    answer = last.for_fields(FIELDS)
    for number in range(1, len(layout_cards(answer))):
        stands = " ".join(map(str, range(1, number)))
        asked: Any = {"fields": {**FIELDS, "done": stands}, "face": "stakes", "card": number}
        html = str(staking(answer, asked, lambda: "")["list"])
        assert say("forming.list") in html and say("forming.cards", count=8) in html
    assert made == []
    staking(answer, {"fields": FIELDS, "face": "stakes", "card": len(layout_cards(answer)) + 1}, lambda: "")
    assert made, "the first of the forms"


def test_a_card_of_the_forms_is_done_by_its_mark() -> None:
    answer = told({**WALK, "method": "halving"})
    first, by_number = len(layout_cards(answer)), marks(answer)
    numbers = " ".join(map(str, range(1, first + 1)))
    stands = f"{numbers} {by_number[first + 1]} {by_number[first + 2]}"
    made = shown({**FIELDS, "done": stands})
    assert made["card"] == first + 3 and made["count"] == count(answer)
    assert made["marks"] == {str(number): mark for number, mark in by_number.items()}
    assert made["html"].count('<i class="d">') == 2
    deeper = shown({**FIELDS, "done": stands, "slab-overdig": "14 in"})
    assert deeper["card"] == first + 1, "both are of other numbers now"
    assert say("forming.changed") in deeper["html"]
    assert say("forming.changed") not in made["html"]
    # A number that is over the layout's is none of the forms': what stands by number is a stake.
    assert shown({**FIELDS, "done": f"{numbers} {first + 1}"})["card"] == first + 1


def test_a_mark_of_other_numbers_is_told_from_one_that_was_never_made() -> None:
    card = told(WALK)["form_cards"][1]
    assert not changed(card, ()) and not changed(card, (card["mark"],))
    assert changed(card, ("form_dig-00000000",)) and not changed(card, ("form_base-00000000",))


def test_a_job_file_keeps_what_is_done_of_the_forms() -> None:
    answer = told({**WALK, "method": "halving"})
    first, by_number = len(layout_cards(answer)), marks(answer)
    stakes = " ".join(map(str, range(1, first)))
    fields = {**FIELDS, "done": f"{stakes} {by_number[first + 1]}"}
    file = json.loads(handle("job_file", json.dumps({"fields": fields})))
    done = json.loads(file["text"])["done"]
    assert done[-1] == by_number[first + 1] and all(isinstance(step, int) for step in done[:-1]) and len(done) > 3
    opened = json.loads(handle("open_file", json.dumps({"text": file["text"]})))
    assert opened["fields"]["done"] == fields["done"]
    assert done_of(fields) == tuple(range(1, first)) and marks_of(fields) == (by_number[first + 1],)


def test_the_numbers_lead_on_to_the_forms() -> None:
    answer, last = told(WALK), LastAnswer()
    first = len(layout_cards(answer))
    done = " ".join(map(str, range(1, first + 1)))
    asked: Any = {"fields": {**FIELDS, "done": done}}
    assert shown_later(asked, last)["go"] == say("forming.go_on")
    asked = {"fields": {**FIELDS, "done": "1 2"}}
    assert shown_later(asked, last)["go"] == say("numbers.go_on", step=3)


def test_build_and_checks_that_are_in_lead_on_to_the_forms() -> None:
    """Nothing else but the last card of the stakes did, by its smaller button."""
    answer = told(WALK)
    way = f'data-do="go" data-step="{len(layout_cards(answer)) + 1}">{say("card.do.forms")}<'
    assert way in build_html(answer) and way not in build_html(answer, "edges")
    read = [{"check": row["key"], "value": row["shown"]} for row in ordered(answer)]
    assert way not in checks_html(answer) and way in checks_html(told({**WALK, "read": read}))
    out = [{**read[0], "value": "40 ft"}, *read[1:]]
    assert way not in checks_html(told({**WALK, "read": out}))
    for job in (BARE, {**WALK, "edge": "", "slab": {}}):
        job = {key: value for key, value in job.items() if value}
        assert say("card.do.forms") not in build_html(told(job))
