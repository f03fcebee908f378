"""The one adapter to svgwrite: every drawing is written through ``Drawing``.

svgwrite is kept behind this file because its validator rejects ``role`` and ``data-*`` and lets ``nan``
through, and because its counter of ids is shared by the whole process. So the validator is off, and numbers,
ids, classes and text are checked here. Drawings carry classes, never colours: a page sets ``--draw-ink``,
``--draw-ground``, ``--draw-soft`` and ``--draw-accent``; on paper everything is black.

Units: the drawing's own (about one CSS pixel on a phone), y down. Text sizes are in the same units.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

import svgwrite  # type: ignore[import-untyped]
import svgwrite.base  # type: ignore[import-untyped]

from bowstring.drawings.written import written
from bowstring.words.isolated import isolated

Point = tuple[float, float]
Command = tuple[str, *tuple[Point, ...]]
"""One piece of a path: its letter and its points, like ``("L", (3.0, 4.0))``."""

SIZES: dict[str, float] = {"name": 15.0, "end": 17.0, "number": 14.0, "word": 13.0, "big": 20.0}
"""Height of each kind of text, drawing units: ``name`` and ``end`` are stakes, ``number`` a measure, ``big`` the one
that is looked at."""

_LARGEST = 1e6
_LEAST_PIXELS = 11.5  # of the smallest words; data-least-width says from which width in pixels on they are that high
_POINTS = {"M": 1, "L": 1, "C": 3, "Z": 0}
_ID = re.compile(r"[A-Za-z][A-Za-z0-9_-]*\Z")
_ANCHORS = ("start", "middle", "end")

GROUND = "#fcfbf7"
"""What a drawing stands on where no page says otherwise."""

STYLE = (
    ".bd-drawing{color:var(--draw-ink,#15181c);display:block;"
    'font-family:"Noto Sans","Segoe UI",Roboto,"Helvetica Neue",Arial,"Liberation Sans",'
    '"DejaVu Sans",sans-serif;'
    "font-variant-numeric:tabular-nums lining-nums;font-weight:500;font-style:normal;letter-spacing:normal}"
    ".bd-drawing .bd-ground{fill:var(--draw-ground,#fcfbf7);stroke:none}"
    ".bd-drawing .bd-line{fill:none;stroke:currentColor;stroke-width:1.6px;stroke-linecap:round;"
    "stroke-linejoin:round;vector-effect:non-scaling-stroke}"
    ".bd-drawing .bd-arc{stroke-width:3.2px}"
    ".bd-drawing .bd-drawn{stroke-width:2px;stroke-dasharray:9 5;stroke-linecap:butt}"
    ".bd-drawing .bd-string{stroke-width:2px}"
    ".bd-drawing .bd-soft{stroke:var(--draw-soft,#545b64);stroke-width:1.2px}"
    ".bd-drawing .bd-dash{stroke-dasharray:2 4}"
    ".bd-drawing .bd-arrow{stroke:var(--draw-accent,#7d1747);stroke-width:2.4px}"
    ".bd-drawing .bd-strong{stroke-width:5px}"
    ".bd-drawing .bd-head{fill:var(--draw-accent,#7d1747);stroke:none}"
    ".bd-drawing .bd-solid{fill:currentColor;stroke:none}"
    ".bd-drawing .bd-slab{fill:currentColor;fill-opacity:.11;stroke:none}"
    ".bd-drawing .bd-cut{stroke-width:1.4px;stroke-dasharray:5 3;stroke-linecap:butt}"
    ".bd-drawing .bd-stake{fill:var(--draw-ground,#fcfbf7);stroke:currentColor;stroke-width:1.6px;"
    "vector-effect:non-scaling-stroke}"
    ".bd-drawing .bd-new{fill:var(--draw-accent,#7d1747);stroke-width:2.4px}"
    ".bd-drawing .bd-older{stroke:var(--draw-soft,#545b64);stroke-width:1.2px}"
    ".bd-drawing .bd-end-stake{stroke-width:3px}"
    ".bd-drawing text{fill:currentColor;stroke:var(--draw-ground,#fcfbf7);stroke-width:3px;"
    "stroke-linejoin:round;paint-order:stroke}"
    + "".join(f".bd-drawing .bd-{kind}{{font-size:{size:g}px}}" for kind, size in SIZES.items())
    + ".bd-drawing .bd-name,.bd-drawing .bd-end,.bd-drawing .bd-number,.bd-drawing .bd-big{font-weight:700}"
    ".bd-drawing .bd-hot{fill:var(--draw-accent,#7d1747)}"
    ".bd-drawing .bd-quiet{font-weight:500;fill:var(--draw-soft,#545b64)}"
    ".bd-drawing .bd-hot{fill:var(--draw-accent,#7d1747)}"
    ".bd-drawing .bd-in{fill:var(--draw-ground,#fcfbf7);stroke:none}"
    "@media (min-width:1600px){.bd-drawing .bd-line,.bd-drawing .bd-stake{stroke-width:3px}"
    ".bd-drawing .bd-arc,.bd-drawing .bd-arrow{stroke-width:5px}.bd-drawing .bd-drawn{stroke-dasharray:18 10}"
    ".bd-drawing .bd-dash{stroke-dasharray:4 8}}"
    "@media print{.bd-drawing{--draw-ink:#000!important;--draw-ground:#fff!important;"
    "--draw-soft:#000!important;--draw-accent:#000!important}}"
)
"""The style block of every drawing, one fixed text (so that a page's policy can allow it by its hash)."""

_BLANKS = re.compile(r"[\t\n\r ]+")
_TURNING = "\u061c\u200e\u200f\u202a-\u202e\u2066\u2067"  # not what isolates a name and closes it
_BREAKING = "\u2028\u2029"
_LAST_OF_PLANES = "".join(chr(plane << 16 | end) for plane in range(17) for end in (0xFFFE, 0xFFFF))
_NO_CHARACTERS = f"\ud800-\udfff\ufdd0-\ufdef{_LAST_OF_PLANES}"
_UNSEEN = re.compile(f"[\x00-\x1f\x7f-\x9f{_TURNING}{_BREAKING}{_NO_CHARACTERS}]")

_CLASSES = frozenset(re.findall(r"\.bd-([a-z-]+)", STYLE))


class Look(NamedTuple):
    """The classes that a drawing may use: the whole drawing's own, what the others begin with, the style block that
    stands in it (or nothing, where a page has it), and their names."""

    whole: str
    prefix: str
    style: str
    classes: frozenset[str]


PAGES = Look("bd-drawing", "bd-", STYLE, _CLASSES)
"""The look of every drawing but those of the wall."""


def number(value: float) -> str:
    """Return a coordinate as text with at most three decimals, never ``-0``.

    Raises ``ValueError`` for what is not a finite number within a million units: such a drawing would be
    wrong in silence.
    """
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise ValueError(f"a coordinate must be a number, got {value!r}")
    if not math.isfinite(value) or abs(value) > _LARGEST:
        raise ValueError(f"a coordinate must be finite and at most {_LARGEST:g}, got {value!r}")
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def visible(text: str) -> str:
    """Return text that XML can carry: white space as one blank, control characters as their visible pictures.

    Characters that turn the reading direction (they could swap the digits of a number), and those XML
    forbids, become U+FFFD.
    """
    return _UNSEEN.sub(_picture, _BLANKS.sub(" ", text))


def _picture(found: re.Match[str]) -> str:
    code = ord(found[0])
    return chr(0x2400 + code) if code < 0x20 else "\u2421" if code == 0x7F else "\ufffd"


class Drawing:
    """One SVG drawing with its title and description, for a page or a sheet of paper."""

    def __init__(self, *, id: str, title: str, description: str, look: Look = PAGES) -> None:
        """Start an empty drawing.

        Args:
            id: prefix of every id inside, unique on the page: a letter, then letters, digits, ``-`` or ``_``.
            title, description: what a person who can't see the drawing is told.
            look: the classes that it uses.

        Raises ``ValueError`` for an id of another form or an empty title.
        """
        if not _ID.match(id):
            raise ValueError(f"an id must be a letter followed by letters, digits, - or _, got {id!r}")
        if not title.strip():
            raise ValueError("a drawing needs a title")
        self._svg: Any = svgwrite.Drawing(debug=False)
        attributes = self._svg.attribs
        for unwanted in ("width", "height"):
            attributes.pop(unwanted, None)
        attributes.update({"id": id, "class": look.whole, "role": "img", "aria-labelledby": f"{id}-title {id}-desc"})
        for part, words in (("title", title), ("desc", description)):
            head = (
                svgwrite.base.Title(visible(isolated(words)))
                if part == "title"
                else svgwrite.base.Desc(visible(isolated(words)))
            )
            head.xml.set("id", f"{id}-{part}")
            self._svg.elements.insert(len(self._svg.elements) - 1, head)
        if look.style:
            self._svg.defs.add(self._svg.style(look.style))
        self._look = look
        self._body: list[Any] = []
        self._group: Any = None

    def group(self, data: Mapping[str, str]) -> None:
        """Begin a group with data of its own: what is added from here on stands in it."""
        self._group = self._svg.g()
        self._group.attribs.update({f"data-{key}": visible(value) for key, value in data.items()})
        self._body.append(self._group)

    def path(self, commands: Sequence[Command], classes: str, data: Mapping[str, str] | None = None) -> None:
        """Add a path. Raises ``ValueError`` for an unknown letter, a wrong count or a bad coordinate."""
        words = []
        for letter, *points in commands:
            if _POINTS.get(letter) != len(points):
                raise ValueError(f"path command {letter!r} can't have {len(points)} points")
            words.append(letter + " ".join(f"{number(x)},{number(y)}" for x, y in points))
        self._add(self._svg.path(d=" ".join(words)), classes, data)

    def lines(self, pieces: Sequence[Sequence[Point]], classes: str, data: Mapping[str, str] | None = None) -> None:
        """Add several open polylines as one path (one element, however many pieces)."""
        commands: list[Command] = []
        for piece in pieces:
            commands += [("L" if index else "M", point) for index, point in enumerate(piece)]
        if commands:
            self.path(commands, classes, data)

    def square(self, centre: Point, half: float, classes: str, data: Mapping[str, str] | None = None) -> None:
        """Add an upright square of side ``2 * half`` about a point."""
        x, y = centre
        element = self._svg.rect()
        element.attribs.update(
            {
                "x": number(x - half),
                "y": number(y - half),
                "width": number(2 * half),
                "height": number(2 * half),
            }
        )
        self._add(element, classes, data)

    def dot(self, centre: Point, radius: float, classes: str) -> None:
        """Add a disc about a point."""
        element = self._svg.circle()
        element.attribs.update({"cx": number(centre[0]), "cy": number(centre[1]), "r": number(radius)})
        self._add(element, classes, None)

    def text(
        self,
        words: str,
        at: Point,
        kind: str,
        anchor: str = "middle",
        classes: str = "",
        data: Mapping[str, str] | None = None,
    ) -> None:
        """Add one line of text of a kind from ``SIZES``; ``at`` is its baseline's start, middle or end."""
        if kind not in SIZES or anchor not in _ANCHORS:
            raise ValueError(f"unknown kind or anchor of text: {kind!r}, {anchor!r}")
        self._add(self._words(words, at, anchor), f"{kind} {classes}", data)

    def sized(self, words: str, at: Point, size: float, anchor: str = "middle", classes: str = "") -> None:
        """Add one line of text of any size, for a look without kinds."""
        if anchor not in _ANCHORS:
            raise ValueError(f"unknown anchor of text: {anchor!r}")
        element = self._words(words, at, anchor)
        element.attribs["font-size"] = number(size)
        self._add(element, classes, None)

    def _words(self, words: str, at: Point, anchor: str) -> Any:
        element = self._svg.text(visible(isolated(words)))
        element.attribs.update({"x": number(at[0]), "y": number(at[1]), "text-anchor": anchor})
        return element

    def _add(self, element: Any, classes: str, data: Mapping[str, str] | None) -> None:
        unknown = set(classes.split()) - self._look.classes
        if unknown:
            raise ValueError(f"classes without a style: {sorted(unknown)}")
        element.attribs["class"] = " ".join(self._look.prefix + name for name in classes.split())
        for key, value in (data or {}).items():
            element.attribs[f"data-{key}"] = visible(value)
        if self._group is None:
            self._body.append(element)
        else:
            self._group.add(element)

    def finish(self, box: tuple[float, float, float, float], *, width_mm: float | None = None) -> str:
        """Return the SVG text, without an XML declaration.

        Args:
            box: left, top, right and bottom of what is shown, drawing units.
            width_mm: width on paper in millimetres (the height follows); without it the page decides.
        """
        left, top, right, bottom = box
        if not (right > left and bottom > top):
            raise ValueError(f"an empty drawing: {box!r}")
        sides = (number(left), number(top), number(right - left), number(bottom - top))
        attributes = self._svg.attribs
        attributes["viewBox"] = " ".join(sides)
        attributes["data-least-width"] = number(math.ceil((right - left) * _LEAST_PIXELS / SIZES["word"]))
        if width_mm is not None:
            attributes["width"] = number(width_mm) + "mm"
            attributes["height"] = number(width_mm * (bottom - top) / (right - left)) + "mm"
        ground = self._svg.rect()
        ground.attribs.update(
            dict(zip(("x", "y", "width", "height"), sides, strict=True)), **{"class": f"{self._look.prefix}ground"}
        )
        for element in (ground, *self._body):
            self._svg.add(element)
        self._body = []
        return written(self._svg.get_xml())
