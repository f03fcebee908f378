"""What was got, in place: the panel's rows, what comes of them, the fields that hold it, and the chord found."""

from __future__ import annotations

import html
import re
from typing import Any

import pytest

from bowstring import answering, read_link, write_link
from bowstring.page.fields import all_fields, field_of, fields_of_job, job_of_fields
from bowstring.page.got import got_panel
from bowstring.page.labels import label_of

ARC = {"arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face"}
FINE = {**ARC, "tolerance": "1/4 in", "levels": "3", "method": "halving"}
FAIR = {**FINE, "fair": "1/4 in"}


def card_of(fields: dict[str, str], stake: str) -> int:
    answer = answering(job_of_fields(fields))
    return next(card["number"] for card in answer["cards"] if stake in (card["stake"], *card["sets"]))


def panel(fields: dict[str, str], stake: str, **got: str) -> dict[str, Any]:
    card = card_of({name: text for name, text in fields.items() if not name.startswith("got-")}, stake)
    return got_panel(answering(job_of_fields(fields)), {"fields": fields, "got": got}, card)


def text_of(made: dict[str, Any]) -> str:
    without = re.sub(r"<table.*?</table>", " ", made["html"])
    return " ".join(html.unescape(re.sub(r"<[^>]+>", " ", without)).split())


def values_of(made: dict[str, Any]) -> dict[str, str]:
    rows = re.findall(r'<input [^>]*name="([^"]+)" value="([^"]*)"', made["html"])
    return {name: html.unescape(value) for name, value in rows}


def buttons(made: dict[str, Any]) -> list[str]:
    return re.findall(r'class="btn (?:first|plain)" data-do="([a-z-]+)"', made["html"])


def test_the_step_s_own_measures_stand_there_to_be_typed_over() -> None:
    made = panel(FINE, "Q1")
    assert values_of(made) == {"m0": "9' 10-1/4\"", "m1": "1' 4\"", "m2": "9' 11-3/8\"", "m3": "9' 11-3/8\""}
    assert buttons(made) == ["keep"] and "fill" not in made
    assert "What did you get at Q1?" in text_of(made)


def test_within_both_limits_it_stays_and_the_next_numbers_are_told() -> None:
    made = panel(FAIR, "Q1", m1="1' 4-1/4\"")
    assert "Q1 stays: it's within 1/4 in" in text_of(made) and "It is 1/4 in outside the arc" in text_of(made)
    assert buttons(made) == ["keep", "use-got"]
    table = html.unescape(re.sub(r"<[^>]+>", " ", re.findall(r"<table.*?</table>", made["html"])[0]))
    assert " ".join(table.split()) == (
        'Next was now R1 string\'s midpoint 4\' 11-5/8" 4\' 11-3/4" R1 square off 4" 3-7/8" '
        'R2 string\'s midpoint 4\' 11-5/8" 4\' 11-3/4" R2 square off 4" 3-7/8"'
    )


def test_a_bump_is_moved_first_and_kept_second() -> None:
    made = panel(FINE, "Q1", m1="1' 4-1/4\"")
    assert buttons(made) == ["use-got", "move"] and "Move Q1 inward 1/4 in" in text_of(made)
    assert "makes a bump" in text_of(made)
    assert "Move Q1 outward" in text_of(panel(FINE, "Q1", m1="1' 3-7/8\""))


def test_out_of_tolerance_nothing_is_used() -> None:
    made = panel(FINE, "Q1", m1="1' 4-5/8\"")
    assert "use-got" not in made["html"] and "fill" not in made
    assert buttons(made) == ["keep", "move"] and "Move Q1, or ask" in text_of(made)


def test_a_slip_is_named_first_and_tape_it_again_is_the_first_thing() -> None:
    fields = {**ARC, "tolerance": "1-1/2 in", "fair": "1-1/2 in", "levels": "3", "method": "ordinates"}
    made = panel(fields, "K2", m1="4' 1-1/8\"")
    assert "looks like a slip" in text_of(made) and "1 in more" in text_of(made)
    assert buttons(made) == ["use-got", "keep"] and "Tape it again" in text_of(made)


def test_without_a_tolerance_a_stake_far_off_is_no_place_to_go_on_from() -> None:
    """The offset typed for the distance along: 12 ft less."""
    made = panel({**ARC, "method": "ordinates"}, "K1", m0="5' 3-1/4\"")
    assert "Don't go on from this" in text_of(made) and "K1 is 4' 3\" inside the arc" in text_of(made)
    assert "can stay" not in text_of(made) and "fill" not in made and buttons(made) == ["got-sure", "keep"]


def test_without_a_tolerance_a_stake_off_by_more_than_usual_is_moved_first() -> None:
    made = panel({**ARC, "levels": "3", "method": "halving"}, "M", m1="5' 3-5/8\"")
    assert "M is off the arc" in text_of(made) and "Move M inward 5/8 in" in text_of(made)
    assert buttons(made) == ["use-got", "move"] and made["fill"]["got-0-stake"] == "M"
    near = panel({**ARC, "levels": "3", "method": "halving"}, "M", m1="5' 3-1/4\"")
    assert "M can stay" in text_of(near) and buttons(near) == ["keep", "use-got"]


def taped_twice(made: dict[str, Any]) -> str:
    (text,) = re.findall(r'data-do="got-sure" data-sure="([^"]*)"', made["html"])
    return html.unescape(text)


SMALL = {**ARC, "arc-chord": "30 ft", "arc-sagitta": "2' 2-3/8\"", "levels": "3", "method": "halving"}


@pytest.mark.parametrize(("reads", "off"), [('7-1/4"', "5/8 in"), ('7-3/8"', "3/4 in"), ('7-5/8"', "1 in")])
def test_what_looks_like_a_slip_and_was_taped_twice_is_where_the_stake_stands(reads: str, off: str) -> None:
    """6-5/8 in was called for at Q1: moved first, or kept, and then the later cards come back onto the arc."""
    once = panel(SMALL, "Q1", m1=reads)
    assert buttons(once) == ["got-sure", "keep"] and "fill" not in once and "I taped it twice" in text_of(once)
    twice = panel(SMALL, "Q1", m1=reads, sure=taped_twice(once))
    assert buttons(twice) == ["use-got", "move"] and f"Move Q1 inward {off}" in text_of(twice)
    assert "slip" not in text_of(twice) and "Tape it again" not in text_of(twice)
    now = {**SMALL, **twice["fill"]}
    answer, plain = answering(job_of_fields(now)), answering(job_of_fields(SMALL))
    assert not answer["stops"] and any(f"Q1 is {off} outside the arc" in text for text in answer["cautions"])
    later = [{step["stake"]: step["measures"] for step in one["steps"]}["R1"] for one in (answer, plain)]
    assert later[0] != later[1]
    again = panel(now, "Q1")  # opened again it is still sure; whoever moves it has got nothing there any more
    assert buttons(again) == ["use-got", "fill"] and f"Move Q1 inward {off}" in text_of(again)
    assert read_link(write_link(job_of_fields(now)))["got"] == job_of_fields(now)["got"]
    assert job_of_fields(fields_of_job(job_of_fields(now)))["got"] == job_of_fields(now)["got"]


def test_another_reading_than_the_one_taped_twice_is_asked_for_anew() -> None:
    sure = taped_twice(panel(SMALL, "Q1", m1='7-1/4"'))
    other = panel(SMALL, "Q1", m1='7-3/8"', sure=sure)
    assert buttons(other) == ["got-sure", "keep"] and "fill" not in other
    stands = {**SMALL, **panel(SMALL, "Q1", m1='7-1/4"', sure=sure)["fill"]}
    assert buttons(panel(stands, "Q1", m1='7-3/8"')) == ["got-sure", "keep"]


def test_a_stake_a_foot_off_that_was_taped_twice_is_set_again() -> None:
    """No move of a foot is told: the tape may have been held at its foot both times."""
    once = panel(SMALL, "Q1", m1="1' 6-5/8\"")
    twice = panel(SMALL, "Q1", m1="1' 6-5/8\"", sure=taped_twice(once))
    assert buttons(twice) == ["keep"] and "Set Q1 again" in text_of(twice) and "fill" not in twice
    assert "Tape it again" not in text_of(twice)


def test_readings_that_disagree_are_no_place_to_go_on_from() -> None:
    made = panel({**FINE, "tolerance": "1-1/2 in"}, "M", m1="5' 3-1/4\"", m2="19' 10\"", m3="19' 8\"")
    assert "disagree by" in text_of(made) and "fill" not in made and buttons(made) == ["keep"]


def test_readings_that_cant_meet_say_so_and_what_would_do() -> None:
    made = panel(FINE, "M", m2="9' 10\"", m3="9' 8\"")
    assert "don't meet at M" in text_of(made) and "fill" not in made and buttons(made) == ["keep"]


def test_what_is_no_length_is_marked_and_nothing_comes_of_it() -> None:
    made = panel(FINE, "Q1", m1="one foot four")
    assert 'aria-invalid="true"' in made["html"] and "fill" not in made and buttons(made) == ["keep", "focus"]
    assert 'data-for="got-m1"' in made["html"] and "one foot four" in text_of(made)


def test_beside_what_cant_be_read_the_other_reading_still_says_how_it_differs() -> None:
    made = panel(FINE, "Q1", m0="9 10 1 4", m1="1' 4-1/4\"")
    assert "1/4 in more" in text_of(made) and "Type it again" in text_of(made) and "fill" not in made
    assert values_of(made)["m1"] == "1' 4-1/4\"" and "use-got" not in made["html"]


def test_a_bare_number_over_inches_is_inches_and_over_millimetres_millimetres() -> None:
    inches = panel(FINE, "R1", m1="3 7/8")
    assert "1/8 in less" in text_of(inches) and inches["fill"]["got-0-measures-0-distance"] == '3-7/8"'
    metric = {**ARC, "unit": "m", "arc-chord": "11.58", "arc-sagitta": "1.6", "levels": "3", "method": "halving"}
    asked = values_of(panel(metric, "R1"))["m1"]
    assert asked.endswith(" mm")
    made = panel(metric, "R1", m1=str(int(asked.removesuffix(" mm")) + 5))
    assert "5 mm more" in text_of(made)
    assert made["fill"]["got-0-measures-0-distance"] == f"{int(asked.removesuffix(' mm')) + 5} mm"


@pytest.mark.parametrize("method", ["centre", "ordinates", "tangent", "tapes", "produced", "angles", "coordinates"])
def test_three_taps_for_every_method(method: str) -> None:
    """What is used lands in the fields, the job takes it, and the panel shows it again."""
    fields = {**ARC, "levels": "3", "method": method, **({"centre": "reachable"} if method == "centre" else {})}
    answer = answering(job_of_fields(fields))
    step = next(step for step in answer["steps"] if step["stake"] == "K2")
    last = [one for one in step["measures"] if "distance" in one][-1]
    longer = f"{last['distance'] + 0.006:.4f} m"
    number = len([one for one in step["measures"] if "distance" in one]) - 1
    made = panel(fields, "K2", **{f"m{number}": longer})
    now = {**fields, **made["fill"]}
    assert now["got-0-stake"] == "K2"
    (row,) = answering(job_of_fields(now))["got"]
    assert row["stake"] == "K2" and row["across"] is not None
    again = panel(now, "K2")
    assert values_of(again)[f"m{number}"] == longer and again["fill"]["got-0-stake"] == "K2"
    assert "Forget what I got here" in text_of(again)


def test_what_was_got_before_is_typed_over_in_its_own_row_and_can_be_forgotten() -> None:
    fields = {
        **FAIR,
        "got-0-stake": "M",
        "got-0-sagitta": "5' 3-1/8\"",
        "got-2-stake": "q1",
        "got-2-sagitta": "1' 4-1/8\"",
    }
    made = panel(fields, "Q1", m1="1' 4\"")
    assert values_of(panel(fields, "Q1"))["m1"] == "1' 4-1/8\""
    assert {"got-2-stake": "", "got-2-sagitta": ""}.items() <= _forget(made).items()
    used = panel(fields, "Q1", m1="1' 4-3/16\"")["fill"]
    assert (
        used["got-2-stake"] == "Q1"
        and used["got-2-sagitta"] == ""
        and used["got-2-measures-0-distance"] == "1' 4-3/16\""
    )
    job = job_of_fields({**fields, **used})
    assert [row["stake"] for row in job["got"]] == ["M", "Q1"] and "sagitta" not in job["got"][1]


def _forget(made: dict[str, Any]) -> dict[str, str]:
    import json

    (text,) = re.findall(r'class="btn plain forget" data-do="fill" data-fill="([^"]*)"', made["html"])
    forget: dict[str, str] = json.loads(html.unescape(text))
    return forget


def test_fields_and_job_both_ways_and_through_a_link() -> None:
    fields = {**FAIR, "got-0-stake": "Q1", "got-0-measures-0-from": "mid Q1", "got-0-measures-0-to": "Q1",
              "got-0-measures-0-distance": "1' 4-1/4\"", "got-0-measures-3-from": "A", "got-0-measures-3-to": "Q1",
              "got-0-measures-3-distance": "9' 11-3/8\"", "got-0-measures-4-from": "Q1"}  # fmt: skip
    job = job_of_fields(fields)
    assert job["got"] == [{"stake": "Q1", "measures": [
        {"from": "mid Q1", "to": "Q1", "distance": "1' 4-1/4\""}, {"from": "A", "to": "Q1", "distance": "9' 11-3/8\""},
    ]}]  # fmt: skip
    assert job_of_fields(fields_of_job(job)) == {**job, "unit": "ft-in"}
    assert read_link(write_link(job))["got"] == job["got"]
    assert field_of("got[0].measures[1].distance", fields) == "got-0-measures-3-distance"
    assert label_of("got-0-measures-3-distance", fields) == "Row 1: It read"
    assert len({field.id for field in all_fields(fields)}) == len(all_fields(fields))


def test_the_chord_found_is_typed_twice_and_one_tap_holds_something() -> None:
    once = got_panel(answering(job_of_fields(FINE)), {"fields": FINE, "got": {"f0": "38' 1-1/4\""}}, card_of(FINE, "A"))
    assert values_of(once) == {"f0": "38' 1-1/4\"", "f1": ""} and "second time" in text_of(once)
    assert buttons(once) == ["keep", "focus"] and 'data-for="got-f1"' in once["html"]
    typed = {"f0": "38' 1-1/4\"", "f1": "38' 1-1/4\""}
    both = got_panel(answering(job_of_fields(FINE)), {"fields": FINE, "got": typed}, card_of(FINE, "A"))
    holds = _choices(both)
    filled = re.findall(r'<button [^>]*class="btn first"[^>]*>(.*?)</button>', both["html"])
    assert len(filled) == 1 and "mid-ordinate" in filled[0]  # what was found is held by one of these
    assert buttons(both) == ["fill", "keep"] and 'class="btn plain" data-do="keep"' in both["html"]
    assert [fields["found-hold"] for fields in holds] == ["sagitta", "radius", "directions"]
    taken = answering(job_of_fields({**FINE, **{name: text for name, text in holds[1].items() if text}}))
    assert taken["held"] is True and taken["arc"]["chord"] == pytest.approx(38 * 0.3048 + 1.25 * 0.0254)
    assert not taken["stops"]


def test_the_chord_found_is_not_told_as_read_before_it_is() -> None:
    def made(**got: str) -> dict[str, Any]:
        return got_panel(answering(job_of_fields(FINE)), {"fields": FINE, "got": got}, card_of(FINE, "A"))

    assert values_of(made()) == {"f0": "", "f1": ""} and buttons(made()) == ["keep"]
    assert "Type what both tapings read." in text_of(made()) and "called for 38' 0\"" in text_of(made())
    assert """called for <span class="n">38&#x27; 0&quot;</span>""" in str(made()["html"])  # never broken
    unread = made(f0="38 1", f1="38' 1\"")
    assert buttons(unread) == ["keep", "focus"] and 'data-for="got-f0"' in unread["html"]
    assert "38' 1\"" in text_of(unread) and "1 in more" in text_of(unread)
    assert 'data-for="got-f0"' in made(f1="38' 1\"")["html"]
    assert "Nothing changes" in text_of(made(f0="38'", f1="38'"))


def _choices(made: dict[str, Any]) -> list[dict[str, str]]:
    import json

    return [
        json.loads(html.unescape(text))
        for text in re.findall(r'class="btn(?: first)?" data-do="fill" data-fill="([^"]*)"', made["html"])
    ]


def test_a_chord_a_foot_long_is_a_slip_first() -> None:
    typed = {"f0": "39'", "f1": "39'"}
    made = got_panel(answering(job_of_fields(FINE)), {"fields": FINE, "got": typed}, card_of(FINE, "A"))
    (sure,) = _choices(made)
    assert sure["found-sure"] == "yes" and "I taped it again" in text_of(made) and "fill" not in made


def test_two_readings_of_the_chord_that_are_apart_are_taped_again() -> None:
    typed = {"f0": "38' 1\"", "f1": "38' 2\""}
    made = got_panel(answering(job_of_fields(FINE)), {"fields": FINE, "got": typed}, card_of(FINE, "A"))
    assert "measure it again" in text_of(made) and not _choices(made)


@pytest.mark.parametrize(("stake", "got"), [
    ("Q1", {}), ("Q1", {"m1": "1' 4-1/4\""}), ("Q1", {"m1": "1' 4-5/8\""}), ("M", {"m1": "5' 3-1/8\""}),
    ("M", {"m2": "19' 8-3/4\""}),
])  # fmt: skip
def test_sixty_words_at_most_beside_the_table(stake: str, got: dict[str, str]) -> None:
    for fields in (FINE, FAIR):
        words = text_of(panel(fields, stake, **got)).split()
        assert len(words) <= 60, (len(words), " ".join(words))


def test_no_style_script_or_unescaped_text() -> None:
    made = panel(FINE, "Q1", m1="<b>1'</b>\"")
    assert "style=" not in made["html"] and "<script" not in made["html"] and "<b>1" not in made["html"]


def test_on_a_slope_lengths_are_level() -> None:
    assert "taped level" in text_of(panel({**FINE, "fall-along": "4"}, "Q1"))
    assert "taped level" not in text_of(panel(FINE, "Q1"))


def test_the_panel_of_a_stake_that_stops_the_job_can_be_opened_to_settle_it() -> None:
    """A stake that stands too far off: the stop's button leads to its own card, and its panel comes up."""
    from bowstring.faces.stakes import stakes_html
    from bowstring.page.staking import staking

    fields = {**ARC, "tolerance": "1/4 in", "levels": "3", "method": "ordinates", "got-0-stake": "K2",
              "got-0-measures-0-from": "foot K2", "got-0-measures-0-to": "K2",
              "got-0-measures-0-distance": "4' 0-5/8\""}  # fmt: skip
    answer = answering(job_of_fields(fields))
    number = card_of({name: text for name, text in fields.items() if not name.startswith("got-")}, "K2")
    assert answer["stops"] and f'data-do="got" data-step="{number}"' in stakes_html(answer, number)
    made = staking(answer, {"fields": fields, "panel": "got", "card": number, "got": {}, "address": ""}, lambda: "")
    assert "What did you get at K2?" in text_of(made) and "Forget what I got here" in text_of(made)
    healed = {**fields, **_forget(made)}
    assert not answering(job_of_fields(healed))["stops"]


@pytest.mark.parametrize("fields", [FINE, SMALL])
@pytest.mark.parametrize("which", [("m2",), ("m3",), ("m2", "m3"), ("m0",)])
@pytest.mark.parametrize("more", [True, False])
def test_a_foot_too_much_or_too_little_is_named_and_no_place_derived(
    fields: dict[str, str], which: tuple[str, ...], more: bool
) -> None:
    """At one short chord, or at both, which then don't meet or are nearly in line."""
    asked = values_of(panel(fields, "Q1"))
    feet = {name: int(asked[name].partition("'")[0]) + (1 if more else -1) for name in which}
    made = panel(fields, "Q1", **{name: f"{feet[name]}'{asked[name].partition(chr(39))[2]}" for name in which})
    told = text_of(made).partition("!")[2]
    assert f"1 ft {'more' if more else 'less'}" in told and "looks like a slip" in told
    assert not re.search(r"Q1 (?:is|measured)|inside|outside|past its place|line", told) and "move" not in buttons(made)
    assert "fill" not in made
