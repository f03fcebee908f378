"""The panels of the slab and of its slope."""

from __future__ import annotations

from collections.abc import Callable
from html import escape

from bowstring.faces.help_line import fill_button
from bowstring.faces.slab_beside import APRON, TOPS
from bowstring.faces.slab_pictures import PICTURED, slab_picture
from bowstring.job.terms import LINE_ENDS, OTHER, SIDES
from bowstring.page.entries import BY_PLACE, Entries, help_of, of_both, said
from bowstring.page.fields import Field
from bowstring.words import is_said, say

_BOARDS = tuple(f"board.{name}" for name in ("level", "kind", "thickness", "height", "lengths", "overrun", "gap"))
_ORDER = tuple(f"slab.{name}" for name in ("waste", "step", "truck"))
_EDGES = tuple(f"slab.{name}" for name in ("edge_width", "edge_depth"))
_FOOTING = tuple(f"slab.{name}" for name in ("footing_width", "footing_depth"))
_APRON_FIELDS = tuple(f"slab.apron.{name}" for name in ("from", "to", "thickness"))
_FAR_WIDTH, _BED = "slab.end_width", ("slab.base", "slab.overdig")
"""A slab along a line of several pieces has one width."""
_ALONG = "slab.apron.along"
"""Of an arc alone: along a line of several pieces it is always that line."""
LEVEL = {"grade-slope": "0", "grade-cross": "0", "grade-high": "", "grade-low": ""}
"""A level top: no slope either way, so no end and no edge is the high one."""
_LIMITS = tuple(f"grade.{name}" for name in ("limit", "cross_limit", "stops"))


def slab_html(page: Entries) -> str:
    """Return what stands in the panel of the slab."""
    return "\n".join(
        [
            _choice(page, "slab.poured", _plainly),
            _choice(page, "slab.fills", _plainly, asked=True),
            page.plain(["slab.sides", "slab.both_ends"]),
            _choice(page, "slab.back", _plainly),
            page.plain(["width", "slab.thickness"]),
            page.fold("footing", page.plain(_FOOTING)),
            _choice(page, "edge", _where, "where"),
            '<div id="slab-told" class="slab-told" role="status" hidden></div>',
            page.fold("ends", "".join(_choice(page, f"slab.at_{end}", _plainly) for end in LINE_ENDS)),
            page.fold("bed", f'<div data-pieces="one">{page.plain([_FAR_WIDTH])}</div>{page.plain(_BED)}'),
            page.fold("edges", page.plain(_EDGES) + _choice(page, "slab.edge_along", _plainly)),
            page.fold("apron", _blank(page.plain(_APRON_FIELDS) + _along(page))),
            page.fold("depths", _blank(page.plain(["slab.depths"]))),
            page.fold("joints", page.plain(["joints.every", "joints.panels"])),
            page.fold("boards", page.plain(_BOARDS)),
            page.fold("order", page.plain(_ORDER)),
        ]
    )


def slope_html(page: Entries) -> str:
    """Return what stands in the panel of the slope."""
    return "\n".join(
        [
            fill_button(LEVEL, say("form.grade_level")),
            page.plain(["grade.slope", "grade.from"]) + _told_of(TOPS),
            f'<div data-fills="no">{_choice(page, "grade.along", _plainly, asked=True)}</div>',
            _choice(page, "grade.high", _named(page)),
            page.fold("tops", page.plain(["grade.to"])),
            page.plain(["grade.cross"]),
            _choice(page, "grade.low", _low),
            page.fold("crown", page.plain(["grade.crown"])),
            page.fold("limits", page.plain(_LIMITS)),
            page.fold("heights", _heights(page)),
        ]
    )


def _heights(page: Entries) -> str:
    """The instrument, and the ground by heights or by what the rod read."""
    by = _choice(page, "grade.ground_by", _plainly, asked=True)
    return page.plain(["grade.instrument"]) + by + page.plain(["grade.ground"])


def _along(page: Entries) -> str:
    """Along which line an apron is given, right under its figures, with what is taken."""
    asked = _choice(page, _ALONG, _plainly)
    return f'<div data-pieces="one">{_told_of(APRON)}{asked}</div>'


def _told_of(name: str) -> str:
    return f'<div id="{name}" class="slab-told" role="status" hidden></div>'


def _choice(
    page: Entries, place: str, inside: Callable[[Field, str], str], kind: str = "", *, asked: bool = False
) -> str:
    """Return a choice whose options have more in them than a word; ``inside`` makes it. ``asked``: the empty one is an
    answer like the others, and always seen."""
    field = BY_PLACE[place]
    chosen, options = page.typed.get(field.id, ""), ""
    for value in field.choices:
        checked, blank = " checked" if value == chosen else "", "" if value else " data-blank"
        pictured = kind if value in PICTURED else f"{kind} by-hand" if kind and value in SIDES else ""
        shown = inside(field, value) if value or asked else f"<span>{_words(field, value)}</span>"
        options += (
            f'<label class="{pictured or "option"}" data-value="{value}"><input type="radio" name="{field.id}" '
            f'value="{value}"{checked}{blank}>{shown}</label>'
        )
    return (
        f'<fieldset class="choice{"" if asked else " unasked"}" id="{field.id}" data-field="{field.id}" tabindex="-1" '
        f'aria-describedby="{field.id}-wrong"><legend>'
        f"{of_both(f'form.{field.word}') or said(f'form.{field.word}')}</legend>"
        f'{help_of(field.word, field.id)}<div class="options">{options}</div>'
        f'<p class="wrong" id="{field.id}-wrong"></p></fieldset>'
    )


def _blank(fields: str) -> str:
    """Fields by whose blanks the style tells that nothing stands in them: of a slab that fills its curve such a fold
    isn't seen then."""
    return fields.replace("<input ", '<input placeholder=" " ').replace("<textarea ", '<textarea placeholder=" " ')


def _plainly(field: Field, value: str) -> str:
    """A choice in words alone."""
    return f"<span>{_words(field, value)}</span>"


def _words(field: Field, value: str) -> str:
    return said(f"form.{field.word}.{value or 'none'}")


def _low(field: Field, value: str) -> str:
    """The low edge: of a band its inside or outside; of a slab that fills its curve that, or what is across from it."""
    key = f"form.{field.word}.{value}.of_fill"
    if not is_said(key):
        return f"<span>{_words(field, value)}</span>"
    one = said(key)
    if is_said(f"{key}.against"):
        one = f'<span data-back="formed">{one}</span><span data-back="against">{said(f"{key}.against")}</span>'
    ends = f'<span data-ends="one">{one}</span><span data-ends="both">{said(f"{key}.both")}</span>'
    return f'<span data-fills="no">{_words(field, value)}</span><span data-fills="yes">{ends}</span>'


def _where(field: Field, value: str) -> str:
    """A picture of where the slab lies from the line; or, in words alone, on which hand the line is its edge."""
    words = f"<span>{_words(field, value)}</span>"
    if value in SIDES:  # on one hand all along a line: the slab lies on the other hand of its own edge
        lies = OTHER[value]
        return (
            f'<span data-pieces="one">{_words(field, value)}</span><span data-pieces="more">'
            f"{said(f'numbers.lies.{lies}')}</span>"
            f'<small data-pieces="more">{said(f"numbers.lies_small.{lies}")}</small>'
        )
    if value not in PICTURED:
        return words
    return f"{slab_picture(value)}{words}<small>{said(f'numbers.lies_small.{value}')}</small>"


def _named(page: Entries) -> Callable[[Field, str], str]:
    """An end with what stands there."""

    def inside(field: Field, value: str) -> str:
        key = f"form.{field.word}.{value or 'none'}"
        name = page.typed.get(f"ends-{value}", "")
        shown = f'<b data-of="ends-{value}">{escape(name and f" {name}")}</b>'
        if value in LINE_ENDS:  # of a line's own ends no landmark is known: those are of the arc that is staked
            alone = f'<span data-pieces="one">{said(key)}{shown}</span>'
            return f'{alone}<span data-pieces="more">{said(f"{key}.of_line")}</span>'
        return f"<span>{_words(field, value)}{shown}</span>"

    return inside
