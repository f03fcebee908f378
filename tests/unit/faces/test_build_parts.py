"""The pieces of the build's pages: escaped, bold between stars, and tables that can be read out."""

from __future__ import annotations

import json
from html.parser import HTMLParser

import pytest

from bowstring.faces.build_parts import (
    Cell,
    Choice,
    Row,
    bold,
    card,
    choices,
    conclusion,
    folded,
    heading,
    huge,
    note,
    panel_button,
    paragraph,
    stop,
    table,
)

EVIL = '<img src=x onerror="a()">&'


class Seen(HTMLParser):
    """Which tags open and close, with their attributes, and what is read."""

    def __init__(self) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.open: list[str] = []
        self.text: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        if tag not in ("br", "img"):
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.text.append(data)


def seen(html: str) -> Seen:
    made = Seen()
    made.feed(html)
    assert made.open == []
    return made


@pytest.mark.parametrize(
    "html",
    [
        bold(EVIL),
        conclusion(EVIL, EVIL),
        huge(EVIL, EVIL, EVIL),
        heading(EVIL, EVIL),
        paragraph(EVIL),
        note(EVIL),
        stop(EVIL, EVIL, EVIL),
        card(EVIL, ""),
        table([EVIL, EVIL], [Row(EVIL, [Cell(EVIL, EVIL, fits=False)], EVIL)], EVIL),
        table([EVIL], [Row(EVIL, [EVIL], EVIL, over=True)], EVIL),
        choices(EVIL, [Choice(EVIL, {EVIL: EVIL}, EVIL)]),
        panel_button(EVIL, EVIL),
    ],
)
def test_every_text_is_escaped(html: str) -> None:
    told = seen(html)
    assert all(tag != "img" for tag, _ in told.tags)
    assert EVIL in "".join(told.text)
    for _, attributes in told.tags:
        assert not {"style", "onerror"} & attributes.keys()


def test_what_stands_between_stars_is_bold_and_a_number_stays_on_one_line() -> None:
    assert bold("set *4' 6-3/8\"* in") == 'set <b><span class="n">4&#x27; 6-3/8&quot;</span></b> in'
    assert bold("2 * 3") == "2 * 3"


def test_a_line_break_of_a_conclusion_stays_one() -> None:
    assert "panels,<br>inside" in conclusion("10 panels,\ninside")


def test_each_row_of_a_table_has_its_name_as_a_head_and_each_column_its_own() -> None:
    html = table(["joint", "outer", "inner"], [Row("1", ["a", "b"]), Row("2", ["c", "d"], key=True)], "Joints", split=2)
    tags = seen(html).tags
    assert [has.get("scope") for tag, has in tags if tag == "th"] == ["col", "col", "col", "row", "row"]
    assert [has.get("class") for tag, has in tags if tag == "tr"] == [None, None, "key"]
    assert [has.get("class") for tag, has in tags if tag == "td"] == [None, "two", None, "two"]
    assert html.count("<tbody>") == 1


def test_a_table_of_long_lengths_is_set_smaller() -> None:
    def kind(*cells: str) -> str | None:
        (has,) = (
            has for tag, has in seen(table(["a"] * (len(cells) + 1), [Row("Q1", cells)], "x")).tags if tag == "table"
        )
        return has["class"]

    assert kind("4' 6\"", "4' 1\"") == "t"
    assert kind("37' 0-13/16\"", "38' 0-3/4\"", "14' 1\"") == "t tight"
    assert kind("37' 0-13/16\"", "38' 0-13/16\"", "5' 3-13/16\"") == "t tighter"
    assert kind("between R1 and Q1", "a long row of words that may be broken") == "t"


def test_a_column_that_needs_no_name_has_no_empty_head() -> None:
    tags = seen(table(["a", ""], [Row("1", ["b"])], "x")).tags
    assert len([tag for tag, has in tags if tag == "th" and has.get("scope") == "col"]) == 1
    assert len([tag for tag, _ in tags if tag == "td"]) == 2


def test_a_name_over_its_numbers_is_the_head_of_those_alone() -> None:
    html = table(
        ["radius", "chord"], [Row("Outer", ["1", "2"], over=True), Row("Inner", ["3", "4"], over=True)], "Edges"
    )
    tags = seen(html).tags
    assert html.count("<tbody>") == 2
    assert [has["colspan"] for _, has in tags if has.get("scope") == "rowgroup"] == ["2", "2"]
    assert len([tag for tag, _ in tags if tag == "td"]) == 4


def test_what_holds_and_what_does_not_have_each_a_sign_of_its_own() -> None:
    html = table(["board", "yours"], [Row("1x4", [Cell("57'", fits=True)]), Row("2x6", [Cell("57'", fits=False)])], "x")
    assert html.count("✓") == 1 and html.count('class="sign stop"') == 1 and html.count("verd bad") == 1


def test_a_choice_says_what_it_sets_and_whether_it_holds() -> None:
    html = choices(
        "How many", [Choice("10", {"joints-panels": "10"}, pressed=True), Choice("9", {"joints-panels": "9"})]
    )
    buttons = [has for tag, has in seen(html).tags if tag == "button"]
    assert [one["aria-pressed"] for one in buttons] == ["true", "false"]
    assert [json.loads(one["data-fill"] or "") for one in buttons] == [{"joints-panels": "10"}, {"joints-panels": "9"}]
    assert {one["data-do"] for one in buttons} == {"fill"}


def test_what_is_folded_has_its_conclusion_on_the_fold_and_nothing_is_folded_away_to_nothing() -> None:
    made = folded("How to <read>", "*2* of 3", paragraph("the rest"))
    assert made.startswith('<details class="fold"><summary>') and made.index("<b>2</b>") < made.index("</summary>")
    assert made.index("</summary>") < made.index("the rest") and "<read>" not in made
    alone = folded("How to read it", "all of it", "")
    assert "details" not in alone and "all of it" in alone
