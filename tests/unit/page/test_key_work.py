"""What a key in a slab's field makes again, and what it doesn't: counted, not timed."""

from __future__ import annotations

import json

import pytest

from bowstring import BadJob
from bowstring.faces.numbers import numbers
from bowstring.forming import cutting
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job
from bowstring.units import lengths
from slab_jobs import WALK


@pytest.fixture
def searched(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """How many edges each search for an order of boards was for; none is known from before."""
    runs: list[int] = []
    best = cutting._Search.best

    def counted(search: cutting._Search) -> cutting.Label:
        runs.append(len(search.runs))
        return best(search)

    monkeypatch.setattr(cutting._Search, "best", counted)
    cutting.best_order.cache_clear()
    return runs


def build(calls: Calls, **changed: str) -> str:
    fields = {**fields_of_job(WALK), **{name.replace("_", "-"): text for name, text in changed.items()}}
    asked = {"fields": fields, "face": "build", "card": None, "panel": "", "got": {}, "address": ""}
    html: str = json.loads(calls.handle("face", json.dumps(asked)))["html"]
    return html


def test_boards_are_put_in_order_once_for_every_thickness(searched: list[int]) -> None:
    calls = Calls()
    faces = {build(calls, slab_thickness=text) for text in ("4 in", "4-1/4 in", "4-1/2 in", "5 in")}
    assert len(faces) == 4, "each thickness takes another volume"
    assert searched == [2]


def test_boards_are_put_in_order_anew_for_another_width(searched: list[int]) -> None:
    calls = Calls()
    for width in ("5 ft", "5 ft 1 in", "5 ft"):
        build(calls, width=width)
    assert searched == [2, 2]


def test_only_orders_that_keep_all_rules_are_looked_at_where_there_is_one(monkeypatch: pytest.MonkeyPatch) -> None:
    kept: list[int] = []
    within = cutting._Search._within
    monkeypatch.setattr(cutting._Search, "_within", lambda search, rules: kept.append(rules) or within(search, rules))
    runs = (cutting.Run(16.25, 0.61), cutting.Run(15.02, 0.61))
    stock = tuple(0.3048 * feet for feet in (8, 10, 12, 14, 16))
    easy = cutting.Rules(1.8288, 0.0032, 0.3048, 0.6096, (0.0, 0.25, 0.5, 0.75, 1.0))
    found = cutting.best_order.__wrapped__(runs, stock, easy)
    assert found is not None and not any(found.broken.values()) and kept == [4]
    kept.clear()
    stakes = tuple(number / 64 for number in range(65))
    tight = cutting.best_order.__wrapped__(runs, stock, cutting.Rules(1.8288, 0.0032, 0.3048, 0.6096, stakes))
    assert tight is not None and tight.broken[cutting.STAKE] and kept == [4, 3]


def test_the_arc_is_drawn_once_for_every_slab() -> None:
    fields = fields_of_job(WALK)
    first, other = numbers(fields), numbers({**fields, "slab-thickness": "6 in", "width": "7 ft"})
    assert first["drawing"] is other["drawing"]
    assert numbers({**fields, "ends-A": "mailbox"})["drawing"] != first["drawing"]
    assert numbers(fields, focus="arc-radius")["drawing"] != first["drawing"]


def test_a_text_is_read_once_and_held_to_each_fields_own_rules(monkeypatch: pytest.MonkeyPatch) -> None:
    texts: list[str] = []
    from_text = lengths._from_text
    monkeypatch.setattr(lengths, "_from_text", lambda typed, *how: texts.append(typed) or from_text(typed, *how))
    lengths._read.cache_clear()
    for _ in range(3):
        assert lengths.read_length("7 ft 3 in", "ft-in", "width").metres == pytest.approx(7.25 * 0.3048)
    assert texts == ["7 ft 3 in"]
    assert lengths.read_length("0 in", "ft-in", "offset", zero=True).metres == 0.0
    for _ in range(2):
        with pytest.raises(BadJob):
            lengths.read_length("0 in", "ft-in", "width")
