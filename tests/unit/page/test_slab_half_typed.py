"""A field of the slab that is half typed refuses itself, and what is built by it; no stake hangs on it."""

from __future__ import annotations

import pytest

from bowstring.demo import DEMO
from bowstring.page.answering import LastAnswer
from bowstring.page.facing import OF_THE_STAKES, shown_face
from bowstring.page.fields import fields_of_job
from bowstring.page.measuring import shown_later

SOUND = {**fields_of_job(DEMO), "width": "5 ft", "edge": "outside", "slab-thickness": "4 in"}
HALF_TYPED = [("slab-thickness", "4 1/"), ("slab-thickness", "-"), ("joints-every", "5 1/"), ("slab-depths", "8: 4 1/"),
              ("slab-apron-to", "12")]  # fmt: skip


@pytest.mark.parametrize(("name", "text"), HALF_TYPED)
def test_the_stakes_stay_and_what_is_built_says_what_is_wrong(name: str, text: str) -> None:
    fields, last = {**SOUND, name: text}, LastAnswer()
    for face in OF_THE_STAKES:
        made = shown_face({"fields": fields, "face": face, "card": 2}, last)
        assert made["sign"] == "computed", face
    for face in ("build", "paper"):
        made = shown_face({"fields": fields, "face": face}, last)
        assert made["sign"] == "refused", face


@pytest.mark.parametrize(("name", "text"), HALF_TYPED)
def test_its_own_line_says_so_and_the_method_stands(name: str, text: str) -> None:
    last = LastAnswer()
    sound, half = (shown_later({"fields": {**SOUND, **more}}, last) for more in ({}, {name: text}))
    assert half["lines"]["slab"]["state"] == "wrong"  # type: ignore[index]
    assert half["lines"]["method"] == sound["lines"]["method"]  # type: ignore[index]
    assert half["advice"] == sound["advice"] != ""
    told = "slab-apron-from" if name == "slab-apron-to" else name  # where an end alone is said, the other is asked for
    assert [error["id"] for error in half["errors"]] == [told]  # type: ignore[attr-defined]


def test_a_width_isnt_of_the_slab_alone() -> None:
    made = shown_face({"fields": {**SOUND, "width": "5 1/"}, "face": "stakes", "card": 2}, LastAnswer())
    assert made["sign"] == "refused"
