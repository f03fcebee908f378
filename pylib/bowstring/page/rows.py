"""What the form says of the method and of the site: its fields, and the way from what was typed to a job and back.

An outline is one text, ``x, y; x, y; x, y``: each corner along the chord from A, then off it toward the curve; a
place is one such pair. The stations are one text too, ``x; x; x``.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from decimal import Decimal

from bowstring.errors import BadJob, bad
from bowstring.job.terms import (
    CLASSES,
    DEGREE_BY,
    ERRORS,
    MOST_GOT,
    MOST_KNOWN,
    MOST_MEASURES,
    MOST_OBSTACLES,
    STOPS,
    TANGENT_FROM,
)
from bowstring.page.pieces import GROUPS, MOST_PIECES, NAMES, fields_in
from bowstring.page.slab_fields import depths_of, heights_of, slab_in_texts, slab_of_fields, stock_of
from bowstring.units.lengths import read_length
from bowstring.units.tape import Tape

Typed = Mapping[str, str]
Row = tuple[str, str, str, Collection[str]]
"""A field's place, kind, word and choices, see ``fields.Field``."""

STANDS = {
    "start": "ends",
    "arc-degree_by": DEGREE_BY[0],
    "tangent_from": TANGENT_FROM[2],
}
"""Choices that say no more than leaving them does, by the field's id."""

ROW_NAMES = {
    "got": ("stake", "sagitta", "half_chords-0", "half_chords-1"),
    "ground": ("name", "stops", "at", "diameter", "outline"),
    "known": ("name", "x", "y", "sigma"),
    **dict.fromkeys(GROUPS, NAMES),
}
"""Groups of rows that grow, with what stands in a row."""

LEAST = {"got": 4, "ground": 1, "known": 1, **dict.fromkeys(GROUPS, 1)}
MOST = {"got": MOST_GOT, "ground": MOST_OBSTACLES, "known": MOST_KNOWN, **dict.fromkeys(GROUPS, MOST_PIECES)}
"""Rows of each group: those that an empty form has, and the most that there can be."""

LENGTH_ROWS = ("outline", "place", "stations", "stock", "heights", "depths")
"""Kinds of fields in whose one text several lengths stand."""

_ROW_ID = re.compile("|".join(f"{group}-[0-9]{{1,3}}-(?:{'|'.join(names)})" for group, names in ROW_NAMES.items()))
MEASURE_ID = re.compile("got-([0-9]{1,3})-measures-([0-9])-(from|to|distance)")
"""What was read at a stake: beside the form's own fields, put there by the card of its step."""

SURE_ID = re.compile("got-([0-9]{1,3})-sure")
"""That it was taped twice: beside them too."""

MOST_BESIDE_ROWS = MOST_GOT * (3 * MOST_MEASURES + 1)


class _Methods(Collection[str]):
    """No method, which leaves the choice to the tool, then those of the catalogue."""

    @staticmethod
    def _names() -> tuple[str, ...]:
        from bowstring.methods.catalogue import BY_NAME  # every recipe comes with it

        return ("", *BY_NAME)

    def __iter__(self) -> Iterator[str]:
        return iter(self._names())

    def __len__(self) -> int:
        return len(self._names())

    def __contains__(self, name: object) -> bool:
        return name in self._names()


METHOD_FIELDS: tuple[Row, ...] = (
    ("method", "choice", "method", _Methods()),
    ("centre", "choice", "centre_reachable", ("", "reachable")),
    ("tangent_from", "choice", "tangent_from", (TANGENT_FROM[2], *TANGENT_FROM[:2])),
    ("tapes_from[0]", "text", "tapes_from_0", ()),
    ("tapes_from[1]", "text", "tapes_from_1", ()),
    ("halve_first", "count", "halve_first", ()),
    ("stations", "stations", "stations", ()),
    ("first_gap", "length", "first_gap", ()),
)
CONTROL_FIELDS: tuple[Row, ...] = tuple(
    (f"control.marks[{row}].{name}", "text" if name == "mark" else "signed", f"control_{name}", ())
    for row in range(2)
    for name in ("mark", "x", "y", "n", "e")
)
SITE_FIELDS: tuple[Row, ...] = (
    ("tape.length", "length", "tape_length", ()),
    ("tape.class", "choice", "tape_class", ("", *CLASSES)),
    ("hands", "count", "hands", ()),
    *((f"room.{name}", "zero", f"room_{name}", ()) for name in ("behind", "inside", "outside")),
    ("parallel", "signed", "parallel", ()),
    *((f"fall.{name}", "percent", f"fall_{name}", ()) for name in ("along", "across")),
)
_KINDS = {"scale": "part", "angle": "angle"}
ERROR_FIELDS: tuple[Row, ...] = tuple(
    (f"errors.{name}", _KINDS.get(name, "zero"), f"error_{name}", ()) for name in ERRORS
)


REMOVED = "removed"
"""What an obstacle blocks that is there no more: its row is no part of the job."""


def row_fields(group: str, row: int) -> tuple[Row, ...]:
    """Return the fields of one row of the obstacles (``ground``), the known marks (``known``) or a line's pieces."""
    if group in GROUPS:
        return fields_in(group, row)
    place = f"{group}[{row}]"
    if group == "ground":
        return (
            (f"{place}.name", "text", "ground_name", ()),
            (f"{place}.stops", "choice", "ground_stops", ("", *STOPS, REMOVED)),
            (f"{place}.at", "place", "ground_at", ()),
            (f"{place}.diameter", "length", "ground_diameter", ()),
            (f"{place}.outline", "outline", "ground_outline", ()),
        )
    return (
        (f"{place}.name", "text", "known_name", ()),
        (f"{place}.x", "signed", "known_x", ()),
        (f"{place}.y", "signed", "known_y", ()),
        (f"{place}.sigma", "zero", "known_sigma", ()),
    )


def is_row(name: str) -> bool:
    """Tell whether an id is that of a field in a row that may grow."""
    return _ROW_ID.fullmatch(name) is not None or is_measure(name) or is_sure(name)


def is_measure(name: str) -> bool:
    """Tell whether an id is that of something read at a stake."""
    return MEASURE_ID.fullmatch(name) is not None


def is_sure(name: str) -> bool:
    """Tell whether an id says that what was read at a stake was taped twice."""
    return SURE_ID.fullmatch(name) is not None


def measures_in(typed: Typed, row: int) -> list[int]:
    """Return the numbers of a stake's readings that have a length, in order."""
    found = (MEASURE_ID.fullmatch(name) for name in typed)
    return sorted(int(one[2]) for one in found if one and int(one[1]) == row and one[3] == "distance")


def filled_rows(typed: Typed, group: str) -> list[int]:
    """Return the numbers of a group's rows in which anything stands, in order."""
    return sorted({int(name.split("-")[1]) for name in typed if name.startswith(f"{group}-") and is_row(name)})


def told_rows(typed: Typed, group: str) -> list[int]:
    """Return the same without the obstacles that are there no more, and without rows of what was got that were emptied:
    the rows that a job has, in its order. What was read at a stake nobody names is no row's."""
    rows = filled_rows(typed, group)
    if group == "got":
        return [row for row in rows if any(typed.get(f"got-{row}-{name}", "").strip() for name in ROW_NAMES["got"])]
    return [row for row in rows if typed.get(f"{group}-{row}-stops") != REMOVED]


def blanks_of(typed: Typed, row: int | None) -> dict[str, str]:
    """Return the fields that take back a row of what was got, each empty."""
    if row is None:
        return {}
    return {name: "" for name, text in typed.items() if name.startswith(f"got-{row}-") and text and is_row(name)}


def row_count(typed: Typed, group: str) -> int:
    """Return how many rows of a group are shown: one more than are filled, within what there can be."""
    last = max(filled_rows(typed, group), default=-1)
    return max(LEAST[group], min(last + 2, MOST[group]), last + 1)


def corners_of(text: str, place: str) -> list[list[str]]:
    """Return an outline's corners, each as the two texts that were typed; raises ``BadJob`` at ``place``.

    A comma right between two digits could be a decimal's, so it never parts two lengths.
    """
    corners = []
    for number, corner in enumerate(_pieces(text), 1):
        if re.search("[0-9],[0-9]", corner):
            raise bad(place, "form.outline_comma", number=number)
        pair = [piece.strip() for piece in corner.split(",")]
        if len(pair) != 2 or not all(pair):
            raise bad(place, "form.outline_pair", number=number)
        corners.append(pair)
    return corners


def stations_of(text: str, place: str) -> list[str]:
    """Return the stations that were typed, each as a text; raises ``BadJob`` for a comma, which could part two."""
    if "," in text:
        raise bad(place, "form.stations_comma")
    return _pieces(text)


def _pieces(text: str) -> list[str]:
    return [piece.strip() for piece in re.split("[;\n]", text) if piece.strip()]


def outline_text(corners: Sequence[Sequence[str]]) -> str:
    """Return corners as the one text of an outline."""
    return "; ".join(", ".join(pair) for pair in corners)


def lengths_in(kind: str, text: str, unit: str, place: str) -> list[list[float]]:
    """Return the lengths of an outline (a pair a corner), of a depth (where, and how deep), or one a station, a board,
    a height; metres; raises ``BadJob``."""
    if kind in ("outline", "place"):
        return [
            [read_length(one, unit, place, signed=True, zero=True).metres for one in pair]
            for pair in corners_of(text, place)
        ]
    if kind == "heights":
        rows = heights_of(text, place)
        return [[read_length(row["level"], unit, place, signed=True, zero=True).metres] for row in rows]
    if kind == "depths":
        read = ((row, read_length(row["at"], unit, place, zero=True)) for row in depths_of(text, place))
        return [[at.metres, read_length(row["depth"], unit, place, bare=False).metres] for row, at in read]
    apart = stock_of if kind == "stock" else stations_of
    return [[read_length(one, unit, place).metres] for one in apart(text, place)]


def shown_in(tape: Tape, rows: Sequence[Sequence[float]]) -> str:
    """Return the lengths of an outline or of stations as the tape shows them."""
    return outline_text([[tape.show(metres) for metres in row] for row in rows])


def site_of_fields(typed: Typed) -> dict[str, object]:
    """Return the part of a job that says how it is set out, on what site and for what slab, of what was typed by id.

    Raises ``BadJob`` where a text can be read two ways, or a value is missing that counts only with another.
    """
    job: dict[str, object] = {
        key: typed[key]
        for key in ("method", "centre", "tangent_from", "hands", "first_gap", "halve_first", "parallel")
        if key in typed and typed[key] != STANDS.get(key)
    }
    for group, names in (
        ("tape", ("length", "class")),
        ("room", ("behind", "inside", "outside")),
        ("fall", ("along", "across")),
        ("errors", ERRORS),
    ):
        inside = {name: typed[f"{group}-{name}"] for name in names if f"{group}-{name}" in typed}
        if inside:
            job[group] = inside
    if "stations" in typed:
        job["stations"] = stations_of(typed["stations"], "stations")
    two = _two_marks(typed)
    if two:
        job["tapes_from"] = two
    ground = [_obstacle(typed, number, row) for number, row in enumerate(told_rows(typed, "ground"))]
    known = [
        {name: typed[f"known-{row}-{name}"] for name in ROW_NAMES["known"] if f"known-{row}-{name}" in typed}
        for row in filled_rows(typed, "known")
    ]
    parts = {"ground": ground, "known": known, "control": _control(typed)}
    return {**job, **{key: part for key, part in parts.items() if part}, **slab_of_fields(typed)}


def _obstacle(typed: Typed, number: int, row: int) -> dict[str, object]:
    there: dict[str, object] = {
        name: typed[f"ground-{row}-{name}"] for name in ("name", "stops", "diameter") if f"ground-{row}-{name}" in typed
    }
    at, outline = (typed.get(f"ground-{row}-{name}", "") for name in ("at", "outline"))
    if at:
        there["at"] = _place(at, f"ground[{number}].at")
    if outline or not (at or "diameter" in there):
        there["outline"] = corners_of(outline, f"ground[{number}].outline")
    return there


def _place(text: str, place: str) -> list[str]:
    """Return the two lengths of one place; raises ``BadJob``."""
    pairs = corners_of(text, place)
    if len(pairs) != 1:
        raise bad(place, "form.place_one")
    return pairs[0]


def _two_marks(typed: Typed) -> list[str]:
    marks = [typed.get(f"tapes_from-{number}", "") for number in range(2)]
    if not any(marks) or marks == ["A", "B"]:
        return []
    if not all(marks):
        raise bad(f"tapes_from[{marks.index('')}]", "form.two_marks")
    return marks


def _control(typed: Typed) -> dict[str, object]:
    """Which pair of coordinates is filled says which axes they are."""
    used = {name for name in ("x", "y", "n", "e") for row in range(2) if f"control-marks-{row}-{name}" in typed}
    marks = [row for row in range(2) if f"control-marks-{row}-mark" in typed]
    if not used and not marks:
        return {}
    north = used & {"n", "e"}
    if north and used & {"x", "y"}:
        first = next(
            f"control.marks[{row}].{name}"
            for row in range(2)
            for name in ("n", "e")
            if f"control-marks-{row}-{name}" in typed
        )
        raise bad(first, "form.control_both")
    names = ("mark", "n", "e") if north else ("mark", "x", "y")
    rows = [
        {name: typed[place] for name in names if (place := f"control-marks-{row}-{name}") in typed} for row in range(2)
    ]
    return {"marks": rows, **({"axes": "n-e"} if north else {})}


def in_texts(job: Mapping[str, object]) -> dict[str, object]:
    """Return a job that can be used with its outlines and stations as the one text that stands in the form."""
    flat = dict(job)
    unit = str(job.get("unit", "ft-in"))
    ground, stations, control = job.get("ground"), job.get("stations"), job.get("control")
    if isinstance(ground, list | tuple):
        flat["ground"] = [
            {
                **one,
                **{
                    name: outline_text([[_one_text(value, unit) for value in pair] for pair in rows])
                    for name, rows in (("outline", one.get("outline")), ("at", _alone(one.get("at"))))
                    if rows
                },
            }
            for one in ground
        ]
    if isinstance(stations, list | tuple):
        flat["stations"] = "; ".join(_one_text(value, unit) for value in stations)
    if isinstance(control, Mapping):
        names = ("mark", "n", "e") if control.get("axes") == "n-e" else ("mark", "x", "y")
        flat["control"] = {"marks": [{name: row[name] for name in names} for row in control["marks"]]}
    return {**flat, **slab_in_texts(job, lambda value: _one_text(value, unit))}


def _alone(place: Sequence[object] | None) -> list[Sequence[object]]:
    return [place] if place else []


def _one_text(value: object, unit: str) -> str:
    """Return a length as it can stand among others: a comma of its own is written otherwise, to mean the same."""
    text = number_text(value) if isinstance(value, int | float) else str(value).strip()
    if "," not in text:
        return text
    for without in (" ".join(text.replace(",", " ").split()), text.replace(",", ""), text.replace(",", ".")):
        if _metres(without, unit) == _metres(text, unit):
            return without
    return f"{_metres(text, unit)!r} m"


def number_text(value: float) -> str:
    """Return a number written out: a field takes no exponent."""
    return format(Decimal(repr(value)), "f").removesuffix(".0")


def _metres(text: str, unit: str) -> float | None:
    try:
        return read_length(text, unit, "job", signed=True, zero=True).metres
    except BadJob:
        return None
