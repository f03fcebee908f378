"""The form's fields in one table, and the way from what was typed to a job and back.

A field's id is its place in the job with hyphens for points and brackets: ``arc.points[0][1]`` is typed in
``arc-points-0-1``. A value left blank isn't in the job.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from typing import cast

from bowstring.errors import bad
from bowstring.job.form import JobForm
from bowstring.job.terms import DEGREE_BY, RECORD_KEYS, SIDES
from bowstring.page import beside
from bowstring.page.pieces import apart, line_of, places_of
from bowstring.page.plainly import as_asked
from bowstring.page.rows import (
    CONTROL_FIELDS,
    ERROR_FIELDS,
    METHOD_FIELDS,
    MOST,
    MOST_BESIDE_ROWS,
    ROW_NAMES,
    SITE_FIELDS,
    STANDS,
    in_texts,
    is_measure,
    is_row,
    is_sure,
    measures_in,
    number_text,
    row_count,
    row_fields,
    site_of_fields,
    told_rows,
)
from bowstring.page.slab_fields import SLAB_FIELDS
from bowstring.units.tape import make_tape

MARKS = {
    "ft-in": ("1/2 in", "1/4 in", "1/8 in", "1/16 in", "1/32 in"),
    "ft": ("0.1 ft", "0.01 ft"),
    "m": ("0.01 m", "0.005 m", "0.001 m"),
    "mm": ("10 mm", "5 mm", "1 mm"),
}
"""Each unit's tape marks as a job names them, coarse to fine."""

YES = "yes"
"""What a ticked box sends."""


@dataclass(frozen=True)
class Field:
    """One field of the form.

    Attributes:
        place: where its value stands in the job.
        kind: ``text``, ``note``, ``length``, ``fine`` (a length that needs its unit), ``zero`` (a length that may
            be 0), ``bed`` (both), ``signed`` (a coordinate), ``angle``, ``count``, ``percent``,
            ``slope`` (percent, or a rise over a run), ``part`` (of one),
            ``volume`` (cubic yards or metres), ``outline`` (corners in one text), ``place`` (one pair), ``stations``
            and ``stock`` (lengths in one text), ``heights`` (of the ground, in one), ``depths`` (of the base, in one),
            ``mark``, ``choice``, ``flag`` or ``kept`` (unseen).
        word: the name of its label in the catalogue; a help line stands beside it where there is one.
        choices: a choice's values; an empty one stands for leaving it unsaid.
    """

    place: str
    kind: str
    word: str
    choices: Collection[str] = ()

    @property
    def id(self) -> str:
        """The field's id, unique on the page."""
        return "-".join(_pieces(self.place))


def _pieces(place: str) -> list[str]:
    return re.findall(r"[A-Za-z_]+|[0-9]+", place)


def _got(row: int) -> tuple[Field, ...]:
    place = f"got[{row}]"
    return (
        Field(f"{place}.stake", "text", "got_stake"),
        Field(f"{place}.sagitta", "length", "got_sagitta"),
        Field(f"{place}.half_chords[0]", "length", "got_half_first"),
        Field(f"{place}.half_chords[1]", "length", "got_half_second"),
    )


_LENGTHS = ("chord", "sagitta", "radius", "diameter", "arc_length")
_BEYOND = ("tangent_length", "external")

FIELDS = (
    Field("title", "text", "title"),
    Field("note", "note", "note"),
    Field("unit", "choice", "unit", ("ft-in", "ft", "m", "mm")),
    *(Field(f"arc.{name}", "length", "arc_diameter" if name == "diameter" else name) for name in _LENGTHS),
    Field("arc.central_angle", "angle", "central_angle"),
    *(Field(f"arc.{name}", "length", name) for name in _BEYOND),
    Field("greater", "flag", "greater"),
    Field("arc.degree", "angle", "degree"),
    Field("arc.degree_by", "choice", "degree_by", DEGREE_BY),
    *(Field(f"arc.points[{row}][{axis}]", "signed", f"point_{row}_{axis}") for row in range(3) for axis in range(2)),
    *(Field(f"arc.three_sides[{row}]", "length", f"side_{row}") for row in range(3)),
    Field("drawn_to", "choice", "drawn_to", ("face", "back", "centre", "flow line", "lip", "unsure")),
    Field("driven", "choice", "driven", ("pin", "marked", "hub", "board")),
    Field("diameter", "fine", "diameter"),
    Field("width", "length", "width"),
    Field("offset", "zero", "offset"),
    Field("toward", "choice", "toward", ("", "centre", "outside")),
    Field("ends.A", "text", "end_a"),
    Field("ends.B", "text", "end_b"),
    Field("start", "choice", "start", ("ends", "one-end", "corner", "neither")),
    Field("side", "choice", "side", (*SIDES, "")),
    Field("turn", "choice", "turn", (*SIDES, "")),
    Field("kink", "text", "kink"),
    Field("station", "text", "station"),
    *(
        Field(f"ties.{end}[{row}].{name}", kind, f"tie_{name}")
        for end in "AB"
        for row in range(2)
        for name, kind in (("to", "text"), ("distance", "length"))
    ),
    Field("mark", "mark", "mark", tuple(mark for marks in MARKS.values() for mark in marks)),
    Field("tolerance", "fine", "tolerance"),
    Field("fair", "fine", "fair"),
    Field("spacing", "length", "spacing"),
    Field("levels", "count", "levels"),
    Field("found.chord[0]", "length", "found_first"),
    Field("found.chord[1]", "length", "found_second"),
    Field("found.tape", "choice", "found_tape", ("", "level", "ground")),
    Field("found.fall", "zero", "found_fall"),
    Field("found.hold", "choice", "found_hold", ("", "radius", "sagitta", "arc_length", "directions")),
    Field("found.sure", "flag", "found_sure"),
    *(Field(*row) for row in (*METHOD_FIELDS, *CONTROL_FIELDS, *SITE_FIELDS, *ERROR_FIELDS, *SLAB_FIELDS)),
)
"""Every field but those in rows that grow (see ``rows_of``), in the form's order."""

MOST_FIELDS = (
    len(FIELDS)
    + sum(MOST[group] * len(names) for group, names in ROW_NAMES.items())
    + MOST_BESIDE_ROWS
    + len(beside.PLAIN)
    + 2 * beside.MOST_ROWS
)
"""Fields that a kept job can have: the form's with every row that there can be, and those beside it."""

_BY_ID = {field.id: field for field in FIELDS}


def rows_of(group: str, count: int) -> tuple[Field, ...]:
    """Return the fields of so many rows of a group (a key of ``rows.ROW_NAMES``)."""
    if group == "got":
        return tuple(field for row in range(count) for field in _got(row))
    return tuple(Field(*one) for row in range(count) for one in row_fields(group, row))


def all_fields(typed: Mapping[str, str]) -> tuple[Field, ...]:
    """Return every field of the form, with a row more of each group than is typed in."""
    rows = (field for group in ROW_NAMES for field in rows_of(group, row_count(typed, group)))
    read = (_measure(name) for name in typed if is_measure(name))
    return (*FIELDS, *rows, *read, *(_sure(name) for name in typed if is_sure(name)))


def _measure(name: str) -> Field:
    """The field of something read at a stake, by its id."""
    _got, row, _measures, number, what = name.split("-")
    kind = "length" if what == "distance" else "text"
    return Field(f"got[{row}].measures[{number}].{what}", kind, f"got_measure_{what}")


def _sure(name: str) -> Field:
    """The field that says that a stake was taped twice, by its id."""
    return Field(f"got[{name.split('-')[1]}].sure", "flag", "found_sure")


def job_of_fields(fields: Mapping[str, str]) -> JobForm:
    r"""Return the job of what was typed, by field id; its values are checked where a job is read.

    Raises ``BadJob`` where one of the values that count only together is missing, and ``ValueError`` for
    an id that isn't the form's.

    >>> job_of_fields({"arc-chord": "38 ft", "arc-sagitta": "5' 3\""})["arc"]
    {'chord': '38 ft', 'sagitta': '5\' 3"'}
    """
    typed = _typed(fields)
    job: dict[str, object] = {"bowstring": 1}
    hand = "turn" if typed.get("start") == "one-end" else "side"  # the form shows no more than the one
    for key in ("title", "note", "unit", "drawn_to", "driven", "diameter", "width", "offset", "toward", hand, "start",
                "station", "mark", "tolerance", "fair", "spacing"):  # fmt: skip
        if key == "diameter" and typed.get("driven", "pin") != "pin":
            continue  # left in its field by somebody who drove pins before
        if key == "mark" and is_other_mark(typed):
            continue  # left in its field by somebody whose unit was another before
        if key in typed and not stands_for_itself(key, typed[key]):
            job[key] = typed[key]
    if "levels" in typed:
        # What isn't a whole number goes on as it stands and is refused with the job's own sentence.
        job["levels"] = int(typed["levels"]) if re.fullmatch(r"[0-9]{1,4}", typed["levels"]) else typed["levels"]
    if "greater" in typed:
        job["greater"] = True
    ends = {end: typed[f"ends-{end}"] for end in "AB" if f"ends-{end}" in typed}
    parts = {"arc": _arc(typed), "ends": ends, "ties": _ties(typed), "found": _found(typed), "got": _got_rows(typed)}
    job.update({key: part for key, part in parts.items() if part})
    job.update(site_of_fields(typed))
    job.update(beside.readings_in(typed))
    job = line_of(typed, job, _arc, job_of_fields)
    return cast("JobForm", job)  # every key is one of the form's; what was typed is checked where the job is read


def _arc(typed: Mapping[str, str]) -> dict[str, object]:
    arc: dict[str, object] = {
        name: typed[f"arc-{name}"]
        for name in (*_LENGTHS, "central_angle", *_BEYOND, "degree")
        if f"arc-{name}" in typed
    }
    if "degree" in arc and typed.get("arc-degree_by", DEGREE_BY[0]) != DEGREE_BY[0]:
        arc["degree_by"] = typed["arc-degree_by"]
    points, sides = _points(typed), _sides(typed)
    if points:
        arc["points"] = points
    if sides:
        arc["three_sides"] = sides
    return arc


def stands_for_itself(name: str, text: str) -> bool:
    """Tell whether a value says no more than its absence would: a job has one form, and one link."""
    return STANDS.get(name) == text


def _typed(fields: Mapping[str, str]) -> dict[str, str]:
    strangers = [name for name in fields if name not in _BY_ID and not is_row(name) and not beside.is_beside(name)]
    if strangers:
        raise ValueError(f"no such fields: {strangers}")
    return {name: text.strip() for name, text in fields.items() if text.strip()}


def is_other_mark(fields: Mapping[str, str]) -> bool:
    """Tell whether the mark chosen is one of another unit's tape: the usual one of the unit stands in for it.

    >>> is_other_mark({"unit": "m", "mark": "1/16 in"}), is_other_mark({"mark": "1/16 in"})
    (True, False)
    """
    mark = fields.get("mark", "").strip()
    return mark in _BY_ID["mark"].choices and mark not in MARKS[unit_of(fields)]


def _points(typed: Mapping[str, str]) -> list[list[str]]:
    places = [[f"arc-points-{row}-{axis}" for axis in range(2)] for row in range(3)]
    if not any(name in typed for pair in places for name in pair):
        return []
    for row, pair in enumerate(places):
        for axis, name in enumerate(pair):
            if name not in typed:
                raise bad(f"arc.points[{row}][{axis}]", "form.point_missing")
    return [[typed[name] for name in pair] for pair in places]


def _sides(typed: Mapping[str, str]) -> list[str]:
    places = [f"arc-three_sides-{row}" for row in range(3)]
    missing = [row for row, name in enumerate(places) if name not in typed]
    if len(missing) == 3:
        return []
    if missing:
        raise bad(f"arc.three_sides[{missing[0]}]", "form.side_missing")
    return [typed[name] for name in places]


def _ties(typed: Mapping[str, str]) -> dict[str, object]:
    ties: dict[str, object] = {}
    for end in "AB":
        if not any(name.startswith(f"ties-{end}-") for name in typed):
            continue
        for row in range(2):
            for name in ("to", "distance"):
                if f"ties-{end}-{row}-{name}" not in typed:
                    raise bad(f"ties.{end}[{row}].{name}", "form.tie_missing", end=end)
        ties[end] = [{name: typed[f"ties-{end}-{row}-{name}"] for name in ("to", "distance")} for row in range(2)]
    return ties


def _found(typed: Mapping[str, str]) -> dict[str, object]:
    if not any(name.startswith("found-") for name in typed):
        return {}
    found: dict[str, object] = {}
    for row in range(2):
        if f"found-chord-{row}" not in typed:
            raise bad(f"found.chord[{row}]", "form.found_twice")
    found["chord"] = [typed[f"found-chord-{row}"] for row in range(2)]
    found.update({name: typed[f"found-{name}"] for name in ("tape", "fall", "hold") if f"found-{name}" in typed})
    if "found-sure" in typed:
        found["sure"] = True
    return found


def _got_rows(typed: Mapping[str, str]) -> list[dict[str, object]]:
    rows: list[dict[str, object]] = []
    for number, row in enumerate(told_rows(typed, "got")):
        places = {name: f"got-{row}-{name}" for name in ("stake", "sagitta")}
        got: dict[str, object] = {name: typed[place] for name, place in places.items() if place in typed}
        halves = [typed.get(f"got-{row}-half_chords-{half}") for half in range(2)]
        if any(halves):
            if None in halves:
                raise bad(f"got[{number}].half_chords[{halves.index(None)}]", "form.half_missing")
            got["half_chords"] = halves
        measures = [
            {
                name: typed[place]
                for name in ("from", "to", "distance")
                if (place := f"got-{row}-measures-{one}-{name}") in typed
            }
            for one in measures_in(typed, row)
        ]
        if measures:
            got["measures"] = measures
        if f"got-{row}-sure" in typed:
            got["sure"] = True
        rows.append(got)
    return rows


def fields_of_job(job: JobForm) -> dict[str, str]:
    """Return what stands in the form for a job that can be used, by field id; what it leaves out isn't there.

    ``job_of_fields`` makes a job of the same meaning out of it.
    """
    alone, pieces = apart(job, fields_of_job)
    asked = as_asked(alone)
    kept = beside.fields_of(asked)
    layout = {key: value for key, value in asked.items() if key not in RECORD_KEYS}
    fields = {"-".join(_pieces(place)): text for place, value in _leaves(in_texts(layout)) if (text := _text(value))}
    fields |= kept | pieces
    fields.pop("bowstring", None)
    if "arc-greater" in fields:
        fields["greater"] = fields.pop("arc-greater")
    unit = fields.setdefault("unit", "ft-in")
    if "mark" in fields:
        fields["mark"] = make_tape(unit, job["mark"]).listed_mark()
    _typed(fields)
    return fields


def _leaves(value: object, place: str = "") -> Iterator[tuple[str, object]]:
    if isinstance(value, Mapping):
        for key, inner in value.items():
            yield from _leaves(inner, f"{place}.{key}" if place else str(key))
    elif isinstance(value, list | tuple):
        for number, inner in enumerate(value):
            yield from _leaves(inner, f"{place}[{number}]")
    else:
        yield place, value


def _text(value: object) -> str:
    if isinstance(value, bool) or value is None:
        return YES if value else ""
    if isinstance(value, float):
        return number_text(value)
    return str(value).strip()


def field_of(place: str, fields: Mapping[str, str] | None = None) -> str | None:
    """Return the id of the field in which a job's value is typed, or ``None`` when it belongs to no one field.

    Blank rows aren't in the job, so its rows are counted among those of ``fields`` in which something stands.
    """
    typed = _typed(fields or {})
    pieces = places_of(_pieces(place), typed)
    if pieces[0:1] and pieces[0] in ROW_NAMES and len(pieces) > 1:
        rows = told_rows(typed, pieces[0])
        number = int(pieces[1])
        if number < len(rows):
            pieces[1] = str(rows[number])
            if pieces[2:3] == ["measures"] and len(pieces) > 3:
                read = measures_in(typed, rows[number])
                pieces[3] = str(read[int(pieces[3])]) if int(pieces[3]) < len(read) else pieces[3]
    if pieces == ["arc", "greater"]:
        return "greater"
    known = [field.id for field in all_fields(typed)]
    while pieces:
        name = "-".join(pieces)
        for field in (known_id for known_id in known if known_id == name or known_id.startswith(name + "-")):
            return field
        pieces.pop()
    return None


def unit_of(fields: Mapping[str, str]) -> str:
    """Return the unit chosen, or the usual one."""
    unit = fields.get("unit", "")
    return unit if unit in MARKS else "ft-in"
