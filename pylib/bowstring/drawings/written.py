"""A drawing's elements as text, sign for sign as ElementTree writes them.

Without its encoder, and without its search for namespaces, which no drawing has.
"""

from __future__ import annotations

from collections.abc import Callable
from html import escape
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

CDATA = "<![CDATA[%s]]>"
"""The tag that svgwrite gives to text which stands as it is."""


def written(element: Element) -> str:
    """Return an element with all in it as XML; its texts have no control characters."""
    pieces: list[str] = []
    _write(element, pieces.append)
    return "".join(pieces)


def _write(element: Element, write: Callable[[str], object]) -> None:
    tag, text = element.tag, element.text
    if tag == CDATA:
        write(CDATA % text)
        return
    write(f"<{tag}")
    for name, value in element.items():
        quoted = escape(value, quote=False).replace('"', "&quot;")
        write(f' {name}="{quoted}"')
    if not text and not len(element):
        write(" />")
        return
    write(">")
    if text:
        write(escape(text, quote=False))
    for child in element:
        _write(child, write)
    write(f"</{tag}>")
