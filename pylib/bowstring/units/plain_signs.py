"""Text in the signs that every phone's text messages have: GSM 7-bit, the basic table alone (3GPP TS 23.038, 6.2.1).

A message with any other sign is sent in another coding, at 70 signs a message, or with a question mark in its place.
"""

from __future__ import annotations

import re
import unicodedata

BASIC = frozenset(
    "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿"
    "abcdefghijklmnopqrstuvwxyzäöñüà"
)
"""The basic table's signs; those of its extension ([ ] { } and others) count as two, and stay out."""

_INSTEAD = {
    **dict.fromkeys("“”„″", '"'),
    **dict.fromkeys("‘’‚′`´", "'"),
    **dict.fromkeys("–—−‐‑~", "-"),
    **dict.fromkeys("[{", "("),
    **dict.fromkeys("]}", ")"),
    **dict.fromkeys("|\\⁄", "/"),
    **dict.fromkeys("\t\r\n\N{NO-BREAK SPACE}\N{NARROW NO-BREAK SPACE}\N{THIN SPACE}", " "),
    "…": "...", "×": "x", "·": "-", "•": "-", "±": "+-", "€": "EUR", "^": "", "œ": "oe", "Œ": "OE", "ł": "l",
       "Ł": "L", "đ": "d", "Đ": "D",
}  # fmt: skip
_FRACTION = re.compile("(?<=[0-9])(?=[¼½¾⅛⅜⅝⅞])")
UNKNOWN = "?"


def in_plain_signs(text: str) -> str:
    """Return a text in the basic signs: an accent that they lack is dropped, a sign of no likeness is a ``?``.

    >>> in_plain_signs("Jardín público: 27°01′52″, 5½ in")
    'Jardin publico: 27 deg 01\\'52", 5-1/2 in'
    """
    text = re.sub("° ?(?=[0-9])", " deg ", text).replace("°", " deg")
    return "".join(map(_plain, _FRACTION.sub("-", text)))


def _plain(sign: str) -> str:
    if sign in _INSTEAD:
        return _INSTEAD[sign]
    if sign in BASIC:
        return sign
    if unicodedata.category(sign) in ("Cf", "Cc", "Mn"):  # invisible, or an accent by itself
        return ""
    apart = unicodedata.normalize("NFKD", sign)
    if apart == sign:
        return UNKNOWN
    return "".join(map(_plain, apart))
