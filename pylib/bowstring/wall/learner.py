"""A picture for the learner's page: what is to be worked out is a blank there, and what would tell it isn't there."""

from __future__ import annotations

import re
from html import escape

from bowstring.wall.board import width_of

_TEXT = re.compile(
    r'<text(?: class="([^"]*)")? font-size="([^"]+)" text-anchor="(start|middle|end)" x="([^"]+)" y="([^"]+)">'
    r"([^<]*)</text>"
)
_TITLE = re.compile(r"<(title|desc)( [^>]*)?>[^<]*</\1>")
_HEAD = re.compile(r'<g data-head="[^>]*>.*?</g>')
_LEAST, _WIDE = 34.0, 150.0
"""The smallest number that has a blank of its own in a picture, and how wide that is at least: a pencil needs room."""
_LEFT, _RIGHT = 30.0, 1250.0


def for_learner(svg: str, question: str) -> str:
    """Return a sheet's picture without its answers; ``question``: what it is called instead of what it tells."""
    svg = _TITLE.sub(lambda found: f"<{found[1]}{found[2] or ''}>{escape(question)}</{found[1]}>", svg)
    return _TEXT.sub(_blank, _HEAD.sub("", svg))


def _blank(found: re.Match[str]) -> str:
    classes, size, anchor, x, y, words = found.groups()
    kinds = (classes or "").split()
    if "w-tell" in kinds:
        return ""
    if "w-num" not in kinds:
        return found[0]
    if float(size) < _LEAST:
        return ""
    wide = max(width_of(words, float(size)), _WIDE)
    left = float(x) - {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
    left = min(max(left, _LEFT), _RIGHT - wide)
    return f'<path class="w-thin" d="M{left:.0f},{float(y) + 4:.0f} h{wide:.0f}" />'
