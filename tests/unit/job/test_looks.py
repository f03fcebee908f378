"""Landmarks that can be read two ways stop the sheet; those that can't don't."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob, answer
from bowstring.job.looks import alike, blank, skeleton
from helping import answer_to

JOB: dict[str, Any] = {"arc": {"chord": "38 ft", "rise": "5 ft"}, "side": "left", "drawn_to": "face", "levels": 1}

ALIKE = {
    "capitals": ("Lamp post", "lamp POST"),
    "spaces": ("lamp  post", "lamppost"),
    "no-break space": ("lamp\u00a0post", "lamp post"),
    "a Cyrillic o": ("lamp post", "lamp p\u043est"),
    "all Cyrillic": ("PAC", "\u0420\u0410\u0421"),
    "all Greek": ("BANK", "\u0392\u0391\u039d\u039a"),
    "Greek against Cyrillic": ("\u039f\u0391\u039a", "\u041e\u0410\u041a"),
    "wide letters": ("gate", "\uff47\uff41\uff54\uff45"),
    "mathematical letters": ("gate", "\U0001d420\U0001d41a\U0001d42d\U0001d41e"),
    "one and l": ("pole 1", "pole l"),
    "one and I": ("pole 1", "pole I"),
    "nought and O": ("pole 10", "pole 1O"),
    "rn and m": ("barn door", "bam door"),
    "vv and w": ("saw mill", "savv mill"),
    "dashes": ("north-east", "north\u2013east"),
    "a filler between": ("oak", "o\u3164ak"),
    "a selector": ("oak", "oak\ufe0f"),
    "composed and not": ("caf\u00e9", "cafe\u0301"),
}
APART = {
    "other words": ("lamp post", "gate pier"),
    "hall and hail": ("hall", "hail"),
    "numbers": ("pole 1", "pole 2"),
    "grid lines": ("grid L", "grid 1"),
    "accents": ("p\u00eache", "peche"),
    "order": ("north post", "post north"),
}
BLANK = ["\u3164", "\uffa0", "\u2800\u2800", "\u00a0", "\u0301\u0302", "\u115f\u1160", "\u034f", "\u2003\u2009"]
MARKS = ["M", "Q1", "K4", "A", "b0", "\u0391", "\uff21", "stake M", "foot M", "point Q2", "TA", "\u041c"]


@pytest.mark.parametrize(("one", "other"), ALIKE.values(), ids=ALIKE)
def test_ends_that_look_alike_stop(one: str, other: str) -> None:
    assert alike(one, other) and alike(other, one)
    for ends in ({"A": one, "B": other}, {"A": other, "B": one}):
        (stop,) = answer_to({**JOB, "ends": ends})["stops"]
        assert "look alike" in stop


@pytest.mark.parametrize(("one", "other"), APART.values(), ids=APART)
def test_ends_that_do_not_look_alike_stop_nothing(one: str, other: str) -> None:
    assert not alike(one, other)
    assert answer_to({**JOB, "ends": {"A": one, "B": other}})["stops"] == []


@pytest.mark.parametrize("landmark", BLANK, ids=ascii)
def test_a_landmark_that_nobody_sees_stops(landmark: str) -> None:
    assert blank(landmark)
    (stop,) = answer_to({**JOB, "ends": {"A": landmark, "B": "gate pier"}})["stops"]
    assert "can't be seen" in stop


@pytest.mark.parametrize("unseen", ["\u200b", "\u2060", "\u00ad", "\ufeff", "\u202e"])
def test_signs_that_turn_or_hide_text_stay_refused(unseen: str) -> None:
    with pytest.raises(BadJob) as refused:
        answer({**JOB, "ends": {"A": f"oak{unseen}", "B": "gate pier"}})  # type: ignore[typeddict-item]
    assert refused.value.field == "ends.A"


@pytest.mark.parametrize("landmark", MARKS)
def test_a_landmark_named_like_a_mark_stops(landmark: str) -> None:
    (stop,) = answer_to({**JOB, "ends": {"A": landmark, "B": "gate pier"}})["stops"]
    assert "reads like a mark" in stop


@pytest.mark.parametrize(
    ("end", "landmark"), [("A", "B"), ("B", "A"), ("A", "end B"), ("B", "\u0410"), ("A", "Point b")]
)
def test_ends_that_are_swapped_stop(end: str, landmark: str) -> None:
    (stop,) = answer_to({**JOB, "ends": {end: landmark}})["stops"]
    assert f"at {end} is the other end's own name" in stop


@pytest.mark.parametrize(
    "landmark", ["nail in the oak", "foot of the wall", "B&M sign", "midpoint of the step", "10", "hub"]
)
def test_an_ordinary_landmark_stops_nothing(landmark: str) -> None:
    assert answer_to({**JOB, "ends": {"A": landmark, "B": "gate pier"}})["stops"] == []


def test_no_landmark_is_no_doubt() -> None:
    for ends in ({}, {"A": ""}, {"A": "  ", "B": " "}):
        assert answer_to({**JOB, "ends": ends})["stops"] == []


SWAPS = str.maketrans(
    "aeopcxyABEHKMOPTX",
    "\u0430\u0435\u043e\u0440\u0441\u0445\u0443\u0391\u0392\u0395\u041d\u041a\u041c\u039f\u0420\u03a4\u03a7",
)
NAMES = st.text("abcdefghiklmnoprstuwxyABCDEHKLMNOPRSTX 0123456789-'", min_size=3, max_size=20)


@given(name=NAMES, gaps=st.lists(st.sampled_from(["", " ", "\u00a0", "\u2009", "\u3164"]), min_size=20, max_size=20))
def test_any_name_is_like_itself_in_other_letters(name: str, gaps: list[str]) -> None:
    copy = "".join(sign + gap for sign, gap in zip(name.translate(SWAPS), gaps, strict=False))
    assert alike(name, copy) and blank(name) == (not name.strip())
    assert skeleton(copy) == skeleton(name)


@given(one=NAMES, other=NAMES)
def test_names_of_other_lengths_are_told_apart(one: str, other: str) -> None:
    """Where neither has letters that run together, a longer name is another one."""
    bare = [name.replace(" ", "") for name in (one, other)]
    if len(bare[0]) != len(bare[1]) and not any(two in name for name in bare for two in ("rn", "vv", "m", "w")):
        assert not alike(one, other)
