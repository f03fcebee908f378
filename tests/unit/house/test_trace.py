"""The page's library is traced by asking every question that the page asks."""

from __future__ import annotations

import pytest

from bowstring.page import calls
from builder.inside import trace


def test_every_question_of_the_page_is_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    asked: set[str] = set()
    real = calls.handle

    def seen(call: str, payload: str) -> str:
        asked.add(call)
        return real(call, payload)

    monkeypatch.setattr(calls, "handle", seen)
    trace._questions()
    assert asked - {"no such call"} == calls._CALLS.keys()
