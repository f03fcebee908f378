"""A link is found in whatever it came in, and one that was really damaged is refused in all of it."""

from __future__ import annotations

import json
from random import Random
from time import process_time
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob, read_link, write_link
from bowstring.job.linkfinder import LINK_LIMIT, MESSAGE_LIMIT, find_links
from bowstring.page.calls import handle
from helping import about
from wrappings import AROUND, AT_AN_ADDRESS, WITHIN, damaged, wrapped

JOBS: list[dict[str, Any]] = [
    {"arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "method": "halving"},
    {
        "title": "Walk by the pond \u2013 \u05d1\u05e8\u05db\u05d4",
        "unit": "m",
        "arc": {"radius": 24.125, "arc_length": "30 m"},
        "ends": {"A": "lamp post", "B": "gate pier"},
        "side": "left",
        "method": "ordinates",
        "ground": [{"name": "oak", "stops": "tape", "outline": [[4, 1.03], [5.7, 1.09], [5.23, 2], [4.1, 2.77]]}],
    },
]
LINKS = [write_link(job) for job in JOBS]
OLD = "b102eq4Z7NTwxJ1shqVIBGG0KBfnAuNJBV2tsAXEowipTdQVjsLkoLs5JzC0AGlFcAnV6OjDeFAoygXGHyw8o4VgLAA1e2902e"
READ = {link: read_link(link) for link in (*LINKS, OLD)}

ANY_TEXT = st.text(st.characters(codec=None, categories=None), max_size=60)


def test_1000_wrappings_open() -> None:
    kinds = set()
    for number in range(1000):
        chance = Random(number)
        link = chance.choice(list(READ))
        text = wrapped(link, chance)
        kinds.add(text.replace(link, "LINK"))
        with about(number, text):
            assert read_link(text) == READ[link]
    assert len(kinds) > 800


@pytest.mark.parametrize("kind", [*AT_AN_ADDRESS, *WITHIN, *AROUND])
def test_each_wrapping_by_itself(kind: str) -> None:
    wrapping = {**AT_AN_ADDRESS, **WITHIN, **AROUND}[kind]
    for number, link in enumerate([*READ] * 5):
        for text in (link, f"https://example.org/#{link}"):
            with about(kind, number):
                assert read_link(wrapping(text, Random(number))) == READ[link]


def test_1000_damaged_links_are_refused_however_they_are_wrapped() -> None:
    refused = set()
    for number in range(1000):
        chance = Random(number)
        link = chance.choice(list(READ))
        broken = damaged(link, chance)
        assert broken != link
        text = wrapped(broken, chance)
        with about(number, text), pytest.raises(BadJob) as refusal:
            read_link(text)
        refused.add(refusal.value.key)
    assert refused <= {"link.damaged", "link.cut", "link.not_one", "link.newer"} and "link.damaged" in refused


@given(ANY_TEXT, ANY_TEXT, st.sampled_from(LINKS), st.sampled_from(["", "#", " ", "\n"]))
def test_any_text_around(before: str, after: str, link: str, joint: str) -> None:
    assert read_link(f"{before}{joint}{link}{after}") == READ[link]


@given(st.sampled_from(LINKS), st.randoms(use_true_random=False))
def test_the_page_opens_what_was_pasted(link: str, chance: Random) -> None:
    opened = json.loads(handle("open_link", json.dumps({"text": wrapped(link, chance)})))
    assert opened.get("link") == json.loads(handle("open_link", json.dumps({"text": link})))["link"]


@given(st.text(st.sampled_from("b12az09-_#%6 \n=>\u200b")), st.integers(1, 300))
def test_rubbish_is_refused_and_quickly(piece: str, times: int) -> None:
    with pytest.raises(BadJob):
        read_link(piece * times)


RUBBISH = {
    "starts": "b1",
    "starts with lengths": "b1ffh",
    "short lengths": "b1000",
    "percent signs": "%62%31",
    "percent signs in percent signs": "%25",
    "breaks": "=\n> ",
    "spaces": " ",
    "sharps": "#b1",
    "unseen": "\u200b",
    "a link without its end": LINKS[1][:-1],
}


def seconds_for(text: str) -> float:
    began = process_time()
    assert find_links(text) == []
    return process_time() - began


@pytest.mark.parametrize("kind", RUBBISH)
def test_rubbish_takes_no_longer_than_its_length(kind: str) -> None:
    piece = RUBBISH[kind]
    texts = [(piece * size)[:size] for size in (LINK_LIMIT, MESSAGE_LIMIT)]
    short, long = (min(seconds_for(text) for _ in range(3)) for text in texts)
    assert short < 0.5
    assert long < 12 * short + 0.1  # five times the length


def test_a_text_with_two_jobs_asks_which_and_one_job_twice_is_one() -> None:
    with pytest.raises(BadJob) as refusal:
        read_link(f"new: #{LINKS[0]}\n> old: #{LINKS[1]}")
    assert (refusal.value.field, refusal.value.key) == ("link", "link.several")
    assert read_link(f"#{LINKS[0]} and again #{LINKS[0]}") == READ[LINKS[0]]


def test_a_link_of_a_newer_form_is_told_in_a_message_too() -> None:
    with pytest.raises(BadJob) as refusal:
        read_link(f"The walk: https://example.org/#b3{LINKS[0][2:]}, see you")
    assert refusal.value.key == "link.newer"
