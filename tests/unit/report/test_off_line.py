"""A stake that was got off the arc and stays: what is set from it is told for it alone, where it really stands."""

from __future__ import annotations

from math import hypot
from typing import Any

import pytest

from bowstring import answering
from bowstring.faces.build import build_html
from bowstring.faces.paper_forms import forms_sides
from bowstring.sheet.text import sheet_text
from bowstring.units.tape import make_tape
from bowstring.words import say
from helping import answer_to

FOOT = 0.3048
GOT = [{"stake": "Q1", "sure": True, "measures": [{"from": "mid Q1", "to": "Q1", "distance": "1' 4-1/4\""}]}]
WALK: dict[str, Any] = {
    "bowstring": 1, "arc": {"radius": "62 ft", "chord": "48 ft"}, "side": "left", "drawn_to": "face", "levels": 3,
    "method": "halving", "width": "5 ft", "edge": "outside", "slab": {"thickness": "4 in"}, "got": GOT,
}  # fmt: skip
CLEAR = {**WALK, "offset": "2 ft", "toward": "outside"}
DUG = {**WALK, "offset": "6 in", "toward": "outside"}
LINE: dict[str, Any] = {
    **{key: value for key, value in CLEAR.items() if key not in ("arc", "side", "edge")},
    "line": [{"straight": "12 ft"}, {"arc": WALK["arc"], "turn": "left"}], "at": 2, "edge": "right",
}  # fmt: skip
TAPE = make_tape("ft-in", None)


def from_center(job: dict[str, Any]) -> float:
    """How far Q1 stands from the arc's center, metres, by its coordinates alone."""
    answer = answer_to(job)
    q1 = next(mark for mark in answer["marks"] if mark["name"] == "Q1")
    staked = answer["staked"]
    center = (staked["chord"] / 2, staked["sagitta"] - staked["radius"])
    a = next(mark for mark in answer["marks"] if mark["name"] == "A")
    return hypot(q1["x"] - a["x"] - center[0], q1["y"] - a["y"] - center[1])


def card(job: dict[str, Any], kind: str) -> Any:
    return next(one for one in answering(job)["form_cards"] if one["kind"] == kind)


def test_the_frame_is_taken_right() -> None:
    """Of a stake that nothing else was got at: it stands on the staked arc."""
    assert from_center({**CLEAR, "got": []}) == pytest.approx(64 * FOOT, abs=1e-9)
    assert from_center(CLEAR) > 64 * FOOT + 0.02


def test_both_edges_are_gauged_from_where_the_stake_stands() -> None:
    here = from_center(CLEAR)
    outer, inner = (TAPE.show(here - radius * FOOT) for radius in (62, 57))
    told = answer_to(CLEAR)["edges"]["off_line"]
    assert len(told) == 1 and f"the outer edge is {outer} inside, the inner edge {inner} inside" in told[0]
    assert outer != "2' 0\"" and any(outer in note and inner in note for note in card(CLEAR, "form_line")["notes"])
    for text in (
        build_html(answer_to(CLEAR), "edges"),
        forms_sides(answer_to(CLEAR), "May 31"),
        sheet_text(answer_to(CLEAR)),
    ):
        shown = text.replace("&#x27;", "'").replace("&quot;", '"').replace("\N{NO-BREAK SPACE}", " ").replace("*", "")
        assert outer in shown and inner in shown


@pytest.mark.parametrize("job", [DUG, WALK, {**WALK, "drawn_to": "centre", "edge": "centre"}])
def test_its_hub_stands_on_the_line_of_the_others_and_has_their_distance_on_it(job: dict[str, Any]) -> None:
    """So the line that is set again from the hubs is the arc, with no stake off it."""
    hubs = card(job, "form_hubs")
    usual = hubs["numbers"][0]["shown"]
    radius = answer_to(job)["staked"]["radius"] + float(usual.split("'")[0]) * FOOT
    off = TAPE.show(radius - from_center(job))
    assert off != usual and f"Q1's hub: {off} outside; write {usual} on it." in hubs["notes"]
    assert off in answer_to(job)["edges"]["off_line"][0]
    assert say("forming.note.got") not in card(job, "form_line")["notes"]


def test_where_boards_go_along_the_stakes_the_other_edge_is_gauged_from_the_board() -> None:
    job = {**WALK, "slab": {"thickness": "4 in", "overdig": 0}, "offset": "3/4 in", "toward": "outside"}
    assert answer_to(job)["edges"]["dug_out"] is False
    assert answer_to(job)["edges"]["off_line"] == [say("edges.got")]
    assert say("forming.note.got") in card(job, "form_line")["notes"]


def test_a_pad_s_curve_is_gauged_from_it_too() -> None:
    pad = {key: value for key, value in CLEAR.items() if key not in ("width", "edge")}
    pad["slab"] = {"thickness": "5 in", "fills": True, "sides": "10 ft"}
    off = TAPE.show(from_center(pad) - 62 * FOOT)
    assert f"the curved edge is {off} inside" in answer_to(pad)["edges"]["off_line"][0]
    assert any(off in note for note in card(pad, "form_line")["notes"])


def test_along_a_line_of_several_pieces_it_is_told_by_hands() -> None:
    """The arc turns left: its outside is the right hand, where the line is the slab's edge."""
    here = from_center(LINE)
    left, right = (TAPE.show(here - radius * FOOT) for radius in (57, 62))
    told = f"left edge {left} left, right edge {right} left"
    assert any(told in note for note in card(LINE, "form_line")["notes"])
    dug = {**LINE, "offset": "6 in"}
    hubs = card(dug, "form_hubs")
    usual = hubs["numbers"][0]["shown"]
    hub = answer_to(dug)["staked"]["radius"] + float(usual.split("'")[0]) * FOOT
    off = TAPE.show(hub - from_center(dug))
    assert off != usual and any(f"Q1's hub: {off} right" in note for note in hubs["notes"])
    assert off in sheet_text(answer_to(dug)).replace("\N{NO-BREAK SPACE}", " ")


def test_cards_hang_on_where_it_stands() -> None:
    other = [{**GOT[0], "measures": [{**GOT[0]["measures"][0], "distance": "1' 4-1/2\""}]}]
    for job in (CLEAR, DUG):
        kind = "form_line" if job is CLEAR else "form_hubs"
        assert card(job, kind)["mark"] != card({**job, "got": other}, kind)["mark"]


def test_of_many_a_card_says_where_they_are_listed() -> None:
    got = [*GOT, *({"stake": name, "sure": True, "measures": [{"from": f"mid {name}", "to": name, "distance": far}]}
                   for name, far in (("Q2", "1' 4-1/4\""), ("R1", "4-5/8\"")))]  # fmt: skip
    job = {**CLEAR, "got": got}
    assert len(answer_to(job)["edges"]["off_line"]) == 3
    assert say("forming.note.off_many") in card(job, "form_line")["notes"]
