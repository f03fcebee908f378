"""What was worked by older numbers: the old number beside the new on its card, and stakes that are an edge no more."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from bowstring.page.before import built_by
from bowstring.page.beside import MOST_SIGNS, for_layout
from bowstring.page.calls import Calls
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.page.linking import link_of
from bowstring.words import say, speak
from bowstring.words.languages import LANGUAGES
from stood_fields import FIELDS, WALK, M, card, worked

SLAB = {**FIELDS, "width": "5 ft", "edge": "outside", "slab-thickness": "4 in"}


def text_of(html: str) -> str:
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())


def shown(fields: dict[str, str], face: str) -> str:
    asked = {"fields": fields, "face": face, "card": None, "panel": "", "address": ""}
    told: dict[str, Any] = json.loads(Calls().handle("face", json.dumps(asked)))
    return str(told["html"])


def built(fields: dict[str, str], what: str) -> tuple[dict[str, str], int]:
    """The fields after every stake and then one card of the forms is done, and that card's number."""
    number = next(number for number in range(1, 60) if f'data-kind="form_{what}"' in card(fields, number)["html"])
    told = card(fields, number)
    mark = told["marks"][str(number)]
    return {**fields, **told["fixed"], "done": f"{fields['done']} {mark}"}, number


@pytest.mark.parametrize(
    ("what", "change", "was", "now"),
    [
        ("dig", {"slab-overdig": "18 in"}, "1' 0\"", "1' 6\""),
        ("dig", {"width": "6 ft"}, "", ""),
    ],
)
def test_a_card_that_was_done_by_other_numbers_shows_the_old_one_beside_the_new(
    what: str, change: dict[str, str], was: str, now: str
) -> None:
    fields, number = built(worked(SLAB, M), what)
    before = card(fields, number)["html"]
    assert 'class="was"' not in before and fields["built"]
    later = card({**fields, **change}, number)["html"]
    assert 'class="changed"' in later
    rows = re.findall(r'<span>([^<]*)</span>(?:<b class="was">(.*?)</b>)?</dt><dd[^>]*>(.*?)</dd>', later)
    found = {(unescape(label), text_of(old).removeprefix("was "), unescape(new)) for label, old, new in rows}
    numbers = re.findall(r"<dt><i>[0-9]</i><span>(.*?)</span></dt><dd[^>]*>(.*?)</dd>", before)
    old = {unescape(label): unescape(text) for label, text in numbers}
    assert found and all(one[1] == ("" if old.get(one[0], one[2]) == one[2] else old[one[0]]) for one in found)
    if was:
        assert (was, now) in {(one[1], one[2]) for one in found}
    unknown = {name: text for name, text in {**fields, **change}.items() if name != "built"}
    assert 'class="changed"' in card(unknown, number)["html"] and 'class="was"' not in card(unknown, number)["html"]


def test_a_hub_on_the_other_side_says_on_which_it_was() -> None:
    """2 ft off the stakes before and after: to the other hand of them since the slab lies on that."""
    fields, number = built(worked({**SLAB, "slab-overdig": "1 ft"}, M), "hubs")
    (label,) = re.findall(r"<dt><i>1</i><span>(.*?)</span></dt>", card(fields, number)["html"])
    later = card({**fields, "edge": "inside"}, number)["html"]
    assert 'class="was"' not in later.split('class="right')[0] and unescape(label) in text_of(
        later.split('class="notes"')[1]
    )
    assert f"Was2'0\":{unescape(label)}".replace(" ", "") in text_of(later).replace(" ", "")


WIDER = {"width": "6 ft"}


def test_hubs_stand_where_they_stood_while_only_the_other_edge_moves() -> None:
    """Off their stakes by a number that the width has no part in: nobody drives them again."""
    fields, number = built(worked({**SLAB, "slab-overdig": "1 ft"}, M), "hubs")
    later = card({**fields, **WIDER}, number)
    assert 'class="changed"' not in later["html"] and later["marks"][str(number)] in fields["done"]


@pytest.mark.parametrize("what", ["line", "boards"])
def test_what_is_to_be_read_and_what_a_note_tells_stand_beside_what_they_were(what: str) -> None:
    """The diagonal, and where boards meet."""
    fields, number = built(worked(SLAB, M), what)
    before, later = (text_of(card({**fields, **more}, number)["html"]) for more in ({}, WIDER))
    assert "was" not in before.split() and "numbers changed" in later
    html = card({**fields, **WIDER}, number)["html"]
    if what == "line":
        (read,) = re.findall(r'<em class="was">(.*?)</em>', html)
        assert text_of(read).removeprefix("was ") in before
    else:
        were = re.findall(r"\(was ([^()]*)\)", text_of(html.split('class="notes"')[1]))
        assert were and all(one.strip() in before and one[0].isdigit() for one in were)


@pytest.mark.parametrize("face", ["stakes", "build", "numbers"])
def test_the_bar_says_that_forms_were_worked_by_other_numbers(face: str) -> None:
    fields, _number = built(worked(SLAB, M), "dig")
    call = "numbers_later" if face == "numbers" else "face"

    def state(more: dict[str, str]) -> dict[str, str]:
        asked = {"fields": {**fields, **more}, "face": face, "card": None, "panel": "", "address": "", "focus": ""}
        told: dict[str, Any] = json.loads(Calls().handle(call, json.dumps({**asked, "short": False, "drawn": False})))
        return dict(told["state"])

    assert state({})["text"] != say("stood.state_forms")
    assert state(WIDER) == {"sign": "ask", "text": say("stood.state_forms")}


def test_as_many_links_are_kept_as_a_field_holds_the_last_one_among_them() -> None:
    fields: dict[str, str] = {}
    for number in range(20):
        fields["built"] = built_by(fields, f"{number:02}" + "x" * 300)
    kept = fields["built"].split()
    assert len(fields["built"]) <= MOST_SIGNS and kept[-1].startswith("19") and len(kept) == MOST_SIGNS // 303
    assert built_by({"built": "a b c"}, "a") == "b c a" and built_by({"built": "a b"}, "") == "a b"


def test_no_link_gets_longer_for_it() -> None:
    fields, _number = built(worked(SLAB, M), "dig")
    plain = {name: text for name, text in fields.items() if name not in ("built", "edged")}
    both = [link_of(job_of_fields(for_layout(one)))[0] for one in (fields, plain)]  # type: ignore[arg-type]
    assert both[0] == both[1]


# R from the chord 38 ft and 5 ft 3 in: whatever it is, the stakes stay, and an edge lies off them by the widths alone.
OUTER = "Your stakes stand on the old outer edge. It is {} of them now."


@pytest.mark.parametrize(
    ("slab", "change", "told"),
    [
        ({}, {"width": "6 ft"}, ""),
        ({}, {"edge": "inside"},
         "Your stakes were the outer edge. They are the inner edge now."),
        ({}, {"edge": "left"}, ""),  # on whose hand the curve is
        ({"edge": "inside"}, {"edge": "outside", "width": "4 ft"},
         "Your stakes were the inner edge. They are the outer edge now."),
        ({"drawn_to": "centre", "edge": "centre"}, {"width": "6 ft"}, ""),
        ({"drawn_to": "centre", "edge": "centre", "offset": "2 ft 6 in", "toward": "outside"}, {"width": "7 ft"},
         OUTER.format("1' 0\" outside")),
        ({"drawn_to": "centre", "edge": "centre", "offset": "2 ft 6 in", "toward": "outside"}, {"width": "4 ft"},
         OUTER.format("6\" inside")),
        ({"drawn_to": "centre", "edge": "centre", "offset": "5 ft", "toward": "outside"}, {"width": "7 ft"},
         "The edge moved, your stakes did not. Outer edge: was 2' 6\" inside of them, 1' 6\" inside now."),
        ({"edge": "inside", "offset": "3 ft", "toward": "centre"}, {"width": "6 ft"}, ""),
    ],
)  # fmt: skip
def test_stakes_that_are_an_edge_no_more_are_told_on_card_build_and_paper(
    slab: dict[str, str], change: dict[str, str], told: str
) -> None:
    fields = worked({**SLAB, **slab}, M + 1)
    assert fields["edged"]
    later = {**fields, **change}
    faces = [
        text_of(card(later, 1)["html"]),
        text_of(shown(later, "build")),
        *shown(later, "paper").split("<section")[1:],
    ]
    for face in faces:
        assert (
            "Your stakes stand on the old" in face or "Your stakes were" in face or "stakes did not" in face
        ) == bool(told)
        assert not told or told.replace(" ", "") in text_of(face).replace(" ", "")
    assert len(faces) == 6
    for face in (card(fields, 1)["html"], shown(fields, "build"), shown(fields, "paper")):
        assert "Your stakes stand on the old" not in face and "Your stakes were" not in face


def test_it_is_told_as_long_as_they_stand_so_and_no_longer() -> None:
    fields = worked(SLAB, M + 1)
    changed = {**fields, "edge": "inside"}
    on = worked(changed, M + 2, M + 2)  # the next card is done by the numbers of now
    assert on["edged"] == fields["edged"] and "Your stakes were the outer edge" in text_of(card(on, 1)["html"])
    assert "Your stakes were" not in text_of(card({**on, "edge": "outside"}, 1)["html"])
    again = worked({**on, "done": "", "stood": "", "edged": ""}, M)
    assert "Your stakes were" not in text_of(card(again, 1)["html"])


def test_where_nothing_stands_or_no_edge_was_known_nothing_is_told() -> None:
    bare = worked(FIELDS, M + 1)
    assert "edged" not in bare
    later = {**bare, "width": "5 ft", "edge": "inside"}
    assert "Your stakes" not in text_of(shown(later, "build")).replace("Your stakes:", "")


@pytest.mark.parametrize(
    ("edge", "change", "told"),
    [
        ("left", {"edge": "right"}, "Your stakes stand on the old left edge. It is 6' 0\" left of them now."),
        ("left", {"width": "7 ft"}, ""),
        (
            "right",
            {"edge": "left", "width": "5 ft"},
            "Your stakes stand on the old right edge. It is 5' 0\" right of them now.",
        ),
        ("centre", {"width": "7 ft"}, ""),
    ],
)
def test_of_a_line_too(edge: str, change: dict[str, str], told: str) -> None:
    drawn = "centre" if edge == "centre" else "face"
    job: Any = {**WALK, "edge": edge, "drawn_to": drawn}
    fields = worked({"unit": "ft-in", **fields_of_job(job)}, 6)
    face = text_of(shown({**fields, **change}, "build"))
    assert ("Your stakes stand on the old" in face) == bool(told) and told.replace(" ", "") in face.replace(" ", "")


@pytest.mark.parametrize("language", LANGUAGES)
def test_in_every_language(language: str) -> None:
    speak(language)
    try:
        fields = worked(SLAB, M + 1)
        plain, changed = (text_of(shown({**fields, "edge": edge}, "build")) for edge in ("outside", "inside"))
        told = text_of(say("stood.edge_outside_other").replace("~", ""))
        assert told in changed and told not in plain
    finally:
        speak("english")


def test_a_width_that_changes_across_from_stakes_on_an_edge_is_told_in_one_line() -> None:
    fields = worked(SLAB, M + 1)
    told = "Your stakes stand. The other edge, joints and order changed."
    for face in (card(fields, 1)["html"], shown(fields, "build")):
        assert told not in text_of(face)
    later = {**fields, "width": "6 ft"}
    for face in (card(later, 1)["html"], shown(later, "build"), shown(later, "paper")):
        assert told in text_of(face)


def old_lines(html: str) -> list[tuple[str, str]]:
    """Each side of a paper by its name, and what it says of old numbers."""
    sides = re.findall(r'<section class="side[^>]*aria-label="([^"]*)">(.*?)</section>', html, re.DOTALL)
    told = [(unescape(name), re.findall(r'<p class="[^"]*\bold">(.*?)</p>', one)) for name, one in sides]
    return [(name, text_of(" ".join(lines))) for name, lines in told]


def test_every_side_of_the_forms_says_that_their_cards_are_done_by_other_numbers() -> None:
    fields, _number = built(worked(SLAB, M), "dig")
    told = "Forms: new numbers. The numbers here are newer."
    assert not any(old for _name, old in old_lines(shown(fields, "paper")))
    later = dict(old_lines(shown({**fields, "slab-overdig": "18 in"}, "paper")))
    forms = [name for name in later if name in (say("forms.front"), say("forms.back"))]
    assert len(forms) == 2 and all(later[name] == told for name in forms) and not later[say("paper.front")]
