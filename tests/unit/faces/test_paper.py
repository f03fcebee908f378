"""The paper face: what stands on the front and on the back, for every method, and nothing of a step on a stop."""

from __future__ import annotations

import re
from html import unescape
from html.parser import HTMLParser
from typing import Any

import pytest

from bowstring.faces.paper import MANY, paper_html
from bowstring.faces.paper_sizes import MOST_ROWS
from bowstring.methods.catalogue import BY_NAME
from bowstring.sheet.setting import settings
from bowstring.words import say
from helping import all_hold, answer_to
from paper_jobs import JOBS

MOST_WORDS = 260
STOPPED = "no hand, no line, a wall"
GOOD = {name: job for name, job in JOBS.items() if name != STOPPED}
TOO_MANY = {**GOOD["halving"], "arc": {"chord": "140 ft", "sagitta": "20 ft"}, "levels": 6}
HAND = re.compile(r"\b(left|right)\b", re.IGNORECASE)


class Sides(HTMLParser):
    """The text of each side that an eye sees, and every attribute of the whole."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.sides: list[str] = []
        self.attributes: set[str] = set()
        self._unseen = 0
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.attributes |= {name for name, _ in attrs}
        if tag == "section":
            self.sides.append("")
        elif self.sides and tag not in ("span", "b"):
            self.sides[-1] += " "
        self._unseen += tag in ("title", "desc", "style")

    def handle_endtag(self, tag: str) -> None:
        self._unseen -= tag in ("title", "desc", "style")

    def handle_data(self, data: str) -> None:
        if self.sides and not self._unseen:
            self.sides[-1] += data


def sides(job: dict[str, Any]) -> list[str]:
    return [
        " ".join(side.split()) for side in Sides(paper_html(answer_to(job), "https://example.org/#x", "May 4")).sides
    ]


def number(text: str) -> str:
    return " ".join(text.partition(" (")[0].split())


def test_the_jobs_are_of_every_method_and_start() -> None:
    assert {answer_to(job)["method"] for job in JOBS.values()} == set(BY_NAME)
    assert {answer_to(job)["start"] for job in JOBS.values()} >= {"ends", "one-end", "corner"}
    assert [name for name, job in JOBS.items() if answer_to(job)["stops"]] == [STOPPED]


def has_its_numbers(job: dict[str, Any]) -> None:
    answer = answer_to(job)
    front, back, *more = sides(job)
    stakes = [step for step in answer["steps"] if step["stake"]]
    assert len(stakes) <= MOST_ROWS and not more
    assert len([word for word in front.split() if re.search(r"[A-Za-z]{2}", word)]) <= MOST_WORDS
    for table in answer["tables"]:
        for row in table["rows"]:
            for cell in row[1:]:
                assert number(cell) in front, cell
    for stake in answer["stakes"]:
        assert stake["name"] in front and stake["x_shown"] in back and stake["y_shown"] in back
    for step in answer["steps"]:
        if step["stake"] is None:
            for measure in step["measures"]:
                assert measure["shown"] in front, (step["kind"], measure)
    for check in answer["checks"]:
        assert not check["recommended"] or check["shown"] in front
    for text in answer["cautions"]:
        assert " ".join(text.split()) in back
    turn = {"left": "RIGHT", "right": "LEFT"}[answer["side"]]
    few = len(stakes) <= MANY  # else there is no room for it on the front
    assert f"The curve is on your {answer['side'].upper()}{f' turns {turn}' if few else ''}" in front
    assert f"At A, facing B, it's {answer['side'].upper()}, turns {turn}." in back and "https://example.org/#x" in back


def test_the_front_has_each_number_of_each_stake_in_few_words() -> None:
    all_hold({name: (job,) for name, job in GOOD.items()}, has_its_numbers)


def tells_the_hand(job: dict[str, Any]) -> None:
    """The hand that a table tells once for all its rows is that of each step's own sentence."""
    answer = answer_to(job)
    texts = {step["number"]: step for step in answer["steps"]}
    for table in settings(answer):  # type: ignore[arg-type]
        told = {hand.lower() for text in (*table.how, *table.head) for hand in HAND.findall(text)}
        for row in table.rows:
            step = texts[row.number]
            own = {hand.lower() for cell in row.cells for hand in HAND.findall(cell)}
            said = HAND.findall(step["text"])
            if step["kind"].startswith(("tangent_offset", "parallel_")) or not said:
                continue
            assert (own or told) == {said[0].lower()}, (step["text"], told, own)


def test_the_hand_of_a_table_is_the_hand_of_its_steps() -> None:
    mirrored = {f"{name}, mirrored": {**job, **_other(job)} for name, job in GOOD.items()}
    all_hold({name: (job,) for name, job in {**GOOD, **mirrored}.items()}, tells_the_hand)


def _other(job: dict[str, Any]) -> dict[str, str]:
    sides = {"left": "right", "right": "left"}
    return {key: sides[job[key]] for key in ("side", "turn") if key in job}


def test_a_stop_prints_why_and_no_number_of_a_step() -> None:
    answer = answer_to(JOBS[STOPPED])
    html = paper_html(answer, "", "")
    front, _back = Sides(html).sides
    assert "STOP" in front.split() and "Build nothing from this." in front
    for text in answer["stops"]:
        assert " ".join(text.split()) in " ".join(front.split())
    measures = {one["shown"] for step in answer["steps"] for one in step["measures"]}
    places = {stake[place] for stake in answer["stakes"][1:-1] for place in ("x_shown", "y_shown")}
    halves = {step["half_chord"] for step in answer["steps"] if step["half_chord"]}
    seen = html.replace("&#x27;", "'").replace("&quot;", '"')
    advised = answer["advice"]["text"]  # what would settle it has numbers of its own
    numbers = {one for one in measures | places | halves if one not in advised}
    assert len(numbers) > 10
    assert not [one for one in numbers if re.search(rf"(?<![\d'-] ){re.escape(one)}", seen)]


def test_a_link_too_long_for_a_code_that_scans_off_paper_stands_there_without_one() -> None:
    link = "https://example.org/#" + "x" * 500
    html = paper_html(answer_to(JOBS["halving"]), link)
    assert say("paper.no_code") in html and link in html and "paper-code" not in html
    assert "paper-code" in paper_html(answer_to(JOBS["halving"]), link[:400])
    assert "paper-code" not in paper_html(answer_to(JOBS["halving"]))


def test_no_attribute_that_the_page_forbids() -> None:
    found = Sides(paper_html(answer_to(JOBS["halving"]))).attributes
    assert "class" in found
    assert not [name for name in found if name == "style" or name.startswith("on")]


@pytest.mark.parametrize("name", ["title", "end"])
def test_what_somebody_typed_is_text(name: str) -> None:
    typed = "<b>&'\"</b>"
    job = {**JOBS["halving"], **({"title": typed} if name == "title" else {"ends": {"A": typed, "B": "pier"}})}
    html = paper_html(answer_to(job))
    assert typed not in html and "&lt;b&gt;" in html


def test_more_stakes_than_a_side_holds_go_on_over_pages() -> None:
    answer = answer_to(TOO_MANY)
    front, back, *more = sides(TOO_MANY)
    assert "page 3" in front and len(more) >= 2
    rest = " ".join([front, *more])
    names = [step["stake"] for step in answer["steps"] if step["stake"]]
    assert [name for name in names if f" {name} " not in rest] == []
    assert all(stake["x_shown"] in " ".join([back, *more]) for stake in answer["stakes"])


def tapes(chord: str) -> dict[str, Any]:
    arc = {"chord": chord, "sagitta": "5 ft"}
    return {**GOOD["two tapes"], "arc": arc, "method": "tapes", "spacing": "2.3 ft"}


@pytest.mark.parametrize(
    ("chord", "stakes", "further"), [("40 ft", 18, 0), ("44 ft", 19, 0), ("48 ft", 21, 0), ("56 ft", 24, 1)]
)
def test_a_few_more_stakes_than_the_front_holds_take_one_further_page(chord: str, stakes: int, further: int) -> None:
    answer = answer_to(tapes(chord))
    front, back, *more = sides(tapes(chord))
    names = [step["stake"] for step in answer["steps"] if step["stake"]]
    assert (len(names), len(more)) == (stakes, further)
    assert [name for name in names if f" {name} " not in " ".join([front, *more])] == []
    assert all(stake["y_shown"] in " ".join([back, *more]) for stake in answer["stakes"])


def cells(html: str, stake: str) -> list[str]:
    table = html[html.index('class="built"') :]
    (row,) = re.findall(rf'<tr><th scope="row">{stake}</th>(.*?)</tr>', table)
    return [unescape(re.sub("<[^>]+>", "", cell)) for cell in re.findall("<td[^>]*>(.*?)</td>", row)]


def test_a_stake_that_was_got_must_be_on_the_arc_and_stands_beside_it_as_built() -> None:
    """M in the middle of 30 ft, 2 ft 2-3/8 in off it; it was got at 2 ft 3-1/8 in."""
    plain = {**GOOD["halving"], "unit": "ft-in", "mark": "1/8 in", "arc": {"chord": "30 ft", "sagitta": "2' 2-3/8\""},
             "levels": 2}  # fmt: skip
    plain = {key: value for key, value in plain.items() if key in ("arc", "unit", "mark", "side", "drawn_to", "levels")}
    got = {**plain, "method": "halving",
           "got": [{"stake": "M", "measures": [{"from": "mid M", "to": "M", "distance": "2' 3-1/8\""}]}]}  # fmt: skip
    html = paper_html(answer_to(got))
    assert cells(html, "M") == ["15' 0\"", "2' 2-3/8\"", "15' 0\"", "2' 3-1/8\"", "3/4 in outside", "", ""]
    assert cells(html, "Q1")[2:] == [""] * 5 and len(cells(html, "A")) == 7
    assert "M stands 3/4 in outside the arc. Move it, or ask." in sides(got)[0]
    assert "Move it, or ask" not in sides({**plain, "method": "halving"})[0]


def test_where_every_stake_stands_and_no_check_was_read_the_front_says_so() -> None:
    told = say("paper.no_check_read")
    answer = answer_to(GOOD["halving"])
    row = {"check": answer["checks"][0]["key"], "value": answer["checks"][0]["shown"]}
    read = answer_to({**GOOD["halving"], "read": [row]})
    assert told in " ".join(Sides(paper_html(answer, all_stand=True)).sides[0].split())
    for one, all_stand in ((answer, False), (read, True), (read, False)):
        assert told not in " ".join(Sides(paper_html(one, all_stand=all_stand)).sides[0].split())


def test_a_check_that_read_out_stands_on_the_front_with_what_was_read() -> None:
    checks = answer_to(GOOD["halving"])["checks"]
    first, second = [row["key"] for row in checks if row["recommended"]][:2]
    one = answer_to({**GOOD["halving"], "read": [{"check": first, "value": "1 ft"}]})
    front = " ".join(Sides(paper_html(one)).sides[0].split())
    must = next(row["shown"] for row in one["checks"] if row["key"] == first)
    assert f"to M reads 1' 0\", must be {must}. Settle it before anybody builds." in front
    assert '<td class="write"><span class="n">1&#x27; 0&quot;</span></td>' in paper_html(one)
    both = [{"check": key, "value": "1 ft"} for key in (first, second)]
    two = answer_to({**GOOD["halving"], "read": both})
    assert "2 checks are OUT." in " ".join(Sides(paper_html(two)).sides[0].split())
    fine = answer_to({**GOOD["halving"], "read": [{"check": first, "value": must}]})
    assert "Settle" not in " ".join(Sides(paper_html(fine)).sides[0].split())
