"""The stakes face as HTML: one card whole, few words, everything escaped; the stop with its way out; the list."""

from __future__ import annotations

import json
import re
from html import escape, unescape
from html.parser import HTMLParser
from typing import Any

import pytest

from bowstring import answering
from bowstring.demo import DEMO
from bowstring.faces.stakes import SIZES_DOWN, count, first_open, size_of, stakes_html, steps_list_html
from bowstring.faces.steplist import AROUND
from bowstring.sheet.of_line import of_line
from bowstring.words import say
from card_jobs import EVERYDAY, JOBS, told
from helping import about, answer_to
from unit.report.test_cards import words
from unit.report.test_stops import PLAIN as STOPPED_PLAIN
from unit.report.test_stops import STOPPED

MOST_WORDS = 60
HOSTILE = "</svg><script>x</script> & \"'"


class Texts(HTMLParser):
    """The words of a face without its drawings and without the buttons at the thumb."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []
        self.away = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        thumb = tag == "div" and (dict(attrs).get("class") or "").startswith("thumb")
        if self.away or tag == "svg" or thumb:
            self.away += tag in ("svg", "div")

    def handle_endtag(self, tag: str) -> None:
        if self.away and tag in ("svg", "div"):
            self.away -= 1

    def handle_data(self, data: str) -> None:
        if not self.away:
            self.found.append(data)


def text_of(html: str) -> str:
    reader = Texts()
    reader.feed(html)
    return " ".join(" ".join(reader.found).split())


UNITS = [(name, unit) for unit in ("ft", "m", "mm") for name in EVERYDAY]


@pytest.mark.parametrize(("name", "unit"), [*((name, None) for name in JOBS), *UNITS])
def test_a_card_has_at_most_sixty_words(name: str, unit: str | None) -> None:
    answer = told(name, unit=unit) if unit else told(name)
    if answer["stops"]:
        assert words(text_of(stakes_html(answer, 1))) <= MOST_WORDS
        return
    seen = set()
    for card in answer["cards"]:
        if card["kind"] not in seen or card["notes"]:
            seen.add(card["kind"])
            text, which = text_of(stakes_html(answer, card["number"])), of_line(answer)
            with about(card["number"], text):
                # Which arc of a line it is stands over each of its cards, in a sentence of its own.
                assert card["text"] in text and words(text.replace(which, "")) <= MOST_WORDS
                assert which in text and words(which) <= 14


def test_a_card_shows_its_numbers_and_is_told_by_its_step() -> None:
    answer = told("halving")
    html = stakes_html(answer, 5, (1, 2, 3, 4))
    text = text_of(html)
    assert "Step 5 of 11" in text and "round 2, Q1" in text
    for one in answer["cards"][4]["numbers"]:
        assert f">{one['disc']}</i>" in html and one["shown"] in unescape(html)
    assert 'data-card="5"' in html and 'data-steps="4"' in html and 'data-stake="Q1"' in html
    for what in ('data-do="back"', 'data-do="got" data-step="5"', 'data-do="done" data-step="5"', 'data-do="list"'):
        assert what in html
    assert html.count('<i class="d">') == 4 and html.count('<i class="n">') == 1


def test_a_card_that_isn_t_there_is_the_nearest() -> None:
    answer = told("halving")
    assert stakes_html(answer, 99) == stakes_html(answer, 11) and stakes_html(answer, -1) == stakes_html(answer, 1)
    assert 'data-do="got"' not in stakes_html(answer, 1) and "disabled" in stakes_html(answer, 1)
    assert 'data-do="face" data-face="checks"' in stakes_html(answer, 11)


def test_on_the_last_card_the_large_button_leads_on() -> None:
    def large(answer: Any, card: int) -> list[str]:
        return re.findall(r'class="btn first" ([^>]*)>', stakes_html(answer, card))

    answer = answer_to(dict(DEMO))
    last = len(answer["cards"])
    assert large(answer, last) == ['data-do="face" data-face="checks"']
    skips = stakes_html(answer, last)  # with no check read nobody is done with them, only past them
    assert 'data-do="done"' not in skips and 'data-do="skip" data-face="paper"' in skips
    read = answer_to({**DEMO, "read": [{"check": answer["checks"][0]["key"], "value": answer["checks"][0]["shown"]}]})
    assert large(read, last) == ['data-do="face" data-face="checks"']
    done = stakes_html(read, last)
    assert 'data-do="done" data-face="paper"' in done and 'data-do="skip"' not in done
    board = answer_to({**DEMO, "driven": "board"})
    last = len(board["cards"])
    assert [card["kind"] for card in board["cards"]][-2:] == ["checks", "board"]
    assert large(board, last) == [f'data-do="done" data-step="{last}" data-face="paper"']
    assert "data-face" not in stakes_html(board, last - 2)
    assert 'data-do="skip">' in stakes_html(board, last - 1)
    told = escape(say("card.note.no_check"))
    assert told in stakes_html(board, last) and told not in stakes_html(board, last - 1)
    row = {"check": board["checks"][0]["key"], "value": board["checks"][0]["shown"]}
    assert told not in stakes_html(answer_to({**DEMO, "driven": "board", "read": [row]}), last)


def test_a_drawing_of_the_whole_arc_says_so_to_its_style() -> None:
    answer = answer_to(dict(DEMO))
    assert '<figure class="draw whole">' in stakes_html(answer, len(answer["cards"]))
    assert '<figure class="draw">' in stakes_html(answer, 4)


def test_the_first_open_card() -> None:
    answer = told("halving")
    assert count(answer) == 11
    assert [first_open(answer, done) for done in ((), (1, 2), (1, 3), range(1, 12))] == [1, 3, 2, 11]


@pytest.mark.parametrize("name", ["halving", "angles", "a blocked chord"])
def test_nothing_that_somebody_typed_is_more_than_text(name: str) -> None:
    answer = told(name, title=HOSTILE, ends={"A": HOSTILE, "B": "gate"}, ground=[
        *JOBS[name].get("ground", []),
        {"name": "<b>oak</b>", "stops": "tape", "outline": [["1 ft", "8 ft"], ["3 ft", "8 ft"], ["2 ft", "9 ft"]]},
    ])  # fmt: skip
    for card in answer["cards"]:
        html = stakes_html(answer, card["number"])
        for raw in ("<script", "<b>oak", HOSTILE):
            assert raw not in html
        assert not re.search(r"\sstyle=|\son\w+=|javascript:", html)
    assert "&lt;script" in stakes_html(answer, 2)


@pytest.mark.parametrize("changes", STOPPED.values(), ids=STOPPED)
def test_a_stop_shows_no_number_of_a_step_and_no_done(changes: dict[str, Any]) -> None:
    answer = answer_to({**STOPPED_PLAIN, **changes})
    html = stakes_html(answer, 5)
    assert 'role="alert"' in html and 'data-do="done"' not in html and "<dd" not in html and "<svg" not in html
    assert html.count("<button") == 1 and 'class="btn first"' in html
    assert words(text_of(html)) <= MOST_WORDS


WAYS = {
    "the hand": ({"side": None}, 'data-do="face" data-face="numbers" data-open="hand"'),
    "the line": ({"drawn_to": None}, 'data-do="face" data-face="numbers" data-open="line"'),
    "the numbers": ({"arc": STOPPED["givens that disagree"]["arc"]}, 'data-do="face" data-face="numbers" data-open=""'),
    "the chord": ({"found": STOPPED["a chord found and nothing held"]["found"]}, 'data-open="ends"'),
}


@pytest.mark.parametrize("name", WAYS)
def test_the_button_of_a_stop_leads_to_what_settles_it(name: str) -> None:
    changes, leads = WAYS[name]
    job = {key: value for key, value in {**STOPPED_PLAIN, **changes}.items() if value is not None}
    assert leads in stakes_html(answer_to(job), 1)


def test_a_stop_of_a_method_has_the_fields_of_the_advised_one() -> None:
    answer = answer_to({**DEMO, "method": "ordinates"})
    found = re.search(r'data-do="fill" data-fill="([^"]*)"', stakes_html(answer, 1))
    assert found and json.loads(unescape(found[1]))["method"] == answer["advice"]["method"]


def test_a_stop_of_what_was_got_leads_to_its_card() -> None:
    answer = answer_to({**STOPPED_PLAIN, **STOPPED["a sagitta that looks like a slip"]})
    (card,) = [card["number"] for card in answer["cards"] if card["stake"] == "M"]
    assert f'data-do="got" data-step="{card}"' in stakes_html(answer, 1)


def test_the_list_has_every_card_its_tick_and_its_number() -> None:
    answer = told("halving")
    html = steps_list_html(answer, 5, (1, 2, 3, 4))
    assert html.count("<li>") == 11 and html.count("✓") == 4 and html.count('aria-current="step"') == 1
    for card in answer["cards"]:
        assert f'data-step="{card["number"]}"' in html
        assert card["title"] in unescape(html) and card["main"] in unescape(html)


def test_of_many_cards_only_those_around_are_listed() -> None:
    answer = answering({"unit": "m", "arc": {"radius": 100, "chord": 90}, "levels": 9, "method": "halving",
                        "side": "left", "drawn_to": "face", "tape": {"length": 100}})  # fmt: skip
    last = count(answer)
    assert last > 500
    html = steps_list_html(answer, 200, range(1, 200))
    assert html.count("<li>") == 2 * AROUND + 3
    assert f'data-step="{200 - AROUND - 1}"' in html and f'data-step="{200 + AROUND + 1}"' in html
    card = stakes_html(answer, 200, range(1, 200))
    assert f'<progress max="{last}" value="199"' in card and "pips" not in card


def test_a_long_number_is_smaller_and_both_of_a_card_are_alike() -> None:
    sizes = [SIZES_DOWN.index(size_of(text)) for text in ("5' 3\"", "12' 10\"", "9' 10-1/4\"", "112' 10-15/16\"")]
    assert sizes == sorted(sizes) and sizes[0] < sizes[-1]
    answer = told("sixteenths, long")
    card = next(card for card in answer["cards"] if card["stake"] == "Q1")
    assert len(set(re.findall(r'<dd class="(\w+)"', stakes_html(answer, card["number"])))) == 1
