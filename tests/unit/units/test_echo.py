"""What was typed is shown back on one short line of printable text."""

from __future__ import annotations

from hypothesis import example, given
from hypothesis import strategies as st

from bowstring.units.echo import ECHO_LIMIT, quoted


@given(st.text(st.characters(codec=None, categories=None), max_size=100))
@example("\u202e" * 50)
@example("x" * 41)
def test_an_echo_is_one_short_line_of_printable_text(text: str) -> None:
    shown = quoted(text)
    assert shown.isprintable() and len(shown) <= ECHO_LIMIT + 2
    if text.isprintable() and len(text) <= ECHO_LIMIT:
        assert shown[1:-1] == text


def test_an_echo_makes_hidden_characters_visible() -> None:
    assert quoted("4\u202e0\n") == "\u201c4<U+202E>0<U+000A>\u201d"
    assert quoted("x" * 41)[1:-1] == "x" * 39 + "\N{HORIZONTAL ELLIPSIS}"
