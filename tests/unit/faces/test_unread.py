"""The checks' card asks for the checks as long as some are unread, and no longer."""

from __future__ import annotations

import re

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.faces.stakes import stakes_html
from bowstring.faces.unread import card_text

TAPE = "Tape the checks before anybody builds on these stakes."


def test_it_is_asked_for_until_all_are_read() -> None:
    checks = [row for row in answering(DEMO)["checks"] if not row["blind"] or row["kind"] == "closing"]
    rows = [{"check": row["key"], "value": row["shown"]} for row in checks]

    def said(read: object) -> str:
        answer = answering({**DEMO, "read": read})
        card = next(card for card in answer["cards"] if card["kind"] == "checks")
        text = card_text(answer, card)
        html = re.sub("<[^>]*>", "", stakes_html(answer, card["number"]))
        assert text in html and (text == TAPE) == (TAPE in html)
        return text

    assert said([]) == said(rows[:-1]) == TAPE
    assert said(rows) == f"All {len(rows)} read, and all are in."
    assert (
        said([*rows[:-1], {**rows[-1], "value": "1 in"}]) == f"{len(rows)} of {len(rows)} read, 1 out. Don't build yet."
    )
