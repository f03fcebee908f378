"""A job that came by a link with what its sender got: nobody is told that he measured it; a stake may be set anew."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

from bowstring.page.calls import Calls

FIELDS = {"unit": "ft-in", "arc-chord": "38 ft", "arc-sagitta": "5' 3\"", "side": "left", "drawn_to": "face",
          "levels": "2", "start": "ends", "got-0-stake": "M", "got-0-measures-0-from": "mid M",
          "got-0-measures-0-to": "M", "got-0-measures-0-distance": "5' 3-3/4\""}  # fmt: skip
M = 4


def card(fields: dict[str, str]) -> str:
    told: dict[str, Any] = json.loads(
        Calls().handle("face", json.dumps({"fields": fields, "face": "stakes", "card": M}))
    )
    return unescape(str(told["html"]))


def test_a_stake_that_the_sender_got_is_told_with_how_far_off_it_stands_and_nobody_is_told_that_he_measured() -> None:
    html = card({**FIELDS, "received": "abc"})
    assert "M stands as measured, 3/4 in outside the arc." in html
    assert "Somebody set M before this link was sent. Leave it, or set it anew." in html
    assert not re.search(r"\byou (measured|taped)", html)


def test_set_anew_takes_back_what_was_got_and_the_card_has_the_arc_s_own_number() -> None:
    fields = {**FIELDS, "received": "abc"}
    found = re.search(r"""data-do="fill" data-fill="(\{[^>]*\})">Set M anew""", card(fields))
    assert found
    after = {**fields, **json.loads(found[1])}
    html = card(after)
    assert "Set M anew" not in html and "as measured" not in html and "5' 3\"" in html


def test_who_got_it_himself_is_asked_nothing() -> None:
    assert "set it anew" not in card(FIELDS)
