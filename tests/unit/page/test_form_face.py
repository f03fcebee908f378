"""The form as a face: each field in its row or its panel, few words, nothing asked that isn't needed."""

from __future__ import annotations

import re
from math import cos, radians, sin

from bowstring.demo import DEMO
from bowstring.faces.questions import ASKS, ROWS, panel_of
from bowstring.page.fields import all_fields, fields_of_job
from bowstring.page.form import form_html

MOST_WORDS = 120


def parts_of_form(html: str) -> dict[str, str]:
    """Return the face (under the empty key), each panel and the keys, as HTML."""
    face, *rest = re.split(r'(?=<section class="panel")|(?=<div id="keys")', html)
    parts = {"": face}
    for part in rest:
        name = re.search(r'id="(?:panel-)?([a-z]+)"', part)
        assert name
        parts[name[1]] = part
    return parts


def test_every_field_stands_once_in_its_row_or_its_panel() -> None:
    parts = parts_of_form(form_html())
    assert set(parts) == {"", *ASKS, "keys"}
    places: dict[str, set[str]] = {}
    for key, part in parts.items():
        for name in re.findall(r'<(?:input|select|textarea)[^>]* name="([^"]+)"', part):
            places.setdefault(name, set()).add(key)
    assert places == {field.id: {panel_of(field.id)} for field in all_fields({})}
    ids = re.findall(r' id="([^"]+)"', form_html())
    assert all(ids.count(field.id) == 1 for field in all_fields({}))


def test_the_face_has_the_seven_measures_in_their_order_and_a_line_for_each_other_question() -> None:
    face = parts_of_form(form_html())[""]
    assert re.findall('data-row="arc-([a-z_]+)"', face) == list(ROWS)
    assert re.findall('id="ask-([a-z]+)" data-do="panel"', face) == [*ASKS]
    assert 'id="ask-open" data-do="answer"' in face


def test_an_empty_face_is_short_and_asks_for_nothing_but_two_numbers() -> None:
    face = parts_of_form(form_html())[""]
    seen = re.sub("<(title|desc|style)[^>]*>.*?</\\1>|<[a-z]+[^>]* hidden>.*?</[a-z]+>", " ", face, flags=re.DOTALL)
    words = re.sub("<[^>]*>", " ", seen).split()
    assert len([word for word in words if re.search(r"\w", word)]) <= MOST_WORDS
    assert 'id="ask-bar" hidden' in face and 'data-state="wrong"' not in face
    assert 'data-do="example"' in face


def test_what_stands_in_the_fields_is_on_the_face_before_any_script() -> None:
    face = parts_of_form(form_html(fields_of_job(DEMO)))[""]
    assert 'placeholder="37&#x27; 0-1/8&quot;"' in face or 'placeholder="37&#x27; 0-1/16&quot;"' in face
    assert 'id="to-step" data-do="face" data-face="stakes">' in face and "LEFT from A facing B, turns RIGHT" in face


def test_a_number_can_be_let_go_once_there_are_three() -> None:
    two = {"arc-chord": "38'", "arc-sagitta": "5' 3\""}
    assert len(re.findall('class="letgo"[^>]*hidden', form_html(two))) == len(ROWS)
    three = form_html({**two, "arc-radius": "37'"})
    assert len(re.findall('class="letgo"[^>]*hidden', three)) == len(ROWS) - 3


def test_while_given_numbers_differ_nobody_is_led_on() -> None:
    said = {"arc-chord": "38'", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}
    assert 'id="ask-bar">' in form_html(said)
    assert 'id="ask-bar" hidden>' in form_html({**said, "arc-radius": "36'"})


def answers_of(name: str) -> dict[str, list[str]]:
    """Each answer of the hand's panel: its value, and the facts beside its picture."""
    labels = re.findall(r'<label class="hand">(.*?)</label>', parts_of_form(form_html())["hand"], flags=re.DOTALL)
    told = {}
    for label in labels:
        value = re.search(f'name="{name}" value="([a-z]+)"', label)
        if value:
            words = re.sub(r'<svg.*?</svg>|<span class="n">([^<]*)</span>', r"\1", label, flags=re.DOTALL)
            told[value[1]] = re.findall(r"<span>(.*?)</span>", words)
    return told


def test_which_hand_and_which_turn_are_told_alike_so_that_either_word_of_a_drawing_finds_its_answer() -> None:
    """An arc from A to B that lies left of the line A-B is walked by turning right: of a circle about (0, 0) walked
    clockwise from 120 to 60 degrees the middle, at 90 degrees, lies left of the chord."""
    start, middle, end = (complex(cos(radians(at)), sin(radians(at))) for at in (120, 90, 60))
    left = ((end - start).conjugate() * (middle - start)).imag > 0
    turns_right = ((middle - start).conjugate() * (end - middle)).imag < 0
    assert left and turns_right
    assert answers_of("side") == {
        "left": ["Arc <b>LEFT</b> of A-B", "Curve turns <b>RIGHT</b>"],
        "right": ["Arc <b>RIGHT</b> of A-B", "Curve turns <b>LEFT</b>"],
    }
    assert answers_of("turn") == {"left": ["Curve turns <b>LEFT</b>"], "right": ["Curve turns <b>RIGHT</b>"]}
