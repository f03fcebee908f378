"""The strings that paper names are those that the cards use, for every method."""

from __future__ import annotations

import re
from typing import Any

import pytest

from bowstring.methods.catalogue import BY_NAME
from bowstring.sheet.firsts import firsts
from bowstring.sheet.setting import settings
from helping import SAID, answer_to

ENDS: dict[str, Any] = {**SAID, "arc": {"chord": "36 ft", "sagitta": "4' 6\""}, "centre": "reachable"}
CORNER: dict[str, Any] = {
    **SAID,
    "arc": {"radius": "15 ft", "central_angle": "86°30'"},
    "start": "corner",
    "centre": "reachable",
}
CONTROL = {"marks": [{"name": "P1", "x": "100 ft", "y": "50 ft"}, {"name": "P2", "x": "122.8 ft", "y": "80.4 ft"}]}
STRING = re.compile(r"[Ss]tring (\w+) to (\w+)|and (\w+) to (\w+)(?: \(off \w+\))?, tight")


@pytest.mark.parametrize("job", [ENDS, CORNER], ids=["ends", "corner"])
@pytest.mark.parametrize("method", [name for name in BY_NAME if name not in ("parallel", "rule")])
def test_the_strings_on_paper_are_the_cards(job: dict[str, Any], method: str) -> None:
    answer: Any = answer_to({**job, "method": method}, whole=True)
    used = {
        frozenset((line["from"], line["to"]))
        for card in answer["cards"]
        for line in card["lines"]
        if line["kind"] in ("string", "straight")
    }
    texts = [one.text for one in firsts(answer)] + [text for table in settings(answer) for text in table.how]
    named = {
        frozenset(filter(None, found)) for text in texts if "No string" not in text for found in STRING.findall(text)
    }
    assert named <= used, (named - used, texts)


def test_tangent_offsets_from_a_corner_name_the_two_tangents() -> None:
    answer: Any = answer_to({**CORNER, "method": "tangent"}, whole=True)
    how = [text for table in settings(answer) for text in table.how]
    assert how == ["String A to P (off RIGHT) and B to P (off LEFT), tight. Mark along, facing as you mark."]
    assert any(one.text == "No string A to B is needed." for one in firsts(answer))


def test_how_far_back_a_straight_is_shown_is_a_number() -> None:
    answer: Any = answer_to({**CORNER, "method": "tangent"}, whole=True)
    at = {mark["name"]: mark for mark in answer["marks"]}
    far = ((at["S"]["x"] - at["P"]["x"]) ** 2 + (at["S"]["y"] - at["P"]["y"]) ** 2) ** 0.5 / 0.3048
    whole = f"{int(far + 0.999)} ft"
    assert f"at least {whole} back" in firsts(answer)[0].text and whole in answer["cards"][1]["text"]
    assert f"at least {whole} back from P" in answer["steps"][0]["text"]
