"""The keys at the thumb: the signs that a tape or a drawing carries, in the order of a phone."""

from __future__ import annotations

from html import escape

from bowstring.page.entries import said

_FINER = {16: range(1, 16, 2), 32: range(1, 32, 2)}
_SPOKEN = {"'": "feet", '"': "inches", "-": "dash", "/": "over", ".": "point", ",": "comma", " ": "space",
           "°": "degrees"}  # fmt: skip
_OF_ANGLES = {"'": "minutes", '"': "seconds"}
_UNDER = {"'": "ft", '"': "in"}
_DELETE = (
    '<svg width="30" height="22" viewBox="0 0 30 22" aria-hidden="true">'
    '<path d="M9 2h19v18H9L2 11zM14 7l8 8M22 7l-8 8"/></svg>'
)
_SPACE = '<svg width="26" height="12" viewBox="0 0 26 12" aria-hidden="true"><path d="M2 1v9h22V1"/></svg>'
_LAYOUTS = {
    "feet": ("1", "2", "3", "'", "1/8", "1/4", "4", "5", "6", '"', "3/8", "1/2", "7", "8", "9", "-", "5/8", "3/4",
             " ", "0", ".", "/", "7/8", "delete"),
    "decimal": ("1", "2", "3", "4", "5", "6", "7", "8", "9", ",", "0", ".", "-", " ", "delete"),
    "angle": ("1", "2", "3", "°", "4", "5", "6", "'", "7", "8", "9", '"', " ", "0", ".", "delete"),
}  # fmt: skip
"""The keys of a row of the form: in feet and inches, in a unit of decimals, for an angle."""


def keypad_html() -> str:
    """Return the strip of keys, put away; the script shows it, and the layout that fits, where a finger types."""
    pads = "".join(_pad(name, keys) for name, keys in _LAYOUTS.items())
    finer = "".join(
        f'<div class="finer" data-finer="{below}" hidden>{"".join(_key(f"{top}/{below}", "") for top in tops)}</div>'
        for below, tops in _FINER.items()
    )
    doing = "".join(_doing(name) for name in ("letters", "clear", "next", "done"))
    label = said("numbers.keys")
    return (
        f'<div id="keys" role="group" aria-label="{label}" hidden>{finer}{pads}<div class="doing">{doing}</div></div>'
    )


def _pad(name: str, keys: tuple[str, ...]) -> str:
    return f'<div class="pad" data-pad="{name}" hidden>{"".join(_key(key, name) for key in keys)}</div>'


def _key(sign: str, pad: str) -> str:
    if sign == "delete":
        label = said("numbers.key_delete")
        return f'<button type="button" class="q" data-key="delete" aria-label="{label}">{_DELETE}</button>'
    spoken = _OF_ANGLES.get(sign) if pad == "angle" else None
    spoken = spoken or _SPOKEN.get(sign, "")
    label = f' aria-label="{said(f"numbers.key_{spoken}")}"' if spoken else ""
    kind = "s" if spoken else "q" if "/" in sign else "d"
    under = f"<small>{_UNDER[sign]}</small>" if sign in _UNDER and pad == "feet" else ""
    shown = _SPACE if sign == " " else escape(sign)
    return f'<button type="button" class="{kind}" value="{escape(sign)}"{label}>{shown}{under}</button>'


def _doing(name: str) -> str:
    kind = " done" if name == "done" else ""
    return f'<button type="button" class="w{kind}" data-key="{name}">{said(f"numbers.key_{name}")}</button>'
