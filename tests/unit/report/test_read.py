"""What is read at the checks: in, out, out again; what it then names; and that nothing else of a job follows it."""

from __future__ import annotations

from typing import Any

import pytest

import bowstring
from bowstring.analysis.mistakes import reading_of
from bowstring.demo import DEMO
from bowstring.geometry.plane import Point
from bowstring.report.mistakes import known_slips
from bowstring.report.work import Work
from bowstring.units.sizes import INCH
from helping import SAID, answer_to

PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"}


def read(*rows: tuple[str, object], job: Any = DEMO, **keys: Any) -> dict[str, Any]:
    told: dict[str, Any] = answer_to({**job, "read": [{"check": key, "value": value} for key, value in rows], **keys})
    return told["read"]  # type: ignore[no-any-return]


def verdict(part: dict[str, Any], check: str) -> dict[str, Any]:
    row: dict[str, Any] = next(row for row in part["rows"] if row["check"] == check)
    return row


def test_each_check_has_a_key_of_its_own() -> None:
    for method in ("halving", "ordinates", "tangent", "tapes", "produced", "angles"):
        keys = [row["key"] for row in answer_to({**PLAIN, "method": method})["checks"]]
        assert keys and len(set(keys)) == len(keys), method
    assert {"A-Q2", "R2-R3-M"} <= {row["key"] for row in answer_to(dict(DEMO))["checks"]}


def test_a_reading_is_held_against_what_is_printed() -> None:
    """29' 1-7/16", within 1/4": on the limit it is in, a mark past it out."""
    assert verdict(read(("A-Q2", "29' 1-11/16\"")), "A-Q2")["verdict"] == "in"
    row = verdict(read(("A-Q2", "29' 1-3/4\"")), "A-Q2")
    assert (row["verdict"], row["over_shown"], row["limit_shown"]) == ("again", '5/16"', '1/4"')
    assert row["text"] == '5/16" over. 1/4" allowed.'
    under = verdict(read(("A-Q2", "29' 1-1/8\"")), "A-Q2")
    assert under["text"].startswith('5/16" under') and under["over"] < 0
    assert verdict(read(("A-Q2", "29' 1-7/16\"")), "A-Q2")["text"].startswith("Dead on.")


def test_once_out_is_taped_again_before_anything_is_named() -> None:
    once = read(("Q1-B", "29' 1-7/8\""), ("A-Q2", "29' 1-1/2\""))
    assert not once["judged"] and once["suspects"] == [] and once["outs"] == 1 and once["count"] == 2
    assert once["text"].startswith("Tape it again")
    twice = read(("Q1-B", "29' 1-7/8\""), ("A-Q2", "29' 1-1/2\""), ("Q1-B", "29' 1-7/8\""))
    assert verdict(twice, "Q1-B")["verdict"] == "out" and twice["judged"]
    assert "Q1" in [one["mark"] for one in twice["suspects"]]


def test_what_fits_and_is_not_told_is_counted(monkeypatch: pytest.MonkeyPatch) -> None:
    rows: list[tuple[str, object]] = [("Q1-B", "29' 1-7/8\""), ("A-Q2", "29' 1-1/2\""), ("Q1-B", "29' 1-7/8\"")]
    monkeypatch.setattr("bowstring.report.suspects.MOST_SHOWN", 99)
    whole = read(*rows, title="all")
    count = len(whole["suspects"])
    assert count > 3 and "as well" not in whole["text"]
    monkeypatch.undo()
    told = read(*rows)
    assert [one["mark"] for one in told["suspects"]] == [one["mark"] for one in whole["suspects"][:3]]
    more = "1 more fits" if count == 4 else f"{count - 3} more fit"
    assert told["text"] == f"{whole['text']} {more} as well, not shown."


def test_readings_that_disagree_want_a_third() -> None:
    rows: list[tuple[str, object]] = [("Q1-B", "29' 1-7/8\""), ("Q1-B", "29' 1-1/2\"")]
    assert verdict(read(*rows), "Q1-B")["verdict"] == "differ"
    right = verdict(read(*rows, ("Q1-B", "29' 1-7/16\"")), "Q1-B")
    assert right["verdict"] == "in" and right["over"] == pytest.approx(0.0, abs=1e-9)
    assert verdict(read(*rows, ("Q1-B", "29' 1-7/8\"")), "Q1-B")["verdict"] == "out"


def test_two_checks_that_are_out_name_the_stake_and_its_step() -> None:
    rows = (("Q1-B", "29' 1-7/8\""), ("R1-R2-Q1", '4-3/8"'), ("R2-R3-M", '4"'), ("A-Q2", "29' 1-1/2\""))
    (one,) = read(*rows)["suspects"]
    step = next(step for step in answer_to(dict(DEMO))["steps"] if step["stake"] == "Q1")
    assert (one["kind"], one["mark"], one["step"]) == ("stake", "Q1", step["number"])
    assert one["text"] == 'Q1 is about 5/8" too far outside.'
    assert "square-off to Q1" in one["prove"] and one["far"] == pytest.approx(0.6 * INCH, abs=INCH / 16)


FLAT: dict[str, Any] = {**SAID, "arc": {"chord": "24 ft", "sagitta": "2' 6\""}, "levels": 3, "method": "halving"}


def all_but(*rows: tuple[str, object]) -> list[tuple[str, object]]:
    """Every check read right on, but for these."""
    told = {key for key, _value in rows}
    return [*((row["key"], row["shown"]) for row in answer_to(FLAT)["checks"] if row["key"] not in told), *rows]


def test_the_smallest_move_that_explains_every_reading_is_named_and_what_would_read_otherwise() -> None:
    """R3 off A-B 3/4 in over (2' 4-7/8") and 3/8 in allowed: it has to go out by 3/8 in at least, and up to 1/2 in its
    two strings stay in. Toward A it would have to go 1-7/8 in. Its short chords hardly change with it, its square-off
    does."""
    part = read(*all_but(("foot-R3", "2' 4-7/8\""), ("foot-R3", "2' 4-7/8\"")), job=FLAT)
    (one,) = part["suspects"]
    assert part["text"] == "One thing explains every reading:"
    assert one["mark"] == "R3" and 0.37 * INCH < one["far"] < 0.51 * INCH and "too far outside" in one["text"]
    assert (
        one["prove"] == 'Before you pull the stake, tape the square-off to R3: it should be 1-7/8". '
        "If it reads about 2-3/8\", that's the slip."
    )


def test_where_no_one_stake_explains_every_reading_it_says_so() -> None:
    part = read(*all_but(("foot-R1", "1' 2\""), ("foot-R4", "1' 2\"")), job=FLAT)
    assert (
        part["outs"] == 2
        and part["suspects"] == []
        and part["text"].startswith("No one stake explains these: tape them again")
    )


@pytest.mark.parametrize(("value", "told"), [
    ("19' 2-3/4\"", "A to Q2: 1 ft more. Was the tape held at 1 ft?"), ("17' 2-3/4\"", "A to Q2: 1 ft less."),
    ("18' 3-3/4\"", "A to Q2: 1 in more."),
])  # fmt: skip
def test_a_foot_at_a_check_is_the_tape_s_own_slip(value: str, told: str) -> None:
    part = read(*all_but(("A-Q2", value)), job=FLAT)
    assert told in verdict(part, "A-Q2")["text"] and part["suspects"] == []
    assert "1 ft" not in verdict(read(*all_but(("A-Q2", "19' 6\"")), job=FLAT), "A-Q2")["text"]


@pytest.mark.parametrize(("more", "told"), [(1.0, "1 m more."), (0.1, "100 mm more."), (-0.1, "100 mm less.")])
def test_a_meter_and_10_cm_at_a_check_are_too(more: float, told: str) -> None:
    job = {**SAID, "unit": "m", "arc": {"chord": "10", "sagitta": "0.6"}, "levels": 3, "method": "halving"}
    must = next(row["distance"] for row in answer_to(job)["checks"] if row["key"] == "A-Q2")
    part = read(("A-Q2", f"{must + more:.3f} m"), job=job)
    assert told in verdict(part, "A-Q2")["text"]


def test_nothing_is_named_while_readings_disagree() -> None:
    rows = all_but(("foot-Q1", "1' 11-3/8\""), ("A-Q2", "18' 3-3/4\""), ("foot-Q1", "1' 10-3/8\""))
    part = read(*rows, job=FLAT)
    assert verdict(part, "foot-Q1")["verdict"] == "differ" and part["outs"] == 2
    assert part["suspects"] == [] and not part["judged"] and part["text"].startswith("Settle readings that disagree")


@pytest.mark.parametrize(("way", "told"), [
    ((0.0, 0.02), "too far outside"), ((0.0, -0.02), "too far inside"), ((0.02, 0.0), "too far toward B"),
    ((-0.02, 0.0), "too far toward A"),
])  # fmt: skip
def test_a_suspect_is_told_with_the_way_that_it_stands_off(way: tuple[float, float], told: str) -> None:
    """M stands over the middle of A-B: out is straight up from it, and along the arc is along A-B."""
    from bowstring.report.suspects import told_way

    layout = Work(dict(DEMO)).layout
    assert told_way(layout, "M", Point(*way)) == told


def test_a_text_that_is_no_length_is_told_at_its_check_and_stops_nothing() -> None:
    part = read(("A-Q2", "fish"), ("Q1-B", ""), ("R2-R3-M", '4"'))
    row = verdict(part, "A-Q2")
    assert row["verdict"] == "unread" and row["over"] is None and "fish" in row["wrong"]
    assert [row["check"] for row in part["rows"]] == ["A-Q2", "R2-R3-M"] and part["count"] == 1


def test_a_bare_number_that_is_out_says_how_it_was_read() -> None:
    assert "29 was read as 29' 0\"" in verdict(read(("A-Q2", "29")), "A-Q2")["text"]


@pytest.mark.parametrize(("typed", "shown"), [("4", '4"'), ("3 7/8", '3-7/8"')])
def test_a_bare_number_is_read_the_way_the_number_to_read_is_shown_and_says_so(typed: str, shown: str) -> None:
    row = verdict(read(("R2-R3-M", typed)), "R2-R3-M")
    assert f"{typed} was read as {shown}." in row["text"] and row["verdict"] == "in"


def test_a_reading_that_is_shown_just_as_it_was_typed_needs_no_word() -> None:
    row = verdict(read(("R2-R3-M", "4-1/8")), "R2-R3-M")
    assert "was read as" not in row["text"] and row["verdict"] == "in"


def test_in_metres_a_bare_number_beside_millimetres_is_millimetres() -> None:
    job = {"unit": "m", "arc": {"chord": "10", "sagitta": "0.6"}, "side": "left", "drawn_to": "face", "levels": 3}
    rows = [row for row in answer_to(job)["checks"] if row["shown"].endswith(" mm")]
    key, shown = rows[0]["key"], rows[0]["shown"]
    part = answer_to({**job, "read": [{"check": key, "value": shown.removesuffix(" mm")}]})["read"]
    (row,) = part["rows"]
    assert row["verdict"] == "in" and row["over"] == pytest.approx(0.0, abs=1e-9) and f"read as {shown}" in row["text"]


def test_a_reading_of_a_check_that_is_no_more_is_told() -> None:
    part = read(("A-Q2", "29' 1-7/16\""), ("K1-K3-K2", '1"'), by="J. T.", date="2026-11-26")
    assert part["lost"] == ["K1-K3-K2"] and (part["by"], part["date"]) == ("J. T.", "2026-11-26")


def test_nothing_else_of_an_answer_follows_what_was_read() -> None:
    with_it: Any = {**DEMO, "read": [{"check": "A-Q2", "value": "30 ft"}], "by": "JT"}
    told, plain = dict(bowstring.answer(with_it, whole=False)), dict(bowstring.answer(DEMO, whole=False))
    assert told.pop("read") != plain.pop("read")
    assert told == plain


@pytest.mark.parametrize("method", ["halving", "ordinates", "tangent", "tapes", "centre", "produced"])
def test_a_planted_blunder_is_named(method: str) -> None:
    """Every blunder of the catalogue that a check sees: a crew that made it tapes every check, to a mark."""
    job: Any = {**PLAIN, "method": method, "centre": "reachable"}
    work = Work(job)
    checks = {row["key"]: row for row in answer_to(job)["checks"] if not row["blind"] or row["kind"] == "closing"}
    named = 0
    for mistake, text in known_slips(work.layout):
        at = {**work.layout.marks, **mistake.at}
        reads = {
            check.key: work.job.tape.show(reading_of(check, at)) for check in work.layout.checks if check.key in checks
        }
        part = read(*reads.items(), job=job)
        if part["outs"] < 2:
            continue  # no check sees it, or one that has to be taped again
        texts = [one["text"] for one in part["suspects"][:2]]
        assert text in texts or (mistake.kind == "burned_foot" and mistake.mark in {
            one["mark"] for one in part["suspects"]}), (mistake.kind, mistake.mark, texts)  # fmt: skip
        named += 1
    assert named >= 2


def test_readings_that_disagree_are_told_beside_each_other_and_what_was_left_out_is_named() -> None:
    metric = {**SAID, "unit": "m", "arc": {"chord": "12", "sagitta": "1"}, "levels": 3, "method": "halving"}
    key, must = next((row["key"], row["shown"]) for row in answer_to(metric)["checks"] if row["shown"].endswith(" mm"))
    differ = verdict(read((key, "1.000 m"), (key, must.removesuffix(" mm")), job=metric), key)["text"]
    assert differ == f"First reading 1.000 m, second {must}. Tape once more."
    settled = verdict(read((key, "1.000 m"), (key, must), (key, must), job=metric), key)
    assert settled["text"].endswith("allowed. Left out: 1.000 m.") and settled["counts"] == 2


def test_a_number_that_is_shown_as_it_was_typed_isn_t_told_again() -> None:
    metric = {**SAID, "unit": "m", "arc": {"chord": "12", "sagitta": "1"}, "levels": 3, "method": "halving"}
    assert "read as" not in verdict(read(("A-Q2", "6.250"), job=metric), "A-Q2")["text"]
    assert "6 was read as 6.000 m" in verdict(read(("A-Q2", "6"), job=metric), "A-Q2")["text"]


def test_a_stake_in_place_but_out_of_line_with_its_neighbors_is_told() -> None:
    """What is read over the string between its two neighbours is its bump: held to the fair curve's limit, too."""
    fine = {**DEMO, "fair": "1/16 in"}
    told = verdict(read(("R2-R3-M", '4-1/8"'), job=fine), "R2-R3-M")
    assert told["verdict"] == "in" and "out of line with its neighbors: the fair curve allows 1/16 in" in told["text"]
    assert "out of line" not in verdict(read(("R2-R3-M", '4-1/16"'), job=fine), "R2-R3-M")["text"]
    assert "out of line" not in verdict(read(("R2-R3-M", '4-1/8"')), "R2-R3-M")["text"]
    assert "out of line" not in verdict(read(("A-Q2", "29' 1-11/16\""), job=fine), "A-Q2")["text"]
