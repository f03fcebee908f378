"""A link found in whatever a messenger made of it: the text is cleaned step by step, and the check sum decides.

A link tells its own length and ends in its check, so nobody has to know what stands before and after it. What is taken
out from within are only signs that no link has and that a person doesn't see or type: spaces and ends of lines, signs
of no width, marks of quoting, bars before ``-`` and ``_``, and percent signs that stand for plain letters.
"""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator

FORMS = ("b1", "b2")
LENGTH_DIGITS, CHECK_DIGITS = 3, 7
DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"

LINK_LIMIT = 20_000
"""Most characters of a link: browsers and messengers cut longer ones."""

MESSAGE_LIMIT = 5 * LINK_LIMIT
"""Most characters of a text in which a link is looked for: every sign of the longest link may be three."""

_START = re.compile(r"(?=b[12]([0-9a-z]{3}))")
_BODY = re.compile("[A-Za-z0-9_-]*")
_CHECK = re.compile("[01][0-9a-z]{6}")
"""No CRC of 32 bits begins otherwise."""
_PERCENT = re.compile("(?:%[0-9A-Fa-f]{2})+")
_HIDDEN = (
    r"\s\x00-\x1f\x7f-\x9f\u00ad\u034f\u061c\u115f\u1160\u17b4\u17b5\u180b-\u180f\u200b-\u200f\u202a-\u202e\u2060-\u206f"
    r"\u3164\ufe00-\ufe0f\ufeff\uffa0"
)
"""Spaces of all kinds, controls, and signs that have no width."""

_BREAK = re.compile(rf"(?:=[{_HIDDEN}]{{0,8}}?)?[\r\n\u0085\u2028\u2029][>|{_HIDDEN}]*")
"""The end of a line with what mail programs put around it: a soft break's sign before it, a quotation's after it."""

_UNSEEN = re.compile(rf"[{_HIDDEN}]+|\\(?=[-_#])")
MOST_VARIANTS = 10
"""A message that was passed on may have been encoded and folded three times; a plain one has one variant."""


def find_links(text: str) -> list[str]:
    """Return every whole link in a text, each once: those that the least cleaning shows.

    >>> from bowstring.job.link import write_link
    >>> link = write_link({"bowstring": 1, "arc": {"radius": "12 m", "chord": "9 m"}})
    >>> find_links(f"See <https://example.org/#{link[:9]}=\\n{link[9:]}>.") == [link]
    True
    """
    for variant in _variants(text):
        found = list(dict.fromkeys(_whole_links(variant)))
        if found:
            return found
    return []


def base36(number: int, digits: int) -> str:
    """Return a number's last so many base-36 digits."""
    text = ""
    for _ in range(digits):
        number, digit = divmod(number, 36)
        text = DIGITS[digit] + text
    return text


def check_of(head: str) -> str:
    """Return what ends a link: the check of all before it."""
    return base36(zlib.crc32(head.encode()), CHECK_DIGITS)


def _variants(text: str) -> Iterator[str]:
    """The text as it is, then with less and less that isn't a link's, as many ways as a message may have gone."""
    waiting, seen = [text], {text}
    for variant in waiting:
        yield variant
        for other in (_UNSEEN.sub("", _BREAK.sub("", variant)), _PERCENT.sub(_decoded, variant)):
            if other not in seen and len(seen) < MOST_VARIANTS:
                seen.add(other)
                waiting.append(other)


def _decoded(found: re.Match[str]) -> str:
    return bytes.fromhex(found[0].replace("%", "")).decode("utf-8", "replace")


def _whole_links(text: str) -> Iterator[str]:
    """Yield what has the length and the check of a link, from each place where one could begin."""
    end_of_body = 0
    done = 0  # nothing of a link that was found is another one's
    for start in _START.finditer(text):
        begin = start.start()
        if begin < done:
            continue
        length = int(start[1], 36)
        end = begin + 2 + LENGTH_DIGITS + length + CHECK_DIGITS
        if end > len(text) or end - begin > LINK_LIMIT:
            continue
        if begin >= end_of_body:
            end_of_body = _BODY.match(text, begin).end()  # type: ignore[union-attr]
        if end > end_of_body or not _CHECK.fullmatch(text, end - CHECK_DIGITS, end):
            continue
        if check_of(text[begin : end - CHECK_DIGITS]) == text[end - CHECK_DIGITS : end]:
            done = end
            yield text[begin:end]
