"""The layout as a drawing for other programs: DXF of release 12 (AC1009), which all that read DXF can read.

Written here, since the release is a few kinds of lines: a group code and its value, one under the other. Layers are
roles; true to scale in the job's feet or in metres, which the head and a text in the drawing say.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Sequence
from math import atan2, degrees

from bowstring.drawings.coordinates import Coordinates, Place, coordinates
from bowstring.report.alone import untitled
from bowstring.report.forms.answer import Answer
from bowstring.report.named import named_through
from bowstring.units.plain_signs import in_plain_signs
from bowstring.words import say

LAYERS = {"ARC": 1, "DRAWN": 2, "STAKES": 5, "STRING": 3, "CHECKS": 6, "OBSTACLES": 8, "TEXT": 7}
"""Each with its colour's number in the standard palette: red, yellow, blue, green, magenta, gray, black or white."""

_TEXT = 60.0
"""The chord over the height of a text."""

_LINES_END = "\r\n"

Group = tuple[int, object]


def layout_dxf(answer: Answer) -> str:
    """Return an answer's layout as the text of a DXF file; ASCII alone, in feet or metres as the job's unit is.

    Raises ``ValueError`` for a job that is stopped.
    """
    places = coordinates(answer)
    height = answer["staked"]["chord"] / _TEXT / places.size
    groups = [
        *_head(answer, places, height),
        *_tables(),
        (0, "SECTION"), (2, "ENTITIES"),
        *_arc(answer, places),
        *_stakes(answer, places, height),
        *_strings(answer, places),
        *_checks(answer, places),
        *_obstacles(answer, places, height),
        *_titles(answer, places, height),
        (0, "ENDSEC"), (0, "EOF"),
    ]  # fmt: skip
    return "".join(f"{code:>3}{_LINES_END}{_value(value)}{_LINES_END}" for code, value in groups)


def _value(value: object) -> str:
    if isinstance(value, float):
        return f"{value:.9f}"
    return _ascii(str(value))


def _ascii(text: str) -> str:
    """A text in the signs that every release and program has: what has none is a question mark. Two percent signs would
    begin a control code."""
    apart = (sign for sign in unicodedata.normalize("NFKD", in_plain_signs(text)) if not unicodedata.combining(sign))
    return " ".join("".join(apart).encode("ascii", "replace").decode().replace("%%", "% %").split())


def _told(answer: Answer, places: Coordinates) -> list[str]:
    """What a reader has to know of the numbers, each in a line."""
    frame = "dxf.frame_drawn" if places.drawn else "dxf.frame"
    offset = [say("dxf.offset", told=answer["offset"]["text"])] if answer["offset"] else []
    return [say("dxf.units", unit=say(f"dxf.unit_{places.unit}")), say(frame), *offset]


def _corners(answer: Answer, places: Coordinates) -> list[Place]:
    """Where stakes and obstacles stand."""
    spots = [(one["x"], one["y"]) for one in answer["stakes"]]
    spots += [(x, y) for one in answer["site"]["obstacles"] for x, y in one["outline"]]
    return [places.of(x, y) for x, y in spots]


def _lines(answer: Answer, places: Coordinates) -> list[str]:
    return [answer["title"] or untitled(answer), answer["hand"], *_told(answer, places)]


def _row_at(answer: Answer, places: Coordinates, height: float, row: int) -> Place:
    """Where a line of the text under everything begins."""
    corners = _corners(answer, places)
    return min(x for x, _ in corners), min(y for _, y in corners) - height * (3 + 2 * row)


def _head(answer: Answer, places: Coordinates, height: float) -> Iterator[Group]:
    for line in [say("dxf.made"), *_told(answer, places)]:
        yield 999, line
    yield from ((0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"))
    corners = _corners(answer, places)
    corners.append(_row_at(answer, places, height, len(_lines(answer, places))))
    for name, pick in (("$EXTMIN", min), ("$EXTMAX", max)):
        yield 9, name
        yield from _at((pick(x for x, _ in corners), pick(y for _, y in corners)))
    yield from ((9, "$LUNITS"), (70, 2), (9, "$LUPREC"), (70, 4), (0, "ENDSEC"))


def _tables() -> Iterator[Group]:
    yield from ((0, "SECTION"), (2, "TABLES"))
    yield from ((0, "TABLE"), (2, "LTYPE"), (70, 1), (0, "LTYPE"), (2, "CONTINUOUS"), (70, 64), (3, "Solid line"))
    yield from ((72, 65), (73, 0), (40, 0.0), (0, "ENDTAB"))
    yield from ((0, "TABLE"), (2, "LAYER"), (70, len(LAYERS)))
    for name, colour in LAYERS.items():
        yield from ((0, "LAYER"), (2, name), (70, 64), (62, colour), (6, "CONTINUOUS"))
    yield from ((0, "ENDTAB"), (0, "ENDSEC"))


def _at(place: Place, first: int = 10) -> Iterator[Group]:
    yield from ((first, place[0]), (first + 10, place[1]), (first + 20, 0.0))


def _line(layer: str, start: Place, end: Place) -> Iterator[Group]:
    yield from ((0, "LINE"), (8, layer), *_at(start), *_at(end, 11))


def _text(words: str, at: Place, height: float) -> Iterator[Group]:
    yield from ((0, "TEXT"), (8, "TEXT"), *_at(at), (40, height), (1, words))


def _outline(layer: str, corners: Sequence[Place]) -> Iterator[Group]:
    yield from ((0, "POLYLINE"), (8, layer), (66, 1), (70, 1), *_at((0.0, 0.0)))
    for corner in corners:
        yield from ((0, "VERTEX"), (8, layer), *_at(corner))
    yield from ((0, "SEQEND"), (8, layer))


def _arc(answer: Answer, places: Coordinates) -> Iterator[Group]:
    """The arc that the stakes stand on, counterclockwise as the format wants it; and the drawn one where they stand off
    it, about the same center."""
    staked = answer["staked"]
    chord, radius = staked["chord"], staked["radius"]
    centre = places.of(chord / 2, staked["sagitta"] - radius)
    ends = [places.of(0.0, 0.0), places.of(chord, 0.0)]
    at_a, at_b = (degrees(atan2(y - centre[1], x - centre[0])) % 360.0 for x, y in ends)
    start, end = (at_b, at_a) if places.flip > 0 else (at_a, at_b)
    arcs = [("ARC", radius), *([("DRAWN", answer["arc"]["radius"])] if answer["offset"] else [])]
    for layer, one in arcs:
        yield from ((0, "ARC"), (8, layer), *_at(centre), (40, one / places.size), (50, start), (51, end))


def _stakes(answer: Answer, places: Coordinates, height: float) -> Iterator[Group]:
    for stake in answer["stakes"]:
        x, y = places.of(stake["x"], stake["y"])
        yield from ((0, "POINT"), (8, "STAKES"), *_at((x, y)))
        yield from _text(named_through(answer, stake["name"]), (x + height / 2, y + height / 2), height)


def _strings(answer: Answer, places: Coordinates) -> Iterator[Group]:
    """A to B, and the string beside it as far as a stake is squared off it."""
    chord, parallel = answer["staked"]["chord"], answer["parallel"]
    yield from _line("STRING", places.of(0.0, 0.0), places.of(chord, 0.0))
    if parallel is not None:
        along = [0.0, chord, *(one["x"] for one in answer["stakes"])]
        yield from _line("STRING", places.of(min(along), parallel), places.of(max(along), parallel))


def _checks(answer: Answer, places: Coordinates) -> Iterator[Group]:
    """The checks to make first, and the gap that closes the work."""
    at = {mark["name"]: places.of(mark["x"], mark["y"]) for mark in answer["marks"]}
    for check in answer["checks"]:
        wanted = check["recommended"] or check["kind"] == "closing"
        if wanted and not check["blind"] and check["from"] in at and check["to"] in at:
            yield from _line("CHECKS", at[check["from"]], at[check["to"]])


def _obstacles(answer: Answer, places: Coordinates, height: float) -> Iterator[Group]:
    for one in answer["site"]["obstacles"]:
        corners = [places.of(x, y) for x, y in one["outline"]]
        if one["at"] is not None and one["diameter"] is not None:
            x, y = one["at"]
            radius = one["diameter"] / 2 / places.size
            yield from ((0, "CIRCLE"), (8, "OBSTACLES"), *_at(places.of(x, y)), (40, radius))
        else:
            yield from _outline("OBSTACLES", corners)
        middle = (sum(x for x, _ in corners) / len(corners), sum(y for _, y in corners) / len(corners))
        yield from _text(one["name"], middle, height)


def _titles(answer: Answer, places: Coordinates, height: float) -> Iterator[Group]:
    """The job's title, and what its numbers are, under everything."""
    for row, line in enumerate(_lines(answer, places)):
        yield from _text(line, _row_at(answer, places, height, row), height)
