"""Before the truck a line says which of its arcs, and whether its whole, has no check read: none is forgotten."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring.faces.passes import count
from bowstring.page.answering import LastAnswer
from bowstring.page.facing import shown_face
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.measuring import shown_numbers
from bowstring.page.pieces import staked_at, unread_arcs
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import FIVE, ONE_ARC

FIELDS = fields_of_job({**FIVE, "at": 2})  # type: ignore[typeddict-item]


def shown(fields: dict[str, str], face: str = "stakes") -> str:
    """The words of the last card, or of another face."""
    last = count(answer_to(job_of_fields(fields)))  # type: ignore[arg-type]
    asked: dict[str, Any] = {
        "fields": fields,
        "face": face,
        "card": last,
        "panel": "",
        "address": "https://example.org/",
    }
    html = str(shown_face(asked, LastAnswer())["html"])  # type: ignore[arg-type]
    return unescape(re.sub(r"<[^>]+>", " ", html)).replace("\u00a0", " ")


def read(fields: dict[str, str], where: str = "checks") -> dict[str, str]:
    """The fields with one check read more, as it must read."""
    answered = answer_to(job_of_fields(fields))  # type: ignore[arg-type]
    rows = answered["checks"] if where == "checks" else answered["far_checks"]["rows"]
    row = next(one for one in rows if not one["blind"])
    number = sum(name.endswith("-check") for name in fields)
    return {**fields, f"read-{number}-check": row["key"], f"read-{number}-value": row["shown"]}


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_last_card_names_what_nobody_read(language: str) -> None:
    speak(language)
    try:
        names = [say("lined.arc", number=2), say("lined.arc", number=4), say("face_checks.whole_line")]
        for fields, bare in (
            (FIELDS, names),
            (read(FIELDS), names[1:]),
            (staked_at(read(FIELDS), 4), names[1:]),
            (read(staked_at(read(FIELDS), 4)), names[2:]),
            (read(read(FIELDS), "far"), names[1:2]),
        ):
            assert say("face_checks.unread_along", names=", ".join(bare)).replace("~", "") in shown(fields), bare
        whole = staked_at(read(read(staked_at(read(FIELDS), 4)), "far"), 2)
        assert say("face_checks.unread_along", names="").split(":")[0].replace("~", "") not in shown(whole)
    finally:
        speak("english")


def test_only_an_arcs_own_reading_counts_for_it() -> None:
    """What was read along the whole line goes with the arc that is staked, and proves no stake of another."""
    assert unread_arcs(FIELDS) == [4] and unread_arcs(read(FIELDS, "far")) == [4]
    assert unread_arcs(staked_at(read(FIELDS, "far"), 4)) == [2]
    assert unread_arcs(staked_at(read(FIELDS), 4)) == []


def test_paper_says_it_once_the_stakes_stand_and_one_arc_says_nothing_of_a_line() -> None:
    cards = answer_to(job_of_fields(FIELDS))["cards"]  # type: ignore[arg-type]
    done = " ".join(str(card["number"]) for card in cards)
    assert "No check read yet" not in shown(FIELDS, "paper")
    assert "No check read yet: Arc 4, the whole line." in shown({**read(FIELDS), "done": done}, "paper")
    alone = fields_of_job(ONE_ARC)  # type: ignore[arg-type]
    assert "No check read yet" not in shown(alone)


def in_the_way(fields: dict[str, str]) -> tuple[dict[str, Any], str]:
    """What the bar says on the stakes, and what Site's line says of what is in the way."""
    asked: dict[str, Any] = {"fields": fields, "face": "stakes", "card": 1, "panel": "", "address": ""}
    state: dict[str, Any] = shown_face(asked, LastAnswer())["state"]  # type: ignore[arg-type, assignment]
    lines: Any = shown_numbers({"fields": fields, "focus": "", "short": False, "drawn": False})["lines"]  # type: ignore[typeddict-item]
    return state, re.sub(r"<[^>]+>|~", "", lines["way"]["text"])


def test_a_tree_kept_with_another_arc_is_still_in_the_bar_and_named_where_it_is_kept() -> None:
    """It stood in the concrete, and the bar said that all is answered once another arc was staked."""
    tree = {"ground-0-name": "oak", "ground-0-stops": "feet", "ground-0-at": "11 ft, 4 ft", "ground-0-diameter": "2 ft"}
    fields = {**FIELDS, **tree}
    state, line = in_the_way(fields)
    assert state["text"] == say("build.state_standing", count=1) and line == "Oak"
    state, line = in_the_way(staked_at(fields, 4))
    assert state["text"] == say("build.state_standing", count=1) and line == "Kept with arc 2: oak"
    assert in_the_way(staked_at(staked_at(fields, 4), 2))[1] == "Oak"
    state, line = in_the_way(FIELDS)
    assert state["text"] != say("build.state_standing", count=1) and line == say("numbers.way_usual")
