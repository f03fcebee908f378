"""The locate ticket: written down on its card, kept with the job, and shown on paper in place of the blank line."""

from __future__ import annotations

import json
import re
from typing import Any

from bowstring.demo import DEMO
from bowstring.faces.paper import paper_html
from bowstring.faces.stakes import stakes_html
from bowstring.page.calls import handle
from bowstring.page.fields import fields_of_job
from helping import answer_to

TICKET = {"ticket": "B-4417 <7>", "called": "Mon 24 Feb, 8 am"}
BLANK, TICKED = '<span class="blank"></span>', '<i class="tick in">'


def first_box(html: str) -> str:
    return html.split('<ul class="firsts', 1)[1].split("</li>", 1)[0]


def face(name: str, fields: dict[str, str]) -> str:
    told: dict[str, Any] = json.loads(handle("face", json.dumps({"fields": fields, "face": name, "address": ""})))
    return str(told["html"])


def test_its_card_has_a_place_to_write_and_shows_what_was_written() -> None:
    html = stakes_html(answer_to(dict(DEMO)), 1)
    assert 'name="ticket" data-kept value=""' in html
    assert 'name="called" data-kept value=""' in html
    html = stakes_html(answer_to({**DEMO, **TICKET}), 1)
    assert 'value="B-4417 &lt;7&gt;"' in html and 'value="Mon 24 Feb, 8 am"' in html
    assert "data-kept" not in stakes_html(answer_to({**DEMO, **TICKET}), 2)


def test_the_paper_has_it_in_place_of_the_blank_line() -> None:
    box = first_box(paper_html(answer_to(dict(DEMO))))
    assert BLANK in box and TICKED not in box and "Utilities located?" in box
    box = first_box(paper_html(answer_to({**DEMO, **TICKET})))
    assert BLANK not in box and TICKED not in box  # nobody has seen the marks
    assert "Ticket B-4417 &lt;7&gt;, called Mon 24 Feb, 8 am." in re.sub("<[^>]*>", "", box)
    only = first_box(paper_html(answer_to({**DEMO, "ticket": "B-4417"})))
    assert "Ticket B-4417." in re.sub("<[^>]*>", "", only) and "called" not in only


def test_the_marks_are_in_once_its_card_is_done() -> None:
    fields = {**fields_of_job(dict(DEMO)), **TICKET}
    assert TICKED not in first_box(face("paper", fields))
    assert first_box(face("paper", {**fields, "done": "1"})).count(TICKED) == 2
    assert first_box(face("paper", {**fields_of_job(dict(DEMO)), "done": "1"})).count(TICKED) == 1
