"""The link: whole jobs there and back, and nothing damaged gets through."""

import re
import string

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob, answer, read_link, write_link

ORDINARY = {
    "bowstring": 1,
    "title": "Walk by the pond",
    "arc": {"chord": "38 ft", "sagitta": "5' 3\""},
    "ends": {"A": "lamp post", "B": "gate pier"},
    "tolerance": "1/4 in",
    "side": "right",
    "method": "halving",
}
PINNED = {
    "b1": "b102eq4Z7NTwxJ1shqVIBGG0KBfnAuNJBV2tsAXEowipTdQVjsLkoLs5JzC0AGlFcAnV6OjDeFAoygXGHyw8o4VgLAA1e2902e",
    "b2": "b2022Q7MvqVIBWGZBQhyuGGaZsQXEPQjLTNUVjDFty0nMLQAaUVwCtTYdGHUKBZkoYQqLGaxhhhlQAA11fxfll",
}
"""A link of each form as it was written once: it must be read for ever."""


def test_an_ordinary_job_makes_a_short_link_of_plain_characters():
    link = write_link(ORDINARY)
    assert len(link) <= 100
    assert re.fullmatch(r"[A-Za-z][A-Za-z0-9._-]*[A-Za-z0-9]", link)
    assert read_link(link) == ORDINARY
    assert answer(read_link(link)) == answer(ORDINARY)


@pytest.mark.parametrize("form", PINNED)
def test_a_link_once_written_is_read_for_ever(form):
    assert PINNED[form].startswith(form)
    assert read_link(PINNED[form]) == ORDINARY


def test_the_whole_address_and_spaces_around_are_read_too():
    link = write_link(ORDINARY)
    assert read_link(f" https://example.org/page.html#{link}\n") == ORDINARY


def test_defaults_are_left_out():
    more = {**ORDINARY, "unit": "ft-in", "mark": "0.125 in", "note": "", "start": "ends"}
    assert write_link(more) == write_link(ORDINARY)


def test_a_hand_that_was_said_stays_said():
    job = {**ORDINARY, "side": "left"}
    assert read_link(write_link(job)) == job
    assert answer(read_link(write_link(job))) == answer(job)


def test_a_left_hand_is_no_default_beside_three_points():
    job = {
        "bowstring": 1,
        "side": "left",
        "method": "halving",
        "arc": {"points": [["0 ft", "0 ft"], ["5 ft", "-2 ft"], ["10 ft", "0 ft"]]},
    }
    assert read_link(write_link(job)) == job


def test_every_cut_is_refused():
    link = write_link(ORDINARY)
    for end in range(len(link)):
        for part in (link[:end], link[len(link) - end :]):
            with pytest.raises(BadJob):
                read_link(part)


def test_every_changed_dropped_added_and_swapped_character_is_refused():
    link = write_link(ORDINARY)
    letters = string.ascii_letters + string.digits + "-_."
    damaged = {link[:i] + letter + link[i + 1 :] for i in range(len(link)) for letter in letters}
    damaged |= {link[:i] + link[i + 1 :] for i in range(len(link))}
    damaged |= {link[:i] + letter + link[i:] for i in range(len(link) + 1) for letter in letters}
    damaged |= {
        link[:i] + link[j] + link[i + 1 : j] + link[i] + link[j + 1 :]
        for i in range(len(link))
        for j in range(i + 1, len(link))
    }
    damaged.discard(link)
    longer = {text for text in damaged if link in text}  # what stands before and after a whole link is no part of it
    assert len(damaged) > 10_000 and len(longer) == 2 * len(letters)
    for text in damaged - longer:
        with pytest.raises(BadJob):
            read_link(text)
    for text in longer:
        assert read_link(text) == ORDINARY


def test_a_newer_form_says_so():
    with pytest.raises(BadJob) as refusal:
        read_link("b9" + write_link(ORDINARY)[2:])
    assert refusal.value.key == "link.newer"


@pytest.mark.parametrize(
    "text", ["", "#", "hello", "b", "b1", "b1000", "https://example.org/", "b1" + "0" * 30_000, "ü" * 9]
)
def test_what_is_no_link_is_refused(text):
    with pytest.raises(BadJob):
        read_link(text)


def test_a_bad_job_makes_no_link():
    with pytest.raises(BadJob):
        write_link({**ORDINARY, "colour": "red"})


@given(
    st.text(st.characters(codec="utf-8", exclude_categories=("C", "Zl", "Zp")), max_size=80),
    st.text(st.characters(codec="utf-8", exclude_categories=("C", "Zl", "Zp")), min_size=1, max_size=40),
    st.floats(0.5, 1e4),
)
def test_any_text_and_number_comes_back(title, landmark, chord):
    job = {
        "bowstring": 1,
        "unit": "m",
        "arc": {"chord": chord, "central_angle": 40},
        "ends": {"A": landmark},
        "levels": 1,
    }
    job["method"] = "halving"
    if title:
        job["title"] = title
    assert read_link(write_link(job)) == job
