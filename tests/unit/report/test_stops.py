"""What nobody may build from: it is told apart from the other cautions, and stands above everything on both sheets."""

from __future__ import annotations

import json
import re
from html import unescape

import pytest

from bowstring.page.calls import handle
from bowstring.report.caution import STOPS
from bowstring.report.demand import HOPELESS
from bowstring.sheet.blocks import Drawing
from bowstring.sheet.html import sheet_html
from bowstring.sheet.outline import outline
from bowstring.sheet.text import sheet_text
from bowstring.words import say
from helping import about, answer_to

PLAIN = {"arc": {"chord": "38 ft", "sagitta": "5 ft 3 in"}, "drawn_to": "face", "side": "left", "levels": 2}
FOUND = {"tape": "level", "chord": ["38 ft 6 in", "38 ft 6 in"]}
POINTS = {"points": [["0 ft", "0 ft"], ["19 ft", "5 ft"], ["38 ft", "0 ft"]]}

STOPPED = {
    "the line isn't known": {"drawn_to": "unsure"},
    "a board off the face": {"drawn_to": "centre", "driven": "board", "offset": "1-1/2 in", "toward": "outside"},
    "givens that disagree": {"arc": {"chord": "38 ft 0 in", "sagitta": "5 ft 3 in", "radius": "30 ft 0 in"}},
    "points against the job's hand": {"arc": POINTS, "side": "right"},
    "a chord found and nothing held": {"found": FOUND},
    "two measurements apart": {"found": {**FOUND, "chord": ["38 ft 1 in", "38 ft 4 in"]}},
    "a foot miscounted": {"found": {**FOUND, "chord": ["39 ft", "39 ft"], "hold": "radius"}},
    "a kink past the limit": {"found": {**FOUND, "chord": ["42 ft", "42 ft"], "hold": "radius", "sure": True}},
    "a sagitta that looks like a slip": {"got": [{"stake": "M", "sagitta": "6 ft 3 in"}]},
}


@pytest.mark.parametrize("changes", STOPPED.values(), ids=STOPPED)
def test_a_job_that_nobody_may_build_says_so_above_everything(changes: dict[str, object]) -> None:
    told = answer_to({**PLAIN, **changes})
    stops = told["stops"]
    assert stops and set(stops) <= set(told["cautions"])  # type: ignore[call-overload]
    first = outline(told)[0]
    assert first.key == "stops"
    for sheet in (sheet_text(told), sheet_html(told)):
        lines = " ".join(sheet.split())
        assert say("sheet.stops").casefold() in lines.casefold()
        assert say("sheet.steps_later") in lines
    assert "!! " in sheet_text(told)


@pytest.mark.parametrize("changes", STOPPED.values(), ids=STOPPED)
def test_such_a_sheet_has_no_step_and_no_number_of_one(changes: dict[str, object]) -> None:
    told = answer_to({**PLAIN, **changes})
    assert told["steps"] and told["stakes"]
    sections = outline(told)
    keys = {"stops", "before", "arc", "ends", "advice", "readings", "notes"}
    assert {"stops", "arc", "advice"} <= {section.key for section in sections} <= keys
    drawn = {block.kind for section in sections for block in section.blocks if isinstance(block, Drawing)}
    assert drawn <= {"site"}
    html = sheet_html(told)
    shown = " ".join(unescape(re.sub(r"<[^>]*>", "", html)).split())
    for sheet in (shown, " ".join(sheet_text(told).split())):
        assert "STOP: " in sheet
        for step in told["steps"]:
            assert " ".join(str(step["text"]).split()) not in sheet  # type: ignore[index]


def test_a_line_that_is_blocked_is_told_and_not_taped() -> None:
    """The hedge stands across A-B and behind it: what the sheet would tape is what it says can't be taped."""
    hedge = {
        "name": "hedge",
        "stops": "tape",
        "outline": [["18 ft", "-9 ft"], ["20 ft", "-9 ft"], ["20 ft", "8 ft"], ["18 ft", "8 ft"]],
    }
    told = answer_to({**PLAIN, "method": "halving", "ground": [hedge]})
    own = next(row for row in told["methods"] if row["method"] == "halving")  # type: ignore[attr-defined]
    assert not own["possible"] and told["stops"]
    text = " ".join(sheet_text(told).split())
    assert "hedge" in text and "Tape from A to B" not in text
    assert not [section.key for section in outline(told) if section.key.startswith("level-")]
    kinds = [block.kind for section in outline(told) for block in section.blocks if isinstance(block, Drawing)]
    assert kinds == ["site"]
    assert 'id="draw-site"' in sheet_html(told) and told["advice"]["text"] in text  # type: ignore[index]


def test_an_ordinary_job_may_be_built() -> None:
    told = answer_to(PLAIN)
    assert told["stops"] == []
    assert next(section.key for section in outline(told)) == "short"
    assert say("sheet.stops").upper() not in sheet_text(told)


def test_a_caution_that_only_warns_stops_nothing() -> None:
    told = answer_to({**PLAIN, "drawn_to": "face", "tolerance": "1/32 in"})
    assert told["cautions"] and not told["stops"]


def test_every_sentence_that_says_not_to_build_is_a_stop() -> None:
    """A sentence that forbids building and a list that has forgotten it would be told as one caution of many."""
    from bowstring.words import catalogue

    forbids = {
        key
        for key, text in catalogue().items()
        if key.startswith(("caution.", "fit."))
        and any(words in text for words in ("n't build", "not build", "before building"))
    }
    # These doubt a unit and nothing else: the number is read out, and the reading stands beside its field.
    doubts = {"caution.unlikely_board", "caution.unlikely_hub"}
    assert forbids - doubts <= STOPS


def test_no_face_of_such_a_job_says_that_it_is_ready() -> None:
    fields = {"unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5 ft 3 in", "drawn_to": "unsure", "side": "left"}
    for face in ("stakes", "checks", "build", "paper", "why"):
        asked = {"fields": fields, "face": face}
        for drawn_to, sign in (("unsure", "stop"), ("face", "computed")):
            fields["drawn_to"] = drawn_to
            if (face, sign) == ("build", "computed"):
                sign = "ask"  # nothing is said of a slab
            with about(face, drawn_to):
                assert json.loads(handle("face", json.dumps(asked)))["state"]["sign"] == sign


def test_a_fold_that_a_stopped_job_hasnt_is_empty() -> None:
    """It was there, and was opened, before the job was stopped."""
    fields = {"unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5 ft 3 in", "drawn_to": "face", "side": "left"}
    for drawn_to, there in (("face", True), ("unsure", False)):
        for head in (False, True):
            asked = {"fields": {**fields, "drawn_to": drawn_to}, "key": "accuracy", "head": head}
            assert bool(json.loads(handle("fold", json.dumps(asked)))["html"]) is there


def test_what_makes_every_check_blind_or_turns_the_curve_is_a_stop() -> None:
    blind = answer_to({**PLAIN, "drawn_to": "face", "tolerance": "4 in"})
    assert blind["stops"] == [say("caution.unlikely_tolerance", shown='4" = 0.3333 ft')]
    alike = answer_to({**PLAIN, "drawn_to": "face", "ends": {"A": "Blue hydrant", "B": "blue hydrant"}})
    assert alike["stops"] == [say("caution.landmark_same")]


FLAT = {"arc": {"chord": "140 ft", "sagitta": "12 ft"}, "drawn_to": "face", "side": "left", "tolerance": "1/2 in"}
"""Chords produced add up their errors over 140 ft: by the model some 2-1/2 ft in place of 1/2 in."""


def test_a_chosen_method_that_is_hopeless_is_a_stop_that_names_the_advised_one() -> None:
    told = answer_to({**FLAT, "method": "produced"})
    rows = {row["method"]: row for row in told["methods"]}
    assert rows["produced"]["possible"] and rows["produced"]["miss_95"] > HOPELESS * told["tolerance"]
    advised = rows[told["advice"]["method"]]
    assert advised["expected"] < rows["produced"]["expected"] / HOPELESS
    (stop,) = told["stops"]
    assert f"Use {advised['name']}: " in stop and rows["produced"]["miss_95_shown"] in stop
    taken = answer_to(FLAT)
    assert taken["method"] == advised["method"] and taken["stops"] == []


def test_what_is_hopeless_and_still_the_advised_method_warns_and_stops_nobody() -> None:
    """Nothing does better, and a link of such a job, which names its method, has to be the same sheet."""
    taken = answer_to({**FLAT, "tolerance": "1/32 in"})
    assert any("Careful work won't make up" in text for text in taken["cautions"]) and not taken["stops"]
    assert answer_to({**FLAT, "tolerance": "1/32 in", "method": taken["method"]})["stops"] == []


def test_a_method_a_little_over_the_tolerance_is_no_stop() -> None:
    told = answer_to({**FLAT, "method": "tapes", "tolerance": "1 in", "tape": {"length": "150 ft"}})
    own = next(row for row in told["methods"] if row["method"] == "tapes")
    assert told["tolerance"] < own["expected"] <= HOPELESS * told["tolerance"] and told["stops"] == []


def test_a_miss_just_over_the_tolerance_shows_that_it_is() -> None:
    """A tolerance a hair finer than what quartering costs isn't told as the same number."""
    job = {"unit": "m", "arc": {"chord": 10, "sagitta": 1}, "drawn_to": "face", "side": "left", "levels": 3}
    worst = abs(answer_to({**job, "method": "rule"})["rule"]["worst_miss"])
    told = answer_to({**job, "method": "rule", "tolerance": f"{worst - 2e-8:.9f} m"})
    (stop,) = [text for text in told["stops"] if "the quarter rule's numbers" in text]
    off, allowed = (float(number) for number in re.findall(r"(\d+\.\d+) mm", stop))
    assert off > allowed
    assert f"{off} mm" in told["rule"]["text"]


def test_what_was_got_is_no_hopeless_method() -> None:
    """A stake that was got 3 in off is told as that; halving itself is as good as it was."""
    told = answer_to({**PLAIN, "tolerance": "1/2 in", "got": [{"stake": "M", "sagitta": "5 ft 6 in"}]})
    assert told["stops"] and not any("Careful work won't make up" in text for text in told["cautions"])
