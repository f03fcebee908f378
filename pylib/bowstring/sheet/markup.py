"""Texts as HTML: escaped, with every number that mustn't break across lines held together."""

from __future__ import annotations

import re
from functools import lru_cache
from html import escape

from bowstring.words.isolated import isolated

NUMBER = re.compile(
    r"-?\d+'[ -]?\d+(?:-\d+/\d+)?\"|-?\d+/\d+\"|-?\d+(?:-\d+/\d+)?\"|-?(?:\d+-)?\d+/\d+ in\b"
    r"|-?\d+(?:\.\d+)?(?: (?:ft|in|mm|m)|%)(?!\w)|[-+]?\d+(?:\.\d+)?°(?:\d+'(?:\d+\")?)?|\d+(?:-\d+){2}\b"
    r"|\b\d+-\d+/\d+\b"
)


@lru_cache(4096)  # a sheet that is made anew at each keystroke says most of it again
def marked(text: str) -> str:
    r"""Return a text as HTML, its lengths and angles each on one line.

    5' at a line's end and 3" at the next one's start would be read as another length.

    >>> marked('5\' 3" & more')
    '<span class="n">5&#x27; 3&quot;</span> &amp; more'
    >>> marked("next is 3-3/4")
    'next is <span class="n">3-3/4</span>'
    """
    text = isolated(text)
    pieces, place = [], 0
    for found in NUMBER.finditer(text):
        pieces += [escape(text[place : found.start()]), f'<span class="n">{escape(found[0])}</span>']
        place = found.end()
    return "".join([*pieces, escape(text[place:])])
