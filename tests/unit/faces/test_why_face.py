"""Why: each fold has its conclusion, in a dozen words; what is dear is worked out when it is asked for."""

from __future__ import annotations

import re
from collections import Counter
from typing import Any

import pytest

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.faces.conclusions import FOLDS, conclusion
from bowstring.faces.why import LATER, WHEN_STOPPED, fold_head_html, fold_html, keys_of, why_html
from bowstring.report import parts
from bowstring.report.answer import Answering
from bowstring.words import catalogue
from halving_jobs import JOBS
from helping import SAID

PLAIN: dict[str, Any] = {**SAID, "arc": {"chord": "38 ft", "sagitta": "5' 3\""}, "levels": 3, "tolerance": "1/4 in"}
WALL = {
    "name": "wall",
    "stops": "tape",
    "outline": [["5 ft", "1 ft"], ["33 ft", "1 ft"], ["33 ft", "2 ft"], ["5 ft", "2 ft"]],
}
EVERY: dict[str, Any] = {
    "example": DEMO,
    **JOBS,
    **{
        method: {**PLAIN, "method": method, "centre": "reachable"}
        for method in ("rule", "centre", "ordinates", "tangent", "tapes", "produced", "angles")
    },
    **{driven: {**PLAIN, "driven": driven, "offset": "2 ft", "toward": "outside"} for driven in ("board", "marked")},
    "third": {**PLAIN, "arc": {**PLAIN["arc"], "radius": "39 ft"}},
    "found": {**PLAIN, "found": {"chord": ["38' 1\"", "38' 1\""], "hold": "radius", "tape": "level", "sure": True}},
    "ties": {**PLAIN, "ties": {"A": [{"to": "oak", "distance": "9 ft"}, {"to": "pump", "distance": "12 ft"}]}},
    "blocked": {**PLAIN, "method": "ordinates", "ground": [WALL]},
    "no hand": {key: value for key, value in PLAIN.items() if key != "side"},
}
MOST_WORDS = 12


def plain(html: str) -> str:
    return " ".join(re.sub(r"<[^>]*>", " ", html).split())


@pytest.mark.parametrize("name", EVERY)
def test_every_fold_has_a_conclusion_of_a_dozen_words_and_something_inside(name: str) -> None:
    answer = answering(EVERY[name])
    shut = why_html(answer, FOLDS)
    for key in keys_of(answer):
        told, inside = conclusion(answer, key), fold_html(answer, key)
        assert (told is None) == (not inside), key
        assert (f'data-fold="{key}"' in shut) == (told is not None), key
        if told:
            # A length with a fraction is one word, as it is called out: 5' 3".
            words = re.sub(r"\d+' (?=\d)", "", told.text).replace("*", "").split()
            assert len(words) <= MOST_WORDS, (key, told.text)
            assert told.text.count("*") in (2, 4), told.text


def test_a_fold_warns_where_it_is_no_comfort() -> None:
    assert re.search(r'class="fold warn" id="why-mistakes"', why_html(answering(DEMO), FOLDS))
    third = conclusion(answering(EVERY["third"]), "arc")
    assert third and third.warns and "doesn't agree" in third.text
    blocked = conclusion(answering(EVERY["blocked"]), "methods")
    assert blocked and blocked.warns


def test_no_percentage_stands_on_a_fold() -> None:
    for name, job in EVERY.items():
        assert "%" not in plain(why_html(answering(job), FOLDS)), name


def test_what_is_dear_waits_until_it_is_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    made: Counter[str] = Counter()

    def counting(part: str) -> object:
        work_out = parts.PARTS[part]

        def counted(work: object) -> object:
            made[part] += 1
            return work_out(work)  # type: ignore[arg-type]

        return counted

    monkeypatch.setattr("bowstring.report.answer.PARTS", {part: counting(part) for part in parts.PARTS})
    answer: Any = Answering(DEMO)
    html = why_html(answer)
    assert not {"accuracy", "methods", "advice", "mistakes", "read"} & made.keys()
    for key in LATER:
        assert re.search(rf'data-fold="{key}" data-later', html)
        head, _warns = fold_head_html(answer, key)
        assert plain(head).startswith(catalogue()[f"why.{key}"])
        assert len(plain(head)) > len(catalogue()[f"why.{key}"])


def test_a_stopped_job_keeps_what_explains_the_stop_and_no_number_of_a_step() -> None:
    answer = answering(EVERY["blocked"])
    html = why_html(answer)
    assert answer["stops"] and "stopbox" in html
    assert set(re.findall(r'data-fold="([\w-]+)"', html)) <= set(WHEN_STOPPED)
    assert 'data-fold="methods"' in html and 'data-fold="site"' in html
    inside = plain("".join(fold_html(answer, key) for key in keys_of(answer)))
    assert "is blocked by wall" in inside
    assert not re.search(r"\b[Ss]tep \d", inside)
    for step in answer["steps"]:
        assert step["text"] not in inside
    for key in set(FOLDS) - set(WHEN_STOPPED):
        with pytest.raises(KeyError):
            fold_html(answer, key)


def test_no_two_folds_have_an_id_in_common() -> None:
    for name in ("example", "ordinates", "found"):
        answer = answering(EVERY[name])
        ids = re.findall(
            r'\bid="([^"]+)"', why_html(answer, FOLDS) + "".join(fold_html(answer, k) for k in keys_of(answer))
        )
        assert len(ids) == len(set(ids)), name


def test_the_even_gap_of_the_stakes_is_told_apart_from_those_at_the_ends() -> None:
    """Off a parallel string marks stand every 2 ft along it, from its middle; half the chord of 44.75 ft has ten of
    them, and 2.375 ft (2' 4-1/2") are left at each end."""
    job = {**SAID, "arc": {"radius": "72 ft 6 in", "chord": "44 ft 9 in"}}
    told = conclusion(answering({**job, "method": "ordinates", "parallel": "6 ft"}), "stakes")  # type: ignore[arg-type]
    assert told and told.text == "*21 stakes* every 2' 0\" along A-B; ends 2' 4-1/2\"."
    halved = conclusion(answering({**job, "method": "halving", "levels": 3}), "stakes")  # type: ignore[arg-type]
    assert halved and halved.text == "Along A to B and square off. *7 stakes*, 5' 8-1/4\" apart."  # 2 R sin(theta/16)
    by_offset = conclusion(answering({**job, "method": "tangent"}), "stakes")  # type: ignore[arg-type]
    assert by_offset and "up to" in by_offset.text  # no two gaps of neighbors are alike
