"""A stretch that is thicker and depths that were measured, as they are told: by hand, and what is refused."""

from __future__ import annotations

from math import asin
from typing import Any

import pytest

import bowstring
from bowstring import BadJob
from bowstring.sheet.text import sheet_text
from bowstring.units.lengths import read_length
from bowstring.words import speak
from helping import answer_to
from lined_jobs import CREEK, KINKED
from slab_jobs import WALK as SLAB_WALK

FOOT, INCH = 0.3048, 0.0254
YARD = 0.9144**3
WALK: dict[str, Any] = {**SLAB_WALK, "slab": {"thickness": "4 in", "waste": 8, "base": "4 in"}}
APRON: dict[str, Any] = {"from": "12 ft", "to": "22 ft", "thickness": "6 in"}
THETA = 2 * asin(24 / 62)
FORM = 62 * THETA
"""Feet of outer form: 49.2876."""

AREA = THETA * (62**2 - 57**2) / 2


def job(walk: dict[str, Any] = WALK, **said: Any) -> dict[str, Any]:
    return {**walk, "slab": {**walk["slab"], **said}}


def reads(*rows: tuple[str, str]) -> list[dict[str, str]]:
    return [{"at": at, "depth": depth} for at, depth in rows]


def row(answer: Any, key: str = "pour") -> Any:
    return next(one for one in answer["build"] if one["key"] == key)


def refused(**said: Any) -> BadJob:
    with pytest.raises(BadJob) as refusal:
        bowstring.answer(job(**said))  # type: ignore[arg-type]
    return refusal.value


def test_an_aprons_order_by_hand() -> None:
    """10 ft of outer form at R 62 are 10/62 rad: (62² - 57²)/2 of that is 47.98 ft², 2 in more is 0.2962 yd³. On the
    slab's 2.9198 that is 3.2160; 8 % waste makes 3.4732: order 3-1/2."""
    answer = answer_to(job(apron=APRON))
    part = answer["pour"]
    more = 10 / 62 * (62**2 - 57**2) / 2 / 6 / 27
    assert round(more, 4) == 0.2962
    assert part["volume"] / YARD == pytest.approx(AREA / 3 / 27 + more, rel=1e-9)
    assert round(part["with_waste"] / YARD, 4) == 3.4732 and part["number"] == "3-1/2"
    assert part["why"].startswith('236.5 ft² at 4", apron 6", is 3.22 yd³')
    assert part["deep"]["apron_shown"] == '6" thick from 12\' 0" to 22\' 0" on the outer form'
    assert any('48.0 ft², 6" thick: *0.30 yd³* more' in line for line in part["deep"]["apron"])
    assert part["per_panel"] is None and "as the depth changes" in " ".join(part["lines"])


def test_where_to_call_knows_of_the_apron() -> None:
    """Half of 3.2160 yd³ is 130.25/3 ft³ at 4 in: up to the apron's start lie 12/62 rad, up to its end 12/62 at 4 in
    and 10/62 at 6 in, more than half; so the place lies in the apron, before the half of the form."""
    wide = (62**2 - 57**2) / 2  # ft² a radian
    half = (AREA / 3 + 10 / 62 * wide / 6) / 2
    after = (half - 12 / 62 * wide / 3) / (wide / 2)  # radians at 6 in
    inside = 12 + 62 * after
    if inside > 22:
        inside = 22 + (half - 12 / 62 * wide / 3 - 10 / 62 * wide / 2) / (wide / 3) * 62
    call = answer_to(job(apron=APRON))["pour"]["reach"][0]["call"]
    assert call / FOOT == pytest.approx(inside, rel=1e-9) and call / FOOT < FORM / 2


def test_a_joint_stands_at_each_end_of_the_apron_and_even_ones_between() -> None:
    """On 49.2876 ft of form at most 5 ft apart: 12 ft are three panels of 4, 10 are two of 5, 27.2876 six of 4.5479."""
    answer = answer_to(job(apron=APRON))
    part = answer["joints"]
    wanted = [4, 8, 12, 17, 22, *(22 + (FORM - 22) * place / 6 for place in range(1, 7))]
    assert [one["outside"] / FOOT for one in part["rows"]] == pytest.approx(wanted, rel=1e-9)
    assert [one["inside"] / one["outside"] for one in part["rows"]] == pytest.approx([57 / 62] * 11, rel=1e-9)
    named = {one["number"]: one["apron"] for one in part["rows"] if one["apron"]}
    assert named == {3: "apron begins", 5: "apron ends"}
    told = " ".join(answer["pour"]["deep"]["joints"])
    assert "Joints 3 and 5 stand at the apron's ends:* isolation, 1/2\" wide" in told
    assert '*1-1/2" deep*' in told  # a quarter of 6 in
    assert (part["state"], part["text"]) == ("usual", "11 panels, up to 5' 0\"")
    assert part["ratio"] == pytest.approx(5 / (4 * 57 / 62))  # 1.36
    assert set(answer["pour"]["deep"]["joints"]) <= set(part["lines"])
    tops = [one for one in answer["grades"]["rows"] if one["kind"] == "joint"]
    end = next(one for one in answer["grades"]["rows"] if one["name"] == "B")["outside"]["level"]
    assert end and [one["outside"]["level"] / end * FORM for one in tops] == pytest.approx(wanted[:-1], rel=1e-9)


def test_fewer_panels_than_an_apron_makes_are_not_taken_silently() -> None:
    """Two panels of at most 12 ft, said of 20 ft of form with an apron in its middle: it's three."""
    short = {**WALK, "arc": {"radius": "62 ft", "chord": "19 ft 10-3/4 in"}}
    said = {**job(short, apron={**APRON, "from": "6 ft", "to": "14 ft"}), "joints": {"panels": 2}}
    part = answer_to(said)["joints"]
    assert part["count"] == 3 and not part["stop"]
    assert "You said 2 panels. With a joint at each end of the apron, it's 3." in part["lines"]


def test_an_end_beside_the_slabs_own_makes_a_panel_out_of_shape_which_is_told() -> None:
    """1 ft of form is left past the apron: a panel of 5 ft by 1 at R 62 and 0.92 at R 57."""
    said = job(apron={**APRON, "from": "12 ft", "to": f"{FORM - 1} ft"})
    answer = answer_to(said)
    count = answer["joints"]["count"]
    assert row(answer, "joints")["state"] == "near"
    assert row(answer, "joints")["more"] == f"panel {count}: {5 / (57 / 62):.2f} to 1, over 1.5"
    assert any(f"Panel {count} is" in line and "Move that end" in line for line in answer["joints"]["lines"])


def test_joints_at_the_aprons_ends_are_enough() -> None:
    ends = answer_to(job(apron={"from": "0", "to": f"{FORM:.3f} ft", "thickness": "6 in"}))
    assert len(ends["pour"]["deep"]["joints"]) == 1  # at A and B the slab ends itself: only how deep they are cut
    assert ends["joints"]["count"] == answer_to(WALK)["joints"]["count"]
    assert ends["pour"]["volume"] / YARD == pytest.approx(AREA / 2 / 27, rel=1e-6)


def test_the_base_card_digs_deeper_in_the_apron() -> None:
    cards = {card["kind"]: card for card in answer_to(job(apron=APRON))["form_cards"]}
    base, before = cards["form_base"], {card["kind"]: card for card in answer_to(WALK)["form_cards"]}["form_base"]
    assert base["mark"] != before["mark"]
    notes = " ".join(base["notes"])
    assert 'from 12\' 0" to 22\' 0" of outer form: dig 10" down' in notes and 'base is 6" down' in notes
    assert [one["shown"] for one in base["numbers"]] == ['8"', '4"'] and "not in the apron" in base["numbers"][0][
        "label"
    ]
    edges = " ".join(answer_to(job(apron=APRON))["edges"]["passes"])
    assert 'dig 2" deeper' in edges


def test_the_cut_at_a_stake_in_the_apron_is_deeper() -> None:
    """R1 stands an eighth along, at 6' 1-7/8" of form, Q1 at 12' 3-7/8": the second in the apron."""
    ground = [{"stake": stake, "edge": "outside", "level": "1 ft"} for stake in ("R1", "Q1")]
    grade = {**WALK["grade"], "ground": ground}

    def cuts(**said: Any) -> list[float]:
        rows = {one["name"]: one for one in answer_to({**job(**said), "grade": grade})["grades"]["rows"]}
        texts = [rows[stake]["outside"]["dig"] for stake in ("R1", "Q1")]
        return [read_length(text.removeprefix("cut "), "ft-in", "grade").metres / INCH for text in texts]

    assert [round(after - before) for before, after in zip(cuts(), cuts(apron=APRON), strict=True)] == [0, 2]


def test_thick_edges_count_only_where_they_are_deeper_than_the_apron() -> None:
    edges: dict[str, Any] = {"edge_width": "12 in", "edge_depth": "8 in"}
    a, b = (answer_to(job(apron=APRON, **more))["pour"]["volume"] for more in ({}, edges))
    wide = 2 * 59.5  # two bands of a foot, b (ro + ri): 119 ft² a radian
    rest, over = (THETA - 10 / 62) * wide * 4 / 12, 10 / 62 * wide * 2 / 12
    assert (b - a) / FOOT**3 == pytest.approx(rest + over, rel=1e-9)


@pytest.mark.parametrize(
    ("apron", "field", "key"),
    [
        ({"from": "12 ft", "to": "22 ft", "thickness": "4 in"}, "slab.apron.thickness", "job.apron_thin"),
        ({"from": "22 ft", "to": "22 ft", "thickness": "6 in"}, "slab.apron.to", "job.apron_ends"),
        ({"from": "22 ft", "to": "12 ft", "thickness": "6 in"}, "slab.apron.to", "job.apron_ends"),
        ({"from": "12 ft", "thickness": "6 in"}, "slab.apron.to", "job.apron_half"),
        ({"to": "12 ft", "thickness": "6 in"}, "slab.apron.from", "job.apron_half"),
        ({"from": "2 ft", "to": "12 ft"}, "slab.apron.thickness", "job.apron_half"),
        ({"from": "2 ft", "to": "12 ft", "thickness": "7 m"}, "slab.apron.thickness", "job.thick_slab"),
    ],
)
def test_an_apron_that_is_none_is_refused(apron: dict[str, Any], field: str, key: str) -> None:
    refusal = refused(apron=apron)
    assert (refusal.field, refusal.key) == (field, key)


@pytest.mark.parametrize(
    ("depths", "field", "key"),
    [
        ([{"at": "3 ft"}], "slab.depths[0].depth", "job.depth_half"),
        ([{"depth": "4 in"}], "slab.depths[0].at", "job.depth_half"),
        (reads(("3 ft", "4 in"), ("36 in", "5 in")), "slab.depths[1].at", "job.depth_twice"),
        (reads(("3 ft", "20 ft")), "slab.depths[0].depth", "job.depth_deep"),
    ],
)
def test_a_depth_that_is_none_is_refused(depths: list[Any], field: str, key: str) -> None:
    refusal = refused(depths=depths)
    assert (refusal.field, refusal.key) == (field, key)
    assert refused(depths=reads(("3", "4"))).field == "slab.depths[0].depth"  # a bare depth would be in feet


STOPS: dict[str, tuple[dict[str, Any], str]] = {
    "past B": (job(apron={**APRON, "to": "50 ft"}), "the apron runs past B"),
    "a wall": (job(apron={**APRON, "thickness": "4 ft"}, thickness="3 ft", poured="wall"), "a wall has no apron"),
    "a filled curve": (job(apron=APRON, fills=True), "no apron in a slab that fills"),
    "a depth past B": (job(depths=reads(("1 ft", "4 in"), ("60 ft", "4 in"))), "a depth is given past B"),
    "a wall's depths": (
        job(depths=reads(("1 ft", "4 ft")), thickness="3 ft", poured="wall"),
        "a wall takes no measured depths",
    ),
    "a filled curve's depths": (job(depths=reads(("1 ft", "4 in")), fills=True), "no measured depths in a slab"),
    "a depth on the step": (job(apron=APRON, depths=reads(("22 ft", "5 in"))), "right on the apron's end"),
    "no length": (job(apron={**APRON, "from": "49.2880 ft", "to": "49.2890 ft"}), "the apron has no length"),
}


@pytest.mark.parametrize("name", STOPS)
def test_what_cant_be_is_a_stop_with_its_reason(name: str) -> None:
    said, text = STOPS[name]
    answer = answer_to(said)
    one = row(answer)
    assert answer["pour"] is None and (one["state"], one["panel"]) == ("stop", "slab") and text in one["text"]
    assert one["more"] and answer["form_cards"] == [] and answer["edges"] is not None
    assert one["text"] in sheet_text(answer)


def test_the_end_as_it_is_shown_is_the_end() -> None:
    """49' 3-1/2" is what the outer form of 49.2876 ft is shown as: 1/16 in more."""
    made = answer_to(job(apron={**APRON, "to": "49' 3-1/2\""}))["pour"]
    more = (FORM - 12) / 62 * (62**2 - 57**2) / 2 / 6 / 27
    assert made["volume"] / YARD == pytest.approx(AREA / 3 / 27 + more, rel=1e-9)


SIX = [
    *reads(("0", "4-1/2 in"), ("10 ft", "4-1/4 in"), ("20 ft", "4-3/8 in")),
    *reads(("30 ft", "4-1/2 in"), ("40 ft", "4-1/4 in"), ("46 ft", "4-3/8 in")),
]


def test_an_order_by_measured_depths_by_hand() -> None:
    """Trapezoids: 10 ft each of 4.375, 4.3125, 4.4375 and 4.375 in, 6 ft of 4.3125, and 3.2876 ft of 4.375 as the last
    was read: 4.3674 in on average, where the drawing has 4. So 3.1880 yd³, with 8 % 3.4430: order 3-1/2, not 3-1/4."""
    mean = (10 * (4.375 + 4.3125 + 4.4375 + 4.375) + 6 * 4.3125 + (FORM - 46) * 4.375) / FORM
    assert round(mean, 4) == 4.3674
    answer = answer_to(job(depths=SIX))
    part = answer["pour"]
    assert part["volume"] / YARD == pytest.approx(AREA * mean / 12 / 27, rel=1e-9)
    assert (row(answer)["text"], row(answer)["more"]) == ("Order 3-1/2 yards", 'by 6 measured depths, average 4-3/8"')
    assert part["why"].startswith('236.5 ft² at 4-3/8", the average of 6 depths, is 3.19 yd³')
    assert part["deep"]["measured"][0] == "The drawing's thickness alone would order 3-1/4 yards."
    assert part["changes"][0]["order_shown"] == "3-1/4" and "low" not in part["changes"][0]["what"]
    assert part["measure"] == "" and part["deep"]["thin"] == [] and part["state"] == "usual"
    assert "lower than measured" in part["low_text"]
    shuffled = answer_to(job(depths=SIX[::-1]))["pour"]
    assert shuffled["volume"] == part["volume"]


def test_one_depth_is_not_enough() -> None:
    answer = answer_to(job(depths=reads(("10 ft", "5 in"))))
    assert answer["pour"]["volume"] == answer_to(WALK)["pour"]["volume"]
    assert row(answer)["more"] == "one depth measured: it takes two"
    assert answer["pour"]["deep"]["measured"] == [
        "One depth is measured. It takes 2, so the order goes by the drawing."
    ]


def test_a_thin_place_is_a_warning_with_what_a_standard_allows() -> None:
    """ACI 117-10, 4.5.4, as a concrete trade magazine quotes it: slabs on ground 3/8 in under on average, 3/4 in at one
    place."""
    some = answer_to(job(depths=reads(("2 ft", "4-1/2 in"), ("12 ft", "3-1/2 in"))))
    deep = some["pour"]["deep"]
    assert deep["thin"] == ['*Thin here: at 12\' 0" only 3-1/2" of 4".*'] and some["pour"]["state"] == "near"
    assert '3/8" thin on average, 3/4" at one place' in deep["limit"] and "past ACI" not in deep["limit"]
    for depths in ((("2 ft", "4-1/2 in"), ("12 ft", "3-3/16 in")), (("2 ft", "3-9/16 in"), ("12 ft", "3-5/8 in"))):
        assert "past ACI" in answer_to(job(depths=reads(*depths)))["pour"]["deep"]["limit"]
    alone = answer_to(job(depths=reads(("12 ft", "3-1/2 in"))))["pour"]["deep"]
    assert alone["thin"] == deep["thin"]
    undug = answer_to(job(apron=APRON, depths=reads(("2 ft", "4 in"), ("17 ft", "4-1/2 in"))))["pour"]["deep"]
    assert undug["thin"] == ['*Thin here: at 17\' 0" only 4-1/2" of 6".*']


def test_in_the_apron_its_own_depths_count() -> None:
    """By hand, at equal width: 12 ft before it at 4.5 in, its 10 ft at 6.25, and the rest as drawn, at 4."""
    answer = answer_to(job(apron=APRON, depths=reads(("6 ft", "4-1/2 in"), ("17 ft", "6-1/4 in"))))
    mean = (12 * 4.5 + 10 * 6.25 + (FORM - 22) * 4) / FORM
    assert answer["pour"]["volume"] / YARD == pytest.approx(AREA * mean / 12 / 27, rel=1e-9)
    told = " ".join(answer["pour"]["deep"]["measured"])
    assert 'Before the apron: 4-1/2"' in told and 'In the apron: 6-1/4"' in told
    assert 'After the apron nothing is measured: 4" as drawn' in told


def test_a_crown_stands_above_the_string() -> None:
    crowned = {**job(depths=SIX), "grade": {"slope": 2, "high": "B", "crown": "1 in"}}
    assert "crowned screed" in " ".join(answer_to(crowned)["pour"]["deep"]["measured"])
    assert "crowned" not in " ".join(answer_to(job(depths=SIX))["pour"]["deep"]["measured"])


def page_of(said: dict[str, Any], key: str = "pour") -> Any:
    return next(one for one in answer_to(said)["lined"]["pages"] if one["key"] == key)


def test_a_line_has_its_apron_by_stations() -> None:
    """From 30 to 42 ft of the creek's line, on its arc of R 31, half the width to each side: 12 ft by 6 at 2 in more,
    72 ft² and 12 ft³, 0.444 yd³."""
    apron = {**APRON, "from": "30 ft", "to": "42 ft"}
    plain, deep = (answer_to(job(CREEK, **said))["pour"]["volume"] for said in ({}, {"apron": apron}))
    assert (deep - plain) / FOOT**3 == pytest.approx(12, rel=1e-9)
    said = job(CREEK, apron=apron, depths=reads(("5", "4 in"), ("60", "3-1/2 in")))
    told = page_of(said)
    assert told["state"] == "near" and told["more"].startswith("by 2 measured depths")
    lines = " ".join(told["lines"])
    assert "along the line" in lines and 'Thin here: at 60\' 0" only 3-1/2" of 4"' in lines
    joints = page_of(said, "joints")
    # Right form at R 34: 10.968, 13.161 and 17.410 ft of arc at most 6 apart are 2, 3 and 3 panels, after 4 of 20 ft.
    rows = joints["tables"][0]["rows"]
    assert [cells[0] for cells in rows if "apron" in cells[3]] == ["6", "9"]
    assert rows[5][1:] == ["29' 0-3/8\"", "30' 11-5/8\"", "apron begins"]  # 20 + 10 x 28/31, 20 + 10 x 34/31
    assert "Joints 6 and 9 stand at the apron's ends" in " ".join(joints["lines"])
    on_paper = answer_to(said)["lined_sheet"]["parts"]
    assert any(
        "Joints 6, 9, at the apron's ends" in line
        for part in on_paper
        if part["key"] == "joints"
        for line in part["lines"]
    )
    assert 'dig 2" deeper' in " ".join(page_of(said, "edges")["lines"])


def test_a_line_refuses_what_an_arc_does() -> None:
    past = page_of(job(CREEK, apron={**APRON, "to": "100 ft"}))
    assert past["state"] == "stop" and "past the line's end" in past["short"] and past["stop"]
    kink = 20 + 36 * 70 * 3.141592653589793 / 180  # where its second straight turns off by 20 degrees
    said = job(KINKED, apron={**APRON, "from": "30 ft", "to": f"{kink + 0.3} ft"})
    assert "corner of a kink" in page_of(said)["short"]
    on = job(KINKED, apron={**APRON, "from": "30 ft", "to": f"{kink:.9f} ft"})
    assert page_of(on)["state"] == "usual"
    far = page_of(job(CREEK, depths=reads(("5", "4 in"), ("600", "4 in"))))
    assert far["state"] == "stop" and "line's end" in far["short"]


@pytest.mark.parametrize("language", ["english", "spanish", "british"])
def test_every_language_tells_it(language: str) -> None:
    speak(language)
    said = job(apron=APRON, depths=SIX[:1] + reads(("6 ft", "3 in"), ("17 ft", "5-1/2 in")))
    text = sheet_text(bowstring.answer(said))  # type: ignore[arg-type]
    assert all(number in text for number in ("12' 0\"", "22' 0\"", '1-1/2"', "11' 0-3/8\"", "4.5.4"))


def test_a_link_and_a_file_keep_them() -> None:
    said = job(apron=APRON, depths=SIX)
    read = bowstring.read_link(bowstring.write_link(said))  # type: ignore[arg-type]
    assert read["slab"] == said["slab"]
    assert bowstring.answer(read)["pour"] == bowstring.answer(said)["pour"]  # type: ignore[arg-type]


def test_the_last_cards_know_of_it() -> None:
    cards = {card["kind"]: card for card in answer_to(job(apron=APRON, depths=SIX[:3]))["form_cards"]}
    assert 'Apron: a joint at each end; joints in it 1-1/2" deep.' in cards["form_tops"]["notes"]
    thin = job(depths=reads(("2 ft", "4-1/2 in"), ("12 ft", "3-1/2 in")))
    pour = {card["kind"]: card for card in answer_to(thin)["form_cards"]}["form_pour"]
    assert pour["notes"][0] == 'Thin here: at 12\' 0" only 3-1/2" of 4".'
    for language in ("spanish", "british"):
        speak(language)
        told = bowstring.answering(thin, shown="m")["form_cards"]  # type: ignore[arg-type]
        assert [card["mark"] for card in told if card["kind"] == "form_pour"] == [pour["mark"]]
