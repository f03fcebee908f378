"""Handing a job over: its code, its texts for messages, its files; made when somebody asks for them."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from html import escape

from bowstring.errors import BadJob
from bowstring.page.answering import LastAnswer
from bowstring.page.filing import file_name
from bowstring.page.talk import Asked, refused
from bowstring.report.forms.answer import Answer
from bowstring.sheet.markup import marked
from bowstring.words import say

WHILE_STOPPED = ("people", "svg", "png")
"""Files that say themselves that nobody may build from them yet."""

_INSTRUMENT = "instrument-"
IN_THE_JOBS_UNIT = ("dxf", "instrument-n-e", "instrument-x-y")
"""Files that are laid over the drawing, or set out by it: they have its unit, whatever the device shows."""

DOTS_PER_INCH = 300
PLAN_WIDE = 190.0
"""Millimeters: a sheet of Letter or A4 within its margins."""


def handed(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return what is handed over of ``{"fields", "address", "what": "qr" | "messages" | "files"}`` as ``{"html"}``,
    every text in it escaped, or ``{"error"}``.

    Raises ``ValueError`` for anything else.
    """
    what = asked["what"]
    if what not in _MADE:
        raise ValueError(f"nothing is handed over as {what!r}")
    try:
        return {"html": _MADE[what](last.for_fields(asked["fields"]), asked, last)}
    except BadJob as refusal:
        return refused(refusal)


def _line(key: str, **values: object) -> str:
    return f'<p class="help">{escape(say(key, **values))}</p>'


def _qr(answered: Answer, asked: Asked, last: LastAnswer) -> str:
    from bowstring.drawings.qr import LEVELS, code_of, qr_svg

    if not last.link(asked["fields"])[0]:
        return _line("hand_over.qr_long")
    code = code_of(last.whole_link(asked))
    if code is None:
        return _line("hand_over.qr_long")
    told = _line("hand_over.qr_how")
    told += _line("hand_over.qr_low") if code.level != LEVELS[0] else ""
    told += "" if asked.get("address") else _line("hand_over.qr_no_address")
    return qr_svg(code, id="hand-qr") + told


def _messages(answered: Answer, asked: Asked, last: LastAnswer) -> str:
    from bowstring.sheet.messages import messages

    rows = "".join(
        f'<li><p>{marked(text)}</p><button type="button" class="btn" data-copy '
        f'aria-label="{escape(say("hand_over.copy_one", number=number))}">{escape(say("hand_over.copy"))}</button></li>'
        for number, text in enumerate(messages(answered), 1)
    )
    return f'{_line("hand_over.messages_how")}<ol class="texts">{rows}</ol>'


def _files(answered: Answer, asked: Asked, last: LastAnswer) -> str:
    """A button for each file; which order of coordinates an instrument wants is asked by there being two."""
    stopped = bool(answered["stops"])
    drawn = "hand_over.instrument_drawn" if answered["site"]["axes"] else "hand_over.instrument"
    parts = [
        _group("hand_over.people", ("people",)),
        _group("hand_over.drawings", ("svg", "png", *(() if stopped else ("dxf",)))),
        _line("hand_over.stopped") if stopped else _group(drawn, ("instrument-n-e", "instrument-x-y")),
    ]
    return "".join(parts)


def _group(key: str, kinds: tuple[str, ...]) -> str:
    buttons = "".join(
        f'<button type="button" class="btn" data-file="{kind}">{escape(say(f"hand_over.file.{kind}"))}</button>'
        for kind in kinds
    )
    return f'{_line(key)}<div class="actions">{buttons}</div>'


_MADE: dict[str, Callable[[Answer, Asked, LastAnswer], str]] = {"qr": _qr, "messages": _messages, "files": _files}


def handed_file(asked: Asked, last: LastAnswer) -> Mapping[str, object]:
    """Return a file of ``{"fields", "kind"}`` as ``{"name", "type", "text"}`` or ``{"error"}``; a picture is told as a
    drawing with its ``pixels``, which the page's script paints.

    Raises ``ValueError`` for a kind that isn't offered.
    """
    kind = str(asked["kind"])
    if kind not in _FILES:
        raise ValueError(f"no such file: {kind!r}")
    ending, media, make = _FILES[kind]
    try:
        answered = last.own(asked["fields"]) if kind in IN_THE_JOBS_UNIT else last.for_fields(asked["fields"])
    except BadJob as refusal:
        return refused(refusal)
    if answered["stops"] and kind not in WHILE_STOPPED:
        return {"error": say("hand_over.stopped")}
    return {"name": file_name(answered["title"], ending, _what(kind, answered)), "type": media, **make(answered)}


def _what(kind: str, answered: Answer) -> str:
    """What a file's name says beside the title: of a line of several pieces, which one, too."""
    part = answered["lined"]
    piece = f"arc-{part['at']}" if part is not None and len(part["pieces"]) > 1 else ""
    return "-".join(text for text in (piece, _told_apart(kind, answered)) if text)


def _told_apart(kind: str, answered: Answer) -> str:
    """What a file's name says of its columns: a list without its head is read in their order, and in some unit."""
    if kind == "people":
        return "stakes"
    if not kind.startswith(_INSTRUMENT):
        return ""
    from bowstring.drawings.coordinates import coordinates
    from bowstring.sheet.instrument import axes_of

    places = coordinates(answered)
    return "-".join((*(axis[0] for axis in axes_of(places, kind.removeprefix(_INSTRUMENT))), places.unit))


def _people(answered: Answer) -> dict[str, object]:
    from bowstring.sheet.csv import stakes_csv

    return {"text": stakes_csv(answered)}


def _svg(answered: Answer) -> dict[str, object]:
    from bowstring.drawings.plan import plan_svg
    from bowstring.drawings.svg import GROUND

    drawing = plan_svg(answered, id="plan", width_mm=PLAN_WIDE)
    return {"text": drawing.replace(GROUND, "#fff")}  # it goes on paper, or into somebody else's page


def _png(answered: Answer) -> dict[str, object]:
    """The plan with its size in pixels, as many to the inch as a printer wants."""
    drawing = str(_svg(answered)["text"])
    sizes = {name: float(size) for name, size in re.findall(r' (width|height)="([0-9.]+)mm"', drawing)}
    pixels = {name: round(size / 25.4 * DOTS_PER_INCH) for name, size in sizes.items()}
    for name, count in pixels.items():
        drawing = re.sub(rf' {name}="[0-9.]+mm"', f' {name}="{count}"', drawing, count=1)
    return {"text": drawing, "pixels": [pixels["width"], pixels["height"]]}


def _dxf(answered: Answer) -> dict[str, object]:
    from bowstring.drawings.dxf import layout_dxf

    return {"text": layout_dxf(answered)}


def _instrument(order: str) -> Callable[[Answer], dict[str, object]]:
    def made(answered: Answer) -> dict[str, object]:
        from bowstring.sheet.instrument import instrument_csv

        return {"text": instrument_csv(answered, order)}

    return made


_FILES: dict[str, tuple[str, str, Callable[[Answer], dict[str, object]]]] = {
    "people": ("csv", "text/csv", _people),
    "svg": ("svg", "image/svg+xml", _svg),
    "png": ("png", "image/png", _png),
    "dxf": ("dxf", "image/vnd.dxf", _dxf),
    "instrument-n-e": ("csv", "text/csv", _instrument("n-e")),
    "instrument-x-y": ("csv", "text/csv", _instrument("x-y")),
}
"""Kinds of files: how their names end, their media type, what makes them."""
