"""A tick stays with what its step does: through other ends, another method, another arc of the line and back."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bowstring import answering, read_link
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.linking import link_of
from bowstring.page.pieces import staked_at
from bowstring.report.linked import with_method
from stood_fields import FIELDS, WALK, M, card, is_stop, worked

STRAIGHT = {"start": "one-end", "turn": "right", "side": ""}
"""A and its straight, the curve on the same hand."""


def renumbered(fields: dict[str, str]) -> dict[str, str]:
    """The fields once the next card is turned: as the page's script keeps them."""
    told: dict[str, Any] = card(fields)
    new = told["renumbered"]
    assert new["of"] == fields["done"]
    return {**fields, "done": new["done"], "stood": new["stood"]}


def sets(fields: dict[str, str]) -> set[str]:
    """What is done, by what the cards set."""
    cards = answering(job_of_fields(fields))["cards"]
    return {
        " ".join(cards[int(number) - 1]["sets"]) or cards[int(number) - 1]["kind"] for number in fields["done"].split()
    }


def test_with_other_ends_no_step_is_done_that_never_was() -> None:
    fields = worked(FIELDS, M + 2)
    other = {**fields, **STRAIGHT}
    assert not is_stop(other)
    kept = renumbered(other)
    assert sets(kept) == {"locate", "string", "mid M M", "mid Q1 Q1", "mid Q2 Q2"}
    assert card(other)["card"] == 2, "A and its straight is what is open first"
    assert "renumbered" not in card(kept) and card(kept)["card"] == 2
    back = renumbered({**kept, "start": "ends", "turn": "", "side": "left"})
    assert sets(back) == {"locate", "string", "mid M M", "mid Q1 Q1", "mid Q2 Q2"}


def test_the_same_ends_again_have_all_their_ticks_as_long_as_no_card_was_turned() -> None:
    fields = worked(FIELDS, M)
    assert "renumbered" in card({**fields, **STRAIGHT}) and "renumbered" not in card(fields)
    assert card(fields)["card"] == M + 1


def test_more_rounds_keep_the_stakes_that_are_driven() -> None:
    fields = worked(FIELDS, M + 1)
    assert not is_stop({**fields, "levels": "3"})
    assert sets({**fields, "levels": "3"}) == {"locate", "A B", "string", "mid M M", "mid Q1 Q1"}
    assert card({**fields, "levels": "3"})["card"] == M + 2


def test_a_stake_that_another_method_puts_where_it_stands_stays_done() -> None:
    """Crossed tapes and offsets off the chord have their stakes at the same places here: the string is new."""
    fields = worked({**FIELDS, "method": "tapes", "levels": "", "spacing": "8 ft"}, 5)
    other = {**fields, "method": "ordinates", "stations": ""}
    marks = {one["name"]: (one["x"], one["y"]) for one in answering(job_of_fields(fields))["stakes"]}
    there = {one["name"]: (one["x"], one["y"]) for one in answering(job_of_fields(other))["stakes"]}
    same = {name for name, (x, y) in marks.items() if name in there and abs(there[name][0] - x) < 5e-4}
    cards = answering(job_of_fields(other))["cards"]
    from bowstring.page.ticks import ticked

    link = link_of(with_method(job_of_fields(other), answering(job_of_fields(other))))[0]
    done = ticked(answering(job_of_fields(other)), other, lambda: link)
    found = {one["stake"] for one in cards if one["number"] in done and one["stake"]}
    assert found == same & {"K1", "K2", "K3"}
    assert not {one["kind"] for one in cards if one["number"] in done} & {"string", "checks"}
    assert is_stop(other)


@pytest.mark.parametrize("start", ["ends", ""])
def test_an_arc_of_a_line_has_its_ends_again_when_somebody_comes_back(start: str) -> None:
    """Both set was chosen where its straight shows the tangent: the page has no text for that choice."""
    chosen = {**fields_of_job(WALK), "start": start, "turn": "", "side": "right"}
    first = worked({"unit": "ft-in", **{name: text for name, text in chosen.items() if text}}, M)
    kinds = [one["kind"] for one in answering(job_of_fields(first))["cards"]]
    back = staked_at(staked_at(first, 3), 2)
    assert back["start"] == "ends" and back["side"] == "right" and back["done"] == first["done"].strip()
    assert [one["kind"] for one in answering(job_of_fields(back))["cards"]] == kinds
    assert "renumbered" not in card(back) and not is_stop(back)
    linked = fields_of_job(read_link(link_of(job_of_fields(staked_at(first, 3)))[0]))
    assert staked_at({"unit": "ft-in", **linked}, 2)["start"] == "ends"


def test_a_file_has_the_steps_that_are_done_by_their_numbers_of_now() -> None:
    fields = worked(FIELDS, M + 1)
    other = {**fields, **STRAIGHT, "method": "halving"}
    told = json.loads(json.loads(Calls().handle("job_file", json.dumps({"fields": other})))["text"])
    cards = [one for one in answering(job_of_fields(other))["cards"] if set(one["steps"]) & set(told["done"])]
    assert [(one["kind"], one["stake"]) for one in cards] == [("string", None), ("stake", "M"), ("stake", "Q1")]


@pytest.mark.parametrize("method", ["halving", "ordinates", "tapes"])
def test_what_was_got_at_a_stake_ticks_its_card(method: str) -> None:
    """Used where it stands it is set, whatever its card is called by then: nobody is sent back to it."""
    before = {**FIELDS, "method": method}
    cards = answering(job_of_fields(before))["cards"]
    last = [one["number"] for one in cards if one["stake"]][-1]
    fields = worked(before, last - 1)
    shown = answering(job_of_fields(fields))["steps"][cards[last - 1]["steps"][-1] - 1]["measures"][-1]["distance"]  # type: ignore[typeddict-item]
    for reading in range(4):  # the first that is the step's last measure or leaves the stake free to stand elsewhere
        got = {f"m{reading}": f"{shown + 0.002:.4f} m"}
        asked = {"fields": fields, "face": "stakes", "card": last, "panel": "got", "got": got}
        told: dict[str, Any] = json.loads(Calls().handle("face", json.dumps(asked)))
        if "fill" in told:
            break
    assert told["fill"] and told["undone"] == []
    used = {**fields, **told["fill"], **told.get("fixed", {}), "done": f"{fields['done']} {last}"}
    kept = renumbered(used) if "renumbered" in card(used) else used
    assert str(last) in kept["done"].split() and card(kept)["card"] == last + 1
    forgotten = {**kept, **dict.fromkeys(told["fill"], "")}
    if "renumbered" in card(forgotten):
        assert str(last) not in renumbered(forgotten)["done"].split()
