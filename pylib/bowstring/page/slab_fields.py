"""What the form says of the slab: its fields, and the way from what was typed to a job and back.

The boards' lengths are one text, ``8', 10', 12'``; the ground's heights another, ``A outside 0.4; M inside 0.2``.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Mapping, Sequence

from bowstring.errors import BadJob, bad
from bowstring.job.terms import APRON_ALONG, BACKS, BOARD_LEVELS, EDGE_ALONG, GROUND_BY, POURED, SLAB_KEYS, SLOPE_ALONG
from bowstring.units.lengths import read_length

Typed = Mapping[str, str]
Writer = Callable[[object], str]
"""Writes one length so that it can stand among others in a text."""

SLAB_FIELDS: tuple[tuple[str, str, str, Collection[str]], ...] = (
    ("edge", "choice", "edge", ("outside", "centre", "inside", "left", "right", "")),
    ("slab.poured", "choice", "slab_poured", (*POURED, "")),
    ("slab.fills", "flag", "slab_fills", ("", "yes")),
    ("slab.sides", "length", "slab_sides", ()),
    ("slab.both_ends", "flag", "slab_both_ends", ()),
    ("slab.back", "choice", "slab_back", (*BACKS, "")),
    ("slab.at_A", "choice", "slab_at_A", (*BACKS, "")),
    ("slab.at_B", "choice", "slab_at_B", (*BACKS, "")),
    ("slab.thickness", "fine", "slab_thickness", ()),
    ("slab.end_width", "length", "slab_end_width", ()),
    ("slab.base", "bed", "slab_base", ()),
    ("slab.overdig", "zero", "slab_overdig", ()),
    ("slab.waste", "percent", "slab_waste", ()),
    ("slab.step", "volume", "slab_step", ()),
    ("slab.truck", "volume", "slab_truck", ()),
    ("slab.edge_width", "fine", "slab_edge_width", ()),
    ("slab.edge_depth", "fine", "slab_edge_depth", ()),
    ("slab.edge_along", "choice", "slab_edge_along", (*EDGE_ALONG, "")),
    ("slab.footing_width", "fine", "slab_footing_width", ()),
    ("slab.footing_depth", "fine", "slab_footing_depth", ()),
    ("slab.apron.along", "choice", "slab_apron_along", (*APRON_ALONG, "")),
    ("slab.apron.from", "zero", "slab_apron_from", ()),
    ("slab.apron.to", "length", "slab_apron_to", ()),
    ("slab.apron.thickness", "fine", "slab_apron_thickness", ()),
    ("slab.depths", "depths", "slab_depths", ()),
    ("board.kind", "text", "board_kind", ()),
    ("board.thickness", "fine", "board_thickness", ()),
    ("board.height", "fine", "board_height", ()),
    ("board.level", "choice", "board_level", ("", *BOARD_LEVELS)),
    ("board.lengths", "stock", "board_lengths", ()),
    ("board.overrun", "zero", "board_overrun", ()),
    ("board.gap", "length", "board_gap", ()),
    ("joints.every", "length", "joints_every", ()),
    ("joints.panels", "count", "joints_panels", ()),
    ("grade.from", "signed", "grade_from", ()),
    ("grade.to", "signed", "grade_to", ()),
    ("grade.slope", "slope", "grade_slope", ()),
    ("grade.along", "choice", "grade_along", ("", *SLOPE_ALONG)),
    ("grade.high", "choice", "grade_high", ("A", "B", "")),
    ("grade.cross", "slope", "grade_cross", ()),
    ("grade.low", "choice", "grade_low", ("inside", "outside", "left", "right", "")),
    ("grade.crown", "fine", "grade_crown", ()),
    ("grade.limit", "slope", "grade_limit", ()),
    ("grade.cross_limit", "slope", "grade_cross_limit", ()),
    ("grade.stops", "flag", "grade_stops", ()),
    ("grade.instrument", "signed", "grade_instrument", ()),
    ("grade.ground_by", "choice", "grade_ground_by", ("", *GROUND_BY)),
    ("grade.ground", "heights", "grade_ground", ()),
)
"""Each with its place, kind, word and choices, see ``fields.Field``."""

_OF_A_PAD = ("slab.sides", "slab.both_ends", "slab.back", "slab.edge_along")
"""Only a slab that fills its curve has them."""

_OF_A_BAND = ("slab.at_A", "slab.at_B")
"""Only a slab that has a width has them."""

_OF_AN_EDGE = {"slab-sides", "slab-edge_width", "slab-edge_depth"}
"""Without one of them nobody asks how far round a thick edge runs."""

_ALONG, _APRON_IDS = "slab.apron.along", tuple(f"slab-apron-{name}" for name in ("from", "to", "thickness"))
_SLOPE_ALONG, _SLOPED = "grade.along", {"grade-slope", "grade-to"}

OF_NO_WALL = ("slab.edge_width", "slab.edge_depth", "slab.apron.", "slab.depths")
"""How the places begin of what a slab has and no wall: not shown of one."""

_KEYS = ("width", *SLAB_KEYS)
_GROUPS = tuple(key for key in SLAB_KEYS if key != "edge")
_PLAIN = re.compile(r"[0-9]{1,4}(\.[0-9]{1,4})?")
_ROW_ALONE = re.compile(r"(?P<stake>\S+)\s+(?P<level>[-+.\d].*)")
"""Of a slab that fills its curve: it has one edge."""

_ROW = re.compile(
    r"(?P<stake>\S.*?)\s+(?P<edge>outside|inside|out|in|afuera|adentro|fuera|dentro|left|right|izquierda|derecha)\s+"
    r"(?P<level>\S.*)",
    re.IGNORECASE,
)
_EDGES = {"out": "outside", "fuera": "outside", "afuera": "outside", "in": "inside", "dentro": "inside",
          "adentro": "inside", "izquierda": "left", "derecha": "right"}  # fmt: skip


def is_of_slab(name: str) -> bool:
    """Tell whether a field, by its id, says something of the slab on which no stake hangs.

    >>> is_of_slab("joints-panels"), is_of_slab("width"), is_of_slab("offset")
    (True, True, False)
    """
    return name.partition("-")[0] in _KEYS


def is_of_slab_alone(refusal: BadJob) -> bool:
    """Tell whether a job is refused for something of its slab, on which no stake hangs."""
    return re.split(r"[.\[]", refusal.field)[0] in SLAB_KEYS


def without_slab(fields: Typed) -> dict[str, str]:
    """Return the fields without those of the slab: what an arc is laid out by."""
    return {name: text for name, text in fields.items() if not is_of_slab(name)}


def slab_of_fields(typed: Typed) -> dict[str, object]:
    """Return the part of a job that says what is built, of what was typed by field id; raises ``BadJob`` where a text
    can be read two ways."""
    job: dict[str, object] = {"edge": typed["edge"]} if "edge" in typed else {}
    for place, kind, _word, _choices in SLAB_FIELDS:
        name = place.replace(".", "-")
        group, _, key = place.partition(".")
        if _is_left(place, typed):
            continue
        if key and name in typed:
            *groups, last = (group, *key.split("."))
            inside: dict[str, object] = job
            for one in groups:
                found = inside.setdefault(one, {})
                assert isinstance(found, dict)
                inside = found
            inside[last] = _value(kind, typed[name], place)
    return job


def _is_left(place: str, typed: Typed) -> bool:
    """Whether a field holds what somebody left in it whose slab was another one before."""
    if place in (_OF_A_BAND if "slab-fills" in typed else _OF_A_PAD):  # it had ends, or it filled the curve
        return True
    if place.startswith(OF_NO_WALL) and typed.get("slab-poured") == "wall":  # it was no wall
        return True
    if place == "slab.back" and ("slab-sides" not in typed or "slab-both_ends" in typed):  # it had a square end
        return True
    if place == "slab.edge_along" and not typed.keys() >= _OF_AN_EDGE:  # it had sides, or a thick edge
        return True
    if place == _SLOPE_ALONG and ("slab-fills" in typed or not _SLOPED & typed.keys()):
        return True  # it sloped; and one that fills its curve slopes along its string
    # Which line an apron would be along says no apron yet, nor how the ground was read that there is any.
    of = {_ALONG: _APRON_IDS, "grade.ground_by": ("grade-ground",)}.get(place)
    return of is not None and not any(name in typed for name in of)


def _value(kind: str, text: str, place: str) -> object:
    if kind == "flag":
        return True
    if kind == "stock":
        return stock_of(text, place)
    if kind == "heights":
        return heights_of(text, place)
    if kind == "depths":
        return depths_of(text, place)
    if kind in ("percent", "slope", "volume", "count") and _PLAIN.fullmatch(text):
        return float(text) if "." in text else int(text)
    return text


def stock_of(text: str, place: str) -> list[str]:
    """Return the lengths in one text, apart by ``;`` or commas; raises ``BadJob`` where a comma could be a decimal's,
    or part feet from inches.

    >>> stock_of("8', 10', 12'", "board.lengths")
    ["8'", "10'", "12'"]
    """
    lengths = []
    for piece in _pieces(text):
        if re.search("[0-9],[0-9]", piece) or ("," in piece and _is_one_length(piece)):
            raise bad(place, "form.stock_comma")
        lengths += [one.strip() for one in piece.split(",") if one.strip()]
    return lengths


def _is_one_length(text: str) -> bool:
    try:
        read_length(text, "ft-in", "job")
    except BadJob:
        return False
    return True


def heights_of(text: str, place: str) -> list[dict[str, str]]:
    """Return the ground's heights in one text, apart by ``;``: a stake, its edge, the height; raises ``BadJob``. A slab
    with one edge needs no edge; for any other the job asks for it.

    >>> heights_of("A out 0.4", "grade.ground")
    [{'stake': 'A', 'edge': 'outside', 'level': '0.4'}]
    """
    rows = []
    for number, piece in enumerate(_pieces(text), 1):
        found, alone = _ROW.fullmatch(piece), _ROW_ALONE.fullmatch(piece)
        if not found and alone and alone["stake"].lower() not in {*_EDGES, *_EDGES.values()}:
            rows.append(alone.groupdict())
            continue
        if not found:
            raise bad(place, "form.height_row", number=number)
        edge = found["edge"].lower()
        rows.append({"stake": found["stake"], "edge": _EDGES.get(edge, edge), "level": found["level"]})
    return rows


def depths_of(text: str, place: str) -> list[dict[str, str]]:
    r"""Return the measured depths in one text, apart by ``;``: where, then after a colon how deep; raises ``BadJob``.

    >>> depths_of("0: 4-1/2\"; 12': 4 in", "slab.depths")
    [{'at': '0', 'depth': '4-1/2"'}, {'at': "12'", 'depth': '4 in'}]
    """
    rows = []
    for number, piece in enumerate(_pieces(text), 1):
        at, sign, depth = (part.strip() for part in piece.partition(":"))
        if not (at and sign and depth) or ":" in depth:
            raise bad(place, "form.depth_row", number=number)
        rows.append({"at": at, "depth": depth})
    return rows


def _pieces(text: str) -> list[str]:
    return [piece.strip() for piece in re.split("[;\n]", text) if piece.strip()]


def slab_in_texts(job: Mapping[str, object], one_text: Writer) -> dict[str, object]:
    """Return the groups of a job that can be used with the boards' lengths and the ground's heights as the one text
    that stands in the form."""
    groups = {key: dict(group) for key in _GROUPS if isinstance(group := job.get(key), Mapping)}
    lengths, ground = groups.get("board", {}).get("lengths"), groups.get("grade", {}).get("ground")
    if isinstance(lengths, Sequence):
        groups["board"]["lengths"] = ", ".join(map(one_text, lengths))
    if isinstance(ground, Sequence):
        kinds = ("stake", "edge")
        rows = (" ".join([*(row[kind] for kind in kinds if kind in row), one_text(row["level"])]) for row in ground)
        groups["grade"]["ground"] = "; ".join(rows)
    depths = groups.get("slab", {}).get("depths")
    if isinstance(depths, Sequence):
        groups["slab"]["depths"] = "; ".join(f"{one_text(row['at'])}: {one_text(row['depth'])}" for row in depths)
    return dict(groups)
