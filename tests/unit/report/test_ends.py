"""A slab that meets old concrete at an end of its line: no form, no dig past it, a strip, and a question of its top."""

from __future__ import annotations

import re
from html import unescape
from typing import Any

import pytest

from bowstring import BadJob, answer, answering, read_link, write_link
from bowstring.drawings.lined import lined_svg
from bowstring.drawings.pass_section import pass_svg
from bowstring.drawings.slab import slab_svg
from bowstring.faces.paper_forms import forms_sides
from bowstring.page.fields import fields_of_job, job_of_fields
from bowstring.sheet.text import sheet_text
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import CREEK, KINKED, METRIC_LINE
from radius_wall import WALL
from slab_jobs import DEEP, METRIC, WALK

Job = dict[str, Any]
ENDS = (("A",), ("B",), ("A", "B"))
BASED: Job = {**WALK, "slab": {**WALK["slab"], "base": "4 in"}}
TAPERED: Job = {**BASED, "slab": {**BASED["slab"], "end_width": "4 ft"}}
LINE: Job = {**CREEK, "slab": {"thickness": "4 in", "base": "4 in"}}
JOBS = {"walk": BASED, "tapered": TAPERED, "metric": METRIC, "deep": DEEP, "wall": WALL, "line": LINE, "kinked": KINKED,
        "metric line": METRIC_LINE}  # fmt: skip
CUBIC_YARD = 27


def meeting(job: Job, *ends: str, what: str = "against", **more: Any) -> Job:
    """The job, whose slab meets old concrete at some ends."""
    return {**job, "slab": {**job["slab"], **{f"at_{end}": what for end in ends}, **more}}


def page(told: Any, key: str) -> Any:
    return next(one for one in told["lined"]["pages"] if one["key"] == key)


def cards(told: Any) -> dict[str, Any]:
    return {card["kind"].removeprefix("form_"): card for card in told["form_cards"]}


@pytest.mark.parametrize("name", JOBS)
def test_with_both_ends_formed_the_answer_is_what_it_is_without_a_word_of_them(name: str) -> None:
    """But for what was typed, and how the job is read."""
    plain, said = dict(answer(JOBS[name])), dict(answer(meeting(JOBS[name], "A", "B", what="formed")))
    assert {key for key in plain if plain[key] != said[key]} <= {"readings"}


@pytest.mark.parametrize("name", JOBS)
@pytest.mark.parametrize("ends", ENDS)
def test_no_sentence_forms_or_digs_past_an_end_that_meets_old_concrete(name: str, ends: tuple[str, ...]) -> None:
    told = answer_to(meeting(JOBS[name], *ends))
    of_line, whole = told["lined"] is not None, str([told["edges"], told["boards"], told["lined"], told["form_cards"]])
    called = {"A": "the start", "B": "the end"} if of_line else {"A": "A", "B": "B"}
    both = "both ends" if of_line else "A and B"
    named = both if len(ends) > 1 else called[ends[0]]
    assert f"At {named}, against the old concrete: no end form, no dig past it" in whole
    assert f"At {named} stop at the old concrete; don't undercut it." in whole
    gone = "|".join({both, *(called[end] for end in ends)})
    assert not re.search(rf"(?i)past ({gone})(, too| too\.| and fix)", whole)
    assert not re.search(rf"(?i)end forms? at ({gone})[,:']", whole)


@pytest.mark.parametrize(("ends", "fewer"), [(("A",), 3), (("B",), 3), (("A", "B"), 6)])
def test_an_arcs_end_form_its_board_and_its_stakes_are_left_out(ends: tuple[str, ...], fewer: int) -> None:
    """5 ft wide: a form there stands on three stakes, at most 4 ft apart. Of 10 ft of end forms a 12-ft board is cut,
    of 5 ft an 8-ft one. The bent boards' list stays: they lap, and the stakes there are counted."""
    before, told = answer_to(BASED)["boards"], answer_to(meeting(BASED, *ends))["boards"]
    assert told["stakes"] == before["stakes"] - fewer
    assert told["edges"] == before["edges"]
    rows = [row for row in told["cut"] if row["name"].startswith("end form")]
    bought = {(row["length_shown"], row["board"]): row["count"] for row in told["buy"]}
    if len(ends) == 2:
        assert rows == [] and not any(board == "2x4" for _length, board in bought)
        assert not any("nd form" in text for text in told["stakes_how"])
    else:
        other = "B" if ends == ("A",) else "A"
        assert [(row["name"], row["needs"], row["boards"]) for row in rows] == [(f"end form at {other}", "5' 0\"", "8")]
        assert bought["8 ft", "2x4"] == 1
        assert f"End form at {other}: every 2' 6\", 2 even spaces, ends included." in told["stakes_how"]
    lap = [text for text in told["ends"] if "lap the boards along the old concrete's edge" in text]
    assert len(lap) == 1 and ("Carry the board" in " ".join(told["ends"])) is (len(ends) == 1)
    assert told["bending"][0].endswith("along the old concrete's edge, and screw it.") is ("A" in ends)


def test_boards_that_stop_at_the_ends_are_staked_there() -> None:
    told = answer_to({**meeting(BASED, "A"), "board": {"overrun": "0"}})["boards"]
    assert "At A stake the boards' ends, tight to the old concrete." in told["ends"]
    assert "Your boards stop at B. Carry them 2' 0\" past, along the straight, to fix that." in told["ends"]
    assert told["bending"][0] == "Clamp one end to the stake at A and screw it."


@pytest.mark.parametrize(("ends", "past"), [((), 2), (("A",), 1), (("B",), 1), (("A", "B"), 0)])
def test_the_base_is_dug_past_the_formed_ends_alone(ends: tuple[str, ...], past: int) -> None:
    """7 ft wide with a foot at both edges, a foot on past each formed end, 4 in deep: 7/81 yd³ each."""
    lines = [" ".join(answer_to(one)["pour"]["lines"]) for one in (BASED, meeting(BASED, *ends))]
    volumes = [float(re.search(r"([\d.]+) yd³ over the whole dig", text)[1]) for text in lines]  # type: ignore[index]
    assert volumes[0] - volumes[1] == pytest.approx((2 - past) * 7 / 3 / CUBIC_YARD, abs=0.011)


@pytest.mark.parametrize(("job", "at_a", "at_b"), [(BASED, "5' 0\"", "5' 0\""), (TAPERED, "5' 0\"", "4' 0\"")])
def test_an_isolation_joint_stands_at_each_such_end_over_its_own_width(job: Job, at_a: str, at_b: str) -> None:
    """Counted apart: the panels' own joints are what they were. 1/2 in, all of 4 in deep."""
    before, told = answer_to(job), answer_to(meeting(job, "A", "B"))
    joints = told["joints"]
    assert (joints["count"], joints["rows"]) == (before["joints"]["count"], before["joints"]["rows"])
    for end, wide in (("A", at_a), ("B", at_b)):
        assert (
            f'*1/2" isolation joint at {end}*, against the old concrete: {wide} long, 4" deep, the full depth.'
            in joints["lines"]
        )
    assert joints["lines"].count("Dowels there or none: as the drawing says.") == 1
    assert joints["lines"][-1] == before["joints"]["lines"][-1]  # of all else
    pieces = f"2 of {at_a}" if at_a == at_b else f"{at_a} and {at_b}"
    assert told["boards"]["cut_note"].endswith(f'Buy isolation strip, too: {pieces}, 1/2" thick, 4" deep.')
    assert told["edges"]["strip_shown"] == '1/2"; 4"' and before["edges"]["strip_shown"] == ""


def test_an_apron_or_a_thick_edge_that_ends_there_deepens_the_strip() -> None:
    apron = {"from": 0, "to": "10 ft", "thickness": "6 in"}
    at_a, at_b = (answer_to(meeting(BASED, end, apron=apron)) for end in ("A", "B"))
    assert at_a["edges"]["strip_shown"] == '1/2"; 6"' and at_b["edges"]["strip_shown"] == '1/2"; 4"'
    both = answer_to(meeting(BASED, "A", "B", apron=apron))
    assert both["edges"]["strip_shown"] == '1/2"'  # two depths
    assert "as deep as the concrete" in both["boards"]["cut_note"]
    thick = answer_to(meeting(BASED, "A", edge_width="12 in", edge_depth="10 in"))
    assert thick["edges"]["strip_shown"] == '1/2"'
    assert any(text.endswith("5' 0\" long, as deep as the concrete.") for text in thick["joints"]["lines"])


def test_the_grade_page_tells_the_top_there_on_both_edges_and_asks_for_what_stands() -> None:
    """R 59.5 ft along the middle by twice the arc sine of 24 over 62 is 47.3 ft: 2 % of it 11.35 in, up to B. Across
    1.5 % of 5 ft is 0.9 in, the inner form lower."""
    told = answer_to(meeting(BASED, "A", "B"))["grades"]
    stakes = [row for row in told["rows"] if row["kind"] == "stake"]
    for end, row in (("A", stakes[0]), ("B", stakes[-1])):
        first, last = row["outside"]["shown"], row["inside"]["shown"]
        assert (first, last) == {"A": ("0", '7/8" low'), "B": ('11-3/8" high', '10-1/2" high')}[end]
        assert (
            f"At {end} the outer top comes to {first}, the inner to {last}. Shoot the old concrete there. A lip trips."
            in told["asks"]
        )
    assert (told["state"], told["stop"]) == ("usual", None)  # a question, and never a stop
    assert answer_to(BASED)["grades"]["asks"] == []


def test_a_top_that_is_given_there_meets() -> None:
    grade = {"from": "100.00 ft", "to": "100.90 ft", "low": "inside"}
    told = answer_to({**meeting(BASED, "A", "B"), "grade": grade})["grades"]["asks"]
    assert [text.partition(":")[0] for text in told] == [f"At {end} the outer top is the one you gave" for end in "AB"]
    assert "it meets if you shot it there. Shoot the inner, too: it comes to 99.9" in told[0]
    slope = answer_to({**meeting(BASED, "B"), "grade": {"from": "100.00 ft", "slope": 2, "high": "B", "low": "inside"}})
    assert "At B the outer top comes to 100.95 ft" in " ".join(slope["grades"]["asks"])


def test_the_cards_say_it_and_their_marks_are_others() -> None:
    before, told = cards(answer_to(BASED)), cards(answer_to(meeting(BASED, "A")))
    notes = {what: " ".join(card["notes"]) for what, card in told.items()}
    assert "Past B, too: 1' 0\". At A stop at the old concrete; don't undercut it." in notes["dig"]
    assert told["boards"]["text"].startswith("Clamp one end at A.")
    assert told["boards"]["numbers"][0]["label"] == "board past B; at A lap or cut it"
    assert "At A shoot the old concrete first: tops meet it." in notes["tops"]
    assert 'Isolation strip at A: 1/2", full depth.' in notes["pour"]
    changed = {what for what in told if told[what]["mark"] != before[what]["mark"]}
    assert changed == {"dig", "boards", "pour"}
    none = cards(answer_to(meeting(BASED, "A", "B")))["boards"]
    assert "At A and B lap along the old concrete, or cut there." in none["notes"]
    assert none["numbers"] == [] and none["lines"] == []


def test_no_stake_is_told_past_such_an_end_where_the_board_runs_on() -> None:
    run = answer_to(meeting(BASED, "A"))["on_line"]["overrun"]
    assert run is not None and [stake["name"] for stake in run["stakes"]] == ["B"]
    assert "run the board on 2' 0\" past B, on the tangent." in run["text"]
    assert "At A lap it along the old concrete's edge, or cut it there and brace its end." in run["text"]
    assert answer_to(meeting(BASED, "A", "B"))["on_line"]["overrun"] is None


def test_a_walls_end_forms_and_its_dig() -> None:
    """8 in thick with a foot past each side of a 2-ft footing: 4 ft wide, a foot less of it past A: 4 ft²."""
    before, told = answer_to(WALL)["edges"], answer_to(meeting(WALL, "A"))["edges"]
    assert any(text.startswith("End form at B only: ") for text in told["faces"])
    assert any(text.startswith("End form at B only: ") for text in told["faces_sheet"])
    both = answer_to(meeting(WALL, "A", "B"))
    assert "No end forms: both ends meet the old concrete." in both["edges"]["faces"]
    assert told["strip_shown"] == "" and "The joint: as the drawing says." in " ".join(told["ends"]["told"])
    assert any("the joint and its dowels as the drawing says" in text for text in both["joints"]["lines"])
    assert told["ends"]["dug"].startswith("Dig ") and "too. At A stop at the old concrete" in told["ends"]["dug"]
    assert before["passes"] != told["passes"]
    asked = " ".join(answer_to(meeting(WALL, "A"))["grades"]["asks"])
    assert (
        "At A the outer top comes to 0, the inner to 0. Shoot the old concrete there." in asked and "lip" not in asked
    )
    footing = told["footing"]
    if footing is not None:
        assert [row["name"] for row in footing["cut"] if "end form" in row["name"]] == ["end form at B"]


@pytest.mark.parametrize(("ends", "past"), [(("A",), 1), (("B",), 1), (("A", "B"), 0)])
def test_a_line_has_it_at_its_start_and_its_end(ends: tuple[str, ...], past: int) -> None:
    """6 ft wide: a form on three stakes; 8 ft of dig, a foot on past each formed end, 4 in deep."""
    before, told = answer_to(LINE), answer_to(meeting(LINE, *ends))
    assert told["boards"]["stakes"] == before["boards"]["stakes"] - 3 * len(ends)
    cut = page(told, "boards")["tables"][0]["rows"]
    other = {("A",): "the end", ("B",): "the start"}.get(ends)
    assert [row[0] for row in cut if "end form" in row[0]] == ([f"end form at {other}"] if other else [])
    lines = [" ".join(page(one, "pour")["lines"]) for one in (before, told)]
    volumes = [float(re.search(r"([\d.]+) yd³ over the whole dig", text)[1]) for text in lines]  # type: ignore[index]
    assert volumes[0] - volumes[1] == pytest.approx((2 - past) * 8 / 3 / CUBIC_YARD, abs=0.011)
    joints = " ".join(page(told, "joints")["lines"])
    for end in ends:
        called = "the start" if end == "A" else "the end"
        assert f'*1/2" isolation joint at {called}*, against the old concrete: 6\' 0" long, 4" deep' in joints
        assert f"At {called} the left top comes to " in page(told, "grades")["cautions"][ends.index(end)]
    assert told["joints"] == before["joints"]
    strip = told["lined_sheet"]["strip_signs"]
    assert [(row["what"].startswith("Strip at "), row["must"]) for row in strip] == [(True, '1/2"; 4"')]
    assert before["lined_sheet"]["strip_signs"] == []
    notes = {what: " ".join(card["notes"]) for what, card in cards(told).items()}
    assert all("old concrete" in notes[what] for what in ("dig", "tops"))
    told_at = str(cards(told)["boards"])
    assert ("lap along the old concrete" if len(ends) > 1 else "lap or cut it") in told_at
    assert "Isolation strip at " in notes["pour"]


def test_a_lines_own_ends_are_those_of_the_staked_arc_only_where_it_begins_there() -> None:
    """The arc of the creek walk stands between two straights: past its own ends no old concrete stands."""
    assert answer_to(meeting(LINE, "A", "B"))["on_line"] == answer_to(LINE)["on_line"]
    first = {**LINE, "line": LINE["line"][1:]}
    run = answer_to(meeting(first, "A"))["on_line"]["overrun"]
    assert run is not None and [stake["name"] for stake in run["stakes"]] == ["B"]


def test_what_has_no_end_refuses_one() -> None:
    filled = {**BASED, "slab": {"fills": True, "thickness": "4 in"}}
    for end in "AB":
        with pytest.raises(BadJob) as refusal:
            answer(meeting(filled, end))  # type: ignore[arg-type]
        assert (refusal.value.field, refusal.value.key) == (f"slab.at_{end}", "ends.no_fill")
    arc = {"arc": {"radius": "26 ft", "central_angle": "180"}, "turn": "left"}
    pieces = [arc, {"straight": "16 ft"}, arc, {"straight": "16 ft"}]
    ring = {**LINE, "line": pieces, "edge": "left", "drawn_to": "face", "grade": {"slope": 0, "low": "left"}}
    assert answer_to(ring)["lined"] is not None
    for what in ("against", "formed"):
        with pytest.raises(BadJob) as refusal:
            answer(meeting(ring, "B", what=what))  # type: ignore[arg-type]
        assert (refusal.value.field, refusal.value.key) == ("slab.at_B", "ends.no_closed")
    with pytest.raises(BadJob):
        answer(meeting(BASED, "A", what="open"))  # type: ignore[arg-type]


@pytest.mark.parametrize("job", [BASED, LINE])
def test_links_and_the_form_carry_it_and_a_slab_that_fills_its_curve_drops_it(job: Job) -> None:
    said = meeting(job, "A")
    assert read_link(write_link(said))["slab"]["at_A"] == "against"  # type: ignore[arg-type]
    typed = fields_of_job(said)  # type: ignore[arg-type]
    assert typed["slab-at_A"] == "against" and "slab-at_B" not in typed
    assert job_of_fields(typed)["slab"]["at_A"] == "against"
    assert "at_A" not in job_of_fields({**typed, "slab-fills": "yes"})["slab"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["walk", "tapered", "wall", "line"])
def test_the_form_sheet_and_the_long_sheet_say_it_in_every_language(language: str, name: str) -> None:
    speak(language)
    try:
        told = answering(meeting(JOBS[name], "A", "B"))  # type: ignore[arg-type]
        paper, sheet = unescape(forms_sides(told, "2026-05-31")), sheet_text(told)
    finally:
        speak("english")
    old = "concreto viejo" if language == "spanish" else "old concrete"
    assert old in paper and old in sheet
    if name != "wall":
        strip = "Tira en" if language == "spanish" else "Strip at"
        assert len(re.findall(strip, paper)) == 1


def test_the_plan_shows_it_hatched_and_named() -> None:
    before, told = answer_to(BASED), answer_to(meeting(BASED, "B"))
    for shown in ("", "edges", "joints", "grades", "pour", "sheet"):
        assert slab_svg(told, shown, id="x").count("bd-soft") == slab_svg(before, shown, id="x").count("bd-soft") + 1
    assert slab_svg(told, id="x").count(">hatched: old concrete<") == 1
    line, plain = (lined_svg(answer_to(one), id="x") for one in (meeting(LINE, "A", "B"), LINE))
    assert line.count("bd-soft") == plain.count("bd-soft") + 2
    assert line.count(">hatched: old concrete<") == 1 and "old concrete" not in plain


def test_the_cards_cut_across_the_slab_shows_no_end() -> None:
    """Its strip is at an end, not across from the curve, where a pad's building is."""
    before, told = answer_to(BASED), answer_to(meeting(BASED, "A", "B"))
    for what in ("dig", "base", "line", "stakes", "pour"):
        one, other = (pass_svg(whole, cards(whole)[what], id="x") for whole in (before, told))
        assert one == other, what
