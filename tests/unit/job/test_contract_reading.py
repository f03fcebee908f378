"""What a crew types and how it is read: lengths and angles in every writing, and whole jobs out of links."""

from __future__ import annotations

import json
from typing import Any

import pytest

import bowstring
from helping import answer_to, metres, solve

LENGTHS = [
    ("40' 6-1/2\"", 486.5),
    ("40 ft 6 1/2 in", 486.5),
    ("40'6-1/2\"", 486.5),
    ("40' 6 1/2\"", 486.5),
    ("486.5 in", 486.5),
    ("486-1/2 in", 486.5),
    ("40′ 6½″", 486.5),
    ("40 ft 6-1/2 in", 486.5),
    ("40.54'", 486.48),
    ("40.54 ft", 486.48),
    ("6' 3/8\"", 72.375),
    ("6' 0-3/8\"", 72.375),
    ("6′ 0⅜″", 72.375),
    ("12.35 m", 12350 / 25.4),
    ("1235 cm", 12350 / 25.4),
    ("12350 mm", 12350 / 25.4),
    ('72 1/2"', 72.5),
    ("72-1/2 in", 72.5),
    ("100'", 1200.0),
    ("33' 11-31/32\"", 407.96875),
]


UNITS = ("ft-in", "ft", "m", "mm")


@pytest.mark.parametrize("number", range(len(LENGTHS)), ids=[text for text, _ in LENGTHS])
def test_a_length_with_its_own_unit_reads_the_same_in_a_job_of_another(number: int) -> None:
    """Each text in one job, the units in turn: that a text means the same in all is held where lengths are read."""
    (text, inches), unit = LENGTHS[number], UNITS[number % len(UNITS)]
    got = solve({"chord": text, "central_angle": 60}, unit)
    assert got["arc"]["chord"] == pytest.approx(inches * 0.0254, rel=1e-14)
    echo = [row for row in got["readings"] if row["field"] == "arc.chord"]
    assert len(echo) == 1 and echo[0]["typed"] == text and echo[0]["text"].strip()


@pytest.mark.parametrize(("unit", "scale"), [("ft-in", 0.3048), ("ft", 0.3048), ("m", 1.0), ("mm", 0.001)])
@pytest.mark.parametrize("value", [12, "12.5"])
def test_a_bare_number_is_in_the_jobs_unit_and_feet_in_feet_and_inches(unit: str, scale: float, value: Any) -> None:
    got = solve({"chord": value, "central_angle": 60}, unit)["arc"]["chord"]
    assert got == pytest.approx(float(value) * scale, rel=1e-14)


ANGLES = [
    (45.5, 45.5),
    (45, 45.0),
    ("45.5", 45.5),
    ("45° 40' 12\"", 45.67),
    ("45°40'12\"", 45.67),
    ("45° 40′ 12″", 45.67),
    ("45° 40'", 45 + 40 / 60),
    ("45°", 45.0),
    ("0° 10'", 1 / 6),
    ("45.40°", 45.4),
]


@pytest.mark.parametrize(("value", "degrees"), ANGLES)
def test_angles(value: Any, degrees: float) -> None:
    assert metres({"radius": 10, "central_angle": value})["central_angle"] == pytest.approx(degrees, rel=1e-14)


LINKED: list[dict[str, Any]] = [
    {"arc": {"chord": "40 ft", "sagitta": "6 ft"}},
    {
        "unit": "m",
        "title": "Ω & ½ #?/+=",
        "note": "zwei\u00a0Wörter",
        "arc": {"points": [[0, 0], ["5 m", 1.5], [10, 0.25]]},
        "levels": 4,
    },
    {
        "unit": "mm",
        "arc": {"radius": 6000, "chord": 9000},
        "greater": True,
        "side": "right",
        "offset": 25,
        "toward": "outside",
        "tolerance": 5,
        "spacing": 900,
        "ends": {"A": "door", "B": "wall"},
    },
]


@pytest.mark.parametrize("job", LINKED, ids=["plain", "unicode", "full"])
def test_a_link_carries_the_whole_job(job: dict[str, Any]) -> None:
    text = bowstring.write_link(job)
    assert text.isascii() and text.isprintable() and not set(text) & set(' #"<>')
    for link in (text, "#" + text, "https://example.org/layout/?a=b#" + text, "file:///pages/x.html#" + text):
        back = bowstring.read_link(link)
        for key in job:
            assert back[key] == job[key]
    taken = answer_to(job)["method"]
    assert back["method"] == taken  # the link says what was taken
    assert json.dumps(bowstring.answer(back, whole=False)) == json.dumps(dict(answer_to({**job, "method": taken})))
    sent = answer_to(job)
    notes = [note for note in sent["notes"] if "so the method is" not in note]  # the link says the method itself
    assert bowstring.answer(back, whole=False) == {**sent, "method_said": True, "notes": notes}
