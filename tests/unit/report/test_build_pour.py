"""The concrete as it is told: the order, when to call, what changes it, and how it comes."""

from __future__ import annotations

from math import asin, ceil, cos, floor, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

import bowstring
from bowstring import BadJob
from bowstring.sheet.outline import part as section_of
from helping import about, answer_to
from slab_jobs import WALK as SLAB_WALK

FOOT, INCH = 0.3048, 0.0254
YARD = 0.9144**3
WALK: dict[str, Any] = {name: said for name, said in SLAB_WALK.items() if name != "grade"}
METRIC: dict[str, Any] = {
    **WALK,
    "unit": "m",
    "arc": {"radius": 19, "chord": 15},
    "width": "1.5 m",
    "slab": {"thickness": "100 mm"},
    "joints": {},
}


def told(job: dict[str, Any] = WALK, **said: Any) -> Any:
    return answer_to({**job, **said})["pour"]


def slab(**said: Any) -> dict[str, Any]:
    return {"slab": {**WALK["slab"], **said}}


def row(job: dict[str, Any] = WALK, **said: Any) -> Any:
    return next(one for one in answer_to({**job, **said})["build"] if one["key"] == "pour")


def test_the_walks_order() -> None:
    """Recomputed here: th (62² - 57²)/2 square feet, 4 in deep, 8 % waste, to the next quarter yard."""
    area = 2 * asin(24 / 62) * (62**2 - 57**2) / 2
    yards = area / 3 / 27
    part = told()
    assert part["area"] / FOOT**2 == pytest.approx(area) and round(area, 3) == 236.501
    assert part["volume_yards"] == pytest.approx(yards) and round(yards, 4) == 2.9198
    assert part["with_waste"] / YARD == pytest.approx(yards * 1.08) and round(yards * 1.08, 4) == 3.1533
    assert part["order_yards"] == pytest.approx(3.25) and part["order"] == pytest.approx(3.25 * YARD)
    assert (part["number"], part["unit"]) == ("3-1/4", "yards to order")
    assert part["why"] == '236.5 ft² at 4" is 2.92 yd³; 8% waste makes 3.15 yd³; up to the next quarter yard.'
    assert (row()["text"], row()["more"]) == ("Order 3-1/4 yards", "2.92 yd³ in the forms, 8% waste")
    assert part["bag_count"] == ceil(yards * 1.08 * 27 / 0.6) == 142 and not part["by_bags"]


def test_when_to_call_is_rounded_up_and_on_plan_down() -> None:
    half, three = told()["reach"]
    length = 62 * 2 * asin(24 / 62)
    for one, share, call, plan in ((half, 0.5, "24' 8\"", "27' 5\""), (three, 0.75, "37' 0\"", "41' 1\"")):
        assert one["call"] / FOOT == pytest.approx(length * share)
        assert one["plan"] / FOOT == pytest.approx(length * share * 3.25 / 2.919766, rel=1e-6)
        assert (one["call_shown"], one["plan_shown"]) == (call, plan)
    assert (half["out"], half["joint"], three["joint"]) == ("1/2", 5, 0)


def test_what_changes_the_order() -> None:
    changes = {one["what"]: one for one in told()["changes"]}
    assert {what: one["order_shown"] for what, one in changes.items()} == {
        'base 1/2" low all over': "3-3/4",
        '5" thick': "4",
        "5' 6\" wide": "3-1/2",
        "5% waste": "3-1/4",
    }
    assert changes['base 1/2" low all over']["more"] == "+0.36 yd³: more than the waste"
    assert [one["changed"] for one in changes.values()] == [True, True, True, False]
    assert "10% waste" in {one["what"] for one in told(**slab(waste=5))["changes"]}


def test_how_low_a_base_the_order_fills_is_rounded_down() -> None:
    part = told()
    exact = (part["order"] - part["volume"]) / part["area"]
    assert round(exact / INCH, 3) == 0.452 and part["low_shown"] == '7/16"' and part["low"] <= exact
    assert "7/16" in part["low_text"]
    none = told(**slab(waste=0, step=0.01, thickness="4.001 in"))
    assert none["low"] == 0 and "just enough to fill" in none["low_text"]


def test_a_bulkhead_is_ready_where_a_low_base_ends() -> None:
    """Half an inch low all over takes 0.365 yd more: 3.25 of 3.285 ends at 48' 9", past joint 9."""
    made = told()["bulkhead"]
    assert made["joint"] == 9 and made["outside"] / FOOT == pytest.approx(0.9 * 62 * 2 * asin(24 / 62))
    assert "48' 9\"" in made["text"] and "44' 4-1/4\"" in made["text"] and "40' 9-3/8\"" in made["text"]
    # Where the order fills even that, the last joint is for a truck that comes short.
    assert "short load" in told(**slab(waste=30))["bulkhead"]["text"]
    assert (
        told(joints={"panels": 1}, **slab(thickness="6 in"), arc={"radius": "62 ft", "chord": "12 ft"})["bulkhead"]
        is None
    )


def test_the_forms_real_height_is_held_against_the_thickness() -> None:
    """A 1x4 or 2x4 is 3-1/2 in high: common practice, no source."""
    lines = " ".join(told()["lines"])
    assert 'form is 3-1/2" high: the base is 1/2" below its foot' in lines
    assert "as deep as the slab" in " ".join(told(**slab(thickness="3-1/2 in"))["lines"])
    assert 'goes 1/2" into the base' in " ".join(told(**slab(thickness="3 in"))["lines"])
    own = told(board={"thickness": "3/4 in", "height": "3 in"}, **slab(thickness="6 in"))
    assert "taller board" in " ".join(own["lines"])


def test_a_small_pour_is_told_in_bags() -> None:
    said = {"arc": {"radius": "6 ft", "chord": "11 ft"}, "width": "3 ft", "joints": {}}
    part = told(**said)
    assert part["by_bags"] and row(**said)["text"] == f"{part['bag_count']} bags of 80 lb" == part["text"]
    assert part["bag_count"] == ceil(part["volume"] * 1.08 / (0.6 * FOOT**3))
    assert part["reach"] == [] and part["bulkhead"] is None
    filled = (part["bag_count"] * 0.6 * FOOT**3 - part["volume"]) / part["area"]
    assert part["low"] <= filled < part["low"] + INCH / 16
    low = part["changes"][0]
    assert int(low["order_shown"]) == ceil((part["volume"] + part["area"] * INCH / 2) * 1.08 / (0.6 * FOOT**3))
    assert "1/2 yd³" in part["lines"][0]  # what a truck would bring
    just = told(**slab(thickness="1.2 in"))
    assert just["with_waste"] < YARD and just["by_bags"] and not told(**slab(thickness="1.3 in"))["by_bags"]


def test_metres_are_told_in_cubic_metres_and_both_are_there() -> None:
    part = told(METRIC)
    area = 2 * asin(7.5 / 19) * (19**2 - 17.5**2) / 2
    assert part["volume"] == pytest.approx(area * 0.1) and part["order"] == pytest.approx(ceil(area * 0.11 * 4) / 4)
    assert part["number"] == "2.50" and row(METRIC)["text"] == "Order 2.50 m³" and "m³" in part["why"]
    assert part["order_yards"] == pytest.approx(2.5 / YARD) and any("3.27 yd³" in line for line in part["lines"])
    assert (
        part["waste"] == 0.1
        and not part["waste_said"]
        and any("10% waste is assumed" in line for line in part["lines"])
    )
    assert part["changes"][0]["what"] == "base 10 mm low all over"
    assert any("2.48 m³" in line for line in told()["lines"])


def test_the_plants_own_step_and_truck_hold() -> None:
    part = told(**slab(step=1, truck=2.5))
    assert part["number"] == "4" and part["loads"] == 2 and part["last"] == pytest.approx(1.5 * YARD)
    assert part["why"].endswith("up to the next 1 yd³.")
    assert told(**slab(step=0.1))["number"] == "3.2"
    outs = [(one["out"], one["share"]) for one in part["reach"]]
    assert outs == [("all of truck 1", pytest.approx(2.5 / 4)), ("1/2 of truck 2", pytest.approx(3.25 / 4)),
                    ("3/4 of truck 2", pytest.approx(3.625 / 4))]  # fmt: skip
    assert [one["plan_shown"] for one in part["reach"]][1:] == ["B", "B"]
    assert all(one["call"] / FOOT == pytest.approx(one["share"] * 62 * 2 * asin(24 / 62)) for one in part["reach"])


def test_an_order_with_nothing_to_spare_is_near_the_next_step() -> None:
    part, one = told(**slab(waste=11.1)), row(**slab(waste=11.1))
    assert part["number"] == "3-1/4" and one["state"] == part["state"] == "near"
    assert one["text"] == "Order 3-1/4 yards" and one["more"] == "3.24 yd³ with waste: next is 3-1/2"


def test_a_bed_under_the_slab_is_told_in_place() -> None:
    assert any("2.92 yd³ in place" in line for line in told(**slab(base="4 in"))["lines"])
    assert not any("in place" in line for line in told()["lines"])


def test_thick_edges_add_two_bands() -> None:
    """12 in wide and 8 deep along both forms of the walk: 4 in more over th x 1 ft x (61.5 + 57.5) ft, by hand."""
    thick = slab(edge_width="12 in", edge_depth="8 in")
    part = told(**thick)
    angle = 2 * asin(24 / 62)
    extra = 4 / 12 * angle * 1.0 * (61.5 + 57.5)
    assert part["volume"] / FOOT**3 == pytest.approx(angle * (62**2 - 57**2) / 2 * 4 / 12 + extra)
    assert '236.5 ft² at 4", edges 8", is' in part["why"]
    assert any("along both forms add *1.17 yd³*" in line for line in part["lines"]) and round(extra / 27, 2) == 1.17
    # From the top: a slab that is an inch thicker leaves edges an inch less to add.
    thicker = next(one for one in part["changes"] if one["what"] == '5" thick')
    needed = angle * (62**2 - 57**2) / 2 * 5 / 12 + extra * 3 / 4
    assert thicker["order"] / YARD == pytest.approx(ceil(needed / 27 * 1.08 * 4) / 4)
    # Even all along: the places at which the plant is called are the same parts of the form.
    assert [one["call"] for one in part["reach"]] == pytest.approx([one["call"] for one in told()["reach"]])
    shallow = told(**slab(edge_width="12 in", edge_depth="3 in"))
    assert shallow["volume"] == pytest.approx(told()["volume"]) and "edges" not in shallow["why"]
    whole = told(**slab(edge_width="30 in", edge_depth="8 in"))  # the two meet: all of it is 8 in thick
    assert whole["volume"] == pytest.approx(2 * told()["volume"])


def test_a_footing_is_an_order_of_its_own() -> None:
    """A wall 8 in thick and 4 ft high on R 62 ft to its center, footing 2 ft by 1 ft: th x 62 x 2 cubic feet."""
    part = told(edge="centre", width="8 in", joints={},
                **slab(poured="wall", thickness="4 ft", footing_width="2 ft", footing_depth="12 in"))  # fmt: skip
    angle = 2 * asin(24 / 62)
    assert part["footing"] / FOOT**3 == pytest.approx(angle * 62 * 2)
    assert part["footing_order"] / YARD == pytest.approx(ceil(angle * 62 * 2 / 27 * 1.08 * 4) / 4)
    assert part["volume"] / FOOT**3 == pytest.approx(angle * 62 * 8 / 12 * 4)
    lines = " ".join(part["lines"])
    assert "Footing first" in lines and "Bank earth" not in lines
    assert told()["footing"] is None and told()["footing_order"] is None
    joints = answer_to({**WALK, "width": "8 in", "joints": {}, **slab(poured="wall", thickness="4 ft")})["joints"]
    assert joints["depth"] is None and any("drawing says" in line for line in joints["lines"])


def test_a_width_without_a_depth_is_refused() -> None:
    for said, field in (({"edge_width": "1 ft"}, "slab.edge_depth"), ({"footing_depth": "1 ft"}, "slab.footing_width")):
        with pytest.raises(BadJob) as refused:
            bowstring.answer({**WALK, **slab(**said)})  # type: ignore[typeddict-item]
        assert refused.value.field == field


def test_no_order_before_all_is_said() -> None:
    for missing, text in ((("width",), "Needs the width"), (("slab",), "Needs the thickness"),
                          (("width", "slab"), "Needs width and thickness")):  # fmt: skip
        answer = answer_to({key: value for key, value in WALK.items() if key not in missing})
        one = next(one for one in answer["build"] if one["key"] == "pour")
        assert answer["pour"] is None and (one["state"], one["text"], one["panel"]) == ("open", text, "slab")
    assert row(width="63 ft")["state"] == "stop" and told(width="63 ft") is None


def test_nothing_is_told_of_the_mix_and_cement_burns() -> None:
    part = told()
    assert "burns" in part["cautions"][0] and "the spec's and the plant's" in part["notes"][0]
    section = section_of(answer_to(WALK), "pour")  # type: ignore[arg-type]
    text = repr(section).replace("\\", "")
    assert "3-1/4" in text and "24' 8\" (joint 5)" in text and "*" not in text
    assert "3-3/4" in text and "142" in text and "burns" in text


def test_published_examples() -> None:
    """420 ft² at 4 in is 5.185 yd³ (a ready-mix guide prints 5.18, cut off; +5 % is 5.44); 5-ft walk, R 20 ft at the
    center, 90°, 4 in: 157.08 ft², 1.94 yd³ (worked by hand); one yard covers 81 ft² at 4 in (common practice)."""
    quarter = told(arc={"radius": "20 ft", "central_angle": 90}, edge="centre")
    assert quarter["area"] / FOOT**2 == pytest.approx(157.08, abs=5e-3)
    assert quarter["volume_yards"] == pytest.approx(1.94, abs=5e-3)
    walk = told(arc={"radius": "100 ft", "arc_length": "84 ft"}, edge="centre", **slab(waste=5))
    assert walk["area"] / FOOT**2 == pytest.approx(420) and walk["volume_yards"] == pytest.approx(5.185, abs=5e-4)
    assert walk["with_waste"] / YARD == pytest.approx(5.44, abs=5e-3) and walk["number"] == "5-1/2"
    one = told(arc={"radius": "100 ft", "arc_length": "16.2 ft"}, edge="centre", **slab(waste=0))
    assert one["area"] / FOOT**2 == pytest.approx(81) and one["volume_yards"] == pytest.approx(1)


def ring(radii: list[tuple[float, float]], angle: float) -> Polygon:
    """Two edges about the origin, each with its radius at both ends, as so many sides."""
    sides = 4000
    outer, inner = (
        [((first + (last - first) * at / sides), angle * at / sides) for at in range(sides + 1)]
        for first, last in radii
    )
    return Polygon([(r * cos(a), r * sin(a)) for r, a in [*outer, *inner[::-1]]])


@settings(max_examples=25)
@given(st.floats(15, 200), st.floats(0.1, 3.0), st.floats(2, 12), st.floats(2, 12),
       st.sampled_from(["outside", "inside", "centre"]), st.sampled_from(["left", "right"]))  # fmt: skip
def test_area_volume_and_call_agree_with_shapely(
    radius: float, angle: float, first: float, last: float, edge: str, side: str
) -> None:
    radius, first, last = round(radius, 3), round(first, 3), round(last, 3)
    length = round(radius * angle, 3)
    angle = length / radius
    part = told(arc={"radius": f"{radius} ft", "arc_length": f"{length} ft"}, edge=edge, side=side, joints={},
                width=f"{first} ft", slab={"thickness": "5 in", "end_width": f"{last} ft"})  # fmt: skip
    out, back = {"outside": (0.0, -1.0), "inside": (1.0, 0.0), "centre": (0.5, -0.5)}[edge]
    ends = [(radius + side_of * first, radius + side_of * last) for side_of in (out, back)]
    area = ring(ends, angle).area
    assert part["area"] / FOOT**2 == pytest.approx(area, rel=1e-6)
    assert part["volume"] == pytest.approx(area * FOOT**2 * 5 * INCH, rel=1e-6)
    assert part["order"] >= part["with_waste"] * (1 - 1e-9)
    for one in part["reach"]:
        # The share of the angle from the place on the outer edge: what lies before it is that part of the area.
        (outer, far), _ = ends
        share = _share(outer, far, angle, one["call"] / FOOT)
        upto = [(start, start + (end - start) * share) for start, end in ends]
        assert ring(upto, angle * share).area == pytest.approx(area * one["share"], rel=1e-5)


def _share(first: float, last: float, angle: float, length: float) -> float:
    """The share of the angle at which a spiral from one radius to another is so long, by steps."""
    steps, gone = 20000, 0.0
    change = (last - first) / angle
    for at in range(steps):
        radius = first + (last - first) * (at + 0.5) / steps
        step = (radius**2 + change**2) ** 0.5 * angle / steps
        if gone + step >= length:
            return (at + (length - gone) / step) / steps
        gone += step
    return 1.0


def test_a_call_place_is_never_rounded_to_the_wrong_side() -> None:
    for waste in range(0, 31, 3):
        for one in told(**slab(waste=waste))["reach"]:
            with about(waste, one):
                feet, inches = one["call_shown"].rstrip('"').split("' ")
                shown = int(feet) + int(inches) / 12
                assert 0 <= shown - one["call"] / FOOT < 1 / 12 + 1e-9
                if one["plan_shown"] != "B":
                    feet, inches = one["plan_shown"].rstrip('"').split("' ")
                    assert int(feet) + int(inches) / 12 >= shown
                    assert floor(one["plan"] / INCH + 1e-6) <= max(round(shown * 12), int(feet) * 12 + int(inches))
