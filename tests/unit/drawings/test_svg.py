"""The adapter to svgwrite: what it lets through, what it refuses; a person's text is never markup."""

from __future__ import annotations

import math
import re
import xml.etree.ElementTree as ET

import pytest

from bowstring.drawings.svg import SIZES, STYLE, Drawing, number, visible
from unit.drawings.drawing_reader import Read


def drawing(**changes: str) -> Drawing:
    return Drawing(**{"id": "d1", "title": "A title", "description": "What it shows", **changes})


def finished(made: Drawing, **keys: float) -> str:
    return made.finish((0.0, 0.0, 100.0, 50.0), **keys)


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (0.0, "0"),
        (-0.0, "0"),
        (-0.0004, "0"),
        (1.0005, "1"),
        (12.3456, "12.346"),
        (-7.1, "-7.1"),
        (1e6, "1000000"),
        (3, "3"),
    ],
)
def test_coordinates_are_rounded_to_three_decimals_without_minus_zero(value: float, text: str) -> None:
    assert number(value) == text


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, True, False, 1.1e6, "3", None])
def test_what_is_no_place_on_paper_is_refused(value: float) -> None:
    with pytest.raises(ValueError, match="coordinate"):
        number(value)


def test_a_bad_coordinate_is_refused_wherever_it_is_written() -> None:
    made = drawing()
    for write in (
        lambda: made.lines([[(0.0, 0.0), (math.nan, 1.0)]], "line"),
        lambda: made.square((math.inf, 0.0), 2.0, "stake"),
        lambda: made.dot((0.0, 0.0), math.nan, "solid"),
        lambda: made.text("M", (0.0, math.nan), "name"),
        lambda: made.path([("M", (0.0, 0.0)), ("C", (1.0, 1.0), (math.nan, 1.0), (2.0, 2.0))], "line"),
    ):
        with pytest.raises(ValueError, match="coordinate"):
            write()
    with pytest.raises(ValueError, match="coordinate"):
        made.finish((0.0, 0.0, math.inf, 1.0))
    with pytest.raises(ValueError, match="empty"):
        made.finish((0.0, 0.0, math.nan, 1.0))


def test_title_and_description_are_what_the_picture_is_labelled_by() -> None:
    read = Read(finished(drawing(title="Plan", description="Chord 38 ft")))
    assert read.root.attrib["role"] == "img"
    assert read.described() == ("Plan", "Chord 38 ft")


HOSTILE = "<script>alert(1)</script> & \"quoted\" 'so' ]]> <![CDATA[ --> &lt;"


def test_hostile_text_stays_text() -> None:
    made = drawing(title=HOSTILE, description=HOSTILE)
    made.text(HOSTILE, (1.0, 2.0), "word", data={"for": HOSTILE})
    made.square((5.0, 5.0), 2.0, "stake", {"stake": HOSTILE})
    svg = finished(made)
    assert "<script" not in svg
    read = Read(svg)
    assert read.described() == (HOSTILE, HOSTILE)
    assert [(words.text, words.stake) for words in read.words()] == [(HOSTILE, HOSTILE)]
    assert list(read.stakes()) == [HOSTILE]
    assert not [element for element in read.root.iter() if element.tag.endswith("script")]


def test_control_characters_become_visible_and_the_drawing_stays_readable() -> None:
    text = "a\x00b\x07c\x1bd\x7fe\x85f\ud800g\uffffh\u202e21\u2066i\nj\tk"
    shown = visible(text)
    assert shown == "a␀b␇c␛d␡e\ufffdf\ufffdg\ufffdh\ufffd21\ufffdi j k"
    made = drawing(title=text, description=text)
    made.text(text, (0.0, 0.0), "word")
    assert Read(finished(made)).all_text() == shown
    every = "".join(chr(code) for code in range(0x2100))
    ET.fromstring(f"<t>{visible(every).replace('&', '').replace('<', '')}</t>")


def test_ordinary_writing_is_left_alone() -> None:
    for text in ("40' 6-1/2\"", "Ecke Pumpenhaus – Süd", "38° 40′ 12″", "½ in", "東の杭", "🪵"):
        assert visible(text) == text


@pytest.mark.parametrize("bad", ["", "1a", "a b", "a'b", 'a"', "a<b", "é", "a\n", "x;y"])
def test_an_id_that_could_break_a_reference_is_refused(bad: str) -> None:
    with pytest.raises(ValueError, match="id"):
        drawing(id=bad)


def test_ids_carry_the_caller_s_prefix_and_nothing_else_does() -> None:
    ids = re.findall(r' id="([^"]*)"', finished(drawing(id="plan-2")))
    assert sorted(ids) == ["plan-2", "plan-2-desc", "plan-2-title"]


def test_two_drawings_in_one_process_are_alike() -> None:
    assert finished(drawing()) == finished(drawing())


def test_a_class_without_a_style_and_a_bad_path_are_refused() -> None:
    made = drawing()
    with pytest.raises(ValueError, match="without a style"):
        made.lines([[(0.0, 0.0), (1.0, 1.0)]], "line purple")
    with pytest.raises(ValueError, match="can't have"):
        made.path([("C", (0.0, 0.0))], "line")
    with pytest.raises(ValueError, match="can't have"):
        made.path([("A", (0.0, 0.0))], "line")
    with pytest.raises(ValueError, match="kind or anchor"):
        made.text("M", (0.0, 0.0), "huge")


def test_paper_size_in_millimetres_keeps_the_shape() -> None:
    root = Read(finished(drawing(), width_mm=180.0)).root
    assert (root.attrib["width"], root.attrib["height"]) == ("180mm", "90mm")
    assert "width" not in Read(finished(drawing())).root.attrib


def luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance)."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_ink_stands_out_from_the_ground() -> None:
    """Contrast ratio of WCAG 2.2: text held to 7:1 (level AAA), lines to 4.5:1 (3:1 is asked)."""
    colours = dict(re.findall(r"--draw-(\w+),(#\w{6})", STYLE))
    ground = luminance(colours.pop("ground"))
    ratios = {name: (ground + 0.05) / (luminance(value) + 0.05) for name, value in colours.items()}
    assert set(ratios) == {"ink", "soft", "accent"}
    assert ratios["ink"] >= 7 and ratios["soft"] >= 4.5 and ratios["accent"] >= 7, ratios


def test_style_is_scoped_and_black_on_paper() -> None:
    rules = re.sub(r"@media[^{]*\{((?:[^{}]*\{[^}]*\})*)\}", r"\1", STYLE)
    selectors = [one for block in re.findall(r"([^{}]+)\{", rules) for one in block.split(",")]
    assert selectors and all(one.startswith(".bd-drawing") for one in selectors), selectors
    printed = STYLE[STYLE.index("@media print") :]
    assert printed.count("#000") == 3 and "--draw-ground:#fff" in printed
    assert all(f".bd-{kind}{{font-size:{size:g}px}}" in STYLE for kind, size in SIZES.items())
