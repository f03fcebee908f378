"""Every word of the form is asked for by the form, by a list that names its fields, or by its own key."""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path

import pytest

import bowstring.words
from bowstring.demo import DEMO
from bowstring.page import form, labels
from bowstring.page.fields import all_fields, fields_of_job
from bowstring.words import catalogue

PACKAGE = Path(__file__).resolve().parents[3] / "pylib" / "bowstring"
HALVES = (".wrong", ".remedy")
ROWS = {"unit": "m", "known-0-name": "x", "ground-0-name": "g", "got-0-stake": "M"} | {
    f"got-0-measures-0-{name}": "A" for name in ("from", "to", "distance")
}


class Asked(dict[str, str]):
    """A catalogue that keeps which of its messages were asked for."""

    def __init__(self, messages: dict[str, str]) -> None:
        super().__init__(messages)
        self.keys_asked: set[str] = set()

    def __getitem__(self, key: str) -> str:
        self.keys_asked.add(key)
        return super().__getitem__(key)


def test_every_word_of_the_form_is_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    asked = Asked(catalogue())
    monkeypatch.setattr(bowstring.words, "templates", lambda group, language: asked)
    monkeypatch.setattr(bowstring.words, "_template", lambda key, language: asked[key])  # which keeps what it found
    for typed in ({}, ROWS, {"unit": "ft"}, {"unit": "mm"}, fields_of_job(DEMO)):
        form.form_html(typed)
        for field in all_fields(typed):
            labels.label_of(field.id, typed)
    sources = [file for file in PACKAGE.rglob("*.py") if "words" not in file.relative_to(PACKAGE).parts]
    text = "\n".join(file.read_text("utf-8") for file in sources)
    left = {key for key in asked if key.startswith("form.") and not key.endswith(HALVES)} - asked.keys_asked
    assert sorted(key for key in left if f'"{key}"' not in text) == []
    assert len(asked.keys_asked) > 200


IMPERIAL, METRIC = r"[0-9] ?(?:ft|in|feet|inch(?:es)?)\b|[0-9]['\"]", r"[0-9] ?(?:mm|m|cm|meters?)\b"


@pytest.mark.parametrize(("shown", "other", "stranger"), [("metric", "feet", IMPERIAL), ("feet", "metric", METRIC)])
def test_a_hint_is_in_the_jobs_own_measures(shown: str, other: str, stranger: str) -> None:
    html = re.sub(rf'<span data-in="{other}">.*?</span>(?=<|$)', "", form.form_html({}))
    assert f'data-in="{shown}"' in html and f'data-in="{other}"' not in html
    hints = [unescape(re.sub("<[^>]*>", "", one)) for one in re.findall(r'<p class="help"[^>]*>(.*?)</p>', html)]
    assert len(hints) > 40
    assert [hint for hint in hints if re.search(stranger, hint)] == []
    assert re.findall(r'placeholder="[^"]*[0-9][^"]*"', html) == []
