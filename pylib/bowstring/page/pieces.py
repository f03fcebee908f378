"""The pieces of a line before and after the arc that is staked: as they are typed, as a job has them, and back.

The form's measures are those of the staked arc. Every other piece is a row of its own, in the order in which somebody
walks along them; what was said and done of another arc while it was staked is kept in its row, unseen, as fields.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Collection, Mapping
from typing import cast

from bowstring.errors import bad
from bowstring.job.form import JobForm
from bowstring.job.line_at import staked_in
from bowstring.job.terms import OTHER, PIECES, SIDES, WORK_KEYS, is_lined
from bowstring.page.beside import READ_ROW, read_of

Typed = Mapping[str, str]
Row = dict[str, str]
Fields = dict[str, str]

GROUPS = PIECES
BEFORE, AFTER = GROUPS
MEASURES = ("radius", "central_angle", "arc_length", "chord", "sagitta")
"""Those of another arc that have a field in its row."""

STRAIGHT, TURN, KINK, MORE = "straight", "turn", "kink", "more"
NAMES = (STRAIGHT, *MEASURES, TURN, KINK, MORE)
"""What stands in a row; the last is what is kept of it unseen."""

MOST_PIECES = 20
"""Rows of either group."""

FORMS, HUBS = "form_", "form_hubs-"
"""How the marks of the forms' cards begin, and of the one that is of the staked arc alone."""

LINE_END = "end"
"""How the checks' keys begin that are of the whole line; no stake is called so."""

KINK_HERE = "kink"
"""The field of the kink where the staked arc begins."""

_HANDS = {"izquierda": "left", "izq": "left", "derecha": "right", "der": "right"}
"""A kink's hand as the form also takes it, by the word that a job has for it."""

_HAND = re.compile(rf"(?<!\w)(?:a\s+la\s+)?({'|'.join(_HANDS)})(?!\w)", re.IGNORECASE)

_BESIDE = ("done", "stood", "edged", "anew", "read")
"""What is kept of an arc's work beside the form, by the first piece of the fields' ids."""


def fields_in(group: str, row: int) -> tuple[tuple[str, str, str, Collection[str]], ...]:
    """Return the fields of one row, each with its place, kind, word and choices."""
    place = f"{group}[{row}]"
    kinds = {"central_angle": "angle", TURN: "choice", KINK: "text", MORE: "kept"}
    choices: dict[str, Collection[str]] = {TURN: ("", *SIDES)}
    return tuple(
        (f"{place}.{name}", kinds.get(name, "length"), f"piece_{name}", choices.get(name, ())) for name in NAMES
    )


def rows_in(typed: Typed, group: str) -> list[tuple[int, Row]]:
    """Return the rows of a group in which anything stands, each with its number in the form."""
    found: dict[int, Row] = {}
    for name, text in typed.items():
        head, _, rest = name.partition("-")
        number, _, what = rest.partition("-")
        if head == group and what in NAMES and number.isdecimal() and text.strip():
            found.setdefault(int(number), {})[what] = text.strip()
    return sorted(found.items())


def line_of(typed: Typed, job: dict[str, object], arc_of: Callable[[Typed], dict[str, object]],
            job_of: Callable[[Typed], JobForm]) -> dict[str, object]:  # fmt: skip
    """Return a job with the pieces of its line, where any are typed; raises ``BadJob``.

    ``job``: that of the staked arc alone; ``arc_of``: makes an arc of fields; ``job_of``: makes a job of all of them.
    """
    if not is_lined(typed):
        return job
    rest = {key: value for key, value in job.items() if key not in ("arc", "side", "turn", "greater")}
    before, after = ([row for _number, row in rows_in(typed, group)] for group in GROUPS)
    pieces = [_piece(row, arc_of, job_of, f"{BEFORE}[{number}]") for number, row in enumerate(before)]
    pieces.append(_staked(typed, job))
    pieces += [_piece(row, arc_of, job_of, f"{AFTER}[{number}]") for number, row in enumerate(after)]
    return {**rest, "line": pieces, "at": len(before) + 1, "start": typed.get("start", "ends")}


def _staked(typed: Typed, job: Mapping[str, object]) -> dict[str, object]:
    arc = cast("dict[str, object]", job.get("arc", {}))
    turn = job.get("turn") or OTHER.get(str(job.get("side", "")))
    return {
        "arc": {**arc, **({"greater": True} if job.get("greater") else {})},
        **({TURN: turn} if turn else {}),
        **({KINK: _kink_in(typed[KINK_HERE])} if KINK_HERE in typed else {}),
    }


def _kink_in(typed: str) -> str:
    """Return a kink as a job says it, whose hands are English: ``"2 izquierda"`` is ``"2 left"``."""
    return _HAND.sub(lambda found: _HANDS[found[1].lower()], typed)


def _piece(row: Row, arc_of: Callable[[Typed], dict[str, object]], job_of: Callable[[Typed], JobForm], place: str
           ) -> dict[str, object]:  # fmt: skip
    kink = {KINK: _kink_in(row[KINK])} if KINK in row else {}
    more = kept_of(row)
    arc = arc_of({**more, **{f"arc-{name}": row[name] for name in MEASURES if name in row}})
    if STRAIGHT in row:
        if arc:
            raise bad(f"{place}.{STRAIGHT}", "line.piece_kind")
        turn = {TURN: row[TURN]} if TURN in row and kink else {}  # left in its row by an arc that it was before
        return {STRAIGHT: row[STRAIGHT], **turn, **kink}
    if more.get("greater"):
        arc["greater"] = True
    work = {key: value for key, value in job_of({**more, "unit": more.get("unit", "ft-in")}).items()
            if key in WORK_KEYS}  # fmt: skip
    if "start" in more:
        work["start"] = more["start"]  # said of an arc of a line, both ends set isn't what is taken anyway
    return {
        "arc": arc,
        **({TURN: row[TURN]} if TURN in row else {}),
        **kink,
        **({"work": work} if work else {}),
    }


def kept_in(typed: Typed) -> list[Fields]:
    """Return what is kept unseen of each other piece, as fields: their numbers are in the form's unit, too."""
    return [kept for group in GROUPS for _number, row in rows_in(typed, group) if (kept := kept_of(row))]


def start_at(at: int, own: Mapping[str, object]) -> str:
    """Return the usual start of the arc that is the piece ``at``: what stands before it shows its tangent at A, but
    where it kinks off; ``own``: its row, or the piece of a job."""
    return "one-end" if at > 1 and KINK not in own else "ends"


def kept_of(row: Row) -> Fields:
    """Return what is kept of a row unseen, as fields; nothing where it can't be read."""
    try:
        kept = json.loads(row.get(MORE, "{}"))
    except ValueError:
        return {}
    return {str(name): str(text) for name, text in kept.items()} if isinstance(kept, dict) else {}


def apart(job: Mapping[str, object], fields_of: Callable[[JobForm], Fields]) -> tuple[Mapping[str, object], Fields]:
    """Return the job of a line's staked arc alone, and the fields of the line's other pieces; of a job without a line
    the job itself, and none. ``fields_of``: makes fields of a job."""
    if "line" not in job:
        return job, {}
    whole = cast("JobForm", job)
    at, pieces = staked_in(whole), cast("list[dict[str, object]]", whole["line"])
    own = pieces[at - 1]
    alone = {key: value for key, value in job.items() if key not in ("line", "at")}
    start = str(job.get("start", start_at(at, own)))
    alone |= {"arc": own["arc"], "start": start}
    if TURN in own:
        alone[TURN] = own[TURN]
    fields = {KINK_HERE: str(own[KINK])} if KINK in own else {}
    for group, rows in ((BEFORE, pieces[: at - 1]), (AFTER, pieces[at:])):
        for number, piece in enumerate(rows):
            made = _row(piece, str(job.get("unit", "ft-in")), fields_of)
            fields |= {f"{group}-{number}-{name}": text for name, text in made.items()}
    return alone, fields


def _row(piece: Mapping[str, object], unit: str, fields_of: Callable[[JobForm], Fields]) -> Row:
    row = {name: str(piece[name]) for name in (STRAIGHT, TURN, KINK) if name in piece}
    if STRAIGHT in piece:
        return row
    work = cast("Mapping[str, object]", piece.get("work", {}))
    return {**row, **_arc_row(fields_of(cast("JobForm", {"unit": unit, "arc": piece["arc"], **work})))}


def _arc_row(fields: Typed) -> Row:
    """Return the row of an arc that is staked no more, of its fields: its measures, and the rest unseen."""
    row = {name: fields[f"arc-{name}"] for name in MEASURES if f"arc-{name}" in fields}
    kept = {name: text for name, text in fields.items() if _is_kept(name)}
    return {**row, **({MORE: json.dumps(kept, ensure_ascii=False, sort_keys=True)} if kept else {})}


def _is_kept(name: str) -> bool:
    head = name.partition("-")[0]
    if head == "arc":
        return name[len("arc-") :] not in MEASURES
    return name == "greater" or head in WORK_KEYS or head in _BESIDE


def staked_at(fields: Typed, at: int) -> Fields:
    """Return the fields of a line with its piece ``at`` (counted from 1) staked; itself where that is no other arc."""
    # The form has no word for both ends where nobody chose otherwise: of an arc behind another piece that's a choice.
    typed = {"start": "ends"} | {name: text.strip() for name, text in fields.items() if text.strip()}
    before, after = ([row for _number, row in rows_in(typed, group)] for group in GROUPS)
    pieces = [*before, _own_row(typed, start_at(len(before) + 1, typed)), *after]
    if not 1 <= at <= len(pieces) or at == len(before) + 1 or STRAIGHT in pieces[at - 1]:
        return dict(fields)
    shared = {
        name: text
        for name, text in typed.items()
        if not _is_kept(name) and name.partition("-")[0] not in (*GROUPS, "arc", "turn", "side", KINK_HERE)
    }
    own = pieces[at - 1]
    shared |= _as_staked(own, at) | _toward(typed, pieces[len(before)].get(TURN), own.get(TURN))
    shared = _read_along(shared, typed)
    shared["done"] = _done_along(shared.get("done", ""), typed.get("done", ""))
    for group, rows in ((BEFORE, pieces[: at - 1]), (AFTER, pieces[at:])):
        for number, row in enumerate(rows):
            shared |= {f"{group}-{number}-{name}": text for name, text in row.items()}
    return {name: text for name, text in shared.items() if text}


def _as_staked(row: Row, at: int) -> Fields:
    """Return the fields of an arc that is staked from now on, the piece ``at`` (counted from 1), of its row."""
    fields = {"start": start_at(at, row)} | kept_of(row)
    fields |= {f"arc-{name}": row[name] for name in MEASURES if name in row}
    if TURN in row:
        fields |= {TURN: row[TURN]} if fields["start"] == "one-end" else {"side": OTHER[row[TURN]]}
    if KINK in row:
        fields[KINK_HERE] = row[KINK]
    return fields


def _done_along(own: str, before: str) -> str:
    """Return what is done of an arc that is staked from now on: its own work, and the forms' cards that are of the
    whole line, as they stood while another arc was staked. The hubs' card is each arc's own."""
    stand = [text for text in own.split() if not text.startswith(FORMS) or text.startswith(HUBS)]
    return " ".join(
        [*stand, *(text for text in before.split() if text.startswith(FORMS) and not text.startswith(HUBS))]
    )


def _others(typed: Typed) -> list[tuple[int, Row]]:
    """The rows of a line's other arcs, each with its number from 1 along the pieces."""
    before, after = ([row for _number, row in rows_in(typed, group)] for group in GROUPS)
    others = [*enumerate(before, 1), *enumerate(after, len(before) + 2)]
    return [(number, row) for number, row in others if STRAIGHT not in row]


def staked_of_several(typed: Typed) -> int:
    """Return which piece of a line, from 1, the arc is that is staked, where the line has other arcs; else 0."""
    return len(rows_in(typed, BEFORE)) + 1 if _others(typed) else 0


def bare_arcs(typed: Typed) -> list[int]:
    """Return which of a line's other arcs, counted from 1 along its pieces, have no card of their hubs that is done."""
    return [
        number
        for number, row in _others(typed)
        if not any(text.startswith(HUBS) for text in kept_of(row).get("done", "").split())
    ]


def unread_arcs(typed: Typed) -> list[int]:
    """Return which of a line's other arcs, counted from 1 along its pieces, have no check of their own that was
    read."""
    return [
        number
        for number, row in _others(typed)
        if all(read["check"].startswith(LINE_END) for read in read_of(kept_of(row)))
    ]


def _read_along(own: Fields, before: Typed) -> Fields:
    """Return the fields of an arc that is staked from now on with what was read along the whole line, as it stood while
    another arc was staked: those checks are no arc's own."""
    of_line = [row for row in read_of(before) if row["check"].startswith(LINE_END)]
    own_rows = [row for row in read_of(own) if not row["check"].startswith(LINE_END)]
    if not of_line and len(own_rows) == len(read_of(own)):
        return own
    rest = {name: text for name, text in own.items() if not READ_ROW.fullmatch(name)}
    for number, row in enumerate([*own_rows, *of_line]):
        rest |= {f"read-{number}-{what}": text for what, text in row.items()}
    return rest


def _toward(typed: Typed, before: str | None, now: str | None) -> Fields:
    """Return to which side the stakes stand off the arc that is taken.

    A row of stakes beside the line stays on one hand of it: what was toward the center of the one arc may be away from
    the other's. Three points tell the hand, and no field: then the side is asked again, never guessed.
    """
    if "toward" not in typed or (before == now and before):
        return {}
    if before is None or now is None:
        return {"toward": ""}
    return {"toward": {"centre": "outside", "outside": "centre"}[typed["toward"]]}


def _own_row(typed: Typed, usual_start: str) -> Row:
    """The row of the arc that is staked now; ``usual_start``: that of its place in the line."""
    walking = typed.get("start") == "one-end"
    turn = typed.get(TURN) if walking else OTHER.get(typed.get("side", ""))
    kept = {name: text for name, text in typed.items() if (name, text) != ("start", usual_start)}
    return {
        **_arc_row(kept),
        **({TURN: turn} if turn else {}),
        **({KINK: typed[KINK_HERE]} if KINK_HERE in typed else {}),
    }


def places_of(place: list[str], typed: Typed) -> list[str]:
    """Return a place in a job's line, in pieces, as the place in the form: ``line``, 2, ``arc``, ``radius`` is the
    radius of the third piece, in its row or among the staked arc's measures."""
    if place[:1] != ["line"] or len(place) < 2:
        return place
    before, after = (rows_in(typed, group) for group in GROUPS)
    number, rest = int(place[1]), place[2:]
    if number == len(before):
        return rest if rest[:1] != [KINK] else [KINK_HERE]
    rows, group, row = (before, BEFORE, number) if number < len(before) else (after, AFTER, number - len(before) - 1)
    inside = (rest[1:] or [MEASURES[0]]) if rest[:1] == ["arc"] else rest
    return [group, str(rows[row][0]) if row < len(rows) else "0", *inside]
