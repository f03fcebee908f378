"""Fields as HTML: a label, the field, how it is read, and the place for what is wrong with it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape

from bowstring.methods.catalogue import BY_NAME
from bowstring.page.fields import FIELDS, MARKS, YES, Field, all_fields, unit_of
from bowstring.page.rows import LEAST, LENGTH_ROWS, MOST, STANDS
from bowstring.sheet.markup import marked
from bowstring.words import is_said, say

DECIMAL = ("ft", "m", "mm")
"""Units whose numbers need no quote, dash or slash: there a phone may show its number keys."""

_LENGTHS = ("length", "fine", "zero", "bed", "signed")
_AREAS = {"note": 3, "outline": 2, "heights": 2, "depths": 2}
"""Kinds of fields of several lines, with how many they show."""
BY_PLACE = {field.place: field for field in FIELDS}

Typed = Mapping[str, str]


class Entries:
    """The form with its values; each method returns a piece of HTML."""

    def __init__(self, typed: Typed, echoes: Typed) -> None:
        self.typed = typed
        self.echoes = echoes
        self.unit = unit_of(typed)
        self.fields = {field.id: field for field in all_fields(typed)}

    def fold(self, name: str, inside: str, shut: bool = False) -> str:
        """Return a part that is folded away while nothing stands in it (or always at first)."""
        used = any(f'id="{field}"' in inside and text.strip() for field, text in self.typed.items())
        opened = " open" if used and not shut else ""
        key = f"form.section_{name}"
        title = said(key)
        if is_said(f"{key}.of_fill"):  # another one of a slab that fills its curve
            title = f'<span data-fills="no">{title}</span><span data-fills="yes">{said(f"{key}.of_fill")}</span>'
        more = help_of(f"section_{name}")
        return f'<details class="fold" id="form-{name}"{opened}><summary>{title}</summary>{more}{inside}</details>'

    def plain(self, places: Sequence[str]) -> str:
        return f'<div class="fields">{"".join(self.field(BY_PLACE[place]) for place in places)}</div>'

    def points(self) -> str:
        rows = ""
        for row in range(3):
            inside = "".join(self.field(BY_PLACE[f"arc.points[{row}][{axis}]"]) for axis in range(2))
            rows += self._row(said(f"form.point_row_{row}"), inside)
        return rows

    def ties(self) -> str:
        rows = ""
        for end in "AB":
            for row in range(2):
                inside = "".join(self.field(BY_PLACE[f"ties.{end}[{row}].{name}"]) for name in ("to", "distance"))
                rows += self._row(escape(say("form.tie_row", end=end, number=row + 1)), inside)
        return rows

    def control(self) -> str:
        rows = ""
        for row in range(2):
            inside = "".join(self.field(BY_PLACE[f"control.marks[{row}].{name}"]) for name in ("mark", *"xyne"))
            rows += self._row(escape(say("form.row_control", number=row + 1)), inside)
        return rows

    def rows(self, group: str) -> str:
        """Return the rows of a group that grows: the script adds one when the last one is used."""
        rows: dict[str, list[Field]] = {}
        for field in self.fields.values():
            if field.place.startswith(f"{group}["):
                rows.setdefault(field.id.split("-")[1], []).append(field)
        inside = "".join(
            self._row(escape(say(f"form.row_{group}", number=int(row) + 1)), "".join(map(self.field, fields)))
            for row, fields in rows.items()
        )
        return f'<div data-rows="{group}" data-least="{LEAST[group]}" data-most="{MOST[group]}">{inside}</div>'

    def _row(self, title: str, inside: str) -> str:
        return f'<fieldset class="row"><legend>{title}</legend><div class="fields">{inside}</div></fieldset>'

    def field(self, field: Field) -> str:
        """Return one field with its label, help, echo and the place for what is wrong with it."""
        if field.kind == "choice":
            return self._choice(field)
        if field.kind == "kept":
            text = escape(self.typed.get(field.id, ""))
            return f'<input type="hidden" id="{field.id}" name="{field.id}" value="{text}">'
        if field.kind == "flag":
            return self._flag(field)
        name, end = field.id, field.id.split("-")[1] if field.word.startswith("tie_") else ""
        words = of_both(f"form.{field.word}") or escape(say(f"form.{field.word}", end=end))
        label = f'<label for="{name}">{words}</label>'
        head = f'<div class="said">{label}{help_of(field.word, name)}</div>'
        long = field.kind in ("note", "mark", *LENGTH_ROWS) or field.word in ("title", "control_mark")
        wide = " wide" if long else ""
        return (
            f'<div class="field{wide}" data-field="{name}">{head}'
            f'<div class="entry">{self._entry(field)}{self._beside(field)}</div>{self._after(name)}</div>'
        )

    def short(self, field: Field, label: str = "") -> str:
        """Return one field in a compact row: its label unseen, or ``label``, a shorter one, in its box for the eye."""
        name = field.id
        seen = f'<small aria-hidden="true">{escape(label)}</small>' if label else ""
        return (
            f'<div class="field" data-field="{name}"><label for="{name}" class="unseen">{said(f"form.{field.word}")}'
            f'</label><div class="entry">{seen}{self._entry(field)}{self._beside(field)}</div>{self._after(name)}</div>'
        )

    def _described(self, field: Field) -> str:
        names = [f"{field.id}-help"] if _hashelp_of(field.word) else []
        names += [f"{field.id}-beside"] if self._beside(field) else []
        return f'aria-describedby="{" ".join([*names, f"{field.id}-echo", f"{field.id}-wrong"])}"'

    def _entry(self, field: Field) -> str:
        text = escape(self.typed.get(field.id, ""))
        common = f'id="{field.id}" name="{field.id}" {self._described(field)} autocomplete="off"'
        if field.kind in _AREAS:
            return f'<textarea {common} rows="{_AREAS[field.kind]}" spellcheck="false">{text}</textarea>'
        if field.kind == "mark":
            return f"<select {common}>{self._marks(self.typed.get(field.id, ''))}</select>"
        keys = ""
        if field.kind in _LENGTHS:
            is_plain = self.unit in DECIMAL and field.kind != "signed"  # a phone's number keys may have no minus
            keys = " data-keys" + (' inputmode="decimal"' if is_plain else "")
        elif field.kind == "count":
            keys = ' inputmode="numeric"'
        short = "" if field.kind in ("text", "stations", "stock") else ' class="number"'
        return f'<input type="text" {common}{short}{keys} spellcheck="false" autocapitalize="off" value="{text}">'

    def _marks(self, chosen: str) -> str:
        options = f'<option value="">{said("form.mark_usual")}</option>'
        for unit, marks in MARKS.items():
            inside = "".join(
                f'<option value="{mark}"{" selected" if mark == chosen else ""}>{mark}</option>' for mark in marks
            )
            options += f'<optgroup label="{said(f"form.unit.{unit}")}" data-marks="{unit}">{inside}</optgroup>'
        return options

    def _beside(self, field: Field) -> str:
        """Return the unit that stands beside a number."""
        if field.kind in ("angle", "percent", "slope"):
            kind = "angle" if field.kind == "angle" else "percent"
            return f'<span class="beside" id="{field.id}-beside">{said(f"form.beside.{kind}")}</span>'
        if field.kind == "volume":
            feet, metric = (
                f'<span data-in="{unit}">{said(f"form.beside.volume.{unit}")}</span>' for unit in ("feet", "metric")
            )
            return f'<span class="beside" id="{field.id}-beside">{feet}{metric}</span>'
        if field.kind in _LENGTHS:
            unit = said(f"form.beside.{self.unit}")
            return f'<span class="beside" id="{field.id}-beside" data-unit>{unit}</span>'
        return ""

    def _after(self, name: str) -> str:
        echo = f'<output class="echo" id="{name}-echo" for="{name}">{self.echoes.get(name, "")}</output>'
        return f'<div class="under">{echo}<p class="wrong" id="{name}-wrong"></p></div>'

    def _choice(self, field: Field) -> str:
        blank = "" if "" in field.choices else {"unit": "", **STANDS}.get(field.id)
        chosen = self.typed.get(field.id, "ft-in" if field.id == "unit" else blank)
        options, apart = "", _apart() if field.id == "method" else None
        for value in field.choices:
            checked = " checked" if value == chosen else ""
            mark = " data-blank" if value == blank else ""
            words = said(f"form.{field.word}.{value or 'none'}")
            if value == apart:
                options += f'<p class="apart help">{said("form.method_apart")}</p>'
            options += (
                f'<label class="option{" none" if mark else ""}"><input type="radio" name="{field.id}" '
                f'value="{value}"{checked}{mark}>'
                f"<span>{words}</span></label>"
            )
        legend = f"<legend>{said(f'form.{field.word}')}</legend>{help_of(field.word, field.id)}"
        return (
            f'<fieldset class="choice" id="{field.id}" data-field="{field.id}" tabindex="-1" '
            f'aria-describedby="{field.id}-wrong">{legend}'
            f'<div class="options">{options}</div><p class="wrong" id="{field.id}-wrong"></p></fieldset>'
        )

    def _flag(self, field: Field) -> str:
        checked = " checked" if self.typed.get(field.id) else ""
        return (
            f'<div class="field wide" data-field="{field.id}"><label class="option">'
            f'<input type="checkbox" id="{field.id}" name="{field.id}" value="{YES}"{checked} '
            f'aria-describedby="{field.id}-wrong"><span>{said(f"form.{field.word}")}</span></label>'
            f'<p class="wrong" id="{field.id}-wrong"></p></div>'
        )


def _apart() -> str | None:
    """The first of the methods that want an instrument or a road's way of working: they stand together, last."""
    return next((method.name for method in BY_NAME.values() if not method.everyday), None)


def said(key: str) -> str:
    return escape(say(key))


def of_both(key: str) -> str:
    """Return what a thing is called of a slab and of a wall, or of an arc alone and of a line of several pieces, where
    the two differ: what is poured, or what is typed of other pieces, says which shows; or the same of a slab that fills
    its curve; empty where they don't."""
    filled = ""
    if is_said(f"{key}.of_fill"):
        filled = f'<span data-fills="no">{said(key)}</span><span data-fills="yes">{said(f"{key}.of_fill")}</span>'
    if is_said(f"{key}.of_line"):
        alone = filled or said(key)
        return f'<span data-pieces="one">{alone}</span><span data-pieces="more">{said(f"{key}.of_line")}</span>'
    if filled:
        return filled
    if not is_said(f"{key}.of_wall"):
        return ""
    return f'<span data-poured="slab">{said(key)}</span><span data-poured="wall">{said(f"{key}.of_wall")}</span>'


def _hashelp_of(word: str) -> bool:
    return is_said(f"form.{word}.help")


def help_of(word: str, name: str = "") -> str:
    if not _hashelp_of(word):
        return ""
    place = f' id="{name}-help"' if name else ""
    key = f"form.{word}.help"
    told = _told(key)
    if is_said(f"{key}.of_line"):
        told = f'<span data-pieces="one">{told}</span><span data-pieces="more">{_told(f"{key}.of_line")}</span>'
    return f'<p class="help"{place}>{told}</p>'


def _told(key: str) -> str:
    told = marked(say(key))
    if is_said(f"{key}.metric"):  # the job's unit says which of the two is shown
        told = f'<span data-in="feet">{told}</span><span data-in="metric">{marked(say(f"{key}.metric"))}</span>'
    if is_said(f"{key}.of_fill"):
        told = f'<span data-fills="no">{told}</span><span data-fills="yes">{marked(say(f"{key}.of_fill"))}</span>'
    if is_said(f"{key}.of_wall"):
        told = f'<span data-poured="slab">{told}</span><span data-poured="wall">{marked(say(f"{key}.of_wall"))}</span>'
    return told
