"""The keys at the thumb: what a tape or a drawing carries, and nothing else."""

from __future__ import annotations

from html import escape

from bowstring.page.entries import said

_FRACTIONS = ("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8")
_SIXTEENTHS = tuple(f"{top}/16" for top in range(1, 16, 2))
_THIRTYSECONDS = tuple(f"{top}/32" for top in range(1, 32, 2))


def keypad_html() -> str:
    """Return the strip of keys, put away; the script shows it where a finger types."""
    digits = "".join(_key(str(number)) for number in (*range(1, 10), 0))
    signs = "".join(
        _key(sign, f"numbers.key_{name}", "s")
        for sign, name in (
            ("'", "feet"),
            ('"', "inches"),
            ("-", "dash"),
            ("/", "over"),
            (".", "point"),
            (",", "comma"),
            (" ", "space"),
        )
    )
    fractions = "".join(_key(text, kind="q") for text in _FRACTIONS)
    finer = "".join(_key(text, kind="q") for text in (*_SIXTEENTHS, *_THIRTYSECONDS))
    doing = "".join(
        f'<button type="button" class="w" data-key="{name}">{said(f"numbers.key_{name}")}</button>'
        for name in ("delete", "clear", "letters", "next", "done")
    )
    return (
        f'<div id="keys" class="keys" role="group" aria-label="{said("numbers.keys")}" hidden>'
        f'<div class="finer" hidden>{finer}</div>{digits}{signs}{fractions}{doing}</div>'
    )


def _key(sign: str, spoken: str = "", kind: str = "d") -> str:
    label = f' aria-label="{said(spoken)}"' if spoken else ""
    return f'<button type="button" class="{kind}" value="{escape(sign)}"{label}>{escape(sign)}</button>'
