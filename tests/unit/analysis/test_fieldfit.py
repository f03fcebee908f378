"""The chord found on the ground: slips first, then what is held, and what it does."""

from math import atan2, degrees, pi

import pytest

from bowstring import BadJob
from bowstring.analysis.fieldfit import fit_chord
from bowstring.geometry.arc import Arc
from bowstring.geometry.pairs import arcs_of
from bowstring.geometry.plane import level_length
from helping import SAID, answer_to

DRAWN = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, **SAID}


def fitted(chord, **more):
    both = chord if isinstance(chord, list) else [chord, chord]
    return answer_to({**DRAWN, "found": {"chord": both, "tape": "level", **more}})


def test_a_slope_length_with_its_fall():
    """Slope 302.6 ft with 14 ft rise is 302.28 ft level: a printed field-notebook page "Reduction to Horizontal"."""
    assert level_length(302.6, 14.0) == pytest.approx(302.28, abs=0.005)


@pytest.mark.parametrize(
    ("chord", "word"),
    [
        ("37 ft", "foot"),
        ("39 ft", "foot"),
        ("40 ft", "foot"),
        ("38 ft 1 in", "inch"),
        ("37 ft 11 in", "inch"),
        ("39 ft 10-7/8 in", "the arc length taken for the chord"),
        ("83 ft", "swapped"),
    ],
)
def test_a_difference_that_looks_like_a_slip_is_told_and_not_built_on(chord, word):
    found = fitted(chord, hold="radius")
    assert found["fit"]["reason"] == "slip"
    assert any(word in text for text in found["fit"]["slips"])
    assert found["arc"] == answer_to(DRAWN)["arc"], "nothing is re-solved"
    assert "Don't build" in " ".join(found["cautions"][:2])


@pytest.mark.parametrize(
    "chord", ["38 ft 0-1/2 in", "38 ft 0-3/4 in", "37 ft 11-1/2 in", "38 ft 1-1/2 in", "38 ft 2-1/4 in"]
)
def test_a_plain_difference_is_no_slip(chord):
    assert fitted(chord, hold="radius")["fit"]["slips"] == []


@pytest.mark.parametrize("tenths", range(0, 20, 2))
def test_a_plain_difference_is_no_slip_whatever_the_digits(tenths):
    drawn = {"unit": "m", "arc": {"chord": f"{21.3 + tenths * 0.137:.3f} m", "sagitta": "3 m"}}
    chord = f"{21.3 + tenths * 0.137 + 0.022:.3f} m"
    assert answer_to({**drawn, "found": {"chord": [chord, chord], "tape": "level"}})["fit"]["slips"] == []


def test_tenths_read_as_inches_is_a_slip():
    """40.54 ft read as 40 ft 5.4 in: the classic mistake (common practice, no source)."""
    found = answer_to(
        {
            "unit": "ft",
            "arc": {"chord": "40.54", "sagitta": "5.25"},
            "found": {"chord": ["40 ft 5.4 in", "40 ft 5.4 in"], "tape": "level", "hold": "radius"},
        }
    )
    assert any("tenths" in text for text in found["fit"]["slips"])


def test_two_measurements_that_differ_are_not_taken():
    found = fitted(["38 ft 0-1/2 in", "38 ft 2 in"], hold="radius")
    assert found["fit"]["reason"] == "apart"
    assert found["arc"] == answer_to(DRAWN)["arc"]


def test_until_something_is_held_the_drawn_arc_stands_and_says_so():
    found = fitted("38 ft 0-1/2 in")
    assert found["fit"]["reason"] == "choose"
    assert "Don't build" in found["cautions"][0]


@pytest.mark.parametrize(
    ("hold", "key"),
    [
        ("radius", "radius"),
        ("sagitta", "sagitta"),
        ("arc_length", "arc_length"),
        ("directions", "central_angle"),
    ],
)
def test_what_is_held_stays_and_the_found_chord_is_met(hold, key):
    found, drawn = fitted("38 ft 0-1/2 in", hold=hold), answer_to(DRAWN)
    assert found["arc"][key] == pytest.approx(drawn["arc"][key], rel=1e-12)
    assert found["arc"]["chord"] == pytest.approx((38 * 12 + 0.5) * 0.0254, rel=1e-12)
    assert found["stakes"][-1]["x"] == pytest.approx(found["arc"]["chord"], rel=1e-12)


def test_the_kink_is_the_turn_of_the_end_directions():
    """Holding the radius: the end direction is asin(C/2R) off the chord, before and after."""
    drawn = Arc.of_angle(20.0, 0.5)
    fit = fit_chord(drawn, drawn.chord + 0.03, "radius")
    assert fit.arc is not None
    before = degrees(atan2(drawn.sine, drawn.cosine))
    after = degrees(atan2((drawn.chord + 0.03) / 40, (1 - ((drawn.chord + 0.03) / 40) ** 2) ** 0.5))
    assert fit.kink == pytest.approx(after - before, abs=1e-9)
    assert fit_chord(drawn, drawn.chord + 0.03, "directions").kink == pytest.approx(0.0, abs=1e-12)


def test_past_the_limit_it_says_do_not_build():
    found = fitted("38 ft 7 in", hold="radius", sure=True)
    assert found["cautions"][0].startswith("Do not build this: ask")


def test_ground_and_fall_are_taken_out():
    sloped = ((38 * 0.3048) ** 2 + 0.6**2) ** 0.5
    found = answer_to(
        {
            **DRAWN,
            "found": {"chord": [f"{sloped:.6f} m"] * 2, "tape": "ground", "fall": "0.6 m", "hold": "radius"},
        }
    )
    assert found["fit"]["found"] == pytest.approx(38 * 0.3048, abs=1e-6)


def test_the_greater_arc_stays_the_greater_one():
    drawn = arcs_of(("radius", "chord"), 10.0, 12.0)[1]
    fit = fit_chord(drawn, 12.01, "radius")
    assert fit.arc is not None and fit.arc.half_angle > pi / 2


@pytest.mark.parametrize(
    ("found", "field"),
    [
        ({"chord": ["38 ft", "38 ft"]}, "found.tape"),
        ({"chord": ["38 ft"], "tape": "level"}, "found.chord"),
        ({"chord": ["38 ft", "38 ft"], "tape": "ground"}, "found.fall"),
        ({"chord": ["38 ft", "38 ft"], "tape": "level", "fall": "1 ft"}, "found.fall"),
        ({"chord": ["38 ft", "38 ft"], "tape": "ground", "fall": "39 ft"}, "found.fall"),
        ({"chord": ["99 ft", "99 ft"], "tape": "level", "hold": "radius", "sure": True}, "found.hold"),
    ],
)
def test_a_half_told_finding_is_asked_for(found, field):
    with pytest.raises(BadJob) as refusal:
        answer_to({**DRAWN, "found": found})
    assert refusal.value.field == field


def test_a_chord_found_as_drawn_agrees_and_nothing_cries():
    found = fitted("38 ft")
    assert found["fit"]["reason"] is None
    assert "they agree" in found["cautions"][0]


def test_an_inch_on_a_long_chord_is_still_an_inch():
    drawn = {"arc": {"chord": "168 ft", "sagitta": "33 ft"}, "side": "left"}
    found = answer_to({**drawn, "found": {"chord": ["168 ft 1 in"] * 2, "tape": "level", "hold": "radius"}})
    assert any("inch" in text for text in found["fit"]["slips"])


def test_a_chord_taped_between_the_stakes_is_told_for_what_it_is():
    """Stakes 1-1/2 in outside a 25-ft return: the stakes' own chord and 3/4 in, not the drawn one and 2.8 in."""
    job = {"arc": {"radius": "25 ft", "central_angle": "88°30'"}, "offset": "1-1/2 in", "toward": "outside"}
    found = answer_to({**job, "found": {"chord": ["35 ft 1-1/2 in"] * 2, "tape": "level", "hold": "radius"}})
    assert any("between the stakes" in text for text in found["fit"]["slips"])
    assert found["fit"]["reason"] == "slip"


@pytest.mark.parametrize("start", ["corner", "one-end", "neither"])
def test_a_chord_is_found_between_ends_that_exist(start):
    with pytest.raises(BadJob) as refusal:
        answer_to({**DRAWN, "start": start, "found": {"chord": ["38 ft", "38 ft"], "tape": "level"}})
    assert refusal.value.field == "start"
