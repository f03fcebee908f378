"""What a drawing calls its numbers, and three taped sides: read as what they mean, under the contract's own names."""

from __future__ import annotations

import json
from itertools import permutations
from math import acos, asin, cos, degrees, hypot, pi, radians, sin
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bowstring import BadJob, answer
from bowstring.job.arc_given import ALIASES
from bowstring.job.letters import LETTERS
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job, job_of_fields
from helping import answer_to

FOOT = 0.3048
SAME = {"delta": "central_angle", "rise": "sagitta", "mid_ordinate": "sagitta", "middle_ordinate": "sagitta",
        "bow": "sagitta"}  # fmt: skip


def arc_of(given_arc: dict[str, Any], **more: Any) -> dict[str, Any]:
    told = answer_to({"arc": given_arc, "levels": 1, **more})["arc"]
    return {name: value for name, value in told.items() if value is not None}


def refused(given_arc: dict[str, Any]) -> BadJob:
    with pytest.raises(BadJob) as caught:
        answer({"arc": given_arc})  # type: ignore[typeddict-item]
    return caught.value


@pytest.mark.parametrize(("alias", "name"), SAME.items())
def test_another_name_means_the_same(alias: str, name: str) -> None:
    value = "45°" if name == "central_angle" else "5' 3\""
    beside = {"radius": "38 ft"}
    plain, named = (answer_to({"arc": {**beside, key: value, "chord": "38 ft"}, "levels": 1}) for key in (name, alias))
    assert plain == named
    assert alias not in {row["field"] for row in named["given"]} and name in {row["field"] for row in named["given"]}
    assert f"arc.{alias}" not in {row["field"] for row in named["readings"]}


def test_every_name_is_tried() -> None:
    assert ALIASES == SAME


@pytest.mark.parametrize("two", [*permutations(("sagitta", "rise", "bow", "mid_ordinate", "middle_ordinate"), 2),
                                 ("central_angle", "delta"), ("radius", "diameter")])  # fmt: skip
def test_one_quantity_given_twice_is_refused(two: tuple[str, str]) -> None:
    value = "45" if "delta" in two else "5 ft"
    error = refused({"chord": "38 ft", two[0]: value, two[1]: value})
    assert "twice" in error.wrong and all(name in error.wrong for name in two)


def test_a_diameter_stands_for_its_radius() -> None:
    assert arc_of({"diameter": "80 ft", "chord": "38 ft"}) == arc_of({"radius": "40 ft", "chord": "38 ft"})
    told = answer_to({"arc": {"diameter": "80 ft", "chord": "38 ft", "central_angle": 57}})
    (row,) = [row for row in told["given"] if row["field"] == "diameter"]
    assert row["value"] == pytest.approx(80 * FOOT) and row["computed"] == pytest.approx(2 * told["arc"]["radius"])


@pytest.mark.parametrize("degree", [1, 4.5, "10° 30'", 90])
def test_a_degree_of_curve_by_its_chord(degree: Any) -> None:
    """R = 50/sin(D/2) feet: half of a 100-ft chord over the sine of half its angle, by definition."""
    value = 10.5 if isinstance(degree, str) else degree
    told = answer_to({"arc": {"degree": degree, "degree_by": "chord", "delta": 25.5}, "levels": 1})
    assert told["arc"]["radius"] / FOOT == pytest.approx(50 / sin(radians(value / 2)), rel=1e-12)
    by_arc = arc_of({"degree": degree, "degree_by": "arc", "delta": 25.5})
    assert by_arc == arc_of({"degree": degree, "delta": 25.5})
    assert by_arc["radius"] / FOOT == pytest.approx(18000 / pi / value, rel=1e-12)


def test_a_degree_of_curve_is_compared_as_it_is_counted() -> None:
    told = answer_to({"arc": {"degree": "8°", "degree_by": "chord", "delta": "30°", "radius": "716.78 ft"}})
    (row,) = [row for row in told["given"] if row["field"] == "degree"]
    assert row["computed"] == pytest.approx(2 * degrees(asin(50 * FOOT / told["arc"]["radius"])), rel=1e-12)
    assert all(row["agrees"] for row in told["given"])
    assert any("100-ft chord" in text for text in told["cautions"])


def test_how_a_degree_is_counted_is_refused_where_it_can_t_be() -> None:
    assert refused({"radius": "38 ft", "chord": "20 ft", "degree_by": "arc"}).field == "arc.degree_by"
    assert refused({"degree": 190, "degree_by": "chord", "delta": 40}).field == "arc.degree"
    assert refused({"degree": 8, "degree_by": "string", "delta": 40}).field == "arc.degree_by"


WITH_LETTERS = {
    "radius": ["R15", "R 15'", "R=15'", "R = 15 ft", "r15'", "RAD. 15'", "Radius: 15'"],
    "diameter": ["Ø15'", "⌀ 15'", "DIA 15'", "D=15'"],
    "chord": ["CH 15'", "C=15'", "L.C. 15'", "Long chord 15'"],
    "sagitta": ["M.O. 15'", "MO=15'", "BOW 15'", "bow 15", "RISE: 15'", "Mid-ordinate 15'", "Middle ordinate 15'"],
    "arc_length": ["L=15'", "ARC 15'", "Arc length 15'"],
    "central_angle": ["Δ 15°", "Δ=15", "∆15°", "DELTA 15°", "I = 15°00'"],
    "tangent_length": ["T 15'", "TAN=15'"],
    "external": ["E 15'", "EXT. 15'"],
    "degree": ["D 15°", "Dc=15"],
}


def with_fifteen(name: str, typed: Any) -> dict[str, Any]:
    beside = "central_angle" if name in ("radius", "diameter", "chord", "degree") else "chord"
    return {name: typed, beside: "12 ft" if beside == "chord" else "100"}


@pytest.mark.parametrize("name", WITH_LETTERS)
def test_a_number_is_read_with_its_own_letters(name: str) -> None:
    plain = arc_of(with_fifteen(name, "15"))
    for typed in WITH_LETTERS[name]:
        told = answer_to({"arc": with_fifteen(name, typed), "levels": 1})
        assert {key: value for key, value in told["arc"].items() if value is not None} == plain, typed
        (reading,) = [row for row in told["readings"] if row["field"] == f"arc.{name}"]
        assert reading["typed"] == typed.strip()


@pytest.mark.parametrize("name", WITH_LETTERS)
def test_letters_of_another_quantity_are_refused_with_its_name(name: str) -> None:
    for other, typed in WITH_LETTERS.items():
        letters = typed[0].rstrip("0123456789'° ")
        key = letters.casefold().replace(".", "").strip("= :")
        if other != name and key not in LETTERS[name]:
            error = refused(with_fifteen(name, typed[0]))
            assert error.field == f"arc.{name}" and "stand for" in error.wrong, (name, typed[0])


@pytest.mark.parametrize("typed", ["R", "R R15", "15R2", "RX15'", "R-15'", "R+15'", "15 R 15"])
def test_letters_that_mean_nothing_stay_refused(typed: str) -> None:
    assert refused({"radius": typed, "chord": "12 ft"}).field == "arc.radius"


def test_a_fraction_behind_letters_is_still_asked_about() -> None:
    error = refused({"sagitta": "BOW 5 1/4", "chord": "12 ft"})
    assert error.field == "arc.sagitta" and "5-1/4 in" in error.remedy
    assert arc_of({"sagitta": 'BOW 5 1/4"', "chord": "12 ft"})["sagitta"] == pytest.approx(5.25 * 0.0254)


def test_center_is_centre_in_every_value() -> None:
    base: dict[str, Any] = {"arc": {"chord": "38 ft", "rise": "5 ft"}, "side": "left", "levels": 1}
    for more in ({"drawn_to": "CENTRE"}, {"toward": "CENTRE", "offset": "2 ft"},
                 {"method": "CENTRE", "centre": "reachable"}):  # fmt: skip
        one, other = (
            answer_to({**base, **{key: word if value == "CENTRE" else value for key, value in more.items()}})
            for word in ("centre", "center")
        )
        assert one == other
        assert job_of_fields(
            fields_of_job({**base, **more, **{key: "center" for key in more if more[key] == "CENTRE"}})
        )


def sides_of(radius: float, angle: float, part: float) -> tuple[float, float, float]:
    """Return the distances A-C, C-B and A-B of an arc with C after a part of it: chords by their half angles."""
    half = radians(angle / 2)
    return (2 * radius * sin(half * part), 2 * radius * sin(half * (1 - part)), 2 * radius * sin(half))


@pytest.mark.parametrize("angle", [20, 90, 179, 200, 300])
@pytest.mark.parametrize("part", [0.2, 0.5, 0.85])
def test_three_taped_sides_give_the_arc(angle: float, part: float) -> None:
    sides = sides_of(12.0, angle, part)
    figures = arc_of({"three_sides": list(sides)}, unit="m", method="halving")
    assert figures["radius"] == pytest.approx(12.0, rel=1e-9)
    assert figures["central_angle"] == pytest.approx(angle, rel=1e-9)
    # The same by the cosine rule at C alone, and by three points.
    a, b, c = sides
    at_c = acos((a * a + b * b - c * c) / (2 * a * b))
    assert figures["central_angle"] == pytest.approx(360 - 2 * degrees(at_c), rel=1e-9)
    x = (a * a - b * b + c * c) / (2 * c)
    points = [[0, 0], [x, (a * a - x * x) ** 0.5], [c, 0]]
    assert hypot(*points[1]) == pytest.approx(a)
    assert figures == pytest.approx(arc_of({"points": points}, unit="m", method="halving"), rel=1e-7)


NO_ARC = {
    "straight": ["19 ft", "19 ft", "38 ft"],
    "open": ["10 ft", "20 ft", "38 ft"],
    "far": ["10 ft", "58 ft", "38 ft"],
    "two": ["10 ft", "20 ft"],
    "text": "10 ft, 20 ft, 25 ft",
    "nothing": ["10 ft", "0 ft", "10 ft"],
}


@pytest.mark.parametrize("sides", NO_ARC.values(), ids=NO_ARC)
def test_sides_that_make_no_arc_are_refused(sides: Any) -> None:
    assert refused({"three_sides": sides}).field.startswith("arc.three_sides")


@pytest.mark.parametrize("beside", [{"radius": "12 ft"}, {"rise": "2 ft"}, {"points": [[0, 0], [1, 1], [2, 0]]}])
def test_sides_stand_alone(beside: dict[str, Any]) -> None:
    refused({"three_sides": ["10 ft", "11 ft", "20 ft"], **beside})
    error = refused({"three_sides": ["10 ft", "11 ft", "20 ft"], "degree_by": "arc"})
    assert error.field == "arc.degree_by"


def test_flat_sides_say_how_much_a_mark_moves_the_radius() -> None:
    told = answer_to({"arc": {"three_sides": ["19 ft 1 in", "19 ft 1 in", "38 ft"]}, "side": "left"})
    (text,) = [text for text in told["cautions"] if "three taped sides" in text]
    assert "mid-ordinate" in text


def test_the_page_reads_what_a_job_file_does() -> None:
    """Alone in its field, too, where another field is refused."""

    def ask(fields: dict[str, str]) -> Any:
        return json.loads(handle("numbers", json.dumps({"fields": fields})))

    fields = {"arc-radius": "R=15'", "arc-sagitta": "BOW 5", "arc-central_angle": "Δ 45°", "title": "x" * 90}
    told = ask(fields)
    assert told["state"]["sign"] == "stop" and [row["id"] for row in told["errors"]] == ["title"]
    assert {name: told["rows"][name]["beside"].partition("\n")[0] for name in fields if name != "title"} == {
        "arc-radius": "15' 0\"",
        "arc-sagitta": "5' 0\"",
        "arc-central_angle": "45°00'00\"",
    }
    wrong = ask({**fields, "title": "", "arc-radius": "M 15'"})
    assert wrong["sign"] == "refused" and not wrong["errors"]
    assert [name for name, row in wrong["rows"].items() if row["state"] == "wrong"] == ["arc-radius"]


@given(
    name=st.sampled_from(["radius", "diameter", "chord", "sagitta", *SAME]),
    letters=st.booleans(),
    size=st.integers(30, 60),
    chord=st.integers(10, 29),
)
def test_any_name_with_or_without_letters_comes_through_the_form(
    name: str, letters: bool, size: int, chord: int
) -> None:
    own = SAME.get(name, name)
    before = LETTERS[own][size % len(LETTERS[own])].upper() if letters else ""
    other = "arc_length" if own == "chord" else "chord"
    lengths = {other: f"{chord} ft" if other == "chord" else f"{size + 2} ft"}
    typed = f"{before} {size}" if own == "central_angle" else f"{before} {size} ft"
    job: Any = {"arc": {name: typed, **lengths}, "side": "left", "drawn_to": "face", "levels": 1}
    plain: Any = {**job, "arc": {own: typed.removeprefix(before).strip(), **lengths}}
    told = answer(job, whole=False)["arc"]
    assert told == answer(plain, whole=False)["arc"] == answer(job_of_fields(fields_of_job(job)), whole=False)["arc"]
    assert cos(radians(told["central_angle"] / 2)) == pytest.approx(
        (told["radius"] - told["sagitta"]) / told["radius"], abs=1e-9
    )
