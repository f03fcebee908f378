"""What messengers, mail programs and people make of a link: each wrapping is a function of the text and of chance."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

Wrapping = Callable[[str, Random], str]

UNSEEN = "\u200b\u200c\u200d\u2060\ufeff\u00ad\u200e\u200f\u202a\u202c\u2066\u2069"
"""Signs of no width that programs put into long words, or around what runs the other way."""

BREAKS = ("\n", "\r\n", "\r", "\n> ", "\n>> ", "\r\n\t", "=\n", "=\r\n", " \n  ", "\u2028")
"""Ends of lines within a link: folded mail, a quoted reply, quoted-printable."""

AFTER = (
    ".",
    ",",
    "!",
    "?",
    ";",
    ":",
    ")",
    "]",
    "}",
    ">",
    "'",
    '"',
    "\u201d",
    "\u2019",
    "\u00bb",
    "...",
    "\u2026",
    "~",
    "*",
    "|",
)
BEFORE = ("(", "[", "{", "<", "'", '"', "\u201c", "\u2018", "\u00ab", "*", "_", "~", "|", ">", "> ", "- ", "1. ")
WORDS = (
    "the walk",
    "Here:",
    "see you at 7",
    "l\u00e4uft",
    "\u0627\u0644\u0631\u0627\u0628\u0637",
    "\u6d4b\u91cf",
    "#12",
    "b1",
    "b2 or b3",
    "50%",
    "%zz",
    "a=b&c",
)
TRACKING = ("utm_source=mail&utm_medium=text", "fbid=b1abcdef", "ref=b2000", "x=%23b1&y=%20", "s=09")


def _inside(text: str, chance: Random, *signs: str) -> str:
    place = chance.randrange(len(text) + 1)
    return text[:place] + chance.choice(signs) + text[place:]


def _as_numbers(text: str, chance: Random) -> str:
    """Some letters, or all, written as their numbers; a percent sign stands for itself only where it must."""
    which = chance.choice(("#", "#b", "all", "some"))
    coded = []
    for sign in text:
        some = which == "all" or sign in which or (which == "some" and chance.random() < 0.2) or sign == "%"
        coded.append("".join(f"%{byte:02{chance.choice('xX')}}" for byte in sign.encode()) if some else sign)
    return "".join(coded)


AT_AN_ADDRESS: dict[str, Wrapping] = {
    "bare": lambda link, chance: link,
    "sharp": lambda link, chance: f"#{link}",
    "address": lambda link, chance: f"https://example.org/#{link}",
    "page": lambda link, chance: f"https://example.org/layout/page.html#{link}",
    "file": lambda link, chance: f"file:///C:/Users/me/bowstring%20(1).html#{link}",
    "tracked before": lambda link, chance: f"https://example.org/?{chance.choice(TRACKING)}#{link}",
    "tracked after": lambda link, chance: f"https://example.org/#{link}&{chance.choice(TRACKING)}",
    "asked after": lambda link, chance: f"https://example.org/#{link}?{chance.choice(TRACKING)}",
    "to a text": lambda link, chance: f"https://example.org/#{link}:~:text=walk",
}
WITHIN: dict[str, Wrapping] = {
    "broken": lambda text, chance: _inside(text, chance, *BREAKS),
    "unseen": lambda text, chance: _inside(text, chance, *UNSEEN),
    "spaced": lambda text, chance: _inside(text, chance, " ", "\u00a0", "\u2009", "%20"),
    "folded": lambda text, chance: chance.choice(("\n", "=\r\n", "\r\n> ")).join(
        text[place : place + 30] for place in range(0, len(text), 30)
    ),
    "as numbers": _as_numbers,
    "escaped": lambda text, chance: text.replace("_", "\\_").replace("-", "\\-"),
}
AROUND: dict[str, Wrapping] = {
    "sign after": lambda text, chance: text + chance.choice(AFTER),
    "sign before": lambda text, chance: chance.choice(BEFORE) + text,
    "in brackets": lambda text, chance: f"<{text}>",
    "in quotes": lambda text, chance: f'"{text}"',
    "markdown": lambda text, chance: f"[{chance.choice(WORDS)}]({text})",
    "markdown twice": lambda text, chance: f"[{text}]({text})",
    "in code": lambda text, chance: f"`{text}`",
    "HTML": lambda text, chance: f'<a href="{text}">{chance.choice(WORDS)}</a>',
    "words after": lambda text, chance: f"{text} {chance.choice(WORDS)}",
    "words before": lambda text, chance: f"{chance.choice(WORDS)} {text}",
    "words at once after": lambda text, chance: f"{text}{chance.choice(WORDS)}",
    "words at once before": lambda text, chance: f"{chance.choice(WORDS)}{text}",
    "a line before": lambda text, chance: f"{chance.choice(WORDS)}\n{text}",
    "signature": lambda text, chance: f"{text}\n\n-- \nb. hutch\nhttps://example.com/#team",
    "isolated": lambda text, chance: f"\u2068{text}\u2069",
}


def wrapped(link: str, chance: Random) -> str:
    """Return a link as somebody may have received it."""
    text = AT_AN_ADDRESS[chance.choice(list(AT_AN_ADDRESS))](link, chance)
    for kind in chance.sample(list(WITHIN), chance.choice((0, 0, 1, 1, 2))):
        text = WITHIN[kind](text, chance)
    for kind in chance.sample(list(AROUND), chance.choice((0, 1, 2, 3))):
        text = AROUND[kind](text, chance)
    return text


def damaged(link: str, chance: Random) -> str:
    """Return a link in which one sign is another, two are swapped, or some are missing."""
    place = chance.randrange(len(link) - 1)
    kind = chance.choice(("changed", "swapped", "cut off", "cut out"))
    if kind == "changed":
        other = chance.choice([sign for sign in "abcxyzABCXYZ0189-_" if sign != link[place]])
        return link[:place] + other + link[place + 1 :]
    if kind == "swapped":
        later = chance.choice([at for at in range(len(link)) if link[at] != link[place]])
        first, last = sorted((place, later))
        return link[:first] + link[last] + link[first + 1 : last] + link[first] + link[last + 1 :]
    if kind == "cut off":
        return link[: place + 1] if chance.random() < 0.5 else link[place + 1 :]
    return link[:place] + link[place + chance.randrange(1, len(link) - place) :]
