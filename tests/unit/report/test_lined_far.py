"""What proves a line of several pieces as a whole: by walking its pieces with complex numbers, turned at a join."""

from __future__ import annotations

from cmath import exp
from math import sin
from typing import Any

import pytest

import bowstring
from bowstring.faces.checks import checks_html
from bowstring.page.pieces import staked_at
from bowstring.report.lined.far_checks import ends_of, judged_of, miss_seen, pasts
from bowstring.report.lined.plan import LinePlan
from bowstring.report.work import Work
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import about
from line_jobs import SHAPES, arc, straight
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC

FOOT = 0.3048
JOBS: dict[str, dict[str, Any]] = {
    "creek": CREEK, "five": FIVE, "kinked": KINKED, "metric": METRIC_LINE,
    **{name: SHAPES[name] for name in ("bulb", "serpentine", "tall", "many", "kinks")},
    "five off": {**FIVE, "offset": "3 ft", "toward": "outside"},
    "kinked off": {**KINKED, "offset": "2 ft", "toward": "outside"},
}  # fmt: skip


def planned(job: dict[str, Any]) -> tuple[LinePlan, Any]:
    work = Work(job)  # type: ignore[arg-type]
    assert work.lined is not None and work.own.accuracy is not None
    return work.lined.plan, work.own.accuracy.spread.errors


def far_of(job: dict[str, Any], **more: Any) -> Any:
    return bowstring.answering({**job, **more})["far_checks"]  # type: ignore[typeddict-item]


def walked(plan: LinePlan, join: int = 0, turned: float = 0.0) -> list[complex]:
    """The ends of the pieces, the line turned by so much more at a join: an arc's chord is its length times sin(x)/x,
    x half its angle."""
    place, heading, ends = 0j, 0.0, [0j]
    for number, piece in enumerate(plan.line.pieces):
        heading += piece.kink + (turned if number == join and join else 0.0)
        half = piece.turn / 2
        place += piece.length * (sin(half) / half if half else 1.0) * exp(1j * (heading + half))
        heading += piece.turn
        ends.append(place)
    return ends


@pytest.mark.parametrize("name", JOBS)
def test_each_reads_what_the_coordinates_say_and_sees_what_it_says(name: str) -> None:
    """Turned at its join until the next piece ends off by what it sees, the distance is out of its limit: to first
    order just at it."""
    plan, errors = planned(JOBS[name])
    found = pasts(plan, errors)
    assert found
    for past in found:
        one, ends = judged_of(plan, past, errors), walked(plan)
        plain = abs(ends[past.last] - ends[past.first])
        with about(name, str(past)):
            assert one.check.distance == pytest.approx(plain, abs=1e-9)
            turn = miss_seen(past, one) / abs(ends[past.join + 1] - ends[past.join])
            changes = []
            for hand in (turn, -turn):
                bent = walked(plan, past.join, hand)
                changes.append(abs(abs(bent[past.last] - bent[past.first]) - plain))
            assert sum(changes) / 2 == pytest.approx(one.limit, rel=0.1)


@pytest.mark.parametrize("name", JOBS)
def test_no_step_and_no_piece_has_its_distance_and_every_join_is_between_some(name: str) -> None:
    plan, errors = planned(JOBS[name])
    found = pasts(plan, errors)
    last = len(plan.line.pieces)
    assert all(past.last - past.first >= 2 and past.first < past.join < past.last for past in found)
    for join in range(1, last):
        assert any(past.first < join < past.last for past in found), join
    assert len({(past.first, past.last) for past in found}) == len(found)


def test_a_walk_by_hand() -> None:
    """From the start to where piece 4 begins: 18 ft, the chord of R 42 through 32 degrees, 11 ft on along its end."""
    told = far_of(FIVE)
    at = 18 + 84 * sin(16 * 3.14159265358979 / 180) * exp(1j * 16 * 3.14159265358979 / 180)
    at += 11 * exp(1j * 32 * 3.14159265358979 / 180)
    assert told["rows"][0]["from"] == "start" and told["rows"][0]["to"] == "where arc 4 begins"
    assert told["rows"][0]["distance"] / FOOT == pytest.approx(abs(at), abs=1e-9)
    assert told["rows"][0]["shown"] == "51' 0-3/4\"" and told["sees"][0].startswith("catches arc 2's end off by ")
    assert [row["to"] for row in told["rows"]][-1] == "end"


def test_off_the_line_it_is_taped_between_the_lines_own_points_and_says_so() -> None:
    """By hand: 20 ft straight, then R 34 on a chord of 40: the end is 20 + 40 cos t ahead and 40 sin t aside, where
    sin t = 20/34. Off the line the stakes would read 60' 10-1/4", between a start and an end that nobody sets."""
    line = [straight("20 ft"), {"arc": {"radius": "34 ft", "chord": "40 ft"}, "turn": "right"}]
    job = {**FIVE, "line": line, "offset": "3 ft", "toward": "outside", "driven": "hub"}
    told, turned = far_of(job), 20 / 34
    (row,) = told["rows"]
    want = abs(20 + 40 * complex((1 - turned**2) ** 0.5, turned))
    assert row["distance"] / FOOT == pytest.approx(want, abs=1e-9) and row["shown"] == "57' 4-3/4\""
    assert row["text"] == "the line's own start to B0 of arc 2: must read 57' 4-3/4\"."
    sets = [mark for card in bowstring.answering(job)["cards"] for mark in card["sets"]]  # type: ignore[typeddict-item]
    assert "B0" in sets
    html = checks_html(bowstring.answering(job))  # type: ignore[arg-type]
    assert "<summary>The whole line: 1 check</summary>" in html and "not the stakes off it" in html
    names = [name for row in far_of({**FIVE, "offset": "3 ft", "toward": "outside"})["rows"]
             for name in (row["from"], row["to"])]  # fmt: skip
    assert names[:2] == ["the line's own start", "A0 of arc 4"] and "B0 of arc 2" in names
    on_line = checks_html(bowstring.answering(FIVE))  # type: ignore[arg-type]
    assert "not the stakes off it" not in on_line


def test_a_distance_that_a_step_pulls_is_none_of_them() -> None:
    """B of an arc behind a straight of 6 ft is set from that straight's beginning, as far back as a crew goes."""
    job = {**CREEK, "line": [straight("6 ft"), arc("31 ft", "70", "left"), arc("24 ft", "60", "right")]}
    plan, errors = planned(job)
    assert (0, 2) not in {(past.first, past.last) for past in pasts(plan, errors)}
    long, errors = planned({**job, "line": [straight("16 ft"), *job["line"][1:]]})
    assert (0, 2) in {(past.first, past.last) for past in pasts(long, errors)}


def test_no_more_than_one_pull_of_the_tape_and_nothing_in_its_way() -> None:
    assert far_of(SHAPES["long"])["rows"] == []
    short = far_of(FIVE, tape={"length": "52 ft"})["rows"]
    assert short and all(row["distance"] <= 52 * FOOT for row in short)
    ends = [complex(*point) for point in ends_of(planned(FIVE)[0])]
    turned = [(end - ends[1]) * exp(-1j * 16 * 3.14159265358979 / 180) / FOOT for end in ends]
    middle = (turned[0] + turned[3]) / 2
    corners = [(-1, -1), (1, -1), (1, 1), (-1, 1)]
    outline = [[middle.real + x, -middle.imag + y] for x, y in corners]
    wall = {"name": "wall", "stops": "tape", "outline": outline}
    keys = [row["key"] for row in far_of(FIVE, ground=[wall])["rows"]]
    assert "end0-end3" not in keys and "end0-end3" in [row["key"] for row in far_of(FIVE)["rows"]]


def test_readings_are_judged_and_counted_nowhere_as_lost() -> None:
    right = {"check": "end0-end3", "value": "51' 0-3/4\""}
    wrong = {"check": "end1-end5", "value": "79' 3\""}
    answer: Any = bowstring.answering({**FIVE, "read": [right, wrong]})  # type: ignore[typeddict-item]
    verdicts = {row["check"]: row["verdict"] for row in answer["far_checks"]["read"]}
    assert verdicts == {"end0-end3": "in", "end1-end5": "again"} and answer["read"]["lost"] == []
    html = checks_html(answer)
    assert '<details class="more far" id="checks-line" open><summary>The whole line: 3 checks</summary>' in html
    assert '<details class="more far" id="checks-line"><summary>' in checks_html(bowstring.answering(FIVE))  # type: ignore[arg-type]
    assert "far" not in far_of(ONE_ARC)["rows"] and far_of(ONE_ARC)["sees"] == []


def test_the_readings_of_the_line_go_on_to_the_next_arc() -> None:
    fields = {
        "before-0-straight": "18 ft", "start": "one-end", "turn": "left", "arc-radius": "42 ft",
        "arc-central_angle": "32", "after-0-radius": "52 ft", "after-0-central_angle": "36", "after-0-turn": "right",
        "read-0-check": "A-M", "read-0-value": "9 ft", "read-1-check": "end0-end3", "read-1-value": "40 ft",
    }  # fmt: skip
    other = staked_at(fields, 3)
    assert {name: text for name, text in other.items() if name.startswith("read-")} == {
        "read-0-check": "end0-end3", "read-0-value": "40 ft",
    }  # fmt: skip
    back = staked_at({**other, "read-0-value": "41 ft"}, 2)
    assert sorted(text for name, text in back.items() if name.startswith("read-")) == sorted(
        ["A-M", "9 ft", "end0-end3", "41 ft"]
    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_it_is_said_in_few_words_and_sees_alike_whichever_arc_is_staked(language: str) -> None:
    speak(language)
    first, other = far_of(FIVE, at=2), far_of(FIVE, at=4)
    assert first["sees"] == other["sees"] and [row["shown"] for row in first["rows"]] == [
        row["shown"] for row in other["rows"]
    ]
    assert all(len(text.split()) <= 10 for text in first["sees"])
