"""No star on a card: what stands between stars is bold on Build's pages alone, a card shows its texts as they are."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

import card_jobs
import form_jobs
from bowstring.words import speak
from bowstring.words.languages import LANGUAGES
from helping import answer_to
from lined_jobs import CREEK, FIVE, KINKED, METRIC_LINE, ONE_ARC

LINED = {"creek": CREEK, "five": FIVE, "kinked": KINKED, "in meters": METRIC_LINE, "one arc": ONE_ARC}
JOBS: dict[str, Any] = {
    **{f"card: {name}": card_jobs.job(name) for name in card_jobs.JOBS},
    **{f"forms: {name}": job for name, job in form_jobs.JOBS.items()},
    **{
        f"line: {name}": {**job, "station": "0+250" if job.get("unit") == "m" else "2+50"}
        for name, job in LINED.items()
    },
}


def texts(part: Any) -> Iterator[str]:
    if isinstance(part, str):
        yield part
    elif isinstance(part, dict):
        yield from (text for one in part.values() for text in texts(one))
    elif isinstance(part, list):
        yield from (text for one in part for text in texts(one))


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_card_of_any_job_shows_a_star(language: str) -> None:
    speak(language)
    try:
        found, stations = [], 0
        for name, job in JOBS.items():
            answer = answer_to(job)
            told = [text for part in ("cards", "form_cards") for text in texts(answer[part])]
            found += [(name, text) for text in told if "*" in text]
            stations += sum("2+" in text or "0+2" in text for text in told)
    finally:
        speak("english")
    assert not found and stations > 10
