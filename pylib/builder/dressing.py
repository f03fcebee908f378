"""The page's own words in another language: what its script puts in the place of those that stand in the page.

The page is rendered once a language; what differs is told by the words that stand there, in the page's order. So a word
is only ever replaced where it still stands.
"""

from __future__ import annotations

import json
from html.parser import HTMLParser

UNREAD = ("script", "style", "noscript")
"""Elements whose text isn't read, or not while scripts run."""

Told = dict[str, list[str]]


class _Words(HTMLParser):
    """Collects the texts and the attributes of a page, in order."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self.attributes: list[tuple[str, str]] = []
        self.script_words = ""
        self._inside: list[str] = []
        self._is_words = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in UNREAD:
            self._inside.append(tag)
            self._is_words = ("id", "words") in attrs
        if not self._inside:
            self.attributes += [(name, text) for name, text in attrs if text]

    def handle_endtag(self, tag: str) -> None:
        if self._inside and self._inside[-1] == tag:
            self._inside.pop()

    def handle_data(self, data: str) -> None:
        if self._inside:
            if self._is_words:
                self.script_words += data
        elif data.strip():
            self.texts.append(data.strip())


def dressing(page: str, other: str, tag: str) -> str:
    """Return, as JSON, what makes the rendered ``page`` the ``other`` one; ``tag``: what it says that its language is.

    ``{"tag", "texts": {text: [its texts there, one each time it stands in the page]}, "attributes": the same of
    "name=text", "words": the words of the page's script}``. Raises ``ValueError`` for pages of another build.
    """
    one, two = _read(page), _read(other)
    if len(one.texts) != len(two.texts) or [n for n, _ in one.attributes] != [n for n, _ in two.attributes]:
        raise ValueError("the page has other parts in another language")
    texts, attributes = Told(), Told()
    for before, after in zip(one.texts, two.texts, strict=True):
        texts.setdefault(before, []).append(after)
    for (name, before), (_, after) in zip(one.attributes, two.attributes, strict=True):
        attributes.setdefault(f"{name}={before}", []).append(after)
    told = {
        "tag": tag,
        "texts": {text: _short(there) for text, there in texts.items() if set(there) != {text}},
        "attributes": {
            text: _short(there) for text, there in attributes.items() if set(there) != {text[text.index("=") + 1 :]}
        },
        "words": json.loads(two.script_words),
    }
    return json.dumps(told, ensure_ascii=False, separators=(",", ":"))


def _read(page: str) -> _Words:
    words = _Words()
    words.feed(page)
    words.close()
    return words


def _short(there: list[str]) -> list[str]:
    """One text stands for all where they are the same."""
    return there[:1] if len(set(there)) == 1 else there
